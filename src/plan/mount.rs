//! Disc-brake mounts: faced after the axle thread, because the cutter is guided by the axle.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::mount_now::{self, MountNow};
use super::sheet::{BrakeEntry, BrakeSheet, Limited};
use super::site::{Joint, Site};
use super::work::PlaceWork;
use super::{Caution, Found, MountAsk, MountFact, entries, identity};
use super::{mount_bolt, mount_cut, mount_square};
use crate::Figure;
use crate::judge::{Instrument, sizes_against};
use crate::measure::{Outcome, Reading};
use crate::standard::{BrakeMount, BrakeSystem, End, Place};

/// A mount, with what its judgements share.
pub(super) struct Mount<'a> {
    pub site: &'a Site<'a>,
    pub place: Place,
    pub end: End,
    /// Its path in the sheet.
    pub path: &'a str,
    pub sheet: &'a BrakeSheet,
    pub joint: Joint<'a>,
    pub system: BrakeSystem,
    /// What it is called: `rear post mount`.
    pub what: String,
    pub now: MountNow<'a>,
}

impl Mount<'_> {
    pub(super) fn field(&self, field: &str) -> String {
        format!("{}.{field}", self.path)
    }

    /// The field in which new heights are written.
    pub(super) fn heights(&self) -> String {
        self.field(if self.now.worked { "passes" } else { "points" })
    }

    /// A flat mount whose bolts go through it, so that its thickness chooses them.
    pub(super) fn takes_bolts(&self) -> bool {
        self.system == BrakeSystem::Fm && self.end != End::Front
    }

    pub(super) fn limited(&self, on: Limited) -> bool {
        self.sheet.limits.iter().any(|limit| limit.what == on)
    }

    /// Asks what covers it, and gives the field of the answer.
    pub(super) fn ask_coating(&self, work: &mut PlaceWork) -> String {
        let worked = self.now.worked;
        let field = self.field(if worked { "passes" } else { "coating" });
        work.ask(field.clone(), MountAsk::Coating { worked });
        field
    }
}

/// One plan a mount, however often the sheet speaks of it.
pub(super) fn plan(site: &Site<'_>, entries: &[BrakeEntry]) -> Vec<PlaceWork> {
    let mounts = entries::by_place(entries, |entry| Place::Brake(entry.end));
    mounts.iter().filter_map(|here| one(site, here)).collect()
}

fn one(site: &Site<'_>, here: &[&BrakeEntry]) -> Option<PlaceWork> {
    let BrakeEntry { end, path, .. } = here.first()?;
    let place = Place::Brake(*end);
    let mut work = PlaceWork::new(place.clone());
    work.cautions.push(Caution::Brakes);
    let sheet = &entries::one(&mut work, here.iter().map(|e| (&e.path, &e.sheet)))?;
    let notes = sheet.passes.iter().filter_map(|p| p.note.clone());
    work.notes.extend(notes);
    work.measured =
        !sheet.points.is_empty() || sheet.thickness.is_some() || sheet.coating.is_some();
    let (system, kind) = match sheet.system {
        Some(system @ BrakeSystem::Is) => (system, "brake tabs (IS)"),
        Some(system @ BrakeSystem::Pm) => (system, "post mount"),
        Some(system @ BrakeSystem::Fm) => (system, "flat mount"),
        _ => {
            work.ask(format!("{path}.system"), MountAsk::System);
            return Some(work);
        }
    };
    work.name = match end {
        End::Both => String::from(kind),
        end => format!("{end} {kind}"),
    };
    let mount = Mount {
        site,
        what: work.name.clone(),
        place,
        end: *end,
        path,
        sheet,
        joint: site.joint(&sheet.common()),
        system,
        now: mount_now::of(sheet),
    };
    work.worked = mount.now.worked;
    work.limits = mount_cut::allowance(&mount);
    called(&mount, &mut work);
    limits_told(&mount, &mut work);
    mount_bolt::bolt(&mount, &mut work);
    faces(&mount, &mut work);
    Some(work)
}

/// What it is believed or proved to be.
fn called(mount: &Mount<'_>, work: &mut PlaceWork) {
    let sheet = mount.sheet;
    let names = [
        ("confirmed", true, &sheet.confirmed),
        ("believed", false, &sheet.believed),
    ];
    for (field, proved, name) in names {
        let Some(name) = name else { continue };
        match mount.site.tables.find::<BrakeMount>(name) {
            Ok(row) => {
                let name = row.name.clone();
                let spacing = row.bolt_spacing.as_ref().and_then(Figure::evidence);
                let called = Found::of(MountFact::Called { proved, name });
                work.settled(called.resting_on(spacing));
            }
            Err(error) => identity::refused(work, mount.field(field), &error),
        }
    }
}

/// The makers' limits against what is there now.
fn limits_told(mount: &Mount<'_>, work: &mut PlaceWork) {
    let now = &mount.now;
    let field = mount.field(if now.worked { "passes" } else { "thickness" });
    for limit in &mount.sheet.limits {
        let (what, reading) = match limit.what {
            Limited::Depth => ("what came off", now.off.deepest()),
            Limited::Thickness => ("thickness", now.thickness),
            // Told with the tilt.
            _ => continue,
        };
        let (limits, rule) = (&limit.limits, mount.site.rule);
        let found = sizes_against(what, reading.as_slice(), limits, &limit.owner, None, rule);
        match found.outcome {
            Some(Outcome::NonconformityShown) => work.cure(MountFact::GoneForGood { what }),
            Some(Outcome::Undecided) => work.ask(field.clone(), MountAsk::LimitAgain { what }),
            _ => {}
        }
        work.fact(found);
    }
}

/// Whether the faces are square, and whether they are cut.
fn faces(mount: &Mount<'_>, work: &mut PlaceWork) {
    let now = &mount.now;
    if now.points.len() < 3 {
        return unsurveyed(mount, work);
    }
    let survey = match mount_now::survey(now.points) {
        Ok(survey) => survey,
        Err(because) => {
            let with = Instrument::DialAtAxle;
            return work.ask(mount.heights(), MountAsk::NoSurvey { because, with });
        }
    };
    mount_square::told(mount, &survey, work);
    now.off
        .tell(work, mount.field("passes"), Instrument::DialAtAxle);
    let square = mount_square::judged(mount, &survey, work);
    let out = square == Outcome::NonconformityShown;
    let u = survey.reading_uncertainty() * core::f64::consts::SQRT_2;
    match Reading::new(survey.range(), u) {
        Ok(needed) if now.covered || out => {
            let permitted = mount_cut::cut(mount, needed, work);
            // Through paint a tilt is that of the paint; bare, nothing but a cut or another frame cures it.
            if out && !permitted && !now.covered {
                work.out = true;
                work.cure(MountFact::FaceIt);
            }
        }
        // Not covered, as far as anybody said, and not shown out of square.
        _ if now.not_said => {
            mount.ask_coating(work);
        }
        _ if now.worked => {}
        _ if square == Outcome::ConformityShown => work.leave(MountFact::SquareEnough),
        _ if work.questions.is_empty() => work.leave(MountFact::NothingShown),
        _ => {}
    }
}

/// A mount without heights.
fn unsurveyed(mount: &Mount<'_>, work: &mut PlaceWork) {
    let limits = mount.sheet.limits.iter();
    for limit in limits.filter(|limit| limit.what == Limited::Squareness) {
        work.settled(super::steering::unmeasured(limit));
    }
    let now = &mount.now;
    if now.covered || mount.limited(Limited::Squareness) || !now.points.is_empty() {
        work.ask(mount.heights(), MountAsk::Heights);
    } else if now.not_said {
        mount.ask_coating(work);
    } else {
        work.leave(MountFact::BareUnsurveyed);
    }
}
