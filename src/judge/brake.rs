//! Where the caliper sits: adapters, rotor sizes, tabs on sliding dropouts, hub width.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::cmp::Ordering;

use super::verdict::{NOTHING, NextStep, Verdict, Worked, size_reading};
use super::{Finding, sizes_against};
use crate::Error;
use crate::evidence::Grade;
use crate::measure::{DecisionRule, Limits, Outcome, Reading, settled_cmp};
use crate::quantity::{Angle, Length, Printed, in_mm, mm, positive, to_mm};
use crate::standard::{Axle, BrakeFigure, End, find};

/// A caliper on a mount with an adapter. Rotor sizes and adapter names are **diameters**; the caliper moves by half of them.
///
/// ```
/// use framegauge::{judge::CaliperPlace, measure::Outcome, mm};
/// // A 160 mm rotor where the mount alone gives 160; the adapter is turned to its +20 side.
/// let said = CaliperPlace { native: mm(160.0), adapter: mm(20.0), rotor: mm(160.0), made_for: None, on: None }.judge().unwrap();
/// assert_eq!(said.outcome, Outcome::NonconformityShown);
/// assert_eq!(said.millimetres("caliper too high by"), Some(10.0));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CaliperPlace {
    /// Rotor that the mount takes without an adapter, at the end that the adapter was made for.
    pub native: Length,
    /// What the adapter adds to the rotor as it is turned now.
    pub adapter: Length,
    /// The rotor that is fitted.
    pub rotor: Length,
    /// The end the adapter was made for, if that is known.
    pub made_for: Option<End>,
    /// The end it is on.
    pub on: Option<End>,
}

impl CaliperPlace {
    /// The verdict: rotor that this mounting suits, and how far the caliper is off, on radius.
    ///
    /// A rear adapter on a front mount of the tab kind suits a rotor 20 mm larger (two pages agree, one says the reverse).
    ///
    /// # Errors
    /// `OutOfRange` and `NotFinite` for sizes that are none.
    ///
    /// ```
    /// use framegauge::{judge::CaliperPlace, measure::Outcome, mm, standard::End};
    /// let rear_on_front = CaliperPlace { native: mm(160.0), adapter: mm(0.0), rotor: mm(180.0), made_for: Some(End::Rear), on: Some(End::Front) };
    /// assert_eq!(rear_on_front.judge().unwrap().outcome, Outcome::ConformityShown);
    /// ```
    pub fn judge(&self) -> Result<Verdict, Error> {
        let native = positive("native rotor", self.native)?;
        let rotor = positive("rotor", self.rotor)?;
        let adapter = Reading::exact(self.adapter)
            .map_err(|e| e.within("adapter"))?
            .value();
        let step = find::<BrakeFigure>("is_front_rear_step")?;
        let by_end = match (self.made_for, self.on) {
            (Some(End::Rear), Some(End::Front)) => 1.0,
            (Some(End::Front), Some(End::Rear)) => -1.0,
            _ => 0.0,
        };
        let twenty = step
            .figure
            .as_ref()
            .and_then(crate::Figure::nominal)
            .unwrap_or(NOTHING);
        let suits = native + adapter + twenty * by_end;
        let high = (suits - rotor) / 2.0;
        let exact = settled_cmp(high, NOTHING).is_eq();
        let small = settled_cmp(high.abs(), mm(1.5)).is_le();
        let outcome = match (exact, small) {
            (true, _) => Outcome::ConformityShown,
            (false, true) => Outcome::Undecided,
            (false, false) => Outcome::NonconformityShown,
        };
        let way = if settled_cmp(high, NOTHING).is_gt() {
            "high"
        } else {
            "low"
        };
        let words = if exact {
            format!("this mounting suits a rotor of {}, as fitted", in_mm(suits))
        } else {
            format!(
                "this mounting suits a rotor of {}; with {} the caliper sits {} too {way} (half the difference of the diameters)",
                in_mm(suits),
                in_mm(rotor),
                in_mm(high.abs())
            )
        };
        let mut sentence = super::words::capital(&words);
        sentence.push('.');
        let needed = rotor - native - twenty * by_end;
        if !exact {
            sentence.push_str(&format!(
                " The adapter has to give {:+.0} mm as it is turned, not {:+.0} mm.",
                to_mm(needed),
                to_mm(adapter)
            ));
            if small {
                sentence.push_str(" Whether that overlap will do is for the caliper maker to say.");
            }
        }
        let mut found = Finding {
            outcome: Some(outcome),
            grade: Some(Grade::Derived),
            owner: String::from("rotor sizes are diameters"),
            ..Finding::stated("caliper over rotor", words)
        };
        if by_end != 0.0 {
            found = found.resting_on(step.figure.as_ref().and_then(crate::Figure::evidence));
        }
        let mut said = Verdict::from_findings("caliper on its mount", Vec::from([found]))
            .saying(sentence)
            .with(Worked::length(
                "suits a rotor of",
                suits,
                "native rotor + adapter",
            ))
            .with(Worked::length(
                "caliper too high by",
                high,
                "(rotor it suits - rotor) / 2",
            ))
            .with(Worked::length(
                "adapter needed",
                needed,
                "rotor - native rotor",
            ));
        if outcome != Outcome::ConformityShown {
            said = said.then(NextStep::new(
                "overlap of pad and rotor, at the outer edge",
                "the pad must lie inside the braking band of the rotor",
                "by eye, caliper",
            ));
        }
        Ok(said.minding(
            "brakes: a pad that overhangs the rotor can lock or tear off; test at walking pace",
        ))
    }
}

/// A brake tab on a sliding dropout: how far a point of the caliper moves from where it should stand against the axle.
///
/// The axle slides along the dropout slot by `travel`; the caliper slides along a slot of its own, at another angle perhaps.
/// In a parallel slot nothing changes against the axle.
///
/// # Errors
/// `NotFinite` and `OutOfRange` for angles and lengths that are none.
///
/// ```
/// use framegauge::{deg, judge::sliding_tab, measure::Outcome, mm};
/// let along = sliding_tab(deg(26.0), deg(26.0), mm(15.0), mm(51.0)).unwrap();
/// assert_eq!(along.outcome, Outcome::ConformityShown);
/// let flat = sliding_tab(deg(26.0), deg(0.0), mm(15.0), mm(51.0)).unwrap();
/// assert_eq!(flat.outcome, Outcome::NonconformityShown);
/// ```
pub fn sliding_tab(
    dropout_slot: Angle,
    tab_slot: Angle,
    travel: Length,
    hole_spacing: Length,
) -> Result<Verdict, Error> {
    for (name, angle) in [("dropout slot", dropout_slot), ("tab slot", tab_slot)] {
        if !angle.value.is_finite() {
            return Err(Error::new(
                crate::ErrorKind::NotFinite,
                name,
                angle.value,
                "an angle must be finite",
                "give it in degrees from horizontal",
            ));
        }
    }
    let travel = positive("travel", travel)?;
    let spacing = positive("hole spacing", hole_spacing)?;
    let apart = tab_slot.value - dropout_slot.value;
    // The tab moves as far along its slot as the axle along its own; what is left is the chord between the two directions.
    let strays = mm(2.0 * to_mm(travel) * libm::fabs(libm::sin(apart / 2.0)));
    let parallel = settled_cmp(strays, mm(0.001)).is_lt();
    // One bolt in a round hole: the caliper turns about it, and the other bolt runs on an arc.
    let sweep = if to_mm(travel) <= to_mm(spacing) * 2.0 {
        Some(crate::quantity::deg(
            2.0 * libm::asin(to_mm(travel) / (2.0 * to_mm(spacing))).to_degrees(),
        ))
    } else {
        None
    };
    let outcome = if parallel {
        Outcome::ConformityShown
    } else {
        Outcome::NonconformityShown
    };
    let words = if parallel {
        format!(
            "a slot in the tab parallel to the dropout ({:.0}°) keeps the caliper where it stands against the axle",
            dropout_slot.in_unit()
        )
    } else {
        format!(
            "over {} of travel the caliper strays {} from the axle",
            in_mm(travel),
            in_mm(strays)
        )
    };
    let mut said = Verdict::from_findings("brake tab on a sliding dropout", Vec::from([Finding {
        outcome: Some(outcome),
        grade: Some(Grade::Derived),
        owner: String::from("plane geometry"),
        ..Finding::stated("slots", words.clone())
    }]))
    .saying(format!("{}.", super::words::capital(&words)))
    .with(Worked::length("strays from the axle by", strays, "2 x travel x sin(half the angle between the slots)"))
    .with(Worked::length("radius of the arc for one hole and one slot", spacing, "distance of the two bolts"))
    .then(NextStep::new("clearance of the caliper to the stay over the whole travel", "a right slot still needs room to slide", "caliper or a mock-up"))
    .minding("brakes: a tab is for a qualified builder; its position has a published tolerance of 0.1 mm");
    if let Some(sweep) = sweep {
        said = said.with(Worked::angle("arc for one hole and one slot", sweep, "2 asin(travel / 2 spacing): the caliper turns by this much about the fixed bolt, and no longer keeps its place"));
    }
    Ok(said)
}

/// A hub in its dropouts after work on it: width over the end caps against what the axle pattern wants. Any shortfall moves
/// the rotor; nothing at the mount cures it.
///
/// # Errors
/// `UnknownName` for a pattern that is none; `OutOfRange` for a width that is none.
///
/// ```
/// use framegauge::{judge::hub_width, measure::Outcome};
/// let open = hub_width("ta_12x142", None).unwrap();
/// assert_eq!(open.outcome, Outcome::Undecided);
/// assert!(open.next[0].measure.contains("142.000 mm over the end caps"));
/// let short = hub_width("ta_12x142", Some(&"139.4 +/- 0.1 mm".parse().unwrap())).unwrap();
/// assert_eq!(short.outcome, Outcome::NonconformityShown);
/// ```
pub fn hub_width(pattern: &str, over_caps: Option<&Reading>) -> Result<Verdict, Error> {
    let row = find::<Axle>(pattern)?;
    let Some(wanted) = row.over_locknut.nominal() else {
        return Err(Error::new(
            crate::ErrorKind::NotTabulated,
            "pattern",
            pattern,
            "no hub width is published for it",
            "ask the frame maker",
        ));
    };
    let evidence = row.over_locknut.evidence();
    let grade = row.over_locknut.grade().unwrap_or(Grade::Memory);
    let mut findings = Vec::new();
    let mut sentence = format!("The width over the end caps must be {}", in_mm(wanted));
    if let Some(reading) = over_caps {
        size_reading("width over the end caps", reading)?;
        // No tolerance is published: what the reading shows to differ from the nominal is a difference.
        let band = reading.expanded_uncertainty();
        let short = wanted - reading.value();
        let differs = settled_cmp(short.abs(), band).is_gt();
        // A whole cap or spacer is missing when a millimetre is.
        let limits = Limits::between(
            wanted - mm(1.0),
            wanted + mm(1.0),
            grade.weaker(Grade::CommonPractice),
        )?;
        let mut found = sizes_against(
            "width over the end caps",
            &[*reading],
            &limits,
            "within a millimetre, less than any cap or spacer (common practice; no tolerance is published)",
            evidence,
            DecisionRule::default(),
        );
        if differs && found.outcome == Some(Outcome::ConformityShown) {
            found.outcome = Some(Outcome::Undecided);
            found
                .words
                .push_str("; but not the width that is printed, and no tolerance is published");
        }
        sentence.push_str(&format!("; it is {}", in_mm(reading.value())));
        match settled_cmp(short, NOTHING) {
            Ordering::Greater => sentence.push_str(&format!(": {} short", in_mm(short))),
            Ordering::Less => sentence.push_str(&format!(": {} over", in_mm(-short))),
            Ordering::Equal => {}
        }
        if found.outcome == Some(Outcome::NonconformityShown) {
            sentence.push_str(
                ", so a cap or spacer is missing or wrong, and the rotor stands off by it",
            );
        }
        findings.push(found);
    }
    sentence.push_str(". Measure it before touching the mount: a rotor out of the caliper's slots is not cured by facing.");
    let mut said = Verdict::from_findings("hub in its dropouts", findings)
        .saying(sentence)
        .with(Worked::length(
            "wanted over the end caps",
            wanted,
            "as printed",
        ));
    if let Some(reading) = over_caps {
        said = said.with(Worked::length(
            "short by",
            wanted - reading.value(),
            "wanted less found",
        ));
    }
    if said.outcome != Outcome::ConformityShown {
        if over_caps.is_none() {
            said = said.then(NextStep::new(
                format!("{} over the end caps", in_mm(wanted)),
                "a missing cap or spacer moves the rotor by its whole width",
                "caliper",
            ));
        }
        said = said.then(NextStep::new(
            "rotor face to hub end, against the hub maker's figure",
            "tells a shifted rotor from a shifted hub",
            "depth caliper",
        ));
    }
    Ok(said.minding("brakes: do not ride with a rotor that can touch the frame"))
}
