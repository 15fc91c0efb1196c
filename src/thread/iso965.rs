//! ISO 965-1: tolerances from its tables; for the few sizes that the tables leave out, from its formulas.

use super::tables::iso965::{COARSE, EDGES, PITCH_AT, PITCHES, RANGES, ROW_AT};
use super::{IsoClass, Member, Position};

/// What the tables say by pitch alone, in micrometres; 0 stands for "not tabulated".
#[derive(Debug)]
pub(super) struct PitchRow {
    pub pitch: u16,
    g: u16,
    e: u16,
    f: u16,
    pub minor: [u16; 5],
    pub major: [u16; 3],
}

/// What the tables say by diameter range and pitch.
#[derive(Debug)]
pub(super) struct RangeRow {
    pub range: u8,
    pub pitch: u16,
    pub internal: [u16; 5],
    pub external: [u16; 7],
    short_up_to: u16,
    normal_up_to: u16,
    completed: u16,
}

pub(super) const fn pitch(
    pitch: u16,
    g: u16,
    e: u16,
    f: u16,
    minor: [u16; 5],
    major: [u16; 3],
) -> PitchRow {
    PitchRow {
        pitch,
        g,
        e,
        f,
        minor,
        major,
    }
}

pub(super) const fn range(
    range: u8,
    pitch: u16,
    internal: [u16; 5],
    external: [u16; 7],
    short_up_to: u16,
    normal_up_to: u16,
    completed: u16,
) -> RangeRow {
    RangeRow {
        range,
        pitch,
        internal,
        external,
        short_up_to,
        normal_up_to,
        completed,
    }
}

/// How a tolerance was come by.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Route {
    Table,
    Completed,
    Formula,
}

/// Deviation and tolerances of one member, in micrometres.
#[derive(Debug, Clone, Copy)]
pub(super) struct Tolerances {
    /// Fundamental deviation: from the basic profile, into the clearance.
    pub deviation: i32,
    pub pitch_diameter: i32,
    /// The same by each grade's own formula, where the tables are silent.
    pub pitch_diameter_by_formula: Option<i32>,
    pub crest: i32,
    pub route: Route,
}

/// Why no tolerance is tabulated.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Missing {
    /// The pitch is in no table.
    Pitch,
    /// The diameter lies outside all ranges.
    Diameter,
    /// The pitch is not tabulated in the diameter range.
    PitchInRange,
    /// The position has no value at this pitch.
    Position,
    /// The grade has no value at this pitch.
    Grade,
}

/// Edges of the diameter range, in micrometres.
pub(super) fn edges_of(major_um: u32) -> Option<(u32, u32)> {
    let at = range_of(major_um)?;
    Some((*EDGES.get(at)?, *EDGES.get(at + 1)?))
}

/// The diameter range: over its lower edge, up to and including its upper edge.
fn range_of(major_um: u32) -> Option<usize> {
    EDGES
        .iter()
        .filter(|edge| major_um > **edge)
        .count()
        .checked_sub(1)
}

/// The row of a pitch, and its place.
fn pitch_row(pitch_um: u16) -> Option<(usize, &'static PitchRow)> {
    let at = usize::from(*PITCH_AT.get(usize::from(pitch_um / 50))?);
    // The index is coarser than the pitch, so the row itself must agree.
    let row = PITCHES.get(at).filter(|row| row.pitch == pitch_um)?;
    Some((at, row))
}

pub(super) fn by_pitch(pitch_um: u16) -> Option<&'static PitchRow> {
    pitch_row(pitch_um).map(|(_, row)| row)
}

/// The row of a diameter range and a pitch, by the place of the pitch.
fn range_row(range: usize, place: usize, pitch_um: u16) -> Option<&'static RangeRow> {
    let at = *ROW_AT.get(range)?.get(place)?;
    RANGES
        .get(usize::from(at))
        .filter(|row| usize::from(row.range) == range && row.pitch == pitch_um)
}

pub(super) fn cell(row: &[u16], grade: u8, first: u8) -> Option<u16> {
    row.get(usize::from(grade.wrapping_sub(first)))
        .copied()
        .filter(|um| *um != 0)
}

pub(super) fn deviation(row: &PitchRow, position: Position) -> Option<i32> {
    let um = match position {
        Position::InternalH | Position::ExternalH => return Some(0),
        Position::InternalG | Position::ExternalG => row.g,
        Position::ExternalE => row.e,
        Position::ExternalF => row.f,
    };
    (um != 0).then(|| i32::from(um))
}

/// Tolerances as tabulated.
#[inline]
pub(super) fn tabulated(
    major_um: u32,
    pitch_um: u16,
    class: IsoClass,
) -> Result<Tolerances, Missing> {
    let range = range_of(major_um).ok_or(Missing::Diameter)?;
    let (at, of_pitch) = pitch_row(pitch_um).ok_or(Missing::Pitch)?;
    let of_range = range_row(range, at, pitch_um).ok_or(Missing::PitchInRange)?;
    let deviation = deviation(of_pitch, class.position()).ok_or(Missing::Position)?;
    let (pitch_diameter, crest, bit) = match class.member() {
        Member::Internal => (
            cell(&of_range.internal, class.pitch_grade(), 4),
            cell(&of_pitch.minor, class.crest_grade(), 4),
            class.pitch_grade().wrapping_sub(4),
        ),
        Member::External => (
            cell(&of_range.external, class.pitch_grade(), 3),
            cell(&of_pitch.major, class.crest_grade() / 2, 2),
            class.pitch_grade().wrapping_add(5),
        ),
    };
    let completed = of_range.completed.checked_shr(u32::from(bit)).unwrap_or(0) & 1 == 1;
    Ok(Tolerances {
        deviation,
        pitch_diameter: i32::from(pitch_diameter.ok_or(Missing::Grade)?),
        pitch_diameter_by_formula: None,
        crest: i32::from(crest.ok_or(Missing::Grade)?),
        route: if completed {
            Route::Completed
        } else {
            Route::Table
        },
    })
}

/// Lengths of engagement: S up to and N up to, in millimetres, and whether the table holds them.
pub(super) fn engagement(major_um: u32, pitch_um: Option<u16>, p: f64) -> Option<(f64, f64, bool)> {
    let at = range_of(major_um)?;
    if let Some(row) = pitch_um
        .and_then(pitch_row)
        .and_then(|(place, row)| range_row(at, place, row.pitch))
    {
        return Some((
            f64::from(row.short_up_to) / 10.0,
            f64::from(row.normal_up_to) / 10.0,
            true,
        ));
    }
    let lowest = f64::from(*EDGES.get(at)?) / 1e3;
    let scale = p * libm::pow(lowest, 0.2);
    let tenth = |value: f64| libm::round(value * 10.0) / 10.0;
    Some((tenth(2.24 * scale), tenth(6.7 * scale), false))
}

/// Coarse pitch of a nominal diameter, both in micrometres.
pub(super) fn coarse_pitch(major_um: u32) -> Option<u16> {
    let at = COARSE.binary_search_by_key(&major_um, |row| row.0).ok()?;
    COARSE.get(at).map(|row| row.1)
}

#[cfg(test)]
mod tests {
    use super::{PITCHES, RANGES, pitch_row, range_row};

    #[test]
    fn the_index_points_at_every_row() {
        for row in &RANGES {
            let (place, of_pitch) = pitch_row(row.pitch).unwrap();
            assert_eq!(of_pitch.pitch, row.pitch);
            let found = range_row(usize::from(row.range), place, row.pitch).unwrap();
            assert_eq!((found.range, found.pitch), (row.range, row.pitch));
        }
        assert_eq!(
            PITCHES
                .iter()
                .filter(|r| pitch_row(r.pitch).is_some())
                .count(),
            PITCHES.len()
        );
        for absent in [0, 199, 201, 1010, 1100, 7000, 8001, u16::MAX] {
            assert!(pitch_row(absent).is_none());
        }
    }
}
