//! Random and mutated lines: none panics, and every error names its field. The seed is fixed, so a failure comes back.
//!
//! `FUZZ_TIMES=50` runs fifty times as many, on another seed.

use framegauge::ask::{Context, answer_line, forms};
use serde_json::Value;

use crate::QUESTIONS;
use crate::random::{Dice, times};

/// Lines in one run.
const LINES: u32 = 200_000;

const WORDS: [&str; 60] = [
    "",
    " ",
    "0",
    "-0",
    "-1 mm",
    "0 mm",
    "1e400",
    "1e400 mm",
    "NaN",
    "nan mm",
    "inf mm",
    "99999999999999999999 mm",
    "0.0000001 mm",
    "1 µm",
    "27,2 mm",
    "1,058 mm",
    "1 3/8 in",
    "1/0 in",
    "9/16 in",
    "27.2",
    "27.2 mm +/- 0.05 mm",
    "27.2 +/- -1 mm",
    "27.2 +/- 9 mm",
    "41.96 +0.025/-0 mm",
    "1 mm to 2 mm",
    "2 mm to 1 mm",
    "at most 1 mm",
    "at least",
    "0 mm to 0 mm",
    "24 tpi",
    "0 tpi",
    "1 mm",
    "90 deg",
    "-720 deg",
    "1e9 deg",
    "360°",
    "276 MPa",
    "0 MPa",
    "-1 GPa",
    "5 N m",
    "M10x1-6H",
    "M10",
    "M0x1",
    "M1000x6-9z",
    "x",
    "1.370 in x 24 tpi BSC LH",
    "1/2-20 UNF-2B",
    "42 N7",
    "N7",
    "h6",
    "JS17",
    "ZC1",
    "drive",
    "left",
    "bsc",
    "bb30",
    "al_6061_t6",
    "cfrp_ud",
    "🚲",
    "\u{0}",
];

fn value(dice: &mut Dice) -> Value {
    match dice.below(12) {
        0 => Value::Null,
        1 => Value::Bool(dice.below(2) == 0),
        2 => (dice.roll() as i64).into(),
        3 => [0.0, -1.0, 0.5, 1e-300, 1e300, -0.0][dice.below(6)].into(),
        4 => Value::Array(
            (0..dice.below(4))
                .map(|_| (*dice.of(&WORDS)).into())
                .collect(),
        ),
        5 => Value::Object(
            (0..dice.below(3))
                .map(|_| ((*dice.of(&WORDS)).into(), (*dice.of(&WORDS)).into()))
                .collect(),
        ),
        _ => (*dice.of(&WORDS)).into(),
    }
}

/// Changes something somewhere inside a value.
fn shake(dice: &mut Dice, tree: &mut Value) {
    match tree {
        Value::Object(map) if !map.is_empty() && dice.below(8) != 0 => {
            let names: Vec<String> = map.keys().cloned().collect();
            let name = dice.of(&names).clone();
            match dice.below(10) {
                0 => {
                    map.remove(&name);
                }
                1 => {
                    let all: Vec<&str> = forms()
                        .iter()
                        .flat_map(|f| f.question)
                        .map(|f| f.name)
                        .collect();
                    let other = (*dice.of(&all)).to_owned();
                    let new = value(dice);
                    map.insert(other, new);
                }
                _ => shake(dice, map.get_mut(&name).unwrap()),
            }
        }
        Value::Array(items) if !items.is_empty() && dice.below(4) != 0 => {
            let index = dice.below(items.len());
            match dice.below(8) {
                0 => {
                    items.remove(index);
                }
                1 => {
                    let again = items[index].clone();
                    items.push(again);
                }
                _ => shake(dice, &mut items[index]),
            }
        }
        Value::String(text) if dice.below(3) != 0 => *text = bitten(dice, text),
        other => *other = value(dice),
    }
}

/// Text with a piece cut, doubled, changed or put in.
fn bitten(dice: &mut Dice, text: &str) -> String {
    let mut chars: Vec<char> = text.chars().collect();
    let at = dice.below(chars.len() + 1);
    let to = (at + dice.below(6)).min(chars.len());
    match dice.below(5) {
        0 => drop(chars.drain(at..to)),
        1 => {
            let piece: Vec<char> = chars[at..to].to_vec();
            chars.splice(at..at, piece);
        }
        2 if at < chars.len() => {
            chars[at] = *dice.of(&[
                '0', '9', '.', ',', '-', '/', ' ', 'x', '"', '\\', '{', 'é', '+',
            ])
        }
        3 => drop(chars.splice(at..at, dice.of(&WORDS).chars().collect::<Vec<_>>())),
        _ => chars.truncate(at),
    }
    chars.into_iter().collect()
}

#[test]
fn random_and_mutated_lines() {
    let lines: Vec<&str> = QUESTIONS.lines().filter(|l| !l.is_empty()).collect();
    // A whole frame takes a thousand times as long as a thread, every post of the tables in turn and the ellipse of a bore a
    // hundred times, so they come less often.
    let heavy = |line: &str| {
        ["prepare", "identify", "seatpost_for_tube", "bore_shape"]
            .iter()
            .any(|name| line.contains(&format!("\"{name}\"")))
    };
    let light: Vec<&str> = lines.iter().copied().filter(|l| !heavy(l)).collect();
    let trees: Vec<Value> = light
        .iter()
        .filter_map(|l| serde_json::from_str(l).ok())
        .collect();
    let heavy: Vec<Value> = lines
        .iter()
        .filter(|l| heavy(l))
        .filter_map(|l| serde_json::from_str(l).ok())
        .collect();
    let context = Context::default();
    let mut dice = Dice::new(50);
    let lines = LINES * times();
    let (mut answered, mut refused) = (0_u32, 0_u32);
    for turn in 0..lines {
        let line: Vec<u8> = match turn % 8 {
            0 => {
                let length = dice.below(60);
                (0..length).map(|_| dice.roll().to_le_bytes()[0]).collect()
            }
            1 | 2 => bitten(&mut dice, light[dice_index(turn, light.len())]).into_bytes(),
            3 if turn % 128 == 3 => {
                let mut tree = dice.of(&heavy).clone();
                shake(&mut dice, &mut tree);
                tree.to_string().into_bytes()
            }
            _ => {
                let mut tree = dice.of(&trees).clone();
                for _ in 0..=dice.below(3) {
                    shake(&mut dice, &mut tree);
                }
                tree.to_string().into_bytes()
            }
        };
        let reply = answer_line(&line, &context);
        if reply.answered {
            answered += 1;
            assert!(
                reply.json.contains("\"answer\":{"),
                "{}",
                String::from_utf8_lossy(&line)
            );
        } else {
            refused += 1;
            check_error(&line, &reply.json);
        }
        assert!(!reply.json.contains('\n'));
    }
    // Both roads were taken many times over.
    assert!(
        answered > lines / 50 && refused > lines / 4,
        "{answered} answered, {refused} refused"
    );
}

fn dice_index(turn: u32, length: usize) -> usize {
    usize::try_from(turn / 8).unwrap() % length
}

fn check_error(line: &[u8], json: &str) {
    let told: Value = serde_json::from_str(json).unwrap();
    let error = &told["error"];
    let here = || format!("{}\n{json}", String::from_utf8_lossy(line));
    let field = error["field"]
        .as_str()
        .unwrap_or_else(|| panic!("{}", here()));
    for part in ["kind", "message", "remedy"] {
        assert!(
            !error[part].as_str().unwrap().is_empty(),
            "no {part}: {}",
            here()
        );
    }
    // The path starts at a field of the question, at the line itself, or at a name that the question does not know.
    let first = field.split(['.', '[']).next().unwrap();
    let question: Value = serde_json::from_slice(line).unwrap_or(Value::Null);
    let known = forms()
        .iter()
        .filter(|form| {
            question["ask"] == form.name || form.other.iter().any(|other| question["ask"] == *other)
        })
        .flat_map(|form| form.question)
        .any(|f| f.name == first);
    let written = error["kind"] == "unknown_field";
    assert!(
        known || written || ["line", "id", "ask"].contains(&first),
        "field `{field}`: {}",
        here()
    );
}
