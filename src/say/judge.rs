//! What judgements find and ask, in words.

mod bores;
mod claims;
mod fits;
mod sizes;
mod squares;
mod threads;
mod verdict;

pub(crate) use sizes::from_to;

use core::fmt;

use crate::judge::Instrument;

pub(in crate::say) use sizes::spread;

impl fmt::Display for Instrument {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Eye => "eye, light",
            Self::Hand => "by hand",
            Self::Part => "the mating part",
            Self::Rule => "steel rule",
            Self::InsideCaliper => "telescoping gauge or inside caliper",
            Self::BoreGauge => "three-point internal micrometer",
            Self::OutsideCaliper => "outside caliper",
            Self::Micrometer => "outside micrometer",
            Self::WallGauge => "wall gauge, or micrometer with a ball anvil",
            Self::Depth => "depth caliper or a marked rod",
            Self::Feeler => "feeler gauge",
            Self::Plug => "plug of known size",
            Self::PitchGauge => "pitch gauge",
            Self::ThreadGauges => "GO and NOT GO gauges",
            Self::Wires => "three wires and a micrometer",
            Self::DialAtPilot => "dial indicator turned about the pilot",
            Self::DialAtAxle => "dial indicator on a bar held by the axle",
            Self::Magnet => "magnet",
            Self::Sheet => "label, maker's sheet",
            Self::Maker => "frame maker",
        })
    }
}
