//! Makers' limits of a mount: none is passed, an undecided one is no go, a refusal carries no amount.

use framegauge::plan::Operation::{Face, Refer};
use framegauge::plan::State::{Open, Out};
use framegauge::plan::{Plan, State};
use framegauge::quantity::settled_mm;

use super::{never_unsafe, operations, planned, said, state};

/// A painted steel mount that needs 0.10 to clean, read to `u`.
fn painted(u: f64, limits: &str) -> Plan {
    let plan = planned(&format!(
        "material = \"steel\"\n[brake.rear]\nsystem = \"is\"\ncoating = \"painted\"\npad_clearance = \"0.25 mm\"\npad_length = \"30 mm\"\nthickness = \"12.00 mm +/- 0.01 mm\"\npoints = [\"-25 mm along, -6 mm across: 0.10 mm +/- {u} mm\", \"-25 mm along, 6 mm across: 0.06 mm +/- {u} mm\", \"25 mm along, -6 mm across: 0.02 mm +/- {u} mm\", \"25 mm along, 6 mm across: 0.00 mm +/- {u} mm\"]\nlimits = [{limits}]"
    ));
    never_unsafe(&plan, limits);
    plan
}

fn depth(upper: &str) -> String {
    format!("{{ what = \"depth\", upper = \"{upper}\", owner = \"frame maker\" }}")
}

#[test]
fn the_tightest_limit_caps_the_cut() {
    let at = "brake.rear";
    let most = |plan: &Plan| settled_mm(plan.steps[0].off.unwrap().most);
    // 0.10 and its uncertainty, 0.008 sqrt 2.
    let free = painted(0.008, &depth("0.50 mm"));
    assert!((most(&free) - 0.1113).abs() < 1e-3, "{}", most(&free));
    let capped = painted(0.008, &depth("0.125 mm"));
    assert!(most(&capped) <= 0.125 && most(&capped) >= 0.10);
    // 0.20 allowed and 0.30 needed elsewhere; here 0.05 allowed: refused, and nothing reads as an order.
    let refused = painted(0.008, &depth("0.05 mm"));
    assert_eq!(
        (state(&refused, at), operations(&refused, at)),
        (State::Refer, vec![Refer])
    );
    let step = &refused.steps[0];
    assert!(step.off.is_none() && step.stops.is_empty() && step.words().starts_with("Do not"));
    // 0.095 allowed, 0.10 ± 0.03 needed: too close to tell, asked by the heights.
    let close = painted(0.02, &depth("0.095 mm"));
    assert_eq!((state(&close, at), operations(&close, at)), (Open, vec![]));
    assert!(
        close
            .questions
            .iter()
            .any(|q| q.answer == "brake.rear.points")
    );
    // The thickness: 12.00 less 11.95.
    let thin = painted(
        0.008,
        "{ what = \"thickness\", lower = \"11.95 mm\", owner = \"frame maker\" }",
    );
    assert_eq!(operations(&thin, at), [Refer]);
    let thick = painted(
        0.008,
        "{ what = \"thickness\", lower = \"11.5 mm\", owner = \"frame maker\" }",
    );
    assert_eq!(operations(&thick, at), [Face]);
    // Of several the tightest, and each is told.
    let both = painted(
        0.008,
        &format!(
            "{}, {}, {{ what = \"thickness\", lower = \"11.5 mm\", owner = \"caliper maker\" }}",
            depth("0.5 mm"),
            depth("0.05 mm")
        ),
    );
    assert_eq!(operations(&both, at), [Refer]);
    assert!(said(&both, at).contains("caliper maker"));
    // Nobody limits it: nobody cuts it.
    let none = painted(0.008, "");
    assert_eq!((state(&none, at), operations(&none, at)), (Open, vec![]));
    assert!(
        none.questions
            .iter()
            .any(|q| q.answer == "brake.rear.limits")
    );
}

/// What was cut already counts against the limit.
#[test]
fn after_a_pass() {
    let pass = |limit: &str, thickness: &str| {
        let plan = planned(&format!(
            "material = \"steel\"\n[brake.rear]\nsystem = \"is\"\ncoating = \"painted\"\npad_clearance = \"0.25 mm\"\npad_length = \"30 mm\"\nthickness = \"12.00 mm +/- 0.01 mm\"\npoints = [\"-25 mm along, -6 mm across: 0.30 mm +/- 0.004 mm\", \"-25 mm along, 6 mm across: 0.06 mm +/- 0.004 mm\", \"25 mm along, -6 mm across: 0.02 mm +/- 0.004 mm\", \"25 mm along, 6 mm across: 0.00 mm +/- 0.004 mm\"]\npasses = [{{ points = [\"-25 mm along, -6 mm across: 0.04 mm +/- 0.004 mm\", \"-25 mm along, 6 mm across: 0.04 mm +/- 0.004 mm\", \"25 mm along, -6 mm across: 0.02 mm +/- 0.004 mm\", \"25 mm along, 6 mm across: 0.00 mm +/- 0.004 mm\"]{thickness} }}]\nlimits = [{limit}]"
        ));
        never_unsafe(&plan, limit);
        (
            state(&plan, "brake.rear"),
            operations(&plan, "brake.rear"),
            said(&plan, "brake.rear"),
        )
    };
    // 0.26 is off of 0.40; 0.04 more is needed.
    assert_eq!(pass(&depth("0.40 mm"), "").1, [Face]);
    // 0.26 is off of 0.28.
    assert_eq!(pass(&depth("0.28 mm"), "").1, [Refer]);
    // More is off than was allowed.
    let (out, _, told) = pass(&depth("0.20 mm"), "");
    assert!(matches!(out, State::Refer | Out), "{told}");
    assert!(told.contains("0.060 mm over"), "{told}");
    // The thickness is that of the last reading, else what the heights leave of the first: 11.74.
    let least = "{ what = \"thickness\", lower = \"11.72 mm\", owner = \"frame maker\" }";
    assert_eq!(pass(least, "").1, [Refer]);
    assert_eq!(
        pass(least, ", thickness = \"11.90 mm +/- 0.01 mm\"").1,
        [Face]
    );
}

/// A maker's squareness, over the length that was probed.
#[test]
fn squareness() {
    let bare = |system: &str, across: f64, along: f64, upper: &str| {
        let h = |x: f64, y: f64| across * (y + 1.0) / 2.0 + along * (x + 1.0) / 2.0;
        let plan = planned(&format!(
            "material = \"steel\"\n[brake.rear]\nsystem = \"{system}\"\ncoating = \"bare\"\npoints = [\"-25 mm along, -6 mm across: {:.4} mm +/- 0.002 mm\", \"-25 mm along, 6 mm across: {:.4} mm +/- 0.002 mm\", \"25 mm along, -6 mm across: {:.4} mm +/- 0.002 mm\", \"25 mm along, 6 mm across: {:.4} mm +/- 0.002 mm\"]\nlimits = [{{ what = \"squareness\", upper = \"{upper}\", owner = \"caliper maker\" }}, {}]",
            h(-1.0, -1.0),
            h(-1.0, 1.0),
            h(1.0, -1.0),
            h(1.0, 1.0),
            depth("0.5 mm")
        ));
        never_unsafe(&plan, upper);
        (state(&plan, "brake.rear"), operations(&plan, "brake.rear"))
    };
    assert_eq!(bare("pm", 0.10, 0.0, "0.05 mm").1, [Face]);
    assert_eq!(bare("pm", 0.02, 0.0, "0.05 mm"), (State::Leave, vec![]));
    // Along the posts is no tilt of the caliper; along a tab it is.
    assert_eq!(bare("pm", 0.0, 0.20, "0.05 mm"), (State::Leave, vec![]));
    assert_eq!(bare("is", 0.0, 0.20, "0.05 mm").1, [Face]);
    // On the limit.
    assert_eq!(bare("pm", 0.05, 0.0, "0.05 mm").0, Open);
}
