//! The steps for a thread that cut: the next pattern, an insert, a unit that needs no thread.

use alloc::vec::Vec;

use super::facts::{RescueAsk as A, RescueFact as F};
use super::option::{Damage, RescueOption as Opt, Stand, Step};
use super::thread::ThreadRescue;
use crate::ErrorKind;
use crate::evidence::Grade;
use crate::measure::settled_cmp;
use crate::quantity::to_mm;
use crate::standard::{LocatedBy, Shell, Tables};
use crate::thread::{
    Designation, Mates, Retap, ShellThreads, ThreadSize, insert_sizes, minor_span, mismatch, retap,
};

fn thread_of(row: &Shell) -> Option<&ThreadSize> {
    row.thread.as_ref().and_then(|thread| thread.value())
}

impl ThreadRescue {
    pub(super) fn retaps(&self, tables: Tables<'_>) -> Vec<(Opt, Option<ShellThreads>)> {
        let mut targets = self.to.clone();
        if let (true, Some((_, side))) = (targets.is_empty(), self.shell) {
            let larger = |target: &Designation| {
                // A pattern more than two millimetres larger is another shell, not a rescue.
                let step = to_mm(target.size.major()) - to_mm(self.thread.size.major());
                let turned = target.with_hand(self.thread.hand);
                step > 0.0 && step <= 2.0 && mismatch(&self.thread, &turned).mates != Mates::Yes
            };
            for row in tables.all::<Shell>() {
                let target = thread_of(row).zip(row.hand(side));
                let target = target.map(|(size, hand)| Designation::new(*size).with_hand(hand));
                targets.extend(target.filter(|t| larger(t) && !targets.contains(t)));
            }
        }
        if targets.is_empty() {
            let none = Opt::open(Step::Retap, F::NoLargerSize, A::SizesMade);
            return Vec::from([(none, None)]);
        }
        let outside = self.outside.map(|r| r.value());
        let each = |target| match retap(&self.thread, &target, outside) {
            Ok(cut) => self.retap(target, &cut, tables),
            Err(e) => {
                let why = if e.kind() == ErrorKind::Contradiction {
                    F::BreaksThrough
                } else {
                    F::NotLarger
                };
                (
                    Opt::not(Step::Retap, why).of(F::Thread { thread: target }),
                    None,
                )
            }
        };
        targets.into_iter().map(each).collect()
    }

    fn retap(
        &self,
        target: Designation,
        cut: &Retap,
        tables: Tables<'_>,
    ) -> (Opt, Option<ShellThreads>) {
        let height = (to_mm(cut.to.major()) - minor_span(&cut.to).0) / 2.0;
        let share = to_mm(cut.old_thread_left_max) / height;
        let (old, new) = (
            self.thread.size.pitch().length(),
            target.size.pitch().length(),
        );
        let same_helix = settled_cmp(old, new).is_eq() && !cut.hand_changes;
        // Where old grooves of another helix reach past the middle of the new flanks, the new thread bears on less than half.
        let crossed = !same_helix && share > 0.5;
        let takes = F::TakesASide {
            stock: cut.stock_removed,
            old_grooves: cut.old_thread_left_max,
            share,
        };
        let mut option = Opt::can(Step::Retap, takes)
            .of(F::Thread { thread: target })
            .graded(Grade::Derived);
        if crossed {
            option = option.standing(Stand::Forbidden).because(F::CutAcross);
        }
        if !crossed || cut.wall_left.is_some() {
            option = option.walled(cut.wall_left);
        }
        if cut.hand_changes {
            option.cautions.push(F::HandChanges { hand: cut.hand });
        }
        let Some((shell, side)) = self.shell else {
            return (option, None);
        };
        let new = shell.retapped(side, target);
        if new.is_hybrid() {
            option.cautions.push(F::Hybrid {
                drive: new.drive,
                non_drive: new.non_drive,
            });
        }
        let same = |row: &&Shell| {
            thread_of(row) == Some(&target.size) && row.hand(side) == Some(target.hand)
        };
        for row in tables.all::<Shell>().filter(same) {
            option = option.resting_on(row.thread.as_ref().and_then(|t| t.evidence()));
            if !row.note.is_empty() {
                option.cautions.push(F::RowNote {
                    note: row.note.clone(),
                });
            }
        }
        (option, Some(new))
    }

    pub(super) fn insert(&self) -> Opt {
        let step = Step::Insert;
        if self.damage == Damage::Swapped {
            return Opt::not(step, F::SoundOtherHand);
        }
        let known = insert_sizes(&self.thread.size).ok();
        let known =
            known.and_then(|known| Some((known.bore.lower()?, known.tap_major.nominal()?, known)));
        let Some((bore, major, known)) = known else {
            return Opt::open(step, F::NoInsertKnown, A::InsertSizes);
        };
        let thread = Designation::new(self.thread.size);
        let option = Opt::can(step, F::InsertTap { major, bore })
            .of(F::Wire { thread })
            .resting_on(known.tap_major.evidence());
        let wall = self.outside.map(|outside| (outside.value() - major) / 2.0);
        option.walled(wall).needing(A::InsertSizes)
    }
}

/// A unit that clamps itself in the shell: a pattern without thread and bore of its own, seated on the shell's chamfers.
pub(super) fn clamp_in(tables: Tables<'_>) -> Opt {
    let clamps = |row: &&Shell| {
        row.thread.is_none()
            && row.bore.is_none()
            && row.located_by.value() == Some(&LocatedBy::Seat)
    };
    let row = tables.all::<Shell>().find(clamps);
    Opt::open(Step::ClampInUnit, F::ClampIn, A::ClampRange).resting_on(
        row.and_then(|r| r.widths.first())
            .and_then(|w| w.evidence()),
    )
}
