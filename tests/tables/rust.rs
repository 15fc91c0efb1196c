//! Renders checked rows as plain statics. Numbers are copied as text, never passed through a float.

use std::collections::BTreeMap;
use std::fmt::Write;

use crate::schema::Unit;

/// Statics of one generated file: lists are hoisted, equal lists are shared.
#[derive(Default)]
pub struct Hoist {
    known: BTreeMap<String, String>,
    text: String,
    count: usize,
}

impl Hoist {
    /// The name of a static list with these elements.
    pub fn list(&mut self, element: &str, items: &[String]) -> String {
        let body = format!("[{element}; {}] = [{}]", items.len(), items.join(", "));
        if let Some(name) = self.known.get(&body) {
            return name.clone();
        }
        let name = format!("L{}", self.count);
        self.count += 1;
        writeln!(self.text, "static {name}: {body};").unwrap();
        self.known.insert(body, name.clone());
        name
    }

    /// `Cow::Borrowed(&list)`.
    pub fn cow(&mut self, element: &str, items: &[String]) -> String {
        if items.is_empty() {
            return "Cow::Borrowed(&[])".to_owned();
        }
        format!("Cow::Borrowed(&{})", self.list(element, items))
    }

    pub fn into_text(self) -> String {
        self.text
    }
}

pub fn text(value: &str) -> String {
    format!("Cow::Borrowed({value:?})")
}

/// `left` of `Hand` is `Hand::Left`.
pub fn word(kind: &str, value: &str) -> String {
    let pascal: String = value
        .split('_')
        .map(|part| {
            let mut letters = part.chars();
            letters
                .next()
                .map(|c| c.to_ascii_uppercase().to_string() + letters.as_str())
                .unwrap_or_default()
        })
        .collect();
    format!("{kind}::{pascal}")
}

fn float(number: &str) -> String {
    let plain = number.trim().trim_start_matches('+').replace(',', ".");
    if plain.contains('.') {
        plain
    } else {
        format!("{plain}.0")
    }
}

/// A quantity as a const expression; `None` when the unit does not fit.
pub fn quantity(unit: Unit, printed: &str) -> Option<String> {
    let strip = |suffix: &str| printed.strip_suffix(suffix).map(str::trim);
    match unit {
        Unit::Length => {
            if let Some(number) = strip("mm") {
                Some(format!("mm({})", float(number)))
            } else if let Some(number) = strip("um") {
                Some(format!("um({})", float(number)))
            } else if let Some(number) = strip("in") {
                inches(number)
            } else {
                None
            }
        }
        Unit::Angle => strip("deg").map(|n| format!("deg({})", float(n))),
        Unit::Torque => strip("N m").map(|n| format!("newton_metre({})", float(n))),
        Unit::Pressure => strip("GPa")
            .map(|n| format!("gpa({})", float(n)))
            .or_else(|| strip("MPa").map(|n| format!("mpa({})", float(n)))),
        Unit::Ratio => printed
            .parse::<f64>()
            .ok()
            .map(|_| format!("Ratio({})", float(printed))),
        Unit::Expansion => strip("1e-6/K").map(|n| format!("per_kelvin({} / 1e6)", float(n))),
    }
}

fn inches(number: &str) -> Option<String> {
    let Some((front, denominator)) = number.split_once('/') else {
        return Some(format!("inch({})", float(number)));
    };
    let denominator: u32 = denominator.trim().parse().ok()?;
    let (whole, numerator) = match front.trim().split_once(' ') {
        Some((whole, numerator)) => (
            whole.parse::<u32>().ok()?,
            numerator.trim().parse::<u32>().ok()?,
        ),
        None => (0, front.trim().parse::<u32>().ok()?),
    };
    Some(format!(
        "inch_fraction({}, {denominator})",
        whole * denominator + numerator
    ))
}

pub fn pitch(printed: &str) -> Option<String> {
    if let Some(count) = printed.strip_suffix("tpi") {
        return count
            .trim()
            .parse::<u16>()
            .ok()
            .map(|n| format!("Pitch::from_table_tpi({n})"));
    }
    printed
        .strip_suffix("mm")
        .map(|n| format!("Pitch::from_table_mm({})", float(n)))
}
