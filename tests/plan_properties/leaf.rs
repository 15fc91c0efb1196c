//! A sheet as a person fills it in: fields by their path, each with what is written there, still as numbers.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use serde_json::{Map, Value};

/// A reading as it is written: where, how much, how sure (U, k = 2); no uncertainty is the truth itself.
#[derive(Debug, Clone, PartialEq)]
pub struct Said {
    pub at: String,
    pub mm: f64,
    pub u: f64,
}

/// A limit that a maker wrote.
#[derive(Debug, Clone, PartialEq)]
pub struct Limit {
    pub what: &'static str,
    pub lower: Option<f64>,
    pub upper: Option<f64>,
    pub owner: String,
}

/// What stands in a field.
#[derive(Debug, Clone, PartialEq)]
pub enum Leaf {
    /// A word, a code, a note, a thread, a pitch.
    Text(String),
    /// A length that is not doubted, in millimetres.
    Size(f64),
    /// One reading.
    One(Said),
    /// A list of readings.
    Many(Vec<Said>),
    /// Makers' limits.
    Limits(Vec<Limit>),
    YesNo(bool),
    Whole(i64),
    /// A place of which nothing is said but that it is there.
    Empty,
}

impl Leaf {
    pub fn word(text: impl Into<String>) -> Self {
        Self::Text(text.into())
    }
    /// The readings of the field.
    pub fn readings(&self) -> &[Said] {
        match self {
            Self::One(one) => std::slice::from_ref(one),
            Self::Many(many) => many,
            _ => &[],
        }
    }
    pub fn readings_mut(&mut self) -> &mut [Said] {
        match self {
            Self::One(one) => std::slice::from_mut(one),
            Self::Many(many) => many,
            _ => &mut [],
        }
    }
}

/// In which unit lengths are written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unit {
    Millimetres,
    Inches,
}

impl Unit {
    /// A length in mm, written so that it is read back to the nanometre.
    pub fn write(self, mm: f64) -> String {
        match self {
            Self::Millimetres => format!("{} mm", rounded(mm)),
            Self::Inches => format!("{:.10} in", rounded(mm) / 25.4),
        }
    }
}

/// To a tenth of a micrometre: finer than anybody reads.
pub fn rounded(mm: f64) -> f64 {
    let tenths = (mm * 1e4).round() / 1e4;
    if tenths == 0.0 { 0.0 } else { tenths }
}

/// A sheet, or the truth about a frame: fields by their path.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Sheet(pub BTreeMap<String, Leaf>);

impl Sheet {
    pub fn put(&mut self, path: impl Into<String>, leaf: Leaf) {
        self.0.insert(path.into(), leaf);
    }
    pub fn get(&self, path: &str) -> Option<&Leaf> {
        self.0.get(path)
    }
    pub fn word(&self, path: &str) -> Option<&str> {
        match self.get(path) {
            Some(Leaf::Text(text)) => Some(text),
            _ => None,
        }
    }
    pub fn size(&self, path: &str) -> Option<f64> {
        match self.get(path) {
            Some(Leaf::Size(mm)) => Some(*mm),
            Some(Leaf::One(said)) => Some(said.mm),
            _ => None,
        }
    }
    pub fn readings(&self, path: &str) -> &[Said] {
        self.get(path).map_or(&[], Leaf::readings)
    }
    pub fn limits(&self, path: &str) -> &[Limit] {
        match self.get(path) {
            Some(Leaf::Limits(limits)) => limits,
            _ => &[],
        }
    }
    /// Whether anything is said under this path.
    pub fn speaks_of(&self, path: &str) -> bool {
        self.under(path).next().is_some()
    }
    /// The fields under a path, itself among them.
    pub fn under<'a>(&'a self, path: &'a str) -> impl Iterator<Item = (&'a String, &'a Leaf)> {
        self.0
            .range(path.to_owned()..)
            .take_while(move |(key, _)| key.starts_with(path))
            .filter(move |(key, _)| {
                matches!(key.as_bytes().get(path.len()), None | Some(b'.' | b'['))
            })
    }
    /// How many passes are told under a path.
    pub fn passes(&self, path: &str) -> usize {
        (0..9)
            .take_while(|i| self.speaks_of(&format!("{path}.passes[{i}]")))
            .count()
    }

    /// The sheet as it is handed to the reader.
    pub fn value(&self, unit: Unit) -> Value {
        let mut whole = Value::Object(Map::new());
        for (path, leaf) in &self.0 {
            *at(&mut whole, path) = write(leaf, unit);
        }
        whole
    }

    /// The sheet as a person would write it, for a report.
    pub fn toml(&self) -> String {
        toml::to_string(&self.value(Unit::Millimetres))
            .unwrap_or_else(|error| format!("{error}: {self:?}"))
    }

    /// Every sheet with one thing less.
    pub fn smaller(&self) -> Vec<Self> {
        let mut out = Vec::new();
        // Whole branches first: they shrink fastest.
        let mut branches: Vec<&str> = self
            .0
            .keys()
            .filter_map(|k| k.rsplit_once('.').map(|(b, _)| b))
            .collect();
        branches.sort_by_key(|b| b.len());
        branches.dedup();
        for branch in branches {
            let mut less = self.clone();
            less.0.retain(|key, _| {
                !(key.starts_with(branch)
                    && matches!(key.as_bytes().get(branch.len()), None | Some(b'.' | b'[')))
            });
            out.push(less);
        }
        for (path, leaf) in &self.0 {
            if matches!(path.as_str(), "format" | "frame") {
                continue;
            }
            let mut less = self.clone();
            less.0.remove(path);
            out.push(less);
            let count = match leaf {
                Leaf::Many(many) => many.len(),
                Leaf::Limits(limits) => limits.len(),
                _ => 0,
            };
            for index in (0..count).filter(|_| count > 1) {
                let mut less = self.clone();
                match less.0.get_mut(path) {
                    Some(Leaf::Many(many)) => drop(many.remove(index)),
                    Some(Leaf::Limits(limits)) => drop(limits.remove(index)),
                    _ => {}
                }
                out.push(less);
            }
        }
        out
    }
}

fn write(leaf: &Leaf, unit: Unit) -> Value {
    match leaf {
        Leaf::Text(text) => Value::from(text.as_str()),
        Leaf::Size(mm) => Value::from(unit.write(*mm)),
        Leaf::One(said) => Value::from(line(said, unit)),
        Leaf::Many(many) => many
            .iter()
            .map(|said| Value::from(line(said, unit)))
            .collect(),
        Leaf::Limits(limits) => limits
            .iter()
            .map(|limit| self::limit(limit, unit))
            .collect(),
        Leaf::YesNo(yes) => Value::from(*yes),
        Leaf::Whole(number) => Value::from(*number),
        Leaf::Empty => Value::Object(Map::new()),
    }
}

fn line(said: &Said, unit: Unit) -> String {
    let mut out = String::new();
    if !said.at.is_empty() {
        let _ = write!(out, "{}: ", said.at);
    }
    let _ = write!(out, "{} +/- {}", unit.write(said.mm), unit.write(said.u));
    out
}

fn limit(limit: &Limit, unit: Unit) -> Value {
    let mut out = Map::new();
    out.insert("what".into(), limit.what.into());
    for (name, end) in [("lower", limit.lower), ("upper", limit.upper)] {
        if let Some(mm) = end {
            out.insert(name.into(), unit.write(mm).into());
        }
    }
    out.insert("owner".into(), limit.owner.as_str().into());
    Value::Object(out)
}

/// The place of a path in a tree, made where it is not there yet: `thread[2].minor`.
pub fn at<'a>(whole: &'a mut Value, path: &str) -> &'a mut Value {
    let mut here = whole;
    for part in path.split('.') {
        let (name, index) = match part.split_once('[') {
            Some((name, rest)) => (name, rest.trim_end_matches(']').parse::<usize>().ok()),
            None => (part, None),
        };
        if !here.is_object() {
            *here = Value::Object(Map::new());
        }
        here = here
            .as_object_mut()
            .unwrap()
            .entry(name)
            .or_insert(Value::Null);
        if let Some(index) = index {
            if !here.is_array() {
                *here = Value::Array(Vec::new());
            }
            let list = here.as_array_mut().unwrap();
            while list.len() <= index {
                list.push(Value::Object(Map::new()));
            }
            here = &mut list[index];
        }
    }
    here
}
