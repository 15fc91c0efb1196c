//! A guard against change, no evidence: how quantities are read, refused and printed, as it was read through once and found
//! in order. What they must be is said by `ground`.
//!
//! `UPDATE_PINNED=1 cargo test --test quantity_guard` rewrites the file: read the difference before committing it.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

#[path = "../committed/mod.rs"]
mod committed;

use framegauge::*;

fn refusal(error: &Error) -> String {
    assert!(
        !error.problem().is_empty() && !error.remedy().is_empty(),
        "{error}"
    );
    format!(
        "REFUSED {} / {} / {}",
        error.kind(),
        error.field(),
        error.value()
    )
}

fn said<T>(text: &str, found: Result<T, Error>, show: impl Fn(T) -> String) -> String {
    format!("`{text}`: {}\n", found.map_or_else(|e| refusal(&e), show))
}

fn six(length: Length) -> String {
    format!("{:.6}", in_mm(length))
}

#[rustfmt::skip]
const LENGTHS: &[&str] = &[
    "34.8 mm", "34.8mm", "  34.8  mm  ", "27,2 mm", "+27.2 mm", "-0.05 mm", "−0.05 mm", ".5 mm", "5. mm", "11 um", "11 µm", "11 μm", "3.5 cm", "0.5 m",
    "1.370 in", "1,370 in", "1.370 inch", "1.370\"", "1.370″", "9/16 in", "9/16\"", "1 3/8 in", "1-3/8 in", "1 - 3/8 in", "0/16 in", "3/1024 in", "120 1/2 in",
    "1000000/1000 in", "34,798 mm", "0,025 mm", "2,999 mm", "3,000 mm", "3,001 mm", "3,0001 mm", "12,5 um", "3,000 um", "30,000 um", "2,500 m", "3,500 m", "1,200 cm", "0,119 in",
    "1,058 mm", "100,5 mm", ",125 mm", "119,999 in", "120,001 in", "120,000 in",
    "", " ", "27.2", "mm", "27.2 furlong", "27.2 MM", "27.2.1 mm", "27,2,1 mm", "1.370,5 mm", "1,370.5 mm", "--3 mm", "+-3 mm", "3- mm", "1e3 mm", "NaN mm", "-inf mm",
    "Infinity mm", "abc", "a mm", ". mm", ", mm", "- mm", "3/0 in", "3/1025 in", "1000001/1000 in", "121 1/2 in", "1 3/x in", "x 3/8 in", "x/8 in", "1.5/8 in", "9/16 mm",
    "1/2/3 in", "1  3/8 in", "-9/16 in",
];

#[rustfmt::skip]
const TOLERANCED: &[&str] = &[
    "33.9 mm +/- 0.05 mm", "33.9 +/- 0.05 mm", "33.9 ± 0.05 mm", "33.9 +- 50 um", "33.9 mm +- 50 um", "500 um ± 50 um", "41.96 0/-25 um", "1.370 in ± 0.05 mm", "33,9 ± 0,05 mm", "33.9 ± 0 mm", "41.96 0/-0.025 mm",
    "41.96 mm 0/-0.025 mm", "41.96 +0.1/-0.1 mm", "41.96 +0.1 / −0.1 mm", "41.96 -0.02/-0.05 mm", "1.370 in +0.1/0 mm", "27.2 mm", "9/16 in", "1 3/8 in", "41.96 0/0 mm",
    "33.9 +/- -0.05 mm", "33.9 +/- 0.05", "33.9 ± mm", "± 0.05 mm", "41.96 -0.1/+0.1 mm", "41.96 0/-0.025", "41.96 0.1/x mm", "x 0/-0.1 mm", "41.96 +x/-0.1 mm", "27.2",
];

#[rustfmt::skip]
const PITCHES: &[&str] = &[
    "24 tpi", "24tpi", "24 TPI", " 24 tpi ", "4 tpi", "127 tpi", "1.0 mm", "1,0 mm", "0.2 mm", "8 mm", "1/24 in", "3 tpi", "128 tpi", "0 tpi", "70000 tpi", "-24 tpi",
    "24.5 tpi", "tpi", "0.199 mm", "8.001 mm", "1", "x mm",
];

const NUMBERS: &[&str] = &[
    "27,2", "-0.05", "0", "-0", "007", "1,058", "0,058", "1,0580", "12", "", "+", "1 2", "1e5",
    "nan", " inf", "- 5", "5-",
];

fn length_of_tests(text: &mut String) {
    text.push_str("\n== lengths\n");
    let just = format!("{}1 mm", "0".repeat(60));
    let over = format!("{}1 mm", "0".repeat(61));
    for &t in LENGTHS.iter().chain(&[just.as_str(), over.as_str()]) {
        *text += &said(t, parse_length(t), six);
    }
    text.push_str("\n== lengths with deviations: nominal, upper, lower\n");
    for &t in TOLERANCED {
        *text += &said(t, parse_toleranced(t), |(nominal, found)| match found {
            Some(t) => {
                assert_eq!(settled_mm(t.nominal), settled_mm(nominal));
                format!("{} {} {}", six(nominal), six(t.upper), six(t.lower))
            }
            None => format!("{} alone", six(nominal)),
        });
    }
    text.push_str("\n== pitches\n");
    for &t in PITCHES {
        *text += &said(t, t.parse::<Pitch>(), |p| {
            format!("{p} = {} {:?}", six(p.length()), p.threads_per_inch())
        });
    }
    text.push_str("\n== numbers\n");
    for &t in NUMBERS {
        *text += &said(t, decimal(t), |v| format!("{v:?}"));
    }
}

fn one<Q: Printed>(text: &mut String, texts: &[&str]) {
    *text += &format!("\n== {} ({})\n", Q::UNIT, Q::SUFFIX);
    for &t in texts {
        *text += &said(t, Q::parse(t), |q| format!("{:?}", q.in_unit()));
    }
}

#[test]
fn quantities() {
    let mut text =
        String::from("# A guard against change, no evidence. Rewritten by UPDATE_PINNED=1.\n");
    length_of_tests(&mut text);
    one::<Angle>(
        &mut text,
        &[
            "36 deg",
            "36°",
            "45,5 deg",
            "0 deg",
            "-1.5 deg",
            "0.0031 deg",
            "36",
            "36 rad",
            "x deg",
        ],
    );
    one::<Torque>(
        &mut text,
        &["35 N m", "35 Nm", "35 N·m", "0.7 N m", "35", "35 kg"],
    );
    one::<Pressure>(
        &mut text,
        &[
            "70 MPa",
            "70.3 GPa",
            "70000 N/mm2",
            "0.15 MPa",
            "70",
            "70 Pa",
        ],
    );
    one::<Expansion>(
        &mut text,
        &[
            "23.1 1e-6/K",
            "-0.7 1e-6/K",
            "0.0123456 1e-6/K",
            "23",
            "23 /K",
        ],
    );
    one::<Ratio>(
        &mut text,
        &[
            "2.5",
            "0,33",
            "0.123456789012345",
            "1234.5678",
            "0",
            "x",
            "2.5 mm",
        ],
    );
    one::<Length>(&mut text, &["1.370 in", "0.1 um", "27.2"]);
    text.push_str("\n== printed with 0 to 7 places, in mm and in inches\n");
    for value in [
        14.2875,
        -0.0004,
        0.0005,
        -14.2875,
        2.5,
        34.798,
        999.999_999_6,
        f64::NAN,
    ] {
        for places in 0..=7 {
            text += &format!("{:.places$} ", in_mm(mm(value)));
        }
        text += &format!(
            "{} | {:.2} {}\n",
            in_mm(mm(value)),
            in_inches(mm(value)),
            in_inches(mm(value))
        );
    }
    text.push_str(
        "\n== units: metres, square metres, pascals, newtons, kelvins; whole nanometres\n",
    );
    text += &format!(
        "{:e} {:e} {:e} {:e} {:e} {:e} {:e} {:e} {:e}\n",
        mm(3.7).value,
        um(3.7).value,
        deg(3.7).value,
        mpa(3.7).value,
        gpa(3.7).value,
        newton(3.7).value,
        newton_metre(3.7).value,
        inch(3.7).value,
        inch_fraction(37, 64).value
    );
    for value in [3.7, -3.7, 1e-7, 4.9e-7, 5.1e-7, 8.9e9, 9.1e9, f64::INFINITY] {
        text += &format!(
            "{value:e} mm: {:?} {:?} {:e}\n",
            nanometres(mm(value)),
            settled_mm(mm(value)),
            to_mm(mm(value))
        );
    }
    text.push_str("\n== roles at their limits\n");
    for value in [
        f64::NAN,
        f64::NEG_INFINITY,
        -0.001,
        0.0,
        0.001,
        1000.0,
        1000.001,
    ] {
        text += &said(
            &format!("bore {value}"),
            BoreDiameter::new(mm(value)),
            |v| v.to_string(),
        );
        text += &said(
            &format!("clearance {value}"),
            Clearance::new(mm(value)),
            |v| format!("{v} {}", v.as_interference()),
        );
    }
    let (bore, shaft) = (
        BoreDiameter::new(mm(44.031)).unwrap(),
        ShaftDiameter::new(mm(44.052)).unwrap(),
    );
    text += &format!(
        "{bore} {shaft} {} {} {}\n",
        Clearance::between(bore, shaft),
        Interference::between(bore, shaft),
        Interference::between(bore, shaft).as_clearance()
    );
    committed::same_as_committed("quantity_guard/quantities.txt", &text);
}
