//! Deep, long and wide enough: cups in bores, spindles in shells, bolts through mounts, shims in gaps, coats on metal.

use super::asked::{cup_depth, flat_mount_bolt, over_coating, shim, spindle_for_width};
use framegauge::fit::Feature;
use framegauge::judge::{AtTemperature, MemberOf, Verdict};
use framegauge::measure::{DecisionRule, Reading};
use framegauge::mm;
use framegauge::standard::Tables;

use super::{OPEN, OUT, WITHIN, case, exact, hold, read};

#[test]
fn cups() {
    let cup = |bore, insertion| cup_depth(&bore, &insertion, DecisionRule::default()).unwrap();
    hold(
        "cups",
        &[
            case(
                "bore exactly as deep as the cup is long",
                WITHIN,
                "nothing missing: 12 - 12 = 0, and room of 0 is enough (arithmetic)",
                cup(exact(12.0), exact(12.0)),
            ),
            case(
                "bore a micrometre too shallow",
                OUT,
                "11.999 - 12 < 0: the cup bottoms (arithmetic)",
                cup(exact(11.999), exact(12.0)),
            ),
            case(
                "bore cut 9 mm deep for a cup of 12 mm",
                OUT,
                "3 mm proud (arithmetic)",
                cup(read("9.0 +/- 0.1 mm"), read("12.0 +/- 0.1 mm")),
            ),
            case(
                "0.1 mm to spare, read to 0.1 mm each",
                OPEN,
                "0.1 mm of room is 1.4 standard uncertainties (0.05 x root 2 = 0.0707 mm) and 1.645 are needed (ISO 14253-1:2017)",
                cup(read("12.1 +/- 0.1 mm"), read("12.0 +/- 0.1 mm")),
            ),
        ],
    );
}

#[test]
fn spindles() {
    let spindle = |shell, made_for: f64| spindle_for_width(&shell, mm(made_for)).unwrap();
    hold(
        "spindles",
        &[
            case(
                "shell at the upper limit of the widest window",
                OPEN,
                "bsc_half_axle_68 prints 67.2 to 68.8 mm, bsc_road_68 67.5 to 68.5 mm: they disagree",
                spindle(exact(68.8), 68.0),
            ),
            case(
                "shell a micrometre over it",
                OUT,
                "bsc_half_axle_68: over 68.8 mm",
                spindle(exact(68.801), 68.0),
            ),
            case(
                "shell a micrometre under the lower limit",
                OUT,
                "bsc_half_axle_68: under 67.2 mm",
                spindle(exact(67.199), 68.0),
            ),
            case(
                "shell at the lower limit",
                OPEN,
                "bsc_half_axle_68: 67.2 mm belongs to it, and is under 67.5 mm (bsc_road_68)",
                spindle(exact(67.2), 68.0),
            ),
            case(
                "shell as wide as the spindle was made for",
                WITHIN,
                "68 in 67.2 to 68.8 (bsc_half_axle_68) and in 67.5 to 68.5 mm (bsc_road_68)",
                spindle(exact(68.0), 68.0),
            ),
            case(
                "shell too close to the edge",
                OPEN,
                "68.75 +/- 0.1 against 68.8 mm: one standard uncertainty off the limit",
                spindle(read("68.75 +/- 0.1 mm"), 68.0),
            ),
            case(
                "a shell 3 mm wide of a 70 mm spindle",
                OUT,
                "italian_half_axle_70 prints 69.2 to 70.8 mm",
                spindle(read("73 +/- 0.1 mm"), 70.0),
            ),
            case(
                "a width for which nobody prints a window",
                OPEN,
                "no window row for 86.5 mm: nothing is shown",
                spindle(read("79 +/- 0.1 mm"), 86.5),
            ),
            case(
                "a raw width is no window",
                OPEN,
                "t47_raw_internal prints one figure without limits, so it decides nothing",
                spindle(read("85.5 +/- 0.1 mm"), 85.5),
            ),
        ],
    );
}

#[test]
fn flat_mount_bolts() {
    let bolt =
        |thickness, length: Option<f64>| flat_mount_bolt(&thickness, length.map(mm)).unwrap();
    hold(
        "flat_mount_bolts",
        &[
            case(
                "mount of 20 mm, bolt not yet chosen",
                OPEN,
                "t20 lists 33 mm; nothing at hand to judge",
                bolt(read("20.0 +/- 0.1 mm"), None),
            ),
            case(
                "the listed bolt",
                WITHIN,
                "33 - 20 = 13 mm, what fm_bolt_protrusion prints",
                bolt(exact(20.0), Some(33.0)),
            ),
            case(
                "a micrometre of difference, with an exact reading",
                OPEN,
                "13.001 mm is not what the tables print, and no tolerance is published",
                bolt(exact(19.999), Some(33.0)),
            ),
            case(
                "off by as much as the reading is unsure",
                WITHIN,
                "0.1 mm off at +/- 0.1 mm: not shown to differ",
                bolt(read("19.9 +/- 0.1 mm"), Some(33.0)),
            ),
            case(
                "half a step longer",
                OPEN,
                "15.5 mm is the edge of half a step of 5 mm; a longer bolt is not yet nearer",
                bolt(exact(17.5), Some(33.0)),
            ),
            case(
                "just over half a step too long",
                OUT,
                "15.501 mm: the bolt of 28 mm is nearer, this one bottoms",
                bolt(exact(17.499), Some(33.0)),
            ),
            case(
                "just over half a step too short",
                OUT,
                "10.499 mm: the bolt of 38 mm is nearer, this one has too little thread",
                bolt(exact(22.501), Some(33.0)),
            ),
            case(
                "half a step shorter",
                OPEN,
                "10.5 mm is the edge on the other side",
                bolt(exact(22.5), Some(33.0)),
            ),
        ],
    );
}

#[test]
fn shims() {
    let with = |sheet| shim(&exact(27.2), &exact(26.8), sheet).unwrap();
    hold(
        "shims",
        &[
            case(
                "gap of 0.4 mm, no sheet yet",
                OUT,
                "the post as it is: 0.4 mm is over every published window; the wall is half the gap, 0.2 mm (arithmetic)",
                with(None),
            ),
            case(
                "a sheet as thick as the wall",
                WITHIN,
                "0.2 in 0.2 mm",
                with(Some(&exact(0.2))),
            ),
            case(
                "a sheet a micrometre thicker",
                OUT,
                "0.201 mm twice is 0.402 in a gap of 0.4",
                with(Some(&exact(0.201))),
            ),
            case(
                "a thinner sheet leaves twice the rest",
                WITHIN,
                "0.4 - 2 x 0.15 = 0.1 mm",
                with(Some(&exact(0.15))),
            ),
            case(
                "a sheet as thick as the whole gap",
                OUT,
                "the difference was taken for the wall",
                with(Some(&read("0.4 +/- 0.01 mm"))),
            ),
            case(
                "too close to tell",
                OPEN,
                "0.2 +/- 0.01 mm in a wall of exactly 0.2 mm: even chances",
                with(Some(&read("0.2 +/- 0.01 mm"))),
            ),
        ],
    );
    let half = shim(&exact(27.2), &exact(26.8), None).unwrap();
    assert_eq!(half.millimetres("shim wall"), Some(0.2));
    let snug = shim(&exact(27.2), &exact(27.2), None).unwrap();
    assert_eq!(snug.millimetres("shim wall"), None, "no gap, no shim");
    assert!(
        shim(&exact(27.2), &exact(26.8), Some(&exact(0.0))).is_err(),
        "a sheet of nothing"
    );
}

#[test]
fn coats() {
    let coat =
        |feature, reading, bare: Option<f64>| over_coating(feature, reading, bare.map(mm)).unwrap();
    let because =
        "a reading on paint is never a reading on metal: nothing is shown (common practice)";
    hold(
        "coats",
        &[
            case(
                "outside not read yet",
                OPEN,
                because,
                coat(Feature::Shaft, None, None),
            ),
            case(
                "outside 28.6 mm read over a coat",
                OPEN,
                because,
                coat(Feature::Shaft, Some(&read("28.83 +/- 0.02 mm")), None),
            ),
            case(
                "a coat of exactly the thickest",
                OPEN,
                "(28.84 - 28.6) / 2 = 0.12 mm, the upper end of coat_one_side",
                coat(Feature::Shaft, Some(&exact(28.84)), Some(28.6)),
            ),
            case(
                "a coat a micrometre thicker than a coat is",
                OPEN,
                "0.121 mm a side",
                coat(Feature::Shaft, Some(&exact(28.842)), Some(28.6)),
            ),
            case(
                "a coat of exactly the thinnest",
                OPEN,
                "0.06 mm a side, the lower end",
                coat(Feature::Shaft, Some(&exact(28.72)), Some(28.6)),
            ),
            case(
                "a coat a micrometre thinner",
                OPEN,
                "0.059 mm a side",
                coat(Feature::Shaft, Some(&exact(28.718)), Some(28.6)),
            ),
            case(
                "thicker by half the doubt of the reading",
                OPEN,
                "0.13 mm at +/- 0.02 mm on diameter, 0.01 mm a side: still like a coat",
                coat(Feature::Shaft, Some(&read("28.86 +/- 0.02 mm")), Some(28.6)),
            ),
            case(
                "thinner by half the doubt of the reading",
                OPEN,
                "0.05 mm at 0.01 mm a side: still like a coat",
                coat(Feature::Shaft, Some(&read("28.70 +/- 0.02 mm")), Some(28.6)),
            ),
            case(
                "a bore reads small",
                OPEN,
                "(44.0 - 43.8) / 2 = 0.1 mm a side, inward",
                coat(Feature::Hole, Some(&read("43.80 +/- 0.02 mm")), Some(44.0)),
            ),
            case(
                "a bore that reads large",
                OPEN,
                "no coat makes a bore larger",
                coat(Feature::Hole, Some(&read("44.20 +/- 0.02 mm")), Some(44.0)),
            ),
        ],
    );
}

#[test]
fn hot_and_cold() {
    let at = |hole: Reading, shell: f64, bearing: Option<f64>| -> Verdict {
        AtTemperature {
            hole: MemberOf::read(hole),
            hole_material: "al_6061_t6".into(),
            hole_celsius: shell,
            shaft: MemberOf::read(exact(42.0)),
            shaft_material: "steel_4130_normalised".into(),
            shaft_celsius: bearing,
            rule: None,
        }
        .answer(Tables::ours())
        .unwrap()
    };
    // Rows of `materials.toml`: 23.6e-6 and 12.2e-6 a kelvin. (23.6 - 12.2)e-6 x 42 mm x 50 K = 0.0239 mm more clearance at 70 degrees.
    hold(
        "hot_and_cold",
        &[
            case(
                "presses 30 micrometres, warmed by 50 K",
                WITHIN,
                "0.0239 - 0.030 < 0: still presses (arithmetic)",
                at(exact(41.970), 70.0, None),
            ),
            case(
                "presses 20 micrometres, warmed by 50 K",
                OUT,
                "0.0239 - 0.020 > 0: a gap (arithmetic)",
                at(exact(41.980), 70.0, None),
            ),
            case(
                "cooled by 50 K it presses more",
                WITHIN,
                "-0.0239 - 0.010 (arithmetic)",
                at(exact(41.990), -30.0, None),
            ),
            case(
                "readings that do not tell",
                OPEN,
                "0.0239 - 0.024 mm at +/- 0.005",
                at(read("41.976 +/- 0.005 mm"), 70.0, None),
            ),
            case(
                "shell at 100 degrees, bearing at -20",
                OUT,
                "(23.6 x 80 + 12.2 x 40)e-6 x 42 mm = 0.0998 mm takes up a press of 0.09 mm (arithmetic)",
                at(exact(41.910), 100.0, Some(-20.0)),
            ),
            case(
                "the same shell, and the bearing as warm",
                WITHIN,
                "(23.6 - 12.2)e-6 x 80 x 42 mm = 0.0383 mm does not (arithmetic)",
                at(exact(41.910), 100.0, None),
            ),
        ],
    );
}
