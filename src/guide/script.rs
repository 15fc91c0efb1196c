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
//! assert_eq!(json["answer"]["decision"]["why"], "instrument_too_coarse");
//! # }
//! ```
//!
//! # Errors do not stop it
//!
//! A line that makes no sense gets an `error` in place of an `answer`: a `kind`, the path of the `field`, a `message` and a
//! `remedy`. A sheet with several defects lists the others under `also`. The next line is answered as if nothing had been.
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
//! `cargo run --example prepare_frame -- SHEET` prints its plan; `--json` gives it as data, `--record text` or
//! `--record markdown` prints the record of the work, `--pictures DIR` draws the faces. Exit code 0: nothing is open. 1: the
//! plan asks, waits or refers, or the record is not finished. 2: the sheet makes no sense.
//!
//! The question `prepare` takes the same sheet as an object under `sheet`. In Rust:
//!
//! ```
//! # #[cfg(feature = "serde")] {
//! use framegauge::prep::{WrittenSheet, prepare};
//!
//! let written: WrittenSheet = toml::from_str(r#"
//!     format = 1
//!     frame = "Invented road frame"
//!     invented = true
//!     material = "steel"
//!     [seat_tube]
//!     believed = "27.2"
//!     coating = "overspray"
//!     bore = ["10 mm deep, 0 deg: 27.02 +/- 0.02 mm", "10 mm deep, 90 deg: 27.05 mm by telescoping_gauge"]
//! "#).unwrap();
//! let plan = prepare(&written.read().unwrap());
//! assert!(!plan.questions.is_empty()); // it asks before it cuts
//!
//! // Every defect of a sheet is told, not only the first.
//! let bad: WrittenSheet = toml::from_str("format = 1\nframe = \"x\"\n[seat_tube]\nbore = [\"27.02\", \"wide\"]").unwrap();
//! assert!(bad.read().unwrap_err().len() >= 2);
//! # }
//! ```
//!
//! From JSON, `ask::Sheet::from_json` is the reader that the questions use too: its errors carry
//! the path of the field, and a program that also answers lines of `ask` carries one reader, not two.
