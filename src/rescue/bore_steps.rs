//! The steps for a bore, each by the gap and the wall.

use super::bore::BoreRescue;
use super::option::{RescueOption, Stand, Step};
use crate::Error;
use crate::evidence::Grade;
use crate::fit::{MaterialKind, Shape};
use crate::judge::{NextStep, Ream, Shim, Worked};
use crate::measure::{DecisionRule, Limits, Outcome, Reading, decide, settled_cmp};
use crate::quantity::{Length, in_mm, mm};
use crate::standard::{Hold, Joint, Tables};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

impl BoreRescue {
    /// The largest listed size that the smallest bore admits.
    pub(super) fn part(&self, shape: Option<&Shape>) -> Result<RescueOption, Error> {
        let Some(shape) = shape else {
            return Ok(RescueOption::new(
                Step::AdjustPart,
                Stand::NeedsMeasurement,
                "a part of the next size, or one at the top of its limits",
            )
            .needing(Self::measure()));
        };
        let press = self.wanted_interference.unwrap_or(mm(0.0));
        let bore = shape.smallest();
        let bigger = |d: &Length| {
            self.shaft
                .is_none_or(|p| settled_cmp(*d, p.value() + p.expanded_uncertainty()).is_gt())
        };
        let fits = self
            .sizes
            .iter()
            .copied()
            .filter(bigger)
            .filter(|d| match self.hold {
                Hold::Press => {
                    settled_cmp(*d, bore.value()).is_gt()
                        && settled_cmp(*d, bore.value() + press * 2.0).is_le()
                }
                Hold::Slip | Hold::Screw => {
                    settled_cmp(*d, bore.value() + bore.expanded_uncertainty()).is_le()
                }
            })
            .max_by(|a, b| settled_cmp(*a, *b));
        Ok(match fits {
            Some(size) => RescueOption::new(
                Step::AdjustPart,
                Stand::Allowed,
                format!(
                    "a part of {} leaves {} of clearance at the tightest place (negative presses)",
                    in_mm(size),
                    in_mm(bore.value() - size)
                ),
            )
            .of(format!("{}", in_mm(size)))
            .with(Worked::length(
                "size of the part",
                size,
                "largest of the sizes at hand that the smallest bore admits",
            ))
            .with(Worked::length(
                "clearance with it",
                bore.value() - size,
                "smallest bore less its nominal size",
            ))
            .needing(NextStep::new(
                "the new part before it goes in",
                "a nominal size is not a reading",
                "micrometer",
            )),
            None => RescueOption::new(
                Step::AdjustPart,
                Stand::NeedsMeasurement,
                "none of the sizes at hand fits as it stands; a maker may have an oversize part",
            )
            .needing(NextStep::new(
                "sizes that the part is made in",
                "an oversize part needs no change to the frame",
                "part maker's list",
            )),
        })
    }

    /// The shim that `judge` reckons for this joint.
    pub(super) fn shim(
        &self,
        gap: Option<(Reading, Reading)>,
        tables: Tables<'_>,
    ) -> Result<RescueOption, Error> {
        let (Some(_), Some(part)) = (gap, self.shaft) else {
            return Ok(RescueOption::new(
                Step::Shim,
                Stand::NeedsMeasurement,
                "its wall is half of gap and wanted interference together",
            )
            .needing(Self::measure()));
        };
        if self.hold == Hold::Press && self.joint == Joint::DirectBearing {
            return Ok(RescueOption::new(
                Step::Shim,
                Stand::Forbidden,
                "a shim under a bearing ring deforms the ring",
            ));
        }
        let asked = Shim {
            joint: Some(self.joint),
            hold: Some(self.hold),
            bore: self.hole.clone(),
            post: Vec::from([part.into()]),
            interference: self.wanted_interference,
            ..Shim::default()
        };
        let said = asked.answer(tables)?;
        if let Some(wall) = said.number("shim wall") {
            return Ok(RescueOption::new(
                Step::Shim,
                Stand::Allowed,
                format!("a wall of {}: {}", in_mm(mm(wall.number())), wall.formula),
            )
            .of(format!("wall {}", in_mm(mm(wall.number()))))
            .with(wall.clone())
            .minding("one seam, no overlap, over the whole length of the seat")
            .graded(Grade::CommonPractice));
        }
        let wanted = self.hold == Hold::Press && self.wanted_interference.is_none();
        let gap = said.number("gap on diameter").map_or(0.0, Worked::number);
        Ok(if wanted && gap > 0.0 {
            RescueOption::new(
                Step::Shim,
                Stand::NeedsMeasurement,
                format!(
                    "gap {}; the interference that is wanted is not stated",
                    in_mm(mm(gap))
                ),
            )
            .needing(NextStep::new(
                "interference that the maker of the part wants",
                "wall = (gap + interference) / 2",
                "part maker",
            ))
        } else {
            RescueOption::new(
                Step::Shim,
                Stand::Forbidden,
                "there is no gap to fill, or the tightest place leaves no room for a shim",
            )
        })
    }

    pub(super) fn compound(&self, gap: Option<(Reading, Reading)>) -> Result<RescueOption, Error> {
        let data_sheet = || {
            NextStep::new(
                "the greatest gap on the compound's data sheet",
                "beyond it compound is no cure; none is published here",
                "data sheet",
            )
        };
        let option = match (gap, self.compound_gap) {
            (None, _) => {
                let option = RescueOption::new(
                    Step::Compound,
                    Stand::NeedsMeasurement,
                    "only within the gap that its data sheet prints",
                )
                .needing(Self::measure());
                if self.compound_gap.is_none() {
                    option.needing(data_sheet())
                } else {
                    option
                }
            }
            (Some((_, loose)), None) => RescueOption::new(
                Step::Compound,
                Stand::NeedsMeasurement,
                format!(
                    "the gap is {} at its widest; what the compound fills is not stated",
                    in_mm(loose.value())
                ),
            )
            .needing(data_sheet()),
            (Some((_, loose)), Some(most)) => {
                let limits = Limits::at_most(most, Grade::Shop)?;
                let decision = decide(&loose, &limits, DecisionRule::default());
                let words = format!(
                    "the gap is {} at its widest, the compound fills {}",
                    in_mm(loose.value()),
                    in_mm(most)
                );
                match decision.outcome {
                    Outcome::ConformityShown => {
                        RescueOption::new(Step::Compound, Stand::Allowed, words)
                    }
                    Outcome::NonconformityShown => RescueOption::new(
                        Step::Compound,
                        Stand::Forbidden,
                        format!("{words}: no cure"),
                    ),
                    Outcome::Undecided => RescueOption::new(
                        Step::Compound,
                        Stand::NeedsMeasurement,
                        format!("{words}: too close to tell"),
                    )
                    .needing(Self::measure()),
                }
                .with(Worked::length(
                    "greatest gap",
                    loose.value(),
                    "largest hole less part",
                ))
                .graded(Grade::Shop)
            }
        };
        Ok(option
            .minding("keep it out of bearings and seals: it has spoilt bearings")
            .then_check(&[
                "alignment while it cures",
                "no movement after the time its data sheet states",
            ]))
    }

    pub(super) fn round(&self) -> RescueOption {
        let option = if self.material.is_some_and(MaterialKind::is_metal) {
            RescueOption::new(
                Step::RoundOut,
                Stand::Allowed,
                "pressed round with drifts of rising size before any size is named or reamed; done on steel tubes",
            )
        } else {
            RescueOption::new(
                Step::RoundOut,
                Stand::NeedsMeasurement,
                "steel tubes are pressed round with drifts; what this one is made of is not stated",
            )
            .needing(NextStep::new(
                "material of the tube",
                "only ductile metal takes it",
                "magnet, frame maker",
            ))
        };
        option
            .then_check(&[
                "the bore on two axes at two depths",
                "cracks at the lug, slot and welds",
            ])
            .minding("stop at the first resistance: the lug or weld cracks before the tube")
            .graded(Grade::CommonPractice)
    }

    pub(super) fn next_sizes(
        &self,
        shape: Option<&Shape>,
        tables: Tables<'_>,
    ) -> Result<Vec<RescueOption>, Error> {
        let Some(shape) = shape else {
            return Ok(Vec::from([RescueOption::new(
                Step::NextSize,
                Stand::NeedsMeasurement,
                "reamed to the next size that parts exist in",
            )
            .needing(Self::measure())]));
        };
        let mut out = Vec::new();
        let press = match self.hold {
            Hold::Press => self.wanted_interference,
            Hold::Slip | Hold::Screw => Some(mm(0.0)),
        };
        // A part that presses wants a bore smaller than itself.
        let bore_for = |part: &Length| *part - press.unwrap_or(mm(0.0));
        // The next size alone: farther ones only take more wall.
        let next = self
            .sizes
            .iter()
            .filter(|s| settled_cmp(bore_for(s), shape.largest().value()).is_gt())
            .min_by(|a, b| settled_cmp(**a, **b));
        if let Some(part) = next {
            let size = bore_for(part);
            let stock = size - shape.smallest().value();
            let name = match (self.hold, press) {
                (Hold::Press, Some(_)) => {
                    format!("{} for a part of {}", in_mm(size), in_mm(*part))
                }
                (Hold::Press, None) => format!("for a part of {}", in_mm(*part)),
                (Hold::Slip | Hold::Screw, _) => format!("{}", in_mm(size)),
            };
            let mut option =
                RescueOption::new(Step::NextSize, Stand::NeedsMeasurement, String::new())
                    .of(name)
                    .with(Worked::length(
                        "new bore",
                        size,
                        "part less wanted interference",
                    ))
                    .with(Worked::length(
                        "stock on diameter",
                        stock,
                        "new bore less smallest bore",
                    ))
                    .minding("cutting cannot be undone; no least wall is published")
                    .then_check(&["the new bore on two axes at two depths", "the part in it"]);
            let mut why = format!("takes {} on diameter", in_mm(stock));
            match &self.outside {
                Some(outside) => {
                    let cut = Ream {
                        outside: Some(*outside),
                        bore: self.hole.clone(),
                        to: size,
                        least: Vec::new(),
                        rule: None,
                    };
                    match cut.answer(tables) {
                        Ok(said) => {
                            if press.is_some() {
                                option.stand = Stand::Allowed;
                            }
                            if let Some(wall) = said.number("wall left") {
                                why.push_str(&format!(
                                    " and leaves a wall of {}",
                                    in_mm(mm(wall.number()))
                                ));
                                option = option.with(wall.clone());
                            }
                        }
                        Err(_) => {
                            option.stand = Stand::Forbidden;
                            why.push_str(" and would break through the outside");
                        }
                    }
                }
                None => {
                    why.push_str("; the wall is not known");
                    option = option.needing(NextStep::new(
                        "outside diameter of the tube",
                        "the wall that is left decides",
                        "caliper",
                    ));
                }
            }
            if press.is_none() {
                why.push_str("; the press that the part wants is not stated, and the bore has to be smaller by it");
                option = option.needing(NextStep::new(
                    "interference that the maker of the part wants",
                    "a bore as large as the part does not hold it",
                    "part maker",
                ));
            }
            option.why = why;
            out.push(option);
        }
        if out.is_empty() {
            out.push(
                RescueOption::new(
                    Step::NextSize,
                    Stand::NeedsMeasurement,
                    "no larger size was given that parts exist in",
                )
                .needing(NextStep::new(
                    "sizes that parts exist in",
                    "a bore without a part is no rescue",
                    "parts list",
                )),
            );
        }
        Ok(out)
    }
}
