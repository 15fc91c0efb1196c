//! The bore of a head-tube end: on metal or over paint, against its limits, what becomes of it, and how far it is reamed.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::answer::{Counted, Operation};
use super::bore_caps;
use super::caution::Caution;
use super::facts::{CommonAsk, CommonFact, CutLimit, HeadAsk, HeadFact, HeadTask};
use super::head::{HeadEnd, Named, is_integrated};
use super::permit::{Identity, Reason, Ruling, rule};
use super::round_place::torn;
use super::sheet::{Heard, Limited, MakerLimit};
use super::site::{take, tool};
use super::steering::{as_read, by_hand, came_off, shown};
use super::work::{ByHand, Draft, PlaceWork};
use crate::evidence::Grade;
use crate::face::LimitKind;
use crate::fit::MaterialKind;
use crate::judge::{BoreFit, Doubt, FigureName, Instrument, OwnLimits, Remedy, Verdict, extremes};
use crate::measure::{Limits, Outcome, Reading, Surface, settled_below, settled_cmp};
use crate::quantity::Length;
use crate::standard::{FacingRule, HeadSeat, Row};
use crate::thread::Turn;

/// Judges the bore and plans its work; whether it will be another bore afterwards.
pub(super) fn bore(end: &HeadEnd<'_>, named: &Named<'_>, work: &mut PlaceWork) -> bool {
    let now = &end.now;
    let readings = now.readings();
    wall(end, &readings, work);
    if let Some(off) = now.removed {
        let answer = (end.field("passes"), Instrument::BoreGauge);
        came_off(off, now.narrower, answer, work);
    }
    if readings.is_empty() {
        end.heard(Limited::Bore, "bore", &[], work);
        work.ask(end.field("bore"), HeadAsk::Bore);
        return clean(end, named.row, work);
    }
    let window = Window::of(end, named.row);
    let Some(mut verdict) = window.judged(end) else {
        work.settled(as_read("bore", &readings));
        return clean(end, named.row, work);
    };
    let by = |remedy: Remedy| verdict.cures.iter().any(|c| c.by == remedy);
    let under = by(Remedy::Ream) || by(Remedy::RoundOut);
    if by(Remedy::Sleeve) {
        too_large(&verdict, under, work);
        return false;
    }
    if now.covered {
        work.found(&verdict);
        return clean(end, named.row, work);
    }
    if under {
        let low = |size: Reading| {
            window
                .low
                .is_some_and(|low| settled_below(size.value(), low))
        };
        let mut bore = now.bore.iter();
        let shown = bore.any(|p| p.surface == Surface::OnMetal && low(p.reading));
        if !shown {
            not_shown(&mut verdict);
        }
        return too_small(end, named, &window, &verdict, shown, work);
    }
    if verdict.outcome == Outcome::Undecided
        && window.is_known()
        && now.on_metal()
        && let Some(next) = verdict.next.first()
    {
        let field = if now.worked { "passes" } else { "bore" };
        work.ask(end.field(field), next.ask.clone());
    }
    read_again(end, work);
    work.found(&verdict);
    false
}

/// What was not read on metal is not shown too small.
fn not_shown(verdict: &mut Verdict) {
    let out = |o: Option<Outcome>| o == Some(Outcome::NonconformityShown);
    for finding in verdict.findings.iter_mut().filter(|f| out(f.outcome)) {
        finding.outcome = Some(Outcome::Undecided);
        finding.doubt = Some(Doubt::NotSaid);
    }
    verdict.outcome = Outcome::Undecided;
}

/// What was read before the coating came off is read again.
fn read_again(end: &HeadEnd<'_>, work: &mut PlaceWork) {
    if end.now.outdated() {
        work.ask(end.field("passes"), HeadAsk::BareBore);
    }
}

/// The wall that is left, by the last readings.
fn wall(end: &HeadEnd<'_>, bore: &[Reading], work: &mut PlaceWork) {
    let (outside, bores) = (extremes(&end.sheet.outside), extremes(bore));
    let both = outside.first().zip(bores.last());
    let left = both.map(|(outside, bore)| outside.less(bore).scaled(0.5));
    if let Some(left) = left {
        work.settled(shown(left, HeadFact::Wall { left }));
    }
    if end.heard(Limited::Wall, "wall left", left.as_slice(), work) {
        work.out = true;
        work.cure(HeadFact::WallTooThin);
    }
}

/// Too large somewhere: a reamer cures no place that is over its limit.
fn too_large(verdict: &Verdict, small_too: bool, work: &mut PlaceWork) {
    work.out = true;
    work.found(verdict);
    if small_too {
        work.leave(HeadFact::NotReamed);
    }
    work.cure(HeadFact::LargerCup);
    work.cure(HeadFact::InsertOrTube);
    work.cure(HeadFact::NeverByForce);
}

/// Too small, and not known to be covered.
fn too_small(
    end: &HeadEnd<'_>,
    named: &Named<'_>,
    window: &Window<'_>,
    verdict: &Verdict,
    shown: bool,
    work: &mut PlaceWork,
) -> bool {
    work.found(verdict);
    let mut waits = Vec::new();
    if !shown && end.now.worked {
        work.ask(end.field("passes"), HeadAsk::CoatingLeft);
        return true;
    }
    if !shown {
        waits.push(end.field("coating"));
        work.ask(end.field("coating"), HeadAsk::BoreCoating);
    }
    if torn(end.now.marks, work) {
        return true;
    }
    let before = (work.questions.len(), work.steps.len());
    ream(end, named, window, waits, work);
    if (work.questions.len(), work.steps.len()) == before && shown {
        // Nothing here cures it for now.
        work.out = true;
    }
    true
}

/// A covered seat is cleaned by hand, whatever it is made of. Whether it is covered.
fn clean(end: &HeadEnd<'_>, row: Option<&HeadSeat>, work: &mut PlaceWork) -> bool {
    read_again(end, work);
    if !end.now.covered {
        return false;
    }
    let (material, bearing) = (end.joint.material, is_integrated(row));
    let task = HeadTask::Clean {
        at: end.place.clone(),
        again: end.now.worked,
        to_metal: material.is_some_and(MaterialKind::is_metal) && !bearing,
        bearing,
    };
    let mut draft = by_hand(&end.place, ByHand::Clean, task, material);
    if bearing {
        draft = draft.checking(HeadFact::InkBearing);
        draft = draft.proved(HeadFact::BearingDropsIn);
    }
    work.steps.push(draft);
    true
}

/// The limits that decide: the makers' own, and the row's where they say nothing.
struct Window<'a> {
    low: Option<Length>,
    high: Option<Length>,
    makers: Option<Heard>,
    /// The row has a say.
    row: Option<&'a HeadSeat>,
}

impl<'a> Window<'a> {
    fn of(end: &HeadEnd<'_>, row: Option<&'a HeadSeat>) -> Self {
        let makers = Heard::of(&end.sheet.limits, Limited::Bore);
        let own = |h: &Heard| (h.limits.lower().known(), h.limits.upper().known());
        let (low, high) = makers.as_ref().map_or((None, None), own);
        let below = |a: Option<Length>, b: Option<Length>| {
            a.zip(b).is_some_and(|(a, b)| settled_below(a, b))
        };
        let printed = |r: &&HeadSeat| (r.bore.lower(), r.bore.upper());
        // The makers' word comes first: what they limit on both sides, or beyond the list, the list has no say in.
        let row = row.filter(|r| {
            let (least, most) = printed(r);
            (least.is_some() || most.is_some())
                && (low.is_none() || high.is_none())
                && !below(most, low)
                && !below(high, least)
        });
        let (least, most) = row.as_ref().map_or((None, None), printed);
        let order = |a: &Length, b: &Length| settled_cmp(*a, *b);
        // The one that asks more.
        Self {
            low: low.into_iter().chain(least).max_by(order),
            high: high.into_iter().chain(most).min_by(order),
            makers,
            row,
        }
    }

    /// The upper limit, with whose it is, as what stops a reamer.
    fn stop(&self, smallest: &Reading) -> Option<CutLimit> {
        let most = self.high?;
        let left = up_to(most, smallest)?;
        let own = self.makers.as_ref().and_then(Heard::most);
        if let Some((_, what)) = own.filter(|(own, _)| settled_cmp(*own, most).is_le()) {
            return CutLimit::new(LimitKind::Maker, what, left, Grade::Shop).ok();
        }
        let row = self.row?;
        let (on, by) = (Limited::Bore, format!("{}, {}", row.code, row.name));
        let what = CommonFact::AtMost { on, most, by };
        let grade = row.bore.grade().unwrap_or(Grade::Shop);
        let cap = CutLimit::new(LimitKind::Maker, what, left, grade).ok()?;
        Some(cap.citing(row.bore.evidence()))
    }

    const fn is_known(&self) -> bool {
        self.low.is_some() && self.high.is_some()
    }

    /// The bore against all of them.
    fn judged(&self, end: &HeadEnd<'_>) -> Option<Verdict> {
        let makers = end.limits(Limited::Bore);
        let own = |l: &MakerLimit| OwnLimits::of(l.limits, l.owner.clone());
        let limits: Vec<OwnLimits> = makers.map(own).collect();
        let figure = self.row.map(|row| FigureName {
            family: HeadSeat::FAMILY.to_string(),
            code: row.code.to_string(),
            field: String::from("bore"),
        });
        if limits.is_empty() && figure.is_none() {
            return None;
        }
        let bore = BoreFit {
            bore: end.now.bore.clone(),
            limits,
            figure,
            rule: Some(end.site.rule),
        };
        bore.answer(end.site.tables).ok()
    }
}

/// Asks for the permit to ream the bore into its limits.
fn ream(
    end: &HeadEnd<'_>,
    named: &Named<'_>,
    window: &Window<'_>,
    mut waits: Vec<String>,
    work: &mut PlaceWork,
) {
    let (Some(smallest), Some(from)) = (end.now.smallest(), window.low) else {
        return;
    };
    let Some(needed) = up_to(from, &smallest) else {
        return;
    };
    let outside = extremes(&end.sheet.outside).first().copied();
    if outside.is_none() {
        waits.push(end.field("outside"));
    }
    let sheet = end.sheet;
    let (outsides, part) = (&sheet.outside, sheet.part.as_ref());
    let mut limits: Vec<CutLimit> = window.stop(&smallest).into_iter().collect();
    limits.extend(bore_caps::of(&sheet.limits, outsides, part, &smallest));
    let needed = (Counted::Diameter, needed);
    let mut request = end.request(Operation::Ream, needed, limits, named.row, work);
    request.identity = identity(named, window);
    request.waits = waits;
    let ruling = rule(request);
    let wanted = matches!(
        ruling,
        Ruling::Cut(_) | Ruling::Ask(Reason::LimitUnknown { .. })
    );
    if outside.is_none() && wanted {
        work.ask(end.field("outside"), CommonAsk::Outside);
    }
    let readings = if end.now.worked { "passes" } else { "bore" };
    let wish = end.wish(Operation::Ream, readings);
    let Some(permit) = take(work, ruling, &wish) else {
        return;
    };
    let to = permit.off().map_or(from, |off| smallest.value() + off.most);
    let at = end.place.clone();
    let finishes = HeadFact::Reamer {
        from,
        to: window.high,
    };
    let mut draft = Draft::cut(permit, HeadTask::Ream { at, from, to })
        .with(tool("reamer", finishes))
        .turned(Turn::Clockwise)
        .minding(Caution::Steering);
    if let Some(outside) = outside {
        let left = (outside.value() - to) / 2.0;
        let row = end.site.tables.find::<FacingRule>("head_tube_wall");
        let usual = row.ok().map(|row| Limits::of_requirement(&row.window));
        draft = draft.checking(HeadFact::WallReamed { left, usual });
    }
    work.steps.push(draft);
}

/// A bore that the makers limit on both sides may be cut to that whatever the seat is called.
fn identity(named: &Named<'_>, window: &Window<'_>) -> Identity {
    let makers = window.makers.as_ref().map(|h| h.limits);
    let own = makers.is_some_and(|l| l.lower().known().and(l.upper().known()).is_some());
    match (&named.identity, own) {
        (Identity::Open, true) => Identity::Known,
        (said, _) => said.clone(),
    }
}

/// What comes off to this size at the narrowest place: that reading's uncertainty counts.
fn up_to(size: Length, smallest: &Reading) -> Option<Reading> {
    Reading::new(size - smallest.value(), smallest.standard_uncertainty()).ok()
}
