//! Looks and hands against a row: what strikes it out, and what only moves its likelihood.

use super::Feature;
use super::assume::{HAND_MISREAD, REMEMBERED_HAND_WRONG};
use super::entry::Entry;
use super::gather::Seen;
use crate::evidence::{Fact, Grade};
use crate::thread::Hand;

/// Looks and hands: their factor on the likelihood, and what they strike out.
pub(super) fn words_and_hands(seen: &Seen<'_>, entry: Entry<'_>) -> (f64, Option<Feature>) {
    let mut factor = 1.0;
    if let Some(is) = seen.threaded {
        match entry.is_threaded() {
            Some(has) if has != is => return (0.0, Some(Feature::Threaded)),
            Some(_) => {}
            None => factor *= 0.5,
        }
    }
    let hands = entry.hands();
    let sides = [
        (
            seen.hand_drive,
            hands.drive.or(hands.only),
            Feature::HandDrive,
        ),
        (
            seen.hand_non_drive,
            hands.non_drive.or(hands.only),
            Feature::HandNonDrive,
        ),
    ];
    for (observed, stated, feature) in sides {
        let Some(observed) = observed else { continue };
        match one_hand(observed, stated) {
            None => factor *= 0.5,
            Some(f) if f <= 0.0 => return (0.0, Some(feature)),
            Some(f) => factor *= f,
        }
    }
    if let Some(observed) = seen.hand {
        let any = [hands.only, hands.drive, hands.non_drive]
            .into_iter()
            .filter_map(|fact| one_hand(observed, fact))
            .fold(None, |best: Option<f64>, f| {
                Some(best.map_or(f, |b| libm::fmax(b, f)))
            });
        match any {
            None => factor *= 0.5,
            Some(f) if f <= 0.0 => return (0.0, Some(Feature::Hand)),
            Some(f) => factor *= f,
        }
    }
    (factor, None)
}

/// Factor of an observed hand against a stated one: nil strikes out; a hand that is only remembered cannot.
fn one_hand(observed: Hand, stated: Option<&Fact<Hand>>) -> Option<f64> {
    let fact = stated?;
    let held = *fact.value()?;
    let remembered = fact.grade() == Some(Grade::Memory);
    Some(match (held == observed, remembered) {
        (true, false) => 1.0 - HAND_MISREAD,
        (true, true) => 1.0 - REMEMBERED_HAND_WRONG,
        (false, false) => 0.0,
        (false, true) => REMEMBERED_HAND_WRONG,
    })
}
