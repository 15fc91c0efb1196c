//! Photographs of a letter: what the sheet names, and what its reader has read of it.

use alloc::format;
use alloc::string::String;

use super::html::tag;
use crate::evidence::escaped;
use crate::plan::{Photo, Taken};

/// What kind of picture a file holds, by its first bytes: what is none of these is not shown.
///
/// ```
/// use framegauge::say::ImageKind;
/// assert_eq!(ImageKind::of(b"\x89PNG\r\n\x1a\n"), Some(ImageKind::Png));
/// assert_eq!(ImageKind::of(b"<svg onload=..>"), None);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ImageKind {
    /// JPEG.
    Jpeg,
    /// PNG.
    Png,
    /// WebP.
    WebP,
}

impl ImageKind {
    /// What the first bytes say; `None` for anything else.
    #[must_use]
    pub fn of(bytes: &[u8]) -> Option<Self> {
        if bytes.starts_with(&[0xff, 0xd8, 0xff]) {
            Some(Self::Jpeg)
        } else if bytes.starts_with(b"\x89PNG\r\n\x1a\n") {
            Some(Self::Png)
        } else if bytes.starts_with(b"RIFF") && bytes.get(8..12) == Some(b"WEBP") {
            Some(Self::WebP)
        } else {
            None
        }
    }

    const fn mime(self) -> &'static str {
        match self {
            Self::Jpeg => "image/jpeg",
            Self::Png => "image/png",
            Self::WebP => "image/webp",
        }
    }
}

/// A photograph that the caller has read for a letter.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Embedded {
    /// The file, as the sheet names it.
    pub file: String,
    /// What kind of picture it is.
    pub kind: ImageKind,
    /// Its bytes in base64, without line breaks.
    pub base64: String,
}

/// A photograph in words: when, what it shows, its file.
pub(super) fn words(photo: &Photo) -> String {
    let when = match photo.when {
        Some(Taken::Before) => "before the work: ",
        Some(Taken::After) => "after the work: ",
        None => "",
    };
    match &photo.caption {
        Some(caption) => format!("{when}{caption} ({})", photo.file),
        None => format!("{when}{}", photo.file),
    }
}

/// A photograph with its caption; one that was not read is named.
pub(super) fn figure(out: &mut String, photo: &Photo, read: &[Embedded]) {
    out.push_str("<figure>\n");
    let caption = words(photo);
    match read.iter().find(|e| e.file == photo.file) {
        Some(image) => {
            let (mime, alt) = (image.kind.mime(), escaped(&caption));
            let data = escaped(&image.base64);
            out.push_str(&format!(
                "<img src=\"data:{mime};base64,{data}\" alt=\"{alt}\"/>\n"
            ));
            tag(out, "figcaption", &caption);
        }
        None => tag(out, "figcaption", &format!("{caption}: not in this letter")),
    }
    out.push_str("</figure>\n");
}
