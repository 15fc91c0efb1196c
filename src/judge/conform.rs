//! Readings of one size held against its limits, whoever states them.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::held::{FigureName, Held, OwnLimits};
use super::member::one_of;
use super::verdict::{NextStep, Verdict, Worked};
use super::{Finding, FitAsk, FitFact, sizes_against};
use crate::evidence::Text;
use crate::fact::closed_words;
use crate::fit::{SizeClass, TableSource, iso286_sources};
use crate::measure::{Able, DecisionRule, Limits, Measures, Reading, able, instruments};
use crate::quantity::{mm, not_negative};
use crate::read::{form, missing, words};
use crate::standard::Tables;
use crate::thread::{Designation, limits_of_size};
use crate::{Error, ErrorKind};

closed_words! {
    /// Which diameter of a thread was read.
    ///
    /// ```
    /// use framegauge::{judge::ThreadDiameter, read::Tree};
    /// let tree: Tree = serde_json::from_str(r#""pitch""#).unwrap();
    /// assert_eq!(framegauge::read::read_whole::<ThreadDiameter>(&tree, framegauge::standard::Tables::ours()).unwrap(), ThreadDiameter::Pitch);
    /// ```
    ThreadDiameter {
        /// Over the crests of a screw.
        Major,
        /// Over wires, or by a thread gauge.
        Pitch,
        /// Over the crests of a hole.
        Minor,
    }
}
words!(ThreadDiameter);

form! {
    /// Readings of one size held against its limits. One of `limits`, `class`, `thread` and `figure` says which limits.
    ///
    /// ```
    /// use framegauge::{judge::Conform, measure::Outcome, standard::Tables};
    /// let asked = Conform {
    ///     readings: vec!["45.80 +/- 0.05 mm".parse().unwrap()], limits: Some("45.95 mm to 46.00 mm".parse().unwrap()),
    ///     ..Conform::default()
    /// };
    /// let said = asked.answer(Tables::ours()).unwrap();
    /// assert_eq!((said.outcome, said.millimetres("upper limit")), (Outcome::NonconformityShown, Some(46.0)));
    /// ```
    #[derive(Default)]
    Conform {
        /// The readings; the worst one decides.
        readings: Vec<Reading>,
        /// Limits of your own.
        limits: Option<Limits>,
        /// Limits of an ISO 286 class.
        class: Option<SizeClass>,
        /// Limits of a thread with its class.
        thread: Option<Designation>,
        /// Which diameter of that thread was read.
        diameter: Option<ThreadDiameter>,
        /// Limits of a row of the tables.
        figure: Option<FigureName>,
        /// What is measured, to be told which instruments could decide.
        measures: Option<Measures>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

impl Conform {
    /// The limits that are stated, with whose they are and what they rest on.
    fn stated<'a>(&self, tables: Tables<'a>) -> Result<Held<'a>, Error> {
        one_of(&[
            ("limits", self.limits.is_some()),
            ("class", self.class.is_some()),
            ("thread", self.thread.is_some()),
            ("figure", self.figure.is_some()),
        ])?;
        match (self.class, self.thread, &self.figure) {
            (Some(class), ..) => {
                let limits = class.limits().map_err(|e| e.named("class"))?;
                Ok(OwnLimits::of(limits, format!("{class}, ISO 286-1")).held())
            }
            (_, Some(thread), _) => self.of_thread(thread),
            (.., Some(name)) => name.held(tables),
            _ => {
                let own = self.limits.ok_or_else(|| missing("limits"))?;
                Ok(OwnLimits::from(own).held())
            }
        }
    }

    fn of_thread<'a>(&self, thread: Designation) -> Result<Held<'a>, Error> {
        let class = thread.class.ok_or_else(|| {
            Error::new(
                ErrorKind::Missing,
                "thread",
                thread,
                "the thread states no class",
                "write it, as in `M10x1-6H`",
            )
        })?;
        let found = limits_of_size(&thread.size, &class).map_err(|e| e.named("thread"))?;
        let limits = match self.diameter {
            Some(ThreadDiameter::Major) => found.major,
            Some(ThreadDiameter::Pitch) => found.pitch_diameter,
            Some(ThreadDiameter::Minor) => found.minor,
            None => return Err(missing("diameter")),
        };
        Ok(Held {
            evidence: Some(found.evidence()),
            ..OwnLimits::of(limits, format!("{thread}")).held()
        })
    }

    /// The verdict; `measures` adds which instruments could decide.
    ///
    /// # Errors
    /// `Missing` without readings, without limits, or for a thread without its class or diameter; `Contradiction` where two state
    /// limits; those of the class, the thread and the tables; `OutOfRange` for a size below nothing.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        if self.diameter.is_some() && self.thread.is_none() {
            return Err(missing("thread"));
        }
        let held = self.stated(tables)?;
        let (limits, evidence) = (held.limits, held.evidence);
        if self.readings.is_empty() {
            return Err(missing("readings"));
        }
        let (lower, upper) = (limits.lower().known(), limits.upper().known());
        // Limits of one's own may be about a deviation; those of a class, a thread or a row are about a size unless they
        // reach below zero.
        if self.limits.is_none() && lower.is_none_or(|lower| lower >= mm(0.0)) {
            for (index, reading) in self.readings.iter().enumerate() {
                not_negative("", reading.value())
                    .map_err(|e| e.named(format!("readings[{index}]")))?;
            }
        }
        let rule = self.rule.unwrap_or_default();
        let mut found = sizes_against("size", &self.readings, &limits, &held.owner, evidence, rule);
        if self.class.is_some() {
            let tables = iso286_sources();
            let cited = tables.iter().filter_map(TableSource::citation);
            found.sources.extend(cited);
        }
        let mut said = Verdict::from_findings("size", Vec::from([found]));
        let (formula, note) = evidence.map_or(("", ""), |e| (e.formula(), e.note()));
        for (what, end) in [("lower limit", lower), ("upper limit", upper)] {
            if let Some(end) = end {
                said = said.with(Worked::length(what, end, String::from(formula)));
            }
        }
        if !note.is_empty() {
            let note = Text::Owned(note.into());
            said.beside.push(Finding::of(FitFact::Note { note }));
        }
        if let Some(measures) = self.measures {
            let Able { can, cannot, .. } = able(instruments(), &limits, measures, rule);
            said = said.then(NextStep::of(FitAsk::Size {
                measures,
                limits,
                can,
                cannot,
            }));
        }
        Ok(said)
    }
}
