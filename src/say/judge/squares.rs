//! Squareness, parallel faces, widths and depths in words.

use alloc::borrow::Cow;
use core::fmt;

use crate::fact::Worded;
use crate::judge::{SquareAsk, SquareFact};
use crate::measure::{Outcome, settled_cmp};
use crate::quantity::{Length, Printed, in_mm, mm, to_mm};

/// `6.000 mm too wide`, `6.000 mm too narrow`, or that it is neither.
fn by_how_much(
    f: &mut fmt::Formatter<'_>,
    by: Length,
    [more, less, equal]: [&str; 3],
) -> fmt::Result {
    match settled_cmp(by, mm(0.0)) {
        core::cmp::Ordering::Greater => write!(f, "{} {more}", in_mm(by)),
        core::cmp::Ordering::Less => write!(f, "{} {less}", in_mm(-by)),
        core::cmp::Ordering::Equal => f.write_str(equal),
    }
}

impl fmt::Display for SquareFact {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let words = match self {
            Self::NotPrinted { .. } => "no limit is published",
            Self::Tilt {
                leans,
                touches,
                outcome,
            } => {
                write!(
                    f,
                    "the mount leans {:.2}°, and the pad touches at {:.2}°: ",
                    leans.in_unit(),
                    touches.in_unit()
                )?;
                match outcome {
                    Outcome::ConformityShown => "clear, with the rotor centred and true",
                    Outcome::NonconformityShown => "it will rub whatever the bolts do",
                    Outcome::Undecided => "too close to tell whether it rubs",
                }
            }
            Self::Leans { by } => {
                return write!(
                    f,
                    "the mount leans {:.2}°; whether that rubs depends on pad and clearance, and no squareness is published",
                    by.in_unit()
                );
            }
            Self::MountNotMeasured => {
                "not measured; for the squareness of a mount face no limit is published, but a tilt that takes up the clearance of the pads must rub"
            }
            Self::BrakeTest => {
                "brakes: after any work at a mount test at walking pace; when in doubt, hand over to a qualified workshop"
            }
            Self::Caliper {
                suits,
                rotor,
                high,
                needed,
                adapter,
            } => return caliper(f, [*suits, *rotor, *high, *needed, *adapter]),
            Self::PadOverhangs => {
                "brakes: a pad that overhangs the rotor can lock or tear off; test at walking pace"
            }
            Self::WearPattern => {
                "shows where the races were loaded, not why: faces out of parallel, a bent steerer and a crooked crown seat all wear one side"
            }
            Self::Steering => "steering: when in doubt, hand over to a qualified workshop",
            Self::MadeFor { width, shell, by } => {
                write!(
                    f,
                    "made for {}, the shell is {}: ",
                    in_mm(*width),
                    in_mm(*shell)
                )?;
                return by_how_much(f, *by, ["too short", "too long", "as made for"]);
            }
            Self::NoWindow => {
                "no window is published for the width it was made for, so nothing is shown; a whole width out is felt at once, the cup face falls below or stands above the shell face"
            }
            Self::WindowsDiffer => {
                "the makers' windows for the width it was made for lead to different answers, so whose unit it is decides"
            }
            Self::OffAxis { offset, takes } => {
                write!(
                    f,
                    "the two bores stand {} off one axis, for which no limit is published",
                    in_mm(*offset)
                )?;
                if let Some(takes) = takes {
                    write!(f, "; it takes {} of the clearance", in_mm(*takes))?;
                }
                return Ok(());
            }
            Self::SideLoad => {
                "turns freely once the side load is off: too much preload, or a stack too wide"
            }
            Self::NotSideLoad => "binds without side load too, so preload is not the cause",
            Self::NoUsualCause => {
                "none of the three usual causes: the spindle slides, the bores leave it its clearance, and it binds without side load"
            }
            Self::DoNotDrive => "do not drive a spindle through: the bearings take the blows",
            Self::OverCaps { wanted, short } => {
                write!(f, "must be {} over the end caps", in_mm(*wanted))?;
                if let Some(short) = short {
                    f.write_str(", ")?;
                    by_how_much(f, *short, ["short", "over", "as found"])?;
                }
                "; measure it before touching the mount, for a rotor out of the caliper's slots is not cured by facing"
            }
            Self::RotorOff => "brakes: do not ride with a rotor that can touch the frame",
            Self::Spacing { hub, wide } => {
                by_how_much(
                    f,
                    *wide,
                    ["too wide", "too narrow", "neither wide nor narrow"],
                )?;
                let half = in_mm(wide.abs() / 2.0);
                return write!(
                    f,
                    " for a hub of {}, {half} a side; no limit is published",
                    in_mm(*hub)
                );
            }
            Self::FacesApart { angle, over, read } => {
                let from = if *read {
                    "read over"
                } else {
                    "as stated, which implies a length of"
                };
                return write!(
                    f,
                    "the faces stand {:.2}° apart, {from} {}",
                    angle.in_unit(),
                    in_mm(*over)
                );
            }
            Self::OtherAngle => "the angle that was stated is another than the one read",
            Self::TwoFaults => {
                "spacing and angle are two faults; washers cure neither, and for neither is a limit published"
            }
            Self::ColdSetting => {
                "cold setting is for steel only, and for a qualified builder; never bend aluminium, titanium or carbon"
            }
            Self::Room { bore, part, left } => {
                write!(f, "bore {} deep, {} goes in: ", in_mm(*bore), in_mm(*part))?;
                return by_how_much(f, *left, ["to spare", "proud", "nothing to spare"]);
            }
            Self::Deepening => {
                "cutting cannot be undone; a shortened cup needs a new chamfer and its maker's consent, and leaves less length to press"
            }
            Self::TooNarrow { by } => {
                return write!(f, "{} is missing: do not face it", in_mm(*by));
            }
        };
        f.write_str(words)
    }
}

/// The rotor that a mounting suits, the one fitted, how high the caliper sits, what the adapter has to give, and gives.
fn caliper(
    f: &mut fmt::Formatter<'_>,
    [suits, rotor, high, needed, adapter]: [Length; 5],
) -> fmt::Result {
    write!(f, "this mounting suits a rotor of {}", in_mm(suits))?;
    if settled_cmp(high, mm(0.0)).is_eq() {
        return f.write_str(", as fitted");
    }
    write!(f, "; with {} the caliper sits ", in_mm(rotor))?;
    by_how_much(f, high, ["too high", "too low", ""])?;
    write!(
        f,
        ", half the difference of the diameters; the adapter has to give {:+.0} mm as it is turned, not {:+.0} mm",
        to_mm(needed),
        to_mm(adapter)
    )
}

impl Worded for SquareFact {
    fn about(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::NotPrinted { what } => return what.clone(),
            Self::Tilt { .. } | Self::Leans { .. } | Self::MountNotMeasured => "caliper tilt",
            Self::Caliper { .. } => "caliper over rotor",
            Self::BrakeTest | Self::PadOverhangs | Self::RotorOff => "brakes",
            Self::WearPattern => "wear pattern",
            Self::Steering => "steering",
            Self::MadeFor { .. } | Self::NoWindow | Self::WindowsDiffer => "shell width",
            Self::OffAxis { .. } => "coaxiality",
            Self::SideLoad | Self::NotSideLoad => "side load",
            Self::NoUsualCause => "cause",
            Self::DoNotDrive => "spindle",
            Self::OverCaps { .. } => "hub width",
            Self::Spacing { .. } => "spacing",
            Self::FacesApart { .. } | Self::OtherAngle => "angle",
            Self::TwoFaults | Self::ColdSetting => "dropouts",
            Self::Room { .. } => "room below",
            Self::Deepening => "depth",
            Self::TooNarrow { .. } => "width",
        })
    }
}

impl fmt::Display for SquareAsk {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Pads => {
                "clearance of pad and rotor on each side, and length of the pad across the tilt"
            }
            Self::MountHeights => {
                "the height of both pad traces on the rotor, or a dial reading along the mount face"
            }
            Self::MakersSquareness => "the caliper maker's own figure",
            Self::PadOverlap => "overlap of pad and rotor, at the outer edge",
            Self::InkBothFaces => {
                "ink on both faces, then the first light cut, pilot centred in the opposite bore"
            }
            Self::SteererStraight => {
                "straightness of the steerer against a straightedge, and run-out of the crown seat"
            }
            Self::UnitWindow => "the maker's width window for this unit",
            Self::SpindleAndBearing => "spindle diameter and bearing bore",
            Self::RingWidth => "width of a bearing's inner ring",
            Self::BoreCentres => {
                "centres of both bores, in two directions at right angles, and their distance"
            }
            Self::WithoutSideLoad => "turning with the adjuster loose",
            Self::BearingsByHand => "the bearings by hand before and after pressing",
            Self::EndCaps { wanted } => return write!(f, "{} over the end caps", in_mm(*wanted)),
            Self::RotorToHubEnd => "rotor face to hub end, against the hub maker's figure",
            Self::SpacingTwice => {
                "the spacing at both ends of the dropouts, and how far these are apart"
            }
            Self::MiddlePlane => {
                "each dropout from the middle plane of the frame, by straightedge or string line"
            }
            Self::BelowBore => "the inside below the bore, and the wall there",
            Self::DepthFiner => {
                "bore depth at four places and the length of the cup below its flange, finer"
            }
            Self::WidthFiner => "the width at four places, with a finer tool",
        })
    }
}

impl Worded for SquareAsk {
    fn why(&self) -> Cow<'static, str> {
        Cow::Borrowed(match self {
            Self::Pads => {
                "no squareness is published for a mount; the caliper's own clearance is the only bound"
            }
            Self::MountHeights => {
                "rub after alignment has other causes: rotor run-out, hub play, sticking pistons"
            }
            Self::MakersSquareness => "only the maker can say how square is enough",
            Self::PadOverlap => {
                "the pad must lie inside the braking band of the rotor; whether a small overlap will do is for the caliper maker to say"
            }
            Self::InkBothFaces => {
                "a face that was parallel loses its ink all round at once; a shop can hardly measure this otherwise"
            }
            Self::SteererStraight => "a bent steerer gives the same sign",
            Self::UnitWindow => "the window belongs to the crank, not to the shell",
            Self::SpindleAndBearing => "a spindle too large binds whatever the shell is like",
            Self::RingWidth => "a wide ring takes more of the clearance when the spindle is tilted",
            Self::BoreCentres => "bores off one axis make a straight spindle bind in both",
            Self::WithoutSideLoad => "tells side load from the other two causes",
            Self::BearingsByHand => {
                "cups squeezed in the shell take the clearance inside the bearing"
            }
            Self::EndCaps { .. } => "a missing cap or spacer moves the rotor by its whole width",
            Self::RotorToHubEnd => "tells a shifted rotor from a shifted hub",
            Self::SpacingTwice => "two readings and their distance give the angle",
            Self::MiddlePlane => "half the error a side holds only when both are off alike",
            Self::BelowBore => "deepening needs wall to cut in, and a shoulder to stop at",
            Self::DepthFiner => "the shallowest place decides: the cup may bottom before it seats",
            Self::WidthFiner => "too close to a limit for this tool",
        })
    }
}
