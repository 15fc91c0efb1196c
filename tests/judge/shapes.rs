//! One size or none, faces of a head tube, squareness of a brake mount.

use framegauge::fit::SizeReading;
use framegauge::judge::{mount_square, one_size, parallel_faces};
use framegauge::measure::Reading;
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

#[test]
fn mounts() {
    let mount = |reading: Option<Reading>| mount_square(reading.as_ref()).unwrap();
    let because = "mount_squareness has no number: nothing is shown, whatever is read";
    hold(
        "mounts",
        &[
            case("nothing read", OPEN, because, mount(None)),
            case(
                "as much as the pads have free play",
                OPEN,
                "beside: 0.4 mm is the least free play (pads_free_play), and is not over it",
                mount(Some(exact(0.4))),
            ),
            case(
                "more than the free play",
                OPEN,
                "beside: 0.401 mm is over it, a consequence and not a limit",
                mount(Some(exact(0.401))),
            ),
            case("square", OPEN, because, mount(Some(exact(0.0)))),
        ],
    );
    assert_eq!(
        mount_square(Some(&exact(-0.5))).unwrap_err().field(),
        "out of square"
    );
}
