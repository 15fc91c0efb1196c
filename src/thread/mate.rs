//! Two threads against each other: do they mate, and if not, on which ground.

use core::cmp::Ordering;
use core::fmt;

use super::basic::{minor_span, pitch_diameter_span};
use super::{Designation, PitchDrift, ThreadForm, ThreadSize};
use crate::measure::settled_cmp;
use crate::quantity::{Length, mm};

/// Whether two threads mate.
///
/// ```
/// use framegauge::thread::{Mates, mismatch};
/// let of = |a: &str, b: &str| mismatch(&a.parse().unwrap(), &b.parse().unwrap()).mates;
/// assert_eq!(of("M10x1", "M10x1.25"), Mates::No);
/// assert_eq!(of("1 3/8 in x 26 tpi unknown form", "1 3/8 in x 26 tpi BSC"), Mates::CannotTell);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::IntoStaticStr)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Mates {
    /// Same pitch, hand and flank angle, and pitch diameters closer than the usual allowance.
    Yes,
    /// At least one ground stands against it.
    No,
    /// Nothing stands against it, but the form of one thread is not known.
    CannotTell,
}

/// The grounds on which two threads do not mate.
///
/// ```
/// use framegauge::thread::mismatch;
/// let grounds = mismatch(&"1/4-20 UN".parse().unwrap(), &"1/4-20 BSW".parse().unwrap()).grounds;
/// assert!(grounds.form && !grounds.pitch);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Grounds {
    /// The pitch diameters are too far apart.
    pub diameter: bool,
    /// The pitches differ.
    pub pitch: bool,
    /// The flank angles differ.
    pub form: bool,
    /// One is left-hand, the other right-hand.
    pub hand: bool,
}

impl Grounds {
    /// Whether any ground stands.
    #[must_use]
    pub const fn any(&self) -> bool {
        self.diameter || self.pitch || self.form || self.hand
    }
}

impl fmt::Display for Grounds {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut first = true;
        for (stands, word) in [
            (self.diameter, "diameter"),
            (self.pitch, "pitch"),
            (self.form, "flank angle"),
            (self.hand, "hand"),
        ] {
            if stands {
                write!(f, "{}{word}", if first { "" } else { ", " })?;
                first = false;
            }
        }
        Ok(())
    }
}

/// The answer to "do these two threads mate?". It does not depend on their order.
///
/// ```
/// use framegauge::{in_mm, thread::mismatch};
/// let found = mismatch(&"M35x1".parse().unwrap(), &"1.370-24 BSC".parse().unwrap());
/// assert_eq!(in_mm(found.apart_min).to_string(), "0.116 mm");
/// assert_eq!(found.wider.unwrap().to_string(), "M35x1");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Mismatch {
    /// The answer.
    pub mates: Mates,
    /// What stands against it.
    pub grounds: Grounds,
    /// Drift between the pitches.
    pub drift: PitchDrift,
    /// How far the basic pitch diameters are apart, at least; an unknown form leaves a span.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "pitch_diameters_apart_min_mm",
            serialize_with = "crate::quantity::serial::as_mm"
        )
    )]
    pub apart_min: Length,
    /// How far the basic pitch diameters are apart, at most.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "pitch_diameters_apart_max_mm",
            serialize_with = "crate::quantity::serial::as_mm"
        )
    )]
    pub apart_max: Length,
    /// The difference that the usual clearance of a screw (position g) takes up: 15 + 11 P µm (ISO 965-1).
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "allowance_mm",
            serialize_with = "crate::quantity::serial::as_mm"
        )
    )]
    pub allowance: Length,
    /// The thread that is wider at the pitch diameter, where that is certain: as the hole it lets the other start;
    /// the other way round nothing enters.
    pub wider: Option<ThreadSize>,
    /// Turns until the wrong pitch binds when the wider thread is the hole and both have basic size; `None` when the
    /// pitches are the same, and when the narrower thread passes through the wider one without reaching its threads.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "super::round::three_places_or_null")
    )]
    pub turns_until_binding: Option<f64>,
}

/// Whether two threads mate, by basic sizes.
///
/// Pitches must be the same, hands too; flank angles must not differ; and the pitch diameters may differ by no more than
/// the usual clearance of a screw. An equal-looking outside diameter proves nothing.
///
/// ```
/// use framegauge::thread::{Mates, mismatch};
/// let of = |a: &str, b: &str| mismatch(&a.parse().unwrap(), &b.parse().unwrap());
/// // Two names of one thread:
/// assert_eq!(of("1.370 in x 24 tpi BSC", "1.375 in x 24 tpi ISO").mates, Mates::Yes);
/// // An English cup in a French shell:
/// let forced = of("M35x1", "1.370 in x 24 tpi BSC LH");
/// assert_eq!(forced.grounds.to_string(), "diameter, pitch, hand");
/// assert!((forced.turns_until_binding.unwrap() - 1.15).abs() < 0.01);
/// ```
#[must_use]
pub fn mismatch(a: &Designation, b: &Designation) -> Mismatch {
    let drift = PitchDrift::between(a.size.pitch(), b.size.pitch());
    let (span_a, span_b) = (pitch_diameter_span(&a.size), pitch_diameter_span(&b.size));
    let gap = libm::fmax(span_a.0 - span_b.1, span_b.0 - span_a.1);
    let apart_min = mm(libm::fmax(gap, 0.0));
    let apart_max = mm(libm::fmax(span_a.1 - span_b.0, span_b.1 - span_a.0));
    let greater = |one: Length, other: Length| settled_cmp(one, other) == Ordering::Greater;
    let (wider, narrower) = if span_a.0 > span_b.1 {
        (a.size, b.size)
    } else {
        (b.size, a.size)
    };
    let wider = greater(apart_min, mm(0.0)).then_some(wider);
    // A screw that passes through the hole without reaching its threads binds nowhere.
    let reaches = wider.is_none_or(|hole| greater(narrower.major(), mm(minor_span(&hole).0)));
    let coarser = libm::fmax(a.size.pitch().to_mm(), b.size.pitch().to_mm());
    let allowance = mm((15.0 + 11.0 * coarser) / 1e3);
    let beyond = |apart: Length| greater(apart, allowance);
    let angles = (a.size.form().profile(), b.size.form().profile());
    let grounds = Grounds {
        diameter: beyond(apart_min),
        pitch: !drift.is_none(),
        form: matches!(angles, (Some(x), Some(y)) if x.included_deg != y.included_deg),
        hand: a.hand != b.hand,
    };
    // Of known forms the pitch diameters lie as far apart at most as at least.
    let certain = !beyond(apart_max);
    let sharper = if [a, b]
        .iter()
        .any(|d| d.size.form() == ThreadForm::Whitworth)
    {
        ThreadForm::Whitworth
    } else if let (Some(_), Some(_)) = angles {
        ThreadForm::IsoMetric
    } else {
        ThreadForm::Unknown
    };
    Mismatch {
        mates: if grounds.any() {
            Mates::No
        } else if certain {
            Mates::Yes
        } else {
            Mates::CannotTell
        },
        grounds,
        drift,
        apart_min,
        apart_max,
        allowance,
        wider,
        turns_until_binding: drift
            .turns_until_binding(apart_max, sharper)
            .ok()
            .flatten()
            .filter(|_| reaches),
    }
}
