//! Sizes against their limits, in words.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::{String, ToString};
use core::fmt;

use crate::evidence::Text;
use crate::fact::Worded;
use crate::judge::{Doubt, Finding, NextStep, SizeFact};
use crate::measure::{Decision, Limits, Outcome, Reading, Why, settled_below};
use crate::quantity::{Length, in_mm, settled_mm, to_mm};

impl fmt::Display for SizeFact {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Against { of, .. } => f.write_str(of),
        }
    }
}

impl Worded for SizeFact {
    fn about(&self) -> Cow<'static, str> {
        match self {
            Self::Against { of, .. } => of.clone(),
        }
    }
    fn size_count(&self) -> Option<usize> {
        match self {
            Self::Against { count, .. } => Some(*count),
        }
    }
}

impl<F: Worded> fmt::Display for Finding<F> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.fact.size_count() {
            Some(count) => against(f, self, count)?,
            None => fmt::Display::fmt(&self.fact, f)?,
        }
        f.write_str(match self.doubt {
            None => "",
            Some(Doubt::Hidden) => {
                "; but read over paint, which is not a reading on metal: nothing is shown until it is off"
            }
            Some(Doubt::Within) => "; but read over paint, and the metal below has another size",
            Some(Doubt::Same) => "; read over paint",
            Some(Doubt::NotSaid) => {
                "; nobody said whether paint lies there, and paint would explain it"
            }
            Some(Doubt::NotPrinted) => "; but not what the tables print, and no tolerance is published",
            Some(Doubt::Fit) => {
                "; but read on paint, which is not a reading on metal: nothing is shown until it is off"
            }
        })
    }
}

fn against<F: fmt::Display>(
    f: &mut fmt::Formatter<'_>,
    found: &Finding<F>,
    count: usize,
) -> fmt::Result {
    let owner = match &*found.owner {
        "" => String::new(),
        owner => format!(" ({owner})"),
    };
    let spread = spread(&found.readings, count);
    match (&found.limits, &found.decision) {
        // Worked out, and said beside it.
        (Some(limits), Some(decision)) if count == 0 && !found.readings.is_empty() => write!(
            f,
            "{} wanted {limits}{owner}: {}",
            found.fact,
            decided(&found.readings, limits, decision)
        ),
        (Some(limits), None) => write!(f, "{spread}; limits {limits}{owner}"),
        (None, None) => f.write_str(&spread),
        (None, Some(_)) => write!(
            f,
            "{spread}; no limit is published{owner}, so nothing can be shown"
        ),
        (Some(limits), Some(decision)) => write!(
            f,
            "{spread}; limits {limits}{owner}: {}",
            decided(&found.readings, limits, decision)
        ),
    }
}

/// `26.980 to 27.150 mm ± 0.023 mm (6 readings)`, by the smallest and the largest of so many.
pub(in crate::say) fn spread(extremes: &[Reading], count: usize) -> String {
    match *extremes {
        [low, high] if in_mm(low.value()).to_string() == in_mm(high.value()).to_string() => {
            format!("{low} ({count} readings alike)")
        }
        [low, high] => {
            let u = low.expanded_uncertainty().max(high.expanded_uncertainty());
            let from_to = from_to(low.value(), high.value());
            format!("{from_to} ± {} ({count} readings)", in_mm(u))
        }
        [only] if to_mm(only.expanded_uncertainty()) == 0.0 => {
            format!("{}, as stated", in_mm(only.value()))
        }
        [only] => format!("{only} (one reading)"),
        _ => String::from("not measured"),
    }
}

/// `26.980 to 27.150 mm`, or one size where both print alike.
pub(crate) fn from_to(low: Length, high: Length) -> String {
    if in_mm(low).to_string() == in_mm(high).to_string() {
        in_mm(high).to_string()
    } else {
        format!("{:.3} to {}", settled_mm(low), in_mm(high))
    }
}

/// `interference 0.050 to 0.100 mm` or `clearance ...`, by the clearance at the tightest and at the loosest place.
pub(in crate::say) fn fit_words(tightest: Length, loosest: Length) -> String {
    let (low, high) = (settled_mm(tightest), settled_mm(loosest));
    if low == 0.0 && high == 0.0 {
        String::from("neither gap nor press")
    } else if high <= 0.0 {
        format!("interference {}", from_to(-loosest, -tightest))
    } else if low >= 0.0 {
        format!("clearance {}", from_to(tightest, loosest))
    } else {
        format!("from {:.3} mm interference to {high:.3} mm clearance", -low)
    }
}

/// `27.0, 27.2 or 27.4`.
pub(in crate::say) fn one_of(names: &[Text]) -> String {
    match names {
        [all @ .., last] if !all.is_empty() => format!("{} or {last}", all.join(", ")),
        _ => names.concat(),
    }
}

fn decided(extremes: &[Reading], limits: &Limits, decision: &Decision) -> String {
    let off = decision.margin.map(|m| in_mm(-m));
    // The end that is further out is told.
    let under = limits
        .lower()
        .known()
        .zip(extremes.first())
        .map(|(l, r)| l - r.value());
    let over = limits
        .upper()
        .known()
        .zip(extremes.last())
        .map(|(l, r)| r.value() - l);
    let below = under.is_some_and(|under| over.is_none_or(|over| settled_below(over, under)));
    match (decision.outcome, off) {
        (Outcome::NonconformityShown, Some(off)) if below => format!("{off} under the lower limit"),
        (Outcome::NonconformityShown, Some(off)) => format!("{off} over the upper limit"),
        (Outcome::ConformityShown, _) => String::from("within limits"),
        _ => match decision.why {
            Why::LimitUnknown => {
                String::from("a limit is not published, so conformity cannot be shown")
            }
            Why::InstrumentTooCoarse => String::from(
                "undecided: this instrument can never show so narrow a tolerance, use a finer one",
            ),
            _ if decision.probability.is_none() => {
                String::from("undecided until both parts are measured")
            }
            _ => {
                let sure = decision
                    .probability
                    .map(|p| format!(" ({:.0} % inside)", p * 100.0));
                format!(
                    "undecided: too close to a limit for this instrument{}",
                    sure.unwrap_or_default()
                )
            }
        },
    }
}

impl fmt::Display for NextStep {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(
            f,
            "measure {} ({}): {}",
            self.ask,
            self.ask.with(),
            self.ask.why()
        )
    }
}

impl<F: Worded> Finding<F> {
    /// What it is about: a label of a few words.
    ///
    /// ```
    /// use framegauge::judge::{BoreFact, Finding};
    /// let found: Finding = Finding::of(BoreFact::CutOnce);
    /// assert_eq!(&*found.what(), "reaming");
    /// assert!(found.words().starts_with("cutting cannot be undone"));
    /// ```
    #[must_use]
    pub fn what(&self) -> Cow<'static, str> {
        self.fact.about()
    }
    /// The finding in one sentence.
    #[must_use]
    pub fn words(&self) -> String {
        self.to_string()
    }
}

impl NextStep {
    /// What to measure or do.
    #[must_use]
    pub fn measure(&self) -> String {
        self.ask.to_string()
    }
    /// What it decides.
    #[must_use]
    pub fn why(&self) -> Cow<'static, str> {
        self.ask.why()
    }
    /// The tool.
    #[must_use]
    pub fn with(&self) -> String {
        self.ask.with().to_string()
    }
}
