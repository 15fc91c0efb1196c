//! Head-tube bores that are too shallow for what goes in.

use framegauge::plan::Operation::{Deepen, Refer};
use framegauge::plan::State;
use framegauge::plan::State::{Leave, Open, Out, ToDo};

use super::{Case, hold, operations, planned, said, state};

/// What goes in must have room.
#[test]
fn depth_against_the_cup() {
    let sheet = |material: &str, depth: &str, limits: &str| {
        format!(
            "{material}\n[head_tube.lower]\nbelieved = \"EC44\"\ncoating = \"bare\"\nbore = [\"0 deg: 43.97 mm +/- 0.005 mm\", \"90 deg: 43.97 mm +/- 0.005 mm\"]\nbore_depth = \"{depth}\"\npart = {{ name = \"lower cup\", outside = [\"44.04 mm +/- 0.004 mm\"], insertion = \"12.0 mm\" }}\n{limits}"
        )
    };
    let limit = |upper: &str| {
        format!(
            "limits = [{{ what = \"bore_depth\", upper = \"{upper}\", owner = \"frame maker\" }}]"
        )
    };
    for (title, material, depth, limits, wanted, steps, asks) in [
        (
            "3 mm proud, nobody says how deep it may be",
            "steel",
            "9.0 mm +/- 0.1 mm",
            String::new(),
            Out,
            &[][..],
            "head_tube.lower.limits",
        ),
        (
            "to 15 it may",
            "steel",
            "9.0 mm +/- 0.1 mm",
            limit("15 mm"),
            ToDo,
            &[Deepen],
            "",
        ),
        (
            "to 11 it may, 12 is needed",
            "steel",
            "9.0 mm +/- 0.1 mm",
            limit("11 mm"),
            State::Refer,
            &[Refer],
            "",
        ),
        (
            "laminate is not deepened, whatever the limit",
            "carbon",
            "9.0 mm +/- 0.1 mm",
            limit("15 mm"),
            State::Refer,
            &[Refer],
            "",
        ),
        (
            "nobody says what it is made of",
            "",
            "9.0 mm +/- 0.1 mm",
            limit("15 mm"),
            Out,
            &[],
            "head_tube.lower.material",
        ),
        (
            "0.1 of room, read to 0.1: too close to tell",
            "steel",
            "12.1 mm +/- 0.1 mm",
            String::new(),
            Open,
            &[],
            "head_tube.lower.bore_depth",
        ),
        (
            "a millimetre of room",
            "steel",
            "13.0 mm +/- 0.1 mm",
            String::new(),
            Leave,
            &[],
            "",
        ),
    ] {
        let material = if material.is_empty() {
            String::new()
        } else {
            format!("material = \"{material}\"")
        };
        let plan = planned(&sheet(&material, depth, &limits));
        let told = said(&plan, "head_tube.lower");
        assert_eq!(state(&plan, "head_tube.lower"), wanted, "{title}\n{told}");
        assert_eq!(
            operations(&plan, "head_tube.lower"),
            steps,
            "{title}\n{told}"
        );
        assert!(
            asks.is_empty() || plan.questions.iter().any(|q| q.answer == asks),
            "{title}\n{told}"
        );
        super::never_unsafe(&plan, title);
    }
}

/// The depth that a seat is listed for, where no cup says otherwise.
#[test]
fn depth_against_the_list() {
    hold(&[
        Case(
            "EC49 is listed for 25.4",
            "head_tube.lower",
            Out,
            &[],
            &["head_tube.lower.part.insertion"],
            "material = \"steel\"\n[head_tube.lower]\nbelieved = \"EC49\"\ncoating = \"bare\"\nbore = [\"0 deg: 49.59 mm +/- 0.003 mm\", \"90 deg: 49.59 mm +/- 0.003 mm\"]\nbore_depth = \"15 mm +/- 0.1 mm\"",
        ),
        Case(
            "ZS44 is listed for 15",
            "head_tube.upper",
            Out,
            &[],
            &["head_tube.upper.part.insertion"],
            "material = \"steel\"\n[head_tube.upper]\nbelieved = \"ZS44\"\ncoating = \"bare\"\nbore = [\"0 deg: 43.97 mm +/- 0.003 mm\", \"90 deg: 43.97 mm +/- 0.003 mm\"]\nbore_depth = \"12 mm +/- 0.1 mm\"",
        ),
        Case(
            "a cup that goes in 10 sits in 12 all the same",
            "head_tube.upper",
            Leave,
            &[],
            &[],
            "material = \"steel\"\n[head_tube.upper]\nbelieved = \"ZS44\"\ncoating = \"bare\"\nbore = [\"0 deg: 43.97 mm +/- 0.003 mm\", \"90 deg: 43.97 mm +/- 0.003 mm\"]\nbore_depth = \"12 mm +/- 0.1 mm\"\npart = { name = \"cup\", outside = [\"44.04 mm +/- 0.003 mm\"], insertion = \"10 mm\" }",
        ),
        Case(
            "EC34 is listed for 12.5",
            "head_tube.upper",
            Leave,
            &[],
            &[],
            "material = \"steel\"\n[head_tube.upper]\nbelieved = \"EC34\"\ncoating = \"bare\"\nbore = [\"0 deg: 33.92 mm +/- 0.003 mm\", \"90 deg: 33.92 mm +/- 0.003 mm\"]\nbore_depth = \"13 mm +/- 0.1 mm\"",
        ),
    ]);
}
