//! The plan: open questions first, then steps in order, each with its tool, amount, stop, check and proof.

use alloc::string::String;
use alloc::vec::Vec;
use core::fmt;

use super::caution::Caution;
use crate::evidence::{Citation, Grade};
use crate::identify::Identification;
use crate::judge::Finding;
use crate::quantity::Length;
use crate::standard::End;
use crate::thread::{Hand, Side, Turn};

/// A place of the frame sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Interface {
    /// The seat tube.
    SeatTube,
    /// The bottom-bracket shell as a whole.
    Shell,
    /// One side of it.
    ShellSide(Side),
    /// Upper end of the head tube.
    HeadUpper,
    /// Lower end of the head tube.
    HeadLower,
    /// The crown-race seat.
    Crown,
    /// The steerer.
    Steerer,
    /// A thread, by its place in the sheet.
    Thread(usize),
    /// A brake mount, by its place in the sheet.
    Brake(usize),
}

/// What is done at an interface.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumIter)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Operation {
    /// Take paint or dirt off by hand, without cutting metal.
    Clean,
    /// Open a bore with a reamer.
    Ream,
    /// Follow an existing thread with a chaser.
    Chase,
    /// Cut a thread.
    Tap,
    /// Cut a face flat and square to its pilot.
    Face,
    /// Measure or try again after something else moved it.
    Check,
    /// Do not touch.
    Leave,
    /// Not ours to cut: frame maker or qualified builder.
    Refer,
}

/// The cutter of a step.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Tool {
    /// Which cutter, with its size.
    pub cutter: String,
    /// Hand of the thread it cuts; `None` for reamers and facers.
    pub hand: Option<Hand>,
    /// Which way it turns to cut, seen facing it from outside; never the other way under pressure.
    pub turn: Turn,
    /// What guides it.
    pub pilot: String,
}

/// How much comes off, and in which direction it is counted.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Amount {
    /// At least this much.
    #[cfg_attr(
        feature = "serde",
        serde(rename = "least_mm", serialize_with = "crate::quantity::serial::as_mm")
    )]
    pub least: Length,
    /// With the uncertainty of the readings, perhaps as much as this.
    #[cfg_attr(
        feature = "serde",
        serde(rename = "most_mm", serialize_with = "crate::quantity::serial::as_mm")
    )]
    pub most: Length,
    /// `on diameter` or `of depth`.
    pub counted: &'static str,
}

/// What stops the cut.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Stop {
    /// The limit, in words.
    pub limit: String,
    /// How much may come off before it; `None` when the limit is no amount.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "left_mm",
            serialize_with = "crate::quantity::serial::as_mm_or_null"
        )
    )]
    pub left: Option<Length>,
    /// What the limit is worth; `None` when it is no figure.
    pub grade: Option<Grade>,
    /// Where it was read.
    pub sources: Vec<Citation>,
}

/// What a step changes elsewhere on the frame.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Consequence {
    /// Where it is felt.
    pub on: Interface,
    /// What changes, in words.
    pub words: String,
    /// By how much at most; `None` when it is no amount.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "by_mm",
            serialize_with = "crate::quantity::serial::as_mm_or_null"
        )
    )]
    pub by: Option<Length>,
}

/// A measurement that must come first.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Question {
    /// Number in the plan, from 1.
    pub number: usize,
    /// Where.
    pub interface: Interface,
    /// What to measure or to ask.
    pub ask: String,
    /// Why it matters.
    pub why: String,
    /// With what.
    pub instrument: String,
}

/// One step of the work.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Step {
    /// Number in the order of work, from 1.
    pub number: usize,
    /// Where.
    pub interface: Interface,
    /// What.
    pub operation: Operation,
    /// The step in one line.
    pub title: String,
    /// Why.
    pub why: String,
    /// With what.
    pub tool: Option<Tool>,
    /// How much.
    pub amount: Option<Amount>,
    /// What stops the cut.
    pub stop: Option<Stop>,
    /// How many passes to expect.
    pub passes: &'static str,
    /// What it changes elsewhere.
    pub consequences: Vec<Consequence>,
    /// Questions that must be answered first, by number.
    pub waits_for: Vec<usize>,
    /// What to check after.
    pub checks: Vec<String>,
    /// What proves the fit.
    pub proof: String,
    /// Cautions that belong to it.
    pub cautions: Vec<Caution>,
}

/// One thing comes before another, and why.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Edge {
    /// Number of the earlier step.
    pub before: usize,
    /// Number of the later step.
    pub after: usize,
    /// Why.
    pub reason: &'static str,
}

/// What is known of one interface.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct InterfaceReport {
    /// Where.
    pub interface: Interface,
    /// Its name.
    pub title: String,
    /// Which standard it is, as far as the readings say; `None` where that was not asked.
    pub identification: Option<Identification>,
    /// What was found.
    pub findings: Vec<Finding>,
    /// What is left alone there, and why.
    pub leave: Vec<String>,
}

/// A figure from memory, common practice or arithmetic that the plan rests on: check it before relying on it.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct WeakFigure {
    /// Which figure, in words.
    pub what: String,
    /// What it is worth.
    pub grade: Grade,
}

/// The plan for a whole frame.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Plan {
    /// The frame, in the shop's words.
    pub frame: String,
    /// The data are invented for a demonstration.
    pub invented: bool,
    /// Measure and ask these first.
    pub questions: Vec<Question>,
    /// The work, in order.
    pub steps: Vec<Step>,
    /// Why the order is what it is.
    pub order: Vec<Edge>,
    /// What was found, interface by interface.
    pub interfaces: Vec<InterfaceReport>,
    /// Cautions for the whole job.
    pub cautions: Vec<Caution>,
    /// Weak figures that the plan rests on.
    pub weak_figures: Vec<WeakFigure>,
}

impl fmt::Display for Interface {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::SeatTube => f.write_str("seat tube"),
            Self::Shell => f.write_str("shell"),
            Self::ShellSide(Side::Drive) => f.write_str("shell, drive side"),
            Self::ShellSide(Side::NonDrive) => f.write_str("shell, non-drive side"),
            Self::HeadUpper => f.write_str("head tube, upper end"),
            Self::HeadLower => f.write_str("head tube, lower end"),
            Self::Crown => f.write_str("crown-race seat"),
            Self::Steerer => f.write_str("steerer"),
            Self::Thread(index) => write!(f, "thread {}", index + 1),
            Self::Brake(index) => write!(f, "brake mount {}", index + 1),
        }
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for Interface {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

/// An end of the frame in words.
pub(super) const fn end_words(end: End) -> &'static str {
    match end {
        End::Front => "front",
        End::Rear => "rear",
        End::Both => "",
    }
}
