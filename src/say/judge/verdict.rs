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
        let mut out = self.sentence.clone();
        if !out.is_empty() {
            return out;
        }
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
        let sentence = match &*self.sentence {
            "" => String::new(),
            said => format!(" {said}"),
        };
        writeln!(f, "{}: {}.{sentence}", self.place, self.outcome.words())?;
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
            Self::Named(named) => f.write_str(named),
        }
    }
}

#[cfg(feature = "serde")]
mod out {
    use alloc::string::ToString;

    use serde::ser::{Serialize, SerializeStruct, Serializer};

    use crate::fact::{Bare, Coded, Worded};
    use crate::judge::{Curing, Finding, NextStep, Number, Verdict, Worked};
    use crate::quantity::settled_mm;

    impl Serialize for NextStep {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            let mut out = serializer.serialize_struct("NextStep", 4)?;
            out.serialize_field("ask", &Bare(&self.ask))?;
            out.serialize_field("measure", &self.ask.to_string())?;
            out.serialize_field("why", &self.ask.why())?;
            out.serialize_field("with", &self.ask.with().to_string())?;
            out.end()
        }
    }

    impl<F: Worded + Coded> Serialize for Finding<F> {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            let mut out = serializer.serialize_struct("Finding", 10)?;
            out.serialize_field("fact", &Bare(&self.fact))?;
            out.serialize_field("outcome", &self.outcome)?;
            out.serialize_field("doubt", &self.doubt)?;
            out.serialize_field("words", &self.to_string())?;
            out.serialize_field("readings", &self.readings)?;
            out.serialize_field("limits", &self.limits)?;
            out.serialize_field("decision", &self.decision)?;
            out.serialize_field("owner", &self.owner)?;
            out.serialize_field("grade", &self.grade)?;
            out.serialize_field("sources", &self.sources)?;
            out.end()
        }
    }

    impl Serialize for Worked {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            let mut out = serializer.serialize_struct("Worked", 3)?;
            out.serialize_field("what", &self.what)?;
            let name = match self.value {
                Number::Length(_) => "value_mm",
                Number::Angle(_) => "value_deg",
                Number::Plain(_) => "value",
            };
            out.serialize_field(name, &self.number())?;
            out.serialize_field("formula", &self.formula)?;
            out.end()
        }
    }

    impl Serialize for Curing {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            let mut out = serializer.serialize_struct("Curing", 3)?;
            out.serialize_field("by", &self.by)?;
            out.serialize_field("size_mm", &self.size.map(settled_mm))?;
            out.serialize_field("at", &self.at.to_string())?;
            out.end()
        }
    }

    /// Numbers by their codes.
    struct Numbers<'a>(&'a [Worked]);

    impl Serialize for Numbers<'_> {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            serializer.collect_map(self.0.iter().map(|w| (w.code(), w.number())))
        }
    }

    impl Serialize for Verdict {
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            let mut out = serializer.serialize_struct("Verdict", 11)?;
            out.serialize_field("place", &self.place)?;
            out.serialize_field("outcome", &self.outcome)?;
            out.serialize_field("words", &self.words())?;
            out.serialize_field("findings", &self.findings)?;
            out.serialize_field("beside", &self.beside)?;
            out.serialize_field("numbers", &Numbers(&self.worked))?;
            out.serialize_field("out", &self.out)?;
            out.serialize_field("cures", &self.cures)?;
            out.serialize_field("next", &self.next)?;
            out.serialize_field("cautions", &self.cautions)?;
            out.serialize_field("weakest", &self.weakest)?;
            out.end()
        }
    }
}
