//! The pads of a brake mount: how they stand to the wheel, what that does to the caliper, and what a cut would touch.
//!
//! A reading is pad, place along the mount, place across it, and height along the axle or post axis, outwards positive:
//! `brake_mount --error "0.008 mm" --pad-length "25 mm" --clearance "0.2 mm" --svg mount.svg \
//!  "upper: -37 mm, -6 mm, 0 mm" "upper: -37 mm, 6 mm, 0.08 mm" "lower: 37 mm, -6 mm, 0 mm" "lower: 37 mm, 6 mm, 0.07 mm"`
//!
//! `--tab` for a plain tab with bolts parallel to the axle; `--limit "NAME=0.3 mm"` for what may come off.

mod support;

use std::process::ExitCode;

use framegauge::face::{
    Allowance, CaliperTilt, CutLimit, Flatness, LimitKind, MountKind, PadPoint, PadSurvey, Point,
};
use framegauge::measure::{DecisionRule, Outcome, Reading};
use framegauge::say::Sight;
use framegauge::{Error, ErrorKind, Grade, Length, in_mm, parse_length};
use serde::Serialize;
use support::{Answer, Words, answer};

/// Said with every answer about a brake.
const CAUTION: &str = "Brakes: the frame, fork and brake makers' written limits come first; have the work checked before riding.";

#[derive(Serialize)]
struct Report {
    caliper: CaliperTilt,
    flatness: Flatness,
    depth_to_touch_all_mm: f64,
    caution: &'static str,
}

fn main() -> ExitCode {
    answer(run)
}

fn point(text: &str) -> Result<PadPoint, Error> {
    let refuse = || {
        Error::new(
            ErrorKind::Text,
            "reading",
            text,
            "is not pad: along, across, height",
            "for example \"upper: -37 mm, 6 mm, 0.08 mm\"",
        )
    };
    let (pad, place) = text.split_once(':').ok_or_else(refuse)?;
    let lengths = place
        .split(',')
        .map(|part| parse_length(part.trim()))
        .collect::<Result<Vec<_>, _>>()?;
    let [x, y, z] = lengths.try_into().map_err(|_| refuse())?;
    Ok(PadPoint {
        pad: pad.trim().to_owned().into(),
        point: Point::new(x, y, z)?,
    })
}

fn run() -> Result<Answer, Error> {
    let words = Words::read(
        &[
            "error",
            "pad-length",
            "clearance",
            "limit",
            "svg",
            "depth",
            "datum",
        ],
        &["tab"],
    )?;
    let length = |name: &str, example: &str| -> Result<Length, Error> {
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
    };
    let pads = words
        .plain()
        .iter()
        .map(|text| point(text))
        .collect::<Result<Vec<_>, _>>()?;
    let datum = words.named("datum").unwrap_or("wheel axle").to_owned();
    let survey = PadSurvey::new(datum, pads, length("error", "0.008 mm")? / 2.0)?;
    let kind = if words.flag("tab") {
        MountKind::Tab
    } else {
        MountKind::Posts
    };
    let caliper = survey.caliper_tilt(
        kind,
        length("pad-length", "25 mm")?,
        length("clearance", "0.2 mm")?,
        DecisionRule::default(),
    )?;
    let limits = words.all("limit").into_iter().map(|text| {
        let (name, left) = text.split_once('=').ok_or_else(|| {
            Error::new(
                ErrorKind::Text,
                "limit",
                text,
                "no `=` in it",
                "for example --limit \"bolt length=0.30 mm\"",
            )
        })?;
        CutLimit::new(
            LimitKind::Other,
            name.trim().to_owned(),
            Reading::exact(parse_length(left.trim())?)?,
            Grade::Shop,
        )
    });
    let allowance = Allowance::new(limits.collect::<Result<Vec<_>, Error>>()?);
    if let Some(file) = words.named("svg") {
        let depth = words
            .named("depth")
            .map_or_else(|| Ok(survey.range()), parse_length)?;
        std::fs::write(file, survey.drawing(&Sight::default(), depth, &allowance)?).map_err(
            |e| {
                Error::new(
                    ErrorKind::NotApplicable,
                    "--svg",
                    file,
                    format!("cannot be written: {e}"),
                    "name a file that can be written",
                )
            },
        )?;
    }
    let acceptable = caliper.decision.outcome == Outcome::ConformityShown;
    let report = Report {
        caliper,
        flatness: survey.flatness()?,
        depth_to_touch_all_mm: framegauge::settled_mm(survey.range()),
        caution: CAUTION,
    };
    let text = text(&report, &survey, &allowance);
    Ok(Answer::new(&report, text, acceptable))
}

fn text(report: &Report, survey: &PadSurvey, allowance: &Allowance) -> String {
    let tilt = &report.caliper;
    let degrees = |angle: framegauge::Angle| angle.value.to_degrees();
    let mut lines = vec![format!(
        "caliper tilt: {:.2} deg, {} over the pad; {:.2} deg is where it touches: {}",
        degrees(tilt.angle),
        in_mm(tilt.rise.value()),
        degrees(tilt.allowed_angle),
        match tilt.decision.outcome {
            Outcome::ConformityShown => "clear",
            Outcome::NonconformityShown => "it will rub",
            Outcome::Undecided => "too close to tell",
        }
    )];
    lines.push(format!("flat: {}", report.flatness.zone));
    for pad in &tilt.pads {
        let across = pad
            .rise_across
            .map_or_else(String::new, |rise| format!(", {} across", in_mm(rise)));
        lines.push(format!(
            "{}: mean height {}{across}",
            pad.pad,
            in_mm(pad.height)
        ));
    }
    lines.push(format!(
        "a square cut touches everything at {}",
        in_mm(survey.range())
    ));
    match allowance.nearest() {
        Some(limit) => lines.push(format!("nearest limit: {limit}")),
        None => lines
            .push("no limit stated: thickness and bolt length decide what may come off".to_owned()),
    }
    lines.push(CAUTION.to_owned());
    lines.join("\n")
}
