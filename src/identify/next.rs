//! What to measure next: expected information about which of the candidates left it is (Lindley 1956), the cheapest
//! instrument on ties.

use alloc::vec::Vec;

use super::Feature;
use super::answer::Next;
use super::assume::{GAUGE_U, LEAST_GAIN};
use super::band::{Band, Ground};
use super::entry::{Entry, Hands, Left};
use super::gather::{Seen, Size};
use super::information::Forecast;
use super::island::entropy;
use super::kind::Kind;
use crate::Fact;
use crate::measure::{Instrument, Measures, instruments};
use crate::quantity::{mm, to_mm};
use crate::standard::ThreadedPart;
use crate::thread::Hand;

/// What can be measured or looked at, by kind.
const fn measurable(kind: Kind) -> &'static [Feature] {
    use Feature as F;
    match kind {
        Kind::Shell => &[
            F::Threaded,
            F::HandDrive,
            F::HandNonDrive,
            F::Pitch,
            F::Bore,
            F::Width,
            F::HalfWidthDrive,
            F::HalfWidthNonDrive,
        ],
        Kind::HeadTube => &[F::Bore, F::SeatAngle, F::PartOutside],
        Kind::Crown | Kind::Seatpost => &[F::OutsideDiameter],
        Kind::Steerer => &[
            F::Threaded,
            F::Pitch,
            F::OutsideDiameter,
            F::Bore,
            F::LowerDiameter,
            F::SeatDiameter,
        ],
        Kind::SeatTube => &[F::Bore],
        Kind::Axle | Kind::Hanger | Kind::Pedal | Kind::Thread => {
            &[F::Hand, F::Pitch, F::CrestDiameter, F::MinorDiameter]
        }
        Kind::Brake(_) => &[F::BoltSpacing, F::PlaneHeight, F::FirstBolt],
        Kind::Dropout(_) => &[
            F::Slot,
            F::InnerFaces,
            F::OutsideDiameter,
            F::OverLocknut,
            F::Pitch,
        ],
    }
}

/// What an instrument must be able to do to read a size.
const fn how(feature: Feature) -> Measures {
    match feature {
        Feature::Bore | Feature::MinorDiameter | Feature::InnerFaces | Feature::Slot => {
            Measures::Inside
        }
        Feature::Pitch => Measures::Pitch,
        Feature::PlaneHeight | Feature::FirstBolt => Measures::Length,
        _ => Measures::Outside,
    }
}

/// Ranked measurements that would tell the candidates left apart; empty when none gains 0.05 bit.
pub(super) fn plan<'a>(ground: &Ground<'a>, seen: &Seen<'_>, left: &[Left<'a>]) -> Vec<Next> {
    let mut found: Vec<Next> = Vec::new();
    if left.len() < 2 {
        return found;
    }
    for &feature in measurable(ground.kind) {
        let hand = |of: fn(Hands<'a>) -> Option<&'a Fact<Hand>>| {
            (look(left, |l| hand_code(of(l.entry.hands()))), None, 1)
        };
        let gain = match feature {
            Feature::Threaded => (seen.threaded.is_none()).then(|| (look(left, threaded), None, 0)),
            Feature::HandDrive => seen.hand_drive.is_none().then(|| hand(|h| h.drive)),
            Feature::HandNonDrive => seen.hand_non_drive.is_none().then(|| hand(|h| h.non_drive)),
            Feature::Hand => (!seen.any_hand()).then(|| hand(|h| h.only)),
            Feature::SeatAngle => seen.size(feature).is_none().then(|| {
                let forecast = Forecast::of(ground, left, feature, None, seen);
                (forecast.gain(1.0), None, 4)
            }),
            _ => best_tool(ground, seen, left, feature)
                .map(|(bits, tool)| (bits, Some(tool.code.clone()), tool.cost)),
        };
        let Some((bits, instrument, cost)) = gain else {
            continue;
        };
        if bits >= LEAST_GAIN {
            found.push(Next {
                measure: feature,
                instrument,
                separates: separated(ground, left, feature),
                bits,
                cost,
            });
        }
    }
    // Best first; within 0.05 bit of the best the cheapest.
    let mut ranked = Vec::with_capacity(found.len());
    while let Some(most) = found.iter().map(|n| n.bits).reduce(libm::fmax) {
        let pick = found
            .iter()
            .enumerate()
            .filter(|(_, n)| n.bits >= most - LEAST_GAIN)
            .min_by_key(|(_, n)| n.cost)
            .map_or(0, |(index, _)| index);
        ranked.push(found.remove(pick));
    }
    ranked
}

/// The reading that already stands for a feature under this or another name.
fn held_for<'s>(seen: &'s Seen<'_>, kind: Kind, feature: Feature) -> Option<&'s Size> {
    let other = match feature {
        Feature::Bore => Some(Feature::MinorDiameter),
        Feature::MinorDiameter => Some(Feature::Bore),
        Feature::CrestDiameter => Some(Feature::OutsideDiameter),
        Feature::OutsideDiameter if kind == Kind::Steerer => Some(Feature::CrestDiameter),
        _ => None,
    };
    seen.size(feature).or_else(|| seen.size(other?))
}

/// Whether the other side of a thread would be needed: a male thread has no minor diameter to read, a female one no
/// crests outside.
fn other_side(seen: &Seen<'_>, kind: Kind, feature: Feature) -> bool {
    let male = seen
        .size(Feature::CrestDiameter)
        .or(seen.size(Feature::OutsideDiameter));
    let female = seen
        .size(Feature::MinorDiameter)
        .or(seen.size(Feature::Bore));
    kind.is_thread()
        && match feature {
            Feature::MinorDiameter => male.is_some() && female.is_none(),
            Feature::CrestDiameter => female.is_some() && male.is_none(),
            _ => false,
        }
}

fn best_tool<'a>(
    ground: &Ground<'a>,
    seen: &Seen<'_>,
    left: &[Left<'a>],
    feature: Feature,
) -> Option<(f64, &'static Instrument)> {
    let class = how(feature);
    let held = held_for(seen, ground.kind, feature);
    if feature == Feature::Pitch && held.is_some() || other_side(seen, ground.kind, feature) {
        return None;
    }
    let size = typical(ground, left, feature)?;
    let allowed = ground.options.tools;
    let usable = |costs: core::ops::RangeInclusive<u8>| {
        instruments()
            .iter()
            .filter(move |t| costs.contains(&t.cost) && t.measures.contains(&class))
            .filter(move |t| allowed.is_empty() || allowed.iter().any(|code| t.code == *code))
            .filter_map(move |tool| {
                let u = if class == Measures::Pitch {
                    GAUGE_U
                } else {
                    floor_of(feature, to_mm(tool.standard_uncertainty(mm(size)).ok()?))
                };
                // Taking the same reading again helps only with something clearly finer.
                held.is_none_or(|h| u <= 0.7 * h.u).then_some((u, tool))
            })
    };
    // The finest tool tells the most; the cheapest that comes within 0.05 bit of it is enough.
    let (fine, finest) = usable(0..=u8::MAX).min_by(|a, b| a.0.total_cmp(&b.0))?;
    let forecast = Forecast::of(ground, left, feature, held, seen);
    let most = forecast.gain(fine);
    if most < LEAST_GAIN {
        return None;
    }
    // A coarser reading tells less, so what is coarser than one that tells too little need not be asked.
    let mut too_coarse = f64::INFINITY;
    for cost in 0..finest.cost {
        for (u, tool) in usable(cost..=cost) {
            if u >= too_coarse {
                continue;
            }
            let bits = if u == fine { most } else { forecast.gain(u) };
            if bits >= most - LEAST_GAIN {
                return Some((bits, tool));
            }
            too_coarse = u;
        }
    }
    Some((most, finest))
}

/// The middle plane of a frame is not a face that jaws can touch: 0.3 mm at best (memory).
fn floor_of(feature: Feature, u: f64) -> f64 {
    match feature {
        Feature::HalfWidthDrive | Feature::HalfWidthNonDrive => libm::fmax(u, 0.3),
        _ => u,
    }
}

fn typical<'a>(ground: &Ground<'a>, left: &[Left<'a>], feature: Feature) -> Option<f64> {
    left.iter()
        .find_map(|l| match ground.band(l.entry, feature, l.variant) {
            Band::Sizes { low, high, .. } => Some(f64::midpoint(low, high)),
            _ => None,
        })
}

fn threaded(left: &Left<'_>) -> Option<u8> {
    left.entry.is_threaded().map(u8::from)
}

fn hand_code(fact: Option<&Fact<Hand>>) -> Option<u8> {
    fact?.value().map(|hand| match hand {
        Hand::Right => 0,
        Hand::Left => 1,
    })
}

/// The same, with an answer of its own for what has no thread.
fn hand_if_any<'a>(left: &Left<'a>, of: fn(Hands<'a>) -> Option<&'a Fact<Hand>>) -> Option<u8> {
    if left.entry.is_threaded() == Some(false) {
        return Some(2);
    }
    hand_code(of(left.entry.hands()))
}

/// Information of a look with a clear answer, 0 or 1: the entropy of the answer, less what unknown answers blur.
fn look<'a>(left: &[Left<'a>], answer: impl Fn(&Left<'a>) -> Option<u8>) -> f64 {
    let (mut yes, mut all, mut blur) = (0.0, 0.0, 0.0);
    for l in left {
        match answer(l) {
            Some(1) => yes += l.weight,
            Some(_) => {}
            None => {
                yes += 0.5 * l.weight;
                blur += l.weight;
            }
        }
        all += l.weight;
    }
    if all <= 0.0 {
        return 0.0;
    }
    let p = yes / all;
    libm::fmax(entropy(p) + entropy(1.0 - p) - blur / all, 0.0)
}

/// The codes that a feature tells from the leading candidate: those with another answer or a band that does not meet.
/// Where either has no figure a reading tells nothing for certain.
fn separated<'a>(ground: &Ground<'a>, left: &[Left<'a>], feature: Feature) -> Vec<crate::Text> {
    let Some(leader) = left.first() else {
        return Vec::new();
    };
    let unlike = |l: &Left<'a>, answer: &dyn Fn(&Left<'a>) -> Option<u8>| {
        let answers = answer(l).zip(answer(leader));
        answers.is_some_and(|(one, other)| one != other)
    };
    let differs = |l: &Left<'a>| match feature {
        Feature::Threaded => unlike(l, &threaded),
        Feature::HandDrive => unlike(l, &|l| hand_if_any(l, |h| h.drive)),
        Feature::HandNonDrive => unlike(l, &|l| hand_if_any(l, |h| h.non_drive)),
        Feature::Hand => unlike(l, &|l| hand_if_any(l, |h| h.only)),
        _ => match (
            ground.band(l.entry, feature, l.variant),
            ground.band(leader.entry, feature, leader.variant),
        ) {
            (
                Band::Sizes {
                    low: a, high: b, ..
                },
                Band::Sizes {
                    low: c, high: d, ..
                },
            ) => {
                let overlap = libm::fmin(b, d) - libm::fmax(a, c);
                let narrow = libm::fmin(b - a, d - c);
                // Bands differ when they share less than half of the narrower; points when they do not coincide.
                overlap < 0.5 * narrow - 1e-6
            }
            (Band::Unknown, _) | (_, Band::Unknown) => false,
            (one, other) => one != other,
        },
    };
    left.iter()
        .filter(|l| differs(l))
        .map(|l| l.entry.code())
        .collect()
}

/// Whether the candidates left disagree about the hand on a side that nobody has looked at: then no force either way.
pub(super) fn hand_open(seen: &Seen<'_>, left: &[Left<'_>]) -> bool {
    if seen.any_hand() {
        return false;
    }
    let differ = |pick: &dyn Fn(&Left<'_>) -> Option<u8>| {
        let mut answers = left.iter().filter_map(pick);
        answers
            .next()
            .is_some_and(|first| answers.any(|other| other != first))
    };
    differ(&|l| hand_code(l.entry.hands().drive))
        || differ(&|l| hand_code(l.entry.hands().only))
        || left
            .iter()
            .any(|l| matches!(l.entry, Entry::Thread(t) if t.place == ThreadedPart::HangerBolt))
}

#[cfg(test)]
mod tests;
