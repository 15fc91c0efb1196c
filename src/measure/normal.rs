//! The standard normal distribution.

/// Φ(z): the share of a standard normal below z.
pub(crate) fn phi(z: f64) -> f64 {
    0.5 * libm::erfc(-z * core::f64::consts::FRAC_1_SQRT_2)
}

#[cfg(test)]
mod tests {
    use super::phi;

    /// Two-sided 95 % point 1.959964 and one-sided 95 % point 1.644854: printed in any table of the normal distribution.
    #[test]
    fn percent_points() {
        assert!((phi(1.959_964) - 0.975).abs() < 1e-7);
        assert!((phi(1.644_854) - 0.95).abs() < 1e-7);
        assert!((phi(0.0) - 0.5).abs() < 1e-15);
    }
}
