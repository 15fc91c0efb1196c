//! Strength of threads: stress areas, shear areas, stripping, and the engagement that is needed.
//!
//! These are static sums on ductile metals. They hold no factor of safety and say nothing about fatigue, composites or a
//! cracked part: the frame and component maker's limits come first.

use super::{
    BasicDiameters, EqualStrength, Member, ShearAreas, Stripping, ThreadLimits, ThreadSize,
};
use crate::quantity::{Area, Depth, Force, Length, Pressure, ShaftDiameter, in_mm, mm, to_mm};
use crate::{Error, ErrorKind, Grade};

/// The diameters that decide how much metal shears: the thinnest screw in the widest hole.
///
/// ```
/// use framegauge::{mm, thread::{MinimumMaterial, limits_of_size}};
/// let size = "M10x1.5".parse().unwrap();
/// let screw = limits_of_size(&size, &"6g".parse().unwrap()).unwrap();
/// let hole = limits_of_size(&size, &"6H".parse().unwrap()).unwrap();
/// let pair = MinimumMaterial::of_limits(&screw, &hole).unwrap();
/// let areas = pair.shear_areas(mm(10.0), None).unwrap();
/// // 214.77 mm² and 155.80 mm² in the printed table:
/// assert!(((areas.hole / (mm(1.0) * mm(1.0))).value - 214.77).abs() < 0.05);
/// assert!(((areas.screw / (mm(1.0) * mm(1.0))).value - 155.80).abs() < 0.06);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MinimumMaterial {
    size: ThreadSize,
    screw_major: Length,
    screw_pitch_diameter: Length,
    hole_pitch_diameter: Length,
    hole_minor: Length,
    tan_half: f64,
    grade: Grade,
}

impl MinimumMaterial {
    /// From the limits of a screw and a hole of one size. Where the hole's pitch diameter was derived in two ways, the larger
    /// one counts.
    ///
    /// # Errors
    /// `Contradiction` when the sizes differ or a member is on the wrong side.
    pub fn of_limits(screw: &ThreadLimits, hole: &ThreadLimits) -> Result<Self, Error> {
        if screw.size != hole.size {
            return Err(Error::new(
                ErrorKind::Contradiction,
                "thread",
                alloc::format!("{} in {}", screw.size, hole.size),
                "screw and hole have different sizes",
                "see first whether they mate",
            ));
        }
        if (screw.member, hole.member) != (Member::External, Member::Internal) {
            return Err(Error::new(
                ErrorKind::Contradiction,
                "member",
                alloc::format!("{} and {}", screw.class, hole.class),
                "the screw comes first, the hole second",
                "e.g. limits of 6g, then of 6H",
            ));
        }
        let stated = |bound: crate::measure::Bound, what: &'static str| {
            bound.known().ok_or_else(|| {
                Error::new(
                    ErrorKind::Missing,
                    what,
                    screw.size,
                    "this limit is not known",
                    "measure the part and give its size",
                )
            })
        };
        let hole_pitch = stated(hole.pitch_diameter.upper(), "hole pitch diameter")?;
        let other = hole.other_pitch_diameter.and_then(|l| l.upper().known());
        let hole_pitch = other.map_or(hole_pitch, |other| hole_pitch.max(other));
        let pair = Self::measured(
            &screw.size,
            stated(screw.major.lower(), "screw major diameter")?,
            stated(screw.pitch_diameter.lower(), "screw pitch diameter")?,
            hole_pitch,
            stated(hole.minor.upper(), "hole minor diameter")?,
        )?;
        Ok(Self {
            grade: screw.grade().weaker(hole.grade()),
            ..pair
        })
    }

    /// From actual or assumed diameters: least major and pitch diameter of the screw, greatest pitch and minor diameter of
    /// the hole.
    ///
    /// # Errors
    /// `NotFinite` and `OutOfRange` for diameters that are none or are far from the size; `NotApplicable` for the unknown form.
    ///
    /// ```
    /// use framegauge::{mm, thread::MinimumMaterial};
    /// let pair = MinimumMaterial::measured(&"M10x1".parse().unwrap(), mm(9.9), mm(9.3), mm(9.7), mm(9.3));
    /// assert!(pair.is_ok());
    /// ```
    pub fn measured(
        size: &ThreadSize,
        screw_major: Length,
        screw_pitch_diameter: Length,
        hole_pitch_diameter: Length,
        hole_minor: Length,
    ) -> Result<Self, Error> {
        let Some(profile) = size.form().profile() else {
            return Err(Error::new(
                ErrorKind::NotApplicable,
                "thread form",
                size,
                "the flank angle of this thread is not known",
                "name the form, e.g. `1.370 in x 24 tpi BSC`",
            ));
        };
        let reach = mm(2.0 * size.pitch().to_mm());
        for (field, length) in [
            ("screw major diameter", screw_major),
            ("screw pitch diameter", screw_pitch_diameter),
            ("hole pitch diameter", hole_pitch_diameter),
            ("hole minor diameter", hole_minor),
        ] {
            ShaftDiameter::new(length).map_err(|e| e.within(field))?;
            if length > size.major() + reach || length < size.major() - reach {
                return Err(Error::new(
                    ErrorKind::OutOfRange,
                    field,
                    in_mm(length),
                    alloc::format!("far from any diameter of {size}"),
                    "check the size and the unit",
                ));
            }
        }
        Ok(Self {
            size: *size,
            screw_major,
            screw_pitch_diameter,
            hole_pitch_diameter,
            hole_minor,
            tan_half: 1.0 / profile.cot_half,
            grade: Grade::Shop,
        })
    }

    /// What the weakest of the diameters is worth; `Shop` for measured ones.
    #[must_use]
    pub const fn grade(&self) -> Grade {
        self.grade
    }

    /// Shear area of one millimetre of engagement, in mm²: of the screw's threads, then of the hole's.
    fn per_mm(&self) -> (f64, f64) {
        let p = self.size.pitch().to_mm();
        let (d, d2) = (to_mm(self.screw_major), to_mm(self.screw_pitch_diameter));
        let (big_d2, big_d1) = (to_mm(self.hole_pitch_diameter), to_mm(self.hole_minor));
        let area = |at: f64, height: f64| {
            libm::fmax(
                core::f64::consts::PI / p * at * (p / 2.0 + self.tan_half * height),
                0.0,
            )
        };
        // A crest that does not reach the other thread shears nothing.
        if big_d1 >= d {
            return (0.0, 0.0);
        }
        (area(big_d1, d2 - big_d1), area(d, d - big_d2))
    }

    /// Shear areas over a length of engagement (FED-STD-H28/2B; two texts agree): screw π LE D1max [1/2 + tan(a/2) (d2min − D1max)/P],
    /// hole π LE dmin [1/2 + tan(a/2) (dmin − D2max)/P].
    ///
    /// # Errors
    /// `NotFinite` and `OutOfRange` for a length that is none; `Contradiction` when the engagement is longer than the hole.
    pub fn shear_areas(
        &self,
        engagement: Length,
        hole_depth: Option<Length>,
    ) -> Result<ShearAreas, Error> {
        let length = to_mm(engaged(engagement, hole_depth)?);
        let (screw, hole) = self.per_mm();
        let square = mm(1.0) * mm(1.0);
        Ok(ShearAreas {
            screw: square * (screw * length),
            hole: square * (hole * length),
        })
    }

    /// The force that strips a length of engagement, and which member goes first.
    ///
    /// # Errors
    /// As [`Self::shear_areas`]; `OutOfRange` for a strength that is not above zero.
    ///
    /// ```
    /// use framegauge::{mm, mpa, thread::{Member, MinimumMaterial, limits_of_size}};
    /// let size = "M10x1".parse().unwrap();
    /// let of = |class: &str| limits_of_size(&size, &class.parse().unwrap()).unwrap();
    /// let pair = MinimumMaterial::of_limits(&of("6g"), &of("6H")).unwrap();
    /// // A steel bolt in an aluminium hanger of 8 mm: the hanger goes first.
    /// let strips = pair.stripping(mm(8.0), Some(mm(8.0)), mpa(480.0), mpa(180.0)).unwrap();
    /// assert_eq!(strips.weaker, Member::Internal);
    /// assert!(pair.stripping(mm(9.0), Some(mm(8.0)), mpa(480.0), mpa(180.0)).is_err());
    /// ```
    pub fn stripping(
        &self,
        engagement: Length,
        hole_depth: Option<Length>,
        screw_shear_strength: Pressure,
        hole_shear_strength: Pressure,
    ) -> Result<Stripping, Error> {
        let areas = self.shear_areas(engagement, hole_depth)?;
        let screw_force = areas.screw * strength("screw shear strength", screw_shear_strength)?;
        let hole_force = areas.hole * strength("hole shear strength", hole_shear_strength)?;
        let weaker = if hole_force < screw_force {
            Member::Internal
        } else {
            Member::External
        };
        Ok(Stripping {
            areas,
            screw_force,
            hole_force,
            force: hole_force.min(screw_force),
            weaker,
        })
    }

    /// The engagement at which a force strips one member: F / (shear strength × shear area per length).
    ///
    /// # Errors
    /// `OutOfRange` for a force or strength that is not above zero; `NotApplicable` when the threads do not overlap at all.
    ///
    /// ```
    /// use framegauge::{mm, mpa, newton, to_mm, thread::{Member, MinimumMaterial, limits_of_size}};
    /// let size = "M10x1".parse().unwrap();
    /// let of = |class: &str| limits_of_size(&size, &class.parse().unwrap()).unwrap();
    /// let pair = MinimumMaterial::of_limits(&of("6g"), &of("6H")).unwrap();
    /// let needed = |force| to_mm(pair.engagement_for_force(newton(force), Member::Internal, mpa(180.0)).unwrap());
    /// assert!((needed(20_000.0) / needed(10_000.0) - 2.0).abs() < 1e-9); // twice the force, twice the thread
    /// ```
    pub fn engagement_for_force(
        &self,
        force: Force,
        member: Member,
        shear_strength: Pressure,
    ) -> Result<Length, Error> {
        let force = positive_force(force)?;
        let (screw, hole) = self.per_mm();
        let per_mm = match member {
            Member::External => screw,
            Member::Internal => hole,
        };
        self.overlapping(per_mm)?;
        let carried = mm(1.0) * mm(per_mm) * strength("shear strength", shear_strength)?;
        Ok(mm((force / carried).value))
    }

    fn overlapping(&self, per_mm: f64) -> Result<(), Error> {
        if per_mm > 0.0 {
            return Ok(());
        }
        Err(Error::new(
            ErrorKind::NotApplicable,
            "engagement",
            self.size,
            "the threads do not overlap, so no length holds",
            "retap to the next pattern",
        ))
    }

    /// The engagement at which the screw breaks before any thread strips (FED-STD-H28/2B): 2 At over the screw's shear area per
    /// length, times J where the tapped metal is the weaker one, J = (screw area × screw strength) / (hole area × hole strength).
    ///
    /// # Errors
    /// As [`Self::engagement_for_force`].
    ///
    /// ```
    /// use framegauge::{mm, mpa, to_mm, thread::{MinimumMaterial, StressAreaRule, limits_of_size, stress_area}};
    /// let size = "M5x0.8".parse().unwrap();
    /// let of = |class: &str| limits_of_size(&size, &class.parse().unwrap()).unwrap();
    /// let pair = MinimumMaterial::of_limits(&of("6g"), &of("6H")).unwrap();
    /// let area = stress_area(&size, StressAreaRule::Iso898).unwrap();
    /// let in_steel = pair.engagement_for_equal_strength(area, mpa(800.0), mpa(800.0)).unwrap();
    /// let in_aluminium = pair.engagement_for_equal_strength(area, mpa(800.0), mpa(275.0)).unwrap();
    /// assert!(in_steel.j < 1.0 && in_aluminium.j > 1.0);
    /// assert!(in_aluminium.length > in_steel.length);
    /// ```
    pub fn engagement_for_equal_strength(
        &self,
        stress_area: Area,
        screw_strength: Pressure,
        hole_strength: Pressure,
    ) -> Result<EqualStrength, Error> {
        let square = mm(1.0) * mm(1.0);
        let area = (stress_area / square).value;
        if !(area.is_finite() && area > 0.0) {
            return Err(Error::new(
                ErrorKind::OutOfRange,
                "stress area",
                area,
                "must be above zero",
                "take it from `stress_area`",
            ));
        }
        let (screw, hole) = self.per_mm();
        self.overlapping(libm::fmin(screw, hole))?;
        let ratio = (strength("screw strength", screw_strength)?
            / strength("hole strength", hole_strength)?)
        .value;
        let j = screw * ratio / hole;
        Ok(EqualStrength {
            length: mm(2.0 * area / screw * libm::fmax(j, 1.0)),
            j,
        })
    }
}

/// Shear areas by the short formula, for a quick look: screw 0.625 π E LE, hole 0.75 π E LE, with the basic pitch diameter E
/// (FED-STD-H28/2B).
///
/// # Errors
/// As [`MinimumMaterial::shear_areas`]; `NotApplicable` for the unknown form.
///
/// ```
/// use framegauge::{mm, thread::rough_shear_areas};
/// let areas = rough_shear_areas(&"M10x1".parse().unwrap(), mm(8.0)).unwrap();
/// assert!(areas.hole > areas.screw);
/// ```
pub fn rough_shear_areas(size: &ThreadSize, engagement: Length) -> Result<ShearAreas, Error> {
    let length = engaged(engagement, None)?;
    let sleeve = BasicDiameters::of(size)?.pitch_diameter * length * core::f64::consts::PI;
    Ok(ShearAreas {
        screw: sleeve * 0.625,
        hole: sleeve * 0.75,
    })
}

fn engaged(engagement: Length, hole_depth: Option<Length>) -> Result<Length, Error> {
    let length = Depth::new(engagement)
        .map_err(|e| e.within("engagement"))?
        .length();
    if let Some(hole) = hole_depth {
        let hole = Depth::new(hole).map_err(|e| e.within("hole"))?.length();
        if crate::measure::settled_cmp(length, hole) == core::cmp::Ordering::Greater {
            return Err(Error::new(
                ErrorKind::Contradiction,
                "engagement",
                in_mm(length),
                alloc::format!("longer than the threaded hole of {}", in_mm(hole)),
                "give the length over which both threads meet",
            ));
        }
    }
    Ok(length)
}

fn strength(field: &'static str, value: Pressure) -> Result<Pressure, Error> {
    let megapascals = value.value / 1e6;
    if megapascals.is_finite() && megapascals > 0.0 && megapascals <= 5000.0 {
        return Ok(value);
    }
    Err(Error::new(
        if megapascals.is_finite() {
            ErrorKind::OutOfRange
        } else {
            ErrorKind::NotFinite
        },
        field,
        alloc::format!("{megapascals} MPa"),
        "no metal has this strength",
        "above 0, at most 5000 MPa; check the unit",
    ))
}

fn positive_force(force: Force) -> Result<Force, Error> {
    if force.value.is_finite() && force.value > 0.0 {
        return Ok(force);
    }
    Err(Error::new(
        if force.value.is_finite() {
            ErrorKind::OutOfRange
        } else {
            ErrorKind::NotFinite
        },
        "force",
        alloc::format!("{} N", force.value),
        "must be above zero",
        "give the force in newtons",
    ))
}
