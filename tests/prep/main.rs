//! The whole-frame plan: order, stops, honesty, and sheets that make no sense.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod edges;
mod edges_tubes;
mod frames;
mod places;
mod records;
mod refused;

use framegauge::ErrorKind;
use framegauge::measure::Outcome;
use framegauge::prep::{
    Interface, Operation, Plan, Progress, Record, WrittenSheet, pictures, prepare, prepare_with,
    record,
};
use framegauge::standard::{End, ShopRows, Tables};
use framegauge::thread::{Hand, Side, Turn};
use framegauge::{in_mm, mm, settled_mm};
use proptest::prelude::*;

fn sheet(text: &str) -> WrittenSheet {
    toml::from_str(text).unwrap_or_else(|e| panic!("{e}"))
}

fn plan(text: &str) -> Plan {
    prepare(&sheet(text).read().unwrap_or_else(|e| panic!("{e:?}")))
}

fn frame(name: &str) -> String {
    std::fs::read_to_string(format!(
        "{}/examples/frames/{name}.toml",
        env!("CARGO_MANIFEST_DIR")
    ))
    .unwrap()
}

fn words_of(plan: &Plan, interface: Interface) -> String {
    let report = plan
        .interfaces
        .iter()
        .find(|i| i.interface == interface)
        .unwrap();
    report
        .findings
        .iter()
        .map(|f| format!("{}: {}\n", f.what, f.words))
        .collect()
}

fn step(plan: &Plan, interface: Interface, operation: Operation) -> &framegauge::prep::Step {
    plan.steps
        .iter()
        .find(|s| s.interface == interface && s.operation == operation)
        .unwrap_or_else(|| panic!("no {operation} at {interface}:\n{plan}"))
}

fn order_holds(plan: &Plan) {
    let numbers: Vec<usize> = plan.steps.iter().map(|s| s.number).collect();
    assert_eq!(numbers, (1..=plan.steps.len()).collect::<Vec<_>>());
    for edge in &plan.order {
        assert!(
            edge.before < edge.after,
            "{} before {}: {}",
            edge.before,
            edge.after,
            edge.reason
        );
    }
    for step in &plan.steps {
        for question in &step.waits_for {
            assert!(
                plan.questions.iter().any(|q| q.number == *question),
                "step {} waits for nothing",
                step.number
            );
        }
        // Nothing is cut beyond what stops the cut.
        if let (Some(amount), Some(left)) = (&step.amount, step.stop.as_ref().and_then(|s| s.left))
        {
            assert!(
                amount.least <= left + mm(1e-9),
                "{}: {} of {}",
                step.title,
                in_mm(amount.least),
                in_mm(left)
            );
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// More paint never makes a verdict better, and never makes the reamer take less.
    #[test]
    fn paint_never_helps(narrowing in 0.0f64..0.25) {
        let text = |bore: f64| format!(
            "format = 1\nframe = \"f\"\nmaterial = \"steel\"\n[seat_tube]\nbelieved = \"27.2\"\ncoating = \"painted\"\nclear_depth = \"200 mm\"\nbore = [\"10 mm deep, 0 deg: {bore:.3} mm +/- 0.02 mm\", \"10 mm deep, 90 deg: 27.20 mm +/- 0.02 mm\", \"80 mm deep, 0 deg: 27.21 mm +/- 0.02 mm\", \"80 mm deep, 90 deg: 27.21 mm +/- 0.02 mm\"]\n"
        );
        let off = |plan: &Plan| plan.steps.iter().filter_map(|s| s.amount.as_ref()).map(|a| settled_mm(a.least)).fold(0.0, f64::max);
        prop_assert!(off(&plan(&text(27.2 - narrowing))) >= off(&plan(&text(27.2))));
    }

    /// A tighter width window never turns a stop into a cut.
    #[test]
    fn a_tighter_window_never_allows_more(least in 67.0f64..68.4, slack in 0.0f64..0.5) {
        let text = |least: f64| frame("painted_steel").replace(
            "window = \"bsc_half_axle_68\"",
            &format!("limits = [{{ what = \"width\", lower = \"{least:.3} mm\", owner = \"crank maker (invented)\" }}]"),
        );
        let faced = |least: f64| plan(&text(least)).steps.iter().filter(|s| s.operation == Operation::Face && matches!(s.interface, Interface::ShellSide(_)) && s.waits_for.is_empty()).count();
        prop_assert!(faced(least + slack) <= faced(least));
    }

    /// Any sheet that reads is planned: order kept, nothing panics.
    #[test]
    fn any_sheet_is_planned(bore in 20.0f64..60.0, width in 60.0f64..130.0, believed in prop::sample::select(vec!["bsc", "pf30", "italian", "BB86", "nonsense"]), material in prop::sample::select(vec!["steel", "carbon", "titanium", "unknown"])) {
        let text = format!(
            "format = 1\nframe = \"f\"\nmaterial = \"{material}\"\n[shell]\nbelieved = \"{believed}\"\nwidth = \"{width:.2} mm +/- 0.1 mm\"\nbore = [\"{bore:.2} mm +/- 0.05 mm\"]\n[head_tube.upper]\nbelieved = \"EC34\"\nbore = [\"{bore:.2} mm +/- 0.05 mm\"]\n[seat_tube]\nbore = [\"{bore:.2} mm +/- 0.05 mm\", \"{bore:.2} mm +/- 0.05 mm\"]\n[[thread]]\nplace = \"axle\"\nend = \"rear\"\nminor = [\"{bore:.2} mm +/- 0.05 mm\"]\n"
        );
        order_holds(&plan(&text));
    }
}
