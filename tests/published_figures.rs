//! Every figure of the tables against a second transcription, made from the sources by another hand and kept in
//! `tests/published/families.csv`. A figure that is not in it fails, and so does one that differs.
//!
//! Where the two hands read differently, the note in `read_in` of the second transcription says what was settled.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use std::collections::{BTreeMap, BTreeSet};

use framegauge::standard::*;
use framegauge::thread::ThreadSize;
use framegauge::{Angle, Expansion, Length, Pressure, Printed, Ratio, Torque};
use serde_json::Value;

type Key = (String, String, String, String);

/// What a cell says, in units that can be compared.
#[derive(Debug, Clone, PartialEq)]
enum Cell {
    Span([Option<f64>; 3]),
    Word(String),
}

fn table<R: Row + serde::Serialize>(out: &mut BTreeMap<Key, Cell>) {
    for row in R::table() {
        let json = serde_json::to_value(row).unwrap();
        for (field, value) in json.as_object().unwrap() {
            match value {
                Value::Array(items) => {
                    for (index, item) in items.iter().enumerate() {
                        if let Some(width) = item.get("width_mm") {
                            let width = format!("{} mm", width.as_f64().unwrap());
                            for side in ["drive", "non_drive"] {
                                put(out, R::FAMILY, row.code(), side, &width, &item[side]);
                            }
                        } else {
                            put(out, R::FAMILY, row.code(), field, &index.to_string(), item);
                        }
                    }
                }
                single => put(out, R::FAMILY, row.code(), field, "", single),
            }
        }
    }
}

fn put(
    out: &mut BTreeMap<Key, Cell>,
    family: &str,
    code: &str,
    field: &str,
    item: &str,
    value: &Value,
) {
    for (number, voice) in value["dissent"]
        .as_array()
        .into_iter()
        .flatten()
        .enumerate()
    {
        put(out, family, code, field, &format!("{item}#{number}"), voice);
    }
    let Some(object) = value.as_object().filter(|o| o.contains_key("grade")) else {
        return;
    };
    let key = (
        family.to_owned(),
        code.to_owned(),
        field.to_owned(),
        item.to_owned(),
    );
    let cell = if let Some(word) = object.get("value") {
        Cell::Word(word.as_str().unwrap().to_owned())
    } else {
        let part = |name: &str| {
            object
                .iter()
                .find(|(k, _)| k.starts_with(name))
                .and_then(|(_, v)| v.as_f64())
        };
        Cell::Span([part("nominal_"), part("lower_"), part("upper_")])
    };
    out.insert(key, cell);
}

fn ours() -> BTreeMap<Key, Cell> {
    let mut out = BTreeMap::new();
    table::<Shell>(&mut out);
    table::<ShellWindow>(&mut out);
    table::<BoreWindow>(&mut out);
    table::<PressPart>(&mut out);
    table::<SpacerRule>(&mut out);
    table::<HeadSeat>(&mut out);
    table::<HeadsetBearing>(&mut out);
    table::<FacingRule>(&mut out);
    table::<FitWindow>(&mut out);
    table::<CrownSeat>(&mut out);
    table::<Steerer>(&mut out);
    table::<SteererRule>(&mut out);
    table::<Seatpost>(&mut out);
    table::<SeatTube>(&mut out);
    table::<SeatClamp>(&mut out);
    table::<InsertionRule>(&mut out);
    table::<Axle>(&mut out);
    table::<ThreadUse>(&mut out);
    table::<TorqueFigure>(&mut out);
    table::<BrakeMount>(&mut out);
    table::<BrakeFigure>(&mut out);
    table::<Rotor>(&mut out);
    table::<FlatMountBolt>(&mut out);
    table::<Bearing>(&mut out);
    table::<Material>(&mut out);
    table::<Friction>(&mut out);
    table::<CuttingRule>(&mut out);
    for tool in framegauge::measure::instruments() {
        let json = serde_json::to_value(tool).unwrap();
        for (index, limit) in json["limits"].as_array().unwrap().iter().enumerate() {
            put(
                &mut out,
                "instrument",
                &tool.code,
                "limits",
                &index.to_string(),
                &limit["error"],
            );
        }
        for field in ["resolution", "repeatability"] {
            put(&mut out, "instrument", &tool.code, field, "", &json[field]);
        }
    }
    out
}

fn number(text: &str) -> Option<f64> {
    fn read<Q: Printed>(text: &str) -> Option<f64> {
        Q::parse(text).ok().map(Printed::in_unit)
    }
    read::<Length>(text)
        .or_else(|| read::<Angle>(text))
        .or_else(|| read::<Torque>(text))
        .or_else(|| read::<Pressure>(text))
        .or_else(|| read::<Expansion>(text))
        .or_else(|| read::<Ratio>(text))
}

fn theirs() -> BTreeMap<Key, Cell> {
    let mut out = BTreeMap::new();
    read("families.csv", &mut out);
    read("dissent.csv", &mut out);
    out
}

/// Reads a second transcription. The file of dissents has a column more: their number in the list.
fn read(file: &str, out: &mut BTreeMap<Key, Cell>) {
    let path = format!("{}/tests/published/{file}", env!("CARGO_MANIFEST_DIR"));
    let mut reader = csv::Reader::from_path(path).unwrap();
    let headers = reader.headers().unwrap().clone();
    let column = |name: &str| headers.iter().position(|h| h == name);
    for record in reader.records() {
        let r = record.unwrap();
        let cell = |name: &str| column(name).map_or("", |i| &r[i]);
        let item = match column("number") {
            Some(number) => format!("{}#{}", cell("item"), &r[number]),
            None => cell("item").to_owned(),
        };
        let key = (
            cell("family").to_owned(),
            cell("code").to_owned(),
            cell("field").to_owned(),
            item,
        );
        assert!(
            !cell("read_in").is_empty(),
            "{key:?}: it does not say where the figure was read"
        );
        let span = ["nominal", "lower", "upper"].map(cell);
        let value = if cell("value").is_empty() {
            Cell::Span(span.map(|t| {
                (!t.is_empty()).then(|| number(t).unwrap_or_else(|| panic!("{key:?}: `{t}`")))
            }))
        } else if let [form, major, pitch] = cell("value").split('|').collect::<Vec<_>>()[..] {
            let size = ThreadSize::new(
                form.parse().unwrap(),
                framegauge::parse_length(major).unwrap(),
                pitch.parse().unwrap_or_else(|e| panic!("{key:?}: {e}")),
            );
            Cell::Word(size.unwrap_or_else(|e| panic!("{key:?}: {e}")).to_string())
        } else {
            Cell::Word(cell("value").to_owned())
        };
        out.insert(key, value);
    }
}

#[test]
fn two_hands_read_the_same() {
    let (ours, theirs) = (ours(), theirs());
    let keys: BTreeSet<&Key> = ours.keys().chain(theirs.keys()).collect();
    let mut differ = Vec::new();
    for key in keys {
        if ours.get(key) != theirs.get(key) {
            differ.push(format!(
                "{key:?}\n   tables {:?}\n   second {:?}",
                ours.get(key),
                theirs.get(key)
            ));
        }
    }
    assert!(
        differ.is_empty(),
        "{} of {} differ:\n{}",
        differ.len(),
        ours.len(),
        differ.join("\n")
    );
    assert!(
        ours.len() > 1000,
        "only {} figures were compared",
        ours.len()
    );
}
