//! A thread judged by gauges, by what was seen of it, and by its bore.

use alloc::format;
use alloc::vec::Vec;

use strum::IntoEnumIterator;

use super::held::Held;
use super::verdict::{Curing, NextStep, Remedy, Verdict, size_reading};
use super::{Contradiction, Finding, OwnLimits, ThreadAsk, ThreadFact};
use crate::fact::closed_words;
use crate::measure::{DecisionRule, Outcome, Placed, Reading, Surface};
use crate::read::{Inside, form, words};
use crate::standard::Tables;
use crate::thread::{
    Designation, Gauging as Found, GaugingVerdict, Member, NOT_GO_TURNS, ThreadSize,
    ToleranceClass, judge_gauging, limits_of_size, usual_class,
};
use crate::{Error, ErrorKind};

closed_words! {
    /// Whether a thread passed a gauge. GO passes when it runs through by hand; NOT GO when it stops within two turns.
    ///
    /// ```
    /// use framegauge::judge::Passed;
    /// assert_eq!("failed".parse::<Passed>().unwrap(), Passed::Failed);
    /// ```
    Passed {
        /// As a good thread does.
        Passed,
        /// As a good thread does not.
        Failed,
    }
}

closed_words! {
    /// What was seen or felt of a thread.
    ///
    /// ```
    /// use framegauge::judge::ThreadSeen;
    /// assert_eq!("loose_with_several".parse::<ThreadSeen>().unwrap(), ThreadSeen::LooseWithSeveral);
    /// ```
    ThreadSeen {
        /// It looks sound.
        Sound,
        /// A good part runs in by hand.
        TakesPart,
        /// Paint, dirt or old compound in the grooves.
        Fouled,
        /// Rough or burred.
        Rough,
        /// A part jams after a few turns.
        Jams,
        /// A part of another thread or hand was forced in, or a part was started crooked.
        Crossed,
        /// One good part is loose in it.
        Loose,
        /// Two or more good parts are loose in it.
        LooseWithSeveral,
        /// Threads are torn out.
        Stripped,
        /// No thread is cut yet.
        Uncut,
    }
}

words!(Passed, ThreadSeen);

form! {
    /// A thread by its gauges, by what was seen of it, and by its bore.
    ///
    /// A bore reading proves nothing about the pitch diameter: over-tapped threads keep their bore. A bore over its limit is out,
    /// one within shows nothing. What contradicts itself is told so.
    ///
    /// ```
    /// use framegauge::{judge::{Gauging, Passed, Remedy, ThreadSeen}, measure::Outcome, standard::Tables};
    /// let judged = |asked: Gauging| asked.answer(Tables::ours()).unwrap();
    /// // GO alone shows nothing; NOT GO that runs in is worn or over-tapped, and no chaser cures it.
    /// let go = Gauging { go: Some(Passed::Passed), ..Gauging::default() };
    /// assert_eq!(judged(go.clone()).outcome, Outcome::Undecided);
    /// let worn = judged(Gauging { not_go: Some(Passed::Failed), ..go });
    /// assert_eq!(worn.outcome, Outcome::NonconformityShown);
    /// assert!(!worn.cures.iter().any(|c| c.by == Remedy::Chase));
    /// // Gauges that fail on a thread that looks sound contradict what was seen.
    /// let odd = judged(Gauging { go: Some(Passed::Failed), seen: vec![ThreadSeen::Sound], ..Gauging::default() });
    /// assert!(odd.findings.iter().any(|f| f.fact.code() == "contradiction"));
    /// ```
    #[derive(Default)]
    Gauging {
        /// The thread, with its class where that is known.
        thread: Option<Designation>,
        /// Whether it is the thread of a screw; a hole unless stated.
        screw: Option<bool>,
        /// The threaded GO gauge, full form over the whole length.
        go: Option<Passed>,
        /// The threaded NOT GO gauge, at both ends.
        not_go: Option<Passed>,
        /// Turns that the NOT GO gauge went in, in place of `not_go`.
        not_go_turns: Option<f64>,
        /// The plain GO gauge over the crests.
        plain_go: Option<Passed>,
        /// The plain NOT GO gauge over the crests.
        plain_not_go: Option<Passed>,
        /// What was seen or felt of it.
        seen: Vec<ThreadSeen>,
        /// The bore over the crests of a hole.
        minor: Vec<Placed> => Inside,
        /// What its maker writes of that bore; it decides before what is published.
        limits: Option<OwnLimits>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

/// What the bore over the crests of a thread is held against.
pub(crate) type MinorHeld = Held<'static>;

/// The limits of the bore: its maker's, else those of the class that is stated or usual. `None` where none are published.
pub(crate) fn minor_held(
    size: &ThreadSize,
    class: Option<ToleranceClass>,
    own: Option<&OwnLimits>,
) -> Result<Option<MinorHeld>, Error> {
    if let Some(own) = own {
        return Ok(Some(own.held()));
    }
    let Some(class) = class.or_else(|| usual_class(size, Member::Internal)) else {
        return Ok(None);
    };
    let limits = limits_of_size(size, &class).map_err(|e| e.named("thread"))?;
    Ok(Some(Held {
        limits: limits.minor,
        owner: format!("{size}, {class}").into(),
        evidence: Some(limits.evidence()),
    }))
}

impl Gauging {
    fn saw(&self, signs: &[ThreadSeen]) -> bool {
        signs.iter().any(|sign| self.seen.contains(sign))
    }

    /// What the gauges did and what that says; `None` when none was tried.
    fn gauged(&self) -> Result<Option<(Found, GaugingVerdict)>, Error> {
        let passed = |p: Option<Passed>| p.map(|p| p == Passed::Passed);
        if let (Some(turns), Some(word)) = (self.not_go_turns, self.not_go)
            && (turns <= NOT_GO_TURNS) != (word == Passed::Passed)
        {
            return Err(Error::new(
                ErrorKind::Contradiction,
                "not_go_turns",
                turns,
                format!("`not_go` is {word}, and it passes when it stops within two turns"),
                "state one of them",
            ));
        }
        let by_word = passed(self.not_go).map(|p| if p { 0.0 } else { NOT_GO_TURNS + 1.0 });
        let found = Found {
            go_passes: passed(self.go),
            not_go_turns: self.not_go_turns.or(by_word),
            plain_go_passes: passed(self.plain_go),
            plain_not_go_enters: passed(self.plain_not_go).map(|passed| !passed),
        };
        if found == Found::default() {
            return Ok(None);
        }
        let told = judge_gauging(&found).map_err(|e| e.named("not_go_turns"))?;
        Ok(Some((found, told)))
    }

    /// The bore over the crests against the limits of its thread; `None` where there are none, or no reading.
    fn bore(&self, tables: Tables<'_>) -> Result<Option<Finding>, Error> {
        for (index, placed) in self.minor.iter().enumerate() {
            size_reading("", &placed.reading).map_err(|e| e.within(&format!("minor[{index}]")))?;
        }
        let (Some(thread), false) = (self.thread, self.minor.is_empty()) else {
            return Ok(None);
        };
        let Some(held) = minor_held(&thread.size, thread.class, self.limits.as_ref())? else {
            return Ok(None);
        };
        let readings: Vec<Reading> = self.minor.iter().map(|p| p.reading).collect();
        let mut found = held.against("bore", &readings, self.rule);
        let count = readings.len();
        found.fact = ThreadFact::CrestBore { count }.into();
        let lies = |on| move |p: &Placed| p.surface == on;
        Ok(Some(if self.minor.iter().any(lies(Surface::OverPaint)) {
            found.read_on_paint(true, tables)
        } else if self.minor.iter().all(lies(Surface::OnMetal)) {
            found
        } else {
            found.perhaps_on_paint(true, tables)
        }))
    }

    /// Whether the bore is out by more than its uncertainty, whatever risk the decision rule takes: what lies within it
    /// contradicts nobody.
    fn surely_out(&self, tables: Tables<'_>) -> Result<bool, Error> {
        let sure = Self {
            rule: Some(DecisionRule::Iso14253Of1998),
            ..self.clone()
        };
        let found = sure.bore(tables)?;
        Ok(found.and_then(|f| f.outcome) == Some(Outcome::NonconformityShown))
    }

    /// The verdict.
    ///
    /// # Errors
    /// `Contradiction` for a NOT GO that is told twice and differently; `OutOfRange` and `NotFinite` for turns and sizes that are
    /// none; those of the thread.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        let gauged = self.gauged()?;
        let bore = self.bore(tables)?;
        let bore_out = bore.as_ref().and_then(|f| f.outcome) == Some(Outcome::NonconformityShown);
        let outcome = gauged.as_ref().map(|(_, told)| told.outcome);
        let proved = outcome == Some(Outcome::ConformityShown);
        let mut findings = Vec::new();
        if let Some((found, told)) = &gauged {
            findings.push(Finding::practice(told.outcome, self.gauges(found)));
        }
        if !proved {
            let worst_first = ThreadSeen::iter().rev();
            findings.extend(worst_first.filter_map(|sign| self.sign(sign, gauged.is_some())));
        }
        for of in self.contradictions(outcome, bore_out && self.surely_out(tables)?) {
            let fact = ThreadFact::Contradiction { of };
            findings.push(Finding::practice(Outcome::Undecided, fact));
        }
        // A bore within its limits proves nothing about the flanks.
        let (out, within): (Vec<_>, Vec<_>) = bore.into_iter().partition(|_| bore_out);
        findings.extend(out);
        let mut said = Verdict::from_findings("thread", findings);
        said.beside = within;
        if said.outcome != Outcome::ConformityShown {
            let cures = self.cures(gauged.as_ref(), bore_out).iter().copied();
            said.cures = cures.map(Curing::by).collect();
        }
        if self.saw(&[ThreadSeen::Jams]) && gauged.is_none() {
            said = said
                .then(NextStep::of(ThreadAsk::Grooves))
                .then(NextStep::of(ThreadAsk::PitchAndHand));
        }
        Ok(if proved {
            said
        } else {
            said.then(NextStep::of(self.gauge_next(gauged.as_ref())))
        })
    }

    fn gauges(&self, found: &Found) -> ThreadFact {
        ThreadFact::Gauged {
            screw: self.screw == Some(true),
            go: found.go_passes,
            not_go: found.not_go_turns.map(|turns| turns <= NOT_GO_TURNS),
            plain_go: found.plain_go_passes,
            plain_not_go: found.plain_not_go_enters.map(|enters| !enters),
        }
    }

    /// What was seen, as far as it tells anything beside what else was seen.
    fn sign(&self, sign: ThreadSeen, gauged: bool) -> Option<Finding> {
        use ThreadSeen as S;
        let doubted = gauged || self.saw(&[S::Crossed, S::Loose, S::LooseWithSeveral]);
        let (tells, shows) = match sign {
            S::Sound => (false, None),
            S::TakesPart => (!doubted, None),
            S::Stripped | S::LooseWithSeveral => (true, Some(Outcome::NonconformityShown)),
            S::Loose => (!self.saw(&[S::LooseWithSeveral]), Some(Outcome::Undecided)),
            S::Rough => (!self.saw(&[S::Fouled]), Some(Outcome::Undecided)),
            S::Fouled | S::Jams | S::Crossed | S::Uncut => (true, Some(Outcome::Undecided)),
        };
        let fact = ThreadFact::Seen { sign };
        (tells && self.saw(&[sign])).then(|| match shows {
            Some(outcome) => Finding::practice(outcome, fact),
            None => Finding::of(fact),
        })
    }

    /// What cannot both be true.
    fn contradictions(
        &self,
        gauged: Option<Outcome>,
        bore_out: bool,
    ) -> impl Iterator<Item = Contradiction> {
        let not_go_fails = self.not_go == Some(Passed::Failed)
            || self.not_go_turns.is_some_and(|turns| turns > NOT_GO_TURNS);
        let both_fail = self.go == Some(Passed::Failed) && not_go_fails;
        let sound = self.saw(&[ThreadSeen::Sound]);
        let torn = self.saw(&[ThreadSeen::Stripped]);
        let loose = self.saw(&[ThreadSeen::LooseWithSeveral]);
        let uncut = self.saw(&[ThreadSeen::Uncut]);
        let fails = gauged == Some(Outcome::NonconformityShown);
        // A gauge outweighs a feel, and torn threads pass none.
        let passes = gauged == Some(Outcome::ConformityShown);
        let all = [
            (both_fail, Contradiction::TooSmallAndTooLarge),
            (sound && fails, Contradiction::SoundButFails),
            (sound && bore_out, Contradiction::SoundButBoreOut),
            (sound && (torn || loose), Contradiction::SoundButTorn),
            (torn && passes, Contradiction::TornButPasses),
            (uncut && gauged.is_some(), Contradiction::UncutButGauged),
        ];
        all.into_iter()
            .filter_map(|(stands, of)| stands.then_some(of))
    }

    fn cures(&self, gauged: Option<&(Found, GaugingVerdict)>, bore_out: bool) -> &'static [Remedy] {
        use ThreadSeen as S;
        let helps = gauged.is_some_and(|(_, g)| g.chasing_may_help);
        let fails = gauged.is_some_and(|(_, g)| g.outcome == Outcome::NonconformityShown);
        let lost = self.saw(&[S::Stripped, S::LooseWithSeveral]) || (fails && !helps);
        let blocked = helps || self.saw(&[S::Fouled, S::Rough, S::Jams, S::Crossed]);
        match (lost, blocked, bore_out) {
            (true, ..) if self.screw == Some(true) => &[Remedy::OtherPart],
            (true, ..) => &[Remedy::Sleeve, Remedy::Refer],
            (_, true, true) => &[Remedy::Clean, Remedy::Chase, Remedy::Refer],
            (_, true, false) => &[Remedy::Clean, Remedy::Chase],
            (_, false, true) => &[Remedy::Refer],
            (_, false, false) => &[],
        }
    }

    /// What the gauges have not told yet, or what is left to do after they have told.
    fn gauge_next(&self, gauged: Option<&(Found, GaugingVerdict)>) -> ThreadAsk {
        let screw = self.screw == Some(true);
        match gauged.filter(|(tried, _)| tried.not_go_turns.is_some()) {
            None => ThreadAsk::NotGoOrWires,
            Some((_, told)) if told.outcome == Outcome::Undecided => ThreadAsk::OtherGauges,
            Some((_, told)) if told.chasing_may_help => ThreadAsk::GaugesAgain { screw },
            Some(_) => ThreadAsk::EngagementLeft { screw },
        }
    }
}
