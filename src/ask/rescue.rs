//! `rescue`: worn, over-cut, stripped: what is left to do.

use alloc::string::String;
use alloc::vec::Vec;

use super::said::{Said, second};
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::fit::MaterialKind;
use crate::judge::{Gauging, pattern_threads};
use crate::measure::{Placed, Reading};
use crate::quantity::Length;
use crate::read::{Inside, answer, form, missing, words};
use crate::rescue::{BoreRescue, Damage, Diagnosis, Rescue, Symptom, ThreadRescue, diagnose};
use crate::say::reckoned;
use crate::standard::{Joint, Shell, Tables};
use crate::thread::{Designation, Side};
use crate::{Error, Grade};

words!(Damage, Symptom);

form! {
    /// `rescue`: what is left to do with a damaged thread (`thread`, or `shell` and `side`) or bore (`joint`), or what can be
    /// behind a `symptom`.
    ///
    /// ```
    /// use framegauge::ask::{Context, Question};
    /// let question: Question = serde_json::from_str(
    ///     r#"{"ask":"rescue","damage":"loose","joint":"head_cup","hole":["34.06 +/- 0.01 mm"],"shaft":"34.00 +/- 0.01 mm",
    ///         "wanted_interference":"0.05 mm","compound_gap":"0.10 mm"}"#).unwrap();
    /// let answer = serde_json::to_value(question.answer(&Context::default()).unwrap()).unwrap();
    /// assert!(answer["words"].as_str().unwrap().contains("shim"));
    /// ```
    RescueOf {
        /// What was noticed, where the damage is not known yet. Stands alone.
        symptom: Option<Symptom>,
        /// What is wrong.
        damage: Option<Damage>,
        /// The thread as it was.
        thread: Option<Designation>,
        /// Code of the shell, where the thread is one of its sides.
        shell: Option<String>,
        /// Which side of that shell.
        side: Option<Side>,
        /// What the gauges said.
        gauging: Option<Gauging>,
        /// Threads that could be cut instead; those of the tables unless stated.
        to: Vec<Designation>,
        /// Bore over the crests of the thread as found.
        bore: Option<Reading>,
        /// The joint, where it is a bore or seat.
        joint: Option<Joint>,
        /// Readings of that bore.
        hole: Vec<Placed> => Inside,
        /// The part that belongs in it.
        shaft: Option<Reading>,
        /// Interference that is wanted, on diameter.
        wanted_interference: Option<Length>,
        /// The greatest gap on diameter that the compound's data sheet prints.
        compound_gap: Option<Length>,
        /// Larger sizes that parts exist in.
        sizes: Vec<Length>,
        /// Outside diameter of the metal around thread or bore.
        outside: Option<Reading>,
        /// Kind of material; laminates are neither cut nor pressed round.
        material: Option<MaterialKind>,
    }
}

answer! {
    /// What is left to do.
    RescueAnswer {
        /// In a sentence.
        words: String,
        /// The steps in order of caution, and how each stands.
        rescue: Option<Rescue>,
        /// What can be behind a symptom, and the checks in order.
        diagnosis: Option<Diagnosis>,
    }
}

/// The kind of question that a field belongs to.
#[derive(Clone, Copy, PartialEq)]
enum Of {
    Thread,
    Joint,
    Both,
}

impl RescueOf {
    /// Refuses the first field that is stated and is none of these.
    fn only(&self, of: &[Of], problem: &'static str) -> Result<(), Error> {
        let stated = [
            (Of::Both, "damage", self.damage.is_some()),
            (Of::Both, "outside", self.outside.is_some()),
            (Of::Both, "material", self.material.is_some()),
            (Of::Thread, "thread", self.thread.is_some()),
            (Of::Thread, "shell", self.shell.is_some()),
            (Of::Thread, "side", self.side.is_some()),
            (Of::Thread, "gauging", self.gauging.is_some()),
            (Of::Thread, "to", !self.to.is_empty()),
            (Of::Thread, "bore", self.bore.is_some()),
            (Of::Joint, "joint", self.joint.is_some()),
            (Of::Joint, "hole", !self.hole.is_empty()),
            (Of::Joint, "shaft", self.shaft.is_some()),
            (
                Of::Joint,
                "wanted_interference",
                self.wanted_interference.is_some(),
            ),
            (Of::Joint, "compound_gap", self.compound_gap.is_some()),
            (Of::Joint, "sizes", !self.sizes.is_empty()),
        ];
        let stray = stated
            .iter()
            .find(|(kind, _, stated)| *stated && !of.contains(kind));
        let remedy = "ask about one thread, one bore or one symptom";
        stray.map_or(Ok(()), |(_, field, _)| Err(second(field, problem, remedy)))
    }

    fn thread_options(&self, tables: Tables<'_>, damage: Damage) -> Result<Rescue, Error> {
        let other = "belongs to a joint, and a thread is asked about";
        self.only(&[Of::Both, Of::Thread], other)?;
        let row = self
            .shell
            .as_ref()
            .map(|name| tables.find::<Shell>(name).and_then(pattern_threads));
        let shell = match row.transpose().said("shell")? {
            None => None,
            Some(threads) => Some((threads, self.side.ok_or_else(|| missing("side"))?)),
        };
        let of_shell = shell.and_then(|(threads, side)| threads.side(side));
        let thread = self.thread.or(of_shell).ok_or_else(|| missing("thread"))?;
        let asked = ThreadRescue {
            shell,
            outside: self.outside,
            bore: self.bore,
            gauging: self.gauging.clone(),
            material: self.material,
            to: self.to.clone(),
            ..ThreadRescue::new(thread, damage)
        };
        let left = asked.options(tables);
        left.map_err(|e| {
            if self.thread.is_none() && e.field() == "thread" {
                e.named("shell")
            } else {
                e
            }
        })
    }

    fn bore_options(
        &self,
        tables: Tables<'_>,
        joint: Joint,
        damage: Damage,
    ) -> Result<Rescue, Error> {
        let other = "belongs to a thread, and a joint is asked about";
        self.only(&[Of::Both, Of::Joint], other)?;
        let asked = BoreRescue {
            hole: self.hole.clone(),
            shaft: self.shaft,
            wanted_interference: self.wanted_interference,
            compound_gap: self.compound_gap,
            outside: self.outside,
            sizes: self.sizes.clone(),
            material: self.material,
            ..BoreRescue::new(joint, damage)
        };
        asked.options(tables)
    }

    fn diagnosis(&self, symptom: Symptom) -> Result<Answered<RescueAnswer>, Error> {
        self.only(&[], "a symptom is asked about alone: it is not a diagnosis")?;
        let found = diagnose(symptom);
        let by = reckoned::CHECKS;
        let (words, diagnosis) = (found.words(), Some(found));
        let answer = RescueAnswer {
            words,
            rescue: None,
            diagnosis,
        };
        Ok(Answered {
            answer,
            basis: Basis::graded(Grade::CommonPractice).by(by),
        })
    }
}

impl Ask for RescueOf {
    type Answer = RescueAnswer;

    fn answer(&self, context: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        if let Some(symptom) = self.symptom {
            return Ok(self.diagnosis(symptom)?);
        }
        let damage = self.damage.ok_or_else(|| missing("damage"))?;
        let left = match self.joint {
            Some(joint) => self.bore_options(context.tables(), joint, damage)?,
            None => self.thread_options(context.tables(), damage)?,
        };
        let grade = left.options.iter().filter_map(|o| o.grade).min();
        let basis = Basis::graded(grade.unwrap_or(Grade::CommonPractice))
            .noting(reckoned::RESCUE_NOTE)
            .citing(left.options.iter().flat_map(|o| &o.sources));
        let (words, rescue) = (left.words(), Some(left));
        let answer = RescueAnswer {
            words,
            rescue,
            diagnosis: None,
        };
        Ok(Answered { answer, basis })
    }
}
