//! Disc-brake mounts.

use framegauge::prep::Operation::Face;

use super::{CUTS, Case, hold};

#[test]
fn mounts() {
    let flat = |rest: &str| -> &'static str {
        Box::leak(format!("material = \"steel\"\n[[brake]]\nsystem = \"fm\"\nend = \"rear\"\ncoating = \"painted\"\n{rest}").into_boxed_str())
    };
    let points = |tilt: f64, name: &str| {
        format!(
            "{name} = [\"0 mm along, -6 mm across: 0.00 mm +/- 0.003 mm\", \"0 mm along, 6 mm across: {tilt} mm +/- 0.003 mm\", \"34 mm along, -6 mm across: 0.00 mm +/- 0.003 mm\", \"34 mm along, 6 mm across: {tilt} mm +/- 0.003 mm\"]\n"
        )
    };
    hold(
        "brakes",
        &[
            Case(
                "not surveyed",
                &[],
                &[Face],
                "without heights nobody knows the tilt; the side slope cannot be set right with bolts",
                flat(""),
            ),
            Case(
                "surveyed, caliper's clearance not known",
                &[],
                &[],
                "no squareness limit is published: the caliper's own clearance is the only bound",
                flat(&points(0.05, "points")),
            ),
            Case(
                "tilt that must rub",
                &[Face],
                &[],
                "0.2 mm over 12 mm across is 0.95 degrees: over 25 mm of pad more than 0.2 mm of clearance",
                flat(&format!(
                    "pad_clearance = \"0.2 mm\"\npad_length = \"25 mm\"\nlimits = [{{ what = \"depth\", upper = \"0.5 mm\", owner = \"the builder (invented)\" }}]\n{}",
                    points(0.2, "points")
                )),
            ),
            Case(
                "level",
                &[],
                &[],
                "0.001 mm over 12 mm rubs nowhere; paint is still on it",
                flat(&format!(
                    "pad_clearance = \"0.2 mm\"\npad_length = \"25 mm\"\n{}",
                    points(0.001, "points")
                )),
            ),
            Case(
                "bolt too long",
                &[],
                &[],
                "38 - 20 = 18 mm where 13 mm stand out by fm_bolt_protrusion: it bottoms",
                flat(&format!(
                    "thickness = \"20.0 mm +/- 0.05 mm\"\nbolt = \"38 mm\"\npad_clearance = \"0.2 mm\"\npad_length = \"25 mm\"\n{}",
                    points(0.001, "points")
                )),
            ),
            Case(
                "bolt too short",
                &[],
                &[],
                "28 - 20 = 8 mm",
                flat(&format!(
                    "thickness = \"20.0 mm +/- 0.05 mm\"\nbolt = \"28 mm\"\npad_clearance = \"0.2 mm\"\npad_length = \"25 mm\"\n{}",
                    points(0.001, "points")
                )),
            ),
            Case(
                "bolt right",
                &[],
                &[],
                "33 - 20 = 13 mm",
                flat(&format!(
                    "thickness = \"20.0 mm +/- 0.05 mm\"\nbolt = \"33 mm\"\npad_clearance = \"0.2 mm\"\npad_length = \"25 mm\"\n{}",
                    points(0.001, "points")
                )),
            ),
            Case(
                "deeper than its maker allows",
                &[],
                &[],
                "0.2 mm needed, 0.1 mm left by the drawing: do not face",
                flat(&format!(
                    "pad_clearance = \"0.2 mm\"\npad_length = \"25 mm\"\nlimits = [{{ what = \"depth\", upper = \"0.1 mm\", owner = \"the builder (invented)\" }}]\n{}",
                    points(0.2, "points")
                )),
            ),
            Case(
                "post mount",
                &[],
                CUTS,
                "not surveyed",
                "material = \"steel\"\n[[brake]]\nsystem = \"pm\"\nend = \"front\"\ncoating = \"painted\"",
            ),
            Case(
                "IS mount of carbon",
                &[],
                CUTS,
                "carbon is not faced",
                "material = \"carbon\"\n[[brake]]\nsystem = \"is\"\nend = \"rear\"\ncoating = \"painted\"",
            ),
            Case(
                "surveyed again, higher in one place",
                &[],
                &[],
                "two surveys that do not share a datum",
                flat(&format!(
                    "pad_clearance = \"0.2 mm\"\npad_length = \"25 mm\"\n{}{}",
                    points(0.2, "points"),
                    points(0.4, "after")
                )),
            ),
        ],
    );
}
