//! The fit room's formulas and tables as a program without the crate would carry them: bare `f64`, nothing checked on the
//! way, no unit in a type, no refusal with its reason, no grade and no source. Each gives the same numbers; `fit.rs` asserts
//! it before anything is timed.

/// Sizes in metres, moduli in pascals.
pub struct Joint {
    pub d: f64,
    pub di: f64,
    pub outside: f64,
    pub hub: (f64, f64),
    pub shaft: (f64, f64),
}

/// The joint of the benches: a bearing ring of 42 mm in a shell of 46 mm outside, steel in aluminium (invented sizes).
pub const JOINT: Joint = Joint {
    d: 0.042,
    di: 0.0396,
    outside: 0.046,
    hub: (68.9e9, 0.33),
    shaft: (206e9, 0.3),
};

/// Stresses in pascals, as `framegauge::fit::Stresses` lists them.
pub struct Stresses {
    pub pressure: f64,
    pub hub_bore_hoop: f64,
    pub hub_bore_von_mises: f64,
    pub hub_outside_hoop: f64,
    pub shaft_outside_hoop: f64,
    pub shaft_outside_von_mises: f64,
    pub shaft_bore_hoop: Option<f64>,
}

impl Joint {
    /// Lamé, one division.
    pub fn pressure(&self, delta: f64) -> f64 {
        let (dd, ii, oo) = (
            self.d * self.d,
            self.di * self.di,
            self.outside * self.outside,
        );
        let (wall_h, wall_s) = (oo - dd, dd - ii);
        let hub_term = oo + dd + self.hub.1 * wall_h;
        let shaft_term = dd + ii - self.shaft.1 * wall_s;
        let (stiff_h, stiff_s) = (wall_h * self.hub.0, wall_s * self.shaft.0);
        delta * stiff_h * stiff_s / (self.d * (hub_term * stiff_s + shaft_term * stiff_h))
    }

    /// Lamé as textbooks print it, six divisions.
    pub fn pressure_as_printed(&self, delta: f64) -> f64 {
        let (d, di, outside) = (self.d, self.di, self.outside);
        let ch = (outside * outside + d * d) / (outside * outside - d * d);
        let cs = (d * d + di * di) / (d * d - di * di);
        delta / d / ((ch + self.hub.1) / self.hub.0 + (cs - self.shaft.1) / self.shaft.0)
    }

    pub fn stresses(&self, delta: f64) -> Stresses {
        let p = self.pressure(delta);
        let (dd, ii, oo) = (
            self.d * self.d,
            self.di * self.di,
            self.outside * self.outside,
        );
        let von_mises = |hoop: f64| (hoop * hoop + hoop * p + p * p).sqrt();
        let hub_bore = p * (oo + dd) / (oo - dd);
        let shaft_outside = -p * (dd + ii) / (dd - ii);
        Stresses {
            pressure: p,
            hub_bore_hoop: hub_bore,
            hub_bore_von_mises: von_mises(hub_bore),
            hub_outside_hoop: 2.0 * p * dd / (oo - dd),
            shaft_outside_hoop: shaft_outside,
            shaft_outside_von_mises: von_mises(shaft_outside),
            shaft_bore_hoop: (ii > 0.0).then(|| -2.0 * p * dd / (dd - ii)),
        }
    }
}

/// One grid of `data/grids` as it lies on disk: a row for each range of sizes, cells in micrometres.
pub struct Grid {
    columns: Vec<String>,
    rows: Vec<Row>,
}

struct Row {
    up_to_mm: f64,
    cells: Vec<Option<f64>>,
}

impl Grid {
    pub fn read(name: &str) -> Self {
        let path = format!("{}/data/grids/{name}.csv", env!("CARGO_MANIFEST_DIR"));
        let mut reader = csv::Reader::from_path(path).unwrap();
        let columns = reader.headers().unwrap().iter().map(String::from).collect();
        let row = |record: csv::StringRecord| Row {
            up_to_mm: record[1].parse().unwrap(),
            cells: record.iter().map(|cell| cell.parse().ok()).collect(),
        };
        let rows = reader
            .records()
            .map(|record| row(record.unwrap()))
            .collect();
        Self { columns, rows }
    }

    /// The place of a column that the grid must have.
    fn column(&self, name: &str) -> usize {
        self.columns.iter().position(|c| c == name).unwrap()
    }

    fn row(&self, size: f64) -> Option<&Row> {
        self.rows.iter().find(|row| size <= row.up_to_mm)
    }
}

/// The three grids of ISO 286, read once.
pub struct Iso286 {
    it: Grid,
    hole: Grid,
    shaft: Grid,
}

/// A class whose columns are looked up already, as `FitClass` is read already.
#[derive(Clone, Copy)]
pub struct Class {
    hole: bool,
    grade: usize,
    rule: Rule,
}

#[derive(Clone, Copy)]
enum Rule {
    Symmetric,
    Upper(usize, Option<usize>),
    Lower(usize),
}

impl Iso286 {
    pub fn read() -> Self {
        let [it, hole, shaft] = ["iso286_it", "iso286_hole", "iso286_shaft"].map(Grid::read);
        Self { it, hole, shaft }
    }

    /// The classes of the benches; others would need more of the rules of ISO 286-1.
    pub fn class(&self, name: &str) -> Class {
        let letters = name.trim_end_matches(char::is_numeric);
        let grade = &name[letters.len()..];
        let delta = || Some(self.hole.column(&format!("delta_IT{grade}_um")));
        let upper = |column: &str, delta| Rule::Upper(self.hole.column(column), delta);
        let rule = match letters {
            "js" => Rule::Symmetric,
            "N" => upper("N_upto_IT8_ES_before_delta_um", delta()),
            "K" => upper("K_upto_IT8_ES_before_delta_um", delta()),
            "P" => upper("P_ES_base_um", delta()),
            "F" | "H" => Rule::Lower(self.hole.column(&format!("{letters}_EI_um"))),
            "g" | "h" => Rule::Upper(self.shaft.column(&format!("{letters}_es_um")), None),
            "k" => Rule::Lower(self.shaft.column("k_IT4to7_ei_um")),
            "zc" => Rule::Lower(self.shaft.column("zc_ei_um")),
            other => panic!("no rule for {other}"),
        };
        Class {
            hole: letters.starts_with(char::is_uppercase),
            grade: self.it.column(&format!("IT{grade}")),
            rule,
        }
    }

    /// Upper and lower deviation in micrometres.
    pub fn limits(&self, size: f64, class: Class) -> Option<(f64, f64)> {
        let tolerance = (*self.it.row(size)?.cells.get(class.grade)?)?;
        let grid = if class.hole { &self.hole } else { &self.shaft };
        let cell = |column: usize| *grid.row(size)?.cells.get(column)?;
        Some(match class.rule {
            Rule::Symmetric => (tolerance / 2.0, -tolerance / 2.0),
            Rule::Upper(column, delta) => {
                let upper = cell(column)? + delta.map_or(Some(0.0), cell)?;
                (upper, upper - tolerance)
            }
            Rule::Lower(column) => {
                let lower = cell(column)?;
                (lower + tolerance, lower)
            }
        })
    }
}

/// A member of a fit in millimetres: the limits, and perhaps one reading with its standard uncertainty.
#[derive(Clone, Copy)]
pub struct Member {
    pub limits: (f64, f64),
    pub read: Option<(f64, f64)>,
}

/// Clearances with their standard uncertainty, whether it always goes in by hand or always presses, and for each member
/// whether it is shown within (true) or out (false) at 95 %.
pub struct Fit {
    pub tightest: (f64, f64),
    pub loosest: (f64, f64),
    pub mean: (f64, f64),
    pub clearance: bool,
    pub interference: bool,
    pub hole: Option<bool>,
    pub shaft: Option<bool>,
}

impl Member {
    fn sizes(&self) -> [(f64, f64); 3] {
        match self.read {
            Some(reading) => [reading; 3],
            None => {
                let (low, high) = self.limits;
                [(low, 0.0), (high, 0.0), ((low + high) / 2.0, 0.0)]
            }
        }
    }

    fn shown(&self) -> Option<bool> {
        let (value, u) = self.read?;
        let phi = |z: f64| 0.5 * libm::erfc(-z * std::f64::consts::FRAC_1_SQRT_2);
        let below = phi((self.limits.0 - value) / u);
        let above = phi((value - self.limits.1) / u);
        if 1.0 - below - above >= 0.95 {
            Some(true)
        } else {
            (below.max(above) >= 0.95).then_some(false)
        }
    }
}

/// The fit of a shaft in a hole.
pub fn fit(hole: &Member, shaft: &Member) -> Fit {
    let ([smallest, largest, mean], [thinnest, thickest, middle]) = (hole.sizes(), shaft.sizes());
    let less = |a: (f64, f64), b: (f64, f64)| (a.0 - b.0, a.1.hypot(b.1));
    let (tightest, loosest) = (less(smallest, thickest), less(largest, thinnest));
    Fit {
        tightest,
        loosest,
        mean: less(mean, middle),
        clearance: tightest.0 >= 0.0,
        interference: loosest.0 <= 0.0,
        hole: hole.shown(),
        shaft: shaft.shown(),
    }
}
