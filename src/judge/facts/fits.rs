//! Facts and questions of two parts that fit, or do not.

use alloc::vec::Vec;

use super::instrument::{Instrument, asks};
use crate::evidence::{Grade, Text};
use crate::fact::facts;
use crate::fit::{Caution, Feature, Out, Sense};
use crate::judge::Felt;
use crate::measure::{Limits, Measures};
use crate::quantity::Length;
use crate::standard::Joint;

facts! {
    /// What is found of two parts that fit, or do not.
    FitFact {
        /// How tight it is, on diameter: the least and the greatest clearance.
        OnDiameter { joint: Joint, tightest: Length, loosest: Length },
        /// A member against its own limits; the numbers stand in the finding.
        Member { member: Feature, count: usize },
        /// The fit against a window that somebody wants; the numbers stand in the finding, counted as the window is.
        Window { joint: Joint, wanted: Sense },
        /// A window that prints one figure and no limits.
        Quoted { joint: Joint, by: Text, wanted: Sense, figure: Length },
        /// A window of which nothing is printed.
        NoWindow { joint: Joint, reason: Text },
        /// The published windows do not agree.
        WindowsDisagree { joint: Joint },
        /// Meant to press, and there is a gap.
        Gap { joint: Joint },
        /// Meant to slide in, and larger than the hole.
        TooLarge { joint: Joint },
        /// It presses everywhere, and nobody prints how much it may.
        PressesUnlimited { joint: Joint },
        /// The readings do not tell press from gap.
        PressOrGap { joint: Joint },
        /// A slip fit by design, of which nobody prints the gap.
        SlipByDesign { joint: Joint },
        /// Held by its thread.
        Screwed { joint: Joint },
        /// Nobody publishes how much is right.
        NobodyPrints { joint: Joint },
        /// Read over paint; bare it is looser still.
        LooserBare { joint: Joint },
        /// Which member is off the size that both are sold as.
        OffTheSizeSold { sold_as: Length, off: Out },
        /// The post to try first, and the clearance that it leaves by its nominal size.
        TryPost { size: Length, leaves: Length },
        /// The wall of a shim for the part at hand.
        ShimWall { joint: Joint, wall: Length },
        /// What was felt or seen of it, and whether it is meant to press.
        Felt { joint: Joint, felt: Felt, press: bool },
        /// Neither felt nor measured.
        NotKnown { joint: Joint },
        /// A doubt of the readings or of the figures.
        Mind { caution: Caution },
        /// What to mind at this joint whatever is found.
        MindJoint { joint: Joint },
        /// How much more clearance there is at other temperatures than at 20 °C.
        Grows { by: Length },
        /// Coefficients of expansion are averages.
        ExpansionAverage,
        /// Readings that spread too far to be one size.
        NoSize { spread: Length },
        /// One size, as far as the step of the sizes tells.
        OneSize { spread: Length },
        /// One reading shows no shape.
        OneReading,
        /// A note on the figure.
        Note { note: Text },
        /// It rests on weaker evidence than was asked for.
        WeakerThanAsked { asked: Grade },
    }
}

asks! {
    /// What is asked of two parts that fit, or do not.
    FitAsk {
        /// The fit that the maker of the part wants.
        MakersFit => Maker,
        /// Bore and outside again, with finer tools.
        Finer => BoreGauge,
        /// The part tried by hand, or its maker's clearance.
        TryByHand => Part,
        /// Largest and smallest diameter of both members.
        BothMembers => BoreGauge,
        /// A member on bare metal.
        BareMetal { member: Feature } => match member { Feature::Hole => InsideCaliper, Feature::Shaft => OutsideCaliper },
        /// The bore, of which nothing is known.
        Bore => BoreGauge,
        /// The outside of the inner part, of which nothing is known.
        Outside => Micrometer,
        /// The shape of the bore.
        Shape => InsideCaliper,
        /// The size again, with an instrument that can decide.
        Size { measures: Measures, limits: Limits, can: Vec<Text>, cannot: Vec<Text> } => reads(*measures),
    }
}

#[cfg(feature = "serde")]
crate::fact::values_as_they_are!(Caution, Feature, Out, Sense, Joint, Felt, Measures);

/// With what a size of this kind is read finely.
const fn reads(measures: Measures) -> Instrument {
    match measures {
        Measures::Inside => Instrument::BoreGauge,
        Measures::Outside => Instrument::Micrometer,
        Measures::Depth => Instrument::Depth,
        Measures::Height => Instrument::DialAtPilot,
        Measures::Pitch => Instrument::PitchGauge,
        Measures::Length => Instrument::Rule,
    }
}
