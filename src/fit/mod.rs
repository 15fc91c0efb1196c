//! Limits, fits, press fits, clamps, stacks and temperature.
//!
//! Diameters and fits are *on diameter*: interference is shaft less bore, clearance bore less shaft.

mod bearing;
mod between;
mod caution;
mod class;
mod designation;
mod deviation;
mod hold;
mod material;
mod member;
mod press;
mod shape;
mod tables;
mod wanted;

pub use bearing::{
    ClearanceGroup, RingClass, RingSize, RingTolerance, internal_clearance, ring_tolerance,
};
pub use between::{Fit, FitKind, Out, fit_between};
pub use caution::Caution;
pub use class::{DeviationLetter, Feature, FitClass, ToleranceGrade};
pub use designation::{FitDesignation, SizeClass};
pub use deviation::{
    LimitDeviations, TableSource, iso286_sources, limit_deviations, standard_tolerance,
};
pub use hold::{
    ClearanceLeft, Friction, PressReport, RoughnessLoss, assembly_temperature, clearance_left,
};
pub use material::{Material, MaterialKind};
pub use member::{Hole, HoleMember, Member, MemberFinding, Part, Shaft, ShaftMember};
pub use press::{JointShape, Press, PressJoint, Stresses, YieldPressure, YieldRule};
pub use shape::{Shape, SizeReading};
pub use wanted::{Conformance, Cure, Sense, Wanted, Windows};
