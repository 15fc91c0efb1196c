//! Press fits: shells, cups, races.

use framegauge::identify::{Feature, Observation, Options, Standing, identify};
use framegauge::judge::{
    BoreFact, CupDepth, Felt, Fit, MemberOf, ParallelFaces, Ream, Remedy, SpindleBinds,
    SpindleWidth, head_tube_from_stock, per_inch_rule,
};
use framegauge::measure::{Limits, Outcome, instrument};
use framegauge::rescue::{BoreRescue, Damage, Stand, Step};
use framegauge::standard::{HeadSeat, Joint, Place, PressPart, Shell, Tables, find};
use framegauge::{Error, inch, mm};

use super::{OURS, Run, Runner, fit, length, missing, read};

pub const RUNNERS: &[(&str, Runner)] = &[
    ("B01", b01),
    ("B03", b03),
    ("B05", b05),
    ("B07", b07),
    ("B09", b09),
    ("C01", c01),
    ("C05", c05),
    ("C07", c07),
    ("C08", c08),
    ("C10", c10),
    ("C14", c14),
    ("C15", c15),
    ("C16", c16),
];

fn b01(run: &mut Run) -> Result<(), Error> {
    // 0.050 mm of press: a bore of 41.95 mm under a bearing of 42.00 mm, both by caliper.
    let said = fit(
        Joint::DirectBearing,
        instrument("caliper_digital_inside")?.reading(mm(41.95))?,
        instrument("caliper_digital_outside")?.reading(mm(42.0))?,
    )
    .answer(OURS)?;
    run.outcome(&said, Outcome::Undecided);
    run.length(&said, "interference", 0.05);
    // Bore 41.96 +0.025/-0 (a workshop article), bearing 42.00 +0/-0.011 (ISO 492 class Normal): 0.004 to 0.040 mm.
    run.length(&said, "beyond window by", 0.010);
    run.check(
        "asks for a bore gauge",
        said.next.iter().any(|n| n.measure().contains("bore gauge")),
    );
    let fine = fit(
        Joint::DirectBearing,
        read("41.950 +/- 0.003 mm")?,
        read("42.000 +/- 0.002 mm")?,
    )
    .answer(OURS)?;
    run.check(
        "with a bore gauge it is shown",
        fine.outcome == Outcome::NonconformityShown,
    );
    Ok(())
}

fn b03(run: &mut Run) -> Result<(), Error> {
    // Bore 46.00 +0/-0.05 and metal cup 46.00 to 46.05 mm: one workshop article.
    let cup = &find::<PressPart>("metal_cup_46")?.diameter;
    let said = Fit {
        shell: Some("pf30".into()),
        hole: MemberOf::read(read("45.80 +/- 0.03 mm")?),
        shaft: MemberOf::within(Limits::of_size(cup)),
        ..Fit::default()
    }
    .answer(OURS)?;
    run.outcome(&said, Outcome::NonconformityShown);
    run.length(&said, "hole outside limits by", 0.15);
    run.length(&said, "least interference", 0.20);
    run.length(&said, "greatest interference", 0.25);
    run.check(
        "one reading is no shape",
        said.next.iter().any(|n| n.measure().contains("two axes"))
            || said.cautions.iter().any(|c| c.to_string().contains("axes")),
    );
    Ok(())
}

fn b05(run: &mut Run) -> Result<(), Error> {
    let said = Fit {
        shell: Some("bb90".into()),
        felt: vec![Felt::Rocks],
        ..Fit::default()
    }
    .answer(OURS)?;
    run.outcome(&said, Outcome::Undecided);
    run.says(&said.words(), "slip fit by design");
    run.check(
        "asks for largest and smallest",
        said.next
            .iter()
            .any(|n| n.measure().contains("largest and smallest")),
    );
    let left = BoreRescue::new(Joint::DirectBearing, Damage::Oval).options(OURS)?;
    run.check(
        "compound waits for gap and data sheet",
        left.steps(Step::Compound)
            .all(|o| o.stand == Stand::NeedsMeasurement && o.next.len() == 2),
    );
    Ok(())
}

fn b07(run: &mut Run) -> Result<(), Error> {
    let seen = [
        Observation::read("bore", "46.0 +/- 0.05 mm")?,
        Observation::read("width", "79.0 +/- 0.1 mm")?,
        Observation::read("half_width_drive", "34.0 +/- 0.3 mm")?,
        Observation::read("half_width_non_drive", "45.0 +/- 0.3 mm")?,
    ];
    let found = identify(Place::Shell, &seen, &Options::default())?;
    run.says.push(found.words());
    run.check(
        format!("46 x 79 asymmetrical, got {:?}", found.outcome),
        found.outcome.identified() == Some("bbright_pf"),
    );
    for other in ["pf30", "bb386"] {
        run.check(
            format!("not {other}"),
            found
                .candidate(other)
                .is_some_and(|c| matches!(c.standing, Standing::Excluded(_))),
        );
    }
    // The same trade name stands for a 41.96 mm bore too.
    let direct = find::<Shell>("bbright_df")?;
    run.check(
        "name also used with 41.96",
        direct.bore.as_ref().and_then(|b| b.nominal()) == Some(mm(41.96)),
    );
    let trim = SpindleWidth {
        width: vec![read("79 +/- 0.1 mm")?],
        made_for: Some(mm(86.5)),
        ..SpindleWidth::default()
    }
    .answer(OURS)?;
    run.length(&trim, "at each end", -3.75);
    Ok(())
}

fn b09(run: &mut Run) -> Result<(), Error> {
    let said = SpindleBinds::default().answer(OURS)?;
    run.outcome(&said, Outcome::Undecided);
    run.check("three causes, three measurements", said.next.len() == 3);
    let all = SpindleBinds {
        spindle: Some(read("29.98 +/- 0.004 mm")?),
        bearing_bore: Some(read("29.995 +/- 0.004 mm")?),
        offset: vec![read("0.30 +/- 0.02 mm")?, read("0.40 +/- 0.02 mm")?],
        apart: Some(mm(60.0)),
        ring_width: Some(mm(7.0)),
        binds_unloaded: Some(true),
        rule: None,
    }
    .answer(OURS)?;
    run.length(&all, "offset", 0.5);
    run.finds(&all, "off_axis");
    Ok(())
}

fn c01(run: &mut Run) -> Result<(), Error> {
    let said = Fit {
        sold_as: Some(mm(30.0)),
        felt: vec![Felt::NeedsForce],
        ..fit(
            Joint::CrownRace,
            read("29.92 +/- 0.03 mm")?,
            read("30.02 +/- 0.03 mm")?,
        )
    }
    .answer(OURS)?;
    run.outcome(&said, Outcome::ConformityShown);
    run.length(&said, "interference", 0.10);
    run.says(&said.words(), "disagree");
    run.check(
        "a handbook's 0.10 is quoted",
        said.beside.iter().any(|f| f.words().contains("0.100 mm")),
    );
    Ok(())
}

fn c05(run: &mut Run) -> Result<(), Error> {
    let said = Fit {
        joint: Some(Joint::CrownRace),
        felt: vec![Felt::HoleLooseWithSeveral, Felt::TurnedInUse],
        ..Fit::default()
    }
    .answer(OURS)?;
    run.outcome(&said, Outcome::NonconformityShown);
    run.says(&said.words(), "stretched");
    run.check("asks for both members", said.next.len() == 2);
    Ok(())
}

fn c07(run: &mut Run) -> Result<(), Error> {
    let rule = per_inch_rule(inch(0.0005), mm(44.0), mm(0.05), Some(5.0))?;
    run.outcome(&rule, Outcome::NonconformityShown);
    run.length(&rule, "by the rule", 0.022);
    run.check(
        "ratio 2.3",
        rule.number("ratio")
            .and_then(|w| w.bare())
            .is_some_and(|r| (r - 2.27).abs() < 0.01),
    );
    let said = Fit {
        joint: Some(Joint::HeadCup),
        hole: MemberOf::placed([
            read("43.925 +/- 0.006 mm")?.into(),
            read("43.975 +/- 0.006 mm")?.into(),
        ]),
        shaft: MemberOf::read(read("44.000 +/- 0.004 mm")?),
        ..Fit::default()
    }
    .answer(OURS)?;
    // Ceiling of 0.1 mm: a headset maker's technical page.
    run.outcome(&said, Outcome::ConformityShown);
    run.length(&said, "least interference", 0.025);
    run.length(&said, "greatest interference", 0.075);
    Ok(())
}

fn c08(run: &mut Run) -> Result<(), Error> {
    let (outside, wall) = (read("31.7 +/- 0.05 mm")?, read("1.0 +/- 0.02 mm")?);
    let said = head_tube_from_stock(&outside, &wall, Tables::ours())?;
    run.says.push(said.words());
    run.length(&said, "inside diameter", 29.7);
    run.says(&said.words(), "1 in");
    run.check(
        "the size of a steerer names no bore",
        said.cautions.contains(&BoreFact::SteererNamesNoBore.into()),
    );
    let to_cup = Ream {
        outside: Some(outside),
        bore: vec![read("29.7 +/- 0.06 mm")?.into()],
        to: length("30.2 mm")?,
        least: Vec::new(),
        rule: None,
    }
    .answer(OURS)?;
    run.length(&to_cup, "stock on diameter", 0.5);
    run.length(&to_cup, "wall left", 0.75);
    // One headset maker's guide prints 30.05 to 30.10 mm for the bore; its cup is 30.2.
    run.length(&said, "EC30 wall left", 0.8);
    run.check(
        "no 1 1/8 in seat is offered",
        !said.findings.iter().any(|f| f.what() == "EC34"),
    );
    run.log_differs = Some(
        "30.2 is the cup; a headset maker's guide prints 30.05 to 30.10 mm for the bore, which leaves a wall of 0.80. Reamed to 30.2 the cup has no grip.",
    );
    Ok(())
}

fn c10(run: &mut Run) -> Result<(), Error> {
    let seen = [
        Observation::read("outside_diameter", "25.0 mm with caliper_digital_outside")?,
        Observation::read("threaded", "yes")?,
    ];
    let found = identify(Place::Steerer, &seen, &Options::default())?;
    run.says.push(found.words());
    let first = found
        .candidates
        .iter()
        .find(|c| c.code != framegauge::identify::UNLISTED)
        .map(|c| c.code.to_string())
        .unwrap_or_default();
    run.check(
        format!(
            "French 25 x 1 is the likeliest, got {first} {:?}",
            found.outcome
        ),
        first == "french_threaded",
    );
    // Crests read low: a sound 1 in thread reads about 25.2 mm (two published pages).
    let share = |code: &str| found.candidate(code).map_or(0.0, |c| c.share);
    run.check(
        format!("more likely than 1 in, {:.2}", share("french_threaded")),
        share("french_threaded") > 2.0 * share("1in_iso_threaded"),
    );
    run.check(
        "the pitch confirms it",
        found.next.first().map(|n| n.measure) == Some(Feature::Pitch),
    );
    // 25.4 mm / 24 = 1.058 mm against 1.000 mm: a leaf tells.
    let pair =
        framegauge::judge::thread_pair(&"25 mm x 1 mm".parse()?, &"25.4 mm x 24 tpi".parse()?);
    run.length(&pair, "drift a turn", 0.058);
    let cup = find::<HeadSeat>("french_1in")?
        .cup
        .clone()
        .ok_or_else(|| missing("cup"))?;
    run.check(
        "the cup of 30.0 is disputed by 30.2",
        cup.nominal() == Some(mm(30.0))
            && cup
                .dissent()
                .iter()
                .any(|d| d.value.nominal == Some(mm(30.2))),
    );
    Ok(())
}

fn c14(run: &mut Run) -> Result<(), Error> {
    let said = CupDepth {
        bore_depth: vec![read("9 +/- 0.1 mm")?],
        insertion: read("12 +/- 0.1 mm")?,
        room: None,
        rule: None,
    }
    .answer(OURS)?;
    run.outcome(&said, Outcome::NonconformityShown);
    run.length(&said, "stands proud", 3.0);
    for cure in [Remedy::OtherPart, Remedy::Deepen] {
        run.check(
            format!("cured by {cure}"),
            said.cures.iter().any(|c| c.by == cure),
        );
    }
    Ok(())
}

fn c15(run: &mut Run) -> Result<(), Error> {
    let said = Fit {
        joint: Some(Joint::HeadCup),
        felt: vec![Felt::GoesByHand],
        ..Fit::default()
    }
    .answer(OURS)?;
    run.outcome(&said, Outcome::NonconformityShown);
    run.check("asks for bore and cup", said.next.len() == 2);
    let open = BoreRescue::new(Joint::HeadCup, Damage::Loose).options(OURS)?;
    run.says.push(open.words());
    for step in [Step::Compound, Step::Shim] {
        run.check(
            format!("{step} waits for the gap"),
            open.stand(step) == Some(Stand::NeedsMeasurement),
        );
    }
    let place = |step: Step| open.options.iter().position(|o| o.step == step);
    run.check(
        "burrs are the last resort",
        place(Step::Peen) > place(Step::Compound) && place(Step::Peen) > place(Step::Shim),
    );
    let mut known = BoreRescue::new(Joint::HeadCup, Damage::Loose);
    known.hole.push(read("34.20 +/- 0.01 mm")?.into());
    known.shaft = Some(read("34.00 +/- 0.01 mm")?);
    known.wanted_interference = Some(mm(0.05));
    known.compound_gap = Some(mm(0.10));
    let known = known.options(OURS)?;
    run.check(
        "too wide for compound",
        known.stand(Step::Compound) == Some(Stand::Forbidden),
    );
    let wall = known.steps(Step::Shim).next().map(|o| o.words());
    run.check(
        "shim (0.20 + 0.05) / 2",
        wall.as_deref() == Some("wall 0.125 mm"),
    );
    Ok(())
}

fn c16(run: &mut Run) -> Result<(), Error> {
    let said = ParallelFaces {
        wear_pattern: Some(true),
        ..ParallelFaces::default()
    }
    .answer(OURS)?;
    // 0.075 mm: a headset maker's technical page.
    run.outcome(&said, Outcome::Undecided);
    run.length(&said, "ceiling", 0.075);
    run.check(
        "ink and the first cut",
        said.next.iter().any(|n| n.measure().contains("ink")),
    );
    run.check(
        "a bent steerer gives the same sign",
        said.next.iter().any(|n| n.why().contains("same sign")),
    );
    Ok(())
}
