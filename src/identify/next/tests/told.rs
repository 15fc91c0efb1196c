//! Which candidates a reading tells from the likeliest, and whether their hands differ, reasoned by hand.

use super::super::{hand_open, separated};
use super::{Entry, ground, left, posts, shells, threads};
use crate::identify::entry::Left;
use crate::identify::gather::Seen;
use crate::identify::kind::Kind;
use crate::identify::{Assumptions, Feature, Observation, Options};
use crate::quantity::mm;
use crate::standard::{Axle, find};
use crate::thread::{Hand, Side};

fn told(
    kind: Kind,
    options: &Options<'_>,
    feature: Feature,
    held: &[Left<'static>],
) -> std::vec::Vec<crate::Text> {
    separated(&ground(kind, options), held, feature)
}

/// Against the first of them, by what the tables of shells and threads say of threads, hands and pitches. A row whose
/// hand nobody has published is not told by it; a row without a thread has no hand at all.
#[test]
fn looks_and_hands_tell_those_that_are_known_to_differ() {
    let options = Options::default();
    let kind = Kind::Shell;
    let codes = [
        "french",
        "italian",
        "swiss",
        "bsc",
        "fauber_threaded",
        "pf30",
    ];
    let rows = left(&shells(&codes));
    let shell = |feature| told(kind, &options, feature, &rows);
    assert_eq!(shell(Feature::Threaded), ["pf30"]);
    assert_eq!(shell(Feature::HandDrive), ["swiss", "bsc", "pf30"]);
    assert_eq!(shell(Feature::HandNonDrive), ["pf30"]);
    assert_eq!(
        shell(Feature::Pitch),
        ["italian", "bsc", "fauber_threaded", "pf30"]
    );
    let rows = left(&threads(&[
        "lockring_33_5",
        "freewheel_bmx",
        "lockring_m33",
    ]));
    let hands = told(Kind::Thread, &options, Feature::Hand, &rows);
    assert_eq!(hands, ["freewheel_bmx"]);
    assert!(told(kind, &options, Feature::Hand, &[]).is_empty());
}

/// Bands that share half of the narrower are not told apart: sizes 0.2 mm apart with a spread of s share 2 s - 0.2 of
/// 2 s, which is half at s = 0.2 mm. Bare points are told when they do not coincide, and no figure tells nothing.
#[test]
fn bands_tell_where_they_share_less_than_half() {
    let kind = Kind::SeatTube;
    let rows = left(&posts(&["27.2", "27.0", "26.8"]));
    for (spread, expected) in [
        (0.0, &["27.0", "26.8"][..]),
        (0.05, &["27.0", "26.8"]),
        (0.19, &["27.0", "26.8"]),
        (0.21, &["26.8"]),
        (0.39, &["26.8"]),
        (0.41, &[]),
    ] {
        let options = Options {
            assumptions: Assumptions {
                seat_tube: mm(spread),
                ..Assumptions::default()
            },
            ..Options::default()
        };
        let codes = told(kind, &options, Feature::Bore, &rows);
        assert_eq!(codes, expected, "{spread}");
    }
    let options = Options::default();
    // The minor diameter of the one, 33.92 to 34.15 mm, lies within that of the other, 33.67 to 34.19 mm.
    for codes in [["raleigh_26", "french"], ["french", "raleigh_26"]] {
        let within = left(&shells(&codes));
        assert!(told(Kind::Shell, &options, Feature::Bore, &within).is_empty());
    }
    // Two names of one thread.
    let one = left(&shells(&["bsc", "iso_6696"]));
    assert!(told(Kind::Shell, &options, Feature::Bore, &one).is_empty());
    // No half width of the shell of 61 mm is printed.
    let halves = left(&shells(&["pf30", "osbb61", "pf30a"]));
    let half = told(Kind::Shell, &options, Feature::HalfWidthNonDrive, &halves);
    assert_eq!(half, ["pf30a"]);
    // A thru-axle has no slot.
    let axle = |code: &str| Entry::Axle(find::<Axle>(code).unwrap());
    let axles = left(&[
        axle("qr_rear_130"),
        axle("ta_12x142"),
        axle("qr_rear_135"),
        axle("qr_front"),
    ]);
    let rear = Kind::Dropout(crate::standard::End::Both);
    let slots = told(rear, &options, Feature::Slot, &axles);
    assert_eq!(slots, ["ta_12x142", "qr_front"]);
}

/// Where hands differ nobody may turn with force, until a hand was seen on any side.
#[test]
fn the_hand_is_open_until_it_is_seen() {
    let open = |kind, observed: &[Observation], entries: &[Entry<'static>]| {
        hand_open(&Seen::gather(kind, None, observed).unwrap(), &left(entries))
    };
    let shell = Kind::Shell;
    assert!(open(shell, &[], &shells(&["french", "swiss"])));
    assert!(open(
        shell,
        &[],
        &shells(&["french", "fauber_threaded", "swiss"])
    ));
    assert!(!open(shell, &[], &shells(&["bsc", "iso_6696", "pf30"])));
    let seen = [Observation::hand(Side::NonDrive, Hand::Right)];
    assert!(!open(shell, &seen, &shells(&["french", "swiss"])));
    let any = Kind::Thread;
    assert!(open(
        any,
        &[],
        &threads(&["lockring_33_5", "freewheel_bmx"])
    ));
    assert!(!open(
        any,
        &[],
        &threads(&["lockring_33_5", "lockring_m33"])
    ));
    // The bolt of the universal hanger is left-hand, that of the others not printed.
    assert!(open(
        Kind::Hanger,
        &[],
        &threads(&["hanger_m10", "udh_hanger_bolt"])
    ));
}
