//! One question, one answer: whoever asks about a place gets the same facts. The library's verdict and the answer of `ask` are
//! compared as data over a grid of questions; there is no list of exceptions.
#![cfg(all(feature = "std", feature = "json"))]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use framegauge::ask::{Context, answer_line};
use framegauge::face::MountKind;
use framegauge::fit::Feature;
use framegauge::judge::*;
use framegauge::measure::{DecisionRule, Limits, Outcome, Placed, Reading};
use framegauge::standard::{End, HeadTubeEnd, Joint, Place, Tables};
use framegauge::{Error, Length, parse_length};
use serde_json::{Map, Value, json};

/// Cases of each question.
const CASES: u32 = 2000;

/// Numbers that look like none, the same in every run (a linear congruence).
struct Dice(u64);

impl Dice {
    fn roll(&mut self, sides: u64) -> u64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) % sides
    }
    fn one<'a, T>(&mut self, of: &'a [T]) -> &'a T {
        &of[usize::try_from(self.roll(of.len() as u64)).unwrap()]
    }
    fn maybe<T>(&mut self, make: impl FnOnce(&mut Self) -> T) -> Option<T> {
        (self.roll(2) == 0).then(|| make(self))
    }
    fn several<T>(&mut self, most: u64, mut make: impl FnMut(&mut Self) -> T) -> Vec<T> {
        (0..self.roll(most + 1)).map(|_| make(self)).collect()
    }
    /// A length around this one, in micrometres of it.
    fn length(&mut self, around: f64, within: f64) -> String {
        let share = self.roll(2001) as f64 / 1000.0 - 1.0;
        format!("{:.3} mm", around + share * within)
    }
    fn reading(&mut self, around: f64, within: f64) -> String {
        let u = self
            .one(&["0.002", "0.01", "0.02", "0.05", "0.1"])
            .to_owned();
        let value = self.length(around, within);
        format!("{} +/- {u} mm", value.trim_end_matches(" mm"))
    }
    fn placed(&mut self, around: f64, within: f64) -> String {
        let reading = self.reading(around, within);
        let spot = self.one(&[
            "",
            "5 mm deep: ",
            "40 mm deep, 0 deg: ",
            "40 mm deep, 90 deg: ",
            "over paint: ",
            "on metal: ",
        ]);
        format!("{spot}{reading}")
    }
    fn rule(&mut self) -> Option<String> {
        self.maybe(|dice| {
            dice.one(&["2017", "1998", "simple", "guard 0.5"])
                .to_string()
        })
    }
    fn limits(&mut self, around: f64, within: f64) -> String {
        let (a, b) = (self.roll(1000) as f64, self.roll(1000) as f64);
        let at = |x: f64| around - within + x / 500.0 * within;
        match self.roll(3) {
            0 => format!("at least {:.3} mm", at(a)),
            1 => format!("at most {:.3} mm", at(a)),
            _ => format!("{:.3} to {:.3} mm", at(a.min(b)), at(a.max(b))),
        }
    }
}

fn read<T: core::str::FromStr<Err = Error>>(text: &str) -> T {
    text.parse().unwrap_or_else(|e| panic!("{text}: {e}"))
}
fn reads<T: core::str::FromStr<Err = Error>>(texts: &[String]) -> Vec<T> {
    texts.iter().map(|t| read(t)).collect()
}
fn length(text: &str) -> Length {
    parse_length(text).unwrap()
}
fn lengths(texts: &[String]) -> Vec<Length> {
    texts.iter().map(|t| length(t)).collect()
}
fn rule(text: Option<&String>) -> Option<DecisionRule> {
    text.map(|t| read(t))
}

/// A question in both forms, and what the library says to it.
struct Both {
    line: Value,
    said: Result<Verdict, Error>,
}

/// The line without the fields that were not told.
fn line(name: &str, fields: Value) -> Value {
    let mut told = Map::from_iter([("ask".to_owned(), json!(name))]);
    for (field, value) in fields.as_object().unwrap() {
        let empty = value.is_null() || value.as_array().is_some_and(Vec::is_empty);
        if !empty {
            told.insert(field.clone(), value.clone());
        }
    }
    Value::Object(told)
}

/// The outcomes that were met, so that a grid that only ever errs is noticed.
fn compare(name: &str, mut make: impl FnMut(&mut Dice) -> Both) {
    let mut dice = Dice(20_260_101);
    let (mut answered, mut refused) = (0, 0);
    let mut outcomes = std::collections::BTreeSet::new();
    for _ in 0..CASES {
        let both = make(&mut dice);
        let text = both.line.to_string();
        let reply: Value =
            serde_json::from_str(&answer_line(&text, &Context::default()).json).unwrap();
        match both.said {
            Ok(said) => {
                outcomes.insert(said.outcome.to_string());
                let mut told = reply["answer"].clone();
                let fields = told
                    .as_object_mut()
                    .unwrap_or_else(|| panic!("{text}\n{reply}"));
                // What it rests on stands beside the verdict, and is the weakest of its evidence.
                let evidence = fields.remove("evidence").unwrap();
                fields.remove("sources").unwrap();
                if let Some(weakest) = said.weakest {
                    assert_eq!(evidence["grade"], json!(weakest), "{text}");
                }
                assert_eq!(told, serde_json::to_value(&said).unwrap(), "{text}");
                answered += 1;
            }
            Err(error) => {
                let told = &reply["error"];
                let kind: &'static str = error.kind().into();
                assert_eq!(
                    (told["kind"].as_str(), told["field"].as_str()),
                    (Some(kind), Some(error.field())),
                    "{text}\n{error}"
                );
                refused += 1;
            }
        }
    }
    assert!(
        answered > CASES / 4,
        "{name}: {answered} answered, {refused} refused"
    );
    assert!(
        outcomes.len() > 1 || name == "dropouts" || name == "coating",
        "{name}: {outcomes:?}"
    );
}

const OURS: Tables<'static> = Tables::ours();

#[test]
fn insertion() {
    compare("insertion", |d| {
        let post = d.maybe(|d| d.length(29.0, 4.0));
        let weld = d.maybe(|d| d.length(70.0, 60.0));
        let inserted = d.maybe(|d| d.reading(100.0, 70.0));
        let clear = d.maybe(|d| d.length(150.0, 100.0));
        let written = d.several(2, |d| d.length(100.0, 60.0));
        let by = d.rule();
        let told: Vec<Value> = written
            .iter()
            .map(|depth| json!({"owner": "an invented maker", "depth": depth}))
            .collect();
        Both {
            line: line(
                "insertion",
                json!({"post": post, "weld": weld, "inserted": inserted, "clear": clear, "written": told, "rule": by}),
            ),
            said: Insertion {
                post: post.as_deref().map(length),
                weld: weld.as_deref().map(length),
                written: lengths(&written)
                    .into_iter()
                    .map(|depth| WrittenDepth {
                        owner: "an invented maker".into(),
                        depth,
                    })
                    .collect(),
                inserted: inserted.as_deref().map(read),
                clear: clear.as_deref().map(length),
                rule: rule(by.as_ref()),
            }
            .answer(OURS),
        }
    });
}

#[test]
fn fit() {
    compare("fit", |d| {
        let joint = *d.one(&[
            Joint::HeadCup,
            Joint::CrownRace,
            Joint::Seatpost,
            Joint::PressShell,
            Joint::DirectBearing,
            Joint::IntegratedBearing,
            Joint::Quill,
            Joint::Other,
        ]);
        let size = *d.one(&[27.2, 30.0, 34.0, 41.1, 42.0, 44.0]);
        let hole = d.several(2, |d| d.placed(size, 0.3));
        let shaft = d.several(2, |d| d.placed(size, 0.3));
        let sold_as = d.maybe(|_| format!("{size} mm"));
        let clearance = d.maybe(|d| d.limits(0.1, 0.1));
        let felt = d.maybe(|d| {
            *d.one(&[
                Felt::GoesByHand,
                Felt::Rocks,
                Felt::NeedsForce,
                Felt::TurnedInUse,
            ])
        });
        let by = d.rule();
        let name = *d.one(&["fit", "mate"]);
        Both {
            line: line(
                name,
                json!({"joint": joint, "hole": {"readings": hole}, "shaft": {"readings": shaft}, "sold_as": sold_as, "clearance": clearance, "felt": felt.map(|f| f.to_string()), "rule": by}),
            ),
            said: Fit {
                joint: Some(joint),
                hole: MemberOf::placed(reads::<Placed>(&hole)),
                shaft: MemberOf::placed(reads::<Placed>(&shaft)),
                sold_as: sold_as.as_deref().map(length),
                clearance: clearance.as_deref().map(read).into_iter().collect(),
                felt: felt.into_iter().collect(),
                rule: rule(by.as_ref()),
                ..Fit::default()
            }
            .answer(OURS),
        }
    });
}

#[test]
fn depth() {
    compare("depth", |d| {
        let bore_depth = d.several(3, |d| d.reading(12.0, 2.0));
        let insertion = d.reading(12.0, 1.0);
        let room = d.maybe(|d| d.length(0.5, 0.5));
        let by = d.rule();
        Both {
            line: line(
                "depth",
                json!({"bore_depth": bore_depth, "insertion": insertion, "room": room, "rule": by}),
            ),
            said: CupDepth {
                bore_depth: reads(&bore_depth),
                insertion: read(&insertion),
                room: room.as_deref().map(length),
                rule: rule(by.as_ref()),
            }
            .answer(OURS),
        }
    });
}

#[test]
fn spindle_width() {
    compare("spindle_width", |d| {
        let made = *d.one(&[68.0, 70.0, 73.0]);
        let width = d.several(2, |d| d.reading(made, 2.0));
        let made_for = d.maybe(|_| format!("{made} mm"));
        let window = d.maybe(|d| {
            d.one(&[
                "bsc_half_axle_68",
                "bsc_road_68",
                "italian_half_axle_70",
                "none",
            ])
            .to_string()
        });
        let by = d.rule();
        Both {
            line: line(
                "spindle_width",
                json!({"width": width, "made_for": made_for, "window": window, "rule": by}),
            ),
            said: SpindleWidth {
                width: reads(&width),
                made_for: made_for.as_deref().map(length),
                window,
                rule: rule(by.as_ref()),
            }
            .answer(OURS),
        }
    });
}

#[test]
fn bolt_length() {
    compare("bolt_length", |d| {
        let thickness = d.reading(20.0, 5.0);
        let bolt = d.maybe(|d| d.length(33.0, 6.0));
        let bolts = d.several(3, |d| d.length(33.0, 8.0));
        let engaged = d.maybe(|d| d.limits(12.0, 3.0));
        let by = d.rule();
        Both {
            line: line(
                "bolt_length",
                json!({"thickness": thickness, "bolt": bolt, "bolts": bolts, "engaged": engaged, "rule": by}),
            ),
            said: BoltLength {
                thickness: read(&thickness),
                bolt: bolt.as_deref().map(length),
                bolts: lengths(&bolts),
                engaged: engaged.as_deref().map(read),
                rule: rule(by.as_ref()),
            }
            .answer(OURS),
        }
    });
}

#[test]
fn caliper_tilt() {
    compare("caliper_tilt", |d| {
        let kind = *d.one(&[MountKind::Posts, MountKind::Tab]);
        let few = d.roll(8) == 0;
        let mut points = Vec::new();
        for (along, across) in [(-37, -7), (-37, 7), (37, -7), (37, 7)] {
            let u = *d.one(&["0.004", "0.008", "0.02"]);
            let height = d.length(0.0, 0.3);
            let height = height.trim_end_matches(" mm");
            points.push(format!(
                "{along} mm along, {across} mm across: {height} +/- {u} mm"
            ));
        }
        if few {
            points.truncate(1);
        }
        let pad_length = d.maybe(|d| d.length(25.0, 5.0));
        let pad_clearance = d.maybe(|d| d.length(0.25, 0.2));
        let by = d.rule();
        Both {
            line: line(
                "caliper_tilt",
                json!({"kind": kind.to_string(), "points": points, "pad_length": pad_length, "pad_clearance": pad_clearance, "rule": by}),
            ),
            said: CaliperTilt {
                kind,
                points: reads(&points),
                pad_length: pad_length.as_deref().map(length),
                pad_clearance: pad_clearance.as_deref().map(length),
                rule: rule(by.as_ref()),
            }
            .answer(OURS),
        }
    });
}

fn owned(limits: &[String]) -> Vec<OwnLimits> {
    limits.iter().map(|l| read::<Limits>(l).into()).collect()
}

#[test]
fn bore() {
    compare("bore", |d| {
        let bore = d.several(4, |d| d.placed(43.97, 0.06));
        let limits = d.several(2, |d| d.limits(43.97, 0.05));
        let figure = d.maybe(|d| {
            (
                d.one(&["ZS44", "EC44", "nobody"]).to_string(),
                d.one(&["bore", "cup", "colour"]).to_string(),
            )
        });
        let by = d.rule();
        let named = figure
            .as_ref()
            .map(|(code, field)| json!({"family": "head_seat", "code": code, "field": field}));
        Both {
            line: line(
                "bore",
                json!({"bore": bore, "limits": limits, "figure": named, "rule": by}),
            ),
            said: BoreFit {
                bore: reads(&bore),
                limits: owned(&limits),
                figure: figure.map(|(code, field)| FigureName {
                    family: "head_seat".into(),
                    code,
                    field,
                }),
                rule: rule(by.as_ref()),
            }
            .answer(OURS),
        }
    });
}

#[test]
fn gauging() {
    compare("gauging", |d| {
        let word = |d: &mut Dice| d.maybe(|d| *d.one(&[Passed::Passed, Passed::Failed]));
        let (go, not_go, plain_go, plain_not_go) = (word(d), word(d), word(d), word(d));
        let turns = d.maybe(|d| d.roll(6) as f64);
        let seen = d.several(2, |d| {
            *d.one(&[
                ThreadSeen::Sound,
                ThreadSeen::TakesPart,
                ThreadSeen::Fouled,
                ThreadSeen::Jams,
                ThreadSeen::Crossed,
                ThreadSeen::Loose,
                ThreadSeen::LooseWithSeveral,
                ThreadSeen::Stripped,
                ThreadSeen::Uncut,
            ])
        });
        let thread = d.maybe(|d| {
            d.one(&["M10x1-6H", "M5x0.8", "1.370 in x 24 tpi BSC"])
                .to_string()
        });
        let limits = d.maybe(|d| d.limits(9.05, 0.3));
        let minor = d.several(2, |d| d.placed(9.05, 0.3));
        let by = d.rule();
        let told = |p: Option<Passed>| p.map(|p| p.to_string());
        let signs: Vec<String> = seen.iter().map(ToString::to_string).collect();
        Both {
            line: line(
                "gauging",
                json!({"thread": thread, "go": told(go), "not_go": told(not_go), "not_go_turns": turns, "plain_go": told(plain_go), "plain_not_go": told(plain_not_go), "seen": signs, "minor": minor, "limits": limits, "rule": by}),
            ),
            said: Gauging {
                thread: thread.as_deref().map(read),
                screw: None,
                go,
                not_go,
                not_go_turns: turns,
                plain_go,
                plain_not_go,
                seen,
                minor: reads(&minor),
                limits: limits.as_deref().map(|l| read::<Limits>(l).into()),
                rule: rule(by.as_ref()),
            }
            .answer(OURS),
        }
    });
}

#[test]
fn wall_and_ream() {
    compare("wall", |d| {
        let place = d.maybe(|d| {
            d.one(&[
                Place::HeadTube(HeadTubeEnd::Upper),
                Place::SeatTube,
                Place::Shell,
            ])
            .clone()
        });
        let outside = d.reading(36.0, 1.5);
        let bore = d.several(3, |d| d.placed(34.0, 0.5));
        let least = d.several(2, |d| d.limits(1.0, 0.3));
        let by = d.rule();
        Both {
            line: line(
                "wall",
                json!({"place": place.as_ref().map(ToString::to_string), "outside": outside, "bore": bore, "least": least, "rule": by}),
            ),
            said: Wall {
                place,
                outside: read(&outside),
                bore: reads(&bore),
                least: owned(&least),
                rule: rule(by.as_ref()),
            }
            .answer(OURS),
        }
    });
    compare("ream", |d| {
        let outside = d.maybe(|d| d.reading(36.0, 1.5));
        let bore = d.several(3, |d| d.placed(33.5, 0.5));
        let to = d.length(34.0, 0.5);
        let least = d.several(2, |d| d.limits(1.0, 0.3));
        let by = d.rule();
        Both {
            line: line(
                "ream",
                json!({"outside": outside, "bore": bore, "to": to, "least": least, "rule": by}),
            ),
            said: Ream {
                outside: outside.as_deref().map(read),
                bore: reads(&bore),
                to: length(&to),
                least: owned(&least),
                rule: rule(by.as_ref()),
            }
            .answer(OURS),
        }
    });
}

#[test]
fn width_stack() {
    compare("width_stack", |d| {
        let width = d.several(2, |d| d.reading(68.0, 1.0));
        let spacers = d.several(2, |d| d.reading(2.5, 0.1));
        let wanted = d.several(2, |d| d.limits(71.0, 3.0));
        let by = d.rule();
        Both {
            line: line(
                "width_stack",
                json!({"width": width, "spacers": spacers, "wanted": wanted, "rule": by}),
            ),
            said: WidthWindow {
                width: reads(&width),
                spacers: reads(&spacers),
                wanted: owned(&wanted),
                figure: None,
                rule: rule(by.as_ref()),
            }
            .answer(OURS),
        }
    });
}

#[test]
fn holes_shims_and_posts() {
    compare("hole_to_tap", |d| {
        let thread = d
            .one(&["M10x1", "M10x1.5", "M5x0.8", "1.370 in x 24 tpi BSC"])
            .to_string();
        let hole = d.several(2, |d| d.placed(8.8, 0.6));
        let limits = d.maybe(|d| d.limits(8.8, 0.4));
        let by = d.rule();
        Both {
            line: line(
                "hole_to_tap",
                json!({"thread": thread, "hole": hole, "limits": limits, "rule": by}),
            ),
            said: HoleToTap {
                thread: read(&thread),
                hole: reads(&hole),
                limits: limits.as_deref().map(|l| read::<Limits>(l).into()),
                rule: rule(by.as_ref()),
            }
            .answer(OURS),
        }
    });
    compare("shim", |d| {
        let joint = d.maybe(|d| *d.one(&[Joint::Seatpost, Joint::HeadCup, Joint::Quill]));
        let interference = d.maybe(|d| d.length(0.05, 0.05));
        let bore = d.several(2, |d| d.placed(27.3, 0.2));
        let post = d.several(2, |d| d.placed(27.1, 0.2));
        let nominal = d.maybe(|_| "27.2 mm".to_owned());
        let clearance = d.maybe(|d| d.limits(0.1, 0.1));
        let sheet = d.maybe(|d| d.reading(0.15, 0.1));
        let by = d.rule();
        Both {
            line: line(
                "shim",
                json!({"joint": joint, "interference": interference, "bore": bore, "post": post, "nominal": nominal, "clearance": clearance, "sheet": sheet, "rule": by}),
            ),
            said: Shim {
                joint,
                hold: None,
                interference: interference.as_deref().map(length),
                bore: reads(&bore),
                post: reads(&post),
                nominal: nominal.as_deref().map(length),
                clearance: clearance.as_deref().map(read),
                sheet: sheet.as_deref().map(read),
                rule: rule(by.as_ref()),
            }
            .answer(OURS),
        }
    });
    compare("seatpost_for_tube", |d| {
        let bore = d.several(2, |d| d.placed(28.0, 3.0));
        let clearance = d.maybe(|d| d.limits(0.1, 0.1));
        let by = d.rule();
        Both {
            line: line(
                "seatpost_for_tube",
                json!({"bore": bore, "clearance": clearance, "rule": by}),
            ),
            said: SeatpostForTube {
                bore: reads(&bore),
                clearance: clearance.as_deref().map(read),
                rule: rule(by.as_ref()),
            }
            .answer(OURS),
        }
    });
}

#[test]
fn faces_hubs_and_calipers() {
    compare("parallel_faces", |d| {
        let parallelism = d.maybe(|d| d.reading(0.08, 0.08));
        let wear_pattern = d.maybe(|d| d.roll(2) == 0);
        let by = d.rule();
        Both {
            line: line(
                "parallel_faces",
                json!({"parallelism": parallelism, "wear_pattern": wear_pattern, "rule": by}),
            ),
            said: ParallelFaces {
                parallelism: parallelism.as_deref().map(read),
                wear_pattern,
                rule: rule(by.as_ref()),
            }
            .answer(OURS),
        }
    });
    compare("hub_width", |d| {
        let pattern = d.one(&["ta_12x142", "qr_front", "nobody"]).to_string();
        let over_caps = d.maybe(|d| d.reading(141.5, 2.0));
        let by = d.rule();
        Both {
            line: line(
                "hub_width",
                json!({"pattern": pattern, "over_caps": over_caps, "rule": by}),
            ),
            said: HubWidth {
                pattern,
                over_caps: over_caps.as_deref().map(read),
                rule: rule(by.as_ref()),
            }
            .answer(OURS),
        }
    });
    compare("caliper_place", |d| {
        let native = d.one(&["140 mm", "160 mm", "180 mm"]).to_string();
        let adapter = d.maybe(|d| d.one(&["0 mm", "20 mm", "-20 mm", "43 mm"]).to_string());
        let rotor = d.one(&["140 mm", "160 mm", "180 mm", "203 mm"]).to_string();
        let made_for = d.maybe(|d| *d.one(&[End::Front, End::Rear]));
        let on = d.maybe(|d| *d.one(&[End::Front, End::Rear]));
        let told = |end: Option<End>| end.map(|e| e.to_string());
        Both {
            line: line(
                "caliper_place",
                json!({"native": native, "adapter": adapter, "rotor": rotor, "made_for": told(made_for), "on": told(on)}),
            ),
            said: CaliperPlace {
                native: length(&native),
                adapter: adapter.as_deref().map(length),
                rotor: length(&rotor),
                made_for,
                on,
            }
            .answer(OURS),
        }
    });
}

#[test]
fn dropouts_spindles_coats_and_heat() {
    compare("dropouts", |d| {
        let spacing = d.reading(130.0, 6.0);
        let difference = d.maybe(|d| d.length(0.5, 0.4));
        let difference = difference.map(|l| format!("{} +/- 0.05 mm", l.trim_end_matches(" mm")));
        let over = d.maybe(|d| d.length(30.0, 10.0));
        let angle = d.maybe(|d| d.one(&["1 deg", "2.5 deg"]).to_string());
        Both {
            line: line(
                "dropouts",
                json!({"spacing": spacing, "hub": "130 mm", "difference": difference, "over": over, "angle": angle}),
            ),
            said: Dropouts {
                spacing: read(&spacing),
                hub: length("130 mm"),
                difference: difference.as_deref().map(read),
                over: over.as_deref().map(length),
                angle: angle
                    .as_deref()
                    .map(|a| framegauge::Printed::parse(a).unwrap()),
            }
            .answer(OURS),
        }
    });
    compare("spindle_binds", |d| {
        let spindle = d.maybe(|d| d.reading(29.98, 0.04));
        let bearing_bore = d.maybe(|d| d.reading(30.0, 0.02));
        let offset = d.several(2, |d| d.reading(0.3, 0.2));
        let apart = d.maybe(|d| d.length(60.0, 10.0));
        let ring_width = d.maybe(|d| d.length(7.0, 2.0));
        let binds_unloaded = d.maybe(|d| d.roll(2) == 0);
        let by = d.rule();
        Both {
            line: line(
                "spindle_binds",
                json!({"spindle": spindle, "bearing_bore": bearing_bore, "offset": offset, "apart": apart, "ring_width": ring_width, "binds_unloaded": binds_unloaded, "rule": by}),
            ),
            said: SpindleBinds {
                spindle: spindle.as_deref().map(read),
                bearing_bore: bearing_bore.as_deref().map(read),
                offset: reads::<Reading>(&offset),
                apart: apart.as_deref().map(length),
                ring_width: ring_width.as_deref().map(length),
                binds_unloaded,
                rule: rule(by.as_ref()),
            }
            .answer(OURS),
        }
    });
    compare("coating", |d| {
        let member = *d.one(&[Feature::Hole, Feature::Shaft]);
        let reading = d.maybe(|d| d.reading(28.8, 0.4));
        let expected = d.maybe(|d| d.length(28.6, 0.1));
        Both {
            line: line(
                "coating",
                json!({"member": member.to_string(), "reading": reading, "expected": expected}),
            ),
            said: Coating {
                member,
                reading: reading.as_deref().map(read),
                expected: expected.as_deref().map(length),
            }
            .answer(OURS),
        }
    });
    compare("temperature", |d| {
        let hole = d.reading(41.98, 0.03);
        let shaft = d.reading(42.0, 0.01);
        let materials = [
            "al_6061_t6",
            "steel_4130_normalised",
            "al_7005_t6",
            "pom_copolymer",
        ];
        let (outer, inner) = (d.one(&materials).to_string(), d.one(&materials).to_string());
        let hole_celsius = d.roll(120) as f64 - 30.0;
        let shaft_celsius = d.maybe(|d| d.roll(120) as f64 - 30.0);
        let by = d.rule();
        Both {
            line: line(
                "temperature",
                json!({"hole": {"readings": hole}, "hole_material": outer, "hole_celsius": hole_celsius, "shaft": {"readings": shaft}, "shaft_material": inner, "shaft_celsius": shaft_celsius, "rule": by}),
            ),
            said: AtTemperature {
                hole: MemberOf::read(read(&hole)),
                hole_material: outer,
                hole_celsius,
                shaft: MemberOf::read(read(&shaft)),
                shaft_material: inner,
                shaft_celsius,
                rule: rule(by.as_ref()),
            }
            .answer(OURS),
        }
    });
}

#[test]
fn conform() {
    compare("conform", |d| {
        let readings = d.several(3, |d| d.reading(41.98, 0.05));
        // Mostly one statement of limits, now and then two or none.
        let stated = d.roll(10);
        let limits = ([0, 1, 2, 8].contains(&stated)).then(|| {
            d.one(&["41.96 mm to 41.985 mm", "at most 42 mm"])
                .to_string()
        });
        let class =
            ([3, 4, 5, 8].contains(&stated)).then(|| d.one(&["42 N7", "42 H7"]).to_string());
        let figure = ([6, 7].contains(&stated))
            .then(|| d.one(&["bb30_workshop", "bb30_no_such"]).to_string());
        let by = d.rule();
        Both {
            line: line(
                "conform",
                json!({"readings": readings, "limits": limits, "class": class, "rule": by,
                    "figure": figure.as_ref().map(|code| json!({"family": "bore_window", "code": code, "field": "window"}))}),
            ),
            said: Conform {
                readings: reads(&readings),
                limits: limits.as_deref().map(read),
                class: class.as_deref().map(read),
                figure: figure.map(|code| FigureName {
                    family: "bore_window".into(),
                    code,
                    field: "window".into(),
                }),
                rule: rule(by.as_ref()),
                ..Conform::default()
            }
            .answer(OURS),
        }
    });
}

/// Where the grid must meet all three outcomes, it does: a grid that shows one thing only compares little.
#[test]
fn the_grid_meets_every_outcome() {
    let mut dice = Dice(7);
    let mut met = std::collections::BTreeSet::new();
    for _ in 0..CASES {
        let said = CupDepth {
            bore_depth: vec![read(&dice.reading(12.0, 2.0))],
            insertion: read(&dice.reading(12.0, 1.0)),
            room: None,
            rule: None,
        };
        met.insert(said.answer(OURS).unwrap().outcome.to_string());
    }
    assert_eq!(met.len(), 3, "{met:?}");
    assert!(met.contains(&Outcome::Undecided.to_string()));
}
