//! Facts and questions of two parts that fit, or do not, in words.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt;

use super::sizes::{fit_words, one_of};
use crate::evidence::Text;
use crate::fact::Worded;
use crate::fit::{Feature, Out};
use crate::judge::{Felt, FitAsk, FitFact};
use crate::measure::instruments;
use crate::quantity::{in_mm, settled_mm};
use crate::standard::Joint;

impl fmt::Display for FitFact {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::OnDiameter {
                tightest, loosest, ..
            } => write!(f, "{} on diameter", fit_words(*tightest, *loosest)),
            Self::Member { member, .. } => write!(f, "{member}"),
            Self::Window { wanted, .. } => write!(f, "{wanted}"),
            Self::Quoted {
                by, wanted, figure, ..
            } => write!(
                f,
                "{by} prints {wanted} of {}, without limits",
                in_mm(*figure)
            ),
            Self::NoWindow { reason, .. } => write!(f, "no window is published: {reason}"),
            Self::WindowsDisagree { .. } => {
                f.write_str("the published windows disagree: the maker of the part decides")
            }
            Self::Gap { .. } => f.write_str("meant to press, and there is a gap: it does not hold"),
            Self::TooLarge { .. } => {
                f.write_str("meant to slide in, and the part is larger than the hole")
            }
            Self::PressesUnlimited { .. } => f.write_str(
                "it presses everywhere; how much it may press nobody prints for this joint",
            ),
            Self::PressOrGap { .. } => f.write_str("press or gap: not told by these readings"),
            Self::SlipByDesign { .. } => f.write_str(
                "a slip fit by design: going in by hand is no fault, and no limit is published for its gap",
            ),
            Self::Screwed { .. } => f.write_str("held by its thread, not by this fit"),
            Self::NobodyPrints { .. } => f.write_str(
                "how much is right nobody publishes for this joint: the maker of the part has to say",
            ),
            Self::LooserBare { .. } => {
                f.write_str("read over a coating, and bare metal is looser still")
            }
            Self::OffTheSizeSold { sold_as, off } => {
                let off = match off {
                    Out::Hole => "the hole is off",
                    Out::Shaft => "the inner part is off",
                    Out::Both => "both members are off",
                    Out::Neither => "neither member is off",
                    Out::CannotTell => "these readings do not tell which of the two is off",
                };
                write!(f, "against {} as sold, {off}", in_mm(*sold_as))
            }
            Self::TryPost { size, leaves } => write!(
                f,
                "try a post of {:.1} mm first, which leaves {} by its nominal size",
                settled_mm(*size),
                in_mm(*leaves)
            ),
            Self::ShimWall { joint, wall } => write!(
                f,
                "for the present {} a shim has a wall of {}: half the gap",
                match joint {
                    Joint::Seatpost => "post",
                    _ => "part",
                },
                in_mm(*wall)
            ),
            Self::Felt { felt, press, .. } => f.write_str(felt_words(*felt, *press)),
            Self::NotKnown { .. } => f.write_str(
                "neither felt nor measured: nothing is shown without the two diameters",
            ),
            Self::Mind { caution } => f.write_str(caution.words()),
            Self::MindJoint { joint } => f.write_str(joint.caution()),
            Self::Grows { by } => write!(f, "changes by {}", in_mm(*by)),
            Self::ExpansionAverage => f.write_str(
                "coefficients of expansion are averages; joints of plastic or laminate do not follow this sum",
            ),
            Self::NoSize { spread } => write!(
                f,
                "a spread of {} is not a size: the bore is pinched, bulged, burred or worn, and no size is named before it is round",
                in_mm(*spread)
            ),
            Self::OneSize { spread } => write!(
                f,
                "one size, with a spread of {}; no roundness limit is published",
                in_mm(*spread)
            ),
            Self::OneReading => f.write_str("one reading shows no shape"),
            Self::Note { note } => f.write_str(note),
            Self::WeakerThanAsked { asked } => write!(
                f,
                "this rests on weaker evidence than was asked for ({}), so nothing is shown",
                asked.words()
            ),
        }
    }
}

const fn felt_words(felt: Felt, press: bool) -> &'static str {
    match (felt, press) {
        (Felt::GoesByHand, true) => "goes by hand where it must be pressed: no interference",
        (Felt::GoesByHand, false) => "goes by hand, as a slip fit does by design",
        (Felt::Rocks, true) => "rocks where it must be pressed",
        (Felt::Rocks, false) => {
            "rocks: more gap than it should have, or a worn bearing; measure before naming it"
        }
        (Felt::TurnedInUse, true) => "turned on its seat in use: proof that it slips",
        (Felt::TurnedInUse, false) => "turned in use: creep of a slip fit, a cause to look for",
        (Felt::NeedsForce, true) => {
            "needs force, as a press fit does; how much it presses is not felt"
        }
        (Felt::NeedsForce, false) => {
            "needs force where it should slide: dirt, burr, paint, shape or size"
        }
        (Felt::HoleLooseWithSeveral, _) => {
            "loose with several inner parts: the hole is the common one, so likely worn, stretched or over-cut; measure both"
        }
        (Felt::ShaftLooseInSeveral, _) => {
            "loose in several holes: the inner part is the common one, so likely undersize or worn; measure both"
        }
    }
}

impl Worded for FitFact {
    fn about(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::OnDiameter { joint, .. }
            | Self::Quoted { joint, .. }
            | Self::NoWindow { joint, .. }
            | Self::WindowsDisagree { joint }
            | Self::Gap { joint }
            | Self::TooLarge { joint }
            | Self::PressesUnlimited { joint }
            | Self::PressOrGap { joint }
            | Self::SlipByDesign { joint }
            | Self::Screwed { joint }
            | Self::NobodyPrints { joint }
            | Self::LooserBare { joint }
            | Self::ShimWall { joint, .. }
            | Self::Felt { joint, .. }
            | Self::NotKnown { joint }
            | Self::Window { joint, .. }
            | Self::MindJoint { joint } => joint.words(),
            Self::Member { member, .. } => match member {
                Feature::Hole => "hole",
                Feature::Shaft => "inner part",
            },
            Self::OffTheSizeSold { .. } => "size sold",
            Self::TryPost { .. } => "next post",
            Self::Mind { .. } | Self::ExpansionAverage | Self::WeakerThanAsked { .. } => "",
            Self::Grows { .. } => "clearance",
            Self::NoSize { .. } | Self::OneSize { .. } | Self::OneReading => "bore",
            Self::Note { .. } => "note",
        })
    }
    fn size_count(&self) -> Option<usize> {
        match self {
            Self::Member { count, .. } => Some(*count),
            Self::Window { .. } => Some(0),
            _ => None,
        }
    }
}

impl fmt::Display for FitAsk {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::MakersFit => "the fit that the maker of the part wants",
            Self::Finer => {
                "the bore with a bore gauge and the outside with a micrometer, two axes at two depths"
            }
            Self::TryByHand => {
                "the part tried by hand: it slides with a light drag and does not knock; or the clearance that its maker writes"
            }
            Self::BothMembers => "largest and smallest diameter of both members",
            Self::BareMetal { member } => match member {
                Feature::Hole => "the bore on bare metal, the coating taken off by hand first",
                Feature::Shaft => {
                    "the outside of the part on bare metal, the coating taken off by hand first"
                }
            },
            Self::Bore => "largest and smallest bore, two axes at two depths",
            Self::Outside => "outside diameter of the inner part, two axes",
            Self::Shape => "the bore on two axes at the mouth, at the lug and below",
            Self::Size { .. } => "the size",
        })
    }
}

/// The instruments of these codes, by name as far as the first comma: behind it stand resolution and range.
fn names(codes: &[Text]) -> Vec<Text> {
    let all = instruments().iter();
    let named = all.filter(|i| codes.contains(&i.code));
    let short = named.filter_map(|i| i.name.split(',').next());
    short.map(|name| String::from(name).into()).collect()
}

impl Worded for FitAsk {
    fn why(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::MakersFit => "no limit is published for this joint",
            Self::Finer => {
                "a caliper cannot settle a press fit, and one diameter says nothing of shape"
            }
            Self::TryByHand => "the published windows disagree, and no reading changes that",
            Self::BothMembers => "the gap at its widest decides, and the maker's own limit",
            Self::BareMetal { .. } => "a coating counts on both sides",
            Self::Bore => "the gap decides which cure is open",
            Self::Outside => "tells which of the two is out",
            Self::Shape => "tells a pinched mouth from a bulge and from wear",
            Self::Size {
                limits,
                can,
                cannot,
                ..
            } => {
                let (can, cannot) = (names(can), names(cannot));
                return Cow::Owned(match (can.is_empty(), cannot.is_empty()) {
                    (false, true) => format!("{} can decide {limits}", one_of(&can)),
                    (false, false) => format!(
                        "{} cannot decide {limits}; {} can",
                        one_of(&cannot),
                        one_of(&can)
                    ),
                    (true, false) => format!(
                        "{} cannot decide {limits}: a finer instrument is needed",
                        one_of(&cannot)
                    ),
                    (true, true) => {
                        format!("of no instrument here the uncertainty at {limits} is known")
                    }
                });
            }
        })
    }
}
