//! Crown seats and steerers: cleaned and measured, never cut here.

use framegauge::plan::Operation::{Check, Clean};
use framegauge::plan::State;
use framegauge::plan::State::{Done, Leave, NotMeasured, Open, Out, ToDo};

use super::{Case, hold, never_unsafe, planned, said, state};

#[test]
fn crown_seats() {
    hold(&[
        Case(
            "painted steel: by hand, then measured",
            "crown",
            ToDo,
            &[Clean],
            &[],
            "material = \"steel\"\n[crown]\nbelieved = \"26.4\"\ncoating = \"painted\"\nseat = [\"26.60 mm +/- 0.01 mm\", \"26.61 mm +/- 0.01 mm\"]\nrace = [\"26.34 mm +/- 0.01 mm\"]",
        ),
        Case(
            "painted carbon: by hand, nothing scrapes",
            "crown",
            ToDo,
            &[Clean],
            &[],
            "material = \"carbon\"\n[crown]\ncoating = \"painted\"\nseat = [\"30.30 mm +/- 0.01 mm\"]\nrace = [\"29.95 mm +/- 0.01 mm\"]",
        ),
        Case(
            "loose: 26.30 in a race of 26.36",
            "crown",
            Out,
            &[],
            &[],
            "material = \"steel\"\n[crown]\nbelieved = \"26.4\"\ncoating = \"bare\"\nseat = [\"26.30 mm +/- 0.01 mm\", \"26.31 mm +/- 0.01 mm\"]\nrace = [\"26.36 mm +/- 0.01 mm\"]",
        ),
        Case(
            "loose even over paint: bare it is looser still",
            "crown",
            Out,
            &[Clean],
            &[],
            "material = \"steel\"\n[crown]\nbelieved = \"26.4\"\ncoating = \"painted\"\nseat = [\"26.30 mm +/- 0.01 mm\", \"26.31 mm +/- 0.01 mm\"]\nrace = [\"26.40 mm +/- 0.01 mm\"]",
        ),
        Case(
            "after the work it presses by 0.06: done",
            "crown",
            Done,
            &[],
            &[],
            "material = \"steel\"\n[crown]\nbelieved = \"26.4\"\ncoating = \"painted\"\nseat = [\"26.60 mm +/- 0.01 mm\"]\nafter = [\"26.41 mm +/- 0.01 mm\", \"26.40 mm +/- 0.01 mm\"]\nrace = [\"26.34 mm +/- 0.01 mm\"]",
        ),
        Case(
            "after the work some paint is still under the reading",
            "crown",
            ToDo,
            &[Clean],
            &[],
            "material = \"steel\"\n[crown]\nbelieved = \"26.4\"\ncoating = \"painted\"\nseat = [\"26.60 mm +/- 0.01 mm\"]\nafter = [\"over paint: 26.50 mm +/- 0.01 mm\"]\nrace = [\"26.34 mm +/- 0.01 mm\"]",
        ),
        Case(
            "the fork maker's own limit of the seat",
            "crown",
            Out,
            &[],
            &[],
            "material = \"steel\"\n[crown]\ncoating = \"bare\"\nseat = [\"26.36 mm +/- 0.005 mm\"]\nrace = [\"26.28 mm +/- 0.005 mm\"]\nlimits = [{ what = \"seat\", lower = \"26.38 mm\", upper = \"26.45 mm\", owner = \"fork maker\" }]",
        ),
        Case(
            "the headset maker's own press",
            "crown",
            Out,
            &[],
            &[],
            "material = \"steel\"\n[crown]\ncoating = \"bare\"\nseat = [\"26.44 mm +/- 0.005 mm\"]\nrace = [\"26.28 mm +/- 0.005 mm\"]\nlimits = [{ what = \"interference\", lower = \"0.02 mm\", upper = \"0.10 mm\", owner = \"headset maker\" }]",
        ),
        Case(
            "too tight, and nobody said what covers it",
            "crown",
            Open,
            &[],
            &["crown.coating"],
            "material = \"steel\"\n[crown]\nseat = [\"26.60 mm +/- 0.005 mm\"]\nrace = [\"26.28 mm +/- 0.005 mm\"]",
        ),
        Case(
            "no race, no verdict",
            "crown",
            Open,
            &[],
            &["crown.race"],
            "material = \"steel\"\n[crown]\ncoating = \"bare\"\nseat = [\"26.44 mm +/- 0.005 mm\"]",
        ),
        Case(
            "proved by a name that no table has: asked for, not passed over",
            "crown",
            Open,
            &[],
            &["crown.confirmed"],
            "material = \"steel\"\n[crown]\nconfirmed = \"26.4 special\"\ncoating = \"bare\"\nseat = [\"26.44 mm +/- 0.005 mm\"]\nrace = [\"26.38 mm +/- 0.005 mm\"]",
        ),
        Case(
            "it cannot have grown",
            "crown",
            Open,
            &[],
            &["crown.after"],
            "material = \"steel\"\n[crown]\ncoating = \"painted\"\nseat = [\"26.44 mm +/- 0.005 mm\"]\nafter = [\"26.60 mm +/- 0.005 mm\"]\nrace = [\"26.50 mm +/- 0.005 mm\"]",
        ),
    ]);
    let carbon = planned(
        "material = \"carbon\"\n[crown]\nnote = \"owner's wish\"\ncoating = \"painted\"\nseat = [\"30.30 mm +/- 0.01 mm\"]\nrace = [\"29.95 mm +/- 0.01 mm\"]",
    );
    let told = said(&carbon, "crown");
    assert!(
        !told.contains("down to metal")
            && told.contains("nothing that scrapes")
            && told.contains("owner's wish")
    );
}

/// 8 + 150 + 15 + 20 + 40 is 233 on the steerer: 230 is wanted, and under 228 the stem grips too little.
#[test]
fn steerers() {
    let with = |length: &str, more: &str| {
        let plan = planned(&format!(
            "material = \"steel\"\n[steerer]\noutside = [\"28.60 mm +/- 0.02 mm\"]\nlength = \"{length}\"\nstack = [\"8 mm +/- 0.1 mm\", \"150 mm +/- 0.1 mm\", \"15 mm +/- 0.1 mm\", \"20 mm +/- 0.1 mm\", \"40 mm +/- 0.1 mm\"]\n{more}"
        ));
        never_unsafe(&plan, length);
        (state(&plan, "steerer"), super::operations(&plan, "steerer"))
    };
    assert_eq!(with("300 mm +/- 0.5 mm", ""), (ToDo, vec![Check]));
    assert_eq!(with("230 mm +/- 0.3 mm", ""), (Leave, vec![]));
    assert_eq!(with("229 mm +/- 0.3 mm", ""), (Leave, vec![]));
    assert_eq!(with("220 mm +/- 0.5 mm", ""), (Out, vec![]));
    // 228.0: on the limit of 5 above the steerer.
    assert_eq!(with("228 mm +/- 0.5 mm", "").0, Open);
    let limit =
        |side: &str| format!("limits = [{{ what = \"length\", {side}, owner = \"fork maker\" }}]");
    assert_eq!(
        with("230 mm +/- 0.3 mm", &limit("lower = \"235 mm\"")).0,
        Out
    );
    assert_eq!(
        with("230 mm +/- 0.3 mm", &limit("upper = \"225 mm\"")),
        (ToDo, vec![Check])
    );
    hold(&[
        Case(
            "nothing is known",
            "steerer",
            NotMeasured,
            &[],
            &[],
            "material = \"carbon\"\n[steerer]",
        ),
        Case(
            "what stands on it is known, its length is not",
            "steerer",
            Open,
            &[],
            &["steerer.length"],
            "material = \"steel\"\n[steerer]\nstack = [\"8 mm +/- 0.1 mm\", \"150 mm +/- 0.1 mm\"]",
        ),
        Case(
            "its length is limited and not known",
            "steerer",
            Open,
            &[],
            &["steerer.length"],
            "material = \"steel\"\n[steerer]\noutside = [\"28.60 mm +/- 0.02 mm\"]\nlimits = [{ what = \"length\", upper = \"225 mm\", owner = \"fork maker\" }]",
        ),
        Case(
            "threaded: followed with its own form, not chased here",
            "steerer",
            Leave,
            &[],
            &[],
            "material = \"steel\"\n[steerer]\noutside = [\"25.38 mm +/- 0.02 mm\"]\npitch = \"24 tpi\"",
        ),
    ]);
    // The saw waits for the faces.
    let plan = planned(
        "material = \"steel\"\n[steerer]\nlength = \"300 mm +/- 0.5 mm\"\nstack = [\"8 mm +/- 0.1 mm\", \"150 mm +/- 0.1 mm\"]\n[head_tube.upper]\nconfirmed = \"EC34\"\ncoating = \"bare\"\nbore = [\"0 deg: 33.84 mm +/- 0.005 mm\", \"90 deg: 33.84 mm +/- 0.005 mm\"]\noutside = [\"37.0 mm +/- 0.02 mm\"]",
    );
    let check = plan.steps.iter().find(|s| s.operation == Check).unwrap();
    assert!(!check.after.is_empty() && state(&plan, "head_tube.upper") == State::ToDo);
}
