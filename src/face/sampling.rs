//! What a number of probes can and cannot see.

use super::report::report;
use crate::{Error, ErrorKind};

report! {
    /// What k evenly spaced probes of a ring can tell.
    ///
    /// ```
    /// let eight = framegauge::face::sampling(8).unwrap();
    /// assert!((eight.range_bias - 2.85).abs() < 0.005);
    /// assert_eq!(eight.undulations, 3);
    /// ```
    Sampling {
        /// How many probes.
        probes: u32 as own probes,
        /// Share of a tilt's range that the readings themselves are sure to show, in the worst position: cos(π/k) for even
        /// k, (1 + cos(π/k))/2 for odd. The fitted tilt always catches all of it.
        worst_tilt_share: f64 as share worst_tilt_share,
        /// Most undulations per turn that can be told from fewer: m needs 2 m + 1 probes.
        undulations: u32 as own undulations,
        /// Whether a saddle (two undulations) can be seen.
        sees_saddle: bool as own sees_saddle,
        /// Even counts put the axis on lines between opposite probes, so a computed seat looks as if it rocked.
        seat_looks_unstable: bool as own seat_looks_unstable,
        /// Range that a perfectly flat face shows, in standard uncertainties of a reading (the d₂ of control charts).
        range_bias: f64 as share range_bias_in_u,
        /// The next better count.
        better: u32 as own better,
    }
}

/// What this many evenly spaced probes can and cannot see.
///
/// # Errors
/// `OutOfRange` below 3 and above 1000.
///
/// ```
/// use framegauge::face::sampling;
/// let four = sampling(4).unwrap();
/// assert!((four.worst_tilt_share - 0.707).abs() < 1e-3 && !four.sees_saddle && four.seat_looks_unstable);
/// assert_eq!(four.better, 5);
/// assert!(sampling(5).unwrap().sees_saddle);
/// ```
pub fn sampling(probes: u32) -> Result<Sampling, Error> {
    if !(3..=1000).contains(&probes) {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "probes",
            probes,
            "a ring survey has 3 to 1000 probes",
            "5, 7 or 9 serve a face well",
        ));
    }
    let cosine = libm::cos(core::f64::consts::PI / f64::from(probes));
    let even = probes.is_multiple_of(2);
    Ok(Sampling {
        probes,
        worst_tilt_share: if even {
            cosine
        } else {
            f64::midpoint(1.0, cosine)
        },
        undulations: (probes - 1) / 2,
        sees_saddle: probes >= 5,
        seat_looks_unstable: even,
        range_bias: range_bias(probes as usize),
        better: u32::try_from(recommended_probes(probes as usize)).unwrap_or(u32::MAX),
    })
}

/// Fewest evenly spaced probes, an odd number, that show this many undulations per turn: 2 m + 1, and never below 5.
///
/// ```
/// assert_eq!(framegauge::face::probes_for(3), 7);
/// ```
#[must_use]
pub const fn probes_for(undulations: u32) -> u32 {
    match undulations {
        0 | 1 => 5,
        more => more.saturating_mul(2).saturating_add(1),
    }
}

/// Mean range of n independent normal readings, in standard deviations (the d₂ of control charts):
/// ∫ 1 − Φⁿ − (1 − Φ)ⁿ, by Simpson's rule.
pub(crate) fn range_bias(n: usize) -> f64 {
    const HALF: f64 = 8.0;
    const STEPS: u32 = 64;
    let width = HALF / f64::from(STEPS);
    let mut sum = 0.0;
    // The integrand is even: one half, doubled.
    for step in 0..=STEPS {
        let below = crate::measure::phi(f64::from(step) * width);
        let value = 1.0 - power(below, n) - power(1.0 - below, n);
        let weight = if step == 0 || step == STEPS {
            1.0
        } else if step % 2 == 1 {
            4.0
        } else {
            2.0
        };
        sum += weight * value;
    }
    2.0 * sum * width / 3.0
}

/// A whole power, by squaring.
fn power(mut base: f64, mut exponent: usize) -> f64 {
    let mut product = 1.0;
    while exponent > 0 {
        if exponent % 2 == 1 {
            product *= base;
        }
        base *= base;
        exponent /= 2;
    }
    product
}

/// The next better odd number of evenly spaced probes.
pub(crate) fn recommended_probes(now: usize) -> usize {
    match now {
        0..5 => 5,
        5..7 => 7,
        7..9 => 9,
        more => more + 1 + more % 2,
    }
}

/// Range of n independent normal readings that is exceeded once in twenty, in standard deviations: the 5 % point of the
/// studentized range at infinite degrees of freedom. P(range ≤ w) = n ∫ φ(x) [Φ(x) − Φ(x − w)]ⁿ⁻¹ dx.
pub(crate) fn range_limit(n: usize) -> f64 {
    if n < 2 {
        return 0.0;
    }
    const STEPS: u32 = 160;
    const HALF: f64 = 8.0;
    #[expect(clippy::cast_precision_loss, reason = "a count")]
    let count = n as f64;
    let within = |w: f64| {
        let step = 2.0 * HALF / f64::from(STEPS);
        // The integrand vanishes at both ends, where the plain sum is as good as any rule.
        let sum: f64 = (0..=STEPS)
            .map(|i| {
                let x = -HALF + f64::from(i) * step;
                let density = libm::exp(-x * x / 2.0) / libm::sqrt(core::f64::consts::TAU);
                density * power(crate::measure::phi(x) - crate::measure::phi(x - w), n - 1)
            })
            .sum();
        count * sum * step
    };
    let (mut low, mut high) = (0.0, 12.0);
    for _ in 0..50 {
        let middle = f64::midpoint(low, high);
        if within(middle) < 0.95 {
            low = middle
        } else {
            high = middle
        }
    }
    high
}

#[cfg(test)]
mod tests {
    use super::{range_bias, range_limit};

    /// d₂ of control charts, n = 2, 4, 6, 8, 12: printed in any handbook of quality control (memory); 4 to 12 also
    /// simulated independently to three digits.
    #[test]
    fn mean_range() {
        for (n, d2) in [(2, 1.128), (4, 2.059), (6, 2.534), (8, 2.847), (12, 3.258)] {
            assert!(
                (range_bias(n) - d2).abs() < 6e-4,
                "n {n}: {}",
                range_bias(n)
            );
        }
    }

    /// Upper 5 % points of the studentized range at infinite degrees of freedom, n = 2, 3, 4, 5, 10 (memory of the
    /// table in any statistics handbook).
    #[test]
    fn largest_likely_range() {
        for (n, q) in [(2, 2.772), (3, 3.314), (4, 3.633), (5, 3.858), (10, 4.474)] {
            assert!(
                (range_limit(n) - q).abs() < 1e-3,
                "n {n}: {}",
                range_limit(n)
            );
        }
    }
}
