//! Symptoms: what can be behind each, and in which order to look.

use framegauge::measure::Outcome;
use framegauge::rescue::{Symptom, diagnose};

use strum::IntoEnumIterator;

use super::committed::same_as_committed;

#[test]
fn every_symptom() {
    let mut text = String::new();
    for symptom in Symptom::iter() {
        let found = diagnose(symptom);
        assert_eq!(
            (found.symptom, found.outcome),
            (symptom, Outcome::Undecided)
        );
        text.push_str(&format!("== {symptom}\n{found}"));
        for cause in &found.causes {
            let damage = cause
                .damage()
                .map_or_else(|| String::from("no damage of the frame"), |d| d.to_string());
            text.push_str(&format!("  {cause}: {damage}\n"));
        }
        text.push('\n');
    }
    same_as_committed("rescue/symptoms.txt", &text);
}
