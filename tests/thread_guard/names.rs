//! Spellings that are read.

use framegauge::thread::{Designation, Member, series};

use super::{Page, refusal};

/// What is read from a spelling, how it is printed, and the classes meant for it.
#[test]
fn read() {
    let mut page = Page::new();
    for (title, spellings) in GROUPS {
        page.title(title);
        for text in *spellings {
            let read: Designation = match text.parse() {
                Ok(read) => read,
                Err(error) => panic!("`{text}`: {error}"),
            };
            assert_eq!(read.to_string().parse::<Designation>().unwrap(), read);
            let class = |member| match read.class_for(member) {
                Ok(class) => class.to_string(),
                Err(error) => format!("({})", error.kind()),
            };
            page.line(&format!(
                "`{text}` -> {read} | {} | {:.5} x {:.5} mm | hole {} screw {} | {} | {}",
                read.size.form(),
                framegauge::to_mm(read.size.major()),
                framegauge::to_mm(read.size.pitch().length()),
                class(Member::Internal),
                class(Member::External),
                read.group.map_or("-".into(), |group| group.to_string()),
                series(&read.size).map_or("-".into(), |series| series.to_string()),
            ));
        }
    }
    page.title("a class for the other member, and none that is usual");
    for (text, member) in [
        ("M10x1-6H", Member::External),
        ("M10x1-6g", Member::Internal),
        ("1/2-20 UNF-2B", Member::External),
        ("1/2-20 UNF-2A", Member::Internal),
        ("1.370-24 BSC", Member::Internal),
        ("3/16-24 BSW", Member::External),
        ("36 mm x 24 tpi", Member::Internal),
    ] {
        let error = super::thread(text).class_for(member).unwrap_err();
        page.line(&format!("{text}, {member}: {}", refusal(&error)));
    }
    page.check("thread_guard/read.txt");
}

const GROUPS: &[(&str, &[&str])] = &[
    (
        "metric",
        &[
            "M10x1",
            "m10x1",
            "M10 x 1",
            "  M10x1  ",
            "M10×1",
            "M10*1",
            "M10x1.0",
            "M10x1,0",
            "M10x1 mm",
            "M10X1mm",
            "M3.5x0.6",
            "M3,5x0,6",
            "M12.0x1.5",
            "M10.0000000x1",
            "M1x0.25",
            "M1.4x0.3",
            "M1.5x0.35",
            "M35x1",
            "M47x1",
            "M300x8",
            "M3x1",
            "M1x0.2",
        ],
    ),
    (
        "coarse pitch",
        &[
            "M1", "M1.6", "M2", "M2.5", "M3", "M3.5", "M4", "M5", "M6", "M8", "M10", "M12", "M14",
            "M16", "M20-6H", "M24 LH",
        ],
    ),
    (
        "classes, groups and hands",
        &[
            "M10x1-6H",
            "M10x1 6H",
            "M10x1-6H, LH",
            "M10x1-6g",
            "M10x1-5g6g",
            "M10x1-4H5H",
            "M10x1-6G",
            "M10x1-6e",
            "M10x1-6f",
            "M10x1-6h",
            "M10x1-9g8g",
            "M10x1-6H-S",
            "M10x1-6H-N",
            "M10x1-7H-L",
            "M10x1-L",
            "M10x1-LH",
            "M10x1 LH",
            "M10x1LH",
            "M10x1lh",
            "M10x1 left",
            "M10x1-RH",
            "M10x1 rh",
            "M10x1 right",
            "M 10x1",
            "M10x1, Lh",
            "M8, LEFT",
            "M10x1-LH-7g6g-L",
            "M10x1 L LH 7g6g",
            "M10x1 - 6H - LH",
        ],
    ),
    (
        "inch sizes",
        &[
            "1.370 in x 24 tpi BSC",
            "1.370in x 24tpi BSC",
            "1.370 inch x 24 tpi BSC",
            "1.370\" x 24 tpi BSC",
            "1.370″ x 24 BSC",
            "1.370-24 BSC",
            "1.370 - 24 BSC",
            "1.370x24 BSC",
            "1,370 x 24 BSC",
            "1.370-24-BSC",
            "1.370-24 BSA",
            "1.370-24 CEI",
            "1.370-24 bsc LH",
            "9/16-20 BC",
            "9/16-20 JIS BC",
            "5/16 in x 26 tpi FG",
            "31/32 in x 30 tpi BSC",
            "1 3/8-26 BSC",
            "1-3/8-26 BSC",
            "1 - 3/8 - 26 BSC",
            "1 3/8 in x 24 tpi ISO",
            "1.375-24 ISO LH",
            "1.375-24 ISO-6H",
            "1.375-24 ISO-6g-L",
            "3/16-24 BSW",
            "1/4-20 W",
            "1/4-20 Whitworth",
            "1/4-26 BSF",
            "2-12 BSW",
            "1.005-26 BSC",
            "1.000-20 BSC",
            "11 in x 4 tpi UN",
        ],
    ),
    (
        "Unified",
        &[
            "1/2-20 UN",
            "1/2-20 UNF",
            "1/2-13 UNC",
            "1/2-20 UNF-2B",
            "1/2-20 UNF-2A-LH",
            "1/2-20 UNF 3B",
            ".5-13 UNC",
            "1024/1024-20 UN",
            "1 1/1024-20 UN",
            "9/16-20 UN",
            "9/16-18 UNF",
            "9/16-12 UNC",
            "15/16-20 UNEF",
            "1-20 UNEF",
            "1-12 UNF",
            "1-8 UNC",
            "1-24 UNS",
            "1-24 UN",
            "1 1/8-8 UN",
            "1 1/8-26 UN",
            "1 1/2-6 UNC",
            "1 1/2-4 UN",
            "1 1/2-16 UN",
            "1-6 UN",
            "#0-80 UNF",
            "#1-64 UNC",
            "#5-44 UNF",
            "#6-32 UNC",
            "#10-32 UNF-2A",
            "#10-24 UNC",
            "#12-28 UNF",
            "0.190-32 UNF",
            "0.5625 in x 20 tpi UN",
        ],
    ),
    (
        "a metric diameter with an inch pitch, and unknown forms",
        &[
            "36 mm x 24 tpi",
            "36mm x 24tpi",
            "36 mm-24 tpi",
            "36 mm x 24 tpi LH",
            "10 mm x 26 tpi",
            "34.7 mm x 1 mm",
            "34,7 mm x 1 mm",
            "35 mm x 1 mm RH",
            "25.4 mm x 24 tpi BSC",
            "1.29 in x 24 tpi unknown form",
            "1.29-24 form unknown",
            "1 3/8-26 unknown form LH",
            "1.41732 in x 24 tpi BSC",
            "1 in x 1 mm unknown form",
        ],
    ),
];
