//! `depth`, `width_stack` and `bolt_length`: lengths along an axis.

use alloc::string::String;
use alloc::vec::Vec;

use super::fits::FigureName;
use super::fits::of_row;
use super::rows::figure_named;
use super::said::named;
use super::told::answer;
use super::told::told;
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::fit::{LengthCheck, bolt_length, room_below, width_with_spacers};
use crate::measure::{Decision, DecisionRule, Limits, Outcome, Reading};
use crate::quantity::{Length, in_mm, mm, settled_mm};
use crate::read::{Shape, form};
use crate::{Error, Grade};

told! {
    LengthCheck => Shape::Report { what: "length, wanted, decision, cautions" },
}

answer! {
    /// A length held against what is wanted of it.
    LengthAnswer {
        /// What is shown.
        outcome: Outcome,
        /// The length that results; what a negative one means is said in `words`.
        length_mm: f64,
        /// In a sentence.
        words: String,
        /// What is wanted.
        wanted: Limits,
        /// The one held against the other.
        decision: Decision,
    }
}

fn told_as(check: LengthCheck, words: String) -> LengthAnswer {
    LengthAnswer {
        outcome: check.decision.outcome,
        length_mm: settled_mm(check.length.value()),
        words,
        wanted: check.wanted,
        decision: check.decision,
    }
}

form! {
    /// `depth`: is a bore deep enough for the part in it?
    ///
    /// ```
    /// use framegauge::{ask::{Ask, Context, DepthOf}, measure::Outcome};
    /// let read = |text: &str| text.parse().unwrap();
    /// let question = DepthOf { bore_depth: read("9.0 +/- 0.1 mm"), part: read("12.0 +/- 0.1 mm"), room: None, rule: None };
    /// assert_eq!(question.answer(&Context::default()).unwrap().answer.outcome, Outcome::NonconformityShown);
    /// ```
    DepthOf {
        /// Depth of the bore from its face.
        bore_depth: Reading,
        /// Length of the part that goes in.
        part: Reading,
        /// Room that must stay below it; none unless stated.
        room: Option<Length>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

impl Ask for DepthOf {
    type Answer = LengthAnswer;

    fn answer(&self, _: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let wanted = Limits::at_least(self.room.unwrap_or(mm(0.0)), Grade::Shop)
            .map_err(|e| named(&e, "room"))?;
        let check = room_below(
            &self.bore_depth,
            &self.part,
            wanted,
            self.rule.unwrap_or_default(),
        )
        .map_err(|e| {
            named(
                &e,
                if e.field() == "insertion" {
                    "part"
                } else {
                    "bore_depth"
                },
            )
        })?;
        let left = check.length.value();
        let words = if left < mm(0.0) {
            alloc::format!(
                "too shallow by these readings: the part stops {} proud",
                in_mm(-left)
            )
        } else {
            alloc::format!("{} left below the part", in_mm(left))
        };
        Ok(Answered {
            answer: told_as(check, words),
            basis: Basis::graded(Grade::Shop)
                .by("depth of the bore less length of the part")
                .noting("bore deeper only if the frame maker's limits leave the wall for it"),
        })
    }
}

form! {
    /// `width_stack`: a shell with its spacers, held against the width that a unit wants.
    ///
    /// ```
    /// use framegauge::ask::{Context, Question};
    /// let question: Question = serde_json::from_str(
    ///     r#"{"ask":"width_stack","shell":"68.1 +/- 0.05 mm","spacers":["2.5 +/- 0.02 mm","2.5 +/- 0.02 mm"],
    ///         "wanted":"72.5 mm to 73.5 mm"}"#).unwrap();
    /// let answer = serde_json::to_value(question.answer(&Context::default()).unwrap()).unwrap();
    /// assert_eq!(answer["length_mm"], 73.1);
    /// ```
    WidthStack {
        /// Width of the shell, faced.
        shell: Reading,
        /// Spacers, one reading each.
        spacers: Vec<Reading>,
        /// Width that the unit wants …
        wanted: Option<Limits>,
        /// … or the row that states it: family `shell_window`, field `window`.
        figure: Option<FigureName>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

impl Ask for WidthStack {
    type Answer = LengthAnswer;

    fn answer(&self, context: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let (wanted, basis) = match (self.wanted, &self.figure) {
            (Some(wanted), None) => (wanted, Basis::graded(wanted.grade())),
            (None, Some(name)) => {
                let found = figure_named(context, name)?;
                (
                    found.limits,
                    found
                        .evidence
                        .as_ref()
                        .map_or_else(|| Basis::graded(found.limits.grade()), of_row),
                )
            }
            (Some(_), Some(_)) => {
                return Err(Error::new(
                    crate::ErrorKind::Contradiction,
                    "figure",
                    "",
                    "`wanted` states the width already",
                    "state one of them",
                )
                .into());
            }
            (None, None) => return Err(crate::read::missing("wanted").into()),
        };
        let check = width_with_spacers(
            &self.shell,
            &self.spacers,
            wanted,
            self.rule.unwrap_or_default(),
        )?;
        let words = alloc::format!("{} over all, wanted {wanted}", in_mm(check.length.value()));
        Ok(Answered {
            answer: told_as(check, words),
            basis: basis.by("shell width and spacers added; uncertainties in squares"),
        })
    }
}

form! {
    /// `bolt_length`: which of these bolts leaves enough thread behind a mount.
    ///
    /// ```
    /// use framegauge::ask::{Context, Question};
    /// let question: Question = serde_json::from_str(
    ///     r#"{"ask":"bolt_length","mount":"12.4 +/- 0.1 mm","bolts":["18 mm","23 mm","28 mm"],"engaged":"10 mm to 12 mm"}"#).unwrap();
    /// let answer = serde_json::to_value(question.answer(&Context::default()).unwrap()).unwrap();
    /// assert_eq!(answer["bolt_mm"], 23.0);
    /// ```
    BoltLength {
        /// Thickness of the mount.
        mount: Reading,
        /// Lengths that bolts come in.
        bolts: Vec<Length>,
        /// Thread that is needed at least, and that there is room for at most.
        engaged: Limits,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

answer! {
    /// The bolt.
    BoltAnswer {
        /// Shortest bolt that is shown to conform; null when none is.
        bolt_mm: Option<f64>,
        /// What stays behind the mount with it.
        check: Option<LengthCheck>,
        /// In a sentence.
        words: String,
    }
}

impl Ask for BoltLength {
    type Answer = BoltAnswer;

    fn answer(&self, _: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        if self.bolts.is_empty() {
            return Err(crate::read::missing("bolts").into());
        }
        for (index, bolt) in self.bolts.iter().enumerate() {
            crate::Width::new(*bolt).map_err(|e| named(&e, alloc::format!("bolts[{index}]")))?;
        }
        let found = bolt_length(
            &self.mount,
            &self.bolts,
            &self.engaged,
            self.rule.unwrap_or_default(),
        )?;
        let words = match &found {
            Some((bolt, check)) => alloc::format!(
                "{} bolt: {} in the thread",
                in_mm(*bolt),
                in_mm(check.length.value())
            ),
            None => {
                String::from("none of these lengths is shown to leave the thread that is wanted")
            }
        };
        let (bolt, check) = found.map_or((None, None), |(bolt, check)| {
            (Some(settled_mm(bolt)), Some(check))
        });
        Ok(Answered {
            answer: BoltAnswer {
                bolt_mm: bolt,
                check,
                words,
            },
            basis: Basis::graded(self.engaged.grade())
                .by("bolt less mount")
                .noting("a brake: the mount maker's written bolt length goes first"),
        })
    }
}
