//! The photographs that a sheet names, read from beside it and capped; nothing else is fetched.

use std::fs::File;
use std::io::Read;
use std::path::Path;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use framegauge::plan::Record;
use framegauge::say::{Embedded, ImageKind};

/// A photograph for a letter; a larger one makes the letter too heavy to send.
const LARGEST: u64 = 2 << 20;
/// All of them together.
const MOST: usize = 10 << 20;

/// Reads what can be shown, and tells on standard error what cannot.
pub fn read(sheet: &str, record: &Record) -> Vec<Embedded> {
    let folder = Path::new(sheet).parent().unwrap_or(Path::new(""));
    let (mut out, mut total) = (Vec::<Embedded>::new(), 0);
    let photos = record.entries.iter().flat_map(|entry| &entry.now.photos);
    for photo in photos {
        if out.iter().any(|known| known.file == photo.file) {
            continue;
        }
        match one(&folder.join(&photo.file), MOST - total) {
            Ok((kind, bytes)) => {
                total += bytes.len();
                out.push(Embedded {
                    file: photo.file.clone(),
                    kind,
                    base64: STANDARD.encode(bytes),
                });
            }
            Err(why) => eprintln!("photograph {}: {why}", photo.file),
        }
    }
    out
}

fn one(path: &Path, left: usize) -> Result<(ImageKind, Vec<u8>), String> {
    let unread = |e: std::io::Error| match e.kind() {
        std::io::ErrorKind::NotFound => "not found".to_owned(),
        _ => e.to_string(),
    };
    // Asked before it is opened: opening what is no file may wait for ever.
    if !std::fs::metadata(path).map_err(unread)?.is_file() {
        return Err("no file".into());
    }
    let file = File::open(path).map_err(unread)?;
    let mut bytes = Vec::new();
    file.take(LARGEST + 1)
        .read_to_end(&mut bytes)
        .map_err(unread)?;
    let kind = ImageKind::of(&bytes).ok_or("no JPEG, PNG or WebP")?;
    if bytes.len() as u64 > LARGEST {
        return Err("larger than 2 MB".into());
    }
    if bytes.len() > left {
        return Err("all photographs together are larger than 10 MB".into());
    }
    Ok((kind, bytes))
}
