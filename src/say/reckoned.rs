//! How answers are reckoned, and what a reader should know besides.

/// How a face is reckoned.
pub(crate) const FACE: &str =
    "least squares tilt against the pilot; clean-up depth to the outer edge";
/// What a face rests on.
pub(crate) const FACE_NOTE: &str =
    "limits and goal are the asker's own; the frame maker's written limits go first";
/// How the shape of a bore is reckoned.
pub(crate) const BORE: &str =
    "largest and smallest diameter; an ellipse through three axes or more";
/// What readings of a bore cannot see.
pub(crate) const BORE_NOTE: &str = "two-point readings cannot see odd lobes";
/// How a standard is identified.
pub(crate) const IDENTIFY: &str = "excluded beyond k standard uncertainties, ranked by likelihood";
/// When two threads bind.
pub(crate) const DRIFT: &str = "drift = difference of the pitches; it binds when the drift times cot(half flank angle) uses up the difference of the pitch diameters";
/// The pitch diameter over wires.
pub(crate) const WIRES: &str = "d2 = M - w (1 + 1/sin a) + P/2 cot a, a the half flank angle";
/// What the size over wires leaves out.
pub(crate) const WIRES_NOTE: &str =
    "the helix is left out, as for threads of one start; wires and force add their own error";
/// What a plan rests on.
pub(crate) const PLAN_NOTE: &str =
    "the weakest figure of the plan; the frame and component makers' written limits go first";
/// How a press fit is reckoned.
pub(crate) const PRESS: &str = "Lamé rings in plane stress; von Mises for yield";
/// What a press fit leaves out.
pub(crate) const PRESS_NOTE: &str = "the formulas stand in five engineering texts; axial stress, edge peaks and tube ovality are left out";
/// How the causes of a symptom are ordered.
pub(crate) const CHECKS: &str = "checks from what costs nothing to what cannot be undone";
/// How the steps of a rescue are ordered.
pub(crate) const RESCUE_NOTE: &str = "the steps stand in the trade's order of caution; what cuts is for the frame maker or a qualified builder to allow";
/// What the grade of a row is.
pub(crate) const ROW_NOTE: &str = "the weakest grade of the row; each figure carries its own";
/// How much of a thread bears.
pub(crate) const ENGAGEMENT: &str =
    "(screw over crests - hole over crests) / 2, against the basic height of the form";
/// What strips a thread.
pub(crate) const STRIP: &str =
    "shear cylinders of both members at the least overlap that the pair allows";
/// What is left out of the strength of a thread.
pub(crate) const STRIP_CAUTION: &str = "bell-mouthed, worn and crossed threads strip earlier; never torque to this figure, the maker's torque goes first";
/// Why a thread has the hand of a row.
pub(crate) const HAND_OF_ROW: &str = "as the row of the table states it";
/// What the schema of the lines is.
#[cfg(feature = "serde")]
pub(crate) const SCHEMA: [&str; 2] = [
    "One question, one answer",
    "JSON Schema, draft 2020-12: a line of JSON for a question, a line for its reply.",
];
