//! A press or slip shell: measured, seldom cut.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::answer::{Counted, Operation};
use super::bore_caps;
use super::bore_now::{self, BoreNow};
use super::facts::{Allowance, CutLimit};
use super::identity::Settled;
use super::permit::{Pilot, Request, rule};
use super::sheet::{Heard, Limited, ShellSheet};
use super::shell::{SIDES, side_of};
use super::site::{Site, Wish, take, tool};
use super::tried::{self, GoesIn};
use super::work::{Answers, ByHand, Draft, PlaceWork};
use crate::evidence::Evidence;
use crate::face::LimitKind;
use crate::judge::{BoreFit, FigureName, Fit, MemberOf, OwnLimits, Wall, extremes};
use crate::measure::{Limits, Outcome, Placed, Reading, settled_below};
use crate::quantity::in_mm;
use crate::standard::{BoreWindow, Hold, Place, Shell};
use crate::thread::Turn;

/// The bore of a shell as the last pass left it.
fn now(sheet: &ShellSheet) -> BoreNow {
    bore_now::of(
        &sheet.bore,
        &sheet.after,
        sheet
            .passes
            .iter()
            .filter(|p| !p.bore.is_empty() || p.coating_left.is_some())
            .map(Into::into),
        sheet.coating,
        true,
    )
}

/// The readings of the bore as it is now.
pub(super) fn bore_now(sheet: &ShellSheet) -> Vec<Placed> {
    now(sheet).bore
}

/// Limits of the bore, with whose they are and where they were read.
struct Held<'a> {
    limits: Limits,
    lower_words: String,
    upper_words: String,
    evidence: Option<&'a Evidence>,
    /// The row that prints them, where no maker's limit goes before it.
    row: Option<&'a BoreWindow>,
}

impl Held<'_> {
    fn owner(&self) -> String {
        if self.lower_words == self.upper_words {
            self.lower_words.clone()
        } else {
            format!("{}; {}", self.lower_words, self.upper_words)
        }
    }
}

fn held<'a>(site: &Site<'a>, sheet: &ShellSheet, row: &Shell) -> Option<Held<'a>> {
    if let Some(heard) = Heard::of(&sheet.limits, Limited::Bore) {
        return Some(Held {
            lower_words: heard.lower_owner.clone(),
            upper_words: heard.upper_owner.clone(),
            limits: heard.limits,
            evidence: None,
            row: None,
        });
    }
    let window = site
        .tables
        .all::<BoreWindow>()
        .find(|w| w.shell == row.code && w.window.is_known())?;
    Some(Held {
        limits: Limits::of_size(&window.window),
        lower_words: String::from(window.owner.as_ref()),
        upper_words: String::from(window.owner.as_ref()),
        evidence: window.window.evidence(),
        row: Some(window),
    })
}

pub(super) fn plan(
    site: &Site<'_>,
    work: &mut PlaceWork,
    sheet: &ShellSheet,
    row: &Shell,
    settled: &Settled,
) {
    if SIDES.iter().any(|side| {
        let side = side_of(sheet, *side);
        side.state.is_some() || side.hand.is_some() || side.go.is_some()
    }) {
        work.contradicts(
            format!("the sheet speaks of a thread, and {} has none", row.name),
            "shell.believed",
            "eye, light",
        );
    }
    let now = now(sheet);
    work.removed = now.removed.into_iter().collect();
    if now.bore.is_empty() {
        work.ask_plain(
            "shell.bore",
            "bore in two directions at each end",
            "a press shell is known by its bore",
            "three-point internal micrometer",
        );
        return;
    }
    let held = held(site, sheet, row);
    let asked = BoreFit {
        bore: now.bore.clone(),
        limits: held
            .iter()
            .filter(|h| h.row.is_none())
            .map(|h| OwnLimits::of(h.limits, h.owner()))
            .collect(),
        figure: held.as_ref().and_then(|h| h.row).map(|row| FigureName {
            family: String::from("bore_window"),
            code: String::from(row.code.as_ref()),
            field: String::from("window"),
        }),
        rule: Some(site.rule),
    };
    let Ok(said) = asked.answer(site.tables) else {
        return;
    };
    wall(site, work, sheet, &now);
    let cut = correct(site, work, sheet, settled, &now, held.as_ref(), &said);
    // With a part at hand the fit decides.
    if held.is_none() && sheet.part.is_none() {
        work.ask_plain(
            "shell.limits",
            "bore limits from the frame maker's drawing",
            "nobody publishes limits for this bore: the mating part and the frame maker decide",
            "frame maker",
        );
    }
    if now.bore.len() < 4 {
        work.ask_plain(
            "shell.bore",
            "bore in two directions at each end",
            "a single narrow place may be out of round and not small",
            "three-point internal micrometer, inside caliper",
        );
    }
    clean(
        work,
        &now,
        site.joint(&sheet.common())
            .material
            .is_some_and(|m| m.is_carbon()),
    );
    part(site, work, sheet, row, &now, cut);
}

fn wall(site: &Site<'_>, work: &mut PlaceWork, sheet: &ShellSheet, now: &BoreNow) {
    let Some(outside) = extremes(&sheet.outside).first().copied() else {
        return;
    };
    let heard = Heard::of(&sheet.limits, Limited::Wall);
    let asked = Wall {
        place: Some(Place::Shell),
        outside,
        bore: now.bore.clone(),
        least: heard
            .iter()
            .map(|h| OwnLimits::of(h.limits, h.owner()))
            .collect(),
        rule: Some(site.rule),
    };
    if let Ok(said) = asked.answer(site.tables) {
        if heard.is_some() && !(now.covered && said.outcome == Outcome::Undecided) {
            work.judged(
                &said,
                Answers {
                    reading: "shell.outside",
                    ..PART
                },
            );
        } else {
            work.found(&said);
        }
    }
}

/// A bore out of its limits: too small may be reamed where the frame maker allows it; too large cannot be cured by cutting,
/// nor can one that is too large at one end and too small at the other. Whether a cut is planned.
fn correct(
    site: &Site<'_>,
    work: &mut PlaceWork,
    sheet: &ShellSheet,
    settled: &Settled,
    now: &BoreNow,
    held: Option<&Held<'_>>,
    said: &crate::judge::Verdict,
) -> bool {
    if said.outcome != Outcome::NonconformityShown {
        match (said.outcome, now.covered, held) {
            (Outcome::Undecided, false, Some(_)) => work.judged(
                said,
                Answers {
                    reading: "shell.bore",
                    ..PART
                },
            ),
            _ => work.found(said),
        }
        return false;
    }
    let (Some(held), Some(smallest), Some(largest)) = (held, now.smallest(), now.largest()) else {
        work.verdict(said);
        return false;
    };
    let (low, high) = (held.limits.lower().known(), held.limits.upper().known());
    let over = high
        .is_some_and(|high| settled_below(high, largest.value() - largest.expanded_uncertainty()));
    let Some(low) = low.filter(|low| settled_below(smallest.value(), *low) && !over) else {
        work.verdict(said);
        return false;
    };
    work.found(said);
    let Ok(target) = Reading::exact(low) else {
        return false;
    };
    let needed = target.less(&smallest);
    let mut caps = Vec::new();
    if let Some(high) = high
        && let Ok(most) = Reading::exact(high)
    {
        caps.extend(
            CutLimit::new(
                LimitKind::Maker,
                format!("bore at most {} ({})", in_mm(high), held.upper_words),
                most.less(&smallest),
                held.limits.grade(),
            )
            .ok()
            .map(|c| c.citing(held.evidence)),
        );
    }
    caps.extend(bore_caps::of(
        &sheet.limits,
        &sheet.outside,
        sheet.part.as_ref(),
        &smallest,
    ));
    if sheet.outside.is_empty() {
        work.ask_plain(
            "shell.outside",
            "outside diameter of the shell",
            "the wall of a press shell is thin, and what is left of it decides",
            "outside caliper",
        );
    }
    let joint = site.joint(&sheet.common());
    let wish = Wish {
        place: &Place::Shell,
        joint: "shell",
        readings: String::from("shell.bore"),
        operation: Operation::Ream,
        only_coating: false,
    };
    let ruling = rule(Request {
        place: &Place::Shell,
        operation: Operation::Ream,
        material: joint.material,
        // A press shell is reamed only where its maker agrees, whatever it is made of.
        bonded: true,
        consent: joint.consent,
        contradicted: !work.contradictions.is_empty(),
        identity: settled.identity.clone(),
        metal_lost: false,
        makers_shape: false,
        pilot: Pilot::There,
        to_size: false,
        needed: Some((Counted::Diameter, needed)),
        allowance: Allowance::new(caps),
        stops: Vec::new(),
        waits: Vec::new(),
        decision: site.rule,
    });
    let Some(permit) = take(work, ruling, &wish) else {
        return false;
    };
    work.steps.push(
        Draft::cut_plain(
            permit,
            match high {
                Some(high) => format!(
                    "Ream the bores of the shell to between {} and {}",
                    in_mm(low),
                    in_mm(high)
                ),
                None => format!("Ream the bores of the shell to {}", in_mm(low)),
            },
            "too tight a bore squeezes cup and bearing until they run rough",
        )
        .with(tool(
            "reamer",
            format!("reamer that finishes inside {}", held.limits),
        ))
        .turned(Turn::Clockwise),
    );
    true
}

fn clean(work: &mut PlaceWork, now: &BoreNow, carbon: bool) {
    if !now.covered {
        return;
    }
    let (how, bare) = if carbon {
        (
            "Take the overspray out of the shell bores by hand: wood, plastic or a fine cloth",
            "laminate",
        )
    } else {
        (
            "Take the paint out of the shell bores by hand, down to metal",
            "metal",
        )
    };
    let mut draft = Draft::by_hand_plain(
        &Place::Shell,
        ByHand::Clean,
        how,
        "a cup or bearing on paint sits neither square nor tight",
    )
    .checking(format!(
        "what is left of the coating, and the bore on {bare}, into the sheet as a pass"
    ));
    if carbon {
        draft = draft.minding(super::Caution::Carbon);
    }
    work.steps.push(draft);
}

/// What takes the answers to a fit that is not decided.
const PART: Answers<'static> = Answers {
    reading: "shell.part.outside",
    trial: "shell.passes",
    written: "shell.limits",
};

/// The cup or bearing in its bore.
fn part(
    site: &Site<'_>,
    work: &mut PlaceWork,
    sheet: &ShellSheet,
    row: &Shell,
    now: &BoreNow,
    cut: bool,
) {
    if row.fit.as_ref().and_then(|f| f.value()) == Some(&Hold::Slip) {
        work.settled(crate::judge::Finding::stated(
            "fit",
            "a slip fit by design: no interference is no fault, but the bearing must not rock in its seat",
        ));
    }
    tried::heard(work, now.part, GoesIn::Presses, !cut && !now.covered);
    let Some(part) = &sheet.part else {
        // How tight it must sit is told by a maker, so the part is needed to know how far the bore may go.
        if Heard::of(&sheet.limits, Limited::Interference).is_some() {
            work.ask_plain(
                PART.reading,
                "outside diameter of the part where it will sit",
                "a maker limits how tight it must be",
                "outside micrometer",
            );
        }
        return;
    };
    let outside: Vec<Placed> = part.outside.iter().map(|r| Placed::from(*r)).collect();
    if outside.is_empty() && part.outside_limits.is_none() {
        work.ask_plain(
            "shell.part.outside",
            "outside diameter of the part where it will sit",
            "the fit cannot be judged without it",
            "outside micrometer",
        );
        return;
    }
    let heard = Heard::of(&sheet.limits, Limited::Interference);
    let asked = Fit {
        shell: Some(String::from(row.code.as_ref())),
        hole: MemberOf::placed(now.bore.clone()),
        shaft: MemberOf {
            readings: outside,
            limits: part.outside_limits,
            ..MemberOf::default()
        },
        interference: heard.iter().map(|h| h.limits).collect(),
        owner: heard.as_ref().map(Heard::owner),
        rule: Some(site.rule),
        ..Fit::default()
    };
    let Ok(said) = asked.answer(site.tables) else {
        return;
    };
    if cut || now.covered {
        work.found(&said);
    } else {
        work.judged(&said, PART);
    }
}
