//! Facts and questions of a thread, a bolt.

use super::Fact;
use super::instrument::asks;
use crate::fact::{closed_words, facts};
use crate::judge::ThreadSeen;
use crate::quantity::{Length, Pitch};
use crate::thread::{Hand, Side, ThreadSize};

facts! {
    /// What is found of a thread, a bolt.
    ThreadFact {
        /// What the gauges did that were tried: passed as a good thread lets them, or failed.
        Gauged { screw: bool, go: Option<bool>, not_go: Option<bool>, plain_go: Option<bool>, plain_not_go: Option<bool> },
        /// What was seen or felt of it.
        Seen { sign: ThreadSeen },
        /// Two statements that cannot both be true.
        Contradiction { of: Contradiction },
        /// The bore over the crests, held against its limits.
        CrestBore { count: usize },
        /// Pitch diameters further apart than the usual allowance.
        Diameter { on: Option<Side>, hole: Length, part: Length, apart: Length, allowed: Length },
        /// Different pitches.
        Pitch { on: Option<Side>, hole: Pitch, part: Pitch, a_turn: Length },
        /// Different flank angles.
        FlankAngle { on: Option<Side> },
        /// One is left-hand, the other right-hand.
        Hands { on: Option<Side>, hole: Hand, part: Hand },
        /// Nothing differs.
        Alike { on: Option<Side> },
        /// Nothing differs, and the form of one is not known.
        FormNotKnown { on: Option<Side> },
        /// Of shell and part one has a thread on this side, the other none.
        OneThreaded { on: Side },
        /// Both sides have the right thread of the wrong hand.
        HandsSwapped,
        /// Each side of the shell has a thread of its own.
        Hybrid,
        /// Two threads that do not mate.
        DoNotForce,
        /// Nobody prints the hole of this thread.
        NoHolePrinted { thread: ThreadSize },
        /// Too large a hole leaves too little thread.
        TooLittleThread,
        /// A hole is enlarged in steps.
        EnlargeInSteps,
        /// What stands out of a mount with a bolt of this length, held against what is wanted.
        StandsOut { bolt: Length },
        /// The bolt that a mount of this thickness takes, and the nearest that is listed.
        BoltFor { thickness: Length, ideal: Length, listed: Option<Length>, listed_for: Option<Length> },
        /// Too long a bolt.
        BoltBottoms,
        /// How tight a bolt of a brake is.
        BoltTorque,
    }
}

asks! {
    /// What is asked of a thread, a bolt.
    ThreadAsk {
        /// What lies in the grooves.
        Grooves => Eye,
        /// Pitch and hand.
        PitchAndHand => PitchGauge,
        /// What no gauge was tried on yet.
        OtherGauges => ThreadGauges,
        /// All gauges again, once it is chased.
        GaugesAgain { screw: bool } => ThreadGauges,
        /// The flank engagement that is left.
        EngagementLeft { screw: bool } => Wires,
        /// The pitch diameter by the NOT GO gauge, or over wires.
        NotGoOrWires => ThreadGauges,
        /// The pitch diameter, where the form of one thread is not known.
        PitchDiameter => Wires,
        /// The hole that the tap's maker names.
        HoleOfTap => Maker,
        /// The hole in two directions.
        HoleTwice => Plug,
        /// Thickness of the mount, and depth of the thread behind it.
        ThicknessAndThread => Depth,
    }
}

closed_words! {
    /// Which two statements about a thread cannot both be true.
    ///
    /// ```
    /// use framegauge::{judge::{Contradiction, Fact, Gauging, Passed, ThreadFact, ThreadSeen}, standard::Tables};
    /// let torn = Gauging { go: Some(Passed::Failed), seen: vec![ThreadSeen::Sound], ..Gauging::default() };
    /// let said = torn.answer(Tables::ours()).unwrap();
    /// assert!(said.findings.iter().any(|f| f.fact == Fact::Thread(ThreadFact::Contradiction { of: Contradiction::SoundButFails })));
    /// ```
    Contradiction {
        /// GO stops, and NOT GO runs in.
        TooSmallAndTooLarge,
        /// Called sound, and a gauge fails.
        SoundButFails,
        /// Called sound, and its bore is out.
        SoundButBoreOut,
        /// Called sound, and also torn or loose.
        SoundButTorn,
        /// Called torn, and all gauges pass.
        TornButPasses,
        /// No thread is cut yet, and a gauge was tried.
        UncutButGauged,
    }
}

impl Fact {
    /// Whether it tells of two statements that cannot both be true.
    pub(crate) const fn is_contradiction(&self) -> bool {
        matches!(self, Self::Thread(ThreadFact::Contradiction { .. }))
    }
}

#[cfg(feature = "serde")]
crate::fact::values_as_they_are!(Contradiction, ThreadSeen, Pitch, ThreadSize);
