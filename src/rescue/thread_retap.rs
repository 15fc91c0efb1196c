//! The steps for a thread that cut: the next pattern, an insert, a unit that needs no thread.

use super::option::{Damage, RescueOption, Stand, Step};
use super::thread::ThreadRescue;
use crate::evidence::Grade;
use crate::judge::{NextStep, Worked};
use crate::measure::settled_cmp;
use crate::quantity::{in_mm, mm, to_mm};
use crate::standard::{Shell, Tables};
use crate::thread::{
    Designation, Mates, Retap, ShellThreads, insert_sizes, minor_span, mismatch, retap,
};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

impl ThreadRescue {
    pub(super) fn retaps(&self, tables: Tables<'_>) -> Vec<(RescueOption, Option<ShellThreads>)> {
        if self.damage == Damage::Seized {
            return Vec::new();
        }
        let given = !self.to.is_empty();
        let mut targets = self.to.clone();
        if !given && let Some((_, side)) = self.shell {
            for row in tables.all::<Shell>() {
                let size = row.thread.as_ref().and_then(|t| t.value());
                if let (Some(size), Some(hand)) = (size, row.hand(side)) {
                    let target = Designation::new(*size).with_hand(hand);
                    // A pattern more than two millimetres larger is another shell, not a rescue.
                    let step = to_mm(size.major()) - to_mm(self.thread.size.major());
                    if step > 0.0
                        && step <= 2.0
                        && !targets.contains(&target)
                        && mismatch(&self.thread, &target.with_hand(self.thread.hand)).mates
                            != Mates::Yes
                    {
                        targets.push(target);
                    }
                }
            }
        }
        if targets.is_empty() {
            return Vec::from([(
                RescueOption::new(
                    Step::Retap,
                    Stand::NeedsMeasurement,
                    "no larger pattern is listed for this place",
                )
                .needing(NextStep::new(
                    "which larger thread a part exists for",
                    "a thread without a part is no rescue",
                    "parts list",
                )),
                None,
            )]);
        }
        let mut out = Vec::new();
        for target in targets {
            match retap(&self.thread, &target, self.outside.map(|r| r.value())) {
                Ok(cut) => out.push(self.retap(&target, &cut, tables)),
                // No larger thread, or none that the outside leaves room for.
                Err(e) => out.push((
                    RescueOption::new(Step::Retap, Stand::Forbidden, e.problem().to_string())
                        .of(target.to_string()),
                    None,
                )),
            }
        }
        out
    }

    fn retap(
        &self,
        target: &Designation,
        cut: &Retap,
        tables: Tables<'_>,
    ) -> (RescueOption, Option<ShellThreads>) {
        let height = (to_mm(cut.to.major()) - minor_span(&cut.to).0) / 2.0;
        let share = to_mm(cut.old_thread_left_max) / height;
        let same_helix = settled_cmp(
            self.thread.size.pitch().length(),
            target.size.pitch().length(),
        )
        .is_eq()
            && !cut.hand_changes;
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
            .with(Worked::length(
                "stock removed a side",
                cut.stock_removed,
                "half the difference of the major diameters",
            ))
            .with(Worked::length(
                "old thread left at most",
                cut.old_thread_left_max,
                "half of old major less new minor",
            ))
            .with(Worked::plain(
                "old grooves in the new thread",
                share,
                "old thread left / height of the new thread",
            ))
            .minding(cut.caution)
            .then_check(&[
                "GO through, NOT GO at both ends",
                "the new part by hand",
                "face of the shell: square to the new thread",
            ])
            .graded(Grade::Derived);
        if let Some(wall) = cut.wall_left {
            why.push_str(&format!(
                "; wall left {}, and no least wall is published",
                in_mm(wall)
            ));
            option = option.with(Worked::length(
                "wall left",
                wall,
                "(outside - new major) / 2",
            ));
        } else if !crossed {
            why.push_str("; possible if the wall allows");
            option = option.needing(NextStep::new(
                "outside diameter of the metal around the thread",
                "the wall that is left decides; no least wall is published",
                "caliper",
            ));
        }
        if cut.hand_changes {
            why.push_str(&format!("; this side becomes {}-hand", cut.hand));
            option = option.minding(format!(
                "the hand changes: this side is {}-hand from now on, tightened {}",
                cut.hand,
                cut.hand.tighten()
            ));
        }
        let mut after = None;
        if let Some((shell, side)) = self.shell {
            let new = shell.retapped(side, *target);
            after = Some(new);
            if new.is_hybrid() {
                let hands = |t: Option<Designation>| {
                    t.map_or_else(
                        || String::from("none"),
                        |t| format!("{} {}-hand", t.size, t.hand),
                    )
                };
                why.push_str(&format!(
                    "; one side alone makes a hybrid: drive {}, non-drive {}",
                    hands(new.drive),
                    hands(new.non_drive)
                ));
                option = option.minding("a hybrid: each side needs its own cup; write both threads and both hands on the frame");
            }
            for row in tables.all::<Shell>() {
                if row.thread.as_ref().and_then(|t| t.value()) == Some(&target.size)
                    && row.hand(side) == Some(target.hand)
                {
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

    pub(super) fn insert(&self) -> RescueOption {
        let ask_maker = || {
            NextStep::new(
                "an insert of this thread: its drill, tap and length",
                "its maker's own figures decide",
                "insert maker's list",
            )
        };
        if self.damage == Damage::Swapped {
            return RescueOption::new(
                Step::Insert,
                Stand::Forbidden,
                "there is sound thread, of the wrong hand",
            );
        }
        let known = insert_sizes(&self.thread.size)
            .ok()
            .and_then(|known| Some((known.bore.lower()?, known.tap_major.nominal()?, known)));
        let Some((bore, tap, known)) = known else {
            return RescueOption::new(
                Step::Insert,
                Stand::NeedsMeasurement,
                "no insert sizes are known here for this form",
            )
            .needing(ask_maker());
        };
        let mut option = RescueOption::new(Step::Insert, Stand::NeedsMeasurement, String::new())
            .of(format!("coiled wire for {}", self.thread.size))
            .with(Worked::length(
                "least bore before tapping",
                bore,
                "D + 0.2165 P",
            ))
            .with(Worked::length(
                "major diameter of the insert's tap",
                tap,
                "D + 1.299 P",
            ))
            .resting_on(known.tap_major.evidence())
            .minding("a wire insert in a brake, axle or pedal thread only with the maker's consent")
            .then_check(&[
                "the part by hand through the whole insert",
                "insert below the face, its tang broken off",
            ]);
        let mut why = format!(
            "its tap has a major diameter of {} and wants a bore of at least {} (proportions from memory)",
            in_mm(tap),
            in_mm(bore)
        );
        match self.outside {
            None => {
                why.push_str("; the wall around it is not known");
                option = option.needing(NextStep::new(
                    "outside diameter of the metal around the hole, and the depth there is",
                    "length and wall of the insert must fit",
                    "caliper",
                ));
            }
            Some(outside) => {
                let wall = (outside.value() - tap) / 2.0;
                option = option.with(Worked::length(
                    "wall left around the insert",
                    wall,
                    "(outside - tap major) / 2",
                ));
                if settled_cmp(wall, mm(0.0)).is_le() {
                    option.stand = Stand::Forbidden;
                    why.push_str("; it would break through the outside");
                } else {
                    option.stand = Stand::Allowed;
                    why.push_str(&format!(
                        "; wall left {}, and no least wall is published",
                        in_mm(wall)
                    ));
                }
            }
        }
        option.why = why;
        option.needing(ask_maker())
    }
}

pub(super) fn clamp_in(tables: Tables<'_>) -> RescueOption {
    let row = tables.get::<Shell>("bevel_45");
    RescueOption::new(Step::ClampInUnit, Stand::NeedsMeasurement, "a unit that clamps itself in the shell needs no thread, only a round bore and sound faces; the bevelled pattern needs a 45 degree chamfer on both faces")
        .needing(NextStep::new("bore on two axes at both ends, width, and the range the unit is made for", "it has to fit what is left of the bore", "bore gauge, unit maker's sheet"))
        .resting_on(row.and_then(|r| r.widths.first()).and_then(|w| w.evidence()))
}
