//! A thread judged by gauges, by what was seen of it, and by its bore.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use strum::IntoEnumIterator;

use super::verdict::{Curing, NextStep, Remedy, Verdict, size_reading};
use super::{Contradiction, Finding, OwnLimits, ThreadAsk, ThreadFact, sizes_against};
use crate::Error;
use crate::evidence::Evidence;
use crate::measure::{DecisionRule, Limits, Outcome, Placed, Reading, Surface};
use crate::read::{Inside, form, words};
use crate::standard::Tables;
use crate::thread::{
    Designation, Gauging as Found, GaugingVerdict, Member, NOT_GO_TURNS, ThreadSize,
    ToleranceClass, judge_gauging, limits_of_size, usual_class,
};

/// Whether a thread passed a gauge. GO passes when it runs through by hand; NOT GO when it stops within two turns.
///
/// ```
/// use framegauge::judge::Passed;
/// assert_eq!("failed".parse::<Passed>().unwrap(), Passed::Failed);
/// ```
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Passed {
    /// As a good thread does.
    Passed,
    /// As a good thread does not.
    Failed,
}

/// What was seen or felt of a thread.
///
/// ```
/// use framegauge::judge::ThreadSeen;
/// assert_eq!("loose_with_several".parse::<ThreadSeen>().unwrap(), ThreadSeen::LooseWithSeveral);
/// ```
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum ThreadSeen {
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
    /// assert!(odd.findings.iter().any(|f| f.what() == "contradiction"));
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
#[derive(Debug)]
pub(crate) struct MinorHeld {
    pub limits: Limits,
    pub owner: String,
    pub evidence: Option<&'static Evidence>,
}

/// The limits of the bore: its maker's, else those of the class that is stated or usual. `None` where none are published.
pub(crate) fn minor_held(
    size: &ThreadSize,
    class: Option<ToleranceClass>,
    own: Option<&OwnLimits>,
) -> Result<Option<MinorHeld>, Error> {
    if let Some(own) = own {
        return Ok(Some(MinorHeld {
            limits: own.limits,
            owner: own.owner.to_string(),
            evidence: None,
        }));
    }
    let Some(class) = class.or_else(|| usual_class(size, Member::Internal)) else {
        return Ok(None);
    };
    let limits = limits_of_size(size, &class).map_err(|e| e.named("thread"))?;
    Ok(Some(MinorHeld {
        limits: limits.minor,
        owner: format!("{size}, {class}"),
        evidence: Some(limits.evidence()),
    }))
}

impl Gauging {
    const fn member(&self) -> Member {
        match self.screw {
            Some(true) => Member::External,
            _ => Member::Internal,
        }
    }

    fn saw(&self, signs: &[ThreadSeen]) -> bool {
        signs.iter().any(|sign| self.seen.contains(sign))
    }

    /// What the gauges said, as the thread math takes it; `None` when none was tried.
    fn found(&self) -> Result<Option<Found>, Error> {
        let passed = |p: Option<Passed>| p.map(|p| p == Passed::Passed);
        if let (Some(turns), Some(word)) = (self.not_go_turns, self.not_go)
            && (turns <= NOT_GO_TURNS) != (word == Passed::Passed)
        {
            return Err(Error::new(
                crate::ErrorKind::Contradiction,
                "not_go_turns",
                turns,
                format!("`not_go` is {word}, and it passes when it stops within two turns"),
                "state one of them",
            ));
        }
        let by_word = self.not_go.map(|p| match p {
            Passed::Passed => 0.0,
            Passed::Failed => NOT_GO_TURNS + 1.0,
        });
        let found = Found {
            go_passes: passed(self.go),
            not_go_turns: self.not_go_turns.or(by_word),
            plain_go_passes: passed(self.plain_go),
            plain_not_go_enters: passed(self.plain_not_go).map(|passed| !passed),
        };
        Ok((found != Found::default()).then_some(found))
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
        let rule = self.rule.unwrap_or_default();
        let mut found = sizes_against(
            "bore",
            &readings,
            &held.limits,
            &held.owner,
            held.evidence,
            rule,
        );
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

    /// The verdict.
    ///
    /// # Errors
    /// `Contradiction` for a NOT GO that is told twice and differently; `OutOfRange` and `NotFinite` for turns and sizes that are
    /// none; those of the thread.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        let found = self.found()?;
        let gauged = found
            .as_ref()
            .map(|f| judge_gauging(self.member(), f))
            .transpose()
            .map_err(|e| e.named("not_go_turns"))?;
        let bore = self.bore(tables)?;
        let bore_out = bore.as_ref().and_then(|f| f.outcome) == Some(Outcome::NonconformityShown);
        let outcome = gauged.as_ref().map(|g| g.outcome);
        let proved = outcome == Some(Outcome::ConformityShown);
        let mut findings = Vec::new();
        if let (Some(found), Some(outcome)) = (&found, outcome) {
            findings.push(Finding::practice(outcome, self.gauges(found)));
        }
        if !proved {
            findings.extend(
                ThreadSeen::iter()
                    .rev()
                    .filter_map(|s| self.sign(s, gauged.is_some())),
            );
        }
        for (stands, of) in self.contradictions(outcome, bore_out) {
            if stands {
                let fact = ThreadFact::Contradiction { of };
                findings.push(Finding::practice(Outcome::Undecided, fact));
            }
        }
        // A bore within its limits proves nothing about the flanks.
        let (out, within): (Vec<_>, Vec<_>) = bore.into_iter().partition(|_| bore_out);
        findings.extend(out);
        let mut said = Verdict::from_findings("thread", findings);
        said.beside = within;
        if said.outcome != Outcome::ConformityShown {
            let cures = self.cures(gauged.as_ref(), bore_out);
            said.cures = cures.iter().map(|by| Curing::by(*by)).collect();
        }
        if self.saw(&[ThreadSeen::Jams]) && gauged.is_none() {
            said = said
                .then(NextStep::of(ThreadAsk::Grooves))
                .then(NextStep::of(ThreadAsk::PitchAndHand));
        }
        Ok(if proved {
            said
        } else {
            said.then(NextStep::of(gauge_next(found.as_ref(), gauged.as_ref())))
        })
    }

    fn gauges(&self, found: &Found) -> ThreadFact {
        ThreadFact::Gauged {
            screw: self.member() == Member::External,
            go: found.go_passes,
            not_go: found.not_go_turns.map(|turns| turns <= NOT_GO_TURNS),
            plain_go: found.plain_go_passes,
            plain_not_go: found.plain_not_go_enters.map(|enters| !enters),
        }
    }

    /// What was seen, as far as it tells anything beside what else was seen.
    fn sign(&self, sign: ThreadSeen, gauged: bool) -> Option<Finding> {
        use ThreadSeen::{
            Crossed, Fouled, Jams, Loose, LooseWithSeveral, Rough, Sound, Stripped, TakesPart,
            Uncut,
        };
        let tells = match sign {
            Sound => false,
            TakesPart => !gauged && !self.saw(&[Crossed, Loose, LooseWithSeveral]),
            Loose => !self.saw(&[LooseWithSeveral]),
            Rough => !self.saw(&[Fouled]),
            Fouled | Jams | Crossed | LooseWithSeveral | Stripped | Uncut => true,
        };
        let fact = ThreadFact::Seen { sign };
        (tells && self.saw(&[sign])).then(|| match sign {
            Sound | TakesPart => Finding::of(fact),
            Stripped | LooseWithSeveral => Finding::practice(Outcome::NonconformityShown, fact),
            Fouled | Rough | Jams | Crossed | Loose | Uncut => {
                Finding::practice(Outcome::Undecided, fact)
            }
        })
    }

    /// What cannot both be true, and whether it is said here.
    fn contradictions(
        &self,
        gauged: Option<Outcome>,
        bore_out: bool,
    ) -> [(bool, Contradiction); 6] {
        let not_go_fails = self.not_go == Some(Passed::Failed)
            || self.not_go_turns.is_some_and(|turns| turns > NOT_GO_TURNS);
        let sound = self.saw(&[ThreadSeen::Sound]);
        let torn = self.saw(&[ThreadSeen::Stripped]);
        let fails = gauged == Some(Outcome::NonconformityShown);
        // A gauge outweighs a feel, and torn threads pass none.
        let passes = gauged == Some(Outcome::ConformityShown);
        [
            (
                self.go == Some(Passed::Failed) && not_go_fails,
                Contradiction::TooSmallAndTooLarge,
            ),
            (sound && fails, Contradiction::SoundButFails),
            (sound && bore_out, Contradiction::SoundButBoreOut),
            (
                sound && (torn || self.saw(&[ThreadSeen::LooseWithSeveral])),
                Contradiction::SoundButTorn,
            ),
            (torn && passes, Contradiction::TornButPasses),
            (
                gauged.is_some() && self.saw(&[ThreadSeen::Uncut]),
                Contradiction::UncutButGauged,
            ),
        ]
    }

    fn cures(&self, gauged: Option<&GaugingVerdict>, bore_out: bool) -> &'static [Remedy] {
        use ThreadSeen::{Crossed, Fouled, Jams, LooseWithSeveral, Rough, Stripped};
        let helps = gauged.is_some_and(|g| g.chasing_may_help);
        let fails = gauged.is_some_and(|g| g.outcome == Outcome::NonconformityShown);
        let lost = self.saw(&[Stripped, LooseWithSeveral]) || (fails && !helps);
        let blocked = helps || self.saw(&[Fouled, Rough, Jams, Crossed]);
        match (lost, blocked, bore_out) {
            (true, ..) => &[Remedy::Sleeve, Remedy::Refer],
            (_, true, true) => &[Remedy::Clean, Remedy::Chase, Remedy::Refer],
            (_, true, false) => &[Remedy::Clean, Remedy::Chase],
            (_, false, true) => &[Remedy::Refer],
            (_, false, false) => &[],
        }
    }
}

/// What the gauges have not told yet, or what is left to do after they have told.
fn gauge_next(tried: Option<&Found>, told: Option<&GaugingVerdict>) -> ThreadAsk {
    match told.filter(|_| tried.is_some_and(|t| t.not_go_turns.is_some())) {
        None => ThreadAsk::NotGoOrWires,
        Some(told) if told.outcome == Outcome::Undecided => ThreadAsk::OtherGauges,
        Some(told) if told.chasing_may_help => ThreadAsk::GaugesAgain,
        Some(_) => ThreadAsk::EngagementLeft,
    }
}
