//! Decisions near their limits, zones, budgets, instruments, factors.

use super::*;
use framegauge::BoreDiameter;
use framegauge::measure::{
    Budget, Contribution, Freedom, GuardFactor, Measures, Pooled, Repeated, Shape, able,
    acceptance_zone, coverage_factor, decide, decide_from_few, instrument, instruments,
    jaw_correction, lever_factor, probability_from_few, student,
};

#[test]
fn decisions() {
    let mut page = Page::new();
    let limits = [
        ("43.95 to 44", between(43.95, 44.0)),
        (
            "at least 43.95",
            Limits::at_least(mm(43.95), Grade::Shop).unwrap(),
        ),
        (
            "at most 44",
            Limits::at_most(mm(44.0), Grade::Memory).unwrap(),
        ),
        (
            "at least 43.95, above unknown",
            Limits::new(Bound::At(mm(43.95)), Bound::Unknown, Grade::Published).unwrap(),
        ),
        (
            "below unknown, at most 44",
            Limits::new(Bound::Unknown, Bound::At(mm(44.0)), Grade::Published).unwrap(),
        ),
    ];
    let rules = [
        DecisionRule::Iso14253Of2017,
        DecisionRule::Iso14253Of1998,
        DecisionRule::SimpleAcceptance,
        DecisionRule::GuardBand(GuardFactor::new(0.6).unwrap()),
    ];
    for (name, limits) in &limits {
        page.title(name);
        page.line(&format!(
            "width {}, unknown {}",
            limits.width().map_or("-".into(), in_um),
            limits.has_unknown()
        ));
        for rule in rules {
            let zones: Vec<String> = [0.002, 0.0127, 0.0131]
                .iter()
                .map(|u| acceptance_zone(limits, mm(*u), rule).map_or("none".into(), json))
                .collect();
            page.line(&format!("{rule}: zones {}", zones.join(" and ")));
        }
        for (value, u) in [
            (43.94, 0.0),
            (43.948, 0.004),
            (43.95, 0.0),
            (43.956, 0.004),
            (43.9575, 0.004),
            (43.97, 0.004),
            (43.975, 0.02),
            (44.0, 0.004),
            (44.0066, 0.004),
            (44.01, 0.004),
        ] {
            let reading = read(value, u);
            let said: Vec<String> = rules
                .iter()
                .map(|rule| {
                    let d = decide(&reading, limits, *rule);
                    let p = d.probability.map_or("-".into(), |p| format!("{p:.6}"));
                    format!("{} {} {p}", d.outcome, d.why)
                })
                .collect();
            page.line(&format!("{value} ± {u}: {}", said.join("; ")));
            let few = Freedom::new(3.0).unwrap();
            let d = decide_from_few(&reading, few, limits);
            page.line(&format!(
                "    from few: {} {} {:.6}; margin {}, admitted {}",
                d.outcome,
                d.why,
                probability_from_few(&reading, few, limits),
                limits.margin(mm(value)).map_or("-".into(), in_um),
                limits.admits(mm(value))
            ));
        }
    }
    page.check("fit_guard/decisions.txt");
}

#[test]
fn budgets_and_instruments() {
    let mut page = Page::new();
    let line = |name: &'static str, v: f64, shape| Contribution::new(name, um(v), shape).unwrap();
    let free = |c: Contribution, nu: f64| c.known_by(Freedom::new(nu).unwrap());
    let budgets = [
        (
            "three even ones",
            vec![
                line("a", 7.0, Shape::Normal),
                line("b", 9.0, Shape::Expanded),
                line("c", 6.0, Shape::Triangular),
            ],
        ),
        (
            "one rectangle",
            vec![
                line("a", 50.0, Shape::Rectangular),
                line("b", 2.0, Shape::Normal),
            ],
        ),
        (
            "two rectangles",
            vec![
                line("a", 50.0, Shape::Rectangular),
                line("b", 31.0, Shape::Rectangular),
                line("c", 1.0, Shape::UShaped),
            ],
        ),
        (
            "few readings",
            vec![
                free(line("a", 5.0, Shape::Normal), 2.0),
                free(line("b", 3.0, Shape::Normal), 7.0),
                line("c", 4.0, Shape::Resolution),
            ],
        ),
        (
            "weighed",
            vec![
                line("a", 8.0, Shape::Rectangular).weighing(-0.5).unwrap(),
                line("b", 3.0, Shape::Normal).weighing(2.0).unwrap(),
            ],
        ),
    ];
    for (name, lines) in budgets {
        page.title(name);
        let budget = Budget::new(lines).unwrap();
        page.fields(&budget);
        let coverage = budget.coverage();
        page.line(&format!(
            "{:?}, factor {:.9}, {}; freedom {:.6}",
            coverage.shape,
            coverage.factor,
            in_um(coverage.expanded),
            budget.freedom().degrees()
        ));
        page.said("reading", budget.reading(mm(43.97)));
    }
    page.title("instruments");
    for known in instruments() {
        for size in [7.0, 44.0, 110.0] {
            let said = known.permissible_error(mm(size)).map(in_um);
            page.said(&format!("{} at {size}, permissible", known.code), said);
            page.said("    reading", known.reading(mm(size)));
        }
    }
    page.said("none", instrument("eyeball").map(|i| i.code.clone()));
    for (low, high, what) in [
        (43.95, 44.0, Measures::Inside),
        (41.9, 42.3, Measures::Outside),
        (12.0, 12.004, Measures::Depth),
    ] {
        page.said(
            &format!("{low} to {high}"),
            Ok(able(
                instruments(),
                &between(low, high),
                what,
                DecisionRule::default(),
            )),
        );
    }
    page.check("fit_guard/budgets.txt");
}

#[test]
fn factors() {
    let mut page = Page::new();
    page.title("coverage factors and tails");
    for nu in [1.0, 2.0, 3.5, 7.0, 16.0, 49.0, 300.0, f64::INFINITY] {
        let freedom = Freedom::new(nu).unwrap_or(Freedom::EXACT);
        let k: Vec<String> = [0.5, 0.68, 0.95, 0.99]
            .iter()
            .map(|share| format!("{:.9}", coverage_factor(*share, freedom).unwrap()))
            .collect();
        let tails: Vec<String> = [-7.0, -1.3, -0.2, 0.0, 0.6, 2.4, 11.0]
            .iter()
            .map(|t| format!("{:.12}", student(*t, freedom)))
            .collect();
        page.line(&format!("{nu}: {}; {}", k.join(" "), tails.join(" ")));
    }
    page.title("corrections");
    for (d, land) in [(27.2, 0.5), (9.6, 0.8), (44.0, 0.2)] {
        let bore = BoreDiameter::new(mm(d)).unwrap();
        page.line(&format!(
            "jaws {land} in {d}: {}",
            in_um(jaw_correction(bore, mm(land)).unwrap())
        ));
    }
    for angle in [-20.0, 0.0, 17.0, 60.0] {
        page.said(&format!("lever at {angle}"), lever_factor(deg(angle)));
    }
    page.title("repeats");
    let of = |all: &[f64]| Repeated::of(&all.iter().map(|v| mm(*v)).collect::<Vec<_>>()).unwrap();
    let places = [
        of(&[68.02, 68.05, 68.03, 68.06]),
        of(&[68.11, 68.10]),
        of(&[67.98, 68.00, 67.93]),
    ];
    let pooled = Pooled::over(&places).unwrap();
    page.line(&format!(
        "pooled {} with {}",
        in_um(pooled.deviation()),
        pooled.freedom().degrees()
    ));
    for place in &places {
        page.line(&format!(
            "mean {}, s {}, of mean {}, freedom {}, pooled {}",
            in_um(place.mean()),
            in_um(place.deviation()),
            in_um(place.uncertainty_of_mean()),
            place.freedom().degrees(),
            in_um(pooled.uncertainty_of_mean(place.count() as u32))
        ));
        page.said("    alone", place.reading(mm(0.003), None));
        page.said("    pooled", place.reading(mm(0.003), Some(&pooled)));
    }
    page.check("fit_guard/factors.txt");
}
