//! Shells: which one it is, what its faces bring back, and what guides the cutter.

use framegauge::plan::Operation::{Chase, Face, Refer};
use framegauge::plan::State::{Leave, Open, Refer as Referred, ToDo};

use super::{Case, hold, never_unsafe, planned, said};

/// A ring that is square to some hundredths, under paint or bare.
const RING: &str = "inner_radius = \"17.5 mm\"\nouter_radius = \"20.4 mm\"\nprobe_radius = \"19.0 mm\"\nprobes = [\"0 deg: 0.01 mm +/- 0.003 mm\", \"72 deg: 0.02 mm +/- 0.003 mm\", \"144 deg: 0.01 mm +/- 0.003 mm\", \"216 deg: 0.00 mm +/- 0.003 mm\", \"288 deg: 0.00 mm +/- 0.003 mm\"]\n";

const WIDE: &str = "material = \"steel\"\n[shell]\npitch = \"24 tpi\"\ncoating = \"bare\"\nwidth = [\"73.60 mm +/- 0.02 mm\"]\n[[shell.limits]]\nwhat = \"width\"\nlower = \"72.8 mm\"\nupper = \"73.4 mm\"\nowner = \"crank maker's sheet (invented)\"\n[shell.drive]\nhand = \"left\"\nstate = \"sound\"\ngo = \"passed\"\n[shell.non_drive]\nhand = \"right\"\nstate = \"sound\"\ngo = \"passed\"\n";

#[test]
fn widths_and_their_faces() {
    let surveyed = format!("{WIDE}[shell.drive.face]\n{RING}[shell.non_drive.face]\n{RING}");
    let bare = format!("{WIDE}[shell.drive.face]\ncoating = \"bare\"\n");
    let cases = |sheet: String| -> &'static str { sheet.leak() };
    let (surveyed, bare) = (cases(surveyed), cases(bare));
    hold(&[
        Case(
            "two tenths too wide, both faces surveyed: the faces bring it back",
            "shell",
            ToDo,
            &[],
            &[],
            surveyed,
        ),
        Case(
            "and each face gives its half",
            "shell.drive.face",
            ToDo,
            &[Face],
            &[],
            surveyed,
        ),
        Case(
            "too wide and a face that is only called bare: its heights are asked for",
            "shell.drive.face",
            Open,
            &[],
            &["shell.drive.face.probes"],
            bare,
        ),
        Case("and the shell waits for it", "shell", Open, &[], &[], bare),
    ]);
}

#[test]
fn threads_and_what_they_guide() {
    hold(&[
        Case(
            "sound English thread: no wider ISO bore is held against it",
            "shell.drive",
            Leave,
            &[],
            &[],
            "material = \"steel\"\n[shell]\nwidth = [\"73.42 mm +/- 0.02 mm\"]\ncoating = \"bare\"\n[shell.drive]\nminor = [\"33.74 mm +/- 0.015 mm\"]\nstate = \"sound\"\ngo = \"passed\"",
        ),
        Case(
            "rough thread in laminate: not chased",
            "shell.non_drive",
            Referred,
            &[Refer],
            &[],
            OTHER_SIDE_REFUSED,
        ),
        Case(
            "so the metal side is not faced either: the tool is guided through both threads",
            "shell.drive.face",
            Open,
            &[],
            &[],
            OTHER_SIDE_REFUSED,
        ),
        Case(
            "called French and the bore is a hair too small: asked, and nothing chased before",
            "shell",
            Open,
            &[],
            &["shell.confirmed"],
            "material = \"steel\"\n[shell]\nbelieved = \"french\"\nwidth = [\"68.66 mm +/- 0.02 mm\"]\n[shell.drive]\nhand = \"right\"\nstate = \"fouled\"\n[shell.non_drive]\nminor = [\"33.889 mm +/- 0.017 mm\"]",
        ),
        Case(
            "which thread stands beside a chase that is sure: pitch and both hands read",
            "shell.drive",
            ToDo,
            &[Chase],
            &[],
            "material = \"steel\"\n[shell]\npitch = \"24 tpi\"\nwidth = [\"68.1 mm +/- 0.02 mm\"]\n[shell.drive]\nhand = \"left\"\nstate = \"fouled\"\n[shell.non_drive]\nhand = \"right\"\nstate = \"fouled\"",
        ),
        Case(
            "24 tpi and 68.90 wide, a window for the English shell: which of the two is asked",
            "shell",
            Open,
            &[],
            &["shell.confirmed"],
            "material = \"steel\"\n[shell]\npitch = \"24 tpi\"\nwidth = [\"68.902 mm +/- 0.0237 mm\"]\nwindow = \"bsc_half_axle_68\"",
        ),
        Case(
            "a lockring whose thread the tables know of a shell: asked",
            "boss.lockring",
            Open,
            &[],
            &["thread[0].confirmed"],
            "material = \"steel\"\n[[thread]]\nplace = \"lockring\"\npitch = \"24 tpi\"\nbelieved = \"bsc\"\nhand = \"left\"\nminor = [\"33.72 mm +/- 0.02 mm\"]\ncoating = \"bare\"\nstate = \"fouled\"",
        ),
    ]);
}

const OTHER_SIDE_REFUSED: &str = "material = \"carbon\"\n[shell]\npitch = \"24 tpi\"\ncoating = \"powder_coated\"\nconsent = \"the frame maker's letter (invented)\"\nwidth = [\"68.5 mm +/- 0.02 mm\"]\nwindow = \"bsc_half_axle_68\"\n[shell.drive]\nmaterial = \"titanium\"\nhand = \"left\"\nstate = \"sound\"\ngo = \"passed\"\n[shell.drive.face]\ninner_radius = \"17.5 mm\"\nouter_radius = \"20.4 mm\"\nprobe_radius = \"19.0 mm\"\nprobes = [\"0 deg: 0.01 mm +/- 0.003 mm\", \"72 deg: 0.02 mm +/- 0.003 mm\", \"144 deg: 0.01 mm +/- 0.003 mm\", \"216 deg: 0.00 mm +/- 0.003 mm\", \"288 deg: 0.00 mm +/- 0.003 mm\"]\n[shell.non_drive]\nhand = \"right\"\ncoating = \"bare\"\nstate = \"rough\"";

/// 45.98 over paint is no bore of M35x1: the metal is wider still.
#[test]
fn a_bore_over_paint_rules_out_what_is_smaller() {
    let plan = planned(
        "[shell]\ncoating = \"overspray\"\npitch = \"1 mm\"\nwidth = [\"68.57 mm +/- 0.01 mm\"]\n[shell.drive]\nhand = \"left\"\nminor = [\"45.979 mm +/- 0.005 mm\"]\nstate = \"sound\"",
    );
    let shell = said(&plan, "shell");
    assert!(shell.contains("M47") && !shell.contains("M35"), "{shell}");
    never_unsafe(&plan, "T47 over paint");
}

/// The bore alone names an integrated seat, and a cup lies beside it: a question, and no statement contradicts another.
#[test]
fn a_cup_beside_a_bore_of_an_integrated_seat() {
    let plan = planned(
        "material = \"steel\"\n[head_tube.upper]\nbore = [\"90 deg: 41.16 mm +/- 0.002 mm\"]\ncoating = \"bare\"\npart = { name = \"headset cup\" }",
    );
    assert!(
        plan.questions
            .iter()
            .any(|q| q.answer == "head_tube.upper.confirmed")
    );
    assert!(plan.places.iter().all(|p| p.contradictions.is_empty()));
    never_unsafe(&plan, "cup and IS41");
}

/// A label is no proof, but nothing else is worked to while the readings leave possible what it says: no chaser of 35 mm for a
/// shell that is called T47 and whose bore nobody read.
#[test]
fn what_it_is_called_is_parted_from_its_rival_first() {
    let sheet = |believed: &str, minor: &str| {
        format!(
            r#"
material = "titanium"
[shell]
believed = "{believed}"
coating = "overspray"
pitch = "1 mm"
width = ["68.6 mm by caliper_digital_outside"]
[shell.drive]
hand = "left"
state = "fouled"
go = "failed"
{minor}
[shell.non_drive]
hand = "right"
state = "sound"
go = "passed"
"#
        )
    };
    for believed in ["t47", "T47", "swiss"] {
        let plan = planned(&sheet(believed, ""));
        let cuts: Vec<String> = plan
            .steps
            .iter()
            .filter(|s| s.cuts())
            .map(|s| s.words())
            .collect();
        let wrong = if believed == "swiss" { "M47" } else { "M35" };
        assert!(
            cuts.iter().all(|words| !words.contains(wrong)),
            "{believed}: {cuts:?}"
        );
    }
    let read = planned(&sheet(
        "t47",
        "minor = [\"46.0 mm by caliper_digital_inside\"]",
    ));
    let words = read.steps.iter().filter(|s| s.cuts()).map(|s| s.words());
    assert!(words.into_iter().all(|w| !w.contains("M35")));
}
