//! How to ask from a script, in any language: one question a line, one answer a line.
//!
//! # One line in, one line out
//!
//! A question is a JSON object on one line. It names itself under `ask`. An `id`, a short text or a whole number, is echoed.
//! Lengths are text with a unit; a bare number is refused. An answer holds numbers with the unit in the name of the field,
//! what it rests on under `evidence`, and its `sources`.
//!
//! ```json
//! {"id":4,"ask":"hand","shell":"bsc","side":"drive"}
//! ```
//!
//! The example program `ask` does this from standard input to standard output:
//!
//! ```text
//! cargo build --release --example ask
//! target/release/examples/ask < questions.jsonl > answers.jsonl
//! ```
//!
//! In Rust the same is one call, `ask::answer_line` (feature `json`). It keeps nothing between lines:
//!
//! ```
//! # #[cfg(feature = "json")] {
//! use framegauge::ask::{Context, answer_line};
//!
//! let context = Context::default();
//! let reply = answer_line(r#"{"id":4,"ask":"hand","shell":"bsc","side":"drive"}"#, &context);
//! assert!(reply.answered);
//! let json: serde_json::Value = serde_json::from_str(&reply.json).unwrap();
//! assert_eq!(json["id"], 4);
//! assert_eq!(json["answer"]["hand"], "left");
//! assert_eq!(json["answer"]["tighten"], "counter-clockwise"); // as seen facing that side from outside
//! assert!(json["answer"]["evidence"]["grade"].is_string());
//!
//! // "Undecided" is an answer too.
//! let line = r#"{"ask":"conform","readings":["45.97 +/- 0.05 mm"],"limits":"45.95 mm to 46.00 mm","measures":"inside"}"#;
//! let json: serde_json::Value = serde_json::from_str(&answer_line(line, &context).json).unwrap();
//! assert_eq!(json["answer"]["outcome"], "undecided");
//! assert_eq!(json["answer"]["findings"][0]["decision"]["why"], "instrument_too_coarse");
//! # }
//! ```
//!
//! # Errors do not stop it
//!
//! A line that makes no sense gets an `error` in place of an `answer`: a `kind`, the path of the `field`, a `message` and a
//! `remedy`. Other defects of the same line stand under `also`; after fifty one says how many more there are. The next line is
//! answered as if nothing had been.
//! A line of more than 1 MiB is refused in the same way.
//!
//! ```
//! # #[cfg(feature = "json")] {
//! use framegauge::ask::{Context, answer_line};
//!
//! let reply = answer_line(r#"{"id":62,"ask":"fit_limits","nominal":42,"class":"N7"}"#, &Context::default());
//! assert!(!reply.answered);
//! let json: serde_json::Value = serde_json::from_str(&reply.json).unwrap();
//! assert_eq!((&json["id"], &json["error"]["kind"], &json["error"]["field"]), (&62.into(), &"unit".into(), &"nominal".into()));
//! assert!(json["error"]["remedy"].as_str().unwrap().contains("with its unit"));
//!
//! assert!(answer_line("not json", &Context::default()).json.contains("not JSON"));
//! # }
//! ```
//!
//! # One line of each question
//!
//! Below each, a part of its answer.
//!
//! ```text
//! {"id":1,"ask":"thread_limits","thread":"M10x1-6H"}
//!     "pitch_diameter_mm":{"min":9.35,"max":9.5}
//! {"id":2,"ask":"fit_limits","nominal":"42 mm","class":"N7"}
//!     {"id":2,"answer":{"lower_um":-33,"upper_um":-8,"min_mm":41.967,"max_mm":41.992,
//! {"id":3,"ask":"identify","place":"shell","readings":{"bore":"33.7 +/- 0.05 mm","width":"68.1 +/- 0.1 mm"}}
//!     "sentence":"This can be ISO 6696, 1.375 in x 24 tpi or BSA / BSC / English, 1.370 in x 24 tpi: they interchange, so it does not matter which."
//! {"id":4,"ask":"hand","shell":"bsc","side":"drive"}
//!     "hand":"left","tighten":"counter-clockwise","loosen":"clockwise"
//! {"id":7,"ask":"conform","readings":["45.80 +/- 0.05 mm","45.97 +/- 0.05 mm"],"limits":"45.95 mm to 46.00 mm","measures":"inside"}
//!     "outcome":"nonconformity_shown"
//! {"id":11,"ask":"fit","hole":{"readings":["27.40 +/- 0.02 mm"],"nominal":"27.2 mm"},"shaft":{"readings":["27.00 +/- 0.02 mm"]},"clearance":["0 mm to 0.1 mm"]}
//!     "out":"both"
//! {"id":12,"ask":"press","hole":{"readings":["43.98 +/- 0.005 mm"]},"shaft":{"readings":["44.05 +/- 0.005 mm"]},"hub_outside":"50 mm","shaft_bore":"41 mm","length":"10 mm","hub_material":"al_6061_t6","shaft_material":"al_6061_t6","friction":{"holding":0.06,"pressing":0.15}}
//!     "push_in_force_n":1142.868
//! {"id":13,"ask":"face","datum":"shell thread, drive side","inner_radius":"17 mm","outer_radius":"21 mm","probe_radius":"20 mm","probes":[{"at":"0 deg","height":"0.15 +/- 0.008 mm"},{"at":"72 deg","height":"0.11 +/- 0.008 mm"},{"at":"144 deg","height":"0.03 +/- 0.008 mm"},{"at":"216 deg","height":"0.02 +/- 0.008 mm"},{"at":"288 deg","height":"0.09 +/- 0.008 mm"}],"square_within":"0.05 mm","over":"40 mm","limits":[{"what":"least width","measured":"68.4 +/- 0.02 mm","least":"68 mm"}]}
//!     "next":{"step":"one_pass","depth_mm":0.148615,"up_to_mm":0.164136
//! {"id":14,"ask":"bore_shape","readings":[{"at":"0 deg","depth":"5 mm","diameter":"43.97 +/- 0.01 mm"},{"at":"90 deg","depth":"5 mm","diameter":"43.98 +/- 0.01 mm"},{"at":"0 deg","depth":"12 mm","diameter":"43.96 +/- 0.01 mm"},{"at":"90 deg","depth":"12 mm","diameter":"43.97 +/- 0.01 mm"}],"limits":"43.95 mm to 44.00 mm"}
//!     "decision":{"outcome":"conformity_shown","why":"clear","conformance_probability":0.9772
//! {"id":15,"ask":"pitch_mismatch","a":"M35x1","b":"1.370 in x 24 tpi BSC"}
//!     "mates":"no"
//! {"id":16,"ask":"engagement","thread":"M10x1","bore":"9.3 mm"}
//!     "percent_of_basic_height":64.663
//! {"id":17,"ask":"strip","thread":"M10x1","engagement":"8 mm","screw_shear_strength":"480 MPa","hole_shear_strength":"180 MPa","nut_factor":0.2}
//!     "torque_n_m":59.348443
//! {"id":18,"ask":"three_wire","thread":"M10x1","over_wires":"10.21 +/- 0.01 mm"}
//!     "best_wire_mm":0.57735
//! {"id":19,"ask":"seatpost_for_tube","bore":["27.24 +/- 0.02 mm"],"clearance":"0 mm to 0.1 mm"}
//!     "cures":[{"by":"other_part","size_mm":27.2
//! {"id":20,"ask":"insertion","post":"27.2 mm","weld":"40 mm","inserted":"120 +/- 1 mm"}
//!     "depth_mm":100.0,"weld_rule_mm":90.0
//! {"id":21,"ask":"shim","bore":["27.40 +/- 0.02 mm"],"post":["27.00 +/- 0.02 mm"],"nominal":"27.2 mm","clearance":"0 mm to 0.1 mm"}
//!     "shim_wall_mm":0.2
//! {"id":22,"ask":"depth","bore_depth":"9.0 +/- 0.1 mm","insertion":"12.0 +/- 0.1 mm"}
//!     "stands_proud_mm":3.0
//! {"id":23,"ask":"width_stack","width":"68.1 +/- 0.05 mm","spacers":["2.5 +/- 0.02 mm","2.5 +/- 0.02 mm"],"wanted":"72.5 mm to 73.5 mm"}
//!     "over_all_mm":73.1
//! {"id":24,"ask":"bolt_length","thickness":"12.4 +/- 0.1 mm","bolts":["18 mm","23 mm","28 mm"],"engaged":"10 mm to 12 mm"}
//!     "bolt_length_mm":23.0
//! {"id":92,"ask":"spindle_width","width":"68.7 +/- 0.05 mm","made_for":"68 mm"}
//!     "outcome":"undecided"
//! {"id":93,"ask":"caliper_tilt","kind":"posts","points":["-37 mm along, -7.5 mm across: 0 +/- 0.008 mm","-37 mm along, 7.5 mm across: 0.3 +/- 0.008 mm","37 mm along, -7.5 mm across: 0 +/- 0.008 mm","37 mm along, 7.5 mm across: 0.3 +/- 0.008 mm"],"pad_length":"25 mm","pad_clearance":"0.2 mm"}
//!     "outcome":"nonconformity_shown"
//! {"id":94,"ask":"bore","bore":["3 mm deep, 0 deg: 42.02 +/- 0.004 mm","55 mm deep, 0 deg: 41.90 +/- 0.004 mm"],"limits":[{"limits":"41.96 to 41.985 mm","owner":"the frame builder's drawing"}]}
//!     {"by":"ream","size_mm":41.96,"at":"55.000 mm deep"}
//! {"id":96,"ask":"gauging","thread":"M10x1-6H","go":"passed","not_go":"failed","minor":"9.05 +/- 0.02 mm","seen":["sound"]}
//!     {"code":"contradiction","of":"sound_but_fails"}
//! {"id":97,"ask":"wall","outside":"36.0 +/- 0.02 mm","bore":"33.95 +/- 0.01 mm","least":"at least 1.1 mm"}
//!     "wall_mm":1.025
//! {"id":98,"ask":"ream","outside":"31.7 +/- 0.02 mm","bore":"29.7 +/- 0.02 mm","to":"30.1 mm"}
//!     "stock_on_diameter_mm":0.4,"wall_left_mm":0.8
//! {"id":99,"ask":"hole_to_tap","thread":"M10x1","hole":"8.5 +/- 0.05 mm"}
//!     "enlarge_by_least_mm":0.417
//! {"id":100,"ask":"parallel_faces","parallelism":"0.12 +/- 0.02 mm"}
//!     "ceiling_mm":0.075
//! {"id":101,"ask":"hub_width","pattern":"ta_12x142","over_caps":"139.4 +/- 0.1 mm"}
//!     "short_by_mm":2.6
//! {"id":102,"ask":"caliper_place","native":"160 mm","adapter":"20 mm","rotor":"160 mm"}
//!     "too_high_by_mm":10.0
//! {"id":103,"ask":"dropouts","spacing":"114 +/- 0.2 mm","hub":"108 mm","difference":"1.0 +/- 0.1 mm","angle":"2 deg"}
//!     "spacing_off_by_mm":6.0,"each_side_mm":3.0
//! {"id":104,"ask":"spindle_binds","spindle":"29.98 +/- 0.004 mm","bearing_bore":"29.995 +/- 0.004 mm","offset":["0.30 +/- 0.02 mm","0.40 +/- 0.02 mm"],"apart":"60 mm","ring_width":"7 mm","binds_unloaded":true}
//!     "offset_mm":0.5
//! {"id":105,"ask":"coating","member":"shaft","reading":"28.83 +/- 0.02 mm","expected":"28.6 mm"}
//!     "coat_a_side_mm":0.115
//! {"id":106,"ask":"temperature","hole":{"readings":["41.995 +/- 0.002 mm"]},"hole_material":"al_6061_t6","hole_celsius":60,"shaft":{"readings":["41.998 +/- 0.001 mm"]},"shaft_material":"steel_4130_normalised"}
//!     "outcome":"nonconformity_shown"
//! {"id":25,"ask":"standard","code":"27.2"}
//!     "family":"seatpost","code":"27.2"
//! {"id":26,"ask":"convert","length":"1 3/8 in"}
//!     "text_in":"1.3750 in"
//! {"id":28,"ask":"prepare","sheet":{"format":1,"frame":"invented","invented":true,"material":"steel","crown":{"seat":["26.45 mm +/- 0.02 mm"],"race":["26.38 mm +/- 0.02 mm"],"believed":"26.4"}}}
//!     "places":[{"place":"crown"
//! {"id":50,"ask":"rescue","damage":"stripped","shell":"bsc","side":"drive","to":["36 mm x 24 tpi"],"outside":"40.2 +/- 0.1 mm"}
//!     "words":"In order of caution, possible: clean, gauge, retap to the next pattern (36 mm x 24 tpi), refer;
//! {"id":62,"ask":"fit_limits","nominal":42,"class":"N7"}
//!     "error":{"kind":"unit","field":"nominal"
//! ```
//!
//! # Options and exit codes of `ask`
//!
//! | option | what it does |
//! |---|---|
//! | `--schema` | prints the JSON Schema of every question and answer |
//! | `--jobs N` | answers on N threads, 1 to 256: the same lines in the same order |
//! | `--rows FILE` | adds a shop's own rows, TOML or JSON; see [`add_a_standard`](super::add_a_standard) |
//!
//! Exit code 0: every line was answered. 1: a line gave an error. 2: the options, the rows or the input could not be read.
//! A verdict of "out of limits" is an answer, so it does not change the exit code: read `outcome`.
//!
//! `ask` reads and writes in constant memory. It flushes when it has read all that was there, so a script may also keep it
//! open, write one line, and wait for its answer.
//!
//! # A million lines
//!
//! Lines do not depend on each other. Any engine that pipes blocks of lines through a program and keeps their order can
//! split them, on one machine or on several; GNU Parallel does:
//!
//! ```text
//! parallel --pipe --keep-order --block 4M ask < log.jsonl
//! ```
//!
//! `examples/scripts/shop_batch.py` sends a hundred invented frames through one process and prints a table.
//!
//! # The sheet of a frame
//!
//! A whole frame is one sheet, TOML or JSON, with the same names in both. It states its `format`. A reading is text: its
//! place if there is one, the value with its unit, and its uncertainty or the instrument.
//!
//! ```toml
//! format = 1
//! frame = "Invented road frame"
//! invented = true
//! material = "steel"
//!
//! [seat_tube]
//! believed = "27.2"
//! coating = "overspray"
//! bore = ["10 mm deep, 0 deg: 27.02 +/- 0.02 mm", "10 mm deep, 90 deg: 27.05 mm by telescoping_gauge"]
//! ```
//!
//! `cargo run --example prepare_frame -- SHEET` prints its plan; `--json` gives it as data, under `answer` beside `acceptable`;
//! `--record text` or `--record markdown` prints the record of the work, `--pictures DIR` draws the faces. Exit code 0: every
//! place is done, left with a reason, or has only work to do (a record: every place is done or left). 1: a place is open, not
//! measured, referred or out. 2: the sheet makes no sense.
//!
//! # The answer of `prepare`, contract 2
//!
//! `contract` is 2; a change of meaning takes the next number.
//!
//! | field | what it holds |
//! |---|---|
//! | `places` | every place of the sheet: `place`, its code and path in the sheet, such as `shell.drive.face`; `state`: `not_measured`, `open`, `to_do`, `done`, `out`, `leave`, `refer`; `facts`, each with `words`, `outcome`, `limits`, `grade`, `sources`; `contradictions`, `leave`, `cures`, `notes` |
//! | `steps` | in order: `number`, `place`, `operation`, `cuts`; `off`: `of` depth or diameter, `mm` from `min` to `max`; `stops`: `limit`, `to_go_mm`, `grade`, `sources`, at least one for every cut; `after` and `waits_for`, the numbers of steps and of questions that come first; `tools`, `pilot`, `start`, `turn`, `turning`, `passes`, `checks`, `proof`, `words`, `why` |
//! | `questions` | `number`, `place`, `measure`, `instrument`, `why`, and `answer`: the field of the sheet where the answer is written, which closes the question |
//! | `cautions`, `weak_figures` | what belongs to the whole job; what to check before relying on it |
//!
//! A step that does not cut carries no amount and no stop. A step that waits is not started before its questions are answered:
//!
//! ```
//! # #[cfg(feature = "json")] {
//! use framegauge::ask::{Context, answer_line};
//!
//! let line = r#"{"ask":"prepare","sheet":{"format":1,"frame":"invented","invented":true,
//!     "seat_tube":{"believed":"27.2","coating":"overspray","bore":["10 mm deep, 0 deg: 27.02 +/- 0.02 mm"]}}}"#;
//! let json: serde_json::Value = serde_json::from_str(&answer_line(line, &Context::default()).json).unwrap();
//! let plan = &json["answer"];
//! assert_eq!((&plan["contract"], &plan["places"][0]["state"]), (&2.into(), &"open".into()));
//! let fields: Vec<&str> = plan["questions"].as_array().unwrap().iter().map(|q| q["answer"].as_str().unwrap()).collect();
//! assert!(fields.contains(&"seat_tube.material"), "{fields:?}"); // nothing is cut in unknown material
//! assert!(plan["steps"].as_array().unwrap().iter().all(|step| step["cuts"] == false));
//! # }
//! ```
//!
//! # The sheet in Rust
//!
//! The question `prepare` takes the same sheet as an object under `sheet`. In Rust:
//!
//! ```
//! # #[cfg(feature = "serde")] {
//! use framegauge::{plan::{FrameSheet, prepare}, read::Tree, standard::Tables};
//!
//! let tree: Tree = toml::from_str(r#"
//!     format = 1
//!     frame = "Invented road frame"
//!     invented = true
//!     material = "steel"
//!     [seat_tube]
//!     believed = "27.2"
//!     coating = "overspray"
//!     bore = ["10 mm deep, 0 deg: 27.02 +/- 0.02 mm", "10 mm deep, 90 deg: 27.05 mm by telescoping_gauge"]
//! "#).unwrap();
//! let plan = prepare(&FrameSheet::from_tree(&tree, Tables::ours()).unwrap());
//! assert!(!plan.questions.is_empty()); // it asks before it cuts
//!
//! // Every defect of a sheet is told, not only the first.
//! let bad: Tree = toml::from_str("format = 1\nframe = \"x\"\n[seat_tube]\nbore = [\"27.02\", \"wide\"]").unwrap();
//! assert!(FrameSheet::from_tree(&bad, Tables::ours()).unwrap_err().len() >= 2);
//! # }
//! ```
//!
//! From JSON, `plan::FrameSheet::from_json` uses the reader that the questions use too: its errors carry the path of the
//! field, and a program that also answers lines of `ask` carries one reader, not two.
