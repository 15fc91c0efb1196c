//! A damaged bore or seat.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::option::{Damage, Rescue, RescueOption, Stand, Step};
use crate::Error;
use crate::evidence::Grade;
use crate::fit::{MaterialKind, Shape, SizeReading};
use crate::judge::{Joint, NextStep, Worked, wall_implied};
use crate::measure::{DecisionRule, Limits, Outcome, Reading, decide, settled_cmp};
use crate::quantity::{Length, ShaftDiameter, in_mm, mm};
use crate::standard::Hold;

/// A damaged bore or seat, with what is known of it.
///
/// ```
/// use framegauge::{fit::SizeReading, judge::Joint, mm, rescue::{BoreRescue, Damage, Stand, Step}};
/// // A cup that drops in: without readings every cure waits for the gap.
/// let open = BoreRescue::new(Joint::HeadCup, Damage::Loose).options().unwrap();
/// assert_eq!(open.stand(Step::Compound), Some(Stand::NeedsMeasurement));
/// // With 0.06 mm of gap, 0.05 mm of wanted press, and a compound whose data sheet says 0.10 mm:
/// let mut known = BoreRescue::new(Joint::HeadCup, Damage::Loose);
/// known.hole.push(SizeReading::new("34.06 +/- 0.01 mm".parse().unwrap()));
/// known.shaft = Some("34.00 +/- 0.01 mm".parse().unwrap());
/// known.wanted_interference = Some(mm(0.05));
/// known.compound_gap = Some(mm(0.10));
/// let left = known.options().unwrap();
/// assert_eq!(left.stand(Step::Compound), Some(Stand::Allowed));
/// let shim = left.steps(Step::Shim).next().unwrap();
/// assert_eq!(shim.millimetres("shim wall"), Some(0.055)); // (0.06 + 0.05) / 2
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct BoreRescue {
    /// Which joint.
    pub joint: Joint,
    /// What is wrong.
    pub damage: Damage,
    /// How it is meant to hold.
    pub hold: Hold,
    /// Readings of the hole.
    pub hole: Vec<SizeReading>,
    /// The part that belongs in it.
    pub shaft: Option<Reading>,
    /// Interference that is wanted, on diameter, for a press fit.
    pub wanted_interference: Option<Length>,
    /// The greatest gap on diameter that the compound's data sheet prints.
    pub compound_gap: Option<Length>,
    /// Outside diameter of the tube around the bore.
    pub outside: Option<Reading>,
    /// Larger sizes that parts exist in.
    pub sizes: Vec<Length>,
    /// Kind of material; laminates are neither cut nor pressed round.
    pub material: Option<MaterialKind>,
}

impl BoreRescue {
    /// A damaged bore of which nothing else is known.
    #[must_use]
    pub const fn new(joint: Joint, damage: Damage) -> Self {
        Self {
            joint,
            damage,
            hold: joint.hold(),
            hole: Vec::new(),
            shaft: None,
            wanted_interference: None,
            compound_gap: None,
            outside: None,
            sizes: Vec::new(),
            material: None,
        }
    }

    /// Every step that belongs to this damage, in order of caution, and how each stands.
    ///
    /// # Errors
    /// As [`Shape::of`]; `OutOfRange` and `NotFinite` for sizes that are none.
    ///
    /// ```
    /// use framegauge::{fit::SizeReading, judge::Joint, mm, rescue::{BoreRescue, Damage, Stand, Step}};
    /// // An oval slip-fit seat: the widest gap is beyond the compound's 0.10 mm, so compound is no cure.
    /// let mut seat = BoreRescue::new(Joint::DirectBearing, Damage::Oval);
    /// seat.hole.push(SizeReading::new("37.02 +/- 0.01 mm".parse().unwrap()));
    /// seat.hole.push(SizeReading::new("37.20 +/- 0.01 mm".parse().unwrap()));
    /// seat.shaft = Some("37.00 +/- 0.005 mm".parse().unwrap());
    /// seat.compound_gap = Some(mm(0.10));
    /// let left = seat.options().unwrap();
    /// assert_eq!(left.stand(Step::Compound), Some(Stand::Forbidden));
    /// ```
    pub fn options(&self) -> Result<Rescue, Error> {
        if let Some(shaft) = &self.shaft {
            ShaftDiameter::new(shaft.value()).map_err(|e| e.within("part"))?;
        }
        let shape = if self.hole.is_empty() { None } else { Some(Shape::of(&self.hole)?) };
        let gap = shape.as_ref().zip(self.shaft).map(|(s, p)| (s.smallest().less(&p), s.largest().less(&p)));
        let mut options = Vec::from([
            RescueOption::new(Step::Clean, Stand::Allowed, "first of all: grit, burrs, paint and old compound take or fake tenths").graded(Grade::CommonPractice),
            self.gauge(shape.as_ref(), gap),
            self.part(shape.as_ref())?,
            self.shim(gap)?,
            self.compound(gap)?,
            RescueOption::new(Step::Refer, Stand::Allowed, "always open: the frame maker or a qualified builder"),
        ]);
        if self.damage == Damage::Seized {
            options.retain(|o| matches!(o.step, Step::Clean | Step::Refer));
            options.push(
                RescueOption::new(Step::Free, Stand::NeedsMeasurement, "pressed or slid parts come out with soaking, with cold on the part or warmth around it, or are cut out by a builder")
                    .needing(NextStep::new("materials of both members", "light alloy in steel corrodes fast, and laminate takes no heat", "magnet, frame maker"))
                    .graded(Grade::CommonPractice),
            );
        } else {
            if matches!(self.damage, Damage::Oval | Damage::Pinched) {
                options.push(self.round());
            }
            options.extend(self.next_sizes(shape.as_ref())?);
            options.push(
                RescueOption::new(Step::Sleeve, Stand::NeedsMeasurement, "bored out and sleeved to size: a builder's work; no least wall is published")
                    .needing(NextStep::new("outside of the tube around the bore", "a sleeve needs wall of its own", "caliper"))
                    .graded(Grade::CommonPractice),
            );
            if self.hold == Hold::Press {
                options.push(
                    RescueOption::new(Step::Peen, Stand::Allowed, "burrs on part or bore grip for a while; used in shops where nothing else is at hand")
                        .minding("the last resort: it carries the load on a few points and spoils the seat")
                        .graded(Grade::CommonPractice),
                );
            }
        }
        if self.material == Some(MaterialKind::Laminate) {
            for option in options.iter_mut().filter(|o| o.step.cuts() || matches!(o.step, Step::RoundOut | Step::Peen)) {
                option.stand = Stand::Forbidden;
                option.why = format!("laminate is neither cut nor hammered; only the frame maker can say more ({})", option.why);
            }
        }
        if matches!(self.joint, Joint::HeadCup | Joint::CrownRace | Joint::IntegratedBearing | Joint::Quill) {
            for option in options.iter_mut().filter(|o| o.step > Step::Gauge && o.step != Step::Refer) {
                option.cautions.push("steering: must not be ridden before the fit is shown; when in doubt, hand over".into());
            }
        }
        Ok(Rescue::of(String::from(self.joint.words()), self.damage, options))
    }

    fn measure() -> NextStep {
        NextStep::new(
            "largest and smallest bore on two axes at two depths, and the part's outside",
            "the gap at its widest and at its tightest decides what is open",
            "bore gauge, micrometer",
        )
    }

    fn gauge(&self, shape: Option<&Shape>, gap: Option<(Reading, Reading)>) -> RescueOption {
        match (shape, gap) {
            (Some(shape), Some((tight, loose))) => RescueOption::new(
                Step::Gauge,
                Stand::Allowed,
                format!("bore {:.3} to {}; clearance {:.3} to {} on diameter (negative presses)", crate::settled_mm(shape.smallest().value()), in_mm(shape.largest().value()), crate::settled_mm(tight.value()), in_mm(loose.value())),
            )
            .with(Worked::length("least clearance", tight.value(), "smallest hole less part"))
            .with(Worked::length("greatest clearance", loose.value(), "largest hole less part")),
            _ => RescueOption::new(Step::Gauge, Stand::Allowed, "before a cure is chosen: each needs the gap").needing(Self::measure()),
        }
    }

    /// The largest listed size that the smallest bore admits.
    fn part(&self, shape: Option<&Shape>) -> Result<RescueOption, Error> {
        let Some(shape) = shape else {
            return Ok(RescueOption::new(Step::AdjustPart, Stand::NeedsMeasurement, "a part of the next size, or one at the top of its limits").needing(Self::measure()));
        };
        let press = self.wanted_interference.unwrap_or(mm(0.0));
        let bore = shape.smallest();
        let bigger = |d: &Length| self.shaft.is_none_or(|p| settled_cmp(*d, p.value() + p.expanded_uncertainty()).is_gt());
        let fits = self
            .sizes
            .iter()
            .copied()
            .filter(bigger)
            .filter(|d| match self.hold {
                Hold::Press => settled_cmp(*d, bore.value()).is_gt() && settled_cmp(*d, bore.value() + press * 2.0).is_le(),
                Hold::Slip | Hold::Screw => settled_cmp(*d, bore.value() + bore.expanded_uncertainty()).is_le(),
            })
            .max_by(|a, b| settled_cmp(*a, *b));
        Ok(match fits {
            Some(size) => RescueOption::new(Step::AdjustPart, Stand::Allowed, format!("a part of {} leaves {} of clearance at the tightest place (negative presses)", in_mm(size), in_mm(bore.value() - size)))
                .of(format!("{}", in_mm(size)))
                .with(Worked::length("size of the part", size, "largest of the sizes at hand that the smallest bore admits"))
                .with(Worked::length("clearance with it", bore.value() - size, "smallest bore less its nominal size"))
                .needing(NextStep::new("the new part before it goes in", "a nominal size is not a reading", "micrometer")),
            None => RescueOption::new(Step::AdjustPart, Stand::NeedsMeasurement, "none of the sizes at hand fits as it stands; a maker may have an oversize part")
                .needing(NextStep::new("sizes that the part is made in", "an oversize part needs no change to the frame", "part maker's list")),
        })
    }

    fn shim(&self, gap: Option<(Reading, Reading)>) -> Result<RescueOption, Error> {
        let Some((tight, loose)) = gap else {
            return Ok(RescueOption::new(Step::Shim, Stand::NeedsMeasurement, "its wall is half of gap and wanted interference together").needing(Self::measure()));
        };
        if self.hold == Hold::Press && self.joint == Joint::DirectBearing {
            return Ok(RescueOption::new(Step::Shim, Stand::Forbidden, "a shim under a bearing ring deforms the ring"));
        }
        if decide(&loose, &Limits::at_most(mm(0.0), Grade::Derived)?, DecisionRule::default()).outcome == Outcome::ConformityShown {
            return Ok(RescueOption::new(Step::Shim, Stand::Forbidden, "there is no gap to fill"));
        }
        let wanted = match self.hold {
            Hold::Press => self.wanted_interference,
            Hold::Slip | Hold::Screw => Some(mm(0.0)),
        };
        let Some(wanted) = wanted else {
            return Ok(RescueOption::new(Step::Shim, Stand::NeedsMeasurement, format!("gap {}; the interference that is wanted is not stated", in_mm(tight.value())))
                .needing(NextStep::new("interference that the maker of the part wants", "wall = (gap + interference) / 2", "part maker")));
        };
        let place = match self.hold {
            Hold::Press => loose,
            Hold::Slip | Hold::Screw => tight,
        };
        let wall = (place.value() + wanted) / 2.0;
        if settled_cmp(wall, mm(0.0)).is_le() {
            return Ok(RescueOption::new(Step::Shim, Stand::Forbidden, "the tightest place leaves no room for a shim"));
        }
        Ok(RescueOption::new(Step::Shim, Stand::Allowed, format!("a wall of {}: half of gap {} and wanted interference {}", in_mm(wall), in_mm(place.value()), in_mm(wanted)))
            .of(format!("wall {}", in_mm(wall)))
            .with(Worked::length("shim wall", wall, "(gap + wanted interference) / 2"))
            .minding("one seam, no overlap, over the whole length of the seat")
            .graded(Grade::CommonPractice))
    }

    fn compound(&self, gap: Option<(Reading, Reading)>) -> Result<RescueOption, Error> {
        let data_sheet = || NextStep::new("the greatest gap on the compound's data sheet", "beyond it compound is no cure; none is published here", "data sheet");
        let option = match (gap, self.compound_gap) {
            (None, _) => {
                let option = RescueOption::new(Step::Compound, Stand::NeedsMeasurement, "only within the gap that its data sheet prints").needing(Self::measure());
                if self.compound_gap.is_none() { option.needing(data_sheet()) } else { option }
            }
            (Some((_, loose)), None) => RescueOption::new(Step::Compound, Stand::NeedsMeasurement, format!("the gap is {} at its widest; what the compound fills is not stated", in_mm(loose.value()))).needing(data_sheet()),
            (Some((_, loose)), Some(most)) => {
                let limits = Limits::at_most(crate::quantity::Width::new(most).map_err(|e| e.within("compound gap"))?.length(), Grade::Shop)?;
                let decision = decide(&loose, &limits, DecisionRule::default());
                let words = format!("the gap is {} at its widest, the compound fills {}", in_mm(loose.value()), in_mm(most));
                match decision.outcome {
                    Outcome::ConformityShown => RescueOption::new(Step::Compound, Stand::Allowed, words),
                    Outcome::NonconformityShown => RescueOption::new(Step::Compound, Stand::Forbidden, format!("{words}: no cure")),
                    Outcome::Undecided => RescueOption::new(Step::Compound, Stand::NeedsMeasurement, format!("{words}: too close to tell")).needing(Self::measure()),
                }
                .with(Worked::length("greatest gap", loose.value(), "largest hole less part"))
                .graded(Grade::Shop)
            }
        };
        Ok(option.minding("keep it out of bearings and seals: it has spoilt bearings").then_check(&["alignment while it cures", "no movement after the time its data sheet states"]))
    }

    fn round(&self) -> RescueOption {
        let option = if self.material == Some(MaterialKind::Metal) {
            RescueOption::new(Step::RoundOut, Stand::Allowed, "pressed round with drifts of rising size before any size is named or reamed; done on steel tubes")
        } else {
            RescueOption::new(Step::RoundOut, Stand::NeedsMeasurement, "steel tubes are pressed round with drifts; what this one is made of is not stated")
                .needing(NextStep::new("material of the tube", "only ductile metal takes it", "magnet, frame maker"))
        };
        option
            .then_check(&["the bore on two axes at two depths", "cracks at the lug, slot and welds"])
            .minding("stop at the first resistance: the lug or weld cracks before the tube")
            .graded(Grade::CommonPractice)
    }

    fn next_sizes(&self, shape: Option<&Shape>) -> Result<Vec<RescueOption>, Error> {
        let Some(shape) = shape else {
            return Ok(Vec::from([RescueOption::new(Step::NextSize, Stand::NeedsMeasurement, "reamed to the next size that parts exist in").needing(Self::measure())]));
        };
        let mut out = Vec::new();
        let mut sizes: Vec<Length> = self.sizes.iter().copied().filter(|s| settled_cmp(*s, shape.largest().value()).is_gt()).collect();
        sizes.sort_by(|a, b| settled_cmp(*a, *b));
        // The next size alone: farther ones only take more wall.
        for size in sizes.into_iter().take(1) {
            let stock = size - shape.smallest().value();
            let mut option = RescueOption::new(Step::NextSize, Stand::NeedsMeasurement, String::new())
                .of(format!("{}", in_mm(size)))
                .with(Worked::length("stock on diameter", stock, "new bore less smallest bore"))
                .minding("cutting cannot be undone; no least wall is published")
                .then_check(&["the new bore on two axes at two depths", "the part in it"]);
            let mut why = format!("takes {} on diameter", in_mm(stock));
            match &self.outside {
                Some(outside) => {
                    let wall = wall_implied(outside, &Reading::exact(size)?);
                    match wall {
                        Ok(wall) => {
                            option.stand = Stand::Allowed;
                            why.push_str(&format!(" and leaves a wall of {}", in_mm(wall.value())));
                            option = option.with(Worked::length("wall left", wall.value(), "(outside - new bore) / 2"));
                        }
                        Err(_) => {
                            option.stand = Stand::Forbidden;
                            why.push_str(" and would break through the outside");
                        }
                    }
                }
                None => {
                    why.push_str("; the wall is not known");
                    option = option.needing(NextStep::new("outside diameter of the tube", "the wall that is left decides", "caliper"));
                }
            }
            option.why = why;
            out.push(option);
        }
        if out.is_empty() {
            out.push(RescueOption::new(Step::NextSize, Stand::NeedsMeasurement, "no larger size was given that parts exist in").needing(NextStep::new("sizes that parts exist in", "a bore without a part is no rescue", "parts list")));
        }
        Ok(out)
    }
}
