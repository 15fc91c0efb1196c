//! What was felt or seen, without a measuring tool.

use super::asked::{FitQuestion, HoleMember, ShaftMember};
use framegauge::fit::RingClass;
use framegauge::judge::{Felt, Verdict};
use framegauge::measure::{Bound, Limits};
use framegauge::standard::Joint;
use framegauge::{Grade, mm};

use super::fits::{hole, shaft};
use super::{OPEN, OUT, case, exact, hold};

#[test]
fn by_hand() {
    let cup = |felt: &[Felt]| judge(Joint::HeadCup, felt);
    let post = |felt: &[Felt]| judge(Joint::Seatpost, felt);
    let press = "a press fit without interference does not hold (common practice)";
    let slip = "a slip fit goes by hand by design; a feel shows no size (common practice)";
    hold(
        "by_hand",
        &[
            case(
                "nothing known of a cup",
                OPEN,
                "neither felt nor measured",
                cup(&[]),
            ),
            case(
                "a cup that goes in by hand",
                OUT,
                press,
                cup(&[Felt::GoesByHand]),
            ),
            case("a cup that rocks", OUT, press, cup(&[Felt::Rocks])),
            case(
                "a cup that turned in use",
                OUT,
                press,
                cup(&[Felt::TurnedInUse]),
            ),
            case(
                "a cup that needs force",
                OPEN,
                "a press fit needs force; how much it presses is not felt",
                cup(&[Felt::NeedsForce]),
            ),
            case(
                "two good cups loose in one head tube",
                OUT,
                "the hole is common to them",
                cup(&[Felt::HoleLooseWithSeveral]),
            ),
            case(
                "one cup loose in two good head tubes",
                OUT,
                "the cup is common to them",
                cup(&[Felt::ShaftLooseInSeveral]),
            ),
            case(
                "nothing known of a post",
                OPEN,
                "neither felt nor measured",
                post(&[]),
            ),
            case(
                "a post that goes in by hand",
                OPEN,
                slip,
                post(&[Felt::GoesByHand]),
            ),
            case("a post that rocks", OPEN, slip, post(&[Felt::Rocks])),
            case(
                "a post that turned in use",
                OPEN,
                slip,
                post(&[Felt::TurnedInUse]),
            ),
            case(
                "a post that needs force",
                OPEN,
                "dirt, burr, paint, shape or size",
                post(&[Felt::NeedsForce]),
            ),
            case(
                "two posts loose in one tube",
                OPEN,
                "the hole is common to them",
                post(&[Felt::HoleLooseWithSeveral]),
            ),
            case(
                "one post loose in two tubes",
                OPEN,
                "the post is common to them",
                post(&[Felt::ShaftLooseInSeveral]),
            ),
            case(
                "a cup that needs force and later turned",
                OUT,
                "one sign of slip is enough",
                cup(&[Felt::NeedsForce, Felt::TurnedInUse]),
            ),
        ],
    );
}

fn judge(joint: Joint, felt: &[Felt]) -> Verdict {
    felt.iter()
        .fold(FitQuestion::new(joint), |ask, f| ask.felt(*f))
        .judge()
        .unwrap()
}

#[test]
fn one_member_measured() {
    let cup = || FitQuestion::new(Joint::HeadCup).felt(Felt::GoesByHand);
    let upper_only = Limits::new(Bound::Unknown, Bound::At(mm(34.0)), Grade::Shop).unwrap();
    hold(
        "one_member_measured",
        &[
            case(
                "the bore was measured",
                OUT,
                "the outside of the cup is asked for, not the bore again",
                cup().hole(hole(exact(34.0))).judge().unwrap(),
            ),
            case(
                "the cup was measured",
                OUT,
                "the bore is asked for, not the cup again",
                cup().shaft(shaft(exact(34.0))).judge().unwrap(),
            ),
            case(
                "the bearing is known by its class",
                OUT,
                "the bore is asked for: the class says what the bearing may be (ISO 492)",
                FitQuestion::new(Joint::DirectBearing)
                    .felt(Felt::GoesByHand)
                    .shaft(ShaftMember::of_ring(mm(42.0), RingClass::Normal).unwrap())
                    .judge()
                    .unwrap(),
            ),
            case(
                "the bore is known by its limits only",
                OUT,
                "both are asked for: limits of a bore do not say what it is",
                cup()
                    .hole(
                        HoleMember::of_limits(
                            Limits::between(mm(33.9), mm(33.95), Grade::Shop).unwrap(),
                        )
                        .unwrap(),
                    )
                    .judge()
                    .unwrap(),
            ),
            case(
                "half a limit and a measured cup",
                OUT,
                "an upper limit alone gives no fit: the bore is asked for",
                cup()
                    .hole(HoleMember::of_limits(upper_only).unwrap())
                    .shaft(shaft(exact(34.0)))
                    .judge()
                    .unwrap(),
            ),
        ],
    );
}
