//! The reaming of a head-tube bore: the limits it is cut to, and what may come off.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::answer::{Counted, Operation};
use super::bore_caps;
use super::caution::Caution;
use super::facts::{Allowance, CutLimit};
use super::head::{HeadEnd, Named};
use super::permit::{Identity, Request, rule};
use super::sheet::{Heard, Limited};
use super::site::{Wish, take, tool};
use super::work::{Draft, PlaceWork};
use crate::evidence::{Evidence, Grade};
use crate::face::LimitKind;
use crate::judge::{BoreFit, FigureName, OwnLimits, Verdict, extremes};
use crate::measure::{Reading, settled_cmp};
use crate::quantity::{Length, in_mm};
use crate::standard::{HeadSeat, Row, SeatKind};
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
        // The makers' word comes first: what they limit on both sides, or beyond the list, the list has no say in.
        let listed = row
            .filter(|r| r.bore.lower().is_some() || r.bore.upper().is_some())
            .filter(|_| low.is_none() || high.is_none())
            .filter(|r| match (&low, r.bore.upper()) {
                (Some(low), Some(most)) => settled_cmp(low.at, most).is_le(),
                _ => true,
            })
            .filter(|r| match (&high, r.bore.lower()) {
                (Some(high), Some(least)) => settled_cmp(least, high.at).is_le(),
                _ => true,
            });
        let side = |at: Option<Length>| {
            let row = listed?;
            Some(Bounded {
                at: at?,
                owner: format!("{}, {}", row.code, row.name),
                grade: row.bore.grade().unwrap_or(Grade::Shop),
                evidence: row.bore.evidence(),
            })
        };
        Self {
            low: tighter(low, side(listed.and_then(|r| r.bore.lower())), true),
            high: tighter(high, side(listed.and_then(|r| r.bore.upper())), false),
            row: listed,
        }
    }

    pub(super) const fn is_known(&self) -> bool {
        self.low.is_some() && self.high.is_some()
    }

    /// The bore against all of them.
    pub(super) fn judged(&self, end: &HeadEnd<'_>) -> Option<Verdict> {
        let limits: Vec<OwnLimits> = end
            .sheet
            .limits
            .iter()
            .filter(|l| l.what == Limited::Bore)
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
        BoreFit {
            bore: end.now.bore.clone(),
            limits,
            figure,
            rule: Some(end.site.rule),
        }
        .answer(end.site.tables)
        .ok()
    }

    fn words(&self) -> String {
        match (&self.low, &self.high) {
            (Some(low), Some(high)) => {
                format!("between {} and {}", in_mm(low.at), in_mm(high.at))
            }
            (Some(low), None) => format!("at least {}", in_mm(low.at)),
            (None, Some(high)) => format!("at most {}", in_mm(high.at)),
            (None, None) => String::new(),
        }
    }
}

/// The one that asks more.
fn tighter<'a>(
    one: Option<Bounded<'a>>,
    other: Option<Bounded<'a>>,
    lower: bool,
) -> Option<Bounded<'a>> {
    match (one, other) {
        (Some(a), Some(b)) if settled_cmp(a.at, b.at).is_gt() == lower => Some(a),
        (Some(_), Some(b)) => Some(b),
        (one, other) => one.or(other),
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
    let Ok(needed) = Reading::new(low.at - smallest.value(), smallest.standard_uncertainty())
    else {
        return;
    };
    let outside = end.field("outside");
    let wall_unknown = end.sheet.outside.is_empty();
    if wall_unknown {
        waits.push(outside.clone());
    }
    let ruling = rule(Request {
        place: &end.place,
        operation: Operation::Ream,
        material: end.joint.material,
        bonded: end.joint.bonded,
        consent: end.joint.consent,
        contradicted: !work.contradictions.is_empty(),
        identity: identity(named, end),
        metal_lost: false,
        makers_shape: named.row.is_some_and(|r| r.kind == SeatKind::Integrated),
        pilot: end.pilot.clone(),
        to_size: false,
        needed: Some((Counted::Diameter, needed)),
        allowance: allowance(end, &smallest, window),
        stops: Vec::new(),
        waits,
        decision: end.site.rule,
    });
    if wall_unknown
        && matches!(
            ruling,
            super::permit::Ruling::Cut(_)
                | super::permit::Ruling::Ask(super::permit::Reason::LimitUnknown { .. })
        )
    {
        work.ask_plain(
            outside,
            "outside diameter of the head tube there",
            "the wall that is left decides whether reaming is allowed",
            "outside caliper",
        );
    }
    let wish = Wish {
        place: &end.place,
        joint: end.path,
        readings: end.field(if end.now.worked { "passes" } else { "bore" }),
        operation: Operation::Ream,
        only_coating: false,
    };
    let Some(permit) = take(work, ruling, &wish) else {
        return;
    };
    let reach = permit
        .off()
        .map_or(low.at, |off| smallest.value() + off.most);
    let mut draft = Draft::cut_plain(
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
        format!("head-tube reamer that finishes {}", window.words()),
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
fn identity(named: &Named<'_>, end: &HeadEnd<'_>) -> Identity {
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
    limits.extend(bore_caps::of(
        &end.sheet.limits,
        &end.sheet.outside,
        end.sheet.part.as_ref(),
        smallest,
    ));
    Allowance::new(limits)
}
