//! The crown-race seat: cleaned by hand, measured, never cut here.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::bore_now::narrower;
use super::facts::{HeadAsk, HeadFact, HeadTask};
use super::identity;
use super::ranking;
use super::sheet::{CrownSheet, Limited};
use super::site::{self, Site, on_surface};
use super::steering::{as_read, begin, by_hand, came_off, fit_of, held, row_of, unmeasured};
use super::work::{ByHand, PlaceWork};
use crate::fit::MaterialKind;
use crate::identify::{Feature, Observation};
use crate::judge::{Finding, Instrument, MemberOf, extremes, sizes_against};
use crate::measure::{Limits, Outcome, Placed, Reading, Surface};
use crate::standard::{CrownSeat, Joint, Place};

/// The seat by its last readings.
struct Now {
    seat: Vec<Placed>,
    worked: bool,
    covered: bool,
}

fn plain(placed: &[Placed]) -> Vec<Reading> {
    placed.iter().map(|p| p.reading).collect()
}

impl Now {
    fn of(sheet: &CrownSheet) -> Self {
        let worked = !sheet.after.is_empty();
        // What was read after the work was read bare, unless the reading says that paint is still there.
        let seat = if worked {
            on_surface(&sheet.after, Some(super::sheet::Coating::Bare))
        } else {
            on_surface(&sheet.seat, sheet.coating)
        };
        let painted = seat.iter().any(|p| p.surface == Surface::OverPaint);
        Self {
            covered: painted || !worked && site::covered(sheet.coating),
            seat,
            worked,
        }
    }

    /// Nobody said what some of the readings lie on.
    fn not_said(&self) -> bool {
        !self.covered && self.seat.iter().any(|p| p.surface == Surface::NotKnown)
    }
}

pub(super) fn plan(site: &Site<'_>, sheet: &CrownSheet) -> PlaceWork {
    let mut work = begin(Place::Crown, sheet.note.as_ref());
    let now = Now::of(sheet);
    work.measured = !sheet.seat.is_empty() || !sheet.race.is_empty() || sheet.coating.is_some();
    work.worked = now.worked;
    let ends = [&sheet.seat, &sheet.after].map(|read| extremes(&plain(read)));
    if let [Some(old), Some(new)] = ends.each_ref().map(|read| read.last()) {
        let answer = (String::from("crown.after"), Instrument::Micrometer);
        let came_on = narrower(&sheet.after, &sheet.seat);
        came_off(old.less(new), came_on, answer, &mut work);
    }
    let row = named(site, sheet, &now, &mut work);
    seat(site, sheet, &now, row, &mut work);
    race(site, sheet, &now, &mut work);
    if now.covered {
        clean(site, sheet, &mut work);
    }
    work.leave(HeadFact::CrownSeatIsTheirs);
    work
}

/// Which seat it is. Over paint a seat reads too large, and names nothing.
fn named<'a>(
    site: &Site<'a>,
    sheet: &CrownSheet,
    now: &Now,
    work: &mut PlaceWork,
) -> Option<&'a CrownSeat> {
    let (believed, confirmed) = (sheet.believed.as_deref(), sheet.confirmed.as_deref());
    let proved = row_of(site, work, confirmed, String::from("crown.confirmed"));
    let on_metal = identity::on_metal(&now.seat);
    if on_metal.is_empty() {
        let believed = believed.filter(|_| proved.is_none());
        let called = row_of(site, work, believed, String::from("crown.believed"));
        let row: &CrownSeat = proved.or(called)?;
        let seat = row.code.clone();
        work.settled(HeadFact::TakenFor { seat });
        return Some(row);
    }
    if proved.is_some() {
        return proved;
    }
    let mut seen = identity::observed(Feature::OutsideDiameter, &on_metal);
    seen.extend(identity::belief(believed));
    let code = recognised(site, work, (&Place::Crown, "crown"), &seen, believed)?;
    site.tables.get(&code)
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
    let readings = plain(&now.seat);
    let makers = sheet.limits.iter().filter(|l| l.what == Limited::Seat);
    if readings.is_empty() {
        makers.for_each(|limit| work.settled(unmeasured(limit)));
        work.ask("crown.seat", HeadAsk::CrownSeat);
        return;
    }
    let mut all: Vec<Finding> = makers
        .map(|limit| held("seat", &readings, limit, site.rule))
        .collect();
    if let Some(row) = row {
        let limits = Limits::of_size(&row.seat);
        let evidence = row.seat.evidence();
        let listed = sizes_against("seat", &readings, &limits, &row.name, evidence, site.rule);
        // The fork maker's word comes before the list, which is then shown beside it.
        let decides = all.is_empty();
        all.push(Finding {
            outcome: listed.outcome.filter(|_| decides),
            ..listed
        });
    }
    if all.is_empty() {
        work.settled(as_read("seat", &readings));
    }
    for mut finding in all {
        if now.covered {
            finding = finding.read_on_paint(false, site.tables);
        }
        let limited = finding.limits.is_some_and(|l| !l.has_unknown());
        match finding.outcome {
            Some(Outcome::NonconformityShown) if now.not_said() => {
                work.ask("crown.coating", HeadAsk::CrownCoating);
                finding.outcome = Some(Outcome::Undecided);
            }
            Some(Outcome::NonconformityShown) => {
                work.out = true;
                work.cure(HeadFact::OtherRace);
                work.cure(HeadFact::BuiltUpOrFork);
                work.cure(HeadFact::NeverByForce);
            }
            // Only where both limits are known can a finer reading decide.
            Some(Outcome::Undecided) if !now.covered && limited => {
                let field = if now.worked {
                    "crown.after"
                } else {
                    "crown.seat"
                };
                work.ask(field, HeadAsk::CrownSeatFiner);
            }
            _ => {}
        }
        work.settled(finding);
    }
}

/// The race on its seat.
fn race(site: &Site<'_>, sheet: &CrownSheet, now: &Now, work: &mut PlaceWork) {
    if sheet.race.is_empty() || now.seat.is_empty() {
        let makers = sheet.limits.iter();
        makers
            .filter(|l| l.what == Limited::Interference)
            .for_each(|limit| work.settled(unmeasured(limit)));
        if sheet.race.is_empty() {
            work.ask("crown.race", HeadAsk::Race);
        }
        return;
    }
    let hole: Vec<Placed> = sheet.race.iter().map(|r| (*r).into()).collect();
    let both = (MemberOf::placed(hole), MemberOf::placed(now.seat.clone()));
    let Some(verdict) = fit_of(site, work, Joint::CrownRace, both, &sheet.limits) else {
        return;
    };
    // A coating that nobody mentioned can be why the seat reads larger than the race.
    let perhaps_painted = || {
        let (race, seat) = (extremes(&sheet.race), extremes(&plain(&now.seat)));
        let both = race.first().zip(seat.last());
        now.not_said() && both.is_some_and(|(race, seat)| seat.less(race).sure_sign().is_gt())
    };
    match verdict.outcome {
        Outcome::NonconformityShown if perhaps_painted() => {
            work.ask("crown.coating", HeadAsk::CrownCoating);
        }
        Outcome::NonconformityShown => {
            work.out = true;
            work.cure(HeadFact::RaceNotFitted);
        }
        Outcome::Undecided
            if !now.covered && verdict.findings.iter().any(|f| f.limits.is_some()) =>
        {
            work.ask("crown.race", HeadAsk::RaceFiner);
        }
        _ => {}
    }
    work.found(&verdict);
}

/// A covered seat is cleaned by hand, whatever it is made of.
fn clean(site: &Site<'_>, sheet: &CrownSheet, work: &mut PlaceWork) {
    let material = site.joint(&sheet.common()).material;
    let task = HeadTask::Clean {
        at: Place::Crown,
        again: work.worked,
        to_metal: material.is_some_and(MaterialKind::is_metal),
        bearing: false,
    };
    work.settled(HeadFact::SeatCovered);
    work.steps
        .push(by_hand(&Place::Crown, ByHand::Clean, task, material));
}
