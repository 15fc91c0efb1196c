//! What may this thread measure?
//!
//! `cargo run --example thread_limits -- M10x1-6H`
//! `cargo run --example thread_limits -- "1/2-20 UNF-2B" --engagement "12 mm" --json`
//! Without a class both members are shown in the class that is usually meant.

mod support;

use std::fmt::Write as _;
use std::process::ExitCode;

use framegauge::measure::{Bound, Limits};
use framegauge::thread::{
    BasicDiameters, Designation, Engagement, Member, ThreadLimits, engagement_group, limits_of_size,
};
use framegauge::{Error, in_mm, parse_length};
use serde::Serialize;
use support::{Answer, Words, answer};

#[derive(Serialize)]
struct Report {
    thread: Designation,
    class_was_stated: bool,
    basic: Option<BasicDiameters>,
    limits: Vec<ThreadLimits>,
    unknown: Option<Error>,
    engagement: Option<Engagement>,
}

fn main() -> ExitCode {
    answer(run)
}

fn run() -> Result<Answer, Error> {
    let words = Words::read(&["engagement"], &[])?;
    let thread: Designation = words.at(0, "thread", "M10x1-6H")?.parse()?;
    let engagement = words
        .named("engagement")
        .map(|text| engagement_group(&thread.size, parse_length(text)?))
        .transpose()?;
    let members = match thread.class {
        Some(class) => vec![class.member()],
        None => vec![Member::Internal, Member::External],
    };
    let found: Result<Vec<_>, _> = members
        .into_iter()
        .map(|member| limits_of_size(&thread.size, &thread.class_for(member)?))
        .collect();
    let (limits, unknown) = match found {
        Ok(limits) => (limits, None),
        Err(error) => (Vec::new(), Some(error)),
    };
    let report = Report {
        thread,
        class_was_stated: thread.class.is_some(),
        basic: BasicDiameters::of(&thread.size).ok(),
        limits,
        unknown,
        engagement,
    };
    if report.basic.is_none()
        && let Some(error) = report.unknown
    {
        return Err(error);
    }
    Ok(Answer::new(
        &report,
        text(&report),
        report.unknown.is_none(),
    ))
}

fn text(report: &Report) -> String {
    let mut text = format!("{}\n", report.thread);
    if report.limits.is_empty()
        && let Some(basic) = &report.basic
    {
        let _ = writeln!(
            text,
            "basic: major {}, pitch diameter {}, minor {}",
            in_mm(basic.major),
            in_mm(basic.pitch_diameter),
            in_mm(basic.minor)
        );
    }
    for limits in &report.limits {
        let member = match limits.member {
            Member::Internal => "hole",
            Member::External => "screw",
        };
        let usual = if report.class_was_stated {
            ""
        } else {
            ", the class usually meant"
        };
        let _ = writeln!(
            text,
            "{member}, {}{usual} ({}):",
            limits.class,
            limits.grade().words()
        );
        let _ = writeln!(text, "  major diameter  {}", limits.major);
        let _ = writeln!(text, "  pitch diameter  {}", limits.pitch_diameter);
        if let Some(Bound::At(other)) = limits.other_pitch_diameter.as_ref().map(Limits::upper) {
            let _ = writeln!(
                text,
                "                  another way of deriving gives at most {}",
                in_mm(other)
            );
        }
        let _ = writeln!(text, "  minor diameter  {}", limits.minor);
    }
    if let Some(error) = &report.unknown {
        let _ = writeln!(
            text,
            "limits unknown: {}; {}",
            error.problem(),
            error.remedy()
        );
    }
    if let Some(engagement) = report.engagement {
        let _ = writeln!(
            text,
            "engagement: {} (normal is over {} up to {})",
            engagement.group,
            in_mm(engagement.short_up_to),
            in_mm(engagement.normal_up_to)
        );
    }
    text
}
