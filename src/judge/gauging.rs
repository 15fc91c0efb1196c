//! A thread judged by gauges, by what was seen of it, and by its bore.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::verdict::{Curing, NextStep, Remedy, Verdict, size_reading};
use super::{Finding, OwnLimits, sizes_against};
use crate::Error;
use crate::evidence::{Evidence, Grade};
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

/// What is found where two statements cannot both be true.
pub(crate) const CONTRADICTION: &str = "contradiction";

fn practice(outcome: Outcome, what: &str, words: &str) -> Finding {
    Finding {
        outcome: Some(outcome),
        grade: Some(Grade::CommonPractice),
        ..Finding::stated(what.to_string(), words.to_string())
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

    fn saw(&self, seen: ThreadSeen) -> bool {
        self.seen.contains(&seen)
    }

    /// What the gauges said, as the thread math takes it; `None` when none was tried.
    fn found(&self) -> Result<Option<Found>, Error> {
        let passed = |p: Option<Passed>| p.map(|p| p == Passed::Passed);
        let by_word = self.not_go.map(|p| match p {
            Passed::Passed => 0.0,
            Passed::Failed => NOT_GO_TURNS + 1.0,
        });
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
        let found = sizes_against(
            "bore over the crests",
            &readings,
            &held.limits,
            &held.owner,
            held.evidence,
            self.rule.unwrap_or_default(),
        );
        let painted = self.minor.iter().any(|p| p.surface == Surface::OverPaint);
        let bare = self.minor.iter().all(|p| p.surface == Surface::OnMetal);
        Ok(Some(match (painted, bare) {
            (true, _) => found.read_on_paint(true, tables),
            (false, true) => found,
            (false, false) => found.perhaps_on_paint(true, tables),
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
        let mut findings = Vec::new();
        let mut says: Vec<String> = Vec::new();
        if let Some(verdict) = &gauged {
            let words = verdict.says.join("; ");
            findings.push(practice(verdict.outcome, "gauges", &words));
            says.push(format!("The gauges: {words}."));
        }
        let proved = gauged
            .as_ref()
            .is_some_and(|g| g.outcome == Outcome::ConformityShown);
        if !proved {
            self.signs(&mut findings, &mut says, gauged.is_some());
        }
        let bore_out = bore
            .as_ref()
            .is_some_and(|f| f.outcome == Some(Outcome::NonconformityShown));
        self.contradictions(&mut findings, &mut says, gauged.as_ref(), bore_out);
        let mut beside = Vec::new();
        if let Some(bore) = bore {
            says.push(format!("The bore: {}.", bore));
            // A bore within its limits proves nothing about the flanks.
            if bore_out {
                findings.push(bore);
            } else {
                beside.push(bore);
            }
        }
        if says.is_empty() {
            says.push("Nothing was seen of it and no gauge was tried.".to_string());
        }
        let mut said = Verdict::from_findings("thread", findings).saying(says.join(" "));
        said.beside = beside;
        said = self.cures(said, gauged.as_ref(), bore_out);
        Ok(self.open(said, found.as_ref(), gauged.as_ref(), proved))
    }

    /// What was seen, as far as it tells anything.
    fn signs(&self, findings: &mut Vec<Finding>, says: &mut Vec<String>, gauged: bool) {
        let mut sign = |outcome, what: &str, words: &str, sentence: &str| {
            findings.push(practice(outcome, what, words));
            says.push(sentence.to_string());
        };
        if self.saw(ThreadSeen::Stripped) {
            sign(
                Outcome::NonconformityShown,
                "torn out",
                "threads are torn out: nothing brings their metal back",
                "Torn out: no chaser brings the metal back.",
            );
        }
        if self.saw(ThreadSeen::LooseWithSeveral) {
            sign(
                Outcome::NonconformityShown,
                "good parts",
                "loose with several known good parts: the thread is common to them, its pitch diameter is over the upper limit (worn or over-tapped)",
                "Loose with several good parts: reject as over-tapped or worn; the bore may still read right and proves nothing.",
            );
        } else if self.saw(ThreadSeen::Loose) {
            sign(
                Outcome::Undecided,
                "good part",
                "loose with one part: the part may be the small one",
                "Loose with one part says nothing yet: try another.",
            );
        }
        if self.saw(ThreadSeen::Crossed) {
            sign(
                Outcome::Undecided,
                "crossed",
                "a part was forced in: the thread is cross-hatched, and taking a part by hand afterwards proves no pitch diameter",
                "Forced once: gauge before use, even if a part runs in by hand after chasing.",
            );
        }
        if self.saw(ThreadSeen::Fouled) || self.saw(ThreadSeen::Rough) {
            sign(
                Outcome::Undecided,
                if self.saw(ThreadSeen::Fouled) {
                    "fouled"
                } else {
                    "rough"
                },
                "no verdict before it is cleaned, followed with a chaser of the same pitch and hand, and gauged",
                "Fouled or rough is no verdict: clean, chase with a chaser of the same pitch and hand, then gauge.",
            );
        }
        if self.saw(ThreadSeen::Jams) {
            sign(
                Outcome::Undecided,
                "jams",
                "dirt, paint, a crossed start and a wrong pitch feel alike",
                "Jamming alone is no verdict: clean, chase with a chaser of the same pitch and hand, then gauge.",
            );
        }
        if self.saw(ThreadSeen::Uncut) {
            sign(
                Outcome::Undecided,
                "uncut",
                "no thread is cut yet",
                "No thread is cut yet.",
            );
        }
        let only_takes_part = self.saw(ThreadSeen::TakesPart)
            && !self.saw(ThreadSeen::Crossed)
            && !self.saw(ThreadSeen::Loose)
            && !self.saw(ThreadSeen::LooseWithSeveral);
        if only_takes_part && !gauged {
            says.push(
                "Takes its part by hand: usable in practice, though no gauge has said so."
                    .to_string(),
            );
        }
    }

    /// What cannot both be true.
    fn contradictions(
        &self,
        findings: &mut Vec<Finding>,
        says: &mut Vec<String>,
        gauged: Option<&GaugingVerdict>,
        bore_out: bool,
    ) {
        let go_fails = self.go == Some(Passed::Failed);
        let not_go_fails = self.not_go == Some(Passed::Failed)
            || self.not_go_turns.is_some_and(|turns| turns > NOT_GO_TURNS);
        let fails = gauged.is_some_and(|g| g.outcome == Outcome::NonconformityShown);
        let seen_sound = self.saw(ThreadSeen::Sound);
        let mut tell = |words: &str| {
            findings.push(practice(Outcome::Undecided, CONTRADICTION, words));
            says.push(format!("That does not agree: {words}."));
        };
        if go_fails && not_go_fails {
            tell(
                "GO stops and NOT GO runs in: a thread is not too small and too large at once; it is crossed, torn or of another pitch",
            );
        }
        if seen_sound && fails {
            tell("it is called sound, and a gauge fails in it");
        }
        if seen_sound && bore_out {
            tell("it is called sound, and its bore is out");
        }
        if seen_sound && (self.saw(ThreadSeen::Stripped) || self.saw(ThreadSeen::LooseWithSeveral))
        {
            tell("it is called sound, and also torn or loose");
        }
        let proved = gauged.is_some_and(|g| g.outcome == Outcome::ConformityShown);
        // A gauge outweighs a feel, and torn threads pass none.
        if proved && self.saw(ThreadSeen::Stripped) {
            tell("all gauges pass a thread that is called torn");
        }
        if self.saw(ThreadSeen::Uncut) && gauged.is_some() {
            tell("no thread is cut yet, and a gauge was tried in it");
        }
    }

    fn cures(&self, mut said: Verdict, gauged: Option<&GaugingVerdict>, bore_out: bool) -> Verdict {
        if said.outcome == Outcome::ConformityShown {
            return said;
        }
        let lost = self.saw(ThreadSeen::Stripped)
            || self.saw(ThreadSeen::LooseWithSeveral)
            || gauged
                .is_some_and(|g| g.outcome == Outcome::NonconformityShown && !g.chasing_may_help);
        if lost {
            return said
                .cured(Curing::by(Remedy::Sleeve))
                .cured(Curing::by(Remedy::Refer));
        }
        let blocked = gauged.is_some_and(|g| g.chasing_may_help)
            || [
                ThreadSeen::Fouled,
                ThreadSeen::Rough,
                ThreadSeen::Jams,
                ThreadSeen::Crossed,
            ]
            .iter()
            .any(|s| self.saw(*s));
        if blocked {
            said = said
                .cured(Curing::by(Remedy::Clean))
                .cured(Curing::by(Remedy::Chase));
        }
        if bore_out {
            said = said.cured(Curing::by(Remedy::Refer));
        }
        said
    }

    fn open(
        &self,
        mut said: Verdict,
        found: Option<&Found>,
        gauged: Option<&GaugingVerdict>,
        proved: bool,
    ) -> Verdict {
        if self.saw(ThreadSeen::Jams) && gauged.is_none() {
            said = said
                .then(NextStep::new(
                    "the grooves: pick out, wash, look",
                    "hardened compound and paint feel like a crossed thread",
                    "pick, brush, solvent, lamp",
                ))
                .then(NextStep::new(
                    "the pitch and the hand",
                    "a chaser of another pitch or hand ruins the thread",
                    "leaf, lamp",
                ));
        }
        if proved {
            said
        } else {
            said.then(gauge_next(found, gauged))
        }
    }
}

/// What the gauges have not told yet, or what is left to do after they have told.
fn gauge_next(gauging: Option<&Found>, found: Option<&GaugingVerdict>) -> NextStep {
    match (gauging, found) {
        (Some(tried), Some(found)) if tried.not_go_turns.is_some() => {
            if found.outcome == Outcome::Undecided {
                NextStep::new(
                    "what no gauge was tried on yet: the GO gauge, or the crest diameter with plain gauges",
                    "conformity is shown only when all four gauges agree",
                    "GO plug, plain plugs",
                )
            } else if found.chasing_may_help {
                NextStep::new(
                    "GO, NOT GO and bore again, once it is cleaned and chased with a chaser of the same pitch and hand",
                    "dirt and paint stop a gauge as too little cutting does",
                    "chaser, GO and NOT GO plug",
                )
            } else {
                NextStep::new(
                    "the flank engagement that is left",
                    "chasing cannot bring metal back: it decides between an insert, the next pattern and the frame builder",
                    "over wires, or the bore and the part's outside",
                )
            }
        }
        _ => NextStep::new(
            "pitch diameter with the threaded NOT GO gauge at both ends, or over wires",
            "it alone tells worn and over-tapped from sound; the bore does not",
            "GO and NOT GO plug",
        ),
    }
}
