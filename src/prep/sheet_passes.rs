//! A sheet before the work and after it.

use super::sheet::{FrameSheet, GaugeResult, HeadEnd, ShellSide};

/// Whether a gauge was tried.
pub(super) fn tried(go: GaugeResult, not_go: GaugeResult) -> bool {
    go != GaugeResult::Untried || not_go != GaugeResult::Untried
}

impl FrameSheet {
    /// The same sheet without any reading taken after work.
    #[must_use]
    pub fn before(&self) -> Self {
        let mut sheet = self.clone();
        if let Some(tube) = &mut sheet.seat_tube {
            tube.after.clear();
        }
        for end in [&mut sheet.head_upper, &mut sheet.head_lower]
            .into_iter()
            .flatten()
        {
            end.after.clear();
            if let Some(face) = &mut end.face {
                face.after.clear();
            }
        }
        if let Some(shell) = &mut sheet.shell {
            shell.after.clear();
            for side in [&mut shell.drive, &mut shell.non_drive] {
                side.go_after = GaugeResult::Untried;
                side.not_go_after = GaugeResult::Untried;
                if let Some(face) = &mut side.face {
                    face.after.clear();
                }
            }
        }
        for thread in &mut sheet.threads {
            thread.go_after = GaugeResult::Untried;
            thread.not_go_after = GaugeResult::Untried;
        }
        for brake in &mut sheet.brakes {
            brake.after.clear();
        }
        sheet
    }

    /// Whether the sheet holds a reading taken after work at this interface.
    ///
    /// ```
    /// use framegauge::prep::{FrameSheet, GaugeResult, Interface, ShellSheet};
    /// let mut shell = ShellSheet::default();
    /// shell.drive.go_after = GaugeResult::Passed;
    /// let sheet = FrameSheet { shell: Some(shell), ..FrameSheet::default() };
    /// assert!(sheet.has_after(Interface::Shell) && !sheet.has_after(Interface::SeatTube));
    /// assert!(!sheet.before().has_after(Interface::Shell));
    /// ```
    #[must_use]
    pub fn has_after(&self, interface: super::Interface) -> bool {
        use super::Interface as I;
        let end = |end: &Option<HeadEnd>| {
            end.as_ref().is_some_and(|e| {
                !e.after.is_empty() || e.face.as_ref().is_some_and(|f| !f.after.is_empty())
            })
        };
        let side = |s: &ShellSide| {
            tried(s.go_after, s.not_go_after)
                || s.face.as_ref().is_some_and(|f| !f.after.is_empty())
        };
        match interface {
            I::SeatTube => self.seat_tube.as_ref().is_some_and(|t| !t.after.is_empty()),
            I::Shell | I::ShellSide(_) => self
                .shell
                .as_ref()
                .is_some_and(|s| !s.after.is_empty() || side(&s.drive) || side(&s.non_drive)),
            I::HeadUpper => end(&self.head_upper),
            I::HeadLower => end(&self.head_lower),
            I::Crown | I::Steerer => false,
            I::Thread(index) => self
                .threads
                .get(index)
                .is_some_and(|t| tried(t.go_after, t.not_go_after)),
            I::Brake(index) => self.brakes.get(index).is_some_and(|b| !b.after.is_empty()),
        }
    }
}
