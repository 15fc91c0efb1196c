//! The record as a letter to the customer: found, done, left and why, what to watch; as text, Markdown or HTML.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::amounts::{lies, two_to};
use super::drawing::Picture;
use super::html::{document, items, tag};
use super::photo::Embedded;
use super::text::{Paper, cell, count, list};
use crate::measure::{Outcome, Reading};
use crate::plan::{Caution, Found, Record, RecordEntry, State};

/// The letter before it is set.
struct Letter {
    title: String,
    /// Date and whether the data are invented, then the notes of the frame.
    about: Vec<String>,
    opening: String,
    places: Vec<Told>,
    /// Place, before, after, what came off.
    table: Vec<[String; 4]>,
    watch: Vec<&'static str>,
    weak: Option<String>,
}

/// What is told of one place.
struct Told {
    title: String,
    /// A label and its text.
    lines: Vec<(&'static str, String)>,
    entry: usize,
}

/// The state of a place for somebody who does not know the trade.
const fn state(state: State) -> &'static str {
    match state {
        State::NotMeasured => "not looked at",
        State::Open => "not settled yet",
        State::ToDo => "to be worked on",
        State::Done => "put right",
        State::Out => "cannot be put right here",
        State::Leave => "good as it is",
        State::Refer => "for the frame maker or a qualified builder",
    }
}

/// What a caution means for who rides it.
const fn watch(caution: Caution) -> Option<&'static str> {
    match caution {
        Caution::MakersLimits => {
            Some("What the makers of frame and parts have written comes before anything here.")
        }
        Caution::Brakes => {
            Some("Brakes: try them at walking pace before the first ride, and again after it.")
        }
        Caution::Steering => {
            Some("Steering: if anything knocks or binds, do not ride; have it looked at.")
        }
        Caution::Seatpost => Some(
            "Seatpost: push it in at least to its own mark and to the depth that the frame maker asks for.",
        ),
        Caution::Carbon | Caution::BondedInsert => Some(
            "Carbon: a knock or a crack that you can see or hear is for the frame maker to judge.",
        ),
        Caution::CarbonPost => {
            Some("Carbon post: assembly paste, no grease, and the torque that its maker prints.")
        }
        Caution::Cutting
        | Caution::Titanium
        | Caution::TurnOneWay
        | Caution::Dust
        | Caution::WeakFigures => None,
    }
}

impl Letter {
    fn of(record: &Record) -> Self {
        let mut about = Vec::new();
        about.extend(record.date.iter().map(|date| format!("Measured {date}.")));
        if record.invented {
            about.push("The data are invented.".to_string());
        }
        about.extend(record.notes.iter().cloned());
        let entries = || record.entries.iter().enumerate();
        let mut watched: Vec<&'static str> =
            record.cautions.iter().filter_map(|c| watch(*c)).collect();
        watched.dedup();
        let weak: Vec<String> = record
            .weak_figures
            .iter()
            .map(ToString::to_string)
            .collect();
        Self {
            title: record.frame.clone(),
            about,
            opening: opening(record),
            places: entries().map(|(index, entry)| told(index, entry)).collect(),
            table: record.entries.iter().filter_map(row).collect(),
            watch: watched,
            weak: (!weak.is_empty()).then(|| {
                format!(
                    "These figures are trade practice or memory, not print: {}.",
                    weak.join("; ")
                )
            }),
        }
    }
}

fn opening(record: &Record) -> String {
    let of = |wanted: State| -> Vec<String> {
        let entries = record.entries.iter().filter(|e| e.now.state == wanted);
        entries.map(|e| e.now.name.clone()).collect()
    };
    let mut out = format!(
        "We looked at {} of this frame.",
        count(record.entries.len(), "place")
    );
    for wanted in [
        State::Done,
        State::Leave,
        State::ToDo,
        State::Open,
        State::Refer,
        State::Out,
    ] {
        let names = of(wanted);
        if !names.is_empty() {
            out.push_str(&format!(
                " {}: {}.",
                super::text::capital(state(wanted)),
                list(&names)
            ));
        }
    }
    out
}

/// A finding for somebody who does not know the trade: what was read, and whether that is as it should be.
fn plain(found: &Found) -> String {
    let Some(read) = in_figures(found) else {
        return format!("{}: {found}", found.what());
    };
    let how = match found.outcome {
        Some(Outcome::ConformityShown) => ", as it should be",
        Some(Outcome::NonconformityShown) => ", not as it should be",
        Some(Outcome::Undecided) => ", too close to tell, or read over paint",
        None => "",
    };
    format!("{}: {read}{how}", found.what())
}

fn told(index: usize, entry: &RecordEntry) -> Told {
    let mut lines = Vec::new();
    let said = plain;
    let first = entry.before.iter().find(|f| in_figures(f).is_some());
    let out = |f: &&Found| f.outcome == Some(Outcome::NonconformityShown);
    for found in first.into_iter().chain(entry.before.iter().filter(out)) {
        let words = said(found);
        if !lines.iter().any(|(_, known)| *known == words) {
            lines.push(("found", words));
        }
    }
    if entry.now.worked {
        let done = entry.planned.iter().map(ToString::to_string);
        lines.extend(done.map(|words| ("done", words)));
        let after = entry.after().iter().find(|f| !f.readings.is_empty());
        lines.extend(after.map(|f| ("now", said(f))));
        lines.extend(entry.after().iter().filter(out).map(|f| ("now", said(f))));
    }
    if entry.too_much {
        lines.push(("now", "more came off than was planned".to_string()));
    }
    let all = [
        ("not clear", &entry.now.contradictions),
        ("left", &entry.now.leave),
        ("could cure it", &entry.now.cures),
    ];
    for (label, facts) in all {
        lines.extend(facts.iter().map(|fact| (label, fact.to_string())));
    }
    lines.extend(
        entry
            .left_to_do
            .iter()
            .map(|task| ("still to do", task.to_string())),
    );
    lines.extend(
        entry
            .asked
            .iter()
            .map(|ask| ("we still ask", ask.to_string())),
    );
    lines.extend(entry.now.notes.iter().map(|note| ("note", note.clone())));
    let photos = entry.now.photos.iter().map(super::photo::words);
    lines.extend(photos.map(|photo| (PHOTOGRAPH, photo)));
    Told {
        title: format!("{}: {}", entry.now.name, state(entry.now.state)),
        lines,
        entry: index,
    }
}

/// What was read, in figures.
fn in_figures(found: &Found) -> Option<String> {
    lies(&found.fact, " mm").or_else(|| between(&found.readings))
}

/// Before and after in figures, where both were read.
fn row(entry: &RecordEntry) -> Option<[String; 4]> {
    let both = |after: &Found| {
        let same = |before: &&Found| before.fact.code() == after.fact.code();
        let before = entry.before.iter().find(same)?;
        Some((in_figures(before)?, in_figures(after)?))
    };
    let (before, after) = entry.after().iter().find_map(both)?;
    let off = between(&entry.now.removed).unwrap_or_default();
    Some([entry.now.name.clone(), before, after, off])
}

fn between(readings: &[Reading]) -> Option<String> {
    let (low, high) = (readings.first()?, readings.last()?);
    Some(format!("{} mm", two_to(low.value(), high.value())))
}

const PHOTOGRAPH: &str = "photograph";

const COLUMNS: [&str; 4] = ["place", "before", "after", "came off"];

/// The letter in plain text.
///
/// ```
/// use framegauge::{plan::{FrameSheet, record}, say, standard::Tables};
/// let page = say::record(&record(&FrameSheet { frame: "no. 4".into(), ..FrameSheet::default() }, Tables::ours()));
/// assert!(page.starts_with("no. 4\n"));
/// ```
#[must_use]
pub fn record(record: &Record) -> String {
    let letter = Letter::of(record);
    let mut page = Paper::default();
    page.para("", &letter.title);
    letter.about.iter().for_each(|line| page.para("", line));
    page.line("");
    page.para("", &letter.opening);
    for place in &letter.places {
        page.line("");
        page.para("", &place.title);
        for (label, words) in &place.lines {
            page.para(&format!("  {label:<14}"), words);
        }
    }
    if !letter.table.is_empty() {
        page.line("");
        for row in core::iter::once(&COLUMNS.map(String::from)).chain(&letter.table) {
            let [place, before, after, off] = row;
            page.line(&format!("{place:<30} {before:<38} {after:<38} {off}"));
        }
    }
    page.line("");
    letter.watch.iter().for_each(|line| page.para("", line));
    letter.weak.iter().for_each(|line| page.para("", line));
    page.done()
}

/// The letter in Markdown.
///
/// ```
/// use framegauge::{plan::{FrameSheet, record}, say, standard::Tables};
/// let page = say::markdown(&record(&FrameSheet { frame: "no. <4>".into(), ..FrameSheet::default() }, Tables::ours()));
/// assert!(page.starts_with("# no. &lt;4&gt;\n"));
/// ```
#[must_use]
pub fn markdown(record: &Record) -> String {
    let letter = Letter::of(record);
    let mut page = format!("# {}\n", cell(&letter.title));
    for line in letter.about.iter().chain([&letter.opening]) {
        page.push_str(&format!("\n{}\n", cell(line)));
    }
    for place in &letter.places {
        page.push_str(&format!("\n## {}\n\n", cell(&place.title)));
        for (label, words) in &place.lines {
            page.push_str(&format!("- {label}: {}\n", cell(words)));
        }
    }
    if !letter.table.is_empty() {
        page.push_str(&format!(
            "\n| {} |\n|---|---|---|---|\n",
            COLUMNS.join(" | ")
        ));
        for row in &letter.table {
            let cells: Vec<String> = row.iter().map(|text| cell(text)).collect();
            page.push_str(&format!("| {} |\n", cells.join(" | ")));
        }
    }
    page.push_str("\n## What to watch\n\n");
    letter
        .watch
        .iter()
        .for_each(|line| page.push_str(&format!("- {line}\n")));
    letter
        .weak
        .iter()
        .for_each(|line| page.push_str(&format!("\n{}\n", cell(line))));
    page
}

/// The letter as a page of HTML with the drawings of the faces and the photographs that the caller has read; nothing is
/// fetched, no script runs. A photograph that was not read is named.
///
/// ```
/// use framegauge::{plan::{FrameSheet, record}, say, standard::Tables};
/// let sheet = FrameSheet { frame: "no. <4>".into(), ..FrameSheet::default() };
/// assert!(say::letter(&record(&sheet, Tables::ours()), &[], &[]).contains("<h1>no. &lt;4&gt;</h1>"));
/// ```
#[must_use]
pub fn letter(record: &Record, pictures: &[Picture], photos: &[Embedded]) -> String {
    let letter = Letter::of(record);
    let mut out = String::new();
    tag(&mut out, "h1", &letter.title);
    for line in letter.about.iter().chain([&letter.opening]) {
        tag(&mut out, "p", line);
    }
    for place in &letter.places {
        out.push_str("<section class=\"job\">\n");
        let here = record.entries.get(place.entry).map(|entry| &entry.now);
        let at = here.map(|report| &report.place);
        for picture in pictures.iter().filter(|p| Some(&p.place) == at) {
            out.push_str(&format!("<div class=\"pic\">{}</div>\n", picture.svg));
        }
        tag(&mut out, "h2", &place.title);
        let lines: Vec<String> = place
            .lines
            .iter()
            .filter(|(label, _)| *label != PHOTOGRAPH)
            .map(|(label, words)| format!("{label}: {words}"))
            .collect();
        items(&mut out, lines.iter().map(String::as_str));
        for photo in here.iter().flat_map(|report| &report.photos) {
            super::photo::figure(&mut out, photo, photos);
        }
        out.push_str("</section>\n");
    }
    if !letter.table.is_empty() {
        out.push_str("<table>\n<tr>");
        COLUMNS.iter().for_each(|head| tag(&mut out, "th", head));
        out.push_str("</tr>\n");
        for row in &letter.table {
            out.push_str("<tr>");
            row.iter().for_each(|text| tag(&mut out, "td", text));
            out.push_str("</tr>\n");
        }
        out.push_str("</table>\n");
    }
    tag(&mut out, "h2", "What to watch");
    items(&mut out, letter.watch.iter().copied());
    letter.weak.iter().for_each(|line| tag(&mut out, "p", line));
    document(&record.frame, &out)
}
