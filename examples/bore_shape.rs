//! A bore from a few diameters: its size or that it has none, out-of-round, ellipse, taper, and its limits.
//!
//! `bore_shape --error "0.010 mm" --min "43.95 mm" --max "44.00 mm" "0 deg, 5 mm: 43.97 mm" "90 deg, 5 mm: 43.98 mm"`
//!
//! A reading is angle, depth from the end, and diameter; put `three` before the diameter for a three-contact gauge:
//! `"0 deg, 5 mm: three 43.97 mm"`.

mod support;

use std::process::ExitCode;

use framegauge::face::{BoreReading, BoreShape, BoreSurvey, Clock, Gauge, Size};
use framegauge::measure::{Bound, Decision, DecisionRule, Limits, Outcome, Reading};
use framegauge::{Angle, Error, ErrorKind, Grade, Length, Printed, in_mm, parse_length};
use serde::Serialize;
use support::{Answer, Words, answer};

#[derive(Serialize)]
struct Report {
    shape: BoreShape,
    decision: Option<Decision>,
}

fn main() -> ExitCode {
    answer(run)
}

fn reading(text: &str, error: Length) -> Result<BoreReading, Error> {
    let refuse = || {
        Error::new(
            ErrorKind::Text,
            "reading",
            text,
            "is not angle, depth and diameter",
            "for example \"0 deg, 5 mm: 43.97 mm\"",
        )
    };
    let (place, size) = text.split_once(':').ok_or_else(refuse)?;
    let (angle, depth) = place.split_once(',').ok_or_else(refuse)?;
    let (gauge, size) = match size.trim().strip_prefix("three ") {
        Some(rest) => (Gauge::ThreePoint, rest),
        None => (Gauge::TwoPoint, size),
    };
    Ok(BoreReading {
        at: Clock::new(Angle::parse(angle.trim())?)?,
        depth: parse_length(depth.trim()).map_err(|e| e.within("depth"))?,
        diameter: Reading::expanded(
            parse_length(size.trim()).map_err(|e| e.within("diameter"))?,
            error,
        )?,
        gauge,
    })
}

fn run() -> Result<Answer, Error> {
    let words = Words::read(&["error", "min", "max"], &[])?;
    let error = words.named("error").ok_or_else(|| {
        Error::new(
            ErrorKind::Missing,
            "--error",
            "",
            "how good are the readings?",
            "for example --error \"0.010 mm\"",
        )
    })?;
    let error = parse_length(error)?;
    let readings = words
        .plain()
        .iter()
        .map(|text| reading(text, error))
        .collect::<Result<Vec<_>, _>>()?;
    let survey = BoreSurvey::new(readings)?;
    let shape = survey.shape()?;
    let bound = |name: &str| -> Result<Bound, Error> {
        Ok(words
            .named(name)
            .map(parse_length)
            .transpose()?
            .map_or(Bound::Unknown, Bound::At))
    };
    let limits = Limits::new(bound("min")?, bound("max")?, Grade::Shop)?;
    let asked = limits.lower().known().or(limits.upper().known()).is_some();
    let decision = asked.then(|| survey.against(&limits, DecisionRule::default()));
    let sized = matches!(shape.size, Size::One { .. });
    let acceptable = sized && decision.is_none_or(|d| d.outcome == Outcome::ConformityShown);
    let text = text(&shape, decision.as_ref(), &limits);
    Ok(Answer::new(&Report { shape, decision }, text, acceptable))
}

fn text(shape: &BoreShape, decision: Option<&Decision>, limits: &Limits) -> String {
    let mut lines = vec![match &shape.size {
        Size::One { diameter } => format!("size: {diameter}"),
        Size::None { least, most } => {
            format!(
                "no size: {} to {}, more than the readings' error explains",
                in_mm(least.value()),
                in_mm(most.value())
            )
        }
    }];
    if let Some(decision) = decision {
        lines.push(format!("against {limits}: {}", decision.outcome.words()));
    }
    for section in &shape.sections {
        let depth = format!("{:.1}", in_mm(section.depth));
        match &section.ellipse {
            Some(e) => {
                let along = e
                    .long_at
                    .map_or_else(String::new, |at| format!(", long axis at {at}"));
                lines.push(format!("at {depth}: oval by {}{along}", in_mm(e.ovality)));
            }
            None => lines.push(format!(
                "at {depth}: oval by at least {}",
                in_mm(section.spread)
            )),
        }
        lines.extend(section.blind_to.iter().map(|b| format!("  cannot see {b}")));
    }
    if let Some(taper) = &shape.taper {
        let shown = if taper.shown {
            ""
        } else {
            ", less than the readings can show"
        };
        lines.push(format!(
            "taper: {} over {}{shown}",
            in_mm(taper.difference.value()),
            in_mm(taper.over)
        ));
    }
    if shape.lobes_suspected {
        lines.push("two- and three-contact readings disagree: odd lobes are likely".to_owned());
    }
    if !shape.complete {
        lines.push("read two axes at two depths or more before this bore is judged".to_owned());
    }
    lines.join("\n")
}
