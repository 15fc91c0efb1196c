//! The seat tube: it comes first, so that the frame can be held by a post.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::answer::{Counted, Operation, Stop};
use super::bore_caps;
use super::bore_now::{self, BoreNow};
use super::caution::Caution;
use super::facts::{Allowance, CutLimit};
use super::permit::{Identity, Pilot, Request, rule};
use super::seat_post;
use super::seat_size::{self, Sized};
use super::sheet::{Heard, Limited, Marks, SeatTubeSheet};
use super::site::{Site, Wish, take, tool};
use super::work::{Answers, Draft, PlaceWork};
use crate::evidence::Grade;
use crate::face::LimitKind;
use crate::fit::{Caution as FitCaution, MaterialKind, Shape, SizeReading};
use crate::judge::{Finding, OwnLimits, Wall, extremes, spread};
use crate::measure::{Outcome, Placed, Reading, settled_below};
use crate::quantity::{Length, in_mm, mm, settled_mm};
use crate::standard::{Cutting, CuttingRule, Place, Seatpost};
use crate::thread::Turn;

/// Beyond this spread no size may be named.
/// Common practice: the series steps by 0.2 mm, so a spread of two steps fits three sizes.
const NO_SIZE_SPREAD_MM: f64 = 0.4;

/// A bore that lies this far above its size is not that size any more. Common practice: half a step of the series.
const HALF_STEP_MM: f64 = 0.1;

pub(super) fn plan(site: &Site<'_>, tube: &SeatTubeSheet) -> PlaceWork {
    let mut work = PlaceWork::new(Place::SeatTube);
    work.cautions.push(Caution::Seatpost);
    work.notes.extend(tube.note.clone());
    work.notes
        .extend(tube.passes.iter().filter_map(|p| p.note.clone()));
    work.hear(&tube.limits);
    let now = bore_now::of(
        &tube.bore,
        &tube.after,
        tube.passes.iter().map(Into::into),
        tube.coating,
        false,
    );
    work.measured = !tube.bore.is_empty();
    work.worked = now.worked;
    work.removed = now.removed.into_iter().collect();
    if now.bore.is_empty() {
        work.ask_plain(
            "seat_tube.bore",
            "bore of the seat tube at two depths and two directions",
            "no size can be named and nothing cut before it is measured",
            "telescoping gauge or inside caliper",
        );
        return work;
    }
    let Ok(shape) = Shape::of(&sizes(&now.bore)) else {
        return work;
    };
    shapes(&mut work, &shape, &now);
    contradictions(&mut work, tube);
    let apart = shape.largest().value() - shape.smallest().value();
    if settled_below(mm(NO_SIZE_SPREAD_MM), apart) {
        work.settled(Finding::stated(
            "size",
            format!(
                "no size may be named: the readings spread over {}. The tube is pinched, burred, thick with paint, or one reading is of something else",
                in_mm(apart)
            ),
        ));
        work.ask_plain(
            "seat_tube.bore",
            "clean the bore, look for pinched ears and burrs, then measure it again",
            "the spread is larger than any step of the seatpost series",
            "brush, light, inside caliper",
        );
        return work;
    }
    wall(site, &mut work, tube, &now);
    let sized = seat_size::of(site, &mut work, tube, &now);
    seat_post::fit(site, &mut work, tube, &now, sized.as_ref());
    seat_post::insertion(site, &mut work, tube, sized.as_ref());
    if let Some(sized) = sized {
        ream(site, &mut work, tube, &now, &sized);
    }
    work
}

/// Diameters with their places, as the fit room takes them.
pub(super) fn sizes(readings: &[Placed]) -> Vec<SizeReading> {
    readings
        .iter()
        .map(|p| {
            let mut size = SizeReading::new(p.reading);
            if let Some(angle) = p.angle {
                size = size.across(angle).unwrap_or(size);
            }
            if let Some(depth) = p.depth {
                size = size.at_depth(depth).unwrap_or(size);
            }
            size
        })
        .collect()
}

fn shapes(work: &mut PlaceWork, shape: &Shape, now: &BoreNow) {
    let plain = now.readings();
    let mut words = spread(&plain);
    let worth_saying = |length: Length| length.abs() >= mm(0.001);
    if let Some(oval) = shape.ovality().filter(|o| worth_saying(o.value())) {
        words.push_str(&format!(
            "; out of round by at least {}",
            in_mm(oval.value())
        ));
    }
    if let Some(taper) = shape.taper().filter(|t| worth_saying(t.value())) {
        words.push_str(&format!(
            "; {} {} towards the bottom",
            in_mm(taper.value().abs()),
            if taper.value() < mm(0.0) {
                "narrower"
            } else {
                "wider"
            }
        ));
    }
    work.settled(Finding {
        readings: extremes(&plain),
        ..Finding::stated(
            if now.worked {
                "bore after the work"
            } else {
                "bore as found"
            },
            words,
        )
    });
    if let Some(off) = now.removed {
        work.settled(Finding {
            readings: Vec::from([off]),
            ..Finding::stated(
                "what came off",
                format!(
                    "{} ± {} on diameter at the narrowest place",
                    in_mm(off.value()),
                    in_mm(off.expanded_uncertainty())
                ),
            )
        });
        if off.sure_sign().is_lt() {
            work.contradicts(
                format!(
                    "the bore reads {} narrower than before the work: measured elsewhere, or not clean",
                    in_mm(-off.value())
                ),
                "seat_tube.passes",
                "telescoping gauge or inside caliper",
            );
        }
    }
    if shape.cautions().contains(&FitCaution::ShapeAtLeast) {
        work.ask_plain(
            "seat_tube.bore",
            "bore again: two directions at each of two depths",
            "a bore is not one number; a pinched or oval tube looks sound in one direction",
            "telescoping gauge or inside caliper",
        );
    }
}

/// A bore read below the depth to which the tube is said to be clear.
fn contradictions(work: &mut PlaceWork, tube: &SeatTubeSheet) {
    let deepest = tube
        .bore
        .iter()
        .filter_map(|p| p.depth)
        .max_by(|a, b| crate::measure::settled_cmp(*a, *b));
    if let (Some(deepest), Some(clear)) = (deepest, tube.clear_depth)
        && settled_below(clear, deepest)
    {
        work.contradicts(
            format!(
                "the bore was read {} deep, and the tube is said to be clear to {}",
                in_mm(deepest),
                in_mm(clear)
            ),
            "seat_tube.clear_depth",
            "depth rod or a marked rod",
        );
    }
}

fn wall(site: &Site<'_>, work: &mut PlaceWork, tube: &SeatTubeSheet, now: &BoreNow) {
    let Some(outside) = extremes(&tube.outside).first().copied() else {
        return;
    };
    let heard = Heard::of(&tube.limits, Limited::Wall);
    let asked = Wall {
        place: Some(Place::SeatTube),
        outside,
        bore: now.bore.clone(),
        least: heard
            .iter()
            .map(|h| OwnLimits::of(h.limits, h.owner()))
            .collect(),
        rule: Some(site.rule),
    };
    let Ok(said) = asked.answer(site.tables) else {
        return;
    };
    if heard.is_some() && !(now.covered && said.outcome == Outcome::Undecided) {
        work.judged(
            &said,
            Answers {
                reading: "seat_tube.outside",
                trial: "seat_tube.passes",
                written: "seat_tube.limits",
            },
        );
    } else {
        work.found(&said);
    }
}

/// Reams, or leaves.
fn ream(site: &Site<'_>, work: &mut PlaceWork, tube: &SeatTubeSheet, now: &BoreNow, sized: &Sized) {
    let (Some(smallest), Ok(target)) = (now.smallest(), Reading::exact(sized.size)) else {
        return;
    };
    let short = target.less(&smallest);
    let u = short.expanded_uncertainty();
    if !settled_below(u, short.value()) {
        // What is above its size after the work was reamed too far, and nothing cuts it back.
        if now.worked && settled_below(mm(HALF_STEP_MM) + u, -short.value()) {
            work.fact(Finding {
                outcome: Some(crate::measure::Outcome::NonconformityShown),
                readings: now.readings(),
                grade: Some(Grade::CommonPractice),
                ..Finding::stated(
                    "bore after the work",
                    format!(
                        "{} larger than {} at its narrowest place: reamed too far, and no cut makes it smaller",
                        in_mm(-short.value()),
                        in_mm(sized.size)
                    ),
                )
            });
            work.cure(String::from(
                "a post of the next size that the bore takes, or a shim over the whole insertion with its slot on the slot of the tube",
            ));
        } else if !now.worked {
            work.leave(if short.value() > mm(0.0) {
                format!(
                    "the bore is within {} of {}, less than these readings can tell: try the post",
                    in_mm(short.value()),
                    in_mm(sized.size)
                )
            } else {
                format!(
                    "the bore is nowhere below {}: nothing to ream",
                    in_mm(sized.size)
                )
            });
        }
        return;
    }
    if now.marks == Some(Marks::Torn) {
        work.steps.push(Draft::refer_plain(
            &Place::SeatTube,
            "Do not ream the seat tube: the last pass tore it",
            "a torn bore is reamed again only with another cutter or another hand",
        ));
        return;
    }
    let joint = site.joint(&tube.common());
    let wish = Wish {
        place: &Place::SeatTube,
        joint: "seat_tube",
        readings: String::from("seat_tube.bore"),
        operation: Operation::Ream,
        only_coating: now.covered,
    };
    let (stops, clear_unknown) = depth(site, tube, sized);
    let ruling = rule(Request {
        place: &Place::SeatTube,
        operation: Operation::Ream,
        material: joint.material,
        bonded: joint.bonded,
        consent: joint.consent,
        contradicted: !work.contradictions.is_empty(),
        identity: sized.identity.clone(),
        metal_lost: false,
        makers_shape: false,
        pilot: Pilot::There,
        to_size: true,
        needed: Some((Counted::Diameter, short)),
        allowance: caps(site, tube, &smallest),
        stops,
        waits: clear_unknown
            .then(|| String::from(CLEAR))
            .into_iter()
            .collect(),
        decision: site.rule,
    });
    let Some(permit) = take(work, ruling, &wish) else {
        return;
    };
    // The depth is asked for only where a reamer goes in.
    if clear_unknown {
        work.ask_plain(
            CLEAR,
            "how deep the bore is clear, to the first boss, butt or sleeve",
            "the reamer must stop before it",
            "depth rod or a marked rod",
        );
    }
    let mut draft = Draft::cut_plain(
        permit,
        format!("Ream the seat tube to {:.1}", in_mm(sized.size)),
        "high points must go, a mirror is not wanted; it comes first so that the frame can be held by a post",
    )
    .with(tool("reamer", format!("{:.1} reamer", in_mm(sized.size))))
    .turned(Turn::Clockwise)
    .minding(Caution::Seatpost);
    if joint.material == Some(MaterialKind::Titanium) {
        draft = draft.minding(Caution::Titanium);
    }
    if tube
        .post
        .as_ref()
        .is_some_and(|p| p.material == Some(MaterialKind::Carbon))
    {
        draft = draft
            .minding(Caution::CarbonPost)
            .checking("no edge left at the entry or the slot: a carbon post must meet none");
    }
    work.steps.push(draft);
}

/// What may come off on diameter: the makers' bore and wall, the size itself, and the stock that any text gives for a reamer.
fn caps(site: &Site<'_>, tube: &SeatTubeSheet, smallest: &Reading) -> Allowance {
    let mut caps = Vec::new();
    let cap =
        |kind, what: String, most: Reading, grade| CutLimit::new(kind, what, most, grade).ok();
    if let Some((high, words)) = Heard::of(&tube.limits, Limited::Bore).and_then(|h| h.at_most())
        && let Ok(high) = Reading::exact(high)
    {
        caps.extend(cap(
            LimitKind::Maker,
            format!("bore {words}"),
            high.less(smallest),
            Grade::Shop,
        ));
    }
    caps.extend(bore_caps::of(
        &tube.limits,
        &tube.outside,
        tube.post.as_ref(),
        smallest,
    ));
    if let Some((most, row)) = CuttingRule::greatest(Cutting::ReamStock, site.tables)
        && let (Ok(most_off), Some(grade)) = (Reading::exact(most), row.window.grade())
    {
        caps.extend(
            cap(
                LimitKind::Other,
                format!(
                    "{} of stock, the most that a text leaves for a reamer: more is no paint, and probably another size",
                    in_mm(most)
                ),
                most_off,
                grade,
            )
            .map(|c| c.citing(row.window.evidence())),
        );
    }
    Allowance::new(caps)
}

/// What the reamer stops at: the size, a depth that is written, the clear depth; and whether neither depth is known.
fn depth(site: &Site<'_>, tube: &SeatTubeSheet, sized: &Sized) -> (Vec<Stop>, bool) {
    let mut stops = Vec::new();
    let row = site
        .tables
        .get::<Seatpost>(&format!("{:.1}", settled_mm(sized.size)));
    stops.push(Stop {
        limit: format!("the size, {:.1}", in_mm(sized.size)).into(),
        to_go: None,
        grade: row.and_then(|r| r.diameter.grade()),
        sources: row
            .and_then(|r| r.diameter.evidence())
            .map(|e| e.sources().to_vec())
            .unwrap_or_default(),
    });
    let written = Heard::of(&tube.limits, Limited::Depth).and_then(|h| h.at_most());
    if let Some((_, words)) = &written {
        stops.push(Stop {
            limit: format!("depth {words}").into(),
            to_go: None,
            grade: Some(Grade::Shop),
            sources: Vec::new(),
        });
    }
    if let Some(clear) = tube.clear_depth {
        stops.push(Stop {
            limit: format!("depth, the bore is clear to {:.1}", in_mm(clear)).into(),
            to_go: None,
            grade: None,
            sources: Vec::new(),
        });
    }
    (stops, tube.clear_depth.is_none() && written.is_none())
}

/// What is asked where nobody said how deep a reamer may go.
const CLEAR: &str = "seat_tube.clear_depth";

/// What is asked where paint hides the size.
pub(super) const CONFIRM: &str = "seat_tube.confirmed";

/// The identity of a size that only a post can prove.
pub(super) fn doubtful() -> Identity {
    Identity::Doubtful(String::from(CONFIRM))
}
