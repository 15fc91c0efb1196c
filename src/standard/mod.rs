//! Typed rows of the frame interfaces. One row a standard, one citation a figure; see `data/`.

mod axle;
mod brake;
mod coverage;
mod figures;
mod fork;
mod head_tube;
mod joint;
mod lookup;
mod part;
mod place;
mod row;
mod seat;
mod shell;
mod shop;
mod tables;
mod work;

pub use crate::fit::{MaterialKind, Sense};
pub use axle::{Axle, End, ThreadUse, ThreadedPart, TorqueFigure};
pub use brake::{BrakeFigure, BrakeMount, BrakeSystem, FlatMountBolt, Rotor};
pub use coverage::{GridCount, grids};
pub use figures::figure;
pub use fork::{CrownSeat, Steerer, SteererRule};
pub use head_tube::{FacingRule, FitWindow, HeadSeat, HeadsetBearing, SeatKind};
pub use joint::{Joint, SpeaksOf};
pub use lookup::Tables;
pub use part::{Bearing, Cutting, CuttingRule, Friction, Material};
pub use place::{HeadTubeEnd, LeftRight, Place};
pub(crate) use row::nearest;
pub use row::{Row, Stated, Walk, find, find_in};
pub use seat::{DepthCounts, InsertionRule, SeatClamp, SeatTube, Seatpost};
pub use shell::{
    BoreWindow, Confusion, HalfWidths, Hold, LocatedBy, PressPart, Shell, ShellWindow, SpacerRule,
    Status,
};
pub use shop::{InShop, ShopRows, every_figure};
pub use work::{Operation, Turning, WorkRow, Workplace};
