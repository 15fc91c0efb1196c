//! A thread as the last pass left it, as the judge hears it.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::sheet::{Coating, CoatingLeft, Marks, PartDid, ThreadPass, ThreadSheet};
use super::site::on_surface;
use crate::judge::{Gauging, Passed, Remedy, ThreadSeen, Verdict};
use crate::measure::{DecisionRule, Placed};
use crate::standard::Tables;
use crate::thread::{Designation, Hand, ThreadSize};

/// What a thread was and what the last pass made of it.
#[derive(Debug, Clone)]
pub(super) struct Now {
    pub state: Option<ThreadSeen>,
    pub go: Option<Passed>,
    pub not_go: Option<Passed>,
    pub minor: Vec<Placed>,
    /// The hole was read before the last work at it: it names the thread, and no longer judges it.
    pub minor_before: bool,
    pub coating: Option<Coating>,
    pub worked: bool,
    pub marks: Option<Marks>,
    pub part: Option<PartDid>,
    /// How many passes the sheet tells, where it tells passes.
    passes: usize,
    lost: bool,
}

/// What a sheet states of a thread before and after the work.
pub(super) struct Stated<'a> {
    pub state: Option<ThreadSeen>,
    pub go: Option<Passed>,
    pub not_go: Option<Passed>,
    pub go_after: Option<Passed>,
    pub not_go_after: Option<Passed>,
    pub minor: &'a [Placed],
    pub passes: &'a [ThreadPass],
    pub coating: Option<Coating>,
}

/// The thread as the last pass left it: a thread that takes its gauge by hand is sound, whatever it was before, unless metal
/// is gone.
pub(super) fn now(stated: &Stated<'_>) -> Now {
    let mut now = Now {
        state: stated.state,
        go: stated.go,
        not_go: stated.not_go,
        minor: on_surface(stated.minor, stated.coating),
        coating: stated.coating,
        minor_before: false,
        worked: false,
        marks: None,
        part: None,
        passes: stated.passes.len(),
        lost: false,
    };
    let first = ThreadPass {
        go: stated.go_after,
        not_go: stated.not_go_after,
        ..ThreadPass::default()
    };
    if first != ThreadPass::default() {
        now.pass(&first, stated.coating);
    }
    for pass in stated.passes {
        now.pass(pass, stated.coating);
    }
    // By what was seen and gauged, whatever thread it is; not by its bore.
    let seen = Gauging {
        minor: Vec::new(),
        ..now.asked(None, DecisionRule::default())
    };
    let seen = seen.answer(Tables::ours());
    now.lost =
        now.marks == Some(Marks::Torn) || seen.is_ok_and(|said| cured_by(&said, Remedy::Sleeve));
    now
}

/// The thread of an entry now.
pub(super) fn of(sheet: &ThreadSheet) -> Now {
    now(&Stated {
        state: sheet.state,
        go: sheet.go,
        not_go: sheet.not_go,
        go_after: sheet.go_after,
        not_go_after: sheet.not_go_after,
        minor: &sheet.minor,
        passes: &sheet.passes,
        coating: sheet.coating,
    })
}

impl Now {
    /// What a pass made of it.
    fn pass(&mut self, pass: &ThreadPass, coating: Option<Coating>) {
        use ThreadSeen::{Fouled, Jams, Rough, Uncut};
        self.worked = true;
        self.coating = match pass.coating_left {
            Some(CoatingLeft::Remains) => coating,
            _ => Some(Coating::Bare),
        };
        if pass.go.or(pass.not_go).is_some() {
            self.go = pass.go;
            self.not_go = pass.not_go.or(self.not_go);
        }
        self.minor_before = pass.minor.is_empty();
        if !self.minor_before {
            let read: Vec<Placed> = pass.minor.iter().copied().map(Placed::from).collect();
            self.minor = on_surface(&read, Some(Coating::Bare));
        }
        self.marks = pass.marks.or(self.marks);
        self.part = pass.part.or(self.part);
        if self.part == Some(PartDid::Fits) && self.go.is_none() {
            self.go = Some(Passed::Passed);
        }
        let runs_in = pass.go == Some(Passed::Passed) || pass.part == Some(PartDid::Fits);
        let blocked = matches!(self.state, None | Some(Fouled | Rough | Jams | Uncut));
        if pass.part == Some(PartDid::Loose) {
            self.state = Some(ThreadSeen::Loose);
        } else if runs_in && blocked {
            self.state = Some(ThreadSeen::Sound);
        }
    }

    /// The judge's question about this thread. A hole that has no thread yet is another question.
    pub(super) fn asked(&self, thread: Option<(ThreadSize, Hand)>, rule: DecisionRule) -> Gauging {
        let tried = match self.part {
            Some(PartDid::Fits) => Some(ThreadSeen::TakesPart),
            Some(PartDid::Loose | PartDid::Rocks) => Some(ThreadSeen::Loose),
            Some(PartDid::Tight) => Some(ThreadSeen::Jams),
            None => None,
        };
        let judges = self.state != Some(ThreadSeen::Uncut) && !self.minor_before;
        let minor = self.minor.iter().filter(|_| judges).copied();
        Gauging {
            thread: thread.map(|(size, hand)| Designation::new(size).with_hand(hand)),
            go: self.go,
            not_go: self.not_go,
            seen: self.state.into_iter().chain(tried).collect(),
            minor: minor.collect(),
            rule: Some(rule),
            ..Gauging::default()
        }
    }

    /// The field below the thread that takes what a gauge tells of it now: that of its last work, if any.
    pub(super) fn gauge_field(&self, gauge: &str) -> String {
        match self.passes.checked_sub(1) {
            Some(last) => format!("passes[{last}].{gauge}"),
            None if self.worked => format!("{gauge}_after"),
            None => gauge.into(),
        }
    }

    /// Metal is gone: a chaser restores nothing.
    pub(super) const fn lost(&self) -> bool {
        self.lost
    }

    /// It cannot guide a cutter: torn out, loose, or cut across.
    pub(super) fn guides(&self) -> bool {
        use ThreadSeen::{Crossed, Loose, Uncut};
        !self.lost && !matches!(self.state, Some(Crossed | Uncut | Loose))
    }
}

/// Whether the judge names this remedy.
pub(super) fn cured_by(said: &Verdict, remedy: Remedy) -> bool {
    said.cures.iter().any(|cure| cure.by == remedy)
}
