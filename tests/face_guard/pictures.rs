//! Drawings, as they are committed beside this file: open them in a browser to look them over.

use super::*;

#[test]
fn faces_and_mounts_are_drawn() {
    let rings = super::rings::rings();
    let limits = Allowance::new([
        limit(LimitKind::MinimumWidth, "68 mm shell", 0.37, 0.012),
        limit(
            LimitKind::PaintLip,
            "paint lip that runs round the whole face and is to stay as it is",
            0.41,
            0.035,
        ),
        CutLimit::unknown(LimitKind::Maker, "frame maker's limit", "ask <them> & wait").unwrap(),
    ]);
    for (file, index, depth, allowance) in [
        ("face_guard/one_circle.svg", 0, 0.07, &limits),
        ("face_guard/two_circles.svg", 1, 0.05, &limits),
        ("face_guard/one_side.svg", 4, 0.012, &Allowance::default()),
    ] {
        same_as_committed(
            file,
            &rings[index]
                .1
                .drawing(&Sight::default(), mm(depth), allowance)
                .unwrap(),
        );
    }
    let mounts = super::pads::mounts();
    same_as_committed(
        "face_guard/posts.svg",
        &mounts[0]
            .1
            .drawing(&Sight::default(), mm(0.06), &limits)
            .unwrap(),
    );
    same_as_committed(
        "face_guard/flat_mount.svg",
        &mounts[1]
            .1
            .drawing(&Sight::default(), mm(0.0), &Allowance::default())
            .unwrap(),
    );
    // A face without any error: nothing to exaggerate.
    let level = ring(&[
        (0.0, 18.0, 0.0, 0.002),
        (125.0, 18.0, 0.0, 0.002),
        (230.0, 18.0, 0.0, 0.002),
    ]);
    same_as_committed(
        "face_guard/level.svg",
        &level
            .drawing(&Sight::default(), mm(0.0), &Allowance::default())
            .unwrap(),
    );
}
