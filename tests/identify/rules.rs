use super::*;

/// The bias of one caliper counts once: two readings by it say less than two by independent instruments.
#[test]
fn one_instrument_is_one_witness() {
    let by = |bore: &str, width: &str| {
        let answer = ask(
            Place::Shell,
            &[("bore", bore), ("width", width), ("threaded", "no")],
        );
        answer.candidate("bb30").unwrap().share / answer.candidate(UNLISTED).unwrap().share
    };
    // Both readings lie at the low edge of their band: one bias explains both, two accidents are needed otherwise.
    let shared = by(
        "41.86 +/- 0.1 mm with caliper",
        "67.1 +/- 0.1 mm with caliper",
    );
    let apart = by(
        "41.86 +/- 0.1 mm with caliper",
        "67.1 +/- 0.1 mm with another caliper",
    );
    assert!(shared > 1.2 * apart, "{shared} against {apart}");
    // Repeats by one instrument do not wear its bias away.
    let many = vec![("bore", "27.13 +/- 0.05 mm with caliper"); 12];
    let answer = ask(Place::SeatTube, &many);
    assert_eq!(left(&answer), ["27.0", "27.2"]);
}

#[test]
fn beliefs_are_weak() {
    let words = [("bore", "46.0 +/- 0.05 mm"), ("threaded", "no")];
    let plain = ask(Place::Shell, &words);
    let mut more = words.to_vec();
    more.extend([
        ("label", "BB386"),
        ("country", "BB386"),
        ("hearsay", "BB386"),
    ]);
    let told = ask(Place::Shell, &more);
    let odds = |a: &Identification| {
        a.candidate("bb386").unwrap().share / a.candidate("pf30").unwrap().share
    };
    let factor = odds(&told) / odds(&plain);
    assert!((factor - 2.0).abs() < 1e-9, "{factor}");
    assert_eq!(told.belief, Some(Belief::NotTested));
    assert_eq!(left(&plain), left(&told));
}

#[test]
fn a_second_name_of_one_thread_confirms() {
    let answer = ask(
        Place::Shell,
        &[
            ("minor_diameter", "33.8 +/- 0.05 mm"),
            ("pitch", "24 tpi"),
            ("hand_drive", "left"),
            ("label", "BSA"),
        ],
    );
    assert_eq!(answer.belief, Some(Belief::Confirmed));
}

#[test]
fn a_trade_name_of_two_patterns_is_pointed_out() {
    let answer = ask(
        Place::Shell,
        &[
            ("bore", "46.0 +/- 0.05 mm"),
            ("width", "79 +/- 0.1 mm"),
            ("label", "bbr"),
        ],
    );
    assert_eq!(answer.belief, Some(Belief::Confirmed));
    assert!(
        answer.notes.iter().any(
            |n| matches!(n, Note::NameOfSeveral { codes, .. } if *codes == ["bbright_df", "bbright_pf"])
        ),
        "{:?}",
        answer.notes
    );
}

#[test]
fn tools_at_hand_bound_the_plan() {
    let bore = see(&[("bore", "27.1 +/- 0.05 mm")]);
    let none = Options {
        tools: &["steel_rule"],
        ..Options::default()
    };
    let answer = identify(Place::SeatTube, &bore, &none).unwrap();
    assert!(answer.inseparable && answer.next.is_empty());
    assert!(
        answer
            .words()
            .contains("cannot be separated with these tools")
    );
    let all = identify(Place::SeatTube, &bore, &Options::default()).unwrap();
    assert!(!all.inseparable && all.next[0].bits > 0.5, "{:?}", all.next);
    let wrong = Options {
        tools: &["eyeball"],
        ..Options::default()
    };
    assert_eq!(
        identify(Place::SeatTube, &bore, &wrong).unwrap_err().kind(),
        ErrorKind::UnknownName
    );
}

/// The cheapest tool within 0.05 bit: a rule tells 68 from 86.5 mm as well as a caliper does.
#[test]
fn the_cheapest_tool_is_named() {
    let answer = ask(
        Place::Dropout(End::Rear, None),
        &[("inner_faces", "130 +/- 0.4 mm")],
    );
    assert_eq!(answer.outcome.identified(), Some("qr_rear_130"));
    let open = ask(
        Place::Dropout(End::Rear, None),
        &[("outside_diameter", "10 +/- 0.1 mm")],
    );
    let width = open
        .next
        .iter()
        .find(|n| n.measure == Feature::OverLocknut)
        .unwrap();
    assert_eq!(width.instrument.as_deref(), Some("steel_rule"));
    for pair in open.next.windows(2) {
        assert!(pair[0].bits >= pair[1].bits - 0.05);
    }
}

#[test]
fn brake_mounts() {
    let post = ask(
        Place::Brake(End::Rear),
        &[("bolt_spacing", "74.2 +/- 0.3 mm")],
    );
    assert_eq!(post.outcome.identified(), Some("pm"));
    // Plane heights 47.24, 55.90, 64.56 mm: a builder's formula for the mount, 140, 160 and 180 mm rotors (derived).
    let sized = ask(
        Place::Brake(End::Front),
        &[
            ("bolt_spacing", "74.0 +/- 0.3 mm"),
            ("plane_height", "64.3 +/- 1 mm"),
        ],
    );
    assert_eq!(sized.outcome.identified(), Some("pm_180"));
    assert_eq!(
        ask(
            Place::Brake(End::Front),
            &[("bolt_spacing", "51 +/- 0.3 mm")]
        )
        .outcome
        .identified(),
        Some("is_front")
    );
}

#[test]
fn crown_seats_and_steerers() {
    assert_eq!(
        ask(Place::Crown, &[("outside_diameter", "39.82 +/- 0.02 mm")])
            .outcome
            .identified(),
        Some("39.8")
    );
    // 26.4 and 26.5 cannot be told apart: measured seats of 26.4 run to 26.53.
    assert_eq!(
        left(&ask(
            Place::Crown,
            &[("outside_diameter", "26.45 +/- 0.02 mm")]
        )),
        ["26.4", "26.5"]
    );
    let steerer = ask(
        Place::Steerer,
        &[
            ("threaded", "no"),
            ("outside_diameter", "28.6 +/- 0.02 mm"),
            ("lower_diameter", "38.1 +/- 0.05 mm"),
        ],
    );
    assert_eq!(steerer.outcome.identified(), Some("tapered_1_1_8_1_1_2"));
}

#[test]
fn a_width_alone_names_nothing() {
    let answer = ask(Place::Shell, &[("width", "61 +/- 0.1 mm")]);
    assert_eq!(answer.outcome, Outcome::CannotTell);
    assert_eq!(ask(Place::Shell, &[]).outcome, Outcome::CannotTell);
}

#[test]
fn shares_sum_to_one() {
    for kind in identifiable() {
        let answer = identify(
            kind.clone(),
            &see(&[("bore", "30 +/- 0.3 mm")]),
            &Options::default(),
        )
        .unwrap();
        let sum: f64 = answer.candidates.iter().map(|c| c.share).sum();
        assert!((sum - 1.0).abs() < 1e-9, "{kind}: {sum}");
        assert!(answer.candidates.iter().any(|c| c.code == UNLISTED));
    }
}

/// A shop's own row stands beside ours.
#[cfg(feature = "serde")]
#[test]
fn shop_rows_take_part() {
    let rows: framegauge::standard::ShopRows = toml::from_str(
        "[[seatpost]]\ncode = \"ours_29.9\"\ndiameter = { nominal = \"29.9 mm\", lower = \"29.88 mm\", upper = \"29.92 mm\" }\n",
    )
    .unwrap();
    let options = Options {
        shop: Some(&rows),
        ..Options::default()
    };
    let answer = identify(
        Place::Seatpost,
        &see(&[("outside_diameter", "29.9 +/- 0.004 mm")]),
        &options,
    )
    .unwrap();
    assert!(left(&answer).contains(&"ours_29.9"));
    assert_eq!(answer.candidates[0].code, "ours_29.9");
}
