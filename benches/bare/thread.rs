//! Limits of a metric bolt as a program without the crate would reckon them: the tables of `data/grids` in vectors of bare
//! `f64`, one row for each printed row, walked until one fits. It knows class 6g alone, takes any number for a size, and says
//! neither what a limit is worth nor why there is none.

/// Tables of ISO 965-1 for bolts, micrometres; `NAN` where nothing is printed.
pub struct Iso965 {
    by_range: Vec<RangeRow>,
    by_pitch: Vec<PitchRow>,
}

/// Tolerance of the pitch diameter, grade 6.
struct RangeRow {
    over: f64,
    up_to: f64,
    pitch: f64,
    pitch_diameter: f64,
}

/// Tolerance of the major diameter, grade 6, and deviation g.
struct PitchRow {
    pitch: f64,
    major: f64,
    g: f64,
}

/// Lower and upper limits in millimetres.
pub struct Limits {
    pub major: (f64, f64),
    pub pitch_diameter: (f64, f64),
    pub minor: (f64, f64),
}

/// The named columns of a grid as numbers.
fn grid<const N: usize>(name: &str, columns: [&str; N]) -> Vec<[f64; N]> {
    let path = format!("{}/data/grids/{name}.csv", env!("CARGO_MANIFEST_DIR"));
    let mut reader = csv::Reader::from_path(path).unwrap();
    let headers = reader.headers().unwrap().clone();
    let places = columns.map(|column| headers.iter().position(|h| h == column).unwrap());
    reader
        .records()
        .map(|record| {
            let record = record.unwrap();
            places.map(|at| record[at].parse().unwrap_or(f64::NAN))
        })
        .collect()
}

impl Iso965 {
    pub fn read() -> Self {
        let columns = ["over_mm", "up_to_mm", "pitch_mm", "grade_no", "um"];
        let by_range = grid("iso965_td2_external", columns)
            .into_iter()
            .filter(|row| row[3] == 6.0)
            .map(|[over, up_to, pitch, _, pitch_diameter]| RangeRow {
                over,
                up_to,
                pitch,
                pitch_diameter,
            })
            .collect();
        let crests = grid("iso965_td", ["pitch_mm", "grade_no", "um"]);
        let by_pitch = grid("iso965_deviation", ["pitch_mm", "g"])
            .into_iter()
            .map(|[pitch, g]| PitchRow {
                pitch,
                major: crests
                    .iter()
                    .find(|row| row[0] == pitch && row[1] == 6.0)
                    .map_or(f64::NAN, |row| row[2]),
                g,
            })
            .collect();
        Self { by_range, by_pitch }
    }

    /// Limits of an external thread in 6g.
    pub fn bolt_6g(&self, size: f64, pitch: f64) -> Option<Limits> {
        let of_range = |row: &&RangeRow| row.pitch == pitch && size > row.over && size <= row.up_to;
        let tolerance = self.by_range.iter().find(of_range)?.pitch_diameter;
        let of_pitch = self.by_pitch.iter().find(|row| row.pitch == pitch)?;
        // Whole micrometres, as ISO 724 prints basic diameters.
        let basic = |share: f64| (size * 1e3 - share * pitch).round() + of_pitch.g;
        let (major, middle, minor) = (
            basic(0.0),
            basic(649.519_052_838_329),
            basic(1_082.531_754_730_548),
        );
        let root = (middle - tolerance - 616.025 * pitch).round();
        let mm = |low: f64, high: f64| (low / 1e3, high / 1e3);
        Some(Limits {
            major: mm(major - of_pitch.major, major),
            pitch_diameter: mm(middle - tolerance, middle),
            minor: mm(root, minor),
        })
    }
}
