//! Which pattern a shell is: pitch and hand weigh more than width, and a label proves nothing.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::facts::{Ask, Found, ShellAsk, ShellFact};
use super::identity::{self, Settled, belief, observed, on_metal, options};
use super::permit::Identity;
use super::round_place::read;
use super::sheet::ShellSheet;
use super::shell::{SIDES, Sides, other_hand, side_of};
use super::site::{Site, covered};
use super::work::PlaceWork;
use super::{ranking, shell_press, shell_width};
use crate::evidence::Grade;
use crate::identify::{Feature, Identification, Observation, Standing, identify};
use crate::judge::{Instrument, extremes};
use crate::measure::{Reading, Surface, settled_below, settled_cmp};
use crate::quantity::{Length, mm};
use crate::standard::{Place, Shell, ShellWindow};
use crate::thread::{PitchDrift, Side};

/// What was proved, where the readings and the window leave another.
const CONFIRM: &str = "shell.confirmed";

/// A shell that is to be named.
struct Naming<'a> {
    site: &'a Site<'a>,
    work: &'a mut PlaceWork,
    sheet: &'a ShellSheet,
    sides: &'a Sides,
    /// The side whose bore names the thread; the two are never pooled.
    minor_of: Option<Side>,
    /// What was proved, else what it is held to be: by its label, else by whose crank goes in.
    name: Option<&'a str>,
}

impl Naming<'_> {
    /// What was seen, with the width or without it: a thread that lost metal names nothing.
    fn seen(&self, width: bool) -> Vec<Observation> {
        let sheet = self.sheet;
        let mut seen = observed(Feature::Bore, &on_metal(&shell_press::now(sheet).bore));
        if width {
            seen.extend(observed(Feature::Width, &sheet.width));
        }
        let size = |feature| move |r: Reading| Observation::size(feature, r);
        seen.extend(sheet.half_drive.map(size(Feature::HalfWidthDrive)));
        seen.extend(sheet.half_non_drive.map(size(Feature::HalfWidthNonDrive)));
        seen.extend(sheet.pitch.map(Observation::Pitch));
        let thread = speaks_of_thread(sheet);
        if sheet.pitch.is_none() && (thread || !sheet.bore.is_empty()) {
            seen.push(Observation::Threaded(thread));
        }
        let side = self.minor_of.map(|side| self.sides.get(side));
        if let Some(now) = side.filter(|now| !now.lost()) {
            let metal = identity::of_metal(self.site.tables, &now.minor);
            seen.extend(observed(Feature::MinorDiameter, &metal));
        }
        for side in SIDES {
            let hand = side_of(sheet, side).hand;
            seen.extend(hand.map(|hand| Observation::hand(side, hand)));
        }
        seen
    }

    /// What the tables say, with its name where they know that.
    fn asked(&self, seen: &[Observation], name_only: bool) -> Option<Identification> {
        let mut options = options(self.site);
        options.name_only = name_only;
        let mut with = seen.to_vec();
        with.extend(belief(self.name));
        let named = identify(Place::Shell, &with, &options);
        named
            .or_else(|_| identify(Place::Shell, seen, &options))
            .ok()
    }

    fn code(&self, answer: &Identification) -> Option<String> {
        ranking::code_of(self.site.tables, answer, self.name)
    }

    /// Tells what the thread named, and what a width that no pattern lists means.
    fn told(&mut self, answer: Identification, code: String) -> Option<Settled> {
        let (site, sheet) = (self.site, self.sheet);
        let row = site.tables.get::<Shell>(&code)?;
        let near = |read: &Reading, width: Length| {
            let reach = mm(1.0) + read.expanded_uncertainty();
            settled_below((read.value() - width).abs(), reach)
        };
        let mut listed = row.widths.iter().filter_map(|w| w.nominal());
        let known = row.widths.is_empty() || sheet.width.is_empty();
        if !known && !listed.any(|width| sheet.width.iter().any(|w| near(w, width))) {
            let pattern = row.name.to_string();
            let mut found = read(ShellFact::WidthNotListed { pattern }, &sheet.width);
            found.grade = Some(Grade::CommonPractice);
            self.work.settled(found);
        }
        let mut identity = Identity::Known;
        if let Some(window) = shell_width::window(site, sheet)
            && !shell_width::takes(site, row, window)
            && weighed(sheet, &answer, window)
        {
            let (one, other) = (code.clone(), window.shell.to_string());
            self.work.ask(CONFIRM, ShellAsk::WhichOf { one, other });
            identity = Identity::Doubtful(CONFIRM.into());
        }
        let called = |name: &str| {
            let mut names = [&row.code, &row.name].into_iter().chain(row.aliases.iter());
            names.any(|known| known.eq_ignore_ascii_case(name))
        };
        if let Some(proved) = sheet.confirmed.clone().filter(|name| !called(name)) {
            let named = code.clone();
            let other = ShellFact::ProvedOther { proved, named };
            self.work.contradicts(other, CONFIRM, Instrument::Part);
            identity = Identity::Open;
        }
        let taken = ranking::taken_as(site.tables, &answer, &code);
        self.work.facts.extend(taken.map(Found::from));
        identity::tell(self.work, answer);
        Some(Settled { code, identity })
    }

    /// Whether some pattern has the hands that were found, among those that it is called and that the readings leave possible,
    /// or among all while no pitch was read and it is called nothing: then no hand is wrong yet.
    fn hands_agree(&self, answer: &Identification) -> bool {
        let sheet = self.sheet;
        let name = sheet.confirmed.as_deref().or(sheet.believed.as_deref());
        let unnamed = sheet.pitch.is_none() && name.is_none();
        let has_hands = |row: &Shell| {
            let has = |side: Side| {
                let found = side_of(sheet, side).hand;
                found.is_none() || found == row.hand(side)
            };
            SIDES.into_iter().all(has)
        };
        answer.candidates.iter().any(|c| {
            let called = || name.is_some_and(|name| ranking::is_called(c, name));
            (unnamed || c.standing == Standing::Possible || called())
                && self.site.tables.get(&c.code).is_some_and(has_hands)
        })
    }

    /// The pattern against which the hands alone stand: the shell is in back to front, or one hand is another than it should be.
    fn turned(&mut self) -> Option<String> {
        let mut seen = self.seen(true);
        seen.retain(|o| !matches!(o, Observation::Hand { .. }));
        let code = self.code(&self.asked(&seen, false)?)?;
        let row = self.site.tables.get::<Shell>(&code)?;
        let (pattern, [drive, non_drive]) = (row.name.to_string(), SIDES);
        let other = |side| other_hand(self.sheet, row, side);
        let (side, fact) = match (other(drive), other(non_drive)) {
            (Some(_), Some(_)) => (drive, ShellFact::BackToFront { pattern }),
            (Some(one), None) => (drive, one),
            (None, one) => (non_drive, one?),
        };
        let field = format!("shell.{side}.hand");
        self.work.contradicts(fact, field, Instrument::Eye);
        Some(code)
    }
}

/// Whether the sheet says something that only a threaded shell has.
pub(super) fn speaks_of_thread(sheet: &ShellSheet) -> bool {
    SIDES.iter().any(|side| {
        let side = side_of(sheet, *side);
        side.hand.is_some() || side.state.is_some() || side.go.is_some() || !side.minor.is_empty()
    })
}

/// Which pattern the shell is. Pitch and hand weigh more than width: a width that no pattern has is told, and rules out no
/// thread.
pub(super) fn identify_shell(
    site: &Site<'_>,
    work: &mut PlaceWork,
    sheet: &ShellSheet,
    sides: &Sides,
) -> Option<Settled> {
    let window = || shell_width::window(site, sheet).map(|window| window.shell.as_ref());
    let believed = sheet.believed.as_deref().or_else(window);
    let mut naming = Naming {
        site,
        work,
        sheet,
        sides,
        minor_of: speaks_for_both(sides),
        name: sheet.confirmed.as_deref().or(believed),
    };
    let mut all = naming.seen(true);
    if all.is_empty() && naming.name.is_none() {
        work.ask("shell.pitch", ShellAsk::Names);
        return None;
    }
    if sheet.pitch.is_some()
        && !sheet.width.is_empty()
        && let Some(answer) = naming.asked(&naming.seen(false), true)
        && let Some(code) = naming.code(&answer)
    {
        return naming.told(answer, code);
    }
    if let Some(answer) = naming.asked(&all, false) {
        if let Some(code) = naming.code(&answer) {
            return naming.told(answer, code);
        }
        if !naming.hands_agree(&answer)
            && let Some(code) = naming.turned()
        {
            identity::tell(work, answer);
            let identity = Identity::Open;
            return Some(Settled { code, identity });
        }
        all.extend(belief(believed));
    }
    // What only a bore speaks against by a little may be what it was believed to be, made or left wrong.
    let names = (believed, sheet.confirmed.as_deref());
    let place = (&Place::Shell, "shell");
    let settled = identity::settle(site, work, place, &all, names, true);
    // A bore that was read over paint names nothing: the same reading again would not either.
    if settled.is_none() && !sheet.bore.is_empty() && covered(sheet.coating) {
        let bores = work
            .questions
            .iter_mut()
            .filter(|q| q.answer == "shell.bore");
        bores.for_each(|question| question.ask = Ask::from(ShellAsk::BareBore));
    }
    settled
}

/// The side whose bore names the thread: read on metal before nobody knows what, and that before over paint; then the
/// narrower, since wear and a tap only widen it. The two are never pooled.
fn speaks_for_both(sides: &Sides) -> Option<Side> {
    let told = |side: Side| {
        let now = sides.get(side);
        let worst = now.minor.iter().map(|p| match p.surface {
            Surface::OnMetal => 0,
            Surface::NotKnown => 1,
            Surface::OverPaint => 2,
        });
        let worst = worst.max().filter(|_| !now.lost())?;
        let readings: Vec<Reading> = now.minor.iter().map(|p| p.reading).collect();
        Some((worst, extremes(&readings).first()?.value(), side))
    };
    let told = SIDES.into_iter().filter_map(told);
    let first = told.min_by(|a, b| a.0.cmp(&b.0).then_with(|| settled_cmp(a.1, b.1)));
    first.map(|(.., side)| side)
}

/// Whether only the window says which shell it is, and the readings leave that possible: a width rules out no thread.
pub(super) fn weighed(sheet: &ShellSheet, answer: &Identification, window: &ShellWindow) -> bool {
    let possible = |standing: &Standing| match standing {
        Standing::Possible => true,
        Standing::Excluded(exclusion) => exclusion.by == Feature::Width,
        Standing::Untested => false,
    };
    let mut candidates = answer.candidates.iter();
    sheet.believed.is_none()
        && sheet.confirmed.is_none()
        && candidates.any(|c| c.code == window.shell && possible(&c.standing))
}

/// Whether parts of the pattern that was believed would go into the thread whose pitch was read.
pub(super) fn believed_parts(site: &Site<'_>, work: &mut PlaceWork, sheet: &ShellSheet) {
    let row = |name: &String| site.tables.get::<Shell>(name);
    let (Some(shell), Some(read)) = (sheet.believed.as_ref().and_then(row), sheet.pitch) else {
        return;
    };
    let size = shell.thread.as_ref().and_then(|t| t.value());
    let Some(pitch) = size.map(|s| s.pitch()).filter(|p| !read.same_as(*p)) else {
        return;
    };
    let drift = PitchDrift::between(pitch, read);
    work.settled(ShellFact::PartsBind {
        parts: shell.code.to_string(),
        pitch: pitch.to_string(),
        read: read.to_string(),
        turns: drift.turns_to_half_pitch().unwrap_or_default(),
    });
}
