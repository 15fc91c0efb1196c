//! Single places: ends, gauges, posts, paint.

use super::*;

#[test]
fn ends_are_kept_apart() {
    let plan = plan(
        "format = 1\nframe = \"f\"\nmaterial = \"steel\"\n[[thread]]\nplace = \"axle\"\nend = \"front\"\nmate = \"M12x1\"\ncoating = \"painted\"\n",
    );
    assert_eq!(plan.interfaces[0].title, "front axle");
    assert_eq!(End::Front.to_string(), "front");
}

/// A thread that takes its gauge by hand is left alone even in a painted shell; the other side is chased.
#[test]
fn a_gauge_that_goes_through_leaves_the_thread_alone() {
    let plan = plan(
        "format = 1\nframe = \"f\"\nmaterial = \"steel\"\n[shell]\nbelieved = \"bsc\"\ncoating = \"painted\"\npitch = \"24 tpi\"\n[shell.drive]\nhand = \"left\"\nminor = [\"33.72 mm +/- 0.03 mm\"]\nstate = \"sound\"\ngo = \"passed\"\n[shell.non_drive]\nhand = \"right\"\nstate = \"fouled\"\ngo = \"failed\"\n",
    );
    let chased: Vec<Interface> = plan
        .steps
        .iter()
        .filter(|s| s.operation == Operation::Chase)
        .map(|s| s.interface)
        .collect();
    assert_eq!(chased, [Interface::ShellSide(Side::NonDrive)], "{plan}");
}

/// A post that is to go deeper than the tube is clear is told, and a window that speaks of one size only is not used for
/// another.
#[test]
fn a_post_needs_room_and_its_own_window() {
    let text = |insertion: u32| {
        format!(
            "format = 1\nframe = \"f\"\nmaterial = \"steel\"\n[seat_tube]\nbelieved = \"31.6\"\ncoating = \"bare\"\nclear_depth = \"180 mm\"\nbore = [\"10 mm deep, 0 deg: 31.66 mm +/- 0.01 mm\", \"10 mm deep, 90 deg: 31.67 mm +/- 0.01 mm\"]\npost = {{ name = \"post\", outside = [\"31.56 mm +/- 0.005 mm\"], material = \"aluminium\", insertion = \"{insertion} mm\" }}\n"
        )
    };
    let room = |insertion: u32| {
        let plan = plan(&text(insertion));
        assert!(!plan.to_string().contains("reamed 27.2 hole"), "{plan}");
        let tube = plan
            .interfaces
            .iter()
            .find(|i| i.interface == Interface::SeatTube)
            .unwrap();
        tube.findings
            .iter()
            .find(|f| f.what == "room for the post")
            .unwrap()
            .outcome
    };
    assert_eq!(room(150), Some(Outcome::ConformityShown));
    assert_eq!(room(200), Some(Outcome::NonconformityShown));
}

/// Paint in a metal press shell comes out before anything is judged; a painted axle hole is asked for its pitch, once.
#[test]
fn paint_comes_out_of_a_press_shell_first() {
    let plan = plan(
        "format = 1\nframe = \"f\"\nmaterial = \"aluminium\"\n[shell]\nbelieved = \"pf30\"\ncoating = \"painted\"\nbore = [\"10 mm deep, 0 deg: 45.90 mm +/- 0.01 mm\", \"10 mm deep, 90 deg: 45.91 mm +/- 0.01 mm\", \"55 mm deep, 0 deg: 45.90 mm +/- 0.01 mm\", \"55 mm deep, 90 deg: 45.91 mm +/- 0.01 mm\"]\n[[thread]]\nplace = \"axle\"\nend = \"rear\"\ncoating = \"painted\"\nminor = [\"10.6 mm +/- 0.05 mm\"]\n",
    );
    let shell = step(&plan, Interface::Shell, Operation::Clean);
    assert!(shell.title.contains("paint"), "{plan}");
    assert!(
        plan.steps.iter().all(|s| s.operation != Operation::Ream),
        "a reading on paint shows nothing: {plan}"
    );
    let axle: Vec<&str> = plan
        .questions
        .iter()
        .filter(|q| q.interface == Interface::Thread(0))
        .map(|q| q.ask.as_str())
        .collect();
    assert_eq!(axle.len(), 1, "{axle:?}");
    assert!(axle[0].contains("pitch"), "{axle:?}");
}

/// Which side of a shell stands further out is said only where the readings show it: 0.28 mm is the uncertainty of the
/// difference of two readings of 0.2 mm.
#[test]
fn half_widths_lean_only_beyond_their_uncertainty() {
    let halves = |drive: &str, other: &str| {
        words_of(
            &plan(&format!(
                "format = 1\nframe = \"f\"\nmaterial = \"aluminium\"\n[shell]\nbelieved = \"bb386\"\nwidth = [\"86.5 mm +/- 0.02 mm\"]\nbore = [\"0 deg: 45.98 mm +/- 0.003 mm\", \"90 deg: 45.98 mm +/- 0.003 mm\"]\nhalf_drive = \"{drive} mm +/- 0.2 mm\"\nhalf_non_drive = \"{other} mm +/- 0.2 mm\"\n"
            )),
            Interface::Shell,
        )
    };
    let words = halves("43.1", "43.3");
    assert!(
        words.contains("equally far from the middle plane"),
        "{words}"
    );
    let words = halves("43.3", "43.1");
    assert!(
        words.contains("equally far from the middle plane"),
        "{words}"
    );
    let words = halves("43.4", "43.0");
    assert!(
        words.contains("0.400 mm further out on the drive side"),
        "{words}"
    );
    let words = halves("43.0", "43.4");
    assert!(
        words.contains("0.400 mm further out on the non-drive side"),
        "{words}"
    );
}
