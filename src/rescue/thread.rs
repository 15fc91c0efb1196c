//! A damaged thread.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::option::{Damage, Rescue, RescueOption, Stand, Step};
use super::thread_retap::clamp_in;
use crate::Error;
use crate::evidence::Grade;
use crate::fit::MaterialKind;
use crate::judge::{Gauging, NextStep, Remedy, Worked};
use crate::measure::{Outcome, Reading, settled_cmp};
use crate::quantity::{BoreDiameter, ShaftDiameter, mm};
use crate::standard::Tables;
use crate::thread::{Designation, ShellThreads, Side, ThreadForm, chasing, flank_engagement};

/// A damaged thread in a frame or part, with what is known of it.
///
/// ```
/// use framegauge::{rescue::{Damage, Stand, Step, ThreadRescue}, standard::{Shell, Tables, find}, thread::{Hand, Side}, judge::pattern_threads};
/// // The drive side of an English shell is stripped, the other side is good.
/// let shell = pattern_threads(find::<Shell>("bsc").unwrap()).unwrap();
/// let mut ask = ThreadRescue::new(shell.drive.unwrap(), Damage::Stripped).in_shell(shell, Side::Drive);
/// ask.to.push("36 mm x 24 tpi".parse().unwrap());
/// let left = ask.options(Tables::ours()).unwrap();
/// let recut = left.steps(Step::Retap).next().unwrap();
/// assert_eq!(recut.stand, Stand::NeedsMeasurement); // outside of the shell not given
/// assert_eq!(recut.millimetres("stock removed a side"), Some(0.601));
/// assert_eq!(left.shells_after[0].drive.unwrap().hand, Hand::Right); // both sides right-hand now: a hybrid
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct ThreadRescue {
    /// The thread as it was.
    pub thread: Designation,
    /// What is wrong.
    pub damage: Damage,
    /// Both sides of the shell and which of them it is, where it is a shell.
    pub shell: Option<(ShellThreads, Side)>,
    /// Outside diameter of the metal around the thread.
    pub outside: Option<Reading>,
    /// Bore over the crests as found.
    pub bore: Option<Reading>,
    /// What the gauges said.
    pub gauging: Option<Gauging>,
    /// Kind of material; laminates are not cut.
    pub material: Option<MaterialKind>,
    /// Threads that could be cut instead; empty for the shell patterns of the tables.
    pub to: Vec<Designation>,
}

impl ThreadRescue {
    /// A damaged thread of which nothing else is known.
    #[must_use]
    pub const fn new(thread: Designation, damage: Damage) -> Self {
        Self {
            thread,
            damage,
            shell: None,
            outside: None,
            bore: None,
            gauging: None,
            material: None,
            to: Vec::new(),
        }
    }

    /// The thread is this side of this shell.
    #[must_use]
    pub const fn in_shell(mut self, shell: ShellThreads, side: Side) -> Self {
        self.shell = Some((shell, side));
        self
    }

    /// Every step that belongs to this damage, in order of caution, and how each stands.
    ///
    /// No least wall and no least engagement is published for any of these threads, so what geometry allows is "possible",
    /// never "enough": that is for the frame maker to say.
    ///
    /// # Errors
    /// Those of [`Gauging`], [`flank_engagement`] and the size checks.
    ///
    /// ```
    /// use framegauge::{rescue::{Damage, Stand, Step, ThreadRescue}, standard::Tables};
    /// let mut axle = ThreadRescue::new("M12x1".parse().unwrap(), Damage::Stripped);
    /// axle.outside = Some("20 +/- 0.1 mm".parse().unwrap());
    /// let left = axle.options(Tables::ours()).unwrap();
    /// let insert = left.steps(Step::Insert).next().unwrap();
    /// assert_eq!(insert.stand, Stand::Allowed);
    /// assert_eq!(insert.millimetres("major diameter of the insert's tap"), Some(13.299));
    /// ```
    pub fn options(&self, tables: Tables<'_>) -> Result<Rescue, Error> {
        for (name, reading) in [("outside", &self.outside), ("bore", &self.bore)] {
            if let Some(reading) = reading {
                ShaftDiameter::new(reading.value()).map_err(|e| e.within(name))?;
            }
        }
        let mut options = Vec::from([self.clean()]);
        let gauged = match &self.gauging {
            Some(asked) => Some(asked.answer(tables).map_err(|e| e.within("gauging"))?),
            None => None,
        };
        // Metal is gone where the gauges show the thread out and a chaser is no cure of it.
        let lost = gauged.as_ref().is_some_and(|said| {
            said.outcome == Outcome::NonconformityShown
                && !said.cures.iter().any(|c| c.by == Remedy::Chase)
        });
        if self.damage == Damage::Seized {
            options.push(self.free());
        }
        options.push(self.chase(lost));
        options.push(match &gauged {
            Some(said) => said.next.iter().cloned().fold(
                RescueOption::new(Step::Gauge, Stand::Allowed, said.sentence.clone()),
                RescueOption::needing,
            ),
            None => RescueOption::new(
                Step::Gauge,
                Stand::Allowed,
                "before anything is cut: damage is named by the gauge, not by the feel",
            )
            .needing(NextStep::new(
                "pitch diameter with NOT GO at both ends, or over wires",
                "the bore can be right and the thread gone",
                "GO and NOT GO plug",
            )),
        });
        options.push(self.part()?);
        options.push(self.compound());
        let mut shells = Vec::new();
        for (option, after) in self.retaps(tables) {
            options.push(option);
            shells.extend(after);
        }
        if self.damage != Damage::Seized {
            options.push(self.insert());
            if self.in_a_shell() {
                options.push(clamp_in(tables));
            }
            if matches!(self.damage, Damage::Swapped | Damage::OverCut) {
                options.push(
                    RescueOption::new(Step::FillAndRecut, Stand::NeedsMeasurement, "an unusual repair of steel shells: filled with braze and cut anew; how long it lasts is not known")
                        .needing(NextStep::new("the frame maker's consent, and the joints near the heat", "the braze of the frame itself must not run", "frame maker"))
                        .minding("mark the shell as custom, with both hands, and gauge it")
                        .graded(Grade::CommonPractice),
                );
            }
            options.push(
                RescueOption::new(Step::Sleeve, Stand::NeedsMeasurement, "bored out and sleeved, or the shell replaced: a builder's work; no least wall is published")
                    .needing(NextStep::new("outside of the metal around the thread", "a sleeve needs wall of its own and leaves less of the shell's", "caliper"))
                    .graded(Grade::CommonPractice),
            );
        }
        options.push(RescueOption::new(
            Step::Refer,
            Stand::Allowed,
            "always open: the frame maker or a qualified builder",
        ));
        if self.material.is_some_and(MaterialKind::is_carbon) {
            for option in options.iter_mut().filter(|o| o.step.cuts()) {
                option.stand = Stand::Forbidden;
                option.why = format!(
                    "laminate is not cut; a bonded metal insert only with the frame maker's written consent ({})",
                    option.why
                );
            }
        }
        let mut rescue = Rescue::of(self.name(), self.damage, options);
        rescue.shells_after = shells;
        Ok(rescue)
    }

    fn name(&self) -> String {
        match self.shell {
            Some((_, Side::Drive)) => format!("{}, drive side", self.thread),
            Some((_, Side::NonDrive)) => format!("{}, non-drive side", self.thread),
            None => self.thread.to_string(),
        }
    }

    fn in_a_shell(&self) -> bool {
        self.shell.is_some()
    }

    fn lost_metal(&self) -> bool {
        matches!(
            self.damage,
            Damage::Worn | Damage::OverCut | Damage::Stripped | Damage::OverBored
        )
    }

    fn clean(&self) -> RescueOption {
        let why = if self.damage == Damage::Seized {
            "soak the joint, give it days; heat only on steel, and never near bonding"
        } else {
            "first of all, and costs nothing: hardened compound and paint feel like damage"
        };
        RescueOption::new(Step::Clean, Stand::Allowed, why).graded(Grade::CommonPractice)
    }

    fn free(&self) -> RescueOption {
        RescueOption::new(
            Step::Free,
            Stand::NeedsMeasurement,
            format!("a {}-hand thread loosens {}, seen facing it from outside; the hand has to be sure first", self.thread.hand, self.thread.hand.loosen()),
        )
        .needing(NextStep::new("the hand, where the thread shows", "the wrong way tightens it and tears the shell", "lamp, leaf"))
        .minding("no more torque until the hand is known")
    }

    fn chase(&self, lost: bool) -> RescueOption {
        let facts = chasing();
        let never = facts.never_restores.first().copied().unwrap_or_default();
        let option = match self.damage {
            Damage::Swapped => RescueOption::new(
                Step::Chase,
                Stand::Forbidden,
                "a chaser of the other hand would cut across the thread that is there",
            ),
            Damage::Seized => {
                RescueOption::new(Step::Chase, Stand::Forbidden, "the part is still in it")
            }
            _ if self.lost_metal() || lost => RescueOption::new(
                Step::Chase,
                Stand::Forbidden,
                format!("metal is gone, and a chaser never restores {never}"),
            ),
            _ => RescueOption::new(
                Step::Chase,
                Stand::Allowed,
                format!(
                    "with {}, {}-hand, started by hand from the sound end; it clears displaced metal and never restores {never}",
                    self.thread.size, self.thread.hand
                ),
            ),
        };
        option
            .then_check(facts.check_after)
            .graded(Grade::CommonPractice)
    }

    /// A better or longer part, by what still bears.
    fn part(&self) -> Result<RescueOption, Error> {
        let never = match self.damage {
            Damage::Swapped => Some("no part of this pattern has the thread that is there"),
            Damage::Seized => Some("the part is still in it"),
            _ => None,
        };
        if let Some(why) = never {
            return Ok(RescueOption::new(Step::AdjustPart, Stand::Forbidden, why));
        }
        let ask = || {
            NextStep::new(
                "bore over the crests, and pitch diameter",
                "says how much of the thread still bears",
                "small-hole gauge, NOT GO plug or wires",
            )
        };
        if self.damage == Damage::Stripped {
            return Ok(RescueOption::new(
                Step::AdjustPart,
                Stand::Forbidden,
                "the flanks are torn out: a longer part helps only where sound thread lies deeper",
            )
            .needing(ask()));
        }
        let Some(bore) = self.bore else {
            return Ok(RescueOption::new(
                Step::AdjustPart,
                Stand::NeedsMeasurement,
                "a part at the top of its limits may still hold; no least engagement is published",
            )
            .needing(ask()));
        };
        if self.thread.size.form() == ThreadForm::Unknown {
            return Ok(RescueOption::new(
                Step::AdjustPart,
                Stand::NeedsMeasurement,
                "the form of this thread is not known, so its height is not either",
            )
            .needing(ask()));
        }
        let left = flank_engagement(
            &self.thread.size,
            ShaftDiameter::new(self.thread.size.major())?,
            BoreDiameter::new(bore.value())?,
        )?;
        let none = settled_cmp(left.depth, mm(0.0)).is_eq();
        Ok(RescueOption::new(
            Step::AdjustPart,
            if none {
                Stand::Forbidden
            } else {
                Stand::NeedsMeasurement
            },
            format!(
                "under a full-size part {:.0} % of the basic height still bears by the crests; {}",
                left.percent_of_basic_height, left.caution
            ),
        )
        .with(Worked::length(
            "depth that still bears",
            left.depth,
            "(part's major - bore) / 2, at most the basic height",
        ))
        .with(Worked::plain(
            "percent of the basic height",
            left.percent_of_basic_height,
            "depth / basic height",
        ))
        .needing(ask())
        .graded(Grade::Derived))
    }

    fn compound(&self) -> RescueOption {
        if matches!(
            self.damage,
            Damage::Stripped | Damage::Swapped | Damage::CrossCut | Damage::Seized
        ) {
            return RescueOption::new(
                Step::Compound,
                Stand::Forbidden,
                "compound holds a part that the thread carries; it does not replace flanks",
            );
        }
        RescueOption::new(
            Step::Compound,
            Stand::NeedsMeasurement,
            "only within the gap that its data sheet prints; none is known here",
        )
        .needing(NextStep::new(
            "gap on diameter, and the greatest gap on the compound's data sheet",
            "beyond it compound is no cure",
            "wires or NOT GO, data sheet",
        ))
        .minding("keep it out of bearings and seals")
    }
}
