//! A damaged thread.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::option::{Damage, Rescue, RescueOption, Stand, Step};
use crate::Error;
use crate::evidence::Grade;
use crate::fit::MaterialKind;
use crate::judge::{NextStep, Worked};
use crate::measure::{Reading, settled_cmp};
use crate::quantity::{BoreDiameter, ShaftDiameter, in_mm, mm, to_mm};
use crate::standard::{Row, Shell, find};
use crate::thread::{
    BasicDiameters, Designation, Gauging, Mates, Member, Retap, ShellThreads, Side, ThreadForm,
    chasing, flank_engagement, insert_sizes, judge_gauging, mismatch, retap,
};

/// A damaged thread in a frame or part, with what is known of it.
///
/// ```
/// use framegauge::{rescue::{Damage, Stand, Step, ThreadRescue}, standard::{Shell, find}, thread::{Hand, Side}, judge::pattern_threads};
/// // The drive side of an English shell is stripped, the other side is good.
/// let shell = pattern_threads(find::<Shell>("bsc").unwrap()).unwrap();
/// let mut ask = ThreadRescue::new(shell.drive.unwrap(), Damage::Stripped).in_shell(shell, Side::Drive);
/// ask.to.push("36 mm x 24 tpi".parse().unwrap());
/// let left = ask.options().unwrap();
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
    /// Those of [`judge_gauging`], [`flank_engagement`] and the size checks.
    ///
    /// ```
    /// use framegauge::rescue::{Damage, Stand, Step, ThreadRescue};
    /// let mut axle = ThreadRescue::new("M12x1".parse().unwrap(), Damage::Stripped);
    /// axle.outside = Some("20 +/- 0.1 mm".parse().unwrap());
    /// let left = axle.options().unwrap();
    /// let insert = left.steps(Step::Insert).next().unwrap();
    /// assert_eq!(insert.stand, Stand::Allowed);
    /// assert_eq!(insert.millimetres("major diameter of the insert's tap"), Some(13.299));
    /// ```
    pub fn options(&self) -> Result<Rescue, Error> {
        for (name, reading) in [("outside", &self.outside), ("bore", &self.bore)] {
            if let Some(reading) = reading {
                ShaftDiameter::new(reading.value()).map_err(|e| e.within(name))?;
            }
        }
        let mut options = Vec::from([self.clean()]);
        let gauged = match &self.gauging {
            Some(found) => Some(judge_gauging(Member::Internal, found)?),
            None => None,
        };
        if self.damage == Damage::Seized {
            options.push(self.free());
        }
        options.push(self.chase(gauged.as_ref().map(|g| g.chasing_may_help)));
        options.push(match &gauged {
            Some(found) => RescueOption::new(Step::Gauge, Stand::Allowed, format!("the gauges: {}; next: {}", found.says.join("; "), found.next)),
            None => RescueOption::new(Step::Gauge, Stand::Allowed, "before anything is cut: damage is named by the gauge, not by the feel")
                .needing(NextStep::new("pitch diameter with NOT GO at both ends, or over wires", "the bore can be right and the thread gone", "GO and NOT GO plug")),
        });
        options.push(self.part()?);
        options.push(self.compound());
        let mut shells = Vec::new();
        for (option, after) in self.retaps()? {
            options.push(option);
            shells.extend(after);
        }
        if self.damage != Damage::Seized {
            options.push(self.insert()?);
            if self.in_a_shell() {
                options.push(clamp_in());
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
        options.push(RescueOption::new(Step::Refer, Stand::Allowed, "always open: the frame maker or a qualified builder"));
        if self.material == Some(MaterialKind::Laminate) {
            for option in options.iter_mut().filter(|o| o.step.cuts()) {
                option.stand = Stand::Forbidden;
                option.why = format!("laminate is not cut; a bonded metal insert only with the frame maker's written consent ({})", option.why);
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
        matches!(self.damage, Damage::Worn | Damage::OverCut | Damage::Stripped | Damage::OverBored)
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

    fn chase(&self, may_help: Option<bool>) -> RescueOption {
        let facts = chasing();
        let never = facts.never_restores.first().copied().unwrap_or_default();
        let option = match (self.damage, may_help) {
            (Damage::Swapped, _) => RescueOption::new(Step::Chase, Stand::Forbidden, "a chaser of the other hand would cut across the thread that is there"),
            (Damage::Seized, _) => RescueOption::new(Step::Chase, Stand::Forbidden, "the part is still in it"),
            _ if self.lost_metal() || may_help == Some(false) => RescueOption::new(Step::Chase, Stand::Forbidden, format!("metal is gone, and a chaser never restores {never}")),
            _ => RescueOption::new(
                Step::Chase,
                Stand::Allowed,
                format!("with {}, {}-hand, started by hand from the sound end; it clears displaced metal and never restores {never}", self.thread.size, self.thread.hand),
            ),
        };
        option.then_check(facts.check_after).graded(Grade::CommonPractice)
    }

    /// A better or longer part, by what still bears.
    fn part(&self) -> Result<RescueOption, Error> {
        if matches!(self.damage, Damage::Swapped | Damage::Seized) {
            return Ok(RescueOption::new(Step::AdjustPart, Stand::Forbidden, "no part of this pattern has the thread that is there"));
        }
        let ask = || NextStep::new("bore over the crests, and pitch diameter", "says how much of the thread still bears", "small-hole gauge, NOT GO plug or wires");
        if self.damage == Damage::Stripped {
            return Ok(RescueOption::new(Step::AdjustPart, Stand::Forbidden, "the flanks are torn out: a longer part helps only where sound thread lies deeper").needing(ask()));
        }
        let Some(bore) = self.bore else {
            return Ok(RescueOption::new(Step::AdjustPart, Stand::NeedsMeasurement, "a part at the top of its limits may still hold; no least engagement is published").needing(ask()));
        };
        if self.thread.size.form() == ThreadForm::Unknown {
            return Ok(RescueOption::new(Step::AdjustPart, Stand::NeedsMeasurement, "the form of this thread is not known, so its height is not either").needing(ask()));
        }
        let left = flank_engagement(&self.thread.size, ShaftDiameter::new(self.thread.size.major())?, BoreDiameter::new(bore.value())?)?;
        let none = settled_cmp(left.depth, mm(0.0)).is_eq();
        Ok(RescueOption::new(
            Step::AdjustPart,
            if none { Stand::Forbidden } else { Stand::NeedsMeasurement },
            format!("under a full-size part {:.0} % of the basic height still bears by the crests; {}", left.percent_of_basic_height, left.caution),
        )
        .with(Worked::length("depth that still bears", left.depth, "(part's major - bore) / 2, at most the basic height"))
        .with(Worked::plain("percent of the basic height", left.percent_of_basic_height, "depth / basic height"))
        .needing(ask())
        .graded(Grade::Derived))
    }

    fn compound(&self) -> RescueOption {
        if matches!(self.damage, Damage::Stripped | Damage::Swapped | Damage::CrossCut | Damage::Seized) {
            return RescueOption::new(Step::Compound, Stand::Forbidden, "compound holds a part that the thread carries; it does not replace flanks");
        }
        RescueOption::new(Step::Compound, Stand::NeedsMeasurement, "only within the gap that its data sheet prints; none is known here")
            .needing(NextStep::new("gap on diameter, and the greatest gap on the compound's data sheet", "beyond it compound is no cure", "wires or NOT GO, data sheet"))
            .minding("keep it out of bearings and seals")
    }

    fn retaps(&self) -> Result<Vec<(RescueOption, Option<ShellThreads>)>, Error> {
        if self.damage == Damage::Seized {
            return Ok(Vec::new());
        }
        let given = !self.to.is_empty();
        let mut targets = self.to.clone();
        if !given && let Some((_, side)) = self.shell {
            for row in Shell::table() {
                let size = row.thread.as_ref().and_then(|t| t.value());
                if let (Some(size), Some(hand)) = (size, row.hand(side)) {
                    let target = Designation::new(*size).with_hand(hand);
                    // A pattern more than two millimetres larger is another shell, not a rescue.
                    let step = to_mm(size.major()) - to_mm(self.thread.size.major());
                    if step > 0.0 && step <= 2.0 && !targets.contains(&target) && mismatch(&self.thread, &target.with_hand(self.thread.hand)).mates != Mates::Yes {
                        targets.push(target);
                    }
                }
            }
        }
        if targets.is_empty() {
            return Ok(Vec::from([(RescueOption::new(Step::Retap, Stand::NeedsMeasurement, "no larger pattern is listed for this place")
                .needing(NextStep::new("which larger thread a part exists for", "a thread without a part is no rescue", "parts list")), None)]));
        }
        let mut out = Vec::new();
        for target in targets {
            match retap(&self.thread, &target, self.outside.map(|r| r.value())) {
                Ok(cut) => out.push(self.retap(&target, &cut)),
                Err(e) if matches!(e.kind(), crate::ErrorKind::NotApplicable | crate::ErrorKind::Contradiction) => {
                    out.push((RescueOption::new(Step::Retap, Stand::Forbidden, e.problem().to_string()).of(target.to_string()), None));
                }
                Err(e) => return Err(e),
            }
        }
        Ok(out)
    }

    fn retap(&self, target: &Designation, cut: &Retap) -> (RescueOption, Option<ShellThreads>) {
        let height = (to_mm(cut.to.major()) - least_minor(&cut.to)) / 2.0;
        let share = if height > 0.0 { to_mm(cut.old_thread_left_max) / height } else { 1.0 };
        let same_helix = settled_cmp(self.thread.size.pitch().length(), target.size.pitch().length()).is_eq() && !cut.hand_changes;
        // Where old grooves of another helix reach past the middle of the new flanks, the new thread bears on less than half.
        let crossed = !same_helix && share > 0.5;
        let mut why = format!(
            "takes {} a side; old grooves stay {} deep at most, {:.0} % of the new thread's height",
            in_mm(cut.stock_removed),
            in_mm(cut.old_thread_left_max),
            share * 100.0
        );
        if crossed {
            why.push_str(": more than half of it would be cut into grooves of another helix");
        }
        let stand = match (crossed, cut.wall_left) {
            (true, _) => Stand::Forbidden,
            (false, None) => Stand::NeedsMeasurement,
            (false, Some(_)) => Stand::Allowed,
        };
        let mut option = RescueOption::new(Step::Retap, stand, String::new())
            .of(target.to_string())
            .with(Worked::length("stock removed a side", cut.stock_removed, "half the difference of the major diameters"))
            .with(Worked::length("old thread left at most", cut.old_thread_left_max, "half of old major less new minor"))
            .with(Worked::plain("old grooves in the new thread", share, "old thread left / height of the new thread"))
            .minding(cut.caution)
            .then_check(&["GO through, NOT GO at both ends", "the new part by hand", "face of the shell: square to the new thread"])
            .graded(Grade::Derived);
        if let Some(wall) = cut.wall_left {
            why.push_str(&format!("; wall left {}, and no least wall is published", in_mm(wall)));
            option = option.with(Worked::length("wall left", wall, "(outside - new major) / 2"));
        } else if !crossed {
            why.push_str("; possible if the wall allows");
            option = option.needing(NextStep::new("outside diameter of the metal around the thread", "the wall that is left decides; no least wall is published", "caliper"));
        }
        if cut.hand_changes {
            why.push_str(&format!("; this side becomes {}-hand", cut.hand));
            option = option.minding(format!("the hand changes: this side is {}-hand from now on, tightened {}", cut.hand, cut.hand.tighten()));
        }
        let mut after = None;
        if let Some((shell, side)) = self.shell {
            let new = shell.retapped(side, *target);
            after = Some(new);
            if new.is_hybrid() {
                let hands = |t: Option<Designation>| t.map_or_else(|| String::from("none"), |t| format!("{} {}-hand", t.size, t.hand));
                why.push_str(&format!("; one side alone makes a hybrid: drive {}, non-drive {}", hands(new.drive), hands(new.non_drive)));
                option = option.minding("a hybrid: each side needs its own cup; write both threads and both hands on the frame");
            }
            for row in Shell::table() {
                if row.thread.as_ref().and_then(|t| t.value()) == Some(&target.size) && row.hand(side) == Some(target.hand) {
                    option = option.resting_on(row.thread.as_ref().and_then(|t| t.evidence()));
                    if !row.note.is_empty() {
                        option = option.minding(row.note.clone());
                    }
                }
            }
        }
        option.why = why;
        (option, after)
    }

    fn insert(&self) -> Result<RescueOption, Error> {
        let ask_maker = || NextStep::new("an insert of this thread: its drill, tap and length", "its maker's own figures decide", "insert maker's list");
        if self.damage == Damage::Swapped {
            return Ok(RescueOption::new(Step::Insert, Stand::Forbidden, "there is sound thread, of the wrong hand"));
        }
        let known = match insert_sizes(&self.thread.size) {
            Ok(known) => known,
            Err(e) if e.kind() == crate::ErrorKind::NotApplicable => {
                return Ok(RescueOption::new(Step::Insert, Stand::NeedsMeasurement, "no insert sizes are known here for this form").needing(ask_maker()));
            }
            Err(e) => return Err(e),
        };
        let (Some(bore), Some(tap)) = (known.bore.lower(), known.tap_major.nominal()) else {
            return Ok(RescueOption::new(Step::Insert, Stand::NeedsMeasurement, "no insert sizes are known here").needing(ask_maker()));
        };
        let mut option = RescueOption::new(Step::Insert, Stand::NeedsMeasurement, String::new())
            .of(format!("coiled wire for {}", self.thread.size))
            .with(Worked::length("least bore before tapping", bore, "D + 0.2165 P"))
            .with(Worked::length("major diameter of the insert's tap", tap, "D + 1.299 P"))
            .resting_on(known.tap_major.evidence())
            .minding("a wire insert in a brake, axle or pedal thread only with the maker's consent")
            .then_check(&["the part by hand through the whole insert", "insert below the face, its tang broken off"]);
        let mut why = format!("its tap has a major diameter of {} and wants a bore of at least {} (proportions from memory)", in_mm(tap), in_mm(bore));
        match self.outside {
            None => {
                why.push_str("; the wall around it is not known");
                option = option.needing(NextStep::new("outside diameter of the metal around the hole, and the depth there is", "length and wall of the insert must fit", "caliper"));
            }
            Some(outside) => {
                let wall = (outside.value() - tap) / 2.0;
                option = option.with(Worked::length("wall left around the insert", wall, "(outside - tap major) / 2"));
                if settled_cmp(wall, mm(0.0)).is_le() {
                    option.stand = Stand::Forbidden;
                    why.push_str("; it would break through the outside");
                } else {
                    option.stand = Stand::Allowed;
                    why.push_str(&format!("; wall left {}, and no least wall is published", in_mm(wall)));
                }
            }
        }
        option.why = why;
        Ok(option.needing(ask_maker()))
    }
}

/// The smallest basic minor diameter that this size can have, in millimetres.
fn least_minor(size: &crate::thread::ThreadSize) -> f64 {
    BasicDiameters::of(size).map_or_else(
        |_| {
            // The sharpest cycle form is the deepest.
            to_mm(size.major()) - 1.280_655 * size.pitch().to_mm()
        },
        |basic| to_mm(basic.minor),
    )
}

fn clamp_in() -> RescueOption {
    let row = find::<Shell>("mavic_bevel").ok();
    RescueOption::new(Step::ClampInUnit, Stand::NeedsMeasurement, "a unit that clamps itself in the shell needs no thread, only a round bore and sound faces; the bevelled pattern needs a 45 degree chamfer on both faces")
        .needing(NextStep::new("bore on two axes at both ends, width, and the range the unit is made for", "it has to fit what is left of the bore", "bore gauge, unit maker's sheet"))
        .resting_on(row.and_then(|r| r.widths.first()).and_then(|w| w.evidence()))
}
