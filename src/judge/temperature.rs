//! A fit at other temperatures than the one that sizes hold at.

use alloc::string::String;
use alloc::vec::Vec;

use super::verdict::{NOTHING, Verdict, Worked};
use super::{Finding, FitFact, MemberOf, sizes_against};
use crate::evidence::{Evidence, Grade};
use crate::fit::{HoleMember, ShaftMember, Temperature, fit_between};
use crate::measure::{DecisionRule, Limits};
use crate::quantity::{mm, to_mm};
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
    [material, temperature]: [&'static str; 2],
) -> Result<(f64, Option<&'a Evidence>), Error> {
    let row = tables
        .find::<Material>(code)
        .map_err(|e| e.named(material))?;
    let figure = row.expansion.as_ref();
    let Some((alpha, figure)) = figure.and_then(|f| Some((f.nominal().or(f.lower())?, f))) else {
        return Err(Error::new(
            ErrorKind::NotTabulated,
            material,
            String::from(code),
            "no expansion is held for it",
            "name a material of the tables that has one, or add a row of your own",
        ));
    };
    let degrees = Temperature::celsius(celsius).map_err(|e| e.named(temperature))?;
    Ok((
        alpha.value * degrees.above_reference().value,
        figure.evidence(),
    ))
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
        let warm = self.hole_celsius;
        let cold = self.shaft_celsius.unwrap_or(warm);
        let names = ["hole_material", "hole_celsius"];
        let (opens, of_hole) = grows(tables, &self.hole_material, warm, names)?;
        let names = ["shaft_material", "shaft_celsius"];
        let (fills, of_shaft) = grows(tables, &self.shaft_material, cold, names)?;
        let by = mm(to_mm(fit.hole().smallest.value()) * (opens - fills));
        let then = [fit.tightest(), fit.loosest()].map(|gap| gap.shifted(by));
        let limits = Limits::at_most(NOTHING, Grade::CommonPractice)?;
        let what = "clearance at temperature";
        let held = sizes_against(what, &then, &limits, "by design", of_hole, rule);
        let findings = Vec::from([
            Finding::of(FitFact::Grows { by }),
            held.resting_on(of_shaft),
        ]);
        Ok(Verdict::from_findings("fit by temperature", findings)
            .with(Worked::length(
                "clearance changes by",
                by,
                "diameter x growth",
            ))
            .minding(FitFact::ExpansionAverage))
    }
}
