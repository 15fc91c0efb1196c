//! Observations that cannot be taken at their word: spread beyond uncertainty, and sizes that no such feature has.

use alloc::vec::Vec;

use super::Feature;
use super::answer::{Doubt, DoubtKind, MayBe, TakenFor};
use super::band::{Band, Ground};
use super::entry::{Entry, every};
use super::gather::{Seen, Size};
use super::kind::Kind;
use crate::evidence::Text;
use crate::standard::End;

/// Readings of one feature that spread beyond their uncertainties.
pub(super) fn scatter(seen: &Seen<'_>) -> Vec<Doubt> {
    seen.sizes()
        .filter(|size| size.scattered)
        .map(|size| Doubt {
            about: size.feature,
            kind: DoubtKind::Scatter {
                count: size.count,
                low: size.span.0,
                high: size.span.1,
            },
        })
        .collect()
}

/// What a size of one feature is often taken for.
const TAKEN_FOR: [(Kind, Feature, TakenFor); 11] = [
    (Kind::HeadTube, Feature::Bore, TakenFor::SteererBore),
    (Kind::HeadTube, Feature::Bore, TakenFor::SteererOutside),
    (Kind::Steerer, Feature::Bore, TakenFor::HeadTubeBore),
    (Kind::Steerer, Feature::OutsideDiameter, TakenFor::CrownSeat),
    (
        Kind::Steerer,
        Feature::OutsideDiameter,
        TakenFor::HeadTubeBore,
    ),
    (
        Kind::Crown,
        Feature::OutsideDiameter,
        TakenFor::SteererOutside,
    ),
    (
        Kind::Crown,
        Feature::OutsideDiameter,
        TakenFor::HeadTubeBore,
    ),
    (Kind::Shell, Feature::Bore, TakenFor::ShellWidth),
    (Kind::Shell, Feature::Width, TakenFor::ShellBore),
    (DROPOUT, Feature::InnerFaces, TakenFor::HubWidth),
    (DROPOUT, Feature::OverLocknut, TakenFor::DropoutFaces),
];
const DROPOUT: Kind = Kind::Dropout(End::Both);

/// Where the size belongs that another is taken for.
const fn belongs(what: TakenFor) -> Option<(Kind, Feature)> {
    Some(match what {
        TakenFor::SteererBore => (Kind::Steerer, Feature::Bore),
        TakenFor::SteererOutside => (Kind::Steerer, Feature::OutsideDiameter),
        TakenFor::HeadTubeBore => (Kind::HeadTube, Feature::Bore),
        TakenFor::CrownSeat => (Kind::Crown, Feature::OutsideDiameter),
        TakenFor::ShellWidth => (Kind::Shell, Feature::Width),
        TakenFor::ShellBore => (Kind::Shell, Feature::Bore),
        TakenFor::HubWidth => (DROPOUT, Feature::OverLocknut),
        TakenFor::DropoutFaces => (DROPOUT, Feature::InnerFaces),
        TakenFor::Radius | TakenFor::Circumference | TakenFor::Inches | TakenFor::Millimetres => {
            return None;
        }
    })
}

/// Ways in which a number becomes another one.
const SLIPS: [(f64, TakenFor); 4] = [
    (2.0, TakenFor::Radius),
    (core::f64::consts::FRAC_1_PI, TakenFor::Circumference),
    (25.4, TakenFor::Inches),
    (1.0 / 25.4, TakenFor::Millimetres),
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
                kind: DoubtKind::Implausible {
                    read: size.x,
                    low,
                    high,
                    may_be: instead(ground, size),
                },
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

/// Code and name of the nearest row that a size would fit, within 2 u and a thousandth.
fn fitting(ground: &Ground<'_>, feature: Feature, x: f64, u: f64) -> Option<(Text, Text)> {
    let mut best: Option<(f64, (Text, Text))> = None;
    bands(ground, feature, &mut |low, high, entry| {
        let gap = libm::fmax(libm::fmax(low - x, x - high), 0.0);
        let middle = libm::fabs(x - f64::midpoint(low, high));
        if gap <= 2.0 * u + 0.001 * x && best.as_ref().is_none_or(|(held, _)| middle < *held) {
            best = Some((middle, (entry.code(), entry.name())));
        }
    });
    best.map(|(_, row)| row)
}

fn instead(ground: &Ground<'_>, size: &Size) -> Vec<MayBe> {
    let mut found = Vec::new();
    for (kind, feature, what) in TAKEN_FOR {
        if kind.is_like(ground.kind)
            && feature == size.feature
            && let Some((other, of)) = belongs(what)
            && let Some((code, name)) = fitting(&ground.of(other), of, size.x, size.u)
        {
            let read = size.x;
            found.push(MayBe {
                what,
                read,
                code,
                name,
            });
        }
    }
    if size.feature != Feature::SeatAngle {
        for (factor, what) in SLIPS {
            let (read, u) = (size.x * factor, size.u * factor);
            if let Some((code, name)) = fitting(ground, size.feature, read, u) {
                found.push(MayBe {
                    what,
                    read,
                    code,
                    name,
                });
            }
        }
    }
    found
}
