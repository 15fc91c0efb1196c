//! A damaged thread.

use alloc::vec::Vec;

use super::facts::{RescueAsk as A, RescueFact as F};
use super::option::{Damage, Rescue, RescueOption as Opt, Spoilt, Stand, Step, diameters};
use crate::Error;
use crate::evidence::Grade;
use crate::fit::MaterialKind;
use crate::judge::{Gauging, Remedy};
use crate::measure::{Outcome, Reading, settled_cmp};
use crate::quantity::{BoreDiameter, ShaftDiameter, mm};
use crate::standard::Tables;
use crate::thread::{Designation, ShellThreads, Side, ThreadForm, flank_engagement};

/// A damaged thread in a frame or part, with what is known of it.
///
/// ```
/// use framegauge::{in_mm, rescue::{Damage, RescueFact, Stand, Step, ThreadRescue}, standard::{Shell, Tables, find}, thread::{Hand, Side}, judge::pattern_threads};
/// // The drive side of an English shell is stripped, the other side is good.
/// let shell = pattern_threads(find::<Shell>("bsc").unwrap()).unwrap();
/// let mut ask = ThreadRescue::new(shell.drive.unwrap(), Damage::Stripped).in_shell(shell, Side::Drive);
/// ask.to.push("36 mm x 24 tpi".parse().unwrap());
/// let left = ask.options(Tables::ours()).unwrap();
/// let recut = left.steps(Step::Retap).next().unwrap();
/// assert_eq!(recut.stand, Stand::NeedsMeasurement); // outside of the shell not given
/// assert!(matches!(recut.why[0], RescueFact::TakesASide { stock, .. } if in_mm(stock).to_string() == "0.601 mm"));
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
    /// use framegauge::{in_mm, rescue::{Damage, RescueFact, Stand, Step, ThreadRescue}, standard::Tables};
    /// let mut axle = ThreadRescue::new("M12x1".parse().unwrap(), Damage::Stripped);
    /// axle.outside = Some("20 +/- 0.1 mm".parse().unwrap());
    /// let left = axle.options(Tables::ours()).unwrap();
    /// let insert = left.steps(Step::Insert).next().unwrap();
    /// assert_eq!(insert.stand, Stand::Allowed);
    /// assert!(matches!(insert.why[0], RescueFact::InsertTap { major, .. } if in_mm(major).to_string() == "13.299 mm"));
    /// ```
    pub fn options(&self, tables: Tables<'_>) -> Result<Rescue, Error> {
        diameters(&[("outside", self.outside), ("bore", self.bore)])?;
        let gauged = self
            .gauging
            .as_ref()
            .map(|asked| asked.answer(tables).map_err(|e| e.within("gauging")));
        let gauged = gauged.transpose()?;
        // Metal is gone where the gauges show the thread out and a chaser is no cure of it.
        let lost = gauged.as_ref().is_some_and(|said| {
            said.outcome == Outcome::NonconformityShown
                && !said.cures.iter().any(|c| c.by == Remedy::Chase)
        });
        let seized = self.damage == Damage::Seized;
        let first = if seized { F::Soak } else { F::CleanFirst };
        let mut options = Vec::from([
            Opt::can(Step::Clean, first),
            self.chase(lost),
            self.part()?,
            self.compound(),
        ]);
        options.push(match gauged {
            Some(said) => {
                let mut option = Opt::can(
                    Step::Gauge,
                    F::Gauged {
                        found: said.findings,
                    },
                );
                option
                    .next
                    .extend(said.next.into_iter().map(|next| next.ask.into()));
                option
            }
            None => Opt::can(Step::Gauge, F::GaugeFirst).needing(A::BothGauges),
        });
        let mut shells_after = Vec::new();
        if seized {
            let loosens = F::Loosens {
                hand: self.thread.hand,
            };
            options.push(Opt::open(Step::Free, loosens, A::HandShows));
        } else {
            for (option, after) in self.retaps(tables) {
                options.push(option);
                shells_after.extend(after);
            }
            options.push(self.insert());
            if self.shell.is_some() {
                options.push(super::thread_retap::clamp_in(tables));
            }
            if matches!(self.damage, Damage::Swapped | Damage::OverCut) {
                options.push(Opt::open(Step::FillAndRecut, F::Fill, A::Consent));
            }
            options.push(Opt::open(Step::Sleeve, F::Sleeve, A::Outside));
        }
        let what = Spoilt::Thread(self.thread, self.shell.map(|(_, side)| side));
        Ok(Rescue {
            shells_after,
            ..Rescue::of(what, self.damage, self.material, options)
        })
    }

    fn chase(&self, lost: bool) -> Opt {
        match self.damage {
            Damage::Swapped => Opt::not(Step::Chase, F::ChaserCrosses),
            Damage::Seized => Opt::not(Step::Chase, F::StillIn),
            Damage::Worn | Damage::OverCut | Damage::Stripped | Damage::OverBored => {
                Opt::not(Step::Chase, F::MetalGone)
            }
            _ if lost => Opt::not(Step::Chase, F::MetalGone),
            _ => Opt::can(
                Step::Chase,
                F::Chase {
                    thread: self.thread,
                },
            ),
        }
    }

    /// A better or longer part, by what still bears.
    fn part(&self) -> Result<Opt, Error> {
        let step = Step::AdjustPart;
        let (why, bore) = match (self.damage, self.bore) {
            (Damage::Swapped, _) => return Ok(Opt::not(step, F::NoSuchPart)),
            (Damage::Seized, _) => return Ok(Opt::not(step, F::StillIn)),
            (Damage::Stripped, _) => {
                return Ok(Opt::not(step, F::FlanksTorn).needing(A::Crests));
            }
            (_, None) => (F::LargerPart, None),
            (_, Some(_)) if self.thread.size.form() == ThreadForm::Unknown => {
                (F::FormUnknown, None)
            }
            (_, Some(bore)) => (F::LargerPart, Some(bore)),
        };
        let Some(bore) = bore else {
            return Ok(Opt::open(step, why, A::Crests));
        };
        let bore = BoreDiameter::new(bore.value()).map_err(|e| e.named("bore"))?;
        let major = ShaftDiameter::new(self.thread.size.major())?;
        let left = flank_engagement(&self.thread.size, major, bore);
        let left = left.map_err(|e| e.named("thread"))?;
        let bears = F::StillBears {
            depth: left.depth,
            percent: left.percent_of_basic_height,
        };
        let option = Opt::open(step, bears, A::Crests).graded(Grade::Derived);
        let none = settled_cmp(left.depth, mm(0.0)).is_eq();
        Ok(if none {
            option.standing(Stand::Forbidden)
        } else {
            option
        })
    }

    fn compound(&self) -> Opt {
        match self.damage {
            Damage::Stripped | Damage::Swapped | Damage::CrossCut | Damage::Seized => {
                Opt::not(Step::Compound, F::CompoundNoFlanks)
            }
            _ => Opt::open(Step::Compound, F::CompoundWithinSheet, A::BothGauges)
                .needing(A::CompoundSheet),
        }
    }
}
