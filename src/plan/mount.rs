//! Disc-brake mounts: faced after the axle thread, because the cutter is guided by the axle.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::answer::{Change, Counted, Operation};
use super::caution::Caution;
use super::mount_now::{self, MountNow};
use super::permit::{Identity, Pilot, Request, rule};
use super::sheet::{BrakeEntry, BrakeSheet, Heard, Limited, Marks};
use super::site::{Joint, Site, Wish, take, tool};
use super::thread_now;
use super::work::{ByHand, Draft, PlaceWork};
use super::{face, mount_bolt, mount_merge, mount_square};
use crate::face::{Allowance, CutLimit, LimitKind};
use crate::judge::{Finding, extremes, sizes_against};
use crate::measure::{Outcome, Reading};
use crate::quantity::in_mm;
use crate::standard::{BrakeMount, BrakeSystem, End, Place};
use crate::thread::Turn;

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
            work.ask(
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
            Err(error) => work.ask(
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
            work.cures.push(format!(
                "{words} is out of its maker's limits and does not come back: the frame maker decides whether it may be ridden"
            ));
        }
        if found.outcome == Some(Outcome::Undecided) {
            work.ask(
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
            work.ask(
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
        work.ask(
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
        work.leave.push(String::from(
            "the faces: bare, and square enough for the caliper",
        ));
    } else if !mount.now.worked && square == Outcome::Undecided && work.questions.is_empty() {
        work.leave.push(String::from(
            "the faces: bare, and nothing shows that they must be cut",
        ));
    }
}

fn ask_coating(mount: &Mount<'_>, work: &mut PlaceWork) {
    let (field, measure) = if mount.now.worked {
        ("passes", "what is left of the coating on the faces?")
    } else {
        ("coating", "what covers the faces? Not stated is not bare")
    };
    work.ask(
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
        work.ask(
            mount.heights(),
            "heights of both faces at 3 places or more each, along and across",
            "side slope of the faces rolls the caliper and cannot be set right with its bolts",
            "dial indicator on a bar held by the axle",
        );
    } else if mount.now.not_said {
        ask_coating(mount, work);
    } else {
        work.leave.push(String::from(
            "the faces: bare and not surveyed, no reason to cut them is known",
        ));
    }
}

/// Asks for the permit to face the mount. Whether it is planned.
fn cut(mount: &Mount<'_>, needed: Reading, out: bool, work: &mut PlaceWork) -> bool {
    let now = &mount.now;
    if now.marks == Some(Marks::Torn) {
        work.steps.push(Draft::refer(
            &mount.place,
            format!("Do not face the {}: the last pass tore it", mount.what),
            "a torn face is cut again only with another cutter or another hand",
        ));
        return false;
    }
    let mut waits = Vec::new();
    if now.not_said && !now.covered {
        ask_coating(mount, work);
        waits.push(mount.field(if now.worked { "passes" } else { "coating" }));
    }
    if now.thickness.is_none()
        && mount
            .sheet
            .limits
            .iter()
            .any(|l| l.what == Limited::Thickness)
    {
        work.ask(
            mount.field("thickness"),
            "thickness of the mount, bolt head to caliper face",
            "its maker limits it, and facing makes it thinner",
            "outside caliper",
        );
    }
    let ruling = rule(Request {
        place: &mount.place,
        operation: Operation::Face,
        material: mount.joint.material,
        bonded: mount.joint.bonded,
        consent: mount.joint.consent,
        contradicted: !work.contradictions.is_empty(),
        identity: Identity::Known,
        metal_lost: false,
        makers_shape: false,
        pilot: pilot(mount),
        needed: Some((Counted::Depth, needed)),
        to_size: false,
        allowance: allowance(mount),
        stops: Vec::new(),
        waits,
        decision: mount.site.rule,
    });
    let wish = Wish {
        place: &mount.place,
        joint: mount.path,
        readings: mount.heights(),
        operation: Operation::Face,
        what: &mount.what,
        only_coating: now.covered,
        instrument: "dial indicator on a bar held by the axle",
    };
    let Some(permit) = take(work, ruling, &wish) else {
        return false;
    };
    let why = match (now.covered, now.cut, out) {
        (true, true, _) => {
            "places where nothing came off still carry paint: the least that gives full contact"
        }
        (true, false, _) => {
            "paint and build-up tilt the caliper; a hollow in the middle may keep paint as long as both ends of each face are bright"
        }
        (false, ..) => {
            "it is out of square by more than the caliper can bear, and no bolt sets that right"
        }
    };
    let by = permit.off().map(|off| off.most);
    let mut draft = Draft::cut(
        permit,
        format!("Face the {}, the least that gives full contact", mount.what),
        why,
    )
    .with(tool("facing_cutter", "brake-mount facing cutter"))
    .turned(Turn::Clockwise)
    .minding(Caution::Brakes);
    let bolts = mount.system == BrakeSystem::Fm && mount.end != End::Front;
    if mount.system == BrakeSystem::Fm {
        draft = draft
            .checking("thickness of the mount again, and with it the bolt: facing makes the mount thinner")
            .changing(Change {
                place: mount.place.clone(),
                words: "the mount is thinner by what comes off: a bolt chosen before is that much too long",
                by,
            });
    }
    work.steps.push(draft);
    if bolts {
        work.steps.push(
            Draft::by_hand(
                &mount.place,
                ByHand::Check,
                format!(
                    "Choose the bolts of the {} anew by the thickness that is left",
                    mount.what
                ),
                "a bolt that bottoms feels tight and clamps nothing",
            )
            .minding(Caution::Brakes),
        );
    }
    true
}

/// What limits the cut, now.
fn allowance(mount: &Mount<'_>) -> Allowance {
    let now = &mount.now;
    let limits = &mount.sheet.limits;
    let deepest = now.deepest();
    let mut left = face::left(face::written(limits), now.cut, deepest.as_ref());
    if let Some(heard) = Heard::of(limits, Limited::Thickness)
        && let Some((least, words)) = heard.at_least()
    {
        let what = format!("thickness {words}");
        left.extend(match &now.thickness {
            Some(thickness) => CutLimit::leaving(
                LimitKind::MountThickness,
                what,
                thickness,
                least,
                heard.limits.grade(),
            ),
            None => CutLimit::unknown(LimitKind::MountThickness, what, "measure the mount"),
        });
    }
    Allowance::new(left)
}

/// The axle guides the cutter: its thread must not be torn or crossed.
fn pilot(mount: &Mount<'_>) -> Pilot {
    let torn = mount
        .site
        .sheet
        .threads()
        .iter()
        .filter(|t| t.place == Place::Axle(mount.end))
        .any(|t| !thread_now::of(t.sheet).guides());
    if torn {
        Pilot::Missing(
            "the axle thread of this end, which guides the cutter, is torn, loose, crossed or not cut; that is put right first",
        )
    } else {
        Pilot::There
    }
}

/// Smallest and largest of what came off.
pub(super) fn removed(mount: &Mount<'_>) -> Vec<Reading> {
    extremes(&mount.now.removed)
}
