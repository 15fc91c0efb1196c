//! Symptoms: what can be behind each, and in which order to look.

use framegauge::measure::Outcome;
use framegauge::rescue::{Symptom, diagnose};

use strum::IntoEnumIterator;

use super::{Page, bare, flat};

#[test]
fn every_symptom() {
    let mut page = Page::new();
    for symptom in Symptom::iter() {
        let found = diagnose(symptom);
        assert_eq!(
            (found.symptom, found.outcome),
            (symptom, Outcome::Undecided)
        );
        assert!(!symptom.until_then().is_empty(), "{symptom}");
        page.title(&symptom.to_string());
        for cause in &found.causes {
            let damage = cause
                .damage()
                .map_or_else(|| String::from("none"), |d| format!("{d:?}"));
            page.line(&format!("{cause:?}: {damage}"));
        }
        for check in &found.checks {
            assert!(!check.to_string().is_empty(), "{symptom}: {check:?}");
        }
        let json = bare(serde_json::to_value(&found).unwrap());
        page.line(&format!("checks {}", flat(&json["checks"])));
    }
    page.check("rescue/symptoms.txt");
}
