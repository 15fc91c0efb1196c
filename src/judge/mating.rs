//! Does this part fit? Two members as measured, as limited, or as felt, against the windows that are published.

use alloc::string::String;
use alloc::vec::Vec;

use super::Joint;
use super::verdict::Verdict;
use crate::Error;
use crate::evidence::Evidence;
use crate::fit::{Feature, HoleMember, ShaftMember, Wanted, fit_between};
use crate::measure::{DecisionRule, Limits, Reading, settled_below};
use crate::quantity::{Length, mm};
use crate::standard::{BoreWindow, Hold, Row, Shell};

/// What was felt or seen without a measuring tool.
///
/// ```
/// use framegauge::judge::{Felt, FitQuestion, Joint};
/// use framegauge::measure::Outcome;
/// let cup = FitQuestion::new(Joint::HeadCup).felt(Felt::GoesByHand).judge().unwrap();
/// assert_eq!(cup.outcome, Outcome::NonconformityShown);
/// assert!(cup.next[0].measure.contains("bore"));
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Felt {
    /// The part goes in or on by hand.
    GoesByHand,
    /// The part rocks or knocks.
    Rocks,
    /// The part turned or crept in use: marks on both members moved apart.
    TurnedInUse,
    /// The part does not start by hand.
    NeedsForce,
    /// The same hole was loose with two or more good inner parts.
    HoleLooseWithSeveral,
    /// The same inner part was loose in two or more good holes.
    ShaftLooseInSeveral,
}

/// A question about one joint. Give what is known; what is missing comes back as the next measurement.
///
/// ```
/// use framegauge::{fit::{HoleMember, ShaftMember}, judge::{FitQuestion, Joint}, measure::Outcome};
/// // New fork: seat 30.02 mm, race 29.92 mm by caliper; the race does not start by hand.
/// let race = HoleMember::of_reading("29.92 +/- 0.03 mm".parse().unwrap()).unwrap();
/// let seat = ShaftMember::of_reading("30.02 +/- 0.03 mm".parse().unwrap()).unwrap();
/// let said = FitQuestion::new(Joint::CrownRace).hole(race).shaft(seat).judge().unwrap();
/// assert_eq!(said.outcome, Outcome::ConformityShown);
/// assert_eq!(said.millimetres("interference"), Some(0.1));
/// ```
#[derive(Debug, Clone)]
pub struct FitQuestion {
    pub(super) joint: Joint,
    pub(super) hold: Hold,
    pub(super) hole: Option<HoleMember>,
    pub(super) hole_owner: String,
    pub(super) hole_evidence: Option<&'static Evidence>,
    pub(super) shaft: Option<ShaftMember>,
    pub(super) nominal: Option<Length>,
    pub(super) windows: Vec<Wanted>,
    pub(super) felt: Vec<Felt>,
    pub(super) coated: [bool; 2],
    pub(super) rule: DecisionRule,
}

impl FitQuestion {
    /// A question about this joint.
    #[must_use]
    pub fn new(joint: Joint) -> Self {
        Self {
            joint,
            hold: joint.hold(),
            hole: None,
            hole_owner: String::new(),
            hole_evidence: None,
            shaft: None,
            nominal: None,
            windows: Vec::new(),
            felt: Vec::new(),
            coated: [false; 2],
            rule: DecisionRule::default(),
        }
    }

    /// A question about a press shell of the tables: its way of holding, its nominal bore and its printed bore limits.
    ///
    /// # Errors
    /// `Missing` when the row has no bore, as a threaded shell.
    ///
    /// ```
    /// use framegauge::{judge::{Felt, FitQuestion}, measure::Outcome, standard::{Shell, find}};
    /// // A moulded 37 mm seat is a slip fit by design: no interference is no fault.
    /// let said = FitQuestion::of_shell(find::<Shell>("bb90").unwrap()).unwrap().felt(Felt::GoesByHand).judge().unwrap();
    /// assert_eq!(said.outcome, Outcome::Undecided);
    /// assert!(said.sentence.contains("slip fit by design"));
    /// ```
    pub fn of_shell(shell: &Shell) -> Result<Self, Error> {
        let Some(nominal) = shell.bore.as_ref().and_then(crate::Figure::nominal) else {
            return Err(Error::new(
                crate::ErrorKind::Missing,
                "shell",
                shell.code.clone(),
                "no bore is known for this shell",
                "a threaded shell is judged by its thread; else measure the bore",
            ));
        };
        let direct = shell
            .fit
            .as_ref()
            .and_then(|f| f.value())
            .is_some_and(|h| *h == Hold::Press)
            && settled_below((nominal - mm(42.0)).abs(), mm(0.5));
        let mut out = Self::new(if direct {
            Joint::DirectBearing
        } else {
            Joint::PressShell
        });
        if let Some(hold) = shell.fit.as_ref().and_then(|f| f.value()) {
            out.hold = *hold;
        }
        out.nominal = Some(nominal);
        let printed = BoreWindow::table()
            .iter()
            .find(|w| w.shell == shell.code && w.window.is_known());
        if let Some(window) = printed {
            out.hole = Some(HoleMember::of_limits(Limits::of_size(&window.window))?);
            out.hole_owner = String::from(&*window.owner);
            out.hole_evidence = window.window.evidence();
        }
        Ok(out)
    }

    /// How the joint is meant to hold, where it differs from the usual.
    #[must_use]
    pub const fn hold(mut self, hold: Hold) -> Self {
        self.hold = hold;
        self
    }
    /// The outer member.
    #[must_use]
    pub fn hole(mut self, hole: HoleMember) -> Self {
        self.hole = Some(hole);
        self
    }
    /// A reading of the outer member, held against its limits where [`Self::of_shell`] knew any.
    ///
    /// # Errors
    /// As [`HoleMember::measured_once`].
    ///
    /// ```
    /// use framegauge::{judge::FitQuestion, standard::{Shell, find}};
    /// let question = FitQuestion::of_shell(find::<Shell>("bb30").unwrap()).unwrap();
    /// assert!(question.hole_measured("41.98 +/- 0.01 mm".parse().unwrap()).is_ok());
    /// ```
    pub fn hole_measured(mut self, reading: Reading) -> Result<Self, Error> {
        let member = match self.hole.take() {
            Some(member) => member.measured_once(reading)?,
            None => HoleMember::of_reading(reading)?,
        };
        self.hole = Some(member);
        Ok(self)
    }
    /// The inner member.
    #[must_use]
    pub fn shaft(mut self, shaft: ShaftMember) -> Self {
        self.shaft = Some(shaft);
        self
    }
    /// The size that both are sold or drawn as.
    ///
    /// ```
    /// use framegauge::{fit::ShaftMember, judge::{FitQuestion, Joint}, mm};
    /// // With the size both are sold as, the answer says which of the two is off.
    /// let post = ShaftMember::of_reading("27.00 +/- 0.02 mm".parse().unwrap()).unwrap();
    /// let said = FitQuestion::new(Joint::Seatpost).sold_as(mm(27.2)).hole_measured("27.22 +/- 0.02 mm".parse().unwrap()).unwrap()
    ///     .shaft(post).judge().unwrap();
    /// assert!(said.sentence.contains("Against 27.200 mm as sold, the inner part is off"));
    /// ```
    #[must_use]
    pub const fn sold_as(mut self, nominal: Length) -> Self {
        self.nominal = Some(nominal);
        self
    }
    /// A maker's own window; it decides before everything published.
    #[must_use]
    pub fn window(mut self, wanted: Wanted) -> Self {
        self.windows.push(wanted);
        self
    }
    /// What was felt or seen.
    #[must_use]
    pub fn felt(mut self, felt: Felt) -> Self {
        self.felt.push(felt);
        self
    }
    /// This member was read on paint or another coating.
    ///
    /// ```
    /// use framegauge::{fit::Feature, judge::{FitQuestion, Joint}, measure::Outcome};
    /// let said = FitQuestion::new(Joint::CrownRace).coated(Feature::Shaft).judge().unwrap();
    /// assert_eq!(said.outcome, Outcome::Undecided);
    /// ```
    #[must_use]
    pub const fn coated(mut self, member: Feature) -> Self {
        match member {
            Feature::Hole => self.coated[0] = true,
            Feature::Shaft => self.coated[1] = true,
        }
        self
    }
    /// The decision rule.
    #[must_use]
    pub const fn rule(mut self, rule: DecisionRule) -> Self {
        self.rule = rule;
        self
    }

    /// The verdict.
    ///
    /// # Errors
    /// Those of [`fit_between`] and of windows that are none.
    pub fn judge(&self) -> Result<Verdict, Error> {
        let said = self.as_known()?;
        Ok(match self.joint.caution() {
            "" => said,
            caution => said.minding(caution),
        })
    }

    fn as_known(&self) -> Result<Verdict, Error> {
        let both = self.hole.as_ref().zip(self.shaft.as_ref());
        if let Some((hole, shaft)) = both {
            match fit_between(hole, shaft, self.rule) {
                Ok(_) => return self.measured(hole, shaft),
                Err(e) if e.kind() == crate::ErrorKind::Missing => {}
                Err(e) => return Err(e),
            }
        }
        let hole_known = self.hole.as_ref().is_some_and(|h| h.shape().is_some());
        let shaft_known = self
            .shaft
            .as_ref()
            .is_some_and(|s| s.shape().is_some() || s.limits().is_some());
        Ok(self.unmeasured(hole_known, shaft_known))
    }
}
