//! The ISO 286 grids, the bearing ring tolerances and the internal clearances: checked cell by cell, rendered as integers.
//!
//! Lengths are rendered in tenths of a micrometre, the smallest step that the tables print.

mod cells;

use std::fmt::Write as _;
use std::path::Path;

use super::Rendered;
use cells::Grid;

const GRADES: [&str; 20] = [
    "IT01", "IT0", "IT1", "IT2", "IT3", "IT4", "IT5", "IT6", "IT7", "IT8", "IT9", "IT10", "IT11",
    "IT12", "IT13", "IT14", "IT15", "IT16", "IT17", "IT18",
];
const SHAFT: [&str; 30] = [
    "a_es_um",
    "b_es_um",
    "c_es_um",
    "cd_es_um",
    "d_es_um",
    "e_es_um",
    "ef_es_um",
    "f_es_um",
    "fg_es_um",
    "g_es_um",
    "h_es_um",
    "j5j6_ei_um",
    "j7_ei_um",
    "j8_ei_um",
    "k_IT4to7_ei_um",
    "k_other_ei_um",
    "m_ei_um",
    "n_ei_um",
    "p_ei_um",
    "r_ei_um",
    "s_ei_um",
    "t_ei_um",
    "u_ei_um",
    "v_ei_um",
    "x_ei_um",
    "y_ei_um",
    "z_ei_um",
    "za_ei_um",
    "zb_ei_um",
    "zc_ei_um",
];
const HOLE: [&str; 32] = [
    "A_EI_um",
    "B_EI_um",
    "C_EI_um",
    "CD_EI_um",
    "D_EI_um",
    "E_EI_um",
    "EF_EI_um",
    "F_EI_um",
    "FG_EI_um",
    "G_EI_um",
    "H_EI_um",
    "J6_ES_um",
    "J7_ES_um",
    "J8_ES_um",
    "K_upto_IT8_ES_before_delta_um",
    "K_above_IT8_ES_um",
    "M_upto_IT8_ES_before_delta_um",
    "M_above_IT8_ES_um",
    "N_upto_IT8_ES_before_delta_um",
    "N_above_IT8_ES_um",
    "P_ES_base_um",
    "R_ES_base_um",
    "S_ES_base_um",
    "T_ES_base_um",
    "U_ES_base_um",
    "V_ES_base_um",
    "X_ES_base_um",
    "Y_ES_base_um",
    "Z_ES_base_um",
    "ZA_ES_base_um",
    "ZB_ES_base_um",
    "ZC_ES_base_um",
];
const DELTA: [&str; 6] = [
    "delta_IT3_um",
    "delta_IT4_um",
    "delta_IT5_um",
    "delta_IT6_um",
    "delta_IT7_um",
    "delta_IT8_um",
];
/// Letters that every size range has, so that a blank there is a lost cell.
const ALWAYS: [&str; 18] = [
    "a", "b", "c", "d", "e", "f", "g", "h", "m", "n", "p", "r", "s", "u", "x", "z", "za", "zb",
];

const MAIN: [u16; 8] = [3, 6, 10, 18, 30, 50, 80, 120];
const SPLIT: [u16; 13] = [3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120];

fn option(value: Option<i64>) -> String {
    value.map_or_else(|| "None".to_owned(), |v| format!("Some({v})"))
}

fn table(name: &str, doc: &str, kind: &str, rows: &[String]) -> String {
    format!(
        "/// {doc}\npub(in crate::fit) static {name}: [{kind}; {}] = [\n{}\n];\n",
        rows.len(),
        rows.join(",\n")
    )
}

/// Checks every row of a grid of letters for signs, order and lost cells, and returns its cells.
fn letters(grid: &mut Grid, columns: &[&str]) -> Vec<Vec<Option<i64>>> {
    let mut cells = Vec::new();
    for row in 0..grid.rows.len() {
        let line: Vec<Option<i64>> = columns.iter().map(|c| grid.tenths(row, c)).collect();
        for (column, value) in columns.iter().zip(&line) {
            let letter = column.split('_').next().unwrap_or_default().to_lowercase();
            if ALWAYS.contains(&letter.as_str()) && value.is_none() {
                grid.defect(row, column, "a value is missing");
            }
            if ["cd", "ef", "fg"].contains(&letter.as_str()) && value.is_some() != (row < 3) {
                grid.defect(row, column, "cd, ef and fg are tabulated to 10 mm only");
            }
        }
        cells.push(line);
    }
    cells
}

fn iso286(directory: &Path) -> (Rendered, Vec<String>) {
    let mut it = Grid::read(directory, "iso286_it.csv");
    let mut shaft = Grid::read(directory, "iso286_shaft.csv");
    let mut hole = Grid::read(directory, "iso286_hole.csv");
    it.ranges(&MAIN);
    shaft.ranges(&SPLIT);
    hole.ranges(&SPLIT);

    let mut tolerance: Vec<Vec<i64>> = Vec::new();
    for row in 0..it.rows.len() {
        let line: Vec<i64> = GRADES.iter().map(|g| it.needed(row, g)).collect();
        for grade in 1..line.len() {
            if line[grade] <= line[grade - 1] {
                it.defect(row, GRADES[grade], "a coarser grade must be wider");
            }
            // ISO 286-1: from IT11 on, five grades up is ten times. The one exception is IT11 of 3 to 6 mm.
            if grade >= 12
                && line[grade] != 10 * line[grade - 5]
                && !(row == 1 && grade == 12)
                && row > 0
            {
                it.defect(
                    row,
                    GRADES[grade],
                    format!("not ten times {}", GRADES[grade - 5]),
                );
            }
            if let Some(above) = tolerance.last().map(|l: &Vec<i64>| l[grade])
                && line[grade] < above
            {
                it.defect(row, GRADES[grade], "narrower than for smaller sizes");
            }
        }
        tolerance.push(line);
    }
    let shaft_cells = letters(&mut shaft, &SHAFT);
    let hole_cells = letters(&mut hole, &HOLE);
    let mut delta = Vec::new();
    for row in 0..hole.rows.len() {
        let main = MAIN
            .iter()
            .position(|m| SPLIT[row.min(12)] <= *m)
            .unwrap_or(7);
        let line: Vec<i64> = DELTA.iter().map(|d| hole.needed(row, d)).collect();
        for (index, value) in line.iter().enumerate() {
            let steps = tolerance
                .get(main)
                .map_or(0, |t| t[index + 4] - t[index + 3]);
            if *value != if row == 0 { 0 } else { steps } {
                hole.defect(
                    row,
                    DELTA[index],
                    "delta is ITn less IT(n-1), and 0 up to 3 mm",
                );
            }
        }
        delta.push(line);
    }
    // General rule of ISO 286-1: holes A to H mirror shafts a to h, base values M, N, P to ZC mirror m, n, p to zc.
    let mirrored = (0..11)
        .map(|c| (c, c))
        .chain([(16, 16), (18, 17)])
        .chain((0..12).map(|c| (20 + c, 18 + c)));
    for (of_hole, of_shaft) in mirrored {
        for row in 0..hole_cells.len().min(shaft_cells.len()) {
            if hole_cells[row][of_hole] != shaft_cells[row][of_shaft].map(|v| -v) {
                hole.defect(
                    row,
                    HOLE[of_hole],
                    format!("does not mirror {} of the shaft grid", SHAFT[of_shaft]),
                );
            }
        }
    }

    let mut text = String::from(
        "//! Generated from data/grids/iso286_*.csv; do not edit.\n\nuse super::TableSource;\nuse crate::evidence::Grade;\n\n",
    );
    for (name, grid) in [("IT", &mut it), ("SHAFT", &mut shaft), ("HOLE", &mut hole)] {
        let source = grid.one_source();
        writeln!(text, "/// Where the grid was read.\npub(in crate::fit) const {name}_SOURCE: TableSource = {source};").unwrap();
    }
    let ints = |rows: &[Vec<i64>]| rows.iter().map(|r| format!("{r:?}")).collect::<Vec<_>>();
    let options = |rows: &[Vec<Option<i64>>]| {
        rows.iter()
            .map(|r| {
                format!(
                    "[{}]",
                    r.iter().map(|v| option(*v)).collect::<Vec<_>>().join(",")
                )
            })
            .collect::<Vec<_>>()
    };
    // Every bound is a whole millimetre, so the size rounded up to whole millimetres finds the range.
    let place = |bounds: &[u16], mm: u16| bounds.iter().filter(|b| mm > **b).count();
    let ranges: Vec<String> = (0..=120)
        .map(|mm| format!("({}, {})", place(&SPLIT, mm), place(&MAIN, mm)))
        .collect();
    text += &table(
        "RANGES",
        "Split and main range of a size, by the size rounded up to whole millimetres.",
        "(u8, u8)",
        &ranges,
    );
    text += &table(
        "IT",
        "Standard tolerances IT01, IT0, IT1 to IT18, 0.1 µm, by main range.",
        "[i32; 20]",
        &ints(&tolerance),
    );
    text += &table(
        "SHAFT",
        "Shaft deviations a to h (es), j5/j6, j7, j8, k4 to k7, other k, m to zc (ei), 0.1 µm, by split range.",
        "[Option<i16>; 30]",
        &options(&shaft_cells),
    );
    text += &table(
        "HOLE",
        "Hole deviations A to H (EI), J6, J7, J8, K, M, N up to and above IT8, P to ZC (ES before delta), 0.1 µm, by split range.",
        "[Option<i16>; 32]",
        &options(&hole_cells),
    );
    text += &table(
        "DELTA",
        "Delta for IT3 to IT8, 0.1 µm, by split range.",
        "[i16; 6]",
        &ints(&delta),
    );
    let defects = [it.defects, shaft.defects, hole.defects].concat();
    (
        Rendered {
            path: "src/fit/tables/iso286.rs",
            text,
        },
        defects,
    )
}

fn iso492(directory: &Path) -> (Rendered, Vec<String>) {
    let mut grid = Grid::read(directory, "iso492.csv");
    let mut rows = Vec::new();
    let mut seen: Vec<(String, String, u16)> = Vec::new();
    for row in 0..grid.rows.len() {
        let (quantity, class) = (grid.text(row, "quantity"), grid.text(row, "class"));
        let quantity_variant = match quantity.as_str() {
            "bore" => "Bore",
            "outside" => "Outside",
            "width" => "Width",
            _ => {
                grid.defect(
                    row,
                    "quantity",
                    format!("`{quantity}` is not bore, outside or width"),
                );
                "Bore"
            }
        };
        let class_variant = match class.as_str() {
            "Normal" => "Normal",
            "6" => "Six",
            "5" => "Five",
            _ => {
                grid.defect(row, "class", format!("`{class}` is not Normal, 6 or 5"));
                "Normal"
            }
        };
        let (over, up_to) = (grid.bound(row, "over_mm"), grid.bound(row, "up_to_mm"));
        let (upper, lower) = (grid.needed(row, "upper_um"), grid.needed(row, "lower_um"));
        if over >= up_to {
            grid.defect(row, "up_to_mm", "not above over_mm");
        }
        if let Some((q, c, last)) = seen.last()
            && *q == quantity
            && *c == class
            && *last != over
        {
            grid.defect(row, "over_mm", "does not follow the row above");
        }
        if seen
            .iter()
            .any(|(q, c, u)| *q == quantity && *c == class && *u == up_to)
        {
            grid.defect(row, "up_to_mm", "this range is already there");
        }
        // Ring bores and outsides are both minus tolerances.
        if upper != 0 || lower >= 0 {
            grid.defect(row, "lower_um", "a ring tolerance runs from 0 downwards");
        }
        seen.push((quantity, class, up_to));
        let source = grid.source(row);
        rows.push(format!("RingRow {{ quantity: RingSize::{quantity_variant}, class: RingClass::{class_variant}, over: {over}, up_to: {up_to}, lower: {lower}, from: {source} }}"));
    }
    let text = format!(
        "//! Generated from data/grids/iso492.csv; do not edit.\n\nuse super::{{RingRow, TableSource}};\nuse crate::evidence::Grade;\nuse crate::fit::{{RingClass, RingSize}};\n\n{}",
        table(
            "RINGS",
            "Ring tolerances: upper limit 0, lower limit in 0.1 µm; ranges in mm.",
            "RingRow",
            &rows
        )
    );
    (
        Rendered {
            path: "src/fit/tables/iso492.rs",
            text,
        },
        grid.defects,
    )
}

fn iso5753(directory: &Path) -> (Rendered, Vec<String>) {
    let mut grid = Grid::read(directory, "iso5753.csv");
    let mut rows = Vec::new();
    let mut last: Option<(u16, i64, i64)> = None;
    for row in 0..grid.rows.len() {
        let group = grid.text(row, "group");
        let wanted = ["C2", "CN", "C3", "C4"][row % 4];
        if group != wanted {
            grid.defect(row, "group", format!("`{group}` where {wanted} is due"));
        }
        let (over, up_to) = (grid.bound(row, "over_mm"), grid.bound(row, "up_to_mm"));
        let (min, max) = (grid.needed(row, "min_um"), grid.needed(row, "max_um"));
        if min >= max {
            grid.defect(row, "max_um", "not above min_um");
        }
        if let Some((range, lower, upper)) = last {
            if row % 4 == 0 && over != range {
                grid.defect(row, "over_mm", "does not follow the row above");
            }
            if row % 4 != 0 && (up_to != range || min <= lower || max <= upper) {
                grid.defect(
                    row,
                    "min_um",
                    "a looser group must lie above the one before, in the same range",
                );
            }
        }
        last = Some((up_to, min, max));
        let source = grid.source(row);
        rows.push(format!("ClearanceRow {{ group: ClearanceGroup::{group}, over: {over}, up_to: {up_to}, min: {min}, max: {max}, from: {source} }}"));
    }
    let text = format!(
        "//! Generated from data/grids/iso5753.csv; do not edit.\n\nuse super::{{ClearanceRow, TableSource}};\nuse crate::evidence::Grade;\nuse crate::fit::ClearanceGroup;\n\n{}",
        table(
            "CLEARANCES",
            "Radial internal clearance in 0.1 µm by bore range in mm.",
            "ClearanceRow",
            &rows
        )
    );
    (
        Rendered {
            path: "src/fit/tables/iso5753.rs",
            text,
        },
        grid.defects,
    )
}

/// Renders the tables of `src/fit/tables/`, or stops with every defect of every grid.
pub fn render() -> Vec<Rendered> {
    let directory = Path::new(env!("CARGO_MANIFEST_DIR")).join("data/grids");
    let (rendered, defects): (Vec<Rendered>, Vec<Vec<String>>) =
        [iso286(&directory), iso492(&directory), iso5753(&directory)]
            .into_iter()
            .unzip();
    let defects = defects.concat();
    assert!(
        defects.is_empty(),
        "{} defects:\n{}",
        defects.len(),
        defects.join("\n")
    );
    rendered
}

/// A grid spoilt on purpose must have every spoilt cell listed.
#[test]
fn defects_are_listed_together() {
    let source = Path::new(env!("CARGO_MANIFEST_DIR")).join("data/grids");
    let spoilt = std::env::temp_dir().join(format!("framegauge-grids-{}", std::process::id()));
    std::fs::create_dir_all(&spoilt).unwrap();
    for name in ["iso286_it.csv", "iso286_shaft.csv", "iso286_hole.csv"] {
        let text = std::fs::read_to_string(source.join(name)).unwrap();
        // Misprints met in published tables: g of 6 to 10 mm as -8, IT15 of 30 to 50 mm as 100.
        let text = text.replace(
            "10,-280,-150,-80,-56,-40,-25,-18,-13,-8,-5,0",
            "10,-280,-150,-80,-56,-40,-25,-18,-13,-8,-8,0",
        );
        let text = text.replace(",620,1000,", ",620,100,");
        std::fs::write(spoilt.join(name), text).unwrap();
    }
    let (_, defects) = iso286(&spoilt);
    std::fs::remove_dir_all(&spoilt).unwrap();
    assert!(
        defects
            .iter()
            .any(|d| d.starts_with("data/grids/iso286_it.csv: row 7, IT15")),
        "{defects:?}"
    );
    assert!(
        defects
            .iter()
            .any(|d| d.starts_with("data/grids/iso286_hole.csv: row 4, G_EI_um")),
        "{defects:?}"
    );
}
