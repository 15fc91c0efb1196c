//! The reaming of a head-tube bore: the limits it is cut to, and what may come off.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::answer::{Counted, Operation};
use super::bore_caps;
use super::caution::Caution;
use super::facts::{HeadAsk, HeadFact, HeadTask};
use super::head::{HeadEnd, Named};
use super::permit::{Identity, Reason, Ruling, rule};
use super::sheet::{Heard, Limited};
use super::site::{take, tool};
use super::work::{Draft, PlaceWork};
use crate::evidence::{Evidence, Grade};
use crate::face::{CutLimit, LimitKind};
use crate::judge::{BoreFit, FigureName, OwnLimits, Verdict, extremes};
use crate::measure::{Reading, settled_below};
use crate::quantity::Length;
use crate::standard::{HeadSeat, Row};
use crate::thread::Turn;

/// One side of the limits of a bore, with whose it is.
pub(super) struct Bounded<'a> {
    pub at: Length,
    owner: String,
    grade: Grade,
    evidence: Option<&'a Evidence>,
}

/// The limits that decide: the makers' own, and the row's where they say nothing.
pub(super) struct Window<'a> {
    pub low: Option<Bounded<'a>>,
    pub high: Option<Bounded<'a>>,
    /// The row has a say.
    row: Option<&'a HeadSeat>,
}

impl<'a> Window<'a> {
    pub(super) fn of(end: &HeadEnd<'_>, row: Option<&'a HeadSeat>) -> Self {
        let heard = Heard::of(&end.sheet.limits, Limited::Bore);
        let heard = heard.as_ref();
        let (low, high) = (
            heard.and_then(|h| h.limits.lower().known()),
            heard.and_then(|h| h.limits.upper().known()),
        );
        let below = |a: Option<Length>, b: Option<Length>| {
            a.zip(b).is_some_and(|(a, b)| settled_below(a, b))
        };
        // The makers' word comes first: what they limit on both sides, or beyond the list, the list has no say in.
        let row = row.filter(|r| {
            let (least, most) = (r.bore.lower(), r.bore.upper());
            (least.is_some() || most.is_some())
                && (low.is_none() || high.is_none())
                && !below(most, low)
                && !below(high, least)
        });
        let (least, most) = (
            row.and_then(|r| r.bore.lower()),
            row.and_then(|r| r.bore.upper()),
        );
        let own = |at, owner: Option<&String>| Bounded {
            at,
            owner: owner.cloned().unwrap_or_default(),
            grade: Grade::Shop,
            evidence: None,
        };
        let listed = |at: Option<Length>| {
            let row = row?;
            Some(Bounded {
                at: at?,
                owner: format!("{}, {}", row.code, row.name),
                grade: row.bore.grade().unwrap_or(Grade::Shop),
                evidence: row.bore.evidence(),
            })
        };
        // The one that asks more.
        let low = low.filter(|low| least.is_none_or(|least| settled_below(least, *low)));
        let high = high.filter(|high| most.is_none_or(|most| !settled_below(most, *high)));
        let low = low.map(|at| own(at, heard.map(|h| &h.lower_owner)));
        let high = high.map(|at| own(at, heard.map(|h| &h.upper_owner)));
        Self {
            low: low.or_else(|| listed(least)),
            high: high.or_else(|| listed(most)),
            row,
        }
    }

    pub(super) const fn is_known(&self) -> bool {
        self.low.is_some() && self.high.is_some()
    }

    /// The bore against all of them.
    pub(super) fn judged(&self, end: &HeadEnd<'_>) -> Option<Verdict> {
        let makers = end.limits(Limited::Bore);
        let limits: Vec<_> = makers
            .map(|l| OwnLimits::of(l.limits, l.owner.clone()))
            .collect();
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
pub(super) fn ream(
    end: &HeadEnd<'_>,
    named: &Named<'_>,
    window: &Window<'_>,
    mut waits: Vec<String>,
    work: &mut PlaceWork,
) {
    let (Some(smallest), Some(low)) = (end.now.smallest(), window.low.as_ref()) else {
        return;
    };
    let from = low.at;
    let Ok(needed) = up_to(from, &smallest) else {
        return;
    };
    let outside = extremes(&end.sheet.outside).first().copied();
    if outside.is_none() {
        waits.push(end.field("outside"));
    }
    let mut request = end.request(
        Operation::Ream,
        (Counted::Diameter, needed),
        caps(end, &smallest, window),
        named.row,
        work,
    );
    request.identity = identity(named, end);
    request.waits = waits;
    let ruling = rule(request);
    let wanted = matches!(
        ruling,
        Ruling::Cut(_) | Ruling::Ask(Reason::LimitUnknown { .. })
    );
    if outside.is_none() && wanted {
        work.ask(end.field("outside"), HeadAsk::TubeOutside);
    }
    let readings = if end.now.worked { "passes" } else { "bore" };
    let wish = end.wish(Operation::Ream, readings, "three-point internal micrometer");
    let Some(permit) = take(work, ruling, &wish) else {
        return;
    };
    let to = permit.off().map_or(from, |off| smallest.value() + off.most);
    let at = end.place.clone();
    let finishes = HeadFact::Reamer {
        from,
        to: window.high.as_ref().map(|high| high.at),
    };
    let mut draft = Draft::cut(permit, HeadTask::Ream { at, from, to })
        .with(tool("reamer", finishes))
        .turned(Turn::Clockwise)
        .minding(Caution::Steering);
    if let Some(outside) = outside {
        let left = (outside.value() - to) / 2.0;
        draft = draft.checking(HeadFact::WallReamed { left });
    }
    work.steps.push(draft);
}

/// A bore that the makers limit may be cut to their limits whatever the seat is called.
fn identity(named: &Named<'_>, end: &HeadEnd<'_>) -> Identity {
    let heard = Heard::of(&end.sheet.limits, Limited::Bore).map(|h| h.limits);
    let own = heard.is_some_and(|l| l.lower().known().and(l.upper().known()).is_some());
    match (&named.identity, own) {
        (Identity::Open, true) => Identity::Known,
        (said, _) => said.clone(),
    }
}

/// What comes off to this size at the narrowest place: that reading's uncertainty counts.
fn up_to(size: Length, smallest: &Reading) -> Result<Reading, crate::Error> {
    Reading::new(size - smallest.value(), smallest.standard_uncertainty())
}

/// What may come off, on diameter at the narrowest place.
fn caps(end: &HeadEnd<'_>, smallest: &Reading, window: &Window<'_>) -> Vec<CutLimit> {
    let sheet = end.sheet;
    let upper = window.high.as_ref().and_then(|high| {
        let of = high.owner.clone();
        let what = HeadFact::UpperLimit { at: high.at, of }.to_string();
        let left = up_to(high.at, smallest).ok()?;
        let cap = CutLimit::new(LimitKind::Maker, what, left, high.grade).ok()?;
        Some(cap.citing(high.evidence))
    });
    let mut caps: Vec<CutLimit> = upper.into_iter().collect();
    caps.extend(bore_caps::of(
        &sheet.limits,
        &sheet.outside,
        sheet.part.as_ref(),
        smallest,
    ));
    caps
}
