//! Basic diameters.

use framegauge::thread::{BasicDiameters, ThreadForm, ThreadSize};
use framegauge::{Pitch, inch, to_mm};

use super::{cell, published};

/// Eleven BSC and nine Whitworth core diameters, printed to three or four places.
#[test]
fn core_diameters() {
    let rows = published("core_diameters.csv");
    assert_eq!(rows.len(), 20);
    for row in rows {
        let form = match row["form"].as_str() {
            "BSC" => ThreadForm::Bsc,
            _ => ThreadForm::Whitworth,
        };
        let pitch = Pitch::tpi(row["tpi"].parse().unwrap()).unwrap();
        let size = ThreadSize::new(form, inch(cell(&row, "major_in").unwrap()), pitch).unwrap();
        let core = to_mm(BasicDiameters::of(&size).unwrap().minor) / 25.4;
        let printed = cell(&row, "core_in").unwrap();
        let places = row["core_in"].split('.').next_back().unwrap().len();
        let half_digit = 0.5 * 10f64.powi(-i32::try_from(places).unwrap());
        assert!(
            (core - printed).abs() <= half_digit + 1e-9,
            "{size}: {core} against {printed}"
        );
    }
}

/// JIS B 0225:1960, general table: major, pitch and minor diameter of external cycle threads, to 0.01 mm.
#[test]
fn jis_cycle_rows() {
    for (size, major, pitch, minor) in [
        ("9/16 in x 20 tpi BSC", 14.29, 13.61, 12.93),
        ("1/2 in x 20 tpi BSC", 12.70, 12.02, 11.34),
        ("5/16 in x 26 tpi BSC", 7.94, 7.42, 6.90),
        ("3/8 in x 26 tpi BSC", 9.53, 9.01, 8.49),
        ("31/32 in x 30 tpi BSC", 24.61, 24.16, 23.71),
        ("3/4 in x 30 tpi BSC", 19.05, 18.60, 18.15),
        ("11/16 in x 24 tpi BSC", 17.46, 16.90, 16.34),
        ("5/8 in x 20 tpi BSC", 15.88, 15.20, 14.52),
    ] {
        let basic = BasicDiameters::of(&size.parse().unwrap()).unwrap();
        for (ours, printed) in [
            (basic.major, major),
            (basic.pitch_diameter, pitch),
            (basic.minor, minor),
        ] {
            assert!(
                (to_mm(ours) - printed).abs() < 0.0101,
                "{size}: {ours:?} {printed}"
            );
        }
    }
}

/// The pitch diameters that the two names of the bottom-bracket thread share, and what the wrong relation would give.
#[test]
fn forms_do_not_mix() {
    let pitch = |text: &str| {
        to_mm(
            BasicDiameters::of(&text.parse().unwrap())
                .unwrap()
                .pitch_diameter,
        )
    };
    assert!((pitch("1.370 in x 24 tpi BSC") - 34.234).abs() < 5e-4);
    assert!((pitch("1.375 in x 24 tpi ISO") - 34.238).abs() < 5e-4);
    assert!((pitch("1.370 in x 24 tpi ISO") - 34.111).abs() < 5e-4);
    let apart = pitch("9/16 in x 20 tpi BSC") - pitch("9/16 in x 20 tpi UN");
    assert!((apart - 0.148).abs() < 1e-3, "{apart}");
}
