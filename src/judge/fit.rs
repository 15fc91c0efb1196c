//! Does this part fit? Two members as measured, as limited, or as felt, against the windows that are published.

use alloc::string::String;
use alloc::vec::Vec;

use super::joint::windows_of;
use super::verdict::Verdict;
use super::{FitFact, MemberOf};
use crate::Error;
use crate::fact::closed_words;
use crate::fit::{Feature, HoleMember, Sense, ShaftMember, Wanted, fit_between};
use crate::measure::{DecisionRule, Limits};
use crate::quantity::{Length, positive};
use crate::read::{Given, form, words};
use crate::standard::{BoreWindow, Hold, Joint, Shell, Tables};

closed_words! {
    /// What was felt or seen without a measuring tool.
    ///
    /// ```
    /// use framegauge::{judge::{Felt, Fit}, measure::Outcome, standard::{Joint, Tables}};
    /// let asked = Fit { joint: Some(Joint::HeadCup), felt: vec![Felt::GoesByHand], ..Fit::default() };
    /// let cup = asked.answer(Tables::ours()).unwrap();
    /// assert_eq!(cup.outcome, Outcome::NonconformityShown);
    /// assert!(cup.next[0].measure().contains("bore"));
    /// ```
    #[cfg_attr(feature = "serde", derive(serde::Deserialize))]
    Felt {
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
}

words!(Felt);

form! {
    /// The fit of a post, cup, bearing, race or any other part: how tight it is, what its maker and the trade want of it, which of
    /// the two members is off, and what would cure it. What is missing comes back as the next measurement.
    ///
    /// A maker's or the asker's own windows decide before opinions. Where opinions on a sliding part disagree nothing is
    /// shown; of a pressed one the span of all of them decides. Over paint a hole is at least as large as it reads and a
    /// shaft at most: only a looseness is shown through paint.
    ///
    /// ```
    /// use framegauge::{judge::{Fit, MemberOf}, measure::Outcome, standard::{Joint, Tables}};
    /// // New fork: seat 30.02 mm, race 29.92 mm by caliper; the race does not start by hand.
    /// let asked = Fit {
    ///     joint: Some(Joint::CrownRace),
    ///     hole: MemberOf::read("29.92 +/- 0.03 mm".parse().unwrap()),
    ///     shaft: MemberOf::read("30.02 +/- 0.03 mm".parse().unwrap()),
    ///     ..Fit::default()
    /// };
    /// let said = asked.answer(Tables::ours()).unwrap();
    /// assert_eq!(said.outcome, Outcome::ConformityShown);
    /// assert_eq!(said.millimetres("interference"), Some(0.1));
    /// ```
    ///
    /// With the size that both are sold as, the answer says which of the two is off, or that the readings do not tell:
    /// ```
    /// use framegauge::{fit::Out, judge::{Fit, MemberOf}, mm, standard::{Joint, Tables}};
    /// let asked = |post: &str| Fit {
    ///     joint: Some(Joint::Seatpost), sold_as: Some(mm(27.2)),
    ///     hole: MemberOf::read("27.20 +/- 0.02 mm".parse().unwrap()), shaft: MemberOf::read(post.parse().unwrap()),
    ///     ..Fit::default()
    /// }.answer(Tables::ours()).unwrap();
    /// assert_eq!(asked("27.00 +/- 0.02 mm").out, Some(Out::Shaft));
    /// assert_eq!(asked("27.08 +/- 0.05 mm").out, Some(Out::CannotTell));
    /// ```
    #[derive(Default)]
    Fit {
        /// The joint; without it only the windows that are stated here are held against.
        joint: Option<Joint>,
        /// Code of the shell, where it is one of a press shell: its way of holding, its bore and its printed limits.
        shell: Option<String>,
        /// How the joint is meant to hold, where it differs from the usual.
        hold: Option<Hold>,
        /// The outer member.
        hole: MemberOf => Given,
        /// The inner member.
        shaft: MemberOf => Given,
        /// The size that both are sold or drawn as.
        sold_as: Option<Length>,
        /// Windows of clearance that are wanted: hole less shaft, on diameter. They decide before everything published.
        clearance: Vec<Limits>,
        /// Windows of interference that are wanted: shaft less hole, on diameter. They decide before everything published.
        interference: Vec<Limits>,
        /// Whose these windows are.
        owner: Option<String>,
        /// What was felt or seen.
        felt: Vec<Felt>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

/// A question with everything looked up.
pub(super) struct Asked<'a> {
    pub(super) question: &'a Fit,
    pub(super) tables: Tables<'a>,
    pub(super) joint: Joint,
    pub(super) hold: Option<Hold>,
    pub(super) hole: Option<HoleMember>,
    /// The window of a press shell that the limits of the hole were taken from.
    pub(super) hole_row: Option<&'a BoreWindow>,
    pub(super) shaft: Option<ShaftMember>,
    pub(super) nominal: Option<Length>,
    pub(super) rule: DecisionRule,
}

impl Fit {
    /// The verdict.
    ///
    /// # Errors
    /// Those of the members and of windows that are none; `UnknownName` for a shell, `Missing` for one without a bore.
    ///
    /// ```
    /// use framegauge::{judge::{Felt, Fit}, measure::Outcome, standard::Tables};
    /// // A moulded 37 mm seat is a slip fit by design: no interference is no fault.
    /// let asked = Fit { shell: Some("bb90".into()), felt: vec![Felt::GoesByHand], ..Fit::default() };
    /// let said = asked.answer(Tables::ours()).unwrap();
    /// assert_eq!(said.outcome, Outcome::Undecided);
    /// assert!(said.words().contains("slip fit by design"));
    /// ```
    pub fn answer(&self, tables: Tables<'_>) -> Result<Verdict, Error> {
        let asked = self.looked_up(tables)?;
        let (said, joint) = (asked.as_known()?, asked.joint);
        Ok(if joint.caution().is_empty() {
            said
        } else {
            said.minding(FitFact::MindJoint { joint })
        })
    }

    fn looked_up<'a>(&'a self, tables: Tables<'a>) -> Result<Asked<'a>, Error> {
        let sold_as = self.sold_as.map(|d| positive("sold_as", d)).transpose()?;
        let mut asked = Asked {
            question: self,
            tables,
            joint: self.joint.unwrap_or(Joint::Other),
            hold: self.hold.or(self.joint.map(Joint::hold)),
            hole: None,
            hole_row: None,
            shaft: None,
            nominal: sold_as.or(self.hole.nominal).or(self.shaft.nominal),
            rule: self.rule.unwrap_or_default(),
        };
        let mut hole = alloc::borrow::Cow::Borrowed(&self.hole);
        if let Some(name) = &self.shell {
            let printed = asked.of_shell(name, self.hold)?;
            asked.hole_row = printed.filter(|_| !hole.says_limits());
            if let Some(row) = asked.hole_row {
                hole.to_mut().limits = Some(Limits::of_size(&row.window));
            }
        }
        if !hole.is_empty() {
            asked.hole = Some(hole.member().map_err(|e| e.within("hole"))?);
        }
        if !self.shaft.is_empty() {
            asked.shaft = Some(self.shaft.member().map_err(|e| e.within("shaft"))?);
        }
        Ok(asked)
    }

    /// The windows that the asker states.
    pub(super) fn windows(&self) -> impl Iterator<Item = Wanted> {
        let clearance = self.clearance.iter().map(|l| (Sense::Clearance, l));
        let interference = self.interference.iter().map(|l| (Sense::Interference, l));
        clearance.chain(interference).map(|(sense, limits)| Wanted {
            sense,
            limits: *limits,
            owner: self.owner.clone().unwrap_or_default().into(),
        })
    }
}

impl<'a> Asked<'a> {
    /// The readings of a member, and whether any lies over paint.
    pub(super) fn read(&self, member: Feature) -> (usize, bool) {
        let read = match member {
            Feature::Hole => &self.question.hole,
            Feature::Shaft => &self.question.shaft,
        };
        (read.readings.len(), read.over_paint())
    }

    pub(super) fn painted(&self) -> bool {
        self.read(Feature::Hole).1 || self.read(Feature::Shaft).1
    }

    /// What the row of a shell says; returns the limits that are printed for its bore.
    fn of_shell(
        &mut self,
        name: &str,
        hold: Option<Hold>,
    ) -> Result<Option<&'a BoreWindow>, Error> {
        let found = self.tables.find::<Shell>(name);
        let shell = found.map_err(|e| e.named("shell"))?;
        let Some(nominal) = shell.bore.as_ref().and_then(crate::Figure::nominal) else {
            return Err(Error::new(
                crate::ErrorKind::Missing,
                "shell",
                shell.code.clone(),
                "no bore is known for this shell",
                "a threaded shell is judged by its thread; else measure the bore",
            ));
        };
        let of_row = shell.fit.as_ref().and_then(|f| f.value()).copied();
        // Bearings stand in the bore itself where a window for that is published at this size.
        let mut direct = windows_of(self.tables, Joint::DirectBearing, nominal);
        self.joint = if of_row == Some(Hold::Press) && direct.next().is_some() {
            Joint::DirectBearing
        } else {
            Joint::PressShell
        };
        self.hold = hold.or(of_row).or(Some(self.joint.hold()));
        self.nominal = self.nominal.or(Some(nominal));
        let mut printed = self.tables.all::<BoreWindow>();
        Ok(printed.find(|w| w.shell == shell.code && w.window.is_known()))
    }

    fn as_known(&self) -> Result<Verdict, Error> {
        if let (Some(hole), Some(shaft)) = (&self.hole, &self.shaft) {
            match fit_between(hole, shaft, self.rule) {
                Ok(_) => return self.measured(hole, shaft),
                Err(e) if e.kind() == crate::ErrorKind::Missing => {}
                Err(e) if e.field().contains("nominal") => return Err(e.named("shaft.nominal")),
                Err(e) => return Err(e.named("hole")),
            }
        }
        let (hole, shaft) = (self.hole.as_ref(), self.shaft.as_ref());
        let hole_known = hole.is_some_and(|h| h.shape().is_some());
        let shaft_known = shaft.is_some_and(|s| s.shape().is_some() || s.limits().is_some());
        Ok(self.unmeasured(hole_known, shaft_known))
    }
}
