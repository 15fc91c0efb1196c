//! Checking what somebody states: a rule of thumb, a row of a table, two pitches of one size, a circumference.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::Finding;
use super::verdict::{NextStep, Verdict, Worked};
use crate::Error;
use crate::evidence::Grade;
use crate::measure::{Limits, Outcome, Reading, settled_cmp};
use crate::quantity::{Length, Pitch, in_mm, mm, positive, to_mm};
use crate::standard::{Row, Seatpost};
use crate::thread::{
    BasicDiameters, Member, Series, ThreadForm, ThreadSize, limits_of_size, pitch_in_series,
    series, usual_class,
};

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
    let per_inch = positive("rule per inch", per_inch)?;
    let diameter = positive("diameter", diameter)?;
    let used = positive("interference", used)?;
    let by_rule = per_inch * (to_mm(diameter) / 25.4);
    let ratio = to_mm(used) / to_mm(by_rule);
    let mut sentence = format!(
        "{} per inch on {} is {}; {} is {ratio:.1} times that.",
        in_mm(per_inch),
        in_mm(diameter),
        in_mm(by_rule),
        in_mm(used)
    );
    let mut findings = Vec::new();
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
        let words = if agrees {
            format!("the claimed ratio of {claimed} agrees")
        } else {
            format!("the claimed ratio of {claimed} is wrong: it is {ratio:.1}")
        };
        sentence.push_str(&format!(" {}.", super::words::capital(&words)));
        findings.push(Finding {
            outcome: Some(if agrees {
                Outcome::ConformityShown
            } else {
                Outcome::NonconformityShown
            }),
            grade: Some(Grade::Derived),
            owner: String::from("arithmetic"),
            ..Finding::stated("claimed ratio", words)
        });
    }
    Ok(Verdict::from_findings("claimed rule", findings)
        .saying(sentence)
        .with(Worked::length("by the rule", by_rule, "rule x diameter / 25.4 mm"))
        .with(Worked::plain("ratio", ratio, "used / by the rule"))
        .minding("a general machining rule is not a bicycle limit: hold the fit itself against the maker's window"))
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
    let agrees = |d: Length| expected.admits(d - core);
    let heights = super::from_to(mm(low), mm(high));
    let own = agrees(nominal);
    let mut findings = Vec::from([Finding {
        outcome: Some(if own {
            Outcome::ConformityShown
        } else {
            Outcome::NonconformityShown
        }),
        limits: Some(expected),
        grade: Some(Grade::Derived),
        owner: format!("{pitch}, {form}"),
        ..Finding::stated(
            "nominal less core",
            format!(
                "{} against {heights} for {pitch}: {}",
                in_mm(nominal - core),
                if own {
                    "they agree"
                } else {
                    "they do not agree"
                }
            ),
        )
    }]);
    let mut sentence = if own {
        format!(
            "{} and core {} agree with {pitch}.",
            in_mm(nominal),
            in_mm(core)
        )
    } else {
        format!(
            "{} and core {} do not agree with {pitch}: at least one of the three is wrong.",
            in_mm(nominal),
            in_mm(core)
        )
    };
    if let Some(written) = designation {
        let written = positive("designation", written)?;
        let same = settled_cmp(written, nominal).is_eq();
        let words = match (same, own, agrees(written)) {
            (true, ..) => format!("{} stands too", in_mm(written)),
            (false, true, false) => format!("{} is a slip for {}", in_mm(written), in_mm(nominal)),
            (false, false, true) => format!(
                "{} agrees with core and pitch, the nominal {} does not",
                in_mm(written),
                in_mm(nominal)
            ),
            _ => format!(
                "{} and {} contradict each other, and core and pitch do not tell which is right",
                in_mm(written),
                in_mm(nominal)
            ),
        };
        sentence.push_str(&format!(" In the designation {words}."));
        findings.push(Finding {
            outcome: Some(if same {
                Outcome::ConformityShown
            } else {
                Outcome::NonconformityShown
            }),
            grade: Some(Grade::Derived),
            owner: String::from("the row itself"),
            ..Finding::stated("designation", words)
        });
    }
    let flawed = findings
        .iter()
        .any(|f| f.outcome == Some(Outcome::NonconformityShown));
    let mut said = Verdict::from_findings("table row", findings)
        .saying(sentence)
        .with(Worked::length(
            "nominal less core",
            nominal - core,
            "nominal - core",
        ))
        .with(Worked::length(
            "least height expected",
            mm(low),
            "profile height on diameter x pitch, lowest form",
        ))
        .with(Worked::length(
            "greatest height expected",
            mm(high),
            "profile height on diameter x pitch, highest form",
        ));
    if flawed {
        said = said.then(NextStep::new(
            "the row in a second table",
            "a slip in one cell says nothing of the others: check the column",
            "another published table",
        ));
    }
    Ok(said)
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
    let finer = settled_cmp(fine.length(), coarse.length()).is_lt();
    let mut findings = Vec::from([Finding {
        outcome: Some(if finer {
            Outcome::ConformityShown
        } else {
            Outcome::NonconformityShown
        }),
        grade: Some(Grade::Derived),
        owner: String::from("what fine and coarse mean"),
        ..Finding::stated(
            "fine against coarse",
            format!(
                "fine {fine}, coarse {coarse}: the fine pitch is {}",
                if finer { "finer" } else { "not finer" }
            ),
        )
    }]);
    let mut sentence = format!(
        "The fine pitch {fine} is {} than the coarse pitch {coarse}.",
        if finer { "finer" } else { "not finer" }
    );
    for (column, pitch, wanted) in [
        ("coarse", coarse, Series::Coarse),
        ("fine", fine, Series::Fine),
    ] {
        let size = ThreadSize::new(ThreadForm::Unified, major, pitch)?;
        let listed = pitch_in_series(major, wanted);
        let right = listed.map(|l| settled_cmp(l.length(), pitch.length()).is_eq());
        let words = match (listed, right) {
            (Some(_), Some(true)) => format!("{pitch} is the {wanted} pitch of this size"),
            (Some(listed), _) => format!("{pitch}; the {wanted} series has {listed}"),
            (None, _) => format!("{pitch}; the {wanted} series has no pitch for this size here"),
        };
        if let (Some(listed), Some(false)) = (listed, right) {
            let carried = match series(&size) {
                Some(at @ (Series::Coarse | Series::Fine | Series::ExtraFine)) => {
                    format!("a pitch of the {at} series")
                }
                _ => pitch.to_string(),
            };
            sentence.push_str(&format!(
                " The {column} column carries {carried}; the {wanted} series has {listed}."
            ));
        }
        findings.push(Finding {
            outcome: Some(match right {
                Some(true) => Outcome::ConformityShown,
                Some(false) => Outcome::NonconformityShown,
                None => Outcome::Undecided,
            }),
            grade: listed
                .and_then(|_| usual_class(&size, Member::Internal))
                .and_then(|class| limits_of_size(&size, &class).ok())
                .map(|limits| limits.grade()),
            owner: String::from("the table of unified series"),
            ..Finding::stated(format!("{column} column"), words)
        });
    }
    Ok(Verdict::from_findings("series of one size", findings)
        .saying(sentence)
        .then(NextStep::new(
            "the whole column against a second source",
            "one wrong row is rarely alone: a fix of the row is no fix of the column",
            "another published table",
        )))
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
/// assert_eq!(said.words(), "A tape reading of 82.000 mm is a diameter of 26.101 ± 0.159 mm: 26.0 or 26.2. Not enough to buy a post.");
/// ```
pub fn post_by_tape(circumference: &Reading) -> Result<Verdict, Error> {
    super::verdict::size_reading("circumference", circumference)?;
    let diameter = circumference.scaled(core::f64::consts::FRAC_1_PI);
    let sizes: Vec<&Seatpost> = Seatpost::table()
        .iter()
        .filter(|p| {
            p.diameter.nominal().is_some_and(|d| {
                settled_cmp(
                    (d - diameter.value()).abs(),
                    diameter.expanded_uncertainty(),
                )
                .is_le()
            })
        })
        .collect();
    let names: Vec<&str> = sizes.iter().map(|p| p.code.as_ref()).collect();
    let found = match names.as_slice() {
        [] => String::from("no listed size lies there"),
        [only] => only.to_string(),
        several => several.join(" or "),
    };
    let mut sentence = format!(
        "A tape reading of {} is a diameter of {diameter}: {found}.",
        in_mm(circumference.value())
    );
    if sizes.len() > 1 {
        sentence.push_str(" Not enough to buy a post.");
    }
    let findings = sizes
        .iter()
        .map(|p| {
            Finding::stated(
                format!("size {}", p.code),
                "lies within the uncertainty of the tape",
            )
            .resting_on(p.diameter.evidence())
        })
        .collect();
    Ok(Verdict::from_findings("post by circumference", findings)
        .saying(sentence)
        .with(Worked::length(
            "diameter",
            diameter.value(),
            "circumference / pi",
        ))
        .with(Worked::length(
            "uncertainty of the diameter",
            diameter.expanded_uncertainty(),
            "uncertainty of the tape / pi",
        ))
        .then(NextStep::new(
            "the diameter itself on two axes",
            "sizes step by 0.2 mm, which a tape cannot tell",
            "caliper or micrometer",
        )))
}
