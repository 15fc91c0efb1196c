//! The run over all drawn sheets, made once and asked by every test: what failed, what was seen.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use crate::case::{Case, Failure, Property};
use crate::draw::Frame;
use crate::leaf::{Sheet, Unit};
use crate::random::times;
use crate::{amounts, change, findings, more, safety};

/// Sheets of the usual run; `FUZZ_TIMES=50` makes a million of them.
pub const SHEETS: u32 = 20_000;

/// Every property by its name, and of how many sheets it is asked once.
pub const PROPERTIES: [(&str, u32, Property); 18] = [
    ("material", 1, safety::material),
    ("amounts", 1, amounts::amounts),
    ("refusals", 1, safety::refusals),
    ("findings", 1, findings::findings),
    ("heard", 1, findings::heard),
    ("pilots", 1, safety::pilots),
    ("honest", 1, more::honest),
    ("hands", 1, safety::hands),
    ("turning", 1, safety::turning),
    ("answer_fields", 1, more::answer_fields),
    // These plan once or more anew.
    ("telling", 32, more::telling),
    ("answers", 16, more::answers),
    ("shop_row", 16, more::shop_row),
    ("inches", 16, change::inches),
    ("order", 16, change::order),
    ("sides", 16, change::sides),
    ("doubt", 16, change::doubt),
    ("again", 64, again),
];

/// A plan made twice is the same plan.
fn again(case: &Case) -> Vec<Failure> {
    let same =
        crate::case::planned(&case.told, Unit::Millimetres).is_some_and(|plan| plan == case.plan);
    if same {
        Vec::new()
    } else {
        vec![Failure {
            kind: "another plan the second time".into(),
            words: String::new(),
        }]
    }
}

/// What the run found.
#[derive(Default)]
pub struct Survey {
    pub sheets: u32,
    pub read: u32,
    pub refused: BTreeMap<String, (u32, String)>,
    /// Failures by property and kind: how many, the first sheet.
    pub failures: BTreeMap<(&'static str, String), (u32, u32, Failure)>,
    /// How many sheets gave such a step, such a state.
    pub operations: BTreeMap<String, u32>,
    pub states: BTreeMap<String, u32>,
    pub questions: BTreeMap<String, u32>,
}

impl Survey {
    fn look(&mut self, number: u32) {
        let frame = Frame::numbered(number);
        self.sheets += 1;
        let Some(case) = Case::of(&frame, &frame.told) else {
            let errors = crate::case::read(
                &frame.told,
                Unit::Millimetres,
                framegauge::standard::Tables::ours(),
            )
            .unwrap_err();
            let first = format!(
                "{}: {}",
                crate::safety::kind(errors[0].field()),
                errors[0].problem()
            );
            self.refused
                .entry(first)
                .or_insert((0, format!("{errors:?}\n{}", frame.told.toml())))
                .0 += 1;
            return;
        };
        self.read += 1;
        let mut operations: Vec<String> = case
            .plan
            .steps
            .iter()
            .map(|s| s.operation.to_string())
            .collect();
        operations.sort();
        operations.dedup();
        for operation in operations {
            *self.operations.entry(operation).or_default() += 1;
        }
        for report in &case.plan.places {
            *self
                .states
                .entry(format!(
                    "{} {}",
                    crate::safety::kind(&report.place.to_string()),
                    report.state
                ))
                .or_default() += 1;
        }
        for (index, (name, every, property)) in PROPERTIES.iter().enumerate() {
            if !(number + index as u32).is_multiple_of(*every) {
                continue;
            }
            for failure in property(&case) {
                let entry = self
                    .failures
                    .entry((name, failure.kind.clone()))
                    .or_insert((0, number, failure));
                entry.0 += 1;
            }
        }
        for question in &case.plan.questions {
            let plain: String = question
                .answer
                .chars()
                .filter(|c| !c.is_ascii_digit())
                .collect();
            *self
                .questions
                .entry(crate::safety::kind(&plain))
                .or_default() += 1;
        }
    }

    fn add(&mut self, other: Self) {
        self.sheets += other.sheets;
        self.read += other.read;
        for (what, (count, words)) in other.refused {
            self.refused.entry(what).or_insert((0, words)).0 += count;
        }
        for (what, (count, number, failure)) in other.failures {
            let entry = self.failures.entry(what).or_insert((0, number, failure));
            entry.0 += count;
        }
        for (mine, theirs) in [
            (&mut self.operations, other.operations),
            (&mut self.states, other.states),
            (&mut self.questions, other.questions),
        ] {
            for (what, count) in theirs {
                *mine.entry(what).or_default() += count;
            }
        }
    }
}

/// The run, on two threads.
pub static SURVEY: LazyLock<Survey> = LazyLock::new(|| {
    let count = SHEETS * times();
    let halves = std::thread::scope(|scope| {
        let run = |part: u32| {
            scope.spawn(move || {
                let mut survey = Survey::default();
                (0..count)
                    .filter(|number| number % 2 == part)
                    .for_each(|number| survey.look(number));
                survey
            })
        };
        let halves = [run(0), run(1)];
        halves.map(|half| half.join().unwrap())
    });
    halves.into_iter().fold(Survey::default(), |mut all, half| {
        all.add(half);
        all
    })
});

/// Kinds of failures that are shrunk and shown for one property.
const SHOWN: usize = 40;

/// Fails with every kind of failure of a property, each by the smallest sheet that shows it.
pub fn holds(name: &str) {
    let failed: Vec<_> = SURVEY
        .failures
        .iter()
        .filter(|((property, _), _)| *property == name)
        .collect();
    if failed.is_empty() {
        return;
    }
    let property = PROPERTIES
        .iter()
        .find(|(known, ..)| *known == name)
        .unwrap()
        .2;
    let mut report = String::new();
    for ((_, kind), (count, number, failure)) in failed.iter().take(SHOWN) {
        let frame = Frame::numbered(*number);
        let (told, words) =
            shrunk(&frame, kind, property).unwrap_or((frame.told, failure.words.clone()));
        report.push_str(&format!("\n=== {name}: {kind} ({count} times, first in sheet {number})\n{words}\n--- sheet\n{}\n", told.toml()));
    }
    let more = failed.len().saturating_sub(SHOWN);
    panic!(
        "{} kinds of failure of `{name}` in {} sheets, {more} not shown{report}",
        failed.len(),
        SURVEY.read
    );
}

/// The smallest sheet that still fails in this way.
fn shrunk(frame: &Frame, kind: &str, property: Property) -> Option<(Sheet, String)> {
    let fails = |told: &Sheet| -> Option<String> {
        let case = Case::of(frame, told)?;
        property(&case)
            .into_iter()
            .find(|f| f.kind == kind)
            .map(|f| f.words)
    };
    let mut best = (frame.told.clone(), fails(&frame.told)?);
    'smaller: loop {
        for told in best.0.smaller() {
            if let Some(words) = fails(&told) {
                best = (told, words);
                continue 'smaller;
            }
        }
        return Some(best);
    }
}
