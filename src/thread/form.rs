//! Thread forms. Relations of one form must never be applied to a size of another.

/// The profile of a thread.
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
