//! Disc-brake mounts: faced after the axle thread, because the cutter is guided by the axle.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::caution::Caution;
use super::mount_cut::cut;
use super::mount_now::{self, MountNow};
use super::sheet::{BrakeEntry, BrakeSheet, Limited};
use super::site::{Joint, Site};
use super::work::PlaceWork;
use super::{mount_bolt, mount_merge, mount_square};
use crate::judge::{Finding, extremes, sizes_against};
use crate::measure::{Outcome, Reading};
use crate::quantity::in_mm;
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
}

/// One plan a mount, however often the sheet speaks of it.
pub(super) fn plan(site: &Site<'_>, entries: &[BrakeEntry]) -> Vec<PlaceWork> {
    let mut ends: Vec<End> = Vec::new();
    for entry in entries {
        if !ends.contains(&entry.end) {
            ends.push(entry.end);
        }
    }
    ends.into_iter()
        .filter_map(|end| {
            let same: Vec<&BrakeEntry> = entries.iter().filter(|e| e.end == end).collect();
            let merged = mount_merge::merge(&same)?;
            Some(one(site, end, &merged))
        })
        .collect()
}

fn one(site: &Site<'_>, end: End, merged: &mount_merge::Merged<'_>) -> PlaceWork {
    let place = Place::Brake(end);
    let mut work = PlaceWork::new(place.clone());
    work.cautions.push(Caution::Brakes);
    let sheet = &merged.sheet;
    work.notes.extend(sheet.note.clone());
    work.notes
        .extend(sheet.passes.iter().filter_map(|p| p.note.clone()));
    work.measured =
        !sheet.points.is_empty() || sheet.thickness.is_some() || sheet.coating.is_some();
    for (field, words) in &merged.apart {
        work.contradicts(words.clone(), field.clone(), "look again");
    }
    let system = match sheet.system {
        Some(system @ (BrakeSystem::Is | BrakeSystem::Pm | BrakeSystem::Fm)) => system,
        _ => {
            work.ask_plain(
                format!("{}.system", merged.path),
                "which mount is it: tabs (`is`), posts (`pm`) or flat (`fm`)?",
                "which slope of its faces tilts the caliper depends on it",
                "eye",
            );
            return work;
        }
    };
    let mount = Mount {
        site,
        what: format!("{} {}", end_words(end), system_words(system)),
        place,
        end,
        path: merged.path,
        sheet,
        joint: site.joint(&sheet.common()),
        system,
        now: mount_now::of(sheet),
    };
    work.name.clone_from(&mount.what);
    work.worked = mount.now.worked;
    called(&mount, &mut work);
    limits_told(&mount, &mut work);
    mount_bolt::bolt(&mount, &mut work);
    faces(&mount, &mut work);
    work
}

const fn end_words(end: End) -> &'static str {
    match end {
        End::Front => "front",
        End::Rear => "rear",
        End::Both => "front and rear",
    }
}

const fn system_words(system: BrakeSystem) -> &'static str {
    match system {
        BrakeSystem::Is => "brake tabs (IS)",
        BrakeSystem::Pm => "post mount",
        BrakeSystem::Fm => "flat mount",
        BrakeSystem::Rotor | BrakeSystem::Pads | BrakeSystem::Any => "brake mount",
    }
}

/// What it is believed or proved to be.
fn called(mount: &Mount<'_>, work: &mut PlaceWork) {
    let said = [
        ("confirmed", "proved to be", &mount.sheet.confirmed),
        ("believed", "called", &mount.sheet.believed),
    ];
    for (field, words, name) in said {
        let Some(name) = name else { continue };
        match mount.site.tables.find::<BrakeMount>(name) {
            Ok(row) => work.settled(
                Finding::stated("which mount", format!("{words} {}: {}", row.code, row.name))
                    .resting_on(row.bolt_spacing.as_ref().and_then(crate::Figure::evidence)),
            ),
            Err(error) => work.ask_plain(
                mount.field(field),
                error.remedy().to_string(),
                error.problem().to_string(),
                "steel rule",
            ),
        }
    }
}

/// The makers' limits against what is there now.
fn limits_told(mount: &Mount<'_>, work: &mut PlaceWork) {
    let off: Vec<Reading> = mount.now.deepest().into_iter().collect();
    let thickness: Vec<Reading> = mount.now.thickness.into_iter().collect();
    for limit in &mount.sheet.limits {
        let (words, readings) = match limit.what {
            Limited::Depth => ("what came off", &off),
            Limited::Thickness => ("thickness", &thickness),
            // Told with the tilt.
            _ => continue,
        };
        let found = sizes_against(
            words,
            readings,
            &limit.limits,
            &limit.owner,
            None,
            mount.site.rule,
        );
        if found.outcome == Some(Outcome::NonconformityShown) {
            work.cure(format!(
                "{words} is out of its maker's limits and does not come back: the frame maker decides whether it may be ridden"
            ));
        }
        if found.outcome == Some(Outcome::Undecided) {
            work.ask_plain(
                mount.field(if mount.now.worked {
                    "passes"
                } else {
                    "thickness"
                }),
                format!("{words} again, finer"),
                "it lies too close to its maker's limit to tell",
                "outside micrometer",
            );
        }
        work.fact(found);
    }
}

/// Whether the faces are square, and whether they are cut.
fn faces(mount: &Mount<'_>, work: &mut PlaceWork) {
    let now = &mount.now;
    if now.points.len() < 3 {
        unsurveyed(mount, work);
        return;
    }
    let survey = match mount_now::survey(now.points) {
        Ok(survey) => survey,
        Err(error) => {
            work.ask_plain(
                mount.heights(),
                error.remedy().to_string(),
                format!("the heights are no survey: {}", error.problem()),
                "dial indicator on a bar held by the axle",
            );
            return;
        }
    };
    mount_square::told(mount, &survey, work);
    if let Some(least) = now.grew() {
        work.contradicts(
            format!(
                "the mount stands {} higher than before in one place: the surveys do not share a datum, or something lies under the indicator",
                in_mm(-least.value())
            ),
            mount.field("passes"),
            "dial indicator on a bar held by the axle",
        );
    } else if now.cut && now.removed.is_empty() {
        work.ask_plain(
            mount.field("passes"),
            "heights again at the places of the first survey",
            "the surveys share no places, so nothing can be said of what came off",
            "dial indicator on a bar held by the axle",
        );
    }
    let square = mount_square::judged(mount, &survey, work);
    let out = square.outcome == Outcome::NonconformityShown;
    let needed = Reading::new(
        survey.range(),
        survey.reading_uncertainty() * core::f64::consts::SQRT_2,
    );
    let (true, Ok(needed)) = (now.covered || out, needed) else {
        let outcome = square.outcome;
        square.tell(work, false);
        not_cut(mount, outcome, work);
        return;
    };
    let permitted = cut(mount, needed, out, work);
    // Through paint a tilt is that of the paint; bare, nothing but a cut or another frame cures it.
    square.tell(work, out && !permitted && !now.covered);
}

/// Not covered, as far as anybody said, and not shown out of square.
fn not_cut(mount: &Mount<'_>, square: Outcome, work: &mut PlaceWork) {
    if mount.now.not_said {
        ask_coating(mount, work);
    } else if !mount.now.worked && square == Outcome::ConformityShown {
        work.leave(String::from(
            "the faces: bare, and square enough for the caliper",
        ));
    } else if !mount.now.worked && square == Outcome::Undecided && work.questions.is_empty() {
        work.leave(String::from(
            "the faces: bare, and nothing shows that they must be cut",
        ));
    }
}

pub(super) fn ask_coating(mount: &Mount<'_>, work: &mut PlaceWork) {
    let (field, measure) = if mount.now.worked {
        ("passes", "what is left of the coating on the faces?")
    } else {
        ("coating", "what covers the faces? Not stated is not bare")
    };
    work.ask_plain(
        mount.field(field),
        measure,
        "a caliper on paint sits neither square nor tight",
        "eye, light",
    );
}

/// A mount without heights.
fn unsurveyed(mount: &Mount<'_>, work: &mut PlaceWork) {
    for limit in &mount.sheet.limits {
        if limit.what == Limited::Squareness {
            work.settled(super::head::unmeasured(limit));
        }
    }
    let squareness = mount
        .sheet
        .limits
        .iter()
        .any(|l| l.what == Limited::Squareness);
    if mount.now.covered || squareness || !mount.now.points.is_empty() {
        work.ask_plain(
            mount.heights(),
            "heights of both faces at 3 places or more each, along and across",
            "side slope of the faces rolls the caliper and cannot be set right with its bolts",
            "dial indicator on a bar held by the axle",
        );
    } else if mount.now.not_said {
        ask_coating(mount, work);
    } else {
        work.leave(String::from(
            "the faces: bare and not surveyed, no reason to cut them is known",
        ));
    }
}

/// Smallest and largest of what came off.
pub(super) fn removed(mount: &Mount<'_>) -> Vec<Reading> {
    extremes(&mount.now.removed)
}
