//! Seat tubes, shells and threads at the edge of a limit.

use super::*;

fn steel(body: &str) -> Plan {
    plan(&format!(
        "format = 1\nframe = \"f\"\nmaterial = \"steel\"\n{body}"
    ))
}

fn has(plan: &Plan, operation: Operation) -> bool {
    plan.steps.iter().any(|s| s.operation == operation)
}

fn bores(size: f64, u: f64) -> String {
    format!(
        "bore = [\"20 mm deep, 0 deg: {size} mm +/- {u} mm\", \"20 mm deep, 90 deg: {size} mm +/- {u} mm\", \"80 mm deep, 0 deg: {size} mm +/- {u} mm\", \"80 mm deep, 90 deg: {size} mm +/- {u} mm\"]\n"
    )
}

/// The greatest stock that any text prints is 0.020 in = 0.508 mm (`cutting.toml`): 27.2 less 26.68 mm at a narrow place is
/// 0.52 +/- 0.03 mm, which may be less, and is reamed; 0.56 mm is more for certain.
#[test]
fn more_stock_than_any_text_prints_is_not_reamed() {
    let tube = |narrow: f64, wide: f64| {
        steel(&format!(
            "[seat_tube]\nbelieved = \"27.2\"\ncoating = \"painted\"\noutside = [\"28.6 mm +/- 0.02 mm\"]\nclear_depth = \"150 mm\"\nbore = [\"20 mm deep, 0 deg: {narrow} mm +/- 0.03 mm\", \"20 mm deep, 90 deg: {wide} mm +/- 0.03 mm\"]\n"
        ))
    };
    let may_be = tube(26.68, 27.06);
    assert!(has(&may_be, Operation::Ream), "{may_be}");
    let too_much = tube(26.64, 27.02);
    assert!(has(&too_much, Operation::Refer), "{too_much}");
    assert!(!has(&too_much, Operation::Ream), "{too_much}");
}

/// Readings that spread over 0.4 mm name no size (common practice: two steps of the series); at 0.4 mm itself they still do.
#[test]
fn readings_may_spread_over_two_steps_of_the_series() {
    let refused = |other: &str| {
        let plan = steel(&format!(
            "[seat_tube]\nbelieved = \"27.2\"\ncoating = \"bare\"\nbore = [\"20 mm deep, 0 deg: 27.2 mm +/- 0.02 mm\", \"20 mm deep, 90 deg: {other} mm +/- 0.02 mm\"]\n"
        ));
        words_of(&plan, Interface::SeatTube).contains("no size may be named")
    };
    assert!(!refused("27.6"));
    assert!(refused("27.601"));
}

/// Against 27.2 mm as sold, a member counts as off beyond 0.1 mm (common practice: half a step of the series), not at it.
#[test]
fn a_tenth_is_not_off() {
    let blamed = |bore: f64| {
        let plan = steel(&format!(
            "[seat_tube]\nbelieved = \"27.2\"\ncoating = \"bare\"\npost = {{ name = \"seatpost\", outside = [\"27.15 mm +/- 0.01 mm\"], insertion = \"80 mm\" }}\n{}",
            bores(bore, 0.005)
        ));
        words_of(&plan, Interface::SeatTube).contains("the tube is off")
    };
    assert!(!blamed(27.3));
    assert!(blamed(27.301));
}

/// A post of 26.98 mm in a bore of 27.15 mm is a post of 27.0 mm by its size: another of 27.0 mm is no cure, the next, 27.2 mm,
/// does not enter; a shim of (27.15 - 26.98) / 2 = 0.085 mm is told.
#[test]
fn a_post_of_the_same_size_is_no_cure() {
    let plan = steel(&format!(
        "[seat_tube]\nbelieved = \"27.2\"\ncoating = \"bare\"\npost = {{ name = \"seatpost\", outside = [\"26.98 mm +/- 0.01 mm\"], insertion = \"80 mm\" }}\n{}",
        bores(27.15, 0.005)
    ));
    let words = words_of(&plan, Interface::SeatTube);
    assert!(words.contains("cure: a shim of wall 0.085 mm"), "{words}");
}

/// Weld at 70 mm and 25 mm below it (`below_top_tube_weld`) is 95 mm, deeper than 90 mm in all and than 2.5 x 27.2 = 68 mm;
/// a maker who asks for 110 mm (invented) asks for the most.
#[test]
fn the_deepest_rule_decides_the_insertion() {
    let words = |rest: &str| {
        let plan = steel(&format!(
            "[seat_tube]\nbelieved = \"27.2\"\ncoating = \"bare\"\n{}weld_depth = \"70 mm\"\n{rest}",
            bores(27.22, 0.005)
        ));
        words_of(&plan, Interface::SeatTube)
    };
    let told = words("");
    assert!(told.contains("at least 95.000 mm"), "{told}");
    let told = words(
        "limits = [{ what = \"bore\", lower = \"27.1 mm\", owner = \"the builder (invented)\" }, { what = \"insertion\", lower = \"110 mm\", owner = \"the frame maker (invented)\" }]\n",
    );
    assert!(
        told.contains("at least 110.000 mm") && told.contains("the frame maker (invented)"),
        "{told}"
    );
}

/// T47: left-hand on the drive side is published, right-hand on the other remembered (`shells.toml`). Left-hand on both sides
/// does not strike the pattern out, and is not chased.
#[test]
fn a_hand_that_is_not_the_patterns_is_not_chased() {
    let shell = |other: &str| {
        steel(&format!(
            "[shell]\nbelieved = \"t47\"\ncoating = \"painted\"\npitch = \"1 mm\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\n[shell.drive]\nhand = \"left\"\nminor = [\"45.95 mm +/- 0.02 mm\"]\nstate = \"fouled\"\n[shell.non_drive]\nhand = \"{other}\"\nminor = [\"45.95 mm +/- 0.02 mm\"]\nstate = \"fouled\"\n"
        ))
    };
    assert!(has(&shell("right"), Operation::Chase));
    let odd = shell("left");
    assert!(!has(&odd, Operation::Chase), "{odd}");
    assert!(
        words_of(&odd, Interface::Shell).contains("left-hand found, right-hand by the pattern"),
        "{odd}"
    );
}

/// A shell brazed in back to front is told as such: bsc is left-hand on the drive side and right-hand on the other
/// (`shells.toml`), and the hands tell the sides (common practice). Two left hands are no exchange.
#[test]
fn a_shell_in_back_to_front_is_told() {
    let shell = |believed: &str, drive: &str, other: &str| {
        steel(&format!(
            "[shell]\n{believed}coating = \"bare\"\npitch = \"24 tpi\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\n[shell.drive]\nhand = \"{drive}\"\nminor = [\"33.75 mm +/- 0.02 mm\"]\nstate = \"fouled\"\n[shell.non_drive]\nhand = \"{other}\"\nminor = [\"33.75 mm +/- 0.02 mm\"]\nstate = \"fouled\"\n"
        ))
    };
    for believed in ["believed = \"bsc\"\n", ""] {
        let turned = shell(believed, "right", "left");
        let words = words_of(&turned, Interface::Shell);
        assert!(
            words.contains("with the sides exchanged: the shell is in back to front"),
            "{words}"
        );
        let refer = step(&turned, Interface::Shell, Operation::Refer);
        assert!(refer.title.contains("Do not chase"), "{turned}");
        assert!(!has(&turned, Operation::Chase), "{turned}");
    }
    let odd = shell("believed = \"bsc\"\n", "left", "left");
    assert!(
        !words_of(&odd, Interface::Shell).contains("exchanged"),
        "{odd}"
    );
    let right = shell("believed = \"bsc\"\n", "left", "right");
    assert!(
        !words_of(&right, Interface::Shell).contains("exchanged"),
        "{right}"
    );
}

/// One gauge tried after the work is enough to speak of the thread as it is then: painted before, bare and gauged now.
#[test]
fn one_gauge_after_the_work_is_enough() {
    let shell = |after: &str| {
        steel(&format!(
            "[shell]\nbelieved = \"bsc\"\ncoating = \"painted\"\npitch = \"24 tpi\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\n[shell.drive]\nhand = \"left\"\nminor = [\"33.75 mm +/- 0.02 mm\"]\nstate = \"fouled\"\n[shell.non_drive]\nhand = \"right\"\nstate = \"sound\"\ngo = \"passed\"\n{after}"
        ))
    };
    // The NOT GO gauge went in after the work: worn or over-tapped, whatever the GO gauge did before.
    let worn = shell("not_go_after = \"failed\"\n");
    let refer = step(
        &worn,
        Interface::ShellSide(Side::NonDrive),
        Operation::Refer,
    );
    assert!(refer.title.contains("worn or torn out"), "{worn}");
    // The drive side was not tried after it and is still fouled.
    assert!(
        worn.steps
            .iter()
            .any(|s| s.interface == Interface::ShellSide(Side::Drive)
                && s.operation == Operation::Chase),
        "{worn}"
    );
    let thread = |after: &str| {
        steel(&format!(
            "[[thread]]\nplace = \"axle\"\nend = \"rear\"\nmate = \"M12x1\"\npitch = \"1 mm\"\nstate = \"fouled\"\ncoating = \"painted\"\n{after}"
        ))
    };
    assert!(has(&thread(""), Operation::Chase));
    let done = thread("go_after = \"passed\"\n");
    assert!(!has(&done, Operation::Chase), "{done}");
    let worn = thread("not_go_after = \"failed\"\n");
    assert!(has(&worn, Operation::Refer), "{worn}");
}

/// One painted face is enough to say that carbon is not faced, and where a seat in the bore locates the bearing (`bb90`) a face
/// is left alone.
#[test]
fn faces_that_are_left_alone() {
    let left = |material: &str, believed: &str, rest: &str| {
        let plan = plan(&format!(
            "format = 1\nframe = \"f\"\nmaterial = \"{material}\"\n[shell]\nbelieved = \"{believed}\"\ncoating = \"bare\"\n{rest}[shell.drive.face]\ncoating = \"painted\"\n"
        ));
        assert!(!has(&plan, Operation::Face), "{plan}");
        plan.interfaces[0].leave.join("\n")
    };
    let pf30 = "width = [\"68.0 mm +/- 0.02 mm\"]\nbore = [\"0 deg: 45.98 mm +/- 0.003 mm\", \"90 deg: 45.98 mm +/- 0.003 mm\"]\n";
    let words = left("carbon", "pf30", pf30);
    assert!(words.contains("carbon is not faced"), "{words}");
    let bb90 = "width = [\"90.0 mm +/- 0.02 mm\"]\nbore = [\"0 deg: 37.01 mm +/- 0.003 mm\", \"90 deg: 37.01 mm +/- 0.003 mm\"]\n";
    let words = left("aluminium", "bb90", bb90);
    assert!(words.contains("a seat inside the bore locates"), "{words}");
}

/// A sheet that speaks of a thread on one side of a press shell is told that the pattern has none.
#[test]
fn a_press_shell_has_no_thread() {
    let told = |side: &str| {
        let plan = plan(&format!(
            "format = 1\nframe = \"f\"\nmaterial = \"aluminium\"\n[shell]\nbelieved = \"pf30\"\ncoating = \"bare\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\nbore = [\"0 deg: 45.98 mm +/- 0.003 mm\", \"90 deg: 45.98 mm +/- 0.003 mm\"]\n{side}"
        ));
        words_of(&plan, Interface::Shell).contains("this pattern has none")
    };
    assert!(told("[shell.drive]\nstate = \"fouled\"\n"));
    assert!(told("[shell.non_drive]\nstate = \"fouled\"\n"));
    assert!(!told(""));
}

const BSC: &str = "[shell]\nbelieved = \"bsc\"\ncoating = \"bare\"\npitch = \"24 tpi\"\n";

/// A spindle for 68.3 mm in a shell of 68.0 mm is 0.3 mm off, less than half a millimetre (common practice): it is the one.
#[test]
fn a_spindle_for_nearly_the_same_shell_fits() {
    let words = |made_for: &str| {
        let plan = steel(&format!(
            "{BSC}width = [\"68.0 mm +/- 0.02 mm\"]\nmade_for = \"{made_for}\"\n"
        ));
        words_of(&plan, Interface::Shell)
    };
    let near = words("68.3 mm");
    assert!(
        near.contains("68.300 mm, this one reads 68.000 mm"),
        "{near}"
    );
    let longer = words("73 mm");
    assert!(longer.contains("5.000 mm too long"), "{longer}");
    let shorter = words("67.4 mm");
    assert!(shorter.contains("0.600 mm short"), "{shorter}");
}

/// The maker's width (invented) decides, not another limit of the same sheet, and what may come off is half of what is over it:
/// (68.0 - 67.0) / 2 mm a side.
#[test]
fn the_width_is_held_against_its_own_limit() {
    let plan = steel(&format!(
        "{BSC}width = [\"68.0 mm +/- 0.02 mm\"]\nlimits = [{{ what = \"bore\", lower = \"30 mm\", upper = \"31 mm\", owner = \"bore (invented)\" }}, {{ what = \"width\", lower = \"67.0 mm\", owner = \"crank maker (invented)\" }}]\n[shell.drive]\nminor = [\"33.75 mm +/- 0.05 mm\"]\nstate = \"sound\"\ngo = \"passed\"\n[shell.non_drive]\nstate = \"sound\"\ngo = \"passed\"\n[shell.drive.face]\ncoating = \"painted\"\ninner_radius = \"17.6 mm\"\nouter_radius = \"20.5 mm\"\nprobe_radius = \"19.5 mm\"\nprobes = [\"0 deg: 0.10 mm +/- 0.01 mm\", \"72 deg: 0.06 mm +/- 0.01 mm\", \"144 deg: 0.02 mm +/- 0.01 mm\", \"216 deg: 0.03 mm +/- 0.01 mm\", \"288 deg: 0.08 mm +/- 0.01 mm\"]\n"
    ));
    let held: Vec<_> = plan.interfaces[0]
        .findings
        .iter()
        .filter(|f| f.what == "width" && f.outcome.is_some())
        .collect();
    assert_eq!(held.len(), 1, "{plan}");
    assert_eq!(held[0].owner, "crank maker (invented)");
    assert_eq!(held[0].outcome, Some(Outcome::ConformityShown));
    let face = step(&plan, Interface::ShellSide(Side::Drive), Operation::Face);
    let left = face.stop.as_ref().unwrap().left.unwrap();
    assert_eq!(settled_mm(left), 0.5);
}

/// Half widths carry both readings.
#[test]
fn half_widths_carry_their_readings() {
    let plan = steel(
        "[shell]\nbelieved = \"bb386\"\nwidth = [\"86.5 mm +/- 0.02 mm\"]\nbore = [\"0 deg: 45.98 mm +/- 0.003 mm\", \"90 deg: 45.98 mm +/- 0.003 mm\"]\nhalf_drive = \"43.1 mm +/- 0.2 mm\"\nhalf_non_drive = \"43.3 mm +/- 0.2 mm\"\n",
    );
    let halves = plan.interfaces[0]
        .findings
        .iter()
        .find(|f| f.what == "half widths")
        .unwrap();
    let read: Vec<f64> = halves
        .readings
        .iter()
        .map(|r| settled_mm(r.value()))
        .collect();
    assert_eq!(read, [43.1, 43.3]);
}

/// A hole is read on paint only where there is paint, and a hole that is still to be tapped is what it is: 4.00 mm is under
/// 4.134 mm and 4.60 mm over 4.334 mm (M5x0.8, 6H, ISO 965-1).
#[test]
fn a_hole_to_be_tapped_is_no_reading_on_paint() {
    let outcome = |coating: &str, state: &str, size: &str| {
        let plan = steel(&format!(
            "[[thread]]\nplace = \"bottle_boss\"\nbelieved = \"M5x0.8\"\npitch = \"0.8 mm\"\ncoating = \"{coating}\"\nstate = \"{state}\"\nminor = [\"{size} mm +/- 0.02 mm\"]\n"
        ));
        let holes = &plan.interfaces[0].findings;
        let held = |f: &&framegauge::judge::Finding| f.what == "hole" && f.limits.is_some();
        holes.iter().find(held).unwrap().outcome
    };
    let out = Some(Outcome::NonconformityShown);
    assert_eq!(outcome("bare", "fouled", "4.00"), out);
    assert_eq!(outcome("painted", "uncut", "4.00"), out);
    // Paint only narrows a hole.
    assert_eq!(
        outcome("painted", "fouled", "4.00"),
        Some(Outcome::Undecided)
    );
    assert_eq!(outcome("painted", "fouled", "4.60"), out);
}
