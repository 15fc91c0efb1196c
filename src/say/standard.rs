//! Places and joints in words.

use alloc::borrow::Cow;

use crate::evidence::Text;
use crate::standard::{End, HeadTubeEnd, Joint, LeftRight, Place};
use crate::thread::Side;

impl Place {
    /// The place in words.
    ///
    /// ```
    /// use framegauge::standard::Place;
    /// assert_eq!("boss.down_tube_1".parse::<Place>().unwrap().words(), "down tube 1");
    /// ```
    #[must_use]
    pub fn words(&self) -> Text {
        let end = |of: &End, front: &'static str, rear: &'static str, both: &'static str| match of {
            End::Front => front,
            End::Rear => rear,
            End::Both => both,
        };
        Cow::Borrowed(match self {
            Self::SeatTube => "seat tube",
            Self::SeatTubeSlot => "seat-clamp slot",
            Self::Seatpost => "seatpost",
            Self::Shell => "bottom-bracket shell",
            Self::ShellSide(Side::Drive) => "shell thread, drive side",
            Self::ShellSide(Side::NonDrive) => "shell thread, non-drive side",
            Self::ShellFace(Side::Drive) => "shell face, drive side",
            Self::ShellFace(Side::NonDrive) => "shell face, non-drive side",
            Self::HeadTube(HeadTubeEnd::Upper) => "head tube, upper end",
            Self::HeadTube(HeadTubeEnd::Lower) => "head tube, lower end",
            Self::HeadFace(HeadTubeEnd::Upper) => "head-tube face, upper end",
            Self::HeadFace(HeadTubeEnd::Lower) => "head-tube face, lower end",
            Self::Crown => "crown-race seat",
            Self::Steerer => "steerer",
            Self::Axle(of) => end(of, "front axle", "rear axle", "axle"),
            Self::Dropout(of, None) => end(of, "front dropouts", "rear dropouts", "dropouts"),
            Self::Dropout(of, Some(Side::Drive)) => end(
                of,
                "front dropout, drive side",
                "rear dropout, drive side",
                "dropout, drive side",
            ),
            Self::Dropout(of, Some(Side::NonDrive)) => end(
                of,
                "front dropout, non-drive side",
                "rear dropout, non-drive side",
                "dropout, non-drive side",
            ),
            Self::Hanger(of) => end(of, "front hanger", "rear hanger", "hanger"),
            Self::Boss(name) => return Cow::Owned(name.replace('_', " ")),
            Self::Pedal(Some(LeftRight::Left)) => "left pedal thread",
            Self::Pedal(Some(LeftRight::Right)) => "right pedal thread",
            Self::Pedal(None) => "pedal thread",
            Self::Brake(of) => end(of, "front brake mount", "rear brake mount", "brake mount"),
            Self::BrakeUnderside(of) => end(
                of,
                "front brake mount, underside",
                "rear brake mount, underside",
                "brake mount, underside",
            ),
            Self::Iscg => "chain-guide tabs",
            Self::Thread => "thread",
        })
    }
}

impl Joint {
    /// In words for a person.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::HeadCup => "cup in head tube",
            Self::CrownRace => "crown race on seat",
            Self::Seatpost => "seatpost in seat tube",
            Self::PressShell => "cup in shell",
            Self::DirectBearing => "bearing in shell",
            Self::IntegratedBearing => "bearing on its seat in the head tube",
            Self::Quill => "quill in steerer",
            Self::DrawnTube => "drawn tube in drawn tube",
            Self::Other => "part in bore",
        }
    }

    /// What to mind at this joint whatever the verdict; empty for a joint that carries nobody.
    #[must_use]
    pub const fn caution(self) -> &'static str {
        match self {
            Self::HeadCup | Self::CrownRace | Self::IntegratedBearing | Self::Quill => {
                "steering: must not be ridden before the fit is shown by the parts themselves; the maker's written limits come first; when in doubt, hand over to a qualified workshop"
            }
            Self::Seatpost => {
                "a loose or short post can break the tube and hurt the rider: the marks on post and frame and the maker's written limits come first"
            }
            Self::PressShell | Self::DirectBearing => {
                "the frame and component maker's written limits come first; a laminate shell is not cut or forced without the maker's consent"
            }
            Self::DrawnTube | Self::Other => "",
        }
    }
}
