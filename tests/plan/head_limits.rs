//! Makers' limits of a head tube are heard: each of them, the tightest first.

use framegauge::plan::Operation::{Face, Ream, Refer};
use framegauge::plan::State::{Leave, Open, Out, ToDo};
use framegauge::plan::{Plan, State};
use framegauge::quantity::settled_mm;

use super::{never_unsafe, operations, planned, said, state};

fn small(extra: &str) -> Plan {
    let plan = planned(&format!(
        "material = \"steel\"\n[head_tube.upper]\nconfirmed = \"EC34\"\ncoating = \"bare\"\nbore = [\"0 deg: 33.80 mm +/- 0.002 mm\", \"90 deg: 33.80 mm +/- 0.002 mm\"]\noutside = [\"37.00 mm +/- 0.004 mm\"]\npart = {{ name = \"cup\", outside = [\"34.02 mm +/- 0.002 mm\"] }}\nlimits = [{extra}]"
    ));
    never_unsafe(&plan, extra);
    plan
}

fn most(plan: &Plan) -> f64 {
    settled_mm(plan.steps[0].off.unwrap().most)
}

#[test]
fn the_tightest_caps_the_reamer() {
    let at = "head_tube.upper";
    // Listed 33.90 to 33.95: 0.10 to 0.15 less the uncertainty of the reading.
    let listed = small("");
    assert_eq!(operations(&listed, at), [Ream]);
    assert!((most(&listed) - 0.148).abs() < 1e-6);
    let bore =
        small("{ what = \"bore\", upper = \"33.93 mm\", owner = \"frame maker, drawing 7\" }");
    assert!((most(&bore) - 0.128).abs() < 1e-6, "{}", most(&bore));
    // Two limits of one kind: the tighter one counts, both are told.
    let two = small(
        "{ what = \"bore\", upper = \"33.94 mm\", owner = \"frame maker\" }, { what = \"bore\", upper = \"33.92 mm\", owner = \"cup maker\" }",
    );
    assert!((most(&two) - 0.118).abs() < 1e-6, "{}", most(&two));
    assert!(said(&two, at).contains("frame maker") && said(&two, at).contains("cup maker"));
    // A wall of 1.56 leaves 37.00 - 3.12 = 33.88: under what the cup needs.
    let wall =
        small("{ what = \"wall\", lower = \"1.56 mm\", owner = \"frame maker, drawing 7\" }");
    assert_eq!(
        (state(&wall, at), operations(&wall, at)),
        (State::Refer, vec![Refer])
    );
    // 34.02 less 0.09 leaves 33.93.
    let press = small(
        "{ what = \"interference\", lower = \"0.09 mm\", upper = \"0.15 mm\", owner = \"cup maker\" }",
    );
    assert!(
        most(&press) < 0.13 + 1e-6 && most(&press) > 0.12,
        "{}",
        most(&press)
    );
    // Each stop carries its own words and its own source.
    let stops = &listed.steps[0].stops;
    assert!(stops[0].limit.to_string().contains("EC34") && !stops[0].sources.is_empty());
    assert!(
        wall.steps[0].stops.is_empty() && bore.steps[0].stops.iter().all(|s| s.sources.is_empty())
    );
}

#[test]
fn the_fit_that_the_maker_wants() {
    let fit = |seat: &str, bore: &str, part: &str, limit: &str| {
        let plan = planned(&format!(
            "material = \"steel\"\n[head_tube.upper]\nconfirmed = \"{seat}\"\ncoating = \"bare\"\nbore = [\"0 deg: {bore} mm +/- 0.003 mm\", \"90 deg: {bore} mm +/- 0.003 mm\"]\npart = {{ name = \"part\", outside = [\"{part} mm +/- 0.003 mm\"] }}\nlimits = [{limit}]"
        ));
        never_unsafe(&plan, limit);
        (
            state(&plan, "head_tube.upper"),
            plan.questions
                .iter()
                .map(|q| q.answer.clone())
                .collect::<Vec<_>>(),
        )
    };
    let press = "{ what = \"interference\", lower = \"0.02 mm\", upper = \"0.06 mm\", owner = \"cup maker\" }";
    assert_eq!(fit("EC34", "33.92", "34.02", press).0, Out); // 0.10
    assert_eq!(fit("EC34", "33.92", "33.96", press).0, Leave); // 0.04
    assert_eq!(fit("EC34", "33.92", "33.93", press).0, Out); // 0.01
    let close = fit("EC34", "33.92", "33.98", press); // 0.06, on the limit
    assert_eq!(close.0, Open);
    assert!(
        close
            .1
            .contains(&String::from("head_tube.upper.part.outside"))
    );
    let slip = "{ what = \"clearance\", lower = \"0.05 mm\", upper = \"0.15 mm\", owner = \"frame maker\" }";
    assert_eq!(fit("IS52", "52.10", "52.00", slip).0, Leave);
    assert_eq!(fit("IS52", "52.10", "52.07", slip).0, Out);
}

#[test]
fn depth_and_gap() {
    let seat = |extra: &str| {
        let plan = planned(&format!(
            "material = \"steel\"\n[head_tube.lower]\nconfirmed = \"EC34\"\ncoating = \"bare\"\nbore = [\"0 deg: 33.92 mm +/- 0.003 mm\", \"90 deg: 33.92 mm +/- 0.003 mm\"]\n{extra}"
        ));
        never_unsafe(&plan, extra);
        (state(&plan, "head_tube.lower"), plan)
    };
    let limit = |what: &str, side: &str| {
        format!("limits = [{{ what = \"{what}\", {side}, owner = \"frame maker\" }}]")
    };
    assert_eq!(
        seat(&format!(
            "crown_gap = \"0.6 mm +/- 0.05 mm\"\n{}",
            limit("crown_gap", "lower = \"1.0 mm\"")
        ))
        .0,
        Out
    );
    assert_eq!(
        seat(&format!(
            "crown_gap = \"1.6 mm +/- 0.05 mm\"\n{}",
            limit("crown_gap", "lower = \"1.0 mm\"")
        ))
        .0,
        Leave
    );
    let (open, plan) = seat(&limit("crown_gap", "lower = \"1.0 mm\""));
    assert_eq!(
        (open, plan.questions[0].answer.as_str()),
        (Open, "head_tube.lower.crown_gap")
    );
    assert_eq!(
        seat(&format!(
            "bore_depth = \"13 mm +/- 0.1 mm\"\n{}",
            limit("bore_depth", "lower = \"14 mm\"")
        ))
        .0,
        Out
    );
    assert_eq!(
        seat(&format!(
            "bore_depth = \"17 mm +/- 0.1 mm\"\n{}",
            limit("bore_depth", "upper = \"16 mm\"")
        ))
        .0,
        Out
    );
    let (open, plan) = seat(&limit("bore_depth", "upper = \"16 mm\""));
    assert_eq!(
        (open, plan.questions[0].answer.as_str()),
        (Open, "head_tube.lower.bore_depth")
    );
}

/// Two ends with their faces; `UP` and `LOW` are what stands high at twelve o'clock, coating and limits besides.
fn faces(up: f64, low: f64, coating: &str, gap: &str, limits: &str) -> Plan {
    let end = |name: &str, high: f64, extra: &str| {
        let heights: Vec<String> = (0..5)
            .map(|k| {
                let angle = 72.0 * f64::from(k);
                let height = high / 2.0 * angle.to_radians().cos();
                format!("\"{angle} deg: {height:.4} mm +/- 0.004 mm\"")
            })
            .collect();
        format!(
            "[head_tube.{name}]\nconfirmed = \"EC34\"\ncoating = \"bare\"\nbore = [\"0 deg: 33.92 mm +/- 0.003 mm\", \"90 deg: 33.92 mm +/- 0.003 mm\"]\nbore_depth = \"15 mm +/- 0.1 mm\"\n{extra}\npart = {{ name = \"cup\", outside = [\"33.98 mm +/- 0.003 mm\"], insertion = \"10 mm\" }}\n[head_tube.{name}.face]\ncoating = \"{coating}\"\ninner_radius = \"17 mm\"\nouter_radius = \"18 mm\"\nprobe_radius = \"18 mm\"\nprobes = [{}]\n",
            heights.join(", ")
        )
    };
    let plan = planned(&format!(
        "material = \"steel\"\n{}{}",
        end("upper", up, ""),
        end("lower", low, &format!("{gap}\nlimits = [{limits}]"))
    ));
    never_unsafe(&plan, limits);
    plan
}

const GAP: &str = "crown_gap = \"1.0 mm +/- 0.05 mm\"";

#[test]
fn both_faces_together() {
    let done = |plan: &Plan| {
        (
            operations(plan, "head_tube.upper.face"),
            operations(plan, "head_tube.lower.face"),
        )
    };
    // Each 0.05 out of square, both high at the front: 0.10 together against 0.075 as printed.
    let wedge = faces(0.05, 0.05, "bare", GAP, "");
    assert_eq!(done(&wedge), (vec![Face], vec![Face]));
    // Each 0.02: 0.04 together is within the 0.075, and out of a maker's 0.02.
    assert_eq!(done(&faces(0.02, 0.02, "bare", GAP, "")), (vec![], vec![]));
    let limit = "{ what = \"parallelism\", upper = \"0.02 mm\", owner = \"frame maker\" }";
    assert_eq!(
        done(&faces(0.02, 0.02, "bare", GAP, limit)),
        (vec![Face], vec![Face])
    );
    // High at the front above and low there below: parallel, and each square enough.
    assert_eq!(done(&faces(0.04, -0.04, "bare", GAP, "")), (vec![], vec![]));
    // On the limit: asked, not cut.
    let close = faces(0.0375, 0.0375, "bare", GAP, "");
    assert_eq!(done(&close), (vec![], vec![]));
    assert!(
        close
            .questions
            .iter()
            .any(|q| q.answer == "head_tube.lower.face.probes")
    );
    // A limit and only one face: the other is asked for.
    let plan = planned(
        "material = \"steel\"\n[head_tube.lower]\nconfirmed = \"EC34\"\nlimits = [{ what = \"parallelism\", upper = \"0.02 mm\", owner = \"frame maker\" }]",
    );
    assert!(
        plan.questions
            .iter()
            .any(|q| q.answer == "head_tube.upper.face.probes")
    );
}

#[test]
fn the_crown_below_the_lower_face() {
    let at = "head_tube.lower.face";
    // 0.10 to clean; half of 1.0 may go.
    assert_eq!(operations(&faces(0.0, 0.1, "painted", GAP, ""), at), [Face]);
    // The maker leaves 0.05 of 1.0.
    let limit = "{ what = \"crown_gap\", lower = \"0.95 mm\", owner = \"fork maker\" }";
    let tight = faces(
        0.0,
        0.2,
        "painted",
        "crown_gap = \"1.0 mm +/- 0.01 mm\"",
        limit,
    );
    assert_eq!(
        (state(&tight, at), operations(&tight, at)),
        (State::Refer, vec![Refer])
    );
    // The gap is not known: it is asked for by its own field.
    let open = faces(0.0, 0.1, "painted", "", "");
    assert_eq!(state(&open, at), Open);
    assert!(
        open.questions
            .iter()
            .any(|q| q.answer == "head_tube.lower.crown_gap")
    );
    assert!(
        open.questions
            .iter()
            .all(|q| q.answer != "head_tube.lower.limits")
    );
    // The upper face has no crown.
    assert_eq!(
        state(&faces(0.1, 0.0, "painted", "", ""), "head_tube.upper.face"),
        ToDo
    );
}
