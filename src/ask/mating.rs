//! `pitch_mismatch` and `three_wire`: what a thread mates, and its pitch diameter over wires.

use alloc::string::{String, ToString};

use super::said::Said;
use super::strength::three_places;
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::measure::Reading;
use crate::quantity::{Length, settled_mm};
use crate::read::{Between, answer, form};
use crate::say::reckoned;
use crate::thread::{
    BasicDiameters, Designation, Grounds, Mates, ThreadSize, ThreeWire as Wires, VISIBLE_DRIFT,
    mismatch,
};

form! {
    /// `pitch_mismatch`: do these two threads mate, and if not, when does it show and when does it bind?
    ///
    /// ```
    /// use framegauge::{ask::{Ask, Context, PitchMismatch}, thread::Mates};
    /// let read = |text: &str| text.parse().unwrap();
    /// let question = PitchMismatch { a: read("M35x1"), b: read("1.370 in x 24 tpi BSC"), visible: None };
    /// assert_eq!(question.answer(&Context::default()).unwrap().answer.mates, Mates::No);
    /// ```
    PitchMismatch {
        /// One thread.
        a: Designation,
        /// The other thread.
        b: Designation,
        /// Drift that the eye sees against a gauge leaf; 0.15 mm unless stated (common practice).
        visible: Option<Length>,
    }

    /// `three_wire`: which wire, and what pitch diameter does the size over wires mean?
    ///
    /// ```
    /// use framegauge::ask::{Ask, Context, ThreeWire};
    /// let question = ThreeWire { thread: "M10x1".parse().unwrap(), wire: None, over_wires: None };
    /// assert_eq!(question.answer(&Context::default()).unwrap().answer.best_wire_mm, 0.57735);
    /// ```
    ThreeWire {
        /// The thread of the screw.
        thread: Designation,
        /// Diameter of the wires; the best wire unless stated.
        wire: Option<Length>,
        /// Size measured over the wires; without it the size over wires of the basic pitch diameter is told.
        over_wires: Option<Reading>,
    }
}

answer! {
    /// Two threads against each other.
    PitchMismatchAnswer {
        /// Whether they mate.
        mates: Mates,
        /// On which ground they do not.
        grounds: Grounds,
        /// Drift of the pitches a turn.
        drift_per_turn_mm: f64,
        /// Turns until the drift is seen; null when the pitches are the same.
        turns_until_visible: Option<f64>,
        /// Turns until it binds in the wider thread as the hole; null when the pitches are the same.
        turns_until_binding: Option<f64>,
        /// How far the pitch diameters lie apart at the least.
        pitch_diameters_apart_min_mm: f64,
        /// How far the pitch diameters lie apart at the most.
        pitch_diameters_apart_max_mm: f64,
        /// The wider thread, where one is.
        wider: Option<ThreadSize>,
        /// The same in a sentence.
        words: String,
    }

    /// Three wires on a screw thread.
    ThreeWireAnswer {
        /// The wire that touches at the pitch line.
        best_wire_mm: f64,
        /// Wires that rest on the flanks and stand out of the crests.
        usable_wires_mm: Between,
        /// The wire that the rest is told for.
        wire_mm: f64,
        /// Size over these wires at the basic pitch diameter; null where the form is not known well enough.
        over_wires_at_basic_mm: Option<f64>,
        /// The pitch diameter that was measured.
        pitch_diameter: Option<Reading>,
    }
}

impl Ask for PitchMismatch {
    type Answer = PitchMismatchAnswer;

    fn answer(&self, _: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let found = mismatch(&self.a, &self.b);
        let visible = self.visible.unwrap_or(VISIBLE_DRIFT);
        let visible = found.drift.turns_until_visible(visible).said("visible")?;
        let basics = [self.a, self.b].map(|thread| BasicDiameters::of(&thread.size).ok());
        let basics = || basics.iter().flatten().map(BasicDiameters::evidence);
        let basis = Basis::reckoned(reckoned::DRIFT)
            .at_best(basics().map(|evidence| evidence.worth()).min())
            .citing(basics().flat_map(|evidence| evidence.sources()));
        let answer = PitchMismatchAnswer {
            mates: found.mates,
            grounds: found.grounds,
            drift_per_turn_mm: settled_mm(found.drift.per_turn),
            turns_until_visible: visible.map(three_places),
            turns_until_binding: found.turns_until_binding.map(three_places),
            pitch_diameters_apart_min_mm: settled_mm(found.apart_min),
            pitch_diameters_apart_max_mm: settled_mm(found.apart_max),
            wider: found.wider,
            words: found.to_string(),
        };
        Ok(Answered { answer, basis })
    }
}

impl Ask for ThreeWire {
    type Answer = ThreeWireAnswer;

    fn answer(&self, _: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let wires = Wires::of(&self.thread.size).said("thread")?;
        let wire = self.wire.unwrap_or_else(|| wires.best_wire());
        let names = [("over wires", "over_wires"), ("wire", "wire")];
        let basic = BasicDiameters::of(&self.thread.size).ok();
        let over = basic
            .as_ref()
            .map(|basic| wires.over_wires(basic.pitch_diameter, wire));
        let read = self
            .over_wires
            .map(|reading| wires.pitch_diameter_reading(&reading, wire));
        let answer = ThreeWireAnswer {
            best_wire_mm: settled_mm(wires.best_wire()),
            usable_wires_mm: wires.usable_wires().said("thread")?.into(),
            wire_mm: settled_mm(wire),
            over_wires_at_basic_mm: over.transpose().said_by(&names, "wire")?.map(settled_mm),
            pitch_diameter: read.transpose().said_by(&names, "over_wires")?,
        };
        let mut basis = Basis::reckoned(reckoned::WIRES).noting(reckoned::WIRES_NOTE);
        if let Some(basic) = &basic {
            let evidence = basic.evidence();
            basis = basis
                .at_best(Some(evidence.worth()))
                .citing(evidence.sources());
        }
        Ok(Answered { answer, basis })
    }
}
