//! Facts, questions and tasks of brake mounts and faces in words.

use alloc::borrow::Cow;
use alloc::format;
use core::fmt;

use crate::fact::Worded;
use crate::plan::{MountAsk, MountFact, MountTask};
use crate::quantity::{Angle, Printed, in_mm};
use crate::standard::Place;
use crate::thread::Side;

/// An angle; one that rounds to nothing has no sign.
fn degrees(angle: Angle) -> f64 {
    let angle = angle.in_unit();
    if angle.abs() < 0.005 { 0.0 } else { angle }
}

impl fmt::Display for MountFact {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let words = match self {
            Self::SurveyWarns { of } => return write!(f, "{of}"),
            Self::FaceLies {
                run_out,
                over,
                high_at,
                clean_up,
                ..
            } => {
                write!(
                    f,
                    "{} ± {} out of square over {}",
                    in_mm(run_out.value()),
                    in_mm(run_out.expanded_uncertainty()),
                    in_mm(*over)
                )?;
                if let Some(clock) = high_at {
                    write!(f, ", high at {clock}")?;
                }
                return write!(f, "; {} to clean up out to its edge", in_mm(*clean_up));
            }
            Self::MountLies {
                range,
                side_slope,
                along,
                ..
            } => {
                return write!(
                    f,
                    "{} between the highest and the lowest place; side slope {:.2} deg, along the mount {:.2} deg",
                    in_mm(*range),
                    degrees(*side_slope),
                    degrees(*along)
                );
            }
            Self::CameOff { least, most } => {
                return write!(
                    f,
                    "{} to {} ± {}",
                    in_mm(least.value()),
                    in_mm(most.value()),
                    in_mm(most.expanded_uncertainty())
                );
            }
            Self::Grew { by } => {
                return write!(
                    f,
                    "it stands {} higher than before in one place: the two surveys were not read from one zero, or something lies under the gauge",
                    in_mm(*by)
                );
            }
            Self::SquareWithin {
                most,
                over,
                by,
                outcome,
            } => {
                return write!(
                    f,
                    "limit {} over {} ({by}): {}",
                    in_mm(*most),
                    in_mm(*over),
                    outcome.words()
                );
            }
            Self::RisesOver { over } => return write!(f, "out of square over {}", in_mm(*over)),
            Self::NoSquareness => {
                "no limit is published for this face; give the frame or component maker's, or judge by the mating part: a cup in its seat must not rock"
            }
            Self::SquareEnough => "square enough as it is",
            Self::NothingShown => "nothing shows that it must be cut",
            Self::BareUnsurveyed => "bare and not surveyed: no reason to cut it is known",
            Self::PaintLeft => {
                "places where nothing came off still carry paint: the least that cleans it all round"
            }
            Self::PaintAllRound => {
                "the least that cleans it all round; only the flat matters, a chamfer below may keep paint"
            }
            Self::PaintTilts => {
                "paint and build-up tilt the caliper; a hollow in the middle may keep paint as long as both ends of each face are bright"
            }
            Self::OutOfSquare => "it is out of square by more than its limit",
            Self::TiltsCaliper => {
                "it is out of square by more than the caliper can bear, and no bolt sets that right"
            }
            Self::FaceIt => {
                "facing, within what the frame maker allows; where that is less, the frame maker: bolts and washers do not set a side slope right"
            }
            Self::GoneForGood { what } => {
                return write!(
                    f,
                    "{what} is out of its maker's limits and does not come back: the frame maker decides whether it may be ridden"
                );
            }
            Self::Called {
                proved: true, name, ..
            } => return write!(f, "proved to be {name}"),
            Self::Called {
                proved: false,
                name,
                ..
            } => return write!(f, "called {name}"),
            Self::Thickness { is } => return write!(f, "{is}"),
            Self::BoltNotJudged { bolt } => {
                return write!(
                    f,
                    "{} long: not judged, bolts are listed for rear flat mounts only; the caliper maker's length counts",
                    in_mm(*bolt)
                );
            }
            Self::Thinner => {
                "the mount is thinner by what comes off: a bolt chosen before is that much too long"
            }
            Self::ThicknessAgain => {
                "thickness of the mount again, and with it the bolt: facing makes the mount thinner"
            }
            Self::MountCutter => "brake-mount facing cutter",
            Self::ShellCutter => "shell facing cutter, wider than the ring",
            Self::HeadCutter => "head-tube facing cutter",
            Self::GuidedByThread { side: Side::Drive } => {
                "the sound thread, drive side, held by both sides"
            }
            Self::GuidedByThread {
                side: Side::NonDrive,
            } => "the sound thread, non-drive side, held by both sides",
            Self::GuidedByBore => "the bore, by a close bush in both sides",
            Self::ThreadGone { other: false } => {
                "the thread that the facing tool pilots on is gone or not cut; its repair comes first"
            }
            Self::ThreadGone { other: true } => {
                "the facing tool is guided through both threads, and the other one is gone or not cut; its repair comes first"
            }
            Self::ThreadNotSound => {
                "the facing tool is guided through both threads, and one of them is not made sound here; that is settled first"
            }
            Self::AxleCannotGuide => {
                "the axle thread of this end, which guides the cutter, is torn, loose, crossed or not cut yet; that comes first"
            }
            Self::GrooveLocates => {
                "a ring in a groove locates the bearing, so facing moves nothing but the shield gap"
            }
            Self::SeatLocates => {
                "a seat inside the bore locates the bearing, so facing moves nothing"
            }
            Self::ChainlineMoves => "the chainline moves inboard by what comes off",
            Self::BearingMoves => {
                "its bearing moves inboard by what comes off; the chainline stays"
            }
            Self::Narrower => {
                "the shell is narrower: width again, and with it the spacers of the crank maker"
            }
            Self::WidthAtFaces => {
                "the width: its faces bring it back, and what they wait for is asked there"
            }
            Self::TooWide => {
                "wider than its unit takes, and nothing is faced: another unit or crank, or the frame maker"
            }
            Self::AxleBites => {
                "the face: the toothed ends of an axle bite through the paint; only a thick build-up is taken down by hand"
            }
            Self::NothingCut => "nothing is cut there",
        };
        f.write_str(words)
    }
}

impl Worded for MountFact {
    fn about(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::SurveyWarns { .. } => "survey",
            Self::FaceLies { cut: false, .. } => "face as found",
            Self::FaceLies { cut: true, .. } => "face after the last pass",
            Self::MountLies { cut: false, .. } => "faces as found",
            Self::MountLies { cut: true, .. } => "faces after the last pass",
            Self::CameOff { .. } => "what came off",
            Self::RisesOver { over } => {
                return format!("out of square over {}", in_mm(*over)).into();
            }
            Self::SquareWithin { .. } | Self::NoSquareness => "squareness",
            Self::Called { .. } => "which mount",
            Self::Thickness { .. } => "thickness",
            Self::BoltNotJudged { .. } => "bolt at hand",
            Self::MountCutter | Self::ShellCutter | Self::HeadCutter => "cutter",
            Self::GuidedByThread { .. }
            | Self::GuidedByBore
            | Self::ThreadGone { .. }
            | Self::ThreadNotSound
            | Self::AxleCannotGuide => "pilot",
            Self::WidthAtFaces | Self::TooWide | Self::Narrower => "width",
            Self::Thinner | Self::ThicknessAgain => "thickness of the mount",
            Self::ChainlineMoves => "chainline",
            Self::BearingMoves | Self::GrooveLocates | Self::SeatLocates => "bearing",
            Self::Grew { .. }
            | Self::SquareEnough
            | Self::NothingShown
            | Self::BareUnsurveyed
            | Self::PaintLeft
            | Self::PaintAllRound
            | Self::PaintTilts
            | Self::OutOfSquare
            | Self::TiltsCaliper
            | Self::FaceIt
            | Self::GoneForGood { .. }
            | Self::AxleBites
            | Self::NothingCut => "face",
        })
    }
    fn size_count(&self) -> Option<usize> {
        matches!(self, Self::RisesOver { .. }).then_some(1)
    }
}

impl fmt::Display for MountAsk {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::System => "which mount is it: tabs (`is`), posts (`pm`) or flat (`fm`)?",
            Self::Ring { .. } => {
                "heights of the face at 5, 7 or 9 places all round, with its inner, outer and probe radius"
            }
            Self::Heights => "heights of both faces at 3 places or more each, along and across",
            Self::NoSurvey { because, .. } => {
                return write!(f, "{}: {}", because.problem(), because.remedy());
            }
            Self::SamePlaces { .. } => "heights again at the places of the first survey",
            Self::WhatIsLeft => "measure what is left",
            Self::Finer => "heights of both faces again, finer, and as far apart as the faces allow",
            Self::FaceAgain { how } => return fmt::Display::fmt(how, f),
            Self::PaintLeft => {
                "is paint left anywhere on the flat? Ink it, and write what is left of the coating as a pass"
            }
            Self::Coating { worked: false } => "what covers the face? Not stated is not bare",
            Self::Coating { worked: true } => "what is left of the coating on the face?",
            Self::Thickness { .. } => "thickness of the mount, bolt head to caliper face",
            Self::LimitAgain { what } => return write!(f, "{what} again, finer"),
            Self::PadClearance => "clearance of pad and rotor on each side, or the brake maker's figure",
            Self::PadLength => "length of the pad across the tilt",
            Self::Bolt => "which length does the caliper maker want for this thickness?",
        })
    }
}

impl Worded for MountAsk {
    fn why(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::System => "which slope of its faces tilts the caliper depends on it",
            Self::Ring { why: Some(why) } => return format!("{why}").into(),
            Self::Ring { why: None } => {
                "one side of a face cleans long before the other; without the heights nobody knows how deep the cut must go. No indicator: ink it and take the lightest cut that shows where it touches first"
            }
            Self::NoSurvey { .. } => "without it the heights are no survey",
            Self::Heights => {
                "side slope of the faces rolls the caliper and cannot be set right with its bolts"
            }
            Self::SamePlaces { .. } | Self::WhatIsLeft => {
                "the surveys share no places, so nothing can be said of what came off"
            }
            Self::Finer => "whether the caliper rubs is too close to tell",
            Self::FaceAgain { .. } => "whether the face is square enough is not shown either way",
            Self::PaintLeft => {
                "in places less came off than the heights can show, so they do not say whether the paint is gone"
            }
            Self::Coating { .. } => "a part that sits on paint sits neither square nor tight",
            Self::Thickness { for_bolt: true } => {
                "the bolt is chosen by it, and too long a bolt bottoms in the blind hole and feels tight without clamping"
            }
            Self::Thickness { for_bolt: false } => {
                "its maker limits it, and facing makes it thinner"
            }
            Self::LimitAgain { .. } => "it lies too close to its maker's limit to tell",
            Self::PadClearance | Self::PadLength => {
                "no squareness is published for a mount; the caliper's own clearance is the only bound"
            }
            Self::Bolt => {
                "the one at hand is not what the tables print, and no tolerance is published; too long a bolt bottoms and clamps nothing"
            }
        })
    }
}

impl fmt::Display for MountTask {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Face { place, .. } => match place {
                Place::ShellFace(side) => write!(f, "Face the shell, {}", side.words()),
                Place::HeadFace(end) => write!(f, "Face the {}", Place::HeadTube(*end).words()),
                other => write!(f, "Face the {}", other.words()),
            },
            Self::FaceMount { what, .. } => {
                write!(f, "Face the {what}, the least that gives full contact")
            }
            Self::Torn { what } => write!(f, "Do not face the {what}: the last pass tore it"),
            Self::ChooseBolts { what } => write!(
                f,
                "Pick the bolts of the {what} again, to suit the thickness left"
            ),
            Self::CleanUnderside => {
                f.write_str("Take the paint off where the bolt heads sit, by hand")
            }
            Self::CleanSlot => {
                f.write_str("Clean the slot and its ears by hand, and round the end of the slot")
            }
        }
    }
}

impl Worded for MountTask {
    fn why(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::Face {
                why,
                touched,
                probed,
                ..
            } => {
                return format!(
                    "{why}; half-way through expect {touched} of the {probed} probed places bright; that is normal"
                )
                .into();
            }
            Self::FaceMount { why, .. } => return format!("{why}").into(),
            Self::Torn { .. } => {
                "a torn face is cut again only with another cutter or another hand"
            }
            Self::ChooseBolts { .. } => "a bolt that bottoms feels tight and clamps nothing",
            Self::CleanUnderside => {
                "a bolt head on paint loses its tension when the paint gives way"
            }
            Self::CleanSlot => {
                "paint in the slot keeps the clamp from closing, and an edge scores the post"
            }
        })
    }
}
