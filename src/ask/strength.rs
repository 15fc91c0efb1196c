//! `engagement` and `strip`: how much of a thread bears, and what strips it.

use super::said::{Said, second};
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::measure::Reading;
use crate::quantity::{
    BoreDiameter, Length, Pressure, Printed, Ratio, ShaftDiameter, mm, settled_mm,
};
use crate::read::{answer, form, told};
use crate::say::reckoned;
use crate::thread::{
    BasicDiameters, Designation, Member, MinimumMaterial, PercentConvention, Stripping,
    ThreadLimits, ToleranceClass, flank_engagement, limits_of_size, thread_percent, usual_class,
};
use crate::{Error, ErrorKind, Grade};

told! {
    /// areas, screw_force_n, hole_force_n, force_n, weaker
    Stripping: Report,
}

form! {
    /// `engagement`: how much of a thread still bears on a screw, from the bore that is left.
    ///
    /// ```
    /// use framegauge::{ask::{Ask, Bearing, Context}, mm};
    /// let question = Bearing { thread: "M10x1".parse().unwrap(), bore: mm(9.3), screw_major: None };
    /// assert!(question.answer(&Context::default()).unwrap().answer.percent_of_basic_height < 65.0);
    /// ```
    Bearing {
        /// The thread.
        thread: Designation,
        /// Diameter over the crests of the hole.
        bore: Length,
        /// Diameter over the crests of the screw; the basic major diameter unless stated.
        screw_major: Option<Length>,
    }

    /// Diameters of a pair as measured.
    ///
    /// ```
    /// use framegauge::{ask::MeasuredPair, read::Tree};
    /// let tree: Tree = serde_json::from_str(r#"{"screw_major":"9.9 +/- 0.01 mm","screw_pitch_diameter":"9.3 +/- 0.01 mm","hole_pitch_diameter":"9.7 +/- 0.01 mm"}"#).unwrap();
    /// assert_eq!(framegauge::read::read_whole::<MeasuredPair>(&tree, framegauge::standard::Tables::ours()).unwrap_err()[0].field(), "hole_minor");
    /// ```
    MeasuredPair {
        /// Over the crests of the screw.
        screw_major: Reading,
        /// Pitch diameter of the screw.
        screw_pitch_diameter: Reading,
        /// Pitch diameter of the hole.
        hole_pitch_diameter: Reading,
        /// Over the crests of the hole.
        hole_minor: Reading,
    }

    /// `strip`: what strips a thread, and at which force.
    ///
    /// ```
    /// use framegauge::{ask::{Ask, Context, Strip}, mm, mpa};
    /// let question = Strip {
    ///     thread: "M10x1".parse().unwrap(), engagement: mm(8.0), hole_depth: None, screw_shear_strength: mpa(480.0),
    ///     hole_shear_strength: mpa(180.0), screw_class: None, hole_class: None, measured: None, nut_factor: None,
    /// };
    /// assert!(question.answer(&Context::default()).is_ok());
    /// ```
    Strip {
        /// The thread.
        thread: Designation,
        /// Length over which the threads engage.
        engagement: Length,
        /// Depth of the hole, where it may be the shorter.
        hole_depth: Option<Length>,
        /// Shear strength of the screw's metal.
        screw_shear_strength: Pressure,
        /// Shear strength of the hole's metal.
        hole_shear_strength: Pressure,
        /// Class of the screw; the usual one unless stated.
        screw_class: Option<ToleranceClass>,
        /// Class of the hole; the usual one unless stated.
        hole_class: Option<ToleranceClass>,
        /// The pair as measured, instead of the worst pair that the classes allow.
        measured: Option<MeasuredPair>,
        /// Factor between torque and force, 0.05 to 0.6, where the torque is wanted; it depends on lubricant and coating.
        nut_factor: Option<f64>,
    }
}

answer! {
    /// How much of a thread bears.
    BearingAnswer {
        /// Radial depth over which the flanks overlap.
        depth_mm: f64,
        /// The basic height of the form.
        basic_height_mm: f64,
        /// The overlap in percent of the basic height.
        percent_of_basic_height: f64,
        /// The same by the convention of tap-drill tables, where the form has one.
        percent_of_tap_drill_table: Option<f64>,
        /// What these two diameters cannot show.
        caution: &'static str,
    }

    /// What strips.
    StripAnswer {
        /// Areas, forces, and which member goes first.
        strips: Stripping,
        /// The tightening torque at which it strips, where a nut factor was given.
        torque_n_m: Option<f64>,
        /// What is left out.
        caution: &'static str,
    }
}

/// A thousandth of a turn, or of a percent, is finer than anybody counts. For values that are never below nothing.
pub(super) fn three_places(value: f64) -> f64 {
    libm::round(value * 1e3) / 1e3
}

impl Ask for Bearing {
    type Answer = BearingAnswer;

    fn answer(&self, _: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let size = &self.thread.size;
        let bore = BoreDiameter::new(self.bore).said("bore")?;
        let field = self.screw_major.map_or("thread", |_| "screw_major");
        let screw = ShaftDiameter::new(self.screw_major.unwrap_or(size.major())).said(field)?;
        let found = flank_engagement(size, screw, bore).said("thread")?;
        let tap_drill = thread_percent(size, screw, bore, PercentConvention::TapDrillTable).ok();
        let basic = BasicDiameters::of(size).said("thread")?;
        let answer = BearingAnswer {
            depth_mm: settled_mm(found.depth),
            basic_height_mm: settled_mm(found.basic_height),
            percent_of_basic_height: three_places(found.percent_of_basic_height),
            percent_of_tap_drill_table: tap_drill.map(three_places),
            caution: found.caution,
        };
        let basis = Basis::of(basic.evidence())
            .at_best(Some(Grade::Derived))
            .by(reckoned::ENGAGEMENT);
        Ok(Answered { answer, basis })
    }
}

impl Strip {
    /// The pair as measured.
    fn measured(&self, pair: &MeasuredPair) -> Result<MinimumMaterial, Error> {
        let screw = self.screw_class.map(|_| "screw_class");
        if let Some(field) = screw.or(self.hole_class.map(|_| "hole_class")) {
            let problem = "the pair is measured, so a class adds nothing";
            let remedy = "state classes or measured diameters";
            return Err(second(field, problem, remedy));
        }
        let names = [
            ("thread", "thread"),
            ("screw major", "measured.screw_major"),
            ("screw pitch", "measured.screw_pitch_diameter"),
            ("hole pitch", "measured.hole_pitch_diameter"),
            ("hole minor", "measured.hole_minor"),
        ];
        let (screw, screw_pitch) = (pair.screw_major.value(), pair.screw_pitch_diameter.value());
        let (hole_pitch, hole) = (pair.hole_pitch_diameter.value(), pair.hole_minor.value());
        let size = &self.thread.size;
        MinimumMaterial::measured(size, screw, screw_pitch, hole_pitch, hole)
            .said_by(&names, "measured.screw_major")
    }

    /// The limits of one member: of the class that is stated, else of the usual one.
    fn limits(&self, member: Member) -> Result<ThreadLimits, Error> {
        let (class, field) = match member {
            Member::External => (self.screw_class, "screw_class"),
            Member::Internal => (self.hole_class, "hole_class"),
        };
        let (size, thread) = (&self.thread.size, self.thread);
        let own = thread.class.filter(|class| class.member() == member);
        let class = class.or(own).or_else(|| usual_class(size, member));
        let class = class.ok_or_else(|| {
            let problem = "no limits of this form were found in any source";
            let remedy = "give the diameters as `measured`";
            Error::new(ErrorKind::NotTabulated, "thread", thread, problem, remedy)
        })?;
        limits_of_size(size, &class).said_by(&[("class", field)], "thread")
    }

    fn pair(&self) -> Result<(MinimumMaterial, Basis), Error> {
        let by = reckoned::STRIP;
        if let Some(measured) = &self.measured {
            let pair = self.measured(measured)?;
            return Ok((pair, Basis::reckoned(by).at_best(Some(pair.grade()))));
        }
        let screw = self.limits(Member::External)?;
        let hole = self.limits(Member::Internal)?;
        let names = [("screw", "screw_class"), ("hole", "hole_class")];
        let pair = MinimumMaterial::of_limits(&screw, &hole).said_by(&names, "thread")?;
        let basis = Basis::of(screw.evidence())
            .by(by)
            .at_best(Some(pair.grade()));
        Ok((pair, basis.citing(hole.evidence().sources())))
    }
}

impl Ask for Strip {
    type Answer = StripAnswer;

    fn answer(&self, _: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let (pair, basis) = self.pair()?;
        let names = [
            ("screw shear", "screw_shear_strength"),
            ("hole shear", "hole_shear_strength"),
            ("hole depth", "hole_depth"),
        ];
        let (screw, hole) = (self.screw_shear_strength, self.hole_shear_strength);
        let strips = pair.stripping(self.engagement, self.hole_depth, screw, hole);
        let strips = strips.said_by(&names, "engagement")?;
        let torque = |factor| strips.torque(&self.thread.size, Ratio(factor));
        let torque = self.nut_factor.map(torque);
        let torque = torque.transpose().said("nut_factor")?;
        let answer = StripAnswer {
            strips,
            torque_n_m: torque.map(|t| settled_mm(mm(t.in_unit()))),
            caution: reckoned::STRIP_CAUTION,
        };
        let basis = basis.at_best(Some(Grade::Derived));
        Ok(Answered { answer, basis })
    }
}
