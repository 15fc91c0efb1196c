//! What is left to do for a spoilt place, in words.

mod ask;
mod step;

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;

use crate::fact::Worded;
use crate::judge::from_to;
use crate::measure::Outcome;
use crate::quantity::in_mm;
use crate::rescue::{Rescue, RescueFact, RescueOption, Spoilt, Stand};
use crate::thread::{Designation, chasing};

impl fmt::Display for RescueFact {
    #[allow(clippy::too_many_lines, reason = "one sentence a fact")]
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let never = || {
            chasing()
                .never_restores
                .first()
                .copied()
                .unwrap_or_default()
        };
        f.write_str(match self {
            Self::CleanFirst => "first of all, and costs nothing: dirt, burrs, paint and old compound feel like damage, and can add or hide a tenth of a millimetre",
            Self::Soak => "soak the joint and give it days; heat only on steel, and never near bonding",
            Self::DrawOut => "pressed or slid parts come out with soaking, with cold on the part or warmth around it, or are cut out by a builder",
            Self::Loosens { hand } => {
                return write!(f, "a {} thread loosens {}, seen facing it from outside; the hand has to be sure first", hand.words(), hand.loosen());
            }
            Self::StillIn => "the part is still in it",
            Self::AlwaysOpen => "always open: the frame maker or a qualified builder",
            Self::GapFirst => "before a cure is chosen: each needs the gap",
            Self::GaugeFirst => "before anything is cut: damage is named by the gauge, not by the feel",
            Self::Gauged { found } => {
                let found: Vec<String> = found.iter().map(|found| format!("{}: {found}", found.what())).collect();
                return f.write_str(&found.join("; "));
            }
            Self::Clearance { smallest, largest, tightest, loosest } => {
                return write!(f, "bore {}; clearance {} on diameter (a minus figure is interference)", from_to(*smallest, *largest), from_to(*tightest, *loosest));
            }
            Self::Gap { gap } => return write!(f, "the gap is {} on diameter", in_mm(*gap)),
            Self::Part { size } => return in_mm(*size).fmt(f),
            Self::PartLeaves { size, clearance } => {
                return write!(f, "a part of {} leaves {} of clearance at the tightest place (a minus figure is interference)", in_mm(*size), in_mm(*clearance));
            }
            Self::LargerPart => "a part of the next size, or one at the top of its limits, may still hold; how much is enough nobody publishes",
            Self::NoPartFits => "none of the sizes at hand fits as it stands; a maker may have an oversize part",
            Self::NoSuchPart => "no part of this pattern has the thread that is there",
            Self::FlanksTorn => "the flanks are torn out: a longer part helps only where sound thread lies deeper",
            Self::FormUnknown => "the form of this thread is not known, so its height is not either",
            Self::StillBears { percent, .. } => {
                return write!(f, "under a full-size part {percent:.0} % of the basic height still bears by the crests; the crests say nothing of the pitch diameter, so try a NOT GO gauge or measure over wires");
            }
            Self::ShimIsHalf => "its wall is half of gap and wanted interference together",
            Self::ShimWall { wall } => return write!(f, "wall {}", in_mm(*wall)),
            Self::ShimUnderRing => "a shim under a bearing ring deforms the ring",
            Self::NoRoomForShim => "there is no gap to fill, or the tightest place leaves no room for a shim",
            Self::PressNotStated => "the press that the part wants is not stated, and bore or shim depends on it",
            Self::CompoundWithinSheet => "only within the gap that its data sheet prints",
            Self::CompoundFills { gap, fills, outcome } => {
                let so = match outcome {
                    Outcome::ConformityShown => "",
                    Outcome::NonconformityShown => ": no cure",
                    Outcome::Undecided => ": too close to tell",
                };
                return write!(f, "the gap is {} at its widest, the compound fills {}{so}", in_mm(*gap), in_mm(*fills));
            }
            Self::CompoundNoFlanks => "compound holds a part that the thread carries; it does not replace flanks",
            Self::PressRound { metal: true } => "pressed round with drifts of rising size before any size is named or reamed; done on steel tubes",
            Self::PressRound { metal: false } => "steel tubes are pressed round with drifts; what this one is made of is not stated",
            Self::NextSize => "reamed to the next size that parts exist in",
            Self::NoLargerSize => "no larger size or pattern is known here that parts exist in",
            Self::BoreFor { bore, part } => {
                let bore = bore.map_or(String::new(), |bore| in_mm(bore).to_string());
                let part = part.map_or(String::new(), |part| format!("for a part of {}", in_mm(part)));
                return f.write_str(format!("{bore} {part}").trim());
            }
            Self::TakesOnDiameter { stock } => return write!(f, "takes {} on diameter", in_mm(*stock)),
            Self::WallLeft { wall } => return write!(f, "leaves a wall of {}, and no least wall is published", in_mm(*wall)),
            Self::WallUnknown => "the wall around it is not known",
            Self::BreaksThrough => "it would break through the outside",
            Self::Sleeve => "bored out and sleeved to size, or replaced: a builder's work; no least wall is published",
            Self::Peen => "burrs raised with a centre punch grip for a while; used where nothing else is at hand",
            Self::Laminate => "laminate is neither cut nor hammered; a bonded metal insert only with the frame maker's written consent",
            Self::ChaserCrosses => "a chaser of the other hand would cut across the thread that is there",
            Self::MetalGone => return write!(f, "metal is gone, and a chaser never restores {}", never()),
            Self::Chase { thread } => {
                return write!(f, "with {}, {}, started by hand from the sound end; it clears displaced metal and never restores {}", thread.size, thread.hand.words(), never());
            }
            Self::Thread { thread } => return thread.fmt(f),
            Self::Wire { thread } => return write!(f, "coiled wire for {}", thread.size),
            Self::NotLarger => "not larger than the thread that is there",
            Self::TakesASide { stock, old_grooves, share } => {
                return write!(f, "takes {} a side; old grooves stay {} deep at most, {:.0} % of the new thread's height", in_mm(*stock), in_mm(*old_grooves), share * 100.0);
            }
            Self::CutAcross => "more than half of it would be cut into grooves of another helix",
            Self::HandChanges { hand } => {
                return write!(f, "the hand changes: this side is {} from now on, tightened {}", hand.words(), hand.tighten());
            }
            Self::Hybrid { drive, non_drive } => {
                let side = |thread: &Option<Designation>| thread.map_or_else(|| "none".into(), |t| format!("{}, {}", t.size, t.hand.words()));
                return write!(f, "one side alone makes a hybrid (drive side {}; non-drive side {}): each side needs its own cup; write both threads and both hands on the frame", side(drive), side(non_drive));
            }
            Self::SoundOtherHand => "there is sound thread, of the wrong hand",
            Self::NoInsertKnown => "no insert sizes are known here for this form",
            Self::InsertTap { major, bore } => {
                return write!(f, "its tap has a major diameter of {} and wants a bore of at least {} (proportions from memory)", in_mm(*major), in_mm(*bore));
            }
            Self::ClampIn => "a unit that clamps itself in the shell needs no thread, only a round bore and sound faces; the bevelled pattern needs a 45 degree chamfer on both faces",
            Self::Fill => "an unusual repair of steel shells: filled with braze and cut anew; how long it lasts is not known",
            Self::Mind { step } => step.mind(),
            Self::Steering => "steering: must not be ridden before the fit is shown; when in doubt, hand over",
            Self::RowNote { note } => note,
            Self::Cure { by, why } => return write!(f, "{}: {}", by.words(), joined(why)),
        })
    }
}

impl Worded for RescueFact {}

fn joined(facts: &[RescueFact]) -> String {
    let words: Vec<String> = facts.iter().map(RescueFact::to_string).collect();
    words.join("; ")
}

impl fmt::Display for Spoilt {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Joint(joint) => f.write_str(joint.words()),
            Self::Thread(thread, None) => thread.fmt(f),
            Self::Thread(thread, Some(side)) => write!(f, "{thread}, {}", side.words()),
        }
    }
}

impl RescueOption {
    /// The reason in a sentence.
    #[must_use]
    pub fn words(&self) -> String {
        joined(&self.why)
    }

    /// The step with what exactly.
    fn name(&self) -> String {
        match &self.what {
            Some(what) => format!("{} ({what})", self.step.words()),
            None => self.step.words().into(),
        }
    }

    /// What to check after it; nothing where it is not done.
    #[must_use]
    pub fn check_after(&self) -> Vec<&'static str> {
        if self.stand == Stand::Forbidden {
            Vec::new()
        } else {
            self.step.checks().to_vec()
        }
    }
}

impl Rescue {
    /// The answer in one sentence.
    ///
    /// ```
    /// use framegauge::{rescue::{BoreRescue, Damage}, standard::{Joint, Tables}};
    /// let left = BoreRescue::new(Joint::HeadCup, Damage::Loose).options(Tables::ours()).unwrap();
    /// assert!(left.words().starts_with("In order of caution, possible: clean, gauge, refer; after measuring: "));
    /// ```
    #[must_use]
    pub fn words(&self) -> String {
        let stands = [
            (Stand::Allowed, "possible"),
            (Stand::NeedsMeasurement, "after measuring"),
            (Stand::Forbidden, "not"),
        ];
        let mut parts = Vec::new();
        for (stand, word) in stands {
            let mut names: Vec<String> = self
                .options
                .iter()
                .filter(|o| o.stand == stand)
                .map(RescueOption::name)
                .collect();
            names.dedup();
            if !names.is_empty() {
                parts.push(format!("{word}: {}", names.join(", ")));
            }
        }
        format!("In order of caution, {}.", parts.join("; "))
    }
}

impl fmt::Display for Rescue {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(
            f,
            "{}: {}. {}",
            self.what,
            self.damage.words(),
            self.words()
        )?;
        for option in &self.options {
            let stand = match option.stand {
                Stand::Allowed => "possible",
                Stand::Forbidden => "not",
                Stand::NeedsMeasurement => "after measuring",
            };
            writeln!(f, "- {} [{stand}]: {}", option.name(), option.words())?;
            for next in &option.next {
                writeln!(f, "    {}", next.words())?;
            }
            if option.stand == Stand::Forbidden {
                continue;
            }
            writeln!(f, "    costs later: {}", option.step.costs())?;
            for caution in &option.cautions {
                writeln!(f, "    mind: {caution}")?;
            }
        }
        Ok(())
    }
}
