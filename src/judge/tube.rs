//! Tube arithmetic: outside diameter, wall and bore; what a reamer takes and leaves; which post a tube should take.

use alloc::boxed::Box;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::verdict::{NOTHING, NextStep, Verdict, Worked};
use super::{BoreAsk, BoreFact, Finding};
use crate::evidence::{Figure, Grade};
use crate::measure::{DecisionRule, Limits, Outcome, Reading, decide, settled_cmp};
use crate::quantity::{Length, in_mm, positive};
use crate::standard::{Cutting, CuttingRule, HeadSeat, Row, SeatKind, Seatpost, Tables};
use crate::{Error, ErrorKind};

/// Inside diameter of a tube: outside less **two** walls.
///
/// # Errors
/// `OutOfRange` and `NotFinite` for sizes that are none; `Contradiction` when the walls fill the tube.
///
/// ```
/// use framegauge::{in_mm, judge::inside_diameter, mm};
/// let inside = inside_diameter(&"31.7 +/- 0.05 mm".parse().unwrap(), &"1.0 +/- 0.02 mm".parse().unwrap()).unwrap();
/// assert_eq!(in_mm(inside.value()).to_string(), "29.700 mm");
/// ```
pub fn inside_diameter(outside: &Reading, wall: &Reading) -> Result<Reading, Error> {
    positive("outside diameter", outside.value())?;
    positive("wall", wall.value())?;
    let inside = outside.less(&wall.scaled(2.0));
    if settled_cmp(inside.value(), NOTHING).is_le() {
        return Err(Error::new(
            ErrorKind::Contradiction,
            "wall",
            in_mm(wall.value()),
            format!("two walls fill a tube of {}", in_mm(outside.value())),
            "a wall is one side: half of outside less inside",
        ));
    }
    Ok(inside)
}

/// The wall that an outside diameter and a bore imply: half their difference.
///
/// # Errors
/// `Contradiction` when the bore is not smaller than the outside.
///
/// ```
/// use framegauge::{in_mm, judge::wall_implied};
/// let wall = wall_implied(&"28.6 +/- 0.05 mm".parse().unwrap(), &"25.4 +/- 0.05 mm".parse().unwrap()).unwrap();
/// assert_eq!(in_mm(wall.value()).to_string(), "1.600 mm");
/// ```
pub fn wall_implied(outside: &Reading, bore: &Reading) -> Result<Reading, Error> {
    positive("outside diameter", outside.value())?;
    positive("bore", bore.value())?;
    let wall = outside.less(bore).scaled(0.5);
    if settled_cmp(wall.value(), NOTHING).is_le() {
        return Err(Error::new(
            ErrorKind::Contradiction,
            "bore",
            in_mm(bore.value()),
            format!(
                "not smaller than the outside diameter {}",
                in_mm(outside.value())
            ),
            "check which is which, and that neither is a radius",
        ));
    }
    Ok(wall)
}

/// Which head-tube seats a plain tube of this bore can be reamed to, smallest stock first: seats whose bore is larger by no
/// more than the greatest stock that a row of the tables leaves for a reamer.
///
/// Steerer sizes are names, not bore sizes: a 1 in steerer takes a bore near 30 mm.
///
/// # Errors
/// `OutOfRange` and `NotFinite` for a bore that is none.
///
/// ```
/// use framegauge::{judge::head_tube_from_stock, standard::Tables};
/// let (outside, wall) = ("31.7 +/- 0.05 mm".parse().unwrap(), "1.0 +/- 0.02 mm".parse().unwrap());
/// let said = head_tube_from_stock(&outside, &wall, Tables::ours()).unwrap();
/// assert_eq!(said.millimetres("inside diameter"), Some(29.7));
/// assert!(said.words().contains("EC30"));
/// ```
pub fn head_tube_from_stock(
    outside: &Reading,
    wall: &Reading,
    tables: Tables<'_>,
) -> Result<Verdict, Error> {
    let inside = inside_diameter(outside, wall)?;
    let most = CuttingRule::greatest(Cutting::ReamStock, tables).map(|(most, _)| most);
    let u = inside.expanded_uncertainty();
    let mut seats: Vec<(&HeadSeat, Length)> = tables
        .all::<HeadSeat>()
        .filter(|s| s.kind == SeatKind::ExternalCup)
        .filter_map(|s| Some((s, s.bore.upper().or(s.bore.nominal())?)))
        .filter(|(_, bore)| {
            let stock = *bore - inside.value();
            settled_cmp(stock, -u).is_ge()
                && most.is_some_and(|most| settled_cmp(stock, most + u).is_le())
        })
        .collect();
    seats.sort_by(|a, b| settled_cmp(a.1, b.1));
    let (inside, seen) = (inside.value(), seats.len());
    let of_tube = BoreFact::InsideOfTube {
        inside,
        seats: seen,
    };
    let of_tube = Vec::from([Finding::of(of_tube)]);
    let mut said = Verdict::from_findings("head tube stock", of_tube)
        .then(NextStep::of(BoreAsk::CupOutside))
        .minding(BoreFact::SteererNamesNoBore)
        .minding(BoreFact::CutOnce)
        .lengths([("inside diameter", Some(inside), "outside - 2 walls")]);
    for (row, largest) in seats {
        let wall = wall_implied(outside, &Reading::exact(largest)?)?.value();
        let (seat, name, bore) = (
            row.code.clone(),
            row.name.clone(),
            Box::new(row.bore.clone()),
        );
        let (stock, cup) = (largest - inside, row.cup.as_ref().and_then(Figure::nominal));
        for (what, length, formula) in [
            ("stock on diameter", stock, "largest bore - bore"),
            ("wall left", wall, "(outside - largest bore) / 2"),
        ] {
            said = said.with(Worked::length(format!("{seat} {what}"), length, formula));
        }
        let fact = BoreFact::SeatInReach {
            seat,
            name,
            bore,
            stock,
            wall,
            cup,
        };
        said.findings
            .push(Finding::of(fact).resting_on(row.bore.evidence()));
    }
    Ok(said)
}

/// Which post a tube of this outside diameter and wall should take: the largest size of the series not above the bore that
/// the walls leave, for the thickest and the thinnest wall.
///
/// # Errors
/// As [`inside_diameter`]; `Contradiction` for walls out of order.
///
/// ```
/// use framegauge::{judge::expected_post, mm};
/// let said = expected_post(&"28.0 +/- 0.05 mm".parse().unwrap(), mm(0.7), mm(0.8), &[]).unwrap();
/// assert_eq!((said.millimetres("smallest bore"), said.millimetres("largest bore")), (Some(26.4), Some(26.6)));
/// ```
///
/// A post in use that differs is no proof of the nominal size, but needs a reason:
/// ```
/// use framegauge::{judge::expected_post, measure::Outcome, mm};
/// let used = ["25.4 +/- 0.05 mm".parse().unwrap()];
/// let said = expected_post(&"28.6 +/- 0.05 mm".parse().unwrap(), mm(0.6), mm(0.7), &used).unwrap();
/// assert_eq!(said.outcome, Outcome::NonconformityShown);
/// assert_eq!(said.millimetres("wall implied"), Some(1.6));
/// ```
pub fn expected_post(
    outside: &Reading,
    wall_min: Length,
    wall_max: Length,
    post_in_use: &[Reading],
) -> Result<Verdict, Error> {
    let bore = |wall: Length| inside_diameter(outside, &Reading::exact(positive("wall", wall)?)?);
    let (thick, thin) = (bore(wall_max)?.value(), bore(wall_min)?.value());
    let walls = Limits::between(wall_min, wall_max, Grade::Derived)?;
    let fits = |bore: Length| {
        let posts = Seatpost::table()
            .iter()
            .filter_map(|p| p.diameter.nominal());
        posts
            .filter(|d| settled_cmp(*d, bore).is_le())
            .max_by(|a, b| settled_cmp(*a, *b))
    };
    let (post_least, post_most) = fits(thick).zip(fits(thin)).unzip();
    let (outer, bore_least, bore_most) = (outside.value(), thick, thin);
    let expected = BoreFact::PostExpected {
        outside: outer,
        bore_least,
        bore_most,
        post_least,
        post_most,
    };
    let mut findings = Vec::from([Finding::of(expected)]);
    let (mut worked, mut next) = (Vec::new(), Vec::new());
    for used in post_in_use {
        let wall = wall_implied(outside, used)?;
        let (post, found) = (used.value(), decide(&wall, &walls, DecisionRule::default()));
        let agrees = found.outcome;
        worked.push(Worked::length(
            "wall implied",
            wall.value(),
            "(outside - post) / 2",
        ));
        findings.push(Finding {
            outcome: Some(agrees),
            readings: Vec::from([wall]),
            limits: Some(walls),
            decision: Some(found),
            owner: String::from("tube as labelled"),
            grade: Some(Grade::Derived),
            ..Finding::of(BoreFact::PostImplies {
                post,
                wall: wall.value(),
                agrees,
            })
        });
        if agrees != Outcome::ConformityShown {
            next.push(NextStep::of(BoreAsk::TwoByTwo));
        }
    }
    if post_in_use.is_empty() {
        next.push(NextStep::of(BoreAsk::Finished));
    }
    let mut said = Verdict::from_findings("seat tube data", findings).lengths([
        ("smallest bore", Some(thick), "outside - 2 thickest walls"),
        ("largest bore", Some(thin), "outside - 2 thinnest walls"),
        ("smallest expected post", post_least, "largest listed size"),
        ("largest expected post", post_most, "largest listed size"),
    ]);
    said.worked.extend(worked);
    Ok(Verdict { next, ..said })
}
