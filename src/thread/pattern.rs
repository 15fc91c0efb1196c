//! Which hand stands on which side, by pattern: the rows of `data/grids/thread_hands.csv`.

use super::tables::hands::PATTERNS;
use super::{Hand, Side};
use crate::evidence::Grade;
use crate::{Error, ErrorKind};

/// Hands of one pattern, such as the English shell or the pedals.
///
/// ```
/// use framegauge::{Grade, thread::hand_pattern};
/// let t47 = hand_pattern("t47").unwrap();
/// assert_eq!(t47.grade, Grade::Memory);
/// assert!(t47.note.contains("confirm"));
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
    /// Hand on the drive side; `None` where nothing stands there.
    pub drive: Option<Hand>,
    /// Hand on the other side; `None` where nothing stands there.
    pub non_drive: Option<Hand>,
    /// How sure it is.
    pub grade: Grade,
    /// What it rests on; empty for memory.
    pub basis: &'static str,
    /// What to know besides.
    pub note: &'static str,
}

impl HandPattern {
    /// The hand on a side; `None` where nothing stands there.
    ///
    /// ```
    /// use framegauge::thread::{Hand, Side, hand_pattern};
    /// assert_eq!(hand_pattern("bsa").unwrap().hand(Side::Drive), Some(Hand::Left));
    /// assert_eq!(hand_pattern("pedal").unwrap().hand(Side::Drive), Some(Hand::Right));
    /// ```
    #[must_use]
    pub const fn hand(&self, side: Side) -> Option<Hand> {
        match side {
            Side::Drive => self.drive,
            Side::NonDrive => self.non_drive,
        }
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
