//! Every reader of text against random and bitten text: none panics, none gives a number that is not finite, and every
//! refusal names its field and a remedy. The seed is fixed; `FUZZ_TIMES=50` runs fifty times as many, on another seed.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use core::str::FromStr;

use framegauge::Error;
use framegauge::fit::{FitClass, FitDesignation, RingClass, SizeClass, ToleranceGrade};
use framegauge::identify::Observation;
use framegauge::measure::Reading;
use framegauge::quantity::{Pitch, parse_length, parse_toleranced};
use framegauge::standard::Place;
use framegauge::thread::{Designation, ThreadSize, ToleranceClass};

mod random;
use random::{Dice, times};

/// Texts for each reader in one run.
const TEXTS: u32 = 20_000;

/// What is written on drawings, tools and labels; each is good for one reader at least.
const SEEDS: [&str; 46] = [
    "27.2 mm",
    "27.2 mm +/- 0.05 mm",
    "27.2 +/- 0.05 mm",
    "33.9 mm by caliper_digital_inside",
    "41.96 +0.025/-0 mm",
    "1 mm to 2 mm",
    "at least 68 mm",
    "1 3/8 in",
    "1.370 in",
    "9/16 in",
    "24 tpi",
    "1 mm",
    "1.25",
    "M10x1-6H",
    "M5x0.8",
    "M35x1",
    "1.370 in x 24 tpi BSC LH",
    "1/2-20 UNF-2B",
    "9/16 in x 20 tpi LH",
    "3/8 x 26 tpi",
    "6g",
    "6H5H",
    "2B",
    "N7",
    "H7/p6",
    "42 H7/p6",
    "left",
    "right",
    "42 N7",
    "JS17",
    "js5",
    "ZC1",
    "IT7",
    "IT01",
    "P6",
    "normal",
    "shell",
    "crown_seat",
    "head_tube.lower",
    "boss.Down tube, 1 \u{130}",
    "seat_tube",
    "36 deg",
    "36 deg +/- 0.5 deg",
    "276 MPa",
    "bore",
    "",
];

const PIECES: [&str; 26] = [
    " ",
    "0",
    "-",
    "+",
    "+/-",
    ".",
    ",",
    "/",
    "x",
    "M",
    "mm",
    "in",
    "tpi",
    "µm",
    "1e400",
    "NaN",
    "inf",
    "99999999999999999999",
    "é",
    "🚲",
    "\u{0}",
    "\u{a0}",
    "LH",
    "''",
    "H",
    "to",
];

/// A seed with up to four pieces cut, doubled, put in or changed; now and then pure noise.
fn text(dice: &mut Dice) -> String {
    if dice.below(16) == 0 {
        let length = dice.below(24);
        return (0..length)
            .filter_map(|_| char::from_u32(u32::try_from(dice.below(0x3000)).unwrap()))
            .collect();
    }
    let mut chars: Vec<char> = SEEDS[dice.below(SEEDS.len())].chars().collect();
    for _ in 0..dice.below(5) {
        let at = dice.below(chars.len() + 1);
        let to = (at + dice.below(4)).min(chars.len());
        match dice.below(4) {
            0 => drop(chars.drain(at..to)),
            1 => {
                let again = chars[at..to].to_vec();
                drop(chars.splice(at..at, again));
            }
            2 => {
                let digit = char::from_digit(u32::try_from(dice.below(10)).unwrap(), 10);
                drop(chars.splice(at..(at + 1).min(chars.len()), digit));
            }
            _ => {
                let piece = PIECES[dice.below(PIECES.len())];
                drop(chars.splice(at..at, piece.chars()));
            }
        }
    }
    chars.into_iter().collect()
}

/// `read` is given every text; `sound` looks at what was accepted.
fn run<T>(seed: u8, read: impl Fn(&str) -> Result<T, Error>, sound: impl Fn(&T) -> bool) {
    let mut dice = Dice::new(seed);
    let (mut taken, mut refused) = (0_u32, 0_u32);
    for _ in 0..TEXTS * times() {
        let text = text(&mut dice);
        match read(&text) {
            Ok(value) => {
                taken += 1;
                assert!(sound(&value), "{text:?}");
            }
            Err(error) => {
                refused += 1;
                assert!(
                    !error.field().is_empty() && !error.remedy().is_empty(),
                    "{text:?}: {error:?}"
                );
            }
        }
    }
    // Both happen, or the run would show nothing.
    assert!(
        taken > 50 && refused > TEXTS / 4,
        "{taken} taken, {refused} refused"
    );
}

/// What was read prints as text that reads back to the same.
fn round<T: FromStr + ToString + PartialEq>(value: &T) -> bool {
    T::from_str(&value.to_string()).is_ok_and(|again| again == *value)
}

#[test]
fn lengths() {
    run(1, parse_length, |l| l.value.is_finite());
}

#[test]
fn lengths_with_tolerance() {
    run(2, parse_toleranced, |(l, _)| l.value.is_finite());
}

#[test]
fn pitches() {
    run(3, Pitch::from_str, round);
}

#[test]
fn readings() {
    run(4, Reading::from_str, |r| {
        r.value().value.is_finite() && r.expanded_uncertainty().value >= 0.0
    });
}

#[test]
fn threads() {
    run(5, Designation::from_str, round);
    run(6, ThreadSize::from_str, round);
    run(7, ToleranceClass::from_str, round);
}

#[test]
fn fits() {
    run(8, ToleranceGrade::from_str, round);
    run(9, FitClass::from_str, round);
    run(10, SizeClass::from_str, round);
    run(11, FitDesignation::from_str, round);
    run(12, RingClass::from_str, |_| true);
}

#[test]
fn places_and_observations() {
    run(13, Place::from_str, round);
    for key in [
        "bore",
        "width",
        "pitch",
        "hand_drive",
        "seat_angle",
        "circumference",
    ] {
        run(14, |text| Observation::read(key, text), |_| true);
    }
}
