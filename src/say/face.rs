//! Surveys of faces in words.

use alloc::format;
use core::fmt;

use crate::evidence::Text;
use crate::face::{Cap, Closer, FacingStep, LimitName, PassRecord, Section, Warning};
use crate::measure::{Decision, Outcome, Reading};
use crate::quantity::{Length, in_mm, mm};

impl<N: LimitName, M: LimitName> fmt::Display for Cap<N, M> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: ", self.what())?;
        match (self.may_come_off(), self.measure()) {
            (Some(left), _) => write!(f, "{} may come off", in_mm(left.value())),
            (None, Some(measure)) => write!(f, "unknown, {measure}"),
            (None, None) => Ok(()),
        }
    }
}

impl fmt::Display for Warning {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Suspect { probe, reading } => {
                write!(
                    f,
                    "reading {} ({reading}) stands apart from all the others; kept, but read it again",
                    probe + 1
                )
            }
            Self::AxisOutside => {
                f.write_str("all probes lie on one side of the axis; probe all round")
            }
            Self::Few { probes } => {
                write!(f, "{probes} probes cannot show a saddle; take 5, 7 or 9")
            }
            Self::EvenCount { probes } => {
                write!(
                    f,
                    "{probes} evenly spaced probes make a seat look as if it rocked; 5, 7 or 9 do not"
                )
            }
        }
    }
}

impl PassRecord {
    /// What came off, and how the cutter ran.
    pub(crate) fn said(
        least: Length,
        most: Length,
        ran_square: Option<&Decision>,
        zero_moved: bool,
    ) -> Text {
        if zero_moved {
            return "the face seems to have grown: the zero of the indicator moved, so amounts cannot be told".into();
        }
        let square = match ran_square.map(|d| d.outcome) {
            Some(Outcome::ConformityShown) => "the cutter ran square",
            Some(Outcome::NonconformityShown) => {
                "the cutter did not run square: look for play or chips in the pilot"
            }
            Some(Outcome::Undecided) => "whether the cutter ran square is not shown",
            None => "too little was cut to say how the cutter ran",
        };
        format!("{} to {} came off; {square}", in_mm(least), in_mm(most)).into()
    }
}

impl FacingStep {
    /// In a sentence.
    pub(crate) fn words(&self) -> Text {
        match self {
            FacingStep::Done => "done: square enough as it is".into(),
            FacingStep::OnePass { depth, up_to, .. } => format!(
                "one more pass: {} after first touch, at most {}",
                in_mm(*depth),
                in_mm(*up_to)
            )
            .into(),
            FacingStep::Stop { limit } => format!(
                "stop: nothing more may come off because of {}",
                limit.what()
            )
            .into(),
            FacingStep::CannotCleanUp {
                depth,
                share_reachable,
                limit,
            } => format!(
                "cannot clean up: {} allows {}, which touches {:.0} % of the face",
                limit.what(),
                in_mm(*depth),
                share_reachable * 100.0
            )
            .into(),
            FacingStep::Undecided { measure } => format!("undecided: measure {}", measure).into(),
        }
    }
}

impl fmt::Display for Closer {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Finer => {
                f.write_str("the face with a finer indicator: this one cannot show the limit")
            }
            Self::Again { probes } => write!(
                f,
                "the face again: {probes} probes all round, each read twice and pooled"
            ),
            Self::Both { needed, limit } => write!(
                f,
                "both finer, or cut part of it and survey again: {} needed and {} left under \"{}\" are too close",
                in_mm(*needed),
                in_mm(limit.may_come_off().map_or(mm(0.0), Reading::value)),
                limit.what(),
            ),
            Self::Limit { limit } => match limit.measure() {
                Some(measure) => write!(f, "{}: {measure}", limit.what()),
                None => Ok(()),
            },
            Self::AnyLimit => f.write_str(
                "what may come off: width, seat depth, clearance, paint lip and the maker's limits",
            ),
        }
    }
}

/// What a section is blind to.
impl Section {
    pub(crate) const ONE_AXIS: &'static str =
        "anything but one axis: read a second one, square to it";
    pub(crate) const ODD_LOBES: &'static str = "odd lobes: two contacts read the same across them";
    pub(crate) const ELLIPSE: &'static str = "an ellipse: three contacts average it away";
    pub(crate) const BETWEEN_AXES: &'static str =
        "an ellipse that stands between the axes read: read a third at 60 or 45 degrees";
}
