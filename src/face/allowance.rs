//! What may still come off a face: every limit by name, and the nearest of them.

use alloc::vec::Vec;
use core::cmp::Ordering;
use core::fmt;

use crate::evidence::{Citation, Evidence, Grade, Text};
use crate::measure::{DecisionRule, Limits, Outcome, Reading, decide, settled_below, settled_cmp};
use crate::quantity::{Length, mm, not_negative};
use crate::{Error, ErrorKind};

/// What a limit protects.
///
/// ```
/// use framegauge::face::LimitKind;
/// assert_eq!("paint_lip".parse::<LimitKind>().unwrap(), LimitKind::PaintLip);
/// assert_eq!(LimitKind::SeatDepth.to_string(), "seat_depth");
/// ```
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    strum::Display,
    strum::EnumString,
    strum::EnumIter,
    strum::IntoStaticStr,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
#[non_exhaustive]
pub enum LimitKind {
    /// The width of the shell or the length of the head tube must not fall below its least value.
    MinimumWidth,
    /// The counterbore or bearing seat must stay deep enough for what goes in.
    SeatDepth,
    /// Enough thread must be left.
    ThreadLeft,
    /// The crown, its race or the seal must stay clear of the face.
    Clearance,
    /// The cut must stop short of painted surface that is to stay.
    PaintLip,
    /// The flat-mount must stay thick enough for its bolts, which must not bottom.
    MountThickness,
    /// The wall or insert must stay thick enough.
    Wall,
    /// The frame or component maker's own written limit.
    Maker,
    /// Anything else, named in words.
    Other,
}

/// One limit on a cut: what it protects, how much may come off before it stops the cut, and what that is worth.
///
/// ```
/// use framegauge::{Grade, face::{CutLimit, LimitKind}, in_mm, measure::Reading, mm};
/// let width = Reading::new(mm(68.30), mm(0.01)).unwrap();
/// let limit = CutLimit::leaving(LimitKind::MinimumWidth, "68 mm shell, least 67.9 mm", &width, mm(67.9), Grade::Published).unwrap();
/// assert_eq!(in_mm(limit.may_come_off().unwrap().value()).to_string(), "0.400 mm");
/// ```
pub type CutLimit = Cap<Text>;

/// What a limit is called by: a text, or a fact of a plan.
pub trait LimitName: Clone + PartialEq + fmt::Display {
    /// Whether it says nothing.
    fn is_blank(&self) -> bool {
        false
    }
}

impl LimitName for Text {
    fn is_blank(&self) -> bool {
        self.trim().is_empty()
    }
}

/// A limit on a cut, called by a text or by a fact; see [`CutLimit`].
#[derive(Debug, Clone, PartialEq)]
pub struct Cap<N, M = N> {
    kind: LimitKind,
    what: N,
    left: Left<M>,
    grade: Grade,
    sources: Vec<Citation>,
}

#[derive(Debug, Clone, PartialEq)]
enum Left<M> {
    Known(Reading),
    Unknown { measure: M },
}

impl<N: LimitName, M: LimitName> Cap<N, M> {
    /// The same limit after this much has come off. A cut that went beyond it leaves less than nothing.
    ///
    /// ```
    /// use framegauge::{Grade, face::{CutLimit, LimitKind}, measure::Reading, mm, settled_mm};
    /// let limit = CutLimit::new(LimitKind::Maker, "drawing", Reading::exact(mm(0.30)).unwrap(), Grade::Shop).unwrap();
    /// let left = limit.after_cutting(&Reading::new(mm(0.40), mm(0.01)).unwrap());
    /// assert_eq!(settled_mm(left.may_come_off().unwrap().value()), -0.1);
    /// ```
    #[must_use]
    pub fn after_cutting(mut self, off: &Reading) -> Self {
        if let Left::Known(left) = &mut self.left {
            *left = left.less(off);
        }
        self
    }

    /// A limit stated as an amount that may come off. Zero or less: nothing more may.
    ///
    /// # Errors
    /// `Missing` when the limit is not named.
    pub fn new(
        kind: LimitKind,
        what: impl Into<N>,
        may_come_off: Reading,
        grade: Grade,
    ) -> Result<Self, Error> {
        let what = named(what.into())?;
        Ok(Self {
            kind,
            what,
            left: Left::Known(may_come_off),
            grade,
            sources: Vec::new(),
        })
    }

    /// The limit that a measured size must stay at or above `least`, where every millimetre cut takes a millimetre off
    /// it: a width, a seat depth, a length of thread, a gap, a thickness.
    ///
    /// # Errors
    /// `Missing` when the limit is not named; `NotFinite` or `OutOfRange` for a size or a least size that is none.
    pub fn leaving(
        kind: LimitKind,
        what: impl Into<N>,
        measured: &Reading,
        least: Length,
        grade: Grade,
    ) -> Result<Self, Error> {
        not_negative("measured", measured.value())?;
        let least = Reading::exact(not_negative("least", least)?)?;
        Self::new(kind, what, measured.less(&least), grade)
    }

    /// A limit that exists but is not known; `measure` says what to measure or whom to ask. While it stands, no cut is
    /// shown to be allowed.
    ///
    /// # Errors
    /// `Missing` when the limit is not named.
    ///
    /// ```
    /// use framegauge::face::{Allowance, CutLimit, LimitKind};
    /// let limit = CutLimit::unknown(LimitKind::Wall, "insert", "ask the frame maker").unwrap();
    /// assert!(!Allowance::new([limit]).leaves_something());
    /// ```
    pub fn unknown(
        kind: LimitKind,
        what: impl Into<N>,
        measure: impl Into<M>,
    ) -> Result<Self, Error> {
        let what = named(what.into())?;
        Ok(Self {
            kind,
            what,
            left: Left::Unknown {
                measure: measure.into(),
            },
            grade: Grade::Shop,
            sources: Vec::new(),
        })
    }

    /// The same limit with where it was read.
    ///
    /// ```
    /// use framegauge::{Evidence, Grade, face::{CutLimit, LimitKind}, measure::Reading, mm};
    /// let limit = CutLimit::new(LimitKind::Maker, "drawing", Reading::exact(mm(0.30)).unwrap(), Grade::Shop).unwrap();
    /// assert!(limit.citing(Some(&Evidence::shop("drawing 7"))).sources().is_empty()); // a shop's figure names no source
    /// ```
    #[must_use]
    pub fn citing(mut self, evidence: Option<&Evidence>) -> Self {
        if let Some(evidence) = evidence {
            self.sources.extend(evidence.sources().iter().cloned());
        }
        self
    }

    /// Where it was read.
    #[must_use]
    pub fn sources(&self) -> &[Citation] {
        &self.sources
    }

    /// What it protects.
    #[must_use]
    pub const fn kind(&self) -> LimitKind {
        self.kind
    }
    /// What it is called.
    #[must_use]
    pub const fn what(&self) -> &N {
        &self.what
    }
    /// How much may come off; `None` when unknown.
    #[must_use]
    pub const fn may_come_off(&self) -> Option<&Reading> {
        match &self.left {
            Left::Known(left) => Some(left),
            Left::Unknown { .. } => None,
        }
    }
    /// What to measure, or whom to ask, when it is unknown.
    #[must_use]
    pub const fn measure(&self) -> Option<&M> {
        match &self.left {
            Left::Known(_) => None,
            Left::Unknown { measure } => Some(measure),
        }
    }
    /// What it is called, and where it was read.
    pub(crate) fn into_name(self) -> (N, Vec<Citation>) {
        (self.what, self.sources)
    }
    /// What the limit is worth.
    #[must_use]
    pub const fn grade(&self) -> Grade {
        self.grade
    }
    /// What may come off for certain: the value less U.
    pub(crate) fn surely(&self) -> Option<Length> {
        self.may_come_off()
            .map(|left| left.value() - left.expanded_uncertainty())
    }
}

fn named<N: LimitName>(what: N) -> Result<N, Error> {
    if what.is_blank() {
        return Err(Error::new(
            ErrorKind::Missing,
            "limit",
            "",
            "a limit without a name",
            "say what it protects, e.g. `68 mm shell, least 67.9 mm`",
        ));
    }
    Ok(what)
}

#[cfg(feature = "serde")]
impl<N: LimitName + serde::Serialize, M: LimitName + serde::Serialize> serde::Serialize
    for Cap<N, M>
{
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeStruct;
        let mut out = serializer.serialize_struct("CutLimit", 5)?;
        out.serialize_field("kind", &self.kind)?;
        out.serialize_field("what", &self.what)?;
        out.serialize_field("may_come_off", &self.may_come_off())?;
        match self.measure() {
            Some(measure) => out.serialize_field("measure", measure)?,
            None => out.serialize_field("measure", "")?,
        }
        out.serialize_field("grade", &self.grade)?;
        out.end()
    }
}

/// Everything that limits a cut. The nearest limit counts, and is named.
///
/// ```
/// use framegauge::{Grade, face::{Allowance, CutLimit, LimitKind}, measure::Reading, mm};
/// let off = |v| Reading::new(mm(v), mm(0.01)).unwrap();
/// let allowance = Allowance::new([
///     CutLimit::new(LimitKind::MinimumWidth, "least width", off(0.40), Grade::Published).unwrap(),
///     CutLimit::new(LimitKind::PaintLip, "paint lip", off(0.15), Grade::Shop).unwrap(),
/// ]);
/// assert_eq!(allowance.nearest().unwrap().what(), "paint lip");
/// ```
pub type Allowance = Caps<Text>;

/// Everything that limits a cut, each called by a text or by a fact; see [`Allowance`].
#[derive(Debug, Clone, PartialEq)]
pub struct Caps<N, M = N> {
    limits: Vec<Cap<N, M>>,
}

impl<N, M> Default for Caps<N, M> {
    fn default() -> Self {
        Self { limits: Vec::new() }
    }
}

#[cfg(feature = "serde")]
impl<N: LimitName + serde::Serialize, M: LimitName + serde::Serialize> serde::Serialize
    for Caps<N, M>
{
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.limits.serialize(serializer)
    }
}

impl<N: LimitName, M: LimitName> Caps<N, M> {
    /// An allowance from its limits.
    pub fn new(limits: impl Into<Vec<Cap<N, M>>>) -> Self {
        Self {
            limits: limits.into(),
        }
    }
    /// Adds a limit.
    #[must_use]
    pub fn and(mut self, limit: Cap<N, M>) -> Self {
        self.limits.push(limit);
        self
    }
    /// All limits, in the order given.
    #[must_use]
    pub fn limits(&self) -> &[Cap<N, M>] {
        &self.limits
    }
    pub(crate) fn into_limits(self) -> Vec<Cap<N, M>> {
        self.limits
    }
    /// The known limit that leaves least to come off for certain (value less U); of equals the first.
    #[must_use]
    pub fn nearest(&self) -> Option<&Cap<N, M>> {
        self.limits
            .iter()
            .filter_map(|limit| Some((limit.surely()?, limit)))
            .fold(
                None,
                |nearest: Option<(Length, &Cap<N, M>)>, next| match nearest {
                    Some(best) if settled_cmp(next.0, best.0) != Ordering::Less => Some(best),
                    _ => Some(next),
                },
            )
            .map(|(_, limit)| limit)
    }
    /// The first limit that is not known.
    #[must_use]
    pub fn first_unknown(&self) -> Option<&Cap<N, M>> {
        self.limits
            .iter()
            .find(|limit| limit.may_come_off().is_none())
    }
    /// The same allowance after this much has come off the face.
    ///
    /// ```
    /// use framegauge::{Grade, face::{Allowance, CutLimit, LimitKind}, in_mm, measure::Reading, mm};
    /// let limit = CutLimit::new(LimitKind::Wall, "insert", Reading::exact(mm(0.3)).unwrap(), Grade::Shop).unwrap();
    /// let left = Allowance::new([limit]).after(&Reading::exact(mm(0.1)).unwrap());
    /// assert_eq!(in_mm(left.nearest().unwrap().may_come_off().unwrap().value()).to_string(), "0.200 mm");
    /// ```
    #[must_use]
    pub fn after(&self, taken: &Reading) -> Self {
        let limits = self.limits.iter().cloned();
        let limits = limits.map(|limit| limit.after_cutting(taken));
        Self {
            limits: limits.collect(),
        }
    }
    /// Whether something may come off for certain: every limit known, the nearest above zero by more than U.
    #[must_use]
    pub fn leaves_something(&self) -> bool {
        self.first_unknown().is_none()
            && self
                .nearest()
                .and_then(Cap::surely)
                .is_some_and(|sure| settled_cmp(sure, mm(0.0)) == Ordering::Greater)
    }

    /// Whether so much may come off: the nearest limit decides by this rule, and an unknown one comes first unless a known
    /// one leaves nothing at all.
    ///
    /// # Errors
    /// None that readings of a frame can cause: those of [`Limits::at_least`] for nothing.
    ///
    /// ```
    /// use framegauge::{Grade, face::{Allowance, CutLimit, LimitKind, Pass}, measure::{DecisionRule, Reading}, mm};
    /// let lip = CutLimit::new(LimitKind::PaintLip, "paint lip", Reading::exact(mm(0.08)).unwrap(), Grade::Shop).unwrap();
    /// let needed = Reading::new(mm(0.10), mm(0.004)).unwrap();
    /// assert!(matches!(Allowance::new([lip]).pass(&needed, DecisionRule::default()).unwrap(), Pass::Beyond { .. }));
    /// ```
    pub fn pass(&self, needed: &Reading, rule: DecisionRule) -> Result<Pass<'_, N, M>, Error> {
        let nearest = self.nearest().and_then(|l| Some((l, l.may_come_off()?)));
        let above_zero = |left: &Reading, limit: &Cap<N, M>| {
            Limits::at_least(mm(0.0), limit.grade()).map(|zero| decide(left, &zero, rule).outcome)
        };
        if let Some((limit, left)) = nearest
            && (above_zero(left, limit)? != Outcome::ConformityShown
                || !settled_below(mm(0.0), left.value()))
        {
            return Ok(Pass::Nothing { limit });
        }
        if let Some(limit) = self.first_unknown() {
            return Ok(Pass::Unknown { limit });
        }
        let Some((limit, left)) = nearest else {
            return Ok(Pass::NoLimit);
        };
        Ok(match above_zero(&left.less(needed), limit)? {
            Outcome::ConformityShown => Pass::Within {
                up_to: deepest(needed, left),
                limit,
            },
            Outcome::NonconformityShown => Pass::Beyond { limit },
            Outcome::Undecided => Pass::TooClose { limit },
        })
    }
}

/// Whether so much may come off.
///
/// ```
/// use framegauge::{face::{Allowance, Pass}, measure::{DecisionRule, Reading}, mm};
/// let needed = Reading::exact(mm(0.10)).unwrap();
/// assert_eq!(Allowance::default().pass(&needed, DecisionRule::default()).unwrap(), Pass::NoLimit);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Pass<'a, N = Text, M = N> {
    /// It may, and with its uncertainty as much as `up_to`, never past what the nearest limit allows for certain.
    Within {
        /// At most this much.
        up_to: Length,
        /// The nearest limit.
        limit: &'a Cap<N, M>,
    },
    /// Nothing more may come off at all.
    Nothing {
        /// The limit that forbids it.
        limit: &'a Cap<N, M>,
    },
    /// It is more than the nearest limit allows.
    Beyond {
        /// The limit.
        limit: &'a Cap<N, M>,
    },
    /// Needed and allowed lie too close together to tell.
    TooClose {
        /// The limit.
        limit: &'a Cap<N, M>,
    },
    /// A limit is not known.
    Unknown {
        /// Which one, with what to measure.
        limit: &'a Cap<N, M>,
    },
    /// Nobody stated any limit.
    NoLimit,
}

/// How deep a pass may go at most: what is needed with its uncertainty, but the uncertainty of the survey must not carry the
/// cut past what the limit allows for certain.
fn deepest(needed: &Reading, left: &Reading) -> Length {
    let sure = left.value() - left.expanded_uncertainty();
    let wished = needed.value() + needed.expanded_uncertainty();
    wished.min(sure).max(needed.value())
}
