//! A fit at other temperatures than the one that sizes hold at.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::verdict::{NOTHING, Verdict, Worked};
use super::{MemberOf, sizes_against};
use crate::evidence::{Evidence, Grade};
use crate::fit::{HoleMember, ShaftMember, Temperature, fit_between};
use crate::measure::{DecisionRule, Limits, Outcome};
use crate::quantity::{in_mm, mm, to_mm};
use crate::read::form;
use crate::standard::{Material, Tables};
use crate::{Error, ErrorKind};

form! {
    /// Whether a press fit still presses at other temperatures: each member grows by its own expansion, from 20 °C (ISO 1).
    ///
    /// ```
    /// use framegauge::{judge::{AtTemperature, MemberOf}, measure::Outcome, standard::Tables};
    /// let shell = |celsius: f64, only_shell: bool| AtTemperature {
    ///     hole: MemberOf::read("41.995 +/- 0.002 mm".parse().unwrap()), hole_material: "al_6061_t6".into(), hole_celsius: celsius,
    ///     shaft: MemberOf::read("41.998 +/- 0.001 mm".parse().unwrap()), shaft_material: "steel_4130_normalised".into(),
    ///     shaft_celsius: only_shell.then_some(20.0), rule: None,
    /// }.answer(Tables::ours()).unwrap();
    /// // 3 µm of press at 20 °C are gone at 60 °C in an aluminium shell, and sooner where only the shell is warm.
    /// assert_eq!(shell(60.0, false).outcome, Outcome::NonconformityShown);
    /// assert!(shell(60.0, true).millimetres("clearance changes by") > shell(60.0, false).millimetres("clearance changes by"));
    /// ```
    AtTemperature {
        /// The outer member.
        hole: MemberOf,
        /// Code of its material.
        hole_material: String,
        /// Its temperature in degrees Celsius.
        hole_celsius: f64,
        /// The inner member.
        shaft: MemberOf,
        /// Code of its material.
        shaft_material: String,
        /// Its temperature in degrees Celsius; that of the outer member unless stated.
        shaft_celsius: Option<f64>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

/// Expansion of a material from 20 °C to this temperature, as a share, with what it rests on.
fn grows<'a>(
    tables: Tables<'a>,
    code: &str,
    celsius: f64,
    fields: [&'static str; 2],
) -> Result<(f64, Option<&'a Evidence>), Error> {
    let row = tables
        .find::<Material>(code)
        .map_err(|e| e.named(fields[0]))?;
    let alpha = row
        .expansion
        .as_ref()
        .and_then(|f| Some((f.nominal().or(f.lower())?, f.evidence())));
    let Some((alpha, evidence)) = alpha else {
        return Err(Error::new(
            ErrorKind::NotTabulated,
            fields[0],
            String::from(code),
            "no expansion is held for it",
            "name a material of the tables that has one, or add a row of your own",
        ));
    };
    let temperature = Temperature::celsius(celsius).map_err(|e| e.named(fields[1]))?;
    Ok((alpha.value * temperature.above_reference().value, evidence))
}

impl AtTemperature {
    /// The verdict.
    ///
    /// # Errors
    /// Those of the members; `UnknownName` and `NotTabulated` for a material; `OutOfRange` and `NotFinite` for a temperature.
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        let hole: HoleMember = self.hole.member().map_err(|e| e.within("hole"))?;
        let shaft: ShaftMember = self.shaft.member().map_err(|e| e.within("shaft"))?;
        let rule = self.rule.unwrap_or_default();
        let fit = fit_between(&hole, &shaft, rule).map_err(|e| e.named("hole"))?;
        let cold = self.shaft_celsius.unwrap_or(self.hole_celsius);
        let (opens, of_hole) = grows(
            tables,
            &self.hole_material,
            self.hole_celsius,
            ["hole_material", "hole_celsius"],
        )?;
        let (fills, of_shaft) = grows(
            tables,
            &self.shaft_material,
            cold,
            ["shaft_material", "shaft_celsius"],
        )?;
        let change = mm(to_mm(fit.hole().smallest.value()) * (opens - fills));
        let then = [
            fit.tightest().shifted(change),
            fit.loosest().shifted(change),
        ];
        let limits = Limits::at_most(NOTHING, Grade::CommonPractice)?;
        let owner = "a press fit must press at every temperature it meets";
        let found = sizes_against(
            "clearance at temperature",
            &then,
            &limits,
            owner,
            of_hole,
            rule,
        )
        .resting_on(of_shaft);
        let words = match found.outcome {
            Some(Outcome::ConformityShown) => "it still presses there",
            Some(Outcome::NonconformityShown) => "it no longer presses there",
            _ => "whether it still presses there the readings do not tell",
        };
        Ok(Verdict::from_findings("fit at another temperature", Vec::from([found]))
            .saying(format!("The clearance changes by {}: {words}.", in_mm(change)))
            .with(Worked::length(
                "clearance changes by",
                change,
                "diameter x (expansion of hole x its difference to 20 °C - expansion of shaft x its difference)",
            ))
            .minding("coefficients of expansion are averages; joints of plastic or laminate do not follow this sum"))
    }
}
