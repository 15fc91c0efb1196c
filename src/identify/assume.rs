//! Every assumed spread of identification, in one file, each with its basis.
//!
//! A published pair of limits is always used as it stands. These figures stand in only where a table prints a bare
//! nominal; they serve to tell standards apart and are never limits that a part is judged against.

use crate::quantity::{Angle, Length, deg, mm, to_mm};
use crate::{Error, ErrorKind};

/// Half widths of the spread around a bare nominal. Change one to see what an answer hangs on.
///
/// ```
/// use framegauge::{identify::Assumptions, mm};
/// let strict = Assumptions { seat_tube: mm(0.05), ..Assumptions::default() };
/// assert!(strict.seat_tube < Assumptions::default().seat_tube);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Assumptions {
    /// Shell widths, ±0.8 mm: the widest window that a crank maker publishes (67.2 to 68.8 and 70 ± 0.8 mm, shell
    /// windows of the tables).
    pub shell_width: Length,
    /// Half widths of a shell, ±0.5 mm: half of that window and 0.1 mm for finding the middle plane (the last part
    /// from memory).
    pub half_width: Length,
    /// Press bores with a bare nominal, ±0.05 mm: the one printed window for a 46 mm bore and those of head tubes are
    /// 0.05 mm wide, and it is not known on which side of the nominal they lie.
    pub press_bore: Length,
    /// Seat tubes, ±0.10 mm: half the 0.2 mm step of the sizes, so that the bands meet and a reading midway names both.
    pub seat_tube: Length,
    /// Seatposts, ±0.10 mm: half the step, as for seat tubes.
    pub seatpost: Length,
    /// Crown-race seats, ±0.15 mm: seats measured 30.12 on a nominal 30.0 and 26.53 on 26.4.
    pub crown_seat: Length,
    /// Plain steerers, ±0.10 mm: trade sizes round the inch (28.6 for 28.575); the rest from memory.
    pub steerer: Length,
    /// Bore of a steerer, ±0.25 mm: printed as 22.3 for a 22.2 mm quill, and one was read 21.80 to 22.05 mm.
    pub steerer_bore: Length,
    /// Cups and bearings taken out of a head tube, ±0.10 mm: cups of one nominal are printed 0.1 to 0.2 mm apart.
    pub part_outside: Length,
    /// Hole spacings of brake mounts, ±0.5 mm: printed 74 and 74.2, 68 and 69; holes have play.
    pub bolt_spacing: Length,
    /// Positions of a post mount, ±1.0 mm: memory; facing moves them.
    pub mount_position: Length,
    /// Distance of dropout faces, ±1.5 mm: memory; frames spring.
    pub dropout: Length,
    /// Hub width, ±0.4 mm: memory; small enough to tell 141 from 142 mm.
    pub hub_width: Length,
    /// Slots and plain axles, ±0.3 mm: memory; paint and wear, and steps of a millimetre between sizes.
    pub slot: Length,
    /// Seat angle, ±1.5 degrees: memory; the families are 36 and 45 degrees.
    pub seat_angle: Angle,
    /// How far the crests of a male thread of 1 mm pitch lie below the nominal, 0 to 0.25 mm: "about 0.2 mm" on two
    /// published pages; scaled with P^(2/3), as the tolerance of the crest in ISO 965-1 is.
    pub crest_low: Length,
    /// How far a female thread of 1 mm pitch that is not of ISO form reads below the nominal at least: 0.75 mm,
    /// "about 0.8 mm" on a published page. The other end is the basic minor diameter.
    pub minor_low: Length,
    /// Added to a thread diameter on the worn side while the pitch is unread, 0.2 mm (memory): narrower for crests,
    /// wider for a female thread. Diameter alone cannot classify a cup: 34.7 and 34.8 mm cups overlap within caliper
    /// error.
    pub unread_pitch: Length,
    /// Most that is reamed out of an unfinished tube, 0.5 mm on diameter: upper bound of the reaming stock that a
    /// shop chart prints for 1 to 2 in (0.012 to 0.020 in).
    pub reaming_stock: Length,
}

impl Default for Assumptions {
    fn default() -> Self {
        Self {
            shell_width: mm(0.8),
            half_width: mm(0.5),
            press_bore: mm(0.05),
            seat_tube: mm(0.10),
            seatpost: mm(0.10),
            crown_seat: mm(0.15),
            steerer: mm(0.10),
            steerer_bore: mm(0.25),
            part_outside: mm(0.10),
            bolt_spacing: mm(0.5),
            mount_position: mm(1.0),
            dropout: mm(1.5),
            hub_width: mm(0.4),
            slot: mm(0.3),
            seat_angle: deg(1.5),
            crest_low: mm(0.25),
            minor_low: mm(0.75),
            unread_pitch: mm(0.2),
            reaming_stock: mm(0.5),
        }
    }
}

impl Assumptions {
    /// Spreads are lengths of a few millimetres at most, and an angle below a right one.
    pub(super) fn check(&self) -> Result<(), Error> {
        let lengths = [
            self.shell_width,
            self.half_width,
            self.press_bore,
            self.seat_tube,
            self.seatpost,
            self.crown_seat,
            self.steerer,
            self.steerer_bore,
            self.part_outside,
            self.bolt_spacing,
            self.mount_position,
            self.dropout,
            self.hub_width,
            self.slot,
            self.crest_low,
            self.minor_low,
            self.unread_pitch,
            self.reaming_stock,
        ];
        // Written so that NaN fails too.
        let absurd = lengths
            .into_iter()
            .map(to_mm)
            .find(|l| !(0.0..=MOST).contains(l));
        let angle = self.seat_angle.value / deg(1.0).value;
        let absurd = absurd.or((!(0.0..=MOST).contains(&angle)).then_some(angle));
        absurd.map_or(Ok(()), |value| {
            Err(Error::new(
                if value.is_finite() {
                    ErrorKind::OutOfRange
                } else {
                    ErrorKind::NotFinite
                },
                "assumptions",
                value,
                "an assumed spread lies between 0 and 10 mm (or degrees)",
                "start from the default and change what you know better",
            ))
        })
    }
}

/// Largest spread that could still tell two standards apart, mm or degrees.
const MOST: f64 = 10.0;

/// Standard uncertainty of a pitch-gauge leaf, mm a thread: a misfit of 0.03 mm over six threads shows (memory). It
/// makes the leaf a reading with a confusion that falls off with the difference: 24 tpi for 1 mm never, 1.27 for
/// 1.25 mm hardly.
pub(super) const GAUGE_U: f64 = 0.005;

/// Variance share of one instrument's readings that is common to all of them, where the instrument is named but not in
/// the tables: 0.8 (memory; for the digital caliper of the tables it is above 0.9).
pub(super) const COMMON_SHARE: f64 = 0.8;

/// A hand that is only remembered may be wrong this often (memory): it then lowers a share but excludes nothing.
pub(super) const REMEMBERED_HAND_WRONG: f64 = 0.2;
/// A hand read off the thread is wrong this often (memory).
pub(super) const HAND_MISREAD: f64 = 0.01;

/// How much a size that no table lists may vary, mm: the broad density of the unlisted candidate. Diameters and
/// spacings of the tables span about this much.
pub(super) const BROAD_DIAMETER: f64 = 40.0;
/// As above, widths.
pub(super) const BROAD_WIDTH: f64 = 80.0;
/// As above, pitches.
pub(super) const BROAD_PITCH: f64 = 2.0;
/// As above, degrees.
pub(super) const BROAD_ANGLE: f64 = 45.0;

/// Paint on both sides of a tube, mm on diameter, at most: 0.12 mm a side (memory), doubled and rounded up.
pub(super) const PAINT: f64 = 0.30;

/// A stamped post measured this much under its size (27.03 on 27.2).
pub(super) const POST_UNDER: f64 = 0.17;

/// Share of the ranking that a rival must keep for the exclusion to be named as what decided: 5 %.
pub(super) const RIVAL: f64 = 0.05;

/// Below this expected information a further reading is not worth taking, bit.
pub(super) const LEAST_GAIN: f64 = 0.05;
