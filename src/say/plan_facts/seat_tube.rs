//! Facts, questions and tasks of the seat tube in words.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt;

use crate::fact::Worded;
use crate::judge::from_to;
use crate::plan::{SeatTubeAsk, SeatTubeFact, SeatTubeTask};
use crate::quantity::{in_mm, mm};

impl fmt::Display for SeatTubeFact {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Shape { oval, taper } => {
                let oval = oval.map(|by| format!("out of round by at least {}", in_mm(by)));
                let cone = taper.map(|by| {
                    let way = if by < mm(0.0) { "narrower" } else { "wider" };
                    format!("{} {way} towards the bottom", in_mm(by.abs()))
                });
                let both: [Option<String>; 2] = [oval, cone];
                f.write_str(&both.into_iter().flatten().collect::<Vec<_>>().join("; "))
            }
            Self::Spread { over } => write!(
                f,
                "no size may be named: the readings spread over {}. The tube is pinched, burred, thick with paint, or one reading is of something else",
                in_mm(*over)
            ),
            Self::BelowClear { read, clear } => write!(
                f,
                "the bore was read {} deep, and the tube is said to be clear to {}",
                in_mm(*read),
                in_mm(*clear)
            ),
            Self::UnderPaint { size: Some(size), agree, .. } => {
                let others: Vec<&str> = agree.iter().filter(|a| *a != size).map(|a| &**a).collect();
                match *others.as_slice() {
                    [] => write!(f, "{size} mm: no other size agrees with the readings"),
                    _ => write!(f, "{size} mm is possible, and so is {}", others.join(", ")),
                }
            }
            Self::UnderPaint { size: None, label, agree } => {
                if let Some(size) = label {
                    write!(f, "the sheet says {size} mm, and the readings are believed, not the label: ")?;
                }
                match agree.as_slice() {
                    [] => write!(f, "no listed size agrees with them"),
                    [one] => write!(f, "they agree with {one}"),
                    several => write!(
                        f,
                        "one of {}: the bore alone does not say which",
                        several.join(", ")
                    ),
                }
            }
            Self::Proved { size } => write!(f, "{size} mm, proved by a post or plug"),
            Self::ProvedSmaller { size, low, high } => write!(
                f,
                "{size} mm was proved there, and the bore is nowhere below {}",
                from_to(*low, *high)
            ),
            Self::Unlisted { size } => write!(f, "no seatpost of the size {size} is listed"),
            Self::OtherThanBelieved { believed, size } => write!(
                f,
                "the sheet says {believed}, the readings say {:.1}: the readings are believed, the label is not",
                in_mm(*size)
            ),
            Self::NoCoat { missing } => write!(
                f,
                "{} would be missing on diameter: no coat is so thick, so it is no paint, or not this size",
                in_mm(*missing)
            ),
            Self::LargeEnough { size } => {
                write!(f, "the bore is nowhere below {}: nothing to ream", in_mm(*size))
            }
            Self::AboutThere { by, size } => write!(
                f,
                "the bore is within {} of {}, less than these readings can tell: try the post",
                in_mm(*by),
                in_mm(*size)
            ),
            Self::ReamedTooFar { by, size } => write!(
                f,
                "{} larger than {} at its narrowest place: reamed too far, and no cut makes it smaller",
                in_mm(*by),
                in_mm(*size)
            ),
            Self::LargerPostOrShim => f.write_str(
                "a post of the next size that the bore takes, or a shim over the whole insertion with its slot on the slot of the tube",
            ),
            Self::ToSize { size } => write!(f, "the size, {:.1}", in_mm(*size)),
            Self::DepthAtMost { depth, by } => write!(f, "depth at most {} ({by})", in_mm(*depth)),
            Self::ClearTo { depth } => {
                write!(f, "{:.1} deep, clear no further", in_mm(*depth))
            }
            Self::Stock { most } => write!(
                f,
                "{} of stock, the most that a text leaves for a reamer: more is no paint, and probably another size",
                in_mm(*most)
            ),
            Self::Reamer { size } => write!(f, "{:.1} reamer", in_mm(*size)),
            Self::NoEdge => f.write_str(
                "no edge left at the entry or the slot: a carbon post must meet none",
            ),
        }
    }
}

impl Worded for SeatTubeFact {
    fn about(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::Shape { .. } => "shape of the bore",
            Self::Spread { .. }
            | Self::UnderPaint { .. }
            | Self::Proved { .. }
            | Self::ProvedSmaller { .. } => "size",
            Self::Unlisted { .. } | Self::OtherThanBelieved { .. } => "belief",
            Self::BelowClear { .. } | Self::DepthAtMost { .. } | Self::ClearTo { .. } => "depth",
            Self::NoCoat { .. } => "paint",
            Self::ReamedTooFar { .. } => "bore after the work",
            Self::LargeEnough { .. } | Self::AboutThere { .. } => "bore",
            Self::LargerPostOrShim
            | Self::ToSize { .. }
            | Self::Stock { .. }
            | Self::Reamer { .. }
            | Self::NoEdge => "",
        })
    }
}

impl fmt::Display for SeatTubeAsk {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Bore => f.write_str("bore of the seat tube at two depths, in two directions at each"),
            Self::BoreClean => f.write_str(
                "clean the bore, look for pinched ears and burrs, then measure it again",
            ),
            Self::ClearDepth => {
                f.write_str("how deep the bore is clear, to the first boss, butt or sleeve")
            }
            Self::WhichSize { .. } => f.write_str(
                "which size is it? Try a post or plug of known size, and measure the bore below the paint",
            ),
        }
    }
}

impl Worded for SeatTubeAsk {
    fn why(&self) -> Cow<'static, str> {
        match self {
            Self::Bore => {
                "a pinched or oval tube looks sound in one direction, and nothing is cut before the bore is known".into()
            }
            Self::BoreClean => {
                "the spread is larger than any step of the seatpost series".into()
            }
            Self::ClearDepth => "the reamer must stop before it".into(),
            Self::WhichSize { agree } if agree.is_empty() => {
                "the readings agree with no listed size, and paint hides the rest".into()
            }
            Self::WhichSize { agree } => format!(
                "the readings allow {}, and a reamer cannot put metal back",
                agree.join(", ")
            )
            .into(),
        }
    }
}

impl fmt::Display for SeatTubeTask {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Ream { size } => write!(f, "Ream the seat tube to {:.1}", in_mm(*size)),
        }
    }
}

impl Worded for SeatTubeTask {
    fn why(&self) -> Cow<'static, str> {
        match self {
            Self::Ream { .. } => {
                "take off the high spots only, the bore need not be bright all over; it comes first so that the frame can be held by a post".into()
            }
        }
    }
}
