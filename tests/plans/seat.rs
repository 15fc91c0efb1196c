//! Seat tubes and their posts.

use framegauge::prep::Operation::Ream;

use super::{CUTS, Case, hold};

#[test]
fn tubes() {
    let tube = |rest: &str| -> &'static str {
        Box::leak(format!("material = \"steel\"\n[seat_tube]\n{rest}").into_boxed_str())
    };
    let bore = |size: f64, u: f64| {
        format!(
            "bore = [\"20 mm deep, 0 deg: {size} mm +/- {u} mm\", \"20 mm deep, 90 deg: {size} mm +/- {u} mm\", \"80 mm deep, 0 deg: {size} mm +/- {u} mm\", \"80 mm deep, 90 deg: {size} mm +/- {u} mm\"]\n"
        )
    };
    hold(
        "seat_tubes",
        &[
            Case(
                "not measured",
                &[],
                CUTS,
                "no size can be named and nothing cut",
                tube("believed = \"27.2\"\ncoating = \"painted\""),
            ),
            Case(
                "one reading",
                &[],
                &[],
                "a bore is not one number",
                tube("believed = \"27.2\"\ncoating = \"bare\"\nbore = [\"27.22 mm +/- 0.01 mm\"]"),
            ),
            Case(
                "readings that spread over a millimetre",
                &[],
                CUTS,
                "1.01 mm is more than any step of the series: no size may be named",
                tube(
                    "believed = \"27.2\"\ncoating = \"bare\"\nbore = [\"20 mm deep, 0 deg: 26.14 mm +/- 0.02 mm\", \"20 mm deep, 90 deg: 27.15 mm +/- 0.02 mm\"]",
                ),
            ),
            Case(
                "0.6 mm too narrow",
                &[],
                &[Ream],
                "more than any text gives for hand reaming: no paint, and probably no 27.2",
                tube(&format!(
                    "believed = \"27.2\"\ncoating = \"painted\"\noutside = [\"28.6 mm +/- 0.02 mm\"]\nclear_depth = \"150 mm\"\n{}",
                    bore(26.6, 0.01)
                )),
            ),
            Case(
                "narrower by less than the readings tell",
                &[],
                &[Ream],
                "27.19 +/- 0.03 mm: leave it, try the post",
                tube(&format!(
                    "believed = \"27.2\"\ncoating = \"bare\"\noutside = [\"28.6 mm +/- 0.02 mm\"]\nclear_depth = \"150 mm\"\n{}",
                    bore(27.19, 0.03)
                )),
            ),
            Case(
                "0.15 mm of paint, depth not known",
                &[Ream],
                &[],
                "27.05 for 27.2: the reamer must stop before the first boss",
                tube(&format!(
                    "believed = \"27.2\"\ncoating = \"painted\"\noutside = [\"28.6 mm +/- 0.02 mm\"]\n{}",
                    bore(27.05, 0.01)
                )),
            ),
            Case(
                "carbon",
                &[],
                CUTS,
                "carbon is not reamed",
                "material = \"carbon\"\n[seat_tube]\nbelieved = \"27.2\"\ncoating = \"painted\"\nbore = [\"20 mm deep, 0 deg: 27.05 mm +/- 0.01 mm\", \"20 mm deep, 90 deg: 27.05 mm +/- 0.01 mm\"]",
            ),
            Case(
                "titanium",
                &[Ream],
                &[],
                "a sharp cutter, slow",
                "material = \"titanium\"\n[seat_tube]\nbelieved = \"27.2\"\ncoating = \"painted\"\nclear_depth = \"150 mm\"\noutside = [\"28.6 mm +/- 0.02 mm\"]\nbore = [\"20 mm deep, 0 deg: 27.05 mm +/- 0.01 mm\", \"20 mm deep, 90 deg: 27.05 mm +/- 0.01 mm\", \"80 mm deep, 0 deg: 27.05 mm +/- 0.01 mm\", \"80 mm deep, 90 deg: 27.05 mm +/- 0.01 mm\"]",
            ),
            Case(
                "the label says another size",
                &[],
                &[],
                "27.42 is 27.4, believed 27.2: the readings are believed",
                tube(&format!(
                    "believed = \"27.2\"\ncoating = \"bare\"\n{}",
                    bore(27.42, 0.005)
                )),
            ),
            Case(
                "no listed size",
                &[],
                &[Ream],
                "40.05 mm is no seatpost of the tables",
                tube(&format!("coating = \"bare\"\n{}", bore(40.05, 0.01))),
            ),
            Case(
                "post in a bare tube, no outside",
                &[],
                &[],
                "the fit cannot be judged without the post",
                tube(&format!(
                    "believed = \"27.2\"\ncoating = \"bare\"\npost = {{ name = \"seatpost\" }}\n{}",
                    bore(27.22, 0.005)
                )),
            ),
            Case(
                "post and a shim",
                &[],
                &[],
                "27.22 less 25.4 is 1.82 mm: a wall of 0.9 fills 1.8 mm of it",
                tube(&format!(
                    "believed = \"27.2\"\ncoating = \"bare\"\nshim = \"0.9 mm\"\npost = {{ name = \"seatpost\", outside = [\"25.4 mm +/- 0.01 mm\"], insertion = \"80 mm\" }}\nweld_depth = \"40 mm\"\n{}",
                    bore(27.22, 0.005)
                )),
            ),
        ],
    );
}
