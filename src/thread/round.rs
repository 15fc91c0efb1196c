//! Numbers that are no lengths, settled before they are serialized.

use serde::{Serialize, Serializer};

fn settled(value: f64) -> f64 {
    libm::round(value * 1e3) / 1e3
}

/// Three places: turns and percents are not known better.
pub(super) fn three_places<S: Serializer>(value: &f64, serializer: S) -> Result<S::Ok, S::Error> {
    settled(*value).serialize(serializer)
}

/// As [`three_places`], or null.
pub(super) fn three_places_or_null<S: Serializer>(
    value: &Option<f64>,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    value.map(settled).serialize(serializer)
}
