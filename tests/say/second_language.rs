//! Facts hold no language: a second one is a second file of the same shape as those in `src/say`, one `match` a kind of facts.

use std::collections::BTreeSet;
use std::fmt;

use framegauge::fact::Worded as _;
use framegauge::judge::{self, SizeFact};
use framegauge::plan::{CommonFact, Fact, SeatTubeFact, prepare};
use framegauge::{Length, to_mm};

/// A fact as it is said in German.
struct German<'a, F>(&'a F);

/// With a comma, as German prints a number.
fn mm(length: Length) -> String {
    format!("{:.2} mm", to_mm(length)).replace('.', ",")
}

/// Every fact of the seat tube: one that is new does not compile until it is said here too.
impl fmt::Display for German<'_, SeatTubeFact> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        use SeatTubeFact as S;
        match self.0 {
            S::Shape { oval, taper } => {
                let oval = oval.map(|by| format!("mindestens {} unrund", mm(by)));
                let taper = taper.map(|by| {
                    let way = if to_mm(by) < 0.0 { "enger" } else { "weiter" };
                    format!("nach unten {} {way}", mm(by.abs()))
                });
                let both: Vec<String> = [oval, taper].into_iter().flatten().collect();
                f.write_str(&both.join("; "))
            }
            S::Spread { over } => write!(f, "die Messwerte streuen über {}", mm(*over)),
            S::BelowClear { read, clear } => {
                write!(f, "bei {} gemessen, frei nur bis {}", mm(*read), mm(*clear))
            }
            S::UnderPaint { size, agree, .. } => match size {
                Some(size) => write!(f, "unter dem Lack wohl {size} mm"),
                None => write!(f, "unter dem Lack eines von: {}", agree.join(", ")),
            },
            S::Proved { size } => write!(f, "{size} mm, mit Stütze oder Dorn bewiesen"),
            S::ProvedSmaller { size, low, high } => write!(
                f,
                "{size} mm bewiesen, die Bohrung misst aber {} bis {}",
                mm(*low),
                mm(*high)
            ),
            S::Unlisted { size } => write!(f, "keine Stütze in {size} verzeichnet"),
            S::OtherThanBelieved { believed, size } => {
                write!(f, "vermutet {believed}, gemessen {}", mm(*size))
            }
            S::NoCoat { missing } => write!(f, "{} fehlen: so dick ist kein Lack", mm(*missing)),
            S::LargeEnough { size } => write!(f, "nirgends unter {}: nichts zu reiben", mm(*size)),
            S::AboutThere { by, size } => {
                write!(f, "bis auf {} auf {}: Stütze probieren", mm(*by), mm(*size))
            }
            S::ReamedTooFar { by, size } => {
                write!(f, "um {} über {} aufgerieben", mm(*by), mm(*size))
            }
            S::LargerPostOrShim => f.write_str("dickere Stütze oder Hülse"),
            S::ToSize { size } => write!(f, "bis {}", mm(*size)),
            S::DepthAtMost { depth, by } => write!(f, "höchstens {} tief ({by})", mm(*depth)),
            S::ClearTo { depth } => write!(f, "frei bis {}", mm(*depth)),
            S::Stock { most } => write!(f, "höchstens {} Zugabe", mm(*most)),
            S::Reamer { size } => write!(f, "Reibahle {}", mm(*size)),
            S::NoEdge => f.write_str("keine Kante: eine Carbonstütze verträgt keine"),
        }
    }
}

impl fmt::Display for German<'_, SizeFact> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.0 {
            SizeFact::Against { count, .. } => write!(f, "{count} Messwerte gegen die Grenzen"),
        }
    }
}

/// What is said so far; the code stands for the rest.
fn said(fact: &Fact) -> Option<String> {
    match fact {
        Fact::SeatTube(fact) => Some(German(fact).to_string()),
        Fact::Judged(judge::Fact::Size(fact)) => Some(German(fact).to_string()),
        Fact::Common(CommonFact::LookFirst) => Some("zuerst Lack, Späne und Grat ansehen".into()),
        Fact::Common(CommonFact::SitsFlat) => Some("sitzt satt und kippelt nicht".into()),
        Fact::Judged(_)
        | Fact::Common(_)
        | Fact::Round(_)
        | Fact::Shell(_)
        | Fact::Head(_)
        | Fact::Thread(_)
        | Fact::Mount(_)
        | Fact::Rescue(_) => None,
    }
}

#[test]
fn a_plan_can_be_told_in_a_second_language() {
    let mut codes = BTreeSet::new();
    for (name, sheet) in super::sheets() {
        let plan = prepare(&sheet);
        let of_places = plan
            .places
            .iter()
            .flat_map(|p| p.facts.iter().map(|found| &found.fact).chain(&p.leave));
        let of_steps = plan
            .steps
            .iter()
            .flat_map(|s| s.checks.iter().chain(&s.proof));
        for fact in of_places.chain(of_steps) {
            let Some(german) = said(fact) else { continue };
            assert!(!german.is_empty(), "{name}: {fact:?}");
            assert_ne!(german, fact.to_string(), "{name}: {}", fact.about());
            codes.insert(fact.code());
        }
    }
    assert!(codes.len() >= 8, "{codes:?}");
    // The numbers are those of the fact, in the order of that language.
    let fact = SeatTubeFact::AboutThere {
        by: framegauge::mm(0.02),
        size: framegauge::mm(27.2),
    };
    assert_eq!(
        German(&fact).to_string(),
        "bis auf 0,02 mm auf 27,20 mm: Stütze probieren"
    );
    let low = framegauge::mm(27.31);
    let fact = SeatTubeFact::ProvedSmaller {
        size: "27.2".into(),
        low,
        high: framegauge::mm(27.35),
    };
    assert_eq!(
        German(&fact).to_string(),
        "27.2 mm bewiesen, die Bohrung misst aber 27,31 mm bis 27,35 mm"
    );
}
