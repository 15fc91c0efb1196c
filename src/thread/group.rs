//! Groups of engagement length: what the grades of a class are meant for.

use super::limits::{micrometres, missing, pitch_um};
use super::tables::cite;
use super::{IsoClass, ThreadForm, ThreadSize, iso965};
use crate::evidence::Evidence;
use crate::quantity::{Length, mm};
use crate::{Error, ErrorKind};

/// Group of a length of engagement (ISO 965-1): the grades of a class are meant for the normal one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum EngagementGroup {
    /// S.
    Short,
    /// N: what 6H/6g is meant for.
    Normal,
    /// L: pitch error adds up, and one grade wider (7H, 7g6g) is recommended (from memory).
    Long,
}

impl EngagementGroup {
    /// The letter of the standard.
    ///
    /// ```
    /// assert_eq!(framegauge::thread::EngagementGroup::Long.letter(), 'L');
    /// ```
    #[must_use]
    pub const fn letter(self) -> char {
        match self {
            Self::Short => 'S',
            Self::Normal => 'N',
            Self::Long => 'L',
        }
    }
}

/// A length of engagement with the bounds of the normal group.
///
/// ```
/// use framegauge::{in_mm, mm, thread::engagement_group};
/// let found = engagement_group(&"M10x1".parse().unwrap(), mm(8.0)).unwrap();
/// assert_eq!(in_mm(found.normal_up_to).to_string(), "9.000 mm");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Engagement {
    /// The group it belongs to.
    pub group: EngagementGroup,
    /// The short group reaches up to and including this length.
    pub short_up_to: Length,
    /// The normal group reaches up to and including this length.
    pub normal_up_to: Length,
    /// What the bounds rest on.
    pub evidence: &'static Evidence,
}

/// The group a length of engagement belongs to (ISO 965-1, Table 2; by its formula where the table is silent).
///
/// # Errors
/// `NotFinite` and `OutOfRange` for a length that is none; `NotApplicable` for forms other than ISO;
/// `NotTabulated` outside the diameter ranges.
///
/// ```
/// use framegauge::{mm, thread::{EngagementGroup, engagement_group}};
/// // More than 12 mm of a 35 mm thread of 1 mm pitch is already long:
/// let found = engagement_group(&"M35x1".parse().unwrap(), mm(13.0)).unwrap();
/// assert_eq!(found.group, EngagementGroup::Long);
/// ```
pub fn engagement_group(size: &ThreadSize, length: Length) -> Result<Engagement, Error> {
    let length = crate::quantity::Depth::new(length)?.length();
    if !matches!(size.form(), ThreadForm::IsoMetric | ThreadForm::IsoInch) {
        return Err(Error::new(
            ErrorKind::NotApplicable,
            "thread form",
            size,
            "engagement groups S, N and L belong to ISO threads",
            "Unified tolerances assume a length by their series",
        ));
    }
    let key = (size.form() == ThreadForm::IsoMetric)
        .then(|| pitch_um(size))
        .flatten();
    let Some((short, normal, tabulated)) =
        iso965::engagement(micrometres(size.major()), key, size.pitch().to_mm())
    else {
        return Err(missing(
            iso965::Missing::Diameter,
            size,
            IsoClass::USUAL_INTERNAL,
        ));
    };
    let within =
        |limit: f64| crate::measure::settled_cmp(length, mm(limit)) != core::cmp::Ordering::Greater;
    Ok(Engagement {
        group: if within(short) {
            EngagementGroup::Short
        } else if within(normal) {
            EngagementGroup::Normal
        } else {
            EngagementGroup::Long
        },
        short_up_to: mm(short),
        normal_up_to: mm(normal),
        evidence: if tabulated {
            &cite::ISO_ENGAGEMENT
        } else {
            &cite::ISO_ENGAGEMENT_DERIVED
        },
    })
}

#[cfg(feature = "serde")]
impl serde::Serialize for Engagement {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use crate::quantity::settled_mm;
        crate::quantity::serial::serialized!(
            serializer,
            Engagement {
                group: self.group,
                short_up_to_mm: settled_mm(self.short_up_to),
                normal_up_to_mm: settled_mm(self.normal_up_to),
                evidence: self.evidence,
            }
        )
    }
}
