//! Steps and damages of a rescue, in words.

use crate::rescue::{Damage, Step};
use crate::thread::chasing;

impl Step {
    /// In words for a person.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Clean => "clean",
            Self::Free => "turn it out",
            Self::Chase => "chase",
            Self::Gauge => "gauge",
            Self::RoundOut => "press it round",
            Self::AdjustPart => "another part",
            Self::Shim => "shim",
            Self::Compound => "retaining compound",
            Self::Retap => "retap to the next pattern",
            Self::NextSize => "ream to the next size",
            Self::Insert => "thread insert",
            Self::ClampInUnit => "clamp-in unit",
            Self::FillAndRecut => "fill and recut",
            Self::Sleeve => "sleeve",
            Self::Peen => "raise burrs with a centre punch (last resort)",
            Self::Refer => "refer",
        }
    }

    /// What it costs later.
    ///
    /// ```
    /// use framegauge::rescue::Step;
    /// assert_eq!(Step::Gauge.costs(), "nothing");
    /// assert!(Step::NextSize.costs().starts_with("cannot be undone"));
    /// ```
    #[must_use]
    pub const fn costs(self) -> &'static str {
        match self {
            Self::Clean | Self::Gauge | Self::Refer => "nothing",
            Self::Free => "nothing, if it turns the right way",
            Self::Chase => "a little metal: a chaser can only make a loose thread looser",
            Self::RoundOut => "worked metal: it may spring back or crack, and paint flakes",
            Self::AdjustPart => "nothing on the frame; later parts must be of that size too",
            Self::Shim => "has to be fitted again each time; it can creep, and corrodes",
            Self::Compound => {
                "the part comes out with heat only, and the seat must be cleaned back to metal each time"
            }
            Self::Retap => {
                "cannot be undone: the frame has that thread and that hand from now on, and less wall"
            }
            Self::NextSize => {
                "cannot be undone: less wall, and only the larger part fits from now on"
            }
            Self::Insert => "cannot be undone: the next failure leaves a hole larger still",
            Self::ClampInUnit => "the frame takes that kind of unit only, unless it is rebuilt",
            Self::FillAndRecut => {
                "heat in a finished frame and new paint; its durability is not known"
            }
            Self::Sleeve => "heat or bonding in a finished frame, and new paint",
            Self::Peen => "spoils the seat for every better cure, and holds for a while only",
        }
    }

    /// What to mind with it; empty where there is nothing.
    #[must_use]
    pub const fn mind(self) -> &'static str {
        match self {
            Self::Free => "no more force until the hand and the materials are known",
            Self::RoundOut => {
                "stop at the first resistance: the lug or weld cracks before the tube"
            }
            Self::Shim => "one seam, no overlap, over the whole length of the seat",
            Self::Compound => "keep it out of bearings and seals: it has spoilt bearings",
            Self::Retap => {
                "cannot be undone: ask the frame maker what wall must stay, and never recut a bonded or composite shell"
            }
            Self::NextSize => "cutting cannot be undone; no least wall is published",
            Self::Insert => {
                "a wire insert in a brake, axle or pedal thread only with the maker's consent"
            }
            Self::FillAndRecut => "mark the shell as custom, with both hands, and gauge it",
            Self::Peen => {
                "the last resort: it carries the load on a few points and spoils the seat"
            }
            Self::Clean
            | Self::Chase
            | Self::Gauge
            | Self::AdjustPart
            | Self::ClampInUnit
            | Self::Sleeve
            | Self::Refer => "",
        }
    }

    /// What to check after it.
    #[must_use]
    pub const fn checks(self) -> &'static [&'static str] {
        match self {
            Self::Chase => chasing().check_after,
            Self::Compound => &[
                "alignment while it cures",
                "no movement after the time its data sheet states",
            ],
            Self::RoundOut => &[
                "the bore on two axes at two depths",
                "cracks at the lug, slot and welds",
            ],
            Self::NextSize => &["the new bore on two axes at two depths", "the part in it"],
            Self::Retap => &[
                "GO through, NOT GO at both ends",
                "the new part by hand",
                "face of the shell: square to the new thread",
            ],
            Self::Insert => &[
                "the part by hand through the whole insert",
                "insert below the face, its tang broken off",
            ],
            _ => &[],
        }
    }
}

impl Damage {
    /// In words for a person.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Worn => "worn",
            Self::OverCut => "tapped or reamed too large",
            Self::Stripped => "threads torn out",
            Self::CrossCut => "another thread cut across it",
            Self::Swapped => "hands of the two sides swapped",
            Self::OverBored => "worn or bored too large",
            Self::Oval => "out of round",
            Self::Pinched => "squeezed: pressed too hard, or pinched at a clamp or lug",
            Self::Loose => "no grip left on a pressed part",
            Self::Seized => "corroded, or set in compound",
        }
    }
}
