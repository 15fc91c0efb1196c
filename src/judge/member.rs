//! A member of a fit: what was read of it, and what its maker or a standard allows it to be.

use alloc::vec::Vec;

use crate::fit::{Member, Part, RingClass, SizeClass, SizeReading};
use crate::measure::{Limits, Placed, Reading, Surface};
use crate::quantity::Length;
use crate::read::{Inside, form, missing};
use crate::{Error, ErrorKind};

form! {
    /// A member of a fit: readings, and at most one of a class, a bearing ring and limits.
    ///
    /// ```
    /// use framegauge::judge::MemberOf;
    /// let bore = MemberOf { class: Some("42 N7".parse().unwrap()), ..MemberOf::read("41.975 +/- 0.004 mm".parse().unwrap()) };
    /// assert_eq!(bore.readings.len(), 1);
    /// ```
    #[derive(Default)]
    MemberOf {
        /// Diameters as measured.
        readings: Vec<Placed> => Inside,
        /// Its size with its ISO 286 class.
        class: Option<SizeClass>,
        /// Nominal diameter of a bearing ring: a shaft is the outside of an outer ring, a hole the bore of an inner one.
        ring: Option<Length>,
        /// Class of that ring; `Normal` unless stated.
        ring_class: Option<RingClass>,
        /// Its maker's limits of size.
        limits: Option<Limits>,
        /// The nominal size that it is sold or drawn as.
        nominal: Option<Length>,
    }
}

/// Diameters with their places, as the fit math takes them.
///
/// # Errors
/// Those of a direction or depth that is none.
pub(crate) fn sizes(readings: &[Placed]) -> Result<Vec<SizeReading>, Error> {
    let size = |placed: &Placed| {
        let size = SizeReading::new(placed.reading);
        let size = placed.angle.map_or(Ok(size), |angle| size.across(angle))?;
        placed.depth.map_or(Ok(size), |depth| size.at_depth(depth))
    };
    readings.iter().map(size).collect()
}

impl MemberOf {
    /// A member of which one diameter was read.
    #[must_use]
    pub fn read(reading: Reading) -> Self {
        Self::placed([reading.into()])
    }

    /// A member of which these diameters were read.
    ///
    /// ```
    /// use framegauge::judge::MemberOf;
    /// let bore = MemberOf::placed(["0 deg: 27.24 +/- 0.02 mm".parse().unwrap(), "90 deg: 27.22 +/- 0.02 mm".parse().unwrap()]);
    /// assert_eq!(bore.readings.len(), 2);
    /// ```
    #[must_use]
    pub fn placed(readings: impl Into<Vec<Placed>>) -> Self {
        Self {
            readings: readings.into(),
            ..Self::default()
        }
    }

    /// A member that its maker's limits describe.
    #[must_use]
    pub fn within(limits: Limits) -> Self {
        Self {
            limits: Some(limits),
            ..Self::default()
        }
    }

    /// Whether any of its readings lies over paint.
    pub(crate) fn over_paint(&self) -> bool {
        let mut surfaces = self.readings.iter().map(|p| p.surface);
        surfaces.any(|s| s == Surface::OverPaint)
    }

    /// Whether anything states limits of its size.
    pub(crate) fn says_limits(&self) -> bool {
        self.class.is_some() || self.ring.is_some() || self.limits.is_some()
    }

    /// Whether nothing was said of it.
    pub(crate) fn is_empty(&self) -> bool {
        self.readings.is_empty() && !self.says_limits()
    }

    /// The member as the fit math takes it. Fields of errors are those of this form.
    pub(crate) fn member<P: Part>(&self) -> Result<Member<P>, Error> {
        one_of(&[
            ("class", self.class.is_some()),
            ("ring", self.ring.is_some()),
            ("limits", self.limits.is_some()),
        ])?;
        if self.ring_class.is_some() && self.ring.is_none() {
            return Err(missing("ring"));
        }
        let of = |field: &'static str| move |e: Error| e.named(field);
        let sizes = sizes(&self.readings).map_err(of("readings"))?;
        let stated = match (self.class, self.ring, self.limits) {
            (Some(class), ..) => {
                Some(Member::of_class(class.nominal(), class.class()).map_err(of("class"))?)
            }
            (_, Some(ring), _) => {
                let class = self.ring_class.unwrap_or(RingClass::Normal);
                Some(Member::of_ring(ring, class).map_err(of("ring"))?)
            }
            (.., Some(limits)) => Some(Member::of_limits(limits).map_err(of("limits"))?),
            _ => None,
        };
        let member = match stated {
            Some(member) if sizes.is_empty() => member,
            Some(member) => member.measured(&sizes).map_err(of("readings"))?,
            None => Member::measured_only(&sizes).map_err(of("readings"))?,
        };
        match self.nominal {
            Some(nominal) => member.with_nominal(nominal).map_err(of("nominal")),
            None => Ok(member),
        }
    }
}

/// At most one of these fields may state a size or its limits.
///
/// # Errors
/// `Contradiction` where two do.
pub(super) fn one_of(stated: &[(&'static str, bool)]) -> Result<(), Error> {
    let mut given = stated.iter().filter(|(_, is)| *is).map(|(name, _)| *name);
    let (Some(first), Some(second)) = (given.next(), given.next()) else {
        return Ok(());
    };
    Err(Error::new(
        ErrorKind::Contradiction,
        second,
        "",
        alloc::format!("`{first}` states it already"),
        "state one of them",
    ))
}
