//! Axle threads, hangers, bosses, pedals, by table and by list; brake mounts.

use framegauge::standard::ThreadedPart;
use framegauge::thread::ThreadSize;

use crate::draw::{Draw, exact};
use crate::leaf::{Leaf, Said, rounded};
use crate::rows::{ROWS, use_hand};

/// Where a thread can stand: path, what it is for, end.
const TABLE: [(&str, ThreadedPart); 6] = [
    ("axle.rear", ThreadedPart::Axle),
    ("axle.front", ThreadedPart::Axle),
    ("hanger.rear", ThreadedPart::Hanger),
    ("pedal.left", ThreadedPart::Pedal),
    ("pedal.right", ThreadedPart::Pedal),
    ("boss.down_tube_1", ThreadedPart::BottleBoss),
];

const LIST: [ThreadedPart; 11] = [
    ThreadedPart::Axle,
    ThreadedPart::Hanger,
    ThreadedPart::HangerBolt,
    ThreadedPart::Pedal,
    ThreadedPart::Freewheel,
    ThreadedPart::BottleBoss,
    ThreadedPart::RackBoss,
    ThreadedPart::SeatBinder,
    ThreadedPart::BrakeBoss,
    ThreadedPart::Lockring,
    ThreadedPart::Crank,
];

impl Draw {
    pub fn thread(&mut self) {
        let listed = (0..30)
            .take_while(|i| self.truth.speaks_of(&format!("thread[{i}]")))
            .count();
        if self.chance(50) {
            let (path, part) = *self.dice.of(&TABLE);
            let path = if part == ThreadedPart::BottleBoss {
                format!(
                    "boss.{}",
                    self.dice.of(&["down_tube_1", "down_tube_2", "rack_left"])
                )
            } else {
                path.to_owned()
            };
            let end = path.rsplit('.').next().unwrap_or_default().to_owned();
            let said = (0..listed).any(|i| {
                let word = |field: &str| self.truth.word(&format!("thread[{i}].{field}"));
                word("place") == Some(part.to_string().as_str())
                    && (part == ThreadedPart::Pedal || word("end") == Some(end.as_str()))
            });
            if said && part != ThreadedPart::BottleBoss {
                return;
            }
            // The same place is drawn anew, never said twice, unless somebody is mistaken.
            self.truth.0.retain(|key, _| !key.starts_with(&path));
            let part = if path == "boss.rack_left" {
                ThreadedPart::RackBoss
            } else {
                part
            };
            if path.starts_with("boss.") && self.chance(80) {
                let place = part.to_string();
                self.word(&path, "place", &place);
            }
            let left = path == "pedal.left";
            self.one_thread(&path, part, left);
        } else {
            let part = *self.dice.of(&LIST);
            let path = format!("thread[{listed}]");
            let place = part.to_string();
            self.word(&path, "place", &place);
            let mut left = matches!(part, ThreadedPart::HangerBolt | ThreadedPart::Lockring);
            match part {
                ThreadedPart::Axle | ThreadedPart::Hanger => {
                    let end = if part == ThreadedPart::Axle && self.chance(50) {
                        "front"
                    } else {
                        "rear"
                    };
                    // A place that is there already is not listed again.
                    let again = self.truth.speaks_of(&format!("{place}.{end}"))
                        || (0..listed).any(|i| {
                            self.truth.word(&format!("thread[{i}].place")) == Some(&place)
                                && self.truth.word(&format!("thread[{i}].end")) == Some(end)
                        });
                    if again {
                        self.truth.0.retain(|key, _| !key.starts_with(&path));
                        return;
                    }
                    self.word(&path, "end", end);
                }
                // Two entries of one side would be one thread said twice.
                ThreadedPart::Pedal
                    if self.truth.speaks_of("pedal")
                        || (0..listed).any(|i| {
                            self.truth.word(&format!("thread[{i}].place")) == Some(&place)
                        }) =>
                {
                    self.truth.0.remove(&format!("{path}.place"));
                    return;
                }
                ThreadedPart::Pedal => {
                    left = self.chance(50);
                    let name = format!(
                        "{} crank, pedal {listed}",
                        if left { "left" } else { "right" }
                    );
                    let name = if self.chance(70) {
                        name
                    } else {
                        format!("crank {listed}")
                    };
                    self.word(&path, "name", &name);
                }
                _ => self.word(&path, "name", &format!("{place} {listed}")),
            }
            self.one_thread(&path, part, left);
        }
    }

    fn one_thread(&mut self, path: &str, part: ThreadedPart, left: bool) {
        let rows: Vec<_> = ROWS.threads.iter().filter(|t| t.part == part).collect();
        let coat = self.coat();
        self.common(path, coat);
        let (size, hole): (ThreadSize, _) = match rows.as_slice() {
            [] => ("M15x1".parse().unwrap(), None),
            rows => {
                let row = self.dice.of(rows);
                (row.size, row.hole)
            }
        };
        let name = size.to_string();
        if self.chance(70) {
            self.word(path, "mate", &name);
        } else {
            self.word(path, "believed", &name);
        }
        self.word(path, "pitch", &size.pitch().to_string());
        let listed = rows
            .iter()
            .find(|row| row.size == size)
            .and_then(|row| use_hand(row.code));
        let left = listed.map_or(left, |hand| hand == "left");
        self.word(path, "hand", if left { "left" } else { "right" });
        let rough = framegauge::settled_mm(size.major())
            - 1.08 * framegauge::settled_mm(size.pitch().length());
        let (low, high) = hole.unwrap_or((rough + 0.02, rough + 0.15));
        let torn = self.fault(18);
        let uncut = !torn && self.chance(25);
        let clean = if torn {
            high + self.between(0.1, 0.4)
        } else {
            self.between(low + 0.002, high - 0.002)
        };
        if uncut {
            let hole = if self.fault(20) {
                high + self.between(0.05, 0.3)
            } else {
                self.dice
                    .weighed(&[(5, clean), (4, low - 0.15), (1, low - 0.02)])
            };
            self.put(
                path,
                "minor",
                Leaf::Many(vec![exact("0 deg", hole), exact("90 deg", hole + 0.003)]),
            );
            self.word(path, "state", "uncut");
            // Nobody reads the pitch or the hand of a plain hole.
            for field in ["pitch", "hand"] {
                self.truth.0.remove(&format!("{path}.{field}"));
            }
        } else {
            let on = clean - 2.0 * coat.thick.min(0.05);
            self.put(path, "minor", Leaf::Many(vec![exact("", on)]));
            self.thread_state(path, coat, torn);
        }
        if part == ThreadedPart::Hanger && self.chance(50) {
            let replaceable = self.chance(70);
            self.put(path, "replaceable", Leaf::YesNo(replaceable));
        }
        if self.chance(15) {
            let upper = high + self.between(-0.05, 0.05);
            // A hole that its maker's limit forbids is a fault.
            self.faults |= clean > upper - 0.02;
            self.limit(path, "minor", None, Some(upper));
        }
        if self.chance(15) {
            let most = self.between(5.0, 20.0);
            self.limit(path, "depth", None, Some(most));
        }
    }

    pub fn brake(&mut self) {
        let end = *self.dice.of(&["front", "rear"]);
        let path = if self.chance(50) {
            if self.truth.speaks_of("brake[0]")
                || self.truth.speaks_of("brake.front")
                || self.truth.speaks_of("brake.rear")
            {
                return;
            }
            self.word("brake[0]", "end", end);
            "brake[0]".to_owned()
        } else {
            if self.truth.speaks_of("brake[0]") || self.truth.speaks_of(&format!("brake.{end}")) {
                return;
            }
            format!("brake.{end}")
        };
        let path = path.as_str();
        let coat = self.coat();
        self.common(path, coat);
        let system = *self.dice.of(&["is", "pm", "fm"]);
        self.word(path, "system", system);
        let lengths: &[f64] = match system {
            "is" => &[-25.0, 25.0],
            "pm" => &[0.0, 74.0],
            _ => &[0.0, 17.0, 34.0],
        };
        let across = if self.chance(75) {
            self.between(-0.002, 0.002)
        } else {
            self.between(-0.03, 0.03)
        };
        let along = self.between(-0.001, 0.001);
        let mut points: Vec<Said> = Vec::new();
        for x in lengths {
            for y in [-6.0, 6.0] {
                let rough = self.between(-0.005, 0.005);
                points.push(exact(
                    format!("{x} mm along, {y} mm across"),
                    coat.thick + along * x + across * y + rough,
                ));
            }
        }
        let lowest = points.iter().fold(9.0_f64, |low, p| low.min(p.mm));
        let cut = |level: f64| -> Vec<Said> {
            points
                .iter()
                .map(|p| exact(p.at.clone(), p.mm.min(level)))
                .collect()
        };
        self.put(path, "points", Leaf::Many(points.clone()));
        let clearance = rounded(self.between(0.15, 0.3));
        self.put(path, "pad_clearance", Leaf::Size(clearance));
        self.put(path, "pad_length", Leaf::Size(28.0));
        if system == "fm" || self.chance(30) {
            let thick = self.between(10.0, 30.0);
            self.put(path, "thickness", Leaf::One(exact("", thick)));
            self.put(path, "bolt", Leaf::Size((thick + 13.0).round()));
            if self.chance(50) {
                let least = thick - self.dice.weighed(&[(6, 0.8), (3, 0.3), (1, 0.0)])
                    + self.between(-0.05, 0.05);
                self.limit(path, "thickness", Some(rounded(least)), None);
            }
        }
        if self.chance(60) {
            let most =
                self.dice.weighed(&[(6, 0.6), (3, 0.2), (1, 0.03)]) * self.dice.between(0.7, 1.3);
            self.limit(path, "depth", None, Some(rounded(most)));
        }
        if self.chance(8) {
            let most = self.between(0.1, 0.8);
            self.limit(path, "depth", None, Some(rounded(most)));
        }
        if self.chance(15) {
            let most = self.between(0.05, 0.3);
            self.limit(path, "squareness", None, Some(rounded(most)));
        }
        if self.chance(12) {
            if self.chance(40) {
                self.put(path, "after", Leaf::Many(cut(lowest - 0.01)));
            } else {
                self.put(path, "passes[0].points", Leaf::Many(cut(lowest + 0.02)));
                if self.chance(40) {
                    let left = *self.dice.of(&["all_off", "traces", "remains"]);
                    self.word(path, "passes[0].coating_left", left);
                }
            }
        }
        if self.chance(12) {
            let coat = self.coat();
            self.word(path, "underside.coating", coat.word);
            self.note(&format!("{path}.underside"));
        }
    }
}
