//! Brake pads: shapes, flatness, and what their tilt does to a caliper.

use super::*;

pub(crate) fn mounts() -> Vec<(&'static str, PadSurvey)> {
    let of = |all: &[(&'static str, f64, f64, f64)]| {
        let pads: Vec<PadPoint> = all
            .iter()
            .map(|(pad, x, y, z)| PadPoint {
                pad: (*pad).into(),
                point: point(*x, *y, *z),
            })
            .collect();
        PadSurvey::new("wheel axle", pads, mm(0.005)).unwrap()
    };
    vec![
        (
            "two posts, each three points",
            of(&[
                ("upper", -37.0, -6.5, 0.011),
                ("upper", -34.0, 5.0, 0.083),
                ("upper", -39.0, 1.5, 0.052),
                ("lower", 36.0, -5.5, 0.127),
                ("lower", 38.5, 6.0, 0.190),
                ("lower", 33.0, 0.5, 0.141),
            ]),
        ),
        (
            "flat mount of three pads, one point each but the first",
            of(&[
                ("front", 2.0, 3.0, -0.04),
                ("front", 9.0, 3.2, -0.02),
                ("rear", 71.0, 4.0, 0.05),
                ("tab", 40.0, -19.0, 0.36),
            ]),
        ),
    ]
}

#[test]
fn mounts_and_calipers() {
    let mut page = Page::new();
    for (name, survey) in mounts() {
        page.title(name);
        page.line(&format!("range {}", rounded(survey.range())));
        page.said("flatness", survey.flatness());
        page.said("least squares", Ok(survey.least_squares()));
        for pad in survey.pad_shapes() {
            page.said("pad", Ok(pad));
        }
        for kind in [MountKind::Posts, MountKind::Tab] {
            page.line(&format!("{kind}: slope {:.9}", survey.harmful_slope(kind)));
            for (length, clearance) in [(25.0, 0.2), (29.0, 0.07), (21.0, 0.055)] {
                let tilt = survey
                    .caliper_tilt(kind, mm(length), mm(clearance), DecisionRule::default())
                    .unwrap();
                page.line(&format!("{kind}, pad {length}, {clearance} to a side"));
                for (what, value) in [
                    ("rise", serde_json::to_value(tilt.rise).unwrap()),
                    ("decision", serde_json::to_value(tilt.decision).unwrap()),
                ] {
                    page.line(&format!("    {what}: {}", flat(&bare(value))));
                }
                page.line(&format!(
                    "    {:.6} deg of {:.6}, {} allowed",
                    tilt.angle.value.to_degrees(),
                    tilt.allowed_angle.value.to_degrees(),
                    rounded(tilt.allowed_rise)
                ));
            }
        }
    }
    page.check("face_guard/pads.txt");
}
