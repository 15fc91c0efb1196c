//! Judges one interface. The first word names the question, the others are `name=value`:
//!
//! - `judge_interface fit crown_race "hole=29.92 +/- 0.03 mm" "shaft=30.02 +/- 0.03 mm"`
//!   (also `sold_as=27.2 mm`, `shell=pf30` in place of a joint, `felt=goes_by_hand`, `coated=hole`)
//! - `judge_interface threads "hole=M35x1" "part=1.370 in x 24 tpi BSC LH"`, `judge_interface shell_cups shell=french cups=bsc`
//! - `judge_interface cup_depth "bore=9 +/- 0.1 mm" "cup=12 +/- 0.1 mm"`
//! - `judge_interface post_depth "post=27.2 mm" "weld=50 mm" "inserted=95 +/- 1 mm" "mark=100 mm"`
//! - `judge_interface tube "outside=28.6 +/- 0.05 mm" "wall_min=0.6 mm" "wall_max=0.7 mm" "post=25.4 +/- 0.05 mm"`
//! - `judge_interface ream "outside=31.7 +/- 0.05 mm" "bore=29.7 +/- 0.05 mm" "to=30.1 mm"`
//! - `judge_interface head_tube "outside=31.7 +/- 0.05 mm" "wall=1.0 +/- 0.02 mm"`
//! - `judge_interface width "shell=71 +/- 0.1 mm" "made_for=68 mm"`, `judge_interface hub pattern=ta_12x142 "over_caps=…"`
//! - `judge_interface faces "parallelism=0.12 +/- 0.02 mm"` or `wear=yes`; `judge_interface mount`
//! - `judge_interface tap thread=M10x1 "hole=8.5 +/- 0.05 mm"`, `judge_interface tape "around=82 +/- 0.5 mm"`
//!
//! Exit 0: conformity shown; 1: not, or undecided; 2: no sense in the question.

mod support;

use std::process::ExitCode;

use framegauge::fit::{Feature, HoleMember, ShaftMember, SizeReading};
use framegauge::judge::{
    FitQuestion, Joint, PostDepth, Verdict, cup_depth, expected_post, head_tube_from_stock,
    hole_to_tap, hub_width, mount_square, parallel_faces, pattern_threads, post_by_tape, reaming,
    shell_and_part, spindle_for_width, thread_pair,
};
use framegauge::measure::{DecisionRule, Outcome, Reading};
use framegauge::standard::{Shell, find};
use framegauge::{Error, ErrorKind, Length, ShaftDiameter, parse_length};
use support::{Answer, Words, answer};

const QUESTIONS: &str = "fit, threads, shell_cups, cup_depth, post_depth, tube, ream, head_tube, width, hub, faces, mount, tap, tape";

/// The `name=value` words.
struct Given<'a>(Vec<(&'a str, &'a str)>);

impl<'a> Given<'a> {
    fn all(&self, name: &str) -> impl Iterator<Item = &'a str> {
        self.0
            .iter()
            .filter(move |(n, _)| *n == name)
            .map(|(_, v)| *v)
    }
    fn text(&self, name: &'static str) -> Result<&'a str, Error> {
        self.all(name).next().ok_or_else(|| {
            Error::new(
                ErrorKind::Missing,
                name,
                "",
                "not given",
                format!("write `{name}=…`"),
            )
        })
    }
    fn reading(&self, name: &'static str) -> Result<Reading, Error> {
        self.text(name)?
            .parse::<Reading>()
            .map_err(|e| e.within(name))
    }
    fn length(&self, name: &'static str) -> Result<Length, Error> {
        parse_length(self.text(name)?).map_err(|e| e.within(name))
    }
    fn maybe(&self, name: &'static str) -> Result<Option<Reading>, Error> {
        self.all(name)
            .next()
            .map(|text| text.parse::<Reading>().map_err(|e| e.within(name)))
            .transpose()
    }
    fn maybe_length(&self, name: &'static str) -> Result<Option<Length>, Error> {
        self.all(name)
            .next()
            .map(|text| parse_length(text).map_err(|e| e.within(name)))
            .transpose()
    }
    fn sizes(&self, name: &'static str) -> Result<Vec<SizeReading>, Error> {
        self.all(name)
            .map(|text| {
                text.parse()
                    .map(SizeReading::new)
                    .map_err(|e: Error| e.within(name))
            })
            .collect()
    }
}

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

fn fit(words: &Words, given: &Given<'_>) -> Result<Verdict, Error> {
    let mut ask = match given.all("shell").next() {
        Some(code) => FitQuestion::of_shell(find::<Shell>(code)?)?,
        None => FitQuestion::new(word::<Joint>(
            "joint",
            words.at(1, "joint", "crown_race")?,
            "head_cup, crown_race, seatpost, press_shell, direct_bearing, integrated_bearing, quill, other",
        )?),
    };
    let hole = given.sizes("hole")?;
    if let [only] = hole.as_slice() {
        ask = ask.hole_measured(only.size())?;
    } else if !hole.is_empty() {
        ask = ask.hole(HoleMember::measured_only(&hole)?);
    }
    let shaft = given.sizes("shaft")?;
    if !shaft.is_empty() {
        ask = ask.shaft(ShaftMember::measured_only(&shaft)?);
    }
    if let Some(nominal) = given.maybe_length("sold_as")? {
        ask = ask.sold_as(nominal);
    }
    for felt in given.all("felt") {
        ask = ask.felt(word(
            "felt",
            felt,
            "goes_by_hand, rocks, turned_in_use, needs_force, hole_loose_with_several, shaft_loose_in_several",
        )?);
    }
    for coated in given.all("coated") {
        ask = match coated {
            "hole" => ask.coated(Feature::Hole),
            "shaft" => ask.coated(Feature::Shaft),
            _ => {
                return Err(Error::new(
                    ErrorKind::UnknownName,
                    "coated",
                    coated,
                    "no such member",
                    "one of hole, shaft",
                ));
            }
        };
    }
    ask.judge()
}

fn judge(question: &str, words: &Words, given: &Given<'_>) -> Result<Verdict, Error> {
    let rule = DecisionRule::default();
    match question {
        "fit" => fit(words, given),
        "threads" => Ok(thread_pair(
            &given.text("hole")?.parse()?,
            &given.text("part")?.parse()?,
        )),
        "shell_cups" => Ok(shell_and_part(
            &pattern_threads(find::<Shell>(given.text("shell")?)?)?,
            &pattern_threads(find::<Shell>(given.text("cups")?)?)?,
        )),
        "cup_depth" => cup_depth(&given.reading("bore")?, &given.reading("cup")?, rule),
        "post_depth" => PostDepth {
            post: ShaftDiameter::new(given.length("post")?)?,
            weld: given.maybe_length("weld")?,
            makers: given
                .maybe_length("mark")?
                .map(|depth| ("the mark on the post".to_owned(), depth))
                .into_iter()
                .collect(),
            inserted: given.maybe("inserted")?,
        }
        .judge(),
        "tube" => {
            let used: Vec<Reading> = given.maybe("post")?.into_iter().collect();
            expected_post(
                &given.reading("outside")?,
                given.length("wall_min")?,
                given.length("wall_max")?,
                &used,
            )
        }
        "ream" => reaming(
            &given.reading("outside")?,
            &given.reading("bore")?,
            given.length("to")?,
        ),
        "head_tube" => head_tube_from_stock(&given.reading("outside")?, &given.reading("wall")?),
        "width" => spindle_for_width(&given.reading("shell")?, given.length("made_for")?),
        "hub" => hub_width(given.text("pattern")?, given.maybe("over_caps")?.as_ref()),
        "faces" => parallel_faces(
            given.maybe("parallelism")?.as_ref(),
            given.all("wear").any(|w| w == "yes"),
        ),
        "mount" => mount_square(given.maybe("tilt")?.as_ref()),
        "tap" => hole_to_tap(&given.text("thread")?.parse()?, &given.reading("hole")?),
        "tape" => post_by_tape(&given.reading("around")?),
        other => Err(Error::new(
            ErrorKind::UnknownName,
            "question",
            other,
            "no such question",
            format!("one of {QUESTIONS}"),
        )),
    }
}

fn main() -> ExitCode {
    answer(|| {
        let words = Words::read(&[], &[])?;
        let question = words.at(
            0,
            "question",
            "cup_depth \"bore=9 +/- 0.1 mm\" \"cup=12 +/- 0.1 mm\"",
        )?;
        let given = Given(
            words
                .plain()
                .iter()
                .filter_map(|w| w.split_once('='))
                .collect(),
        );
        let said = judge(question, &words, &given)?;
        Ok(Answer::new(
            &said,
            said.to_string(),
            said.outcome == Outcome::ConformityShown,
        ))
    })
}
