//! The only place where a cut is permitted.
//!
//! A cutting step cannot be written without a [`Permit`], and only [`rule`] makes one. What forbids a cut stands in [`RULES`],
//! in the order in which it is asked.

use alloc::boxed::Box;
use alloc::string::String;
use alloc::vec::Vec;

use super::answer::{Counted, Off, Stop};
pub(super) use super::facts::Reason;
use super::facts::{Allowance, CutLimit, Fact};
use crate::face::Pass;
use crate::fit::MaterialKind;
use crate::measure::{DecisionRule, Reading, settled_below, settled_cmp};
use crate::quantity::mm;
use crate::standard::{Operation, Place};

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
    pub(super) fn into_stops(self) -> Vec<Stop> {
        self.stops
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

/// Everything that forbids a cut, in the order in which it is asked.
const RULES: [Against; 9] = [
    laminate_and_plastic_are_not_cut,
    |r| ask_if(r.material.is_none(), Reason::MaterialUnknown),
    |r| ask_if(r.bonded && r.consent.is_none(), Reason::NoConsent),
    |r| ask_if(r.contradicted, Reason::Contradicted),
    |r| refer_if(r.makers_shape, Reason::MakersShape),
    |r| ask_if(r.identity == Identity::Open, Reason::IdentityOpen),
    |r| refer_if(r.metal_lost, Reason::MetalLost),
    a_pilot_exists,
    no_cut_passes_its_tightest_limit,
];

fn ask_if(so: bool, reason: Reason) -> Option<Ruling> {
    so.then_some(Ruling::Ask(reason))
}

fn refer_if(so: bool, reason: Reason) -> Option<Ruling> {
    so.then_some(Ruling::Refer(reason))
}

fn laminate_and_plastic_are_not_cut(request: &Request<'_>) -> Option<Ruling> {
    match request.material {
        Some(MaterialKind::Carbon) => Some(Ruling::Refer(Reason::Carbon)),
        Some(MaterialKind::Plastic) => Some(Ruling::Refer(Reason::Plastic)),
        _ => None,
    }
}

fn a_pilot_exists(request: &Request<'_>) -> Option<Ruling> {
    match &request.pilot {
        Pilot::There => None,
        Pilot::Missing(why) => Some(Ruling::Ask(Reason::NoPilot {
            why: Box::new(why.clone()),
        })),
    }
}

/// Holds the amount against the allowance; what is undecided is not cut.
fn no_cut_passes_its_tightest_limit(request: &Request<'_>) -> Option<Ruling> {
    let (_, needed) = request.needed.as_ref()?;
    let left = |limit: &CutLimit| limit.may_come_off().map_or(mm(0.0), Reading::value);
    let name = |limit: &CutLimit| Box::new(limit.what().clone());
    let too_close = |limit: &CutLimit| {
        Some(Ruling::Ask(Reason::TooClose {
            limit: name(limit),
            needed: needed.value(),
            allowed: left(limit),
        }))
    };
    match request.allowance.pass(needed, request.decision).ok()? {
        // A decision rule that accepts more risk than U still cuts no further than the limit allows for certain.
        Pass::Within { limit, .. } => limit
            .surely()
            .filter(|sure| settled_below(*sure, needed.value()))
            .and_then(|_| too_close(limit)),
        Pass::Nothing { limit } => Some(Ruling::Refer(Reason::NothingMayComeOff {
            limit: name(limit),
            over: -left(limit),
        })),
        Pass::Beyond { limit } => Some(Ruling::Refer(Reason::BeyondLimit {
            limit: name(limit),
            needed: needed.value(),
            allowed: limit.surely().unwrap_or_else(|| left(limit)),
        })),
        Pass::TooClose { limit } => too_close(limit),
        Pass::Unknown { limit } => Some(Ruling::Ask(Reason::LimitUnknown {
            limit: name(limit),
            measure: Box::new(limit.measure()?.clone()),
        })),
        Pass::NoLimit => Some(Ruling::Ask(Reason::NoStop)),
    }
}

/// Rules on a request: the first rule that stands against it decides; else it is permitted.
pub(super) fn rule(request: Request<'_>) -> Ruling {
    if let Some(ruling) = RULES.iter().find_map(|against| against(&request)) {
        return ruling;
    }
    let mut stops = Vec::new();
    let mut off = None;
    if let Some((of, needed)) = request.needed {
        // The rules above have held it against every limit.
        let Ok(Pass::Within { up_to, limit }) = request.allowance.pass(&needed, request.decision)
        else {
            return Ruling::Ask(Reason::NoStop);
        };
        let least = needed.value();
        // A face is cut by the least that does; a bore to a window, which is any size below its nearest limit.
        let most = match of {
            _ if request.to_size => least,
            Counted::Depth => up_to,
            Counted::Diameter => limit.surely().map_or(up_to, |sure| sure.max(least)),
        };
        off = Some(Off { of, least, most });
        stops.extend(request.allowance.into_limits().into_iter().map(Stop::from));
        stops.sort_by(|a: &Stop, b: &Stop| match (a.to_go, b.to_go) {
            (Some(a), Some(b)) => settled_cmp(a, b),
            (a, b) => a.is_none().cmp(&b.is_none()),
        });
    }
    stops.extend(request.stops);
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
