//! Shares against likelihoods reckoned anew by plain sums over the model that the module states: the size lies evenly
//! within its band, the reading is normal about it, readings by one instrument share one error, and every row is as
//! likely beforehand as the candidate that no table lists (Bayes' rule with equal priors).

use super::*;
use framegauge::measure::Reading;
use framegauge::standard::{
    Axle, CrownSeat, HeadSeat, Row, Seatpost, Shell, ThreadUse, ThreadedPart,
};
use framegauge::thread::ThreadSize;
use framegauge::{Figure, quantity::deg, to_mm};

/// Lower and upper end, and how far a worn thread may lie beyond either.
type Band = (f64, f64, f64, f64);

/// A reading: feature, value, standard uncertainty, instrument.
#[derive(Clone, Copy)]
struct Read(Feature, f64, f64, Option<&'static str>);

/// A row: its code and for each variant the band of each reading, if it has a figure.
type Bands = (String, Vec<Vec<Option<Band>>>);

/// The model's spans for a size that no table lists: 40 mm for diameters and slots, 80 mm for widths, 2 mm for
/// pitches, 45 degrees (memory, stated with the assumptions).
fn span(feature: Feature) -> f64 {
    match feature {
        Feature::Width | Feature::InnerFaces | Feature::OverLocknut => 80.0,
        Feature::Pitch => 2.0,
        Feature::SeatAngle => 45.0,
        _ => 40.0,
    }
}

/// Printed limits, else the nominal with the assumed spread.
fn band(figure: Option<&Figure>, spread: f64) -> Option<Band> {
    let figure = figure?;
    let ends = match (figure.lower(), figure.upper(), figure.nominal()) {
        (Some(low), Some(high), _) => (to_mm(low), to_mm(high)),
        (_, _, Some(n)) => (to_mm(n) - spread, to_mm(n) + spread),
        _ => return None,
    };
    Some((ends.0, ends.1, 0.0, 0.0))
}

fn normal(x: f64, u: f64) -> f64 {
    (-0.5 * x * x / (u * u)).exp() / (u * std::f64::consts::TAU.sqrt())
}

/// Mean density of a reading over sizes that are strewn evenly.
fn evenly(x: f64, u: f64, low: f64, high: f64) -> f64 {
    let (near, far) = (low.max(x - 8.5 * u), high.min(x + 8.5 * u));
    if low >= high {
        return normal(x - low, u);
    }
    if near >= far {
        return 0.0;
    }
    let places = 600_u32;
    let size = |k: u32| near + (f64::from(k) + 0.5) / f64::from(places) * (far - near);
    let sum: f64 = (0..places).map(|k| normal(x - size(k), u)).sum();
    sum * (far - near) / f64::from(places) / (high - low)
}

/// One thread in ten is worn or cut beyond the usual band (memory, as the module's source says).
fn worn(x: f64, u: f64, (low, high, below, above): Band) -> f64 {
    if below + above > 0.0 {
        0.9 * evenly(x, u, low, high) + 0.1 * evenly(x, u, low - below, high + above)
    } else {
        evenly(x, u, low, high)
    }
}

/// Readings that share an instrument which is not in the tables: four fifths of the least variance is common to them.
fn together(reads: &[(Read, Option<Band>)]) -> f64 {
    let least = reads.iter().map(|(r, _)| r.2).fold(f64::MAX, f64::min);
    let common = 0.8_f64.sqrt() * least;
    let each = |error: f64| -> f64 {
        let likely = reads.iter().map(|(Read(feature, x, u, _), band)| {
            let own = (u * u - common * common).sqrt();
            band.map_or(1.0 / span(*feature), |b| worn(x - error, own, b))
        });
        likely.product()
    };
    let step = 0.1;
    let errors = (-60..=60).map(|k| f64::from(k) * step);
    errors
        .map(|z| normal(z, 1.0) * step * each(z * common))
        .sum()
}

fn likelihood(reads: &[Read], (_, variants): &Bands) -> f64 {
    let one = |bands: &Vec<Option<Band>>| -> f64 {
        let pairs: Vec<(Read, Option<Band>)> =
            reads.iter().copied().zip(bands.iter().copied()).collect();
        let mut tools: Vec<&str> = reads.iter().filter_map(|r| r.3).collect();
        tools.sort_unstable();
        tools.dedup();
        let alone = pairs.iter().filter(|(r, _)| r.3.is_none());
        let alone = alone.map(|(Read(feature, x, u, _), band)| {
            band.map_or(1.0 / span(*feature), |b| worn(*x, *u, b))
        });
        let shared = tools.iter().map(|tool| {
            let of = |p: &&(Read, Option<Band>)| p.0.3 == Some(tool);
            together(&pairs.iter().filter(of).copied().collect::<Vec<_>>())
        });
        alone.product::<f64>() * shared.product::<f64>()
    };
    variants.iter().map(one).sum::<f64>() / variants.len() as f64
}

/// Holds the shares of the rows, beside that of the unlisted candidate, against the likelihoods.
fn check(kind: Place, reads: &[Read], threaded: bool, rows: &[Bands], within: f64) {
    let seen: Vec<Observation> = reads
        .iter()
        .map(|Read(feature, x, u, tool)| match feature {
            Feature::SeatAngle => Observation::SeatAngle {
                angle: deg(*x),
                standard_uncertainty: deg(*u),
            },
            _ => Observation::Size {
                feature: *feature,
                reading: Reading::new(mm(*x), mm(*u)).unwrap(),
                instrument: tool.map(Into::into),
            },
        })
        .chain(threaded.then_some(Observation::Threaded(true)))
        .collect();
    let answer = identify(kind.clone(), &seen, &Options::default()).unwrap();
    // A thread or none: even odds where no table says so.
    let coin = if threaded { 0.5 } else { 1.0 };
    let unlisted: f64 = reads.iter().map(|r| 1.0 / span(r.0)).product::<f64>() * coin;
    let other = answer.candidate(UNLISTED).unwrap().share;
    let mut likely = 0;
    for row in rows {
        let expected = likelihood(reads, row) / unlisted;
        let got = answer.candidate(&row.0).unwrap().share / other;
        assert!(
            (got - expected).abs() <= within * expected + 1e-6,
            "{kind} {:?} {}: {got} against {expected}",
            reads.iter().map(|r| (r.0, r.1, r.2)).collect::<Vec<_>>(),
            row.0,
        );
        likely += u32::from(expected > 1e-3);
    }
    assert!(likely > 0, "{kind}: nothing to hold against");
}

fn posts() -> Vec<Bands> {
    let rows = Seatpost::table().iter();
    rows.map(|r| (r.code.to_string(), vec![vec![band(Some(&r.diameter), 0.1)]]))
        .collect()
}

/// In the middle of a band, at its end, beside it, and far out; with instruments from fine to coarse.
#[test]
fn one_diameter() {
    let crowns: Vec<Bands> = CrownSeat::table()
        .iter()
        .map(|r| (r.code.to_string(), vec![vec![band(Some(&r.seat), 0.15)]]))
        .collect();
    let heads: Vec<Bands> = HeadSeat::table()
        .iter()
        .map(|r| (r.code.to_string(), vec![vec![band(Some(&r.bore), 0.05)]]))
        .collect();
    for u in [0.003, 0.02, 0.1] {
        for off in [0.0, 0.06, 0.1, 0.13] {
            let at = |feature: Feature, size: f64| [Read(feature, size + off, u, None)];
            let (bore, outside) = (Feature::Bore, Feature::OutsideDiameter);
            check(Place::SeatTube, &at(bore, 27.2), false, &posts(), 4e-4);
            check(Place::Seatpost, &at(outside, 30.9), false, &posts(), 4e-4);
            check(Place::Crown, &at(outside, 26.4), false, &crowns, 4e-4);
            check(UPPER, &at(bore, 33.9), false, &heads, 4e-4);
        }
    }
}

/// A bore and an angle by instruments of their own; the angle in degrees.
#[test]
fn a_bore_and_a_seat_angle() {
    let rows: Vec<Bands> = HeadSeat::table()
        .iter()
        .map(|r| {
            let angle = r.seat_angle.as_ref().and_then(Figure::nominal);
            let angle = angle.map(|a| a.value / deg(1.0).value);
            let angle = angle.map(|a| (a - 1.5, a + 1.5, 0.0, 0.0));
            let bands = vec![band(Some(&r.bore), 0.05), angle];
            (r.code.to_string(), vec![bands])
        })
        .collect();
    for angle in [36.0, 37.0, 44.0, 46.7] {
        let reads = [
            Read(Feature::Bore, 41.97, 0.02, None),
            Read(Feature::SeatAngle, angle, 0.4, None),
        ];
        check(UPPER, &reads, false, &rows, 4e-4);
        check(UPPER, &reads[1..], false, &heads_by_angle(&rows), 4e-4);
    }
}

fn heads_by_angle(rows: &[Bands]) -> Vec<Bands> {
    let angle = |row: &Bands| (row.0.clone(), vec![vec![row.1[0][1]]]);
    rows.iter().map(angle).collect()
}

/// Press shells of one bore and one band: a row of several widths is as likely as the mean of them. By one instrument,
/// by two, and by one that reads the width more coarsely.
#[test]
fn a_bore_and_a_width() {
    let rows: Vec<Bands> = Shell::table()
        .iter()
        .filter(|r| r.thread.is_none())
        .filter(|r| (r.bore.as_ref()).is_some_and(|b| b.dissent().is_empty()))
        .map(|r| {
            let bands = |w| vec![band(r.bore.as_ref(), 0.05), band(Some(w), 0.8)];
            (r.code.to_string(), r.widths.iter().map(bands).collect())
        })
        .filter(|(_, variants): &Bands| !variants.is_empty())
        .collect();
    for (bore, width) in [
        (46.0, 68.3),
        (46.04, 73.0),
        (45.93, 67.1),
        (41.86, 67.1),
        (41.0, 92.4),
    ] {
        for (first, second, coarser) in [
            (None, None, 1.0),
            (Some("old"), Some("old"), 1.0),
            (Some("old"), Some("new"), 1.0),
            (Some("old"), Some("old"), 2.0),
        ] {
            let reads = [
                Read(Feature::Bore, bore, 0.05, first),
                Read(Feature::Width, width, 0.05 * coarser, second),
            ];
            check(Place::Shell, &reads, false, &rows, 2e-3);
        }
    }
}

/// Four readings of a dropout by two instruments, two by each, and one by none that is named.
#[test]
fn two_instruments_of_two_readings_each() {
    let rows: Vec<Bands> = Axle::table()
        .iter()
        .filter(|r| r.slot.is_some() && r.end.value() == Some(&End::Rear))
        .map(|r| {
            let bands = vec![
                band(r.inner_faces.as_ref(), 1.5),
                band(r.slot.as_ref(), 0.3),
                band(Some(&r.over_locknut), 0.4),
                band(r.axle_diameter.as_ref(), 0.3),
            ];
            (r.code.to_string(), vec![bands])
        })
        .collect();
    for (faces, slot, hub, axle) in [
        (130.2, 10.0, 130.1, 9.9),
        (131.6, 10.4, 130.5, 10.4),
        (125.0, 9.6, 126.5, 9.6),
    ] {
        for loose in [false, true] {
            let reads = [
                Read(Feature::InnerFaces, faces, 0.1, Some("long")),
                Read(Feature::Slot, slot, 0.07, Some("short")),
                Read(Feature::OverLocknut, hub, 0.1, Some("long")),
                Read(Feature::OutsideDiameter, axle, 0.07, Some("short")),
            ];
            let mut reads = reads;
            if loose {
                reads[3].3 = None;
            }
            check(Place::Dropout(End::Rear, None), &reads, false, &rows, 2e-3);
        }
    }
}

/// Crests lie up to 0.25 mm P^(2/3) below the nominal (the assumption as published with the crate), and 0.2 mm more
/// where the pitch is unread and the thread may be worn.
#[test]
fn crests_with_and_without_a_pitch() {
    let of = |place: ThreadedPart, pitch_read: bool| -> Vec<Bands> {
        let rows = ThreadUse::table().iter().filter(|r| r.place == place);
        let known = rows.filter_map(|r| Some((r.code.to_string(), r.thread.value()?)));
        let bands = |(code, thread): (String, &ThreadSize)| {
            let (major, pitch) = (to_mm(thread.major()), to_mm(thread.pitch().length()));
            let low = major - 0.25 * pitch.powf(2.0 / 3.0);
            let crest = (low, major, if pitch_read { 0.0 } else { 0.2 }, 0.0);
            let leaf = (pitch, pitch, 0.0, 0.0);
            (code, vec![vec![Some(crest), Some(leaf)]])
        };
        known.map(bands).collect()
    };
    for crest in [9.9, 9.72, 10.04, 9.6] {
        let reads = [
            Read(Feature::CrestDiameter, crest, 0.03, None),
            Read(Feature::Pitch, 0.99, 0.01, None),
        ];
        let worn = of(ThreadedPart::Axle, false);
        check(Place::Axle(End::Both), &reads[..1], false, &worn, 4e-4);
        let sound = of(ThreadedPart::Axle, true);
        check(Place::Axle(End::Both), &reads, true, &sound, 4e-4);
    }
}

/// By one instrument the crest and the pitch share its error: a thread that is not worn, one that is, and a point band.
#[test]
fn a_crest_by_one_instrument_with_its_pitch() {
    let of = |thread: &ThreadSize| {
        let (major, pitch) = (to_mm(thread.major()), to_mm(thread.pitch().length()));
        let low = major - 0.25 * pitch.powf(2.0 / 3.0);
        vec![Some((low, major, 0.0, 0.0)), Some((pitch, pitch, 0.0, 0.0))]
    };
    let rows: Vec<Bands> = ThreadUse::table()
        .iter()
        .filter(|r| r.place == ThreadedPart::Axle)
        .filter_map(|r| Some((r.code.to_string(), vec![of(r.thread.value()?)])))
        .collect();
    for (crest, pitch) in [(9.9, 1.0), (9.99, 1.02), (9.72, 0.97)] {
        let reads = [
            Read(Feature::CrestDiameter, crest, 0.02, Some("old")),
            Read(Feature::Pitch, pitch, 0.02, Some("old")),
        ];
        check(Place::Axle(End::Both), &reads, false, &rows, 2e-3);
    }
}
