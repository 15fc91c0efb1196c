//! Speed of the fit room, with bare-f64 twins (`bare/fit.rs`) in the same run. Budgets: limits of a class 10 ns, Lamé 5 ns.
//!
//! `cargo bench --bench fit`. Before anything is timed, each twin must give the same numbers as ours.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

#[path = "bare/fit.rs"]
mod bare;

use approx::assert_relative_eq;
use divan::counter::ItemsCount;
use divan::{Bencher, black_box};
use framegauge::fit::{
    FitClass, FitKind, HoleMember, JointShape, Material, MaterialKind, Out, Press, PressJoint,
    RingClass, ShaftMember, fit_between, limit_deviations,
};
use framegauge::measure::{DecisionRule, Reading};
use framegauge::{Interference, Length, Ratio, gpa, mm, to_mm};

fn main() {
    the_same_limits();
    the_same_stresses();
    for measured in [false, true] {
        the_same_fit(measured);
    }
    divan::main();
}

const CLASSES: [&str; 10] = [
    "N7", "H8", "js6", "k5", "P7", "h6", "zc10", "K6", "F7", "g6",
];

/// A hundred different questions in a row, so that no branch is learnt; divide by a hundred.
fn questions() -> impl Iterator<Item = (f64, &'static str)> {
    (0..100).map(|i| (4.0 + f64::from(i) * 1.1, CLASSES[i as usize * 7 % 10]))
}

fn the_same_limits() {
    let tables = bare::Iso286::read();
    for (size, name) in questions() {
        let ours = limit_deviations(mm(size), name.parse().unwrap()).unwrap();
        let (upper, lower) = tables.limits(size, tables.class(name)).unwrap();
        assert_relative_eq!(ours.upper_um(), upper, epsilon = 1e-9);
        assert_relative_eq!(ours.lower_um(), lower, epsilon = 1e-9);
    }
}

#[divan::bench(sample_size = 16)]
fn limits_100(bencher: Bencher) {
    let questions: Vec<(Length, FitClass)> = questions()
        .map(|(size, name)| (mm(size), name.parse().unwrap()))
        .collect();
    bencher.counter(ItemsCount::new(100_usize)).bench(|| {
        let sum = |sum, (size, class): &(_, _)| {
            sum + limit_deviations(*size, *class).map_or(0.0, |d| d.upper_um() + d.lower_um())
        };
        black_box(&questions).iter().fold(0.0, sum)
    });
}

/// The same grids read into vectors beforehand, the range of sizes found by walking them.
#[divan::bench(sample_size = 16)]
fn limits_100_in_vectors(bencher: Bencher) {
    let tables = bare::Iso286::read();
    let questions: Vec<(f64, bare::Class)> = questions()
        .map(|(size, name)| (size, tables.class(name)))
        .collect();
    bencher.counter(ItemsCount::new(100_usize)).bench(|| {
        let tables = black_box(&tables);
        let sum = |sum, (size, class): &(_, _)| {
            sum + tables
                .limits(*size, *class)
                .map_or(0.0, |(upper, lower)| upper + lower)
        };
        black_box(&questions).iter().fold(0.0, sum)
    });
}

#[divan::bench(sample_size = 256)]
fn read_a_class(bencher: Bencher) {
    bencher.bench(|| black_box("js6").parse::<FitClass>());
}

/// A bearing in its shell (invented readings). By their limits alone, or both read once.
fn members(measured: bool) -> (HoleMember, ShaftMember) {
    let hole = HoleMember::of_class(mm(42.0), "N7".parse().unwrap()).unwrap();
    let ring = ShaftMember::of_ring(mm(42.0), RingClass::Normal).unwrap();
    if !measured {
        return (hole, ring);
    }
    let read = |text: &str| text.parse::<Reading>().unwrap();
    (
        hole.measured_once(read("41.980 +/- 0.004 mm")).unwrap(),
        ring.measured_once(read("41.994 +/- 0.002 mm")).unwrap(),
    )
}

fn bare_members(measured: bool) -> (bare::Member, bare::Member) {
    let member = |low, high, value, u| bare::Member {
        limits: (low, high),
        read: measured.then_some((value, u)),
    };
    (
        member(41.967, 41.992, 41.980, 0.002),
        member(41.989, 42.0, 41.994, 0.001),
    )
}

fn the_same_fit(measured: bool) {
    let (hole, shaft) = members(measured);
    let ours = fit_between(&hole, &shaft, DecisionRule::default()).unwrap();
    let (hole, shaft) = bare_members(measured);
    let bare = bare::fit(&hole, &shaft);
    for (ours, bare) in [
        (ours.tightest(), bare.tightest),
        (ours.loosest(), bare.loosest),
        (ours.mean(), bare.mean),
    ] {
        assert_relative_eq!(to_mm(ours.value()), bare.0, epsilon = 1e-9);
        assert_relative_eq!(to_mm(ours.standard_uncertainty()), bare.1, epsilon = 1e-9);
    }
    let kind = match (bare.clearance, bare.interference) {
        (true, _) => FitKind::Clearance,
        (_, true) => FitKind::Interference,
        _ => FitKind::Transition,
    };
    let out = match (bare.hole, bare.shaft) {
        (Some(true), Some(true)) => Out::Neither,
        (None, None) => Out::CannotTell,
        other => panic!("the readings of the bench were chosen to be within: {other:?}"),
    };
    assert_eq!((ours.kind(), ours.out()), (kind, out));
}

#[divan::bench(sample_size = 64)]
fn fit_by_limits(bencher: Bencher) {
    let (hole, ring) = members(false);
    bencher.bench(|| fit_between(black_box(&hole), black_box(&ring), DecisionRule::default()));
}

#[divan::bench(sample_size = 64)]
fn fit_by_limits_bare_f64(bencher: Bencher) {
    let (hole, ring) = bare_members(false);
    bencher.bench(|| bare::fit(black_box(&hole), black_box(&ring)));
}

#[divan::bench(sample_size = 64)]
fn fit_measured(bencher: Bencher) {
    let (hole, ring) = members(true);
    bencher.bench(|| fit_between(black_box(&hole), black_box(&ring), DecisionRule::default()));
}

#[divan::bench(sample_size = 64)]
fn fit_measured_bare_f64(bencher: Bencher) {
    let (hole, ring) = bare_members(true);
    bencher.bench(|| bare::fit(black_box(&hole), black_box(&ring)));
}

/// The joint of `bare::JOINT`.
fn joint() -> PressJoint {
    let alloy = Material::new("6061-T6", MaterialKind::Metal, gpa(68.9), Ratio(0.33)).unwrap();
    let steel = Material::new("steel", MaterialKind::Metal, gpa(206.0), Ratio(0.3)).unwrap();
    let shape = JointShape {
        diameter: mm(42.0),
        shaft_bore: Some(mm(39.6)),
        hub_outside: mm(46.0),
        length: mm(7.0),
    };
    PressJoint::new(shape, &steel, &alloy).unwrap()
}

fn press() -> Press {
    Press::new(Interference::new(mm(0.02)).unwrap()).unwrap()
}

fn the_same_stresses() {
    let (ours, bare) = (joint().stresses(press()), bare::JOINT.stresses(20e-6));
    for (ours, bare) in [
        (ours.pressure, bare.pressure),
        (ours.pressure, bare::JOINT.pressure_as_printed(20e-6)),
        (ours.hub_bore_hoop, bare.hub_bore_hoop),
        (ours.hub_bore_von_mises, bare.hub_bore_von_mises),
        (ours.hub_outside_hoop, bare.hub_outside_hoop),
        (ours.shaft_outside_hoop, bare.shaft_outside_hoop),
        (ours.shaft_outside_von_mises, bare.shaft_outside_von_mises),
        (ours.shaft_bore_hoop.unwrap(), bare.shaft_bore_hoop.unwrap()),
    ] {
        assert_relative_eq!(ours.value, bare, max_relative = 1e-12);
    }
}

#[divan::bench(sample_size = 256)]
fn lame(bencher: Bencher) {
    let (joint, press) = (joint(), press());
    bencher.bench(|| black_box(&joint).pressure(black_box(press)));
}

#[divan::bench(sample_size = 256)]
fn lame_bare_f64(bencher: Bencher) {
    bencher.bench(|| black_box(&bare::JOINT).pressure(black_box(20e-6)));
}

#[divan::bench(sample_size = 256)]
fn lame_bare_f64_as_printed(bencher: Bencher) {
    bencher.bench(|| black_box(&bare::JOINT).pressure_as_printed(black_box(20e-6)));
}

#[divan::bench(sample_size = 256)]
fn stresses(bencher: Bencher) {
    let (joint, press) = (joint(), press());
    bencher.bench(|| black_box(&joint).stresses(black_box(press)));
}

#[divan::bench(sample_size = 256)]
fn stresses_bare_f64(bencher: Bencher) {
    bencher.bench(|| black_box(&bare::JOINT).stresses(black_box(20e-6)));
}
