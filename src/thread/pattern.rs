//! Which hand stands on which side, by pattern, as the rows of shells and threads in use state it.

use super::tables::hands::PATTERNS;
use super::{Hand, Side};
use crate::evidence::Evidence;
use crate::{Error, ErrorKind};

/// The hand on one side, with what it rests on.
///
/// ```
/// use framegauge::thread::hand_pattern;
/// let swiss = hand_pattern("swiss").unwrap().drive.unwrap();
/// assert!(swiss.disputed.contains("right-hand"));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct SideHand {
    /// The hand.
    pub hand: Hand,
    /// What it rests on.
    pub evidence: &'static Evidence,
    /// What other sources say; empty when none disagrees.
    pub disputed: &'static str,
}

/// What a pattern of hands holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[strum(serialize_all = "snake_case")]
pub enum Holds {
    /// A cup in its shell.
    Cup,
    /// A pedal in its crank.
    Pedal,
    /// A sprocket that pedalling screws on.
    Sprocket,
    /// The lockring of a fixed sprocket.
    Lockring,
}

/// Hands of one pattern, such as the English shell or the pedals.
///
/// ```
/// use framegauge::{Grade, thread::hand_pattern};
/// let t47 = hand_pattern("t47").unwrap();
/// assert_eq!(t47.non_drive.unwrap().evidence.grade(), Grade::Memory);
/// assert!(t47.drive.unwrap().evidence.note().contains("confirm"));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct HandPattern {
    /// Short name, unique.
    pub code: &'static str,
    /// Other names it is asked by.
    pub aliases: &'static [&'static str],
    /// The pattern in words.
    pub name: &'static str,
    /// What it holds.
    pub holds: Holds,
    /// Hand on the drive side; `None` where nothing stands there.
    pub drive: Option<SideHand>,
    /// Hand on the other side; `None` where nothing stands there.
    pub non_drive: Option<SideHand>,
}

impl HandPattern {
    /// The hand on a side with its evidence; `None` where nothing stands there.
    ///
    /// ```
    /// use framegauge::thread::{Side, hand_pattern};
    /// assert!(hand_pattern("freewheel").unwrap().side(Side::NonDrive).is_none());
    /// ```
    #[must_use]
    pub const fn side(&self, side: Side) -> Option<SideHand> {
        match side {
            Side::Drive => self.drive,
            Side::NonDrive => self.non_drive,
        }
    }

    /// The hand on a side; `None` where nothing stands there.
    ///
    /// ```
    /// use framegauge::thread::{Hand, Side, hand_pattern};
    /// assert_eq!(hand_pattern("bsa").unwrap().hand(Side::Drive), Some(Hand::Left));
    /// assert_eq!(hand_pattern("pedal").unwrap().hand(Side::Drive), Some(Hand::Right));
    /// ```
    #[must_use]
    pub fn hand(&self, side: Side) -> Option<Hand> {
        self.side(side).map(|found| found.hand)
    }
}

/// All patterns.
///
/// ```
/// assert!(framegauge::thread::hand_patterns().iter().any(|p| p.code == "t47"));
/// ```
#[must_use]
pub fn hand_patterns() -> &'static [HandPattern] {
    &PATTERNS
}

/// The pattern of this name or alias.
///
/// # Errors
/// `UnknownName`, listing the names.
///
/// ```
/// use framegauge::thread::hand_pattern;
/// assert_eq!(hand_pattern("English").unwrap().code, "bsc");
/// assert!(hand_pattern("square taper").unwrap_err().remedy().contains("t47"));
/// ```
pub fn hand_pattern(name: &str) -> Result<&'static HandPattern, Error> {
    let wanted = name.trim();
    PATTERNS
        .iter()
        .find(|p| {
            p.code.eq_ignore_ascii_case(wanted)
                || p.aliases.iter().any(|a| a.eq_ignore_ascii_case(wanted))
        })
        .ok_or_else(|| {
            let mut known = alloc::string::String::from("known: ");
            for (index, pattern) in PATTERNS.iter().enumerate() {
                if index > 0 {
                    known.push_str(", ");
                }
                known.push_str(pattern.code);
            }
            Error::new(
                ErrorKind::UnknownName,
                "pattern",
                name,
                "no such shell or pedal pattern",
                known,
            )
        })
}
