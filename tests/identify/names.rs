//! Names: codes, aliases and beginnings of them, and what is known by two names.

use super::*;

/// Rows whose share a belief raises over what it was without.
fn meant(kind: Place, label: &str) -> Vec<String> {
    let plain = ask(kind.clone(), &[]);
    let told = ask(kind, &[("label", label)]);
    let share = |a: &Identification, code: &str| a.candidate(code).unwrap().share;
    let raised = told
        .candidates
        .iter()
        .filter(|c| c.share > share(&plain, &c.code));
    let mut codes: Vec<String> = raised.map(|c| c.code.to_string()).collect();
    codes.sort_unstable();
    codes
}

/// A name that is one row's own means that row, though others begin with it: "Fauber" is an alias of the one-piece shell,
/// "Fauber threaded" of another.
#[test]
fn a_whole_name_goes_before_the_beginning_of_one() {
    assert_eq!(meant(Place::Shell, "Fauber"), ["opc"]);
    assert_eq!(meant(Place::Shell, "fauber THREADED"), ["fauber_threaded"]);
    assert_eq!(meant(Place::Shell, "pf30"), ["pf30"]);
    assert_eq!(meant(Place::SeatTube, "27.2"), ["27.2"]);
    assert_eq!(meant(Place::SeatTube, "27.20 mm"), ["27.2"]);
}

/// The beginning of a code, of a name or of an alias means every row that begins so.
#[test]
fn a_beginning_is_enough() {
    assert_eq!(
        meant(Place::Shell, "thompson_3"),
        ["thompson_30", "thompson_33", "thompson_35", "thompson_38"]
    );
    assert_eq!(meant(Place::Shell, "Bevelled shell"), ["bevel_45"]);
    assert_eq!(meant(Place::Shell, "BB89"), ["bb92"]);
    assert_eq!(meant(UPPER, "EC4"), ["EC44", "EC49"]);
    assert_eq!(meant(UPPER, "external cup in"), ["EC44", "EC56"]);
}

/// ISO 6696 names its thread as interchangeable with that of 1.370 in: an 83 mm shell, which only the other row lists, is
/// what was believed by another name. A French thread is not.
#[test]
fn a_belief_is_right_by_another_name() {
    let with = |label: &str| {
        let words = [
            ("minor_diameter", "33.8 +/- 0.05 mm"),
            ("pitch", "24 tpi"),
            ("hand_drive", "left"),
            ("width", "83 +/- 0.1 mm"),
            ("label", label),
        ];
        let answer = ask(Place::Shell, &words);
        assert_eq!(answer.outcome.identified(), Some("bsc"));
        assert_eq!(excluded_by(&answer, "iso_6696"), Some(Feature::Width));
        answer.belief
    };
    assert_eq!(with("iso_6696"), Some(Belief::Confirmed));
    assert_eq!(with("french"), Some(Belief::Contradicted));
}

/// Seats of one bore interchange if either row says so; invented rows of an invented shop.
#[cfg(feature = "serde")]
#[test]
fn one_row_may_say_that_two_interchange() {
    let with = |more: &str| {
        let rows: framegauge::standard::ShopRows = toml::from_str(&format!(
            "[[head_seat]]\ncode = \"own_34\"\nname = \"Invented seat\"\nkind = \"external_cup\"\nbore = {{ lower = \"33.90 mm\", upper = \"33.95 mm\" }}\n{more}\n",
        ))
        .unwrap();
        let options = Options {
            shop: Some(&rows),
            ..Options::default()
        };
        let answer = identify(UPPER, &see(&[("bore", "33.92 +/- 0.02 mm")]), &options).unwrap();
        assert_eq!(left(&answer), ["EC34", "own_34"]);
        answer.interchange
    };
    assert!(with("same_bore_as = [\"EC34\"]"));
    assert!(!with(""));
}

/// One thread in the other hand is another thread, as everybody who cut it knows; an invented row of an invented shop.
#[cfg(feature = "serde")]
#[test]
fn the_other_hand_does_not_interchange() {
    let with = |hand: &str| {
        let rows: framegauge::standard::ShopRows = toml::from_str(&format!(
            "[[thread_use]]\ncode = \"own_hanger\"\nname = \"Invented hanger\"\nplace = \"hanger\"\nthread = {{ form = \"iso_metric\", major = \"10 mm\", pitch = \"1 mm\" }}\nhand = {{ value = \"{hand}\" }}\n",
        ))
        .unwrap();
        let options = Options {
            shop: Some(&rows),
            ..Options::default()
        };
        let seen = see(&[("bore", "9.0 +/- 0.05 mm"), ("pitch", "1 mm")]);
        let answer = identify(Place::Hanger(End::Both), &seen, &options).unwrap();
        assert_eq!(left(&answer), ["hanger_m10", "own_hanger"]);
        answer.interchange
    };
    assert!(with("right"));
    assert!(!with("left"));
}

/// Where the form of a thread is not known, its printed pitch diameter says what it interchanges with: 36 mm x 24 tpi is
/// printed with 35.436 mm, and 36 mm - 0.5327 * 25.4 mm / 24 = 35.436 mm for the 60 degree cycle thread.
#[test]
fn a_printed_pitch_diameter_says_what_interchanges() {
    let with = |form: ThreadForm| {
        let tap = [ThreadSize::new(form, mm(36.0), Pitch::tpi(24).unwrap()).unwrap()];
        let options = Options {
            also: &tap,
            ..Options::default()
        };
        let seen = see(&[("minor_diameter", "34.9 +/- 0.05 mm"), ("pitch", "24 tpi")]);
        let answer = identify(Place::Shell, &seen, &options).unwrap();
        assert_eq!(left(&answer).len(), 2, "{:?}", left(&answer));
        assert!(left(&answer).contains(&"italian"));
        answer.interchange
    };
    assert!(with(ThreadForm::Bsc));
    // 36 mm - 0.6495 * 25.4 mm / 24 = 35.313 mm in the ISO form.
    assert!(!with(ThreadForm::IsoInch));
}

/// The same of a thread elsewhere; an invented row: 9.7 mm - 0.5327 * 25.4 mm / 26 = 9.180 mm.
#[cfg(feature = "serde")]
#[test]
fn a_shops_pitch_diameter_counts_too() {
    let with = |printed: &str| {
        let rows: framegauge::standard::ShopRows = toml::from_str(&format!(
            "[[thread_use]]\ncode = \"own_axle\"\nname = \"Invented axle\"\nplace = \"axle\"\nthread = {{ form = \"unknown\", major = \"9.7 mm\", pitch = \"26 tpi\" }}\npitch_diameter = {{ nominal = \"{printed}\" }}\n",
        ))
        .unwrap();
        let tap = [ThreadSize::new(ThreadForm::Bsc, mm(9.7), Pitch::tpi(26).unwrap()).unwrap()];
        let options = Options {
            shop: Some(&rows),
            also: &tap,
            ..Options::default()
        };
        let seen = see(&[("crest_diameter", "9.6 +/- 0.02 mm"), ("pitch", "26 tpi")]);
        let answer = identify(Place::Axle(End::Both), &seen, &options).unwrap();
        assert_eq!(left(&answer).len(), 2, "{:?}", left(&answer));
        answer.interchange
    };
    assert!(with("9.18 mm"));
    assert!(!with("9.06 mm"));
}

/// A tap that states no hand goes with either, and left does not go with right: French and Swiss shells (M35 x 1) do not
/// interchange because an M35 x 1 tap lies beside them, in whatever order they are likely.
#[test]
fn a_tap_between_two_hands_joins_them_not() {
    let tap = ["M35x1".parse::<ThreadSize>().unwrap()];
    let options = Options {
        also: &tap,
        ..Options::default()
    };
    for label in ["M35x1", "French", "Swiss"] {
        let seen = see(&[
            ("minor_diameter", "34.0 +/- 0.05 mm"),
            ("pitch", "1 mm"),
            ("label", label),
        ]);
        let answer = identify(Place::Shell, &seen, &options).unwrap();
        assert_eq!(left(&answer), ["M35x1", "french", "swiss"]);
        assert!(!answer.interchange, "{label}: {}", answer.words());
        assert_eq!(answer.belief, Some(Belief::NotTested), "{label}");
        assert!(answer.notes.contains(&Note::HandOpen));
    }
}

/// A hand that was read rules a belief out, whatever thread is left: with a right-hand drive side, M47 x 1 is no T47 (left,
/// shell table), though a tap of that size is at hand.
#[test]
fn a_hand_contradicts_a_belief() {
    let tap = ["M47x1".parse::<ThreadSize>().unwrap()];
    let options = Options {
        also: &tap,
        ..Options::default()
    };
    let with = |hand: &str| {
        let seen = see(&[
            ("minor_diameter", "46.0 +/- 0.05 mm"),
            ("pitch", "1 mm"),
            ("hand_drive", hand),
            ("label", "T47"),
        ]);
        let answer = identify(Place::Shell, &seen, &options).unwrap();
        assert!(left(&answer).contains(&"M47x1"));
        answer.belief
    };
    assert_eq!(with("right"), Some(Belief::Contradicted));
    assert_eq!(with("left"), Some(Belief::Confirmed));
}
