//! With what something is measured, tried or asked.

/// With what something is measured, tried or asked; what is asked with one of them is asked together.
///
/// ```
/// use framegauge::judge::Instrument;
/// assert!(Instrument::Maker.to_string().contains("maker"));
/// ```
#[derive(
    Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, strum::IntoStaticStr, strum::VariantNames,
)]
#[strum(serialize_all = "snake_case")]
pub enum Instrument {
    /// Eye and light.
    Eye,
    /// Bare hands, or the part itself tried by hand.
    Hand,
    /// The mating part.
    Part,
    /// Steel rule or tape.
    Rule,
    /// Inside caliper or telescoping gauge.
    InsideCaliper,
    /// Three-point internal micrometer or bore gauge.
    BoreGauge,
    /// Outside caliper.
    OutsideCaliper,
    /// Outside micrometer.
    Micrometer,
    /// Wall gauge, or micrometer with a ball anvil.
    WallGauge,
    /// Depth caliper, depth rod.
    Depth,
    /// Feeler gauge.
    Feeler,
    /// Plugs of known size.
    Plug,
    /// Pitch gauge leaves.
    PitchGauge,
    /// Threaded GO and NOT GO gauges.
    ThreadGauges,
    /// Three wires and a micrometer.
    Wires,
    /// Dial indicator turned about the pilot.
    DialAtPilot,
    /// Dial indicator on a bar held by the axle.
    DialAtAxle,
    /// Magnet.
    Magnet,
    /// Label, mark or maker's sheet.
    Sheet,
    /// Frame maker or component maker, in writing.
    Maker,
}

impl Instrument {
    /// Its code, as JSON has it.
    #[must_use]
    pub fn code(&self) -> &'static str {
        self.into()
    }
}

#[cfg(feature = "serde")]
impl crate::fact::Value for Instrument {
    const SHAPE: crate::read::Shape = <Self as crate::read::Told>::SHAPE;
    type Out<'a> = &'static str;
    fn out(&self) -> &'static str {
        self.code()
    }
}

#[cfg(feature = "serde")]
crate::read::told! {
    Instrument => crate::read::Shape::Word(|| {
        <Instrument as strum::VariantNames>::VARIANTS.iter().copied().map(alloc::string::String::from).collect()
    }),
}

/// Declares questions: each with what answers it, which may be told from its values.
macro_rules! asks {
    ($( $(#[$meta:meta])* $name:ident { $( $(#[doc = $doc:literal])* $variant:ident $({ $($field:ident : $kind:ty),* $(,)? })? => $with:expr ,)* } )*) => {$(
        $crate::fact::facts! {
            $(#[$meta])*
            $name { $( $(#[doc = $doc])* $variant $({ $($field : $kind),* })?, )* }
        }

        impl $name {
            /// With what it is answered.
            #[must_use]
            #[allow(unused_variables, reason = "most are answered with one instrument whatever they hold")]
            pub fn with(&self) -> $crate::judge::Instrument {
                use $crate::judge::Instrument::*;
                match self { $( Self::$variant $({ $($field),* })? => $with, )* }
            }
        }
    )*};
}
pub(crate) use asks;
