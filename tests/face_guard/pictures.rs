//! Drawings as facts: what is drawn where. How a page with its drawing looks is held once, by `printed`.

use super::*;

/// A line for each shape: its numbers; of a path its points and the box around them.
fn shapes(page: &mut Page, svg: &str) {
    let drawing = roxmltree::Document::parse(svg).unwrap();
    for node in drawing.descendants().filter(|n| n.is_element()) {
        let name = node.tag_name().name();
        let number = |key: &str| node.attribute(key).map(str::to_owned);
        match name {
            "circle" | "line" | "rect" | "text" => {
                let keys = [
                    "x", "y", "width", "height", "cx", "cy", "r", "x1", "y1", "x2", "y2",
                ];
                let mut at: Vec<String> = keys.into_iter().filter_map(number).collect();
                let words = node.text().unwrap_or_default().trim();
                // A sentence is only told; figures and labels are facts.
                if words.split_whitespace().count() < 4 {
                    at.push(words.into());
                }
                page.line(&format!("{name} {}", at.join(" ")));
            }
            "path" => {
                let d = node.attribute("d").unwrap();
                let spoken = d.replace(|c: char| c.is_alphabetic() || c == ',', " ");
                let numbers: Vec<f64> = spoken
                    .split_whitespace()
                    .map(|n| n.parse().unwrap())
                    .collect();
                let sum: f64 = numbers.iter().sum();
                let count = numbers.len();
                page.line(&format!("path of {count} numbers, {sum:.2} in all"));
            }
            _ => {}
        }
    }
}

#[test]
fn faces_and_mounts_are_drawn() {
    let mut page = Page::new();
    let mut drawn = |title: &str, svg: String| {
        page.title(title);
        shapes(&mut page, &svg);
    };
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
    for (title, index, depth, allowance) in [
        ("one circle", 0, 0.07, &limits),
        ("two circles", 1, 0.05, &limits),
        ("one side", 4, 0.012, &Allowance::default()),
    ] {
        drawn(
            title,
            rings[index]
                .1
                .drawing(&Sight::default(), mm(depth), allowance)
                .unwrap(),
        );
    }
    let mounts = super::pads::mounts();
    drawn(
        "posts",
        mounts[0]
            .1
            .drawing(&Sight::default(), mm(0.06), &limits)
            .unwrap(),
    );
    drawn(
        "flat mount",
        mounts[1]
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
    drawn(
        "level",
        level
            .drawing(&Sight::default(), mm(0.0), &Allowance::default())
            .unwrap(),
    );
    page.check("face_guard/drawings.txt");
}
