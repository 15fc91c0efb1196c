//! Brake mounts, dropouts, hubs, coatings.

use framegauge::face::MountKind;
use framegauge::fit::Feature;
use framegauge::judge::{CaliperPlace, CaliperTilt, Coating, Dropouts, HubWidth, sliding_tab};
use framegauge::measure::Outcome;
use framegauge::standard::End;
use framegauge::{Error, deg, mm};

use super::{OURS, Run, Runner, read};

pub const RUNNERS: &[(&str, Runner)] = &[
    ("E06", e06),
    ("E08", e08),
    ("F02", f02),
    ("F04", f04),
    ("F06", f06),
    ("I01", i01),
];

fn e06(run: &mut Run) -> Result<(), Error> {
    let said = Dropouts {
        spacing: read("114 +/- 0.2 mm")?,
        hub: mm(108.0),
        difference: Some(read("1.0 +/- 0.1 mm")?),
        over: None,
        angle: Some(deg(2.0)),
    }
    .answer(OURS)?;
    run.says.push(said.words());
    run.length(&said, "spacing off by", 6.0);
    run.length(&said, "each side", 3.0);
    run.length(&said, "length implied", 28.636);
    run.says(&said.words(), "washers cure neither");
    run.says(&said.words(), "for neither is a limit published");
    let both = Dropouts {
        spacing: read("114 +/- 0.2 mm")?,
        hub: mm(108.0),
        difference: Some(read("1.0 +/- 0.1 mm")?),
        over: Some(mm(28.6)),
        angle: None,
    }
    .answer(OURS)?;
    let angle = both.number("angle").and_then(|w| w.in_deg());
    run.check(
        format!("two degrees from two readings, got {angle:?}"),
        angle.is_some_and(|a| (a - 2.0).abs() < 0.01),
    );
    Ok(())
}

fn e08(run: &mut Run) -> Result<(), Error> {
    let said = HubWidth {
        pattern: "ta_12x142".into(),
        over_caps: None,
        rule: None,
    }
    .answer(OURS)?;
    run.outcome(&said, Outcome::Undecided);
    // 142 mm over the end caps: two pages agree.
    run.length(&said, "wanted width", 142.0);
    run.says(&said.words(), "before touching the mount");
    run.says(&said.words(), "not cured by facing");
    Ok(())
}

fn f02(run: &mut Run) -> Result<(), Error> {
    let said = CaliperTilt {
        kind: MountKind::Posts,
        points: Vec::new(),
        pad_length: None,
        pad_clearance: None,
        rule: None,
    }
    .answer(OURS)?;
    run.outcome(&said, Outcome::Undecided);
    run.says(&said.words(), "no limit is published");
    run.check(
        "asks for traces or a dial",
        said.next.iter().any(|n| n.measure().contains("dial")),
    );
    // 0.2 mm on each side of the rotor at least: a published pad clearance.
    run.length(&said, "least free play", 0.4);
    Ok(())
}

fn f04(run: &mut Run) -> Result<(), Error> {
    let wrong = CaliperPlace {
        native: mm(160.0),
        adapter: Some(mm(20.0)),
        rotor: mm(160.0),
        made_for: None,
        on: None,
    };
    let said = wrong.answer(OURS)?;
    run.outcome(&said, Outcome::NonconformityShown);
    run.length(&said, "too high by", 10.0);
    run.says(&said.words(), "has to give +0 mm");
    run.check(
        "turned round it is right",
        CaliperPlace {
            adapter: None,
            ..wrong.clone()
        }
        .answer(OURS)?
        .outcome
            == Outcome::ConformityShown,
    );
    // A rear tab adapter on a front suits a rotor 20 mm larger: two pages agree, one says the reverse.
    let moved = CaliperPlace {
        adapter: None,
        made_for: Some(End::Rear),
        on: Some(End::Front),
        ..wrong.clone()
    }
    .answer(OURS)?;
    run.length(&moved, "suits a rotor of", 180.0);
    Ok(())
}

fn f06(run: &mut Run) -> Result<(), Error> {
    let said = sliding_tab(deg(26.0), deg(26.0), mm(15.0))?;
    run.says.push(said.words());
    run.check(
        "parallel keeps the offset",
        said.outcome == Outcome::ConformityShown,
    );
    run.length(&said, "strays by", 0.0);
    run.check(
        "clearance to the stay",
        said.next.iter().any(|n| n.measure().contains("stay")),
    );
    Ok(())
}

fn i01(run: &mut Run) -> Result<(), Error> {
    let said = Coating {
        member: Feature::Shaft,
        reading: None,
        expected: None,
    }
    .answer(OURS)?;
    run.outcome(&said, Outcome::Undecided);
    // 0.06 to 0.12 mm a side is memory, and graded so.
    run.length(&said, "least error", 0.12);
    run.length(&said, "greatest error", 0.24);
    run.check(
        "graded as memory",
        said.weakest == Some(framegauge::Grade::Memory),
    );
    run.says(&said.words(), "no verdict before the coating is off");
    Ok(())
}
