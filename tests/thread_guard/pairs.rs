//! Two threads against each other, shells against patterns, retaps, and what a caliper leaves possible.

use framegauge::measure::Reading;
use framegauge::thread::*;
use framegauge::{Pitch, in_mm, mm};

use super::{Page, answered, fine, number, size, thread};

#[test]
fn mates() {
    let mut page = Page::new();
    page.title(
        "mates, grounds, drift, apart least and most, allowance in mm, wider, turns until binding",
    );
    for (at, a) in THREADS.iter().enumerate() {
        for b in &THREADS[at..] {
            let found = mismatch(&thread(a), &thread(b));
            page.line(&format!(
                "{a} / {b}: {} [{}] {} {}..{} of {} | {} | {}",
                found.mates,
                found.grounds,
                fine(found.drift.per_turn),
                fine(found.apart_min),
                fine(found.apart_max),
                fine(found.allowance),
                found.wider.map_or("-".into(), |w| w.to_string()),
                found.turns_until_binding.map_or("-".into(), number),
            ));
        }
    }
    page.check("thread_guard/mates.txt");
}

#[rustfmt::skip]
const THREADS: &[&str] = &[
    "M10x1", "M10x1 LH", "M10x1.25", "M35x1", "1.370-24 BSC", "1.370-24 BSC LH", "1.375-24 ISO", "9/16-20 BSC", "9/16-20 UN", "1/4-20 UN", "1/4-20 BSW",
    "36 mm x 24 tpi", "1 3/8-26 unknown form", "1 3/8-26 BSC", "10 mm x 26 tpi", "3/8-26 BSC",
];

#[test]
fn drift() {
    let mut page = Page::new();
    page.title("per turn, finer pitch, turns to see 0.15 mm, threads under a leaf, turns to half a pitch; taken a turn, turns to bind 0.11 mm by form");
    for (a, b) in [
        ("1 mm", "24 tpi"),
        ("24 tpi", "1 mm"),
        ("1 mm", "26 tpi"),
        ("24 tpi", "26 tpi"),
        ("1 mm", "1.25 mm"),
        ("1.25 mm", "20 tpi"),
        ("1.27 mm", "20 tpi"),
        ("1 mm", "1 mm"),
        ("1 mm", "1.05 mm"),
        ("0.8 mm", "32 tpi"),
        ("1 mm", "1.15 mm"),
        ("1 mm", "1.075 mm"),
    ] {
        let drift = PitchDrift::between(a.parse::<Pitch>().unwrap(), b.parse::<Pitch>().unwrap());
        let maybe = |value: Option<f64>| value.map_or("-".into(), number);
        let mut line = format!(
            "{a} / {b}: {} {} {} {} {}",
            fine(drift.per_turn),
            fine(drift.finer_pitch),
            maybe(drift.turns_until_visible(VISIBLE_DRIFT).unwrap()),
            drift
                .threads_under_leaf(VISIBLE_DRIFT)
                .unwrap()
                .map_or("-".into(), |n| n.to_string()),
            maybe(drift.turns_to_half_pitch()),
        );
        for form in [
            ThreadForm::IsoMetric,
            ThreadForm::Bsc,
            ThreadForm::Whitworth,
            ThreadForm::Unknown,
        ] {
            line += &format!(
                " | {} {} {}",
                fine(drift.taken_per_turn(form)),
                maybe(drift.turns_until_binding(mm(0.11), form).unwrap()),
                maybe(drift.turns_until_binding(mm(0.0), form).unwrap()),
            );
        }
        page.line(&line);
    }
    let drift = PitchDrift::between("1 mm".parse().unwrap(), "24 tpi".parse().unwrap());
    for bad in [f64::NAN, f64::INFINITY, -0.1, 0.0] {
        answered(
            &mut page,
            &format!("seen {bad}"),
            drift.turns_until_visible(mm(bad)).map(|t| format!("{t:?}")),
        );
        answered(
            &mut page,
            &format!("leaf {bad}"),
            drift.threads_under_leaf(mm(bad)).map(|t| format!("{t:?}")),
        );
        answered(
            &mut page,
            &format!("bind {bad}"),
            drift
                .turns_until_binding(mm(bad), ThreadForm::Bsc)
                .map(|t| format!("{t:?}")),
        );
    }
    page.check("thread_guard/drift.txt");
}

#[test]
fn crests() {
    let mut page = Page::new();
    page.title("what a caliper shows");
    for text in [
        "M1.4x0.3",
        "M5x0.8",
        "M10x1",
        "M35x1",
        "M47x1",
        "M46x1",
        "1.375-24 ISO",
        "9/16-20 UN",
        "1.370-24 BSC",
        "9/16-20 BSC",
        "1/4-20 BSW",
        "36 mm x 24 tpi",
        "34.7 mm x 1 mm",
    ] {
        for member in [Member::External, Member::Internal] {
            let found = caliper_shows(&size(text), member)
                .map(|f| format!("{} {} | {}", f.reads, f.reads.grade(), f.from));
            answered(&mut page, &format!("{text} {member}"), found);
        }
    }
    page.title("what a bore leaves possible, +/- 0.01 mm");
    let lists: &[(&[&str], &[f64])] = &[
        (
            &["M12x1", "M12x1.25", "M12x1.5", "M12x1.75"],
            &[9.1, 10.41, 10.66, 11.0, 12.1],
        ),
        (
            &["M35x1", "1.370-24 BSC", "1.375-24 ISO", "36 mm x 24 tpi"],
            &[10.4, 33.2, 33.6, 33.95, 34.6, 34.75, 34.9, 35.2, 35.9, 36.1],
        ),
        (&["M10x1"], &[8.9, 9.1, 9.2]),
        (&["M46x1", "M10x1"], &[9.1]),
        (&[], &[9.1]),
    ];
    for (list, bores) in lists {
        for bore in bores.iter().copied() {
            let sizes: Vec<ThreadSize> = list.iter().map(|t| size(t)).collect();
            let reading = Reading::expanded(mm(bore), mm(0.01)).unwrap();
            let found = candidates_by_bore(&sizes, &reading).map(|found| {
                assert!(!found.next.is_empty());
                let names: Vec<String> = found.possible.iter().map(ToString::to_string).collect();
                format!("[{}] ambiguous {}", names.join(", "), found.ambiguous)
            });
            answered(&mut page, &format!("{bore} of {list:?}"), found);
        }
    }
    page.check("thread_guard/crests.txt");
}

fn finding(side: &SideFinding) -> String {
    match side {
        SideFinding::AsPattern(_) => "as meant".into(),
        SideFinding::OtherHand(found) => format!("other hand, {}", found.grounds),
        SideFinding::OtherThread(found) => format!("other, {}", found.grounds),
        SideFinding::CannotTell(_) => "cannot tell".into(),
        SideFinding::NoThread => "no thread".into(),
        SideFinding::BothPlain => "both plain".into(),
    }
}

#[test]
fn shells() {
    let mut page = Page::new();
    let shell = |text: &str, pattern: &str| {
        ShellThreads::of_pattern(size(text), hand_pattern(pattern).unwrap())
    };
    let english = shell("1.370-24 BSC", "bsc");
    let shells = [
        ("english", english),
        ("english turned", english.back_to_front()),
        ("iso", shell("1.375-24 ISO", "iso_6696")),
        ("italian", shell("36 mm x 24 tpi", "italian")),
        ("french", shell("M35x1", "french")),
        ("swiss", shell("M35x1", "swiss")),
        ("t47", shell("M47x1", "t47")),
        (
            "drive side recut",
            english.retapped(Side::Drive, thread("36 mm x 24 tpi")),
        ),
        (
            "other side recut",
            english.retapped(Side::NonDrive, thread("36 mm x 24 tpi")),
        ),
        (
            "drive side right",
            english.retapped(Side::Drive, thread("1.370-24 BSC")),
        ),
        ("freewheel", shell("1.375-24 ISO", "freewheel")),
        (
            "freewheel turned",
            shell("1.375-24 ISO", "freewheel").back_to_front(),
        ),
        (
            "plain",
            ShellThreads {
                drive: None,
                non_drive: None,
            },
        ),
    ];
    let side = |d: Option<Designation>| d.map_or("-".into(), |d| d.to_string());
    page.title("the shells: drive side, other side, hybrid");
    for (name, shell) in &shells {
        page.line(&format!(
            "{name}: {} / {} {}",
            side(shell.side(Side::Drive)),
            side(shell.side(Side::NonDrive)),
            shell.is_hybrid()
        ));
    }
    page.title("each against each: drive side, other side, swapped");
    for (name, found) in &shells {
        for (meant_name, meant) in &shells {
            let result = found.against(meant);
            page.line(&format!(
                "{name} / {meant_name}: {}; {}{}",
                finding(&result.drive),
                finding(&result.non_drive),
                if result.swapped { "; swapped" } else { "" }
            ));
        }
    }
    page.check("thread_guard/shells.txt");
}

#[test]
fn recut() {
    let mut page = Page::new();
    page.title("hand, changed, stock, old thread left least and most, wall left in mm");
    for (from, to, outside) in [
        ("1.370-24 BSC LH", "36 mm x 24 tpi", Some(39.0)),
        ("1.370-24 BSC", "36 mm x 24 tpi", None),
        ("1.370-24 BSC", "1.41732 in x 24 tpi BSC", Some(36.001)),
        ("1.375-24 ISO", "1.41732 in x 24 tpi BSC", Some(36.0)),
        ("M35x1", "36 mm x 24 tpi", Some(35.9)),
        ("M10x1", "M12x1", Some(16.3)),
        ("M10x1", "M10.001x1", None),
        ("M10x1", "M10x1", None),
        ("M10x1", "M9x1", None),
        ("M10x1 LH", "M12x1.75 LH", None),
        ("9/16-20 BSC", "5/8-20 BSW", None),
        ("M35x1", "1 1/2-24 unknown form", None),
        ("36 mm x 24 tpi", "M37x1", None),
        ("M10x1", "M12x1", Some(f64::NAN)),
        ("M10x1", "M12x1", Some(-1.0)),
    ] {
        let found = retap(&thread(from), &thread(to), outside.map(mm)).map(|cut| {
            assert!(!cut.caution.is_empty());
            format!(
                "{} -> {}, {} {} | {} {}..{} {}",
                cut.from,
                cut.to,
                cut.hand,
                cut.hand_changes,
                fine(cut.stock_removed),
                fine(cut.old_thread_left_min),
                fine(cut.old_thread_left_max),
                cut.wall_left.map_or("-".into(), fine),
            )
        });
        answered(&mut page, &format!("{from} to {to} in {outside:?}"), found);
    }
    page.title("inserts: bore, tap, bush");
    for text in [
        "M3x0.5",
        "M5x0.8",
        "M6x1",
        "M10x1",
        "M10x1.25",
        "9/16-20 UN",
        "1.370-24 BSC",
    ] {
        let found = insert_sizes(&size(text)).map(|i| {
            let value = |figure: &framegauge::Figure| match figure.span() {
                Some(span) => format!(
                    "{}..{} nominal {} {:?}",
                    span.lower.map_or("-".into(), |l| in_mm(l).to_string()),
                    span.upper.map_or("-".into(), |l| in_mm(l).to_string()),
                    span.nominal.map_or("-".into(), |l| in_mm(l).to_string()),
                    figure.grade()
                ),
                None => figure.reason().to_string(),
            };
            format!(
                "{} | {} | {} | {}",
                i.restores,
                value(&i.bore),
                value(&i.tap_major),
                value(&i.bush_outside)
            )
        });
        answered(&mut page, text, found);
    }
    page.check("thread_guard/recut.txt");
}
