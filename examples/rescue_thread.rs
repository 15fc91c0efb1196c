//! What is left to do for a damaged thread or bore, in order of caution; or the order of checks for a symptom.
//!
//! - `rescue_thread "M10x1" stripped --outside "18 +/- 0.2 mm"`
//! - `rescue_thread shell=bsc drive stripped --to "36 mm x 24 tpi" --outside "40 +/- 0.1 mm"`
//! - `rescue_thread joint=head_cup loose --hole "34.06 +/- 0.01 mm" --part "34.00 +/- 0.01 mm" --press "0.05 mm" --compound "0.10 mm"`
//! - `rescue_thread symptom=jams_after_turns`
//!
//! `--material steel|stainless|aluminium|titanium|metal|plastic|carbon`. Exit 0: something but referring is possible as it
//! stands; 1: not before more is measured; 2: no sense in the question.

mod support;

use std::process::ExitCode;

use framegauge::fit::MaterialKind;
use framegauge::judge::pattern_threads;
use framegauge::measure::Reading;
use framegauge::rescue::{
    BoreRescue, Damage, Rescue, Stand, Step, Symptom, ThreadRescue, diagnose,
};
use framegauge::standard::{Joint, Shell, Tables, find};
use framegauge::thread::Side;
use framegauge::{Error, ErrorKind, parse_length};
use support::{Answer, Words, answer};

fn word<T: core::str::FromStr>(field: &'static str, text: &str, known: &str) -> Result<T, Error> {
    text.parse().map_err(|_| {
        Error::new(
            ErrorKind::UnknownName,
            field,
            text,
            "no such word",
            format!("one of {known}"),
        )
    })
}

fn damage(words: &Words, at: usize) -> Result<Damage, Error> {
    word(
        "damage",
        words.at(at, "damage", "stripped")?,
        "worn, over_cut, stripped, cross_cut, swapped, over_bored, oval, pinched, loose, seized",
    )
}

fn material(words: &Words) -> Result<Option<MaterialKind>, Error> {
    words
        .named("material")
        .map(|text| {
            word(
                "material",
                text,
                "steel, stainless, aluminium, titanium, metal, plastic, carbon",
            )
        })
        .transpose()
}

fn reading(words: &Words, name: &str) -> Result<Option<Reading>, Error> {
    words
        .named(name)
        .map(|text| text.parse::<Reading>().map_err(|e| e.within(name)))
        .transpose()
}

fn rescue(words: &Words) -> Result<Rescue, Error> {
    let first = words.at(0, "thread", "M10x1 stripped")?;
    if let Some(joint) = first.strip_prefix("joint=") {
        let joint: Joint = word(
            "joint",
            joint,
            "head_cup, crown_race, seatpost, press_shell, direct_bearing, integrated_bearing, quill, other",
        )?;
        let mut ask = BoreRescue::new(joint, damage(words, 1)?);
        for text in words.all("hole") {
            ask.hole.push(text.parse()?);
        }
        ask.shaft = reading(words, "part")?;
        ask.outside = reading(words, "outside")?;
        ask.material = material(words)?;
        ask.wanted_interference = words.named("press").map(parse_length).transpose()?;
        ask.compound_gap = words.named("compound").map(parse_length).transpose()?;
        ask.sizes = words
            .all("size")
            .into_iter()
            .map(parse_length)
            .collect::<Result<_, _>>()?;
        return ask.options(Tables::ours());
    }
    let mut ask = if let Some(code) = first.strip_prefix("shell=") {
        let shell = pattern_threads(find::<Shell>(code)?)?;
        let side: Side = word("side", words.at(1, "side", "drive")?, "drive, non_drive")?;
        let thread = shell.side(side).ok_or_else(|| {
            Error::new(
                ErrorKind::Missing,
                "thread",
                code,
                "no thread on this side",
                "name a threaded shell",
            )
        })?;
        ThreadRescue::new(thread, damage(words, 2)?).in_shell(shell, side)
    } else {
        ThreadRescue::new(first.parse()?, damage(words, 1)?)
    };
    for text in words.all("to") {
        ask.to.push(text.parse()?);
    }
    ask.outside = reading(words, "outside")?;
    ask.bore = reading(words, "bore")?;
    ask.material = material(words)?;
    ask.options(Tables::ours())
}

fn main() -> ExitCode {
    answer(|| {
        let words = Words::read(
            &[
                "to", "outside", "bore", "material", "hole", "part", "press", "compound", "size",
            ],
            &[],
        )?;
        if let Some(name) = words
            .plain()
            .first()
            .and_then(|w| w.strip_prefix("symptom="))
        {
            let symptom: Symptom = word(
                "symptom",
                name,
                "jams_after_turns, loose_thread, will_not_unscrew, pressed_part_loose, runs_rough, spindle_binds, post_misfits, one_sided_wear, rotor_rubs, rocks",
            )?;
            let found = diagnose(symptom);
            return Ok(Answer::new(&found, found.to_string(), false));
        }
        let left = rescue(&words)?;
        let cures = left.options.iter().any(|o| {
            o.stand == Stand::Allowed && !matches!(o.step, Step::Clean | Step::Gauge | Step::Refer)
        });
        Ok(Answer::new(&left, left.to_string(), cures))
    })
}
