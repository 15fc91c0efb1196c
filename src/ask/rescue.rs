//! `rescue`: worn, over-cut, stripped: what is left to do.

use alloc::string::String;
use alloc::vec::Vec;

use super::said::{named, said_of};
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::fit::MaterialKind;
use crate::judge::{Gauging, pattern_threads};
use crate::measure::{Placed, Reading};
use crate::quantity::Length;
use crate::read::{Inside, answer, form, words};
use crate::rescue::{
    BoreRescue, Damage, Diagnosis, Rescue as Options, Symptom, ThreadRescue, diagnose,
};
use crate::standard::Joint;
use crate::standard::Shell;
use crate::thread::{Designation, Side};
use crate::{Error, ErrorKind, Grade};

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
        rescue: Option<Options>,
        /// What can be behind a symptom, and the checks in order.
        diagnosis: Option<Diagnosis>,
    }
}

impl RescueOf {
    /// The first stated field that belongs to another kind of question.
    fn stray(&self, fields: &[(&'static str, bool)], problem: &'static str) -> Result<(), Error> {
        match fields.iter().find(|(_, stated)| *stated) {
            None => Ok(()),
            Some((field, _)) => Err(Error::new(
                ErrorKind::Contradiction,
                *field,
                "",
                problem,
                "ask about one thread, one bore or one symptom",
            )),
        }
    }

    fn of_thread(&self) -> [(&'static str, bool); 6] {
        [
            ("thread", self.thread.is_some()),
            ("shell", self.shell.is_some()),
            ("side", self.side.is_some()),
            ("gauging", self.gauging.is_some()),
            ("to", !self.to.is_empty()),
            ("bore", self.bore.is_some()),
        ]
    }

    fn of_bore(&self) -> [(&'static str, bool); 6] {
        [
            ("joint", self.joint.is_some()),
            ("hole", !self.hole.is_empty()),
            ("shaft", self.shaft.is_some()),
            ("wanted_interference", self.wanted_interference.is_some()),
            ("compound_gap", self.compound_gap.is_some()),
            ("sizes", !self.sizes.is_empty()),
        ]
    }

    fn thread_options(&self, context: &Context<'_>, damage: Damage) -> Result<Options, Error> {
        let shell = match &self.shell {
            None => None,
            Some(name) => {
                let row = context
                    .tables
                    .find::<Shell>(name)
                    .map_err(|e| named(&e, "shell"))?;
                let threads = pattern_threads(row).map_err(|e| named(&e, "shell"))?;
                let side = self.side.ok_or_else(|| crate::read::missing("side"))?;
                Some((threads, side))
            }
        };
        let thread = match (self.thread, shell) {
            (Some(thread), _) => thread,
            (None, Some((threads, side))) => threads
                .side(side)
                .ok_or_else(|| crate::read::missing("thread"))?,
            (None, None) => return Err(crate::read::missing("thread")),
        };
        let mut ask = ThreadRescue::new(thread, damage);
        ask.shell = shell;
        ask.outside = self.outside;
        ask.bore = self.bore;
        ask.gauging.clone_from(&self.gauging);
        ask.material = self.material;
        ask.to.clone_from(&self.to);
        let names = [
            ("outside", "outside"),
            ("bore", "bore"),
            ("go", "gauging"),
            ("gaug", "gauging"),
            ("turns", "gauging"),
        ];
        let otherwise = if self.thread.is_some() {
            "thread"
        } else {
            "shell"
        };
        ask.options(context.tables()).map_err(|e| {
            // The form of the gauges names its own fields.
            if e.field().starts_with("gauging.") {
                e
            } else {
                said_of(&e, &names, otherwise)
            }
        })
    }

    fn bore_options(
        &self,
        context: &Context<'_>,
        joint: Joint,
        damage: Damage,
    ) -> Result<Options, Error> {
        let mut ask = BoreRescue::new(joint, damage);
        ask.hole.clone_from(&self.hole);
        ask.shaft = self.shaft;
        ask.wanted_interference = self.wanted_interference;
        ask.compound_gap = self.compound_gap;
        ask.outside = self.outside;
        ask.sizes.clone_from(&self.sizes);
        ask.material = self.material;
        let names = [
            ("part", "shaft"),
            ("interference", "wanted_interference"),
            ("compound", "compound_gap"),
            ("outside", "outside"),
            ("size", "sizes"),
        ];
        ask.options(context.tables())
            .map_err(|e| said_of(&e, &names, "hole"))
    }
}

impl Ask for RescueOf {
    type Answer = RescueAnswer;

    fn answer(&self, context: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        if let Some(symptom) = self.symptom {
            let other = [
                ("damage", self.damage.is_some()),
                ("outside", self.outside.is_some()),
                ("material", self.material.is_some()),
            ];
            let fields: Vec<_> = other
                .into_iter()
                .chain(self.of_thread())
                .chain(self.of_bore())
                .collect();
            self.stray(
                &fields,
                "a symptom is asked about alone: it is not a diagnosis",
            )?;
            let found = diagnose(symptom);
            return Ok(Answered {
                answer: RescueAnswer {
                    words: found.words(),
                    rescue: None,
                    diagnosis: Some(found),
                },
                basis: Basis::graded(Grade::CommonPractice)
                    .by("checks from what costs nothing to what cannot be undone"),
            });
        }
        let damage = self.damage.ok_or_else(|| crate::read::missing("damage"))?;
        let options = match self.joint {
            Some(joint) => {
                self.stray(
                    &self.of_thread(),
                    "belongs to a thread, and a joint is asked about",
                )?;
                self.bore_options(context, joint, damage)?
            }
            None => {
                self.stray(
                    &self.of_bore(),
                    "belongs to a joint, and a thread is asked about",
                )?;
                self.thread_options(context, damage)?
            }
        };
        let grade = options.options.iter().filter_map(|o| o.grade).min();
        let basis = Basis::graded(grade.unwrap_or(Grade::CommonPractice))
            .noting("the steps stand in the trade's order of caution; what cuts is for the frame maker or a qualified builder to allow")
            .citing(options.options.iter().flat_map(|o| &o.sources));
        Ok(Answered {
            answer: RescueAnswer {
                words: options.words(),
                rescue: Some(options),
                diagnosis: None,
            },
            basis,
        })
    }
}
