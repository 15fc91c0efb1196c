//! What a plan finds, asks and wants done, as facts: codes and numbers. Their sentences stand in `say`.

mod common;
mod head;
mod mount;
mod round;
mod seat_tube;
mod shell;
mod thread;

pub use common::{CommonAsk, CommonFact, CommonTask, Earlier, GoesIn, Reason};
pub use head::{HeadAsk, HeadFact, HeadTask};
pub use mount::{MountAsk, MountFact, MountTask};
pub use round::{RoundFact, RoundTask};
pub use seat_tube::{SeatTubeAsk, SeatTubeFact, SeatTubeTask};
pub use shell::{ShellAsk, ShellFact, ShellTask};
pub use thread::{ThreadAsk, ThreadFact, ThreadTask};

use crate::fact::fact_kinds;
use crate::judge::{self, Finding, Instrument};

fact_kinds! {
    /// What a plan finds, leaves, or holds could cure.
    Fact {
        /// What a judgement found.
        Judged(judge::Fact),
        /// Of any place.
        Common(CommonFact),
        /// Of a bore that takes a part.
        Round(RoundFact),
        /// Of the seat tube.
        SeatTube(SeatTubeFact),
        /// Of the bottom-bracket shell.
        Shell(ShellFact),
        /// Of head tube, crown and steerer.
        Head(HeadFact),
        /// Of threads.
        Thread(ThreadFact),
        /// Of brake mounts and faces.
        Mount(MountFact),
        /// What is left to do for a spoilt place.
        Rescue(crate::rescue::RescueFact),
    }
    /// What a plan asks.
    Ask {
        /// What a judgement asks.
        Judged(judge::Ask),
        /// Of any place.
        Common(CommonAsk),
        /// Of the seat tube.
        SeatTube(SeatTubeAsk),
        /// Of the bottom-bracket shell.
        Shell(ShellAsk),
        /// Of head tube, crown and steerer.
        Head(HeadAsk),
        /// Of threads.
        Thread(ThreadAsk),
        /// Of brake mounts and faces.
        Mount(MountAsk),
    }
    /// What a plan wants done.
    Task {
        /// Of any place.
        Common(CommonTask),
        /// Of a bore that takes a part.
        Round(RoundTask),
        /// Of the seat tube.
        SeatTube(SeatTubeTask),
        /// Of the bottom-bracket shell.
        Shell(ShellTask),
        /// Of head tube, crown and steerer.
        Head(HeadTask),
        /// Of threads.
        Thread(ThreadTask),
        /// Of brake mounts and faces.
        Mount(MountTask),
    }
}

/// A finding of a plan.
pub type Found = Finding<Fact>;

/// A limit of a plan on a cut.
pub type CutLimit = crate::face::Cap<Fact, Ask>;

/// Everything that limits a cut of a plan.
pub type Allowance = crate::face::Caps<Fact, Ask>;

impl crate::face::LimitName for Fact {}
impl crate::face::LimitName for Ask {}

impl From<Finding> for Found {
    fn from(found: Finding) -> Self {
        found.with_fact(Fact::Judged)
    }
}

impl<F: Into<Fact>> From<F> for Found {
    fn from(fact: F) -> Self {
        Self::of(fact)
    }
}

impl Ask {
    /// With what it is answered.
    #[must_use]
    pub fn with(&self) -> Instrument {
        match self {
            Self::Judged(ask) => ask.with(),
            Self::Common(ask) => ask.with(),
            Self::SeatTube(ask) => ask.with(),
            Self::Shell(ask) => ask.with(),
            Self::Head(ask) => ask.with(),
            Self::Thread(ask) => ask.with(),
            Self::Mount(ask) => ask.with(),
        }
    }
}

#[cfg(feature = "serde")]
crate::read::told! { super::Operation => crate::read::Shape::Word(crate::read::known_words::<super::Operation>) }
#[cfg(feature = "serde")]
crate::fact::values_as_they_are!(
    super::sheet::Limited,
    super::Operation => <super::Operation as crate::read::Told>::SHAPE,
);
