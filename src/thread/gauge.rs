//! GO and NOT GO gauges: what each says and does not say, and what chasing can and cannot restore.

use crate::measure::Outcome;
use crate::{Error, ErrorKind};

/// One gauge of a set.
///
/// ```
/// use framegauge::thread::{Gauge, Member};
/// assert!(Gauge::NotGo.meaning(Member::Internal).used.contains("two turns"));
/// ```
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Gauge {
    /// Threaded GO: full form over the full length.
    Go,
    /// Threaded NOT GO: few threads, truncated flanks.
    NotGo,
    /// Plain GO: least minor diameter of a hole, greatest major diameter of a screw.
    PlainGo,
    /// Plain NOT GO: the other end of the same diameter.
    PlainNotGo,
}

/// What a gauge says and does not say.
///
/// ```
/// use framegauge::thread::{Gauge, Member};
/// assert!(Gauge::PlainNotGo.meaning(Member::Internal).silent_on.contains("flanks"));
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct GaugeMeaning {
    /// What it shows.
    pub shows: &'static str,
    /// What it says nothing about.
    pub silent_on: &'static str,
    /// How it is used.
    pub used: &'static str,
}

/// Turns a NOT GO gauge may enter from each end (gauge makers' usage texts after ISO 1502; United States practice for inch
/// work quotes three in one text).
///
/// ```
/// assert_eq!(framegauge::thread::NOT_GO_TURNS, 2.0);
/// ```
pub const NOT_GO_TURNS: f64 = 2.0;

/// What was found with the gauges; `None` for a gauge that was not used.
///
/// ```
/// use framegauge::thread::Gauging;
/// let found = Gauging { go_passes: Some(true), ..Gauging::default() };
/// assert!(found.not_go_turns.is_none());
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Default)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(default)
)]
pub struct Gauging {
    /// The threaded GO gauge ran through by hand.
    pub go_passes: Option<bool>,
    /// Turns that the threaded NOT GO gauge entered.
    pub not_go_turns: Option<f64>,
    /// The plain GO gauge passed.
    pub plain_go_passes: Option<bool>,
    /// The plain NOT GO gauge entered.
    pub plain_not_go_enters: Option<bool>,
}

/// What the gauges show together.
///
/// ```
/// use framegauge::{measure::Outcome, thread::{Gauging, judge_gauging}};
/// let only_go = Gauging { go_passes: Some(true), ..Gauging::default() };
/// assert_eq!(judge_gauging(&only_go).unwrap().outcome, Outcome::Undecided);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct GaugingVerdict {
    /// Conformity is shown only when all four gauges agree.
    pub outcome: Outcome,
    /// Whether chasing may cure what was found.
    pub chasing_may_help: bool,
}

/// What the gauges show together (ISO 1502 principle: GO full form over the full length, NOT GO one element at a time).
///
/// # Errors
/// `NotFinite` and `OutOfRange` for turns that are none; `Missing` when no gauge was used.
///
/// ```
/// use framegauge::{measure::Outcome, thread::{Gauging, judge_gauging}};
/// // Every known-good cup is loose: the NOT GO plug runs right in.
/// let over_tapped = Gauging { go_passes: Some(true), not_go_turns: Some(6.0), ..Gauging::default() };
/// let verdict = judge_gauging(&over_tapped).unwrap();
/// assert_eq!(verdict.outcome, Outcome::NonconformityShown);
/// assert!(!verdict.chasing_may_help);
/// ```
pub fn judge_gauging(found: &Gauging) -> Result<GaugingVerdict, Error> {
    if let Some(turns) = found.not_go_turns {
        if !turns.is_finite() {
            return Err(Error::new(
                ErrorKind::NotFinite,
                "not go turns",
                turns,
                "must be a finite number",
                "count the turns that the gauge entered; 0 when it did not",
            ));
        }
        if !(0.0..=200.0).contains(&turns) {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "not go turns",
                turns,
                "turns lie between 0 and 200",
                "count the turns that the gauge entered; 0 when it did not",
            ));
        }
    }
    if *found == Gauging::default() {
        return Err(Error::new(
            ErrorKind::Missing,
            "gauging",
            "",
            "no gauge was used",
            "run the GO gauge first",
        ));
    }
    let worn = found.not_go_turns.is_some_and(|turns| turns > NOT_GO_TURNS)
        || found.plain_not_go_enters == Some(true);
    let blocked = found.go_passes == Some(false) || found.plain_go_passes == Some(false);
    let complete = found.go_passes.is_some()
        && found.not_go_turns.is_some()
        && found.plain_go_passes.is_some()
        && found.plain_not_go_enters.is_some();
    let outcome = if worn || blocked {
        Outcome::NonconformityShown
    } else if complete {
        Outcome::ConformityShown
    } else {
        Outcome::Undecided
    };
    Ok(GaugingVerdict {
        outcome,
        chasing_may_help: blocked && !worn,
    })
}

/// What chasing a thread does. Common practice; it follows from what the gauges measure.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Chasing {
    /// What it restores.
    pub restores: &'static [&'static str],
    /// What it never restores.
    pub never_restores: &'static [&'static str],
    /// What to check before, in order.
    pub before: &'static [&'static str],
    /// What to check after.
    pub check_after: &'static [&'static str],
}

/// What chasing a thread restores and never restores, and what to check before and after.
///
/// ```
/// let chasing = framegauge::thread::chasing();
/// assert!(chasing.never_restores.iter().any(|w| w.contains("pitch diameter")));
/// ```
#[must_use]
pub const fn chasing() -> Chasing {
    Chasing::OF_THE_TRADE
}
