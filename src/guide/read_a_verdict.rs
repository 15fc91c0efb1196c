//! What a verdict says, what it rests on, and what it does not say.
//!
//! # Three outcomes
//!
//! | outcome | it means |
//! |---|---|
//! | [`ConformityShown`](crate::measure::Outcome::ConformityShown) | the readings show that the size lies within its limits |
//! | [`NonconformityShown`](crate::measure::Outcome::NonconformityShown) | the readings show that it lies outside |
//! | [`Undecided`](crate::measure::Outcome::Undecided) | neither is shown: measure again, or ask for the limit |
//!
//! "Undecided" is no soft "yes" and no soft "no". Do not cut on it.
//!
//! ```
//! use framegauge::measure::{DecisionRule, Limits, Outcome, Reading, Why, decide};
//! use framegauge::standard::{HeadSeat, find};
//!
//! let bore = Limits::of_size(&find::<HeadSeat>("EC34").unwrap().bore); // 33.90 to 33.95 mm
//! let hold = |text: &str| decide(&text.parse::<Reading>().unwrap(), &bore, DecisionRule::default());
//!
//! let inside = hold("33.925 +/- 0.005 mm");
//! assert_eq!((inside.outcome, inside.why), (Outcome::ConformityShown, Why::Clear));
//!
//! let outside = hold("33.80 +/- 0.05 mm");
//! assert_eq!((outside.outcome, outside.why), (Outcome::NonconformityShown, Why::Clear));
//!
//! // Too close to a limit for this gauge: a finer one may tell.
//! let close = hold("33.948 +/- 0.005 mm");
//! assert_eq!((close.outcome, close.why), (Outcome::Undecided, Why::TooClose));
//!
//! // The same bore in the middle of its limits, by a gauge that is too coarse for so narrow a tolerance.
//! let coarse = hold("33.925 +/- 0.05 mm");
//! assert_eq!((coarse.outcome, coarse.why), (Outcome::Undecided, Why::InstrumentTooCoarse));
//! ```
//!
//! # The probability and the rule
//!
//! A reading is a value with an uncertainty; `33.925 +/- 0.005 mm` states the expanded uncertainty U, twice the standard
//! uncertainty. [`Decision::probability`](crate::measure::Decision::probability) is how likely the true size lies within the
//! limits (JCGM 106:2012, normal). By the default rule, ISO 14253-1:2017, conformity needs at least 95 %.
//! Nonconformity needs at least 95 % beyond one limit. [`DecisionRule`](crate::measure::DecisionRule) names the others.
//! With simple acceptance the value alone decides, and a coarse gauge then passes what it cannot see:
//!
//! ```
//! use framegauge::{Grade, measure::{DecisionRule, Limits, Outcome, Reading, decide}, mm};
//!
//! let limits = Limits::between(mm(33.90), mm(33.95), Grade::Published).unwrap();
//! let reading: Reading = "33.925 +/- 0.05 mm".parse().unwrap();
//! let by = |rule| decide(&reading, &limits, rule);
//! assert_eq!(by(DecisionRule::SimpleAcceptance).outcome, Outcome::ConformityShown);
//! assert_eq!(by(DecisionRule::default()).outcome, Outcome::Undecided);
//! assert!(by(DecisionRule::default()).probability.unwrap() < 0.7);
//! ```
//!
//! # The verdict on an interface
//!
//! The questions of [`judge`](crate::judge) are answered by a [`Verdict`](crate::judge::Verdict). One deciding finding that is out is
//! enough for "out of limits". All must be within for "within limits". Anything else is undecided. A finding without an
//! outcome is a plain statement and decides nothing.
//!
//! ```
//! use framegauge::{Grade, judge::CupDepth, measure::Outcome, standard::Tables};
//!
//! let judged = |bore: &str, cup: &str| {
//!     let asked = CupDepth { bore_depth: vec![bore.parse().unwrap()], insertion: cup.parse().unwrap(), room: None, rule: None };
//!     asked.answer(Tables::ours()).unwrap()
//! };
//!
//! let fits = judged("12.5 +/- 0.1 mm", "12.0 +/- 0.1 mm");
//! assert_eq!(fits.outcome, Outcome::ConformityShown);
//!
//! let proud = judged("9.0 +/- 0.1 mm", "12.0 +/- 0.1 mm");
//! assert_eq!(proud.outcome, Outcome::NonconformityShown);
//! assert_eq!(proud.millimetres("stands proud"), Some(3.0)); // what was worked out
//! assert!(!proud.cautions.is_empty()); // what to mind
//!
//! let open = judged("12.05 +/- 0.1 mm", "12.0 +/- 0.1 mm");
//! assert_eq!(open.outcome, Outcome::Undecided);
//! assert!(open.next[0].measure().contains("bore depth at four places")); // what would decide it
//!
//! // The verdict is worth no more than the weakest figure it rests on.
//! assert_eq!(fits.weakest, Some(Grade::CommonPractice));
//! // Ask for more, and nothing is shown.
//! assert_eq!(fits.demanding(Grade::Published).outcome, Outcome::Undecided);
//! ```
//!
//! Read it in this order:
//!
//! 1. [`outcome`](crate::judge::Verdict::outcome) and [`words`](crate::judge::Verdict::words).
//! 2. [`cautions`](crate::judge::Verdict::cautions): what can go wrong.
//! 3. [`next`](crate::judge::Verdict::next): what to measure, why, and with what tool. The most telling comes first.
//! 4. [`weakest`](crate::judge::Verdict::weakest): the weakest evidence of the findings that decide. "From memory" or "your
//!    own row" says: check this figure before you cut.
//! 5. [`findings`](crate::judge::Verdict::findings): each with its readings, limits, whose limits they are, and sources.
//! 6. [`beside`](crate::judge::Verdict::beside): other published figures. They are shown and do not decide.
//!
//! # Unknown limits
//!
//! For many places nobody publishes a limit. Then conformity cannot be shown, whatever was measured. A known limit on the
//! other side can still be shown to be broken. No probability is told: the known side alone would look too sure.
//!
//! ```
//! use framegauge::measure::{DecisionRule, Limits, Outcome, Why, decide};
//! use framegauge::standard::{HeadSeat, find};
//!
//! let depth = find::<HeadSeat>("EC29").unwrap().bore_depth.as_ref().unwrap();
//! let said = decide(&"13.0 +/- 0.1 mm".parse().unwrap(), &Limits::of_size(depth), DecisionRule::default());
//! assert_eq!((said.outcome, said.why), (Outcome::Undecided, Why::LimitUnknown));
//! assert_eq!(said.probability, None);
//! assert!(!depth.reason().is_empty()); // why it is unknown
//! ```
//!
//! # Disputed figures
//!
//! Where sources disagree, the tables hold one figure and keep the others with it, each with its own evidence. Limits come
//! from the figure that is held. Look at [`Figure::dissent`](crate::Figure::dissent) before you cut to it:
//!
//! ```
//! use framegauge::standard::{HeadSeat, find};
//!
//! let bore = &find::<HeadSeat>("EC34").unwrap().bore;
//! let voices: Vec<String> = bore.dissent().iter().map(|voice| voice.value.to_string()).collect();
//! assert_eq!(voices, ["33.8 mm", "33.9 mm"]);
//! ```
//!
//! # "Not enough data" is an answer
//!
//! An error is for a question that makes no sense. A question with too little in it is answered: undecided, with what to
//! measure. A plan of [`plan::prepare`](crate::plan::prepare) never fails; what the sheet does not say becomes a question.
//!
//! # What it does not say
//!
//! A verdict speaks of the sizes that were read, where they were read. It does not know the material by sight, and it has not
//! seen the crack. Brakes, steering, seatposts and carbon can hurt people when they fail. The frame and component maker's
//! written limits, local rules and qualified practice come first. What is cut does not come back.
