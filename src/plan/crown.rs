//! The crown-race seat: cleaned by hand, measured, never cut here.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::caution::Caution;
use super::head::unmeasured;
use super::identity;
use super::ranking;
use super::sheet::{CrownSheet, Limited};
use super::site::{Site, on_surface};
use super::work::{ByHand, Draft, PlaceWork};
use crate::fit::MaterialKind;
use crate::identify::{Feature, Observation};
use crate::judge::{Finding, Fit, MemberOf, extremes, sizes_against, spread};
use crate::measure::{Limits, Outcome, Placed, Reading, Surface};
use crate::quantity::in_mm;
use crate::standard::{CrownSeat, Joint, Place};

const PATH: &str = "crown";

/// The seat by its last readings.
struct Now {
    seat: Vec<Placed>,
    worked: bool,
    covered: bool,
}

impl Now {
    fn of(sheet: &CrownSheet) -> Self {
        // What was read after the work was read bare, unless the reading says that paint is still there.
        let after = sheet.after.iter().map(|p| Placed {
            surface: match p.surface {
                Surface::NotKnown => Surface::OnMetal,
                said => said,
            },
            ..*p
        });
        let worked = !sheet.after.is_empty();
        let seat: Vec<Placed> = if worked {
            after.collect()
        } else {
            on_surface(&sheet.seat, sheet.coating)
        };
        let covered = if seat.is_empty() {
            super::site::covered(sheet.coating)
        } else {
            seat.iter().any(|p| p.surface == Surface::OverPaint)
                || !worked && super::site::covered(sheet.coating)
        };
        Self {
            seat,
            worked,
            covered,
        }
    }

    fn readings(&self) -> Vec<Reading> {
        self.seat.iter().map(|p| p.reading).collect()
    }

    /// Nobody said what some of the readings lie on.
    fn not_said(&self) -> bool {
        !self.covered && self.seat.iter().any(|p| p.surface == Surface::NotKnown)
    }
}

pub(super) fn plan(site: &Site<'_>, sheet: &CrownSheet) -> PlaceWork {
    let mut work = PlaceWork::new(Place::Crown);
    work.cautions.push(Caution::Steering);
    work.notes.extend(sheet.note.clone());
    let now = Now::of(sheet);
    work.measured = !sheet.seat.is_empty() || !sheet.race.is_empty() || sheet.coating.is_some();
    work.worked = now.worked;
    came_off(sheet, &mut work);
    let row = named(site, sheet, &now, &mut work);
    seat(site, sheet, &now, row, &mut work);
    race(site, sheet, &now, &mut work);
    if now.covered {
        clean(site, sheet, &mut work);
    }
    work.leave(String::from(
        "the seat itself: cutting it is for the fork maker or a qualified builder",
    ));
    work
}

/// What came off, and a seat that grew.
fn came_off(sheet: &CrownSheet, work: &mut PlaceWork) {
    let plain = |p: &[Placed]| p.iter().map(|p| p.reading).collect::<Vec<_>>();
    let (old, new) = (
        extremes(&plain(&sheet.seat)),
        extremes(&plain(&sheet.after)),
    );
    let (Some(old), Some(new)) = (old.last(), new.last()) else {
        return;
    };
    let off = old.less(new);
    if off.sure_sign().is_lt() {
        work.contradicts(
            format!(
                "the seat reads {} larger than before the work: measured elsewhere, or not clean",
                in_mm(-off.value())
            ),
            format!("{PATH}.after"),
            "outside micrometer",
        );
        return;
    }
    work.removed = Vec::from([off]);
    work.settled(Finding {
        readings: Vec::from([off]),
        ..Finding::stated(
            "what came off",
            format!(
                "{} ± {} on diameter at the widest place",
                in_mm(off.value()),
                in_mm(off.expanded_uncertainty())
            ),
        )
    });
}

/// Which seat it is. Over paint a seat reads too large, and names nothing.
fn named<'a>(
    site: &Site<'a>,
    sheet: &CrownSheet,
    now: &Now,
    work: &mut PlaceWork,
) -> Option<&'a CrownSeat> {
    let find = |name: &str| site.tables.find::<CrownSeat>(name);
    let on_metal = identity::on_metal(&now.seat);
    if on_metal.is_empty() {
        let name = sheet.confirmed.as_deref().or(sheet.believed.as_deref())?;
        return match find(name) {
            Ok(row) => {
                work.settled(Finding::stated(
                    "which standard",
                    format!(
                        "taken for {}, as it is called; it is measured bare first",
                        row.code
                    ),
                ));
                Some(row)
            }
            Err(error) => {
                identity::refused(work, format!("{PATH}.believed"), &error);
                None
            }
        };
    }
    let mut seen = identity::observed(Feature::OutsideDiameter, &on_metal);
    seen.extend(identity::belief(sheet.believed.as_deref()));
    if let Some(Ok(row)) = sheet.confirmed.as_deref().map(find) {
        return Some(row);
    }
    find(&recognised(
        site,
        work,
        (&Place::Crown, PATH),
        &seen,
        sheet.believed.as_deref(),
    )?)
    .ok()
}

/// What the readings and the belief name, told; nothing is asked, because nothing is cut to it.
pub(super) fn recognised(
    site: &Site<'_>,
    work: &mut PlaceWork,
    (place, path): (&Place, &str),
    seen: &[Observation],
    believed: Option<&str>,
) -> Option<String> {
    let answer = identity::ask_tables(site, work, place, seen, &format!("{path}.believed"))?;
    let code = ranking::code_of(site.tables, &answer, believed);
    identity::tell(work, answer);
    code
}

/// The seat against its makers' limits, or those of its row.
fn seat(
    site: &Site<'_>,
    sheet: &CrownSheet,
    now: &Now,
    row: Option<&CrownSeat>,
    work: &mut PlaceWork,
) {
    let readings = now.readings();
    let makers = || sheet.limits.iter().filter(|l| l.what == Limited::Seat);
    if readings.is_empty() {
        makers().for_each(|limit| work.settled(unmeasured(limit)));
        work.ask_plain(
            format!("{PATH}.seat"),
            "diameter of the seat in two directions",
            "whether a race fits is told by the seat, not by a label",
            "outside micrometer",
        );
        return;
    }
    let mut all: Vec<Finding> = makers()
        .map(|l| sizes_against("seat", &readings, &l.limits, &l.owner, None, site.rule))
        .collect();
    if let Some(row) = row {
        let listed = sizes_against(
            "seat",
            &readings,
            &Limits::of_size(&row.seat),
            &row.name,
            row.seat.evidence(),
            site.rule,
        );
        // The fork maker's word comes before the list, which is then shown beside it.
        let beside = !all.is_empty();
        all.push(Finding {
            outcome: listed.outcome.filter(|_| !beside),
            ..listed
        });
    }
    if all.is_empty() {
        work.settled(Finding::stated("seat", spread(&readings)));
    }
    for finding in all {
        let finding = if now.covered {
            finding.read_on_paint(false, site.tables)
        } else {
            finding
        };
        match finding.outcome {
            Some(Outcome::NonconformityShown) if now.not_said() => {
                ask_coating(work);
                work.settled(Finding {
                    outcome: Some(Outcome::Undecided),
                    ..finding
                });
            }
            Some(Outcome::NonconformityShown) => {
                work.cures.extend(
                    [
                        "another race, whose bore is made for this seat, by its maker's word",
                        "the fork maker or a qualified builder: a worn seat is built up and cut again, or the fork replaced",
                        "never by a punch, filing or glue alone",
                    ]
                    .map(super::Fact::from),
                );
                work.fact(finding);
            }
            Some(Outcome::Undecided) if !now.covered && has_both(&finding) => {
                work.ask_plain(
                    format!("{PATH}.{}", if now.worked { "after" } else { "seat" }),
                    "diameter of the seat again in two directions, finer",
                    "it lies too close to a limit to tell",
                    "outside micrometer",
                );
                work.settled(finding);
            }
            _ => work.settled(finding),
        }
    }
}

/// Whether the limits of a finding are known, so that a finer reading can decide.
fn has_both(finding: &Finding) -> bool {
    finding.limits.is_some_and(|l| !l.has_unknown())
}

fn ask_coating(work: &mut PlaceWork) {
    work.ask_plain(
        format!("{PATH}.coating"),
        "what covers the seat?",
        "a coating counts twice on diameter",
        "eye, light, fingernail",
    );
}

/// The race on its seat.
fn race(site: &Site<'_>, sheet: &CrownSheet, now: &Now, work: &mut PlaceWork) {
    let makers = || {
        sheet
            .limits
            .iter()
            .filter(|l| l.what == Limited::Interference)
    };
    if sheet.race.is_empty() || now.seat.is_empty() {
        makers().for_each(|limit| work.settled(unmeasured(limit)));
        if sheet.race.is_empty() {
            work.ask_plain(
                format!("{PATH}.race"),
                "bore of the race in two directions",
                "the fit cannot be judged without both",
                "inside caliper or three-point internal micrometer",
            );
        }
        return;
    }
    let owners: Vec<&str> = makers().map(|l| l.owner.as_str()).collect();
    let asked = Fit {
        joint: Some(Joint::CrownRace),
        hole: MemberOf::placed(sheet.race.iter().map(|r| (*r).into()).collect::<Vec<_>>()),
        shaft: MemberOf::placed(now.seat.clone()),
        interference: makers().map(|l| l.limits).collect(),
        owner: (!owners.is_empty()).then(|| owners.join("; ")),
        rule: Some(site.rule),
        ..Fit::default()
    };
    let verdict = match asked.answer(site.tables) {
        Ok(verdict) => verdict,
        Err(error) => {
            work.settled(Finding::stated("race on its seat", format!("{error}")));
            return;
        }
    };
    work.settled(Finding::stated("race on its seat", verdict.words()));
    match verdict.outcome {
        Outcome::NonconformityShown if now.not_said() && tight(sheet, now) => ask_coating(work),
        Outcome::NonconformityShown => {
            work.out = true;
            work.cure(String::from(
                "do not fit this race: where it is loose, race or seat is worn, and both are measured again and the worn one replaced; where it presses too hard, another race; the headset maker's own figure decides",
            ));
        }
        Outcome::Undecided
            if !now.covered && verdict.findings.iter().any(|f| f.limits.is_some()) =>
        {
            work.ask_plain(
                format!("{PATH}.race"),
                verdict.next.first().map_or_else(
                    || String::from("bore of the race and diameter of the seat again, finer"),
                    |n| alloc::string::ToString::to_string(&n.ask),
                ),
                "whether the race holds is not shown either way; steering must not be ridden before it is",
                "inside and outside micrometer",
            );
        }
        _ => {}
    }
    work.found(&verdict);
}

/// Whether the seat reads larger than the race: a coating that nobody mentioned can be why.
fn tight(sheet: &CrownSheet, now: &Now) -> bool {
    let (race, seat) = (extremes(&sheet.race), extremes(&now.readings()));
    matches!((race.first(), seat.last()), (Some(race), Some(seat)) if seat.less(race).sure_sign().is_gt())
}

/// A covered seat is cleaned by hand, whatever it is made of.
fn clean(site: &Site<'_>, sheet: &CrownSheet, work: &mut PlaceWork) {
    let material = site.joint(&sheet.common()).material;
    work.settled(Finding::stated(
        "coating",
        "the seat is covered: a reading includes the coating on both sides, so it is no more than a bound before it is off",
    ));
    let words = if material.is_some_and(MaterialKind::is_metal) {
        "Take the coating off the crown-race seat by hand, down to metal"
    } else {
        "Take the coating off the crown-race seat by hand: wood, plastic or a fine cloth, nothing that scrapes"
    };
    let mut draft = Draft::by_hand_plain(
        &Place::Crown,
        ByHand::Clean,
        words,
        "a race forced over paint cracks or sits crooked",
    )
    .minding(Caution::Steering);
    if material == Some(MaterialKind::Carbon) {
        draft = draft.minding(Caution::Carbon);
    }
    work.steps.push(draft);
}
