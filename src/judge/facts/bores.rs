//! Facts and questions of a bore, a post, a tube, a wall.

use alloc::boxed::Box;
use alloc::vec::Vec;

use super::instrument::asks;
use crate::evidence::{Figure, Grade, Text};
use crate::fact::facts;
use crate::fit::{Caution, Feature};
use crate::measure::Outcome;
use crate::quantity::Length;

facts! {
    /// What is found of a bore, a post, a tube, a wall.
    BoreFact {
        /// Readings at one depth, or at no stated one, against their limits.
        Bore { deep: Option<Length>, count: usize },
        /// Over at these depths and under at those, where one is known; both at one depth is out of round.
        TooLarge { over: Vec<Option<Length>>, under: Vec<Option<Length>> },
        /// What the readings of a shape cannot say.
        Shape { caution: Caution },
        /// A wall, and nobody says how thick it must be.
        WallUnlimited { wall: Length },
        /// What a reamer takes on diameter and which wall it leaves, where the outside is known.
        Reaming { from: Length, to: Length, takes: Length, leaves: Option<Length> },
        /// Metal that is off stays off.
        CutOnce,
        /// A coat of so much a side makes a reading wrong by twice that.
        OverCoat { member: Feature, thin: Length, thick: Length, grade: Option<Grade> },
        /// The bare size is known: what lies on it, on each side, and whether a powder coat is so thick.
        CoatOnIt { member: Feature, reading: Length, bare: Length, coat: Length, like: bool },
        /// What a coat must not reach.
        MaskBefore,
        /// How deep a post must go in: the deepest depth asked for, by the trade with or without the weld, and by all rules.
        DepthAsked { depth: Option<Length>, weld: Option<Length>, trade: Option<Length>, least: Option<Length>, most: Option<Length> },
        /// A post as it is in, against the least and the most demanding published rule.
        ByRules { depth: Length, least: Outcome, most: Outcome },
        /// How deep the tube is clear, and which depth it is too shallow for: every one, or only what some rules ask.
        ClearTo { clear: Length, short_of: Option<Length>, some: bool },
        /// What a post hurts that is too short.
        ShortPost,
        /// One listed post in this tube, by its nominal size.
        PostFits { post: Text, least: Option<Length>, most: Option<Length> },
        /// Every listed post is shown not to fit.
        NoPostFits,
        /// Posts were taken at their nominal sizes.
        NominalPosts,
        /// A seat that a tube can be reamed to.
        SeatInReach { seat: Text, name: Text, bore: Box<Figure>, stock: Length, wall: Length, cup: Option<Length> },
        /// The inside of a tube, outside less two walls; whether a listed seat lies within reach of a reamer.
        InsideOfTube { inside: Length, seats: usize },
        /// The size of a steerer names no bore.
        SteererNamesNoBore,
        /// Bore and post that an outside diameter and a labelled wall lead to.
        PostExpected { outside: Length, bore_least: Length, bore_most: Length, post_least: Option<Length>, post_most: Option<Length> },
        /// The wall that a post in use implies, and whether the label agrees.
        PostImplies { post: Length, wall: Length, agrees: Outcome },
        /// The wall of a shim: half the gap, with the wanted press where the part presses.
        ShimWall { wall: Length, presses: bool },
        /// No gap is left for a shim.
        NoGap,
        /// A sheet in the gap, what it adds and leaves on diameter, and the wall that goes there.
        Sheet { sheet: Length, adds: Length, wall: Length, leaves: Length, goes_in: Outcome },
        /// How long a shim is.
        ShimLength,
    }
}

asks! {
    /// What is asked of a bore, a post, a tube, a wall.
    BoreAsk {
        /// The bore on bare metal.
        OnMetal => BoreGauge,
        /// The bore with a finer gauge, for its instrument or for these readings.
        Finer { instrument: bool } => BoreGauge,
        /// The bore in two directions at both ends.
        BothEnds => BoreGauge,
        /// The bore on two axes at two depths.
        TwoByTwo => InsideCaliper,
        /// The bore once the tube is reamed after joining.
        Finished => InsideCaliper,
        /// The bore and the post, for a series that steps by 0.2 mm.
        BoreAndPost => InsideCaliper,
        /// The wall at its thinnest place.
        ThinnestWall => WallGauge,
        /// The outside diameter around the bore, or the wall.
        OutsideThere => Micrometer,
        /// The metal below a coat.
        BareMetal => Micrometer,
        /// From the top of the seat tube to the lower edge of the weld or lug.
        Weld => Rule,
        /// The mark on the post and the frame maker's depth.
        DepthWritten => Sheet,
        /// How deep the post is in.
        DepthNow => Rule,
        /// The diameter of the post.
        PostOutside => OutsideCaliper,
        /// The outside of the cup at hand.
        CupOutside => Micrometer,
        /// The interference that the maker of the part wants.
        PressWanted => Maker,
        /// The thickness of the sheet.
        SheetThickness => Micrometer,
    }
}
