//! The frame sheet: what was measured and seen on one frame, each reading with its place and uncertainty.
//!
//! Every value is text with a unit, every place is said in words. A reading is `27.2 mm +/- 0.05 mm`, or `27.2 mm by
//! micrometer_outside`, or `27.2 mm` where the sheet names an instrument for that kind of measurement. A place stands in front
//! of it: `10 mm deep, 90 deg: 27.15 mm`; so does what it lies on: `10 mm deep, on metal: 27.15 mm`.

mod check;
mod frame;
mod limit;
mod places;
mod values;
mod words;

pub(crate) use frame::ThreadEntry;
pub use frame::{
    BrakeEnds, BrakeEntry, DropoutEnds, DropoutSides, FrameSheet, HeadTubeSheet, Prepare,
    ThreadEnds, ThreadSides,
};
pub(crate) use limit::Heard;
pub use limit::{MakerLimit, WrittenLimit};
pub(crate) use places::Common;
pub use places::{
    BorePass, BrakeSheet, CrownSheet, Face, FacePass, HeadEndSheet, MountPass, OtherSheet, Part,
    Photo, SeatTubeSheet, ShellPass, ShellSheet, ShellSide, SteererSheet, ThreadPass, ThreadSheet,
};
pub use values::{FacePoint, MountPoint, Named, SHEET_FORMAT};
pub use words::{Coating, CoatingLeft, Fitted, Limited, Marks, PartDid, Taken};
