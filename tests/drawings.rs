//! Drawings as a mechanic looks at them: what the heading says, the plan's own limits, and no label on another.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use std::f64::consts::TAU;

use framegauge::face::{Allowance, Annulus, Clock, PadPoint, PadSurvey, Point, Probe, RingSurvey};
use framegauge::measure::Reading;
use framegauge::plan::{FrameSheet, prepare, record};
use framegauge::read::Tree;
use framegauge::say::{self, Embedded, ImageKind, Picture, Sight, pictures};
use framegauge::standard::{End, Place, Tables};
use framegauge::{Radius, deg, mm};

/// A box on paper: left, top, right, bottom.
type Box4 = [f64; 4];

fn meets(a: Box4, b: Box4) -> bool {
    a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3]
}

/// Every text with its box, a letter 0.6 of its height wide; every mark with its box; the paper.
#[allow(clippy::type_complexity, reason = "texts, marks, size of the page")]
fn boxes(svg: &str) -> (Vec<(String, Box4)>, Vec<Box4>, (f64, f64)) {
    let read = roxmltree::Document::parse(svg).unwrap();
    let value = |node: roxmltree::Node<'_, '_>, name: &str| -> f64 {
        node.attribute(name).unwrap().parse().unwrap()
    };
    let (mut texts, mut marks) = (Vec::new(), Vec::new());
    for node in read.descendants() {
        if node.has_tag_name("text") {
            let words = node.text().unwrap().to_owned();
            let (x, y, size) = (value(node, "x"), value(node, "y"), value(node, "font-size"));
            let width = 0.6 * size * words.chars().count() as f64;
            let left = match node.attribute("text-anchor") {
                Some("middle") => x - width / 2.0,
                _ => x,
            };
            texts.push((words, [left, y - 0.8 * size, left + width, y + 0.2 * size]));
        } else if node.has_tag_name("circle") && value(node, "r") < 2.5 {
            let (x, y, r) = (value(node, "cx"), value(node, "cy"), value(node, "r") + 0.2);
            marks.push([x - r, y - r, x + r, y + r]);
        }
    }
    let view: Vec<f64> = read
        .root_element()
        .attribute("viewBox")
        .unwrap()
        .split(' ')
        .map(|v| v.parse().unwrap())
        .collect();
    (texts, marks, (view[2], view[3]))
}

/// No text touches another or a mark, and all stay on the paper.
fn nothing_touches(what: &str, svg: &str) {
    let (texts, marks, paper) = boxes(svg);
    for (index, (words, text)) in texts.iter().enumerate() {
        let on = text[0] >= 0.0 && text[1] >= 0.0 && text[2] <= paper.0 && text[3] <= paper.1;
        assert!(
            on,
            "{what}: `{words}` leaves the paper: {text:?} of {paper:?}"
        );
        for (other, there) in &texts[index + 1..] {
            assert!(!meets(*text, *there), "{what}: `{words}` on `{other}`");
        }
        for mark in &marks {
            assert!(!meets(*text, *mark), "{what}: `{words}` on a mark");
        }
    }
}

fn ring(count: usize, radii: &[f64], inner: f64) -> RingSurvey {
    let radius = |v: f64| Radius::new(mm(v)).unwrap();
    let mut probes = Vec::new();
    for at in radii {
        for i in 0..count {
            let angle = 360.0 * i as f64 / count as f64;
            probes.push(Probe {
                at: Clock::new(deg(angle)).unwrap(),
                radius: radius(*at),
                height: Reading::new(mm(0.12 * (angle / 360.0 * TAU).cos()), mm(0.004)).unwrap(),
            });
        }
    }
    RingSurvey::new(
        Annulus::new(radius(inner), radius(20.5)).unwrap(),
        "pilot",
        probes,
    )
    .unwrap()
}

fn readings(svg: &str) -> usize {
    let (texts, ..) = boxes(svg);
    let number = |words: &str| words.parse::<f64>().is_ok() && words.contains('.');
    texts.iter().filter(|(words, _)| number(words)).count()
}

#[test]
fn labels_of_rings_never_touch() {
    for count in 3..=24 {
        for inner in [17.6, 12.0, 3.0] {
            for radii in [&[19.5][..], &[18.2, 20.0]] {
                let ring = ring(count, radii, inner);
                let what = format!("{count} probes, inner radius {inner}, circles {radii:?}");
                let svg = ring
                    .drawing(&Sight::default(), mm(0.1), &Allowance::default())
                    .unwrap();
                nothing_touches(&what, &svg);
                for hour in ["12", "3", "6", "9"] {
                    assert!(
                        svg.contains(&format!(">{hour}</text>")),
                        "{what}: {hour} o'clock"
                    );
                }
                // What stands in no figure is told below it.
                if readings(&svg) < count * radii.len() {
                    assert!(svg.contains("No room beside the mark"), "{what}");
                    assert!(
                        radii.len() == 2 && (count > 12 || inner < 10.0),
                        "{what}: {}",
                        readings(&svg)
                    );
                }
            }
        }
    }
}

#[test]
fn labels_of_mounts_never_touch() {
    let at = |x: f64, y: f64, z: f64| PadPoint {
        pad: if x < 40.0 { "front" } else { "rear" }.into(),
        point: Point::new(mm(x), mm(y), mm(z)).unwrap(),
    };
    for apart in [0.5, 1.0, 2.0, 5.0, 10.0] {
        let mut points = Vec::new();
        for x in [0.0, 74.0] {
            for (i, j) in [(0.0, 0.0), (1.0, 0.0), (0.0, 1.0), (1.0, 1.0)] {
                points.push(at(x + i * apart, j * apart, 0.011 * (i + j) - 0.3));
            }
        }
        let mount = PadSurvey::new("wheel axle", points, mm(0.004)).unwrap();
        let svg = mount
            .drawing(&Sight::default(), mm(0.02), &Allowance::default())
            .unwrap();
        nothing_touches(&format!("{apart} mm apart"), &svg);
        assert_eq!(readings(&svg), 8, "{apart} mm apart");
    }
}

fn drawn(text: &str) -> (FrameSheet, Vec<Picture>) {
    let tree: Tree<'_> = toml::from_str(text).unwrap();
    let sheet = FrameSheet::from_tree(&tree, Tables::ours()).unwrap();
    let pictures = pictures(&sheet, Tables::ours());
    (sheet, pictures)
}

fn of<'a>(pictures: &'a [Picture], name: &str) -> &'a str {
    let found = pictures.iter().find(|p| p.name == name);
    &found.unwrap_or_else(|| panic!("no {name}")).svg
}

/// Everything a drawing says, in one line.
fn words(svg: &str) -> String {
    let (texts, ..) = boxes(svg);
    let all: Vec<&str> = texts.iter().map(|(words, _)| words.as_str()).collect();
    all.join(" ")
}

/// The trekking frame: which side is looked at cannot be taken for the other, the step is the plan's own, and the mount's
/// drawing stops where its maker does (0.30 mm, the sheet).
#[test]
fn a_drawing_says_what_it_is_of() {
    let text = std::fs::read_to_string("examples/frames/aluminium_trekking.toml").unwrap();
    let (sheet, pictures) = drawn(&text);
    let plan = prepare(&sheet);
    let drive = words(of(&pictures, "shell_drive_face_before"));
    let other = words(of(&pictures, "shell_non_drive_face_before"));
    assert!(
        drive.contains("right side of the bicycle (chain side)") && !drive.contains("left side")
    );
    assert!(other.contains("left side of the bicycle (no chain)") && !other.contains("right side"));
    for picture in &pictures {
        nothing_touches(&picture.name, &picture.svg);
        let words = words(&picture.svg);
        assert!(words.contains("Aluminium trekking frame no. 12"), "{words}");
        assert!(words.contains("Before the work"), "{words}");
        match plan.steps_at(&picture.place).find(|s| s.off.is_some()) {
            Some(step) => assert!(
                words.contains(&format!("step {}: take", step.number)),
                "{words}"
            ),
            None => assert!(words.contains("no cut is planned here"), "{words}"),
        }
    }
    let mount = words(of(&pictures, "brake_rear_before"));
    assert!(
        mount.contains("frame maker's drawing (invented)") && mount.contains("0.30 mm"),
        "{mount}"
    );
    assert!(!mount.contains("none stated"), "{mount}");
}

/// Four points on each of two lands 60 mm apart: two boxes, none across the gap.
#[test]
fn a_flat_mount_has_two_lands() {
    let sheet = "format = 1\nframe = \"no. 4\"\ninvented = true\nmaterial = \"aluminium\"\n[instruments]\nheight = \"dial_indicator\"\n\
        [[brake]]\nsystem = \"fm\"\nend = \"rear\"\ncoating = \"painted\"\npoints = [\n\
        \"0 mm along, -5 mm across: 0.00 mm\", \"10 mm along, -5 mm across: 0.01 mm\",\n\
        \"0 mm along, 5 mm across: 0.03 mm\", \"10 mm along, 5 mm across: 0.05 mm\",\n\
        \"60 mm along, -5 mm across: 0.00 mm\", \"70 mm along, -5 mm across: 0.02 mm\",\n\
        \"60 mm along, 5 mm across: 0.04 mm\", \"70 mm along, 5 mm across: 0.06 mm\"]\n";
    let (_, pictures) = drawn(sheet);
    let svg = of(&pictures, "brake_rear_before");
    let read = roxmltree::Document::parse(svg).unwrap();
    let mut lands: Vec<(f64, f64)> = read
        .descendants()
        .filter(|n| n.has_tag_name("rect") && n.attribute("fill") == Some("none"))
        .map(|n| {
            let value = |name| n.attribute(name).unwrap().parse::<f64>().unwrap();
            (value("x"), value("x") + value("width"))
        })
        .collect();
    lands.sort_by(|a, b| a.0.total_cmp(&b.0));
    assert_eq!(lands.len(), 2);
    assert!(lands[0].1 + 20.0 < lands[1].0, "{lands:?}");
}

/// What a sheet names is shown where it was read, named where it was not, and never markup.
#[test]
fn photographs_stand_beside_their_place() {
    let (sheet, pictures) = drawn(
        "format = 1\nframe = \"no. 4\"\ninvented = true\n[seat_tube]\nphotos = [\n\
         { file = \"before.png\", caption = \"paint <in> the bore\", when = \"before\" },\n\
         { file = \"lost.jpg\" }]\n[[thread]]\nplace = \"axle\"\nend = \"rear\"\nphotos = [{ file = \"axle.webp\", when = \"after\" }]\n",
    );
    let record = record(&sheet, Tables::ours());
    let axle = record
        .entries
        .iter()
        .find(|e| e.now.place == Place::Axle(End::Rear))
        .unwrap();
    assert_eq!(axle.now.photos.len(), 1);
    let text = say::record(&record);
    assert!(
        text.contains("before the work: paint <in> the bore (before.png)"),
        "{text}"
    );
    assert!(say::markdown(&record).contains("after the work: axle.webp"));
    let bytes = b"\x89PNG\r\n\x1a\n invented";
    let read = Embedded {
        file: "before.png".into(),
        kind: ImageKind::of(bytes).unwrap(),
        base64: base64::Engine::encode(&base64::engine::general_purpose::STANDARD, bytes),
    };
    let page = say::letter(&record, &pictures, &[read]);
    let options = roxmltree::ParsingOptions {
        allow_dtd: true,
        ..Default::default()
    };
    let document = roxmltree::Document::parse_with_options(&page, options).unwrap();
    let images: Vec<_> = document
        .descendants()
        .filter(|n| n.has_tag_name("img"))
        .collect();
    assert_eq!(images.len(), 1);
    let source = images[0].attribute("src").unwrap();
    assert!(
        source.starts_with("data:image/png;base64,iVBORw0KGgo"),
        "{source}"
    );
    assert!(page.contains("lost.jpg: not in this letter"));
}

/// A sheet names no file outside its own folder.
#[test]
fn a_photograph_lies_beside_its_sheet() {
    for file in [
        "../secret.png",
        "/etc/secret.png",
        "C:\\\\secret.png",
        "",
        "https://example.org/a.png",
    ] {
        let text =
            format!("format = 1\nframe = \"no. 4\"\n[crown]\nphotos = [{{ file = \"{file}\" }}]\n");
        let tree: Tree<'_> = toml::from_str(&text).unwrap();
        let errors = FrameSheet::from_tree(&tree, Tables::ours()).unwrap_err();
        assert!(
            errors[0].to_string().contains("beside the sheet"),
            "{errors:?}"
        );
    }
}
