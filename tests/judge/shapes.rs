//! One size or none, faces of a head tube, squareness of a brake mount.

use super::asked::parallel_faces;
use framegauge::face::MountKind;
use framegauge::fit::SizeReading;
use framegauge::judge::{CaliperTilt, Verdict, one_size};
use framegauge::measure::Reading;
use framegauge::standard::Tables;
use framegauge::{deg, mm};

use super::{OPEN, OUT, WITHIN, case, exact, hold, read};

#[test]
fn bores_of_one_size() {
    let bore = |readings: &[Reading]| {
        let all: Vec<SizeReading> = readings.iter().copied().map(SizeReading::new).collect();
        one_size("seat tube", &all, mm(0.2)).unwrap()
    };
    let across = |a: f64, b: f64| {
        let at = |size, axis: f64| {
            SizeReading::new(exact(size))
                .across(deg(axis))
                .unwrap()
                .at_depth(mm(20.0))
                .unwrap()
        };
        one_size("seat tube", &[at(a, 0.0), at(b, 90.0)], mm(0.2)).unwrap()
    };
    hold(
        "bores_of_one_size",
        &[
            case(
                "spread of exactly one step",
                WITHIN,
                "posts step by 0.2 mm: 27.0 and 27.2 are one step apart (common practice)",
                bore(&[exact(27.0), exact(27.2)]),
            ),
            case(
                "a micrometre more",
                OUT,
                "0.201 mm is more than a step: it names no size",
                bore(&[exact(27.0), exact(27.201)]),
            ),
            case(
                "read with doubt",
                OPEN,
                "0.18 +/- 0.028 mm: 1.4 standard uncertainties from the step",
                bore(&[read("27.00 +/- 0.02 mm"), read("27.18 +/- 0.02 mm")]),
            ),
            case(
                "one reading",
                OPEN,
                "one reading shows no shape",
                bore(&[exact(27.2)]),
            ),
            case(
                "two axes at one depth",
                WITHIN,
                "oval by 0.1 mm, within a step",
                across(27.0, 27.1),
            ),
            case(
                "all readings alike",
                WITHIN,
                "no spread",
                bore(&[exact(27.2), exact(27.2), exact(27.2)]),
            ),
        ],
    );
}

#[test]
fn faces() {
    let faces = |reading: Option<Reading>, worn| parallel_faces(reading.as_ref(), worn).unwrap();
    hold(
        "faces",
        &[
            case(
                "nothing read",
                OPEN,
                "not enough data; end_face_parallelism is 0.075 mm at most",
                faces(None, false),
            ),
            case(
                "a wear pattern",
                OPEN,
                "a bent steerer wears the races in the same place: it proves nothing",
                faces(None, true),
            ),
            case(
                "at the ceiling",
                WITHIN,
                "0.075 mm is the limit of end_face_parallelism",
                faces(Some(exact(0.075)), false),
            ),
            case(
                "a micrometre over it",
                OUT,
                "0.076 mm",
                faces(Some(exact(0.076)), true),
            ),
            case(
                "exactly parallel",
                WITHIN,
                "0 is a reading",
                faces(Some(exact(0.0)), false),
            ),
            case(
                "too close",
                OPEN,
                "0.07 +/- 0.02 mm: half a standard uncertainty from 0.075",
                faces(Some(read("0.07 +/- 0.02 mm")), false),
            ),
        ],
    );
    assert_eq!(
        parallel_faces(Some(&exact(-0.001)), false)
            .unwrap_err()
            .field(),
        "parallelism"
    );
}

/// Four heights of a mount 74 mm long and 15 mm wide, one edge higher by this.
fn mount(kind: MountKind, rise: &str, pad: Option<(f64, f64)>) -> Verdict {
    let at = |spot: &str, height: &str| format!("{spot}: {height} mm").parse().unwrap();
    CaliperTilt {
        kind,
        points: vec![
            at("-37 mm along, -7.5 mm across", "0 +/- 0.008"),
            at("-37 mm along, 7.5 mm across", rise),
            at("37 mm along, -7.5 mm across", "0 +/- 0.008"),
            at("37 mm along, 7.5 mm across", rise),
        ],
        pad_length: pad.map(|p| mm(p.0)),
        pad_clearance: pad.map(|p| mm(p.1)),
        rule: None,
    }
    .answer(Tables::ours())
    .unwrap()
}

/// A pad 25 mm long with 0.2 mm a side touches at 0.4 mm over its length: a slope of 0.24 mm over 15 mm of mount (arithmetic).
#[test]
fn mounts() {
    let pad = Some((25.0, 0.2));
    let of = |rise| mount(MountKind::Posts, rise, pad);
    hold(
        "mounts",
        &[
            case("level", WITHIN, "no slope", of("0 +/- 0.008")),
            case(
                "0.1 mm over 15 mm",
                WITHIN,
                "0.167 mm over the pad, 0.4 allowed",
                of("0.1 +/- 0.008"),
            ),
            case(
                "0.24 mm over 15 mm",
                OPEN,
                "on the limit: even chances",
                of("0.24 +/- 0.008"),
            ),
            case(
                "0.36 mm over 15 mm",
                OUT,
                "0.6 mm over the pad: it rubs",
                of("0.36 +/- 0.008"),
            ),
            case(
                "clearance not known",
                OPEN,
                "nothing bounds it: mount_squareness has no number",
                mount(MountKind::Posts, "0.36 +/- 0.008", None),
            ),
        ],
    );
}

/// Bolts in the plane of the wheel let a step along the mount pitch the caliper; on a tab it tilts it.
#[test]
fn a_step_along_the_mount_tilts_a_tab_only() {
    let stepped = |kind| {
        let at = |text: &str| text.parse().unwrap();
        CaliperTilt {
            kind,
            points: vec![
                at("-25 mm along, -7.5 mm across: 0 +/- 0.008 mm"),
                at("-25 mm along, 7.5 mm across: 0 +/- 0.008 mm"),
                at("25 mm along, -7.5 mm across: 1.2 +/- 0.008 mm"),
                at("25 mm along, 7.5 mm across: 1.2 +/- 0.008 mm"),
            ],
            pad_length: Some(mm(25.0)),
            pad_clearance: Some(mm(0.2)),
            rule: None,
        }
        .answer(Tables::ours())
        .unwrap()
        .outcome
    };
    assert_eq!(
        (stepped(MountKind::Posts), stepped(MountKind::Tab)),
        (WITHIN, OUT)
    );
}
