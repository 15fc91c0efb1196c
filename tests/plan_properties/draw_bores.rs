//! Seat tubes, head tubes, crowns, steerers, and places where nothing is cut.

use crate::draw::{Coat, Draw, exact};
use crate::leaf::{Leaf, Said};
use crate::rows::ROWS;

/// Readings of a bore at depths and directions: oval and tapering by a little.
pub fn bore(draw: &mut Draw, size: f64, depths: &[f64]) -> Vec<Said> {
    let oval = if draw.chance(70) {
        draw.between(0.0, 0.006)
    } else {
        draw.between(0.0, 0.05)
    };
    let taper = if draw.chance(70) {
        draw.between(0.0, 0.004)
    } else {
        draw.between(0.0, 0.08)
    };
    let mut out = Vec::new();
    for (index, depth) in depths.iter().enumerate() {
        for angle in [0, 90] {
            let wider = if angle == 90 { oval } else { 0.0 } + taper * index as f64;
            let at = if depths.len() > 1 {
                format!("{depth} mm deep, {angle} deg")
            } else {
                format!("{angle} deg")
            };
            out.push(exact(at, size + wider));
        }
    }
    out
}

impl Draw {
    pub fn seat_tube(&mut self) {
        let path = "seat_tube";
        if self.truth.speaks_of(path) {
            return;
        }
        let (code, post) = *self.dice.of(&ROWS.posts);
        let coat = self.coat();
        self.common(path, coat);
        self.word(path, "believed", code);
        let metal = if self.fault(20) {
            post + self.between(0.15, 0.5)
        } else if self.chance(60) {
            post - self.between(0.02, 0.25)
        } else {
            post + self.between(0.0, 0.06)
        };
        let now = metal - 2.0 * coat.thick.min(0.05);
        let readings = bore(self, now, &[10.0, 60.0, 150.0]);
        self.put(path, "bore", Leaf::Many(readings));
        let wall = self.between(0.6, 1.4);
        let outside = post + 2.0 * wall;
        self.put(
            path,
            "outside",
            Leaf::Many(vec![exact("", outside), exact("", outside + 0.01)]),
        );
        let clear = self.between(155.0, 300.0).round();
        self.put(path, "clear_depth", Leaf::Size(clear));
        if self.chance(50) {
            let weld = self.between(30.0, 70.0).round();
            self.put(path, "weld_depth", Leaf::Size(weld));
        }
        let insertion = self.between(70.0, 105.0).round();
        if self.chance(60) {
            self.word(path, "post.name", "seatpost");
            let off = if self.fault(15) {
                self.between(0.2, 0.6)
            } else {
                self.between(0.02, 0.08)
            };
            let outside = post - off;
            self.put(path, "post.outside", Leaf::Many(vec![exact("", outside)]));
            self.put(path, "post.insertion", Leaf::Size(insertion));
            let made_of = *self.dice.of(&["aluminium", "carbon", "titanium", "steel"]);
            self.word(path, "post.material", made_of);
        }
        self.tube_limits(path, post, wall, clear);
        if self.chance(15) {
            let after = if self.fault(20) {
                post + self.between(0.15, 0.4)
            } else {
                post + self.between(-0.08, 0.05)
            };
            self.bore_passes(path, after.max(metal), coat, &[10.0, 60.0, 150.0]);
        }
        if self.chance(15) {
            let coat = self.coat();
            self.word(path, "slot.coating", coat.word);
            self.note("seat_tube.slot");
        }
    }

    fn tube_limits(&mut self, path: &str, post: f64, wall: f64, clear: f64) {
        if self.chance(25) {
            let upper = post + self.between(-0.15, 0.35);
            self.limit(path, "bore", None, Some(upper));
        }
        if self.chance(25) {
            let least = wall + self.between(-0.4, 0.15);
            self.limit(path, "wall", Some(least), None);
        }
        if self.chance(12) {
            let least = self.between(60.0, 110.0).round();
            self.limit(path, "insertion", Some(least), None);
        }
        if self.chance(12) {
            let most = clear - self.between(-20.0, 60.0).round();
            self.limit(path, "depth", None, Some(most));
        }
        if self.chance(12) {
            let most = self.between(0.05, 0.4);
            self.limit(path, "clearance", None, Some(most));
        }
    }

    /// Passes over a bore that end at a size: nowhere narrower than before.
    pub fn bore_passes(&mut self, path: &str, size: f64, coat: Coat, depths: &[f64]) {
        let before = self.truth.readings(&format!("{path}.bore")).to_vec();
        let opened = |mut readings: Vec<Said>| {
            for (now, was) in readings.iter_mut().zip(&before) {
                now.mm = now.mm.max(was.mm);
            }
            readings
        };
        let readings = opened(bore(self, size, depths));
        if self.chance(40) {
            self.put(path, "after", Leaf::Many(readings));
            return;
        }
        self.put(path, "passes[0].bore", Leaf::Many(readings));
        if coat.covers() {
            let left = *self.dice.of(&["all_off", "traces", "remains"]);
            self.word(path, "passes[0].coating_left", left);
        }
        if self.chance(30) {
            let marks = *self.dice.of(&["none", "tool", "chatter", "torn"]);
            self.word(path, "passes[0].marks", marks);
        }
        if self.chance(30) {
            let did = *self.dice.of(&["fits", "tight", "loose", "rocks"]);
            self.word(path, "passes[0].part", did);
        }
        if self.chance(30) {
            self.note(&format!("{path}.passes[0]"));
        }
        if self.chance(20) {
            let mut readings = self
                .truth
                .readings(&format!("{path}.passes[0].bore"))
                .to_vec();
            readings.iter_mut().for_each(|r| r.mm += 0.01);
            self.put(path, "passes[1].bore", Leaf::Many(readings));
        }
    }

    pub fn head_end(&mut self, end: &str) {
        let path = &format!("head_tube.{end}");
        if self.truth.speaks_of(path) {
            return;
        }
        let (code, low, high, integrated, listed) = *self.dice.of(&ROWS.seats);
        let coat = self.coat();
        self.common(path, coat);
        self.word(path, "believed", code);
        let metal = if self.fault(20) {
            high + self.between(0.03, 0.3)
        } else if !integrated && self.chance(50) {
            low - self.between(0.02, 0.2)
        } else {
            self.between(low, high)
        };
        let readings = bore(self, metal - 2.0 * coat.thick.min(0.06), &[5.0]);
        self.put(path, "bore", Leaf::Many(readings));
        let wall = self.between(0.8, 3.0);
        self.put(
            path,
            "outside",
            Leaf::Many(vec![exact("", high + 2.0 * wall)]),
        );
        let insertion = self.between(7.0, 14.0);
        let depth = if self.chance(15) {
            insertion - self.between(0.2, 2.0)
        } else {
            insertion + self.between(0.3, 5.0)
        };
        // Most bores are as deep as their seat is listed.
        let depth = listed
            .filter(|_| self.dice.chance(85))
            .map_or(depth, |least| depth.max(least + 0.3));
        self.put(path, "bore_depth", Leaf::One(exact("", depth)));
        if self.chance(80) {
            let name = if integrated { "bearing" } else { "headset cup" };
            self.word(path, "part.name", name);
            let tight = self.between(0.02, 0.2);
            let outside = if integrated {
                low - tight.min(0.15)
            } else {
                low.midpoint(high) + tight
            };
            self.put(path, "part.outside", Leaf::Many(vec![exact("", outside)]));
            self.put(
                path,
                "part.insertion",
                Leaf::Size(crate::leaf::rounded(insertion)),
            );
            let fitted = self.dice.weighed(&[(80, "no"), (5, "yes"), (0, "stuck")]);
            let fitted = if self.fault(30) { "stuck" } else { fitted };
            self.word(path, "part.fitted", fitted);
        }
        if end == "lower" {
            let gap = self.between(0.3, 2.5);
            self.put(path, "crown_gap", Leaf::One(exact("", gap)));
            if self.chance(20) {
                let least = gap + self.between(-1.0, 0.1);
                self.limit(path, "crown_gap", Some(least), None);
            }
        }
        self.head_limits(path, (low, high), wall, depth);
        if self.chance(65) {
            let inner = high / 2.0 + 0.4;
            self.face(&format!("{path}.face"), coat, inner, inner + wall.max(1.5));
        }
        if self.chance(12) {
            let after = if self.fault(20) {
                high + self.between(0.05, 0.2)
            } else {
                self.between(low - 0.05, high)
            };
            self.bore_passes(path, after.max(metal), coat, &[5.0]);
        }
    }

    fn head_limits(&mut self, path: &str, (low, high): (f64, f64), wall: f64, depth: f64) {
        if self.chance(20) {
            let upper = high + self.between(-0.08, 0.08);
            let lower = self.chance(60).then_some(low.min(upper) - 0.02);
            self.limit(path, "bore", lower, Some(upper));
        }
        if self.chance(20) {
            let least = wall + self.between(-1.0, 0.2);
            self.limit(path, "wall", Some(least), None);
        }
        if self.chance(12) {
            self.limit(path, "interference", Some(0.05), Some(0.25));
        }
        if self.chance(6) {
            self.limit(path, "clearance", None, Some(0.2));
        }
        if self.chance(15) {
            let off = self.between(-3.0, 0.5);
            self.limit(
                path,
                "bore_depth",
                Some(depth + off),
                Some(depth + off + 3.5),
            );
        }
        if self.chance(8) {
            self.limit(path, "parallelism", None, Some(0.1));
        }
    }

    pub fn crown(&mut self) {
        if self.truth.speaks_of("crown") {
            return;
        }
        let (code, seat) = *self.dice.of(&ROWS.crowns);
        let coat = self.coat();
        self.common("crown", coat);
        self.word("crown", "believed", code);
        let metal = if self.fault(20) {
            seat - self.between(0.1, 0.3)
        } else {
            seat + self.between(-0.02, 0.06)
        };
        let on = metal + 2.0 * coat.thick;
        self.put(
            "crown",
            "seat",
            Leaf::Many(vec![exact("0 deg", on), exact("90 deg", on + 0.01)]),
        );
        let race = seat - self.between(0.02, 0.15);
        self.put("crown", "race", Leaf::Many(vec![exact("", race)]));
        if self.chance(15) {
            self.limit("crown", "seat", Some(seat - 0.05), Some(seat + 0.08));
        }
        if self.chance(10) {
            self.limit("crown", "interference", Some(0.02), Some(0.2));
        }
        if self.chance(10) && coat.covers() {
            self.put(
                "crown",
                "after",
                Leaf::Many(vec![exact("0 deg", metal), exact("90 deg", metal + 0.005)]),
            );
        }
    }

    pub fn steerer(&mut self) {
        if self.truth.speaks_of("steerer") {
            return;
        }
        let (code, size, pitch) = self.dice.of(&ROWS.steerers).clone();
        let coat = self.coat();
        self.common("steerer", coat);
        self.word("steerer", "believed", code);
        let outside = size + self.between(-0.08, 0.02) + 2.0 * coat.thick;
        self.put("steerer", "outside", Leaf::Many(vec![exact("", outside)]));
        if let Some(pitch) = &pitch {
            self.word("steerer", "pitch", pitch);
        }
        let stack: Vec<f64> = [12.0, 140.0, 15.0, 20.0, 40.0]
            .iter()
            .map(|s| s + self.dice.between(-3.0, 3.0))
            .collect();
        let length = stack.iter().sum::<f64>() + self.between(-8.0, 6.0);
        self.put("steerer", "length", Leaf::One(exact("", length)));
        self.put(
            "steerer",
            "stack",
            Leaf::Many(stack.into_iter().map(|s| exact("", s)).collect()),
        );
        if self.chance(15) {
            let least = length + self.between(-40.0, 10.0);
            self.limit("steerer", "length", Some(least), None);
        }
    }

    pub fn other(&mut self) {
        let path = *self.dice.of(&[
            "iscg",
            "dropout.rear.drive",
            "dropout.rear.non_drive",
            "dropout.front.drive",
            "dropout.front.non_drive",
        ]);
        if self.truth.speaks_of(path) {
            return;
        }
        let coat = self.coat();
        self.common(path, coat);
        self.note(path);
        if self.chance(30) {
            self.limit(path, "thickness", Some(6.0), None);
        }
    }
}
