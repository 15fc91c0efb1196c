//! Whole frames: order, honesty, limits; what is not measured is not cut.

use super::*;

#[test]
fn the_painted_frame() {
    let plan = plan(&frame("painted_steel"));
    order_holds(&plan);
    assert!(plan.invented);
    let first = &plan.steps[0];
    assert_eq!(
        (first.interface, first.operation),
        (Interface::SeatTube, Operation::Ream)
    );
    // 27.2 less the narrowest reading of 27.02 mm.
    assert_eq!(settled_mm(first.amount.as_ref().unwrap().least), 0.18);
    assert!(
        !first.waits_for.is_empty(),
        "27.4 is possible as well, so the reamer waits"
    );

    let drive = step(&plan, Interface::ShellSide(Side::Drive), Operation::Chase);
    let tool = drive.tool.as_ref().unwrap();
    assert_eq!(
        (tool.hand, tool.turn),
        (Some(Hand::Left), Turn::CounterClockwise)
    );
    let other = step(
        &plan,
        Interface::ShellSide(Side::NonDrive),
        Operation::Chase,
    );
    assert_eq!(other.tool.as_ref().unwrap().turn, Turn::Clockwise);
    let face = step(&plan, Interface::ShellSide(Side::Drive), Operation::Face);
    assert!(face.number > drive.number && face.number > other.number);
    // (68.38 - 67.2) / 2 with the narrowest width.
    assert_eq!(settled_mm(face.stop.as_ref().unwrap().left.unwrap()), 0.59);
    assert!(!face.stop.as_ref().unwrap().sources.is_empty());

    let lower = plan
        .interfaces
        .iter()
        .find(|i| i.interface == Interface::HeadLower)
        .unwrap();
    assert!(
        lower
            .findings
            .iter()
            .all(|f| f.outcome != Some(Outcome::NonconformityShown)),
        "a reading on paint shows nothing"
    );
    assert!(
        plan.steps
            .iter()
            .all(|s| s.interface != Interface::HeadUpper),
        "the stuck cup stays"
    );

    let rear = step(&plan, Interface::Brake(0), Operation::Face);
    let axle = plan
        .steps
        .iter()
        .find(|s| s.interface == Interface::Thread(0))
        .unwrap();
    assert!(
        axle.number < rear.number,
        "the facing tool pilots on the axle"
    );
    assert!(step(&plan, Interface::Brake(0), Operation::Check).number > rear.number);
    assert!(
        !step(&plan, Interface::Brake(1), Operation::Face)
            .waits_for
            .is_empty(),
        "nobody said how much may come off"
    );
}

#[test]
fn the_carbon_frame_is_not_cut() {
    let plan = plan(&frame("carbon_press"));
    order_holds(&plan);
    assert!(
        plan.steps.iter().all(|s| matches!(
            s.operation,
            Operation::Clean | Operation::Refer | Operation::Check
        )),
        "{plan}"
    );
    let shell = words_of(&plan, Interface::Shell);
    assert!(
        shell.contains("nobody publishes limits for this bore"),
        "{shell}"
    );
    assert!(words_of(&plan, Interface::HeadLower).contains("another bearing"));
}

#[test]
fn the_old_frame_is_measured_before_it_is_touched() {
    let plan = plan(&frame("old_steel"));
    assert!(plan.steps.is_empty(), "{plan}");
    for (interface, ask) in [
        (Interface::Shell, "pitch"),
        (Interface::Steerer, "pitch"),
        (Interface::Thread(0), "pitch"),
    ] {
        assert!(
            plan.questions
                .iter()
                .any(|q| q.interface == interface && q.ask.contains(ask)),
            "{interface}"
        );
    }
    assert!(words_of(&plan, Interface::SeatTube).contains("contradict"));
}

/// Answers as the practitioners' log gives them, its figures checked against the tables.
#[test]
fn real_frames() {
    let narrow = plan(&frame("case_narrow_press_shell"));
    let words = words_of(&narrow, Interface::Shell);
    assert!(
        words.contains("0.150 mm under the lower limit")
            && words.contains("interference 0.200 to 0.250 mm"),
        "{words}"
    );
    assert_eq!(
        settled_mm(
            step(&narrow, Interface::Shell, Operation::Ream)
                .amount
                .as_ref()
                .unwrap()
                .least
        ),
        0.15
    );

    let wide = plan(&frame("case_wide_asymmetric_shell"));
    let report = wide
        .interfaces
        .iter()
        .find(|i| i.interface == Interface::Shell)
        .unwrap();
    assert_eq!(
        report.identification.as_ref().unwrap().outcome.identified(),
        Some("bbright_pf")
    );
    assert!(
        words_of(&wide, Interface::Shell).contains("11.000 mm further out on the non-drive side")
    );

    let old = words_of(&plan(&frame("case_26_tpi_shell")), Interface::Shell);
    assert!(
        old.contains("0.081 mm a turn apart, half a pitch after 6 turns")
            && old.contains("3.000 mm short"),
        "{old}"
    );

    let shallow = plan(&frame("case_shallow_head_tube"));
    assert!(words_of(&shallow, Interface::HeadLower).contains("3.000 mm proud"));

    let shim = words_of(&plan(&frame("case_post_and_shim")), Interface::SeatTube);
    assert!(
        shim.contains("takes a wall of 0.100 mm") && shim.contains("will not enter"),
        "{shim}"
    );

    let faults = words_of(&plan(&frame("case_two_faults")), Interface::SeatTube);
    assert!(
        faults.contains("both are off")
            && faults.contains("a post of 27.4 mm")
            && faults.contains("wall 0.200 mm"),
        "{faults}"
    );

    let hanger = plan(&frame("case_hanger_hole"));
    order_holds(&hanger);
    // ISO 965-2: M10x1-6H minor 8.917 to 9.153 mm.
    assert_eq!(
        settled_mm(
            step(&hanger, Interface::Thread(0), Operation::Ream)
                .amount
                .as_ref()
                .unwrap()
                .least
        ),
        0.417
    );
    assert_eq!(
        step(&hanger, Interface::Thread(0), Operation::Tap).number,
        2
    );
}

#[test]
fn nothing_measured_means_nothing_cut() {
    let plan = plan(
        "format = 1\nframe = \"f\"\nmaterial = \"steel\"\n[seat_tube]\nbelieved = \"27.2\"\n[shell]\nbelieved = \"bsc\"\n[head_tube.lower]\nbelieved = \"EC34\"\n[crown]\n[steerer]\n[[thread]]\nplace = \"hanger\"\n[[brake]]\nsystem = \"fm\"\nend = \"rear\"\ncoating = \"painted\"\n",
    );
    assert!(
        plan.steps.iter().all(|s| !matches!(
            s.operation,
            Operation::Ream | Operation::Face | Operation::Tap
        ) || !s.waits_for.is_empty()),
        "{plan}"
    );
    assert!(plan.questions.len() >= 5);
}

#[test]
fn everything_printed_can_be_traced() {
    for name in ["painted_steel", "carbon_press", "old_steel"] {
        let plan = plan(&frame(name));
        let json = serde_json::to_value(&plan).unwrap();
        for interface in json["interfaces"].as_array().unwrap() {
            for finding in interface["findings"].as_array().unwrap() {
                let grade = finding["grade"].as_str();
                let published = matches!(
                    grade,
                    Some("standard" | "agreeing" | "published" | "second_hand")
                );
                let owned = !finding["owner"].as_str().unwrap().is_empty();
                let cited = !finding["sources"].as_array().unwrap().is_empty();
                // The identification names its rows; their sources are asked for by code.
                let named = finding["what"] == "which standard";
                assert!(!published || cited || owned || named, "{name}: {finding}");
            }
        }
    }
}

/// A shop's row is believed like ours, keeps the grade `shop`, and never displaces a name of ours.
#[test]
fn a_shops_own_row_reaches_the_plan() {
    let rows = std::fs::read_to_string(format!(
        "{}/examples/rows/shop.toml",
        env!("CARGO_MANIFEST_DIR")
    ))
    .unwrap();
    let shop: ShopRows = toml::from_str(&rows).unwrap();
    let tables = Tables::with(&shop).unwrap();
    let text = "format = 1\nframe = \"f\"\nmaterial = \"steel\"\n[seat_tube]\nbelieved = \"shop_26_1\"\ncoating = \"bare\"\nbore = [\"10 mm deep, 0 deg: 26.10 mm +/- 0.01 mm\", \"10 mm deep, 90 deg: 26.11 mm +/- 0.01 mm\"]\n";
    let read = sheet(text).read_with(tables).unwrap();
    let plan = prepare_with(&read, tables);
    let words = words_of(&plan, Interface::SeatTube);
    assert!(words.contains("This can be `shop_26_1`"), "{words}");
    let ours = self::plan(text);
    let words = words_of(&ours, Interface::SeatTube);
    assert!(!words.contains("This can be `shop_26_1`"), "{words}");
    let clash: ShopRows = toml::from_str(&rows.replace("shop_26_1", "27.2")).unwrap();
    let refused = Tables::with(&clash).unwrap_err();
    assert!(refused.to_string().contains("27.2"), "{refused}");
}
