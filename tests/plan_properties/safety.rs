//! Properties 1, 3, 6, 7, 8: what may be cut, with what, from where, in which order.

use framegauge::identify::Standing;
use framegauge::plan::{Operation, Step};
use framegauge::standard::Turning;
use framegauge::thread::{Hand, Turn};

use crate::case::{Case, Failure, fails};
use crate::rows::{hands_of, is_metal, use_hand, uses};

/// 1. No cut in carbon or in unknown material; in a bonded insert only with its maker's consent.
pub fn material(case: &Case) -> Vec<Failure> {
    let mut out = Vec::new();
    for (step, place) in case.cuts() {
        let operation = step.operation;
        match case.material(&place) {
            None => fails(
                &mut out,
                format!("{operation} in unknown material at {}", kind(&place)),
                &place,
            ),
            Some(m @ ("carbon" | "plastic")) => fails(
                &mut out,
                format!("{operation} in {m} at {}", kind(&place)),
                &place,
            ),
            Some(_) => {
                let bonded = case.told.word("material") == Some("carbon");
                if bonded && case.consent(&place).is_none() {
                    fails(
                        &mut out,
                        format!(
                            "{operation} in a bonded insert at {} without consent",
                            kind(&place)
                        ),
                        &place,
                    );
                }
            }
        }
        if case.told.word("material").is_some_and(|m| !is_metal(m))
            && case.told.word("material") != Some("carbon")
        {
            let joint = case.material(&place);
            if joint.is_none_or(|m| !is_metal(m)) {
                fails(
                    &mut out,
                    format!("{operation} where nothing is metal"),
                    &place,
                );
            }
        }
    }
    out
}

/// A place without what tells two of its kind apart.
pub fn kind(place: &str) -> String {
    let mut kind = place.replace("non_drive", "drive");
    for (one, all) in [
        ("upper", "END"),
        ("lower", "END"),
        ("rear", "END"),
        ("front", "END"),
        ("left", "SIDE"),
        ("right", "SIDE"),
    ] {
        kind = kind.replace(one, all);
    }
    if let Some((boss, _)) = kind.split_once('.').filter(|(whole, _)| *whole == "boss") {
        return boss.to_owned();
    }
    kind
}

/// 3. A step that refers or checks carries nothing to cut with, and does not read as an order.
pub fn refusals(case: &Case) -> Vec<Failure> {
    let mut out = Vec::new();
    for step in &case.plan.steps {
        let operation = step.operation;
        if !step.cuts() && (step.off.is_some() || !step.stops.is_empty()) {
            fails(
                &mut out,
                format!("{operation} with an amount or a stop"),
                step.words(),
            );
        }
        if !matches!(operation, Operation::Refer | Operation::Check) {
            continue;
        }
        let carries = [
            ("tools", !step.tools.is_empty()),
            ("proof", step.proof.is_some()),
            ("passes", !step.passes.is_empty()),
            ("a pilot", step.pilot.is_some()),
            ("a start", !step.start.is_empty()),
            ("a turn", step.turn.is_some() || step.turning().is_some()),
        ];
        for (what, _) in carries.iter().filter(|(_, carries)| *carries) {
            fails(
                &mut out,
                format!("{operation} carries {what}"),
                step.words(),
            );
        }
        let first = step
            .words()
            .split(' ')
            .next()
            .unwrap_or_default()
            .to_lowercase();
        if [
            "ream", "face", "chase", "tap", "deepen", "open", "cut", "drill", "bore",
        ]
        .contains(&first.as_str())
        {
            fails(
                &mut out,
                format!("{operation} reads as an order"),
                step.words(),
            );
        }
    }
    out
}

/// Whether a thread is told to have lost metal.
pub fn torn(case: &Case, path: &str) -> bool {
    let told = &case.told;
    let word = |field: &str| told.word(&format!("{path}.{field}"));
    let after =
        (0..told.passes(path)).any(|i| word(&format!("passes[{i}].not_go")) == Some("failed"));
    matches!(word("state"), Some("stripped" | "loose"))
        || word("not_go") == Some("failed")
        || word("not_go_after") == Some("failed")
        || after
}

/// 6. The pilot is there: no stuck cup, no torn thread, no filled bore; and what is piloted on is cut first.
pub fn pilots(case: &Case) -> Vec<Failure> {
    let mut out = Vec::new();
    let stuck =
        |end: &str| case.told.word(&format!("head_tube.{end}.part.fitted")) == Some("stuck");
    let fitted = |end: &str| {
        matches!(
            case.told.word(&format!("head_tube.{end}.part.fitted")),
            Some("stuck" | "yes")
        )
    };
    for (step, place) in case.cuts() {
        let operation = step.operation;
        let parts: Vec<&str> = place.split('.').collect();
        match parts.as_slice() {
            ["head_tube", end, ..] => {
                let other = if *end == "upper" { "lower" } else { "upper" };
                if stuck(end) || fitted(end) {
                    fails(&mut out, format!("{operation} where a part sits"), &place);
                }
                // A bore is deepened along itself.
                if stuck(other) && operation != Operation::Deepen {
                    fails(
                        &mut out,
                        format!("{operation} piloted by a bore that is filled"),
                        &place,
                    );
                }
            }
            ["shell", side, "face"] => {
                for side in ["drive", "non_drive"] {
                    if torn(case, &format!("shell.{side}")) {
                        fails(
                            &mut out,
                            format!("{operation} piloted by a torn thread"),
                            format!("{place}, torn {side}"),
                        );
                    }
                }
                let chases: Vec<&Step> = case
                    .plan
                    .steps
                    .iter()
                    .filter(|s| {
                        s.operation == Operation::Chase && s.place.to_string().starts_with("shell.")
                    })
                    .collect();
                for chase in chases {
                    if chase.number > step.number
                        || !step.after.iter().any(|a| a.step == chase.number)
                    {
                        fails(
                            &mut out,
                            "face before both threads are sound",
                            format!("{place} before {}", chase.place),
                        );
                    }
                }
                let other = if *side == "drive" {
                    "non_drive"
                } else {
                    "drive"
                };
                for side in [*side, other] {
                    let wants_thread = case.told.word("shell.pitch").is_some();
                    let place = format!("shell.{side}");
                    let refused = case.has(&place, &[Operation::Refer]);
                    if wants_thread && refused {
                        fails(
                            &mut out,
                            "face while a thread of the shell is referred",
                            &place,
                        );
                    }
                }
            }
            ["brake", end] => {
                for path in case.paths(&format!("axle.{end}")) {
                    if torn(case, &path) {
                        fails(
                            &mut out,
                            format!("{operation} piloted by a torn axle thread"),
                            &place,
                        );
                    }
                }
            }
            ["shell", side] if operation == Operation::Chase => {
                let other = if *side == "drive" {
                    "shell.non_drive"
                } else {
                    "shell.drive"
                };
                if torn(case, other)
                    && step
                        .pilot
                        .as_ref()
                        .is_some_and(|p| p.to_string().contains("other side"))
                {
                    fails(&mut out, "chaser guided by a torn thread", &place);
                }
            }
            _ => {}
        }
        if matches!(operation, Operation::Chase | Operation::Tap)
            && case.paths(&place).iter().any(|path| torn(case, path))
        {
            fails(&mut out, format!("{operation} of a torn thread"), &place);
        }
        for after in &step.after {
            if after.step >= step.number {
                fails(&mut out, "a step after a later one", &place);
            }
        }
    }
    out
}

/// The hand that a place's own facts fix: told, or that of the pattern that was identified, or of the side of a pedal.
fn hand(case: &Case, place: &str) -> Option<Hand> {
    let told = case
        .paths(place)
        .iter()
        .find_map(|path| case.told.word(&format!("{path}.hand")).map(str::to_owned));
    let named = || match place {
        "pedal.left" => Some("left".to_owned()),
        "pedal.right" => Some("right".to_owned()),
        "shell.drive" | "shell.non_drive" => {
            let side = usize::from(place == "shell.non_drive");
            leading(case, "shell", &|code| {
                hands_of(code).and_then(|hands| hands[side])
            })
        }
        _ => {
            let path = case.paths(place).into_iter().next()?;
            let part = case.told.word(&format!("{path}.place"))?.to_owned();
            let by_size = || {
                let size = ["mate", "believed"]
                    .iter()
                    .find_map(|f| case.told.word(&format!("{path}.{f}")))?;
                one_of(uses(&part, size).iter().map(|code| use_hand(code)))
            };
            by_size()
                .map(str::to_owned)
                .or_else(|| leading(case, place, &|code| use_hand(code)))
        }
    };
    told.or_else(named)?.parse().ok()
}

/// The hand of those that hold four fifths of the ranking of a place (design: identification).
fn leading(
    case: &Case,
    place: &str,
    hand: &dyn Fn(&str) -> Option<&'static str>,
) -> Option<String> {
    let report = case
        .plan
        .places
        .iter()
        .find(|p| p.place.to_string() == place)?;
    let found = report.identification.as_ref()?;
    ["left", "right"].into_iter().find_map(|wanted| {
        let of_hand = found
            .candidates
            .iter()
            .filter(|c| c.standing == Standing::Possible && hand(&c.code) == Some(wanted));
        (of_hand.map(|c| c.share).sum::<f64>() >= 0.8).then(|| wanted.to_owned())
    })
}

/// The one hand that all of them have.
fn one_of(mut hands: impl Iterator<Item = Option<&'static str>>) -> Option<&'static str> {
    let first = hands.next()??;
    hands.all(|hand| hand == Some(first)).then_some(first)
}

/// Whether a thread of this place exists with a left hand.
fn may_be_left(case: &Case, place: &str) -> bool {
    let part = || {
        case.paths(place)
            .iter()
            .find_map(|p| case.told.word(&format!("{p}.place")).map(str::to_owned))
    };
    place.starts_with("pedal")
        || place.starts_with("shell.")
        || part().is_some_and(|p| {
            matches!(
                p.as_str(),
                "hanger_bolt" | "freewheel" | "lockring" | "pedal"
            )
        })
}

/// 7. A thread that exists with both hands is cut only by a hand that is told or fixed; the tool has that hand.
pub fn hands(case: &Case) -> Vec<Failure> {
    let mut out = Vec::new();
    for (step, place) in case.cuts() {
        if !matches!(step.operation, Operation::Chase | Operation::Tap) {
            continue;
        }
        let operation = step.operation;
        let fixed = hand(case, &place);
        if fixed.is_none() && may_be_left(case, &place) {
            fails(
                &mut out,
                format!("{operation} at {} without a hand", kind(&place)),
                &place,
            );
        }
        let cutters: Vec<_> = step
            .tools
            .iter()
            .filter(|t| matches!(t.code, "tap" | "chaser"))
            .collect();
        if cutters.is_empty() {
            fails(
                &mut out,
                format!("{operation} without a tap or chaser"),
                &place,
            );
        }
        for tool in cutters {
            match (tool.hand, fixed) {
                (None, _) => fails(
                    &mut out,
                    format!("{operation} with a cutter of no hand"),
                    &place,
                ),
                (Some(tool), Some(fixed)) if tool != fixed => {
                    fails(
                        &mut out,
                        format!("{operation} at {} with the other hand", kind(&place)),
                        &place,
                    );
                }
                (Some(hand), _) if step.turn != Some(hand.tighten()) => {
                    fails(
                        &mut out,
                        format!("{operation} turned against its hand"),
                        format!("{place}: {:?}", step.turn),
                    );
                }
                _ => {}
            }
        }
    }
    out
}

/// 8. Turning is told from the end at which the tool starts; reamers and facers are never turned back, taps and chasers are.
pub fn turning(case: &Case) -> Vec<Failure> {
    let mut out = Vec::new();
    for (step, place) in case.cuts() {
        let operation = step.operation;
        if step.start.trim().is_empty() {
            fails(
                &mut out,
                format!("{operation} at {} without a start", kind(&place)),
                &place,
            );
        }
        if step.turn.is_none() {
            fails(
                &mut out,
                format!("{operation} at {} without a turn", kind(&place)),
                &place,
            );
        }
        let turning = step.turning();
        match operation {
            Operation::Chase | Operation::Tap if turning != Some(Turning::BackAndForth) => {
                fails(&mut out, format!("{operation} is not turned back"), &place);
            }
            Operation::Ream | Operation::Deepen | Operation::Face
                if turning != Some(Turning::OneWay) =>
            {
                fails(
                    &mut out,
                    format!("{operation} at {} may be turned back", kind(&place)),
                    format!("{place}: {turning:?}"),
                );
            }
            Operation::Ream | Operation::Deepen | Operation::Face
                if step.turn == Some(Turn::CounterClockwise) =>
            {
                fails(&mut out, format!("{operation} turned backwards"), &place);
            }
            _ => {}
        }
        if step.pilot.is_none() {
            fails(
                &mut out,
                format!("{operation} at {} without a pilot", kind(&place)),
                &place,
            );
        }
    }
    out
}
