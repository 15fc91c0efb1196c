//! `mate`: two members against each other.

use alloc::string::String;
use alloc::vec::Vec;

use super::said::{bare, named, said_of};
use super::told::answer;
use super::told::told;
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::fit::{
    Fit, FitKind, HoleMember, Member, Out, Part, RingClass, RingSize, ShaftMember, SizeClass,
    SizeReading, Wanted, Windows, fit_between, iso286_sources, ring_tolerance,
};
use crate::measure::{DecisionRule, Limits, Placed, Reading};
use crate::quantity::{Angle, Length, settled_mm};
use crate::read::{Read, Shape, Tree, form};
use crate::standard::FitWindow;
use crate::{Error, ErrorKind, Grade};

told! {
    FitKind => Shape::Text { what: "`clearance`, `transition` or `interference`" },
    Out => Shape::Text { what: "`neither`, `hole`, `shaft`, `both` or `cannot_tell`" },
    Fit => Shape::Report { what: "the fit as reckoned: both members, tightest, loosest and mean place, cautions" },
    Windows => Shape::Report { what: "one verdict a window, with its cure, and whether the windows conflict" },
}

/// A diameter, with its place where that was noted.
///
/// In a question it is a text such as `27.25 +/- 0.02 mm`, or an object with `size`, `across` (an angle) and `depth`.
///
/// ```
/// use framegauge::{ask::SizeAt, read::Tree};
/// let tree: Tree = serde_json::from_str(r#""27.25 +/- 0.02 mm""#).unwrap();
/// assert!(framegauge::read::read_whole::<SizeAt>(\&tree, framegauge::standard::Tables::ours()).unwrap().0.depth().is_none());
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SizeAt(pub SizeReading);

form! {
    /// A diameter with its place.
    ///
    /// ```
    /// use framegauge::{ask::PlacedSize, read::Tree};
    /// let tree: Tree = serde_json::from_str(r#"{"size":"27.25 +/- 0.02 mm","across":"90 deg"}"#).unwrap();
    /// assert!(framegauge::read::read_whole::<PlacedSize>(\&tree, framegauge::standard::Tables::ours()).unwrap().depth.is_none());
    /// ```
    PlacedSize {
        /// The diameter.
        size: Reading,
        /// Direction of the axis that it was read across.
        across: Option<Angle>,
        /// Depth from the mouth, or for a post from its lower end.
        depth: Option<Length>,
    }
}

impl Read for SizeAt {
    const SHAPE: Shape = Shape::Either(&[Placed::SHAPE, PlacedSize::SHAPE]);

    fn read(tree: &Tree<'_>, context: &mut crate::read::Context<'_>) -> Option<Self> {
        let (size, across, depth) = if matches!(tree, Tree::Fields(_)) {
            let placed = PlacedSize::read(tree, context)?;
            (placed.size, placed.across, placed.depth)
        } else {
            let placed = Placed::read(tree, context)?;
            (placed.reading, placed.angle, placed.depth)
        };
        let mut size = SizeReading::new(size);
        if let Some(axis) = across {
            size = context.under("across", |context| context.keep(size.across(axis)))?;
        }
        if let Some(depth) = depth {
            size = context.under("depth", |context| context.keep(size.at_depth(depth)))?;
        }
        Some(Self(size))
    }
}

form! {
    /// A member of a fit: readings, and at most one of a class, a bearing ring and limits.
    ///
    /// ```
    /// use framegauge::{ask::MemberOf, read::Tree};
    /// let tree: Tree = serde_json::from_str(r#"{"class":"42 N7","readings":["41.975 +/- 0.004 mm"]}"#).unwrap();
    /// assert_eq!(framegauge::read::read_whole::<MemberOf>(\&tree, framegauge::standard::Tables::ours()).unwrap().readings.len(), 1);
    /// ```
    MemberOf {
        /// Diameters as measured.
        readings: Vec<SizeAt>,
        /// Its size with its ISO 286 class.
        class: Option<SizeClass>,
        /// Nominal diameter of a bearing ring: a shaft is the outside of an outer ring, a hole the bore of an inner one.
        ring: Option<Length>,
        /// Class of that ring; `Normal` unless stated.
        ring_class: Option<RingClass>,
        /// Its maker's limits of size.
        limits: Option<Limits>,
        /// The nominal size that it is sold or drawn as.
        nominal: Option<Length>,
    }
}

impl MemberOf {
    pub(super) fn member<P: Part>(&self) -> Result<Member<P>, Error> {
        let stated = [
            ("class", self.class.is_some()),
            ("ring", self.ring.is_some()),
            ("limits", self.limits.is_some()),
        ];
        let mut given = stated.iter().filter(|(_, is)| *is).map(|(name, _)| *name);
        given.next();
        if let Some(second) = given.next() {
            return Err(Error::new(
                ErrorKind::Contradiction,
                second,
                "",
                "a second statement of one size",
                "state one of class, ring, limits, and readings",
            ));
        }
        if self.ring_class.is_some() && self.ring.is_none() {
            return Err(crate::read::missing("ring"));
        }
        let sizes: Vec<SizeReading> = self.readings.iter().map(|at| at.0).collect();
        let member = if let Some(class) = self.class {
            Some(Member::of_class(class.nominal(), class.class()).map_err(|e| named(&e, "class"))?)
        } else if let Some(ring) = self.ring {
            let class = self.ring_class.unwrap_or(RingClass::Normal);
            Some(Member::of_ring(ring, class).map_err(|e| named(&e, "ring"))?)
        } else if let Some(limits) = self.limits {
            Some(Member::of_limits(limits).map_err(|e| named(&e, "limits"))?)
        } else {
            None
        };
        let of_readings = |e: Error| named(&e, "readings");
        let member = match member {
            Some(member) if sizes.is_empty() => member,
            Some(member) => member.measured(&sizes).map_err(of_readings)?,
            None => Member::measured_only(&sizes).map_err(of_readings)?,
        };
        match self.nominal {
            Some(nominal) => member
                .with_nominal(nominal)
                .map_err(|e| named(&e, "nominal")),
            None => Ok(member),
        }
    }

    /// What the tables say of it. `ring` is the size of a ring that this member would be.
    pub(super) fn basis(&self, basis: Basis, ring: RingSize) -> Basis {
        let basis = if self.class.is_some() {
            basis.with_tables(&iso286_sources())
        } else {
            basis
        };
        let class = self.ring_class.unwrap_or(RingClass::Normal);
        match self
            .ring
            .and_then(|size| ring_tolerance(ring, class, size).ok())
        {
            Some(found) => basis.with_tables(&[found.from]),
            None => basis,
        }
    }
}

form! {
    /// `mate`: two members with their readings or limits: how tight, which is out, and what would cure it.
    ///
    /// ```
    /// use framegauge::ask::{Context, Question};
    /// let question: Question = serde_json::from_str(
    ///     r#"{"ask":"mate","hole":{"readings":["27.40 +/- 0.02 mm"],"nominal":"27.2 mm"},
    ///         "shaft":{"readings":["27.00 +/- 0.02 mm"]},"clearance":["0 mm to 0.1 mm"]}"#).unwrap();
    /// let answer = serde_json::to_value(question.answer(&Context::default()).unwrap()).unwrap();
    /// assert_eq!(answer["windows"]["each"][0]["out"], "both");
    /// ```
    Mate {
        /// The outer member.
        hole: MemberOf,
        /// The inner member.
        shaft: MemberOf,
        /// Windows of clearance that are wanted: hole less shaft, on diameter.
        clearance: Vec<Limits>,
        /// Windows of interference that are wanted: shaft less hole, on diameter.
        interference: Vec<Limits>,
        /// A joint of the table `fit_window`, such as `seatpost in seat tube`: every window that is published for it.
        joint: Option<String>,
        /// Decision rule.
        rule: Option<DecisionRule>,
    }
}

answer! {
    /// A fit.
    MateAnswer {
        /// Clearance, transition or interference.
        kind: FitKind,
        /// Clearance at the tightest place; negative is interference.
        tightest_mm: f64,
        /// Clearance at the loosest place; negative is interference.
        loosest_mm: f64,
        /// Which member is out of its own limits.
        out: Out,
        /// The same in words.
        words: String,
        /// The fit in full.
        fit: Fit,
        /// The fit held against the windows that were asked about.
        windows: Option<Windows>,
    }
}

pub(super) fn fit_of(
    hole: &MemberOf,
    shaft: &MemberOf,
    rule: Option<DecisionRule>,
) -> Result<Fit, Error> {
    let outer: HoleMember = hole.member().map_err(|e| e.within("hole"))?;
    let inner: ShaftMember = shaft.member().map_err(|e| e.within("shaft"))?;
    fit_between(&outer, &inner, rule.unwrap_or_default()).map_err(|e| {
        said_of(
            &e,
            &[("shaft", "shaft"), ("nominal", "shaft.nominal")],
            "hole",
        )
    })
}

impl Ask for Mate {
    type Answer = MateAnswer;

    fn answer(&self, context: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let fit = fit_of(&self.hole, &self.shaft, self.rule)?;
        let gaps = self.clearance.iter().map(|l| Wanted::clearance(*l, ""));
        let presses = self
            .interference
            .iter()
            .map(|l| Wanted::interference(*l, ""));
        let mut wanted: Vec<Wanted> = gaps.chain(presses).collect();
        let mut basis = Basis::graded(Grade::Standard);
        if let Some(joint) = &self.joint {
            let (published, with_sources) = windows_of_joint(context, joint, basis)?;
            basis = with_sources;
            wanted.extend(published);
        }
        let windows = if wanted.is_empty() {
            None
        } else {
            let field = match (self.clearance.is_empty(), self.interference.is_empty()) {
                (false, _) => "clearance",
                (true, false) => "interference",
                (true, true) => "joint",
            };
            Some(
                fit.against_each(&wanted)
                    .map_err(|e| bare(&e).within(field))?,
            )
        };
        let grade = windows
            .iter()
            .flat_map(|w| w.each.iter().map(|c| c.grade))
            .chain(fit.grade())
            .min();
        let basis = basis
            .at_best(Some(grade.unwrap_or(Grade::Shop)))
            .by("clearance = hole less shaft, on diameter");
        Ok(Answered {
            basis: both(&self.hole, &self.shaft, basis),
            answer: MateAnswer {
                kind: fit.kind(),
                tightest_mm: settled_mm(fit.tightest().value()),
                loosest_mm: settled_mm(fit.loosest().value()),
                out: fit.out(),
                words: alloc::format!("{} on diameter", crate::judge::fit_words(&fit)),
                fit,
                windows,
            },
        })
    }
}

/// Every window that somebody publishes for a joint, side by side, and what they rest on.
pub(super) fn windows_of_joint(
    context: &Context<'_>,
    joint: &str,
    mut basis: Basis,
) -> Result<(Vec<Wanted>, Basis), Error> {
    let rows = || context.tables.all::<FitWindow>();
    let mut wanted = Vec::new();
    for row in rows().filter(|row| row.joint.eq_ignore_ascii_case(joint.trim())) {
        if row.window.lower().is_none() && row.window.upper().is_none() {
            continue;
        }
        if let Some(evidence) = row.window.evidence() {
            basis = basis
                .at_best(Some(evidence.worth()))
                .citing(evidence.sources());
        }
        wanted.push(Wanted {
            sense: row.sense,
            limits: Limits::of_requirement(&row.window),
            owner: row.owner.clone(),
        });
    }
    if wanted.is_empty() {
        let mut known: Vec<&str> = rows().map(|row| row.joint.as_ref()).collect();
        known.dedup();
        return Err(Error::new(
            ErrorKind::UnknownName,
            "joint",
            joint,
            "no window is published for a joint of this name",
            alloc::format!("one of {}", known.join(", ")),
        ));
    }
    Ok((wanted, basis))
}

/// What the tables say of both members.
pub(super) fn both(hole: &MemberOf, shaft: &MemberOf, basis: Basis) -> Basis {
    shaft.basis(hole.basis(basis, RingSize::Bore), RingSize::Outside)
}
