//! Exclusion by interval and likelihood of one row. Exclusion comes first and is never overruled by the ranking.

use core::cmp::Ordering;

use super::Feature;
use super::answer::{Against, Exclusion, Standing};
use super::assume::{
    BROAD_ANGLE, BROAD_DIAMETER, BROAD_PITCH, BROAD_WIDTH, HAND_MISREAD, REMEMBERED_HAND_WRONG,
};
use super::band::{Band, Ground};
use super::entry::Entry;
use super::gather::{Seen, Size};
use super::kind::FEATURES;
use crate::evidence::{Fact, Grade};
use crate::measure::{phi, settled_cmp};
use crate::quantity::mm;
use crate::thread::Hand;

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
}

/// Chance of Φ between two scores, exact in the tails.
pub(super) fn between(a: f64, b: f64) -> f64 {
    let p = if a > 0.0 {
        phi(-a) - phi(-b)
    } else {
        phi(b) - phi(a)
    };
    libm::fmax(p, 0.0)
}

/// Density of a reading x with standard uncertainty u when the size lies evenly between two limits (a normal density
/// when they coincide).
pub(super) fn density(x: f64, u: f64, low: f64, high: f64) -> f64 {
    let width = high - low;
    let (a, b) = ((low - x) / u, (high - x) / u);
    if a > FAR || b < -FAR {
        return 0.0;
    }
    if width < 1e-6 {
        return libm::exp(-0.5 * a * a) / (u * 2.506_628_274_631_000_7);
    }
    if a < -FAR && b > FAR {
        return 1.0 / width;
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
            | Feature::Pitch
            | Feature::CrestDiameter
    )
}

/// Holds one row against everything observed.
pub(super) fn weigh(
    ground: &Ground<'_>,
    seen: &Seen<'_>,
    shared: bool,
    k: f64,
    entry: Entry<'_>,
) -> Weighed {
    let mut best = Weighed {
        likelihood: 0.0,
        standing: Standing::Possible,
        variant: 0,
        key_tests: 0,
        untested: 0,
        grade: None,
    };
    let (coin, struck) = words_and_hands(seen, entry);
    if let Some(by) = struck {
        best.standing = Standing::Excluded(Exclusion { by, against: None });
        return best;
    }
    let variants = entry.variants();
    let mut total = 0.0;
    let mut first = true;
    let mut leading = -1.0;
    for variant in 0..variants {
        let one = weigh_variant(ground, seen, shared, k, entry, variant);
        total += one.likelihood;
        let rank = rank_of(&one);
        if first || better(&one, rank, &best, leading) {
            best = one;
            leading = rank;
            first = false;
        }
        // No other variant can help where the row itself is far off.
        if let Standing::Excluded(e) = one.standing
            && one.likelihood <= 0.0
            && !by_variant(e.by)
        {
            total = 0.0;
            break;
        }
    }
    #[expect(clippy::cast_precision_loss, reason = "a handful of variants")]
    let share = total / variants as f64;
    best.likelihood = coin * share;
    best
}

/// Variants are ranked by likelihood; among impossible ones the least distant leads.
fn rank_of(one: &Weighed) -> f64 {
    match one.standing {
        Standing::Excluded(e) => -e.against.map_or(1e9, |a| a.distance_in_u),
        _ => one.likelihood,
    }
}

fn better(one: &Weighed, rank: f64, held: &Weighed, leading: f64) -> bool {
    let open = |w: &Weighed| !matches!(w.standing, Standing::Excluded(_));
    match (open(one), open(held)) {
        (true, false) => true,
        (false, true) => false,
        _ => rank > leading,
    }
}

fn weigh_variant(
    ground: &Ground<'_>,
    seen: &Seen<'_>,
    shared: bool,
    k: f64,
    entry: Entry<'_>,
    variant: usize,
) -> Weighed {
    let mut out = Weighed {
        likelihood: 1.0,
        standing: Standing::Possible,
        variant,
        key_tests: 0,
        untested: 0,
        grade: None,
    };
    let mut worst = 0.0;
    let mut bands: Option<Bands> = shared.then_some([None; FEATURES]);
    for size in seen.sizes() {
        if !compared(size.feature) {
            continue;
        }
        let band = ground.band(entry, size.feature, variant);
        match band {
            Band::Absent => {
                out.likelihood = 0.0;
                out.standing = Standing::Excluded(Exclusion {
                    by: size.feature,
                    against: None,
                });
                return out;
            }
            Band::Unknown => {
                out.untested = out.untested.saturating_add(1);
                out.likelihood *= broad(size.feature);
            }
            Band::Sizes {
                low,
                high,
                slack,
                assumed,
                grade,
            } => {
                if size.feature.is_key(ground.kind) {
                    out.key_tests = out.key_tests.saturating_add(1);
                }
                out.grade = Some(out.grade.map_or(grade, |g| g.weaker(grade)));
                let gap = libm::fmax(
                    libm::fmax(low - slack.0 - size.x, size.x - high - slack.1),
                    0.0,
                );
                let distance = gap / size.u;
                if distance > worst && exceeds(gap, k * size.u) {
                    worst = distance;
                    let against = Against {
                        read: size.x,
                        lower: low,
                        upper: high,
                        distance_in_u: distance,
                        assumed,
                    };
                    out.standing = Standing::Excluded(Exclusion {
                        by: size.feature,
                        against: Some(against),
                    });
                }
                if distance > FAR {
                    out.likelihood = 0.0;
                    if !by_variant(size.feature) {
                        return out;
                    }
                } else if shared && size.group > 0 {
                    let slot = bands
                        .as_mut()
                        .and_then(|b| b.get_mut(size.feature as usize));
                    if let Some(slot) = slot {
                        *slot = Some((*size, band));
                    }
                } else {
                    out.likelihood *= band_density(size.x, size.u, low, high, slack);
                }
            }
        }
    }
    if let Some(bands) = &bands
        && out.likelihood > 0.0
    {
        out.likelihood *= joint(bands);
    }
    out
}

/// Whether a gap exceeds a limit, settled to whole nanometres where it is close.
fn exceeds(gap: f64, limit: f64) -> bool {
    if libm::fabs(gap - limit) > 1e-5 {
        gap > limit
    } else {
        settled_cmp(mm(gap), mm(limit)) == Ordering::Greater
    }
}

/// Readings that share an instrument, each with its band.
type Bands = [Option<(Size, Band)>; FEATURES];

/// Likelihood of readings that share instruments: for each instrument the product over its readings, averaged over
/// what its common error may be (trapezoid rule over ±4 of its standard uncertainty).
fn joint(bands: &Bands) -> f64 {
    const STEPS: i32 = 20;
    let mut product = 1.0;
    for (size, _) in bands.iter().flatten() {
        let group = || {
            bands
                .iter()
                .flatten()
                .filter(|(s, _)| s.group == size.group)
        };
        // Each group once: by its first member.
        if group()
            .next()
            .is_some_and(|(s, _)| s.feature != size.feature)
        {
            continue;
        }
        // The smallest: what one member has beyond it is its own.
        let bias = group().map(|(s, _)| s.bias).fold(f64::INFINITY, f64::min);
        let mut sum = 0.0;
        let mut weights = 0.0;
        for step in -STEPS..=STEPS {
            let z = 4.0 * f64::from(step) / f64::from(STEPS);
            let weight = libm::exp(-0.5 * z * z);
            weights += weight;
            sum += weight
                * group()
                    .map(|(s, band)| match band {
                        Band::Sizes {
                            low, high, slack, ..
                        } => {
                            // A fifth of the bias keeps the rule smooth between its steps.
                            let own = libm::sqrt(libm::fmax(
                                s.u * s.u - bias * bias,
                                squared(0.2 * bias),
                            ));
                            band_density(s.x - z * bias, libm::fmax(own, 1e-6), *low, *high, *slack)
                        }
                        Band::Absent | Band::Unknown => broad(s.feature),
                    })
                    .product::<f64>();
        }
        product *= sum / weights;
    }
    product
}

fn squared(x: f64) -> f64 {
    x * x
}

/// Looks and hands: their factor on the likelihood, and what they strike out.
fn words_and_hands(seen: &Seen<'_>, entry: Entry<'_>) -> (f64, Option<Feature>) {
    let mut factor = 1.0;
    if let Some(is) = seen.threaded {
        match entry.is_threaded() {
            Some(has) if has != is => return (0.0, Some(Feature::Threaded)),
            Some(_) => {}
            None => factor *= 0.5,
        }
    }
    let hands = entry.hands();
    let sides = [
        (
            seen.hand_drive,
            hands.drive.or(hands.only),
            Feature::HandDrive,
        ),
        (
            seen.hand_non_drive,
            hands.non_drive.or(hands.only),
            Feature::HandNonDrive,
        ),
    ];
    for (observed, stated, feature) in sides {
        let Some(observed) = observed else { continue };
        match one_hand(observed, stated) {
            None => factor *= 0.5,
            Some(f) if f <= 0.0 => return (0.0, Some(feature)),
            Some(f) => factor *= f,
        }
    }
    if let Some(observed) = seen.hand {
        let any = [hands.only, hands.drive, hands.non_drive]
            .into_iter()
            .filter_map(|fact| one_hand(observed, fact))
            .fold(None, |best: Option<f64>, f| {
                Some(best.map_or(f, |b| libm::fmax(b, f)))
            });
        match any {
            None => factor *= 0.5,
            Some(f) if f <= 0.0 => return (0.0, Some(Feature::Hand)),
            Some(f) => factor *= f,
        }
    }
    (factor, None)
}

/// Factor of an observed hand against a stated one: nil strikes out; a hand that is only remembered cannot.
fn one_hand(observed: Hand, stated: Option<&Fact<Hand>>) -> Option<f64> {
    let fact = stated?;
    let held = *fact.value()?;
    let remembered = fact.grade() == Some(Grade::Memory);
    Some(match (held == observed, remembered) {
        (true, false) => 1.0 - HAND_MISREAD,
        (true, true) => 1.0 - REMEMBERED_HAND_WRONG,
        (false, false) => 0.0,
        (false, true) => REMEMBERED_HAND_WRONG,
    })
}

#[cfg(test)]
mod tests {
    use super::{COVERAGE, between, density};
    use crate::measure::phi;

    /// Bonferroni: m two-sided tails at k sum to the two tails at 2 (4.55 %).
    #[test]
    fn coverage_factors_share_the_tail() {
        let whole = 2.0 * phi(-2.0);
        for (k, m) in COVERAGE.iter().zip(1_u8..) {
            let tails = 2.0 * phi(-k) * f64::from(m);
            assert!(
                (tails / whole - 1.0).abs() < 1e-4,
                "{m}: {tails} against {whole}"
            );
        }
    }

    /// A density integrates to one over all readings, for a band and for a point.
    #[test]
    fn densities_are_densities() {
        for (low, high) in [(26.95, 27.05), (1.0, 1.0)] {
            let sum: f64 = (0..40_000)
                .map(|i| density(low - 1.0 + f64::from(i) * 5e-5, 0.026, low, high) * 5e-5)
                .sum();
            assert!((sum - 1.0).abs() < 1e-6, "{sum}");
        }
        assert!(between(5.0, 6.0) > 0.0 && between(5.0, 6.0) < 1e-6);
    }
}
