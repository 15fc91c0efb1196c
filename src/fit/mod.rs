//! Limits, fits, press fits, clamps, stacks and temperature.
//!
//! Diameters and fits are *on diameter*: interference is shaft less bore, clearance bore less shaft.

mod bearing;
mod between;
mod caution;
mod clamp;
mod class;
mod designation;
mod deviation;
mod finding;
mod hold;
mod left;
mod lengths;
mod material;
mod member;
mod press;
mod shape;
mod slide;
mod stack;
mod stress;
mod surface;
mod tables;
mod temperature;
mod wanted;

pub use bearing::{
    ClearanceGroup, RingClass, RingSize, RingTolerance, internal_clearance, ring_tolerance,
};
pub use between::{Fit, FitKind, Out, fit_between};
pub use caution::Caution;
pub use clamp::{ClampModel, Grip, SlitClamp, bolt_force, clamp_for_tube, strap_tension};
pub use class::{DeviationLetter, Feature, FitClass, ToleranceGrade};
pub use designation::{FitDesignation, SizeClass};
pub use deviation::{
    LimitDeviations, TableSource, iso286_sources, limit_deviations, standard_tolerance,
};
pub use finding::MemberFinding;
pub use hold::PressReport;
pub use left::{ClearanceLeft, clearance_left};
pub use lengths::{
    EngagementLeft, LengthCheck, engagement_left, gap_between_flanges, post_insertion,
    steerer_length,
};
pub use material::{Material, MaterialKind};
pub use member::{Hole, HoleMember, Member, Part, Shaft, ShaftMember};
pub use press::{JointShape, Press, PressJoint};
pub use shape::{Shape, SizeReading};
pub use slide::{DepthClearance, Slide, slide};
pub use stack::{Link, Stack, stack};
pub use stress::{Stresses, YieldPressure, YieldRule};
pub use surface::{Friction, RoughnessLoss};
pub use temperature::{
    Temperature, assembly_temperature, at_reference, at_reference_with_gauge, clearance_change,
};
pub use wanted::{Conformance, Cure, Sense, Wanted, Windows};
