//! A damaged bore or seat.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::option::{Damage, Rescue, RescueOption, Stand, Step};
use crate::Error;
use crate::evidence::Grade;
use crate::fit::{MaterialKind, Shape};
use crate::judge::{NextStep, Worked, from_to, sizes};
use crate::measure::{Placed, Reading};
use crate::quantity::{Length, ShaftDiameter, Width};
use crate::standard::{Hold, Joint, Tables};

/// A damaged bore or seat, with what is known of it.
///
/// ```
/// use framegauge::{mm, standard::{Joint, Tables}, rescue::{BoreRescue, Damage, Stand, Step}};
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
            Some(Shape::of(&sizes(&self.hole)?)?)
        };
        let gap = shape
            .as_ref()
            .zip(self.shaft)
            .map(|(s, p)| (s.smallest().less(&p), s.largest().less(&p)));
        let mut options = Vec::from([
            RescueOption::new(
                Step::Clean,
                Stand::Allowed,
                "first of all: grit, burrs, paint and old compound take or fake tenths",
            )
            .graded(Grade::CommonPractice),
            self.gauge(shape.as_ref(), gap),
            self.part(shape.as_ref())?,
            self.shim(gap, tables)?,
            self.compound(gap)?,
            RescueOption::new(
                Step::Refer,
                Stand::Allowed,
                "always open: the frame maker or a qualified builder",
            ),
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
            options.extend(self.next_sizes(shape.as_ref(), tables)?);
            options.push(
                RescueOption::new(
                    Step::Sleeve,
                    Stand::NeedsMeasurement,
                    "bored out and sleeved to size: a builder's work; no least wall is published",
                )
                .needing(NextStep::new(
                    "outside of the tube around the bore",
                    "a sleeve needs wall of its own",
                    "caliper",
                ))
                .graded(Grade::CommonPractice),
            );
            if self.hold == Hold::Press {
                // Even a last resort is for a gap that is known.
                let stand = if gap.is_some() {
                    Stand::Allowed
                } else {
                    Stand::NeedsMeasurement
                };
                let peen = RescueOption::new(
                    Step::Peen,
                    stand,
                    "burrs on part or bore grip for a while; used in shops where nothing else is at hand",
                )
                .minding("the last resort: it carries the load on a few points and spoils the seat")
                .graded(Grade::CommonPractice);
                options.push(if gap.is_some() {
                    peen
                } else {
                    peen.needing(Self::measure())
                });
            }
        }
        if self.material.is_some_and(MaterialKind::is_carbon) {
            for option in options
                .iter_mut()
                .filter(|o| o.step.cuts() || matches!(o.step, Step::RoundOut | Step::Peen))
            {
                option.stand = Stand::Forbidden;
                option.why = format!(
                    "laminate is neither cut nor hammered; only the frame maker can say more ({})",
                    option.why
                );
            }
        }
        if matches!(
            self.joint,
            Joint::HeadCup | Joint::CrownRace | Joint::IntegratedBearing | Joint::Quill
        ) {
            for option in options
                .iter_mut()
                .filter(|o| o.step > Step::Gauge && o.step != Step::Refer)
            {
                option.cautions.push("steering: must not be ridden before the fit is shown; when in doubt, hand over".into());
            }
        }
        Ok(Rescue::of(
            String::from(self.joint.words()),
            self.damage,
            options,
        ))
    }

    /// Every size that was given, whether it comes to be used or not.
    fn check(&self) -> Result<(), Error> {
        for (name, reading) in [("part", &self.shaft), ("outside", &self.outside)] {
            if let Some(reading) = reading {
                ShaftDiameter::new(reading.value()).map_err(|e| e.within(name))?;
            }
        }
        for size in &self.sizes {
            ShaftDiameter::new(*size).map_err(|e| e.within("sizes"))?;
        }
        for (name, length) in [
            ("compound gap", self.compound_gap),
            ("wanted interference", self.wanted_interference),
        ] {
            if let Some(length) = length {
                Width::new(length).map_err(|e| e.within(name))?;
            }
        }
        Ok(())
    }

    pub(super) fn measure() -> NextStep {
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
                format!(
                    "bore {}; clearance {} on diameter (negative presses)",
                    from_to(shape.smallest().value(), shape.largest().value()),
                    from_to(tight.value(), loose.value())
                ),
            )
            .with(Worked::length(
                "least clearance",
                tight.value(),
                "smallest hole less part",
            ))
            .with(Worked::length(
                "greatest clearance",
                loose.value(),
                "largest hole less part",
            )),
            _ => RescueOption::new(
                Step::Gauge,
                Stand::Allowed,
                "before a cure is chosen: each needs the gap",
            )
            .needing(Self::measure()),
        }
    }
}
