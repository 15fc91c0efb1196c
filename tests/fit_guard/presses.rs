//! Press joints, clamps, friction, heat.

use super::*;
use framegauge::{
    Interference, Ratio, ShaftDiameter, Width, gpa, mpa, newton, newton_metre, per_kelvin,
};

fn materials() -> [Material; 3] {
    let of = |name: &'static str, kind, e, nu, alpha| {
        Material::new(name, kind, gpa(e), Ratio(nu))
            .unwrap()
            .with_expansion(per_kelvin(alpha))
            .unwrap()
    };
    [
        of("steel", MaterialKind::Metal, 207.0, 0.29, 11.6e-6)
            .with_strength(mpa(410.0))
            .unwrap(),
        of("alloy", MaterialKind::Metal, 68.9, 0.33, 23.4e-6)
            .with_strength(mpa(240.0))
            .unwrap()
            .graded(Grade::Published),
        of("nylon", MaterialKind::Plastic, 2.9, 0.40, 80e-6),
    ]
}

fn mpa_of(pressure: framegauge::Pressure) -> String {
    format!("{:.6} MPa", pressure.value / 1e6)
}

#[test]
fn joints() {
    let mut page = Page::new();
    let mut named = false;
    let shapes = [
        (
            "cup in a head tube",
            JointShape {
                diameter: mm(44.0),
                shaft_bore: Some(mm(41.2)),
                hub_outside: mm(50.3),
                length: mm(10.0),
            },
        ),
        (
            "axle in a sleeve",
            JointShape {
                diameter: mm(29.7),
                shaft_bore: None,
                hub_outside: mm(41.3),
                length: mm(36.0),
            },
        ),
    ];
    for (name, shape) in shapes {
        for shaft in &materials() {
            for hub in &materials() {
                page.title(&format!("{name}: {} in {}", shaft.name(), hub.name()));
                let joint = match PressJoint::new(shape, shaft, hub) {
                    Ok(joint) => joint,
                    Err(error) => {
                        page.line(&refused(&error));
                        continue;
                    }
                };
                let press = Press::new(Interference::new(mm(0.047)).unwrap()).unwrap();
                let needed = joint.interference_for(mpa(13.0)).unwrap();
                let shrink = joint.bore_shrink(press).map_or("-".into(), in_um);
                page.line(&format!(
                    "{} at 0.047; 13 MPa at {}; bore smaller by {shrink}, outside larger by {}",
                    mpa_of(joint.pressure(press)),
                    in_um(needed.length()),
                    in_um(joint.outside_growth(press))
                ));
                let s = joint.stresses(press);
                page.line(&format!(
                    "hub at its bore {} around and {} von Mises, outside {}; shaft outside {} and {}, at its bore {}",
                    mpa_of(s.hub_bore_hoop),
                    mpa_of(s.hub_bore_von_mises),
                    mpa_of(s.hub_outside_hoop),
                    mpa_of(s.shaft_outside_hoop),
                    mpa_of(s.shaft_outside_von_mises),
                    s.shaft_bore_hoop.map_or("-".into(), mpa_of)
                ));
                for rule in [YieldRule::VonMises, YieldRule::Din7190] {
                    let yields = joint.yield_pressure(rule);
                    let said = |p: Option<framegauge::Pressure>| p.map_or("-".into(), mpa_of);
                    page.line(&format!(
                        "yields, {rule:?}: hub {}, shaft {}, first {:?}",
                        said(yields.hub),
                        said(yields.shaft),
                        yields.first().map(|f| f.0)
                    ));
                }
                for (low, high, loss) in [
                    (0.02, 0.07, RoughnessLoss::None),
                    (
                        0.02,
                        0.07,
                        RoughnessLoss::Din7190 {
                            shaft_rz: um(4.0),
                            hub_rz: um(7.0),
                        },
                    ),
                    (
                        -0.01,
                        0.19,
                        RoughnessLoss::TenthOfDepth {
                            shaft_rz: um(4.0),
                            hub_rz: um(7.0),
                        },
                    ),
                ] {
                    let at = |v: f64| Interference::new(mm(v)).unwrap();
                    let report =
                        joint.report(at(low), at(high), Friction::new(0.07, 0.16).unwrap(), loss);
                    let told = serde_json::to_value(report.unwrap()).unwrap();
                    let told = told.as_object().unwrap();
                    // The names once, and a line of values for each.
                    if !named {
                        named = true;
                        let names: Vec<&str> = told.keys().map(String::as_str).collect();
                        page.line(&names.join(", "));
                    }
                    let values: Vec<String> = told.values().map(flat).collect();
                    page.line(&format!("{low} to {high}: {}", values.join(", ")));
                }
                let together = joint.resultant(newton(1200.0), newton_metre(17.0)).unwrap();
                let pressure = joint.pressure_needed(together, 0.08, 1.4).unwrap();
                page.line(&format!(
                    "1200 N and 17 N m: {:.4} N, {}",
                    together.value,
                    mpa_of(pressure)
                ));
            }
        }
    }
    page.check("fit_guard/joints.txt");
}

#[test]
fn clamps_and_heat() {
    let mut page = Page::new();
    page.title("clamps");
    let clamp = SlitClamp::new(
        ShaftDiameter::new(mm(28.6)).unwrap(),
        Width::new(mm(38.0)).unwrap(),
    );
    for model in [ClampModel::Line, ClampModel::Cosine, ClampModel::Uniform] {
        let grip = clamp.grip(newton(7300.0), 0.12, model).unwrap();
        let used = clamp
            .used(&grip, newton(640.0), newton_metre(21.0))
            .unwrap();
        page.line(&format!("{}; {used:.6} of it used", json(&grip)));
    }
    for (torque, d, k) in [(5.0, 5.0, 0.2), (7.5, 6.0, 0.16)] {
        let force = bolt_force(newton_metre(torque), mm(d), k).unwrap();
        page.line(&format!("{torque} N m on M{d}, {k}: {:.4} N", force.value));
    }
    for friction in [0.05, 0.12, 0.3] {
        page.line(&format!(
            "strap, {friction}: {:.9}",
            strap_tension(friction).unwrap()
        ));
    }
    let window = between(-0.1, 0.3);
    for tube in [28.6, 31.75, 34.65, 40.0] {
        let found = clamp_for_tube(mm(tube), &[mm(28.6), mm(31.8), mm(31.9), mm(34.9)], &window);
        page.line(&format!(
            "clamp for {tube}: {}",
            found.map_or("none".into(), in_um)
        ));
    }
    page.title("heat");
    let [steel, alloy, _] = materials();
    for celsius in [-5.0, 20.0, 31.0] {
        let at = Temperature::celsius(celsius).unwrap();
        page.line(&at.to_string());
        page.said("    read", at_reference(&read(43.97, 0.004), &alloy, at));
        page.said(
            "    with a gauge",
            at_reference_with_gauge(&read(43.97, 0.004), &alloy, &steel, at),
        );
        page.line(&format!(
            "    clearance {}",
            in_um(clearance_change(mm(43.97), &alloy, &steel, at).unwrap())
        ));
    }
    let press = Press::new(Interference::new(mm(0.06)).unwrap()).unwrap();
    for gap in [0.0, 0.03] {
        let warm = assembly_temperature(mm(44.0), press, mm(gap), &alloy).unwrap();
        page.line(&format!("warm by {:.6} K for {gap}", warm.value));
    }
    page.check("fit_guard/clamps.txt");
}
