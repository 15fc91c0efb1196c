//! Head tubes: bores too small, too large, painted, of laminate, too shallow; their faces.

use framegauge::prep::Operation::{Clean, Face, Ream, Refer};

use super::{CUTS, Case, hold};

#[test]
fn bores() {
    hold(
        "head_bores",
        &[
            Case(
                "EC34 bore 0.1 mm too small, bare",
                &[Ream],
                &[Refer],
                "33.80 is under 33.90 (EC34); metal is taken off, the wall is (37.0 - 33.95) / 2",
                "material = \"steel\"\n[head_tube.upper]\nbelieved = \"EC34\"\ncoating = \"bare\"\nbore = [\"12 mm deep, 0 deg: 33.80 mm +/- 0.01 mm\", \"12 mm deep, 90 deg: 33.80 mm +/- 0.01 mm\"]\noutside = [\"37.0 mm +/- 0.02 mm\"]\nbore_depth = \"15 mm +/- 0.1 mm\"\npart = { name = \"upper cup\", outside = [\"34.02 mm +/- 0.005 mm\"], insertion = \"10 mm\" }",
            ),
            Case(
                "the same, outside not known",
                &[Ream],
                &[],
                "the wall that is left has to be known before",
                "material = \"steel\"\n[head_tube.upper]\nbelieved = \"EC34\"\ncoating = \"bare\"\nbore = [\"12 mm deep, 0 deg: 33.80 mm +/- 0.01 mm\", \"12 mm deep, 90 deg: 33.80 mm +/- 0.01 mm\"]",
            ),
            Case(
                "the same in carbon",
                &[Refer],
                CUTS,
                "carbon is not reamed here",
                "material = \"carbon\"\n[head_tube.upper]\nbelieved = \"EC34\"\ncoating = \"bare\"\nbore = [\"0 deg: 33.80 mm +/- 0.01 mm\", \"90 deg: 33.80 mm +/- 0.01 mm\"]",
            ),
            Case(
                "EC34 bore too large",
                &[Refer],
                &[Ream],
                "34.10 is over 33.95: a reamer makes it larger",
                "material = \"steel\"\n[head_tube.lower]\nbelieved = \"EC34\"\ncoating = \"bare\"\nbore = [\"0 deg: 34.10 mm +/- 0.01 mm\", \"90 deg: 34.10 mm +/- 0.01 mm\"]",
            ),
            Case(
                "integrated seat too small",
                &[Refer],
                CUTS,
                "an integrated seat is cut by the frame maker only",
                "material = \"aluminium\"\n[head_tube.lower]\nbelieved = \"IS41\"\ncoating = \"bare\"\nbore = [\"0 deg: 40.90 mm +/- 0.01 mm\", \"90 deg: 40.90 mm +/- 0.01 mm\"]",
            ),
            Case(
                "integrated seat with paint in it",
                &[Clean],
                CUTS,
                "paint narrows a seat; it comes out by hand",
                "material = \"aluminium\"\n[head_tube.lower]\nbelieved = \"IS41\"\ncoating = \"painted\"\nbore = [\"0 deg: 41.02 mm +/- 0.01 mm\", \"90 deg: 41.02 mm +/- 0.01 mm\"]",
            ),
            Case(
                "EC34 bore within, overspray",
                &[Clean],
                &[Ream],
                "33.92 lies within 33.90 to 33.95",
                "material = \"steel\"\n[head_tube.upper]\nbelieved = \"EC34\"\ncoating = \"overspray\"\nbore = [\"0 deg: 33.92 mm +/- 0.005 mm\", \"90 deg: 33.92 mm +/- 0.005 mm\"]",
            ),
            Case(
                "believed EC34, not measured",
                &[],
                CUTS,
                "a seat is known by measuring, not by its label",
                "material = \"steel\"\n[head_tube.upper]\nbelieved = \"EC34\"\ncoating = \"painted\"",
            ),
            Case(
                "cup of 12 mm in a bore of 9 mm",
                &[],
                &[],
                "it would stand 3 mm proud",
                "material = \"steel\"\n[head_tube.upper]\nbelieved = \"EC34\"\ncoating = \"bare\"\nbore = [\"0 deg: 33.92 mm +/- 0.005 mm\", \"90 deg: 33.92 mm +/- 0.005 mm\"]\nbore_depth = \"9 mm +/- 0.1 mm\"\npart = { name = \"cup\", outside = [\"34.0 mm +/- 0.005 mm\"], insertion = \"12 mm\" }",
            ),
        ],
    );
}

#[test]
fn faces() {
    const LOWER: &str = "material = \"steel\"\n[head_tube.lower]\nbelieved = \"EC34\"\ncoating = \"bare\"\nbore = [\"0 deg: 33.92 mm +/- 0.005 mm\", \"90 deg: 33.92 mm +/- 0.005 mm\"]\ncrown_gap = \"2.0 mm +/- 0.1 mm\"\nbore_depth = \"15 mm +/- 0.1 mm\"\npart = { name = \"lower cup\", outside = [\"34.0 mm +/- 0.005 mm\"], insertion = \"10 mm\" }\n[head_tube.lower.face]\ninner_radius = \"17 mm\"\nouter_radius = \"19 mm\"\nprobe_radius = \"18 mm\"\n";
    let with =
        |rest: &str| -> &'static str { Box::leak(format!("{LOWER}{rest}").into_boxed_str()) };
    let slanted = "probes = [\"0 deg: 0.00 mm +/- 0.005 mm\", \"72 deg: 0.04 mm +/- 0.005 mm\", \"144 deg: 0.12 mm +/- 0.005 mm\", \"216 deg: 0.12 mm +/- 0.005 mm\", \"288 deg: 0.04 mm +/- 0.005 mm\"]\n";
    hold(
        "head_faces",
        &[
            Case(
                "slanted, bare",
                &[Face],
                &[],
                "0.12 mm across: shown out of end_face_parallelism by itself",
                with(slanted),
            ),
            Case(
                "flat, bare",
                &[],
                &[Face],
                "square enough as it is: nothing comes off",
                with(
                    "probes = [\"0 deg: 0.000 mm +/- 0.002 mm\", \"72 deg: 0.001 mm +/- 0.002 mm\", \"144 deg: 0.000 mm +/- 0.002 mm\", \"216 deg: 0.001 mm +/- 0.002 mm\", \"288 deg: 0.000 mm +/- 0.002 mm\"]\n",
                ),
            ),
            Case(
                "slanted, and no depth left by its maker",
                &[],
                &[],
                "the maker's 0.05 mm is less than the face needs: it cannot be cleaned up",
                with(&format!(
                    "{slanted}limits = [{{ what = \"depth\", upper = \"0.05 mm\", owner = \"the builder's drawing (invented)\" }}]\n"
                )),
            ),
            Case(
                "painted, not surveyed",
                &[],
                &[],
                "without heights nobody knows how deep the cut must go",
                with("coating = \"painted\"\n"),
            ),
            Case(
                "bare, not surveyed",
                &[],
                &[Face],
                "no reason to cut it is known",
                with("coating = \"bare\"\n"),
            ),
            Case(
                "surveyed again after a pass",
                &[],
                &[],
                "0.06 mm came off at the high side",
                with(&format!(
                    "{slanted}after = [\"0 deg: 0.00 mm +/- 0.005 mm\", \"72 deg: 0.03 mm +/- 0.005 mm\", \"144 deg: 0.06 mm +/- 0.005 mm\", \"216 deg: 0.06 mm +/- 0.005 mm\", \"288 deg: 0.03 mm +/- 0.005 mm\"]\n"
                )),
            ),
            Case(
                "higher after the pass than before",
                &[],
                &[],
                "two surveys that do not share a datum say nothing of what came off",
                with(&format!(
                    "{slanted}after = [\"0 deg: 0.20 mm +/- 0.005 mm\", \"72 deg: 0.03 mm +/- 0.005 mm\", \"144 deg: 0.06 mm +/- 0.005 mm\", \"216 deg: 0.06 mm +/- 0.005 mm\", \"288 deg: 0.03 mm +/- 0.005 mm\"]\n"
                )),
            ),
            Case(
                "surveyed at other places",
                &[],
                &[],
                "no place in common: nothing can be said",
                with(&format!(
                    "{slanted}after = [\"10 deg: 0.00 mm +/- 0.005 mm\", \"82 deg: 0.03 mm +/- 0.005 mm\", \"154 deg: 0.06 mm +/- 0.005 mm\", \"226 deg: 0.06 mm +/- 0.005 mm\", \"298 deg: 0.03 mm +/- 0.005 mm\"]\n"
                )),
            ),
            Case(
                "carbon face",
                &[],
                CUTS,
                "carbon is not faced",
                "material = \"carbon\"\n[head_tube.lower]\nbelieved = \"IS41\"\ncoating = \"painted\"\nbore = [\"0 deg: 41.12 mm +/- 0.005 mm\", \"90 deg: 41.12 mm +/- 0.005 mm\"]\n[head_tube.lower.face]\ncoating = \"painted\"\n",
            ),
            Case(
                "face above an integrated bearing",
                &[],
                &[Face],
                "nothing is clamped against it: the cover only passes it",
                "material = \"steel\"\n[head_tube.upper]\nbelieved = \"IS41\"\ncoating = \"bare\"\nbore = [\"0 deg: 41.12 mm +/- 0.005 mm\", \"90 deg: 41.12 mm +/- 0.005 mm\"]\n[head_tube.upper.face]\ncoating = \"bare\"\n",
            ),
        ],
    );
}
