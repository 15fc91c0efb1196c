//! Exclusion by interval and likelihood of one row. Exclusion comes first and is never overruled by the ranking.

use super::Feature;
use super::answer::{Against, Exclusion, Standing};
use super::assume::{BROAD_ANGLE, BROAD_DIAMETER, BROAD_PITCH, BROAD_WIDTH};
use super::band::{Band, Ground};
use super::entry::Entry;
use super::gather::{Seen, Size};
use super::hands::words_and_hands;
use super::kind::FEATURES;
use crate::evidence::Grade;
use crate::measure::phi;

/// Two-sided coverage factor that keeps k = 2 (4.55 %) over all of m readings together (Bonferroni): the point of the
/// normal distribution with 4.55 %/m outside.
const COVERAGE: [f64; 8] = [
    2.0, 2.277_605, 2.428_373, 2.530_96, 2.608_272, 2.670_077, 2.721_429, 2.765_272,
];

pub(super) fn coverage(readings: usize) -> f64 {
    COVERAGE
        .get(readings.saturating_sub(1))
        .or(COVERAGE.last())
        .copied()
        .unwrap_or(2.0)
}

/// Beyond this many u a likelihood is nil for every purpose here.
const FAR: f64 = 8.0;
const FAR_BELOW: f64 = -FAR;
/// Less than 1e-9 lies beyond this score, and is nil beside the rest.
const WHOLE: f64 = 6.0;

/// Half a nanometre in mm (or as much of a degree): a gap is not larger than it may be by less, which is rounding.
const HALF_NANOMETRE: f64 = 5e-7;

/// One row held against everything observed.
#[derive(Debug, Clone, Copy)]
pub(super) struct Weighed {
    pub likelihood: f64,
    pub standing: Standing,
    /// The variant that suits best.
    pub variant: usize,
    /// How many readings that can name a standard were compared.
    pub key_tests: u8,
    /// How many readings were not compared, because the row has no figure for them.
    pub untested: u8,
    pub grade: Option<Grade>,
    /// Distance of the worst reading that excludes, in its standard uncertainty.
    worst: f64,
}

/// Share of the standard normal between two scores, exact in the tails.
pub(super) fn between(a: f64, b: f64) -> f64 {
    // Counted from the lower tail, where small shares keep their digits.
    let (a, b) = if a.is_sign_positive() {
        (-b, -a)
    } else {
        (a, b)
    };
    (below(b) - below(a)).max(0.0)
}

/// Share of the standard normal below a score; nothing is left to reckon in a far tail.
fn below(score: f64) -> f64 {
    match score {
        ..FAR_BELOW => 0.0,
        WHOLE.. => 1.0,
        _ => phi(score),
    }
}

/// Density of a reading x with standard uncertainty u when the size lies evenly between two limits (a normal density
/// when they coincide).
pub(super) fn density(x: f64, u: f64, low: f64, high: f64) -> f64 {
    let width = high - low;
    let (a, b) = ((low - x) / u, (high - x) / u);
    if width < 1e-6 {
        return libm::exp(-0.5 * a * a) / (u * 2.506_628_274_631_000_7);
    }
    between(a, b) / width
}

fn band_density(x: f64, u: f64, low: f64, high: f64, slack: (f64, f64)) -> f64 {
    let core = density(x, u, low, high);
    if slack.0 <= 0.0 && slack.1 <= 0.0 {
        return core;
    }
    // One in ten threads is worn or cut beyond the usual band (memory).
    0.9 * core + 0.1 * density(x, u, low - slack.0, high + slack.1)
}

/// Density of a size that no table lists.
pub(super) const fn broad(feature: Feature) -> f64 {
    match feature {
        Feature::Pitch => 1.0 / BROAD_PITCH,
        Feature::SeatAngle => 1.0 / BROAD_ANGLE,
        Feature::Width
        | Feature::HalfWidthDrive
        | Feature::HalfWidthNonDrive
        | Feature::InnerFaces
        | Feature::OverLocknut
        | Feature::BoltSpacing
        | Feature::PlaneHeight
        | Feature::FirstBolt => 1.0 / BROAD_WIDTH,
        _ => 1.0 / BROAD_DIAMETER,
    }
}

/// Likelihood of everything observed when the true standard is in no table.
pub(super) fn unlisted(seen: &Seen<'_>) -> f64 {
    let sizes: f64 = seen
        .sizes()
        .filter(|s| compared(s.feature))
        .map(|s| broad(s.feature))
        .product();
    let hands = [seen.hand_drive, seen.hand_non_drive, seen.hand];
    let coins = hands.iter().flatten().count() + usize::from(seen.threaded.is_some());
    sizes * (0..coins).fold(1.0, |p, _| p * 0.5)
}

/// Walls stand behind a bore that is worked out; no table lists them.
const fn compared(feature: Feature) -> bool {
    !matches!(feature, Feature::Wall)
}

/// Features that differ between the variants of one row.
const fn by_variant(feature: Feature) -> bool {
    matches!(
        feature,
        Feature::Width
            | Feature::HalfWidthDrive
            | Feature::HalfWidthNonDrive
            | Feature::SeatDiameter
            | Feature::LowerDiameter
            | Feature::Pitch
            | Feature::CrestDiameter
    )
}

/// What all rows of one question are held against.
#[derive(Debug, Clone, Copy)]
pub(super) struct Scale<'a> {
    pub ground: Ground<'a>,
    pub seen: &'a Seen<'a>,
    /// Whether readings share an instrument.
    pub shared: bool,
    /// Coverage factor of the exclusion.
    pub k: f64,
}

/// Holds one row against everything observed.
pub(super) fn weigh(scale: &Scale<'_>, entry: Entry<'_>) -> Weighed {
    let mut row = Weighed {
        likelihood: 1.0,
        standing: Standing::Possible,
        variant: 0,
        key_tests: 0,
        untested: 0,
        grade: None,
        worst: 0.0,
    };
    let (coin, struck) = words_and_hands(scale.seen, entry);
    if let Some(by) = struck {
        row.likelihood = 0.0;
        row.standing = Standing::Excluded(Exclusion { by, against: None });
        return row;
    }
    // First what holds for the row as a whole; if that is far off, no variant can help.
    // Filled only where readings share an instrument: the list is long.
    let mut bands: Option<Bands> = if scale.shared {
        Some([None; FEATURES])
    } else {
        None
    };
    let mut varies = false;
    for size in scale.seen.sizes().filter(|s| compared(s.feature)) {
        if by_variant(size.feature) {
            varies = true;
        } else {
            hold(scale, entry, 0, size, &mut row, &mut bands);
            if row.likelihood <= 0.0 {
                return row;
            }
        }
    }
    let variants = if varies { entry.variants() } else { 1 };
    let mut best = row;
    let mut leading = f64::NEG_INFINITY;
    let mut total = 0.0;
    for variant in 0..variants {
        let mut one = Weighed { variant, ..row };
        let mut held = bands.as_ref().copied();
        for size in scale.seen.sizes().filter(|s| by_variant(s.feature)) {
            hold(scale, entry, variant, size, &mut one, &mut held);
        }
        if let Some(held) = &held
            && one.likelihood > 0.0
        {
            one.likelihood *= joint(held);
        }
        total += one.likelihood;
        let rank = rank_of(&one);
        if rank > leading {
            best = one;
            leading = rank;
        }
    }
    #[expect(clippy::cast_precision_loss, reason = "a handful of variants")]
    let share = total / variants as f64;
    best.likelihood = coin * share;
    best
}

/// Variants are ranked by likelihood, excluded ones behind by their distance.
fn rank_of(one: &Weighed) -> f64 {
    match one.standing {
        Standing::Excluded(_) => -one.worst,
        _ => one.likelihood,
    }
}

/// Holds one reading against one variant of a row.
fn hold(
    scale: &Scale<'_>,
    entry: Entry<'_>,
    variant: usize,
    size: &Size,
    out: &mut Weighed,
    bands: &mut Option<Bands>,
) {
    let band = scale.ground.band(entry, size.feature, variant);
    let (low, high, slack, assumed, grade) = match band {
        Band::Absent => {
            out.likelihood = 0.0;
            // Farther off than any reading.
            out.worst = f64::MAX;
            out.standing = Standing::Excluded(Exclusion {
                by: size.feature,
                against: None,
            });
            return;
        }
        Band::Unknown => {
            out.untested = out.untested.saturating_add(1);
            out.likelihood *= broad(size.feature);
            return;
        }
        Band::Sizes {
            low,
            high,
            slack,
            assumed,
            grade,
        } => (low, high, slack, assumed, grade),
    };
    if size.feature.is_key(scale.ground.kind) {
        out.key_tests = out.key_tests.saturating_add(1);
    }
    out.grade = Some(out.grade.map_or(grade, |g| g.weaker(grade)));
    let outside = (low - slack.0 - size.x).max(size.x - high - slack.1);
    let gap = outside.max(0.0);
    let distance = gap / size.u;
    if distance > out.worst && gap - scale.k * size.u > HALF_NANOMETRE {
        out.worst = distance;
        out.standing = Standing::Excluded(Exclusion {
            by: size.feature,
            against: Some(Against {
                read: size.x,
                lower: low,
                upper: high,
                distance_in_u: distance,
                assumed,
            }),
        });
    }
    if distance > FAR {
        out.likelihood = 0.0;
    } else if let (Some(bands), 1..) = (bands.as_mut(), size.group) {
        if let Some(slot) = bands.get_mut(size.feature as usize) {
            *slot = Some((*size, (low, high), slack));
        }
    } else {
        out.likelihood *= band_density(size.x, size.u, low, high, slack);
    }
}

/// Readings that share an instrument, each with its band and the slack of that.
type Bands = [Option<(Size, (f64, f64), (f64, f64))>; FEATURES];

/// Likelihood of readings that share instruments: for each instrument the product over its readings, averaged over
/// what its common error may be (trapezoid rule over ±4 of its standard uncertainty).
fn joint(bands: &Bands) -> f64 {
    const STEPS: i32 = 10;
    let mut product = 1.0;
    for (size, ..) in bands.iter().flatten() {
        let group = || {
            bands
                .iter()
                .flatten()
                .filter(|(s, ..)| s.group == size.group)
        };
        // Each group once: by its first member.
        if group()
            .next()
            .is_some_and(|(s, ..)| s.feature != size.feature)
        {
            continue;
        }
        // The smallest: what one member has beyond it is its own.
        let bias = group().map(|(s, ..)| s.bias).fold(f64::INFINITY, f64::min);
        let mut sum = 0.0;
        let mut weights = 0.0;
        for step in -STEPS..=STEPS {
            let z = 4.0 * f64::from(step) / f64::from(STEPS);
            let weight = libm::exp(-0.5 * z * z);
            weights += weight;
            let likely = group().map(|(s, (low, high), slack)| {
                // Two fifths of the bias, its step, keep the rule smooth.
                let own = libm::sqrt(s.u * s.u - bias * bias).max(0.4 * bias);
                band_density(s.x - z * bias, own, *low, *high, *slack)
            });
            sum += weight * likely.product::<f64>();
        }
        product *= sum / weights;
    }
    product
}

#[cfg(test)]
mod tests;
