//! Shares of the normal distribution and densities against plain sums.

use super::{COVERAGE, Scale, between, density, weigh};
use crate::identify::band::Ground;
use crate::identify::entry::Entry;
use crate::identify::gather::Seen;
use crate::identify::kind::Kind;
use crate::identify::{Observation, Options};
use crate::measure::phi;
use crate::standard::{HeadSeat, find};

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
}

/// The definition by a plain sum: in the middle, at one end, over both ends, and in either tail, where the digits of a
/// difference of two shares near one would be lost.
#[test]
fn shares_of_the_normal() {
    for (a, b) in [
        (-1.0, 2.0),
        (0.0, 0.5),
        (-0.5, 0.0),
        (-7.0, 1.0),
        (-1.0, 7.0),
        (-7.0, 7.0),
        (2.0, 3.0),
        (-3.0, -2.0),
        (5.0, 5.5),
        (-6.5, -6.0),
        (6.5, 7.5),
        (-7.5, -6.5),
    ] {
        let places = 20_000_u32;
        let step = (b - a) / f64::from(places);
        let density = |k: u32| {
            let z = a + (f64::from(k) + 0.5) * step;
            (-0.5 * z * z).exp() / core::f64::consts::TAU.sqrt()
        };
        let expected: f64 = (0..places).map(|k| density(k) * step).sum();
        let got = between(a, b);
        assert!(
            (got / expected - 1.0).abs() < 1e-6,
            "{a} to {b}: {got} against {expected}"
        );
    }
}

/// Beyond eight standard uncertainties nothing is left; up to there something is, and a band that turns about holds
/// nothing.
#[test]
fn far_tails_are_nil() {
    assert_eq!(between(8.1, 20.0), 0.0);
    assert_eq!(between(-20.0, -8.1), 0.0);
    assert_eq!(between(-20.0, 8.1), 1.0);
    assert!(between(7.9, 20.0) > 0.0 && between(-20.0, -7.9) > 0.0);
    assert_eq!(between(1.0, -1.0), 0.0);
}

/// No table lists walls, so no row lacks one: a row without an angle was not tested by the angle, and by the wall neither
/// tested nor untested.
#[test]
fn a_wall_is_no_figure_that_a_row_lacks() {
    let kind = Kind::HeadTube;
    let options = Options::default();
    let read = |key, value| Observation::read(key, value).unwrap();
    let bore = read("bore", "43.97 +/- 0.01 mm");
    let wall = read("wall", "1.2 +/- 0.1 mm");
    let angle = read("seat_angle", "36 deg");
    let untested = |observed: &[Observation]| {
        let seen = Seen::gather(kind, None, observed).unwrap();
        let scale = Scale {
            ground: Ground {
                kind,
                options: &options,
                pitch_read: false,
                unfinished: false,
            },
            seen: &seen,
            shared: false,
            k: 2.0,
        };
        weigh(&scale, Entry::Head(find::<HeadSeat>("EC44").unwrap())).untested
    };
    assert_eq!(untested(&[bore.clone(), wall.clone()]), 0);
    assert_eq!(untested(&[bore.clone(), angle.clone()]), 1);
    assert_eq!(untested(&[bore, wall, angle]), 1);
}
