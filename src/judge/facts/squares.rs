//! Facts and questions of squareness, parallel faces, widths, depths.

use super::instrument::asks;
use crate::evidence::Text;
use crate::fact::facts;
use crate::measure::Outcome;
use crate::quantity::{Angle, Length};

facts! {
    /// What is found of squareness, parallel faces, widths, depths.
    SquareFact {
        /// No limit is published for this.
        NotPrinted { what: Text },
        /// The tilt of a mount, and the tilt at which a pad touches.
        Tilt { leans: Angle, touches: Angle, outcome: Outcome },
        /// The tilt of a mount, without the pad that it is held against.
        Leans { by: Angle },
        /// A mount that was not measured.
        MountNotMeasured,
        /// Any work at a mount.
        BrakeTest,
        /// The rotor that a mounting suits, the one fitted, and what its adapter has to give.
        Caliper { suits: Length, rotor: Length, high: Length, needed: Length, adapter: Length },
        /// A pad that overhangs its rotor.
        PadOverhangs,
        /// Races that wear on one side.
        WearPattern,
        /// Work at the steering.
        Steering,
        /// A spindle by the shell it was made for.
        MadeFor { width: Length, shell: Length, by: Length },
        /// No window is published for the width that it was made for.
        NoWindow,
        /// The makers' windows lead to different answers.
        WindowsDiffer,
        /// Two bores off one axis, and the clearance that this takes.
        OffAxis { offset: Length, takes: Option<Length> },
        /// Turns freely once the side load is off.
        SideLoad,
        /// Binds without side load too.
        NotSideLoad,
        /// None of the three usual causes.
        NoUsualCause,
        /// A spindle that binds.
        DoNotDrive,
        /// The width that a hub must have over its end caps, and what is missing of it.
        OverCaps { wanted: Length, short: Option<Length> },
        /// A rotor that stands off.
        RotorOff,
        /// Dropouts by the hub that belongs there.
        Spacing { hub: Length, wide: Length },
        /// Faces that are not parallel, as read or as stated, and the length over which they were read.
        FacesApart { angle: Angle, over: Length, read: bool },
        /// The angle that was stated is another than the one that was read.
        OtherAngle,
        /// Spacing and angle of dropouts.
        TwoFaults,
        /// Cold setting.
        ColdSetting,
        /// A bore, what goes into it, and the room that is left.
        Room { bore: Length, part: Length, left: Length },
        /// A bore that is made deeper, or a part that is made shorter.
        Deepening,
        /// Too narrow already: nothing may be faced off.
        TooNarrow { by: Length },
    }
}

asks! {
    /// What is asked of squareness, parallel faces, widths, depths.
    SquareAsk {
        /// Clearance and length of the pads.
        Pads => Feeler,
        /// Heights of a mount.
        MountHeights => DialAtAxle,
        /// The caliper maker's own figure of squareness.
        MakersSquareness => Maker,
        /// The overlap of pad and rotor.
        PadOverlap => Eye,
        /// Ink on both faces, and a first light cut.
        InkBothFaces => Eye,
        /// Straightness of the steerer.
        SteererStraight => Rule,
        /// The window of the maker of the unit.
        UnitWindow => Sheet,
        /// Spindle and bearing bore.
        SpindleAndBearing => Micrometer,
        /// The ring of a bearing.
        RingWidth => OutsideCaliper,
        /// Where the two bores stand.
        BoreCentres => DialAtPilot,
        /// Turning without side load.
        WithoutSideLoad => Hand,
        /// The bearings before and after pressing.
        BearingsByHand => Hand,
        /// The width over the end caps.
        EndCaps { wanted: Length } => OutsideCaliper,
        /// Where the rotor stands on its hub.
        RotorToHubEnd => Depth,
        /// The spacing at both ends of the dropouts.
        SpacingTwice => InsideCaliper,
        /// Each dropout by the middle plane.
        MiddlePlane => Rule,
        /// Room and wall below a bore.
        BelowBore => Depth,
        /// Depth of the bore and length of the part, finer.
        DepthFiner => Depth,
        /// The width, finer.
        WidthFiner => Micrometer,
    }
}
