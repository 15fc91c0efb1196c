//! A sheet with its plan, and where things stand in the sheet: asked of what was written, never of a planner.

use framegauge::plan::{FrameSheet, Operation, Plan, Step, prepare_with};
use framegauge::read::Tree;
use framegauge::standard::Tables;
use serde::Deserialize;

use crate::draw::Frame;
use crate::leaf::{Said, Sheet, Unit};
use crate::random::Dice;

/// A sheet with its plan.
pub struct Case {
    pub truth: Sheet,
    pub told: Sheet,
    pub lies: bool,
    pub faults: bool,
    /// The number of its frame.
    pub number: u32,
    pub plan: Plan,
}

/// A property that does not hold: what kind of failure, so that the same one is told once, and what was found.
#[derive(Debug, Clone)]
pub struct Failure {
    pub kind: String,
    pub words: String,
}

/// What a property is: everything in a case that goes against it.
pub type Property = fn(&Case) -> Vec<Failure>;

pub fn fails(out: &mut Vec<Failure>, kind: impl Into<String>, words: impl Into<String>) {
    out.push(Failure {
        kind: kind.into(),
        words: words.into(),
    });
}

/// Reads what was told.
pub fn read(
    told: &Sheet,
    unit: Unit,
    tables: Tables<'_>,
) -> Result<FrameSheet, Vec<framegauge::Error>> {
    let value = told.value(unit);
    let tree = Tree::deserialize(&value).unwrap();
    FrameSheet::from_tree(&tree, tables)
}

/// The plan for what was told.
pub fn planned(told: &Sheet, unit: Unit) -> Option<Plan> {
    read(told, unit, Tables::ours())
        .ok()
        .map(|sheet| prepare_with(&sheet, Tables::ours()))
}

impl Case {
    /// The case of a frame of which this was told.
    pub fn of(frame: &Frame, told: &Sheet) -> Option<Self> {
        let plan = planned(told, Unit::Millimetres)?;
        Some(Self {
            truth: frame.truth.clone(),
            told: told.clone(),
            lies: frame.lies,
            faults: frame.faults,
            number: frame.number,
            plan,
        })
    }

    /// Dice that fall alike for one field of one frame, however much else is told.
    pub fn dice(&self, field: &str) -> Dice {
        let spread = field.bytes().fold(self.number, |sum, byte| {
            sum.wrapping_mul(31).wrapping_add(u32::from(byte))
        });
        Dice::numbered(63, spread)
    }

    /// The cutting steps.
    pub fn cuts(&self) -> impl Iterator<Item = (&Step, String)> {
        self.plan
            .steps
            .iter()
            .filter(|s| s.cuts())
            .map(|s| (s, s.place.to_string()))
    }

    /// Where a place stands in the sheet: once, twice where somebody is mistaken, nowhere.
    pub fn paths(&self, place: &str) -> Vec<String> {
        paths(&self.told, place)
    }

    /// Material of the joint at a place, by the sheet.
    pub fn material(&self, place: &str) -> Option<&str> {
        joints(place)
            .iter()
            .flat_map(|joint| self.paths(joint))
            .find_map(|path| self.told.word(&format!("{path}.material")))
            .or_else(|| self.told.word("material"))
    }

    /// The consent stated there.
    pub fn consent(&self, place: &str) -> Option<&str> {
        joints(place)
            .iter()
            .flat_map(|joint| self.paths(joint))
            .find_map(|path| self.told.word(&format!("{path}.consent")))
    }

    /// Whether a step of this kind stands at a place.
    pub fn has(&self, place: &str, operations: &[Operation]) -> bool {
        self.plan
            .steps
            .iter()
            .any(|s| s.place.to_string() == place && operations.contains(&s.operation))
    }
}

/// A place and what it is a part of, where material and consent are stated.
fn joints(place: &str) -> Vec<&str> {
    let mut out = vec![place];
    let mut here = place;
    while let Some((whole, part)) = here.rsplit_once('.') {
        if matches!(part, "face" | "slot" | "underside") || whole == "shell" {
            out.push(whole);
        }
        here = whole;
    }
    out
}

/// Where a place stands in a sheet.
pub fn paths(told: &Sheet, place: &str) -> Vec<String> {
    let mut out = Vec::new();
    if told.speaks_of(place) && place.contains('.')
        || matches!(place, "seat_tube" | "shell" | "crown" | "steerer" | "iscg")
    {
        out.push(place.to_owned());
    }
    for index in 0..40 {
        let path = format!("thread[{index}]");
        if !told.speaks_of(&path) {
            break;
        }
        if listed(told, &path) == place {
            out.push(path);
        }
    }
    let (whole, part) = place
        .split_once(".underside")
        .map_or((place, ""), |(whole, _)| (whole, ".underside"));
    for index in 0..4 {
        let path = format!("brake[{index}]");
        if told
            .word(&format!("{path}.end"))
            .is_some_and(|end| whole == format!("brake.{end}"))
        {
            out.push(format!("{path}{part}"));
        }
    }
    out
}

/// The code of a thread in a list.
pub fn listed(told: &Sheet, path: &str) -> String {
    let word = |field: &str| told.word(&format!("{path}.{field}"));
    let part = word("place").unwrap_or("other");
    let name = word("name").unwrap_or(part);
    match part {
        "axle" | "hanger" => word("end").map_or(part.to_owned(), |end| format!("{part}.{end}")),
        "pedal" => {
            let says = |side: &str| {
                name.split(|c: char| !c.is_alphanumeric())
                    .any(|w| w == side)
            };
            match (says("left"), says("right")) {
                (true, false) => "pedal.left".to_owned(),
                (false, true) => "pedal.right".to_owned(),
                _ => "pedal".to_owned(),
            }
        }
        _ => {
            let plain: String = name
                .to_lowercase()
                .chars()
                .map(|c| if c.is_alphanumeric() { c } else { '_' })
                .collect();
            format!("boss.{plain}")
        }
    }
}

/// Every place that a sheet speaks of and that a plan must speak of too.
pub fn places(told: &Sheet) -> Vec<String> {
    let mut out = Vec::new();
    for path in told.0.keys() {
        let parts: Vec<&str> = path.split('.').collect();
        let place = match parts.as_slice() {
            ["shell", side @ ("drive" | "non_drive"), "face", ..] => format!("shell.{side}.face"),
            ["shell", side @ ("drive" | "non_drive"), ..] => format!("shell.{side}"),
            ["head_tube", end, "face", ..] => format!("head_tube.{end}.face"),
            ["seat_tube", "slot", ..] => "seat_tube.slot".to_owned(),
            ["brake", end, "underside", ..] => format!("brake.{end}.underside"),
            ["dropout", end, side, ..] => format!("dropout.{end}.{side}"),
            [
                whole @ ("head_tube" | "axle" | "hanger" | "pedal" | "boss" | "brake"),
                part,
                ..,
            ] => format!("{whole}.{part}"),
            [
                whole @ ("seat_tube" | "shell" | "crown" | "steerer" | "iscg"),
                ..,
            ] => (*whole).to_owned(),
            [list, ..] if list.starts_with("thread[") => listed(told, list),
            [list, rest @ ..] if list.starts_with("brake[") => {
                let end = told.word(&format!("{list}.end")).unwrap_or_default();
                let under = if rest.first() == Some(&"underside") {
                    ".underside"
                } else {
                    ""
                };
                format!("brake.{end}{under}")
            }
            _ => continue,
        };
        out.push(place);
    }
    out.sort();
    out.dedup();
    out
}

/// Readings of the last pass that took some, else those before any; with whether a pass was made.
pub fn now<'a>(told: &'a Sheet, path: &str, field: &str) -> (&'a [Said], bool) {
    for index in (0..told.passes(path)).rev() {
        let readings = told.readings(&format!("{path}.passes[{index}].{field}"));
        if !readings.is_empty() {
            return (readings, true);
        }
    }
    let first = matches!(field, "probes" | "points" | "bore" | "seat");
    let after = told.readings(&format!("{path}.after"));
    if first && !after.is_empty() {
        return (after, true);
    }
    (told.readings(&format!("{path}.{field}")), false)
}

/// The most that came off a face or mount: 0 before any pass, `None` where the surveys share no place.
pub fn came_off(told: &Sheet, path: &str, field: &str) -> Option<f64> {
    let (last, cut) = now(told, path, field);
    if !cut {
        return Some(0.0);
    }
    let before = told.readings(&format!("{path}.{field}"));
    before
        .iter()
        .filter_map(|b| last.iter().find(|a| a.at == b.at).map(|a| b.mm - a.mm))
        .max_by(f64::total_cmp)
}

pub fn smallest(readings: &[Said]) -> Option<f64> {
    readings.iter().map(|r| r.mm).min_by(f64::total_cmp)
}
