//! Kinds of fit as standards name them, bearing seats and bearing clearance.

use super::*;

/// Kinds as ANSI B4.2 describes its preferred fits.
#[test]
fn preferred_fits_are_of_the_kind_that_ansi_b4_2_says() {
    for nominal in ["27.2", "30", "30.9", "42", "50"] {
        for (classes, kind) in [
            ("H11/c11", FitKind::Clearance),
            ("H9/d9", FitKind::Clearance),
            ("H8/f7", FitKind::Clearance),
            ("H7/g6", FitKind::Clearance),
            ("H7/h6", FitKind::Clearance),
            ("H7/k6", FitKind::Transition),
            ("H7/n6", FitKind::Transition),
            ("H7/p6", FitKind::Interference),
            ("H7/s6", FitKind::Interference),
        ] {
            assert_eq!(
                of_designation(&format!("{nominal} {classes}")).kind(),
                kind,
                "{nominal} {classes}"
            );
        }
    }
}

/// A bearing outside of class Normal (0/-11 µm at 30 to 50 mm) in five seats: clearances reckoned by hand from the printed
/// pairs of the seats and of the ring.
#[test]
fn bearing_outside_in_a_seat() {
    for (seat, tightest, loosest) in [
        ("N7", -33, 3),
        ("P7", -42, -6),
        ("M7", -25, 11),
        ("K7", -18, 18),
        ("H7", 0, 36),
    ] {
        let hole = HoleMember::of_class(mm(42.0), seat.parse().unwrap()).unwrap();
        let ring = ShaftMember::of_ring(mm(42.0), RingClass::Normal).unwrap();
        let fit = fit_between(&hole, &ring, RULE).unwrap();
        assert_eq!(span_um(&fit), (tightest, loosest), "{seat}");
        assert!(fit.cautions().contains(&Caution::NotMeasured));
    }
}

/// Remembered micrometre values against a distributor's table printed in inches to four places.
#[test]
fn remembered_ring_tolerances_agree_with_an_inch_table() {
    for row in published("bearing_checks.csv") {
        let nominal = mm(row.number("nominal_mm"));
        let ring = ring_tolerance(
            RingSize::Outside,
            row.text("class").parse().unwrap(),
            nominal,
        )
        .unwrap();
        assert_eq!(ring.from.grade, Grade::Memory, "{row}");
        assert_eq!(ring.lower, um(row.number("limit_um")), "{row}");
        let apart = ring.lower - inch(row.number("limit_in"));
        assert!(apart.abs() <= inch(0.000_05), "{row}");
        // The grade travels into every fit that rests on it.
        let member = ShaftMember::of_ring(nominal, row.text("class").parse().unwrap()).unwrap();
        let hole = HoleMember::of_class(nominal, "N7".parse().unwrap()).unwrap();
        assert!(
            fit_between(&hole, &member, RULE)
                .unwrap()
                .cautions()
                .contains(&Caution::FromMemory)
        );
    }
}

/// Ranges and refusals of the bearing tables: 10 mm lies in no range over 10, and bores over 80 mm are not held.
#[test]
fn bearing_ranges() {
    assert!(ring_tolerance(RingSize::Bore, RingClass::Normal, mm(10.0)).is_err());
    assert!(ring_tolerance(RingSize::Bore, RingClass::Normal, mm(10.001)).is_ok());
    assert!(ring_tolerance(RingSize::Outside, RingClass::Five, mm(80.001)).is_err());
    assert!(ring_tolerance(RingSize::Bore, RingClass::Six, mm(f64::NAN)).is_err());
    assert!(internal_clearance(mm(85.0), ClearanceGroup::C3).is_err());
    assert!(internal_clearance(mm(0.0), ClearanceGroup::C3).is_err());
    // Class 5 is never wider than 6, 6 never wider than Normal; groups get looser.
    for size in [15.0, 25.0, 30.0, 40.0, 60.0] {
        let width = |class| {
            ring_tolerance(RingSize::Bore, class, mm(size))
                .unwrap()
                .lower
        };
        assert!(
            width(RingClass::Five) >= width(RingClass::Six)
                && width(RingClass::Six) >= width(RingClass::Normal)
        );
        let upper = |group| {
            internal_clearance(mm(size), group)
                .unwrap()
                .0
                .upper()
                .known()
        };
        assert!(
            upper(ClearanceGroup::C2) < upper(ClearanceGroup::CN)
                && upper(ClearanceGroup::C3) < upper(ClearanceGroup::C4)
        );
    }
}

/// ISO 492 names its classes Normal, 6 and 5; bearing makers print them as P0, P6 and P5 (common practice).
#[test]
fn ring_classes_by_either_name() {
    for (names, class) in [
        (["Normal", "P0"], RingClass::Normal),
        (["6", "P6"], RingClass::Six),
        (["5", "P5"], RingClass::Five),
    ] {
        for name in names {
            assert_eq!(name.parse::<RingClass>().unwrap(), class, "{name}");
        }
        assert_eq!(class.to_string(), names[0]);
    }
    assert_eq!(
        "P4".parse::<RingClass>().unwrap_err().kind(),
        ErrorKind::UnknownName
    );
}

/// A size at or below zero is refused for what it is, not for want of a row.
#[test]
fn a_ring_without_a_size_is_refused() {
    for size in [0.0, -30.0] {
        let ring = ring_tolerance(RingSize::Bore, RingClass::Normal, mm(size)).unwrap_err();
        let bearing = internal_clearance(mm(size), ClearanceGroup::CN).unwrap_err();
        for error in [ring, bearing] {
            assert_eq!(error.kind(), ErrorKind::OutOfRange, "{size}");
            assert_eq!(error.problem(), "must be above 0 mm");
        }
    }
}

/// Deviations are added to the nominal size: 30 mm with +2/-8 µm runs from 29.992 to 30.002 mm.
#[test]
fn a_ring_deviation_is_added_to_the_size() {
    let held = ring_tolerance(RingSize::Bore, RingClass::Six, mm(30.0)).unwrap();
    let moved = framegauge::fit::RingTolerance {
        lower: um(-8.0),
        upper: um(2.0),
        from: held.from,
    };
    assert_eq!(
        moved.around(mm(30.0)).unwrap().to_string(),
        "29.992 to 30.002 mm"
    );
}
