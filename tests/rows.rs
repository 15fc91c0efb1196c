//! The rows of the tables: physically possible, found by every name, and the same when read from `data/` by a shop.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use framegauge::standard::*;
use framegauge::thread::{Hand, Side};
use framegauge::{ErrorKind, Grade};
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::Value;

/// What a shop's row may not carry over from ours.
const EVIDENCE: [&str; 7] = [
    "grade", "worth", "formula", "sources", "note", "dissent", "unknown",
];

fn bare(value: &Value) -> Value {
    match value {
        Value::Object(map) => map
            .iter()
            .filter(|(key, _)| !EVIDENCE.contains(&key.as_str()))
            .map(|(key, value)| (key.clone(), bare(value)))
            .collect(),
        Value::Array(items) => items.iter().map(bare).collect(),
        plain => plain.clone(),
    }
}

/// Our own data files, read as a shop would bring them, give the same values as the compiled tables, graded `Shop`.
fn same_by_either_road<R: Row + Serialize + DeserializeOwned + PartialEq>(file: &str) {
    let text = std::fs::read_to_string(format!("{}/data/{file}.toml", env!("CARGO_MANIFEST_DIR")))
        .unwrap();
    let table: toml::Table = text.parse().unwrap();
    let rows = table
        .get(R::FAMILY)
        .and_then(toml::Value::as_array)
        .unwrap_or_else(|| panic!("{file}: no {}", R::FAMILY));
    assert!(!rows.is_empty());
    for row in rows {
        let code = row.get("code").and_then(toml::Value::as_str).unwrap();
        let read: R = row
            .clone()
            .try_into()
            .unwrap_or_else(|e| panic!("{} {code}: {e}", R::FAMILY));
        let ours = find::<R>(code).unwrap();
        let (a, b) = (
            serde_json::to_value(&read).unwrap(),
            serde_json::to_value(ours).unwrap(),
        );
        assert_eq!(bare(&a), bare(&b), "{} {code}", R::FAMILY);
        read.walk("", &mut |field, stated| {
            if let Some(evidence) = stated.evidence() {
                assert_eq!(
                    evidence.grade(),
                    Grade::Shop,
                    "{code}.{field} must not keep the grade it claims"
                );
            }
        });
    }
}

#[test]
fn data_reads_the_same_by_either_road() {
    same_by_either_road::<Shell>("shells");
    same_by_either_road::<ShellWindow>("shells");
    same_by_either_road::<BoreWindow>("shells");
    same_by_either_road::<PressPart>("shells");
    same_by_either_road::<SpacerRule>("shells");
    same_by_either_road::<HeadSeat>("head_tube");
    same_by_either_road::<HeadsetBearing>("head_tube");
    same_by_either_road::<FacingRule>("head_tube");
    same_by_either_road::<FitWindow>("head_tube");
    same_by_either_road::<CrownSeat>("crown");
    same_by_either_road::<Steerer>("crown");
    same_by_either_road::<SteererRule>("crown");
    same_by_either_road::<Seatpost>("seatposts");
    same_by_either_road::<SeatTube>("seatposts");
    same_by_either_road::<SeatClamp>("seatposts");
    same_by_either_road::<InsertionRule>("seatposts");
    same_by_either_road::<Axle>("axles");
    same_by_either_road::<ThreadUse>("axles");
    same_by_either_road::<TorqueFigure>("axles");
    same_by_either_road::<BrakeMount>("brakes");
    same_by_either_road::<BrakeFigure>("brakes");
    same_by_either_road::<Rotor>("brakes");
    same_by_either_road::<FlatMountBolt>("brakes");
    same_by_either_road::<Bearing>("bearings");
    same_by_either_road::<Material>("materials");
    same_by_either_road::<Friction>("materials");
    same_by_either_road::<CuttingRule>("cutting");
}

/// Physics that no transcription may break.
#[test]
fn rows_are_possible() {
    for shell in Shell::table() {
        let at = |f: &Option<framegauge::Figure>| f.as_ref().and_then(framegauge::Figure::nominal);
        if let (Some(minor), Some(pitch)) = (at(&shell.minor_diameter), at(&shell.pitch_diameter)) {
            assert!(minor < pitch, "{}", shell.code);
            let major = shell
                .thread
                .as_ref()
                .and_then(|t| t.value())
                .map(framegauge::thread::ThreadSize::major);
            assert!(major.is_none_or(|major| pitch < major), "{}", shell.code);
        }
        for half in shell.half_widths.iter() {
            if let (Some(drive), Some(other)) = (half.drive.nominal(), half.non_drive.nominal()) {
                // 34 + 42.75 is sold as 77: names are rounded by up to a quarter of a millimetre.
                assert!(
                    (drive + other - half.width).abs() <= framegauge::mm(0.25),
                    "{}",
                    shell.code
                );
            }
        }
    }
    for bearing in Bearing::table() {
        assert!(
            bearing.bore.nominal().unwrap() < bearing.outside.nominal().unwrap(),
            "{}",
            bearing.code
        );
    }
    for bearing in HeadsetBearing::table() {
        assert!(
            bearing.bore.nominal().unwrap() < bearing.outside.nominal().unwrap(),
            "{}",
            bearing.code
        );
    }
    for seat in HeadSeat::table() {
        let clear = seat
            .clear_below
            .as_ref()
            .and_then(framegauge::Figure::lower);
        if let (Some(clear), Some(bore)) = (clear, seat.bore.lower()) {
            assert!(clear < bore, "{}", seat.code);
        }
    }
    for material in Material::table() {
        let poisson = material
            .poisson
            .as_ref()
            .and_then(framegauge::Figure::nominal);
        assert!(
            poisson.is_none_or(|p| p.0 > 0.0 && p.0 < 0.5),
            "{}",
            material.code
        );
    }
}

/// Rule of the trade with its published exceptions: left-hand drive cups, right-hand on both sides for Italian and French.
/// Source: the shell table of several trade pages and the scope of DIN ISO 6696 (transcribed in `tests/published`).
#[test]
fn hands_by_side() {
    for (code, drive) in [
        ("bsc", Hand::Left),
        ("iso_6696", Hand::Left),
        ("raleigh_26", Hand::Left),
        ("italian", Hand::Right),
        ("french", Hand::Right),
    ] {
        let shell = find::<Shell>(code).unwrap();
        assert_eq!(shell.hand(Side::Drive), Some(drive), "{code}");
        assert_eq!(shell.hand(Side::NonDrive), Some(Hand::Right), "{code}");
    }
    // Swiss is disputed, and both voices are kept.
    let swiss = find::<Shell>("swiss").unwrap();
    assert_eq!(swiss.hand(Side::Drive), Some(Hand::Left));
    assert!(
        swiss
            .hand_fact(Side::Drive)
            .unwrap()
            .dissent()
            .iter()
            .any(|d| d.value == Hand::Right)
    );
}

#[test]
fn names_find_their_rows() {
    for shell in Shell::table() {
        assert_eq!(find::<Shell>(&shell.code).unwrap().code, shell.code);
        for alias in shell.aliases.iter() {
            assert_eq!(find::<Shell>(alias).unwrap().code, shell.code, "{alias}");
        }
    }
    let error = find::<HeadSeat>("EC43").unwrap_err();
    assert_eq!(error.kind(), ErrorKind::UnknownName);
    assert!(error.remedy().contains("EC44"));
    assert!(find::<Shell>(&"x".repeat(100_000)).is_err());
}

#[test]
fn a_shop_never_stands_in_front_of_us() {
    let row = |code: &str| {
        let text = format!(
            "[[seatpost]]\ncode = \"{code}\"\ndiameter = {{ nominal = \"27.3 mm\", grade = \"standard\", from = [\"our drawing @ title\"] }}\n"
        );
        toml::from_str::<ShopRows>(&text).unwrap()
    };
    assert!(row("27.3-ours").check().is_ok());
    let clash = row("27.2").check().unwrap_err();
    assert_eq!(
        (clash.kind(), clash.field()),
        (ErrorKind::NameTaken, "seatpost.27.2")
    );
    let mut twice = row("a");
    twice.seatpost.extend(row("A").seatpost);
    assert_eq!(twice.check().unwrap_err().kind(), ErrorKind::NameTaken);
    assert_eq!(row("a").seatpost[0].diameter.grade(), Some(Grade::Shop));
    for bad in [
        "[[seatpost]]\ncode = \"x\"\n",
        "[[seatpost]]\ncode = \"x\"\ndiameter = { nominal = \"27.3\" }\n",
        "[[seatpost]]\ncode = \"x\"\ndiameter = { nominal = \"27.3 mm\", lower = \"28 mm\" }\n",
        "[[seatpost]]\ncode = \"x\"\ncolour = \"red\"\ndiameter = { nominal = \"27.3 mm\" }\n",
        "[[saddle]]\ncode = \"x\"\n",
    ] {
        assert!(toml::from_str::<ShopRows>(bad).is_err(), "{bad}");
    }
    // What is unknown has no value, not even one limit of it or a part of a thread.
    let with = |field: &str| {
        let shell = format!("[[shell]]\ncode = \"x\"\nname = \"x\"\n{field}");
        toml::from_str::<ShopRows>(&shell).map_err(|e| e.to_string())
    };
    for value in [
        "nominal = \"42 mm\"",
        "lower = \"42 mm\"",
        "upper = \"42 mm\"",
    ] {
        let told = with(&format!("bore = {{ unknown = \"no drawing\", {value} }}")).unwrap_err();
        assert!(told.contains("either unknown or has"), "{value}: {told}");
    }
    for value in [
        "form = \"iso_metric\"",
        "major = \"35 mm\"",
        "pitch = \"1 mm\"",
    ] {
        let told = with(&format!("thread = {{ unknown = \"no drawing\", {value} }}")).unwrap_err();
        assert!(told.contains("either unknown or has"), "{value}: {told}");
    }
}

/// A row becomes the material of the press formulas: figures as `data/materials.toml` holds them, the lower of two limits, and
/// an error with the name of the figure where none is held.
#[test]
fn materials_go_into_the_formulas() {
    use framegauge::{gpa, mpa, per_kelvin};
    let alloy = find::<Material>("al_6061_t6").unwrap().for_fit().unwrap();
    assert_eq!(alloy.kind(), MaterialKind::Aluminium);
    assert_eq!(alloy.youngs_modulus(), gpa(68.9));
    assert_eq!(alloy.strength(), Some(mpa(276.0)));
    assert_eq!(alloy.expansion(), Some(per_kelvin(23.6e-6)));
    assert_eq!(alloy.grade(), Grade::Agreeing);
    let worked = find::<Material>("ti_3al_2_5v_cold_worked").unwrap();
    let worked = worked.for_fit().unwrap();
    assert_eq!(worked.youngs_modulus(), gpa(105.0));
    assert_eq!(worked.strength(), Some(mpa(724.0)));
    for row in Material::table() {
        let held = row.poisson.as_ref().and_then(|f| f.nominal()).is_some();
        match row.for_fit() {
            Ok(material) => {
                assert!(held, "{}", row.code);
                assert_eq!(material.kind(), row.kind);
            }
            Err(error) => {
                assert!(!held, "{}", row.code);
                assert_eq!(
                    (error.kind(), error.field()),
                    (ErrorKind::NotTabulated, "poisson")
                );
            }
        }
    }
}

/// `laminate` is read as `carbon`, by a sheet, a question and a shop's row alike; what is not listed is no material.
#[test]
fn words_for_materials() {
    for word in ["carbon", "laminate"] {
        let quoted = format!("\"{word}\"");
        assert_eq!(word.parse(), Ok(MaterialKind::Carbon));
        let read: MaterialKind = serde_json::from_str(&quoted).unwrap();
        assert_eq!(serde_json::to_string(&read).unwrap(), "\"carbon\"");
    }
    assert!("unknown".parse::<MaterialKind>().is_err());
}
