//! Which standard a seat or a steerer is, and how sure that is: named, doubtful with the field that settles it, or open.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::permit::Identity;
use super::site::Site;
use super::work::PlaceWork;
use crate::evidence::Text;
use crate::identify::{Feature, Identification, Observation, Options, Outcome, Standing, identify};
use crate::judge::{Finding, extremes};
use crate::measure::{Reading, instrument, settled_below};
use crate::quantity::{Length, mm, to_mm};
use crate::standard::Place;

/// What a place is called, believed and proved to be.
pub(super) struct Claims<'a> {
    pub place: &'a Place,
    /// Its path in the sheet.
    pub path: &'a str,
    pub believed: Option<&'a str>,
    pub confirmed: Option<&'a str>,
    /// The code that a name of the tables stands for.
    pub code_of: &'a dyn Fn(&str) -> Result<String, crate::Error>,
    /// The field that holds readings of a feature.
    pub field: fn(Feature) -> &'static str,
    /// Whether a size that misses what is believed by a little may be that, made or left wrong.
    pub may_be_off: bool,
}

/// What it is.
pub(super) struct Named {
    /// Code of the row that may be worked to.
    pub code: Option<String>,
    pub identity: Identity,
}

/// A size that misses the believed standard by less than this may be that standard, made or left wrong; beyond it, the belief
/// is wrong. Common practice: half a millimetre is what a reamer or a coat can account for.
pub(super) const NEAR_MISS: Length = mm(0.5);

/// Beyond this spread readings are not one size, and the identification is told so reading by reading. Common practice: a bore
/// out of true by a fifth of a millimetre is refused, not named.
const ONE_SIZE: Length = mm(0.2);

/// Readings at several places of one feature: their mean stands for them, their spread is a rectangular part of its
/// uncertainty (GUM 4.3.7).
pub(super) fn observed(feature: Feature, readings: &[Reading]) -> Vec<Observation> {
    let one = match *extremes(readings).as_slice() {
        [low, high] if !settled_below(ONE_SIZE, high.value() - low.value()) => {
            let sum = readings.iter().fold(mm(0.0), |sum, r| sum + r.value());
            #[expect(clippy::cast_precision_loss, reason = "a list of readings is short")]
            let mean = sum / readings.len() as f64;
            let shape = to_mm(high.value() - low.value()) / libm::sqrt(12.0);
            let u = mm(libm::hypot(to_mm(low.standard_uncertainty()), shape));
            Reading::new(mean, u).ok()
        }
        _ => None,
    };
    match one {
        Some(reading) => Vec::from([Observation::size(feature, reading)]),
        None => readings
            .iter()
            .map(|r| Observation::size(feature, *r))
            .collect(),
    }
}

/// Identifies a place, writes what was found and asks what is open.
pub(super) fn name(
    site: &Site<'_>,
    work: &mut PlaceWork,
    claims: &Claims<'_>,
    mut seen: Vec<Observation>,
) -> Named {
    let open = Named {
        code: None,
        identity: Identity::Open,
    };
    let proved = match claims.confirmed.map(claims.code_of) {
        Some(Ok(code)) => Some(code),
        Some(Err(error)) => {
            unknown_name(work, claims, "confirmed", &error);
            return open;
        }
        None => None,
    };
    seen.extend(
        claims
            .believed
            .map(|b| Observation::label(Text::Owned(b.to_string()))),
    );
    if seen.is_empty() {
        return match proved {
            Some(code) => Named {
                code: Some(code),
                identity: Identity::Known,
            },
            None => open,
        };
    }
    let options = Options {
        shop: site.tables.shop(),
        ..Options::default()
    };
    let answer = match identify(claims.place.clone(), &seen, &options) {
        Ok(answer) => answer,
        Err(error) => {
            let field = if error.field().starts_with("belief") {
                "believed"
            } else {
                (claims.field)(Feature::Bore)
            };
            unknown_name(work, claims, field, &error);
            return Named {
                identity: if proved.is_some() {
                    Identity::Known
                } else {
                    Identity::Open
                },
                code: proved,
            };
        }
    };
    work.settled(Finding {
        grade: answer.grade(),
        ..Finding::stated("which standard", answer.sentence.clone())
    });
    for note in &answer.notes {
        work.settled(Finding::stated("note", note.to_string()));
    }
    let named = match proved {
        Some(code) => Named {
            code: Some(code),
            identity: Identity::Known,
        },
        None => settle(work, claims, &answer),
    };
    work.identification = Some(answer);
    named
}

fn settle(work: &mut PlaceWork, claims: &Claims<'_>, answer: &Identification) -> Named {
    let doubtful = |code: String| Named {
        code: Some(code),
        identity: Identity::Doubtful(format!("{}.confirmed", claims.path)),
    };
    let believed = claims.believed.and_then(|b| (claims.code_of)(b).ok());
    if let Some(believed) = believed.as_ref().filter(|_| claims.may_be_off)
        && let Some(by) = miss(answer, believed)
        && !settled_below(NEAR_MISS, by)
    {
        work.ask(
            format!("{}.confirmed", claims.path),
            format!("is it really {believed}? Look for a sleeve or traces of work, measure again in other places, try a part of known size"),
            format!("it misses {believed} by {:.3} mm: either it is something else, or it is {believed} and out of its limits", to_mm(by)),
            "gauge, plug or part of known size",
        );
        return doubtful(believed.clone());
    }
    let code = match &answer.outcome {
        Outcome::Identified { code } => Some(code.to_string()),
        Outcome::Ambiguous { between } if answer.interchange => {
            between.first().map(ToString::to_string)
        }
        _ => None,
    };
    match (code, believed) {
        (Some(code), Some(believed)) if miss(answer, &believed).is_some() => {
            work.ask(
                format!("{}.confirmed", claims.path),
                format!(
                    "it is called {believed} and reads as {code}: which of the two takes its part?"
                ),
                "a label proves nothing, and a reading can be of the wrong place",
                "gauge, plug or part of known size",
            );
            doubtful(code)
        }
        (Some(code), _) => Named {
            code: Some(code),
            identity: Identity::Known,
        },
        (None, _) => {
            ask(work, claims, answer);
            Named {
                code: None,
                identity: Identity::Open,
            }
        }
    }
}

/// By how much a reading misses this row; `None` where none rules it out.
fn miss(answer: &Identification, code: &str) -> Option<Length> {
    match answer.candidate(code)?.standing {
        Standing::Excluded(why) => why
            .against
            .map(|a| mm(libm::fmax(a.lower - a.read, a.read - a.upper))),
        _ => None,
    }
}

/// Asks for the measurement that tells most.
fn ask(work: &mut PlaceWork, claims: &Claims<'_>, answer: &Identification) {
    let field = |feature| format!("{}.{}", claims.path, (claims.field)(feature));
    for doubt in &answer.doubts {
        work.ask(
            field(doubt.about),
            format!("{} again", doubt.about.words()),
            doubt.words.clone(),
            "as before, or a finer one",
        );
    }
    let left: Vec<&str> = answer
        .outcome
        .left()
        .iter()
        .map(Text::as_ref)
        .take(5)
        .collect();
    match answer.next.first() {
        Some(next) => {
            let with = next
                .instrument
                .as_deref()
                .and_then(|code| instrument(code).ok())
                .map_or("eye and hand", |tool| tool.name.as_ref());
            let why = if left.is_empty() {
                answer.sentence.clone()
            } else {
                format!("it would tell {} apart best", left.join(", "))
            };
            work.ask(field(next.measure), next.measure.words(), why, with);
        }
        None if answer.doubts.is_empty() => work.ask(
            format!("{}.confirmed", claims.path),
            if left.is_empty() {
                String::from("what is it? The tables hold nothing that agrees")
            } else {
                format!("{}? No reading tells them apart", left.join(" or "))
            },
            answer.sentence.clone(),
            "frame maker's drawing, gauge or part of known size",
        ),
        None => {}
    }
}

fn unknown_name(work: &mut PlaceWork, claims: &Claims<'_>, field: &str, error: &crate::Error) {
    work.settled(Finding::stated("which standard", error.to_string()));
    work.ask(
        format!("{}.{field}", claims.path),
        error.remedy().to_string(),
        error.problem().to_string(),
        "as named",
    );
}
