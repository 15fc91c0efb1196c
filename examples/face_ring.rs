//! A ring face from indicator readings: how square and flat it is, and whether and how deep to cut.
//!
//! Heights are read along the pilot, outwards positive, clockwise from 12 o'clock as seen from outside, evenly spaced:
//! `face_ring --inner "34 mm" --outer "42 mm" --probed "40 mm" --error "0.008 mm" --square "0.05 mm" \
//!  --limit "least width=0.40 mm" --svg face.svg "0.150 mm" "0.110 mm" "0.030 mm" "0.020 mm" "0.090 mm"`
//!
//! `--at "90 deg=0.05 mm"` gives a height at an angle instead, `--depth` the depth that the drawing shows, `--pilot` what
//! the heights were read along, `--share` the share of the ring that must be touched.

mod support;

use std::process::ExitCode;

use framegauge::face::{
    Allowance, Annulus, Clock, CutLimit, FaceAnswer, FacingGoal, FacingStep, LimitKind, Probe,
    RingSurvey,
};
use framegauge::measure::{DecisionRule, Reading};
use framegauge::say::Sight;
use framegauge::{
    Angle, Error, ErrorKind, Grade, Length, Printed, Radius, decimal, deg, in_mm, mm, parse_length,
};
use support::{Answer, Words, answer};

const OPTIONS: [&str; 11] = [
    "inner", "outer", "probed", "error", "square", "limit", "pilot", "share", "at", "svg", "depth",
];

fn main() -> ExitCode {
    answer(run)
}

fn length(words: &Words, name: &str, example: &str) -> Result<Length, Error> {
    let text = words.named(name).ok_or_else(|| {
        Error::new(
            ErrorKind::Missing,
            format!("--{name}"),
            "",
            "is missing",
            format!("for example --{name} \"{example}\""),
        )
    })?;
    parse_length(text).map_err(|e| e.within(name))
}

fn pair<'a>(
    text: &'a str,
    field: &'static str,
    example: &str,
) -> Result<(&'a str, &'a str), Error> {
    text.split_once('=').ok_or_else(|| {
        Error::new(
            ErrorKind::Text,
            field,
            text,
            "no `=` in it",
            format!("for example --{field} \"{example}\""),
        )
    })
}

fn probes(words: &Words, radius: Radius, error: Length) -> Result<Vec<Probe>, Error> {
    let count = words.plain().len() as f64;
    let even = words
        .plain()
        .iter()
        .enumerate()
        .map(|(i, text)| Ok((deg(360.0 * i as f64 / count), text.as_str())));
    let placed = words.all("at").into_iter().map(|text| {
        let (angle, height) = pair(text, "at", "90 deg=0.05 mm")?;
        Ok((Angle::parse(angle.trim())?, height))
    });
    even.chain(placed)
        .map(|place: Result<(Angle, &str), Error>| {
            let (angle, height) = place?;
            let height = Reading::expanded(
                parse_length(height.trim()).map_err(|e| e.within("height"))?,
                error,
            )?;
            Ok(Probe {
                at: Clock::new(angle)?,
                radius,
                height,
            })
        })
        .collect()
}

fn limits(words: &Words) -> Result<Allowance, Error> {
    let limits = words.all("limit").into_iter().map(|text| {
        let (name, left) = pair(text, "limit", "least width=0.40 mm")?;
        let left = Reading::exact(parse_length(left.trim()).map_err(|e| e.within("limit"))?)?;
        CutLimit::new(LimitKind::Other, name.trim().to_owned(), left, Grade::Shop)
    });
    Ok(Allowance::new(limits.collect::<Result<Vec<_>, Error>>()?))
}

fn run() -> Result<Answer, Error> {
    let words = Words::read(&OPTIONS, &[])?;
    let half = |name: &str, example: &str| {
        Radius::new(length(&words, name, example)? / 2.0).map_err(|e| e.within(name))
    };
    let face = Annulus::new(half("inner", "34 mm")?, half("outer", "42 mm")?)?;
    let probed = length(&words, "probed", "40 mm")?;
    let error = length(&words, "error", "0.008 mm")?;
    let radius = Radius::new(probed / 2.0).map_err(|e| e.within("probed"))?;
    let pilot = words.named("pilot").unwrap_or("the pilot").to_owned();
    let survey = RingSurvey::new(face, pilot, probes(&words, radius, error)?)?;
    let mut goal =
        FacingGoal::square_within(length(&words, "square", "0.05 mm")?, probed, Grade::Shop)?;
    if let Some(share) = words.named("share") {
        goal = goal.touching(decimal(share)?)?;
    }
    let allowance = limits(&words)?;
    let report = survey.answer(&goal, &allowance, DecisionRule::default())?;
    if let Some(file) = words.named("svg") {
        let depth = match words.named("depth") {
            Some(text) => parse_length(text)?,
            None => proposed(&report),
        };
        let drawing = survey.drawing(&Sight::default(), depth, &allowance)?;
        std::fs::write(file, drawing).map_err(|e| {
            Error::new(
                ErrorKind::NotApplicable,
                "--svg",
                file,
                format!("cannot be written: {e}"),
                "name a file that can be written",
            )
        })?;
    }
    let acceptable = report.facing.step == FacingStep::Done;
    Ok(Answer::new(&report, text(&report), acceptable))
}

/// The depth that the decision speaks of.
fn proposed(report: &FaceAnswer) -> Length {
    match &report.facing.step {
        FacingStep::Done | FacingStep::Stop { .. } => mm(0.0),
        FacingStep::OnePass { depth, .. } | FacingStep::CannotCleanUp { depth, .. } => *depth,
        FacingStep::Undecided { .. } => report.facing.clean_up.at_outer_edge,
    }
}

fn text(report: &FaceAnswer) -> String {
    let facing = &report.facing;
    let mut lines = vec![facing.words.to_string()];
    let tilt = &facing.tilt;
    let high = tilt
        .high_at
        .map_or_else(String::new, |at| format!(", high at {at}"));
    lines.push(format!(
        "square: {} over {} ({}){high}",
        tilt.run_out,
        in_mm(tilt.over),
        facing.square.outcome.words()
    ));
    lines.push(format!("flat: {}", report.flatness.zone));
    if let Some(saddle) = report.form.saddle {
        lines.push(format!("saddle: {}", in_mm(saddle)));
    }
    let clean = &facing.clean_up;
    lines.push(format!(
        "to clean up: {} at the probes, {} to the outer edge, at most {}",
        in_mm(clean.at_probes),
        in_mm(clean.at_outer_edge),
        in_mm(clean.upper)
    ));
    if let Some(limit) = &facing.nearest {
        lines.push(format!("nearest limit: {limit}"));
    }
    match &report.rock {
        Some(rock) if rock.shown => lines.push(format!(
            "a cup would rock by {} over {}",
            rock.amplitude,
            in_mm(rock.over)
        )),
        Some(rock) => lines.push(format!(
            "a cup might rock by {}, less than the readings can show",
            in_mm(rock.amplitude.value())
        )),
        None => {}
    }
    lines.extend(report.warnings.iter().map(|w| format!("note: {w}")));
    lines.join("\n")
}
