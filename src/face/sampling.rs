//! What a number of probes can and cannot see.

/// Mean range of n independent normal readings, in standard deviations (the d₂ of control charts):
/// ∫ 1 − Φⁿ − (1 − Φ)ⁿ, by Simpson's rule.
pub(crate) fn range_bias(n: usize) -> f64 {
    const HALF: f64 = 8.0;
    const STEPS: u32 = 128;
    let width = 2.0 * HALF / f64::from(STEPS);
    #[expect(clippy::cast_precision_loss, reason = "a count")]
    let n = n as f64;
    let mut sum = 0.0;
    for step in 0..=STEPS {
        let below = crate::measure::phi(-HALF + f64::from(step) * width);
        let value = 1.0 - libm::pow(below, n) - libm::pow(1.0 - below, n);
        let weight = if step == 0 || step == STEPS {
            1.0
        } else if step % 2 == 1 {
            4.0
        } else {
            2.0
        };
        sum += weight * value;
    }
    sum * width / 3.0
}

/// The next better odd number of evenly spaced probes.
pub(crate) fn recommended_probes(now: usize) -> usize {
    match now {
        0..5 => 5,
        5..7 => 7,
        7..9 => 9,
        more => more + 2 - more % 2,
    }
}
