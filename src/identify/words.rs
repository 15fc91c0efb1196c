//! The answer in words, and the notes that go with it.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::Feature;
use super::answer::{Belief, Candidate, Exclusion, Identification, Outcome, Standing, UNLISTED};
use super::assume::{PAINT, POST_UNDER};
use super::doubt::unit;
use super::gather::Seen;
use super::kind::Kind;
use crate::evidence::Text;
use crate::measure::settled_cmp;
use crate::quantity::{mm, to_mm};
use crate::standard::{Row, SeatTube};

/// Codes in a row: `a`, `b` and `c`; more than six are counted.
fn list(codes: &[Text]) -> String {
    let shown: Vec<String> = codes
        .iter()
        .take(6)
        .map(|code| {
            if code == UNLISTED {
                String::from("something unlisted")
            } else {
                format!("`{code}`")
            }
        })
        .collect();
    let more = codes.len().saturating_sub(shown.len());
    if more > 0 {
        return format!("{} and {more} more", shown.join(", "));
    }
    match shown.split_last() {
        Some((last, rest)) if !rest.is_empty() => format!("{} and {last}", rest.join(", ")),
        Some((last, _)) => last.clone(),
        None => String::new(),
    }
}

/// Why a candidate is out: "bore 34.200 against 33.900 to 33.950 mm".
pub(super) fn because(e: &Exclusion) -> String {
    match &e.against {
        Some(a) => {
            let band = if a.upper > a.lower {
                format!("{:.3} to {:.3}", a.lower, a.upper)
            } else {
                format!("{:.3}", a.lower)
            };
            let basis = if a.assumed { ", assumed spread" } else { "" };
            format!(
                "{} {:.3} against {band} {}{basis}",
                e.by.words(),
                a.read,
                unit(e.by)
            )
        }
        None => String::from(e.by.words()),
    }
}

/// The candidate that was excluded by least.
fn nearest(candidates: &[Candidate]) -> Option<(&Candidate, &Exclusion)> {
    candidates
        .iter()
        .filter_map(|c| match &c.standing {
            Standing::Excluded(e) => Some((c, e, e.against?.distance_in_u)),
            _ => None,
        })
        .min_by(|a, b| a.2.total_cmp(&b.2))
        .map(|(c, e, _)| (c, e))
}

/// One plain sentence or two.
pub(super) fn sentence(kind: Kind, answer: &Identification, believed: &[Text]) -> String {
    let mut text = match &answer.outcome {
        Outcome::Identified { code } => {
            let name = answer.candidate(code).map_or("", |c| &c.name);
            let mut text = format!("This is `{code}`");
            if name != code {
                text.push_str(&format!(" ({name})"));
            }
            if let Some(feature) = answer.decided_by.and_then(|d| d.feature) {
                text.push_str(&format!("; the {} rules out the others", feature.words()));
            }
            text.push('.');
            text
        }
        Outcome::Ambiguous { between } => {
            let mut text = format!("This can be {}", list(between));
            if answer.interchange {
                text.push_str(": they interchange, so it does not matter which");
            } else if answer.inseparable {
                text.push_str("; they cannot be separated with these tools");
            } else if let Some(next) = answer.next.first() {
                text.push_str(&format!("; measure the {} next", next.measure.words()));
                if let Some(tool) = &next.instrument {
                    text.push_str(&format!(" ({tool})"));
                }
            }
            text.push('.');
            text
        }
        Outcome::Unlisted => {
            let mut text = format!("No listed {} has these sizes", kind.words());
            if let Some((candidate, why)) = nearest(&answer.candidates) {
                text.push_str(&format!(
                    "; the nearest is `{}`, ruled out by the {}",
                    candidate.code,
                    because(why)
                ));
            }
            text.push('.');
            let untested: Vec<Text> = answer
                .candidates
                .iter()
                .filter(|c| c.standing == Standing::Untested && c.code != UNLISTED)
                .map(|c| c.code.clone())
                .collect();
            if !untested.is_empty() {
                text.push_str(&format!(
                    " Not compared, because the figure is not published: {}.",
                    list(&untested)
                ));
            }
            text
        }
        Outcome::CannotTell => {
            let mut text = String::from("This cannot be told yet");
            if !answer.doubts.is_empty() {
                let doubts: Vec<&str> = answer.doubts.iter().map(|d| d.words.as_str()).collect();
                text.push_str(": ");
                text.push_str(&doubts.join(" Also, "));
                return text;
            }
            if let Some(next) = answer.next.first() {
                text.push_str(&format!("; measure the {}", next.measure.words()));
                if let Some(tool) = &next.instrument {
                    text.push_str(&format!(" ({tool})"));
                }
                text.push_str(" next");
            }
            text.push('.');
            text
        }
    };
    match answer.belief {
        Some(Belief::Contradicted) => {
            text.push_str(&format!(
                " It was taken for {}: the readings contradict that",
                list(believed)
            ));
            let why = believed
                .iter()
                .find_map(|code| match &answer.candidate(code)?.standing {
                    Standing::Excluded(e) => Some(e),
                    _ => None,
                });
            if let Some(why) = why {
                text.push_str(&format!(" ({})", because(why)));
            }
            text.push('.');
        }
        Some(Belief::Confirmed) => {
            text.push_str(&format!(
                " The readings confirm what it was taken for, {}.",
                list(believed)
            ));
        }
        Some(Belief::NotTested) => {
            text.push_str(&format!(
                " That it is {} is neither shown nor ruled out.",
                list(believed)
            ));
        }
        None => {}
    }
    text
}

/// What a person should know besides the outcome.
pub(super) fn notes(
    kind: Kind,
    seen: &Seen<'_>,
    answer: &Identification,
    believed: &[Text],
    hand_open: bool,
) -> Vec<Text> {
    let mut notes: Vec<Text> = Vec::new();
    if hand_open {
        notes.push("The candidates differ in hand: until the hand is known, put no force on the part in either direction.".into());
    }
    if believed.len() > 1 {
        notes.push(
            format!(
                "The name stands for {}: the readings decide, not the name.",
                list(believed)
            )
            .into(),
        );
    }
    for size in seen.sizes().filter(|s| s.derived) {
        notes.push(
            format!(
                "The {} of {:.3} mm was worked out from other readings{}.",
                size.feature.words(),
                size.x,
                if matches!(kind, Kind::HeadTube) && size.feature == Feature::Bore {
                    "; the tube is taken as still to be reamed"
                } else {
                    ""
                }
            )
            .into(),
        );
    }
    if kind == Kind::SeatTube {
        seat_tube(seen, answer, believed, &mut notes);
    }
    if kind == Kind::Seatpost {
        seatpost(seen, answer, &mut notes);
    }
    notes
}

/// What the outside of a seat tube says: paint, and the wall that a believed post would leave.
fn seat_tube(seen: &Seen<'_>, answer: &Identification, believed: &[Text], notes: &mut Vec<Text>) {
    let Some(out) = seen.size(Feature::OutsideDiameter) else {
        return;
    };
    let bare = SeatTube::table()
        .iter()
        .filter_map(|row| row.outside.nominal().map(to_mm))
        .filter(|d| {
            let more = out.x - d;
            settled_cmp(mm(more), mm(2.0 * out.u)).is_gt() && more <= PAINT
        })
        .fold(None, |best: Option<f64>, d| {
            Some(best.map_or(d, |b| libm::fmax(b, d)))
        });
    if let Some(tube) = bare {
        let over = out.x - tube;
        notes.push(
            format!(
                "{:.2} mm outside is {tube:.1} mm and {over:.2} mm more: paint of {:.3} mm a side would explain it.",
                out.x,
                over / 2.0
            )
            .into(),
        );
    }
    if answer.belief == Some(Belief::Contradicted)
        && let Some(wall) = seen.size(Feature::Wall)
    {
        for code in believed {
            if let Ok(post) = crate::decimal(code) {
                notes.push(
                    format!(
                        "A {post:.1} mm bore would leave a wall of {:.2} mm, against {:.2} mm: a sleeve, a bulge or another tube. \
                         A part that goes in does not prove the size; check the bore for roundness.",
                        (out.x - post) / 2.0,
                        wall.x
                    )
                    .into(),
                );
            }
        }
    }
}

/// Stamped posts read low.
fn seatpost(seen: &Seen<'_>, answer: &Identification, notes: &mut Vec<Text>) {
    let Some(size) = seen.size(Feature::OutsideDiameter) else {
        return;
    };
    if answer.outcome.identified().is_none() {
        return;
    }
    let larger = answer.candidates.iter().find(|c| {
        matches!(c.standing, Standing::Excluded(_))
            && crate::decimal(&c.code).is_ok_and(|d| (0.0..=POST_UNDER).contains(&(d - size.x)))
    });
    if let Some(c) = larger {
        notes.push(
            format!(
                "Posts stamped 27.2 were read at 27.03 to 27.18: look for a stamp, it may say {}.",
                c.code
            )
            .into(),
        );
    }
}
