//! How long an identification takes, and how that grows with the number of readings. Aim: among all shells, from three
//! readings, under 5 microseconds.
//!
//! `cargo bench --bench identify`. One reading alone leaves several shells, so what to measure next is weighed too.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use divan::{Bencher, black_box};
use framegauge::identify::{Feature, Observation, Options, identify};
use framegauge::mm;
use framegauge::standard::Place;
use framegauge::thread::{Hand, Side};

fn main() {
    divan::main();
}

fn run(bencher: Bencher, place: Place, seen: &[Observation]) {
    let options = Options::default();
    bencher.bench(|| identify(black_box(place.clone()), black_box(seen), &options));
}

fn read(key: &str, value: &str) -> Observation {
    Observation::read(key, value).expect("a bench reading")
}

/// One shell, read once, twice, ... (invented readings of an asymmetric press shell).
const READINGS: [(&str, &str); 4] = [
    ("bore", "46.0 +/- 0.05 mm"),
    ("width", "79.0 +/- 0.1 mm"),
    ("half_width_drive", "34.0 +/- 0.6 mm"),
    ("half_width_non_drive", "45.0 +/- 0.6 mm"),
];

#[divan::bench(args = [1, 2, 3, 4], sample_size = 8)]
fn shell_by_readings(bencher: Bencher, count: usize) {
    let seen: Vec<Observation> = READINGS[..count]
        .iter()
        .map(|(key, value)| read(key, value))
        .collect();
    let left = identify(Place::Shell, &seen, &Options::default())
        .expect("an answer")
        .outcome
        .left()
        .len();
    assert!(if count == 1 { left > 1 } else { left == 1 }, "{left} left");
    run(bencher, Place::Shell, &seen);
}

/// Pitch, minor diameter and a hand: two names of one thread are left.
#[divan::bench(sample_size = 8)]
fn shell_from_a_thread(bencher: Bencher) {
    run(
        bencher,
        Place::Shell,
        &[
            read("pitch", "24 tpi"),
            read("minor_diameter", "33.8 +/- 0.05 mm"),
            Observation::hand(Side::Drive, Hand::Left),
        ],
    );
}

/// Bore and width by one caliper, whose bias is averaged over.
#[divan::bench(sample_size = 8)]
fn shell_with_one_caliper(bencher: Bencher) {
    let by =
        |feature, size, tool| Observation::with(feature, mm(size), tool).expect("a bench reading");
    run(
        bencher,
        Place::Shell,
        &[
            by(Feature::Bore, 46.0, "caliper_digital_inside"),
            by(Feature::Width, 79.0, "caliper_digital_outside"),
            read("half_width_drive", "34.0 +/- 0.6 mm"),
        ],
    );
}

/// A caliper reading between two seat-tube sizes.
#[divan::bench(sample_size = 8)]
fn seat_tube_between_sizes(bencher: Bencher) {
    run(
        bencher,
        Place::SeatTube,
        &[read("bore", "27.1 +/- 0.052 mm")],
    );
}

/// Any thread of the tables by crests and pitch.
#[divan::bench(sample_size = 8)]
fn any_thread(bencher: Bencher) {
    run(
        bencher,
        Place::Thread,
        &[
            read("crest_diameter", "9.9 +/- 0.04 mm"),
            read("pitch", "1 mm"),
        ],
    );
}
