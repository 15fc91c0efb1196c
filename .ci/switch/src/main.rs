//! Writes a copy of a source tree that holds every mutant at once, each behind a switch that the environment sets.
//!
//! `switch LIST FROM TO LEFT_OUT`: LIST is what `cargo mutants --list --json` says, FROM and TO are package folders, LEFT_OUT
//! is `{"ids": [..], "const": [..]}`, the mutants that are not wanted and the names of functions that have to stay `const`.
//! Says `{"places": [[file, from byte, to byte, id]..], "absent": [id..]}`: where each mutant stands, and which cannot.

mod find;
mod write;

use find::Finder;
use serde_json::{Value, json};
use std::collections::{BTreeMap, HashMap, HashSet};
use std::error::Error;
use std::fs;
use syn::visit::Visit;

/// The genre of a mutant and where it begins, line and column from 1: the mutants there, each with its replacement.
pub type Wanted = HashMap<(String, usize, usize), Vec<(usize, String)>>;

fn number(value: &Value) -> usize {
    value.as_u64().unwrap_or_default() as usize
}

fn text(value: &Value) -> String {
    value.as_str().unwrap_or_default().to_owned()
}

fn entries(value: &Value) -> impl Iterator<Item = &Value> {
    value.as_array().into_iter().flatten()
}

fn main() -> Result<(), Box<dyn Error>> {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let [list, from, to, left_out] = arguments.as_slice() else {
        return Err("switch LIST FROM TO LEFT_OUT".into());
    };
    let list: Value = serde_json::from_str(&fs::read_to_string(list)?)?;
    let left_out: Value = serde_json::from_str(&fs::read_to_string(left_out)?)?;
    let unwanted: HashSet<usize> = entries(&left_out["ids"]).map(number).collect();
    let stay_const: HashSet<String> = entries(&left_out["const"]).map(text).collect();

    let mut files: BTreeMap<String, Wanted> = BTreeMap::new();
    for (id, mutant) in entries(&list).enumerate() {
        // A file whose mutants are all unwanted is written too: an earlier call may have left some in the copy.
        let wanted = files.entry(text(&mutant["file"])).or_default();
        if !unwanted.contains(&id) {
            let start = &mutant["span"]["start"];
            let place = (
                text(&mutant["genre"]),
                number(&start["line"]),
                number(&start["column"]),
            );
            wanted
                .entry(place)
                .or_default()
                .push((id, text(&mutant["replacement"])));
        }
    }

    let mut places = Vec::new();
    let mut absent = Vec::new();
    for (file, wanted) in files {
        let source = fs::read_to_string(format!("{from}/{file}"))?;
        let mut finder = Finder::new(&source, wanted, &stay_const);
        finder.visit_file(&syn::parse_file(&source)?);
        absent.extend(finder.absent());
        let written = write::with_switches(&source, finder.sites());
        fs::write(format!("{to}/{file}"), &written.text)?;
        places.extend(
            written
                .places
                .into_iter()
                .map(|(id, at)| json!([file, at.start, at.end, id])),
        );
    }
    println!("{}", json!({ "places": places, "absent": absent }));
    Ok(())
}
