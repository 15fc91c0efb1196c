//! The band of sizes that a thread allows its pitch and its crests.

use super::Assumptions;
use super::band::{Band, Ground};
use super::entry::Entry;
use crate::evidence::Grade;
use crate::quantity::to_mm;
use crate::thread::{ThreadForm, ThreadSize};

impl Ground<'_> {
    pub(super) fn pitch(&self, entry: Entry<'_>, variant: usize) -> Band {
        match (entry.thread(variant), entry.is_threaded()) {
            (Some(thread), _) => {
                let pitch = thread.pitch().to_mm();
                Band::Sizes {
                    low: pitch,
                    high: pitch,
                    slack: (0.0, 0.0),
                    assumed: false,
                    grade: thread_grade(entry, variant),
                }
            }
            (None, Some(false)) => Band::Absent,
            (None, _) => Band::Unknown,
        }
    }

    /// Inside diameter over the crests of the female thread. ISO form: basic minor diameter up to the tolerance of
    /// grade 6; others: from the basic minor diameter up to where published readings end.
    pub(super) fn minor(&self, entry: Entry<'_>, variant: usize) -> Band {
        let Some(thread) = entry.thread(variant) else {
            return if entry.is_threaded() == Some(false) {
                Band::Absent
            } else {
                Band::Unknown
            };
        };
        let (mut low, high) = minor_band(thread, self.assume());
        // Two names of one thread: where a source prints the other's minor diameter, the band reaches down to it.
        if let Entry::Shell(row) = entry
            && let Some(figure) = &row.minor_diameter
        {
            let voices = figure
                .dissent()
                .iter()
                .filter_map(|d| d.value.nominal)
                .map(to_mm);
            low = voices.filter(|v| low - v <= 0.2).fold(low, libm::fmin);
        }
        Band::Sizes {
            low,
            high,
            // Worn crests make a female thread wider.
            slack: (0.0, self.slack()),
            assumed: true,
            grade: thread_grade(entry, variant),
        }
    }

    pub(super) fn crest(&self, entry: Entry<'_>, variant: usize) -> Band {
        let Some(thread) = entry.thread(variant) else {
            return if entry.is_threaded() == Some(false) {
                Band::Absent
            } else {
                Band::Unknown
            };
        };
        let major = to_mm(thread.major());
        let low = to_mm(self.assume().crest_low) * libm::cbrt(squared(thread.pitch().to_mm()));
        Band::Sizes {
            low: major - low,
            high: major,
            // Worn crests make a male thread narrower.
            slack: (self.slack(), 0.0),
            assumed: true,
            grade: thread_grade(entry, variant),
        }
    }
}

fn squared(x: f64) -> f64 {
    x * x
}

fn minor_band(thread: &ThreadSize, a: &Assumptions) -> (f64, f64) {
    let (major, pitch) = (to_mm(thread.major()), thread.pitch().to_mm());
    let read = major - to_mm(a.minor_low) * pitch;
    match thread.form() {
        ThreadForm::IsoMetric | ThreadForm::IsoInch | ThreadForm::Unified => {
            // ISO 68-1: D1 = D - 1.082532 P. Tolerance grade 6 by the formula of ISO 965-1 (tabulated values are
            // rounded from it by up to 0.007 mm, which does not matter here).
            let basic = major - 1.082_532 * pitch;
            let tolerance = if pitch < 1.0 {
                433.0 * pitch - 190.0 * libm::pow(pitch, 1.22)
            } else {
                230.0 * libm::pow(pitch, 0.7)
            };
            (basic, basic + tolerance / 1000.0)
        }
        // Rounded 60 degree form: D - 1.0654 P (reproduces the printed minor diameters of the tables to 0.01 mm).
        ThreadForm::Bsc => (major - 1.0654 * pitch, read),
        // 55 degrees: depth 0.640327 P on each side.
        ThreadForm::Whitworth => (major - 1.280_654 * pitch, read),
        // The deepest and the shallowest of the above.
        ThreadForm::Unknown => (major - 1.082_532 * pitch, read),
    }
}

fn thread_grade(entry: Entry<'_>, variant: usize) -> Grade {
    let fact = match entry {
        Entry::Shell(row) => row.thread.as_ref(),
        Entry::Steerer(row) => row.thread.as_ref(),
        Entry::Thread(row) => Some(&row.thread),
        Entry::Mount(row) => row.bolt.as_ref(),
        Entry::Axle(row) => row.threads.get(variant),
        _ => None,
    };
    fact.and_then(crate::Fact::grade).unwrap_or(Grade::Shop)
}

#[cfg(test)]
mod tests {
    use super::minor_band;
    use crate::identify::Assumptions;
    use crate::measure::Bound;
    use crate::quantity::to_mm;
    use crate::standard::{Row, ThreadUse};
    use crate::thread::{ThreadForm, ThreadSize, limits_of_size};

    /// ISO 965-1, minor diameter of the nut in 6H: the formula meets the table of tolerances (transcribed from the
    /// standard) to 0.007 mm, below a pitch of 1 mm and from there on.
    #[test]
    fn minor_diameters_of_metric_nuts() {
        for name in [
            "M3x0.5", "M4x0.7", "M6x0.75", "M5x0.8", "M10x1", "M10x1.25", "M12x1.75",
        ] {
            let size: ThreadSize = name.parse().unwrap();
            let limits = limits_of_size(&size, &"6H".parse().unwrap()).unwrap();
            let (low, high) = minor_band(&size, &Assumptions::default());
            for (got, table) in [(low, limits.minor.lower()), (high, limits.minor.upper())] {
                let Bound::At(table) = table else {
                    panic!("{name}")
                };
                assert!((got - to_mm(table)).abs() < 0.007, "{name}: {got}");
            }
        }
    }

    /// Minor diameters of the 55 degree rows as a national table of cycle threads prints them (CSN 01 4045).
    #[test]
    fn minor_diameters_of_whitworth_threads() {
        let mut count = 0;
        for row in ThreadUse::table() {
            let (Some(thread), Some(printed)) = (row.thread.value(), &row.minor_diameter) else {
                continue;
            };
            if thread.form() == ThreadForm::Whitworth {
                let (low, high) = minor_band(thread, &Assumptions::default());
                let printed = to_mm(printed.nominal().unwrap());
                assert!((low - printed).abs() < 0.002, "{}: {low}", row.code);
                assert!(high > low, "{}: {high}", row.code);
                count += 1;
            }
        }
        assert!(count >= 4, "{count}");
    }
}
