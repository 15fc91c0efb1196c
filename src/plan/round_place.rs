//! A bore that takes a part — seat tube, press shell — and what is found, asked and cut there in one way.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::answer::{Counted, Operation};
use super::bore_caps;
use super::bore_now::BoreNow;
use super::caution::Caution;
use super::facts::{Fact, Found, RoundAsk, RoundFact, RoundTask};
use super::permit::{Identity, Permit, Pilot, Request, rule};
use super::sheet::{Common, Heard, Limited, Marks, Part};
use super::site::{Joint, Site, Wish, take};
use super::work::{Answers, ByHand, Draft, PlaceWork};
use crate::evidence::{Evidence, Grade};
use crate::face::{Allowance, CutLimit, LimitKind};
use crate::judge::{Fit, Instrument, MemberOf, OwnLimits, Verdict, Wall, extremes};
use crate::measure::{Outcome, Placed, Reading};
use crate::standard::Place;

/// A bore with what its sheet says of it.
pub(super) struct RoundPlace<'a> {
    pub site: Site<'a>,
    pub place: &'a Place,
    /// Its path in the sheet.
    pub path: &'static str,
    /// What is reamed, in words.
    pub what: &'static str,
    pub common: Common<'a>,
    pub now: BoreNow,
    pub outside: &'a [Reading],
    pub part: Option<&'a Part>,
    /// The fields that take what would decide its fit.
    pub fit: Answers<'static>,
    /// With what it is read.
    pub gauge: Instrument,
}

impl RoundPlace<'_> {
    fn field(&self, name: &str) -> String {
        format!("{}.{name}", self.path)
    }

    pub(super) fn joint(&self) -> Joint<'_> {
        self.site.joint(&self.common)
    }

    /// What its makers limit of this kind.
    pub(super) fn heard(&self, what: Limited) -> Option<Heard> {
        Heard::of(self.common.limits, what)
    }

    /// What came off, and a bore that got narrower.
    pub(super) fn came_off(&self, work: &mut PlaceWork) {
        let Some(off) = self.now.removed else { return };
        if off.sure_sign().is_lt() {
            let narrower = RoundFact::Narrower { by: -off.value() };
            work.contradicts(narrower, self.fit.trial, self.gauge.clone());
            return;
        }
        work.removed = Vec::from([off]);
        work.settled(Found {
            readings: Vec::from([off]),
            ..Found::of(RoundFact::CameOff { off })
        });
    }

    /// The wall that is left; over paint it looks thicker than it is.
    pub(super) fn wall(&self, work: &mut PlaceWork) {
        let Some(outside) = extremes(self.outside).first().copied() else {
            return;
        };
        let heard = self.heard(Limited::Wall);
        let own = |h: &Heard| OwnLimits::of(h.limits, h.owner());
        let asked = Wall {
            place: Some(self.place.clone()),
            outside,
            bore: self.now.bore.clone(),
            least: heard.iter().map(own).collect(),
            rule: Some(self.site.rule),
        };
        let Ok(said) = asked.answer(self.site.tables) else {
            return;
        };
        if heard.is_none() || self.now.covered && said.outcome == Outcome::Undecided {
            work.found(&said);
            return;
        }
        let reading = &*self.field("outside");
        work.judged(
            &said,
            Answers {
                reading,
                ..self.fit
            },
        );
    }

    /// The part that fits there, its outside known; else that is asked.
    pub(super) fn known_part(&self, work: &mut PlaceWork) -> Option<&Part> {
        let known = |p: &&Part| !p.outside.is_empty() || p.outside_limits.is_some();
        let part = self.part.filter(known);
        if part.is_none() {
            work.ask(self.fit.reading, RoundAsk::PartOutside);
        }
        part
    }

    /// How the part fits, by what its makers limit of this kind.
    pub(super) fn fits(&self, part: &Part, limited: Limited, of: Fit) -> Option<Verdict> {
        let heard = self.heard(limited);
        let limits = heard.iter().map(|h| h.limits).collect();
        let (clearance, interference) = match limited {
            Limited::Clearance => (limits, Vec::new()),
            _ => (Vec::new(), limits),
        };
        let asked = Fit {
            hole: MemberOf::placed(self.now.bore.clone()),
            shaft: MemberOf {
                readings: placed(part),
                limits: part.outside_limits,
                ..MemberOf::default()
            },
            clearance,
            interference,
            owner: heard.as_ref().map(Heard::owner),
            rule: Some(self.site.rule),
            ..of
        };
        asked.answer(self.site.tables).ok()
    }

    /// What may come off on diameter at the narrowest place: by the greatest bore, by the wall, by the part.
    pub(super) fn caps(
        &self,
        smallest: &Reading,
        bore: Option<&Heard>,
        evidence: Option<&Evidence>,
    ) -> Vec<CutLimit> {
        let most = bore.and_then(|h| Some((h, h.limits.upper().known()?)));
        let mut caps: Vec<CutLimit> = most
            .and_then(|(heard, most)| {
                let by = heard.upper_owner.clone();
                let left = Reading::exact(most).ok()?.less(smallest);
                let grade = heard.limits.grade();
                let what = RoundFact::AtMost { most, by };
                cap(LimitKind::Maker, what, (left, grade), evidence)
            })
            .into_iter()
            .collect();
        let limits = self.common.limits;
        caps.extend(bore_caps::of(limits, self.outside, self.part, smallest));
        caps
    }

    /// What is asked of the permit for a reamer, where nothing is said against it.
    pub(super) fn request(
        &self,
        work: &PlaceWork,
        identity: Identity,
        off: Reading,
    ) -> Request<'_> {
        let joint = self.joint();
        Request {
            place: self.place,
            operation: Operation::Ream,
            material: joint.material,
            bonded: joint.bonded,
            consent: joint.consent,
            contradicted: !work.contradictions.is_empty(),
            identity,
            metal_lost: false,
            makers_shape: false,
            pilot: Pilot::There,
            to_size: false,
            needed: Some((Counted::Diameter, off)),
            allowance: Allowance::default(),
            stops: Vec::new(),
            waits: Vec::new(),
            decision: self.site.rule,
        }
    }

    /// The permit, or what stands in its place.
    pub(super) fn permit(
        &self,
        work: &mut PlaceWork,
        request: Request<'_>,
        only_coating: bool,
    ) -> Option<Permit> {
        let wish = Wish {
            place: self.place,
            joint: self.path,
            readings: self.field("bore"),
            operation: Operation::Ream,
            what: self.what,
            only_coating,
            instrument: "three-point internal micrometer",
        };
        take(work, rule(request), &wish)
    }

    /// What the last pass tore is not reamed again here.
    pub(super) fn torn(&self, work: &mut PlaceWork) -> bool {
        let torn = self.now.marks == Some(Marks::Torn);
        if torn {
            let at = self.place.clone();
            work.steps
                .push(Draft::refer(self.place, RoundTask::Torn { at }));
        }
        torn
    }

    /// A coating is taken out by hand, whatever lies below it.
    pub(super) fn clean(&self, work: &mut PlaceWork) {
        if !self.now.covered {
            return;
        }
        let laminate = self.joint().material.is_some_and(|m| m.is_carbon());
        let at = self.place.clone();
        let task = RoundTask::Clean { at, laminate };
        let mut draft = Draft::by_hand(self.place, ByHand::Clean, task)
            .checking(RoundFact::WriteWhatIsLeft { laminate });
        if laminate {
            draft = draft.minding(Caution::Carbon);
        }
        work.steps.push(draft);
    }
}

/// The outside of a part as it was read.
pub(super) fn placed(part: &Part) -> Vec<Placed> {
    part.outside.iter().map(|r| Placed::from(*r)).collect()
}

/// A limit on what may come off, named by a fact.
pub(super) fn cap(
    kind: LimitKind,
    what: impl Into<Fact>,
    (most, grade): (Reading, Grade),
    evidence: Option<&Evidence>,
) -> Option<CutLimit> {
    let cap = CutLimit::new(kind, what.into().to_string(), most, grade);
    Some(cap.ok()?.citing(evidence))
}
