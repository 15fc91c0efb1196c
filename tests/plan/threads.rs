//! Threads: hands, gauges, holes to tap, parts that can be replaced, statements that contradict each other.

use framegauge::plan::Operation::{Chase, Check, Ream, Refer, Replace, Tap};
use framegauge::plan::State;
use framegauge::plan::State::{Leave, Open, ToDo};
use framegauge::standard::Turning;
use framegauge::thread::{Hand, Turn};

use super::{Case, hold, planned, said};

/// A chaser follows the hand of the thread; where a place has a left-hand variant nobody assumes one.
#[test]
fn hands() {
    hold(&[
        Case(
            "left pedal: its row says left-hand",
            "pedal.left",
            ToDo,
            &[Chase],
            &[],
            r#"material = "aluminium"
[pedal.left]
believed = "M14x1.25"
pitch = "1.25 mm"
state = "fouled"
coating = "overspray""#,
        ),
        Case(
            "a pedal whose side nobody said: which hand?",
            "pedal",
            Open,
            &[],
            &["thread[0].hand"],
            r#"material = "aluminium"
[[thread]]
place = "pedal"
believed = "M14x1.25"
pitch = "1.25 mm"
state = "fouled""#,
        ),
        Case(
            "a left hand read in a right pedal thread: one of the two is wrong",
            "pedal.right",
            Open,
            &[],
            &[],
            r#"material = "aluminium"
[pedal.right]
believed = "M14x1.25"
pitch = "1.25 mm"
hand = "left"
state = "fouled""#,
        ),
        Case(
            "a spoke thread in an axle: is it really that?",
            "axle.front",
            Open,
            &[Chase],
            &["axle.front.confirmed"],
            r#"material = "steel"
[axle.front]
believed = "M2.2x0.4"
pitch = "0.4 mm"
state = "fouled""#,
        ),
    ]);
    let plan = planned(
        "material = \"aluminium\"\n[pedal.left]\nbelieved = \"M14x1.25\"\npitch = \"1.25 mm\"\nstate = \"fouled\"\ncoating = \"overspray\"",
    );
    let step = &plan.steps[0];
    assert_eq!(step.tools[0].hand, Some(Hand::Left));
    assert_eq!(step.turn, Some(Turn::CounterClockwise));
    assert_eq!(step.turning(), Some(Turning::BackAndForth));
}

/// Metal that is gone is not chased back.
#[test]
fn lost_and_crossed() {
    hold(&[
        Case(
            "a crossed hanger that can be had new is replaced",
            "hanger.rear",
            ToDo,
            &[Replace],
            &[],
            r#"material = "aluminium"
[hanger.rear]
believed = "M10x1"
pitch = "1 mm"
state = "crossed"
coating = "bare"
replaceable = true"#,
        ),
        Case(
            "crossed in the dropout itself: followed from its good end, gauged, alignment checked",
            "hanger.rear",
            ToDo,
            &[Chase, Check],
            &[],
            r#"material = "steel"
[hanger.rear]
believed = "M10x1"
pitch = "1 mm"
state = "crossed"
coating = "bare""#,
        ),
        Case(
            "torn out of the dropout: not ours",
            "hanger.rear",
            State::Refer,
            &[Refer],
            &[],
            r#"material = "steel"
[hanger.rear]
believed = "M10x1"
pitch = "1 mm"
state = "stripped""#,
        ),
        Case(
            "an inch pitch in a metric hanger, as some write it: no table lists it, so it is proved before it is chased",
            "hanger.rear",
            Open,
            &[Chase, Check],
            &["hanger.rear.confirmed"],
            r#"material = "steel"
[hanger.rear]
believed = "M10x26tpi"
pitch = "26 tpi"
state = "fouled"
coating = "painted""#,
        ),
        Case(
            "loose with one part says nothing yet: another part or NOT GO",
            "axle.rear",
            Open,
            &[],
            &["axle.rear.not_go"],
            r#"material = "steel"
[axle.rear]
mate = "M10x1"
pitch = "1 mm"
state = "loose"
coating = "bare""#,
        ),
        Case(
            "loose with several good parts: metal is gone",
            "axle.rear",
            State::Refer,
            &[Refer],
            &[],
            r#"material = "steel"
[axle.rear]
mate = "M10x1"
pitch = "1 mm"
state = "loose_with_several"
coating = "bare""#,
        ),
        Case(
            "NOT GO runs in although it takes its part: over-tapped",
            "axle.rear",
            State::Refer,
            &[Refer],
            &[],
            r#"material = "steel"
[axle.rear]
mate = "M10x1"
pitch = "1 mm"
state = "takes_part"
go = "passed"
not_go = "failed""#,
        ),
        Case(
            "sound, bare, takes its part: left alone",
            "axle.rear",
            Leave,
            &[],
            &[],
            r#"material = "steel"
[axle.rear]
mate = "M10x1"
pitch = "1 mm"
state = "sound"
go = "passed"
coating = "bare""#,
        ),
    ]);
}

/// A plain hole that is to get a thread: M5x0.8 wants 4.134 to 4.334 mm, M6x1 4.917 to 5.153 mm (ISO 965-1, 6H).
#[test]
fn holes_to_tap() {
    hold(&[
        Case(
            "the right hole in aluminium: tapped",
            "boss.bottle_boss",
            ToDo,
            &[Tap],
            &[],
            r#"material = "aluminium"
[[thread]]
place = "bottle_boss"
mate = "M5x0.8"
minor = ["0 deg: 4.22 mm +/- 0.02 mm", "90 deg: 4.23 mm +/- 0.02 mm"]
state = "uncut""#,
        ),
        Case(
            "too small: opened first",
            "boss.rack_boss",
            ToDo,
            &[Ream, Tap],
            &[],
            r#"material = "steel"
[[thread]]
place = "rack_boss"
mate = "M6x1"
minor = ["0 deg: 4.70 mm +/- 0.02 mm", "90 deg: 4.71 mm +/- 0.02 mm"]
state = "uncut""#,
        ),
        Case(
            "too large: too little thread would be left",
            "boss.rack_boss",
            State::Refer,
            &[Refer],
            &[],
            r#"material = "steel"
[[thread]]
place = "rack_boss"
mate = "M6x1"
minor = ["0 deg: 5.40 mm +/- 0.02 mm"]
state = "uncut""#,
        ),
        Case(
            "the maker wants a smaller hole than the standard allows, and it is larger than that: not tapped",
            "boss.rack_boss",
            State::Refer,
            &[Refer],
            &[],
            r#"material = "steel"
[[thread]]
place = "rack_boss"
mate = "M6x1"
minor = ["0 deg: 5.10 mm +/- 0.02 mm"]
state = "uncut"
limits = [{ what = "minor", lower = "4.95 mm", upper = "5.00 mm", owner = "builder (invented)" }]"#,
        ),
        Case(
            "carbon: never, right hole or not",
            "boss.bottle_boss",
            State::Refer,
            &[Refer],
            &[],
            r#"material = "carbon"
[[thread]]
place = "bottle_boss"
mate = "M5x0.8"
minor = ["0 deg: 4.22 mm +/- 0.02 mm"]
state = "uncut""#,
        ),
        Case(
            "plastic: no",
            "boss.bottle_boss",
            State::Refer,
            &[Refer],
            &[],
            r#"material = "plastic"
[[thread]]
place = "bottle_boss"
mate = "M5x0.8"
minor = ["0 deg: 4.00 mm +/- 0.02 mm"]
state = "uncut""#,
        ),
        Case(
            "a metal boss in a carbon frame, no consent: asked",
            "boss.bottle_boss",
            Open,
            &[],
            &["thread[0].consent"],
            r#"material = "carbon"
[[thread]]
place = "bottle_boss"
material = "aluminium"
mate = "M5x0.8"
minor = ["0 deg: 4.22 mm +/- 0.02 mm"]
state = "uncut""#,
        ),
        Case(
            "nobody said what it is made of",
            "boss.bottle_boss",
            Open,
            &[],
            &["thread[0].material"],
            r#"[[thread]]
place = "bottle_boss"
mate = "M5x0.8"
minor = ["0 deg: 4.22 mm +/- 0.02 mm"]
state = "uncut""#,
        ),
    ]);
}

/// Two statements that cannot both be true: shown, asked, nothing cut.
#[test]
fn contradictions() {
    hold(&[
        Case(
            "GO stops, NOT GO runs in, and it is called sound",
            "axle.rear",
            Open,
            &[],
            &[],
            r#"material = "steel"
[axle.rear]
mate = "M10x1"
pitch = "1 mm"
state = "sound"
go = "failed"
not_go = "passed""#,
        ),
        Case(
            "mating part of another thread than the pitch gauge says",
            "axle.rear",
            Open,
            &[],
            &["axle.rear.pitch"],
            r#"material = "steel"
[axle.rear]
mate = "M10x1"
pitch = "26 tpi"
state = "fouled""#,
        ),
        Case(
            "a hanger at the front",
            "hanger.front",
            Open,
            &[],
            &[],
            r#"material = "steel"
[hanger.front]
believed = "M10x1"
pitch = "1 mm"
state = "fouled""#,
        ),
        Case(
            "called sound, and its hole is 0.2 over the limit",
            "hanger.rear",
            Open,
            &[],
            &[],
            r#"material = "steel"
[hanger.rear]
believed = "M10x1"
pitch = "1 mm"
minor = ["0 deg: 9.35 mm +/- 0.02 mm"]
coating = "bare"
state = "sound"
go = "passed""#,
        ),
    ]);
    let plan = planned(
        "material = \"steel\"\n[axle.rear]\nmate = \"M10x1\"\npitch = \"26 tpi\"\nstate = \"fouled\"",
    );
    assert!(said(&plan, "axle.rear").contains("26 tpi"));
}

/// One place is one place: what one entry leaves out another may say, what two say differently is a contradiction.
#[test]
fn two_entries_for_one_place() {
    hold(&[
        Case(
            "two entries for the rear axle, two pitches",
            "axle.rear",
            Open,
            &[],
            &[],
            r#"material = "steel"
[[thread]]
place = "axle"
end = "rear"
mate = "M12x1"
state = "fouled"
[[thread]]
place = "axle"
end = "rear"
mate = "M12x1.5"
state = "fouled""#,
        ),
        Case(
            "by its name and in the list, two pitches",
            "axle.rear",
            Open,
            &[],
            &[],
            r#"material = "steel"
[axle.rear]
mate = "M12x1"
state = "fouled"
[[thread]]
place = "axle"
end = "rear"
mate = "M12x1.5""#,
        ),
        Case(
            "two entries that complete each other",
            "axle.rear",
            ToDo,
            &[Chase],
            &[],
            r#"material = "steel"
[axle.rear]
mate = "M12x1"
[[thread]]
place = "axle"
end = "rear"
pitch = "1 mm"
state = "fouled""#,
        ),
    ]);
    let two = planned(
        "material = \"steel\"\n[[brake]]\nsystem = \"is\"\nend = \"rear\"\n[[brake]]\nsystem = \"pm\"\nend = \"rear\"",
    );
    assert_eq!(super::state(&two, "brake.rear"), Open);
    // Bosses are many: the same place with other names is no second entry.
    let bosses = planned(
        "material = \"steel\"\n[[thread]]\nplace = \"bottle_boss\"\nname = \"upper\"\nmate = \"M5x0.8\"\nstate = \"fouled\"\n[[thread]]\nplace = \"bottle_boss\"\nname = \"lower\"\nmate = \"M5x0.8\"\nstate = \"fouled\"",
    );
    assert_eq!(bosses.steps.len(), 2);
}

/// A boss is a boss: an ordinary M5 among the bosses is chased without being asked whether it is one, and which hand it has.
/// What no boss has is still asked.
#[test]
fn a_boss_needs_no_other_name() {
    let boss = |size: &str, pitch: &str| {
        planned(&format!(
            "material = \"stainless\"\n[boss.left_1]\nbelieved = \"{size}\"\npitch = \"{pitch}\"\ncoating = \"painted\"\nstate = \"fouled\"\ngo = \"failed\""
        ))
    };
    for (size, pitch) in [("M5x0.8", "0.8 mm"), ("M6x1", "1 mm")] {
        let plan = boss(size, pitch);
        assert_eq!(super::operations(&plan, "boss.left_1"), [Chase], "{size}");
        assert!(plan.questions.is_empty(), "{size}: {:?}", plan.questions);
    }
    let odd = boss("M10x1", "1 mm");
    assert!(
        odd.questions
            .iter()
            .any(|q| q.answer == "boss.left_1.confirmed")
    );
    assert!(
        odd.steps
            .iter()
            .all(|step| !step.cuts() || !step.waits_for.is_empty())
    );
}
