//! The joints of a frame, how each is meant to hold, and the windows that are published for it.

use alloc::string::String;
use alloc::vec::Vec;

use super::Finding;
use crate::evidence::SourceKind;
use crate::fit::{Conformance, Fit, Wanted};
use crate::measure::{Limits, settled_below, settled_cmp};
use crate::quantity::{Length, in_mm, mm};
use crate::standard::{FitWindow, Hold, Row};

/// A place where one part sits in or on another.
///
/// ```
/// use framegauge::{judge::Joint, standard::Hold};
/// assert_eq!(Joint::CrownRace.hold(), Hold::Press);
/// assert_eq!(Joint::IntegratedBearing.hold(), Hold::Slip);
/// ```
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Joint {
    /// Headset cup in the head tube.
    HeadCup,
    /// Crown race on its seat.
    CrownRace,
    /// Seatpost in the seat tube.
    Seatpost,
    /// Cup pressed into a shell.
    PressShell,
    /// Bearing pressed straight into a shell.
    DirectBearing,
    /// Headset bearing dropped on a seat in the frame.
    IntegratedBearing,
    /// Quill in a steerer.
    Quill,
    /// Any other.
    Other,
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
            Self::Other => "part in bore",
        }
    }

    /// How the joint is meant to hold. A shell's own row goes before this, see `FitQuestion::hold`.
    #[must_use]
    pub const fn hold(self) -> Hold {
        match self {
            Self::HeadCup | Self::CrownRace | Self::PressShell | Self::DirectBearing => Hold::Press,
            Self::Seatpost | Self::IntegratedBearing | Self::Quill | Self::Other => Hold::Slip,
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
            Self::Other => "",
        }
    }

    const fn row_words(self) -> &'static str {
        match self {
            Self::HeadCup => "cup in head tube",
            Self::CrownRace => "crown race on seat",
            Self::Seatpost => "seatpost in seat tube",
            Self::PressShell => "press shell",
            Self::DirectBearing => "direct bearing",
            Self::IntegratedBearing => "integrated bearing in head tube",
            Self::Quill | Self::Other => "",
        }
    }

    /// The published windows that speak of this joint at this size. General machining classes are left out: they are for
    /// machined housings, not for tubes.
    ///
    /// ```
    /// use framegauge::{judge::Joint, mm};
    /// assert_eq!(Joint::DirectBearing.windows(mm(42.0)).count(), 1);
    /// assert_eq!(Joint::DirectBearing.windows(mm(37.0)).count(), 0);
    /// ```
    pub fn windows(self, near: Length) -> impl Iterator<Item = &'static FitWindow> {
        FitWindow::table()
            .iter()
            .filter(move |w| self.is_spoken_of(w, near))
    }

    /// Whether a window speaks of this joint at this size.
    pub(crate) fn is_spoken_of(self, window: &FitWindow, near: Length) -> bool {
        let close = |size: f64, by: f64| settled_below((near - mm(size)).abs(), mm(by));
        window.joint == self.row_words()
            && match window.code.as_ref() {
                "bb30_bearing" => close(42.0, 0.5),
                "cup_per_inch_rule_44" => close(44.0, 0.5),
                "integrated_is41" => close(41.1, 0.3),
                "integrated_is42" => close(41.95, 0.3),
                "seatpost_h7_27_2" => close(27.2, 0.5),
                code => !code.starts_with("bearing_od"),
            }
    }
}

/// A published window as a wanted one; `None` where it prints a single figure without limits, or nothing.
pub(super) fn wanted(window: &FitWindow) -> Option<Wanted> {
    (window.window.lower().is_some() || window.window.upper().is_some()).then(|| Wanted {
        sense: window.sense,
        limits: Limits::of_requirement(&window.window),
        owner: window.owner.clone(),
    })
}

/// Whether a window rests on a standard or on a maker's own document: such windows decide before opinions.
pub(super) fn from_maker(window: &FitWindow) -> bool {
    window.window.evidence().is_some_and(|e| {
        e.sources().iter().any(|c| {
            matches!(
                c.source().kind,
                SourceKind::Standard | SourceKind::MakerDocument
            )
        })
    })
}

/// The finding of a fit held against a window.
pub(super) fn held(fit: &Fit, what: &str, wanted: &Wanted, held: &Conformance) -> Finding {
    let mut found = Finding::fit(what, fit, wanted, held, None);
    let worst = [held.tightest, held.loosest]
        .into_iter()
        .filter_map(|d| d.margin)
        .min_by(|a, b| settled_cmp(*a, *b));
    if let Some(margin) = worst
        && settled_cmp(margin, mm(0.0)).is_lt()
    {
        found.words.push_str(&alloc::format!(
            ", {} beyond the limit by the values",
            in_mm(-margin)
        ));
    }
    found
}

/// Windows that print one figure and no limits are quoted, never applied.
pub(super) fn quoted(what: &str, windows: &[&'static FitWindow]) -> Vec<Finding> {
    windows
        .iter()
        .filter(|w| wanted(w).is_none())
        .map(|w| {
            let words = w.window.nominal().map_or_else(
                || alloc::format!("no window is published: {}", w.window.reason()),
                |figure| {
                    alloc::format!(
                        "{} prints {} of {}, without limits",
                        w.owner,
                        w.sense,
                        in_mm(figure)
                    )
                },
            );
            Finding::stated(String::from(what), words).resting_on(w.window.evidence())
        })
        .collect()
}
