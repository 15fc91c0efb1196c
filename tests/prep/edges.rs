//! Plans at the edge of a limit, with a limit of the maker's own, and with one reading of two.

use super::*;

/// A steel frame with this interface.
fn steel(body: &str) -> String {
    format!("format = 1\nframe = \"f\"\nmaterial = \"steel\"\n{body}")
}

fn has(plan: &Plan, operation: Operation) -> bool {
    plan.steps.iter().any(|s| s.operation == operation)
}

fn finding<'a>(plan: &'a Plan, interface: Interface, what: &str) -> &'a framegauge::judge::Finding {
    let report = plan.interfaces.iter().find(|i| i.interface == interface);
    let found = report.and_then(|r| r.findings.iter().find(|f| f.what == what));
    found.unwrap_or_else(|| panic!("no {what}:\n{plan}"))
}

fn left_alone(plan: &Plan, interface: Interface) -> String {
    let report = plan.interfaces.iter().find(|i| i.interface == interface);
    report.unwrap().leave.join("\n")
}

fn asked(plan: &Plan, interface: Interface, words: &str) -> bool {
    plan.questions
        .iter()
        .any(|q| q.interface == interface && q.ask.contains(words))
}

const SLANTED: &str = "inner_radius = \"17 mm\"\nouter_radius = \"19 mm\"\nprobe_radius = \"18 mm\"\nprobes = [\"0 deg: 0.00 mm +/- 0.005 mm\", \"72 deg: 0.04 mm +/- 0.005 mm\", \"144 deg: 0.12 mm +/- 0.005 mm\", \"216 deg: 0.12 mm +/- 0.005 mm\", \"288 deg: 0.04 mm +/- 0.005 mm\"]\n";

/// A maker's own limit stands before the table's: 33.82 mm is under EC34 (33.90 mm, `head_tube.toml`) and within what the frame
/// maker wrote (invented).
#[test]
fn the_makers_bore_stands_before_the_table() {
    let text = |limits: &str| {
        steel(&format!(
            "[head_tube.upper]\nbelieved = \"EC34\"\ncoating = \"bare\"\nbore = [\"0 deg: 33.82 mm +/- 0.005 mm\", \"90 deg: 33.82 mm +/- 0.005 mm\"]\n{limits}"
        ))
    };
    assert!(has(&plan(&text("")), Operation::Ream));
    let own = plan(&text(
        "limits = [{ what = \"depth\", upper = \"1 mm\", owner = \"frame maker (invented)\" }, { what = \"bore\", lower = \"33.80 mm\", upper = \"33.85 mm\", owner = \"frame maker (invented)\" }]\n",
    ));
    assert!(!has(&own, Operation::Ream), "{own}");
    let bore = finding(&own, Interface::HeadUpper, "bore");
    assert_eq!(bore.outcome, Some(Outcome::ConformityShown));
    assert_eq!(bore.owner, "frame maker (invented)");
    // The same for a press shell: 45.90 mm is under pf30_workshop (45.95 mm).
    let shell = |limits: &str| {
        format!(
            "format = 1\nframe = \"f\"\nmaterial = \"aluminium\"\n[shell]\nbelieved = \"pf30\"\ncoating = \"bare\"\nwidth = [\"68.0 mm +/- 0.02 mm\"]\nbore = [\"0 deg: 45.90 mm +/- 0.005 mm\", \"90 deg: 45.90 mm +/- 0.005 mm\"]\n{limits}"
        )
    };
    assert!(has(&plan(&shell("")), Operation::Ream));
    let own = plan(&shell(
        "limits = [{ what = \"width\", lower = \"67 mm\", owner = \"frame maker (invented)\" }, { what = \"bore\", lower = \"45.85 mm\", upper = \"45.95 mm\", owner = \"frame maker (invented)\" }]\n",
    ));
    assert!(!has(&own, Operation::Ream), "{own}");
    let bore = finding(&own, Interface::Shell, "bore");
    assert_eq!(bore.outcome, Some(Outcome::ConformityShown));
}

/// A cup of 12 mm in a bore of 9 mm: a metal tube may be deepened, laminate and what is not known are referred.
#[test]
fn only_metal_is_deepened() {
    let text = |material: &str| {
        format!(
            "format = 1\nframe = \"f\"\nmaterial = \"{material}\"\n[head_tube.upper]\nbelieved = \"EC34\"\ncoating = \"bare\"\nbore = [\"0 deg: 33.92 mm +/- 0.005 mm\", \"90 deg: 33.92 mm +/- 0.005 mm\"]\nbore_depth = \"9 mm +/- 0.1 mm\"\npart = {{ name = \"cup\", outside = [\"34.0 mm +/- 0.005 mm\"], insertion = \"12 mm\" }}\n"
        )
    };
    for (material, wanted) in [
        ("steel", Operation::Ream),
        ("carbon", Operation::Refer),
        ("unknown", Operation::Refer),
    ] {
        let plan = plan(&text(material));
        let deepened = plan.steps.iter().find(|s| s.title.contains("Deepen"));
        assert_eq!(deepened.unwrap().operation, wanted, "{material}: {plan}");
    }
}

/// IS41 is listed for a bearing of 41 mm (`head_tube.toml`). One that reads 0.12 mm more +/- 0.05 mm is that bearing as far as
/// the reading tells; 0.2 mm more is another.
#[test]
fn another_bearing_is_told_only_beyond_the_reading() {
    let told = |size: &str| {
        let plan = plan(&steel(&format!(
            "[head_tube.upper]\nbelieved = \"IS41\"\ncoating = \"bare\"\nbore = [\"0 deg: 41.12 mm +/- 0.005 mm\", \"90 deg: 41.12 mm +/- 0.005 mm\"]\npart = {{ name = \"bearing\", outside = [\"{size}\"] }}\n"
        )));
        asked(&plan, Interface::HeadUpper, "which bearing")
    };
    assert!(!told("41.12 mm +/- 0.05 mm"));
    assert!(told("41.20 mm +/- 0.05 mm"));
}

/// A face shown out of square is told with its limit, who wrote it, the decision and the source.
#[test]
fn a_face_out_of_square_names_its_limit() {
    let plan = plan(&steel(&format!(
        "[head_tube.upper]\nbelieved = \"EC34\"\ncoating = \"bare\"\nbore = [\"0 deg: 33.92 mm +/- 0.005 mm\", \"90 deg: 33.92 mm +/- 0.005 mm\"]\n[head_tube.upper.face]\n{SLANTED}"
    )));
    let square = finding(&plan, Interface::HeadUpper, "squareness");
    assert_eq!(square.outcome, Some(Outcome::NonconformityShown));
    // `end_face_parallelism` of `cutting.toml`.
    let rule =
        framegauge::standard::find::<framegauge::standard::FacingRule>("end_face_parallelism");
    let ceiling = rule.unwrap().window.upper().unwrap();
    assert_eq!(square.limits.unwrap().upper().known(), Some(ceiling));
    assert_eq!(
        square.decision.unwrap().outcome,
        Outcome::NonconformityShown
    );
    assert!(square.owner.contains("headset maker"), "{}", square.owner);
    assert!(!square.sources.is_empty());
}

/// A painted shell face against the half-axle window of 67.2 mm (`shells.toml`): what is left a side is half of what the shell
/// is wider, and half as uncertain.
#[test]
fn paint_on_a_face_and_what_is_left_below_it() {
    let faced = |width: &str| {
        plan(&steel(&format!(
            "[shell]\nbelieved = \"bsc\"\npitch = \"24 tpi\"\nwindow = \"bsc_half_axle_68\"\nwidth = [\"{width}\"]\n[shell.drive]\nminor = [\"33.75 mm +/- 0.05 mm\"]\nstate = \"sound\"\ngo = \"passed\"\n[shell.non_drive]\nstate = \"sound\"\ngo = \"passed\"\n[shell.drive.face]\ncoating = \"painted\"\n{SLANTED}"
        )))
    };
    // (67.22 - 67.2) / 2 = 0.01 mm +/- 0.025 mm: not sure that anything may come off at all.
    let unsure = faced("67.22 mm +/- 0.05 mm");
    assert!(!has(&unsure, Operation::Face), "{unsure}");
    assert!(
        left_alone(&unsure, Interface::Shell).contains("nothing more may come off"),
        "{unsure}"
    );
    // (67.30 - 67.2) / 2 = 0.05 mm +/- 0.01 mm against more than 0.12 mm that is needed: 0.04 mm for certain.
    let short = faced("67.30 mm +/- 0.02 mm");
    let refer = step(&short, Interface::ShellSide(Side::Drive), Operation::Refer);
    assert!(refer.why.contains("allows 0.040 mm"), "{}", refer.why);
}

/// What came off carries the readings it rests on: before less after, place by place.
#[test]
fn what_came_off_carries_its_readings() {
    let after = "after = [\"0 deg: 0.00 mm +/- 0.005 mm\", \"72 deg: 0.03 mm +/- 0.005 mm\", \"144 deg: 0.06 mm +/- 0.005 mm\", \"216 deg: 0.06 mm +/- 0.005 mm\", \"288 deg: 0.03 mm +/- 0.005 mm\"]\n";
    let faced = plan(&steel(&format!(
        "[head_tube.upper]\nbelieved = \"EC34\"\ncoating = \"bare\"\nbore = [\"0 deg: 33.92 mm +/- 0.005 mm\", \"90 deg: 33.92 mm +/- 0.005 mm\"]\n[head_tube.upper.face]\n{SLANTED}{after}"
    )));
    let off: Vec<f64> = finding(&faced, Interface::HeadUpper, "what came off")
        .readings
        .iter()
        .map(|r| settled_mm(r.value()))
        .collect();
    assert_eq!(off, [0.0, 0.01, 0.06, 0.06, 0.01]);
    // One place in common says what came off there: 0.04 - 0.03 mm.
    let one = "after = [\"10 deg: 0.00 mm +/- 0.005 mm\", \"72 deg: 0.03 mm +/- 0.005 mm\", \"150 deg: 0.06 mm +/- 0.005 mm\", \"222 deg: 0.06 mm +/- 0.005 mm\", \"294 deg: 0.03 mm +/- 0.005 mm\"]\n";
    let faced = plan(&steel(&format!(
        "[head_tube.upper]\nbelieved = \"EC34\"\ncoating = \"bare\"\nbore = [\"0 deg: 33.92 mm +/- 0.005 mm\", \"90 deg: 33.92 mm +/- 0.005 mm\"]\n[head_tube.upper.face]\n{SLANTED}{one}"
    )));
    let words = &finding(&faced, Interface::HeadUpper, "what came off").words;
    assert!(words.starts_with("0.010 mm to 0.010 mm"), "{words}");
}

/// A race without its seat is no fit: the seat is asked for; a crown of which nothing was measured asks for no fit.
#[test]
fn a_race_asks_for_its_seat() {
    let fit = |readings: &str| {
        let plan = plan(&steel(&format!(
            "[crown]\nbelieved = \"30.0\"\ncoating = \"bare\"\n{readings}"
        )));
        asked(&plan, Interface::Crown, "bore of the race")
    };
    assert!(fit("race = [\"29.90 mm +/- 0.005 mm\"]\n"));
    assert!(fit("seat = [\"30.02 mm +/- 0.005 mm\"]\n"));
    assert!(!fit(""));
}

/// Three heights of a mount make a plane, two do not.
#[test]
fn three_heights_are_a_survey() {
    let surveyed = |points: &str| {
        let plan = plan(&steel(&format!(
            "[[brake]]\nsystem = \"pm\"\nend = \"rear\"\ncoating = \"painted\"\npoints = [{points}]\n"
        )));
        words_of(&plan, Interface::Brake(0)).contains("faces as found")
    };
    let two = "\"0 mm along, 0 mm across: 0.00 mm +/- 0.003 mm\", \"34 mm along, 0 mm across: 0.00 mm +/- 0.003 mm\"";
    assert!(!surveyed(two));
    assert!(surveyed(&format!(
        "{two}, \"0 mm along, 12 mm across: 0.02 mm +/- 0.003 mm\""
    )));
}

/// The least thickness that the maker wrote (invented) limits the cut: 20.0 less 19.9 mm is less than the 0.2 mm that is needed.
#[test]
fn the_least_thickness_of_a_mount_limits_its_cut() {
    let text = |least: &str| {
        steel(&format!(
            "[[brake]]\nsystem = \"fm\"\nend = \"rear\"\ncoating = \"painted\"\nthickness = \"20.0 mm +/- 0.02 mm\"\nlimits = [{{ what = \"thickness\", lower = \"{least}\", owner = \"the builder (invented)\" }}]\npoints = [\"0 mm along, -6 mm across: 0.00 mm +/- 0.003 mm\", \"0 mm along, 6 mm across: 0.2 mm +/- 0.003 mm\", \"34 mm along, -6 mm across: 0.00 mm +/- 0.003 mm\", \"34 mm along, 6 mm across: 0.2 mm +/- 0.003 mm\"]\n"
        ))
    };
    assert!(!has(&plan(&text("19.9 mm")), Operation::Face));
    let free = plan(&text("19.0 mm"));
    let face = step(&free, Interface::Brake(0), Operation::Face);
    assert!(face.waits_for.is_empty(), "{free}");
    let stop = face.stop.as_ref().unwrap();
    assert_eq!(settled_mm(stop.left.unwrap()), 1.0);
}

/// A pitch of 1.25 mm at a pedal is the old French pedal, M14x1.25 (`axles.toml`): it is looked up among pedals and not among
/// all threads.
#[test]
fn a_pedal_thread_is_looked_up_among_pedals() {
    let plan = plan(&steel(
        "[[thread]]\nplace = \"pedal\"\npitch = \"1.25 mm\"\nstate = \"fouled\"\ncoating = \"bare\"\n",
    ));
    let identified = plan.interfaces[0].identification.as_ref().unwrap();
    assert_eq!(identified.place, framegauge::standard::Place::Pedal(None));
    let chase = step(&plan, Interface::Thread(0), Operation::Chase);
    assert!(
        chase.tool.as_ref().unwrap().cutter.contains("M14x1.25"),
        "{plan}"
    );
}

/// Readings further apart than 0.2 mm are not one size (common practice): 29.6 and 30.4 mm are no crown seat of 30.0 mm, though
/// their mean is.
#[test]
fn readings_far_apart_are_no_size() {
    let named = |low: &str, high: &str| {
        let plan = plan(&steel(&format!(
            "[crown]\nbelieved = \"30.0\"\ncoating = \"bare\"\nseat = [\"{low} mm +/- 0.01 mm\", \"{high} mm +/- 0.01 mm\"]\n"
        )));
        let identified = plan.interfaces[0].identification.as_ref();
        identified.is_some_and(|i| i.outcome.left().iter().any(|code| *code == "30.0"))
    };
    assert!(named("29.98", "30.05"));
    assert!(!named("29.6", "30.4"));
}

/// A face read again after the work is a reading after it, also where the bore below it was not touched.
#[test]
fn a_face_read_again_is_a_reading_after() {
    let read = |after: &str| {
        let text = steel(&format!(
            "[head_tube.upper]\nbelieved = \"EC34\"\n[head_tube.upper.face]\n{SLANTED}{after}"
        ));
        sheet(&text).read().unwrap()
    };
    let after = "after = [\"0 deg: 0.00 mm +/- 0.005 mm\"]\n";
    assert!(read(after).has_after(Interface::HeadUpper));
    assert!(!read("").has_after(Interface::HeadUpper));
    assert!(!read(after).before().has_after(Interface::HeadUpper));
    assert!(!read(after).has_after(Interface::HeadLower));
    let shell = |after: &str| {
        let text = steel(&format!("[shell.non_drive.face]\n{SLANTED}{after}"));
        sheet(&text).read().unwrap().has_after(Interface::Shell)
    };
    assert!(shell(after) && !shell(""));
}

/// Every place 0.010 mm higher than before, more than the 0.007 mm to which a difference of two heights of +/- 0.005 mm is known:
/// nothing came off, the surveys do not share a datum. One such place among others is scatter.
#[test]
fn a_face_higher_all_round_shares_no_datum() {
    let told = |first: &str| {
        let after = format!(
            "after = [\"0 deg: {first} mm +/- 0.005 mm\", \"72 deg: 0.05 mm +/- 0.005 mm\", \"144 deg: 0.13 mm +/- 0.005 mm\", \"216 deg: 0.13 mm +/- 0.005 mm\", \"288 deg: 0.05 mm +/- 0.005 mm\"]\n"
        );
        let faced = plan(&steel(&format!(
            "[head_tube.upper]\nbelieved = \"EC34\"\ncoating = \"bare\"\nbore = [\"0 deg: 33.92 mm +/- 0.005 mm\", \"90 deg: 33.92 mm +/- 0.005 mm\"]\n[head_tube.upper.face]\n{SLANTED}{after}"
        )));
        words_of(&faced, Interface::HeadUpper).contains("higher than before")
    };
    assert!(told("0.01"));
    assert!(!told("0.00"));
}
