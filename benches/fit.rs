//! Speed of the fit room, with bare-f64 twins in the same run. Budgets: limits of a class 10 ns, Lamé 5 ns.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use divan::counter::ItemsCount;
use divan::{Bencher, black_box};
use framegauge::fit::{
    FitClass, HoleMember, JointShape, Material, MaterialKind, Press, PressJoint, RingClass,
    ShaftMember, fit_between, limit_deviations,
};
use framegauge::measure::DecisionRule;
use framegauge::{Interference, Ratio, gpa, mm};

fn main() {
    divan::main();
}

/// A hundred different questions in a row, so that no branch is learnt; divide by a hundred.
#[divan::bench]
fn limits_of_100_classes(bencher: Bencher) {
    let names = [
        "N7", "H8", "js6", "k5", "P7", "h6", "zc10", "K6", "F7", "g6",
    ];
    let questions: Vec<_> = (0..100)
        .map(|i| {
            let class: FitClass = names[i * 7 % 10].parse().unwrap();
            (mm(4.0 + i as f64 * 1.1), class)
        })
        .collect();
    bencher.counter(ItemsCount::new(100_usize)).bench(|| {
        let sum = |sum, (size, class): &(_, _)| {
            sum + limit_deviations(*size, *class).map_or(0.0, |d| d.upper_um())
        };
        black_box(&questions).iter().fold(0.0, sum)
    });
}

#[divan::bench]
fn read_a_class(bencher: Bencher) {
    bencher.bench(|| black_box("js6").parse::<FitClass>());
}

#[divan::bench]
fn fit_of_two_members(bencher: Bencher) {
    let hole = HoleMember::of_class(mm(42.0), "N7".parse().unwrap()).unwrap();
    let ring = ShaftMember::of_ring(mm(42.0), RingClass::Normal).unwrap();
    bencher.bench(|| fit_between(black_box(&hole), black_box(&ring), DecisionRule::default()));
}

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

#[divan::bench]
fn lame(bencher: Bencher) {
    let joint = joint();
    let press = Press::new(Interference::new(mm(0.02)).unwrap()).unwrap();
    bencher.bench(|| black_box(&joint).pressure(black_box(press)));
}

/// The same formula on bare metres and pascals.
struct Bare {
    d: f64,
    di: f64,
    outside: f64,
    hub: (f64, f64),
    shaft: (f64, f64),
}

impl Bare {
    fn pressure(&self, delta: f64) -> f64 {
        let (dd, ii, oo) = (
            self.d * self.d,
            self.di * self.di,
            self.outside * self.outside,
        );
        let (wall_h, wall_s) = (oo - dd, dd - ii);
        let hub_term = oo + dd + self.hub.1 * wall_h;
        let shaft_term = dd + ii - self.shaft.1 * wall_s;
        let (stiff_h, stiff_s) = (wall_h * self.hub.0, wall_s * self.shaft.0);
        delta * stiff_h * stiff_s / (self.d * (hub_term * stiff_s + shaft_term * stiff_h))
    }
}

const BARE: Bare = Bare {
    d: 0.042,
    di: 0.0396,
    outside: 0.046,
    hub: (68.9e9, 0.33),
    shaft: (206e9, 0.3),
};

#[divan::bench]
fn lame_bare_f64(bencher: Bencher) {
    bencher.bench(|| black_box(&BARE).pressure(black_box(20e-6)));
}

/// The formula as textbooks print it, six divisions.
#[divan::bench]
fn lame_bare_f64_as_printed(bencher: Bencher) {
    bencher.bench(|| {
        let (joint, delta) = (black_box(&BARE), black_box(20e-6));
        let (d, di, outside) = (joint.d, joint.di, joint.outside);
        let ch = (outside * outside + d * d) / (outside * outside - d * d);
        let cs = (d * d + di * di) / (d * d - di * di);
        delta / d / ((ch + joint.hub.1) / joint.hub.0 + (cs - joint.shaft.1) / joint.shaft.0)
    });
}

#[divan::bench]
fn stresses(bencher: Bencher) {
    let joint = joint();
    let press = Press::new(Interference::new(mm(0.02)).unwrap()).unwrap();
    bencher.bench(|| black_box(&joint).stresses(black_box(press)));
}
