//! What does this thread hold, and how deep must it engage?
//!
//! `cargo run --example thread_strength -- M5x0.8 "8 mm" --screw 800 --hole 275 --shear 0.6 --hole-depth "10 mm"`
//! `--screw` and `--hole` are tensile strengths in MPa, `--shear` is the share of it that the metal bears in shear: no share
//! suits every metal, so it must be given. Class 6g in 6H (2A in 2B) is assumed.

mod support;

use std::fmt::Write as _;
use std::process::ExitCode;

use framegauge::thread::{
    Designation, EqualStrength, Member, MinimumMaterial, StressAreaRule, Stripping, ThreadForm,
    limits_of_size, stress_area,
};
use framegauge::{
    Error, ErrorKind, Grade, Pressure, decimal, in_mm, mpa, parse_length, settled_mm,
};
use serde::Serialize;
use support::{Answer, Words, answer};

#[derive(Serialize)]
struct Report {
    thread: Designation,
    engagement_mm: f64,
    stress_area_mm2: f64,
    screw_breaks_n: f64,
    stripping: Stripping,
    engagement_for_equal_strength: EqualStrength,
    grade: Grade,
    caution: &'static str,
}

const CAUTION: &str = "static sum on ductile metal without a factor of safety; the maker's torque and the maker's limits come first";

fn main() -> ExitCode {
    answer(run)
}

fn strength(words: &Words, name: &'static str) -> Result<Pressure, Error> {
    let text = words.named(name).ok_or_else(|| {
        Error::new(
            ErrorKind::Missing,
            format!("--{name}"),
            "",
            "a tensile strength is missing",
            format!("write `--{name} 275` in MPa, from the material's data sheet"),
        )
    })?;
    Ok(mpa(decimal(text)?))
}

fn run() -> Result<Answer, Error> {
    let words = Words::read(&["screw", "hole", "shear", "hole-depth"], &[])?;
    let thread: Designation = words.at(0, "thread", "M5x0.8")?.parse()?;
    let engagement = parse_length(words.at(1, "engagement", "\"8 mm\"")?)?;
    let (screw, hole) = (strength(&words, "screw")?, strength(&words, "hole")?);
    let shear = decimal(words.named("shear").unwrap_or_default()).map_err(|_| {
        Error::new(
            ErrorKind::Missing,
            "--shear",
            words.named("shear").unwrap_or_default(),
            "the share of shear strength in tensile strength is missing",
            "write e.g. `--shear 0.6`, from the material's data sheet",
        )
    })?;
    let hole_depth = words.named("hole-depth").map(parse_length).transpose()?;

    let of = |member| {
        limits_of_size(
            &thread.size,
            &Designation {
                class: None,
                ..thread
            }
            .class_for(member)?,
        )
    };
    let pair = MinimumMaterial::of_limits(&of(Member::External)?, &of(Member::Internal)?)?;
    let rule = match thread.size.form() {
        ThreadForm::Unified => StressAreaRule::FedStdH28,
        _ => StressAreaRule::Iso898,
    };
    let area = stress_area(&thread.size, rule)?;
    let stripping = pair.stripping(engagement, hole_depth, screw * shear, hole * shear)?;
    let breaks = area * screw;
    let report = Report {
        thread,
        engagement_mm: settled_mm(engagement),
        stress_area_mm2: (area.value * 1e9).round() / 1e3,
        screw_breaks_n: breaks.value.round(),
        stripping,
        engagement_for_equal_strength: pair.engagement_for_equal_strength(area, screw, hole)?,
        grade: pair.grade(),
        caution: CAUTION,
    };
    let holds = stripping.force >= breaks;
    Ok(Answer::new(&report, text(&report, holds), holds))
}

fn text(report: &Report, holds: bool) -> String {
    let member = match report.stripping.weaker {
        Member::Internal => "the tapped hole",
        Member::External => "the screw's thread",
    };
    let mut text = format!(
        "{} over {} mm: {member} strips first, at about {:.1} kN.\n",
        report.thread,
        report.engagement_mm,
        report.stripping.force.value / 1e3
    );
    let _ = writeln!(
        text,
        "The screw itself breaks at about {:.1} kN.",
        report.screw_breaks_n / 1e3
    );
    if holds {
        text.push_str("The screw breaks before the thread strips.\n");
    } else {
        let _ = writeln!(
            text,
            "The thread strips before the screw breaks: {:.1} of engagement would be needed.",
            in_mm(report.engagement_for_equal_strength.length)
        );
    }
    let _ = writeln!(text, "Mind: {}.", report.caution);
    text
}
