//! What a plan may never do, whatever the sheet says: properties of plans of sheets that nobody tuned them to.
//!
//! Sheets are drawn as a person would fill them in, from a frame whose truth is known (`draw*`); what holds of their plans is
//! reckoned anew from what was written, never by a planner. Each kind of failure is shown by the smallest sheet that has it.
//! `FUZZ_TIMES=50` draws a million sheets.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod amounts;
mod case;
mod change;
mod draw;
mod draw_bores;
mod draw_shell;
mod draw_threads;
mod findings;
mod leaf;
mod lies;
mod linear;
mod more;
#[path = "../random/mod.rs"]
mod random;
mod rows;
mod safety;
mod survey;

use survey::{SURVEY, holds};

/// Generated sheets are such as a person would hand in: nearly all are read.
#[test]
fn sheets_are_read() {
    let refused: Vec<String> = SURVEY
        .refused
        .iter()
        .map(|(what, (count, words))| format!("{count} x {what}\n{words}"))
        .collect();
    assert!(
        SURVEY.read >= SURVEY.sheets / 100 * 97,
        "{} of {}\n{}",
        SURVEY.read,
        SURVEY.sheets,
        refused.join("\n")
    );
}

/// Many plans do plan work, or the properties would hold by emptiness. Of a hundred sheets that were read.
#[test]
fn plans_do_plan_cuts() {
    let said = format!(
        "{:#?}\n{:#?}\n{:#?}",
        SURVEY.operations, SURVEY.states, SURVEY.questions
    );
    for (operation, least) in [
        ("ream", 4),
        ("chase", 6),
        ("tap", 1),
        ("face", 5),
        ("clean", 3),
        ("refer", 3),
    ] {
        let share = SURVEY
            .operations
            .get(operation)
            .copied()
            .unwrap_or_default()
            * 100
            / SURVEY.read.max(1);
        assert!(
            share >= least,
            "{operation} in {share} of a hundred plans\n{said}"
        );
    }
}

macro_rules! properties {
    ($( $(#[$doc:meta])* $name:ident; )*) => {$(
        $(#[$doc])*
        #[test]
        fn $name() {
            holds(stringify!($name));
        }
    )*};
}

properties! {
    /// 1. No cut in carbon or in unknown material, in a bonded insert only with consent.
    material;
    /// 2. No amount past the tightest limit that was heard.
    amounts;
    /// 3. A step that refers or checks carries nothing to cut with.
    refusals;
    /// 4. What is out has a step that cures it, a question, or a state that says so.
    findings;
    /// Every place, note and limit of the sheet is in the plan.
    heard;
    /// 5. Telling more that is true never gives a worse plan.
    telling;
    /// 5. A row that has nothing to do with a frame changes nothing.
    shop_row;
    /// 5. What is so contradicts itself nowhere.
    honest;
    /// 6. The pilot is there, and sound before anything pilots on it.
    pilots;
    /// 7. No hand is assumed where there are two.
    hands;
    /// 8. Turning is told, from the end at which the tool starts.
    turning;
    /// 9. Swapped sides mirror the plan.
    sides;
    /// 9. The order of entries changes nothing.
    order;
    /// 9. Inches and millimetres agree.
    inches;
    /// 9. More uncertainty never makes a go.
    doubt;
    /// A plan is the same when it is made again.
    again;
    /// Each question names a field of the sheet.
    answer_fields;
    /// A true answer closes its question.
    answers;
}
