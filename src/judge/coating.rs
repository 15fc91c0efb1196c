//! What a coating and a temperature do to a reading.

use alloc::format;
use alloc::vec::Vec;

use super::Finding;
use super::verdict::{NOTHING, NextStep, Verdict, Worked, size_reading};
use crate::Error;
use crate::evidence::Grade;
use crate::fit::{Feature, Fit, Material, Temperature, clearance_change};
use crate::measure::{DecisionRule, Limits, Outcome, Reading, settled_cmp};
use crate::quantity::{Length, in_mm, positive};
use crate::standard::{CuttingRule, find};

/// A size read over a coating: it counts on both sides, so an outside reads large and a bore small by twice its thickness.
///
/// The thickness of a powder coat is remembered (0.06 to 0.12 mm a side), so what lies below is a span, and no verdict stands
/// before the coating is off. `expected` is the bare size, if one is known: the difference is then the coat.
///
/// # Errors
/// `OutOfRange` and `NotFinite` for sizes that are none.
///
/// ```
/// use framegauge::{fit::Feature, judge::over_coating, measure::Outcome, mm};
/// let said = over_coating(Feature::Shaft, Some(&"28.83 +/- 0.02 mm".parse().unwrap()), Some(mm(28.6))).unwrap();
/// assert_eq!(said.outcome, Outcome::Undecided);
/// assert_eq!(said.millimetres("coat on each side"), Some(0.115));
/// assert!(said.sentence.contains("as a powder coat is"));
/// ```
pub fn over_coating(
    feature: Feature,
    reading: Option<&Reading>,
    expected: Option<Length>,
) -> Result<Verdict, Error> {
    let row = find::<CuttingRule>("coat_one_side")?;
    let (thin, thick) = (
        row.window.lower().unwrap_or(NOTHING),
        row.window.upper().unwrap_or(NOTHING),
    );
    // A coat makes a shaft larger and a hole smaller.
    let (direction, joined) = match feature {
        Feature::Shaft => ("large", "and"),
        Feature::Hole => ("small", "less"),
    };
    let outward = |by: Length| match feature {
        Feature::Shaft => by,
        Feature::Hole => -by,
    };
    let mut sentence = format!(
        "A coat of {:.3} to {} a side (from memory) makes the reading {:.3} to {} too {direction}",
        crate::settled_mm(thin),
        in_mm(thick),
        crate::settled_mm(thin * 2.0),
        in_mm(thick * 2.0)
    );
    let mut said = Verdict::from_findings(
        "size under a coating",
        Vec::from([Finding {
            outcome: Some(Outcome::Undecided),
            readings: reading.copied().into_iter().collect(),
            ..Finding::stated(
                "coating",
                "a reading over a coating is not a reading on metal",
            )
        }
        .resting_on(row.window.evidence())]),
    )
    .with(Worked::length("least error", thin * 2.0, "two coats, thin"))
    .with(Worked::length(
        "greatest error",
        thick * 2.0,
        "two coats, thick",
    ));
    if let Some(reading) = reading {
        size_reading("reading", reading)?;
        let below = [
            reading.value() - outward(thick * 2.0),
            reading.value() - outward(thin * 2.0),
        ];
        said = said
            .with(Worked::length(
                "below a thick coat",
                below[0],
                "reading and two thick coats",
            ))
            .with(Worked::length(
                "below a thin coat",
                below[1],
                "reading and two thin coats",
            ));
        if let Some(bare) = expected {
            let bare = positive("expected size", bare)?;
            let coat = outward((reading.value() - bare) / 2.0);
            said = said.with(Worked::length(
                "coat on each side",
                coat,
                "half of reading less bare size",
            ));
            let slack = reading.expanded_uncertainty() / 2.0;
            let like =
                settled_cmp(coat, thin - slack).is_ge() && settled_cmp(coat, thick + slack).is_le();
            sentence.push_str(&if settled_cmp(coat, NOTHING).is_le() {
                format!(
                    "; {} is not too {direction} for {}, so no coat is seen in it",
                    in_mm(reading.value()),
                    in_mm(bare)
                )
            } else {
                format!(
                    "; {} is {} {} {} on each side, {}",
                    in_mm(reading.value()),
                    in_mm(bare),
                    joined,
                    in_mm(coat),
                    if like {
                        "as a powder coat is"
                    } else {
                        "which a powder coat does not explain"
                    }
                )
            });
        }
    }
    sentence.push_str(". No verdict before the coating is off.");
    Ok(said
        .saying(sentence)
        .then(NextStep::new("the bare metal: take the coating off seats, threads and faces by hand, then gauge", "a coat counts on both sides, and a part forced over it cracks or sits crooked", "scraper or stripper, chaser for threads, then micrometer"))
        .minding("mask these before coating: threads, crown-race seat, head-tube bores and faces, shell faces, brake mount faces, dropout faces, inside of the seat tube"))
}

/// A fit at another temperature: the clearance changes by (α hole − α shaft) · D · ΔT.
///
/// # Errors
/// As [`clearance_change`].
///
/// ```
/// use framegauge::{Ratio, fit::{HoleMember, Material, MaterialKind, ShaftMember, Temperature, fit_between}, gpa, judge::at_temperature, measure::{DecisionRule, Outcome}, mm, per_kelvin};
/// let of = |name: &'static str, alpha: f64| Material::new(name, MaterialKind::Metal, gpa(70.0), Ratio(0.3)).unwrap().with_expansion(per_kelvin(alpha)).unwrap();
/// let shell = HoleMember::of_reading("41.995 +/- 0.002 mm".parse().unwrap()).unwrap();
/// let bearing = ShaftMember::of_reading("41.998 +/- 0.001 mm".parse().unwrap()).unwrap();
/// let fit = fit_between(&shell, &bearing, DecisionRule::default()).unwrap();
/// // 3 µm of press at 20 °C is gone at 60 °C in an aluminium shell.
/// let hot = at_temperature(&fit, mm(42.0), &of("aluminium 6061", 23.6e-6), &of("bearing steel", 11.5e-6), Temperature::celsius(60.0).unwrap()).unwrap();
/// assert_eq!(hot.outcome, Outcome::NonconformityShown);
/// ```
pub fn at_temperature(
    fit: &Fit,
    diameter: Length,
    hole: &Material,
    shaft: &Material,
    temperature: Temperature,
) -> Result<Verdict, Error> {
    let change = clearance_change(diameter, hole, shaft, temperature)?;
    let then = [
        fit.tightest().shifted(change),
        fit.loosest().shifted(change),
    ];
    let limits = Limits::at_most(NOTHING, Grade::CommonPractice)?;
    let found = super::sizes_against(
        "clearance at temperature",
        &then,
        &limits,
        "a press fit must press at every temperature it meets",
        None,
        DecisionRule::default(),
    );
    let words = match found.outcome {
        Some(Outcome::ConformityShown) => "it still presses there",
        Some(Outcome::NonconformityShown) => "it no longer presses there",
        _ => "whether it still presses there the readings do not tell",
    };
    let sentence = format!("The clearance changes by {}: {words}.", in_mm(change));
    Ok(Verdict::from_findings("fit at another temperature", Vec::from([found]))
        .saying(sentence)
        .with(Worked::length("clearance changes by", change, "(expansion of hole - expansion of shaft) x diameter x difference to 20 °C"))
        .minding("coefficients of expansion are averages; joints of plastic or laminate do not follow this sum"))
}
