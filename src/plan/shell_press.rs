//! A press or slip shell: measured, seldom cut.

use alloc::string::ToString;

use super::bore_now::{self, BoreNow};
use super::facts::{ShellAsk, ShellFact, ShellTask};
use super::identity::Settled;
use super::permit::Request;
use super::round_place::RoundPlace;
use super::sheet::{Heard, Limited, ShellSheet};
use super::shell_name::speaks_of_thread;
use super::shell_window::printed;
use super::site::{Site, tool};
use super::tried::{self, GoesIn};
use super::work::{Answers, Draft, PlaceWork};
use crate::evidence::Evidence;
use crate::face::Allowance;
use crate::judge::{BoreFit, FigureName, Fit, Instrument, OwnLimits, Verdict};
use crate::measure::{Outcome, Reading, settled_below};
use crate::standard::{BoreWindow, Hold, Place, Shell};
use crate::thread::Turn;

/// The bore of a shell as the last pass left it.
pub(super) fn now(sheet: &ShellSheet) -> BoreNow {
    let passes = sheet.passes.iter();
    let of_bore = passes.filter(|p| !p.bore.is_empty() || p.coating_left.is_some());
    let passes = of_bore.map(Into::into);
    bore_now::of(&sheet.bore, &sheet.after, passes, sheet.coating, true)
}

/// Limits of the bore.
struct Held<'a> {
    heard: Heard,
    /// The row that prints them, where no maker's limit goes before it.
    row: Option<&'a BoreWindow>,
}

impl Held<'_> {
    fn evidence(&self) -> Option<&Evidence> {
        self.row.and_then(|row| row.window.evidence())
    }
}

fn held<'a>(at: &RoundPlace<'a>, row: &Shell) -> Option<Held<'a>> {
    if let Some(heard) = at.heard(Limited::Bore) {
        return Some(Held { heard, row: None });
    }
    let mut windows = at.site.tables.all::<BoreWindow>();
    let window = windows.find(|w| w.shell == row.code && w.window.is_known())?;
    Some(Held {
        heard: printed(&window.window, &window.owner),
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
    if speaks_of_thread(sheet) {
        let pattern = row.name.to_string();
        let speaks = ShellFact::SpeaksOfThread { pattern };
        work.contradicts(speaks, "shell.believed", Instrument::Eye);
    }
    let at = RoundPlace {
        site: *site,
        place: &Place::Shell,
        path: "shell",
        what: "bores of the shell",
        common: sheet.common(),
        now: now(sheet),
        outside: &sheet.outside,
        part: sheet.part.as_ref(),
        fit: Answers {
            reading: "shell.part.outside",
            trial: "shell.passes",
            written: "shell.limits",
        },
        gauge: Instrument::BoreGauge,
    };
    if at.now.bore.is_empty() {
        work.ask("shell.bore", ShellAsk::Bore);
        return;
    }
    at.came_off(work);
    let held = held(&at, row);
    let by_row = held.as_ref().and_then(|h| h.row);
    let own = held.iter().filter(|h| h.row.is_none());
    let asked = BoreFit {
        bore: at.now.bore.clone(),
        limits: own
            .map(|h| OwnLimits::of(h.heard.limits, h.heard.owner()))
            .collect(),
        figure: by_row.map(|row| FigureName {
            family: "bore_window".into(),
            code: row.code.to_string(),
            field: "window".into(),
        }),
        rule: Some(site.rule),
    };
    let Ok(said) = asked.answer(site.tables) else {
        return;
    };
    at.wall(work);
    let cut = correct(&at, work, settled, held.as_ref(), &said);
    // With a part at hand the fit decides.
    if held.is_none() && sheet.part.is_none() {
        work.ask("shell.limits", ShellAsk::BoreLimits);
    }
    if at.now.bore.len() < 4 {
        work.ask("shell.bore", ShellAsk::Bore);
    }
    at.clean(work);
    part(&at, work, row, cut);
}

/// A bore out of its limits: too small may be reamed where the frame maker allows it; too large cannot be cured by cutting,
/// nor can one that is too large at one end and too small at the other. Whether a cut is planned.
fn correct(
    at: &RoundPlace<'_>,
    work: &mut PlaceWork,
    settled: &Settled,
    held: Option<&Held<'_>>,
    said: &Verdict,
) -> bool {
    if said.outcome != Outcome::NonconformityShown {
        if said.outcome == Outcome::Undecided && !at.now.covered && held.is_some() {
            let reading = "shell.bore";
            work.judged(said, Answers { reading, ..at.fit });
        } else {
            work.found(said);
        }
        return false;
    }
    let too_small = || {
        let (held, smallest, largest) = (held?, at.now.smallest()?, at.now.largest()?);
        let (low, high) = (held.heard.limits.lower(), held.heard.limits.upper());
        let surely = largest.value() - largest.expanded_uncertainty();
        let over = high.known().is_some_and(|high| settled_below(high, surely));
        let least = low
            .known()
            .filter(|low| !over && settled_below(smallest.value(), *low))?;
        let needed = Reading::exact(least).ok()?.less(&smallest);
        Some((held, smallest, least, needed))
    };
    let Some((held, smallest, least, needed)) = too_small() else {
        work.verdict(said);
        return false;
    };
    work.found(said);
    if at.torn(work) {
        return false;
    }
    if at.outside.is_empty() {
        work.ask("shell.outside", ShellAsk::Outside);
    }
    let caps = at.caps(&smallest, Some(&held.heard), held.evidence());
    let request = Request {
        // A press shell is reamed only where its maker agrees, whatever it is made of.
        bonded: true,
        allowance: Allowance::new(caps),
        ..at.request(work, settled.identity.clone(), needed)
    };
    let Some(permit) = at.permit(work, request, false) else {
        return false;
    };
    let within = held.heard.limits;
    let most = within.upper().known();
    let draft = Draft::cut(permit, ShellTask::Ream { least, most })
        .with(tool("reamer", ShellFact::Reamer { within }))
        .turned(Turn::Clockwise);
    work.steps.push(draft);
    true
}

/// The cup or bearing in its bore.
fn part(at: &RoundPlace<'_>, work: &mut PlaceWork, row: &Shell, cut: bool) {
    if row.fit.as_ref().and_then(|f| f.value()) == Some(&Hold::Slip) {
        work.settled(ShellFact::SlipFit);
    }
    let waits = cut || at.now.covered;
    tried::heard(work, at.now.part, GoesIn::Presses, !waits);
    // How tight it must sit is told by a maker, so the part is needed to know how far the bore may go.
    if at.part.is_none() && at.heard(Limited::Interference).is_none() {
        return;
    }
    let asked = Fit {
        shell: Some(row.code.to_string()),
        ..Fit::default()
    };
    let Some(part) = at.known_part(work) else {
        return;
    };
    match at.fits(part, Limited::Interference, asked) {
        Some(said) if waits => work.found(&said),
        Some(said) => work.judged(&said, at.fit),
        None => {}
    }
}
