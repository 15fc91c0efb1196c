//! Whole verdicts: invented places, each with the outcome that is expected of it and why, written by hand in the `*.rs` files.
//!
//! All sizes are invented. Reasons name the figure that decides: a table row of `data/` by its code (its source stands
//! beside it), plain arithmetic, or common practice. A reading on a limit counts as inside (JCGM 106:2012: limits belong to the
//! interval), and a reading with an uncertainty is shown in or out at 95 % (ISO 14253-1:2017, normal distribution: beyond
//! 1.645 standard uncertainties of one limit).
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod alignment;
mod asked;
mod brakes;
mod claims;
mod edges;
mod felt;
mod findings;
mod fits;
mod fits_beyond;
mod fits_shells;
mod insertion;
mod places;
mod shapes;
mod sizes;
mod thread_signs;
mod threads;
mod tubes;

use framegauge::judge::Verdict;
use framegauge::measure::{Outcome, Reading};
use framegauge::mm;

/// Within, out and undecided.
const WITHIN: Outcome = Outcome::ConformityShown;
const OUT: Outcome = Outcome::NonconformityShown;
const OPEN: Outcome = Outcome::Undecided;

/// One judged interface.
struct Case {
    title: &'static str,
    expected: Outcome,
    because: &'static str,
    said: Verdict,
}

fn case(title: &'static str, expected: Outcome, because: &'static str, said: Verdict) -> Case {
    Case {
        title,
        expected,
        because,
        said,
    }
}

/// A reading as a person writes it, "9.0 +/- 0.1 mm".
fn read(text: &str) -> Reading {
    text.parse().unwrap_or_else(|e| panic!("{text}: {e}"))
}

/// A reading without doubt, to stand on a limit or a micrometre beside it.
fn exact(value: f64) -> Reading {
    Reading::exact(mm(value)).unwrap()
}

/// Holds the cases of a kind.
fn hold(kind: &str, cases: &[Case]) {
    for case in cases {
        assert_eq!(
            case.said.outcome, case.expected,
            "{kind}: {}: {}\n{}",
            case.title, case.because, case.said
        );
    }
}
