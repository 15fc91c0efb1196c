//! Small helpers for sentences.

use alloc::string::{String, ToString};

/// The text with a capital first letter.
pub(crate) fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars
        .next()
        .map(|c| c.to_uppercase().to_string() + chars.as_str())
        .unwrap_or_default()
}
