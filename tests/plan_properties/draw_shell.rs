//! Bottom-bracket shells and faces.

use crate::draw::{Coat, Draw, exact};
use crate::draw_bores::bore;
use crate::leaf::{Leaf, Said, rounded};
use crate::rows::{ROWS, ShellRow};

impl Draw {
    pub fn shell(&mut self) {
        if self.chance(75) {
            let row = if self.chance(55) {
                &ROWS.threaded[0]
            } else {
                self.dice.of(&ROWS.threaded)
            };
            self.threaded_shell(row);
        } else {
            let row = self.dice.of(&ROWS.plain);
            self.plain_shell(row);
        }
    }

    fn widths(&mut self, row: &ShellRow) -> f64 {
        let path = "shell";
        self.word(path, "believed", row.code);
        let nominal = *self.dice.of(&row.widths);
        let width =
            nominal + self.dice.weighed(&[(7, 0.0), (2, 0.3), (1, -0.7)]) + self.between(-0.1, 0.6);
        self.put(
            path,
            "width",
            Leaf::Many(vec![
                exact("", width),
                exact("", width + 0.01),
                exact("", width + 0.02),
            ]),
        );
        if let Some((code, ..)) = row
            .windows
            .first()
            .filter(|(_, low, high)| (*low - 1.0..high + 1.0).contains(&nominal))
        {
            self.word(path, "window", code);
        }
        if self.chance(if row.windows.is_empty() { 75 } else { 35 }) {
            let least = width - self.dice.weighed(&[(6, 0.9), (3, 0.35), (1, 0.0)])
                + self.between(-0.1, 0.1);
            let most = self.chance(30).then_some(least + 1.0);
            self.limit(path, "width", Some(least), most);
        }
        if self.chance(8) {
            let least = width - self.between(0.1, 1.2);
            self.limit(path, "width", Some(least), None);
        }
        if self.chance(6) {
            self.limit(path, "parallelism", None, Some(0.1));
        }
        if self.chance(15) {
            self.put(path, "made_for", Leaf::Size(nominal));
        }
        width
    }

    fn threaded_shell(&mut self, row: &ShellRow) {
        let path = "shell";
        let coat = self.coat();
        self.common(path, coat);
        let width = self.widths(row);
        if let Some(pitch) = &row.pitch {
            self.word(path, "pitch", pitch);
        }
        let minor = row.minor.unwrap_or(33.67);
        let hands = row.hands.map(|h| {
            h.unwrap_or(if self.dice.chance(50) {
                "left"
            } else {
                "right"
            })
        });
        for (side, hand) in ["drive", "non_drive"].into_iter().zip(hands) {
            self.shell_side(&format!("{path}.{side}"), coat, minor, hand);
        }
        if self.chance(10) && row.faced {
            let half = width / 2.0;
            self.put(path, "half_drive", Leaf::One(exact("", half)));
            self.put(path, "half_non_drive", Leaf::One(exact("", half)));
        }
    }

    fn shell_side(&mut self, path: &str, coat: Coat, minor: f64, hand: &str) {
        self.word(path, "hand", hand);
        let torn = self.fault(15);
        let clean = minor + self.between(0.02, 0.16) + if torn { 0.4 } else { 0.0 };
        let on = clean - 2.0 * coat.thick.min(0.06);
        self.put(
            path,
            "minor",
            Leaf::Many(vec![exact("", on), exact("", on + 0.01)]),
        );
        self.thread_state(path, coat, torn);
        if self.chance(12) {
            let most = self.between(10.0, 30.0);
            self.limit(path, "depth", None, Some(most));
        }
        if self.chance(12) {
            self.note(path);
        }
        if self.chance(5) {
            let own = *self.dice.of(&["steel", "aluminium", "titanium"]);
            self.word(path, "material", own);
        }
        if self.chance(75) {
            self.face(
                &format!("{path}.face"),
                coat,
                minor / 2.0 + 0.7,
                minor / 2.0 + 3.6,
            );
        }
    }

    /// State of a thread with what the gauges did to it: torn, or not.
    pub fn thread_state(&mut self, path: &str, coat: Coat, torn: bool) {
        let state = if torn {
            *self.dice.of(&["stripped", "loose"])
        } else if self.fault(10) {
            "crossed"
        } else if coat.covers() {
            self.dice
                .weighed(&[(70, "fouled"), (15, "rough"), (15, "sound")])
        } else {
            self.dice
                .weighed(&[(30, "fouled"), (30, "rough"), (40, "sound")])
        };
        self.word(path, "state", state);
        let (go, not_go) = match state {
            "stripped" | "loose" => ("passed", "failed"),
            "sound" => ("passed", "passed"),
            _ => ("failed", "passed"),
        };
        if self.chance(70) {
            self.word(path, "go", go);
        }
        if self.chance(50) {
            self.word(path, "not_go", not_go);
        }
        if !torn && state != "sound" && self.chance(12) {
            self.thread_passes(path);
        }
    }

    fn thread_passes(&mut self, path: &str) {
        let worn = self.fault(20);
        let go = if worn || self.chance(75) {
            "passed"
        } else {
            "failed"
        };
        let not_go = if worn { "failed" } else { "passed" };
        if self.chance(40) {
            self.word(path, "go_after", go);
            self.word(path, "not_go_after", not_go);
        } else {
            self.word(path, "passes[0].go", go);
            self.word(path, "passes[0].not_go", not_go);
            if self.chance(30) {
                self.note(&format!("{path}.passes[0]"));
            }
        }
    }

    fn plain_shell(&mut self, row: &ShellRow) {
        let path = "shell";
        let coat = self.coat();
        self.common(path, coat);
        self.widths(row);
        let (nominal, window) = row.bore.unwrap_or((46.0, None));
        let (low, high) = window.unwrap_or((nominal - 0.03, nominal + 0.02));
        let metal = if self.fault(20) {
            high + self.between(0.02, 0.15)
        } else if self.chance(45) {
            low - self.between(0.01, 0.08)
        } else {
            self.between(low, high)
        };
        let on = metal - 2.0 * coat.thick.min(0.04);
        let readings = bore(self, on, &[5.0, 60.0]);
        self.put(path, "bore", Leaf::Many(readings));
        let wall = self.between(1.0, 3.0);
        self.put(
            path,
            "outside",
            Leaf::Many(vec![exact("", high + 2.0 * wall)]),
        );
        if window.is_none() || self.chance(25) {
            let upper = high + self.between(-0.02, 0.03);
            self.limit(path, "bore", Some(low.min(upper) - 0.005), Some(upper));
        }
        if self.chance(20) {
            let least = wall + self.between(-1.0, 0.2);
            self.limit(path, "wall", Some(least), None);
        }
        if self.chance(12) && !row.slip {
            self.limit(path, "interference", Some(0.01), Some(0.12));
        }
        if self.chance(60) {
            self.word(path, "part.name", "cup");
            let outside = if row.slip {
                low - 0.01
            } else {
                high + self.between(0.0, 0.06)
            };
            self.put(path, "part.outside", Leaf::Many(vec![exact("", outside)]));
        }
        for side in ["drive", "non_drive"] {
            if row.faced && self.chance(60) {
                self.face(
                    &format!("{path}.{side}.face"),
                    coat,
                    high / 2.0 + 0.5,
                    high / 2.0 + 0.5 + wall.max(1.2),
                );
            }
        }
        if self.chance(12) {
            let after = if self.fault(20) {
                high + 0.08
            } else {
                self.between(low - 0.03, high)
            };
            self.bore_passes(path, after.max(metal), coat, &[5.0, 60.0]);
        }
    }

    /// A face around a bore: tilted, coated, cut once or not at all.
    pub fn face(&mut self, path: &str, coat: Coat, inner: f64, outer: f64) {
        let own = if self.chance(30) { self.coat() } else { coat };
        if own.word != coat.word || self.chance(50) {
            self.word(path, "coating", own.word);
        } else {
            self.truth.0.remove(&format!("{path}.coating"));
        }
        let own = if self.truth.get(&format!("{path}.coating")).is_some() {
            own
        } else {
            coat
        };
        self.put(path, "inner_radius", Leaf::Size(rounded(inner)));
        self.put(path, "outer_radius", Leaf::Size(rounded(outer)));
        self.put(
            path,
            "probe_radius",
            Leaf::Size(rounded(inner.midpoint(outer))),
        );
        let count = *self.dice.of(&[5_u32, 7, 9]);
        let tilt = if self.chance(70) {
            self.between(0.0, 0.06)
        } else {
            self.between(0.0, 0.25)
        };
        let towards = self.between(0.0, 360.0);
        let heights: Vec<(f64, f64)> = (0..count)
            .map(|i| {
                let angle = (f64::from(i) * 360.0 / f64::from(count)).round();
                let rough = self.dice.between(-0.004, 0.004);
                (
                    angle,
                    own.thick + tilt * (angle - towards).to_radians().cos() + rough,
                )
            })
            .collect();
        let probes = |level: f64| -> Vec<Said> {
            heights
                .iter()
                .map(|(angle, z)| exact(format!("{angle} deg"), z.min(level)))
                .collect()
        };
        self.put(path, "probes", Leaf::Many(probes(9.0)));
        let (low, high) = heights
            .iter()
            .fold((9.0_f64, -9.0_f64), |(l, h), (_, z)| (l.min(*z), h.max(*z)));
        if self.chance(30) {
            let most =
                self.dice.weighed(&[(6, 0.5), (3, 0.15), (1, 0.02)]) * self.dice.between(0.7, 1.3);
            self.limit(path, "depth", None, Some(rounded(most)));
        }
        if self.chance(6) {
            let most = self.between(0.1, 0.6);
            self.limit(path, "depth", None, Some(rounded(most)));
        }
        if self.chance(20) {
            let most = self.between(0.02, 0.2);
            self.limit(path, "squareness", None, Some(rounded(most)));
        }
        if self.chance(12) {
            self.note(path);
        }
        if self.chance(12) {
            let level = if self.chance(50) {
                low - 0.01
            } else {
                low.midpoint(high)
            };
            if self.chance(40) {
                self.put(path, "after", Leaf::Many(probes(level)));
            } else {
                self.put(path, "passes[0].probes", Leaf::Many(probes(level)));
                if self.chance(40) {
                    let left = *self.dice.of(&["all_off", "traces", "remains"]);
                    self.word(path, "passes[0].coating_left", left);
                }
                if self.chance(20) {
                    let marks = *self.dice.of(&["none", "tool", "chatter", "torn"]);
                    self.word(path, "passes[0].marks", marks);
                }
                if self.chance(30) {
                    self.note(&format!("{path}.passes[0]"));
                }
            }
        }
    }
}
