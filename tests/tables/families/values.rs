//! One value of a row: read as it is printed, checked, and written as Rust.

use super::*;

pub(super) fn as_text<'a>(value: Option<&'a Value>, at: &At, checks: &mut Checks) -> &'a str {
    match value {
        None => "",
        Some(value) => value.as_str().unwrap_or_else(|| {
            checks.problem(at, "not a text");
            ""
        }),
    }
}

pub(super) fn length(printed: &str, at: &At, checks: &mut Checks) -> String {
    rust::quantity(Unit::Length, printed).unwrap_or_else(|| {
        checks.problem(at, format!("`{printed}` is no length"));
        String::new()
    })
}

const EVIDENCE_KEYS: [&str; 6] = ["grade", "from", "note", "formula", "basis", "dissent"];

pub(super) fn figure_type(unit: Unit) -> &'static str {
    match unit {
        Unit::Length => "Figure<Length>",
        Unit::Angle => "Figure<Angle>",
        Unit::Torque => "Figure<Torque>",
        Unit::Pressure => "Figure<Pressure>",
        Unit::Ratio => "Figure<Ratio>",
        Unit::Expansion => "Figure<Expansion>",
    }
}

pub(super) fn only(value: &Value, allowed: &[&str], at: &At, checks: &mut Checks) {
    for key in value.as_table().into_iter().flat_map(|t| t.keys()) {
        if !allowed.contains(&key.as_str()) && !EVIDENCE_KEYS.contains(&key.as_str()) {
            checks.problem(at, format!("no such key `{key}`"));
        }
    }
}

/// Renders a span, or says what is wrong with it.
pub(super) fn span(unit: Unit, value: &Value, at: &At, checks: &mut Checks) -> String {
    only(value, &["nominal", "lower", "upper", "unknown"], at, checks);
    let mut parts = Vec::new();
    let mut read: Vec<Option<f64>> = Vec::new();
    for key in ["nominal", "lower", "upper"] {
        match value.get(key) {
            None => {
                parts.push(format!("{key}: None"));
                read.push(None);
            }
            Some(printed) => {
                let printed = as_text(Some(printed), at, checks);
                match (rust::quantity(unit, printed), number(unit, printed)) {
                    (Some(expression), Some(number)) => {
                        parts.push(format!("{key}: Some({expression})"));
                        read.push(Some(number));
                    }
                    _ => checks.problem(
                        at,
                        format!("`{printed}` cannot be read in the unit of this field"),
                    ),
                }
            }
        }
    }
    if let [nominal, lower, upper] = read[..]
        && let Err(error) = Span::new(nominal.map(Ratio), lower.map(Ratio), upper.map(Ratio))
    {
        checks.problem(at, error);
    }
    format!("Span {{ {} }}", parts.join(", "))
}

pub(super) fn number(unit: Unit, printed: &str) -> Option<f64> {
    use framegauge::{Angle, Expansion, Length, Pressure, Torque};
    fn read<Q: Printed>(printed: &str) -> Option<f64> {
        Q::parse(printed).ok().map(Printed::in_unit)
    }
    match unit {
        Unit::Length => read::<Length>(printed),
        Unit::Angle => read::<Angle>(printed),
        Unit::Torque => read::<Torque>(printed),
        Unit::Pressure => read::<Pressure>(printed),
        Unit::Ratio => read::<Ratio>(printed),
        Unit::Expansion => read::<Expansion>(printed),
    }
}

pub(super) fn figure(
    unit: Unit,
    value: &Value,
    at: &At,
    hoist: &mut Hoist,
    checks: &mut Checks,
) -> String {
    let quantity = figure_type(unit)
        .trim_start_matches("Figure<")
        .trim_end_matches('>');
    stated(
        "Figure",
        &format!("Span<{quantity}>"),
        &|v, at, checks| span(unit, v, at, checks),
        value,
        at,
        hoist,
        checks,
    )
}

type Reader<'a> = &'a dyn Fn(&Value, &At, &mut Checks) -> Option<String>;

pub(super) fn fact(
    kind: &str,
    read: Reader<'_>,
    value: &Value,
    at: &At,
    hoist: &mut Hoist,
    checks: &mut Checks,
) -> String {
    let reader = |v: &Value, at: &At, checks: &mut Checks| {
        only(
            v,
            &["value", "unknown", "form", "major", "pitch"],
            at,
            checks,
        );
        read(v, at, checks).unwrap_or_default()
    };
    stated("Fact", kind, &reader, value, at, hoist, checks)
}

/// A known value with its evidence and dissent, or the reason why it is unknown.
pub(super) fn stated(
    outer: &str,
    kind: &str,
    read: &dyn Fn(&Value, &At, &mut Checks) -> String,
    value: &Value,
    at: &At,
    hoist: &mut Hoist,
    checks: &mut Checks,
) -> String {
    let voices: Vec<String> = value
        .get("dissent")
        .and_then(Value::as_array)
        .into_iter()
        .flatten()
        .map(|voice| {
            let at = At {
                field: format!("{}.dissent", at.field),
                ..at.clone()
            };
            format!(
                "Dissent {{ value: {}, evidence: {} }}",
                read(voice, &at, checks),
                evidence(voice, &at, hoist, checks)
            )
        })
        .collect();
    let dissent = if voices.is_empty() {
        "&[]".to_owned()
    } else {
        format!("&{}", hoist.list(&format!("Dissent<{kind}>"), &voices))
    };
    if let Some(reason) = value.get("unknown") {
        let reason = as_text(Some(reason), at, checks);
        if reason.is_empty() {
            checks.problem(at, "unknown without a reason");
        }
        return format!("{outer}::unknown_in_table({reason:?}, {dissent})");
    }
    format!(
        "{outer}::from_table({}, {}, {dissent})",
        read(value, at, checks),
        evidence(value, at, hoist, checks)
    )
}

pub(super) fn thread(value: &Value, at: &At, checks: &mut Checks) -> Option<String> {
    let part = |key: &str| value.get(key).and_then(Value::as_str).unwrap_or_default();
    let (form, major, pitch) = (part("form"), part("major"), part("pitch"));
    let sound = form.parse().ok().and_then(|form| {
        framegauge::thread::ThreadSize::new(
            form,
            framegauge::parse_length(major).ok()?,
            pitch.parse().ok()?,
        )
        .ok()
    });
    if sound.is_none() {
        checks.problem(at, format!("`{form}` `{major}` `{pitch}` is no thread"));
        return None;
    }
    Some(format!(
        "ThreadSize::from_table({}, {}, {})",
        rust::word("ThreadForm", form),
        rust::quantity(Unit::Length, major)?,
        rust::pitch(pitch)?
    ))
}

pub(super) fn evidence(value: &Value, at: &At, hoist: &mut Hoist, checks: &mut Checks) -> String {
    let word = |key: &str| value.get(key).and_then(Value::as_str).unwrap_or_default();
    let grade: Option<Grade> = word("grade").parse().ok();
    let Some(grade) = grade.filter(|g| *g != Grade::Shop) else {
        checks.problem(at, format!("grade `{}` is none of ours", word("grade")));
        return String::new();
    };
    let mut citations = Vec::new();
    for text in value
        .get("from")
        .and_then(Value::as_array)
        .into_iter()
        .flatten()
    {
        let text = text.as_str().unwrap_or_default();
        let (source, place) = text
            .split_once('@')
            .map_or((text, ""), |(s, p)| (s.trim(), p.trim()));
        match checks.sources.get(source).copied() {
            Some(index) => {
                checks.used.insert(source.to_owned());
                citations.push(format!(
                    "Citation::from_table(&SOURCES[{index}], {place:?})"
                ));
            }
            None => checks.problem(at, format!("unknown source `{source}`")),
        }
        if place.is_empty() {
            checks.problem(at, format!("no place in source `{source}`"));
        }
    }
    match grade {
        Grade::Memory if !citations.is_empty() => {
            checks.problem(at, "a memory cannot cite a source")
        }
        Grade::Memory | Grade::CommonPractice => {}
        _ if citations.is_empty() => checks.problem(at, "no source cited"),
        _ => {}
    }
    let basis = if grade == Grade::Derived {
        if word("formula").is_empty() {
            checks.problem(at, "derived without a formula");
        }
        word("basis").parse().unwrap_or_else(|_| {
            checks.problem(
                at,
                "derived without the grade of its weakest input (`basis`)",
            );
            Grade::Memory
        })
    } else {
        grade
    };
    let pascal = |grade: Grade| rust::word("Grade", &grade.to_string());
    let sources = if citations.is_empty() {
        "&[]".to_owned()
    } else {
        format!("&{}", hoist.list("Citation", &citations))
    };
    format!(
        "Evidence::from_table({}, {}, {:?}, {sources}, {:?})",
        pascal(grade),
        pascal(basis),
        word("formula"),
        word("note")
    )
}
