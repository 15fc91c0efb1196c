//! Fits between parts, what of them is in and out, lengths and stacks.

use super::*;

type Named<T> = Vec<(&'static str, T)>;

fn members() -> (Named<HoleMember>, Named<ShaftMember>) {
    let at = |d: f64, axis: f64, depth: f64| {
        SizeReading::new(read(d, 0.004))
            .across(deg(axis))
            .unwrap()
            .at_depth(mm(depth))
            .unwrap()
    };
    let n7 = || HoleMember::of_class(mm(42.0), "N7".parse().unwrap()).unwrap();
    let holes = vec![
        ("42 N7", n7()),
        (
            "42 N7 read oval and tapered",
            n7().measured(&[
                at(41.981, 3.0, 2.0),
                at(41.969, 95.0, 2.0),
                at(41.974, 3.0, 9.0),
                at(41.961, 95.0, 9.0),
            ])
            .unwrap(),
        ),
        (
            "a bore read once, 41.94",
            HoleMember::of_reading(read(41.94, 0.012)).unwrap(),
        ),
        (
            "limits 41.95 to 42.00",
            HoleMember::of_limits(between(41.95, 42.0)).unwrap(),
        ),
    ];
    let h6 = || ShaftMember::of_class(mm(42.0), "h6".parse().unwrap()).unwrap();
    let shafts = vec![
        ("42 h6", h6()),
        (
            "a bearing",
            ShaftMember::of_ring(mm(42.0), RingClass::Normal).unwrap(),
        ),
        (
            "42 h6 read as 42.013",
            h6().measured_once(read(42.013, 0.003)).unwrap(),
        ),
        (
            "42 h6 read as 41.986",
            h6().measured_once(read(41.986, 0.003)).unwrap(),
        ),
    ];
    (holes, shafts)
}

#[test]
fn fits_of_parts() {
    let mut page = Page::new();
    let (holes, shafts) = members();
    let windows = [
        Wanted::interference(between(0.01, 0.04), "a tight window"),
        Wanted::clearance(between(0.002, 0.03), "a sliding window"),
    ];
    for (hole_name, hole) in &holes {
        for (shaft_name, shaft) in &shafts {
            page.title(&format!("{hole_name} / {shaft_name}"));
            let fit = fit_between(hole, shaft, DecisionRule::default()).unwrap();
            page.line(&format!(
                "{}; out: {}; tightest {}, loosest {}, mean {}",
                fit.kind(),
                fit.out(),
                json(fit.tightest()),
                json(fit.loosest()),
                json(fit.mean())
            ));
            for wanted in &windows {
                let held = fit.against(wanted).unwrap();
                page.line(&format!("{}: {}", wanted.owner, json(&held)));
                let shaft = held
                    .cure
                    .next_shaft(&[mm(41.94), mm(41.97), mm(41.99), mm(42.02)]);
                page.line(&format!(
                    "    next shaft {}",
                    shaft.map_or("none".into(), in_um)
                ));
            }
        }
    }
    page.title("one bore in full");
    let fit = fit_between(&holes[1].1, &shafts[2].1, DecisionRule::default()).unwrap();
    page.fields(&fit);
    page.fields(&fit.against_each(&windows).unwrap());
    page.check("fit_guard/fits.txt");
}

#[test]
fn lengths_and_stacks() {
    let mut page = Page::new();
    let rule = DecisionRule::default();
    page.title("lengths");
    page.said(
        "gap",
        gap_between_flanges(
            &read(86.72, 0.05),
            &read(83.9, 0.04),
            &[read(2.5, 0.01)],
            between(0.0, 0.5),
            rule,
        ),
    );
    page.said(
        "engagement",
        engagement_left(
            &read(11.4, 0.05),
            &[read(2.5, 0.01)],
            &read(9.7, 0.1),
            framegauge::Pitch::tpi(24).unwrap(),
            Limits::at_least(mm(6.0), Grade::Shop).unwrap(),
            rule,
        ),
    );
    page.said(
        "steerer",
        steerer_length(
            &[read(121.3, 0.2), read(12.05, 0.1), read(40.6, 0.05)],
            mm(3.0),
        ),
    );
    page.said(
        "post",
        post_insertion(
            &read(351.0, 1.0),
            &read(702.0, 2.0),
            &read(519.0, 1.0),
            between(75.0, 300.0),
            rule,
        ),
    );
    page.title("stack");
    let link = |nominal: f64, tolerance: f64, sign: f64| {
        Link::new(mm(nominal), mm(tolerance), sign).unwrap()
    };
    page.said(
        "gap",
        stack(&[
            link(41.3, 0.11, 1.0),
            link(25.2, 0.05, -1.0),
            link(2.1, 0.03, -2.0),
            link(9.7, 0.07, -0.5),
        ]),
    );
    page.title("posts that slide");
    let size = |v: f64, depth: f64| SizeReading::new(read(v, 0.01)).at_depth(mm(depth)).unwrap();
    let bore = [
        size(27.24, 5.0),
        size(27.22, 80.0),
        size(27.10, 110.0),
        size(26.90, 150.0),
    ];
    for (post, depth) in [(26.98, 100.0), (27.16, 70.0), (27.05, 120.0)] {
        let engaged = framegauge::Depth::new(mm(depth)).unwrap();
        page.said(
            &format!("{post} at {depth}"),
            slide(
                &bore,
                &[SizeReading::new(read(post, 0.005))],
                engaged,
                Some(mm(0.2)),
            ),
        );
    }
    page.check("fit_guard/lengths.txt");
}

#[test]
fn classes_and_rings() {
    let mut page = Page::new();
    page.title("classes");
    for class in [
        "H7", "H8", "N7", "P6", "K6", "J7", "JS7", "M7", "R6", "F8", "G6", "h6", "k5", "m6", "p6",
        "n5", "j6", "js9", "g6", "f7", "s6",
    ] {
        let said: Vec<String> = [3.0, 6.5, 18.0, 27.2, 30.0, 42.0, 49.7, 50.001, 80.0]
            .iter()
            .map(|d| match limit_deviations(mm(*d), class.parse().unwrap()) {
                Ok(found) => format!("{d}: {:+.1} {:+.1}", found.upper_um(), found.lower_um()),
                Err(error) => format!("{d}: {:?}", error.kind()),
            })
            .collect();
        page.line(&format!("{class}: {}", said.join("; ")));
    }
    for grade in ["IT5", "IT6", "IT7", "IT9", "IT11"] {
        let said: Vec<String> = [2.9, 3.0, 3.1, 31.0, 51.0]
            .iter()
            .map(|d| in_um(standard_tolerance(mm(*d), grade.parse().unwrap()).unwrap()))
            .collect();
        page.line(&format!("{grade}: {}", said.join("; ")));
    }
    for text in ["42 N7/h6", "27.2 H8/f7", "30 M7/h5"] {
        page.said(text, text.parse::<FitDesignation>());
    }
    page.title("bearing rings");
    for class in [RingClass::Normal, RingClass::Six, RingClass::Five] {
        for size in [RingSize::Bore, RingSize::Outside, RingSize::Width] {
            for d in [17.0, 30.0, 42.0, 52.0] {
                let found = ring_tolerance(size, class, mm(d)).and_then(|t| t.around(mm(d)));
                page.said(&format!("{class:?} {size:?} {d}"), found);
            }
        }
    }
    for group in [
        ClearanceGroup::C2,
        ClearanceGroup::CN,
        ClearanceGroup::C3,
        ClearanceGroup::C4,
    ] {
        for bore in [17.0, 24.0, 30.0, 30.001] {
            let (before, from) = internal_clearance(mm(bore), group).unwrap();
            let left = clearance_left(before, &[(um(2.0), um(9.0)), (um(0.0), um(3.5))]).unwrap();
            page.line(&format!(
                "{group:?} {bore}: {}; {}",
                json(&left),
                json(from)
            ));
        }
    }
    page.check("fit_guard/classes.txt");
}
