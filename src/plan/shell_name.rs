//! Which pattern a shell is: pitch and hand weigh more than width, and a label proves nothing.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::identity::{self, Settled, belief, observed, on_metal, options};
use super::permit::Identity;
use super::sheet::ShellSheet;
use super::shell::{SIDES, Sides, side_of, side_words};
use super::site::{Site, covered};
use super::work::PlaceWork;
use super::{ranking, shell_window};
use crate::evidence::Grade;
use crate::identify::{Feature, Identification, Observation, Options, Standing, identify};
use crate::judge::{Finding, extremes};
use crate::measure::{Placed, Reading, Surface, settled_below};
use crate::standard::{Place, Shell, ShellWindow};
use crate::thread::{PitchDrift, Side};

/// What was seen of a shell whose thread is asked for: a thread that lost metal names nothing, and the two sides are never
/// pooled.
fn seen(
    site: &Site<'_>,
    sheet: &ShellSheet,
    sides: &Sides,
    minor_of: Option<Side>,
    width: bool,
) -> Vec<Observation> {
    let bore: Vec<Placed> = super::shell_press::bore_now(sheet);
    let mut seen = observed(Feature::Bore, &on_metal(&bore));
    if width {
        seen.extend(observed(Feature::Width, &sheet.width));
    }
    seen.extend(
        sheet
            .half_drive
            .map(|r| Observation::size(Feature::HalfWidthDrive, r)),
    );
    seen.extend(
        sheet
            .half_non_drive
            .map(|r| Observation::size(Feature::HalfWidthNonDrive, r)),
    );
    seen.extend(sheet.pitch.map(Observation::Pitch));
    let thread = speaks_of_thread(sheet);
    if sheet.pitch.is_none() && (thread || !sheet.bore.is_empty()) {
        seen.push(Observation::Threaded(thread));
    }
    if let Some(side) = minor_of {
        let now = sides.get(side);
        if !now.lost() {
            seen.extend(observed(
                Feature::MinorDiameter,
                &identity::of_metal(site.tables, &now.minor),
            ));
        }
    }
    for side in SIDES {
        seen.extend(
            side_of(sheet, side)
                .hand
                .map(|hand| Observation::hand(side, hand)),
        );
    }
    seen
}

/// Whether the sheet says something that only a threaded shell has.
fn speaks_of_thread(sheet: &ShellSheet) -> bool {
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
    let minor_of = speaks_for_both(sides);
    let believed = sheet
        .believed
        .as_deref()
        .or_else(|| wanted_by_window(site, sheet));
    let name = sheet.confirmed.as_deref().or(believed);
    let mut all = seen(site, sheet, sides, minor_of, true);
    let run = |seen: &[Observation], name_only: bool| {
        let mut with = seen.to_vec();
        with.extend(belief(name));
        let options = Options {
            name_only,
            ..options(site)
        };
        identify(Place::Shell, &with, &options)
            .or_else(|_| identify(Place::Shell, seen, &options))
            .ok()
    };
    if all.is_empty() && name.is_none() {
        work.ask_plain(
            "shell.pitch",
            "is there a thread? Its pitch, over six threads or more; else the bore, the width, and the hand on each side",
            "nothing is cut in a shell before it is named",
            "eye, thread pitch gauge leaves, caliper",
        );
        return None;
    }
    let by_thread = (sheet.pitch.is_some() && !sheet.width.is_empty())
        .then(|| run(&seen(site, sheet, sides, minor_of, false), true))
        .flatten();
    if let Some(answer) = by_thread
        && let Some(code) = ranking::code_of(site.tables, &answer, name)
    {
        return told(site, work, sheet, answer, code);
    }
    let answer = run(&all, false);
    if let Some(answer) = answer {
        if let Some(code) = ranking::code_of(site.tables, &answer, name) {
            return told(site, work, sheet, answer, code);
        }
        if !hands_agree(site, sheet, &answer)
            && let Some(settled) = turned(site, work, sheet, sides, minor_of, name)
        {
            identity::tell(work, answer);
            return Some(settled);
        }
        all.extend(belief(believed));
    }
    // What only a bore speaks against by a little may be what it was believed to be, made or left wrong.
    let settled = identity::settle(
        site,
        work,
        (&Place::Shell, "shell"),
        &all,
        (believed, sheet.confirmed.as_deref()),
        true,
    );
    // A bore that was read over paint names nothing: the same reading again would not either.
    if settled.is_none() && !sheet.bore.is_empty() && covered(sheet.coating) {
        for question in work
            .questions
            .iter_mut()
            .filter(|q| q.answer == "shell.bore")
        {
            question.ask = super::CommonAsk::Plain {
                plain: "bore on bare metal, in two directions at each end: take the coating off there by hand".into(),
                reason: "a press shell is known by its bore".into(),
                tool: "three-point internal micrometer".into(),
            }
            .into();
        }
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
        Some((side, worst, extremes(&readings).first()?.value()))
    };
    match (told(Side::Drive), told(Side::NonDrive)) {
        (Some((_, worst, least)), Some((side, other_worst, other_least)))
            if other_worst < worst || other_worst == worst && settled_below(other_least, least) =>
        {
            Some(side)
        }
        (one, other) => one.or(other).map(|(side, ..)| side),
    }
}

/// Whose crank goes in says what shell it is held to be, where nobody says more.
fn wanted_by_window<'a>(site: &Site<'a>, sheet: &ShellSheet) -> Option<&'a str> {
    shell_window::window(site, sheet).map(|window| window.shell.as_ref())
}

/// Whether only the window says which shell it is, and the readings leave that possible: a width rules out no thread.
pub(super) fn weighed(sheet: &ShellSheet, answer: &Identification, window: &ShellWindow) -> bool {
    sheet.believed.is_none()
        && sheet.confirmed.is_none()
        && answer
            .candidates
            .iter()
            .filter(|c| c.code == window.shell)
            .any(|c| match &c.standing {
                Standing::Possible => true,
                Standing::Excluded(exclusion) => exclusion.by == Feature::Width,
                Standing::Untested => false,
            })
}

/// Tells what the thread named, and what a width that no pattern lists means.
fn told(
    site: &Site<'_>,
    work: &mut PlaceWork,
    sheet: &ShellSheet,
    answer: Identification,
    code: String,
) -> Option<Settled> {
    let row = site.tables.get::<Shell>(&code);
    if let Some(row) = row
        && !sheet.width.is_empty()
        && !row.widths.is_empty()
    {
        let listed = row.widths.iter().any(|width| {
            width.nominal().is_some_and(|n| {
                sheet.width.iter().any(|w| {
                    settled_below(
                        (w.value() - n).abs(),
                        crate::quantity::mm(1.0) + w.expanded_uncertainty(),
                    )
                })
            })
        });
        if !listed {
            work.settled(Finding {
                readings: sheet.width.clone(),
                grade: Some(Grade::CommonPractice),
                ..Finding::stated(
                    "width",
                    format!(
                        "{}, by its thread, of a width that no table lists for it",
                        row.name
                    ),
                )
            });
        }
    }
    let mut identity = Identity::Known;
    if let Some(window) = shell_window::window(site, sheet)
        && row.is_some_and(|row| !shell_window::takes(site, row, window))
        && weighed(sheet, &answer, window)
    {
        work.ask_plain(
            "shell.confirmed",
            format!(
                "is it {code}, or {} as the crank's window says? Hand of each side, or a cup tried by hand",
                window.shell
            ),
            "the readings can be either, and the window is for one of them",
            "eye, light, a known cup",
        );
        identity = Identity::Doubtful(String::from("shell.confirmed"));
    }
    if let Some(proved) = &sheet.confirmed {
        let same = row.is_some_and(|row| {
            row.code.eq_ignore_ascii_case(proved)
                || row.aliases.iter().any(|a| a.eq_ignore_ascii_case(proved))
                || row.name.eq_ignore_ascii_case(proved)
        });
        if !same {
            work.contradicts(
                format!("{proved} was proved there, and the readings say {code}"),
                "shell.confirmed",
                "a known cup, pitch gauge",
            );
            identity = Identity::Open;
        }
    }
    work.facts
        .extend(ranking::taken_as(site.tables, &answer, &code).map(super::Found::from));
    identity::tell(work, answer);
    Some(Settled { code, identity })
}

/// Whether some pattern has the hands that were found, among those that it is called and that the readings leave possible, or
/// among all while no pitch was read and it is called nothing: then no hand is wrong yet.
fn hands_agree(site: &Site<'_>, sheet: &ShellSheet, answer: &Identification) -> bool {
    let name = sheet.confirmed.as_deref().or(sheet.believed.as_deref());
    let unnamed = sheet.pitch.is_none() && name.is_none();
    answer
        .candidates
        .iter()
        .filter(|c| {
            unnamed
                || c.standing == Standing::Possible
                || name.is_some_and(|name| ranking::is_called(c, name))
        })
        .filter_map(|c| site.tables.get::<Shell>(&c.code))
        .any(|row| {
            SIDES.into_iter().all(|side| {
                side_of(sheet, side)
                    .hand
                    .is_none_or(|found| row.hand(side) == Some(found))
            })
        })
}

/// Whether the hands alone stand against a pattern: the shell is in back to front, or one hand is another than it should be.
fn turned(
    site: &Site<'_>,
    work: &mut PlaceWork,
    sheet: &ShellSheet,
    sides: &Sides,
    minor_of: Option<Side>,
    name: Option<&str>,
) -> Option<Settled> {
    let without: Vec<Observation> = seen(site, sheet, sides, minor_of, true)
        .into_iter()
        .filter(|o| !matches!(o, Observation::Hand { .. }))
        .collect();
    let mut with = without;
    with.extend(belief(name));
    let answer = identify(Place::Shell, &with, &options(site)).ok()?;
    let code = ranking::code_of(site.tables, &answer, name)?;
    let row = site.tables.get::<Shell>(&code)?;
    let wrong: Vec<Side> = SIDES
        .into_iter()
        .filter(|side| {
            matches!((side_of(sheet, *side).hand, row.hand(*side)),
                (Some(found), Some(wanted)) if found != wanted)
        })
        .collect();
    let words = match wrong.as_slice() {
        [] => return None,
        [one] => format!(
            "the hand of the {} is not that of {}: {} found, {} by the pattern; it was read wrong, retapped, or is another pattern",
            side_words(*one),
            row.name,
            side_of(sheet, *one).hand?,
            row.hand(*one)?
        ),
        _ => format!(
            "both hands are those of {} with the sides exchanged: the shell is in back to front, or was tapped so; cups go in only on the wrong sides, where riding can loosen them",
            row.name
        ),
    };
    let field = match wrong.as_slice() {
        [Side::NonDrive] => "shell.non_drive.hand",
        _ => "shell.drive.hand",
    };
    work.contradicts(words, field, "eye, light: which way does the thread rise?");
    Some(Settled {
        code,
        identity: Identity::Open,
    })
}

/// Whether parts of the pattern that was believed would go into the thread whose pitch was read.
pub(super) fn believed_parts(site: &Site<'_>, work: &mut PlaceWork, sheet: &ShellSheet) {
    let believed = sheet
        .believed
        .as_deref()
        .and_then(|name| site.tables.get::<Shell>(name));
    let (Some(shell), Some(pitch)) = (believed, sheet.pitch) else {
        return;
    };
    let Some(size) = shell.thread.as_ref().and_then(|t| t.value()) else {
        return;
    };
    if pitch.same_as(size.pitch()) {
        return;
    }
    let drift = PitchDrift::between(size.pitch(), pitch);
    let half = drift.turns_to_half_pitch().unwrap_or_default();
    work.settled(Finding::stated(
        format!("parts for {}", shell.code),
        format!(
            "do not go in: {} is not {pitch}, {} a turn apart, half a pitch after {half:.0} turns; they start and then bind",
            size.pitch(),
            crate::quantity::in_mm(drift.per_turn)
        ),
    ));
}
