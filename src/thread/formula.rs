//! ISO 965-1 by its formulas, for the sizes that its tables leave out. The formulas miss 89 cells of the tables, so they
//! never replace them.

use super::iso965::{Missing, Route, Tolerances, by_pitch, cell, deviation, edges_of};
use super::{IsoClass, Member, Position};

/// The R40 series over one decade, times 100 (ISO 3).
const DECADE: [u16; 40] = [
    100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280,
    300, 315, 335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850,
    900, 950,
];

/// The R40 number at an index (0 is 10 µm), in whole micrometres. The tables round halves to even (26.5 to 26, 47.5 to 48).
fn r40_at(index: i32) -> Option<i32> {
    let entry = i32::from(*DECADE.get(usize::try_from(index.rem_euclid(40)).ok()?)?);
    match index.div_euclid(40) {
        0 => {
            let (tens, rest) = (entry / 10, entry % 10);
            Some(tens + i32::from(rest > 5 || (rest == 5 && tens % 2 == 1)))
        }
        1 => Some(entry),
        2 => Some(entry * 10),
        _ => None,
    }
}

/// Index of the R40 number nearest to a value in micrometres; the lower one on a tie.
fn nearest_r40(um: f64) -> Option<i32> {
    let (mut low, mut high) = (0, 119);
    while high - low > 1 {
        let middle = (low + high) / 2;
        if f64::from(r40_at(middle)?) < um {
            low = middle;
        } else {
            high = middle;
        }
    }
    let off = |at: i32| r40_at(at).map(|v| libm::fabs(f64::from(v) - um));
    Some(if off(high)? < off(low)? { high } else { low })
}

/// Steps in R40 and multiplier of a grade against grade 6: of a screw's pitch diameter (base Td2 grade 6), of a hole's
/// pitch diameter (same base), and of crests.
fn steps(grade: u8, hole_pitch_diameter: bool) -> (i32, f64) {
    let (steps, factor) = match grade {
        3 => (-12, 0.5),
        4 => (-8, 0.63),
        5 => (-4, 0.8),
        7 => (4, 1.25),
        8 => (8, 1.6),
        9 => (12, 2.0),
        _ => (0, 1.0),
    };
    if !hole_pitch_diameter {
        return (steps, factor);
    }
    let factor = match grade {
        4 => 0.85,
        5 => 1.06,
        7 => 1.7,
        8 => 2.12,
        _ => 1.32,
    };
    (steps + 5, factor)
}

/// Tolerances by the formulas of ISO 965-1 (clause 13 as read in three implementations): pitch and diameter in millimetres.
#[inline(never)]
pub(super) fn by_formula(major_um: u32, p: f64, class: IsoClass) -> Result<Tolerances, Missing> {
    let (low, high) = edges_of(major_um).ok_or(Missing::Diameter)?;
    let middle = libm::sqrt(f64::from(low) * f64::from(high)) / 1e3;
    let internal = class.member() == Member::Internal;
    let td2 = 90.0 * libm::pow(p, 0.4) * libm::pow(middle, 0.1);
    let base = nearest_r40(td2).ok_or(Missing::Grade)?;
    let (shift, factor) = steps(class.pitch_grade(), internal);
    let by_steps = r40_at(base + shift).ok_or(Missing::Grade)?;
    let alone = nearest_r40(td2 * factor)
        .and_then(r40_at)
        .ok_or(Missing::Grade)?;
    let crest6 = match (internal, p < 1.0) {
        (true, true) => 433.0 * p - 190.0 * libm::pow(p, 1.22),
        (true, false) => 230.0 * libm::pow(p, 0.7),
        (false, _) => 180.0 * libm::cbrt(p * p) - 3.15 / libm::sqrt(p),
    };
    let crest = nearest_r40(crest6)
        .and_then(|base| r40_at(base + steps(class.crest_grade(), false).0))
        .ok_or(Missing::Grade)?;
    let lift = match class.position() {
        Position::InternalH | Position::ExternalH => 0.0,
        Position::InternalG | Position::ExternalG => 15.0 + 11.0 * p,
        Position::ExternalE if p > 0.45 => 50.0 + 11.0 * p,
        Position::ExternalF if p > 0.3 => 30.0 + 11.0 * p,
        Position::ExternalE | Position::ExternalF => return Err(Missing::Position),
    };
    #[expect(
        clippy::cast_possible_truncation,
        reason = "far below i32::MAX for any pitch"
    )]
    let deviation = libm::round(lift) as i32;
    Ok(Tolerances {
        deviation,
        pitch_diameter: by_steps,
        pitch_diameter_by_formula: Some(alone),
        crest,
        route: Route::Formula,
    })
}

/// As [`by_formula`] for a pitch of the tables whose crest tolerances and deviations are tabulated.
#[inline(never)]
pub(super) fn beyond_range(
    major_um: u32,
    pitch_um: u16,
    class: IsoClass,
) -> Result<Tolerances, Missing> {
    let of_pitch = by_pitch(pitch_um).ok_or(Missing::Pitch)?;
    let formula = by_formula(major_um, f64::from(pitch_um) / 1e3, class)?;
    let crest = match class.member() {
        Member::Internal => cell(&of_pitch.minor, class.crest_grade(), 4),
        Member::External => cell(&of_pitch.major, class.crest_grade() / 2, 2),
    };
    Ok(Tolerances {
        deviation: deviation(of_pitch, class.position()).ok_or(Missing::Position)?,
        crest: i32::from(crest.ok_or(Missing::Grade)?),
        ..formula
    })
}

#[cfg(test)]
mod tests {
    use super::{nearest_r40, r40_at};
    use crate::thread::tables::iso965::{EDGES, PITCHES, RANGES};

    /// Index in R40 of a value as the tables write it.
    fn index_of(um: u16) -> Option<i32> {
        (0..120).find(|i| r40_at(*i) == Some(i32::from(um)))
    }

    /// The inner rule of the tables: within a row every grade is a whole number of R40 steps
    /// from grade 6, TD2 included, with one exception (Td at P = 8, grade 8).
    #[test]
    fn rows_step_in_r40() {
        let mut held = 0;
        let mut without_base = 0;
        let mut broken = alloc::vec::Vec::new();
        let mut check = |base: u16, cell: u16, steps: i32| {
            if base == 0 || cell == 0 {
                without_base += i32::from(cell != 0);
                return;
            }
            if index_of(base)
                .zip(index_of(cell))
                .is_some_and(|(b, c)| c - b == steps)
            {
                held += 1;
            } else {
                broken.push((base, cell, steps));
            }
        };
        for row in &RANGES {
            let base = row.external[3];
            for (cell, steps) in row.external.iter().zip([-12, -8, -4, 0, 4, 8, 12]) {
                check(base, *cell, steps);
            }
            for (cell, steps) in row.internal.iter().zip([-3, 1, 5, 9, 13]) {
                check(base, *cell, steps);
            }
        }
        for row in &PITCHES {
            for (cell, steps) in row.minor.iter().zip([-8, -4, 0, 4, 8]) {
                check(row.minor[2], *cell, steps);
            }
            for (cell, steps) in row.major.iter().zip([-8, 0, 8]) {
                check(row.major[1], *cell, steps);
            }
        }
        assert_eq!(
            broken,
            [(710, 1180, 8)],
            "only Td(P = 8, grade 8) breaks the rule"
        );
        // All 672 cells are accounted for.
        assert_eq!((held, without_base), (668, 3));
    }

    /// Grade 6 equals the nearest R40 number of the formula but for eight cells that are known and listed here.
    #[test]
    fn grade_6_is_the_formula_but_for_eight_cells() {
        let mut off = alloc::vec::Vec::new();
        let nearest = |um: f64| nearest_r40(um).and_then(r40_at).unwrap_or(0);
        for row in &PITCHES {
            let p = f64::from(row.pitch) / 1e3;
            let minor = if row.pitch < 1000 {
                433.0 * p - 190.0 * libm::pow(p, 1.22)
            } else {
                230.0 * libm::pow(p, 0.7)
            };
            let major = 180.0 * libm::pow(p, 2.0 / 3.0) - 3.15 / libm::sqrt(p);
            for (cell, formula) in [(row.minor[2], minor), (row.major[1], major)] {
                if cell != 0 && nearest(formula) != i32::from(cell) {
                    off.push((row.pitch, cell));
                }
            }
        }
        for row in &RANGES {
            let edges = EDGES;
            let at = usize::from(row.range);
            let middle = libm::sqrt(f64::from(edges[at]) * f64::from(edges[at + 1])) / 1e3;
            let formula =
                90.0 * libm::pow(f64::from(row.pitch) / 1e3, 0.4) * libm::pow(middle, 0.1);
            if row.external[3] != 0 && nearest(formula) != i32::from(row.external[3]) {
                off.push((row.pitch, row.external[3]));
            }
        }
        assert_eq!(
            off,
            [
                (500, 140),
                (1000, 236),
                (2500, 450),
                (4000, 475),
                (500, 75),
                (5000, 250),
                (3000, 250),
                (4000, 280)
            ]
        );
    }

    #[test]
    fn nearest_is_nearest() {
        // Between two numbers of the series the lower one: 109 lies between 106 and 112.
        assert_eq!(nearest_r40(109.0).and_then(r40_at), Some(106));
        let all: alloc::vec::Vec<i32> = (0..120).filter_map(r40_at).collect();
        assert_eq!(all.len(), 120);
        // Below 24 um whole micrometres are coarser than the series.
        assert!(all.windows(2).all(|pair| pair[0] < pair[1] || pair[0] < 24));
        for tenth in 105..95_000 {
            let um = f64::from(tenth) / 10.0;
            let found = nearest_r40(um).and_then(r40_at).unwrap_or(0);
            let best = all
                .iter()
                .map(|v| libm::fabs(f64::from(*v) - um))
                .fold(f64::INFINITY, libm::fmin);
            assert!(libm::fabs(f64::from(found) - um) <= best, "{um}: {found}");
        }
    }
}
