//! Facts, questions and tasks of any place in words.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;
use core::fmt;

use crate::fact::Worded;
use crate::judge::Remedy;
use crate::plan::{CommonAsk, CommonFact, CommonTask, Earlier, GoesIn, Limited, PartDid, Reason};
use crate::quantity::{in_mm, mm};
use crate::standard::{Operation, Place, Workplace};

/// What is worked at a place by an operation.
pub(in crate::say) fn object(operation: Operation, place: &Place) -> String {
    let name = place.words();
    match (operation, Workplace::of(place)) {
        (Operation::Ream, Workplace::PressShell) => "bores of the shell".into(),
        (Operation::Ream, Workplace::Thread | Workplace::ShellThread) => {
            format!("hole of the {name}")
        }
        (Operation::Chase, Workplace::Thread)
            if !matches!(place, Place::Thread | Place::Pedal(_)) =>
        {
            format!("thread of the {name}")
        }
        _ => name.into(),
    }
}

/// What a maker limits.
const fn limited(what: Limited) -> &'static str {
    match what {
        Limited::Bore => "bore",
        Limited::Width => "width",
        Limited::Wall => "wall",
        Limited::Interference => "interference of the part",
        Limited::Clearance => "clearance of the part",
        Limited::Insertion => "insertion",
        Limited::Depth => "depth of cut",
        Limited::BoreDepth => "depth of the bore",
        Limited::CrownGap => "gap to the crown",
        Limited::Seat => "seat",
        Limited::Thickness => "thickness",
        Limited::Squareness => "out of square",
        Limited::Parallelism => "out of parallel",
        Limited::Length => "length",
        Limited::Minor => "minor diameter",
    }
}

const fn tried(did: PartDid, part: GoesIn) -> &'static str {
    match (did, part) {
        (PartDid::Fits, GoesIn::Slides) => "it slides with a light drag, without a knock",
        (PartDid::Fits, _) => "it started as it should",
        (PartDid::Tight, GoesIn::Presses) => "it needs force, as a pressed part does",
        (PartDid::Tight, GoesIn::Slides) => {
            "it does not go in by hand: paint, a burr, a pinched tube, or another size; never drive it in"
        }
        (PartDid::Tight, GoesIn::Lies) => "it does not drop in: paint, a burr, or another bearing",
        (PartDid::Loose, GoesIn::Presses) => {
            "it goes in with play: nothing presses, it must not be ridden"
        }
        (PartDid::Loose, GoesIn::Slides) => {
            "it goes in with play: a clamp that closes a gap breaks the post or the tube"
        }
        (PartDid::Loose, GoesIn::Lies) => "it drops in, as it should; it must not rock",
        (PartDid::Rocks, _) => "it rocks: it does not sit on its seat all round",
    }
}

const fn remedy(by: Remedy) -> &'static str {
    match by {
        Remedy::Clean => "clean it down to the metal",
        Remedy::RoundOut => "bring it round again, without cutting",
        Remedy::Ream => "ream it",
        Remedy::Deepen => "deepen it",
        Remedy::Face => "face it, with the frame maker's word on how much",
        Remedy::Spacer => "a spacer",
        Remedy::Chase => "chase it with the same thread",
        Remedy::OtherPart => "another part",
        Remedy::Shim => "a shim",
        Remedy::Sleeve => "a sleeve or insert, by a builder",
        Remedy::Refer => "the frame maker or a qualified builder",
    }
}

impl fmt::Display for CommonFact {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::MakersLimit { is, by, .. } => write!(f, "{is} ({by})"),
            Self::AtLeast { on, least, by } => {
                write!(f, "{} at least {} ({by})", limited(*on), in_mm(*least))
            }
            Self::AtMost { on, most, by } => {
                write!(f, "{} at most {} ({by})", limited(*on), in_mm(*most))
            }
            Self::Usual { says } => f.write_str(says),
            Self::Standard { is } => fmt::Display::fmt(is, f),
            Self::Note { said } => fmt::Display::fmt(said, f),
            Self::NotIdentified { because } => write!(f, "{because}"),
            Self::TakenAs { code, share } => write!(
                f,
                "{code}: it and what takes the same parts and the same cutter hold {:.0} % of what agrees with the readings",
                libm::floor(share * 100.0)
            ),
            Self::ProvedAndExcluded { name, by } => {
                write!(
                    f,
                    "{name} was proved there, and the {} rules it out",
                    by.words()
                )
            }
            Self::ProvedAndUnlisted { name } => {
                write!(
                    f,
                    "{name} was proved there, and no table lists it for this place"
                )
            }
            Self::Tried { did, part } => f.write_str(tried(*did, *part)),
            Self::LookFirst => f.write_str(
                "look for paint, chips and burrs first; then bore and part again by measurement",
            ),
            Self::Cure { by, size, at } => {
                f.write_str(remedy(*by))?;
                if let Some(size) = size {
                    write!(f, ", {}", in_mm(*size))?;
                }
                if !at.is_empty() {
                    write!(f, ", {at}")?;
                }
                Ok(())
            }
            Self::SitsFlat => f.write_str(
                "what sits there sits flat and does not rock; if it does, the frame maker decides",
            ),
            Self::Unguided { at, cut, why } => {
                write!(f, "the {}, for now: {why}", object(*cut, at))
            }
            Self::Waits { at, cut } => {
                write!(
                    f,
                    "the {}, for now: what it waits for is asked at its place",
                    object(*cut, at)
                )
            }
        }
    }
}

impl Worded for CommonFact {
    fn about(&self) -> Cow<'static, str> {
        match self {
            Self::MakersLimit { on, .. } => format!("maker's limit on {on}").into(),
            Self::AtLeast { on, .. } | Self::AtMost { on, .. } => limited(*on).into(),
            Self::Standard { .. } => "which standard".into(),
            Self::Note { .. } => "note".into(),
            Self::NotIdentified { .. } => "identification".into(),
            Self::TakenAs { .. } => "taken as".into(),
            Self::Tried { .. } => "part, tried after the last pass".into(),
            Self::Usual { .. }
            | Self::ProvedAndExcluded { .. }
            | Self::ProvedAndUnlisted { .. }
            | Self::LookFirst
            | Self::Cure { .. }
            | Self::SitsFlat
            | Self::Unguided { .. }
            | Self::Waits { .. } => "".into(),
        }
    }
}

/// What a cut lacks, as a question.
fn lacking(f: &mut fmt::Formatter<'_>, cut: Operation, at: &Place, lacks: &Reason) -> fmt::Result {
    let (verb, what) = (cut.verb(), object(cut, at));
    match lacks {
        Reason::MaterialUnknown => write!(f, "what is the {what} made of?"),
        Reason::NoConsent => write!(
            f,
            "does the frame maker allow to {verb} the {what}? In writing"
        ),
        Reason::TooClose {
            limit,
            needed,
            allowed,
        } => write!(
            f,
            "finer readings: {} needed and {} left under {limit} are too close to tell",
            in_mm(*needed),
            in_mm(*allowed)
        ),
        Reason::LimitUnknown { limit, measure } => write!(f, "{limit}: {measure}"),
        Reason::NoStop => {
            write!(
                f,
                "how much may come off the {what}? Depth of cut, or what must be left"
            )
        }
        Reason::Carbon
        | Reason::Plastic
        | Reason::Contradicted
        | Reason::IdentityOpen
        | Reason::MetalLost
        | Reason::MakersShape
        | Reason::NoPilot { .. }
        | Reason::NothingMayComeOff { .. }
        | Reason::BeyondLimit { .. } => write!(f, "{lacks}"),
    }
}

impl fmt::Display for CommonAsk {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::WhichIsSo { of, .. } => write!(f, "which of the two is so? {of}"),
            Self::Outside => f.write_str("the outside diameter there"),
            Self::PartOutside => f.write_str("outside diameter of the part where it will sit"),
            Self::ForCut { cut, at, lacks } => lacking(f, *cut, at, lacks),
            Self::WhatCalled { because } => write!(f, "what is it called? {}", because.remedy()),
            Self::ReadAgain { because } => f.write_str(because.remedy()),
            Self::IsItReally { name, .. } => write!(
                f,
                "is it really {name}? Look for traces of a thread or a sleeve, try the mating part, measure again in other places"
            ),
            Self::Doubt { because } => write!(f, "{} again", because.about.words()),
            Self::Tells { measure, .. } => f.write_str(measure.words()),
            Self::WhatIsIt { left, .. } if left.is_empty() => {
                f.write_str("what is it? The tables hold nothing that agrees")
            }
            Self::WhatIsIt { left, .. } => write!(
                f,
                "{}? No reading with these tools tells them apart: try the mating part",
                left.join(" or ")
            ),
        }
    }
}

impl Worded for CommonAsk {
    fn why(&self) -> Cow<'static, str> {
        match self {
            Self::WhichIsSo { .. } => "two statements of the sheet cannot both be true; nothing is cut here before it is cleared".into(),
            Self::ForCut { cut, lacks: Reason::MaterialUnknown, .. } => {
                format!("nobody may {} what may be carbon", cut.verb()).into()
            }
            Self::ForCut { lacks, .. } => format!("{lacks}").into(),
            Self::Outside => "the wall that is left decides".into(),
            Self::PartOutside => "the fit cannot be judged without it".into(),
            Self::WhatCalled { because } | Self::ReadAgain { because } => String::from(because.problem()).into(),
            Self::IsItReally { name, off } => format!(
                "it misses {name} by {}: either it is something else, or it is {name} and out of its limits",
                in_mm(*off)
            )
            .into(),
            Self::Doubt { because } => because.words().into(),
            Self::Tells { apart, .. } if apart.is_empty() => "nothing read so far names it".into(),
            Self::Tells { apart, .. } => format!("it would tell {} apart best", apart.join(", ")).into(),
            Self::WhatIsIt { .. } => "nothing is cut before it has a name".into(),
        }
    }
}

impl fmt::Display for CommonTask {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::DoNot { cut, at, .. } => {
                write!(f, "Do not {} the {}", cut.verb(), object(*cut, at))
            }
            Self::CoatByHand { at, cut } => write!(
                f,
                "Take the coating off the {} by hand: wood, plastic or a fine cloth",
                object(*cut, at)
            ),
        }
    }
}

impl Worded for CommonTask {
    fn why(&self) -> Cow<'static, str> {
        match self {
            Self::DoNot { why, .. } => format!("{why}").into(),
            Self::CoatByHand { .. } => "laminate is neither cut nor scraped".into(),
        }
    }
}

impl fmt::Display for Reason {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Carbon | Self::Plastic => "carbon and plastic are not cut here; the frame maker decides",
            Self::MaterialUnknown => "nobody cuts what may be carbon",
            Self::NoConsent => "metal in a carbon frame is bonded in: heat, force and cutting can part it",
            Self::Contradicted => "two statements of the sheet contradict each other",
            Self::IdentityOpen => "it is not known yet what it is",
            Self::MetalLost => {
                "metal is lost there, and cutting brings none back; the frame maker or a qualified builder decides: insert, next pattern, sleeve"
            }
            Self::MakersShape => "its angle and depth belong together and to the frame maker",
            Self::NoPilot { why } => return write!(f, "{why}"),
            Self::NothingMayComeOff { limit, over } if *over > mm(0.0) => {
                return write!(
                    f,
                    "nothing more may come off because of {limit}; {} too much is off already",
                    in_mm(*over)
                );
            }
            Self::NothingMayComeOff { limit, .. } => {
                return write!(f, "nothing may come off because of {limit}");
            }
            Self::BeyondLimit { limit, needed, allowed } => {
                return write!(
                    f,
                    "{} would have to come off, {limit} allows {}",
                    in_mm(*needed),
                    in_mm(*allowed)
                );
            }
            Self::TooClose { .. } => "a cut that may pass its limit is not begun",
            Self::LimitUnknown { .. } => "while it is unknown no cut is shown to be allowed",
            Self::NoStop => "no figure is published, and nothing else stops the cut",
        })
    }
}

impl Worded for Reason {}

impl fmt::Display for Earlier {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Stand => "the seat tube comes first, so that the frame can be held by a post",
            Self::CleanFirst => {
                "clean before cutting, so that the cutter follows metal and not paint"
            }
            Self::HoleFirst => "hole before thread",
            Self::CheckAfter => "check after the cut",
            Self::ThreadPilots => "thread before face: the facing tool pilots on the thread",
            Self::BothThreads => {
                "both threads before either face: the facing tool is guided through both"
            }
            Self::BorePilots => "bore before face: the facing tool pilots on the bore",
            Self::BothBores => {
                "both bores before either face: the pilot is centred in the opposite bore"
            }
            Self::AxlePilots => {
                "axle thread before brake mount: the facing tool pilots on the axle"
            }
            Self::LengthLast => "what comes off the faces lowers the stack: length last",
            Self::CrownCloser => "a lower face that was cut brings the crown closer",
        })
    }
}
