//! Reads members of a fit, wanted windows and materials from command-line words. No math lives here.
#![allow(dead_code, reason = "each example uses a part")]

use framegauge::fit::{
    Caution, Material, MaterialKind, Member, Part, RingClass, SizeClass, SizeReading, Wanted,
};
use framegauge::measure::{Bound, DecisionRule, Limits, Reading};
use framegauge::{Angle, Error, ErrorKind, Grade, Length, Pressure, Printed, Ratio, parse_length};

/// `0.02 mm to 0.10 mm`, `at most 0.10 mm` or `at least 0.5 mm`, graded as the asker's own.
pub fn limits(text: &str) -> Result<Limits, Error> {
    let (lower, upper) = if let Some((low, high)) = text.split_once(" to ") {
        (
            Bound::At(parse_length(low)?),
            Bound::At(parse_length(high)?),
        )
    } else if let Some(high) = text.trim().strip_prefix("at most") {
        (Bound::Open, Bound::At(parse_length(high)?))
    } else if let Some(low) = text.trim().strip_prefix("at least") {
        (Bound::At(parse_length(low)?), Bound::Open)
    } else {
        return Err(Error::new(
            ErrorKind::Text,
            "limits",
            text,
            "no limits stand there",
            "write `0.02 mm to 0.10 mm`, `at most 0.10 mm` or `at least 0.5 mm`",
        ));
    };
    Limits::new(lower, upper, Grade::Shop)
}

/// `27.25 +/- 0.02 mm`, where it was taken after an `@`: `27.25 +/- 0.02 mm @ 90 deg @ 40 mm`.
pub fn size_reading(text: &str) -> Result<SizeReading, Error> {
    let mut parts = text.split('@');
    let reading: Reading = parts.next().unwrap_or_default().parse()?;
    let mut size = SizeReading::new(reading);
    for place in parts {
        size = match Angle::parse(place.trim()) {
            Ok(axis) => size.across(axis)?,
            Err(_) => size.at_depth(parse_length(place.trim())?)?,
        };
    }
    Ok(size)
}

fn is_reading(text: &str) -> bool {
    ["+/-", "±", "+-"].iter().any(|mark| text.contains(mark))
}

/// A member from its words: readings (several), and at most one of a class (`42 N7`), a ring (`ring 42 mm Normal`) or limits.
pub fn member<P: Part>(words: &[&str], nominal: Option<Length>) -> Result<Member<P>, Error> {
    let readings: Vec<SizeReading> = words
        .iter()
        .filter(|w| is_reading(w))
        .map(|w| size_reading(w))
        .collect::<Result<_, _>>()?;
    let mut stated = words.iter().filter(|w| !is_reading(w));
    let first = stated.next();
    if let Some(second) = stated.next() {
        return Err(Error::new(
            ErrorKind::Contradiction,
            "member",
            second,
            "a second statement of one size",
            "give one class, ring or pair of limits, and readings",
        ));
    }
    let member = match first {
        None => Member::measured_only(&readings)?,
        Some(word) => {
            let tabulated = if let Some(ring) = word.strip_prefix("ring ") {
                let (size, class) = ring.rsplit_once(' ').unwrap_or((ring, "Normal"));
                let class: RingClass = class.parse()?;
                Member::of_ring(parse_length(size)?, class)?
            } else if word.contains(" to ") {
                Member::of_limits(limits(word)?)?
            } else {
                let class: SizeClass = word.parse()?;
                Member::of_class(class.nominal(), class.class())?
            };
            if readings.is_empty() {
                tabulated
            } else {
                tabulated.measured(&readings)?
            }
        }
    };
    match nominal {
        Some(nominal) => member.with_nominal(nominal),
        None => Ok(member),
    }
}

/// The wanted windows that were given.
pub fn windows(clearance: &[&str], interference: &[&str]) -> Result<Vec<Wanted>, Error> {
    let gaps = clearance
        .iter()
        .map(|text| limits(text).map(|l| Wanted::clearance(l, "")));
    let presses = interference
        .iter()
        .map(|text| limits(text).map(|l| Wanted::interference(l, "")));
    gaps.chain(presses).collect()
}

/// `2017` (default), `1998` or `simple`.
pub fn rule(text: Option<&str>) -> Result<DecisionRule, Error> {
    match text {
        None | Some("2017") => Ok(DecisionRule::Iso14253Of2017),
        Some("1998") => Ok(DecisionRule::Iso14253Of1998),
        Some("simple") => Ok(DecisionRule::SimpleAcceptance),
        Some(other) => Err(Error::new(
            ErrorKind::UnknownName,
            "rule",
            other,
            "no such rule",
            "one of 2017, 1998, simple",
        )),
    }
}

/// `NAME, KIND, MODULUS, POISSON[, STRENGTH]`, as `6061-T6, metal, 68.9 GPa, 0.33, 276 MPa`.
pub fn material(text: &str) -> Result<Material, Error> {
    let parts: Vec<&str> = text.split(',').map(str::trim).collect();
    let refuse = |problem: &'static str| {
        Error::new(
            ErrorKind::Text,
            "material",
            text,
            problem,
            "write `6061-T6, metal, 68.9 GPa, 0.33, 276 MPa`",
        )
    };
    let [name, kind, modulus, poisson, rest @ ..] = parts.as_slice() else {
        return Err(refuse(
            "a material has a name, a kind, a modulus and a Poisson number",
        ));
    };
    let kind: MaterialKind = kind.parse().map_err(|_| {
        refuse("the kind is steel, stainless, aluminium, titanium, metal, plastic or carbon")
    })?;
    let material = Material::new(
        (*name).to_owned(),
        kind,
        Pressure::parse(modulus)?,
        Ratio::parse(poisson)?,
    )?;
    match rest {
        [] => Ok(material),
        [strength] => material.with_strength(Pressure::parse(strength)?),
        _ => Err(refuse("more than five parts")),
    }
}

/// The cautions, one a line.
pub fn cautions(list: &[Caution]) -> String {
    list.iter()
        .map(|c| format!("Caution: {}\n", c.words()))
        .collect()
}
