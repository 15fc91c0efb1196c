//! Property 9: the same said in another way gives the same plan; said less surely, it gives no cut that was not given before.

use std::collections::{BTreeMap, BTreeSet};

use framegauge::nanometres;
use framegauge::plan::Plan;

use crate::case::{Case, Failure, fails, planned};
use crate::leaf::{Leaf, Sheet, Unit};
use crate::random::Dice;
use crate::safety::kind;

/// What a plan comes to, without its words and without the order of what is equal.
#[derive(Debug, PartialEq)]
struct Gist {
    states: BTreeMap<String, String>,
    steps: Vec<String>,
    questions: Vec<String>,
}

fn gist(
    plan: &Plan,
    place: &dyn Fn(&str) -> String,
    question: &dyn Fn(&framegauge::plan::Question) -> String,
) -> Gist {
    let mut steps: Vec<String> = plan
        .steps
        .iter()
        .map(|step| {
            // Equal to the micrometre: another unit is written with fewer figures.
            let micrometres = |length| nanometres(length).map(|nm| (nm + 500).div_euclid(1000));
            let off = step
                .off
                .map(|off| (micrometres(off.least), micrometres(off.most)));
            let mut stops: Vec<_> = step
                .stops
                .iter()
                .map(|stop| stop.to_go.and_then(micrometres))
                .collect();
            stops.sort_unstable();
            let hands: Vec<_> = step.tools.iter().map(|t| (t.code, t.hand)).collect();
            let waits = step.waits_for.len();
            format!(
                "{} {} {off:?} {stops:?} {hands:?} waits {waits}",
                place(&step.place.to_string()),
                step.operation
            )
        })
        .collect();
    steps.sort_unstable();
    let mut questions: Vec<String> = plan.questions.iter().map(question).collect();
    questions.sort_unstable();
    Gist {
        states: plan
            .places
            .iter()
            .map(|p| (place(&p.place.to_string()), p.state.to_string()))
            .collect(),
        steps,
        questions,
    }
}

fn differ(what: &str, before: &Gist, after: &Gist) -> Vec<Failure> {
    let mut out = Vec::new();
    for (place, state) in &before.states {
        match after.states.get(place) {
            Some(other) if other == state => {}
            other => fails(
                &mut out,
                format!("{what}: another state at {}", kind(place)),
                format!("{place}: {state}, then {other:?}"),
            ),
        }
    }
    if !out.is_empty() {
        return out;
    }
    let only = |one: &[String], other: &[String]| {
        one.iter()
            .filter(|s| !other.contains(s))
            .cloned()
            .collect::<Vec<_>>()
    };
    for (name, one, other) in [
        ("steps", &before.steps, &after.steps),
        ("questions", &before.questions, &after.questions),
    ] {
        if one != other {
            let (gone, come) = (only(one, other), only(other, one));
            let at = gone
                .first()
                .or(come.first())
                .map(|s| s.split(' ').take(2).collect::<Vec<_>>().join(" "))
                .unwrap_or_default();
            fails(
                &mut out,
                format!("{what}: other {name} at {}", kind(&at)),
                format!("{gone:?} then {come:?}"),
            );
        }
    }
    out
}

fn same(place: &str) -> String {
    place.to_owned()
}

/// Inches and millimetres agree.
pub fn inches(case: &Case) -> Vec<Failure> {
    let Some(plan) = planned(&case.told, Unit::Inches) else {
        return vec![Failure {
            kind: "not read in inches".into(),
            words: String::new(),
        }];
    };
    let asked = |q: &framegauge::plan::Question| q.answer.clone();
    differ(
        "in inches",
        &gist(&case.plan, &same, &asked),
        &gist(&plan, &same, &asked),
    )
}

/// The order of readings, limits and entries changes nothing.
pub fn order(case: &Case) -> Vec<Failure> {
    let shuffled = shuffle(&case.told, &mut Dice::numbered(62, case.number));
    let Some(plan) = planned(&shuffled, Unit::Millimetres) else {
        return vec![Failure {
            kind: "not read in another order".into(),
            words: shuffled.toml(),
        }];
    };
    let asked = |q: &framegauge::plan::Question| {
        let answer: String = q.answer.chars().filter(|c| !c.is_ascii_digit()).collect();
        format!("{} {answer}", q.place)
    };
    differ(
        "another order",
        &gist(&case.plan, &same, &asked),
        &gist(&plan, &same, &asked),
    )
}

fn shuffle(told: &Sheet, dice: &mut Dice) -> Sheet {
    let mut out = Sheet::default();
    let count = (0..40)
        .take_while(|i| told.speaks_of(&format!("thread[{i}]")))
        .count();
    let mut places: Vec<usize> = (0..count).collect();
    mix(&mut places, dice);
    for (path, leaf) in &told.0 {
        let mut leaf = leaf.clone();
        match &mut leaf {
            Leaf::Many(many) => mix(many, dice),
            Leaf::Limits(limits) => mix(limits, dice),
            _ => {}
        }
        let moved = path.strip_prefix("thread[").and_then(|rest| {
            let (index, rest) = rest.split_once(']')?;
            Some(format!(
                "thread[{}]{rest}",
                places.get(index.parse::<usize>().ok()?)?
            ))
        });
        out.put(moved.unwrap_or_else(|| path.clone()), leaf);
    }
    out
}

fn mix<T>(list: &mut [T], dice: &mut Dice) {
    for at in (1..list.len()).rev() {
        list.swap(at, dice.below(at + 1));
    }
}

/// The other side of a shell.
fn mirrored(path: &str) -> String {
    if let Some(rest) = path.strip_prefix("shell.non_drive") {
        format!("shell.drive{rest}")
    } else if let Some(rest) = path.strip_prefix("shell.drive") {
        format!("shell.non_drive{rest}")
    } else {
        path.to_owned()
    }
}

/// With the sides of the shell exchanged, the plan is mirrored. The hands stay: they belong to the pattern.
pub fn sides(case: &Case) -> Vec<Failure> {
    // Of a hand that is told on one side only, the mirror is another sheet.
    let hands =
        ["drive", "non_drive"].map(|side| case.told.word(&format!("shell.{side}.hand")).is_some());
    if !case.told.speaks_of("shell")
        || hands[0] != hands[1]
        || case.told.0.keys().any(|k| k.starts_with("shell.half"))
    {
        return Vec::new();
    }
    let swap = |path: &str| {
        if path.ends_with(".hand") {
            path.to_owned()
        } else {
            mirrored(path)
        }
    };
    let told = Sheet(
        case.told
            .0
            .iter()
            .map(|(path, leaf)| (swap(path), leaf.clone()))
            .collect(),
    );
    let Some(plan) = planned(&told, Unit::Millimetres) else {
        return vec![Failure {
            kind: "not read with its sides exchanged".into(),
            words: told.toml(),
        }];
    };
    // Of some patterns the hand of one side is disputed and that of the other is not: it is asked first on that side only, and
    // the mirror is another sheet again.
    let asks_hand = |plan: &Plan, side: &str| {
        let field = format!("shell.{side}.hand");
        plan.questions.iter().any(|q| q.answer == field)
    };
    if [&case.plan, &plan]
        .iter()
        .any(|plan| asks_hand(plan, "drive") != asks_hand(plan, "non_drive"))
    {
        return Vec::new();
    }
    let faced =
        case.told.speaks_of("shell.drive.face") || case.told.speaks_of("shell.non_drive.face");
    // Where nothing is said of either face, one of them must be named first.
    let either = |answer: &str| match answer {
        "shell.non_drive.face.probes" if !faced => "shell.drive.face.probes".to_owned(),
        _ => answer.to_owned(),
    };
    let asked = |q: &framegauge::plan::Question| either(&q.answer);
    let mirrored_answer = |q: &framegauge::plan::Question| either(&swap(&q.answer));
    // The hand belongs to the side and not to what was exchanged: it is compared by the property of hands.
    let mut before = gist(&case.plan, &mirrored, &mirrored_answer);
    let mut after = gist(&plan, &same, &asked);
    for gist in [&mut before, &mut after] {
        for step in &mut gist.steps {
            *step = step
                .replace("Some(Left)", "Some(HAND)")
                .replace("Some(Right)", "Some(HAND)");
        }
        for question in &mut gist.questions {
            *question = question
                .replace("non_drive.hand", "SIDE.hand")
                .replace("drive.hand", "SIDE.hand");
        }
        gist.steps.sort_unstable();
        gist.questions.sort_unstable();
    }
    differ("sides exchanged", &before, &after)
}

/// More uncertainty never makes a go. Of what is not so, a finer reading may say more than a coarse one.
pub fn doubt(case: &Case) -> Vec<Failure> {
    let mut out = Vec::new();
    if case.lies || case.faults {
        return out;
    }
    let cuts = |plan: &Plan| -> BTreeSet<String> {
        plan.steps
            .iter()
            .filter(|s| s.cuts())
            .map(|s| format!("{} of {}", s.operation, s.place))
            .collect()
    };
    let before = cuts(&case.plan);
    for factor in [1.5, 4.0] {
        let mut told = case.told.clone();
        for leaf in told.0.values_mut() {
            for said in leaf.readings_mut() {
                said.u *= factor;
            }
        }
        let Some(plan) = planned(&told, Unit::Millimetres) else {
            continue;
        };
        for cut in cuts(&plan).difference(&before) {
            if unnamed(case, cut) {
                continue;
            }
            fails(
                &mut out,
                format!("{} by more uncertainty", kind(cut)),
                format!("{cut}, with {factor} times the uncertainty"),
            );
        }
    }
    out
}

/// Whether it is open what the place of a cut is: a coarse reading may agree with a name that a finer one speaks against.
fn unnamed(case: &Case, cut: &str) -> bool {
    let place = cut.rsplit(' ').next().unwrap_or_default();
    let Some(report) = case
        .plan
        .places
        .iter()
        .find(|p| p.place.to_string() == place)
    else {
        return true;
    };
    let whole = report.place.whole();
    case.plan
        .questions
        .iter()
        .any(|q| q.place.whole() == whole && !q.measure().starts_with("finer readings"))
}
