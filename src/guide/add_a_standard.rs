//! How a figure gets into the tables, and how a shop brings its own without touching the crate.
//!
//! There are two roads. Take the first if others need the standard too. Take the second if the figure is yours alone, or
//! if you cannot wait.
//!
//! # The first road: into the tables
//!
//! No Rust is touched. A figure is typed once into a data file, checked by a test, and read a second time by another hand.
//!
//! **1. Type the row.** Rows live in `data/*.toml`. Write each figure as its source prints it, in the printed unit, with
//! the source, the place in the source, and the grade. This row and its source are invented:
//!
//! ```toml
//! [[head_seat]]
//! code = "invented_seat"
//! name = "Invented seat, to show the form"
//! kind = "external_cup"
//! bore = { lower = "33.90 mm", upper = "33.95 mm", grade = "published", from = ["invented-drawing @ sheet 1, bores"] }
//! bore_depth = { unknown = "the drawing gives no depth: ask the frame maker" }
//! ```
//!
//! - `code` is kept for ever. Other names go into `aliases`, in the families that have them.
//! - The source is described in `data/sources.toml` if it is new: a title, an edition, a kind. No addresses, no personal names.
//! - `grade` says how sure the figure is. Strongest first: `standard`, `agreeing`, `published`, `second_hand`, `derived`,
//!   `common_practice`, `memory`. A `derived` figure also states its `formula` and the grade of its weakest input as `basis`.
//!   Never write a remembered value as published.
//! - What nobody publishes is `unknown`, with a reason or the person to ask. Never fill a gap with a guess.
//! - What disagrees goes into `dissent = [ … ]`, with its own source and grade. It is shown beside the figure and never dropped.
//! - Wide tables are CSV files in `data/grids/`, with source, place and grade in each row.
//!
//! **2. Render the tables.**
//!
//! ```text
//! UPDATE_TABLES=1 cargo test --test tables
//! ```
//!
//! This checks every row and reports all defects at once, each with its file, row and field. Then it writes the statics
//! under `src/`. Without the variable the same test fails when the statics are stale.
//!
//! **3. Read it again.** Another person, or you on another day, opens the source once more and adds one line a figure to
//! `tests/published/families.csv`. Do not copy from the data file: a copy repeats the slip that it should catch.
//!
//! ```text
//! family,code,field,item,nominal,lower,upper,value,grade,read_in
//! head_seat,invented_seat,bore,,,33.90 mm,33.95 mm,,published,"invented drawing, second pass"
//! ```
//!
//! `cargo test --test published_figures` compares the two. A figure that was read only once fails.
//!
//! **4. Say what changed.** One line in `data/CHANGES.md`: family, row, field, old value, new value, why.
//!
//! **5. See it.** [`standard::find`](crate::standard::find) gives the row. Each figure prints its evidence with `{:#}`:
//!
//! ```
//! use framegauge::{Grade, standard::{HeadSeat, find}};
//!
//! let seat = find::<HeadSeat>("ec34").unwrap(); // letter case does not matter
//! assert_eq!(seat.bore.to_string(), "33.9 to 33.95 mm");
//! assert_eq!(seat.bore.grade(), Some(Grade::Published));
//! assert!(format!("{:#}", seat.bore).contains("published once"));
//! assert!(!seat.bore.dissent().is_empty()); // other sources print another bore: they are kept
//!
//! // What nobody publishes says so.
//! let depth = find::<HeadSeat>("EC29").unwrap().bore_depth.as_ref().unwrap();
//! assert!(!depth.is_known() && depth.to_string() == "unknown" && !depth.reason().is_empty());
//! ```
//!
//! # The second road: a shop's own rows
//!
//! [`ShopRows`](crate::standard::ShopRows) holds rows of any family. They have the same types as ours and stand beside
//! them, never in front. In Rust:
//!
//! ```
//! use framegauge::standard::{Seatpost, ShopRows, Tables};
//! use framegauge::{ErrorKind, Evidence, Figure, Grade, Span, mm};
//!
//! // Invented: a post that a shop turns down itself, and measured.
//! let own = Seatpost {
//!     code: "shop_26_1".into(),
//!     diameter: Figure::known(
//!         Span::new(Some(mm(26.1)), None, None).unwrap(),
//!         Evidence::shop("measured on three posts"),
//!     ),
//!     note: "".into(),
//! };
//! let mut shop = ShopRows { seatpost: vec![own], ..ShopRows::default() };
//!
//! let tables = Tables::with(&shop).unwrap();
//! let post = tables.find::<Seatpost>("SHOP_26_1").unwrap();
//! assert_eq!(post.diameter.grade(), Some(Grade::Shop)); // the weakest grade: as sure as the shop
//! assert!(tables.find::<Seatpost>("27.2").is_ok()); // ours are still there
//!
//! // A name that is taken is refused: rows of ours are never replaced.
//! shop.seatpost[0].code = "27.2".into();
//! let error = Tables::with(&shop).unwrap_err();
//! assert_eq!(error.kind(), ErrorKind::NameTaken);
//! assert_eq!(error.field(), "seatpost.27.2");
//! ```
//!
//! With feature `serde` the rows are read from a file, in the words of `data/`. Whatever grade a row in a file claims, it
//! is graded `shop`; a field that the family does not know is refused:
//!
//! ```
//! # #[cfg(feature = "serde")] {
//! use framegauge::{Grade, standard::ShopRows};
//!
//! let shop: ShopRows = toml::from_str(r#"
//!     [[seatpost]]
//!     code = "shop_26_1"
//!     diameter = { nominal = "26.1 mm", grade = "standard", note = "invented" }
//! "#).unwrap();
//! shop.check().unwrap();
//! assert_eq!(shop.seatpost[0].diameter.grade(), Some(Grade::Shop));
//!
//! assert!(toml::from_str::<ShopRows>("[[seatpost]]\ncode = \"x\"\nlength = \"1 mm\"").is_err());
//! # }
//! ```
//!
//! The rows then go to whoever asks: [`Tables::with`](crate::standard::Tables::with) for look-ups,
//! [`plan::prepare_with`](crate::plan::prepare_with) for a plan, the field `shop` of
//! [`identify::Options`](crate::identify::Options) for naming, `ask::Context::with_rows` for scripts. The example programs
//! `ask` and `prepare_frame` take them as `--rows FILE`; `examples/rows/shop.toml` is such a file.
//!
//! A verdict that rests on a shop's row reports the grade `shop`. It is the weakest of all, because nobody else can check it.
//! Rows built in Rust that carry another grade are refused.
