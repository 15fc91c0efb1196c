//! Amounts, stops and turns as a hand can use them: two decimals, rounded to the safe side.

use alloc::format;
use alloc::string::{String, ToString};

use crate::plan::{
    CommonFact, Counted, Fact, MountFact, Off, Operation, PlaceReport, RoundFact, SeatTubeFact,
    ShellFact, State, Step,
};
use crate::quantity::{Length, in_mm, settled_mm};
use crate::thread::Turn;

/// Two decimals, never more than it is.
pub(super) fn at_most(length: Length) -> f64 {
    libm::floor(settled_mm(length) * 100.0 + 1e-6) / 100.0
}

/// Two decimals, never less than it is.
pub(super) fn at_least(length: Length) -> f64 {
    libm::ceil(settled_mm(length) * 100.0 - 1e-6) / 100.0
}

/// Two decimals.
pub(super) fn two(length: Length) -> String {
    format!(
        "{:.2}",
        libm::round(settled_mm(length) * 100.0) / 100.0 + 0.0
    )
}

/// From one size to another, two decimals; one where both print alike.
pub(super) fn two_to(low: Length, high: Length) -> String {
    let (low, high) = (two(low), two(high));
    if low == high {
        low
    } else {
        format!("{low} to {high}")
    }
}

/// How much comes off: two decimals where that leaves a range inside the one that is allowed, three where it does not.
pub(super) fn amount(operation: Operation, off: &Off) -> String {
    let of = match (off.of, operation) {
        (Counted::Diameter, _) => "on diameter",
        (Counted::Depth, Operation::Face) => "deep",
        (Counted::Depth, _) => "deep",
    };
    let (least, most) = (at_least(off.least), at_most(off.most));
    if least < most {
        format!("{least:.2} to {most:.2} mm {of}")
    } else if least <= most {
        format!("{least:.2} mm {of}")
    } else if in_mm(off.least).to_string() == in_mm(off.most).to_string() {
        format!("{} {of}", in_mm(off.least))
    } else {
        format!("{:.3} to {} {of}", settled_mm(off.least), in_mm(off.most))
    }
}

/// What limits a cut, and how much may come off before it, short.
pub(super) fn room(limit: &Fact, left: Length) -> String {
    let why = match limit {
        Fact::SeatTube(SeatTubeFact::Stock { .. }) => "usual stock".into(),
        Fact::Shell(
            ShellFact::LeastWidth { least, by, .. } | ShellFact::LeastWidthNow { least, by },
        ) => format!("{} wide, {by}", two(*least)),
        Fact::Common(CommonFact::AtMost { by, .. } | CommonFact::AtLeast { by, .. })
        | Fact::Round(RoundFact::AtMost { by, .. }) => by.clone(),
        other => other.to_string(),
    };
    format!("never more than {:.2} ({why})", at_most(left))
}

/// Which way it turns, seen from where.
pub(super) fn turn(step: &Step) -> Option<String> {
    let way = match step.turn? {
        Turn::Clockwise => "clockwise",
        Turn::CounterClockwise => "anticlockwise",
    };
    let from = if step.start.is_empty() {
        "outside"
    } else {
        step.start
    };
    Some(format!("turn {way}, from {from}"))
}

/// What is done, as a heading.
pub(super) const fn doing(operation: Operation) -> &'static str {
    match operation {
        Operation::Clean => "cleaning",
        Operation::Ream => "reaming",
        Operation::Deepen => "deepening",
        Operation::Chase => "chasing",
        Operation::Tap => "tapping",
        Operation::Face => "facing",
        Operation::Check => "checking",
        Operation::Replace => "replacing",
        Operation::Refer => "leaving",
    }
}

/// Why nothing is done at a place, where no reason stands by itself.
pub(super) const fn standing(state: State) -> &'static str {
    match state {
        State::NotMeasured => "not measured",
        State::Open => "open, see the questions",
        State::ToDo => "to do",
        State::Done => "done, as it should be",
        State::Out => "out, and nothing here cures it",
        State::Leave => "good as it is",
        State::Refer => "for the frame maker or a qualified builder",
    }
}

/// What is there before the work, as far as it is read in a figure.
pub(super) fn have(operation: Operation, report: &PlaceReport) -> Option<String> {
    if matches!(
        operation,
        Operation::Chase | Operation::Tap | Operation::Replace
    ) {
        return None;
    }
    let lies = report.facts.iter().find_map(|found| lies(&found.fact, ""));
    lies.or_else(|| {
        let found = report.facts.iter().find(|f| !f.readings.is_empty())?;
        let (low, high) = (found.readings.first()?, found.readings.last()?);
        Some(two_to(low.value(), high.value()))
    })
}

/// How a face or mount lies, in a figure.
pub(super) fn lies(fact: &Fact, unit: &str) -> Option<String> {
    match fact {
        Fact::Mount(MountFact::FaceLies {
            run_out, high_at, ..
        }) => {
            let high = high_at.map(|at| format!(", high at {at:#}"));
            let square = two(run_out.value());
            Some(format!(
                "{square}{unit} out of square{}",
                high.unwrap_or_default()
            ))
        }
        Fact::Mount(MountFact::MountLies { range, .. }) => {
            Some(format!("{}{unit} from high to low", two(*range)))
        }
        _ => None,
    }
}
