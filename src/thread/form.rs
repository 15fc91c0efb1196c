//! Thread forms. Relations of one form must never be applied to a size of another.

use crate::quantity::{Angle, deg};

/// The profile of a thread.
///
/// ```
/// use framegauge::thread::ThreadForm;
/// assert_eq!("bsc".parse::<ThreadForm>().unwrap(), ThreadForm::Bsc);
/// assert!(ThreadForm::Unknown.included_angle().is_none());
/// ```
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    strum::Display,
    strum::EnumString,
    strum::EnumIter,
    strum::IntoStaticStr,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum ThreadForm {
    /// ISO 68-1, 60 degrees, metric pitch.
    IsoMetric,
    /// ISO 68-1 profile at an inch pitch, as the scope of ISO 6696 states for bottom-bracket threads.
    IsoInch,
    /// Unified, 60 degrees (ASME B1.1).
    Unified,
    /// British Standard Cycle (BS 811; also CEI, JIS BC, DIN FG): 60 degrees, crest and root rounded to P/6.
    Bsc,
    /// Whitworth (BS 84), 55 degrees.
    Whitworth,
    /// The flank angle is not settled by any source; nothing may be derived from it.
    Unknown,
}

impl ThreadForm {
    /// Angle between the flanks; `None` for the unknown form.
    ///
    /// Sources: ISO 68-1 and ASME B1.1 (60°), BS 811 and JIS B 0225 (60°), BS 84 (55°).
    ///
    /// ```
    /// use framegauge::{deg, thread::ThreadForm};
    /// assert_eq!(ThreadForm::Whitworth.included_angle(), Some(deg(55.0)));
    /// ```
    #[must_use]
    pub const fn included_angle(self) -> Option<Angle> {
        match self.profile() {
            Some(profile) => Some(deg(profile.included_deg)),
            None => None,
        }
    }

    /// The word that ends a designation; empty where the designation needs none.
    pub(super) const fn mark(self) -> &'static str {
        match self {
            Self::IsoMetric | Self::Unknown => "",
            Self::IsoInch => "ISO",
            Self::Unified => "UN",
            Self::Bsc => "BSC",
            Self::Whitworth => "BSW",
        }
    }

    /// The proportions of the profile. Private: they are reached only through a size, so that no relation meets a
    /// size of another form.
    pub(super) const fn profile(self) -> Option<Profile> {
        match self {
            Self::IsoMetric | Self::IsoInch | Self::Unified => Some(SHARP_60),
            Self::Bsc => Some(ROUND_60),
            Self::Whitworth => Some(ROUND_55),
            Self::Unknown => None,
        }
    }
}

/// Proportions of a profile, as multiples of the pitch.
#[derive(Debug, Clone, Copy)]
pub(super) struct Profile {
    /// Angle between the flanks, degrees.
    pub included_deg: f64,
    /// Basic major diameter less the minor diameter of a root rounded to H/6, where the form has one.
    pub to_rounded_root: Option<f64>,
    /// Basic major less basic pitch diameter.
    pub to_pitch_diameter: f64,
    /// Basic major less basic minor diameter.
    pub to_minor: f64,
    /// Height of the crest above the apex of the sharp groove.
    pub crest_height: f64,
    /// Height of the highest point of the straight flank above that apex.
    pub flank_end: f64,
    /// Cotangent of half the included angle.
    pub cot_half: f64,
    /// Sine of half the included angle.
    pub sin_half: f64,
    /// Cosine of half the included angle.
    pub cos_half: f64,
}

/// √3 / 2.
const HALF_ROOT_3: f64 = 0.866_025_403_784_438_6;
/// cot 27.5°.
const COT_27_5: f64 = 1.920_982_126_971_166;

/// ISO 68-1 and ASME B1.1: H = √3/2 P, D2 = D − 3H/4, D1 = D − 5H/4, d3 = d1 − H/6.
const SHARP_60: Profile = Profile {
    included_deg: 60.0,
    to_rounded_root: Some(17.0 / 12.0 * HALF_ROOT_3),
    to_pitch_diameter: 0.75 * HALF_ROOT_3,
    to_minor: 1.25 * HALF_ROOT_3,
    crest_height: 0.875 * HALF_ROOT_3,
    flank_end: 0.875 * HALF_ROOT_3,
    cot_half: 2.0 * HALF_ROOT_3,
    sin_half: 0.5,
    cos_half: HALF_ROOT_3,
};

/// BS 811 / JIS B 0225: crests and roots rounded to P/6, so the depth is (√3/2 − 1/3) P.
const ROUND_60: Profile = Profile {
    included_deg: 60.0,
    to_rounded_root: None,
    to_pitch_diameter: HALF_ROOT_3 - 1.0 / 3.0,
    to_minor: 2.0 * (HALF_ROOT_3 - 1.0 / 3.0),
    crest_height: HALF_ROOT_3 - 1.0 / 6.0,
    // The rounding of radius P/6 meets the flank at P/6 (1 - sin 30°) below the crest.
    flank_end: HALF_ROOT_3 - 1.0 / 6.0 - 1.0 / 12.0,
    cot_half: 2.0 * HALF_ROOT_3,
    sin_half: 0.5,
    cos_half: HALF_ROOT_3,
};

/// BS 84: H = cot(27.5°)/2 P, depth 2H/3.
const ROUND_55: Profile = Profile {
    included_deg: 55.0,
    to_rounded_root: None,
    to_pitch_diameter: COT_27_5 / 3.0,
    to_minor: 2.0 * COT_27_5 / 3.0,
    crest_height: 5.0 * COT_27_5 / 12.0,
    // The rounding of radius 0.137329 P meets the flank at r (1 - sin 27.5°) below the crest.
    flank_end: 5.0 * COT_27_5 / 12.0 - 0.137_329 * (1.0 - 0.461_748_613_235_033_9),
    cot_half: COT_27_5,
    sin_half: 0.461_748_613_235_033_9,
    cos_half: 0.887_010_833_178_221_7,
};

impl Profile {
    /// Depth over which the flanks of basic sizes overlap, as a multiple of the pitch.
    pub const fn engaged_depth(self) -> f64 {
        self.to_minor / 2.0
    }
}
