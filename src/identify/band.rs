//! The band of sizes that a row allows a feature: printed limits as they stand, bare nominals with an assumed spread.

use super::entry::Entry;
use super::kind::Kind;
use super::{Assumptions, Feature, Options};
use crate::evidence::{Figure, Grade};
use crate::quantity::{Length, deg, to_mm};
use crate::standard::{CrownSeat, Row, Steerer};

/// What a row says of a feature. Millimetres, or degrees for the seat angle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Band {
    /// The row has no such feature: observing it rules the row out.
    Absent,
    /// The row has it, or may have it, and no figure is published.
    Unknown,
    /// Sizes from `low` to `high`; `slack` widens them downwards and upwards for worn threads whose pitch is unread.
    Sizes {
        low: f64,
        high: f64,
        slack: (f64, f64),
        assumed: bool,
        grade: Grade,
    },
}

/// What the bands of one question depend on.
#[derive(Debug, Clone, Copy)]
pub(super) struct Ground<'a> {
    pub kind: Kind,
    pub options: &'a Options<'a>,
    /// Whether the pitch was read: without it a thread diameter is worth less.
    pub pitch_read: bool,
    /// Whether the tube still has to be reamed.
    pub unfinished: bool,
}

/// A figure of size with a spread round a bare nominal. One-sided figures name no size and count as unknown.
fn sized(figure: Option<&Figure>, below: f64, above: f64) -> Band {
    let Some(figure) = figure else {
        return Band::Unknown;
    };
    let grade = figure.grade().unwrap_or(Grade::Shop);
    match (figure.lower(), figure.upper(), figure.nominal()) {
        (Some(low), Some(high), _) => Band::Sizes {
            low: to_mm(low),
            high: to_mm(high),
            slack: (0.0, 0.0),
            assumed: false,
            grade,
        },
        (_, _, Some(nominal)) => Band::Sizes {
            low: to_mm(nominal) - below,
            high: to_mm(nominal) + above,
            slack: (0.0, 0.0),
            assumed: true,
            grade,
        },
        _ => Band::Unknown,
    }
}

fn about(figure: Option<&Figure>, spread: Length) -> Band {
    sized(figure, to_mm(spread), to_mm(spread))
}

/// The same, reaching out to published values that disagree by no more than `reach`.
fn with_dissent(figure: Option<&Figure>, spread: Length, reach: f64) -> Band {
    let band = about(figure, spread);
    let (
        Some(figure),
        Band::Sizes {
            low,
            high,
            slack,
            assumed: true,
            grade,
        },
    ) = (figure, band)
    else {
        return band;
    };
    let centre = f64::midpoint(low, high);
    let (mut low, mut high) = (low, high);
    for voice in figure.dissent() {
        if let Some(value) = voice.value.nominal.map(to_mm)
            && libm::fabs(value - centre) <= reach
        {
            low = libm::fmin(low, value - to_mm(spread));
            high = libm::fmax(high, value + to_mm(spread));
        }
    }
    Band::Sizes {
        low,
        high,
        slack,
        assumed: true,
        grade,
    }
}

impl Ground<'_> {
    /// The same ground for another kind of place.
    pub const fn of(&self, kind: Kind) -> Self {
        Self { kind, ..*self }
    }

    pub(super) fn assume(&self) -> &Assumptions {
        &self.options.assumptions
    }

    pub(super) fn slack(&self) -> f64 {
        if self.pitch_read {
            0.0
        } else {
            to_mm(self.assume().unread_pitch)
        }
    }

    /// The band of a row for a feature, in one of the row's variants.
    pub fn band(&self, entry: Entry<'_>, feature: Feature, variant: usize) -> Band {
        let a = self.assume();
        match feature {
            Feature::Pitch => return self.pitch(entry, variant),
            Feature::MinorDiameter => return self.minor(entry, variant),
            Feature::CrestDiameter => return self.crest(entry, variant),
            _ => {}
        }
        match (entry, feature) {
            (Entry::Shell(row), Feature::Bore) => {
                if row.thread.is_some() {
                    self.minor(entry, variant)
                } else {
                    with_dissent(row.bore.as_ref(), a.press_bore, 0.3)
                }
            }
            (Entry::Shell(row), Feature::Width) => about(row.widths.get(variant), a.shell_width),
            (Entry::Shell(row), Feature::HalfWidthDrive | Feature::HalfWidthNonDrive) => {
                let halves = entry
                    .width(variant)
                    .and_then(|w| row.half_widths.iter().find(|h| h.width == w));
                about(
                    halves.map(|h| {
                        if feature == Feature::HalfWidthDrive {
                            &h.drive
                        } else {
                            &h.non_drive
                        }
                    }),
                    a.half_width,
                )
            }
            (Entry::Shell(_) | Entry::Thread(_) | Entry::Size(_), Feature::OutsideDiameter) => {
                self.crest(entry, variant)
            }
            (Entry::Thread(_) | Entry::Size(_), Feature::Bore) => self.minor(entry, variant),
            (Entry::Head(row), Feature::Bore) => {
                let band = about(Some(&row.bore), a.press_bore);
                match band {
                    Band::Sizes {
                        low,
                        high,
                        slack,
                        grade,
                        ..
                    } if self.unfinished => Band::Sizes {
                        low: low - to_mm(a.reaming_stock),
                        high,
                        slack,
                        assumed: true,
                        grade,
                    },
                    other => other,
                }
            }
            (Entry::Head(row), Feature::PartOutside) => with_dissent(
                row.bearing_outside.as_ref().or(row.cup.as_ref()),
                a.part_outside,
                0.3,
            ),
            (Entry::Head(row), Feature::SeatAngle) => {
                let spread = a.seat_angle.value / deg(1.0).value;
                match row.seat_angle.as_ref().map(|f| (f.nominal(), f.grade())) {
                    Some((Some(angle), grade)) => {
                        let angle = angle.value / deg(1.0).value;
                        Band::Sizes {
                            low: angle - spread,
                            high: angle + spread,
                            slack: (0.0, 0.0),
                            assumed: true,
                            grade: grade.unwrap_or(Grade::Shop),
                        }
                    }
                    _ => Band::Unknown,
                }
            }
            (Entry::Crown(row), Feature::OutsideDiameter | Feature::SeatDiameter) => {
                about(Some(&row.seat), a.crown_seat)
            }
            (Entry::Steerer(row), Feature::OutsideDiameter) => {
                if row.thread.is_some() {
                    self.crest(entry, variant)
                } else {
                    about(Some(&row.upper_diameter), a.steerer)
                }
            }
            (Entry::Steerer(row), Feature::LowerDiameter) => match &row.lower_diameter {
                Some(lower) => about(Some(lower), a.steerer),
                // A straight steerer may carry a shoulder up to its crown seat.
                None => up_to(
                    about(Some(&row.upper_diameter), a.steerer),
                    about(seat_of(row, variant), a.crown_seat),
                ),
            },
            (Entry::Steerer(row), Feature::Bore) => {
                about(row.inside_diameter.as_ref(), a.steerer_bore)
            }
            (Entry::Steerer(row), Feature::SeatDiameter) => {
                about(seat_of(row, variant), a.crown_seat)
            }
            (Entry::Post(row), Feature::Bore) if self.kind == Kind::SeatTube => {
                about(Some(&row.diameter), a.seat_tube)
            }
            (Entry::Post(row), Feature::OutsideDiameter) if self.kind == Kind::Seatpost => {
                about(Some(&row.diameter), a.seatpost)
            }
            (Entry::Mount(row), Feature::BoltSpacing) => {
                with_dissent(spacing_of(row), a.bolt_spacing, 1.0)
            }
            (Entry::Mount(row), Feature::PlaneHeight) => {
                about(row.plane_height.as_ref(), a.mount_position)
            }
            (Entry::Mount(row), Feature::FirstBolt) => {
                about(row.first_bolt.as_ref(), a.mount_position)
            }
            (Entry::Axle(row), Feature::InnerFaces) => about(row.inner_faces.as_ref(), a.dropout),
            (Entry::Axle(row), Feature::OverLocknut) => about(Some(&row.over_locknut), a.hub_width),
            (Entry::Axle(row), Feature::Slot) => match &row.slot {
                Some(slot) => about(Some(slot), a.slot),
                None => Band::Absent,
            },
            (Entry::Axle(row), Feature::OutsideDiameter) => {
                about(row.axle_diameter.as_ref(), a.slot)
            }
            _ => Band::Unknown,
        }
    }
}

/// The first band, reaching up to the end of the second.
fn up_to(first: Band, second: Band) -> Band {
    match (first, second) {
        (
            Band::Sizes {
                low,
                high,
                slack,
                assumed,
                grade,
            },
            Band::Sizes {
                high: end,
                grade: other,
                ..
            },
        ) => Band::Sizes {
            low,
            high: libm::fmax(high, end),
            slack,
            assumed,
            grade: grade.weaker(other),
        },
        (first, _) => first,
    }
}

/// The crown seat that a variant of a steerer is met with.
fn seat_of(row: &Steerer, variant: usize) -> Option<&'static Figure> {
    let code = row.crown_seat.get(variant)?;
    CrownSeat::table()
        .iter()
        .find(|s| s.code == *code)
        .map(|s| &s.seat)
}

/// Post mounts by rotor size have the bolt spacing of the plain post mount, as their rows say.
fn spacing_of(row: &crate::standard::BrakeMount) -> Option<&Figure> {
    row.bolt_spacing.as_ref().or_else(|| {
        row.plane_height.as_ref()?;
        crate::standard::BrakeMount::table()
            .iter()
            .find(|other| other.code == super::entry::POST_MOUNT)?
            .bolt_spacing
            .as_ref()
    })
}
