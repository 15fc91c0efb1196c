//! GO and NOT GO gauges: what each says and does not say, and what chasing can and cannot restore.

use alloc::vec::Vec;

use super::Member;
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

impl Gauge {
    /// What this gauge means on a hole or a screw (principle of ISO 1502, as two gauge makers' usage texts agree).
    ///
    /// ```
    /// use framegauge::thread::{Gauge, Member};
    /// assert!(Gauge::Go.meaning(Member::Internal).silent_on.contains("minor diameter"));
    /// ```
    #[must_use]
    pub const fn meaning(self, member: Member) -> GaugeMeaning {
        match (self, member) {
            (Self::Go, Member::Internal) => GaugeMeaning {
                shows: "the functional pitch diameter is not below its minimum, pitch and flank errors included, and the major diameter is large enough",
                silent_on: "the minor diameter, and how much too large the thread is",
                used: "screws in by hand through the whole thread, without force",
            },
            (Self::Go, Member::External) => GaugeMeaning {
                shows: "the functional pitch diameter is not above its maximum, and the root clears",
                silent_on: "the major diameter, and how much too small the thread is",
                used: "screws on by hand over the whole thread, without force",
            },
            (Self::NotGo, Member::Internal) => GaugeMeaning {
                shows: "the pitch diameter itself is not above its maximum",
                silent_on: "pitch, flanks and the minor diameter",
                used: "may enter from each end by no more than two turns",
            },
            (Self::NotGo, Member::External) => GaugeMeaning {
                shows: "the pitch diameter itself is not below its minimum",
                silent_on: "pitch, flanks and the major diameter",
                used: "may go on from each end by no more than two turns",
            },
            (Self::PlainGo, Member::Internal) => GaugeMeaning {
                shows: "the minor diameter is not below its minimum",
                silent_on: "everything about the flanks",
                used: "a plain plug that goes through",
            },
            (Self::PlainGo, Member::External) => GaugeMeaning {
                shows: "the major diameter is not above its maximum",
                silent_on: "everything about the flanks",
                used: "a plain ring that goes over",
            },
            (Self::PlainNotGo, Member::Internal) => GaugeMeaning {
                shows: "the minor diameter is not above its maximum",
                silent_on: "everything about the flanks: a sound bore proves no pitch diameter",
                used: "a plain plug that does not enter",
            },
            (Self::PlainNotGo, Member::External) => GaugeMeaning {
                shows: "the major diameter is not below its minimum",
                silent_on: "everything about the flanks",
                used: "a plain ring that does not go over",
            },
        }
    }
}

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
/// use framegauge::{measure::Outcome, thread::{Gauging, Member, judge_gauging}};
/// let only_go = Gauging { go_passes: Some(true), ..Gauging::default() };
/// let verdict = judge_gauging(Member::Internal, &only_go).unwrap();
/// assert_eq!(verdict.outcome, Outcome::Undecided);
/// assert!(verdict.next.contains("NOT GO"));
/// ```
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct GaugingVerdict {
    /// Conformity is shown only when all four gauges agree.
    pub outcome: Outcome,
    /// What each finding means.
    pub says: Vec<&'static str>,
    /// Whether chasing may cure what was found.
    pub chasing_may_help: bool,
    /// What to do next.
    pub next: &'static str,
}

/// What the gauges show together (ISO 1502 principle: GO full form over the full length, NOT GO one element at a time).
///
/// # Errors
/// `NotFinite` and `OutOfRange` for turns that are none; `Missing` when no gauge was used.
///
/// ```
/// use framegauge::{measure::Outcome, thread::{Gauging, Member, judge_gauging}};
/// // Every known-good cup is loose: the NOT GO plug runs right in.
/// let over_tapped = Gauging { go_passes: Some(true), not_go_turns: Some(6.0), ..Gauging::default() };
/// let verdict = judge_gauging(Member::Internal, &over_tapped).unwrap();
/// assert_eq!(verdict.outcome, Outcome::NonconformityShown);
/// assert!(!verdict.chasing_may_help);
/// ```
pub fn judge_gauging(member: Member, found: &Gauging) -> Result<GaugingVerdict, Error> {
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
    let hole = member == Member::Internal;
    let mut says = Vec::new();
    let mut fails = false;
    let mut worn = false;
    let mut blocked = false;
    match found.go_passes {
        Some(true) => says.push("GO passes: nothing stands in the way of a mating part"),
        Some(false) => {
            fails = true;
            blocked = true;
            says.push("GO stops: dirt, paint, burrs, a crossed start, or too little metal removed");
        }
        None => {}
    }
    match found.not_go_turns {
        Some(turns) if turns > NOT_GO_TURNS => {
            fails = true;
            worn = true;
            says.push(if hole {
                "NOT GO enters: the pitch diameter is too large, worn or over-tapped"
            } else {
                "NOT GO goes on: the pitch diameter is too small, worn or overcut"
            });
        }
        Some(_) => says.push("NOT GO stops within two turns: the pitch diameter holds"),
        None => {}
    }
    match found.plain_go_passes {
        Some(true) if hole => says.push("plain GO passes: the bore is large enough"),
        Some(true) => says.push("plain GO passes: the crests are low enough"),
        Some(false) => {
            fails = true;
            blocked = true;
            says.push(if hole {
                "plain GO stops: the bore is too small, or coated"
            } else {
                "plain GO stops: the crests are too high, or coated"
            });
        }
        None => {}
    }
    match found.plain_not_go_enters {
        Some(true) => {
            fails = true;
            worn = true;
            says.push(if hole {
                "plain NOT GO enters: the bore is too large, so the threads are too shallow"
            } else {
                "plain NOT GO goes on: the crests are gone, so the threads are too shallow"
            });
        }
        Some(false) => says.push("plain NOT GO stops: the threads are deep enough"),
        None => {}
    }
    let complete = found.go_passes.is_some()
        && found.not_go_turns.is_some()
        && found.plain_go_passes.is_some()
        && found.plain_not_go_enters.is_some();
    let outcome = if fails {
        Outcome::NonconformityShown
    } else if complete {
        Outcome::ConformityShown
    } else {
        Outcome::Undecided
    };
    let next = if worn && hole {
        "chasing cannot bring metal back: see what flank engagement is left, or retap to the next pattern"
    } else if worn {
        "chasing cannot bring metal back: see what flank engagement is left, or replace the part"
    } else if blocked && hole {
        "clean first, then chase with a chaser of the same pitch and hand, then run GO, NOT GO and the bore check again"
    } else if blocked {
        "clean first, then chase with a chasing die of the same pitch and hand, then run GO, NOT GO and the crest check again"
    } else if found.go_passes.is_none() {
        "run the threaded GO gauge through by hand"
    } else if found.not_go_turns.is_none() {
        "try the threaded NOT GO gauge at both ends"
    } else if complete {
        "nothing: all four gauges agree"
    } else {
        "check the crest diameter with plain gauges, or measure it"
    };
    Ok(GaugingVerdict {
        outcome,
        says,
        chasing_may_help: blocked && !worn,
        next,
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
    Chasing {
        restores: &[
            "GO acceptance where burrs, paint or displaced metal blocked it",
            "a bruised first thread",
        ],
        never_restores: &[
            "pitch diameter lost to wear, to a loose tap or to a crossed start",
            "the bore: shallow threads stay shallow",
            "a torn-out flank",
        ],
        before: &[
            "pick out and wash the grooves: hardened compound and paint feel like a crossed thread",
            "name the thread: pitch by leaf, hand by sight; a chaser of another pitch ruins it",
            "start the chaser by hand from the sound end, following the old helix",
        ],
        check_after: &[
            "GO through the whole thread by hand",
            "NOT GO at both ends: a chaser can only make this worse",
            "bore, or crest diameter, against its limits",
            "the mating part by hand; a hand fit is neither gauge",
        ],
    }
}
