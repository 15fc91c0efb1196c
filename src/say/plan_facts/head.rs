//! Facts, questions and tasks of head tube, crown and steerer in words.

use alloc::borrow::Cow;
use alloc::format;
use core::fmt;

use crate::fact::Worded;
use crate::judge::from_to;
use crate::measure::Reading;
use crate::plan::{HeadAsk, HeadFact, HeadTask};
use crate::quantity::in_mm;
use crate::standard::Place;

/// `1.540 mm ± 0.010 mm`.
fn known(f: &mut fmt::Formatter<'_>, reading: &Reading, what: &str) -> fmt::Result {
    let (size, u) = (reading.value(), reading.expanded_uncertainty());
    write!(f, "{} ± {} {what}", in_mm(size), in_mm(u))
}

impl fmt::Display for HeadFact {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Proved { seat } => return write!(f, "{seat}: proved by a gauge or its part"),
            Self::ProvedElsewhere { seat, bore } => return write!(f, "{seat} was proved there, and a bore of {} is none", in_mm(*bore)),
            Self::TakenFor { seat } => return write!(f, "taken for {seat}, as it is called: a label proves nothing, so it is read on bare metal first"),
            Self::Wall { left } => return known(f, left, "now: half of outside less bore"),
            Self::WallReamed { left, usual } => {
                let ends = usual.and_then(|u| u.lower().known().zip(u.upper().known()));
                let usual = ends.map(|(low, high)| format!("builders use {}, ", from_to(low, high)));
                return write!(f, "wall left: {}, half of outside less bore; {}a least wall is not published", in_mm(*left), usual.unwrap_or_default());
            }
            Self::CrownGap { gap } => return write!(f, "{gap}; no number is published"),
            Self::NoVerdict { problem } => return f.write_str(problem),
            Self::PartStays { part } => return write!(f, "{part} stays, and its bore and face with it: forcing it out costs more than it is worth. Mask it, and check that its bearing turns"),
            Self::PartInBore => "a part sits in this bore; take it out first",
            Self::OppositePartStays => "the opposite bore, in which the cutter is centred, is filled by a part that stays; whether a cutter guided by its own bore or by a rod through that part may be used is for the frame maker",
            Self::OppositePartIn => "the opposite bore, in which the cutter is centred, is filled by a part; take that out first",
            Self::SeatNotNamed => "the seat is not named yet, and where a bearing lies in the frame itself the face is not cut",
            Self::TooShallowToFace => "the bore is too shallow for its part, and facing makes it shallower; that is settled first",
            Self::IntegratedSeat => "the seat itself: it is neither reamed nor faced here, its angle and depth belong together",
            Self::IntegratedFace => "the face: nothing is clamped against it, the cover only passes it; cutting it eats the gap of the cover",
            Self::FaceUnderPart { part } => return write!(f, "the face: {part} stays in, and nothing reaches the face under it"),
            Self::OutOfParallel => "the two faces are out of parallel by more than their limit",
            Self::ParallelismWaits => "parallelism of both faces: waits for the heights of both",
            Self::FaceBothEnds => "face both ends with the pilot centred in the opposite bore, where that is permitted; else the frame maker",
            Self::NotReamed => "not reamed: where it is too small a reamer would help, where it is too large nothing that cuts does",
            Self::LargerCup => "another cup, with a larger outside, by its maker's word",
            Self::InsertOrTube => "an insert or a new head tube, by the frame maker or a qualified builder",
            Self::NeverByForce => "never by filing, a punch, raised burrs or glue alone",
            Self::WallTooThin => "a wall under its maker's limit does not grow again: the frame maker decides whether it may be used",
            Self::DepthOutside => "a bore outside its maker's depth: too shallow is deepened by permit only, too deep is for the frame maker",
            Self::StandsProud { by } => return write!(f, "a cup made for the listed depth stands {} proud: take one that goes in less, have this one shortened by its maker's word, or have the bore deepened where the frame maker allows it", in_mm(*by)),
            Self::OtherLowerCup => "gap to the crown out of its maker's limits: another lower cup or race, never by cutting",
            Self::CupInSeat { part, seat, larger } => {
                let larger = if *larger { ", smaller than it" } else { "" };
                return write!(f, "{part} is meant for a pressed bore, and {seat} is a seat in which a bearing lies by hand{larger}");
            }
            Self::BearingInBore { part, seat } => return write!(f, "{part} is a bearing, and {seat} is a bore into which a cup is pressed"),
            Self::OtherBearing { reads, listed } => return write!(f, "reads {} outside, this seat is listed for {}: another bearing; a bearing in its seat must not rock", in_mm(*reads), in_mm(*listed)),
            Self::ListedBearing { bearing, size, angles } => return write!(f, "{bearing}: {size}, {angles} (race, frame seat)"),
            Self::PartForSeat => "the part or bearing that this seat was made for, by its maker's sheet",
            Self::CupOfSize => "a larger cup where it is loose, a smaller one where it presses too hard, by its maker's word; never by filing a cup, a punch or raised burrs",
            Self::HalfCrownGap => "half of the gap between crown and head tube",
            Self::DepthForCup => "depth of the bore, left for the cup",
            Self::Reamer { from, to: None } => return write!(f, "head-tube reamer that finishes at least {}", in_mm(*from)),
            Self::Reamer { from, to: Some(to) } => return write!(f, "head-tube reamer that finishes between {} and {}", in_mm(*from), in_mm(*to)),
            Self::Counterbore => "counterbore or end-cutting head-tube reamer of the bore's own size",
            Self::ClearBelow { to } => return write!(f, "what lies below: the bore stays clear to at least {}", in_mm(*to)),
            Self::InkBearing => "ink the bearing, turn it in its seat: the mark must be an unbroken ring",
            Self::BearingDropsIn => "the bearing drops in by hand and does not rock under a finger on any side",
            Self::StackLower => "the stack is lower by what comes off: steerer length and spacers again",
            Self::CrownCloser => "the crown comes closer by what comes off: gap again",
            Self::SeatCovered => "the seat is covered: a reading includes the coating on both sides, so it is no more than a bound before it is off",
            Self::CrownSeatIsTheirs => "the seat itself: cutting it is for the fork maker or a qualified builder",
            Self::OtherRace => "another race, whose bore is made for this seat, by its maker's word",
            Self::BuiltUpOrFork => "the fork maker or a qualified builder: a worn seat is built up and cut again, or the fork replaced",
            Self::RaceNotFitted => "do not fit this race: where it is loose, race or seat is worn, and both are measured again and the worn one replaced; where it presses too hard, another race; the headset maker's own figure decides",
            Self::LaminateSteerer => "the steerer: laminate; it is shortened, plugged and clamped only as its maker writes",
            Self::SteererThread => "the steerer thread: it is only followed with its own form; Italian and English steerers share size and pitch and differ in flank angle",
            Self::ThreadIs { size } | Self::QuillIs { size } => return f.write_str(size),
            Self::LengthWanted { length, below } => return write!(f, "{} wanted: what stands on it, less {} below the top", in_mm(*length), in_mm(*below)),
            Self::LongerBy { by } => return write!(f, "{} longer than that, as it stands", in_mm(*by)),
            Self::LessOnSteerer => "fewer spacers, a lower stem or headset, or another fork; never less grip than the stem maker wants",
        })
    }
}

impl Worded for HeadFact {
    fn about(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::Proved { .. } | Self::ProvedElsewhere { .. } | Self::TakenFor { .. } => {
                "which standard"
            }
            Self::Wall { .. } | Self::WallReamed { .. } | Self::WallTooThin => "wall",
            Self::CrownGap { .. } | Self::HalfCrownGap | Self::OtherLowerCup => "gap to the crown",
            Self::NoVerdict { .. } | Self::CupOfSize => "fit",
            Self::CupInSeat { .. } | Self::BearingInBore { .. } | Self::PartForSeat => "part",
            Self::OtherBearing { .. }
            | Self::ListedBearing { .. }
            | Self::InkBearing
            | Self::BearingDropsIn => "bearing",
            Self::SeatCovered => "coating",
            Self::ThreadIs { .. } | Self::SteererThread => "thread",
            Self::QuillIs { .. } => "quill",
            Self::LengthWanted { .. }
            | Self::LongerBy { .. }
            | Self::LessOnSteerer
            | Self::LaminateSteerer
            | Self::StackLower => "steerer length",
            Self::PartStays { .. }
            | Self::PartInBore
            | Self::OppositePartStays
            | Self::OppositePartIn => "fitted part",
            Self::SeatNotNamed
            | Self::TooShallowToFace
            | Self::IntegratedFace
            | Self::FaceUnderPart { .. } => "face",
            Self::OutOfParallel | Self::ParallelismWaits | Self::FaceBothEnds => "parallelism",
            Self::IntegratedSeat | Self::CrownSeatIsTheirs | Self::BuiltUpOrFork => "seat",
            Self::NotReamed
            | Self::LargerCup
            | Self::InsertOrTube
            | Self::NeverByForce
            | Self::Reamer { .. } => "bore",
            Self::DepthOutside
            | Self::StandsProud { .. }
            | Self::DepthForCup
            | Self::Counterbore
            | Self::ClearBelow { .. } => "depth of the bore",
            Self::CrownCloser => "crown",
            Self::OtherRace | Self::RaceNotFitted => "race on its seat",
        })
    }
}

impl fmt::Display for HeadAsk {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Bore => "bore in two directions, at the mouth and at the shoulder",
            Self::BareBore => "bore again in two directions, on metal",
            Self::BoreCoating => "what covers the bore?",
            Self::CoatingLeft => "what is left of the coating in the bore, and the bore again on metal",
            Self::BoreDepth => "depth of the bore to its shoulder",
            Self::DepthAllowed => "how deep may the bore be made (`bore_depth`)? What lies below it: butt, gusset, bonded part",
            Self::Insertion => "how far the cup at hand goes in, below its flange",
            Self::CrownGap => "gap between fork crown and head tube, fork fitted",
            Self::WhichSeat { .. } => "which seat is it? Try the part by hand, look for a shoulder or a chamfer that a bearing lies on",
            Self::WhichBearing => "which bearing was the frame made for?",
            Self::FaceHeights => "heights of the face at 5, 7 or 9 places all round, with its inner, outer and probe radius",
            Self::FacesFiner => "heights of both faces again, finer; or ink both and take the first light cut where a cut is permitted",
            Self::CrownSeat => "diameter of the seat in two directions",
            Self::CrownSeatFiner => "diameter of the seat again in two directions, finer",
            Self::CrownCoating => "what covers the seat?",
            Self::Race => "bore of the race in two directions",
            Self::RaceFiner => "bore of the race and diameter of the seat again, finer",
            Self::SteererLength => "length from the crown-race seat to the end of the steerer, to half a millimetre",
            Self::SteererLengthFiner => "length of the steerer again, and of everything that stands on it, finer",
        })
    }
}

impl Worded for HeadAsk {
    fn why(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::Bore => "a seat is known by measuring, not by its label",
            Self::BareBore => "it was read before the coating came off",
            Self::BoreCoating | Self::CoatingLeft => {
                "paint narrows a bore; what is only covered is cleaned by hand and not cut"
            }
            Self::BoreDepth => {
                "a cup longer than its bore stands proud, and facing takes depth away"
            }
            Self::DepthAllowed => {
                "the cup is longer than its bore; without the frame maker's word it is not deepened"
            }
            Self::Insertion => {
                "the bore must stay as deep as the cup goes in; a shorter cup may still sit"
            }
            Self::CrownGap => {
                "a maker limits it, or a cut takes it away; while it is unknown nothing is shown to be allowed"
            }
            Self::WhichSeat { because } => {
                return alloc::format!("{because}, and only the bore says so").into();
            }
            Self::WhichBearing => "bearings of the same trade name differ by 0.2 mm outside",
            Self::FaceHeights => "a maker limits how far the two faces may be out of parallel",
            Self::FacesFiner => "whether the two faces are parallel enough is not shown either way",
            Self::CrownSeat => "whether a race fits is told by the seat, not by a label",
            Self::CrownSeatFiner => "it lies too close to a limit to tell",
            Self::CrownCoating => "a coating counts twice on diameter",
            Self::Race => "the fit cannot be judged without both",
            Self::RaceFiner => {
                "whether the race holds is not shown either way; steering must not be ridden before it is"
            }
            Self::SteererLength => {
                "it is held against its maker's limit and against what stands on it"
            }
            Self::SteererLengthFiner => "it lies too close to its limit for these readings",
        })
    }
}

impl fmt::Display for HeadTask {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Ream { at, from, to } => write!(f, "Ream the {} to between {} and {}", at.words(), in_mm(*from), in_mm(*to)),
            Self::Deepen { at, insertion } => write!(f, "Deepen the bore of the {} until the cup goes in {}", at.words(), in_mm(*insertion)),
            Self::Clean { at, again, to_metal, .. } => {
                let out = if *at == Place::Crown { "off" } else { "out of" };
                let again = if *again { " again" } else { "" };
                let how = if *to_metal { ", down to metal" } else { ": wood, plastic or a fine cloth, nothing that scrapes" };
                write!(f, "Take the coating {out} the {}{again} by hand{how}", at.words())
            }
            Self::MarkLength { .. } => f.write_str("Fit headset, spacers and stem dry and mark the length of the steerer, only when the head-tube faces are finished"),
        }
    }
}

impl Worded for HeadTask {
    fn why(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::Ream { .. } => "the bore is too small for the part it is meant for",
            Self::Deepen { .. } => "the cup is longer than its bore",
            Self::Clean { bearing: true, .. } => {
                "paint under a bearing lets it rock; scraping the seat does the same"
            }
            Self::Clean {
                at: Place::Crown, ..
            } => "a race forced over paint cracks or sits crooked",
            Self::Clean { .. } => "a cup pressed on paint sits neither square nor tight",
            Self::MarkLength { laminate: true } => {
                "what comes off the faces lowers the stack; laminate is sawn only as the fork maker writes, and by whoever may"
            }
            Self::MarkLength { laminate: false } => {
                "what comes off the faces lowers the stack, and a steerer that was sawn too short does not grow"
            }
        })
    }
}
