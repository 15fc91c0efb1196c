//! A damaged bore or seat.

use alloc::vec::Vec;

use super::facts::{RescueAsk as A, RescueFact as F};
use super::option::{Damage, Rescue, RescueOption as Opt, Spoilt, Step, diameters};
use crate::Error;
use crate::evidence::Grade;
use crate::fit::{MaterialKind, Shape};
use crate::judge::{Shim, Worked, sizes};
use crate::measure::{DecisionRule, Limits, Outcome, Placed, Reading, decide, settled_cmp};
use crate::quantity::{Length, ShaftDiameter, Width, mm};
use crate::standard::{Hold, Joint, Tables};

/// A damaged bore or seat, with what is known of it.
///
/// ```
/// use framegauge::{in_mm, mm, standard::{Joint, Tables}, rescue::{BoreRescue, Damage, RescueFact, Stand, Step}};
/// // A cup that drops in: without readings every cure waits for the gap.
/// let open = BoreRescue::new(Joint::HeadCup, Damage::Loose).options(Tables::ours()).unwrap();
/// assert_eq!(open.stand(Step::Compound), Some(Stand::NeedsMeasurement));
/// // With 0.06 mm of gap, 0.05 mm of wanted press, and a compound whose data sheet says 0.10 mm:
/// let mut known = BoreRescue::new(Joint::HeadCup, Damage::Loose);
/// known.hole.push("34.06 +/- 0.01 mm".parse().unwrap());
/// known.shaft = Some("34.00 +/- 0.01 mm".parse().unwrap());
/// known.wanted_interference = Some(mm(0.05));
/// known.compound_gap = Some(mm(0.10));
/// let left = known.options(Tables::ours()).unwrap();
/// assert_eq!(left.stand(Step::Compound), Some(Stand::Allowed));
/// let shim = left.steps(Step::Shim).next().unwrap();
/// assert!(matches!(&shim.why[..], [RescueFact::ShimWall { wall }] if in_mm(*wall).to_string() == "0.055 mm")); // (0.06 + 0.05) / 2
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
    pub hole: Vec<Placed>,
    /// The part that belongs in it.
    pub shaft: Option<Reading>,
    /// Interference that is wanted, on diameter, for a press fit.
    pub wanted_interference: Option<Length>,
    /// The greatest gap on diameter that the compound's data sheet prints.
    pub compound_gap: Option<Length>,
    /// Outside diameter of the tube around the bore.
    pub outside: Option<Reading>,
    /// Larger sizes that parts exist in: of the parts, not of the bores.
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
    /// use framegauge::{mm, standard::{Joint, Tables}, rescue::{BoreRescue, Damage, Stand, Step}};
    /// // An oval slip-fit seat: the widest gap is beyond the compound's 0.10 mm, so compound is no cure.
    /// let mut seat = BoreRescue::new(Joint::DirectBearing, Damage::Oval);
    /// seat.hole.push("37.02 +/- 0.01 mm".parse().unwrap());
    /// seat.hole.push("37.20 +/- 0.01 mm".parse().unwrap());
    /// seat.shaft = Some("37.00 +/- 0.005 mm".parse().unwrap());
    /// seat.compound_gap = Some(mm(0.10));
    /// let left = seat.options(Tables::ours()).unwrap();
    /// assert_eq!(left.stand(Step::Compound), Some(Stand::Forbidden));
    /// ```
    pub fn options(&self, tables: Tables<'_>) -> Result<Rescue, Error> {
        self.check()?;
        let shape = if self.hole.is_empty() {
            None
        } else {
            Some(self.shape().map_err(|e| e.named("hole"))?)
        };
        let shape = shape.as_ref();
        let gap = shape
            .zip(self.shaft)
            .map(|(s, p)| (s.smallest().less(&p), s.largest().less(&p)));
        let mut options = Vec::from([Opt::can(Step::Clean, F::CleanFirst)]);
        options.push(match shape.zip(gap) {
            Some((shape, (tight, loose))) => {
                let (smallest, largest) = (shape.smallest().value(), shape.largest().value());
                let (tightest, loosest) = (tight.value(), loose.value());
                Opt::can(
                    Step::Gauge,
                    F::Clearance {
                        smallest,
                        largest,
                        tightest,
                        loosest,
                    },
                )
            }
            None => Opt::can(Step::Gauge, F::GapFirst).needing(A::Gap),
        });
        if self.damage == Damage::Seized {
            options.push(Opt::open(Step::Free, F::DrawOut, A::Materials));
        } else {
            options.extend([
                self.part(shape),
                self.shim(gap, tables)?,
                self.compound(gap)?,
            ]);
            options.push(self.next_size(shape));
            options.push(Opt::open(Step::Sleeve, F::Sleeve, A::Outside));
            if matches!(self.damage, Damage::Oval | Damage::Pinched) {
                let metal = self.material.is_some_and(MaterialKind::is_metal);
                let round = Opt::can(Step::RoundOut, F::PressRound { metal });
                options.push(round.unless(metal, A::Materials));
            }
            if self.hold == Hold::Press {
                // Even a last resort is for a gap that is known.
                options.push(Opt::can(Step::Peen, F::Peen).unless(gap.is_some(), A::Gap));
            }
        }
        let steering = matches!(
            self.joint,
            Joint::HeadCup | Joint::CrownRace | Joint::IntegratedBearing | Joint::Quill
        );
        let risky = options
            .iter_mut()
            .filter(|o| steering && o.step > Step::Gauge);
        risky.for_each(|option| option.cautions.push(F::Steering));
        let what = Spoilt::Joint(self.joint);
        Ok(Rescue::of(what, self.damage, self.material, options))
    }

    fn shape(&self) -> Result<Shape, Error> {
        Shape::of(&sizes(&self.hole)?)
    }

    /// Every size that was given, whether it comes to be used or not.
    fn check(&self) -> Result<(), Error> {
        diameters(&[("shaft", self.shaft), ("outside", self.outside)])?;
        for size in &self.sizes {
            ShaftDiameter::new(*size).map_err(|e| e.named("sizes"))?;
        }
        let press = self.wanted_interference;
        for (name, length) in [
            ("compound_gap", self.compound_gap),
            ("wanted_interference", press),
        ] {
            let width = length.map(Width::new).transpose();
            width.map_err(|e| e.named(name))?;
        }
        Ok(())
    }

    /// The largest listed size that the smallest bore admits.
    fn part(&self, shape: Option<&Shape>) -> Opt {
        let Some(bore) = shape.map(Shape::smallest) else {
            return Opt::open(Step::AdjustPart, F::LargerPart, A::Gap);
        };
        let press = self.wanted_interference.unwrap_or(mm(0.0));
        let at_hand = self.shaft.map(|p| p.value() + p.expanded_uncertainty());
        let goes_in = |d: &Length| match self.hold {
            Hold::Press => {
                settled_cmp(*d, bore.value()).is_gt()
                    && settled_cmp(*d, bore.value() + press * 2.0).is_le()
            }
            Hold::Slip | Hold::Screw => {
                settled_cmp(*d, bore.value() + bore.expanded_uncertainty()).is_le()
            }
        };
        let bigger = |d: &Length| at_hand.is_none_or(|part| settled_cmp(*d, part).is_gt());
        let sizes = self
            .sizes
            .iter()
            .copied()
            .filter(|d| bigger(d) && goes_in(d));
        match sizes.max_by(|a, b| settled_cmp(*a, *b)) {
            Some(size) => {
                let clearance = bore.value() - size;
                Opt::can(Step::AdjustPart, F::PartLeaves { size, clearance })
                    .of(F::Part { size })
                    .needing(A::NewPart)
            }
            None => Opt::open(Step::AdjustPart, F::NoPartFits, A::SizesMade),
        }
    }

    /// The shim that `judge` reckons for this joint.
    fn shim(&self, gap: Option<(Reading, Reading)>, tables: Tables<'_>) -> Result<Opt, Error> {
        let (Some(_), Some(part)) = (gap, self.shaft) else {
            return Ok(Opt::open(Step::Shim, F::ShimIsHalf, A::Gap));
        };
        if self.hold == Hold::Press && self.joint == Joint::DirectBearing {
            return Ok(Opt::not(Step::Shim, F::ShimUnderRing));
        }
        let asked = Shim {
            joint: Some(self.joint),
            hold: Some(self.hold),
            bore: self.hole.clone(),
            post: Vec::from([part.into()]),
            interference: self.wanted_interference,
            ..Shim::default()
        };
        let said = asked.answer(tables).map_err(|e| e.named("hole"))?;
        let number = |name| said.number(name).map(|w| mm(Worked::number(w)));
        if let Some(wall) = number("shim wall") {
            let wall = F::ShimWall { wall };
            return Ok(Opt::can(Step::Shim, wall.clone()).of(wall));
        }
        let open = self.hold == Hold::Press && self.wanted_interference.is_none();
        let gap =
            number("gap on diameter").filter(|gap| open && settled_cmp(*gap, mm(0.0)).is_gt());
        Ok(match gap {
            Some(gap) => {
                Opt::open(Step::Shim, F::Gap { gap }, A::WantedPress).because(F::PressNotStated)
            }
            None => Opt::not(Step::Shim, F::NoRoomForShim),
        })
    }

    fn compound(&self, gap: Option<(Reading, Reading)>) -> Result<Opt, Error> {
        let step = Step::Compound;
        let Some((_, loose)) = gap else {
            let option = Opt::open(step, F::CompoundWithinSheet, A::Gap);
            return Ok(option.unless(self.compound_gap.is_some(), A::CompoundSheet));
        };
        let gap = loose.value();
        let Some(fills) = self.compound_gap else {
            let option = Opt::open(step, F::Gap { gap }, A::CompoundSheet);
            return Ok(option.because(F::CompoundWithinSheet));
        };
        let limits = Limits::at_most(fills, Grade::Shop)?;
        let outcome = decide(&loose, &limits, DecisionRule::default()).outcome;
        let why = F::CompoundFills {
            gap,
            fills,
            outcome,
        };
        let option = match outcome {
            Outcome::ConformityShown => Opt::can(step, why),
            Outcome::NonconformityShown => Opt::not(step, why),
            Outcome::Undecided => Opt::open(step, why, A::Gap),
        };
        Ok(option.graded(Grade::Shop))
    }

    /// The next size alone: farther ones only take more wall.
    fn next_size(&self, shape: Option<&Shape>) -> Opt {
        let step = Step::NextSize;
        let Some(shape) = shape else {
            return Opt::open(step, F::NextSize, A::Gap);
        };
        let pressed = self.hold == Hold::Press;
        let press = if pressed {
            self.wanted_interference
        } else {
            Some(mm(0.0))
        };
        // A part that presses wants a bore smaller than itself.
        let bore_for = |part: &Length| *part - press.unwrap_or(mm(0.0));
        let larger = |part: &&Length| settled_cmp(bore_for(part), shape.largest().value()).is_gt();
        let next = self
            .sizes
            .iter()
            .filter(larger)
            .min_by(|a, b| settled_cmp(**a, **b));
        let Some(part) = next else {
            return Opt::open(step, F::NoLargerSize, A::SizesMade);
        };
        let size = bore_for(part);
        let stock = F::TakesOnDiameter {
            stock: size - shape.smallest().value(),
        };
        let mut option = Opt::can(step, stock).of(F::BoreFor {
            bore: press.map(|_| size),
            part: pressed.then_some(*part),
        });
        let wall = |outside: Reading| (outside.value() - size) / 2.0;
        option = option.walled(self.outside.map(wall));
        if press.is_none() {
            option = option.waiting(F::PressNotStated, A::WantedPress);
        }
        option
    }
}
