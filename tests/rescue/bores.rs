//! Damaged bores and seats.

use framegauge::fit::MaterialKind;
use framegauge::measure::{Placed, Reading};
use framegauge::rescue::{BoreRescue, Damage, Rescue, Step};
use framegauge::standard::{Joint, Tables};
use framegauge::{ErrorKind, mm};

use super::{Case, MEASURE, NO, YES, exact, hold, read};

pub fn bore(joint: Joint, damage: Damage, hole: &[Reading], part: Option<Reading>) -> BoreRescue {
    let mut ask = BoreRescue::new(joint, damage);
    ask.hole = hole.iter().copied().map(Placed::from).collect();
    ask.shaft = part;
    ask
}

pub fn with(mut ask: BoreRescue, change: impl FnOnce(&mut BoreRescue)) -> Rescue {
    change(&mut ask);
    ask.options(Tables::ours()).unwrap()
}

pub fn cup(hole: f64) -> BoreRescue {
    bore(
        Joint::HeadCup,
        Damage::Loose,
        &[exact(hole)],
        Some(exact(34.0)),
    )
}

pub fn post(holes: &[f64], part: f64) -> BoreRescue {
    let holes: Vec<Reading> = holes.iter().map(|h| exact(*h)).collect();
    bore(Joint::Seatpost, Damage::Worn, &holes, Some(exact(part)))
}

#[test]
fn damages() {
    let oval = |material| {
        with(bore(Joint::HeadCup, Damage::Oval, &[], None), |a| {
            a.material = material
        })
    };
    hold(
        "damaged_bores",
        &[
            Case(
                "loose cup, nothing measured",
                &[
                    (Step::Clean, YES),
                    (Step::Gauge, YES),
                    (Step::AdjustPart, MEASURE),
                    (Step::Shim, MEASURE),
                    (Step::Compound, MEASURE),
                    (Step::NextSize, MEASURE),
                    (Step::Sleeve, MEASURE),
                    (Step::Peen, MEASURE),
                    (Step::Refer, YES),
                ],
                "every cure waits for the gap",
                BoreRescue::new(Joint::HeadCup, Damage::Loose)
                    .options(Tables::ours())
                    .unwrap(),
            ),
            Case(
                "loose cup, measured",
                &[(Step::Peen, YES)],
                "the last resort is open once the gap is known (common practice)",
                cup(34.06).options(Tables::ours()).unwrap(),
            ),
            Case(
                "oval head tube of unknown material",
                &[(Step::RoundOut, MEASURE)],
                "only ductile metal is pressed round",
                oval(None),
            ),
            Case(
                "oval metal head tube",
                &[(Step::RoundOut, YES)],
                "done on steel tubes (common practice)",
                oval(Some(MaterialKind::Metal)),
            ),
            Case(
                "oval laminate head tube",
                &[
                    (Step::RoundOut, NO),
                    (Step::NextSize, NO),
                    (Step::Sleeve, NO),
                    (Step::Peen, NO),
                    (Step::Clean, YES),
                    (Step::Compound, MEASURE),
                ],
                "laminate is neither cut nor hammered",
                oval(Some(MaterialKind::Carbon)),
            ),
            Case(
                "pinched seat tube",
                &[(Step::RoundOut, MEASURE)],
                "pressed round as an oval one is",
                bore(
                    Joint::Seatpost,
                    Damage::Pinched,
                    &[exact(27.0), exact(27.2)],
                    Some(exact(27.2)),
                )
                .options(Tables::ours())
                .unwrap(),
            ),
            Case(
                "seized post",
                &[
                    (Step::Clean, YES),
                    (Step::Free, MEASURE),
                    (Step::Refer, YES),
                ],
                "the part is still in: nothing else belongs here",
                bore(Joint::Seatpost, Damage::Seized, &[], None)
                    .options(Tables::ours())
                    .unwrap(),
            ),
            Case(
                "worn seat of an integrated bearing",
                &[(Step::Compound, MEASURE)],
                "a slip fit is not peened; steering",
                BoreRescue::new(Joint::IntegratedBearing, Damage::Worn)
                    .options(Tables::ours())
                    .unwrap(),
            ),
        ],
    );
    let left = BoreRescue::new(Joint::IntegratedBearing, Damage::Worn)
        .options(Tables::ours())
        .unwrap();
    assert_eq!(left.stand(Step::Peen), None, "a slip fit needs no grip");
}

#[test]
fn shims_and_compound() {
    let pressed = |hole: f64| with(cup(hole), |a| a.wanted_interference = Some(mm(0.05)));
    let filled = |hole: Reading| {
        with(
            bore(Joint::HeadCup, Damage::Loose, &[hole], Some(exact(34.0))),
            |a| a.compound_gap = Some(mm(0.1)),
        )
    };
    hold(
        "shims_and_compound",
        &[
            Case(
                "gap of 0.06 mm, 0.05 mm of press wanted",
                &[(Step::Shim, YES)],
                "(0.06 + 0.05) / 2 = 0.055 mm of wall (arithmetic)",
                pressed(34.06),
            ),
            Case(
                "no gap",
                &[(Step::Shim, NO)],
                "34.0 in 34.0: there is nothing to fill",
                pressed(34.0),
            ),
            Case(
                "a micrometre of gap",
                &[(Step::Shim, YES)],
                "(0.001 + 0.05) / 2",
                pressed(34.001),
            ),
            Case(
                "press not stated",
                &[(Step::Shim, MEASURE)],
                "half of gap and press together: the press is not known",
                cup(34.06).options(Tables::ours()).unwrap(),
            ),
            Case(
                "bearing pressed straight into the shell",
                &[(Step::Shim, NO)],
                "a shim deforms the ring (common practice)",
                bore(
                    Joint::DirectBearing,
                    Damage::Loose,
                    &[exact(42.05)],
                    Some(exact(42.0)),
                )
                .options(Tables::ours())
                .unwrap(),
            ),
            Case(
                "bearing on an integrated seat",
                &[(Step::Shim, YES)],
                "a slip fit takes a shim of half the gap",
                bore(
                    Joint::IntegratedBearing,
                    Damage::Worn,
                    &[exact(41.3)],
                    Some(exact(41.0)),
                )
                .options(Tables::ours())
                .unwrap(),
            ),
            Case(
                "post that is tight at one place",
                &[(Step::Shim, NO)],
                "0 at the tightest place: no room for a shim",
                post(&[27.2, 27.5], 27.2).options(Tables::ours()).unwrap(),
            ),
            Case(
                "post with 2 micrometres at the tightest place",
                &[(Step::Shim, YES)],
                "a wall of 0.001 mm: half of the tightest gap (arithmetic)",
                post(&[27.202, 27.5], 27.2).options(Tables::ours()).unwrap(),
            ),
            Case(
                "gap as wide as the compound fills",
                &[(Step::Compound, YES)],
                "0.1 mm by its data sheet, and the limit belongs to it",
                filled(exact(34.1)),
            ),
            Case(
                "gap a micrometre wider",
                &[(Step::Compound, NO)],
                "0.101 mm",
                filled(exact(34.101)),
            ),
            Case(
                "gap too close to it",
                &[(Step::Compound, MEASURE)],
                "0.09 +/- 0.02 mm: one standard uncertainty from 0.1",
                filled(read("34.09 +/- 0.02 mm")),
            ),
            Case(
                "gap known, data sheet not",
                &[(Step::Compound, MEASURE)],
                "none is published here",
                cup(34.06).options(Tables::ours()).unwrap(),
            ),
            Case(
                "data sheet known, gap not",
                &[(Step::Compound, MEASURE)],
                "the gap decides",
                with(BoreRescue::new(Joint::HeadCup, Damage::Loose), |a| {
                    a.compound_gap = Some(mm(0.1))
                }),
            ),
        ],
    );
}

#[test]
fn sizes_that_are_none() {
    let loose = || cup(34.06);
    type Change = fn(&mut BoreRescue);
    let bad: [(Change, ErrorKind, &str); 7] = [
        (
            |a| a.shaft = Some(exact(-34.0)),
            ErrorKind::OutOfRange,
            "shaft",
        ),
        (
            |a| a.outside = Some(exact(0.0)),
            ErrorKind::OutOfRange,
            "outside",
        ),
        (
            |a| a.sizes.push(mm(f64::NAN)),
            ErrorKind::NotFinite,
            "sizes",
        ),
        (
            |a| a.compound_gap = Some(mm(0.0)),
            ErrorKind::OutOfRange,
            "compound_gap",
        ),
        (
            |a| {
                a.shaft = None;
                a.compound_gap = Some(mm(f64::INFINITY));
            },
            ErrorKind::NotFinite,
            "compound_gap",
        ),
        (
            |a| a.wanted_interference = Some(mm(-0.05)),
            ErrorKind::OutOfRange,
            "wanted_interference",
        ),
        (
            |a| a.hole.push(exact(-1.0).into()),
            ErrorKind::OutOfRange,
            "",
        ),
    ];
    for (change, kind, field) in bad {
        let mut ask = loose();
        change(&mut ask);
        let error = ask.options(Tables::ours()).unwrap_err();
        assert_eq!(error.kind(), kind, "{error}");
        assert!(error.field().starts_with(field), "{error}");
    }
}
