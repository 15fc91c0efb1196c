//! Lines of the scripting contract, one core: simple questions alone and in batches, and a whole frame. Beside the batches
//! stands the floor under any such contract: the same lines read into JSON values and written back, without an answer.
//!
//! `cargo bench --bench ask`. Target for simple questions: 200 000 lines a second on one core, so 5 microseconds a line.

#![allow(clippy::unwrap_used, clippy::expect_used)]

use divan::counter::ItemsCount;
use divan::{Bencher, black_box};
use framegauge::ask::{Context, answer_line};

fn main() {
    // A refusal is quicker than an answer: only the last question, a size without a unit, may end in one.
    for (line, answered) in SIMPLE.into_iter().zip([true; 7].into_iter().chain([false])) {
        let reply = answer_line(line, &Context::default());
        assert_eq!(reply.answered, answered, "{}", reply.json);
    }
    divan::main();
}

const SIMPLE: [&str; 8] = [
    r#"{"id":1,"ask":"thread_limits","thread":"M10x1-6H"}"#,
    r#"{"id":2,"ask":"fit_limits","nominal":"42 mm","class":"N7"}"#,
    r#"{"id":3,"ask":"hand","shell":"bsc","side":"drive"}"#,
    r#"{"id":4,"ask":"convert","length":"1 3/8 in"}"#,
    r#"{"id":5,"ask":"depth","bore_depth":"9.0 +/- 0.1 mm","insertion":"12.0 +/- 0.1 mm"}"#,
    r#"{"id":6,"ask":"pitch_mismatch","a":"M35x1","b":"1.370 in x 24 tpi BSC"}"#,
    r#"{"id":7,"ask":"conform","readings":["41.975 +/- 0.004 mm"],"class":"42 N7"}"#,
    r#"{"id":8,"ask":"fit_limits","nominal":42,"class":"N7"}"#,
];

#[divan::bench(args = SIMPLE, sample_size = 16)]
fn simple(bencher: Bencher<'_, '_>, line: &str) {
    let context = Context::default();
    bencher
        .counter(ItemsCount::new(1_usize))
        .bench(|| answer_line(black_box(line), &context));
}

/// Simple questions in turn, each line with a number of its own. One line is the first question, a quick one; the mix is
/// whole from eight lines on.
fn batch(count: usize) -> Vec<String> {
    let question = |(number, line): (usize, &str)| {
        let rest = line.split_once(',').expect("an id first").1;
        format!(r#"{{"id":{number},{rest}"#)
    };
    SIMPLE
        .into_iter()
        .cycle()
        .take(count)
        .enumerate()
        .map(question)
        .collect()
}

fn over_lines(bencher: Bencher<'_, '_>, count: usize, answer: impl Fn(&str) -> String) {
    let lines = batch(count);
    let over = || {
        black_box(&lines)
            .iter()
            .map(|line| answer(line).len())
            .sum::<usize>()
    };
    bencher.counter(ItemsCount::new(count)).bench_local(over);
}

#[divan::bench(args = [1, 100, 10_000], max_time = 2)]
fn lines(bencher: Bencher<'_, '_>, count: usize) {
    let context = Context::default();
    over_lines(bencher, count, |line| answer_line(line, &context).json);
}

#[divan::bench(args = [1, 100, 10_000], max_time = 2)]
fn lines_through_json_alone(bencher: Bencher<'_, '_>, count: usize) {
    over_lines(bencher, count, |line| {
        let value: serde_json::Value = serde_json::from_str(line).unwrap();
        value.to_string()
    });
}

const IDENTIFY: &str = r#"{"id":9,"ask":"identify","place":"shell","readings":{"bore":"33.7 +/- 0.05 mm","width":"68.1 +/- 0.1 mm"}}"#;

#[divan::bench]
fn identify(bencher: Bencher<'_, '_>) {
    let context = Context::default();
    bencher
        .counter(ItemsCount::new(1_usize))
        .bench(|| answer_line(black_box(IDENTIFY), &context));
}

#[divan::bench]
fn prepare(bencher: Bencher<'_, '_>) {
    let text = std::fs::read_to_string(concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/examples/frames/painted_steel.toml"
    ))
    .expect("the sheet");
    let sheet: toml::Table = toml::from_str(&text).expect("TOML");
    let line = serde_json::json!({ "ask": "prepare", "sheet": sheet }).to_string();
    let context = Context::default();
    bencher
        .counter(ItemsCount::new(1_usize))
        .bench(|| answer_line(black_box(&line), &context));
}
