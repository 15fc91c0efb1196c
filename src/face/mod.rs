//! Faces, bores and readings: from a handful of indicator readings, how square and flat a face is, where a cup will
//! sit, how deep the cutter must go, and whether it may.
//!
//! Frame of reference of every survey: the pilot axis is z, positive outwards, towards the person who looks at the
//! face. Directions on the face are clock angles seen from outside: 0 at the top, clockwise. So x points to 3 o'clock
//! and y to 12 o'clock, and a height is read along the axis of the pilot that will guide the cutter.
//!
//! Four planes answer four questions, and each has its own name here:
//! [`least_squares`] (the best estimate of tilt), [`minimum_zone`] (the flatness number), [`seat_plane`] (where a
//! rigid, axially pressed cup comes to rest) and [`cutter_plane`] (square to the pilot). The tangent planes of
//! ISO 5459 and ASME Y14.5.1 are [`minimax_tangent`] and [`least_squares_tangent`].

pub(crate) mod report;

mod allowance;
mod answer;
mod bore;
mod caliper;
mod clock;
mod compare;
mod decision;
mod depth;
mod ends;
mod form;
mod kernel;
mod pads;
mod plane;
mod ring;
mod sampling;
mod seat;
mod section;
#[cfg(feature = "serde")]
mod serial;
#[cfg(feature = "serde")]
mod sheet;
mod tangent;
mod tilt;
mod touch;
mod two;
mod warn;
mod widths;
mod zone;

pub use allowance::{Allowance, Cap, Caps, CutLimit, LimitKind, LimitName, Pass};
pub use answer::FaceAnswer;
pub use bore::{BoreReading, BoreShape, BoreSurvey, Gauge, Size, Taper};
pub use caliper::{CaliperTilt, MountKind, PadShape};
pub use clock::Clock;
pub use compare::PassRecord;
pub use decision::{Closer, FacingGoal, FacingReport, FacingStep};
pub use depth::CleanUp;
pub use ends::{BoreAxis, Coaxiality, EndComparison};
pub use form::{Flatness, Form, Squareness};
pub use pads::{PadPoint, PadSurvey};
pub use plane::{LeastSquaresPlane, Plane, Point, RunOut, least_squares};
pub use ring::{Annulus, Probe, RingSurvey};
pub use sampling::{Sampling, probes_for, sampling};
pub use seat::{Rock, SeatPlane, seat_plane};
pub use section::{Ellipse, Section};
#[cfg(feature = "serde")]
pub use sheet::{
    BoreSheet, DiameterSheet, LimitSheet, PadPointSheet, PadSheet, ProbeSheet, RingSheet,
    allowance_of,
};
pub use tangent::{
    CutterPlane, LeastSquaresTangent, MinimaxTangent, cutter_plane, least_squares_tangent,
    minimax_tangent,
};
pub use tilt::Tilt;
pub use touch::tilted_ring_touched;
pub use two::{CupTilt, Misalignment, Parallelism, pilot_play};
pub use warn::Warning;
pub use widths::{WidthReading, WidthShape, WidthSurvey};
pub use zone::{Certificate, ContactPattern, MinimumZone, minimum_zone};
