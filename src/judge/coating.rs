//! What a coating does to a reading.

use alloc::format;
use alloc::vec::Vec;

use super::Finding;
use super::verdict::{NOTHING, NextStep, Verdict, Worked, size_reading};
use crate::evidence::Grade;
use crate::fit::Feature;
use crate::measure::{Outcome, Reading, settled_cmp};
use crate::quantity::{Length, in_mm, positive};
use crate::read::form;
use crate::standard::{Cutting, CuttingRule, Tables};
use crate::{Error, ErrorKind};

form! {
    /// A size read over a coating: it counts on both sides, so an outside reads large and a bore small by twice its thickness.
    ///
    /// The thickness of a powder coat is remembered (0.06 to 0.12 mm a side), so what lies below is a span, and no verdict stands
    /// before the coating is off. `expected` is the bare size, if one is known: the difference is then the coat.
    ///
    /// ```
    /// use framegauge::{fit::Feature, judge::Coating, measure::Outcome, mm, standard::Tables};
    /// let over = Coating { member: Feature::Shaft, reading: Some("28.83 +/- 0.02 mm".parse().unwrap()), expected: Some(mm(28.6)) };
    /// let said = over.answer(Tables::ours()).unwrap();
    /// assert_eq!(said.outcome, Outcome::Undecided);
    /// assert_eq!(said.millimetres("coat on each side"), Some(0.115));
    /// assert!(said.words().contains("as a powder coat is"));
    /// ```
    Coating {
        /// A hole or a shaft.
        member: Feature,
        /// The size over the coating.
        reading: Option<Reading>,
        /// The bare size, if one is known.
        expected: Option<Length>,
    }
}

impl Coating {
    /// The verdict.
    ///
    /// # Errors
    /// `OutOfRange` and `NotFinite` for sizes that are none.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        let (feature, reading, expected) = (self.member, self.reading.as_ref(), self.expected);
        let (Some((thin, _)), Some((thick, row))) = (
            CuttingRule::smallest(Cutting::Coat, tables),
            CuttingRule::greatest(Cutting::Coat, tables),
        ) else {
            return Err(Error::new(
                ErrorKind::NotTabulated,
                "coating",
                "coat",
                "no thickness of a coat is held",
                "add a row about it to your own rows",
            ));
        };
        // A coat makes a shaft larger and a hole smaller.
        let (direction, joined) = match feature {
            Feature::Shaft => ("large", "and"),
            Feature::Hole => ("small", "less"),
        };
        let outward = |by: Length| match feature {
            Feature::Shaft => by,
            Feature::Hole => -by,
        };
        let mut sentence = format!(
            "A coat of {:.3} to {} a side ({}) makes the reading {:.3} to {} too {direction}",
            crate::settled_mm(thin),
            in_mm(thick),
            row.window.grade().map_or("unknown", Grade::words),
            crate::settled_mm(thin * 2.0),
            in_mm(thick * 2.0)
        );
        let mut said = Verdict::from_findings(
            "size under a coating",
            Vec::from([Finding {
                outcome: Some(Outcome::Undecided),
                readings: reading.copied().into_iter().collect(),
                ..Finding::stated(
                    "coating",
                    "a reading over a coating is not a reading on metal",
                )
            }
            .resting_on(row.window.evidence())]),
        )
        .with(Worked::length("least error", thin * 2.0, "two coats, thin"))
        .with(Worked::length(
            "greatest error",
            thick * 2.0,
            "two coats, thick",
        ));
        if let Some(reading) = reading {
            size_reading("reading", reading)?;
            let below = [
                reading.value() - outward(thick * 2.0),
                reading.value() - outward(thin * 2.0),
            ];
            said = said
                .with(Worked::length(
                    "below a thick coat",
                    below[0],
                    "reading and two thick coats",
                ))
                .with(Worked::length(
                    "below a thin coat",
                    below[1],
                    "reading and two thin coats",
                ));
            if let Some(bare) = expected {
                let bare = positive("expected", bare)?;
                let coat = outward((reading.value() - bare) / 2.0);
                said = said.with(Worked::length(
                    "coat on each side",
                    coat,
                    "half of reading less bare size",
                ));
                let slack = reading.expanded_uncertainty() / 2.0;
                let like = settled_cmp(coat, thin - slack).is_ge()
                    && settled_cmp(coat, thick + slack).is_le();
                sentence.push_str(&if settled_cmp(coat, NOTHING).is_le() {
                    format!(
                        "; {} is not too {direction} for {}, so no coat is seen in it",
                        in_mm(reading.value()),
                        in_mm(bare)
                    )
                } else {
                    format!(
                        "; {} is {} {} {} on each side, {}",
                        in_mm(reading.value()),
                        in_mm(bare),
                        joined,
                        in_mm(coat),
                        if like {
                            "as a powder coat is"
                        } else {
                            "which a powder coat does not explain"
                        }
                    )
                });
            }
        }
        sentence.push_str(". No verdict before the coating is off.");
        Ok(said
        .saying(sentence)
        .then(NextStep::new("the bare metal: take the coating off seats, threads and faces by hand, then gauge", "a coat counts on both sides, and a part forced over it cracks or sits crooked", "scraper or stripper, chaser for threads, then micrometer"))
        .minding("mask these before coating: threads, crown-race seat, head-tube bores and faces, shell faces, brake mount faces, dropout faces, inside of the seat tube"))
    }
}
