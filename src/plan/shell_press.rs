//! A press or slip shell: measured, seldom cut.

use alloc::string::ToString;

use super::bore_now::{self, BoreNow};
use super::facts::{ShellAsk, ShellFact, ShellTask};
use super::identity::Settled;
use super::round_place::{RoundPlace, torn};
use super::sheet::{Heard, Limited, ShellSheet};
use super::shell_name::speaks_of_thread;
use super::shell_width::printed;
use super::site::{Site, tool};
use super::tried::{self, GoesIn};
use super::work::{Answers, Draft, PlaceWork};
use crate::evidence::Evidence;
use crate::judge::{BoreFit, FigureName, Fit, Instrument, Verdict};
use crate::measure::{Outcome, Reading, settled_below};
use crate::standard::{BoreWindow, Hold, Shell};
use crate::thread::Turn;

/// The bore of a shell as the last pass left it.
pub(super) fn now(sheet: &ShellSheet) -> BoreNow {
    let passes = sheet.passes.iter();
    let of_bore = passes.filter(|p| !p.bore.is_empty() || p.coating_left.is_some());
    let passes = of_bore.map(Into::into);
    bore_now::of(&sheet.bore, &sheet.after, passes, sheet.coating, true)
}

pub(super) fn plan(
    site: &Site<'_>,
    work: &mut PlaceWork,
    sheet: &ShellSheet,
    row: &Shell,
    settled: &Settled,
) {
    if speaks_of_thread(sheet) {
        let pattern = row.name.to_string();
        let speaks = ShellFact::SpeaksOfThread { pattern };
        work.contradicts(speaks, "shell.believed", Instrument::Eye);
    }
    let mut at = RoundPlace {
        site: *site,
        work,
        path: "shell",
        common: sheet.common(),
        now: now(sheet),
        outside: &sheet.outside,
        part: sheet.part.as_ref(),
        fit: Answers {
            reading: "shell.part.outside",
            trial: "shell.passes",
            written: "shell.limits",
        },
    };
    if at.now.bore.is_empty() {
        at.work.ask("shell.bore", ShellAsk::Bore);
        return;
    }
    at.came_off();
    let mut held = at.heard(Limited::Bore);
    let mut windows = site.tables.all::<BoreWindow>();
    let printed_for = |w: &&BoreWindow| w.shell == row.code && w.window.is_known();
    let window = windows.find(|w| held.is_none() && printed_for(w));
    let asked = BoreFit {
        bore: at.now.bore.clone(),
        limits: at.own(Limited::Bore),
        figure: window.map(|window| FigureName {
            family: "bore_window".into(),
            code: window.code.to_string(),
            field: "window".into(),
        }),
        rule: Some(site.rule),
    };
    let Ok(said) = asked.answer(site.tables) else {
        return;
    };
    at.wall();
    held = held.or_else(|| window.map(|w| printed(&w.window, &w.owner)));
    let evidence = window.and_then(|w| w.window.evidence());
    let cut = correct(&mut at, settled, (held.as_ref(), evidence), &said);
    // With a part at hand the fit decides.
    if held.is_none() && sheet.part.is_none() {
        at.work.ask("shell.limits", ShellAsk::BoreLimits);
    }
    if at.now.bore.len() < 4 {
        at.work.ask("shell.bore", ShellAsk::Bore);
    }
    at.clean();
    part(&mut at, row, cut);
}

/// A bore out of its limits: too small may be reamed where the frame maker allows it; too large cannot be cured by cutting,
/// nor can one that is too large at one end and too small at the other. Whether a cut is planned.
fn correct(
    at: &mut RoundPlace<'_>,
    settled: &Settled,
    (held, evidence): (Option<&Heard>, Option<&Evidence>),
    said: &Verdict,
) -> bool {
    if said.outcome != Outcome::NonconformityShown {
        if said.outcome == Outcome::Undecided && !at.now.covered && held.is_some() {
            at.judged(said, "shell.bore");
        } else {
            at.work.found(said);
        }
        return false;
    }
    let too_small = || {
        let (held, smallest, largest) = (held?, at.now.smallest()?, at.now.largest()?);
        let (low, high) = (held.limits.lower(), held.limits.upper());
        let surely = largest.value() - largest.expanded_uncertainty();
        let over = high.known().is_some_and(|high| settled_below(high, surely));
        let least = low
            .known()
            .filter(|low| !over && settled_below(smallest.value(), *low))?;
        let needed = Reading::exact(least).ok()?.less(&smallest);
        Some((held, smallest, least, needed))
    };
    let Some((held, smallest, least, needed)) = too_small() else {
        at.work.verdict(said);
        return false;
    };
    at.work.found(said);
    if torn(at.now.marks, at.work) {
        return false;
    }
    if at.outside.is_empty() {
        at.work.ask("shell.outside", ShellAsk::Outside);
    }
    let caps = at.caps(&smallest, (Some(held), evidence));
    // A press shell is reamed only where its maker agrees, whatever it is made of.
    let identity = settled.identity.clone();
    let permit = at.permit(identity, (needed, caps), |request| request.bonded = true);
    let Some(permit) = permit else { return false };
    let within = held.limits;
    let most = within.upper().known();
    let draft = Draft::cut(permit, ShellTask::Ream { least, most })
        .with(tool("reamer", ShellFact::Reamer { within }))
        .turned(Turn::Clockwise);
    at.work.steps.push(draft);
    true
}

/// The cup or bearing in its bore.
fn part(at: &mut RoundPlace<'_>, row: &Shell, cut: bool) {
    if row.fit.as_ref().and_then(|f| f.value()) == Some(&Hold::Slip) {
        at.work.settled(ShellFact::SlipFit);
    }
    let waits = cut || at.now.covered;
    tried::heard(at.work, at.now.part, GoesIn::Presses, !waits);
    // How tight it must sit is told by a maker, so the part is needed to know how far the bore may go.
    if at.part.is_none() && at.heard(Limited::Interference).is_none() {
        return;
    }
    let asked = Fit {
        shell: Some(row.code.to_string()),
        ..Fit::default()
    };
    let Some(part) = at.known_part() else { return };
    match at.fits(part, asked) {
        Some(said) if waits => at.work.found(&said),
        Some(said) => at.judged(&said, at.fit.reading),
        None => {}
    }
}
