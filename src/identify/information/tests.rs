//! Expected information against its definition.

use std::vec;
use std::vec::Vec;

use super::{Forecast, Foreseen, entropy};
use crate::identify::band::Ground;
use crate::identify::entry::Entry;
use crate::identify::entry::Left;
use crate::identify::gather::Seen;
use crate::identify::kind::Kind;
use crate::identify::{Feature, Observation, Options};
use crate::standard::{Axle, End, Shell, find};

/// A candidate's weight and its bands, all alike likely.
type Case<'c> = (f64, &'c [(f64, f64)]);

/// No figure.
const OPEN: (f64, f64) = (0.0, f64::INFINITY);
const BROAD: f64 = 1.0 / 40.0;
const PLACES: u32 = 500;

fn forecast(cases: &[Case<'_>], held: Option<(f64, f64)>) -> Forecast {
    let mut forecast = Forecast::new(held);
    for (weight, bands) in cases {
        let mut one = Foreseen {
            weight: *weight,
            parts: vec![],
            anywhere: 0.0,
        };
        let share = 1.0 / bands.len() as f64;
        for band in *bands {
            if *band == OPEN {
                one.anywhere += share * held.map_or(BROAD, |_| 1.0);
            } else {
                forecast.lay(&mut one, band.0, band.1, share);
            }
        }
        forecast.add(one);
    }
    forecast.settle(0.0);
    forecast
}

fn equal(bands: &[(f64, f64)]) -> Forecast {
    let cases: Vec<Case<'_>> = bands
        .iter()
        .map(|b| (1.0, std::slice::from_ref(b)))
        .collect();
    forecast(&cases, None)
}

fn normal(x: f64, u: f64) -> f64 {
    (-0.5 * x * x / (u * u)).exp() / (u * (2.0 * core::f64::consts::PI).sqrt())
}

/// The definition on a fine grid, without a closed form: sizes by hundreds in each band, weighed by the earlier
/// reading, and Gaussian readings round each. What a candidate without a figure foresees tells nothing.
fn by_definition(cases: &[Case<'_>], held: Option<(f64, f64)>, u: f64, broad: f64) -> f64 {
    let sizes = |(low, high): (f64, f64)| -> Vec<(f64, f64)> {
        let likely = |v: f64| held.map_or(1.0, |(x, h)| normal(v - x, h));
        let place = |k: u32| low + (f64::from(k) + 0.5) / f64::from(PLACES) * (high - low);
        let sizes = (0..PLACES).map(|k| (place(k), likely(place(k))));
        let all: f64 = sizes.clone().map(|(_, likely)| likely).sum();
        sizes.map(|(v, likely)| (v, likely / all)).collect()
    };
    let all: f64 = cases.iter().map(|(weight, _)| weight).sum();
    let closed = |bands: &[(f64, f64)]| -> Vec<(f64, f64)> {
        bands.iter().copied().filter(|b| *b != OPEN).collect()
    };
    // Weight, share without a figure, and every size with its share.
    let spread = cases.iter().map(|(weight, bands)| {
        let (share, closed) = (1.0 / bands.len() as f64, closed(bands));
        let open = share * (bands.len() - closed.len()) as f64;
        let sizes = closed.into_iter().flat_map(sizes);
        let sizes: Vec<_> = sizes.map(|(v, likely)| (v, share * likely)).collect();
        (weight / all, open, sizes)
    });
    let spread: Vec<_> = spread.collect();
    let ends: Vec<(f64, f64)> = cases.iter().flat_map(|(_, bands)| closed(bands)).collect();
    let mut y = ends.iter().map(|b| b.0).fold(f64::MAX, f64::min) - 6.0 * u;
    let to = ends.iter().map(|b| b.1).fold(f64::MIN, f64::max) + 6.0 * u;
    let step = u / 3.0;
    let mut bits = 0.0;
    while y < to {
        let anywhere = held.map_or(broad, |(x, h)| normal(y - x, u.hypot(h)));
        let banded = |sizes: &[(f64, f64)]| -> f64 {
            sizes
                .iter()
                .map(|(v, likely)| likely * normal(y - v, u))
                .sum()
        };
        let own: Vec<(f64, f64, f64)> = spread
            .iter()
            .map(|(weight, open, sizes)| (*weight, open * anywhere, banded(sizes)))
            .collect();
        let mixture: f64 = own
            .iter()
            .map(|(weight, open, banded)| weight * (open + banded))
            .sum();
        for (weight, open, banded) in own {
            if banded > 0.0 {
                bits += weight * banded * ((open + banded) / mixture).log2() * step;
            }
        }
        y += step;
    }
    bits
}

/// Apart, overlapping, one within the other, with a shared end; of one width and of several; with a candidate
/// without a figure; by finer and coarser readings; after an earlier reading in the middle, at an end, and beside.
#[test]
fn the_walk_agrees_with_the_definition() {
    let (a, b, c) = ((27.0, 27.2), (27.1, 27.3), (27.2, 27.4));
    let (inner, far) = ((27.05, 27.1), (27.9, 28.1));
    let mixes: [&[Case<'_>]; 9] = [
        &[(1.0, &[a]), (1.0, &[b])],
        &[(1.0, &[a]), (2.0, &[inner])],
        &[(1.0, &[a, c]), (1.0, &[a, inner]), (0.5, &[b])],
        &[(1.0, &[a]), (1.0, &[b, OPEN]), (1.0, &[OPEN])],
        &[(1.0, &[a]), (0.3, &[c]), (0.1, &[far])],
        &[(1.0, &[a, far]), (1.0, &[b, c]), (0.5, &[far])],
        &[(1.0, &[a]), (1.0, &[b]), (1.0, &[OPEN])],
        &[(1.0, &[inner]), (1.0, &[c, far]), (4.0, &[OPEN])],
        &[(1.0, &[a, a, far]), (1.0, &[b])],
    ];
    let earlier = [(27.1, 0.05), (27.2, 0.04), (27.0, 0.05)];
    let asked = (mixes.iter().map(|cases| (cases, None))).chain(
        mixes
            .iter()
            .take(4)
            .flat_map(|cases| earlier.map(|held| (cases, Some(held)))),
    );
    for (cases, held) in asked {
        let readings = held.map_or([0.01, 0.03, 0.1, 0.4], |(_, u)| {
            [0.09, 0.2, 0.5, 0.7].map(|k| k * u)
        });
        for u in readings {
            let got = forecast(cases, held).gain(u);
            let expected = by_definition(cases, held, u, BROAD);
            assert!(
                (got - expected).abs() < 5e-5,
                "{cases:?} {held:?} {u}: {got} against {expected}"
            );
        }
    }
}

/// Two equally likely points, Gaussian readings: a table of separation power that was integrated
/// independently of this crate (delta = distance in standard uncertainties).
#[test]
fn separation_power() {
    for (delta, bits) in [
        (0.25, 0.011_183_9),
        (0.5, 0.043_73),
        (1.0, 0.160_747),
        (1.5, 0.319_082),
        (2.0, 0.485_944),
        (2.5, 0.637_23),
        (3.0, 0.759_979),
        (3.5, 0.850_832),
        (4.0, 0.912_822),
        (5.0, 0.975_179),
        (6.0, 0.994_447),
    ] {
        let other = 27.0 + delta * 0.02;
        let got = equal(&[(27.0, 27.0), (other, other)]).gain(0.02);
        assert!(
            (got - bits).abs() < 1e-4,
            "delta {delta}: {got} against {bits}"
        );
    }
}

/// Bands far apart tell everything, equal bands nothing.
#[test]
fn the_ends_of_the_scale() {
    let band = |low: f64| (low, low + 0.05);
    let far = equal(&[band(27.0), band(28.0)]).gain(0.01);
    assert!((far - 1.0).abs() < 2e-5, "{far}");
    assert!(equal(&[band(27.0), band(27.0)]).gain(0.01) < 1e-9);
}

/// The forecast of a feature from rows of the tables, each with its variant and weight.
fn from_tables(
    kind: Kind,
    rows: &[(Entry<'static>, usize, f64)],
    feature: Feature,
    observed: &[Observation],
) -> Forecast {
    let options = Options::default();
    let ground = Ground {
        kind,
        options: &options,
        pitch_read: false,
        unfinished: false,
    };
    let left = rows.iter().map(|(entry, variant, weight)| Left {
        entry: *entry,
        variant: *variant,
        weight: *weight,
    });
    let left: Vec<Left<'_>> = left.collect();
    let seen = Seen::gather(kind, None, observed).unwrap();
    Forecast::of(&ground, &left, feature, seen.size(feature), &seen)
}

/// The slots of quick releases are 10 mm behind and 9 mm in front, ±0.3 mm as assumed, a thru-axle has none (the table of
/// axles). A fine reading, or its want, tells all three apart: Shannon's entropy of their weights. Of one with a slot
/// and one without, its presence tells; of two without, nothing.
#[test]
fn whether_a_feature_is_there_tells_too() {
    let axle = |code: &str| Entry::Axle(find::<Axle>(code).unwrap());
    let (rear, front) = (axle("qr_rear_130"), axle("qr_front"));
    let (thru, other) = (axle("ta_12x142"), axle("ta_12x148"));
    let bits = |rows: &[(Entry<'static>, usize, f64)]| {
        from_tables(Kind::Dropout(End::Both), rows, Feature::Slot, &[]).gain(0.01)
    };
    let plain = |weights: &[f64]| -> f64 {
        let all: f64 = weights.iter().sum();
        weights.iter().map(|w| -(w / all) * (w / all).log2()).sum()
    };
    for (a, b, c) in [(0.5, 0.2, 0.3), (0.1, 0.3, 0.05)] {
        let got = bits(&[(rear, 0, a), (front, 0, b), (thru, 0, c)]);
        let expected = plain(&[a, b, c]);
        assert!((got - expected).abs() < 1e-5, "{got} against {expected}");
        let got = bits(&[(rear, 0, a), (thru, 0, b), (other, 0, c)]);
        let expected = plain(&[a, b + c]);
        assert!((got - expected).abs() < 1e-12, "{got} against {expected}");
        assert_eq!(bits(&[(other, 0, a), (thru, 0, b)]), 0.0);
        let got = bits(&[(rear, 0, a), (front, 0, b)]);
        assert!((got - plain(&[a, b])).abs() < 1e-5, "{got}");
    }
    assert_eq!((entropy(0.0), entropy(1.0), entropy(0.5)), (0.0, 0.0, 0.5));
}

/// Widths and half widths as the table of shells prints them, ±0.8 and ±0.5 mm as assumed: a shell of several widths may
/// have any of them until its width is read, then the one that suits.
#[test]
fn variants_count_alike_until_one_is_known() {
    let shell = |code: &str| find::<Shell>(code).unwrap();
    let nominal = |f: &crate::Figure| crate::quantity::to_mm(f.nominal().unwrap());
    let widths = |row: &Shell| -> Vec<(f64, f64)> {
        let about = |w: &crate::Figure| (nominal(w) - 0.8, nominal(w) + 0.8);
        row.widths.iter().map(about).collect()
    };
    let halves = |row: &Shell| -> Vec<(f64, f64)> {
        let half = |w: &crate::Figure| {
            let half = row
                .half_widths
                .iter()
                .find(|h| Some(h.width) == w.nominal());
            half.map_or(OPEN, |h| (nominal(&h.drive) - 0.5, nominal(&h.drive) + 0.5))
        };
        row.widths.iter().map(half).collect()
    };
    let kind = Kind::Shell;
    let rows = [shell("bb30"), shell("bbright_pf"), shell("osbb61")];
    let weighed = [0.5, 0.2, 0.3];
    let ask = |feature, observed: &[Observation]| {
        let of = |(row, weight)| (Entry::Shell(row), 0, weight);
        let rows: Vec<_> = rows.into_iter().zip(weighed).map(of).collect();
        from_tables(kind, &rows, feature, observed)
    };
    let expected = |bands: &[Vec<(f64, f64)>], u: f64| {
        let cases = weighed.iter().zip(bands).map(|(w, b)| (*w, b.as_slice()));
        by_definition(&cases.collect::<Vec<_>>(), None, u, 1.0 / 80.0)
    };
    let several: Vec<_> = rows.iter().map(|row| widths(row)).collect();
    let half: Vec<_> = rows.iter().map(|row| halves(row)).collect();
    // Of the first shell one half width is printed, of the others the only one and none.
    assert!(several[0].len() > several[1].len());
    assert!(half[0].contains(&OPEN) && half[0][0] != OPEN && half[2][0] == OPEN);
    let read = [Observation::read("width", "68 +/- 0.1 mm").unwrap()];
    let known: Vec<_> = half.iter().map(|bands| vec![bands[0]]).collect();
    for u in [0.1, 0.3, 0.5] {
        for (feature, bands, observed) in [
            (Feature::Width, &several, &[][..]),
            (Feature::HalfWidthDrive, &half, &[]),
            (Feature::HalfWidthDrive, &known, &read),
        ] {
            let (got, bits) = (ask(feature, observed).gain(u), expected(bands, u));
            assert!(
                (got - bits).abs() < 5e-5,
                "{feature} {u}: {got} against {bits}"
            );
        }
    }
}

/// After a reading a size may lie up to four of its uncertainties away: 26 ± 4 * 0.25 mm reaches to 27 and to 25 mm. A
/// candidate that lies farther foresees nothing.
#[test]
fn an_earlier_reading_leaves_room_for_four_uncertainties() {
    for (low, high, room) in [
        (27.0, 27.2, true),
        (27.01, 27.2, false),
        (24.8, 25.0, true),
        (24.8, 24.99, false),
        (25.9, 26.1, true),
    ] {
        let bands = [(low, high)];
        let held = Some((26.0, 0.25));
        assert_eq!(
            forecast(&[(1.0, &bands)], held).bands.len(),
            usize::from(room),
            "{low} to {high}"
        );
    }
}

/// A candidate without weight tells nothing and takes nothing away, wherever it lies.
#[test]
fn a_candidate_without_weight_changes_nothing() {
    let (a, b) = ([(27.0, 27.2)], [(27.1, 27.3)]);
    let two = [(1.0, &a[..]), (2.0, &b[..])];
    let expected = forecast(&two, None).gain(0.02);
    for low in [27.05, 27.25, 29.0] {
        let nil = [(low, low + 0.1)];
        let got = forecast(&[two[0], (0.0, &nil), two[1]], None).gain(0.02);
        assert!(
            (got - expected).abs() < 1e-4,
            "{low}: {got} against {expected}"
        );
    }
    assert_eq!(forecast(&[(0.0, &a), (0.0, &b)], None).gain(0.02), 0.0);
}
