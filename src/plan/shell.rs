//! The bottom-bracket shell: two threads and two faces, or two bores; both threads before either face.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::answer::{Operation, State};
use super::face::{self, Facing};
use super::identity::{self, Settled, belief, observed, on_metal, options};
use super::permit::{Identity, Pilot};
use super::sheet::{Coating, Face, ShellSheet, ShellSide};
use super::shell_width::{self, Widths};
use super::site::{Joint, Site, covered};
use super::thread::{self, Bench};
use super::thread_now::{self, Now, Stated};
use super::work::PlaceWork;
use super::{Change, shell_press};
use crate::evidence::{Grade, Text};
use crate::identify::{Feature, Identification, Observation, Standing, identify};
use crate::judge::{Finding, extremes, pattern_threads};
use crate::measure::{Placed, Reading, Surface, settled_below};
use crate::standard::{LocatedBy, Place, Shell, ShellWindow};
use crate::thread::{Hand, PitchDrift, Side, ThreadSize};

pub(super) const SIDES: [Side; 2] = [Side::Drive, Side::NonDrive];

pub(super) const fn side_of(sheet: &ShellSheet, side: Side) -> &ShellSide {
    match side {
        Side::Drive => &sheet.drive,
        Side::NonDrive => &sheet.non_drive,
    }
}

pub(super) const fn other(side: Side) -> Side {
    match side {
        Side::Drive => Side::NonDrive,
        Side::NonDrive => Side::Drive,
    }
}

pub(super) const fn side_words(side: Side) -> &'static str {
    match side {
        Side::Drive => "drive side",
        Side::NonDrive => "non-drive side",
    }
}

/// Both sides of a shell as they are now.
struct Sides {
    drive: Now,
    non_drive: Now,
}

impl Sides {
    fn of(sheet: &ShellSheet) -> Self {
        let now = |side: &ShellSide| {
            thread_now::now(&Stated {
                state: side.state,
                go: side.go,
                not_go: side.not_go,
                go_after: side.go_after,
                not_go_after: side.not_go_after,
                minor: &side.minor,
                passes: &side.passes,
                coating: side.coating.or(sheet.coating),
            })
        };
        Self {
            drive: now(&sheet.drive),
            non_drive: now(&sheet.non_drive),
        }
    }

    const fn get(&self, side: Side) -> &Now {
        match side {
            Side::Drive => &self.drive,
            Side::NonDrive => &self.non_drive,
        }
    }
}

pub(super) fn plan(site: &Site<'_>, sheet: &ShellSheet) -> Vec<PlaceWork> {
    let mut shell = PlaceWork::new(Place::Shell);
    shell.notes.extend(sheet.note.clone());
    shell
        .notes
        .extend(sheet.passes.iter().filter_map(|p| p.note.clone()));
    shell.worked = !sheet.after.is_empty() || !sheet.passes.is_empty();
    shell.measured = !sheet.width.is_empty() || !sheet.bore.is_empty() || sheet.pitch.is_some();
    shell.hear(&sheet.limits);
    let sides = Sides::of(sheet);
    let settled = identify_shell(site, &mut shell, sheet, &sides);
    let row = settled
        .as_ref()
        .and_then(|s| site.tables.find::<Shell>(&s.code).ok());
    let widths = shell_width::of(site, &mut shell, sheet, row);
    believed_parts(site, &mut shell, sheet);
    let mut works = Vec::new();
    let threaded = row
        .and_then(|row| row.thread.as_ref())
        .and_then(|t| t.value().copied());
    match (row, settled, threaded) {
        (Some(row), Some(settled), Some(size)) => {
            if let Some(evidence) = row.thread.as_ref().and_then(|t| t.evidence()) {
                shell.settled(
                    Finding::stated("thread", size.to_string()).resting_on(Some(evidence)),
                );
            }
            hands(&mut shell, sheet, row);
            let alike = if sheet.believed.is_some() || sheet.confirmed.is_some() {
                Vec::new()
            } else {
                identity::alike(site.tables, shell.identification.as_ref(), &settled.code)
            };
            let whole = Whole {
                sheet,
                row: Some(row),
                size: Some(size),
                alike,
                identity: settled.identity,
                contradicted: !shell.contradictions.is_empty(),
                sides: &sides,
            };
            works.extend(
                SIDES
                    .map(|side| self::side(site, &whole, side))
                    .into_iter()
                    .flatten(),
            );
            works.extend(faces(site, &whole, &widths, &works));
        }
        (Some(row), Some(settled), None) => {
            shell_press::plan(site, &mut shell, sheet, row, &settled);
            works.extend(without_thread(sheet, &shell));
            let whole = Whole {
                sheet,
                row: Some(row),
                size: None,
                alike: Vec::new(),
                identity: settled.identity,
                contradicted: !shell.contradictions.is_empty(),
                sides: &sides,
            };
            works.extend(faces(site, &whole, &widths, &works));
        }
        _ => {
            // Not named yet: its sides and faces are told, nothing is planned there.
            let whole = Whole {
                sheet,
                row: None,
                size: None,
                alike: Vec::new(),
                identity: Identity::Open,
                contradicted: true,
                sides: &sides,
            };
            works.extend(unnamed(&whole));
        }
    }
    if widths.too_wide {
        faced_to_width(&mut shell, &works);
    }
    works.insert(0, shell);
    works
}

/// A width that is over its limit is brought back at the faces, or waits for them; where they can do nothing, it is out.
fn faced_to_width(shell: &mut PlaceWork, works: &[PlaceWork]) {
    let faces = || {
        works
            .iter()
            .filter(|w| matches!(w.place, Place::ShellFace(_)))
    };
    if faces()
        .flat_map(|w| &w.steps)
        .any(|s| s.operation() == Operation::Face)
    {
        shell.cured_beside = true;
    } else if faces().any(|w| w.state() == State::Open) {
        shell.hold("the width: its faces bring it back, and what they wait for is asked there");
    } else {
        shell.out = true;
        shell.cures.push(String::from(
            "wider than its unit takes, and nothing is faced: another unit or crank, or the frame maker",
        ));
    }
}

/// The shell as far as it is known.
struct Whole<'a> {
    sheet: &'a ShellSheet,
    row: Option<&'a Shell>,
    size: Option<ThreadSize>,
    /// Threads that nothing on the sheet tells apart from it.
    alike: Vec<ThreadSize>,
    identity: Identity,
    contradicted: bool,
    sides: &'a Sides,
}

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
fn identify_shell(
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
    let run = |seen: &[Observation]| {
        let mut with = seen.to_vec();
        with.extend(belief(name));
        identify(Place::Shell, &with, &options(site))
            .or_else(|_| identify(Place::Shell, seen, &options(site)))
            .ok()
    };
    if all.is_empty() && name.is_none() {
        work.ask(
            "shell.pitch",
            "is there a thread? Its pitch, over six threads or more; else the bore, the width, and the hand on each side",
            "nothing is cut in a shell before it is named",
            "eye, thread pitch gauge leaves, caliper",
        );
        return None;
    }
    let by_thread = (sheet.pitch.is_some() && !sheet.width.is_empty())
        .then(|| run(&seen(site, sheet, sides, minor_of, false)))
        .flatten();
    if let Some(answer) = by_thread
        && let Some(code) = identity::code_of(site.tables, &answer, name)
    {
        return told(site, work, sheet, answer, code);
    }
    let answer = run(&all);
    if let Some(answer) = answer {
        if let Some(code) = identity::code_of(site.tables, &answer, name) {
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
    identity::settle(
        site,
        work,
        (&Place::Shell, "shell"),
        &all,
        (believed, sheet.confirmed.as_deref()),
        true,
    )
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
    shell_width::window(site, sheet).map(|window| window.shell.as_ref())
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
    let row = site.tables.find::<Shell>(&code).ok();
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
    if let Some(window) = shell_width::window(site, sheet)
        && row.is_some_and(|row| !shell_width::takes(site, row, window))
        && weighed(sheet, &answer, window)
    {
        work.ask(
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
        .extend(identity::taken_as(site.tables, &answer, &code));
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
                || name.is_some_and(|name| identity::is_called(c, name))
        })
        .filter_map(|c| site.tables.find::<Shell>(&c.code).ok())
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
    let code = identity::code_of(site.tables, &answer, name)?;
    let row = site.tables.find::<Shell>(&code).ok()?;
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

/// Which way each side turns, and what is not known of it.
fn hands(work: &mut PlaceWork, sheet: &ShellSheet, row: &Shell) {
    for side in SIDES {
        let here = side_of(sheet, side);
        let fact = row.hand_fact(side);
        match (here.hand, row.hand(side)) {
            (Some(found), Some(wanted)) if found != wanted => {
                // Told where the pattern was settled, unless that was settled in spite of it.
                if work.contradictions.is_empty() {
                    work.contradicts(
                        format!(
                            "{}: {found}-hand found, {wanted}-hand by the pattern: in back to front, retapped, or another pattern",
                            side_words(side)
                        ),
                        format!("shell.{side}.hand"),
                        "eye, light: which way does the thread rise?",
                    );
                }
            }
            (_, Some(wanted)) => {
                let words = format!(
                    "{wanted}-hand: tightens {}, loosens {}, seen from that side",
                    wanted.tighten(),
                    wanted.loosen()
                );
                work.settled(
                    Finding::stated(format!("hand, {}", side_words(side)), words)
                        .resting_on(fact.and_then(|f| f.evidence())),
                );
            }
            (_, None) => {}
        }
    }
}

/// The hand that a side is worked with: read, or printed without dispute for its pattern.
fn hand_for(work: &mut PlaceWork, whole: &Whole<'_>, side: Side) -> Option<Hand> {
    if let Some(found) = side_of(whole.sheet, side).hand {
        return Some(found);
    }
    let fact = whole.row.and_then(|row| row.hand_fact(side));
    let printed = fact
        .filter(|f| f.dissent().is_empty() && f.grade().is_some_and(|g| g > Grade::Memory))
        .and_then(|f| f.value().copied());
    if printed.is_none() {
        work.ask(
            format!("shell.{side}.hand"),
            "which hand is the thread? Look at its slope",
            match fact {
                Some(f) if !f.dissent().is_empty() => {
                    "sources disagree on the hand of this pattern"
                }
                Some(f) if f.value().is_some() => "the hand of this side is remembered, not read",
                _ => "no source states the hand of this pattern",
            },
            "eye, light",
        );
    }
    printed
}

/// One threaded side.
fn side(site: &Site<'_>, whole: &Whole<'_>, side: Side) -> Option<PlaceWork> {
    let here = side_of(whole.sheet, side);
    let size = whole.size?;
    let mut work = begin(side, here);
    let now = whole.sides.get(side).clone();
    work.worked = now.worked;
    work.measured = here.state.is_some() || here.go.is_some() || !here.minor.is_empty();
    let Some(hand) = hand_for(&mut work, whole, side) else {
        return Some(work);
    };
    let both = [Side::Drive, Side::NonDrive]
        .iter()
        .all(|s| whole.sides.get(*s).guides());
    let bench = Bench {
        place: Place::ShellSide(side),
        path: format!("shell.{side}"),
        what: format!("shell, {}", side_words(side)),
        size,
        alike: &whole.alike,
        hand,
        joint: joint(site, whole.sheet, here),
        joint_path: "shell",
        limits: &here.limits,
        now,
        identity: if whole.contradicted {
            Identity::Open
        } else {
            whole.identity.clone()
        },
        outside: extremes(&whole.sheet.outside).first().copied(),
        shell: whole
            .row
            .and_then(|row| pattern_threads(row).ok())
            .map(|threads| (threads, side)),
        guided: both.then_some(Text::Borrowed(
            "the thread itself, with the chaser of the other side: both are started by hand and guide each other",
        )),
        proof: None,
        replaceable: false,
    };
    thread::work(site, &mut work, &bench);
    if whole.contradicted {
        work.held = true;
    }
    Some(work)
}

/// Material and consent of one side.
fn joint<'a>(site: &Site<'a>, sheet: &'a ShellSheet, side: &'a ShellSide) -> Joint<'a> {
    let mut common = sheet.common();
    common.material = side.material.or(common.material);
    site.joint(&common)
}

/// Both faces.
fn faces(
    site: &Site<'_>,
    whole: &Whole<'_>,
    widths: &Widths,
    threads: &[PlaceWork],
) -> Vec<PlaceWork> {
    let located = whole.row.and_then(|row| row.located_by.value().copied());
    let stays = match located {
        Some(LocatedBy::Groove) => Some(
            "a ring in a groove locates the bearing, so facing moves nothing but the shield gap",
        ),
        Some(LocatedBy::Seat) => {
            Some("a seat inside the bore locates the bearing, so facing moves nothing")
        }
        _ => None,
    };
    let mut works = Vec::new();
    for side in SIDES {
        let here = side_of(whole.sheet, side);
        let coating = here
            .face
            .as_ref()
            .and_then(|f| f.coating)
            .or(here.coating)
            .or(whole.sheet.coating);
        let Some(face) = &here.face else {
            if stays.is_none() && covered(coating) {
                works.push(painted_without_heights(side, &pilot(whole, side, threads)));
            }
            continue;
        };
        if let Some(why) = stays {
            let mut work = face::begin(Place::ShellFace(side), face);
            work.measured = true;
            work.leave.push(String::from(why));
            works.push(work);
            continue;
        }
        works.push(face::plan(
            site,
            facing(
                site,
                whole,
                widths,
                (side, pilot(whole, side, threads)),
                face,
                coating,
            ),
        ));
    }
    shell_width::parallel(site, whole.sheet, &mut works);
    works
}

/// A painted face of which nothing was read.
fn painted_without_heights(side: Side, pilot: &Pilot) -> PlaceWork {
    let mut work = PlaceWork::new(Place::ShellFace(side));
    // Nothing is surveyed for a cut that nothing guides.
    if let Pilot::Missing(why) = pilot {
        work.hold(format!("the face, for now: {why}"));
        return work;
    }
    work.ask(
        format!("shell.{side}.face.probes"),
        "heights of the face at 5, 7 or 9 places all round, with its inner, outer and probe radius",
        "the shell is painted and nothing was said of its faces; one side of a face cleans long before the other",
        "dial indicator turned about the pilot",
    );
    work
}

/// What guides the facing tool of a side.
fn pilot(whole: &Whole<'_>, side: Side, threads: &[PlaceWork]) -> Pilot {
    let threaded = whole.size.is_some();
    let left_unsound = |side: Side| {
        threads
            .iter()
            .filter(|w| w.place == Place::ShellSide(side))
            .any(|w| matches!(w.state(), State::Refer | State::Out))
    };
    if threaded && !whole.sides.get(side).guides() {
        Pilot::Missing(
            "the thread that the facing tool pilots on is gone or not cut; its repair comes first",
        )
    } else if threaded && !whole.sides.get(other(side)).guides() {
        Pilot::Missing(
            "the facing tool is guided through both threads, and the other one is gone or not cut; its repair comes first",
        )
    } else if SIDES.into_iter().any(left_unsound) {
        Pilot::Missing(
            "the facing tool is guided through both threads, and one of them is not made sound here; that is settled first",
        )
    } else {
        Pilot::There
    }
}

fn facing<'a>(
    site: &Site<'a>,
    whole: &Whole<'a>,
    widths: &Widths,
    (side, pilot): (Side, Pilot),
    face: &'a Face,
    coating: Option<Coating>,
) -> Facing<'a> {
    let threaded = whole.size.is_some();
    let moves = match side {
        Side::Drive => "the chainline moves inboard by what comes off",
        Side::NonDrive => "its bearing moves inboard by what comes off; the chainline stays",
    };
    Facing {
        place: Place::ShellFace(side),
        path: format!("shell.{side}.face"),
        what: format!("shell, {}", side_words(side)),
        face,
        joint: joint(site, whole.sheet, side_of(whole.sheet, side)),
        joint_path: "shell",
        coating,
        contradicted: whole.contradicted || whole.identity == Identity::Open,
        cutter: "shell facing cutter, its blades wider than the ring",
        pilot,
        guided: Some(if threaded {
            Text::Owned(format!(
                "the sound thread, {}, held by both sides",
                side_words(side)
            ))
        } else {
            Text::Borrowed("the bore, by a close bush in both sides")
        }),
        square: None,
        limits: widths.limits(side),
        limits_now: widths.limits_now(),
        besides: widths.besides(side),
        changes: Vec::from([
            Change {
                place: Place::Shell,
                words: moves,
                by: None,
            },
            Change {
                place: Place::Shell,
                words: "the shell is narrower: width again, and with it the spacers of the crank maker",
                by: None,
            },
        ]),
    }
}

/// A side with what the sheet says of it: its notes and every limit.
fn begin(side: Side, here: &ShellSide) -> PlaceWork {
    let mut work = PlaceWork::new(Place::ShellSide(side));
    work.notes.extend(here.note.clone());
    work.notes
        .extend(here.passes.iter().filter_map(|p| p.note.clone()));
    work.hear(&here.limits);
    work
}

/// Whether the sheet says anything of a side besides its face.
fn spoken_of(here: &ShellSide) -> bool {
    *here
        != ShellSide {
            face: here.face.clone(),
            ..ShellSide::default()
        }
}

/// Sides of a shell that has no thread, where the sheet speaks of them.
fn without_thread(sheet: &ShellSheet, shell: &PlaceWork) -> Vec<PlaceWork> {
    SIDES
        .into_iter()
        .filter(|side| spoken_of(side_of(sheet, *side)))
        .map(|side| {
            let mut work = begin(side, side_of(sheet, side));
            work.leave
                .push(String::from("there is no thread in this pattern"));
            work.held = !shell.contradictions.is_empty();
            work
        })
        .collect()
}

/// Sides and faces of a shell that is not named.
fn unnamed(whole: &Whole<'_>) -> Vec<PlaceWork> {
    let mut works = Vec::new();
    for side in SIDES {
        let here = side_of(whole.sheet, side);
        let now = whole.sides.get(side);
        if spoken_of(here) {
            let mut work = begin(side, here);
            work.measured = true;
            work.worked = now.worked;
            if now.lost() {
                work.settled(Finding {
                    outcome: Some(crate::measure::Outcome::NonconformityShown),
                    grade: Some(Grade::CommonPractice),
                    ..Finding::stated(
                        "thread",
                        "worn or torn out; which thread it was is not settled",
                    )
                });
                work.out = true;
            }
            work.hold("the thread, until the shell is named");
            works.push(work);
        }
        if let Some(face) = &here.face {
            let mut work = face::begin(Place::ShellFace(side), face);
            work.measured = true;
            work.hold("the face, until the shell is named");
            works.push(work);
        }
    }
    works
}

/// Whether parts of the pattern that was believed would go into the thread whose pitch was read.
fn believed_parts(site: &Site<'_>, work: &mut PlaceWork, sheet: &ShellSheet) {
    let believed = sheet
        .believed
        .as_deref()
        .and_then(|name| site.tables.find::<Shell>(name).ok());
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
