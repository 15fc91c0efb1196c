//! Questions of one place that a sheet asks: written as a mechanic meets them, decided by hand.

use framegauge::fit::Out;
use framegauge::judge::{
    BoreFit, FigureName, Fit, Gauging, MemberOf, OwnLimits, Passed, Remedy, SpindleWidth,
    ThreadSeen, Verdict, Wall, WidthWindow,
};
use framegauge::measure::{Limits, Placed};
use framegauge::standard::{Joint, Tables};
use framegauge::{ErrorKind, mm};

use super::{OPEN, OUT, WITHIN, case, hold, read};

fn placed(lines: &[&str]) -> Vec<Placed> {
    lines.iter().map(|line| line.parse().unwrap()).collect()
}

fn bore(lines: &[&str]) -> Verdict {
    BoreFit {
        bore: placed(lines),
        limits: vec!["41.96 to 41.985 mm".parse::<Limits>().unwrap().into()],
        ..BoreFit::default()
    }
    .answer(Tables::ours())
    .unwrap()
}

fn cures(said: &Verdict) -> Vec<(Remedy, &str)> {
    said.cures.iter().map(|c| (c.by, &*c.at)).collect()
}

/// A shell of invented limits 41.96 to 41.985 mm; a coat is at most 0.12 mm a side (`coat_one_side`, memory).
#[test]
fn bores_by_depth_and_direction() {
    let ends = bore(&[
        "3 mm deep, 0 deg: 42.02 +/- 0.004 mm",
        "3 mm deep, 90 deg: 42.01 +/- 0.004 mm",
        "55 mm deep, 0 deg: 41.90 +/- 0.004 mm",
        "55 mm deep, 90 deg: 41.91 +/- 0.004 mm",
    ]);
    assert_eq!(
        cures(&ends),
        [
            (Remedy::OtherPart, "3.000 mm deep"),
            (Remedy::Sleeve, "3.000 mm deep"),
            (Remedy::Ream, "55.000 mm deep")
        ],
        "{ends}"
    );
    let oval = bore(&[
        "3 mm deep, 0 deg: 42.02 +/- 0.004 mm",
        "3 mm deep, 90 deg: 41.92 +/- 0.004 mm",
    ]);
    assert!(
        !oval.cures.iter().any(|c| c.by == Remedy::Ream),
        "what is over in one direction is not reamed: {oval}"
    );
    let painted = bore(&["over paint: 41.80 +/- 0.004 mm"]);
    assert_eq!(cures(&painted), [(Remedy::Clean, "")]);
    hold(
        "bores",
        &[
            case(
                "within",
                WITHIN,
                "41.97 lies between",
                bore(&["41.97 +/- 0.004 mm"]),
            ),
            case(
                "over at one end, under at the other",
                OUT,
                "each end by itself",
                ends,
            ),
            case("oval", OUT, "over in one direction", oval),
            case(
                "too small over paint",
                OPEN,
                "0.16 mm are two coats of 0.08",
                painted,
            ),
            case(
                "too large over paint",
                OUT,
                "bare it is larger still",
                bore(&["over paint: 42.05 +/- 0.004 mm"]),
            ),
            case(
                "too small by more than any coat",
                OUT,
                "0.36 mm are no two coats",
                bore(&["over paint: 41.60 +/- 0.004 mm"]),
            ),
            case(
                "by caliper",
                OPEN,
                "0.03 mm cannot show a tolerance of 0.025",
                bore(&["41.97 +/- 0.03 mm"]),
            ),
        ],
    );
}

/// Two limits of one bore: both are kept, and two that no bore keeps are a contradiction.
#[test]
fn several_limits_of_one_bore() {
    let with = |own: &[&str]| {
        BoreFit {
            bore: placed(&["43.97 +/- 0.004 mm"]),
            limits: own
                .iter()
                .map(|l| OwnLimits::of(l.parse().unwrap(), "an invented maker"))
                .collect(),
            ..BoreFit::default()
        }
        .answer(Tables::ours())
    };
    assert_eq!(with(&["43.95 to 44 mm"]).unwrap().outcome, WITHIN);
    assert_eq!(
        with(&["43.95 to 44 mm", "at least 43.98 mm"])
            .unwrap()
            .outcome,
        OUT
    );
    let error = with(&["at most 43.9 mm", "at least 43.98 mm"]).unwrap_err();
    assert_eq!(error.field(), "limits");
}

/// A row's figure by its name: 43.95 to 44.00 mm (`head_seat`, ZS44).
#[test]
fn limits_of_a_row() {
    let of = |code: &str, field: &str| {
        BoreFit {
            bore: placed(&["43.90 +/- 0.004 mm"]),
            figure: Some(FigureName {
                family: "head_seat".into(),
                code: code.into(),
                field: field.into(),
            }),
            ..BoreFit::default()
        }
        .answer(Tables::ours())
    };
    let said = of("ZS44", "bore").unwrap();
    assert_eq!(said.outcome, OUT);
    assert!(!said.sources().is_empty(), "{said}");
    let error = of("ZS99", "bore").unwrap_err();
    assert_eq!(
        (error.kind(), error.field()),
        (ErrorKind::UnknownName, "figure.code")
    );
    assert_eq!(of("ZS44", "boor").unwrap_err().field(), "figure.field");
}

/// A post of 27.08 +/- 0.05 mm in 27.20 mm sold as 27.2: 0.12 mm off, give or take 0.05, against half a step of 0.1 mm.
#[test]
fn a_post_that_may_be_off() {
    let of = |post: &str| {
        Fit {
            joint: Some(Joint::Seatpost),
            hole: MemberOf::read(read("27.20 +/- 0.02 mm")),
            shaft: MemberOf::read(read(post)),
            sold_as: Some(mm(27.2)),
            ..Fit::default()
        }
        .answer(Tables::ours())
        .unwrap()
        .out
    };
    assert_eq!(of("27.08 +/- 0.05 mm"), Some(Out::CannotTell));
    assert_eq!(of("27.08 +/- 0.01 mm"), Some(Out::Shaft));
    assert_eq!(of("27.18 +/- 0.02 mm"), Some(Out::Neither));
}

/// What a post's maker wants decides, where the published windows disagree.
#[test]
fn a_post_by_its_makers_window() {
    let of = |clearance: Option<&str>| {
        Fit {
            joint: Some(Joint::Seatpost),
            hole: MemberOf::read(read("27.30 +/- 0.01 mm")),
            shaft: MemberOf::read(read("27.20 +/- 0.01 mm")),
            clearance: clearance.map(|c| c.parse().unwrap()).into_iter().collect(),
            ..Fit::default()
        }
        .answer(Tables::ours())
        .unwrap()
        .outcome
    };
    assert_eq!(of(None), OPEN);
    assert_eq!(of(Some("0 to 0.15 mm")), WITHIN);
    assert_eq!(of(Some("0 to 0.05 mm")), OUT);
}

#[test]
fn a_window_of_another_width() {
    let of = |window: &str| {
        SpindleWidth {
            width: vec![read("68.7 +/- 0.05 mm")],
            made_for: Some(mm(68.0)),
            window: Some(window.into()),
            rule: None,
        }
        .answer(Tables::ours())
    };
    // 67.2 to 68.8 mm, and 67.5 to 68.5 mm.
    assert_eq!(of("bsc_half_axle_68").unwrap().outcome, WITHIN);
    assert_eq!(of("bsc_road_68").unwrap().outcome, OUT);
    assert_eq!(of("nonsense").unwrap_err().field(), "window");
    assert_eq!(
        of("italian_half_axle_70").unwrap_err().kind(),
        ErrorKind::Contradiction
    );
}

/// Facing is to a width: 73.5 mm of which 72.8 to 73.2 are wanted.
#[test]
fn a_width_over_its_window() {
    let said = WidthWindow {
        width: vec![read("73.50 +/- 0.02 mm")],
        wanted: vec![OwnLimits::of(
            "72.8 to 73.2 mm".parse().unwrap(),
            "the frame maker",
        )],
        ..WidthWindow::default()
    }
    .answer(Tables::ours())
    .unwrap();
    assert_eq!(said.outcome, OUT);
    assert_eq!(said.cures[0].by, Remedy::Face);
    assert_eq!(said.cures[0].size, Some(mm(73.2)));
    assert_eq!(said.millimetres("too wide by"), Some(0.3));
}

/// (36.00 - 33.95) / 2 = 1.025 mm.
#[test]
fn walls() {
    let of = |least: &[&str]| {
        Wall {
            place: None,
            outside: read("36.00 +/- 0.02 mm"),
            bore: placed(&["33.90 +/- 0.01 mm", "33.95 +/- 0.01 mm"]),
            least: least
                .iter()
                .map(|l| l.parse::<Limits>().unwrap().into())
                .collect(),
            rule: None,
        }
        .answer(Tables::ours())
        .unwrap()
    };
    assert_eq!(of(&[]).millimetres("wall"), Some(1.025));
    hold(
        "walls",
        &[
            case("nobody says", OPEN, "no least wall is published", of(&[])),
            case("enough", WITHIN, "1.025 over 0.9", of(&["at least 0.9 mm"])),
            case("too thin", OUT, "1.025 under 1.1", of(&["at least 1.1 mm"])),
            case(
                "the tightest counts",
                OUT,
                "under 1.1",
                of(&["at least 0.9 mm", "at least 1.1 mm"]),
            ),
        ],
    );
}

#[test]
fn threads_that_contradict_themselves() {
    let of = |go, not_go, seen: &[ThreadSeen]| {
        Gauging {
            go,
            not_go,
            seen: seen.to_vec(),
            ..Gauging::default()
        }
        .answer(Tables::ours())
        .unwrap()
    };
    let odd = |said: &Verdict| {
        said.findings
            .iter()
            .any(|f| f.fact.code() == "contradiction")
    };
    let (passed, failed) = (Some(Passed::Passed), Some(Passed::Failed));
    let both = of(failed, failed, &[ThreadSeen::Sound]);
    assert!(odd(&both) && both.outcome == OUT, "{both}");
    assert!(
        !odd(&of(passed, failed, &[])),
        "worn: GO passes and NOT GO runs in"
    );
    assert!(!odd(&of(passed, passed, &[ThreadSeen::Sound])));
    assert!(odd(&of(passed, None, &[ThreadSeen::Uncut])));
    // A torn thread is not chased; a fouled one is cleaned first.
    let torn = of(None, None, &[ThreadSeen::Stripped]);
    assert!(
        torn.outcome == OUT && !torn.cures.iter().any(|c| c.by == Remedy::Chase),
        "{torn}"
    );
    let fouled = of(failed, None, &[ThreadSeen::Fouled]);
    assert_eq!(fouled.cures[0].by, Remedy::Clean);
}

/// M10x1-6H: minor diameter 8.917 to 9.153 mm (ISO 965-1).
#[test]
fn a_bore_over_the_crests_proves_nothing_good() {
    let of = |minor: &str, go| {
        Gauging {
            thread: Some("M10x1-6H".parse().unwrap()),
            minor: placed(&[minor]),
            go,
            ..Gauging::default()
        }
        .answer(Tables::ours())
        .unwrap()
        .outcome
    };
    assert_eq!(of("9.05 +/- 0.02 mm", None), OPEN);
    assert_eq!(of("9.30 +/- 0.02 mm", Some(Passed::Passed)), OUT);
    assert_eq!(of("over paint: 8.80 +/- 0.02 mm", None), OPEN);
}
