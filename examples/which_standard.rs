//! Which standard is this? `which_standard shell bore="33.9 +/- 0.05 mm" pitch="24 tpi" hand_drive=left label=BSA`
//!
//! The first word names the place, the others are observations: `name=value`. `--tool` names an instrument at hand
//! (several allowed), `--unfinished` says that a head tube still has to be reamed.

mod support;

use std::process::ExitCode;

use framegauge::identify::{Observation, Options, Outcome, identify};
use framegauge::standard::Place;
use framegauge::{Error, ErrorKind};
use support::{Answer, Words, answer};

const EXAMPLE: &str =
    "which_standard shell \"bore=33.9 +/- 0.05 mm\" \"pitch=24 tpi\" hand_drive=left";

fn main() -> ExitCode {
    answer(|| {
        let words = Words::read(&["tool"], &["unfinished"])?;
        let place: Place = words.at(0, "place", EXAMPLE)?.parse()?;
        let mut seen = Vec::new();
        for word in words.plain().iter().skip(1) {
            let (key, value) = word.split_once('=').ok_or_else(|| {
                Error::new(
                    ErrorKind::Text,
                    "observation",
                    word,
                    "no `=` in it",
                    format!("for example: {EXAMPLE}"),
                )
            })?;
            seen.push(Observation::read(key, value)?);
        }
        let tools = words.all("tool");
        let options = Options {
            tools: &tools,
            unfinished: words.flag("unfinished"),
            ..Options::default()
        };
        let found = identify(place, &seen, &options)?;

        let mut text = format!("{}\n", found.words());
        for candidate in found.candidates.iter().filter(|c| c.share >= 0.001) {
            text.push_str(&format!(
                "  {:<24} {:5.1} %\n",
                candidate.code,
                candidate.share * 100.0
            ));
        }
        for next in &found.next {
            let by = next.instrument.as_deref().unwrap_or("by eye or hand");
            text.push_str(&format!(
                "next: {} ({by}), {:.2} bit\n",
                next.measure.words(),
                next.bits
            ));
        }
        for note in &found.notes {
            text.push_str(&format!("note: {note}\n"));
        }
        let acceptable = matches!(found.outcome, Outcome::Identified { .. }) || found.interchange;
        Ok(Answer::new(&found, text, acceptable))
    })
}
