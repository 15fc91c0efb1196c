//! What every planner is given besides its part of the sheet, and what it does with a ruling.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::answer::{Operation, Tool};
use super::caution::Caution;
use super::permit::{Identity, Permit, Pilot, Reason, Request, Ruling};
use super::sheet::{Coating, Common, FrameSheet};
use super::work::{ByHand, Draft, PlaceWork};
use crate::face::Allowance;
use crate::fit::MaterialKind;
use crate::measure::{DecisionRule, Placed, Surface};
use crate::quantity::in_mm;
use crate::standard::{Place, Tables};

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

/// What a cut is called when it is refused, and where its questions are answered.
pub(super) struct Wish<'a> {
    pub place: &'a Place,
    /// The path of the place in the sheet that states material, consent and limits.
    pub joint: &'a str,
    /// The field whose readings decided.
    pub readings: String,
    /// What is to be done: `face`, `ream`, `chase`.
    pub operation: Operation,
    /// What it is done to, in words.
    pub what: &'a str,
    /// Only a coating asks for it, so that hands can do some of it where no cutter may.
    pub only_coating: bool,
    /// With what the readings are taken.
    pub instrument: &'static str,
}

/// What an operation is called.
pub(super) const fn verb(operation: Operation) -> &'static str {
    match operation {
        Operation::Clean => "clean",
        Operation::Ream => "ream",
        Operation::Deepen => "deepen",
        Operation::Chase => "chase",
        Operation::Tap => "tap",
        Operation::Face => "face",
        Operation::Check => "check",
        Operation::Replace => "replace",
        Operation::Refer => "cut",
    }
}

/// Takes a ruling: the permit, or what stands in its place — a question, a step that refers, work by hand.
pub(super) fn take(work: &mut PlaceWork, ruling: Ruling, wish: &Wish<'_>) -> Option<Permit> {
    let reason = match ruling {
        Ruling::Cut(permit) => return Some(permit),
        Ruling::Ask(reason) => {
            ask(work, reason, wish);
            return None;
        }
        Ruling::Refer(reason) => reason,
    };
    let title = format!("Do not {} the {}", verb(wish.operation), wish.what);
    match reason {
        Reason::Carbon | Reason::Plastic => {
            work.cautions.push(Caution::Carbon);
            if wish.only_coating {
                let words = format!("Take the coating off the {} by hand: wood, plastic or a fine cloth", wish.what);
                let mut clean = Draft::by_hand_plain(
                    wish.place,
                    ByHand::Clean,
                    words,
                    "laminate is neither cut nor scraped",
                )
                .minding(Caution::Carbon);
                if !matches!(wish.operation, Operation::Ream) {
                    clean = clean.proved("what sits there sits flat and does not rock; if it does, the frame maker decides");
                }
                work.steps.push(clean);
            } else {
                work.steps.push(
                    Draft::refer_plain(wish.place, title, "carbon and plastic are not cut here; the frame maker decides")
                        .minding(Caution::Carbon),
                );
            }
        }
        Reason::MakersShape => work.steps.push(Draft::refer_plain(
            wish.place,
            title,
            "its angle and depth belong together and to the frame maker",
        )),
        Reason::MetalLost => work.steps.push(Draft::refer_plain(
            wish.place,
            title,
            "metal is lost there, and cutting brings none back; the frame maker or a qualified builder decides: insert, next pattern, sleeve",
        )),
        Reason::NothingMayComeOff { limit, over } => {
            let why = if over > crate::quantity::mm(0.0) {
                format!("nothing more may come off because of {limit}; {} too much is off already", in_mm(over))
            } else {
                format!("nothing may come off because of {limit}")
            };
            work.steps.push(Draft::refer_plain(wish.place, title, why));
        }
        Reason::BeyondLimit { limit, needed, allowed } => work.steps.push(Draft::refer_plain(
            wish.place,
            title,
            format!("{} would have to come off, {limit} allows {}", in_mm(needed), in_mm(allowed)),
        )),
        Reason::MaterialUnknown
        | Reason::NoConsent
        | Reason::Contradicted
        | Reason::IdentityOpen
        | Reason::NoPilot(_)
        | Reason::TooClose { .. }
        | Reason::LimitUnknown { .. }
        | Reason::NoStop => ask(work, reason, wish),
    }
    None
}

/// Asks for what a ruling lacks.
fn ask(work: &mut PlaceWork, reason: Reason, wish: &Wish<'_>) {
    let verb = verb(wish.operation);
    match reason {
        Reason::MaterialUnknown => work.ask_plain(
            format!("{}.material", wish.joint),
            format!("what is the {} made of?", wish.what),
            format!("nobody may {verb} what may be carbon"),
            "eye, magnet, frame maker's sheet",
        ),
        Reason::NoConsent => {
            work.cautions.push(Caution::BondedInsert);
            work.ask_plain(
                format!("{}.consent", wish.joint),
                format!(
                    "does the frame maker allow to {verb} the {}? In writing",
                    wish.what
                ),
                "metal in a carbon frame is bonded in: heat, force and cutting can part it",
                "frame maker",
            );
        }
        Reason::NoPilot(why) => {
            work.hold(format!("the {}, for now: {why}", wish.what));
        }
        Reason::TooClose {
            limit,
            needed,
            allowed,
        } => work.ask_plain(
            wish.readings.clone(),
            format!(
                "finer readings: {} needed and {} left under {limit} are too close to tell",
                in_mm(needed),
                in_mm(allowed)
            ),
            "a cut that may pass its limit is not begun",
            wish.instrument,
        ),
        Reason::LimitUnknown { limit, measure } => {
            // Planners ask for it at its own field; this is for a limit that has none.
            if work.questions.is_empty() {
                work.ask_plain(
                    format!("{}.limits", wish.joint),
                    format!("{limit}: {measure}"),
                    "while it is unknown no cut is shown to be allowed",
                    "frame maker",
                );
            }
        }
        Reason::NoStop => work.ask_plain(
            format!("{}.limits", wish.joint),
            format!(
                "how much may come off the {}? Depth of cut, or what must be left",
                wish.what
            ),
            "no figure is published, and nothing else stops the cut",
            "frame maker",
        ),
        // Asked where it was found; the work here waits for it.
        Reason::Contradicted | Reason::IdentityOpen => {
            work.held = true;
            if work.contradictions.is_empty() && work.questions.is_empty() {
                work.hold(format!(
                    "the {}, for now: what it waits for is asked at its place",
                    wish.what
                ));
            }
        }
        Reason::Carbon
        | Reason::Plastic
        | Reason::MetalLost
        | Reason::MakersShape
        | Reason::NothingMayComeOff { .. }
        | Reason::BeyondLimit { .. } => {
            work.held = true;
        }
    }
}

/// A tool of this kind.
pub(super) fn tool(code: &'static str, which: impl Into<super::Fact>) -> Tool {
    Tool {
        code,
        which: which.into(),
        hand: None,
    }
}
