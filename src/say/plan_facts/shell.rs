//! Facts, questions and tasks of the bottom-bracket shell in words.

use alloc::borrow::Cow;
use alloc::format;
use core::cmp::Ordering;
use core::fmt;

use crate::fact::Worded;
use crate::measure::settled_cmp;
use crate::plan::{ShellAsk, ShellFact, ShellTask};
use crate::quantity::{in_mm, mm, settled_mm};
use crate::thread::Side;

const fn of_side(side: Side) -> &'static str {
    match side {
        Side::Drive => "drive side",
        Side::NonDrive => "non-drive side",
    }
}

impl fmt::Display for ShellFact {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Thread { thread } => f.write_str(thread),
            Self::ThreadLost => f.write_str("worn or torn out; which thread it was is not settled"),
            Self::UntilNamed => f.write_str("it waits until the shell is named"),
            Self::NoThread => f.write_str("there is no thread in this pattern"),
            Self::SpeaksOfThread { pattern } => {
                write!(f, "the sheet speaks of a thread, and {pattern} has none")
            }
            Self::BothChasers => f.write_str(
                "the thread itself, with the chaser of the other side: both are started by hand and guide each other",
            ),
            Self::Turns { hand, .. } => write!(
                f,
                "{hand}-hand: tightens {}, loosens {}, seen from that side",
                hand.tighten(),
                hand.loosen()
            ),
            Self::OtherHand { side, found, wanted, pattern } => write!(
                f,
                "{}: {found}-hand found, {wanted}-hand by the pattern {pattern}; it was read wrong, retapped, or is another pattern",
                of_side(*side)
            ),
            Self::BackToFront { pattern } => write!(
                f,
                "both hands are those of {pattern} with the sides exchanged: the shell is in back to front, or was tapped so; cups go in only on the wrong sides, where riding can loosen them"
            ),
            Self::WidthNotListed { pattern } => {
                write!(f, "{pattern}, by its thread, of a width that no table lists for it")
            }
            Self::ProvedOther { proved, named } => {
                write!(f, "{proved} was proved there, and the readings say {named}")
            }
            Self::PartsBind { pitch, read, turns, .. } => write!(
                f,
                "they start and then bind: {pitch} against {read}, half a pitch out after {turns:.0} turns"
            ),
            Self::Width { .. } => f.write_str("width"),
            Self::Lean { drive_side_out_by: by } => match settled_cmp(*by, mm(0.0)) {
                Ordering::Less => write!(
                    f,
                    "{} further out on the non-drive side: a kit for a symmetrical shell of the same width does not fit",
                    in_mm(-*by)
                ),
                Ordering::Greater => write!(f, "{} further out on the drive side", in_mm(*by)),
                Ordering::Equal => f.write_str("equally far from the middle plane on both sides"),
            },
            Self::HalfWidth { read, listed, .. } => write!(
                f,
                "{} read, {} by the pattern, {:+.3} mm apart",
                in_mm(*read),
                in_mm(*listed),
                settled_mm(*read - *listed)
            ),
            Self::LeastWidth { least, by, shared } => {
                let half = if *shared { ", half of it a side" } else { "" };
                write!(f, "least width {} ({by}){half}", in_mm(*least))
            }
            Self::LeastWidthNow { least, by } => {
                write!(f, "least width {} ({by}), by the width that is left", in_mm(*least))
            }
            Self::WidthNotKnown => f.write_str("least width of the shell"),
            Self::TooWide { over, most, by } => write!(
                f,
                "the shell is {} wider than {} ({by}): its faces bring it back to that",
                in_mm(*over),
                in_mm(*most)
            ),
            Self::TooNarrow => f.write_str(
                "narrower than its window: nothing more may come off; spacers or another unit, by the crank maker's sheet",
            ),
            Self::OtherWindow { window, of, this } => {
                write!(f, "the window {window} is for another shell ({of}), this one is {this}")
            }
            Self::SlipFit => f.write_str(
                "a slip fit by design: no interference is no fault, but the bearing must not rock in its seat",
            ),
            Self::Reamer { within } => write!(f, "reamer that finishes inside {within}"),
        }
    }
}

impl Worded for ShellFact {
    fn about(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::Turns { side, .. } => return format!("hand, {}", of_side(*side)).into(),
            Self::HalfWidth { side, .. } => {
                return format!("half width, {}", of_side(*side)).into();
            }
            Self::PartsBind { parts, .. } => return format!("parts for {parts}").into(),
            Self::Thread { .. }
            | Self::ThreadLost
            | Self::NoThread
            | Self::SpeaksOfThread { .. } => "thread",
            Self::OtherHand { .. } | Self::BackToFront { .. } => "hand",
            Self::Width {
                after_work: true, ..
            } => "width after the work",
            Self::Width { .. }
            | Self::WidthNotListed { .. }
            | Self::LeastWidth { .. }
            | Self::LeastWidthNow { .. }
            | Self::WidthNotKnown
            | Self::TooWide { .. }
            | Self::TooNarrow
            | Self::OtherWindow { .. } => "width",
            Self::Lean { .. } => "half widths",
            Self::SlipFit => "fit",
            Self::UntilNamed
            | Self::BothChasers
            | Self::ProvedOther { .. }
            | Self::Reamer { .. } => "",
        })
    }
    fn size_count(&self) -> Option<usize> {
        if let Self::Width { count, .. } = self {
            Some(*count)
        } else {
            None
        }
    }
}

impl fmt::Display for ShellAsk {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::WhichOf { one, other } => {
                return write!(
                    f,
                    "is it {one}, or {other} as the crank's window says? Hand of each side, or a cup tried by hand"
                );
            }
            Self::FinerWidth { limit } => {
                return write!(f, "width again, finer: it lies too close to {}", in_mm(*limit));
            }
            Self::Squareness { out_by } => {
                return write!(
                    f,
                    "how square must this face be? The two are out of parallel by {}",
                    in_mm(*out_by)
                );
            }
            Self::Names => {
                "is there a thread? Its pitch, over six threads or more; else the bore, the width, and the hand on each side"
            }
            Self::Hand => "which hand is the thread? Look at its slope",
            Self::Bore => "bore in two directions at each end",
            Self::BareBore => {
                "bore on bare metal, in two directions at each end: take the coating off there by hand"
            }
            Self::BoreLimits => "bore limits from the frame maker's drawing",
            Self::Outside => "outside diameter of the shell",
            Self::Width => "width over the faces at three places",
            Self::Crank => {
                "which crank will be fitted, and which least width does its maker or the frame's allow?"
            }
            Self::Heights => {
                "heights of the face at 5, 7 or 9 places all round, with its inner, outer and probe radius"
            }
            Self::FinerHeights => "heights of both faces again, finer",
        })
    }
}

impl Worded for ShellAsk {
    fn why(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::Names => "nothing is cut in a shell before it is named",
            Self::WhichOf { .. } => "the readings can be either, and the window is for one of them",
            Self::Hand => "no source that can be relied on states the hand of this side",
            Self::Bore => {
                "a press shell is known by its bore, and a single narrow place may be out of round and not small"
            }
            Self::BareBore => "a press shell is known by its bore",
            Self::BoreLimits => {
                "nobody publishes limits for this bore: the mating part and the frame maker decide"
            }
            Self::Outside => "the wall of a press shell is thin, and what is left of it decides",
            Self::Width => "what comes off a face comes off the width",
            Self::FinerWidth { .. } => "whether the unit fits is not shown either way",
            Self::Crank => {
                "facing makes the shell narrower, and only they say how narrow it may be; a limit on `width` answers it too"
            }
            Self::Heights => "only they tell how the face lies, and so what must come off it",
            Self::FinerHeights => {
                "whether the two faces are parallel enough is not shown either way"
            }
            Self::Squareness { .. } => {
                "the faces are out of parallel by more than their maker allows; facing both would cure it"
            }
        })
    }
}

impl fmt::Display for ShellTask {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Ream {
                least,
                most: Some(most),
            } => write!(
                f,
                "Ream the bores of the shell to between {} and {}",
                in_mm(*least),
                in_mm(*most)
            ),
            Self::Ream { least, most: None } => {
                write!(f, "Ream the bores of the shell to {}", in_mm(*least))
            }
        }
    }
}

impl Worded for ShellTask {
    fn why(&self) -> Cow<'static, str> {
        match self {
            Self::Ream { .. } => {
                "too tight a bore squeezes cup and bearing until they run rough".into()
            }
        }
    }
}
