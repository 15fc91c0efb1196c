//! Spellings a workshop uses, refusals that name the right remedy, and answers where nothing touches.

use framegauge::measure::Reading;
use framegauge::thread::{
    Designation, Hand, Reason, ThreadSize, ThreeWire, ToleranceClass, candidates_by_bore,
    high_strength_stress_area, mismatch,
};
use framegauge::{ErrorKind, inch, mm};

fn read(text: &str) -> Designation {
    text.parse().unwrap_or_else(|e| panic!("{text}: {e}"))
}

#[test]
fn spaces_commas_and_capitals_are_free() {
    for (text, printed) in [
        ("M 10x1", "M10x1"),
        ("M10x1, LH", "M10x1 LH"),
        ("M8, 6H", "M8x1.25-6H"),
        ("M10x1,25, Left", "M10x1.25 LH"),
        ("M10x1 Lh", "M10x1 LH"),
        ("M10x1 RIGHT", "M10x1"),
        ("9/16-20, BSC", "9/16 in x 20 tpi BSC"),
    ] {
        assert_eq!(read(text).to_string(), printed, "{text}");
    }
    // A comma before a digit stays a decimal mark: this asks for a pitch of 1.6 mm.
    assert!("M10x1,6H".parse::<Designation>().is_err());
    assert_eq!(read("M10x1,5").to_string(), "M10x1.5");
    // The capital L is the group of long engagement (ISO 965-1), and no hand.
    assert_eq!(read("M10x1 L").hand, Hand::Right);
    assert_eq!(Hand::from_mark("Lh").unwrap(), Hand::Left);
    assert_eq!(Hand::from_mark("d").unwrap(), Hand::Right);
    assert_eq!(" 6H ".parse::<ToleranceClass>().unwrap().to_string(), "6H");
    assert!("6 H".parse::<ToleranceClass>().is_err());
}

#[test]
fn remedies_fit_what_was_written() {
    let said = |text: &str| text.parse::<Designation>().unwrap_err().to_string();
    assert!(said("1.370-70000 BSC").contains("from 4 to 127"));
    assert!(said("#10 mm x 32 tpi").contains("numbered size"));
    // No UNF is listed at 15/16 in; 20 threads per inch are UNEF there (ASME B1.1, series lists).
    assert!(said("15/16-20 UNF").contains("write `UNEF`"));
    assert!(said("1.3-20 UNC").contains("write `UN`"));
    let wires = ThreeWire::of(&read("M10x1").size).unwrap();
    let thin = wires.over_wires(mm(9.35), mm(0.505)).unwrap_err();
    assert!(thin.to_string().contains("0.5052 to 1.0104 mm"), "{thin}");
}

/// Inside diameter of the wider thread against outside diameter of the narrower one, both basic (ISO 68-1): an M9x1 screw
/// reaches 0.083 mm into the threads of an M10x1 hole, an M8x1.25 screw passes through it.
#[test]
fn a_screw_that_touches_no_thread_binds_nowhere() {
    let turns = |a: &str, b: &str| mismatch(&read(a), &read(b)).turns_until_binding;
    assert!(turns("M10x1", "M9x1.25").is_some());
    assert!(turns("M10x1", "M8x1.25").is_none());
    // The core of M10x1 is 8.917 mm: a screw of that size just passes, one a micrometre larger touches.
    assert!(turns("M10x1", "M8.917x1.25").is_none());
    assert!(turns("M8.918x1.25", "M10x1").is_some());
    assert!(turns("M10x1", "1.370-24 BSC").is_none());
    // Of an unknown form the deepest core counts: 36 - 1.2807 x 1.0583 = 34.645 mm by Whitworth (BS 84).
    assert!(turns("36 mm x 24 tpi", "M34.64x1").is_none());
    assert!(turns("36 mm x 24 tpi", "M34.65x1").is_some());
    // Pitch diameters that may be the same leave no wider thread.
    assert!(
        mismatch(&read("1 3/8-26 unknown form"), &read("1 3/8-26 BSC"))
            .wider
            .is_none()
    );
}

#[test]
fn a_bore_without_thread_names_no_candidate() {
    let possible = |text: &str, bore: f64| {
        let sizes: [ThreadSize; 1] = [text.parse().unwrap()];
        let reading = Reading::expanded(mm(bore), mm(0.01)).unwrap();
        candidates_by_bore(&sizes, &reading).unwrap().possible.len() == 1
    };
    for (text, low, high) in [
        // Core 34.798 - 1.127532 = 33.670 mm (BS 811: 2 x 0.532692 P), and a bore as wide as the crests is smooth.
        ("1.370-24 BSC", 33.67, 34.798),
        // Unknown: down to the Whitworth core, 36 - 1.280655 P = 34.645 mm.
        ("36 mm x 24 tpi", 34.645, 36.0),
    ] {
        assert!(possible(text, low) && possible(text, high), "{text}");
        assert!(!possible(text, low - 0.03), "{text} below");
        assert!(!possible(text, high + 0.03), "{text} above");
    }
}

/// Pedalling does not hold a fixed sprocket: the lockring does.
#[test]
fn a_fixed_sprocket_is_held_by_its_lockring() {
    assert!(Reason::DriveTightens.words().contains("lockring"));
}

/// A pitch diameter lies at most two pitches below the major one: 12.7 - 2 x 1.27 = 10.16 mm for 1/2-20.
#[test]
fn a_stress_area_needs_a_pitch_diameter_of_its_size() {
    let size = read("1/2-20 UN").size;
    for (at, fits) in [
        (10.159, false),
        (10.16, true),
        (12.7, true),
        (12.701, false),
        (0.1, false),
    ] {
        let area = high_strength_stress_area(&size, mm(at));
        assert_eq!(area.is_ok(), fits, "{at}");
        if let Err(error) = area {
            assert_eq!(
                (error.kind(), error.field()),
                (ErrorKind::OutOfRange, "pitch diameter")
            );
        }
    }
    // FED-STD-H28/2B: pi (0.4619/2 - 0.16238/20)^2 = 0.15600 sq in.
    let area = high_strength_stress_area(&size, inch(0.4619)).unwrap();
    assert!((area.value / 0.0254f64.powi(2) - 0.156_00).abs() < 2e-5);
}
