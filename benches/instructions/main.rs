//! One workload a run, for a tool that counts instructions: `benches/instructions/check.py` runs them all against budgets.
//!
//! Without a name (or with `--bench`, as `cargo bench` calls it) the names are listed, each with its size. Everything is read
//! and built outside the counted functions, whose names all begin with `counted_`; what an answer costs to drop is counted
//! with it. Loops stand where a closure could: the name of a closure would carry the counted name into other functions and
//! switch the counting off in the middle.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use std::hint::black_box;

use framegauge::ask::{Context, answer_line};
use framegauge::face::{Point, minimum_zone};
use framegauge::fit::{
    FitClass, JointShape, Material, MaterialKind, Press, PressJoint, limit_deviations,
};
use framegauge::identify::{Observation, Options, identify};
use framegauge::plan::{FrameSheet, prepare};
use framegauge::read::Tree;
use framegauge::standard::{CrownSeat, Place, Row, Seatpost, Shell, Stated, Tables, find};
use framegauge::thread::{Designation, ThreadSize, ToleranceClass, limits_of_size};
use framegauge::{Interference, Length, Ratio, gpa, mm};

#[inline(never)]
fn counted_row(name: &str) {
    black_box(&find::<Shell>(black_box(name)));
}

#[inline(never)]
fn counted_thread(size: &ThreadSize, class: &ToleranceClass) {
    black_box(&limits_of_size(black_box(size), black_box(class)));
}

#[inline(never)]
fn counted_limits(size: Length, class: FitClass) {
    black_box(&limit_deviations(black_box(size), black_box(class)));
}

#[inline(never)]
fn counted_press(joint: &PressJoint, press: Press) {
    black_box(&black_box(joint).pressure(black_box(press)));
}

#[inline(never)]
fn counted_zone(points: &[Point]) {
    black_box(&minimum_zone(black_box(points)));
}

#[inline(never)]
fn counted_identify(seen: &[Observation], options: &Options) {
    black_box(&identify(black_box(Place::Shell), black_box(seen), options));
}

#[inline(never)]
fn counted_prepare(sheet: &FrameSheet) {
    black_box(&prepare(black_box(sheet)));
}

#[inline(never)]
fn counted_ask(lines: &[&str], context: &Context<'_>) {
    for line in black_box(lines) {
        black_box(&answer_line(black_box(line), context));
    }
}

/// Every row of a family and every figure in it.
#[inline(never)]
fn counted_rows<R: Row>(rows: &[R]) {
    for row in black_box(rows) {
        row.walk(R::FAMILY, &mut look);
    }
}

fn look(field: &'static str, figure: &dyn Stated) {
    black_box((field, figure.evidence().is_some(), figure.disputes()));
}

const SIMPLE: [&str; 5] = [
    r#"{"id":1,"ask":"thread_limits","thread":"M10x1-6H"}"#,
    r#"{"id":2,"ask":"fit_limits","nominal":"42 mm","class":"N7"}"#,
    r#"{"id":3,"ask":"hand","shell":"bsc","side":"drive"}"#,
    r#"{"id":4,"ask":"convert","length":"1 3/8 in"}"#,
    r#"{"id":5,"ask":"conform","readings":["41.975 +/- 0.004 mm"],"class":"42 N7"}"#,
];

/// One reading leaves several shells, and then the next measurement is planned too: it costs more than two or three.
const READINGS: [(&str, &str); 3] = [
    ("bore", "46.0 +/- 0.05 mm"),
    ("width", "79.0 +/- 0.1 mm"),
    ("half_width_drive", "34.0 +/- 0.6 mm"),
];

fn row() {
    counted_row("bsc");
}

fn thread() {
    let size = "M10x1".parse::<Designation>().unwrap().size;
    counted_thread(&size, &"6g".parse().unwrap());
}

fn limits() {
    counted_limits(mm(42.0), "N7".parse().unwrap());
}

/// A bearing cup in an alloy shell (invented sizes).
fn press() {
    let alloy = Material::new("6061-T6", MaterialKind::Metal, gpa(68.9), Ratio(0.33)).unwrap();
    let steel = Material::new("steel", MaterialKind::Metal, gpa(206.0), Ratio(0.3)).unwrap();
    let shape = JointShape {
        diameter: mm(42.0),
        shaft_bore: Some(mm(39.6)),
        hub_outside: mm(46.0),
        length: mm(7.0),
    };
    let joint = PressJoint::new(shape, &steel, &alloy).unwrap();
    counted_press(
        &joint,
        Press::new(Interference::new(mm(0.02)).unwrap()).unwrap(),
    );
}

/// A tilted, wavy ring with scatter, always the same.
fn zone(n: usize) {
    let mut state = 0x9E37_79B9_7F4A_7C15_u64;
    let points: Vec<Point> = (0..n)
        .map(|i| {
            state ^= state >> 12;
            state ^= state << 25;
            state ^= state >> 27;
            let random = state.wrapping_mul(0x2545_F491_4F6C_DD1D) >> 11;
            let scatter = random as f64 / (1_u64 << 53) as f64 - 0.5;
            let t = i as f64 * std::f64::consts::TAU / n as f64;
            let z = 0.05 * (t - 0.7).cos() + 0.01 * (2.0 * t).cos() + 0.02 * scatter;
            Point::new(mm(20.0 * t.cos()), mm(20.0 * t.sin()), mm(z)).unwrap()
        })
        .collect();
    counted_zone(&points);
}

fn identification(readings: usize) {
    let seen: Vec<Observation> = READINGS[..readings]
        .iter()
        .map(|(key, value)| Observation::read(key, value).unwrap())
        .collect();
    counted_identify(&seen, &Options::default());
}

fn painted() -> FrameSheet {
    let path = concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/examples/frames/painted_steel.toml"
    );
    let text = std::fs::read_to_string(path).expect("the sheet");
    let tree: Tree = toml::from_str(&text).expect("TOML");
    FrameSheet::from_tree(&tree, Tables::ours()).expect("a sheet")
}

/// The painted frame's bottle bosses and nothing else, so many times.
fn bosses(count: usize) {
    let mut sheet = painted();
    let boss = sheet.thread.last().unwrap().clone();
    sheet.thread = vec![boss; count];
    (sheet.shell, sheet.crown, sheet.seat_tube) = (None, None, None);
    (sheet.head_tube, sheet.steerer) = (Default::default(), None);
    sheet.brake = Default::default();
    counted_prepare(&sheet);
}

fn ask(count: usize) {
    let lines: Vec<&str> = SIMPLE.into_iter().cycle().take(count).collect();
    counted_ask(&lines, &Context::default());
}

/// Name, size (0: it has none), what the size counts, and the run.
type Workload = (String, usize, &'static str, Box<dyn Fn()>);

fn workloads() -> Vec<Workload> {
    let mut all: Vec<Workload> = vec![
        ("row_by_name".into(), 0, "", Box::new(row)),
        ("thread_limits".into(), 0, "", Box::new(thread)),
        ("limits_of_class".into(), 0, "", Box::new(limits)),
        ("press".into(), 0, "", Box::new(press)),
        (
            "painted_frame".into(),
            0,
            "",
            Box::new(|| counted_prepare(&painted())),
        ),
    ];
    let mut sized = |name: &str, unit, sizes: &[usize], run: fn(usize)| {
        for size in sizes.iter().copied() {
            all.push((
                format!("{name}_{size}"),
                size,
                unit,
                Box::new(move || run(size)),
            ));
        }
    };
    sized("zone", "point", &[8, 16, 64, 10_000], zone);
    sized("identify", "reading", &[1, 2, 3], identification);
    sized("prepare", "interface", &[1, 2, 4], bosses);
    sized("ask", "line", &[1, 5, 100], ask);
    let (crown, posts) = (CrownSeat::table(), Seatpost::table());
    all.push((
        "rows_crown_seats".into(),
        crown.len(),
        "row",
        Box::new(|| counted_rows(crown)),
    ));
    all.push((
        "rows_seatposts".into(),
        posts.len(),
        "row",
        Box::new(|| counted_rows(posts)),
    ));
    all
}

fn main() {
    let wanted = std::env::args().nth(1).filter(|word| word != "--bench");
    let workloads = workloads();
    match wanted {
        None => {
            for (name, size, unit, _) in &workloads {
                println!("{name},{size},{unit}");
            }
        }
        Some(wanted) => match workloads.iter().find(|(name, ..)| *name == wanted) {
            Some((.., run)) => run(),
            None => panic!("no workload `{wanted}`: call without a name to list them"),
        },
    }
}
