//! What pressing a cup or bearing does: force to press it in, what it holds, and whether anything yields.
//!
//! `press_cup --cup "44.05 +/- 0.005 mm" --bore "43.98 +/- 0.005 mm" --tube "50 mm" --cup-bore "41 mm" --length "10 mm"
//! --tube-material "6061-T6, metal, 68.9 GPa, 0.33, 276 MPa" --cup-material "6061-T6, metal, 68.9 GPa, 0.33, 276 MPa"
//! --friction "0.06 0.15"`: the holding and the pressing value; `--rz "6.3 um 6.3 um"` adds the roughness of cup and tube.
//! Exit 0: presses and stays elastic; 1: it does not, or is not known to.

#[path = "support/members.rs"]
mod members;
mod support;

use std::fmt::Write as _;
use std::process::ExitCode;

use framegauge::fit::{
    Caution, Friction, HoleMember, JointShape, PressJoint, RoughnessLoss, ShaftMember, fit_between,
};
use framegauge::{Error, ErrorKind, Length, Printed as _, Ratio, in_mm, parse_length};
use support::{Answer, Words, answer};

fn needed<'a>(words: &'a Words, name: &'static str) -> Result<&'a str, Error> {
    words.named(name).ok_or_else(|| {
        Error::new(
            ErrorKind::Missing,
            name,
            "",
            "is needed",
            format!("write `--{name} VALUE`"),
        )
    })
}

fn pair(text: &str, what: &'static str) -> Result<(f64, f64), Error> {
    let mut values = text.split_whitespace().map(Ratio::parse);
    match (values.next(), values.next(), values.next()) {
        (Some(a), Some(b), None) => Ok((a?.0, b?.0)),
        _ => Err(Error::new(
            ErrorKind::Text,
            what,
            text,
            "two numbers are needed",
            "write e.g. `0.06 0.15`",
        )),
    }
}

fn run() -> Result<Answer, Error> {
    let words = Words::read(
        &[
            "cup",
            "bore",
            "tube",
            "cup-bore",
            "length",
            "tube-material",
            "cup-material",
            "friction",
            "rz",
            "rule",
        ],
        &[],
    )?;
    let bore: HoleMember =
        members::member(&words.all("bore"), None).map_err(|e| e.within("bore"))?;
    let cup: ShaftMember = members::member(&words.all("cup"), None).map_err(|e| e.within("cup"))?;
    let fit = fit_between(&bore, &cup, members::rule(words.named("rule"))?)?;
    let length = |name: &'static str| -> Result<Length, Error> {
        parse_length(needed(&words, name)?).map_err(|e| e.within(name))
    };
    let shape = JointShape {
        diameter: fit.shaft().largest.value(),
        shaft_bore: words.named("cup-bore").map(parse_length).transpose()?,
        hub_outside: length("tube")?,
        length: length("length")?,
    };
    let cup_material = members::material(needed(&words, "cup-material")?)?;
    let tube_material = members::material(needed(&words, "tube-material")?)?;
    let joint = PressJoint::new(shape, &cup_material, &tube_material)?;
    let (hold, press) = pair(needed(&words, "friction")?, "friction")?;
    let roughness = match words.named("rz") {
        None => RoughnessLoss::None,
        Some(text) => {
            let (shaft, hub) = text.trim().split_once("um").ok_or_else(|| {
                Error::new(
                    ErrorKind::Unit,
                    "rz",
                    text,
                    "no unit",
                    "write `6.3 um 6.3 um`",
                )
            })?;
            RoughnessLoss::Din7190 {
                shaft_rz: parse_length(&format!("{shaft} um"))?,
                hub_rz: parse_length(hub)?,
            }
        }
    };
    let (smallest, largest) = fit.press_range()?;
    let report = joint.report(smallest, largest, Friction::new(hold, press)?, roughness)?;
    let mut text = String::new();
    let _ = writeln!(
        text,
        "Interference {smallest} to {largest} on diameter, the uncertainty of the readings included."
    );
    if report.loss.value > 0.0 {
        let _ = writeln!(
            text,
            "Roughness takes {} of it ({}).",
            in_mm(report.loss),
            report.loss_rule
        );
    }
    let _ = writeln!(
        text,
        "Pressing in may need {:.1} kN; it holds at least {:.1} kN along the axis.",
        report.push_in_force.value / 1e3,
        report.holding_force.value / 1e3
    );
    let _ = writeln!(
        text,
        "Tube: {:.0} MPa around the bore at most.",
        report.stresses.hub_bore_hoop.value / 1e6
    );
    let _ = match report.elastic {
        Some(true) => writeln!(text, "Both parts stay elastic."),
        Some(false) => writeln!(text, "A part yields: do not press this pair."),
        None => writeln!(
            text,
            "Whether a part yields is not known: give its strength."
        ),
    };
    let mut cautions = report.cautions.clone();
    cautions.extend(
        fit.cautions()
            .iter()
            .filter(|c| !report.cautions.contains(c)),
    );
    cautions.push(Caution::MakerFirst);
    text.push_str(&members::cautions(&cautions));
    let acceptable = report.elastic == Some(true) && report.pressure_low.value > 0.0;
    Ok(Answer::new(
        &serde_json::json!({ "fit": fit, "press": report }),
        text,
        acceptable,
    ))
}

fn main() -> ExitCode {
    answer(run)
}
