//! Verdicts, their numbers and their cures, as they are printed and as they go out.

use alloc::format;
use alloc::string::String;
use core::fmt;

use crate::fit::Feature;
use crate::judge::{CuredAt, Number, Verdict, Worked};
use crate::quantity::{Printed, in_mm};

impl Verdict {
    /// The verdict in plain words: those of its findings, each label said once.
    #[must_use]
    pub fn words(&self) -> String {
        let mut out = String::new();
        let mut last = None;
        for found in &self.findings {
            let what = found.what();
            if !out.is_empty() {
                out.push_str("; ");
            }
            if !what.is_empty() && last.as_ref() != Some(&what) {
                out.push_str(&format!("{what}: "));
            }
            out.push_str(&format!("{found}"));
            last = Some(what);
        }
        out
    }
}

impl fmt::Display for Verdict {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(f, "{}: {}.", self.place, self.outcome.words())?;
        for found in &self.findings {
            writeln!(f, "- {}: {}", found.what(), found)?;
        }
        for found in &self.beside {
            writeln!(f, "- beside: {}: {}", found.what(), found)?;
        }
        if let Some(weakest) = self.weakest {
            writeln!(f, "- weakest evidence: {}", weakest.words())?;
        }
        for next in &self.next {
            writeln!(f, "- next: {next}")?;
        }
        for caution in &self.cautions {
            writeln!(f, "- mind: {caution}")?;
        }
        Ok(())
    }
}

impl fmt::Display for Worked {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        // No minus before nothing.
        let plain = |value: f64| libm::round(value * 100.0) / 100.0 + 0.0;
        match self.value {
            Number::Length(length) => write!(f, "{} {}", self.what, in_mm(length)),
            Number::Angle(angle) => write!(f, "{} {:.2}°", self.what, plain(angle.in_unit())),
            Number::Plain(value) => write!(f, "{} {:.2}", self.what, plain(value)),
        }
    }
}

impl fmt::Display for CuredAt {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::All => Ok(()),
            Self::Member(Feature::Hole) => f.write_str("hole"),
            Self::Member(Feature::Shaft) => f.write_str("inner part"),
            Self::Depth(depth) => write!(f, "{} deep", in_mm(*depth)),
        }
    }
}
