//! A spindle or unit made for one shell width in a shell of another.

use alloc::format;
use alloc::vec::Vec;

use super::verdict::{Curing, NextStep, Remedy, SettledBy, Verdict, Worked, size_reading};
use super::{Finding, SquareAsk, SquareFact, sizes_against};
use crate::Error;
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
        let code = self.window.as_deref();
        let named = code.map(|code| tables.find::<ShellWindow>(code));
        let named = named.transpose().map_err(|e| e.named("window"))?;
        let made = |row: &ShellWindow| row.nominal.nominal();
        let of_row = named.and_then(made);
        let made_for = self.made_for.map(|w| positive("made_for", w)).transpose()?;
        let width = made_for.or(of_row).ok_or_else(|| missing("made_for"))?;
        if of_row.is_some_and(|n| settled_cmp(n, width).is_ne()) {
            return Err(Error::new(
                crate::ErrorKind::Contradiction,
                "window",
                self.window.clone().unwrap_or_default(),
                format!("is no window for a width of {}", in_mm(width)),
                "name the window of the width it was made for",
            ));
        }
        let off = |r: &Reading| (r.value() - width).abs();
        let farthest = self.width.iter().max_by(|a, b| settled_cmp(off(a), off(b)));
        let shell = farthest.ok_or_else(|| missing("width"))?.value();
        let meant = |row: &&ShellWindow| match named {
            Some(named) => row.code == named.code,
            None => made(row).is_some_and(|n| settled_cmp(n, width).is_eq()),
        };
        let windows: Vec<&ShellWindow> = tables
            .all::<ShellWindow>()
            .filter(meant)
            .filter(|row| row.window.lower().is_some() && row.window.upper().is_some())
            .collect();
        let held = windows.iter().map(|row| {
            let limits = Limits::of_size(&row.window);
            let (evidence, rule) = (row.window.evidence(), self.rule.unwrap_or_default());
            let code = row.code.clone();
            sizes_against(code, &self.width, &limits, &row.owner, evidence, rule)
        });
        let mut findings: Vec<Finding> = held.collect();
        let first = findings.first().and_then(|f| f.outcome);
        let mut beside = Vec::new();
        if first.is_none() {
            findings.push(Finding::practice(Outcome::Undecided, SquareFact::NoWindow));
        } else if findings.iter().any(|f| f.outcome != first) {
            let differ = Finding::practice(Outcome::Undecided, SquareFact::WindowsDiffer);
            beside = core::mem::replace(&mut findings, Vec::from([differ]));
        }
        let by = shell - width;
        let fact = SquareFact::MadeFor { width, shell, by };
        findings.insert(0, Finding::of(fact));
        let mut said = Verdict::from_findings("spindle in shell", findings);
        said.worked = Vec::from([
            Worked::length("spindle short by", by, "shell - made for"),
            Worked::length("at each end", by / 2.0, "half of it"),
        ]);
        said.beside = beside;
        Ok(match said.outcome {
            Outcome::NonconformityShown => {
                let most = windows.iter().filter_map(|row| row.window.upper());
                let most = most.max_by(|a, b| settled_cmp(*a, *b));
                let cure = match most.filter(|most| settled_below(*most, shell)) {
                    Some(most) => Curing::by(Remedy::Face).sized(most),
                    None => Curing::by(Remedy::Spacer).sized(-by),
                };
                said.cures = Vec::from([Curing::by(Remedy::OtherPart).sized(shell), cure]);
                said
            }
            // The window is named: only the width can tell more.
            Outcome::Undecided if named.is_some() && first.is_some() => {
                said.then(NextStep::of(SquareAsk::WidthFiner))
            }
            Outcome::Undecided => {
                said.then(NextStep::of(SquareAsk::UnitWindow).by(SettledBy::Written))
            }
            Outcome::ConformityShown => said,
        })
    }
}
