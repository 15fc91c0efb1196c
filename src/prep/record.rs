//! The record: what was found, what was done, what came off against what was planned, and whether it is finished.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt;

use super::plan::{Amount, Interface, Operation, Plan, WeakFigure};
use super::sheet::FrameSheet;
use super::{Caution, prepare_with};
use crate::judge::Finding;
use crate::measure::{Outcome, Reading};
use crate::quantity::in_mm;
use crate::standard::Tables;

/// Where the work at an interface stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumIter)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Progress {
    /// Nothing had to be done there.
    Nothing,
    /// Planned; no readings after it yet.
    Planned,
    /// Done: the readings after it ask for nothing more.
    Done,
    /// Not shown either way: something must be measured or asked before it can be called done.
    Undecided,
    /// One more pass.
    OneMorePass,
    /// Stopped: nothing more may come off.
    Stopped,
    /// Handed to the frame maker or a qualified builder.
    Referred,
}

impl Progress {
    /// In words for a person.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Nothing => "nothing to do",
            Self::Planned => "planned, no readings after it yet",
            Self::Done => "done",
            Self::Undecided => "undecided, measure or ask first",
            Self::OneMorePass => "one more pass",
            Self::Stopped => "stopped",
            Self::Referred => "referred",
        }
    }
}

/// The record of one interface.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct RecordEntry {
    /// Where.
    pub interface: Interface,
    /// Its name.
    pub title: String,
    /// What was found before.
    pub before: Vec<Finding>,
    /// What was planned, in one line each.
    pub planned: Vec<String>,
    /// How much was planned to come off.
    pub planned_amount: Option<Amount>,
    /// What was found after; empty without readings after the work.
    pub after: Vec<Finding>,
    /// What came off, least and most.
    pub removed: Vec<Reading>,
    /// Where the work stands.
    pub progress: Progress,
    /// The same in one sentence, with the reason.
    pub words: String,
}

/// The before-and-after record of a frame, in a form to hand to a customer.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Record {
    /// The frame, in the shop's words.
    pub frame: String,
    /// The data are invented for a demonstration.
    pub invented: bool,
    /// One entry an interface.
    pub entries: Vec<RecordEntry>,
    /// Figures from memory, common practice or arithmetic: to be checked by the mechanic.
    pub weak_figures: Vec<WeakFigure>,
    /// Cautions.
    pub cautions: Vec<Caution>,
}

/// Writes the record: the plan as it was before the work beside the plan that the readings after it give.
///
/// ```
/// use framegauge::{prep::{FrameSheet, Progress, SeatTubeSheet, record}, standard::Tables};
/// let sheet = FrameSheet { seat_tube: Some(SeatTubeSheet::default()), ..FrameSheet::default() };
/// let record = record(&sheet, Tables::ours());
/// assert_eq!(record.entries[0].progress, Progress::Nothing);
/// ```
#[must_use]
pub fn record(sheet: &FrameSheet, tables: Tables<'_>) -> Record {
    let untouched = sheet.before();
    let before = prepare_with(&untouched, tables);
    let now = prepare_with(sheet, tables);
    let entries = before
        .interfaces
        .iter()
        .map(|found| entry(found.interface, &before, &now, sheet))
        .collect();
    Record {
        frame: sheet.frame.clone(),
        invented: sheet.invented,
        entries,
        weak_figures: now.weak_figures,
        cautions: now.cautions,
    }
}

/// Whether a step or a question belongs to an interface; the sides of a shell belong to the shell.
fn belongs(part: Interface, interface: Interface) -> bool {
    part == interface || (interface == Interface::Shell && matches!(part, Interface::ShellSide(_)))
}

fn entry(interface: Interface, before: &Plan, now: &Plan, sheet: &FrameSheet) -> RecordEntry {
    let findings = |plan: &Plan| {
        plan.interfaces
            .iter()
            .find(|i| i.interface == interface)
            .map(|i| i.findings.clone())
            .unwrap_or_default()
    };
    let title = before
        .interfaces
        .iter()
        .find(|i| i.interface == interface)
        .map(|i| i.title.clone())
        .unwrap_or_default();
    let steps = |plan: &Plan| {
        plan.steps
            .iter()
            .filter(|s| belongs(s.interface, interface))
            .cloned()
            .collect::<Vec<_>>()
    };
    let (planned, left) = (steps(before), steps(now));
    let worked = sheet.has_after(interface);
    let cuts = |op: Operation| {
        matches!(
            op,
            Operation::Ream
                | Operation::Face
                | Operation::Chase
                | Operation::Tap
                | Operation::Clean
        )
    };
    let more = left.iter().find(|s| cuts(s.operation));
    let refused = left.iter().find(|s| s.operation == Operation::Refer);
    let asked = now
        .questions
        .iter()
        .find(|q| belongs(q.interface, interface));
    let stopped = now
        .interfaces
        .iter()
        .find(|i| i.interface == interface)
        .and_then(|i| {
            i.leave
                .iter()
                .find(|l| l.contains("nothing more may come off"))
        });
    let (progress, words) = if planned.is_empty() && !worked {
        (
            Progress::Nothing,
            String::from("what is there stays as it is"),
        )
    } else if let Some(step) = refused {
        (Progress::Referred, format!("{}: {}", step.title, step.why))
    } else if !worked {
        (
            Progress::Planned,
            String::from("write the readings after the work into the sheet"),
        )
    } else if let Some(reason) = stopped {
        (Progress::Stopped, reason.clone())
    } else if let Some(step) = more {
        let how_deep = step.amount.as_ref().map_or(String::new(), |a| {
            format!(", {} to {} {}", in_mm(a.least), in_mm(a.most), a.counted)
        });
        (Progress::OneMorePass, format!("{}{how_deep}", step.title))
    } else if let Some(question) = asked {
        (Progress::Undecided, question.ask.clone())
    } else {
        (
            Progress::Done,
            String::from("the readings after the work ask for nothing more"),
        )
    };
    let after = if worked { findings(now) } else { Vec::new() };
    let removed: Vec<Reading> = after
        .iter()
        .filter(|f| f.what.starts_with("what came off"))
        .flat_map(|f| f.readings.clone())
        .collect();
    let planned_amount = planned.iter().find_map(|s| s.amount.clone());
    let (mut progress, mut words) = (progress, words);
    if let (Some(most), Some(amount)) = (
        removed
            .iter()
            .max_by(|a, b| a.value().value.total_cmp(&b.value().value)),
        &planned_amount,
    ) && crate::measure::settled_below(amount.most, most.value() - most.expanded_uncertainty())
    {
        let more = format!(
            "more came off than was planned ({} against at most {})",
            in_mm(most.value()),
            in_mm(amount.most)
        );
        // A bore that is larger than it was meant to be is a fault; a face may still be within its limit.
        if progress == Progress::Done && planned.iter().any(|s| s.operation == Operation::Ream) {
            progress = Progress::Stopped;
            words = format!("{more}: cut no further, and judge the fit with the mating part");
        } else {
            words = format!("{words}; {more}");
        }
    }
    RecordEntry {
        interface,
        title,
        before: findings(before),
        planned: planned.into_iter().map(|s| s.title).collect(),
        planned_amount,
        after,
        removed,
        progress,
        words,
    }
}

const fn mark(outcome: Option<Outcome>) -> &'static str {
    match outcome {
        Some(outcome) => outcome.words(),
        None => "",
    }
}

fn findings(f: &mut fmt::Formatter<'_>, head: &str, findings: &[Finding]) -> fmt::Result {
    for finding in findings {
        // Some findings say their outcome as their last words.
        let outcome = Some(mark(finding.outcome))
            .filter(|words| !finding.words.ends_with(words))
            .unwrap_or_default();
        let gap = if outcome.is_empty() { "" } else { " -> " };
        writeln!(
            f,
            "  {head}: {}: {}{gap}{outcome}",
            finding.what, finding.words
        )?;
    }
    Ok(())
}

impl fmt::Display for Record {
    /// Plain text for the customer.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(f, "{}", self.frame)?;
        if self.invented {
            writeln!(f, "(invented data)")?;
        }
        for entry in &self.entries {
            writeln!(
                f,
                "\n{}: {}. {}",
                entry.title,
                entry.progress.words(),
                entry.words
            )?;
            findings(f, "found", &entry.before)?;
            for title in &entry.planned {
                writeln!(f, "  planned: {title}")?;
            }
            findings(f, "after", &entry.after)?;
        }
        writeln!(
            f,
            "\nFigures that the mechanic should check, because they are not from a published limit:"
        )?;
        for weak in &self.weak_figures {
            writeln!(f, "  {}: {}", weak.grade.words(), weak.what)?;
        }
        for caution in &self.cautions {
            writeln!(f, "{}", caution.words())?;
        }
        Ok(())
    }
}

impl Record {
    /// The same in Markdown.
    ///
    /// ```
    /// use framegauge::{prep::{FrameSheet, record}, standard::Tables};
    /// let page = record(&FrameSheet { frame: "no. 4".into(), ..FrameSheet::default() }, Tables::ours()).markdown();
    /// assert!(page.starts_with("# no. 4"));
    /// ```
    #[must_use]
    pub fn markdown(&self) -> String {
        let mut page = format!("# {}\n", plain(&self.frame));
        if self.invented {
            page.push_str("\nInvented data.\n");
        }
        page.push_str("\n| place | state | what it means |\n|---|---|---|\n");
        for entry in &self.entries {
            page.push_str(&format!(
                "| {} | {} | {} |\n",
                plain(&entry.title),
                entry.progress.words(),
                plain(&entry.words)
            ));
        }
        for entry in &self.entries {
            page.push_str(&format!("\n## {}\n\n", plain(&entry.title)));
            if !entry.planned.is_empty() {
                page.push_str(&format!(
                    "Planned: {}.\n\n",
                    plain(&entry.planned.join("; "))
                ));
            }
            page.push_str("| when | what | finding | outcome | sure |\n|---|---|---|---|---|\n");
            for (when, findings) in [("before", &entry.before), ("after", &entry.after)] {
                for finding in findings {
                    page.push_str(&format!(
                        "| {when} | {} | {} | {} | {} |\n",
                        plain(&finding.what),
                        plain(&finding.words),
                        mark(finding.outcome),
                        finding.grade.map_or("", crate::evidence::Grade::words)
                    ));
                }
            }
        }
        page.push_str("\n## Figures to check\n\n");
        for weak in &self.weak_figures {
            page.push_str(&format!(
                "- {}: {}\n",
                weak.grade.words(),
                plain(&weak.what)
            ));
        }
        page.push_str("\n## Cautions\n\n");
        for caution in &self.cautions {
            page.push_str(&format!("- {}\n", caution.words()));
        }
        page
    }
}

/// Text that cannot break out of a table cell.
fn plain(text: &str) -> String {
    text.replace('|', "/").replace(['\n', '\r'], " ")
}
