//! A worked example, reckoned independently of this crate: seat tubes 27.2, 27.0, 26.8 each ±0.05 mm,
//! caliper with s = 0.026 mm.

use super::*;

fn at(value: f64, u: f64) -> Identification {
    let assumptions = Assumptions {
        seat_tube: mm(0.05),
        ..Assumptions::default()
    };
    let options = Options {
        assumptions,
        ..Options::default()
    };
    let reading = framegauge::measure::Reading::new(mm(value), mm(u)).unwrap();
    identify(
        Place::SeatTube,
        &[Observation::size(Feature::Bore, reading)],
        &options,
    )
    .unwrap()
}

fn pair(answer: &Identification) -> f64 {
    let (a, b) = (
        answer.candidate("27.2").unwrap().share,
        answer.candidate("27.0").unwrap().share,
    );
    a / (a + b)
}

#[test]
fn midway_is_ambiguous() {
    let answer = at(27.10, 0.026);
    assert_eq!(left(&answer), ["27.0", "27.2"]);
    assert!((pair(&answer) - 0.5).abs() < 1e-6);
    assert!(answer.candidate("26.8").unwrap().share < 1e-6);
    assert_eq!(answer.decided_by.unwrap().rule, Rule::Nothing);
}

/// At 27.11 the exclusion decides against the ranking: 27.0 is 2.3 s away and keeps 0.145 of the pair.
#[test]
fn exclusion_is_named_where_the_ranking_differs() {
    let answer = at(27.11, 0.026);
    assert_eq!(answer.outcome.identified(), Some("27.2"));
    assert!((pair(&answer) - 0.855).abs() < 5e-4, "{}", pair(&answer));
    assert_eq!(answer.decided_by.unwrap().rule, Rule::Exclusion);
    let Standing::Excluded(e) = answer.candidate("27.0").unwrap().standing else {
        panic!("27.0 is out")
    };
    assert!((e.against.unwrap().distance_in_u - 2.3).abs() < 0.01);
}

/// With a micrometer (s 0.0033) a reading between the bands is no listed standard.
#[test]
fn a_fine_reading_between_the_bands_is_unlisted() {
    assert_eq!(at(27.10, 0.0033).outcome, Outcome::Unlisted);
}
