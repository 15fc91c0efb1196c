//! Every question has a line that the schema admits, and a committed answer that the schema admits.
//!
//! `UPDATE_PINNED=1 cargo test --test ask` writes the answers anew; they are then read line by line before they are committed.
//! What is held is codes and numbers; sentences are made in `say`.

use std::collections::BTreeSet;

use framegauge::ask::{Context, answer_line, forms, schema};
use serde_json::Value;

use crate::QUESTIONS;
use crate::guard_support::{bare, same_as_committed};

/// As much of JSON Schema as the schema uses; anything else in it is a defect of the schema.
fn admits(root: &Value, schema: &Value, value: &Value) -> Result<(), String> {
    let fields = schema.as_object().ok_or("no schema")?;
    for (word, says) in fields {
        match word.as_str() {
            "description" | "title" | "$defs" | "properties" => {}
            "$ref" => {
                let path = says.as_str().ok_or("no path")?.trim_start_matches('#');
                let target = root
                    .pointer(path)
                    .ok_or_else(|| format!("{path} leads nowhere"))?;
                admits(root, target, value)?;
            }
            "type" => {
                let fits = |kind: &str| match kind {
                    "string" => value.is_string(),
                    "number" => value.is_number(),
                    "integer" => value.is_i64() || value.is_u64(),
                    "boolean" => value.is_boolean(),
                    "array" => value.is_array(),
                    "object" => value.is_object(),
                    "null" => value.is_null(),
                    other => panic!("unknown type {other}"),
                };
                let any = match says {
                    Value::String(kind) => fits(kind),
                    Value::Array(kinds) => kinds.iter().any(|k| fits(k.as_str().unwrap())),
                    _ => false,
                };
                if !any {
                    return Err(format!("{value} is no {says}"));
                }
            }
            "const" if value != says => return Err(format!("{value} is not {says}")),
            "const" => {}
            "enum" if !says.as_array().unwrap().contains(value) => {
                return Err(format!("{value} is none of {says}"));
            }
            "enum" => {}
            "items" => {
                for item in value.as_array().into_iter().flatten() {
                    admits(root, says, item)?;
                }
            }
            "required" => {
                if let Some(object) = value.as_object() {
                    for name in says.as_array().unwrap() {
                        if !object.contains_key(name.as_str().unwrap()) {
                            return Err(format!("{name} is missing"));
                        }
                    }
                }
            }
            "additionalProperties" => {
                let known = fields.get("properties").and_then(Value::as_object);
                for (name, inner) in value.as_object().into_iter().flatten() {
                    match known.and_then(|k| k.get(name)) {
                        Some(piece) => {
                            admits(root, piece, inner).map_err(|e| format!("{name}: {e}"))?;
                        }
                        None if says == &Value::Bool(false) => {
                            return Err(format!("{name} is not known"));
                        }
                        None => admits(root, says, inner).map_err(|e| format!("{name}: {e}"))?,
                    }
                }
            }
            "anyOf" | "oneOf" => {
                let passed = says
                    .as_array()
                    .unwrap()
                    .iter()
                    .filter(|s| admits(root, s, value).is_ok())
                    .count();
                if passed == 0 || (word == "oneOf" && passed > 1) {
                    return Err(format!("{passed} of the forms admit it"));
                }
            }
            other => panic!("the schema uses `{other}`"),
        }
    }
    Ok(())
}

fn root() -> Value {
    serde_json::to_value(schema()).unwrap()
}

#[test]
fn every_question_has_a_line_that_the_schema_admits() {
    let root = root();
    let mut seen = BTreeSet::new();
    for line in QUESTIONS.lines() {
        let reply = answer_line(line, &Context::default());
        let told: Value = serde_json::from_str(&reply.json).unwrap();
        admits(&root, &root["$defs"]["reply"], &told)
            .unwrap_or_else(|e| panic!("{line}: {e}\n{told}"));
        let Ok(question) = serde_json::from_str::<Value>(line) else {
            continue;
        };
        if !reply.answered {
            continue;
        }
        let asked = question["ask"].as_str().unwrap();
        let form = forms()
            .iter()
            .find(|form| form.name == asked || form.other.contains(&asked))
            .unwrap();
        let name = form.name.to_owned();
        let by_name = |kind: &str| root["$defs"][format!("{name}_{kind}")].clone();
        admits(&root, &by_name("question"), &question).unwrap_or_else(|e| panic!("{line}: {e}"));
        admits(&root, &root["$defs"]["question"], &question)
            .unwrap_or_else(|e| panic!("{line}: {e}"));
        admits(&root, &by_name("answer"), &told["answer"])
            .unwrap_or_else(|e| panic!("{line}: {e}\n{told}"));
        seen.insert(name);
    }
    let missing: Vec<&str> = forms()
        .iter()
        .map(|f| f.name)
        .filter(|n| !seen.contains(*n))
        .collect();
    assert!(missing.is_empty(), "no answered line for {missing:?}");
}

/// What the schema refuses for its names, the reader refuses too.
#[test]
fn schema_and_reader_refuse_alike() {
    let root = root();
    for line in QUESTIONS.lines() {
        let Ok(Value::Object(question)) = serde_json::from_str::<Value>(line) else {
            continue;
        };
        let mut with_more = question.clone();
        with_more.insert("no_such_field".into(), Value::Null);
        for changed in [with_more, without_one(&question)] {
            let value = Value::Object(changed);
            let by_schema = admits(&root, &root["$defs"]["question"], &value).is_ok();
            let read = serde_json::from_value::<framegauge::ask::Question>(value.clone()).is_ok();
            assert!(by_schema || !read, "{value} is read against the schema");
        }
    }
}

fn without_one(question: &serde_json::Map<String, Value>) -> serde_json::Map<String, Value> {
    let mut less = question.clone();
    less.remove("ask");
    less
}

/// What is held of an answer: whole, without what is only told, for the first line of a question; of the others what stands at
/// its top, such as outcome, grade and sizes; of an error its kind and field.
fn held(told: &Value, whole: bool) -> Value {
    let told = bare(told.clone());
    let mut out = serde_json::Map::new();
    for (key, value) in told.as_object().unwrap() {
        let value = match value {
            Value::Object(fields) if !whole => fields
                .iter()
                .filter(|(_, v)| !v.is_object() && !v.is_array() && !v.is_null())
                .map(|(k, v)| (k.clone(), v.clone()))
                .collect(),
            other => other.clone(),
        };
        out.insert(key.clone(), value);
    }
    Value::Object(out)
}

#[test]
fn committed_answers() {
    let mut now = String::new();
    let mut seen = BTreeSet::new();
    for line in QUESTIONS.lines() {
        let reply = answer_line(line, &Context::default());
        let told: Value = serde_json::from_str(&reply.json).unwrap();
        let asked = serde_json::from_str::<Value>(line).unwrap_or_default();
        let first = reply.answered && seen.insert(asked["ask"].to_string());
        now.push_str(&held(&told, first).to_string());
        now.push('\n');
    }
    same_as_committed("ask/answers.jsonl", &now);
}
