//! A spindle or unit made for one shell width in a shell of another.

use alloc::format;
use alloc::vec::Vec;
use core::cmp::Ordering;

use super::verdict::{Curing, NOTHING, NextStep, Remedy, SettledBy, Verdict, Worked, size_reading};
use super::{Finding, sizes_against};
use crate::Error;
use crate::evidence::Grade;
use crate::measure::{DecisionRule, Limits, Outcome, Reading, settled_below, settled_cmp};
use crate::quantity::{Length, in_mm, positive};
use crate::read::{Outside, form, missing};
use crate::standard::{ShellWindow, Tables};

form! {
    /// A spindle or unit in this shell, against every window that a crank or frame maker prints for the width it was made for.
    /// Where the makers' windows lead to different answers nothing is shown, unless it is said whose unit it is.
    ///
    /// ```
    /// use framegauge::{judge::SpindleWidth, measure::Outcome, mm, standard::Tables};
    /// let of = |width: &str, window: Option<&str>| SpindleWidth {
    ///     width: vec![width.parse().unwrap()], made_for: Some(mm(68.0)), window: window.map(Into::into), rule: None,
    /// }.answer(Tables::ours()).unwrap();
    /// assert_eq!(of("71 +/- 0.1 mm", None).outcome, Outcome::NonconformityShown);
    /// assert_eq!(of("71 +/- 0.1 mm", None).millimetres("spindle short by"), Some(3.0));
    /// // One maker allows 67.2 to 68.8 mm, another 67.5 to 68.5 mm.
    /// assert_eq!(of("68.7 +/- 0.05 mm", None).outcome, Outcome::Undecided);
    /// assert_eq!(of("68.7 +/- 0.05 mm", Some("bsc_half_axle_68")).outcome, Outcome::ConformityShown);
    /// ```
    #[derive(Default)]
    SpindleWidth {
        /// Width of the shell; several places may be given.
        width: Vec<Reading> => Outside,
        /// The width that the spindle or unit was made for.
        made_for: Option<Length>,
        /// Code of the maker's window for it, of the table `shell_window`.
        window: Option<alloc::string::String>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

impl SpindleWidth {
    /// The verdict.
    ///
    /// # Errors
    /// `Missing` without a width, or without what the unit was made for; `OutOfRange` and `NotFinite` for widths that are none;
    /// `UnknownName` for a window that is none; `Contradiction` for a window of another width.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        for (index, width) in self.width.iter().enumerate() {
            size_reading("", width).map_err(|e| e.within(&format!("width[{index}]")))?;
        }
        let rule = self.rule.unwrap_or_default();
        let named = self
            .window
            .as_deref()
            .map(|code| {
                tables
                    .find::<ShellWindow>(code)
                    .map_err(|e| e.named("window"))
            })
            .transpose()?;
        let of_row = named.and_then(|row| row.nominal.nominal());
        let made_for = self
            .made_for
            .map(|w| positive("made_for", w))
            .transpose()?
            .or(of_row)
            .ok_or_else(|| missing("made_for"))?;
        if of_row.is_some_and(|n| settled_cmp(n, made_for).is_ne()) {
            return Err(Error::new(
                crate::ErrorKind::Contradiction,
                "window",
                self.window.clone().unwrap_or_default(),
                format!("is no window for a width of {}", in_mm(made_for)),
                "name the window of the width it was made for",
            ));
        }
        let farthest = self
            .width
            .iter()
            .max_by(|a, b| {
                let off = |r: &Reading| (r.value() - made_for).abs();
                settled_cmp(off(a), off(b))
            })
            .ok_or_else(|| missing("width"))?;
        let windows: Vec<(&ShellWindow, Finding)> = tables
            .all::<ShellWindow>()
            .filter(|row| match named {
                Some(named) => row.code == named.code,
                None => row
                    .nominal
                    .nominal()
                    .is_some_and(|n| settled_cmp(n, made_for).is_eq()),
            })
            .filter(|row| row.window.lower().is_some() && row.window.upper().is_some())
            .map(|row| {
                let limits = Limits::of_size(&row.window);
                let evidence = row.window.evidence();
                let code = row.code.clone();
                (
                    row,
                    sizes_against(code, &self.width, &limits, &row.owner, evidence, rule),
                )
            })
            .collect();
        let short = farthest.value() - made_for;
        let off = match settled_cmp(short, NOTHING) {
            Ordering::Greater => format!("{} too short", in_mm(short)),
            Ordering::Less => format!("{} too long", in_mm(-short)),
            Ordering::Equal => "as made for".into(),
        };
        let mut outcomes = windows.iter().filter_map(|(_, f)| f.outcome);
        let first = outcomes.next();
        let agree = outcomes.all(|o| Some(o) == first);
        let undecided = |words: &'static str| Finding {
            outcome: Some(Outcome::Undecided),
            grade: Some(Grade::CommonPractice),
            ..Finding::stated("shell width", words)
        };
        let (deciding, beside, said_of) = match first {
            None => (
                Vec::from([undecided(
                    "no window is published for the width it was made for",
                )]),
                Vec::new(),
                "; no window is published for that width, so nothing is shown. A whole width out is felt at once: the cup face falls below or stands above the shell face.",
            ),
            Some(outcome) if agree => (
                windows.iter().map(|(_, f)| f.clone()).collect(),
                Vec::new(),
                match outcome {
                    Outcome::NonconformityShown => {
                        ", outside every window that a maker prints for that width; the cup would end inside the shell or stand out of it. Take a spindle for this width, and keep the cups that fit the thread."
                    }
                    Outcome::ConformityShown => {
                        ", inside every window that a maker prints for that width."
                    }
                    Outcome::Undecided => "; too close to a window's edge to tell.",
                },
            ),
            Some(_) => (
                Vec::from([undecided(
                    "the makers' windows for this width lead to different answers",
                )]),
                windows.iter().map(|(_, f)| f.clone()).collect(),
                "; the makers' windows for that width differ here, so whose unit it is decides.",
            ),
        };
        let mut said = Verdict::from_findings("spindle in shell", deciding)
            .saying(format!(
                "Made for {}, the shell is {}: {off}{said_of}",
                in_mm(made_for),
                in_mm(farthest.value())
            ))
            .with(Worked::length(
                "spindle short by",
                short,
                "shell width less the width it was made for",
            ))
            .with(Worked::length(
                "at each end",
                short / 2.0,
                "half of it, where both ends share it",
            ));
        said.beside = beside;
        match said.outcome {
            Outcome::NonconformityShown => {
                said = said.cured(Curing::by(Remedy::OtherPart).sized(farthest.value()));
                let most = windows.iter().filter_map(|(row, _)| row.window.upper());
                let most = most.reduce(|a, b| if settled_below(a, b) { b } else { a });
                if let Some(most) = most.filter(|most| settled_below(*most, farthest.value())) {
                    said = said.cured(Curing::by(Remedy::Face).sized(most));
                } else {
                    said = said.cured(Curing::by(Remedy::Spacer).sized(-short));
                }
            }
            Outcome::Undecided => {
                said = said.then(
                    NextStep::new(
                        "the maker's width window for this unit",
                        "the window belongs to the crank, not to the shell",
                        "maker's instructions",
                    )
                    .by(SettledBy::Written),
                );
            }
            Outcome::ConformityShown => {}
        }
        Ok(said)
    }
}
