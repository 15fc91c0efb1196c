//! The only place where a cut is permitted.
//!
//! A cutting step cannot be written without a [`Permit`], and only [`rule`] makes one. What forbids a cut stands in [`RULES`],
//! one row a rule, in the order in which they are asked.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::answer::{Counted, Off, Operation, Stop};
use super::facts::Fact;
use crate::evidence::Text;
use crate::face::{Allowance, Pass};
use crate::fit::MaterialKind;
use crate::measure::{DecisionRule, Reading, settled_below};
use crate::quantity::Length;
use crate::standard::Place;

/// The right to cut so much at a place. Its fields are private: nothing outside this file makes one.
#[derive(Debug, Clone)]
pub(super) struct Permit {
    place: Place,
    operation: Operation,
    off: Option<Off>,
    stops: Vec<Stop>,
    waits: Vec<String>,
}

impl Permit {
    pub(super) const fn place(&self) -> &Place {
        &self.place
    }
    pub(super) const fn operation(&self) -> Operation {
        self.operation
    }
    pub(super) const fn off(&self) -> Option<Off> {
        self.off
    }
    pub(super) fn stops(&self) -> &[Stop] {
        &self.stops
    }
    /// Fields whose questions must be answered before the cut.
    pub(super) fn waits(&self) -> &[String] {
        &self.waits
    }
}

/// How sure it is what the place is.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Identity {
    /// Named, or proved.
    Known,
    /// What was believed is possible and so is something else: the field that settles it.
    Doubtful(String),
    /// Nobody can say yet.
    Open,
}

/// What guides the cutter.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Pilot {
    /// It is there.
    There,
    /// It is not, and why.
    Missing(Fact),
}

/// What a planner wants to do, with everything that can stand against it.
#[derive(Debug, Clone)]
pub(super) struct Request<'a> {
    pub place: &'a Place,
    pub operation: Operation,
    /// Material of the joint; `None` where nobody said.
    pub material: Option<MaterialKind>,
    /// Metal in a frame of carbon.
    pub bonded: bool,
    /// Which maker allows it, and where.
    pub consent: Option<&'a str>,
    /// Two statements of the sheet about this place cannot both be true.
    pub contradicted: bool,
    pub identity: Identity,
    /// The place lost metal, so that cutting cures nothing.
    pub metal_lost: bool,
    /// Its shape belongs to the frame maker: an integrated seat.
    pub makers_shape: bool,
    pub pilot: Pilot,
    /// How much must come off; `None` where the amount is not a length, as when a thread is followed.
    pub needed: Option<(Counted, Reading)>,
    /// The cutter is of the size that is wanted, so that it takes off what is needed and no more.
    pub to_size: bool,
    /// What may come off.
    pub allowance: Allowance,
    /// What stops the cut besides: an end of thread, a depth, a size.
    pub stops: Vec<Stop>,
    /// What must be known first, by the field of its answer.
    pub waits: Vec<String>,
    pub decision: DecisionRule,
}

/// Why a cut is not permitted.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Reason {
    /// Laminate is not cut.
    Carbon,
    /// Plastic is not cut to fit.
    Plastic,
    /// Nobody said what the joint is made of.
    MaterialUnknown,
    /// Metal bonded into carbon, and no maker's consent is stated.
    NoConsent,
    /// Two statements contradict each other.
    Contradicted,
    /// What the place is, is open.
    IdentityOpen,
    /// Metal is lost.
    MetalLost,
    /// The maker's own shape.
    MakersShape,
    /// Nothing guides the cutter.
    NoPilot(Fact),
    /// Nothing more may come off because of this limit.
    NothingMayComeOff { limit: Text, over: Length },
    /// More would have to come off than this limit allows.
    BeyondLimit {
        limit: Text,
        needed: Length,
        allowed: Length,
    },
    /// Needed and allowed lie too close together to tell.
    TooClose {
        limit: Text,
        needed: Length,
        allowed: Length,
    },
    /// A limit is not known.
    LimitUnknown { limit: Text, measure: Text },
    /// A cut that nothing stops.
    NoStop,
}

/// What comes of a request.
#[derive(Debug, Clone)]
pub(super) enum Ruling {
    /// The cut is permitted.
    Cut(Permit),
    /// Something must be known first.
    Ask(Reason),
    /// It is for the frame maker or a qualified builder.
    Refer(Reason),
}

/// What a rule finds against a request.
type Against = fn(&Request<'_>) -> Option<Ruling>;

/// Everything that forbids a cut, in the order in which it is asked: name, rule.
const RULES: [(&str, Against); 9] = [
    ("laminate and plastic are not cut", |r| match r.material {
        Some(MaterialKind::Carbon) => Some(Ruling::Refer(Reason::Carbon)),
        Some(MaterialKind::Plastic) => Some(Ruling::Refer(Reason::Plastic)),
        _ => None,
    }),
    ("nothing is cut in unknown material", |r| {
        r.material
            .is_none()
            .then_some(Ruling::Ask(Reason::MaterialUnknown))
    }),
    (
        "a bonded insert is cut only with its maker's consent",
        |r| (r.bonded && r.consent.is_none()).then_some(Ruling::Ask(Reason::NoConsent)),
    ),
    ("a contradiction holds the cut", |r| {
        r.contradicted.then_some(Ruling::Ask(Reason::Contradicted))
    }),
    ("an integrated seat belongs to its maker", |r| {
        r.makers_shape.then_some(Ruling::Refer(Reason::MakersShape))
    }),
    ("what is not named is not cut", |r| {
        (r.identity == Identity::Open).then_some(Ruling::Ask(Reason::IdentityOpen))
    }),
    ("cutting brings no metal back", |r| {
        r.metal_lost.then_some(Ruling::Refer(Reason::MetalLost))
    }),
    ("a cutter without a pilot is not started", |r| {
        match &r.pilot {
            Pilot::There => None,
            Pilot::Missing(why) => Some(Ruling::Ask(Reason::NoPilot(why.clone()))),
        }
    }),
    (
        "no cut passes its tightest limit, and none is undecided",
        within_limits,
    ),
];

/// Holds the amount against the allowance.
fn within_limits(request: &Request<'_>) -> Option<Ruling> {
    let (_, needed) = request.needed.as_ref()?;
    let amount = |limit: &crate::face::CutLimit| {
        limit
            .may_come_off()
            .map_or_else(|| crate::quantity::mm(0.0), Reading::value)
    };
    let name = |limit: &crate::face::CutLimit| Text::Owned(limit.what().to_string());
    let too_close = |limit: &crate::face::CutLimit| {
        Some(Ruling::Ask(Reason::TooClose {
            limit: name(limit),
            needed: needed.value(),
            allowed: amount(limit),
        }))
    };
    match request.allowance.pass(needed, request.decision).ok()? {
        // A decision rule that accepts more risk than U still cuts no further than the limit allows for certain.
        Pass::Within { limit, .. }
            if limit
                .surely()
                .is_some_and(|sure| settled_below(sure, needed.value())) =>
        {
            too_close(limit)
        }
        Pass::Within { .. } => None,
        Pass::Nothing { limit } => Some(Ruling::Refer(Reason::NothingMayComeOff {
            limit: name(limit),
            over: -amount(limit),
        })),
        Pass::Beyond { limit } => Some(Ruling::Refer(Reason::BeyondLimit {
            limit: name(limit),
            needed: needed.value(),
            allowed: limit.surely().unwrap_or_else(|| amount(limit)),
        })),
        Pass::TooClose { limit } => too_close(limit),
        Pass::Unknown { limit } => Some(Ruling::Ask(Reason::LimitUnknown {
            limit: name(limit),
            measure: Text::Owned(limit.measure().to_string()),
        })),
        Pass::NoLimit => Some(Ruling::Ask(Reason::NoStop)),
    }
}

/// Rules on a request: the first rule that stands against it decides; else it is permitted.
pub(super) fn rule(request: Request<'_>) -> Ruling {
    for (_, against) in RULES {
        if let Some(ruling) = against(&request) {
            return ruling;
        }
    }
    let mut stops = request.stops;
    let mut off = None;
    if let Some((of, needed)) = &request.needed {
        // The rules above have held it against every limit.
        let Ok(Pass::Within { up_to, limit }) = request.allowance.pass(needed, request.decision)
        else {
            return Ruling::Ask(Reason::NoStop);
        };
        // A face is cut by the least that does; a bore to a window, which is any size below its nearest limit.
        let up_to = match of {
            _ if request.to_size => needed.value(),
            Counted::Depth => up_to,
            Counted::Diameter => limit
                .surely()
                .map_or(up_to, |sure| sure.max(needed.value())),
        };
        off = Some(Off {
            of: *of,
            least: needed.value(),
            most: up_to,
        });
        let mut limits: Vec<&crate::face::CutLimit> = request.allowance.limits().iter().collect();
        limits.sort_by(|a, b| match (a.surely(), b.surely()) {
            (Some(a), Some(b)) => crate::measure::settled_cmp(a, b),
            (a, b) => a.is_none().cmp(&b.is_none()),
        });
        let amounts = limits.into_iter().map(|limit| Stop {
            limit: limit.what().to_string().into(),
            to_go: limit.surely(),
            grade: Some(limit.grade()),
            sources: limit.sources().to_vec(),
        });
        stops.splice(0..0, amounts);
    }
    if stops.is_empty() {
        return Ruling::Ask(Reason::NoStop);
    }
    let mut waits = request.waits;
    if let Identity::Doubtful(answer) = request.identity {
        waits.push(answer);
    }
    Ruling::Cut(Permit {
        place: request.place.clone(),
        operation: request.operation,
        off,
        stops,
        waits,
    })
}
