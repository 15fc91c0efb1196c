//! Threads: hole against part, side by side, before tapping.

use super::asked::hole_to_tap;
use framegauge::judge::{
    loosening, pattern_threads, shell_and_part, shell_orientation, thread_pair,
};
use framegauge::standard::{Shell, find};
use framegauge::thread::{ShellThreads, Side};

use super::{OPEN, OUT, WITHIN, case, exact, hold, read};

fn shell(code: &str) -> &'static Shell {
    find::<Shell>(code).unwrap()
}

fn threads(code: &str) -> ShellThreads {
    pattern_threads(shell(code)).unwrap()
}

#[test]
fn pairs() {
    let pair = |hole: &str, part: &str| thread_pair(&hole.parse().unwrap(), &part.parse().unwrap());
    hold(
        "thread_pairs",
        &[
            case(
                "the same thread",
                WITHIN,
                "nothing differs",
                pair("M10x1", "M10x1"),
            ),
            case(
                "English left-hand cup in a French shell",
                OUT,
                "three grounds, diameter, pitch and hand: 1.370 in x 24 tpi left (bsc) against M35x1 right (french)",
                pair("M35x1", "1.370 in x 24 tpi BSC LH"),
            ),
            case(
                "only the hand differs",
                OUT,
                "a left-hand thread does not run into a right-hand hole",
                pair("M35x1", "M35x1 LH"),
            ),
            case(
                "only the pitch differs",
                OUT,
                "10 x 1 against 10 x 1.25 mm",
                pair("M10x1", "M10x1.25"),
            ),
            case(
                "only the diameter differs",
                OUT,
                "pitch diameters 1 mm apart",
                pair("M10x1", "M9x1"),
            ),
            case(
                "the two 1.37 inch threads",
                WITHIN,
                "DIN ISO 6696 calls them interchangeable; pitch diameters 0.004 mm apart (bsc, iso_6696)",
                thread_pair(
                    &threads("iso_6696").drive.unwrap(),
                    &threads("bsc").drive.unwrap(),
                ),
            ),
            case(
                "another flank angle",
                OUT,
                "60 degrees of a cycle thread in 55 degrees of a Whitworth thread (BS 811, BS 84)",
                pair("1 in x 24 tpi Whitworth", "1 in x 24 tpi BSC"),
            ),
            case(
                "a form that nobody knows",
                OPEN,
                "same pitch, diameter and hand, but one form is unknown",
                pair("25.4 mm x 24 tpi", "25.4 mm x 24 tpi BSC"),
            ),
        ],
    );
}

#[test]
fn shells() {
    let one_side = |side: Side, mut threads: ShellThreads| {
        match side {
            Side::Drive => threads.drive = None,
            Side::NonDrive => threads.non_drive = None,
        }
        threads
    };
    let hybrid = threads("bsc").retapped(Side::Drive, threads("french").drive.unwrap());
    let open = |text: &str| ShellThreads {
        drive: Some(text.parse().unwrap()),
        non_drive: Some(text.parse().unwrap()),
    };
    hold(
        "shells_and_parts",
        &[
            case(
                "English cups in an English shell",
                WITHIN,
                "same threads (bsc)",
                shell_and_part(&threads("bsc"), &threads("bsc")),
            ),
            case(
                "English cups in a French shell",
                OUT,
                "both sides differ in size, the drive side in hand too (bsc, french)",
                shell_and_part(&threads("french"), &threads("bsc")),
            ),
            case(
                "Swiss cups in a French shell",
                OUT,
                "only the drive side differs, by its hand (swiss, french)",
                shell_and_part(&threads("french"), &threads("swiss")),
            ),
            case(
                "shell back to front",
                OUT,
                "right sizes, both hands swapped: reject before assembly (common practice)",
                shell_and_part(&threads("bsc").back_to_front(), &threads("bsc")),
            ),
            case(
                "a part without a thread on the non-drive side",
                OUT,
                "one has a thread, the other has none",
                shell_and_part(&threads("bsc"), &one_side(Side::NonDrive, threads("bsc"))),
            ),
            case(
                "a part without a thread on the drive side",
                OUT,
                "one has a thread, the other has none",
                shell_and_part(&threads("bsc"), &one_side(Side::Drive, threads("bsc"))),
            ),
            case(
                "threads on the drive side only, in both",
                WITHIN,
                "the other side has none in either",
                shell_and_part(
                    &one_side(Side::NonDrive, threads("bsc")),
                    &one_side(Side::NonDrive, threads("bsc")),
                ),
            ),
            case(
                "a hybrid shell and cups to match",
                WITHIN,
                "each side agrees with its own cup",
                shell_and_part(&hybrid, &hybrid),
            ),
            case(
                "Italian cups in an Italian shell",
                OPEN,
                "the row of italian leaves the form open, so the flanks are not proved",
                shell_and_part(&threads("italian"), &threads("italian")),
            ),
            case(
                "a form that nobody knows",
                OPEN,
                "nothing stands against it, nothing proves it",
                shell_and_part(&open("25.4 mm x 24 tpi"), &open("25.4 mm x 24 tpi BSC")),
            ),
        ],
    );
    let as_meant = shell_orientation(&threads("bsc"), shell("bsc")).unwrap();
    let turned = shell_orientation(&threads("t47").back_to_front(), shell("t47")).unwrap();
    hold(
        "shells_as_patterns",
        &[
            case(
                "a shell as its pattern",
                WITHIN,
                "hands of bsc, published by two that agree; basic sizes are worked out",
                as_meant,
            ),
            case(
                "a T47 shell back to front",
                OUT,
                "hands of t47; the non-drive hand is remembered, so the verdict rests on memory",
                turned,
            ),
        ],
    );
}

#[test]
fn turning() {
    let way = |codes: &[&str], side| {
        let shells: Vec<&Shell> = codes.iter().map(|c| shell(c)).collect();
        loosening(&shells, side).unwrap()
    };
    hold(
        "loosening",
        &[
            case(
                "English or Swiss, drive side",
                WITHIN,
                "both are left-hand there (bsc, swiss): clockwise",
                way(&["bsc", "swiss"], Side::Drive),
            ),
            case(
                "English or Swiss, non-drive side",
                WITHIN,
                "both are right-hand there: counter-clockwise",
                way(&["bsc", "swiss"], Side::NonDrive),
            ),
            case(
                "French or Swiss, drive side",
                OPEN,
                "right-hand (french) against left-hand (swiss): nothing may be forced",
                way(&["french", "swiss"], Side::Drive),
            ),
            case(
                "one pattern alone",
                WITHIN,
                "italian is right-hand on both sides",
                way(&["italian"], Side::Drive),
            ),
        ],
    );
}

#[test]
fn tapping() {
    let hole = |size: &str, hole| hole_to_tap(&size.parse().unwrap(), &hole).unwrap();
    hold(
        "holes_to_tap",
        &[
            case(
                "M10x1: least minor diameter",
                WITHIN,
                "8.917 mm is the lower limit of 6H (ISO 965-1)",
                hole("M10x1", exact(8.917)),
            ),
            case(
                "M10x1: a micrometre less",
                OUT,
                "8.916 mm is under it",
                hole("M10x1", exact(8.916)),
            ),
            case(
                "M10x1: greatest minor diameter",
                WITHIN,
                "9.153 mm is the upper limit of 6H (ISO 965-1)",
                hole("M10x1", exact(9.153)),
            ),
            case(
                "M10x1: a micrometre more",
                OUT,
                "9.154 mm is over it",
                hole("M10x1", exact(9.154)),
            ),
            case(
                "M10x1: in the middle, by caliper",
                WITHIN,
                "9.03 +/- 0.05 mm is 4.5 standard uncertainties from either limit",
                hole("M10x1", read("9.03 +/- 0.05 mm")),
            ),
            case(
                "M10x1: too close",
                OPEN,
                "9.14 +/- 0.05 mm is half a standard uncertainty from 9.153",
                hole("M10x1", read("9.14 +/- 0.05 mm")),
            ),
            case(
                "a thread without tabulated limits",
                OPEN,
                "no limits are published for this form",
                hole("1.370 in x 24 tpi BSC", read("33.6 +/- 0.05 mm")),
            ),
        ],
    );
    assert!(
        hole_to_tap(&"M10x1".parse().unwrap(), &exact(-8.9)).is_err(),
        "a hole below nothing"
    );
}
