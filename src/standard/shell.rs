//! Bottom-bracket shells and what is pressed or screwed into them.

use crate::evidence::{Fact, Figure, List, Text};
use crate::quantity::Length;
use crate::thread::{Hand, ThreadSize};

use super::row::rows;

/// What fixes a bearing along the axis: it decides whether facing moves anything.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum LocatedBy {
    /// The thread: the part has no shoulder.
    Thread,
    /// A flange or shoulder against the face: facing moves it.
    Face,
    /// A ring in a groove: facing moves nothing but the shield gap.
    Groove,
    /// A shoulder or seat inside the bore: facing moves nothing.
    Seat,
}

/// How a part is held.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Hold {
    /// Interference.
    Press,
    /// Clearance by design: no interference is no fault.
    Slip,
    /// A thread.
    Screw,
}

/// Whether a pattern is still made.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Status {
    /// In current use.
    Current,
    /// Still met on new frames, ever less.
    Declining,
    /// Only on old frames.
    Obsolete,
}

rows! {
    /// A neighbour that is taken for this one, and what separates them.
    Confusion {
        /// Code of the neighbour.
        code: Text,
        /// What tells them apart.
        why: Text,
    }

    /// Distances of the two faces from the frame's middle plane, for one shell width.
    HalfWidths {
        /// The nominal width.
        #[cfg_attr(feature = "serde", serde(rename(serialize = "width_mm"), serialize_with = "crate::quantity::serial::as_mm", deserialize_with = "crate::quantity::serial::from_text"))]
        width: Length,
        /// Drive side.
        drive: Figure,
        /// Non-drive side.
        non_drive: Figure,
    }

    /// A bottom-bracket shell pattern. Width windows belong to the crank or frame maker, see [`ShellWindow`].
    Shell("shell", SHELLS, aliases) {
        /// Unique code.
        code: Text,
        /// Name for a person.
        name: Text,
        /// Other trade names.
        #[cfg_attr(feature = "serde", serde(default))]
        aliases: List<Text>,
        /// The thread, of threaded shells.
        #[cfg_attr(feature = "serde", serde(default, deserialize_with = "super::shop::thread_or_none"))]
        thread: Option<Fact<ThreadSize>>,
        /// Hand on the drive side.
        #[cfg_attr(feature = "serde", serde(default))]
        hand_drive: Option<Fact<Hand>>,
        /// Hand on the non-drive side.
        #[cfg_attr(feature = "serde", serde(default))]
        hand_non_drive: Option<Fact<Hand>>,
        /// Basic pitch diameter.
        #[cfg_attr(feature = "serde", serde(default))]
        pitch_diameter: Option<Figure>,
        /// Basic minor diameter of the shell thread.
        #[cfg_attr(feature = "serde", serde(default))]
        minor_diameter: Option<Figure>,
        /// Bore, of unthreaded shells.
        #[cfg_attr(feature = "serde", serde(default))]
        bore: Option<Figure>,
        /// Least depth of the bore.
        #[cfg_attr(feature = "serde", serde(default))]
        bore_depth: Option<Figure>,
        /// Nominal widths.
        #[cfg_attr(feature = "serde", serde(default))]
        widths: List<Figure>,
        /// Half widths, where the faces are not equally far from the middle plane or are known to be.
        #[cfg_attr(feature = "serde", serde(default))]
        half_widths: List<HalfWidths>,
        /// What fixes the bearing along the axis.
        located_by: Fact<LocatedBy>,
        /// How the part is held.
        #[cfg_attr(feature = "serde", serde(default))]
        fit: Option<Fact<Hold>>,
        /// Spindle diameters in use.
        #[cfg_attr(feature = "serde", serde(default))]
        spindles: List<Figure>,
        /// Usable thread depth a side.
        #[cfg_attr(feature = "serde", serde(default))]
        thread_depth: Option<Figure>,
        /// Whether it is still made.
        #[cfg_attr(feature = "serde", serde(default))]
        status: Option<Fact<Status>>,
        /// What it is taken for.
        #[cfg_attr(feature = "serde", serde(default))]
        confused_with: List<Confusion>,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// A shell width that a crank or frame maker's specification allows.
    ShellWindow("shell_window", SHELL_WINDOWS) {
        /// Unique code.
        code: Text,
        /// Code of the shell.
        shell: Text,
        /// The width it speaks of.
        nominal: Figure,
        /// Least and greatest width.
        window: Figure,
        /// Whose specification it is.
        owner: Text,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// Bore limits of a press shell, with who prints them.
    BoreWindow("bore_window", BORE_WINDOWS) {
        /// Unique code.
        code: Text,
        /// Code of the shell.
        shell: Text,
        /// Least and greatest bore.
        window: Figure,
        /// Who prints it.
        owner: Text,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// A part that is pressed in, with who prints its size.
    PressPart("press_part", PRESS_PARTS) {
        /// Unique code.
        code: Text,
        /// Code of the shell or head-tube seat that takes it.
        joint: Text,
        /// What it is.
        part: Text,
        /// Its outside diameter.
        diameter: Figure,
        /// Who prints it.
        owner: Text,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }

    /// Spacers between shell and cups, by crank system.
    SpacerRule("spacer_rule", SPACER_RULES) {
        /// Unique code.
        code: Text,
        /// Code of the shell.
        shell: Text,
        /// Shell width it speaks of.
        width: Figure,
        /// Shell and spacers together.
        stack: Figure,
        /// Which spacers, in words.
        spacers: Text,
        /// Whose rule it is.
        owner: Text,
        /// What a reader should know besides.
        #[cfg_attr(feature = "serde", serde(default))]
        note: Text,
    }
}

impl Shell {
    /// The hand on one side, if the shell is threaded and the hand is known.
    ///
    /// ```
    /// use framegauge::{standard::{Shell, find}, thread::{Hand, Side}};
    /// assert_eq!(find::<Shell>("bsc").unwrap().hand(Side::Drive), Some(Hand::Left));
    /// assert_eq!(find::<Shell>("italian").unwrap().hand(Side::Drive), Some(Hand::Right));
    /// ```
    #[must_use]
    pub fn hand(&self, side: crate::thread::Side) -> Option<Hand> {
        self.hand_fact(side).and_then(|fact| fact.value().copied())
    }

    /// The hand on one side with its evidence.
    ///
    /// ```
    /// use framegauge::{standard::{Shell, find}, thread::Side};
    /// let fact = find::<Shell>("bsc").unwrap().hand_fact(Side::Drive).unwrap();
    /// assert!(format!("{fact:#}").starts_with("left (published, two agree: "));
    /// ```
    #[must_use]
    pub fn hand_fact(&self, side: crate::thread::Side) -> Option<&Fact<Hand>> {
        match side {
            crate::thread::Side::Drive => self.hand_drive.as_ref(),
            crate::thread::Side::NonDrive => self.hand_non_drive.as_ref(),
        }
    }
}
