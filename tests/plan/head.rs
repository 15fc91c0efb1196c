//! Head tubes: paint, passes, filled bores, depths, seats that are not cut.

use framegauge::measure::Outcome;
use framegauge::plan::Operation::{Clean, Face, Ream, Refer};
use framegauge::plan::State::{Leave, Open, Out, ToDo};
use framegauge::plan::{Operation, State};
use framegauge::quantity::settled_mm;

use super::{Case, hold, operations, planned, said, state};

/// A seat that was cleaned and still reads small: by what is said of the coating.
#[test]
fn a_seat_that_was_cleaned_once() {
    hold(&[
        Case(
            "paint remains in an integrated seat: clean again, nobody cuts it",
            "head_tube.lower",
            ToDo,
            &[Clean],
            &[],
            r#"material = "aluminium"
[head_tube.lower]
believed = "IS52"
coating = "painted"
bore = ["0 deg: 51.98 mm +/- 0.01 mm", "90 deg: 51.98 mm +/- 0.01 mm"]
passes = [{ bore = ["0 deg: 52.00 mm +/- 0.01 mm", "90 deg: 51.99 mm +/- 0.01 mm"], coating_left = "remains" }]"#,
        ),
        Case(
            "nobody said what is left: asked, not cut and not doubted",
            "head_tube.lower",
            Open,
            &[],
            &["head_tube.lower.passes"],
            r#"material = "aluminium"
[head_tube.lower]
believed = "IS52"
coating = "painted"
bore = ["0 deg: 51.98 mm +/- 0.01 mm", "90 deg: 51.98 mm +/- 0.01 mm"]
after = ["0 deg: 52.00 mm +/- 0.01 mm", "90 deg: 51.99 mm +/- 0.01 mm"]"#,
        ),
        Case(
            "paint remains in a pressed seat of steel: clean again before any reamer",
            "head_tube.upper",
            ToDo,
            &[Clean],
            &[],
            r#"material = "steel"
[head_tube.upper]
believed = "EC34"
coating = "powder_coated"
bore = ["0 deg: 33.75 mm +/- 0.01 mm", "90 deg: 33.76 mm +/- 0.01 mm"]
outside = ["37.0 mm +/- 0.02 mm"]
passes = [{ bore = ["0 deg: 33.82 mm +/- 0.01 mm", "90 deg: 33.84 mm +/- 0.01 mm"], coating_left = "remains", note = "powder in the corner" }]"#,
        ),
        Case(
            "all off and still 0.06 under 33.90, proved EC34: now it is reamed",
            "head_tube.upper",
            ToDo,
            &[Ream],
            &[],
            r#"material = "steel"
[head_tube.upper]
confirmed = "EC34"
coating = "powder_coated"
bore = ["0 deg: 33.75 mm +/- 0.01 mm", "90 deg: 33.76 mm +/- 0.01 mm"]
outside = ["37.0 mm +/- 0.02 mm"]
passes = [{ bore = ["0 deg: 33.84 mm +/- 0.01 mm", "90 deg: 33.84 mm +/- 0.01 mm"], coating_left = "all_off" }]"#,
        ),
        Case(
            "all off and an integrated seat still small: its maker's",
            "head_tube.lower",
            State::Refer,
            &[Refer],
            &[],
            r#"material = "aluminium"
[head_tube.lower]
confirmed = "IS52"
coating = "painted"
bore = ["0 deg: 51.90 mm +/- 0.01 mm", "90 deg: 51.90 mm +/- 0.01 mm"]
passes = [{ bore = ["0 deg: 51.95 mm +/- 0.01 mm", "90 deg: 51.95 mm +/- 0.01 mm"], coating_left = "all_off" }]"#,
        ),
        Case(
            "the coating came off and nobody read again: read again",
            "head_tube.lower",
            Open,
            &[],
            &["head_tube.lower.passes"],
            r#"material = "steel"
[head_tube.lower]
believed = "EC34"
coating = "painted"
bore = ["0 deg: 33.91 mm +/- 0.005 mm", "90 deg: 33.91 mm +/- 0.005 mm"]
passes = [{ coating_left = "all_off" }]"#,
        ),
    ]);
}

/// Over paint a bore is a lower bound; laminate is cleaned and not scraped.
#[test]
fn painted_seats() {
    hold(&[
        Case(
            "painted steel",
            "head_tube.upper",
            ToDo,
            &[Clean],
            &[],
            "material = \"steel\"\n[head_tube.upper]\nbelieved = \"EC34\"\ncoating = \"painted\"\nbore = [\"0 deg: 33.80 mm +/- 0.01 mm\", \"90 deg: 33.82 mm +/- 0.01 mm\"]",
        ),
        Case(
            "painted carbon: by hand",
            "head_tube.upper",
            ToDo,
            &[Clean],
            &[],
            "material = \"carbon\"\n[head_tube.upper]\nbelieved = \"IS41\"\ncoating = \"painted\"\nbore = [\"0 deg: 41.00 mm +/- 0.01 mm\", \"90 deg: 41.02 mm +/- 0.01 mm\"]",
        ),
        Case(
            "painted, material not said: by hand as well",
            "head_tube.upper",
            ToDo,
            &[Clean],
            &[],
            "[head_tube.upper]\nbelieved = \"EC34\"\ncoating = \"painted\"\nbore = [\"0 deg: 33.80 mm +/- 0.01 mm\", \"90 deg: 33.82 mm +/- 0.01 mm\"]",
        ),
        Case(
            "over paint already above 33.95: bare it is larger still",
            "head_tube.upper",
            Out,
            &[],
            &[],
            "material = \"steel\"\n[head_tube.upper]\nbelieved = \"EC34\"\ncoating = \"painted\"\nbore = [\"0 deg: 34.10 mm +/- 0.01 mm\", \"90 deg: 34.11 mm +/- 0.01 mm\"]",
        ),
    ]);
    let carbon = planned(
        "material = \"carbon\"\n[head_tube.upper]\nbelieved = \"IS41\"\ncoating = \"painted\"\nbore = [\"0 deg: 41.00 mm +/- 0.01 mm\"]",
    );
    assert!(!said(&carbon, "head_tube.upper").contains("metal by hand"));
    assert!(!said(&carbon, "head_tube.upper").contains("down to metal"));
}

const STUCK: &str = r#"material = "aluminium"
[head_tube.upper]
believed = "ZS44"
part = { name = "upper cup", fitted = "UPPER" }
[head_tube.lower]
confirmed = "EC44"
coating = "bare"
outside = "50.0 mm +/- 0.02 mm"
bore = ["0 deg: 43.90 mm +/- 0.005 mm", "90 deg: 43.91 mm +/- 0.005 mm"]
bore_depth = "15 mm +/- 0.1 mm"
crown_gap = "1.4 mm +/- 0.05 mm"
part = { name = "lower cup", outside = ["44.04 mm +/- 0.004 mm"], insertion = "12 mm" }
[head_tube.lower.face]
coating = "painted"
inner_radius = "22 mm"
outer_radius = "25 mm"
probe_radius = "23.5 mm"
probes = ["0 deg: 0.00 mm +/- 0.01 mm", "72 deg: 0.15 mm +/- 0.01 mm", "144 deg: 0.25 mm +/- 0.01 mm", "216 deg: 0.12 mm +/- 0.01 mm", "288 deg: 0.00 mm +/- 0.01 mm"]
"#;

/// A cutter that is centred in the opposite bore does not start while that is filled.
#[test]
fn the_opposite_bore_is_filled() {
    for (fitted, steps, seat, face) in [
        ("stuck", &[][..], Out, Open),
        ("yes", &[][..], Out, Open),
        ("no", &[Ream][..], ToDo, ToDo),
    ] {
        let plan = planned(&STUCK.replace("UPPER", fitted));
        assert_eq!(operations(&plan, "head_tube.lower"), steps, "{fitted}");
        assert_eq!(state(&plan, "head_tube.lower"), seat, "{fitted}");
        assert_eq!(state(&plan, "head_tube.lower.face"), face, "{fitted}");
        let faced = operations(&plan, "head_tube.lower.face") == [Face];
        assert_eq!(faced, fitted == "no", "{fitted}");
        if fitted == "stuck" {
            assert_eq!(state(&plan, "head_tube.upper"), Leave);
            assert!(said(&plan, "head_tube.lower").contains("frame maker"));
        }
    }
    // The other way round, and the face of the stuck end with it.
    let turned = STUCK
        .replace("UPPER", "stuck")
        .replace("head_tube.upper", "head_tube.X")
        .replace("head_tube.lower", "head_tube.upper")
        .replace("head_tube.X", "head_tube.lower")
        .replace("crown_gap = \"1.4 mm +/- 0.05 mm\"\n", "");
    let plan = planned(&turned);
    assert_eq!(state(&plan, "head_tube.upper"), Out);
    assert!(operations(&plan, "head_tube.upper.face").is_empty());
}

/// Reaming cures no place that is over its limit.
#[test]
fn over_at_one_place_and_under_at_another() {
    hold(&[
        Case(
            "oval: over across, under along",
            "head_tube.upper",
            Out,
            &[],
            &[],
            "material = \"steel\"\n[head_tube.upper]\nconfirmed = \"EC34\"\ncoating = \"bare\"\nbore = [\"0 deg: 33.85 mm +/- 0.005 mm\", \"90 deg: 34.02 mm +/- 0.005 mm\"]\noutside = [\"37.0 mm +/- 0.02 mm\"]",
        ),
        Case(
            "taper: over at the mouth, under below",
            "head_tube.upper",
            Out,
            &[],
            &[],
            "material = \"steel\"\n[head_tube.upper]\nconfirmed = \"EC34\"\ncoating = \"bare\"\nbore = [\"2 mm deep, 0 deg: 34.02 mm +/- 0.005 mm\", \"12 mm deep, 0 deg: 33.86 mm +/- 0.005 mm\"]\noutside = [\"37.0 mm +/- 0.02 mm\"]",
        ),
        Case(
            "over all round",
            "head_tube.lower",
            Out,
            &[],
            &[],
            "material = \"steel\"\n[head_tube.lower]\nconfirmed = \"EC34\"\ncoating = \"bare\"\nbore = [\"0 deg: 34.10 mm +/- 0.01 mm\", \"90 deg: 34.10 mm +/- 0.01 mm\"]",
        ),
        Case(
            "under at one place, within at the other: that is reamed",
            "head_tube.upper",
            ToDo,
            &[Ream],
            &[],
            "material = \"steel\"\n[head_tube.upper]\nconfirmed = \"EC34\"\ncoating = \"bare\"\nbore = [\"0 deg: 33.86 mm +/- 0.005 mm\", \"90 deg: 33.93 mm +/- 0.005 mm\"]\noutside = [\"37.0 mm +/- 0.02 mm\"]",
        ),
    ]);
    let plan = planned(
        "material = \"steel\"\n[head_tube.upper]\nconfirmed = \"EC34\"\ncoating = \"bare\"\nbore = [\"2 mm deep, 0 deg: 34.02 mm +/- 0.005 mm\", \"12 mm deep, 0 deg: 33.86 mm +/- 0.005 mm\"]",
    );
    // Each depth by itself: 0.07 over at the mouth, 0.04 under below it.
    let report = plan.place(&"head_tube.upper".parse().unwrap()).unwrap();
    let out = report
        .facts
        .iter()
        .filter(|f| f.outcome == Some(Outcome::NonconformityShown));
    let sizes: Vec<f64> = out.map(|f| settled_mm(f.readings[0].value())).collect();
    assert_eq!(sizes, [34.02, 33.86]);
    assert!(report.leave.iter().any(|why| why.code() == "not_reamed"));
}

/// Who may cut: the material of the joint, and who allows it.
#[test]
fn by_material() {
    let bore = "coating = \"bare\"\nconfirmed = \"EC34\"\nbore = [\"0 deg: 33.80 mm +/- 0.005 mm\", \"90 deg: 33.80 mm +/- 0.005 mm\"]\noutside = [\"37.0 mm +/- 0.02 mm\"]";
    for (title, frame, joint, wanted, steps, asks) in [
        ("steel", "material = \"steel\"", "", ToDo, &[Ream][..], ""),
        ("nobody says", "", "", Open, &[], "head_tube.upper.material"),
        (
            "carbon",
            "material = \"carbon\"",
            "",
            State::Refer,
            &[Refer],
            "",
        ),
        (
            "plastic",
            "material = \"steel\"",
            "material = \"plastic\"",
            State::Refer,
            &[Refer],
            "",
        ),
        (
            "an aluminium insert in a carbon frame, nobody allows it",
            "material = \"carbon\"",
            "material = \"aluminium\"",
            Open,
            &[],
            "head_tube.upper.consent",
        ),
        (
            "the same, its maker allows it",
            "material = \"carbon\"",
            "material = \"aluminium\"\nconsent = \"frame maker, letter of 3 May\"",
            ToDo,
            &[Ream],
            "",
        ),
    ] {
        let plan = planned(&format!("{frame}\n[head_tube.upper]\n{joint}\n{bore}"));
        assert_eq!(state(&plan, "head_tube.upper"), wanted, "{title}");
        assert_eq!(operations(&plan, "head_tube.upper"), steps, "{title}");
        assert!(
            asks.is_empty() || plan.questions.iter().any(|q| q.answer == asks),
            "{title}"
        );
        super::never_unsafe(&plan, title);
    }
    // Without a word on the coating the cut waits for it.
    let plan = planned(&format!(
        "material = \"steel\"\n[head_tube.upper]\n{}",
        bore.replace("coating = \"bare\"\n", "")
    ));
    let ream = plan
        .steps
        .iter()
        .find(|s| s.operation == Operation::Ream)
        .unwrap();
    let waits = &plan.questions[ream.waits_for[0] - 1];
    assert_eq!(waits.answer, "head_tube.upper.coating");
    assert_eq!(state(&plan, "head_tube.upper"), Open);
}

/// A part of the wrong kind.
#[test]
fn contradictions_hold_the_cut() {
    let contradicted = |sheet: &str| {
        let plan = planned(sheet);
        let place = plan.places.first().unwrap();
        assert!(plan.steps.iter().all(|s| !s.cuts()), "{}", place.name);
        (!place.contradictions.is_empty(), place.state)
    };
    let seat = |how: &str, code: &str, bore: &str, part: &str| {
        format!(
            "material = \"steel\"\n[head_tube.lower]\n{how} = \"{code}\"\ncoating = \"bare\"\nbore = [\"0 deg: {bore} mm +/- 0.005 mm\", \"90 deg: {bore} mm +/- 0.005 mm\"]\noutside = [\"60 mm +/- 0.02 mm\"]\npart = {part}"
        )
    };
    let cup = "{ name = \"lower cup\", outside = [\"52.00 mm +/- 0.005 mm\"] }";
    assert_eq!(
        contradicted(&seat("believed", "IS52", "52.10", cup)),
        (true, Open)
    );
    let tight = "{ name = \"44 mm part\", outside = [\"52.30 mm +/- 0.005 mm\"] }";
    assert_eq!(
        contradicted(&seat("believed", "IS52", "52.10", tight)),
        (true, Open)
    );
    let bearing = "{ name = \"bearing 41\", outside = [\"41.0 mm +/- 0.005 mm\"] }";
    assert_eq!(
        contradicted(&seat("believed", "EC44", "43.90", bearing)),
        (true, Open)
    );
    // Proved, so the part is wrong: no question is left.
    assert_eq!(
        contradicted(&seat("confirmed", "IS52", "52.10", cup)),
        (false, Out)
    );
    let right = "{ name = \"bearing\", outside = [\"52.00 mm +/- 0.005 mm\"] }";
    assert_eq!(
        contradicted(&seat("believed", "IS52", "52.10", right)),
        (false, Leave)
    );
    // Half a millimetre smaller than what IS52 is listed for: another bearing, whatever its label.
    let other = "{ name = \"bearing\", outside = [\"51.50 mm +/- 0.005 mm\"] }";
    assert_eq!(
        contradicted(&seat("believed", "IS52", "52.10", other)),
        (false, Open)
    );
    assert_eq!(
        contradicted(&seat("confirmed", "IS52", "52.10", other)),
        (false, Out)
    );
    // A bore that grew narrower under the work.
    let narrower = "material = \"steel\"\n[head_tube.upper]\nconfirmed = \"EC34\"\ncoating = \"bare\"\nbore = [\"0 deg: 33.86 mm +/- 0.005 mm\"]\npasses = [{ bore = [\"0 deg: 33.80 mm +/- 0.005 mm\"] }]";
    assert_eq!(contradicted(narrower), (true, Open));
}

/// What was cut counts: wall and width from the last pass, notes at their place.
#[test]
fn the_last_pass_counts() {
    let plan = planned(
        "material = \"steel\"\n[head_tube.upper]\nconfirmed = \"EC34\"\ncoating = \"bare\"\nnote = \"lug brazed hot\"\nbore = [\"0 deg: 33.80 mm +/- 0.005 mm\", \"90 deg: 33.80 mm +/- 0.005 mm\"]\noutside = [\"37.00 mm +/- 0.01 mm\"]\npasses = [{ bore = [\"0 deg: 33.86 mm +/- 0.005 mm\", \"90 deg: 33.86 mm +/- 0.005 mm\"], note = \"chips fine\" }, { bore = [\"0 deg: 33.92 mm +/- 0.005 mm\", \"90 deg: 33.92 mm +/- 0.005 mm\"], part = \"fits\" }]",
    );
    let told = said(&plan, "head_tube.upper");
    assert_eq!(state(&plan, "head_tube.upper"), State::Done, "{told}");
    // (37.00 - 33.92) / 2, by hand.
    assert!(told.contains("1.540 mm"), "{told}");
    assert!(
        told.contains("lug brazed hot") && told.contains("chips fine"),
        "{told}"
    );
}
