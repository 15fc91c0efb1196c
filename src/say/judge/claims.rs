//! Facts and questions of what somebody claimed, in words.

use alloc::borrow::Cow;
use alloc::format;
use core::fmt;

use super::sizes::one_of;
use crate::fact::Worded;
use crate::judge::{ClaimAsk, ClaimFact};
use crate::quantity::{Printed, in_mm};
use crate::thread::Side;

impl fmt::Display for ClaimFact {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::PerInch {
                rule,
                diameter,
                gives,
                used,
                ratio,
            } => write!(
                f,
                "{} per inch on {} is {}; {} is {ratio:.1} times that",
                in_mm(*rule),
                in_mm(*diameter),
                in_mm(*gives),
                in_mm(*used)
            ),
            Self::Ratio { claimed, is } => write!(f, "{claimed} was claimed, and it is {is:.1}"),
            Self::NoBicycleLimit => f.write_str(
                "a general machining rule is no bicycle limit: hold the fit itself against the maker's window",
            ),
            Self::Row {
                nominal,
                core,
                pitch,
                agree,
            } => {
                let (nominal, core) = (in_mm(*nominal), in_mm(*core));
                if *agree {
                    write!(f, "{nominal} and core {core} agree with {pitch}")
                } else {
                    write!(
                        f,
                        "{nominal} and core {core} do not agree with {pitch}: at least one of the three is wrong"
                    )
                }
            }
            Self::SaidTwice { written } => write!(f, "{} stands too", in_mm(*written)),
            Self::Slip { written, nominal } => {
                write!(f, "{} is a slip for {}", in_mm(*written), in_mm(*nominal))
            }
            Self::NominalSlip { written, nominal } => write!(
                f,
                "{} agrees with core and pitch, the nominal {} does not",
                in_mm(*written),
                in_mm(*nominal)
            ),
            Self::Contradict { written, nominal } => write!(
                f,
                "{} and {} contradict each other, and core and pitch do not tell which is right",
                in_mm(*written),
                in_mm(*nominal)
            ),
            Self::Finer {
                fine,
                coarse,
                finer,
            } => {
                let not = if *finer { "" } else { "not " };
                write!(f, "{fine} is {not}finer than {coarse}")
            }
            Self::Column {
                column,
                pitch,
                of,
                listed,
            } => match listed {
                Some(listed) if listed == pitch => {
                    write!(f, "{pitch} is the {column} pitch of this size")
                }
                Some(listed) => write!(
                    f,
                    "{pitch}, a pitch of the {of} series, stands in the {column} column, which has {listed} for this size"
                ),
                None => write!(
                    f,
                    "{pitch}; the {column} series has no pitch for this size here"
                ),
            },
            Self::Tape {
                around,
                diameter,
                posts,
            } => {
                let around = in_mm(*around);
                write!(f, "a tape reading of {around} is a diameter of {diameter}: ")?;
                match posts.len() {
                    0 => f.write_str("no listed size lies there"),
                    1 => f.write_str(&one_of(posts)),
                    _ => write!(f, "{}; not enough to buy a post", one_of(posts)),
                }
            }
            Self::SlotsAlong { at } => write!(
                f,
                "a slot in the tab along that of the dropout ({:.0}°) keeps the caliper where it stands against the axle",
                at.in_unit()
            ),
            Self::Strays { travel, by } => write!(
                f,
                "over {} of travel the caliper strays {} from where it should stand against the axle",
                in_mm(*travel),
                in_mm(*by)
            ),
            Self::TabForBuilder => f.write_str(
                "brakes: a tab is for a qualified builder; its position has a published tolerance of 0.1 mm",
            ),
            Self::Turns { side, hand, .. } => write!(
                f,
                "{hand}-hand on the {} side: loosens {}, seen facing that side",
                match side {
                    Side::Drive => "drive",
                    Side::NonDrive => "non-drive",
                },
                hand.loosen()
            ),
            Self::NoMoreTorque => f.write_str(
                "no more torque until the hand is known: the wrong way tightens it and tears the shell",
            ),
        }
    }
}

impl Worded for ClaimFact {
    fn about(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::PerInch { .. } => "rule",
            Self::Ratio { .. } => "ratio",
            Self::Row { .. } => "row",
            Self::SaidTwice { .. }
            | Self::Slip { .. }
            | Self::NominalSlip { .. }
            | Self::Contradict { .. } => "designation",
            Self::Finer { .. } => "fine against coarse",
            Self::Column { column, .. } => return format!("{column} column").into(),
            Self::Tape { .. } => "post",
            Self::SlotsAlong { .. } | Self::Strays { .. } => "slots",
            Self::Turns { pattern, .. } => return pattern.clone(),
            Self::NoBicycleLimit | Self::TabForBuilder | Self::NoMoreTorque => "",
        })
    }
}

impl fmt::Display for ClaimAsk {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::SecondTable => "the row in a second table",
            Self::WholeColumn => "the whole column against a second source",
            Self::Diameter => "the diameter itself on two axes",
            Self::StayClearance => "clearance of the caliper to the stay over the whole travel",
            Self::OtherSide => "a known cup tried in the other side, once it is out",
            Self::PitchAndHand => "pitch and hand of the thread where it shows",
        })
    }
}

impl Worded for ClaimAsk {
    fn why(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::SecondTable => "a slip in one cell says nothing of the others: check the column",
            Self::WholeColumn => "one wrong row is rarely alone: mending it mends no column",
            Self::Diameter => "sizes step by 0.2 mm, which a tape cannot tell",
            Self::StayClearance => "a right slot still needs room to slide",
            Self::OtherSide => {
                "an English cup rattles in a French shell, and a French cup does not enter an English one"
            }
            Self::PitchAndHand => "flats, labels and the country only make one more likely",
        })
    }
}
