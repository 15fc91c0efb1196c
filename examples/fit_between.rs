//! The fit between two parts: how tight, which one is out, and what would cure it.
//!
//! `fit_between "42 N7/h6"`, or each part by itself:
//! `fit_between --bore "29.92 +/- 0.01 mm" --shaft "30.02 +/- 0.01 mm" --interference "at most 0.10 mm"`.
//! A part is readings (`27.25 +/- 0.02 mm @ 90 deg @ 40 mm`), a class (`27.2 H8`), a ring (`ring 42 mm Normal`) or limits
//! (`44.00 mm to 44.05 mm`). Exit 0: fits as wanted; 1: does not, or undecided.

#[path = "support/members.rs"]
mod members;
mod support;

use std::fmt::Write as _;
use std::process::ExitCode;

use framegauge::fit::{Fit, FitDesignation, HoleMember, ShaftMember, fit_between};
use framegauge::measure::{Outcome, Reading};
use framegauge::{Error, in_mm, parse_length};
use support::{Answer, Words, answer};

fn gap(clearance: Reading) -> String {
    let (word, size) = if clearance.value().value < 0.0 {
        ("interference", -clearance.value())
    } else {
        ("clearance", clearance.value())
    };
    let unsure = clearance.expanded_uncertainty();
    if unsure.value > 0.0 {
        format!("{word} {} (± {})", in_mm(size), in_mm(unsure))
    } else {
        format!("{word} {}", in_mm(size))
    }
}

fn describe(fit: &Fit) -> String {
    let mut text = String::new();
    if fit.tightest() == fit.loosest() {
        let _ = writeln!(text, "{}", gap(fit.tightest()));
    } else {
        let _ = writeln!(
            text,
            "from {} to {}",
            gap(fit.tightest()),
            gap(fit.loosest())
        );
    }
    let _ = writeln!(text, "{}", fit.kind().words());
    text
}

fn run() -> Result<Answer, Error> {
    let words = Words::read(
        &[
            "bore",
            "shaft",
            "nominal",
            "clearance",
            "interference",
            "rule",
        ],
        &[],
    )?;
    let rule = members::rule(words.named("rule"))?;
    let (hole, shaft) = if words.named("bore").is_none() && words.named("shaft").is_none() {
        let fit: FitDesignation = words
            .at(0, "fit", "`42 N7/h6`, or --bore and --shaft")?
            .parse()?;
        let (hole, shaft) = (fit.hole(), fit.shaft());
        (
            HoleMember::of_class(hole.nominal(), hole.class())?,
            ShaftMember::of_class(shaft.nominal(), shaft.class())?,
        )
    } else {
        let nominal = words.named("nominal").map(parse_length).transpose()?;
        (
            members::member(&words.all("bore"), nominal).map_err(|e| e.within("bore"))?,
            members::member(&words.all("shaft"), nominal).map_err(|e| e.within("shaft"))?,
        )
    };
    let wanted = members::windows(&words.all("clearance"), &words.all("interference"))?;
    let fit = fit_between(&hole, &shaft, rule)?;
    let windows = fit.against_each(&wanted)?;
    let mut text = describe(&fit);
    for held in &windows.each {
        let _ = write!(text, "wanted {}: {}", held.wanted, held.outcome.words());
        match held.probability {
            Some(p) => {
                let _ = writeln!(text, " ({:.0} % sure to be within)", p * 100.0);
            }
            None => text.push('\n'),
        }
        if held.outcome != Outcome::ConformityShown {
            let _ = writeln!(text, "{}", held.out.words());
        }
        if let Some(wall) = held.cure.shim_wall() {
            let _ = writeln!(
                text,
                "a shim would need a wall of {wall}: half the difference of the diameters"
            );
        }
    }
    if windows.conflict {
        text.push_str("The windows disagree: ask the maker of the part.\n");
    }
    let own_limits_kept = [fit.hole(), fit.shaft()].iter().all(|m| {
        m.decision
            .is_none_or(|d| d.outcome == Outcome::ConformityShown)
    });
    if !own_limits_kept && windows.each.is_empty() {
        let _ = writeln!(text, "{}", fit.out().words());
    }
    text.push_str(&members::cautions(fit.cautions()));
    let acceptable = own_limits_kept
        && windows
            .each
            .iter()
            .all(|h| h.outcome == Outcome::ConformityShown);
    Ok(Answer::new(
        &serde_json::json!({ "fit": fit, "windows": windows }),
        text,
        acceptable,
    ))
}

fn main() -> ExitCode {
    answer(run)
}
