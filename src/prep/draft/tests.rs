//! The order of work, rule by rule.

use super::*;

/// No pair of stages and interfaces may demand both directions.
#[test]
fn rules_contain_no_circle_of_two() {
    let interfaces = [
        Interface::SeatTube,
        Interface::Shell,
        Interface::ShellSide(Side::Drive),
        Interface::ShellSide(Side::NonDrive),
        Interface::HeadUpper,
        Interface::HeadLower,
        Interface::Crown,
        Interface::Thread(0),
        Interface::Brake(0),
    ];
    let stages = [
        Stage::Clean,
        Stage::Bore,
        Stage::Thread,
        Stage::Face,
        Stage::Check,
    ];
    let steps: Vec<DraftStep> = interfaces
        .iter()
        .flat_map(|i| {
            stages.iter().map(|s| DraftStep {
                end: End::Rear,
                ..DraftStep::new(*i, *s, Operation::Check, "", "")
            })
        })
        .collect();
    for a in &steps {
        for b in &steps {
            let both = must_precede(a, b).is_some() && must_precede(b, a).is_some();
            assert!(
                !both,
                "{} {:?} and {} {:?}",
                a.interface, a.stage, b.interface, b.stage
            );
        }
    }
}

fn at(interface: Interface, stage: Stage, end: End) -> DraftStep {
    DraftStep {
        end,
        ..DraftStep::new(interface, stage, Operation::Check, "", "")
    }
}

/// The rules of the order of work and their reasons (common practice), pair by pair; what has no rule may stand anywhere.
#[test]
fn each_rule_gives_its_reason() {
    use Interface::{Brake, Crown, HeadLower, HeadUpper, SeatTube, Shell, ShellSide, Thread};
    use Stage::{Bore, Check, Clean, Face};
    let thread = Stage::Thread;
    let drive = ShellSide(Side::Drive);
    let other = ShellSide(Side::NonDrive);
    for (before, after, reason) in [
        (
            (SeatTube, Bore),
            (drive, thread),
            Some("seat tube comes first"),
        ),
        ((SeatTube, Clean), (drive, thread), None),
        (
            (HeadUpper, Clean),
            (HeadUpper, Bore),
            Some("clean before cutting"),
        ),
        (
            (HeadUpper, Clean),
            (HeadUpper, Face),
            Some("clean before cutting"),
        ),
        ((drive, thread), (drive, Face), Some("thread before face")),
        (
            (HeadUpper, Bore),
            (HeadUpper, Face),
            Some("bore before face"),
        ),
        (
            (Thread(0), Bore),
            (Thread(0), thread),
            Some("hole before thread"),
        ),
        ((drive, Face), (drive, Check), Some("check after the cut")),
        (
            (drive, thread),
            (other, Face),
            Some("both threads before either face"),
        ),
        ((drive, Face), (other, thread), None),
        ((drive, thread), (other, thread), None),
        ((drive, Face), (other, Face), None),
        (
            (HeadUpper, Bore),
            (HeadLower, Face),
            Some("both bores before either face"),
        ),
        (
            (HeadLower, Bore),
            (HeadUpper, Face),
            Some("both bores before either face"),
        ),
        ((HeadUpper, Bore), (HeadLower, Bore), None),
        ((HeadUpper, Bore), (drive, Face), None),
        ((Shell, Bore), (HeadUpper, Face), None),
        ((HeadUpper, Clean), (HeadLower, Face), None),
        (
            (Thread(0), thread),
            (Brake(0), Face),
            Some("axle thread before brake mount"),
        ),
        ((Thread(0), thread), (Brake(0), Check), None),
        ((Thread(0), Clean), (Brake(0), Face), None),
        (
            (HeadLower, Face),
            (Crown, Check),
            Some("brings the crown closer"),
        ),
        ((HeadLower, Face), (Crown, Clean), None),
        ((HeadLower, Bore), (Crown, Check), None),
        ((HeadUpper, Face), (Crown, Check), None),
    ] {
        let found = must_precede(
            &at(before.0, before.1, End::Rear),
            &at(after.0, after.1, End::Rear),
        );
        let told = match (found, reason) {
            (Some(found), Some(reason)) => found.contains(reason),
            (found, reason) => found.is_none() && reason.is_none(),
        };
        assert!(
            told,
            "{} {:?} before {} {:?}: {found:?}",
            before.0, before.1, after.0, after.1
        );
    }
    // The cutter of a mount pilots on the axle of its own wheel; a thread of no wheel is no axle.
    let held = |thread: End, mount: End| {
        must_precede(
            &at(Thread(0), Stage::Thread, thread),
            &at(Brake(0), Face, mount),
        )
        .is_some()
    };
    assert!(held(End::Front, End::Front) && !held(End::Front, End::Rear));
    assert!(!held(End::Both, End::Both));
}

/// Steps that were planned the wrong way round are put in order; what no rule parts keeps the planned order.
#[test]
fn steps_are_put_in_order() {
    let sheet = FrameSheet::default();
    let mut draft = Draft::new(&sheet, Tables::ours());
    let drive = Interface::ShellSide(Side::Drive);
    let other = Interface::ShellSide(Side::NonDrive);
    for (interface, stage) in [
        (Interface::Brake(0), Stage::Face),
        (Interface::Thread(0), Stage::Thread),
        (drive, Stage::Face),
        (other, Stage::Thread),
        (Interface::SeatTube, Stage::Bore),
    ] {
        draft.step(at(interface, stage, End::Rear));
    }
    let plan = draft.finish();
    let order: Vec<Interface> = plan.steps.iter().map(|s| s.interface).collect();
    assert_eq!(
        order,
        [
            Interface::SeatTube,
            Interface::Thread(0),
            Interface::Brake(0),
            other,
            drive
        ]
    );
    assert_eq!(
        plan.steps.iter().map(|s| s.number).collect::<Vec<_>>(),
        [1, 2, 3, 4, 5]
    );
    assert!(plan.order.iter().all(|edge| edge.before < edge.after));
    assert_eq!(
        plan.order.len(),
        6,
        "four after the seat tube, one axle, one shell"
    );
}
