//! The bore of a head-tube end: what it is now, on metal or over paint, against its limits, and what is cut of it.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::cmp::Ordering;

use super::answer::{Counted, Operation};
use super::caution::Caution;
use super::head::{HeadEnd, heard};
use super::naming::Named;
use super::permit::{Identity, Request, rule};
use super::sheet::{CoatingLeft, HeadEndSheet, Heard, Limited, Marks, PartDid};
use super::site::{Wish, covered, on_surface, take, tool};
use super::work::{ByHand, Draft, PlaceWork};
use crate::evidence::{Evidence, Grade};
use crate::face::{Allowance, CutLimit, LimitKind};
use crate::fit::MaterialKind;
use crate::judge::{Finding, extremes, sizes_against, spread};
use crate::measure::{
    Bound, Limits, Outcome, Placed, Reading, Surface, decide, settled_below, settled_cmp,
};
use crate::quantity::{Length, Printed, in_mm};
use crate::standard::{HeadSeat, SeatKind};
use crate::thread::Turn;

/// Whether a coating is there now.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Coat {
    Off,
    On,
    /// Nobody said.
    NotSaid,
}

impl Coat {
    const fn surface(self) -> Surface {
        match self {
            Self::Off => Surface::OnMetal,
            Self::On => Surface::OverPaint,
            Self::NotSaid => Surface::NotKnown,
        }
    }

    /// After a pass that left so much. A pass that says nothing of it may have left it.
    const fn after(self, left: Option<CoatingLeft>) -> Self {
        match (left, self) {
            (Some(CoatingLeft::AllOff | CoatingLeft::Traces), _) => Self::Off,
            (Some(CoatingLeft::Remains), _) => Self::On,
            (None, Self::On) => Self::NotSaid,
            (None, same) => same,
        }
    }
}

/// A bore as its last readings show it.
#[derive(Debug)]
pub(super) struct Now {
    pub readings: Vec<Placed>,
    pub coat: Coat,
    /// A pass was made.
    pub worked: bool,
    /// Read again after the last change of the coating.
    pub reread: bool,
    pub removed: Option<Reading>,
    pub marks: Option<Marks>,
    pub part: Option<PartDid>,
}

impl Now {
    pub(super) fn of(sheet: &HeadEndSheet) -> Self {
        let before = on_surface(&sheet.bore, sheet.coating);
        let mut now = Self {
            coat: match sheet.coating {
                None => Coat::NotSaid,
                some if covered(some) => Coat::On,
                _ => Coat::Off,
            },
            readings: before.clone(),
            worked: !sheet.after.is_empty() || !sheet.passes.is_empty(),
            reread: true,
            removed: None,
            marks: None,
            part: None,
        };
        let first = (!sheet.after.is_empty()).then_some((&sheet.after, None, None, None));
        let more = sheet
            .passes
            .iter()
            .map(|p| (&p.bore, p.coating_left, p.marks, p.part));
        for (bore, left, marks, part) in first.into_iter().chain(more) {
            let was = now.coat;
            now.coat = was.after(left);
            now.marks = marks.or(now.marks);
            now.part = part.or(now.part);
            if bore.is_empty() {
                now.reread &= now.coat == was;
                continue;
            }
            now.reread = true;
            now.readings = bore
                .iter()
                .map(|p| Placed {
                    surface: match p.surface {
                        Surface::NotKnown => now.coat.surface(),
                        said => said,
                    },
                    ..*p
                })
                .collect();
        }
        let read_again = !sheet.after.is_empty() || sheet.passes.iter().any(|p| !p.bore.is_empty());
        if read_again {
            now.removed = removed(&before, &now.readings);
        }
        now
    }

    pub(super) fn plain(&self) -> Vec<Reading> {
        self.readings.iter().map(|p| p.reading).collect()
    }

    /// Whether a coating is or may be under the readings.
    pub(super) fn on_metal(&self) -> bool {
        !self.readings.is_empty() && self.readings.iter().all(|p| p.surface == Surface::OnMetal)
    }
}

/// What came off at the narrowest place, on diameter.
fn removed(before: &[Placed], now: &[Placed]) -> Option<Reading> {
    let plain = |readings: &[Placed]| readings.iter().map(|p| p.reading).collect::<Vec<_>>();
    let (old, new) = (extremes(&plain(before)), extremes(&plain(now)));
    Some(new.first()?.less(old.first()?))
}

/// One side of the limits of a bore, with whose it is.
struct Bounded<'a> {
    at: Length,
    owner: String,
    grade: Grade,
    evidence: Option<&'a Evidence>,
}

/// The limits that decide: the makers' own, and the row's where they say nothing.
struct Window<'a> {
    low: Option<Bounded<'a>>,
    high: Option<Bounded<'a>>,
}

impl<'a> Window<'a> {
    fn of(end: &HeadEnd<'_>, row: Option<&'a HeadSeat>) -> Self {
        let heard = Heard::of(&end.sheet.limits, Limited::Bore);
        let own = |side: Option<Length>, owner: &str| {
            side.map(|at| Bounded {
                at,
                owner: owner.to_string(),
                grade: Grade::Shop,
                evidence: None,
            })
        };
        let (low, high) = match &heard {
            Some(h) => (
                own(h.limits.lower().known(), &h.lower_owner),
                own(h.limits.upper().known(), &h.upper_owner),
            ),
            None => (None, None),
        };
        let listed = |side: Option<Length>| {
            let row = row?;
            Some(Bounded {
                at: side?,
                owner: format!("{}, {}", row.code, row.name),
                grade: row.bore.grade().unwrap_or(Grade::Shop),
                evidence: row.bore.evidence(),
            })
        };
        // A maker's side that lies beyond the listed other one leaves the list without a say.
        let agrees = |a: Option<&Bounded<'_>>, b: Option<&Bounded<'_>>| match (a, b) {
            (Some(low), Some(high)) => settled_cmp(low.at, high.at).is_le(),
            _ => true,
        };
        let row_low = listed(row.and_then(|r| r.bore.lower()));
        let row_high = listed(row.and_then(|r| r.bore.upper()));
        let row_low = row_low.filter(|l| agrees(Some(l), high.as_ref()));
        let row_high = row_high.filter(|h| agrees(low.as_ref(), Some(h)));
        Self {
            low: low.or(row_low),
            high: high.or(row_high),
        }
    }

    fn limits(&self, makers: bool) -> Option<Limits> {
        if self.low.is_none() && self.high.is_none() {
            return None;
        }
        // A side that a table leaves out is not known; one that a maker leaves out is no limit of his.
        let side = |b: Option<&Bounded<'_>>| match b {
            Some(bounded) => Bound::At(bounded.at),
            None if makers => Bound::Open,
            None => Bound::Unknown,
        };
        let grade = [&self.low, &self.high]
            .into_iter()
            .flatten()
            .map(|b| b.grade)
            .min()
            .unwrap_or(Grade::Shop);
        Limits::new(side(self.low.as_ref()), side(self.high.as_ref()), grade).ok()
    }
}

/// How a reading lies to the limits.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Way {
    Under,
    Over,
    Near,
    Inside,
}

fn way(reading: &Reading, limits: &Limits, decision: crate::measure::DecisionRule) -> Way {
    let below = limits
        .lower()
        .known()
        .is_some_and(|low| settled_below(reading.value(), low));
    match decide(reading, limits, decision).outcome {
        Outcome::NonconformityShown if below => Way::Under,
        Outcome::NonconformityShown => Way::Over,
        Outcome::Undecided => Way::Near,
        Outcome::ConformityShown => Way::Inside,
    }
}

/// Judges the bore and plans its work; whether it will be another bore afterwards.
pub(super) fn bore(
    end: &HeadEnd<'_>,
    row: Option<&HeadSeat>,
    named: &Named,
    work: &mut PlaceWork,
) -> bool {
    let now = &end.now;
    let readings = now.plain();
    wall(end, &readings, work);
    came_off(end, work);
    if readings.is_empty() {
        heard(end, Limited::Bore, "bore", &[], work);
        work.ask(
            end.field("bore"),
            "bore in two directions, at the mouth and at the shoulder",
            "a seat is known by measuring, not by its label",
            "three-point internal micrometer or inside caliper",
        );
        return clean(end, row, work);
    }
    let makers = heard(end, Limited::Bore, "bore", &readings, work);
    let window = Window::of(end, row);
    let has_makers = end.sheet.limits.iter().any(|l| l.what == Limited::Bore);
    let Some(limits) = window.limits(has_makers) else {
        work.settled(Finding::stated("bore", spread(&readings)));
        return clean(end, row, work);
    };
    let ways: Vec<Way> = readings
        .iter()
        .map(|r| way(r, &limits, end.site.rule))
        .collect();
    let any = |way: Way| ways.contains(&way);
    let shown_under = now
        .readings
        .iter()
        .zip(&ways)
        .any(|(p, w)| *w == Way::Under && p.surface == Surface::OnMetal);
    let mut finding = told(&window, &readings, &limits, has_makers, end);
    if now.coat == Coat::On {
        finding = finding.read_on_paint(true);
    } else if any(Way::Under) && !shown_under && !any(Way::Over) {
        finding.outcome = Some(Outcome::Undecided);
        finding
            .words
            .push_str("; but nobody said whether that was read on metal, and paint narrows a bore");
    }
    if any(Way::Over) || any(Way::Under) {
        by_place(now, &ways, work);
    }
    let _ = makers;
    if any(Way::Over) {
        too_large(work, finding, any(Way::Under));
        return false;
    }
    if now.coat == Coat::On {
        work.settled(finding);
        return clean(end, row, work);
    }
    if any(Way::Under) {
        return too_small(
            end,
            row,
            named,
            (&window, &limits),
            finding,
            shown_under,
            work,
        );
    }
    if any(Way::Near) && !limits.has_unknown() {
        work.ask(
            end.field(if now.worked { "passes" } else { "bore" }),
            "bore again in two directions with a three-point gauge, on metal",
            "it lies too close to a limit for the instrument used",
            "three-point internal micrometer",
        );
    } else if !now.reread {
        read_again(end, work);
    }
    work.settled(finding);
    false
}

fn read_again(end: &HeadEnd<'_>, work: &mut PlaceWork) {
    work.ask(
        end.field("passes"),
        "bore again in two directions, on metal",
        "it was read before the coating came off",
        "three-point internal micrometer",
    );
}

/// The wall that is left, by the last readings.
fn wall(end: &HeadEnd<'_>, bore: &[Reading], work: &mut PlaceWork) {
    let (outside, bores) = (extremes(&end.sheet.outside), extremes(bore));
    let left = match (outside.first(), bores.last()) {
        (Some(outside), Some(bore)) => Some(outside.less(bore).scaled(0.5)),
        _ => None,
    };
    if let Some(left) = left {
        work.settled(Finding {
            readings: Vec::from([left]),
            ..Finding::stated(
                "wall",
                format!(
                    "{} ± {} now, by outside less bore, halved",
                    in_mm(left.value()),
                    in_mm(left.expanded_uncertainty())
                ),
            )
        });
    }
    let readings: Vec<Reading> = left.into_iter().collect();
    if heard(end, Limited::Wall, "wall left", &readings, work) {
        work.out = true;
        work.cures.push(String::from(
            "a wall under its maker's limit does not grow again: the frame maker decides whether it may be used",
        ));
    }
}

fn came_off(end: &HeadEnd<'_>, work: &mut PlaceWork) {
    let Some(removed) = end.now.removed else {
        return;
    };
    let words = match removed.sure_sign() {
        Ordering::Less => {
            let words = format!(
                "the bore reads {} narrower than before: measured elsewhere, or not clean",
                in_mm(-removed.value())
            );
            work.contradicts(
                words,
                end.field("passes"),
                "three-point internal micrometer",
            );
            return;
        }
        Ordering::Equal => String::from("nothing that these readings can see came off"),
        Ordering::Greater => format!(
            "{} ± {} on diameter at the narrowest place",
            in_mm(removed.value()),
            in_mm(removed.expanded_uncertainty())
        ),
    };
    work.removed = Vec::from([removed]);
    work.settled(Finding {
        readings: Vec::from([removed]),
        ..Finding::stated("what came off", words)
    });
}

/// The bore against the limits that decide.
fn told(
    window: &Window<'_>,
    readings: &[Reading],
    limits: &Limits,
    makers: bool,
    end: &HeadEnd<'_>,
) -> Finding {
    let owners: Vec<&str> = [&window.low, &window.high]
        .into_iter()
        .flatten()
        .map(|b| b.owner.as_str())
        .collect();
    let owner = match *owners.as_slice() {
        [one, other] if one != other => format!("{one}; {other}"),
        [one, ..] => String::from(one),
        [] => String::new(),
    };
    let evidence = [&window.low, &window.high]
        .into_iter()
        .flatten()
        .find_map(|b| b.evidence);
    let what = if makers {
        "bore, all limits together"
    } else {
        "bore"
    };
    sizes_against(what, readings, limits, &owner, evidence, end.site.rule)
}

/// Where it is too large and where too small.
fn by_place(now: &Now, ways: &[Way], work: &mut PlaceWork) {
    if now.readings.len() < 2 {
        return;
    }
    let lines: Vec<String> = now
        .readings
        .iter()
        .zip(ways)
        .map(|(placed, way)| {
            let depth = placed.depth.map(|d| format!("{} deep", in_mm(d)));
            let angle = placed.angle.map(|a| format!("{:.0} deg", a.in_unit()));
            let spot: Vec<String> = depth.into_iter().chain(angle).collect();
            let spot = if spot.is_empty() {
                String::from("place not said")
            } else {
                spot.join(", ")
            };
            let word = match way {
                Way::Under => "too small",
                Way::Over => "too large",
                Way::Near => "too close to a limit to tell",
                Way::Inside => "within limits",
            };
            format!("{spot}: {} {word}", in_mm(placed.reading.value()))
        })
        .collect();
    work.settled(Finding::stated("bore, place by place", lines.join("; ")));
}

/// Too large somewhere: a reamer cures no place that is over its limit.
fn too_large(work: &mut PlaceWork, finding: Finding, small_too: bool) {
    work.fact(finding);
    if small_too {
        work.leave.push(String::from(
            "not reamed: where it is too small a reamer would help, where it is too large nothing that cuts does",
        ));
    }
    work.cures.extend(
        [
            "another cup, with a larger outside, by its maker's word",
            "an insert or a new head tube, by the frame maker or a qualified builder",
            "never by filing, a punch or raised burrs",
        ]
        .map(String::from),
    );
}

/// Too small, and not known to be covered.
fn too_small(
    end: &HeadEnd<'_>,
    row: Option<&HeadSeat>,
    named: &Named,
    (window, limits): (&Window<'_>, &Limits),
    finding: Finding,
    shown: bool,
    work: &mut PlaceWork,
) -> bool {
    let now = &end.now;
    let mut waits = Vec::new();
    if !shown {
        let (field, measure) = if now.worked {
            (
                "passes",
                "what is left of the coating in the bore, and the bore again on metal",
            )
        } else {
            ("coating", "what covers the bore?")
        };
        work.ask(
            end.field(field),
            measure,
            "paint narrows a bore; what is only covered is cleaned by hand and not cut",
            "eye, light, fingernail",
        );
        if now.worked {
            work.settled(finding);
            return true;
        }
        waits.push(end.field(field));
    }
    if now.marks == Some(Marks::Torn) {
        work.settled(finding);
        work.steps.push(Draft::refer(
            &end.place,
            format!("Do not ream the {}: the last pass tore it", end.what()),
            "torn metal is cut again only with another reamer or another hand",
        ));
        return true;
    }
    let asked = work.questions.len();
    let steps = work.steps.len();
    ream(end, row, named, (window, limits), waits, work);
    if work.questions.len() > asked || work.steps.len() > steps || !shown {
        work.settled(finding);
    } else {
        work.fact(finding);
    }
    true
}

fn ream(
    end: &HeadEnd<'_>,
    row: Option<&HeadSeat>,
    named: &Named,
    (window, limits): (&Window<'_>, &Limits),
    mut waits: Vec<String>,
    work: &mut PlaceWork,
) {
    let ends = extremes(&end.now.plain());
    let (Some(smallest), Some(low)) = (ends.first(), window.low.as_ref()) else {
        return;
    };
    let Ok(needed) = Reading::new(low.at - smallest.value(), smallest.standard_uncertainty())
    else {
        return;
    };
    if end.sheet.outside.is_empty() {
        let field = end.field("outside");
        work.ask(
            field.clone(),
            "outside diameter of the head tube there",
            "the wall that is left decides whether reaming is allowed",
            "outside caliper",
        );
        waits.push(field);
    }
    let allowance = allowance(end, smallest, window);
    let target = window
        .high
        .as_ref()
        .map_or(low.at, |high| high.at.max(low.at));
    let ruling = rule(Request {
        place: &end.place,
        operation: Operation::Ream,
        material: end.joint.material,
        bonded: end.joint.bonded,
        consent: end.joint.consent,
        contradicted: !work.contradictions.is_empty(),
        identity: identity(named, end),
        metal_lost: false,
        makers_shape: row.is_some_and(|r| r.kind == SeatKind::Integrated),
        pilot: end.pilot.clone(),
        needed: Some((Counted::Diameter, needed)),
        allowance,
        stops: Vec::new(),
        waits,
        decision: end.site.rule,
    });
    let wish = Wish {
        place: &end.place,
        joint: end.path,
        readings: end.field(if end.now.worked { "passes" } else { "bore" }),
        operation: Operation::Ream,
        what: end.what(),
        only_coating: false,
        instrument: "three-point internal micrometer",
    };
    let Some(permit) = take(work, ruling, &wish) else {
        return;
    };
    let reach = permit
        .off()
        .map_or(target, |off| smallest.value() + off.most);
    let mut draft = Draft::cut(
        permit,
        format!(
            "Ream the {} to between {} and {}",
            end.what(),
            in_mm(low.at),
            in_mm(reach)
        ),
        "the bore is too small for the part it is meant for",
    )
    .with(tool(
        "reamer",
        format!("head-tube reamer that finishes inside {limits}"),
    ))
    .turned(Turn::Clockwise)
    .minding(Caution::Steering);
    if let Some(outside) = extremes(&end.sheet.outside).first() {
        draft = draft.checking(format!(
            "wall left: {} by outside less bore, halved; builders use 0.9 to 1.1 mm, a least wall is not published",
            in_mm((outside.value() - reach) / 2.0)
        ));
    }
    work.steps.push(draft);
}

/// A bore that the makers limit may be cut to their limits whatever the seat is called.
fn identity(named: &Named, end: &HeadEnd<'_>) -> Identity {
    let own = Heard::of(&end.sheet.limits, Limited::Bore)
        .is_some_and(|h| h.limits.lower().known().is_some() && h.limits.upper().known().is_some());
    match (&named.identity, own) {
        (Identity::Open, true) => Identity::Known,
        (said, _) => said.clone(),
    }
}

/// What may come off, on diameter at the narrowest place.
fn allowance(end: &HeadEnd<'_>, smallest: &Reading, window: &Window<'_>) -> Allowance {
    let mut limits = Vec::new();
    // The size that is left is what the reamer cuts, less the narrowest place: that reading's uncertainty counts.
    let up_to = |at: Length| Reading::new(at - smallest.value(), smallest.standard_uncertainty());
    if let Some(high) = &window.high
        && let Ok(left) = up_to(high.at)
    {
        let what = format!("upper limit {} ({})", in_mm(high.at), high.owner);
        limits.extend(
            CutLimit::new(LimitKind::Maker, what, left, high.grade)
                .map(|l| l.citing(high.evidence)),
        );
    }
    if let Some(wall) = Heard::of(&end.sheet.limits, Limited::Wall)
        && let Some((least, words)) = wall.at_least()
    {
        let what = format!("wall {words}");
        limits.extend(match extremes(&end.sheet.outside).first() {
            Some(outside) => {
                let left = outside.less(smallest).shifted(-least * 2.0);
                CutLimit::new(LimitKind::Wall, what, left, wall.limits.grade())
            }
            None => CutLimit::unknown(LimitKind::Wall, what, "measure the outside diameter there"),
        });
    }
    if let Some(press) = Heard::of(&end.sheet.limits, Limited::Interference)
        && let Some((least, words)) = press.at_least()
    {
        let part = end
            .sheet
            .part
            .as_ref()
            .map(|p| extremes(&p.outside))
            .unwrap_or_default();
        let what = format!("interference of the part {words}");
        limits.extend(match part.first() {
            Some(part) => {
                let left = part.less(smallest).shifted(-least);
                CutLimit::new(LimitKind::Maker, what, left, press.limits.grade())
            }
            None => CutLimit::unknown(LimitKind::Maker, what, "measure the outside of the part"),
        });
    }
    Allowance::new(limits)
}

/// A covered seat is cleaned by hand, whatever it is made of. Whether it is covered.
fn clean(end: &HeadEnd<'_>, row: Option<&HeadSeat>, work: &mut PlaceWork) -> bool {
    if end.now.coat != Coat::On {
        if !end.now.reread {
            read_again(end, work);
        }
        return false;
    }
    let metal = end.joint.material.is_some_and(MaterialKind::is_metal);
    let slips = row.is_some_and(|r| r.kind == SeatKind::Integrated);
    let again = if end.now.worked { " again" } else { "" };
    let words = match (metal, slips) {
        (true, false) => format!(
            "Take the coating out of the {}{again} by hand, down to metal",
            end.what()
        ),
        _ => format!(
            "Take the coating out of the {}{again} by hand: wood, plastic or a fine cloth, nothing that scrapes",
            end.what()
        ),
    };
    let why = if slips {
        "paint under a bearing lets it rock; scraping the seat does the same"
    } else {
        "a cup pressed on paint sits neither square nor tight"
    };
    let mut draft =
        Draft::by_hand(&end.place, ByHand::Clean, words, why).minding(Caution::Steering);
    if !metal {
        draft = draft.minding(Caution::Carbon);
    }
    if slips {
        draft = draft
            .checking("ink the bearing, turn it in its seat: the mark must be an unbroken ring")
            .proved("the bearing drops in by hand and does not rock under a finger on any side");
    }
    work.steps.push(draft);
    true
}
