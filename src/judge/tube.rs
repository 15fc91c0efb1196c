//! Tube arithmetic: outside diameter, wall and bore; what a reamer takes and leaves; which post a tube should take.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::Finding;
use super::verdict::{NOTHING, NextStep, Verdict, Worked};
use crate::evidence::Grade;
use crate::measure::{DecisionRule, Limits, Outcome, Reading, decide, settled_cmp};
use crate::quantity::{Length, in_mm, positive, settled_mm};
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
    let mut findings = Vec::new();
    let mut worked = Vec::from([Worked::length(
        "inside diameter",
        inside.value(),
        "outside less two walls",
    )]);
    let mut names: Vec<String> = Vec::new();
    let mut seats: Vec<(&HeadSeat, Length)> = tables
        .all::<HeadSeat>()
        .filter(|s| s.kind == SeatKind::ExternalCup)
        .filter_map(|s| Some((s, s.bore.upper().or(s.bore.nominal())?)))
        .filter(|(_, bore)| {
            let stock = *bore - inside.value();
            settled_cmp(stock, -inside.expanded_uncertainty()).is_ge()
                && most.is_some_and(|most| {
                    settled_cmp(stock, most + inside.expanded_uncertainty()).is_le()
                })
        })
        .collect();
    seats.sort_by(|a, b| settled_cmp(a.1, b.1));
    for (seat, bore) in &seats {
        let left = wall_implied(outside, &Reading::exact(*bore)?)?;
        let stock = *bore - inside.value();
        names.push(format!("{} ({})", seat.code, seat.name));
        let mut words = format!(
            "bore {}: {} to ream on diameter, wall left {}",
            seat.bore,
            in_mm(stock),
            in_mm(left.value())
        );
        if !seat.bore.dissent().is_empty() {
            let others: Vec<String> = seat
                .bore
                .dissent()
                .iter()
                .map(|d| format!("{} ({})", d.value, d.evidence.note()))
                .collect();
            words.push_str(&format!("; others print {}", others.join("; ")));
        }
        if let Some(cup) = seat.cup.as_ref().and_then(crate::Figure::nominal) {
            words.push_str(&format!("; its cup is {}", in_mm(cup)));
        }
        worked.push(Worked::length(
            format!("{} stock on diameter", seat.code),
            stock,
            "largest bore less bore of the tube",
        ));
        worked.push(Worked::length(
            format!("{} wall left", seat.code),
            left.value(),
            "(outside - largest bore) / 2",
        ));
        findings.push(
            Finding::stated(format!("{}", seat.code), words).resting_on(seat.bore.evidence()),
        );
    }
    let sentence = if seats.is_empty() {
        format!(
            "Inside {}: no listed external-cup seat lies within reach of a hand reamer.",
            in_mm(inside.value())
        )
    } else {
        format!(
            "Inside {} (outside less two walls): with reaming it is for {}. A steerer size is a name, not a bore; bore to the cup in hand.",
            in_mm(inside.value()),
            names.join(" or ")
        )
    };
    let mut said = Verdict::from_findings("head tube from tube stock", findings)
        .saying(sentence)
        .then(NextStep::new(
            "outside diameter of the cup in hand",
            "seats of one steerer size differ by 0.2 mm, and the cup decides the bore",
            "outside micrometer",
        ))
        .minding("cutting cannot be undone; no least wall is published");
    said.worked = worked;
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
    let thick = inside_diameter(outside, &Reading::exact(positive("wall", wall_max)?)?)?;
    let thin = inside_diameter(outside, &Reading::exact(positive("wall", wall_min)?)?)?;
    let walls = Limits::between(wall_min, wall_max, Grade::Derived)?;
    let fits = |bore: &Reading| {
        Seatpost::table()
            .iter()
            .filter_map(|p| p.diameter.nominal())
            .filter(|d| settled_cmp(*d, bore.value()).is_le())
            .max_by(|a, b| settled_cmp(*a, *b))
    };
    let mut findings = Vec::new();
    let mut worked = Vec::from([
        Worked::length(
            "smallest bore",
            thick.value(),
            "outside less two walls, thickest wall",
        ),
        Worked::length(
            "largest bore",
            thin.value(),
            "outside less two walls, thinnest wall",
        ),
    ]);
    let mut sentence = format!(
        "A tube of {} with walls of {:.3} to {} has a bore of {:.3} to {}",
        in_mm(outside.value()),
        settled_mm(wall_min),
        in_mm(wall_max),
        settled_mm(thick.value()),
        in_mm(thin.value()),
    );
    if let (Some(small), Some(large)) = (fits(&thick), fits(&thin)) {
        worked.push(Worked::length(
            "smallest expected post",
            small,
            "largest listed size in the smallest bore",
        ));
        worked.push(Worked::length(
            "largest expected post",
            large,
            "largest listed size in the largest bore",
        ));
        sentence.push_str(&format!(
            " and should take a post of {:.1} to {:.1} mm.",
            settled_mm(small),
            settled_mm(large)
        ));
    } else {
        sentence.push_str("; no post is listed for it.");
    }
    let mut said_next = Vec::new();
    for used in post_in_use {
        let wall = wall_implied(outside, used)?;
        let decision = decide(&wall, &walls, DecisionRule::default());
        worked.push(Worked::length(
            "wall implied",
            wall.value(),
            "(outside - post) / 2",
        ));
        let words = format!(
            "a post of {} implies a wall of {}, against {:.3} to {}: {}",
            in_mm(used.value()),
            in_mm(wall.value()),
            settled_mm(wall_min),
            in_mm(wall_max),
            match decision.outcome {
                Outcome::ConformityShown => "they agree",
                Outcome::NonconformityShown =>
                    "they do not agree: a sleeve, another tube, or a bore out of shape",
                Outcome::Undecided => "the readings do not tell",
            }
        );
        sentence.push_str(&match decision.outcome {
            Outcome::NonconformityShown => format!(" But {words}."),
            _ => format!(" {}.", super::words::capital(&words)),
        });
        findings.push(Finding {
            outcome: Some(decision.outcome),
            readings: Vec::from([wall]),
            limits: Some(walls),
            decision: Some(decision),
            owner: String::from("the tube as labelled"),
            grade: Some(Grade::Derived),
            ..Finding::stated("tube and post", words)
        });
        if decision.outcome != Outcome::ConformityShown {
            said_next.push(NextStep::new(
                "bore on two axes at two depths, and roundness at the lug",
                "a post that fits proves no nominal size: a sleeve, another tube and a pinched bore look alike",
                "telescoping gauge and micrometer",
            ));
        }
    }
    let mut said = Verdict::from_findings("seat tube from tube data", findings).saying(sentence);
    said.worked = worked;
    said.next = said_next;
    if post_in_use.is_empty() {
        said = said.then(NextStep::new(
            "the finished bore",
            "tubes are reamed to size after joining",
            "telescoping gauge and micrometer",
        ));
    }
    Ok(said)
}
