//! One size against its limits, paint on it, and how a verdict follows from what was found.

use framegauge::judge::{BoreAsk, BoreFact, Finding, NextStep, Verdict, Worked, sizes_against};
use framegauge::measure::{Bound, DecisionRule, Limits, Reading};
use framegauge::standard::{Cutting, CuttingRule, ShopRows, Tables};
use framegauge::{Evidence, Figure, Grade, Span, deg, mm};

use super::{OPEN, OUT, WITHIN, case, exact, hold, read};

fn limits() -> Limits {
    Limits::between(mm(44.0), mm(44.2), Grade::Published).unwrap()
}

fn found(readings: &[Reading], limits: Limits) -> Finding {
    let evidence = Evidence::shop("invented drawing");
    sizes_against(
        "bore",
        readings,
        &limits,
        "an invented maker",
        Some(&evidence),
        DecisionRule::default(),
    )
}

fn judged(finding: Finding) -> Verdict {
    Verdict::from_findings("invented seat", vec![finding])
}

#[test]
fn sizes() {
    let lower_only = Limits::new(Bound::At(mm(44.0)), Bound::Unknown, Grade::Published).unwrap();
    let none = Limits::new(Bound::Unknown, Bound::Unknown, Grade::Published).unwrap();
    let narrow = Limits::between(mm(44.0), mm(44.05), Grade::Published).unwrap();
    hold(
        "sizes",
        &[
            case(
                "not measured",
                OPEN,
                "there is no reading",
                judged(found(&[], limits())),
            ),
            case(
                "on the lower limit",
                WITHIN,
                "44.0 belongs to 44.0 to 44.2",
                judged(found(&[exact(44.0)], limits())),
            ),
            case(
                "a micrometre under it",
                OUT,
                "43.999",
                judged(found(&[exact(43.999)], limits())),
            ),
            case(
                "on the upper limit",
                WITHIN,
                "44.2 belongs to it",
                judged(found(&[exact(44.2)], limits())),
            ),
            case(
                "a micrometre over it",
                OUT,
                "44.201",
                judged(found(&[exact(44.201)], limits())),
            ),
            case(
                "one of three readings outside",
                OUT,
                "the worst reading decides: 44.25",
                judged(found(&[exact(44.1), exact(44.25), exact(44.05)], limits())),
            ),
            case(
                "one of three readings unsure",
                OPEN,
                "44.19 +/- 0.03 mm may be out",
                judged(found(
                    &[
                        exact(44.1),
                        read("44.19 +/- 0.03 mm"),
                        read("44.08 +/- 0.01 mm"),
                    ],
                    limits(),
                )),
            ),
            case(
                "the coarser reading is the smaller",
                WITHIN,
                "the spread carries the larger uncertainty",
                judged(found(
                    &[read("44.08 +/- 0.02 mm"), read("44.1 +/- 0.01 mm")],
                    limits(),
                )),
            ),
            case(
                "readings alike",
                WITHIN,
                "all 44.1",
                judged(found(&[exact(44.1), exact(44.1)], limits())),
            ),
            case(
                "upper limit not published",
                OPEN,
                "conformity cannot be shown without it",
                judged(found(&[exact(44.1)], lower_only)),
            ),
            case(
                "under the limit that is published",
                OUT,
                "43.9 is under 44.0 whatever the other limit is",
                judged(found(&[exact(43.9)], lower_only)),
            ),
            case(
                "no limit published",
                OPEN,
                "nothing can be shown",
                judged(found(&[exact(44.1), exact(44.3)], none)),
            ),
            case(
                "instrument too coarse",
                OPEN,
                "0.05 mm of tolerance is 2 standard uncertainties, and 3.92 are needed (ISO 14253-1:2017)",
                judged(found(&[read("44.025 +/- 0.05 mm")], narrow)),
            ),
        ],
    );
}

#[test]
fn on_paint() {
    let on = |readings: &[Reading], inside| {
        judged(found(readings, limits()).read_on_paint(inside, Tables::ours()))
    };
    let at_least = Limits::at_least(mm(44.0), Grade::Published).unwrap();
    let at_most = Limits::at_most(mm(44.2), Grade::Published).unwrap();
    hold(
        "on_paint",
        &[
            case(
                "bore too small",
                OPEN,
                "paint makes a bore read small",
                on(&[exact(43.9)], true),
            ),
            case(
                "bore too large",
                OUT,
                "paint cannot make a bore read large",
                on(&[exact(44.3)], true),
            ),
            case(
                "bore too small at one end and too large at the other",
                OUT,
                "paint explains only the one end",
                on(&[exact(43.9), exact(44.3)], true),
            ),
            case(
                "bore too small at one end and on the upper limit at the other",
                OPEN,
                "44.2 is within, so paint explains all of it",
                on(&[exact(43.9), exact(44.2)], true),
            ),
            case(
                "outside too large",
                OPEN,
                "paint makes an outside read large",
                on(&[exact(44.3)], false),
            ),
            case(
                "outside too small",
                OUT,
                "paint cannot make an outside read small",
                on(&[exact(43.9)], false),
            ),
            case(
                "outside too large at one end and too small at the other",
                OUT,
                "paint explains only the one end",
                on(&[exact(43.9), exact(44.3)], false),
            ),
            case(
                "outside too large at one end and on the lower limit at the other",
                OPEN,
                "44.0 is within",
                on(&[exact(44.0), exact(44.3)], false),
            ),
            case(
                "bore within",
                OPEN,
                "bare it is larger than 44.1, and 44.2 is its upper limit",
                on(&[exact(44.1)], true),
            ),
            case(
                "bore over its only limit, a lower one",
                WITHIN,
                "bare it is larger still",
                judged(found(&[exact(44.1)], at_least).read_on_paint(true, Tables::ours())),
            ),
            case(
                "bore smaller than any coat explains",
                OUT,
                "0.3 mm are hidden, and two coats of 0.12 mm (coat_one_side) hide 0.24",
                on(&[exact(43.7)], true),
            ),
            case(
                "not measured",
                OPEN,
                "no word on paint where nothing was read",
                on(&[], true),
            ),
            case(
                "bore too small, only that limit",
                OPEN,
                "paint explains it",
                judged(found(&[exact(43.9)], at_least).read_on_paint(true, Tables::ours())),
            ),
            case(
                "outside too large, only that limit",
                OPEN,
                "paint explains it",
                judged(found(&[exact(44.3)], at_most).read_on_paint(false, Tables::ours())),
            ),
            case(
                "bore too large, only that limit",
                OUT,
                "there is no lower limit to be under",
                judged(found(&[exact(44.3)], at_most).read_on_paint(true, Tables::ours())),
            ),
            case(
                "outside too small, only that limit",
                OUT,
                "there is no upper limit to be over",
                judged(found(&[exact(43.9)], at_least).read_on_paint(false, Tables::ours())),
            ),
        ],
    );
}

#[test]
fn verdicts_from_findings() {
    let of = |grade, outcome| Finding {
        outcome,
        grade: Some(grade),
        ..Finding::of(BoreFact::CutOnce)
    };
    let all = |findings| Verdict::from_findings("invented", findings);
    let (memory, published) = (Grade::Memory, Grade::Published);
    // Out by one is out; within needs all; a plain statement neither decides nor weakens.
    let mixed = all(vec![of(published, Some(WITHIN)), of(memory, None)]);
    assert_eq!((mixed.outcome, mixed.weakest), (WITHIN, Some(published)));
    let open = all(vec![of(published, Some(WITHIN)), of(memory, Some(OPEN))]);
    assert_eq!((open.outcome, open.weakest), (OPEN, Some(memory)));
    let out = all(vec![
        of(published, Some(OUT)),
        of(memory, Some(OPEN)),
        of(published, Some(WITHIN)),
    ]);
    assert_eq!((out.outcome, out.weakest), (OUT, Some(memory)));
    assert_eq!(
        (
            all(vec![of(memory, None)]).outcome,
            all(vec![of(memory, None)]).weakest
        ),
        (OPEN, None)
    );

    // Held to a grade: the same grade is enough, a weaker one shows nothing.
    let kept = all(vec![of(published, Some(OUT))]).demanding(published);
    assert_eq!((kept.outcome, kept.cautions.len()), (OUT, 0));
    let dropped = all(vec![of(published, Some(OUT))]).demanding(Grade::Standard);
    assert_eq!(dropped.outcome, OPEN);
    assert_eq!(dropped.cautions[0].code(), "weaker_than_asked");
    let open = open.demanding(Grade::Standard);
    assert_eq!(
        (open.outcome, open.cautions.len()),
        (OPEN, 0),
        "what is open stays open without a word"
    );

    // Evidence added later weakens, never strengthens.
    let rests = of(published, Some(WITHIN)).resting_on(Some(&Evidence::shop("a note")));
    assert_eq!(rests.grade, Some(published.weaker(Grade::Shop)));
    assert_eq!(of(memory, None).resting_on(None).grade, Some(memory));
}

#[test]
fn numbers_and_words() {
    let turn = Worked::angle("turn", deg(1.234_56), "given");
    assert_eq!(
        (turn.in_deg(), turn.in_mm(), turn.bare()),
        (Some(1.2346), None, None)
    );
    let share = Worked::plain("share", -0.000_01, "given");
    assert_eq!((share.bare(), share.in_deg()), (Some(0.0), None));
    assert!(
        share.bare().unwrap().is_sign_positive(),
        "no minus before nothing"
    );
    let length = Worked::length("wall", mm(0.75), "given");
    assert_eq!(
        (length.in_mm(), length.in_deg(), length.bare()),
        (Some(0.75), None, None)
    );
    assert_eq!(
        format!("{turn}; {share}; {length}"),
        "turn 1.23°; share 0.00; wall 0.750 mm"
    );

    let mut said = Verdict::from_findings(
        "invented",
        vec![Finding {
            outcome: Some(OUT),
            grade: Some(Grade::Memory),
            ..Finding::of(BoreFact::CutOnce)
        }],
    );
    said.beside.push(Finding::of(BoreFact::CutOnce));
    said.next.push(NextStep::of(BoreAsk::BareMetal));
    said.cautions.push(BoreFact::CutOnce.into());
    said.worked.push(length);
    assert_eq!(said.millimetres("wall"), Some(0.75));
    assert_eq!(said.millimetres("nothing of the kind"), None);
    let cut = "cutting cannot be undone; no least wall is published; never ream carbon";
    let lines: Vec<String> = said.to_string().lines().map(String::from).collect();
    assert_eq!(
        lines[..4],
        [
            "invented: out of limits.".to_owned(),
            format!("- reaming: {cut}"),
            format!("- beside: reaming: {cut}"),
            "- weakest evidence: from memory".to_owned(),
        ]
    );
    assert!(
        lines[4].starts_with("- next: measure the bare metal"),
        "{}",
        lines[4]
    );
    assert_eq!(lines[5], format!("- mind: {cut}"));
}

/// A shop that sprays thicker than the tables know writes it down: 0.3 mm a side explains 0.5 mm on diameter, 0.12 mm does not.
#[test]
fn a_coat_of_the_shop_counts() {
    let coat = Figure::known(
        Span::new(None, Some(mm(0.2)), Some(mm(0.3))).unwrap(),
        Evidence::shop("our spray booth"),
    );
    let shop = ShopRows {
        cutting_rule: vec![CuttingRule {
            code: "our_thick_coat".into(),
            about: Cutting::Coat,
            what: "thickness of our coat, one side".into(),
            window: coat,
            note: "".into(),
        }],
        ..ShopRows::default()
    };
    let limits = Limits::between(mm(41.1), mm(41.2), Grade::SecondHand).unwrap();
    let seen = |tables| {
        let readings = [read("40.60 +/- 0.02 mm")];
        sizes_against(
            "bore",
            &readings,
            &limits,
            "",
            None,
            DecisionRule::default(),
        )
        .read_on_paint(true, tables)
        .outcome
    };
    assert_eq!(seen(Tables::ours()), Some(OUT));
    assert_eq!(seen(Tables::with(&shop).unwrap()), Some(OPEN));
}
