//! Rings: the whole answer, every step of the decision, what a pass took off, two faces, repeats.

use super::*;

/// Invented faces, none of them symmetric.
pub(crate) fn rings() -> Vec<(&'static str, RingSurvey)> {
    let saddle = [0.031, 0.004, -0.027, 0.002, 0.035, -0.001, -0.030, 0.006];
    let even: Vec<_> = saddle
        .iter()
        .enumerate()
        .map(|(i, z)| (45.0 * i as f64, 18.7, *z, 0.003))
        .collect();
    vec![
        (
            "seven uneven angles on one circle, tilted",
            ring(&[
                (11.0, 19.1, 0.072, 0.003),
                (58.0, 19.1, 0.041, 0.005),
                (117.0, 19.1, -0.018, 0.004),
                (161.0, 19.1, -0.057, 0.004),
                (219.0, 19.1, -0.046, 0.002),
                (263.0, 19.1, -0.009, 0.004),
                (318.0, 19.1, 0.051, 0.006),
            ]),
        ),
        (
            "two circles of unlike angles, tilted, dished and bent",
            ring(&[
                (5.0, 17.9, 0.021, 0.003),
                (81.0, 17.9, 0.058, 0.003),
                (149.0, 17.9, 0.013, 0.003),
                (222.0, 17.9, -0.044, 0.003),
                (287.0, 17.9, -0.020, 0.003),
                (29.0, 20.3, 0.067, 0.004),
                (93.0, 20.3, 0.090, 0.004),
                (140.0, 20.3, 0.051, 0.004),
                (201.0, 20.3, -0.012, 0.004),
                (258.0, 20.3, -0.031, 0.004),
                (335.0, 20.3, 0.015, 0.004),
            ]),
        ),
        ("eight even places, saddle", ring(&even)),
        (
            "three places",
            ring(&[
                (20.0, 18.2, 0.013, 0.004),
                (130.0, 18.2, -0.021, 0.004),
                (265.0, 18.2, 0.034, 0.004),
            ]),
        ),
        (
            "four places on one side of the axis",
            ring(&[
                (200.0, 19.4, 0.010, 0.004),
                (251.0, 19.4, 0.003, 0.004),
                (303.0, 19.4, -0.006, 0.004),
                (349.0, 19.4, -0.001, 0.004),
            ]),
        ),
        (
            "five places, one slipped decimal",
            ring(&[
                (3.0, 18.5, 0.010, 0.002),
                (77.0, 18.5, 0.014, 0.002),
                (146.0, 18.5, 0.009, 0.002),
                (218.0, 18.5, -1.200, 0.002),
                (290.0, 18.5, 0.012, 0.002),
            ]),
        ),
        (
            "five places read with a coarse indicator",
            ring(&[
                (3.0, 18.5, 0.010, 0.030),
                (77.0, 18.5, 0.054, 0.030),
                (146.0, 18.5, 0.029, 0.030),
                (218.0, 18.5, -0.020, 0.030),
                (290.0, 18.5, -0.012, 0.030),
            ]),
        ),
    ]
}

fn goal() -> FacingGoal {
    FacingGoal::square_within(mm(0.05), mm(37.0), Grade::Published).unwrap()
}

#[test]
fn whole_answers() {
    let mut page = Page::new();
    let limits = Allowance::new([
        limit(LimitKind::MinimumWidth, "68 mm shell", 0.37, 0.012),
        limit(LimitKind::PaintLip, "paint lip", 0.41, 0.035),
    ]);
    let flat = goal().flat_within(mm(0.03), Grade::Shop).unwrap();
    for (name, survey) in rings() {
        page.title(name);
        let answer = survey
            .answer(&flat, &limits, DecisionRule::default())
            .unwrap();
        page.fields(&answer);
        let [inner, outer] = survey.circular_run_out();
        page.said("run-out inner", Ok(inner));
        page.said("run-out outer", Ok(outer));
        for warning in survey.warnings() {
            page.line(&format!("warning: {warning}"));
        }
    }
    page.check("face_guard/answers.txt");
}

#[test]
fn every_step() {
    let mut page = Page::new();
    let off = |v: f64, u: f64| Allowance::new([limit(LimitKind::SeatDepth, "seat depth", v, u)]);
    let unknown = CutLimit::unknown(LimitKind::Wall, "insert", "ask the frame maker").unwrap();
    let allowances = [
        ("no limit", Allowance::default()),
        ("0.50", off(0.50, 0.01)),
        ("0.17", off(0.17, 0.01)),
        ("0.16", off(0.16, 0.002)),
        ("0.09", off(0.09, 0.01)),
        ("0.02 known to 0.02", off(0.02, 0.02)),
        ("0.01 exactly", off(0.01, 0.0)),
        ("0 exactly", off(0.0, 0.0)),
        ("-0.10", off(-0.10, 0.01)),
        ("0.50 and an unknown", off(0.50, 0.01).and(unknown)),
    ];
    let rules = [
        DecisionRule::default(),
        DecisionRule::Iso14253Of1998,
        DecisionRule::SimpleAcceptance,
    ];
    for (name, survey) in rings().into_iter().take(3) {
        for (part, goal) in [
            ("all of it", goal()),
            ("four fifths", goal().touching(0.8).unwrap()),
        ] {
            page.title(&format!("{name}; {part}"));
            for (left, allowance) in &allowances {
                let flat = goal.clone().flat_within(mm(0.02), Grade::Memory).unwrap();
                let said: Vec<String> = rules
                    .iter()
                    .map(|rule| {
                        let report = survey.decide_facing(&flat, allowance, *rule).unwrap();
                        format!("{} ({})", report.words, report.grade)
                    })
                    .collect();
                page.line(&format!("{left}: {}", said[0]));
                for (rule, other) in rules.iter().zip(&said).skip(1) {
                    if *other != said[0] {
                        page.line(&format!("    by {rule}: {other}"));
                    }
                }
            }
        }
    }
    page.check("face_guard/steps.txt");
}

/// The surface after a cutter has gone over it, which may have stood askew.
fn cut(survey: &RingSurvey, level: f64, slope: (f64, f64)) -> RingSurvey {
    let probes: Vec<Probe> = survey
        .probes()
        .iter()
        .zip(survey.points())
        .map(|(probe, p)| {
            let left = level + slope.0 * to_mm(p.x()) + slope.1 * to_mm(p.y());
            let z = to_mm(p.z()).min(left);
            Probe {
                height: Reading::new(mm(z), probe.height.standard_uncertainty()).unwrap(),
                ..*probe
            }
        })
        .collect();
    RingSurvey::new(survey.face(), survey.datum().to_owned(), probes).unwrap()
}

#[test]
fn passes_and_two_faces() {
    let mut page = Page::new();
    let all = rings();
    for (name, survey) in all.iter().take(2) {
        for (how, after) in [
            ("square to -0.01", cut(survey, -0.01, (0.0, 0.0))),
            ("askew", cut(survey, -0.02, (0.0013, -0.0021))),
            ("hardly", cut(survey, 0.060, (0.0, 0.0))),
        ] {
            page.title(&format!("{name}, cut {how}"));
            let record = survey.compare(&after, &goal(), DecisionRule::default());
            page.fields(&record.unwrap());
            let grown = after
                .compare(survey, &goal(), DecisionRule::default())
                .unwrap();
            page.line(&format!("the other way round: {}", grown.words));
        }
    }
    let (here, there) = (&all[0].1, &all[1].1);
    page.title("both faces of one shell");
    page.fields(&here.parallelism(there, mm(37.0)).unwrap());
    page.fields(&here.misalignment(there).unwrap());
    // The second face probed at the places that lie opposite those of the first.
    let opposite: Vec<_> = [0.012, -0.031, 0.044, 0.020, -0.017, 0.008, 0.026]
        .iter()
        .zip([349.0, 302.0, 243.0, 199.0, 141.0, 97.0, 42.0])
        .map(|(z, angle)| (angle, 19.1, *z, 0.004))
        .collect();
    page.fields(&here.parallelism(&ring(&opposite), mm(37.0)).unwrap());
    page.fields(&ring(&opposite).misalignment(here).unwrap());
    page.title("pilots with play");
    for (play, guided, over) in [(0.05, 61.0, 37.0), (0.0, 9.0, 44.0), (30.0, 30.0, 41.0)] {
        let clearance = framegauge::Clearance::new(mm(play)).unwrap();
        page.said(
            &format!("{play} over {guided}, at {over}"),
            pilot_play(clearance, mm(guided), mm(over)),
        );
    }
    page.title("pooled repeats");
    let turns = [
        (
            clock(7.0),
            radius(18.8),
            &[mm(0.050), mm(0.057), mm(0.052)][..],
        ),
        (clock(130.0), radius(18.8), &[mm(0.010), mm(0.016)][..]),
        (clock(251.0), radius(18.8), &[mm(-0.030)][..]),
    ];
    let pooled = RingSurvey::from_repeats(face(), "thread", &turns, mm(0.0025)).unwrap();
    for probe in pooled.probes() {
        page.said(&probe.at.to_string(), Ok(probe.height));
    }
    page.check("face_guard/passes.txt");
}
