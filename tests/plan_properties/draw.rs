//! A frame that never was: the truth about it, and what a person says of it.
//!
//! The truth is a sheet whose readings are exact; what is said is a part of it, read with instruments. Places are drawn in
//! `draw_*`.

use crate::leaf::{Leaf, Limit, Said, Sheet};
use crate::random::Dice;

/// A frame and what is said of it.
#[derive(Debug, Clone)]
pub struct Frame {
    pub number: u32,
    /// Everything that could be said and is so.
    pub truth: Sheet,
    /// What is said.
    pub told: Sheet,
    /// Whether something is said that is not so.
    pub lies: bool,
    /// Whether the truth holds a fault that metal work does not cure: worn, torn, too large, stuck.
    pub faults: bool,
}

/// What covers a place, and how thick it lies there.
#[derive(Debug, Clone, Copy)]
pub struct Coat {
    pub word: &'static str,
    pub thick: f64,
}

impl Coat {
    pub fn covers(self) -> bool {
        self.word != "bare"
    }
}

pub struct Draw {
    pub dice: Dice,
    pub truth: Sheet,
    /// Faults may be drawn.
    pub may_fail: bool,
    pub faults: bool,
    pub carbon: bool,
    limits: usize,
    notes: usize,
}

impl Draw {
    fn new(mut dice: Dice) -> Self {
        let material = dice.weighed(&[
            (30, "steel"),
            (26, "aluminium"),
            (6, "titanium"),
            (3, "stainless"),
            (3, "metal"),
            (28, "carbon"),
            (4, "plastic"),
        ]);
        let mut truth = Sheet::default();
        truth.put("format", Leaf::Whole(1));
        truth.put("frame", Leaf::word("drawn frame"));
        truth.put("invented", Leaf::YesNo(true));
        truth.put("material", Leaf::word(material));
        if dice.chance(20) {
            let rule = dice.weighed(&[(4, "simple"), (2, "1998"), (1, "guard 0.5"), (1, "2017")]);
            truth.put("rule", Leaf::word(rule));
        }
        let may_fail = dice.chance(35);
        Self {
            carbon: material == "carbon",
            dice,
            truth,
            may_fail,
            faults: false,
            limits: 0,
            notes: 0,
        }
    }

    /// A fault happens, in frames that may have one.
    pub fn fault(&mut self, percent: usize) -> bool {
        let happens = self.may_fail && self.dice.chance(percent);
        self.faults |= happens;
        happens
    }
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        self.dice.between(low, high)
    }
    pub fn chance(&mut self, percent: usize) -> bool {
        self.dice.chance(percent)
    }
    pub fn put(&mut self, path: &str, field: &str, leaf: Leaf) {
        self.truth.put(format!("{path}.{field}"), leaf);
    }
    pub fn word(&mut self, path: &str, field: &str, word: &str) {
        self.put(path, field, Leaf::word(word));
    }

    pub fn coat(&mut self) -> Coat {
        let word = self.dice.weighed(&[
            (34, "bare"),
            (20, "overspray"),
            (36, "painted"),
            (10, "powder_coated"),
        ]);
        let thick = match word {
            "overspray" => self.between(0.004, 0.03),
            "painted" => self.between(0.03, 0.10),
            "powder_coated" => self.between(0.06, 0.14),
            _ => 0.0,
        };
        Coat { word, thick }
    }

    /// What every place can state.
    pub fn common(&mut self, path: &str, coat: Coat) {
        self.word(path, "coating", coat.word);
        let joint = if self.carbon {
            self.dice.weighed(&[
                (50, "carbon"),
                (35, "aluminium"),
                (8, "titanium"),
                (7, "steel"),
            ])
        } else {
            let frame = self.truth.word("material").unwrap_or("steel").to_owned();
            let same: &'static str = [
                "steel",
                "aluminium",
                "titanium",
                "stainless",
                "metal",
                "plastic",
            ]
            .into_iter()
            .find(|m| *m == frame)
            .unwrap_or("steel");
            self.dice
                .weighed(&[(90, same), (4, "carbon"), (6, "aluminium")])
        };
        if self.truth.word("material") != Some(joint) {
            self.word(path, "material", joint);
        }
        if self.chance(if self.carbon { 50 } else { 20 }) {
            self.word(
                path,
                "consent",
                "the frame maker's letter of 3 May (invented)",
            );
        }
        if self.chance(25) {
            self.note(path);
        }
    }

    pub fn note(&mut self, path: &str) {
        self.notes += 1;
        let note = format!("remark number {} (invented)", self.notes);
        self.word(path, "note", &note);
    }

    /// A maker's limit beside those that are there.
    pub fn limit(
        &mut self,
        path: &str,
        what: &'static str,
        lower: Option<f64>,
        upper: Option<f64>,
    ) {
        self.limits += 1;
        let owner = format!("maker number {}, drawing (invented)", self.limits);
        let path = format!("{path}.limits");
        let mut all = self.truth.limits(&path).to_vec();
        all.push(Limit {
            what,
            lower: lower.map(|l| l.max(0.0)),
            upper: upper.map(|u| u.max(0.0)),
            owner,
        });
        self.truth.put(path, Leaf::Limits(all));
    }

    /// One of the usual places is drawn.
    fn places(&mut self) {
        let many = self
            .dice
            .weighed(&[(40, 1), (35, 2), (15, 3), (5, 5), (5, 9)]);
        for _ in 0..many {
            match self.dice.weighed(&[
                (26, 0),
                (18, 1),
                (22, 2),
                (5, 3),
                (4, 4),
                (24, 5),
                (16, 6),
                (4, 7),
            ]) {
                0 if self.truth.speaks_of("shell") => {}
                0 => self.shell(),
                1 => self.seat_tube(),
                2 => {
                    let which = self.dice.weighed(&[(3, 0), (3, 1), (6, 2)]);
                    if which != 1 {
                        self.head_end("upper");
                    }
                    if which != 0 {
                        self.head_end("lower");
                    }
                }
                3 => self.crown(),
                4 => self.steerer(),
                5 => self.thread(),
                6 => self.brake(),
                _ => self.other(),
            }
        }
    }
}

impl Frame {
    /// The frame of this number.
    pub fn numbered(number: u32) -> Self {
        let mut draw = Draw::new(Dice::numbered(61, number));
        draw.places();
        if draw.chance(15) {
            let note = "a note of the whole frame (invented)";
            draw.truth.put("note", Leaf::word(note));
        }
        let Draw {
            mut dice,
            truth,
            faults,
            ..
        } = draw;
        let mut told = tell(&truth, &mut dice);
        let lies = dice.chance(15) && crate::lies::lie(&truth, &mut told, &mut dice);
        Self {
            number,
            truth,
            told,
            lies,
            faults,
        }
    }
}

/// An exact reading as an instrument of this U tells it.
pub fn read(said: &Said, u: f64, dice: &mut Dice) -> Said {
    // Sum of evens: near enough to normal, and never beyond U.
    let error = (0..3).map(|_| dice.between(-1.0, 1.0)).sum::<f64>() / 3.0 * u;
    let mut mm = crate::leaf::rounded(((said.mm + error) * 1e3).round() / 1e3);
    if said.mm > 0.2 {
        mm = mm.max(0.1);
    }
    Said {
        at: said.at.clone(),
        mm,
        u: crate::leaf::rounded(u),
    }
}

/// What is said: a part of the truth, as instruments read it.
fn tell(truth: &Sheet, dice: &mut Dice) -> Sheet {
    let quality = dice.weighed(&[(35, 0.006), (40, 0.02), (15, 0.05), (10, 0.12)]);
    let talk = dice.weighed(&[(45, 97), (35, 88), (20, 60)]);
    let mut told = Sheet::default();
    for (path, leaf) in &truth.0 {
        let needed = matches!(path.as_str(), "format" | "frame" | "invented")
            || ["].place", "].end", "].name", ".system"]
                .iter()
                .any(|end| path.ends_with(end));
        if !needed && !dice.chance(talk) {
            continue;
        }
        told.put(path, as_read(path, leaf, quality, dice));
    }
    for place in ["seat_tube", "shell", "head_tube.upper", "crown", "steerer"] {
        // Somebody names the place and measures nothing.
        if truth.speaks_of(place) && dice.chance(2) {
            told.0.retain(|key, _| !key.starts_with(place));
            told.put(place, Leaf::Empty);
        }
    }
    complete(truth, &mut told, quality, dice);
    told
}

/// A field as it is said with instruments of this quality: not everybody reads at every place.
pub fn as_read(path: &str, leaf: &Leaf, quality: f64, dice: &mut Dice) -> Leaf {
    let mut leaf = as_answered(path, leaf, quality, dice);
    if let Leaf::Many(many) = &mut leaf {
        let field = path.rsplit('.').next().unwrap_or(path);
        let enough = if matches!(field, "probes" | "points") {
            5
        } else {
            1
        };
        while many.len() > enough && dice.chance(6) {
            let lost = dice.below(many.len());
            many.remove(lost);
        }
    }
    leaf
}

/// A field as who was asked for it says it: read at every place.
pub fn as_answered(path: &str, leaf: &Leaf, quality: f64, dice: &mut Dice) -> Leaf {
    let mut leaf = leaf.clone();
    let field = path.rsplit('.').next().unwrap_or(path);
    let factor = match field {
        "probes" | "points" => 0.4,
        "bore" if path.starts_with("head_tube") || path.starts_with("shell") => 0.4,
        "width" | "outside" | "minor" | "seat" | "race" | "bore" => 1.0,
        _ if field.starts_with("after") => 0.4,
        _ => 2.0,
    };
    let u = (quality * factor * dice.between(0.6, 1.2)).max(0.001);
    for said in leaf.readings_mut() {
        *said = read(said, u, dice);
    }
    leaf
}

/// Readings after work are read against those before it.
fn complete(truth: &Sheet, told: &mut Sheet, quality: f64, dice: &mut Dice) {
    let mut wanted = Vec::new();
    for path in told.0.keys() {
        let (place, base) = match (path.split_once(".passes["), path.strip_suffix(".after")) {
            (Some((place, rest)), _) => (place, rest.split_once("].").map_or("", |(_, f)| f)),
            (None, Some(place)) => {
                let base = match place.rsplit('.').next() {
                    Some("face") => "probes",
                    Some("crown") => "seat",
                    _ if place.starts_with("brake") => "points",
                    _ => "bore",
                };
                (place, base)
            }
            _ => continue,
        };
        wanted.push(format!("{place}.{base}"));
    }
    for path in wanted {
        if !told.0.contains_key(&path)
            && let Some(leaf) = truth.get(&path)
        {
            told.put(&path, as_read(&path, leaf, quality, dice));
        }
    }
}

/// Exact readings at places.
pub fn exact(at: impl Into<String>, mm: f64) -> Said {
    Said {
        at: at.into(),
        mm: crate::leaf::rounded(mm),
        u: 0.0,
    }
}
