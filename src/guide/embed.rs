//! How to build the crate into a program of your own: features, units, errors, evidence, and what you may rely on.
//!
//! # Features
//!
//! ```toml
//! [dependencies]
//! framegauge = { path = "../framegauge", default-features = false, features = ["serde"] }
//! ```
//!
//! | feature | what it adds |
//! |---|---|
//! | none | all but what the next rows add; `no_std` with `alloc` |
//! | `std` | the standard library's side of the dependencies; answers stay the same bit for bit |
//! | `serde` | rows, findings, verdicts and plans serialize; sheets and a shop's rows deserialize; the room `ask` |
//! | `json` | `ask::answer_line`: a line of JSON in, a line of JSON out |
//!
//! All are on by default. The least Rust is 1.88. The crate forbids unsafe code. It opens no file and no socket, starts no
//! thread and keeps no state: every answer follows from what you hand in and from the compiled tables. Its types can be
//! sent and shared between threads.
//!
//! ```
//! fn shared<T: Send + Sync>() {}
//! shared::<framegauge::Error>();
//! shared::<framegauge::judge::Verdict>();
//! shared::<framegauge::standard::Shell>();
//! shared::<framegauge::standard::Tables<'static>>();
//! ```
//!
//! # Rows are `&'static`
//!
//! The tables are compiled in. Nothing is loaded, and a look-up that succeeds allocates nothing. Hold a row for as long as
//! you like:
//!
//! ```
//! use framegauge::standard::{Row, Shell, find};
//!
//! struct Job { shell: &'static Shell }
//! let job = Job { shell: find::<Shell>("BSA").unwrap() };
//! assert_eq!(job.shell.code(), "bsc"); // found by another name, held under its code
//! // Store the code, not the row: a code is kept for ever.
//! assert_eq!(find::<Shell>(job.shell.code()).unwrap(), job.shell);
//! ```
//!
//! A shop's rows belong to you. [`Tables`](crate::standard::Tables) borrows them and is `Copy`; see
//! [`add_a_standard`](super::add_a_standard).
//!
//! # Units
//!
//! Public functions take and give quantities of `uom` (`uom::si::f64`). The crate re-exports it as
//! [`framegauge::uom`](crate::uom); use that, so that your quantities are of the same version. A bare number is never a
//! length. Roles that could be swapped are types of their own, such as [`BoreDiameter`](crate::BoreDiameter) and
//! [`ShaftDiameter`](crate::ShaftDiameter).
//!
//! ```
//! use framegauge::{deg, in_inches, in_mm, inch, inch_fraction, mm, parse_length, settled_mm, um};
//! use framegauge::uom::si::angle::radian;
//!
//! assert_eq!(in_mm(inch(1.370)).to_string(), "34.798 mm");
//! assert_eq!(in_mm(inch_fraction(9, 16)).to_string(), "14.288 mm");
//! assert_eq!(in_inches(mm(25.4)).to_string(), "1.0000 in");
//! assert!((deg(180.0).get::<radian>() - core::f64::consts::PI).abs() < 1e-15);
//!
//! // A number for your own display: settled to whole nanometres, so that no binary crumbs are shown.
//! assert_eq!(settled_mm(mm(34.85) - mm(34.80)), 0.05);
//! assert_eq!(settled_mm(mm(27.2) + um(50.0)), 27.25);
//!
//! // What a person types must carry its unit.
//! assert!(parse_length("27.2 mm").is_ok() && parse_length("27.2").is_err());
//! ```
//!
//! # Errors
//!
//! There is one type, [`Error`](crate::Error). It is for a question that makes no sense. "It does not fit", "undecided" and
//! "not enough data" are answers. No function panics on bad input, and nothing is silently corrected.
//!
//! ```
//! use framegauge::{ErrorKind, measure::Reading, mm};
//!
//! let error = Reading::new(mm(f64::NAN), mm(0.01)).unwrap_err();
//! assert_eq!(error.kind(), ErrorKind::NotFinite); // for your program
//! assert_eq!(error.field(), "reading"); // where
//! assert_eq!(error.value(), "NaN"); // what was found
//! assert_eq!(error.remedy(), "measure again"); // what to do
//! // For a person, in one line; `within` puts it into the place of your own form.
//! assert_eq!(error.within("seat_tube").to_string(), "seat_tube.reading: a reading must be finite, got `NaN`; measure again");
//! ```
//!
//! [`ErrorKind`](crate::ErrorKind) is `non_exhaustive`: keep a wildcard arm.
//!
//! # Keep the evidence on your screen
//!
//! A figure without its evidence is half a figure. Show the grade beside the number, and the sources on demand. Show a
//! dispute where there is one, and the reason where a figure is unknown:
//!
//! ```
//! use framegauge::{Figure, standard::{HeadSeat, find}};
//!
//! fn line(label: &str, figure: &Figure) -> String {
//!     let Some(evidence) = figure.evidence() else {
//!         return format!("{label}: unknown ({})", figure.reason());
//!     };
//!     let mut text = format!("{label}: {figure} [{}]", evidence.worth().words());
//!     for source in evidence.sources() {
//!         text.push_str(&format!("\n  {source}"));
//!     }
//!     for voice in figure.dissent() {
//!         text.push_str(&format!("\n  others say {}", voice.value));
//!     }
//!     text
//! }
//!
//! let seat = find::<HeadSeat>("EC34").unwrap();
//! let shown = line("bore", &seat.bore);
//! assert!(shown.starts_with("bore: 33.9 to 33.95 mm [published once]"));
//! assert!(shown.contains("others say 33.8 mm"));
//! ```
//!
//! [`Evidence::worth`](crate::Evidence::worth) is the grade to show: a derived figure is worth no more than its weakest input.
//!
//! # Serialize
//!
//! With `serde`, lengths go out as numbers with the unit in the name of the field, and come in as text with a unit:
//!
//! ```
//! # #[cfg(feature = "serde")] {
//! use framegauge::{judge::CupDepth, standard::Tables};
//!
//! let cup = CupDepth { bore_depth: vec!["9.0 +/- 0.1 mm".parse().unwrap()], insertion: "12.0 +/- 0.1 mm".parse().unwrap(), room: None, rule: None };
//! let said = cup.answer(Tables::ours()).unwrap();
//! let json = serde_json::to_value(&said).unwrap();
//! assert_eq!(json["outcome"], "nonconformity_shown");
//! assert_eq!(json["numbers"]["stands_proud_mm"], 3.0);
//! assert_eq!(json["weakest"], "common_practice");
//! # }
//! ```
//!
//! # What you may rely on
//!
//! Codes of rows are kept for ever; a new name is an alias. A sheet states its `format`, and another format is refused, not
//! guessed at. Answers do not depend on features. Match on codes, kinds and outcomes. Sentences are for people: show them,
//! do not parse them.
