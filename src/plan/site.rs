//! What every planner is given besides its part of the sheet, and what it does with a ruling.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::answer::Tool;
use super::caution::Caution;
use super::facts::{Allowance, CommonAsk, CommonFact, CommonTask, Reason};
use super::permit::{Identity, Permit, Pilot, Request, Ruling, rule};
use super::sheet::{Coating, Common, FrameSheet};
use super::work::{ByHand, Draft, PlaceWork};
use crate::fit::MaterialKind;
use crate::measure::{DecisionRule, Placed, Surface};
use crate::standard::{Operation, Place, Tables};

/// What is common to all places of a frame.
#[derive(Clone, Copy)]
pub(super) struct Site<'a> {
    pub sheet: &'a FrameSheet,
    pub tables: Tables<'a>,
    pub rule: DecisionRule,
}

/// What a joint is made of, and who allows it to be cut.
#[derive(Debug, Clone, Copy)]
pub(super) struct Joint<'a> {
    pub material: Option<MaterialKind>,
    /// Metal in a frame of carbon.
    pub bonded: bool,
    pub consent: Option<&'a str>,
}

impl<'a> Site<'a> {
    pub(super) fn joint(&self, common: &Common<'a>) -> Joint<'a> {
        let material = common.material.or(self.sheet.material);
        let carbon_frame = self.sheet.material == Some(MaterialKind::Carbon);
        Joint {
            material,
            bonded: carbon_frame && material.is_some_and(MaterialKind::is_metal),
            consent: common.consent,
        }
    }
}

impl<'a> Joint<'a> {
    /// The wish to cut here, with nothing that stands against it yet.
    pub(super) fn request(
        &self,
        place: &'a Place,
        operation: Operation,
        decision: DecisionRule,
    ) -> Request<'a> {
        Request {
            place,
            operation,
            material: self.material,
            bonded: self.bonded,
            consent: self.consent,
            contradicted: false,
            identity: Identity::Known,
            metal_lost: false,
            makers_shape: false,
            pilot: Pilot::There,
            needed: None,
            to_size: false,
            allowance: Allowance::default(),
            stops: Vec::new(),
            waits: Vec::new(),
            decision,
        }
    }
}

/// Whether something that was stated covers the place.
pub(super) fn covered(coating: Option<Coating>) -> bool {
    coating.is_some_and(Coating::covers)
}

/// What a reading lies on: what it says itself, else what covers its place.
pub(super) fn surface(said: Surface, coating: Option<Coating>) -> Surface {
    match (said, coating) {
        (Surface::NotKnown, Some(Coating::Bare)) => Surface::OnMetal,
        (Surface::NotKnown, Some(_)) => Surface::OverPaint,
        (said, _) => said,
    }
}

/// The same readings, each with what it lies on.
pub(super) fn on_surface(readings: &[Placed], coating: Option<Coating>) -> Vec<Placed> {
    readings
        .iter()
        .map(|placed| Placed {
            surface: surface(placed.surface, coating),
            ..*placed
        })
        .collect()
}

/// What a cut is for when it is refused, and where its questions are answered.
pub(super) struct Wish<'a> {
    pub place: &'a Place,
    /// The path of the place in the sheet that states material, consent and limits.
    pub joint: &'a str,
    /// The field whose readings decided.
    pub readings: String,
    /// What is to be done: `face`, `ream`, `chase`.
    pub operation: Operation,
    /// Only a coating asks for it, so that hands can do some of it where no cutter may.
    pub only_coating: bool,
}

/// The permit for this, or what stands in its place.
pub(super) fn permitted(
    work: &mut PlaceWork,
    request: Request<'_>,
    joint: &str,
    readings: String,
    only_coating: bool,
) -> Option<Permit> {
    let wish = Wish {
        place: request.place,
        joint,
        readings,
        operation: request.operation,
        only_coating,
    };
    take(work, rule(request), &wish)
}

/// Takes a ruling: the permit, or what stands in its place — a question, a step that refers, work by hand.
pub(super) fn take(work: &mut PlaceWork, ruling: Ruling, wish: &Wish<'_>) -> Option<Permit> {
    let cut = wish.operation;
    let at = wish.place.clone();
    match ruling {
        Ruling::Cut(permit) => return Some(permit),
        Ruling::Ask(lacks) => ask(work, lacks, wish),
        Ruling::Refer(Reason::Carbon | Reason::Plastic) if wish.only_coating => {
            work.cautions.push(Caution::Carbon);
            let task = CommonTask::CoatByHand { at, cut };
            let mut clean =
                Draft::by_hand(wish.place, ByHand::Clean, task).minding(Caution::Carbon);
            if cut != Operation::Ream {
                clean = clean.proved(CommonFact::SitsFlat);
            }
            work.steps.push(clean);
        }
        Ruling::Refer(why) => {
            let laminate = matches!(why, Reason::Carbon | Reason::Plastic);
            let mut refer = Draft::refer(wish.place, CommonTask::DoNot { cut, at, why });
            if laminate {
                work.cautions.push(Caution::Carbon);
                refer = refer.minding(Caution::Carbon);
            }
            work.steps.push(refer);
        }
    }
    None
}

/// Asks for what a ruling lacks, in the field that answers it.
fn ask(work: &mut PlaceWork, lacks: Reason, wish: &Wish<'_>) {
    let (cut, at) = (wish.operation, wish.place.clone());
    let field = match &lacks {
        Reason::MaterialUnknown => format!("{}.material", wish.joint),
        Reason::NoConsent => {
            work.cautions.push(Caution::BondedInsert);
            format!("{}.consent", wish.joint)
        }
        Reason::TooClose { .. } => wish.readings.clone(),
        // Planners ask for it at its own field; this is for a limit that has none.
        Reason::LimitUnknown { .. } if !work.questions.is_empty() => return,
        Reason::LimitUnknown { .. } | Reason::NoStop => format!("{}.limits", wish.joint),
        Reason::NoPilot { why } => {
            let why = why.clone();
            return work.hold(CommonFact::Unguided { at, cut, why });
        }
        // Asked where it was found; the work here waits for it.
        _ => {
            work.held = true;
            if work.contradictions.is_empty() && work.questions.is_empty() {
                work.hold(CommonFact::Waits { at, cut });
            }
            return;
        }
    };
    work.ask(field, CommonAsk::ForCut { cut, at, lacks });
}

/// A tool of this kind.
pub(super) fn tool(code: &'static str, which: impl Into<super::Fact>) -> Tool {
    let (which, hand) = (which.into(), None);
    Tool { code, which, hand }
}
