//! Checking what somebody states: a rule of thumb, a row of a table, two pitches of one size, a circumference.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::verdict::{NextStep, Verdict, Worked};
use super::{ClaimAsk, ClaimFact, Finding};
use crate::Error;
use crate::evidence::Grade;
use crate::measure::{Limits, Outcome, Reading, settled_below, settled_cmp};
use crate::quantity::{Length, Pitch, mm, positive, to_mm};
use crate::standard::{Row, Seatpost};
use crate::thread::{BasicDiameters, Series, ThreadForm, ThreadSize, pitch_in_series, series};

/// A claimed rule of "so much per inch of diameter", worked out for a size and laid beside what is really used.
///
/// # Errors
/// `OutOfRange` and `NotFinite` for sizes that are none.
///
/// ```
/// use framegauge::{inch, judge::per_inch_rule, measure::Outcome, mm};
/// // 0.0005 in per inch on 44 mm, against 0.05 mm: somebody says five times.
/// let said = per_inch_rule(inch(0.0005), mm(44.0), mm(0.05), Some(5.0)).unwrap();
/// assert_eq!(said.millimetres("by the rule"), Some(0.022));
/// assert_eq!(said.number("ratio").unwrap().bare(), Some(2.2727));
/// assert_eq!(said.outcome, Outcome::NonconformityShown); // the ratio, not the fit
/// ```
pub fn per_inch_rule(
    per_inch: Length,
    diameter: Length,
    used: Length,
    claimed_ratio: Option<f64>,
) -> Result<Verdict, Error> {
    let rule = positive("rule per inch", per_inch)?;
    let diameter = positive("diameter", diameter)?;
    let used = positive("interference", used)?;
    let gives = rule * (to_mm(diameter) / 25.4);
    let ratio = to_mm(used) / to_mm(gives);
    let mut findings = Vec::from([Finding::of(ClaimFact::PerInch {
        rule,
        diameter,
        gives,
        used,
        ratio,
    })]);
    if let Some(claimed) = claimed_ratio {
        if !claimed.is_finite() || claimed <= 0.0 {
            return Err(Error::new(
                crate::ErrorKind::OutOfRange,
                "claimed ratio",
                claimed,
                "a ratio is a number above zero",
                "give e.g. 5",
            ));
        }
        // A ratio said in words is meant to half a unit.
        let agrees = (claimed - ratio).abs() <= 0.5;
        let fact = ClaimFact::Ratio { claimed, is: ratio };
        findings.push(Finding::derived(agrees, fact));
    }
    Ok(Verdict::from_findings("claimed rule", findings)
        .with(Worked::length(
            "by the rule",
            gives,
            "rule x diameter / 25.4 mm",
        ))
        .with(Worked::plain("ratio", ratio, "used / rule"))
        .minding(ClaimFact::NoBicycleLimit))
}

/// A row of a thread table, checked against itself: nominal less core must agree with the pitch, and the number in the
/// designation with the nominal.
///
/// `form` decides the height of the thread; for an unknown form the span of all forms is taken.
///
/// # Errors
/// `OutOfRange` and `NotFinite` for sizes that are none.
///
/// ```
/// use framegauge::{Pitch, decimal, judge::table_row, measure::Outcome, mm, thread::ThreadForm};
/// // A table with decimal commas: nominal 34,8, core 33,67, 24 to the inch, written FG37,8.
/// let comma = |text: &str| mm(decimal(text).unwrap());
/// let said = table_row(comma("34,8"), comma("33,67"), Pitch::tpi(24).unwrap(), ThreadForm::Bsc, Some(comma("37,8"))).unwrap();
/// assert_eq!(said.outcome, Outcome::NonconformityShown);
/// assert!(said.words().contains("37.800 mm is a slip for 34.800 mm"));
/// ```
pub fn table_row(
    nominal: Length,
    core: Length,
    pitch: Pitch,
    form: ThreadForm,
    designation: Option<Length>,
) -> Result<Verdict, Error> {
    let nominal = positive("nominal", nominal)?;
    let core = positive("core", core)?;
    let forms: &[ThreadForm] = match form {
        ThreadForm::Unknown => &[ThreadForm::IsoInch, ThreadForm::Bsc, ThreadForm::Whitworth],
        _ => core::slice::from_ref(&form),
    };
    let (mut low, mut high) = (f64::INFINITY, 0.0_f64);
    for form in forms {
        let basic = BasicDiameters::of(&ThreadSize::new(*form, nominal, pitch)?)?;
        let height = to_mm(nominal - basic.minor);
        (low, high) = (libm::fmin(low, height), libm::fmax(high, height));
    }
    // Tables print two decimals: both figures may be half a unit of the last place off.
    let slack = mm(0.01);
    let expected = Limits::between(mm(low) - slack, mm(high) + slack, Grade::Derived)?;
    let agree = expected.admits(nominal - core);
    let fact = ClaimFact::Row {
        nominal,
        core,
        pitch,
        agree,
    };
    let mut findings = Vec::from([Finding {
        limits: Some(expected),
        ..Finding::derived(agree, fact)
    }]);
    if let Some(written) = designation {
        let written = positive("designation", written)?;
        let same = settled_cmp(written, nominal).is_eq();
        let fact = match (same, agree, expected.admits(written - core)) {
            (true, ..) => ClaimFact::SaidTwice { written },
            (_, true, false) => ClaimFact::Slip { written, nominal },
            (_, false, true) => ClaimFact::NominalSlip { written, nominal },
            _ => ClaimFact::Contradict { written, nominal },
        };
        findings.push(Finding::derived(same, fact));
    }
    let less = nominal - core;
    let said = Verdict::from_findings("table row", findings).with(Worked::length(
        "nominal less core",
        less,
        "nominal - core",
    ));
    Ok(match said.outcome {
        Outcome::NonconformityShown => said.then(NextStep::of(ClaimAsk::SecondTable)),
        _ => said,
    })
}

/// Two pitches stored for the coarse and the fine series of one size: the fine one must be finer, and where the size is in
/// the library's own series table both are looked up.
///
/// # Errors
/// As [`ThreadSize::new`].
///
/// ```
/// use framegauge::{Pitch, inch_fraction, judge::series_pitches, measure::Outcome};
/// let tpi = |n| Pitch::tpi(n).unwrap();
/// // 1/2 in stored with 13 threads an inch in both columns; the fine series has 20.
/// let said = series_pitches(inch_fraction(1, 2), tpi(13), tpi(13)).unwrap();
/// assert_eq!(said.outcome, Outcome::NonconformityShown);
/// assert!(said.words().contains("not finer"));
/// ```
pub fn series_pitches(major: Length, coarse: Pitch, fine: Pitch) -> Result<Verdict, Error> {
    let finer = settled_below(fine.length(), coarse.length());
    let fact = ClaimFact::Finer {
        fine,
        coarse,
        finer,
    };
    let mut findings = Vec::from([Finding::derived(finer, fact)]);
    for (column, pitch, wanted) in [
        ("coarse", coarse, Series::Coarse),
        ("fine", fine, Series::Fine),
    ] {
        let size = ThreadSize::new(ThreadForm::Unified, major, pitch)?;
        let listed = pitch_in_series(major, wanted);
        let of = series(&size).map_or_else(String::new, |s| s.to_string());
        let fact = ClaimFact::Column {
            column: column.into(),
            pitch,
            of: of.into(),
            listed,
        };
        let right = listed.map(|l| settled_cmp(l.length(), pitch.length()).is_eq());
        findings.push(match right {
            Some(right) => Finding::derived(right, fact),
            None => Finding {
                outcome: Some(Outcome::Undecided),
                ..Finding::of(fact)
            },
        });
    }
    let said = Verdict::from_findings("pitches of series", findings);
    Ok(said.then(NextStep::of(ClaimAsk::WholeColumn)))
}

/// A diameter from a tape round the part: circumference / π, and which posts of the series that leaves open.
///
/// # Errors
/// `OutOfRange` for a circumference that is none.
///
/// ```
/// use framegauge::{judge::post_by_tape, measure::Outcome};
/// let said = post_by_tape(&"82 +/- 0.5 mm".parse().unwrap()).unwrap();
/// assert_eq!(said.outcome, Outcome::Undecided);
/// assert_eq!(said.words(), "post: a tape reading of 82.000 mm is a diameter of 26.101 ± 0.159 mm: 26.0 or 26.2; not enough to buy a post");
/// ```
pub fn post_by_tape(circumference: &Reading) -> Result<Verdict, Error> {
    let around = positive("circumference", circumference.value())?;
    let diameter = circumference.scaled(core::f64::consts::FRAC_1_PI);
    let (size, u) = (diameter.value(), diameter.expanded_uncertainty());
    let near = |p: &&Seatpost| {
        let listed = p.diameter.nominal();
        listed.is_some_and(|d| !settled_below(u, (d - size).abs()))
    };
    let posts: Vec<&Seatpost> = Seatpost::table().iter().filter(near).collect();
    let found = Finding::of(ClaimFact::Tape {
        around,
        diameter,
        posts: posts.iter().map(|p| p.code.clone()).collect(),
    });
    let found = posts
        .iter()
        .fold(found, |f, p| f.resting_on(p.diameter.evidence()));
    Ok(
        Verdict::from_findings("post by circumference", Vec::from([found]))
            .with(Worked::length("diameter", size, "circumference / pi"))
            .with(Worked::length("diameter uncertainty", u, ""))
            .then(NextStep::of(ClaimAsk::Diameter)),
    )
}
