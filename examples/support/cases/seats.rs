//! Seat tubes and posts.

use framegauge::fit::{Feature as Member, SizeReading};
use framegauge::identify::{DoubtKind, Observation, Options, TakenFor, identify};
use framegauge::judge::{
    Coating, Fit, Insertion, MemberOf, Shim, WrittenDepth, expected_post, one_size, post_by_tape,
};
use framegauge::measure::Outcome;
use framegauge::rescue::{BoreRescue, Damage, Step};
use framegauge::standard::{HeadTubeEnd, Joint, Place};
use framegauge::{Error, mm};

use super::{OURS, Run, Runner, fit, read};

pub const RUNNERS: &[(&str, Runner)] = &[
    ("D02", d02),
    ("D04", d04),
    ("D06", d06),
    ("D08", d08),
    ("D10", d10),
    ("D12", d12),
    ("D14", d14),
];

fn d02(run: &mut Run) -> Result<(), Error> {
    let asked = Fit {
        sold_as: Some(mm(27.2)),
        ..fit(
            Joint::Seatpost,
            read("27.40 +/- 0.02 mm")?,
            read("27.00 +/- 0.02 mm")?,
        )
    };
    let said = asked.answer(OURS)?;
    run.outcome(&said, Outcome::NonconformityShown);
    run.length(&said, "clearance", 0.40);
    run.length(&said, "hole off size", 0.20);
    run.length(&said, "shaft off size", -0.20);
    run.says(&said.words(), "both members are off");
    // 27.4 is a listed size (a trade article on seatpost diameters).
    run.length(&said, "post to try", 27.4);
    run.length(&said, "clearance it leaves", 0.0);
    run.length(&said, "shim wall", 0.20);
    Ok(())
}

fn d04(run: &mut Run) -> Result<(), Error> {
    let asked = Shim {
        bore: vec![read("27.0 +/- 0.02 mm")?.into()],
        post: vec![read("26.8 +/- 0.02 mm")?.into()],
        sheet: Some(read("0.2 +/- 0.01 mm")?),
        ..Shim::default()
    };
    let said = asked.answer(OURS)?;
    run.outcome(&said, Outcome::NonconformityShown);
    run.length(&said, "shim wall", 0.10);
    run.says(
        &said.words(),
        "adds 0.400 mm on diameter and will not enter",
    );
    Ok(())
}

fn d06(run: &mut Run) -> Result<(), Error> {
    // A tube of 28.0 mm with a wall of 0.7 to 0.8 mm: 26.4 to 26.6 inside.
    let said = expected_post(
        &read("28.0 +/- 0.05 mm")?,
        mm(0.7),
        mm(0.8),
        &[read("25.8 +/- 0.05 mm")?],
    )?;
    run.outcome(&said, Outcome::NonconformityShown);
    run.length(&said, "smallest expected post", 26.4);
    run.length(&said, "largest expected post", 26.6);
    run.length(&said, "wall implied", 1.1);
    run.check(
        "roundness before a size is chosen",
        said.next.iter().any(|n| n.measure().contains("roundness")),
    );
    let left = BoreRescue::new(Joint::Seatpost, Damage::Pinched).options(OURS)?;
    let place = |step: Step| left.options.iter().position(|o| o.step == step);
    run.check(
        "rounded before reamed",
        place(Step::RoundOut) < place(Step::NextSize),
    );
    Ok(())
}

fn d08(run: &mut Run) -> Result<(), Error> {
    let at = |text: &str| read(text).map(SizeReading::new);
    let said = one_size(
        "seat tube",
        &[at("26.14 +/- 0.03 mm")?, at("27.15 +/- 0.03 mm")?],
        mm(0.2),
    )?;
    run.outcome(&said, Outcome::NonconformityShown);
    run.length(&said, "spread", 1.01);
    let tube = identify(
        Place::SeatTube,
        &[
            Observation::read("bore", "26.14 +/- 0.03 mm")?,
            Observation::read("bore", "27.15 +/- 0.03 mm")?,
        ],
        &Options::default(),
    )?;
    run.check(
        "no size is named",
        tube.outcome.identified().is_none() && tube.outcome.left().is_empty(),
    );
    let paint = Coating {
        member: Member::Shaft,
        reading: Some(read("28.83 +/- 0.02 mm")?),
        expected: Some(mm(28.6)),
    }
    .answer(OURS)?;
    run.length(&paint, "coat a side", 0.115);
    run.says(&paint.words(), "as a powder coat is");
    let head = identify(
        Place::HeadTube(HeadTubeEnd::Upper),
        &[Observation::read("bore", "21.9 +/- 0.1 mm")?],
        &Options::default(),
    )?;
    run.says.push(head.words());
    run.check(
        "21.9 is no head tube, but a steerer",
        head.doubts
            .iter()
            .any(|d| matches!(&d.kind, DoubtKind::Implausible { may_be, .. } if may_be.iter().any(|m| m.what == TakenFor::SteererBore))),
    );
    let asked = Fit {
        hole: MemberOf::placed([
            read("21.80 +/- 0.03 mm")?.into(),
            read("22.05 +/- 0.03 mm")?.into(),
        ]),
        ..fit(
            Joint::Quill,
            read("21.80 +/- 0.03 mm")?,
            read("22.2 +/- 0.03 mm")?,
        )
    };
    let stem = asked.answer(OURS)?;
    run.check(
        "a 22.2 stem does not go in",
        stem.outcome == Outcome::NonconformityShown,
    );
    Ok(())
}

fn d10(run: &mut Run) -> Result<(), Error> {
    let said = post_by_tape(&read("82 +/- 0.5 mm")?)?;
    run.outcome(&said, Outcome::Undecided);
    run.length(&said, "diameter", 26.101);
    run.length(&said, "diameter uncertainty", 0.159);
    run.says(&said.words(), "26.0 or 26.2");
    Ok(())
}

fn d12(run: &mut Run) -> Result<(), Error> {
    let said = expected_post(
        &read("28.6 +/- 0.05 mm")?,
        mm(0.6),
        mm(0.7),
        &[read("25.4 +/- 0.05 mm")?],
    )?;
    run.outcome(&said, Outcome::NonconformityShown);
    run.length(&said, "wall implied", 1.6);
    run.says(&said.words(), "a sleeve, another tube");
    Ok(())
}

fn d14(run: &mut Run) -> Result<(), Error> {
    let post = |weld: Option<f64>| Insertion {
        post: Some(mm(27.2)),
        weld: weld.map(mm),
        ..Insertion::default()
    };
    for (weld, depth) in [(50.0, 90.0), (80.0, 105.0)] {
        let said = post(Some(weld)).answer(OURS)?;
        run.says.push(said.words());
        // 25 mm below the weld and 90 mm in all: a workshop article on minimum insertion, 2017.
        run.length(&said, "weld rule", depth);
        run.says(&said.words(), "the published rules differ");
        run.says(&said.words(), "a deeper mark on the post");
        // 60 mm: German bicycle pages.
        run.check(
            "60 mm is shown beside",
            said.beside
                .iter()
                .any(|f| f.limits.and_then(|l| l.lower().known()) == Some(mm(60.0))),
        );
    }
    run.length(&post(None).answer(OURS)?, "without weld", 150.0);
    let marked = Insertion {
        written: vec![WrittenDepth {
            owner: "the mark on the post".into(),
            depth: mm(110.0),
        }],
        inserted: Some(read("100 +/- 1 mm")?),
        ..post(Some(50.0))
    };
    run.check(
        "the post's mark wins",
        marked.answer(OURS)?.outcome == Outcome::NonconformityShown,
    );
    Ok(())
}
