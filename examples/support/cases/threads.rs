//! Threads: shells, hangers, axles, hands, table rows.

use framegauge::identify::{BeliefFrom, Observation, Options, identify};
use framegauge::judge::{
    Gauging, HoleToTap, Passed, SpindleWidth, ThreadSeen, Verdict, loosening, pattern_threads,
    series_pitches, shell_and_part, shell_orientation, table_row, thread_pair,
};
use framegauge::measure::Outcome;
use framegauge::rescue::{
    Damage, RescueAsk, RescueFact, Stand, Step, Symptom, ThreadRescue, diagnose,
};
use framegauge::standard::{Place, Shell, find};
use framegauge::thread::{
    Designation, Hand, Side, ThreadForm, ThreadSize, candidates_by_bore, limits_of_size,
};
use framegauge::{Error, Pitch, decimal, in_mm, inch_fraction, mm, to_mm};

use super::{OURS, Run, Runner, length, missing, read};

/// A thread of which this was seen.
fn seen(signs: &[ThreadSeen]) -> Result<Verdict, Error> {
    let asked = Gauging {
        seen: signs.to_vec(),
        ..Gauging::default()
    };
    asked.answer(OURS)
}

/// A hole before it is tapped for this thread.
fn hole_to_tap(thread: &str, hole: framegauge::measure::Reading) -> Result<Verdict, Error> {
    let asked = HoleToTap {
        thread: thread.parse()?,
        hole: vec![hole.into()],
        limits: None,
        rule: None,
    };
    asked.answer(OURS)
}

pub const RUNNERS: &[(&str, Runner)] = &[
    ("A01", a01),
    ("A03", a03),
    ("A05", a05),
    ("A07", a07),
    ("A09", a09),
    ("A10", a10),
    ("E02", e02),
    ("E04", e04),
    ("G02", g02),
    ("G04", g04),
    ("H02", h02),
    ("H04", h04),
];

fn shell(code: &str) -> Result<&'static Shell, Error> {
    find::<Shell>(code)
}

fn a01(run: &mut Run) -> Result<(), Error> {
    let said = shell_and_part(
        &pattern_threads(shell("french")?)?,
        &pattern_threads(shell("bsc")?)?,
    );
    run.outcome(&said, Outcome::NonconformityShown);
    let on = |what: &str| said.findings.iter().any(|f| f.what() == what);
    for ground in [
        "drive side, diameter",
        "drive side, pitch",
        "drive side, hand",
    ] {
        run.check(format!("rejects by {ground}"), on(ground));
    }
    run.check(
        "the other side is right-hand in both",
        !on("non-drive side, hand"),
    );
    // Basic pitch diameters 34.350 (ISO 724) and 34.234 (cycle thread table): 0.116 apart.
    run.length(&said, "drive side, pitch diameters apart", 0.116);
    run.length(&said, "drive side, drift a turn", 0.058);
    let turns = said
        .number("drive side, turns until binding")
        .and_then(|w| w.bare());
    run.check(
        "binds after about one turn",
        turns.is_some_and(|t| (1.0..1.3).contains(&t)),
    );
    run.says(
        &said.findings.iter().map(|f| f.words()).collect::<String>(),
        "equal-looking crests prove nothing",
    );
    Ok(())
}

fn a03(run: &mut Run) -> Result<(), Error> {
    let old = pattern_threads(shell("raleigh_26")?)?
        .drive
        .ok_or_else(|| missing("thread"))?;
    let cup = pattern_threads(shell("bsc")?)?
        .drive
        .ok_or_else(|| missing("thread"))?;
    let pair = thread_pair(&old, &cup);
    run.outcome(&pair, Outcome::NonconformityShown);
    run.length(&pair, "drift a turn", 0.081);
    let half = pair.number("half-pitch turns").and_then(|w| w.bare());
    run.check("half a pitch after six threads", half == Some(6.0));
    let spindle = SpindleWidth {
        width: vec![read("71 +/- 0.1 mm")?],
        made_for: Some(length("68 mm")?),
        ..SpindleWidth::default()
    }
    .answer(OURS)?;
    run.outcome(&spindle, Outcome::NonconformityShown);
    run.length(&spindle, "spindle short by", 3.0);
    // A spindle made for 70 to 71 mm: the widths of this pattern are 71 and 76 mm (two pages agree).
    let widths: Vec<_> = shell("raleigh_26")?
        .widths
        .iter()
        .filter_map(|w| w.nominal())
        .collect();
    run.check(
        "71 mm is a width of this pattern",
        widths.contains(&mm(71.0)),
    );
    Ok(())
}

fn a05(run: &mut Run) -> Result<(), Error> {
    // Tool flats and the country are weak evidence: nothing may be identified by them.
    let seen = [
        Observation::Belief {
            name: "french".into(),
            from: BeliefFrom::Width,
        },
        Observation::Belief {
            name: "french".into(),
            from: BeliefFrom::Country,
        },
    ];
    let which = identify(Place::Shell, &seen, &Options::default())?;
    run.says.push(which.words());
    run.check(
        "nothing is identified by flats and country",
        which.outcome.identified().is_none(),
    );
    let first = which
        .candidates
        .first()
        .map(|c| c.code.to_string())
        .unwrap_or_default();
    run.check(
        format!("French is the likeliest, got {first}"),
        first == "french",
    );
    let turn = loosening(
        &[shell("french")?, shell("swiss")?, shell("bsc")?],
        Side::Drive,
    )?;
    run.outcome(&turn, Outcome::Undecided);
    run.check(
        "no more torque",
        turn.cautions
            .iter()
            .any(|c| c.to_string().contains("no more torque")),
    );
    run.check(
        "cross-fit test",
        turn.next.iter().any(|n| n.measure().contains("other side")),
    );
    Ok(())
}

fn a07(run: &mut Run) -> Result<(), Error> {
    let loose = seen(&[ThreadSeen::LooseWithSeveral])?;
    run.outcome(&loose, Outcome::NonconformityShown);
    run.says(&loose.words(), "over-tapped");
    run.check(
        "asks for the pitch-diameter gauge",
        loose.next.iter().any(|n| n.measure().contains("NOT GO")),
    );
    let english = shell("bsc")?;
    let turned = shell_orientation(&pattern_threads(english)?.back_to_front(), english)?;
    run.outcome(&turned, Outcome::NonconformityShown);
    run.finds(&turned, "hands_swapped");
    Ok(())
}

fn a09(run: &mut Run) -> Result<(), Error> {
    let english = pattern_threads(shell("bsc")?)?;
    let mut ask = ThreadRescue::new(
        english.drive.ok_or_else(|| missing("thread"))?,
        Damage::Stripped,
    )
    .in_shell(english, Side::Drive);
    ask.to.push("36 mm x 24 tpi".parse()?);
    let left = ask.options(OURS)?;
    run.says.push(left.words());
    let recut = left
        .steps(Step::Retap)
        .next()
        .ok_or_else(|| missing("retap"))?;
    run.says.push(recut.words());
    run.check("waits for the wall", recut.stand == Stand::NeedsMeasurement);
    let Some(RescueFact::TakesASide {
        stock, old_grooves, ..
    }) = recut.why.first()
    else {
        return Err(missing("stock"));
    };
    run.check(
        format!("stock 0.60 a side, got {}", in_mm(*stock)),
        (to_mm(*stock) - 0.601).abs() < 0.001,
    );
    // Core diameter 34.87 printed for the Italian thread (table after a national cycle-thread standard); 34.64 if its flanks
    // were of 55 degrees. English major 34.798.
    run.check(
        format!("old thread below 0.1, got {}", in_mm(*old_grooves)),
        *old_grooves < mm(0.1),
    );
    let after = left.shells_after.first().ok_or_else(|| missing("shell"))?;
    run.check("a hybrid", after.is_hybrid());
    run.check(
        "both hands right",
        [after.drive, after.non_drive]
            .into_iter()
            .flatten()
            .all(|t| t.hand == Hand::Right),
    );
    run.check(
        "chasing a stripped thread is refused",
        left.stand(Step::Chase) == Some(Stand::Forbidden),
    );
    ask.outside = Some(read("40 +/- 0.1 mm")?);
    let with_wall = ask.options(OURS)?;
    run.check(
        "allowed once the wall is known",
        with_wall.stand(Step::Retap) == Some(Stand::Allowed),
    );
    Ok(())
}

fn a10(run: &mut Run) -> Result<(), Error> {
    let jams = diagnose(Symptom::JamsAfterTurns);
    let place = |ask: RescueAsk| {
        jams.checks
            .iter()
            .position(|check| *check == ask.clone().into())
    };
    let (clean, chase) = (
        place(RescueAsk::Grooves),
        place(RescueAsk::ChaseFromSoundEnd),
    );
    run.check(
        "cleaning before chasing before gauging",
        clean < chase && chase < place(RescueAsk::BothGauges),
    );
    run.outcome(&seen(&[ThreadSeen::Jams])?, Outcome::Undecided);
    let passed = Some(Passed::Passed);
    let after = Gauging {
        go: passed,
        not_go: passed,
        plain_go: passed,
        plain_not_go: passed,
        seen: vec![ThreadSeen::TakesPart],
        ..Gauging::default()
    }
    .answer(OURS)?;
    run.check(
        "passes once clean and gauged",
        after.outcome == Outcome::ConformityShown,
    );
    Ok(())
}

fn e02(run: &mut Run) -> Result<(), Error> {
    let sizes: Vec<ThreadSize> = ["M12x1", "M12x1.25", "M12x1.5", "M12x1.75"]
        .iter()
        .map(|s| s.parse())
        .collect::<Result<_, _>>()?;
    // Minor diameters 6H by ISO 965-1 (the pitches but 1.0 also printed in ISO 965-2).
    for (size, low, high) in [
        (&sizes[0], 10.917, 11.153),
        (&sizes[1], 10.647, 10.912),
        (&sizes[2], 10.376, 10.676),
        (&sizes[3], 10.106, 10.441),
    ] {
        let minor = limits_of_size(size, &"6H".parse()?)?.minor;
        run.check(
            format!("{size}: {minor}"),
            minor.to_string() == format!("{low:.3} to {high:.3} mm"),
        );
    }
    let sound = candidates_by_bore(&sizes, &read("11.00 +/- 0.04 mm")?)?;
    run.check(
        "11.00 mm leaves the pitch of 1.0 alone",
        sound.possible == [sizes[0]],
    );
    let edge = candidates_by_bore(&sizes, &read("10.66 +/- 0.04 mm")?)?;
    run.check(
        "10.66 mm does not tell 1.25 from 1.5",
        edge.ambiguous && edge.next.contains("leaf"),
    );
    let left = ThreadRescue::new(Designation::new(sizes[0]), Damage::Stripped).options(OURS)?;
    run.says.push(left.words());
    let insert = left
        .steps(Step::Insert)
        .next()
        .ok_or_else(|| missing("insert"))?;
    run.check(
        "the insert waits for the wall",
        insert.stand == Stand::NeedsMeasurement,
    );
    run.check(
        "and for its maker's list",
        insert.next.contains(&RescueAsk::InsertSizes.into()),
    );
    Ok(())
}

fn e04(run: &mut Run) -> Result<(), Error> {
    let hole = read("8.5 +/- 0.05 mm")?;
    // M10x1-6H minor 8.917 to 9.153 mm, M10x1.5-6H 8.376 to 8.676 mm (ISO 965-1).
    let fine = hole_to_tap("M10x1", hole)?;
    run.outcome(&fine, Outcome::NonconformityShown);
    run.length(&fine, "enlarge by, least", 0.417);
    run.check(
        "a 9.0 mm hole suits",
        hole_to_tap("M10x1", read("9.0 +/- 0.05 mm")?)?.outcome == Outcome::ConformityShown,
    );
    run.check(
        "8.5 mm suits M10x1.5",
        hole_to_tap("M10x1.5", hole)?.outcome == Outcome::ConformityShown,
    );
    let hanger = framegauge::standard::find::<framegauge::standard::ThreadUse>("hanger_m10")?;
    run.check(
        "a hanger is M10x1",
        hanger
            .thread
            .value()
            .is_some_and(|t| t.to_string() == "M10x1"),
    );
    Ok(())
}

fn g02(run: &mut Run) -> Result<(), Error> {
    let english = pattern_threads(shell("bsc")?)?;
    let (left, right) = (
        english.non_drive.ok_or_else(|| missing("thread"))?,
        english.drive.ok_or_else(|| missing("thread"))?,
    );
    let pair = thread_pair(&left, &right);
    run.outcome(&pair, Outcome::NonconformityShown);
    run.check(
        "the hand alone",
        pair.findings.len() == 1 && pair.findings[0].fact.code() == "hands",
    );
    let chased = seen(&[ThreadSeen::Crossed, ThreadSeen::TakesPart])?;
    run.check(
        "chased and by hand is still undecided",
        chased.outcome == Outcome::Undecided,
    );
    run.says(&chased.words(), "gauge before use");
    run.check(
        "asks for NOT GO",
        chased.next.iter().any(|n| n.measure().contains("NOT GO")),
    );
    Ok(())
}

fn g04(run: &mut Run) -> Result<(), Error> {
    let english = shell("bsc")?;
    let threads = pattern_threads(english)?.back_to_front();
    let said = shell_orientation(&threads, english)?;
    run.outcome(&said, Outcome::NonconformityShown);
    let left = ThreadRescue::new(
        threads.drive.ok_or_else(|| missing("thread"))?,
        Damage::Swapped,
    )
    .in_shell(threads, Side::Drive)
    .options(OURS)?;
    run.says.push(left.words());
    run.check(
        "chasing is refused",
        left.stand(Step::Chase) == Some(Stand::Forbidden),
    );
    let fill = left
        .steps(Step::FillAndRecut)
        .next()
        .ok_or_else(|| missing("fill and recut"))?;
    run.check(
        "repairable, durability unknown",
        fill.stand == Stand::NeedsMeasurement && fill.why == [RescueFact::Fill],
    );
    run.open.push(fill.words());
    Ok(())
}

fn h02(run: &mut Run) -> Result<(), Error> {
    let thirteen = Pitch::tpi(13)?;
    // 1/2 in: 13 threads an inch coarse, 20 fine (series table of ASME B1.1).
    let said = series_pitches(inch_fraction(1, 2), thirteen, thirteen)?;
    run.outcome(&said, Outcome::NonconformityShown);
    run.says(
        &said.words(),
        "a pitch of the UNC series, stands in the fine column",
    );
    run.check(
        "a fixed row is no fixed column",
        said.next.iter().any(|n| n.why().contains("column")),
    );
    run.check(
        "20 tpi passes",
        series_pitches(inch_fraction(1, 2), thirteen, Pitch::tpi(20)?)?.outcome
            == Outcome::ConformityShown,
    );
    Ok(())
}

fn h04(run: &mut Run) -> Result<(), Error> {
    let comma = |text: &str| decimal(text).map(mm);
    let said = table_row(
        comma("34,8")?,
        comma("33,67")?,
        Pitch::tpi(24)?,
        ThreadForm::Bsc,
        Some(comma("37,8")?),
    )?;
    run.outcome(&said, Outcome::NonconformityShown);
    run.length(&said, "nominal less core", 1.13);
    run.says(&said.words(), "37.800 mm is a slip for 34.800 mm");
    Ok(())
}
