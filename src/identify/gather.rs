//! Observations put in order: one size a feature, repeats combined, bias kept apart, contradictions refused.

use alloc::format;

use super::assume::{COMMON_SHARE, GAUGE_U};
use super::kind::FEATURES;
use super::kind::Kind;
use super::{Feature, Observation};
use crate::measure::{Reading, instruments, settled_cmp};
use crate::quantity::{deg, mm, to_mm};
use crate::thread::{Hand, Side};
use crate::{Error, ErrorKind};

/// A size ready to be compared. Millimetres, or degrees for the seat angle.
#[derive(Debug, Clone, Copy)]
pub(super) struct Size {
    pub feature: Feature,
    pub x: f64,
    pub u: f64,
    /// Part of `u` that all readings of the group share.
    pub bias: f64,
    /// Readings of one instrument; 0 stands alone.
    pub group: u8,
    pub count: u16,
    /// Lowest and highest reading.
    pub span: (f64, f64),
    /// Whether the readings spread beyond their uncertainties.
    pub scattered: bool,
    /// Worked out from other readings.
    pub derived: bool,
}

/// Everything observed.
#[derive(Debug)]
pub(super) struct Seen<'a> {
    sizes: [Option<Size>; FEATURES],
    /// The features that were read, in order.
    order: [Feature; FEATURES],
    count: usize,
    pub hand_drive: Option<Hand>,
    pub hand_non_drive: Option<Hand>,
    pub hand: Option<Hand>,
    pub threaded: Option<bool>,
    /// Names of the instruments, by group.
    tools: [Option<&'a str>; GROUPS],
}

const GROUPS: usize = 8;

/// Inside, outside and depth jaws belong to one caliper.
fn family(tool: &str) -> &str {
    ["_inside", "_outside", "_depth"]
        .iter()
        .find_map(|end| tool.strip_suffix(end))
        .unwrap_or(tool)
}

/// The part of a reading's uncertainty that the instrument repeats: permissible error against resolution and hand.
fn common_part(tool: &str, u: f64) -> f64 {
    let Some(known) = instruments().iter().find(|i| i.code == tool) else {
        return u * libm::sqrt(COMMON_SHARE);
    };
    let part = |figure: &Option<crate::Figure>| {
        figure
            .as_ref()
            .and_then(|f| f.nominal().or_else(|| f.upper()))
            .map_or(0.0, to_mm)
    };
    let resolution = part(&known.resolution) / libm::sqrt(12.0);
    let repeat = part(&known.repeatability);
    let own = resolution * resolution + repeat * repeat;
    libm::sqrt(libm::fmax(u * u - own, 0.0))
}

fn checked(feature: Feature, reading: &Reading) -> Result<(f64, f64), Error> {
    let (x, u) = (
        to_mm(reading.value()),
        to_mm(reading.standard_uncertainty()),
    );
    let field: &'static str = feature.into();
    if x <= 0.0 || x > 1000.0 {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            field,
            reading,
            if x <= 0.0 {
                "a size lies above 0 mm"
            } else {
                "is beyond 1000 mm, larger than any frame interface"
            },
            "measure again, and check the unit",
        ));
    }
    if u <= 0.0 {
        return Err(Error::new(
            ErrorKind::OutOfRange,
            field,
            reading,
            "a reading without uncertainty cannot be weighed",
            "state `+/- 0.05 mm`, or name the instrument",
        ));
    }
    if 2.0 * u >= x {
        return Err(Error::new(
            ErrorKind::Contradiction,
            field,
            reading,
            "the uncertainty is as large as the size",
            "use a finer instrument, or check the unit",
        ));
    }
    Ok((x, u))
}

fn set_once<T: PartialEq + Copy>(
    slot: &mut Option<T>,
    value: T,
    field: &'static str,
) -> Result<(), Error> {
    match slot {
        Some(held) if *held != value => Err(Error::new(
            ErrorKind::Contradiction,
            field,
            "",
            "observed in two ways that cannot both be true",
            "look again and state it once",
        )),
        _ => {
            *slot = Some(value);
            Ok(())
        }
    }
}

impl<'a> Seen<'a> {
    /// `place_side` is the side of a hand that is told without one.
    pub fn gather(
        kind: Kind,
        place_side: Option<Side>,
        observations: &'a [Observation],
    ) -> Result<Self, Error> {
        let mut seen = Self {
            sizes: [None; FEATURES],
            order: [Feature::Bore; FEATURES],
            count: 0,
            hand_drive: None,
            hand_non_drive: None,
            hand: None,
            threaded: None,
            tools: [None; GROUPS],
        };
        for observation in observations {
            match observation {
                Observation::Size {
                    feature,
                    reading,
                    instrument,
                } => {
                    if !feature.is_length() {
                        return Err(Error::new(
                            ErrorKind::Unit,
                            <&'static str>::from(*feature),
                            reading,
                            "is no length",
                            "give hands, threads and angles as what they are",
                        ));
                    }
                    let (x, u) = checked(*feature, reading)?;
                    seen.add(*feature, x, u, instrument.as_deref());
                }
                Observation::SeatAngle {
                    angle,
                    standard_uncertainty,
                } => {
                    let one = deg(1.0).value;
                    let (x, u) = (angle.value / one, standard_uncertainty.value / one);
                    if !(x > 0.0 && x < 90.0 && u > 0.0 && u < 45.0) {
                        return Err(Error::new(
                            ErrorKind::OutOfRange,
                            "seat_angle",
                            x,
                            "a seat angle lies between 0 and 90 degrees and has an uncertainty",
                            "measure it to the axis of the head tube",
                        ));
                    }
                    seen.add(Feature::SeatAngle, x, u, None);
                }
                Observation::Pitch(pitch) => {
                    set_once(&mut seen.threaded, true, "threaded")?;
                    seen.add(Feature::Pitch, pitch.to_mm(), GAUGE_U, None);
                }
                Observation::Hand { side, hand } => {
                    set_once(&mut seen.threaded, true, "threaded")?;
                    match side.or(place_side) {
                        Some(Side::Drive) => set_once(&mut seen.hand_drive, *hand, "hand_drive")?,
                        Some(Side::NonDrive) => {
                            set_once(&mut seen.hand_non_drive, *hand, "hand_non_drive")?;
                        }
                        None => set_once(&mut seen.hand, *hand, "hand")?,
                    }
                }
                Observation::Threaded(is) => set_once(&mut seen.threaded, *is, "threaded")?,
                Observation::Belief { .. } => {}
            }
        }
        seen.derive(kind)?;
        Ok(seen)
    }

    fn group_of(&mut self, tool: &'a str) -> u8 {
        let name = family(tool);
        for (slot, number) in self.tools.iter_mut().zip(1_u8..) {
            match slot {
                Some(held) if *held == name => return number,
                Some(_) => {}
                None => {
                    *slot = Some(name);
                    return number;
                }
            }
        }
        // More instruments than slots: the rest counts as one, which only weakens the evidence.
        u8::try_from(GROUPS).unwrap_or(u8::MAX)
    }

    fn add(&mut self, feature: Feature, x: f64, u: f64, tool: Option<&'a str>) {
        let group = tool.map_or(0, |t| self.group_of(t));
        let bias = tool.map_or(0.0, |t| libm::fmin(common_part(t, u), u));
        let new = Size {
            feature,
            x,
            u,
            bias,
            group,
            count: 1,
            span: (x, x),
            scattered: false,
            derived: false,
        };
        if let Some(slot) = self.sizes.get_mut(feature as usize) {
            *slot = Some(match slot.take() {
                None => {
                    if let Some(place) = self.order.get_mut(self.count) {
                        *place = feature;
                        self.count += 1;
                    }
                    new
                }
                Some(held) => together(&held, &new),
            });
        }
    }

    /// Readings that follow from others: a width from two half widths, a bore from outside diameter and wall.
    fn derive(&mut self, kind: Kind) -> Result<(), Error> {
        if let (Some(a), Some(b), None) = (
            self.size(Feature::HalfWidthDrive).copied(),
            self.size(Feature::HalfWidthNonDrive).copied(),
            self.size(Feature::Width),
        ) {
            self.put(Feature::Width, a.x + b.x, libm::hypot(a.u, b.u));
        }
        let tube = matches!(kind, Kind::HeadTube | Kind::SeatTube);
        if let (true, Some(out), Some(wall), None) = (
            tube,
            self.size(Feature::OutsideDiameter).copied(),
            self.size(Feature::Wall).copied(),
            self.size(Feature::Bore),
        ) {
            let bore = out.x - 2.0 * wall.x;
            if bore <= 0.0 {
                return Err(Error::new(
                    ErrorKind::Contradiction,
                    "wall",
                    format!("wall {:.3} mm, outside {:.3} mm", wall.x, out.x),
                    "two walls leave no bore inside this tube",
                    "measure both again; the wall is the thickness of one side",
                ));
            }
            self.put(Feature::Bore, bore, libm::hypot(out.u, 2.0 * wall.u));
        }
        Ok(())
    }

    fn put(&mut self, feature: Feature, x: f64, u: f64) {
        self.add(feature, x, u, None);
        if let Some(Some(size)) = self.sizes.get_mut(feature as usize) {
            size.derived = true;
        }
    }

    pub fn size(&self, feature: Feature) -> Option<&Size> {
        self.sizes.get(feature as usize)?.as_ref()
    }

    pub fn sizes(&self) -> impl Iterator<Item = &Size> {
        self.order
            .iter()
            .take(self.count)
            .filter_map(|feature| self.size(*feature))
    }

    /// Whether two sizes share an instrument, so that its bias must be counted once.
    pub fn shares_bias(&self) -> bool {
        let mut met = [false; GROUPS + 1];
        for size in self.sizes() {
            if size.group > 0
                && let Some(slot) = met.get_mut(usize::from(size.group))
            {
                if *slot {
                    return true;
                }
                *slot = true;
            }
        }
        false
    }

    /// Whether the hand was observed in any way.
    pub fn any_hand(&self) -> bool {
        self.hand
            .or(self.hand_drive)
            .or(self.hand_non_drive)
            .is_some()
    }
}

/// Two sets of readings of one feature: the mean weighted by 1/u², the shared bias kept whole, and a test of whether
/// they agree (3 standard uncertainties of the difference for two readings, 4 for more: about 1 in 400 by chance).
fn together(a: &Size, b: &Size) -> Size {
    let (wa, wb) = (1.0 / (a.u * a.u), 1.0 / (b.u * b.u));
    let x = (a.x * wa + b.x * wb) / (wa + wb);
    let span = (
        libm::fmin(a.span.0, b.span.0),
        libm::fmax(a.span.1, b.span.1),
    );
    let one_tool = a.group == b.group && a.group > 0;
    let count = a.count.saturating_add(b.count);
    let (bias, u) = if one_tool {
        let bias = libm::fmax(a.bias, b.bias);
        let own = |s: &Size| libm::fmax(s.u * s.u - s.bias * s.bias, 0.0);
        let own = (own(a) * wa * wa + own(b) * wb * wb) / ((wa + wb) * (wa + wb));
        (bias, libm::sqrt(bias * bias + own))
    } else if a.group == 0 && b.group == 0 {
        // Unnamed readings of one feature may come from one instrument: their mean is no better than the better one.
        (0.0, libm::fmin(a.u, b.u))
    } else {
        (0.0, 1.0 / libm::sqrt(wa + wb))
    };
    let factor = if count > 2 { 4.0 } else { 3.0 };
    let limit = factor * libm::hypot(a.u, b.u);
    let apart = settled_cmp(mm(span.1 - span.0), mm(limit)).is_gt();
    let scattered = a.scattered || b.scattered || apart;
    Size {
        feature: a.feature,
        x,
        u,
        bias,
        group: if one_tool { a.group } else { 0 },
        count,
        span,
        scattered,
        derived: false,
    }
}

#[cfg(test)]
mod tests {
    use super::common_part;

    /// What an instrument repeats: its standard uncertainty without a step of the display (rectangular, step / √12) and
    /// without what a dial shows on repetition. Steps and repetition of the instrument table, in µm: caliper 10 and none,
    /// so √(25² - 10²/12) = 24.8328; dial indicator 10 and 3, so √(25² - 10²/12 - 3²) = 24.6509 and, where nothing is
    /// left, none.
    #[test]
    fn what_an_instrument_repeats() {
        for (tool, u, expected) in [
            ("caliper_digital_inside", 25.0, 24.8328),
            ("dial_indicator_1", 25.0, 24.6509),
            ("dial_indicator_1", 3.0, 0.0),
            // Of an instrument that no table lists, 0.8 of the variance: √0.8 * 25.
            ("an old caliper", 25.0, 22.3607),
        ] {
            let got = 1e3 * common_part(tool, u / 1e3);
            assert!((got - expected).abs() < 1e-3, "{tool} {u}: {got}");
        }
    }
}
