//! Observations that cannot be taken at their word: spread beyond uncertainty, and sizes that no such feature has.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::Feature;
use super::answer::{Doubt, DoubtKind};
use super::band::{Band, Ground};
use super::entry::{Entry, every};
use super::gather::{Seen, Size};
use super::kind::Kind;
use crate::evidence::Text;

/// Readings of one feature that spread beyond their uncertainties.
pub(super) fn scatter(seen: &Seen<'_>) -> Vec<Doubt> {
    seen.sizes()
        .filter(|size| size.scattered)
        .map(|size| {
            let (low, high) = size.span;
            Doubt {
                about: size.feature,
                kind: DoubtKind::Scatter,
                words: format!(
                    "{} readings of the {} spread over {:.3} {} ({low:.3} to {high:.3}), more than their uncertainties allow: \
                     that is no size. {}",
                    size.count,
                    size.feature.words(),
                    high - low,
                    unit(size.feature),
                    match size.feature {
                        Feature::Pitch => "Lay the gauge over six threads or more and take one leaf.",
                        _ => "Look for burrs, paint, a pinched slot or an oval, then measure at two depths and two angles at least.",
                    }
                ),
            }
        })
        .collect()
}

pub(super) const fn unit(feature: Feature) -> &'static str {
    if matches!(feature, Feature::SeatAngle) {
        "deg"
    } else {
        "mm"
    }
}

/// What a size of one feature is often taken for.
const TAKEN_FOR: &[(Kind, Feature, Kind, Feature, &str)] = &[
    (
        UPPER,
        Feature::Bore,
        Kind::Steerer,
        Feature::Bore,
        "the bore of the steerer",
    ),
    (
        UPPER,
        Feature::Bore,
        Kind::Steerer,
        Feature::OutsideDiameter,
        "the outside of the steerer",
    ),
    (
        Kind::Steerer,
        Feature::Bore,
        UPPER,
        Feature::Bore,
        "the bore of the head tube",
    ),
    (
        Kind::Steerer,
        Feature::OutsideDiameter,
        Kind::Crown,
        Feature::OutsideDiameter,
        "the crown-race seat",
    ),
    (
        Kind::Steerer,
        Feature::OutsideDiameter,
        UPPER,
        Feature::Bore,
        "the bore of the head tube",
    ),
    (
        Kind::Crown,
        Feature::OutsideDiameter,
        Kind::Steerer,
        Feature::OutsideDiameter,
        "the steerer",
    ),
    (
        Kind::Crown,
        Feature::OutsideDiameter,
        UPPER,
        Feature::Bore,
        "the bore of the head tube",
    ),
    (
        Kind::Shell,
        Feature::Bore,
        Kind::Shell,
        Feature::Width,
        "the width of the shell",
    ),
    (
        Kind::Shell,
        Feature::Width,
        Kind::Shell,
        Feature::Bore,
        "the bore of the shell",
    ),
    (
        Kind::Dropout(crate::standard::End::Both),
        Feature::InnerFaces,
        Kind::Dropout(crate::standard::End::Both),
        Feature::OverLocknut,
        "the hub width",
    ),
    (
        Kind::Dropout(crate::standard::End::Both),
        Feature::OverLocknut,
        Kind::Dropout(crate::standard::End::Both),
        Feature::InnerFaces,
        "the distance of the dropout faces",
    ),
];
const UPPER: Kind = Kind::HeadTube;

/// Ways in which a number becomes another one.
const SLIPS: [(f64, &str); 4] = [
    (2.0, "a radius given as a diameter"),
    (
        core::f64::consts::FRAC_1_PI,
        "a circumference given as a diameter",
    ),
    (25.4, "inches read as millimetres"),
    (1.0 / 25.4, "millimetres read as inches"),
];

/// The readings that lie outside everything the tables know of this feature, with what they may be instead.
pub(super) fn implausible(ground: &Ground<'_>, seen: &Seen<'_>) -> Vec<Doubt> {
    seen.sizes()
        .filter(|size| !size.derived)
        .filter_map(|size| {
            let (low, high) = envelope(ground, size.feature)?;
            // Three uncertainties and a fiftieth: worn and painted parts are still parts. Threads have few rows, and
            // holes are drilled for other taps: a tenth.
            let reach = if ground.kind.is_thread() { 0.1 } else { 0.02 };
            let margin = 3.0 * size.u + reach * size.x;
            if size.x >= low - margin && size.x <= high + margin {
                return None;
            }
            Some(Doubt {
                about: size.feature,
                kind: DoubtKind::Implausible,
                words: format!(
                    "no {} has this {}: {:.3} {} lies outside what the tables span, {low:.2} to {high:.2}. {}",
                    ground.kind.words(),
                    size.feature.words(),
                    size.x,
                    unit(size.feature),
                    instead(ground, size)
                ),
            })
        })
        .collect()
}

fn envelope(ground: &Ground<'_>, feature: Feature) -> Option<(f64, f64)> {
    let mut span: Option<(f64, f64)> = None;
    bands(ground, feature, &mut |low, high, _| {
        span = Some(span.map_or((low, high), |(l, h)| {
            (libm::fmin(l, low), libm::fmax(h, high))
        }));
    });
    span
}

fn bands(ground: &Ground<'_>, feature: Feature, visit: &mut dyn FnMut(f64, f64, Entry<'_>)) {
    every(ground.kind, ground.options, true, &mut |entry| {
        for variant in 0..entry.variants() {
            if let Band::Sizes { low, high, .. } = ground.band(entry, feature, variant) {
                visit(low, high, entry);
            }
        }
    });
}

/// The nearest row that a size would fit, within 2 u and a thousandth.
fn fitting(ground: &Ground<'_>, feature: Feature, x: f64, u: f64) -> Option<Text> {
    let mut best: Option<(f64, Text)> = None;
    bands(ground, feature, &mut |low, high, entry| {
        let gap = libm::fmax(libm::fmax(low - x, x - high), 0.0);
        let middle = libm::fabs(x - f64::midpoint(low, high));
        if gap <= 2.0 * u + 0.001 * x && best.as_ref().is_none_or(|(held, _)| middle < *held) {
            best = Some((middle, entry.code()));
        }
    });
    best.map(|(_, code)| code)
}

fn instead(ground: &Ground<'_>, size: &Size) -> String {
    let mut words: Vec<String> = Vec::new();
    for (kind, feature, other, of, what) in TAKEN_FOR {
        if kind.is_like(ground.kind)
            && *feature == size.feature
            && let Some(code) = fitting(&ground.of(*other), *of, size.x, size.u)
        {
            words.push(format!("{what} (`{code}`)"));
        }
    }
    if size.feature != Feature::SeatAngle {
        for (factor, what) in SLIPS {
            let (x, u) = (size.x * factor, size.u * factor);
            if let Some(code) = fitting(ground, size.feature, x, u) {
                words.push(format!("{what} ({x:.2} mm would be `{code}`)"));
            }
        }
    }
    if words.is_empty() {
        String::from("Check what was measured, and the unit.")
    } else {
        format!("It may be {}.", words.join(", or "))
    }
}
