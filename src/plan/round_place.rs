//! A bore that takes a part — seat tube, press shell — and what is found, asked and cut there in one way.

use alloc::format;
use alloc::vec::Vec;

use super::answer::{Counted, Operation};
use super::bore_caps;
use super::bore_now::BoreNow;
use super::caution::Caution;
use super::facts::{Allowance, CommonAsk, CutLimit, Fact, Found, RoundFact, RoundTask};
use super::permit::{Identity, Permit, Request};
use super::sheet::{Common, Heard, Limited, Marks, Part};
use super::site::{Joint, Site, permitted};
use super::work::{Answers, ByHand, Draft, PlaceWork};
use crate::evidence::{Evidence, Grade};
use crate::face::LimitKind;
use crate::judge::{Fit, Instrument, MemberOf, OwnLimits, Verdict, Wall, extremes};
use crate::measure::{Outcome, Placed, Reading};

/// A bore with what its sheet says of it.
pub(super) struct RoundPlace<'a> {
    pub site: Site<'a>,
    pub work: &'a mut PlaceWork,
    /// Its path in the sheet.
    pub path: &'static str,
    pub common: Common<'a>,
    pub now: BoreNow,
    pub outside: &'a [Reading],
    pub part: Option<&'a Part>,
    /// The fields that take what would decide the fit of its part.
    pub fit: Answers<'static>,
}

impl<'a> RoundPlace<'a> {
    pub(super) fn joint(&self) -> Joint<'a> {
        self.site.joint(&self.common)
    }

    /// What its makers limit of this kind.
    pub(super) fn heard(&self, what: Limited) -> Option<Heard> {
        Heard::of(self.common.limits, what)
    }

    /// What decides here: out leaves the place out, undecided asks for what would decide it; a reading, in this field.
    pub(super) fn judged(&mut self, said: &Verdict, reading: &str) {
        let mut fields: Answers<'_> = self.fit;
        fields.reading = reading;
        self.work.judged(said, fields);
    }

    /// The same, as the judge takes it.
    pub(super) fn own(&self, what: Limited) -> Vec<OwnLimits> {
        let own = |h: Heard| OwnLimits::of(h.limits, h.owner());
        self.heard(what).map(own).into_iter().collect()
    }

    /// What came off; and a bore that got narrower where it was read before.
    pub(super) fn came_off(&mut self) {
        if let Some(by) = self.now.narrower {
            let (grew, passes) = (RoundFact::Grew { by }, self.fit.trial);
            self.work.contradicts(grew, passes, Instrument::BoreGauge);
        } else if let Some(off) = self.now.removed.filter(|off| off.sure_sign().is_ge()) {
            came_off(off, self.work);
        }
    }

    /// The wall that is left; over paint it looks thicker than it is.
    pub(super) fn wall(&mut self) {
        let Some(outside) = extremes(self.outside).first().copied() else {
            return;
        };
        let least = self.own(Limited::Wall);
        let limited = !least.is_empty();
        let asked = Wall {
            place: Some(self.work.place.clone()),
            outside,
            bore: self.now.bore.clone(),
            least,
            rule: Some(self.site.rule),
        };
        let Ok(said) = asked.answer(self.site.tables) else {
            return;
        };
        if limited && !(self.now.covered && said.outcome == Outcome::Undecided) {
            self.judged(&said, &format!("{}.outside", self.path));
        } else {
            self.work.found(&said);
        }
    }

    /// The part that fits there, its outside known; else that is asked.
    pub(super) fn known_part(&mut self) -> Option<&'a Part> {
        let known = |p: &&Part| !p.outside.is_empty() || p.outside_limits.is_some();
        let part = self.part.filter(known);
        if part.is_none() {
            self.work.ask(self.fit.reading, CommonAsk::PartOutside);
        }
        part
    }

    /// How the part fits, by what its makers limit.
    pub(super) fn fits(&self, part: &Part, of: Fit) -> Option<Verdict> {
        let clearance = self.heard(Limited::Clearance);
        let interference = self.heard(Limited::Interference);
        let owner = clearance.as_ref().or(interference.as_ref());
        let asked = Fit {
            owner: owner.map(Heard::owner),
            hole: MemberOf::placed(self.now.bore.clone()),
            shaft: MemberOf {
                limits: part.outside_limits,
                ..MemberOf::placed(placed(part))
            },
            clearance: clearance.iter().map(|h| h.limits).collect(),
            interference: interference.iter().map(|h| h.limits).collect(),
            rule: Some(self.site.rule),
            ..of
        };
        asked.answer(self.site.tables).ok()
    }

    /// What may come off on diameter at the narrowest place: by the greatest bore, by the wall, by the part.
    pub(super) fn caps(
        &self,
        smallest: &Reading,
        (bore, evidence): (Option<&Heard>, Option<&Evidence>),
    ) -> Vec<CutLimit> {
        let mut caps = bore_caps::of(self.common.limits, self.outside, self.part, smallest);
        if let Some(heard) = bore
            && let Some(most) = heard.limits.upper().known()
            && let Ok(left) = Reading::exact(most)
        {
            let by = heard.upper_owner.clone();
            let amount = (left.less(smallest), heard.limits.grade());
            let what = RoundFact::AtMost { most, by };
            caps.extend(cap(LimitKind::Maker, what, amount, evidence));
        }
        caps
    }

    /// The permit to ream so much on diameter, or what stands in its place.
    pub(super) fn permit(
        &mut self,
        identity: Identity,
        (off, caps): (Reading, Vec<CutLimit>),
        more: impl FnOnce(&mut Request<'_>),
    ) -> Option<Permit> {
        let place = self.work.place.clone();
        let joint = self.joint();
        let mut request = Request {
            contradicted: !self.work.contradictions.is_empty(),
            identity,
            needed: Some((Counted::Diameter, off)),
            allowance: Allowance::new(caps),
            ..joint.request(&place, Operation::Ream, self.site.rule)
        };
        more(&mut request);
        // A bore with a window is cleaned by a step of its own.
        let only_coating = self.now.covered && request.to_size;
        let readings = format!("{}.bore", self.path);
        permitted(self.work, request, self.path, readings, only_coating)
    }

    /// A coating is taken out by hand, whatever lies below it.
    pub(super) fn clean(&mut self) {
        if !self.now.covered {
            return;
        }
        let laminate = self.joint().material.is_some_and(|m| m.is_carbon());
        let at = self.work.place.clone();
        let mut draft = Draft::by_hand(
            &at.clone(),
            ByHand::Clean,
            RoundTask::Clean { at, laminate },
        )
        .checking(RoundFact::CoatingLeft);
        if laminate {
            draft = draft.minding(Caution::Carbon);
        }
        self.work.steps.push(draft);
    }
}

/// What came off on diameter.
pub(super) fn came_off(off: Reading, work: &mut PlaceWork) {
    work.removed = Vec::from([off]);
    work.settled(read(RoundFact::CameOff { off }, &[off]));
}

/// What the last pass tore is not reamed again here.
pub(super) fn torn(marks: Option<Marks>, work: &mut PlaceWork) -> bool {
    let torn = marks == Some(Marks::Torn);
    let at = work.place.clone();
    let refer = torn.then(|| Draft::refer(&at.clone(), RoundTask::Torn { at }));
    work.steps.extend(refer);
    torn
}

/// A fact with the readings that it is told of.
pub(super) fn read(fact: impl Into<Fact>, readings: &[Reading]) -> Found {
    let mut found = Found::of(fact);
    found.readings = extremes(readings);
    found
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
    Some(
        CutLimit::new(kind, what, most, grade)
            .ok()?
            .citing(evidence),
    )
}
