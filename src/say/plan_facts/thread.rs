//! Facts, questions and tasks of threads in words.

use alloc::borrow::Cow;
use alloc::vec::Vec;
use core::fmt;

use crate::fact::Worded;
use crate::judge::extremes;
use crate::plan::{ThreadAsk, ThreadFact, ThreadTask};
use crate::quantity::in_mm;
use crate::say::judge::spread;
use crate::standard::ThreadedPart;

impl fmt::Display for ThreadFact {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::EntriesDiffer { first, other, field } => {
                write!(f, "{first} and {other} speak of one place, and their `{field}` differ")
            }
            Self::FrontHanger => f.write_str("a derailleur hanger at the front: no frame has one there"),
            Self::PartIsOther { taken_for, part } => write!(f, "taken for {taken_for}, and its mating part is {part}"),
            Self::PitchIsOther { read, told_by, told } => write!(f, "the pitch gauge says {read}, the {told_by} {told}"),
            Self::HandIsOther { found, listed } => {
                write!(f, "{found}-hand found, {listed}-hand by the tables for this place")
            }
            Self::Is { size, by_pitch, by_part, proved, taken_for } => {
                let by = [
                    (*by_pitch, "the pitch gauge"),
                    (*by_part, "the mating part"),
                    (*proved, "what was proved"),
                    (*taken_for && !proved, "its name in the sheet"),
                ];
                let by: Vec<&str> = by.iter().filter(|b| b.0).map(|b| b.1).collect();
                if by.is_empty() {
                    write!(f, "{size}: the only listed thread of this place")
                } else {
                    write!(f, "{size}, by {}", by.join(" and "))
                }
            }
            Self::BoreNotHeld { read } => write!(
                f,
                "{}; not held against limits, since threads with other bores look the same by what was read",
                spread(&extremes(read), read.len())
            ),
            Self::TakesPart => f.write_str("the thread: takes its part by hand"),
            Self::EndOfThread => f.write_str(
                "the end of the thread, and as soon as bright metal comes off its flanks",
            ),
            Self::DepthOfPart => f.write_str("the depth that the part needs, and what lies behind the hole"),
            Self::Cutter { kind, size, hand } => write!(f, "{size} {kind}, {hand}-hand"),
            Self::HoleCutter { within } => write!(f, "drill or reamer that finishes inside {within}"),
            Self::GuidedByBoth => f.write_str(
                "the thread itself, with the chaser of the other side: both are started by hand and guide each other",
            ),
            Self::CheckHole { limits, by } => write!(f, "minor diameter {limits} ({by}), with plain plugs"),
            Self::PartDecides { size } => write!(
                f,
                "no limits are published for {size}: the mating part decides"
            ),
            Self::GaugeBeforeVerdict => f.write_str(
                "no verdict before the gauge: a crossed thread that takes a part by hand may still have lost its pitch diameter",
            ),
            Self::HoleAgain => f.write_str("the hole with a caliper in two directions"),
            Self::AlignNewOne => {
                f.write_str("alignment of the new one against the wheel, before the derailleur goes on")
            }
            Self::RunsIn { part } => f.write_str(match part {
                ThreadedPart::Axle => "the axle screws in by hand over its whole thread and seats without play",
                ThreadedPart::Hanger => "the derailleur bolt screws in by hand to its shoulder",
                ThreadedPart::Pedal => "the pedal screws in by hand over its whole thread",
                _ => "its screw goes in by hand over the whole thread",
            }),
        }
    }
}

impl Worded for ThreadFact {
    fn about(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::BoreNotHeld { .. } => "bore over the crests",
            Self::EndOfThread | Self::DepthOfPart => "depth of thread",
            Self::HoleCutter { .. }
            | Self::CheckHole { .. }
            | Self::PartDecides { .. }
            | Self::HoleAgain => "hole",
            Self::AlignNewOne | Self::FrontHanger => "hanger",
            Self::EntriesDiffer { .. }
            | Self::PartIsOther { .. }
            | Self::PitchIsOther { .. }
            | Self::HandIsOther { .. }
            | Self::Is { .. }
            | Self::TakesPart
            | Self::Cutter { .. }
            | Self::GuidedByBoth
            | Self::GaugeBeforeVerdict
            | Self::RunsIn { .. } => "thread",
        })
    }
}

impl fmt::Display for ThreadAsk {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Go => f.write_str("does the mating part or a GO gauge screw through by hand?"),
            Self::NotGo => {
                f.write_str("NOT GO gauge at both ends, or another part that is known to be good")
            }
            Self::Hole { wanted } => write!(f, "hole diameter, in two directions; wanted {wanted}"),
            Self::Pitch { .. } => f.write_str("pitch, with a gauge over six threads or more"),
            Self::Hand => f.write_str("which hand is the thread? Look at its slope"),
            Self::ReallyThis { size } => {
                write!(
                    f,
                    "is it really {size}? No table lists that thread for this place"
                )
            }
            Self::Which { code } => write!(
                f,
                "which thread is it? By the readings it would be {code}, of which the tables know no thread at this place"
            ),
        }
    }
}

impl Worded for ThreadAsk {
    fn why(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::Go => "a sound thread is left alone",
            Self::NotGo => "loose with one part says nothing yet: the part may be the small one",
            Self::Hole { .. } => "the hole decides how much thread there will be",
            Self::Pitch { painted: true } => {
                "paint narrows the hole, the pitch stays; the wrong chaser cuts a second thread across the first"
            }
            Self::Pitch { painted: false } => {
                "a label proves nothing; the wrong chaser cuts a second thread across the first"
            }
            Self::Hand => {
                "this place is made with a left-hand thread too, and a chaser of the wrong hand destroys it"
            }
            Self::ReallyThis { .. } | Self::Which { .. } => {
                "a chaser of another thread cuts a second one across the first"
            }
        })
    }
}

impl fmt::Display for ThreadTask {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Replace { what, .. } => write!(f, "Replace the {what}"),
            Self::Chase {
                what, size, hand, ..
            } => write!(f, "Chase the {what}: {size}, {hand}-hand"),
            Self::Tap { what, size, hand } => write!(f, "Tap the {what}: {size}, {hand}-hand"),
            Self::OpenHole {
                what, least, most, ..
            } => {
                write!(
                    f,
                    "Open the hole of the {what} to between {} and {}",
                    in_mm(*least),
                    in_mm(*most)
                )
            }
            Self::NoHole { what, size } => write!(
                f,
                "Do not tap the {what}: no hole size is published for {size}"
            ),
            Self::HoleTooLarge { what } => {
                write!(f, "Do not tap the {what}: the hole is too large")
            }
            Self::Align { what } => write!(f, "Check the alignment of the {what}"),
        }
    }
}

impl Worded for ThreadTask {
    fn why(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::Replace { lost: true, .. } => {
                "its thread has lost metal, and this part can be had new"
            }
            Self::Replace { lost: false, .. } => {
                "a crossed thread may have lost its pitch diameter, and this part can be had new"
            }
            Self::Chase { crossed: true, .. } => {
                "clean first, then follow the old thread from its good end; stop at the first resistance that a hand feels"
            }
            Self::Chase { painted: true, .. } => {
                "paint in the thread; the chaser takes it out and no more"
            }
            Self::Chase { .. } => "the thread is fouled or rough at its start",
            Self::Tap { .. } => "the thread is not cut yet",
            Self::OpenHole {
                least, hole, size, ..
            } => {
                return alloc::format!(
                    "{} is {} too small for {size}: the tap would jam or break",
                    in_mm(*hole),
                    in_mm(*least - *hole)
                )
                .into();
            }
            Self::NoHole { .. } => "the tap's maker names the hole, and the frame maker the thread",
            Self::HoleTooLarge { .. } => {
                "too little thread would be left; insert or next pattern, by the frame maker or a qualified builder"
            }
            Self::Align { .. } => "a hanger that was worked at is not straight until that is shown",
        })
    }
}
