//! How much of a thread still bears: flank engagement from actual diameters, in both percent conventions.

use super::{ThreadForm, ThreadSize};
use crate::measure::settled_cmp;
use crate::quantity::{BoreDiameter, Length, ShaftDiameter, mm, to_mm};
use crate::{Error, ErrorKind};

/// Two conventions go by the name "percent of thread". The same hole is 75 % in one and 91 % in the other.
///
/// ```
/// use framegauge::thread::PercentConvention;
/// assert_eq!("tap_drill_table".parse::<PercentConvention>().unwrap(), PercentConvention::TapDrillTable);
/// ```
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum PercentConvention {
    /// 100 % is the basic thread height: 5H/8 for ISO and Unified (1.08253 P on diameter), the full depth for BSC and
    /// Whitworth. Reached at the basic minor diameter.
    BasicHeight,
    /// 100 % is 1.299 P on diameter (3H/4 twice): tap-drill tables and United States shops. ISO and Unified only.
    TapDrillTable,
}

/// Diametral height that counts as 100 %.
fn full(size: &ThreadSize, convention: PercentConvention) -> Result<f64, Error> {
    let unknown = || {
        Error::new(
            ErrorKind::NotApplicable,
            "thread form",
            size,
            "the height of this thread is not known",
            "name the form, e.g. `1.370 in x 24 tpi BSC`",
        )
    };
    let profile = size.form().profile().ok_or_else(unknown)?;
    let factor = match (convention, size.form()) {
        (PercentConvention::BasicHeight, _) => profile.to_minor,
        (
            PercentConvention::TapDrillTable,
            ThreadForm::IsoMetric | ThreadForm::IsoInch | ThreadForm::Unified,
        ) => 2.0 * profile.to_pitch_diameter,
        (PercentConvention::TapDrillTable, _) => {
            return Err(Error::new(
                ErrorKind::NotApplicable,
                "percent convention",
                convention,
                "tap-drill tables count ISO and Unified threads only",
                "use the basic height of the form",
            ));
        }
    };
    Ok(factor * size.pitch().to_mm())
}

/// Percent of thread left between an actual outside diameter and an actual bore. May exceed 100; never below 0.
///
/// # Errors
/// `NotFinite` and `OutOfRange` for diameters that are none; `NotApplicable` for the unknown form and for a convention
/// that does not count this form.
///
/// ```
/// use framegauge::{BoreDiameter, ShaftDiameter, inch, thread::{PercentConvention, thread_percent}};
/// let size = "1/4-20 UN".parse().unwrap();
/// let (screw, bore) = (ShaftDiameter::new(inch(0.25)).unwrap(), BoreDiameter::new(inch(0.201)).unwrap());
/// let of = |convention| thread_percent(&size, screw, bore, convention).unwrap();
/// assert!((of(PercentConvention::TapDrillTable) - 75.44).abs() < 0.01);
/// assert!((of(PercentConvention::BasicHeight) - 90.53).abs() < 0.01);
/// ```
pub fn thread_percent(
    size: &ThreadSize,
    screw_major: ShaftDiameter,
    bore: BoreDiameter,
    convention: PercentConvention,
) -> Result<f64, Error> {
    let height = to_mm(screw_major.length()) - to_mm(bore.length());
    Ok(libm::fmax(100.0 * height / full(size, convention)?, 0.0))
}

/// The bore that leaves a percent of thread under an actual outside diameter.
///
/// # Errors
/// As [`thread_percent`]; `OutOfRange` outside 1 to 110 percent.
///
/// ```
/// use framegauge::{ShaftDiameter, in_mm, mm, thread::{PercentConvention, bore_for_percent}};
/// let bolt = ShaftDiameter::new(mm(8.0)).unwrap();
/// let bore = bore_for_percent(&"M8x1.25".parse().unwrap(), bolt, 73.90, PercentConvention::TapDrillTable).unwrap();
/// assert_eq!(format!("{:.2}", in_mm(bore)), "6.80 mm");
/// ```
pub fn bore_for_percent(
    size: &ThreadSize,
    screw_major: ShaftDiameter,
    percent: f64,
    convention: PercentConvention,
) -> Result<Length, Error> {
    if !percent.is_finite() {
        return Err(Error::new(
            ErrorKind::NotFinite,
            "percent",
            percent,
            "must be a finite number",
            "give e.g. 75",
        ));
    }
    if !(1.0..=110.0).contains(&percent) {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            "percent",
            percent,
            "no thread is cut to this height",
            "1 to 110 percent",
        ));
    }
    Ok(screw_major.length() - mm(full(size, convention)? * percent / 100.0))
}

/// What still bears between a screw and a hole.
///
/// ```
/// use framegauge::{BoreDiameter, ShaftDiameter, mm, thread::flank_engagement};
/// let worn = flank_engagement(&"M35x1".parse().unwrap(), ShaftDiameter::new(mm(34.8)).unwrap(), BoreDiameter::new(mm(34.4)).unwrap()).unwrap();
/// assert!(worn.percent_of_basic_height < 40.0);
/// assert!(worn.caution.contains("NOT GO"));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct FlankEngagement {
    /// Radial depth over which the flanks overlap, at most the basic height.
    #[cfg_attr(
        feature = "serde",
        serde(rename = "depth_mm", serialize_with = "crate::quantity::serial::as_mm")
    )]
    pub depth: Length,
    /// The basic height of the form (5H/8 for ISO and Unified).
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "basic_height_mm",
            serialize_with = "crate::quantity::serial::as_mm"
        )
    )]
    pub basic_height: Length,
    /// Depth as percent of the basic height, 0 to 100.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "super::round::three_places")
    )]
    pub percent_of_basic_height: f64,
    /// What these two diameters cannot show.
    pub caution: &'static str,
}

/// What still bears between an actual outside diameter and an actual bore: radial overlap, capped at the basic height.
///
/// # Errors
/// As [`thread_percent`].
///
/// ```
/// use framegauge::{BoreDiameter, ShaftDiameter, in_mm, mm, thread::flank_engagement};
/// // A hanger at the largest permitted bore still keeps 78 % under a full bolt:
/// let bolt = ShaftDiameter::new(mm(10.0)).unwrap();
/// let bore = BoreDiameter::new(mm(9.153)).unwrap();
/// let left = flank_engagement(&"M10x1".parse().unwrap(), bolt, bore).unwrap();
/// assert!((left.percent_of_basic_height - 78.2).abs() < 0.1);
/// ```
pub fn flank_engagement(
    size: &ThreadSize,
    screw_major: ShaftDiameter,
    bore: BoreDiameter,
) -> Result<FlankEngagement, Error> {
    let basic = mm(full(size, PercentConvention::BasicHeight)? / 2.0);
    let overlap = (screw_major.length() - bore.length()) / 2.0;
    let depth = if settled_cmp(overlap, mm(0.0)) == core::cmp::Ordering::Less {
        mm(0.0)
    } else if settled_cmp(overlap, basic) == core::cmp::Ordering::Greater {
        basic
    } else {
        overlap
    };
    Ok(FlankEngagement {
        depth,
        basic_height: basic,
        percent_of_basic_height: 100.0 * depth.value / basic.value,
        caution: FlankEngagement::CAUTION,
    })
}
