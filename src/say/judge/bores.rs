//! Facts and questions of `judge::BoreFact` and `judge::BoreAsk` in words.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;

use crate::evidence::Grade;
use crate::fact::Worded;
use crate::fit::Feature;
use crate::judge::{BoreAsk, BoreFact, from_to};
use crate::measure::Outcome;
use crate::quantity::{Length, in_mm, mm, settled_mm};

/// ` at 5.000 mm and 55.000 mm deep`; nothing where no depth is known.
fn at(deep: &[Option<Length>]) -> String {
    let deep: Vec<String> = deep
        .iter()
        .flatten()
        .map(|d| in_mm(*d).to_string())
        .collect();
    if deep.is_empty() {
        String::new()
    } else {
        format!(" {} deep", deep.join(", "))
    }
}

/// A length behind its head, where it is known.
fn if_known(head: &str, length: Option<Length>) -> String {
    length.map_or_else(String::new, |length| format!("{head}{}", in_mm(length)))
}

impl fmt::Display for BoreFact {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Bore { .. } => f.write_str(&self.about()),
            Self::TooLarge { over, under } if over.iter().any(|deep| under.contains(deep)) => write!(
                f,
                "over in one direction and under in another{}: out of round, and no reamer brings metal back where it is over",
                at(over)
            ),
            Self::TooLarge { over, under } if under.is_empty() => {
                write!(f, "too large{}: no cut cures that", at(over))
            }
            Self::TooLarge { over, under } => write!(
                f,
                "over{} and under{}: reaming opens what is under and cures nothing that is over",
                at(over),
                at(under)
            ),
            Self::Shape { caution } => f.write_str(caution.words()),
            Self::WallUnlimited { wall } => write!(
                f,
                "{}; no least wall is published, the frame maker decides",
                in_mm(*wall)
            ),
            Self::Reaming { from, to, takes, leaves } => {
                write!(
                    f,
                    "from {} to {} takes {} on diameter ({} a side) and ",
                    in_mm(*from),
                    in_mm(*to),
                    in_mm(*takes),
                    in_mm(*takes / 2.0)
                )?;
                match leaves {
                    Some(wall) => write!(f, "leaves a wall of {}", in_mm(*wall)),
                    None => f.write_str("the wall it leaves is not known"),
                }
            }
            Self::CutOnce => f.write_str(
                "cutting cannot be undone; no least wall is published; never ream carbon",
            ),
            Self::OverCoat { member, thin, thick, grade } => write!(
                f,
                "a coat of {} a side ({}) makes the reading {} too {}; no verdict before the coating is off",
                from_to(*thin, *thick),
                grade.map_or("not known how sure", Grade::words),
                from_to(*thin * 2.0, *thick * 2.0),
                wrong_way(*member)
            ),
            Self::CoatOnIt { member, reading, bare, coat, .. } if *coat <= mm(0.0) => write!(
                f,
                "{} is not too {} for {}, so no coat is seen in it",
                in_mm(*reading),
                wrong_way(*member),
                in_mm(*bare)
            ),
            Self::CoatOnIt { member, reading, bare, coat, like } => write!(
                f,
                "{} is {} {} {} on each side, {}",
                in_mm(*reading),
                in_mm(*bare),
                if *member == Feature::Shaft { "and" } else { "less" },
                in_mm(*coat),
                if *like { "as a powder coat is" } else { "which a powder coat does not explain" }
            ),
            Self::MaskBefore => f.write_str(
                "mask these before coating: threads, crown-race seat, head-tube bores and faces, shell faces, brake mount faces, dropout faces, inside of the seat tube",
            ),
            Self::DepthAsked { depth, weld, trade, least, most } => {
                match depth {
                    Some(depth) => write!(f, "the post must go in at least {}", tenths(*depth))?,
                    None => f.write_str("no rule says how deep the post must go in")?,
                }
                match (trade, weld) {
                    (Some(trade), Some(weld)) => write!(
                        f,
                        "; the trade rule asks for {} where the weld ends at {}",
                        tenths(*trade),
                        tenths(*weld)
                    )?,
                    (Some(trade), None) => write!(
                        f,
                        "; the trade rule asks for {}, the place of the weld not known",
                        tenths(*trade)
                    )?,
                    (None, _) => {}
                }
                if let (Some(least), Some(most)) = (least, most) {
                    write!(f, "; the published rules differ, {}", format_args!("{:.1} to {}", settled_mm(*least), tenths(*most)))?;
                }
                f.write_str("; a deeper mark on the post or in the frame maker's manual wins")
            }
            Self::ByRules { depth, least, most } => {
                write!(f, "{} is {}", in_mm(*depth), by_rules(*least, *most))
            }
            Self::ClearTo { clear, short_of, some } => {
                write!(f, "the tube is clear to {}", in_mm(*clear))?;
                match short_of {
                    Some(depth) if *some => write!(
                        f,
                        ", enough for some of the published rules and not for {}",
                        in_mm(*depth)
                    ),
                    Some(depth) => write!(f, ", and a post must go in {}", in_mm(*depth)),
                    None => Ok(()),
                }
            }
            Self::ShortPost => f.write_str("a short post can break the tube and hurt the rider"),
            Self::PostFits { least: Some(least), most: Some(most), .. } => {
                write!(f, "clearance {}", from_to(*least, *most))?;
                let presses = *least < mm(0.0);
                f.write_str(if presses { " (a minus figure is interference)" } else { "" })
            }
            Self::PostFits { .. } => f.write_str("not ruled out"),
            Self::NoPostFits => f.write_str("no listed seatpost fits this tube"),
            Self::NominalPosts => f.write_str(
                "posts are taken at their nominal size: measure yours, and try it dry before the clamp closes",
            ),
            Self::SeatInReach { name, bore, stock, wall, cup, .. } => {
                write!(
                    f,
                    "{name}, bore {bore}: {} to ream on diameter, wall left {}",
                    in_mm(*stock),
                    in_mm(*wall)
                )?;
                for dissent in bore.dissent() {
                    write!(f, "; others print {} ({})", dissent.value, dissent.evidence.note())?;
                }
                f.write_str(&if_known("; its cup is ", *cup))
            }
            Self::InsideOfTube { inside, seats: 0 } => write!(
                f,
                "{}, outside less two walls: no listed external-cup seat lies within reach of a hand reamer",
                in_mm(*inside)
            ),
            Self::InsideOfTube { inside, .. } => write!(
                f,
                "{}, outside less two walls: with reaming it takes one of these",
                in_mm(*inside)
            ),
            Self::SteererNamesNoBore => {
                f.write_str("the size of a steerer is a name, not a bore: bore to the cup in hand")
            }
            Self::PostExpected { outside, bore_least, bore_most, post_least, post_most } => {
                write!(
                    f,
                    "a tube of {} has a bore of {}",
                    in_mm(*outside),
                    from_to(*bore_least, *bore_most)
                )?;
                match post_least.zip(*post_most) {
                    Some((least, most)) => write!(f, " and should take a post of {}", from_to(least, most)),
                    None => f.write_str("; no post is listed for it"),
                }
            }
            Self::PostImplies { post, wall, agrees } => write!(
                f,
                "a post of {} implies a wall of {}: {}",
                in_mm(*post),
                in_mm(*wall),
                match agrees {
                    Outcome::ConformityShown => "they agree",
                    Outcome::NonconformityShown =>
                        "they do not agree: a sleeve, another tube, or a bore out of shape",
                    Outcome::Undecided => "the readings do not tell whether they agree",
                }
            ),
            Self::ShimWall { wall, presses } => write!(
                f,
                "a shim has a wall of {}: half of {}, because it lies on both sides",
                in_mm(*wall),
                if *presses { "the gap and the wanted interference together" } else { "the gap" }
            ),
            Self::NoGap => f.write_str("there is no gap to fill"),
            Self::Sheet { sheet, adds, wall, leaves, goes_in } => match goes_in {
                Outcome::NonconformityShown => write!(
                    f,
                    "a sheet of {} adds {} on diameter and will not enter, {} would; if it did go in, it is not that thick, or the difference was taken for the wall",
                    in_mm(*sheet),
                    in_mm(*adds),
                    in_mm(*wall)
                ),
                Outcome::ConformityShown => write!(
                    f,
                    "a sheet of {} goes in and leaves {} on diameter",
                    in_mm(*sheet),
                    in_mm(*leaves)
                ),
                Outcome::Undecided => {
                    write!(f, "a sheet of {} is a push fit within these readings", in_mm(*sheet))
                }
            },
            Self::ShimLength => f.write_str(
                "a shim at least as long as the insertion, slot on slot (common practice; no length is published)",
            ),
        }
    }
}

/// A depth as a rule shows it.
fn tenths(depth: Length) -> String {
    format!("{:.1} mm", settled_mm(depth))
}

/// Which way a coat makes a reading wrong.
const fn wrong_way(member: Feature) -> &'static str {
    match member {
        Feature::Shaft => "large",
        Feature::Hole => "small",
    }
}

fn by_rules(least: Outcome, most: Outcome) -> &'static str {
    match (least, most) {
        (Outcome::NonconformityShown, _) => "less than the least demanding rule asks",
        (Outcome::Undecided, _) => "too close to the least demanding rule to tell",
        (_, Outcome::ConformityShown) => "as much as the most demanding rule asks",
        (_, Outcome::Undecided) => "too close to the most demanding rule to tell",
        (_, Outcome::NonconformityShown) => {
            "enough for some of the published rules and not for others"
        }
    }
}

impl Worded for BoreFact {
    fn about(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::Bore {
                deep: Some(deep), ..
            } => {
                return format!("bore {} deep", in_mm(*deep)).into();
            }
            Self::PostFits { post, .. } => return format!("post {post}").into(),
            Self::SeatInReach { seat, .. } => return seat.clone(),
            Self::Bore { .. } | Self::TooLarge { .. } | Self::Shape { .. } => "bore",
            Self::WallUnlimited { .. } => "wall",
            Self::Reaming { .. } | Self::CutOnce => "reaming",
            Self::OverCoat { .. } | Self::CoatOnIt { .. } | Self::MaskBefore => "coating",
            Self::DepthAsked { .. } => "depth asked for",
            Self::ByRules { .. } | Self::ShortPost => "insertion",
            Self::ClearTo { .. } => "room for post",
            Self::NoPostFits | Self::NominalPosts => "seatposts",
            Self::InsideOfTube { .. } => "inside of the tube",
            Self::SteererNamesNoBore => "steerer",
            Self::PostExpected { .. } => "post to expect",
            Self::PostImplies { .. } => "tube and post",
            Self::ShimWall { .. } | Self::NoGap | Self::ShimLength => "shim",
            Self::Sheet { .. } => "sheet",
        })
    }
    fn size_count(&self) -> Option<usize> {
        match self {
            Self::Bore { count, .. } => Some(*count),
            _ => None,
        }
    }
}

impl fmt::Display for BoreAsk {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::OnMetal => "the bore on bare metal, the paint taken off by hand",
            Self::Finer { .. } => "the bore in two directions at two depths, with a finer gauge",
            Self::BothEnds => "the bore in two directions at both ends",
            Self::TwoByTwo => "bore on two axes at two depths, and roundness at the lug",
            Self::Finished => "the finished bore",
            Self::BoreAndPost => "the bore on two axes at two depths, and the post itself",
            Self::ThinnestWall => "wall at the thinnest place",
            Self::OutsideThere => "outside diameter around the bore, or the wall itself",
            Self::BareMetal => {
                "the bare metal: take the coating off seats, threads and faces by hand, threads with a chaser, then gauge"
            }
            Self::Weld => "from the top of the seat tube to the lower edge of the weld or lug",
            Self::DepthWritten => "the mark on the post and the frame maker's depth",
            Self::DepthNow => "how deep the post is in",
            Self::PostOutside => "diameter of the post",
            Self::CupOutside => "outside diameter of the cup in hand",
            Self::PressWanted => "interference that the maker of the part wants",
            Self::SheetThickness => "thickness of the sheet",
        })
    }
}

impl Worded for BoreAsk {
    fn why(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::OnMetal => "over paint a bore reads smaller than it is",
            Self::Finer { instrument: true } => {
                "the instrument used can never show so narrow a tolerance"
            }
            Self::Finer { instrument: false } => "too close to a limit for these readings",
            Self::BothEnds => "one place says nothing of ovality and taper",
            Self::TwoByTwo => {
                "a post that fits proves no nominal size: a sleeve, another tube and a pinched bore look alike"
            }
            Self::Finished => "tubes are reamed to size after joining",
            Self::BoreAndPost => {
                "sizes step by 0.2 mm, and no clearance is published for all posts"
            }
            Self::ThinnestWall => {
                "the tube may be butted or eccentric, and the reamer follows the bore"
            }
            Self::OutsideThere => "nothing is cut before it is known what wall it leaves",
            Self::BareMetal => {
                "a coat counts on both sides, and a part forced over it cracks or sits crooked"
            }
            Self::Weld => "one rule counts from there",
            Self::DepthWritten => "they go before every published rule",
            Self::DepthNow => "that is what is judged",
            Self::PostOutside => "some rules count in diameters",
            Self::CupOutside => {
                "seats of one steerer size differ by 0.2 mm, and the cup decides the bore"
            }
            Self::PressWanted => "the wall is half of the gap and the interference together",
            Self::SheetThickness => "a wall counts twice on diameter",
        })
    }
}
