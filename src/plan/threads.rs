//! Axles, hangers, bosses, pedals: which thread it is, its hand, and what is done to it.

use alloc::collections::BTreeMap;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::identity::{self, belief, observed, on_metal, options};
use super::permit::Identity;
use super::ranking;
use super::sheet::{ThreadEntry, ThreadSheet};
use super::site::{Site, on_surface};
use super::thread::{self, Bench, told};
use super::thread_now;
use super::work::PlaceWork;
use crate::evidence::{Fact, Grade};
use crate::identify::{Feature, Observation, identify};
use crate::judge::{Finding, ThreadSeen};
use crate::standard::{End, LeftRight, Place, ThreadUse, ThreadedPart};
use crate::thread::{Designation, Hand, ThreadSize};

/// Plans every thread that is neither shell nor steerer. Entries of one place are one thread.
pub(super) fn plan(site: &Site<'_>) -> Vec<PlaceWork> {
    let entries = site.sheet.threads();
    let mut by_place: BTreeMap<Place, Vec<ThreadEntry<'_>>> = BTreeMap::new();
    let mut order: Vec<Place> = Vec::new();
    for entry in entries {
        let here = by_place.entry(entry.place.clone()).or_default();
        if here.is_empty() {
            order.push(entry.place.clone());
        }
        here.push(entry);
    }
    order
        .into_iter()
        .filter_map(|place| by_place.remove(&place))
        .filter_map(|entries| one(site, &entries))
        .collect()
}

/// One thread from its entries: what one leaves out another may say; what two say differently is a contradiction.
fn one(site: &Site<'_>, entries: &[ThreadEntry<'_>]) -> Option<PlaceWork> {
    let first = entries.first()?;
    let mut work = PlaceWork::new(first.place.clone());
    let mut sheet = first.sheet.clone();
    for other in entries.iter().skip(1) {
        for field in join(&mut sheet, other.sheet) {
            work.contradicts(
                format!(
                    "{} and {} speak of one place and state another `{field}`",
                    first.path, other.path
                ),
                format!("{}.{field}", first.path),
                "the place itself",
            );
        }
    }
    if let Some(name) = &sheet.name {
        work.name.clone_from(name);
    }
    for note in entries.iter().filter_map(|e| e.sheet.note.as_ref()) {
        if !work.notes.contains(note) {
            work.notes.push(note.clone());
        }
    }
    work.notes
        .extend(sheet.passes.iter().filter_map(|p| p.note.clone()));
    planned(site, &mut work, first, &sheet);
    Some(work)
}

/// Fills what is left out from another entry; gives the fields that both state and differently.
fn join(sheet: &mut ThreadSheet, other: &ThreadSheet) -> Vec<&'static str> {
    let mut apart = Vec::new();
    macro_rules! either {
        ($($field:ident),*) => {$(
            match (&sheet.$field, &other.$field) {
                (Some(one), Some(two)) if one != two => apart.push(stringify!($field)),
                (None, Some(two)) => sheet.$field = Some(two.clone()),
                _ => {}
            }
        )*};
    }
    either!(
        material,
        believed,
        confirmed,
        consent,
        coating,
        name,
        mate,
        pitch,
        hand,
        state,
        go,
        not_go,
        go_after,
        not_go_after,
        replaceable
    );
    sheet.minor.extend(other.minor.iter().copied());
    sheet.limits.extend(other.limits.iter().cloned());
    sheet.passes.extend(other.passes.iter().cloned());
    apart
}

fn planned(site: &Site<'_>, work: &mut PlaceWork, entry: &ThreadEntry<'_>, sheet: &ThreadSheet) {
    let common = sheet.common();
    let joint = site.joint(&common);
    work.measured = !sheet.minor.is_empty()
        || sheet.pitch.is_some()
        || sheet.go.is_some()
        || sheet.state.is_some();
    work.hear(&sheet.limits);
    if matches!(entry.place, Place::Hanger(End::Front)) {
        work.contradicts(
            "a derailleur hanger at the front: no frame has one there",
            format!("{}.end", entry.path),
            "the place itself",
        );
    }
    let now = thread_now::of(sheet);
    work.worked = now.worked;
    let replaceable = sheet.replaceable == Some(true);
    let Some((size, row, identity)) = size_of(site, work, entry, sheet, now.coating) else {
        return;
    };
    let Some(hand) = hand_of(work, entry, sheet, row) else {
        return;
    };
    work.settled(Finding::stated("thread", by(sheet, &size)));
    let bench = Bench {
        place: entry.place.clone(),
        path: entry.path.clone(),
        what: work.name.clone(),
        size,
        alike: &[],
        hand,
        joint,
        joint_path: &entry.path,
        limits: &sheet.limits,
        now,
        identity,
        outside: None,
        shell: None,
        guided: None,
        proof: proof_of(entry.part),
        replaceable,
    };
    thread::work(site, work, &bench);
}

/// What the size of a thread rests on.
fn by(sheet: &ThreadSheet, size: &ThreadSize) -> String {
    let mut by: Vec<&str> = Vec::new();
    if sheet.pitch.is_some() {
        by.push("the pitch gauge");
    }
    if sheet.mate.is_some() {
        by.push("the mating part");
    }
    if sheet.confirmed.is_some() {
        by.push("what was proved");
    } else if sheet.believed.is_some() {
        by.push("what it was taken for");
    }
    told(size, &by)
}

fn proof_of(part: ThreadedPart) -> Option<&'static str> {
    match part {
        ThreadedPart::Axle => {
            Some("the axle screws in by hand over its whole thread and seats without play")
        }
        ThreadedPart::Hanger => Some("the derailleur bolt screws in by hand to its shoulder"),
        ThreadedPart::Pedal => Some("the pedal screws in by hand over its whole thread"),
        _ => None,
    }
}

/// A thread that was stated as text; `M10x26tpi`, as some write it, is a metric diameter with an inch pitch.
fn stated(text: Option<&str>) -> Option<ThreadSize> {
    let text = text?.trim();
    let read = |text: &str| text.parse::<Designation>().ok().map(|d| d.size);
    read(text).or_else(|| {
        let (major, pitch) = text
            .strip_prefix(['M', 'm'])?
            .split_once(['x', 'X', '\u{d7}'])?;
        read(&format!("{} mm x {}", major.trim(), pitch.trim()))
    })
}

/// The row of this part with that thread.
fn row_of<'a>(site: &Site<'a>, part: ThreadedPart, size: &ThreadSize) -> Option<&'a ThreadUse> {
    site.tables
        .all::<ThreadUse>()
        .find(|row| row.place == part && row.thread.value().is_some_and(|t| same(t, size)))
}

/// Two statements of one thread: one pitch and one major diameter, in whatever form they are written.
fn same(a: &ThreadSize, b: &ThreadSize) -> bool {
    a.pitch().same_as(b.pitch())
        && crate::measure::settled_cmp((a.major() - b.major()).abs(), crate::quantity::mm(0.05))
            .is_le()
}

/// Which thread it is, and how sure that is.
fn size_of<'a>(
    site: &Site<'a>,
    work: &mut PlaceWork,
    entry: &ThreadEntry<'_>,
    sheet: &ThreadSheet,
    coating: Option<super::sheet::Coating>,
) -> Option<(ThreadSize, Option<&'a ThreadUse>, Identity)> {
    let believed = stated(sheet.believed.as_deref());
    let proved = stated(sheet.confirmed.as_deref());
    if let (Some(mate), Some(believed)) = (sheet.mate, believed)
        && !same(&mate, &believed)
    {
        work.contradicts(
            format!("taken for {believed}, and its mating part is {mate}"),
            format!("{}.mate", entry.path),
            "pitch gauge on the part and in the hole",
        );
    }
    for (size, from) in [
        (sheet.mate, "mating part"),
        (proved, "proved part"),
        (believed, "label"),
    ] {
        if let (Some(size), Some(pitch)) = (size, sheet.pitch)
            && !pitch.same_as(size.pitch())
        {
            work.contradicts(
                format!("the pitch gauge says {pitch}, the {from} {size}"),
                format!("{}.pitch", entry.path),
                "thread pitch gauge leaves",
            );
        }
    }
    let named = proved.or(sheet.mate).or(believed);
    let sure = proved.is_some()
        || sheet.mate.is_some()
        || sheet.pitch.is_some()
        || sheet.state == Some(ThreadSeen::Uncut);
    if let (Some(size), true) = (named, sure) {
        let row = row_of(site, entry.part, &size);
        let listed = site
            .tables
            .all::<ThreadUse>()
            .any(|row| row.place == entry.part && row.thread.value().is_some());
        let mut identity = Identity::Known;
        // The part and the pitch gauge agree: two witnesses prove what no table lists.
        let seen_twice = sheet.mate.is_some() && sheet.pitch.is_some();
        if row.is_none() && listed && proved.is_none() && !seen_twice {
            let field = format!("{}.confirmed", entry.path);
            work.ask_plain(
                field.clone(),
                format!("is it really {size}? No table lists that thread for this place"),
                "a chaser of another thread cuts a second one across the first",
                "the mating part, pitch gauge",
            );
            identity = Identity::Doubtful(field);
        }
        return Some((size, row, identity));
    }
    if sheet.pitch.is_none() {
        work.ask_plain(
            format!("{}.pitch", entry.path),
            "pitch, with a gauge over six threads or more",
            if super::site::covered(coating) {
                "paint narrows the hole, the pitch stays; the wrong chaser cuts a second thread across the first"
            } else {
                "a label proves nothing; the wrong chaser cuts a second thread across the first"
            },
            "thread pitch gauge leaves",
        );
    }
    by_tables(site, work, entry, sheet)
}

/// Which thread of the tables agrees with what was read.
fn by_tables<'a>(
    site: &Site<'a>,
    work: &mut PlaceWork,
    entry: &ThreadEntry<'_>,
    sheet: &ThreadSheet,
) -> Option<(ThreadSize, Option<&'a ThreadUse>, Identity)> {
    let minor = on_surface(&sheet.minor, sheet.coating);
    let mut seen = observed(Feature::MinorDiameter, &on_metal(&minor));
    seen.extend(sheet.pitch.map(Observation::Pitch));
    seen.extend(
        sheet
            .hand
            .map(|hand| Observation::Hand { side: None, hand }),
    );
    if seen.is_empty() {
        return None;
    }
    let row_name = stated(sheet.believed.as_deref())
        .and_then(|size| row_of(site, entry.part, &size))
        .map(|row| row.code.to_string());
    let name = row_name.as_deref().or(sheet.believed.as_deref());
    let mut with_belief = seen.clone();
    with_belief.extend(belief(name));
    let answer = identify(entry.place.clone(), &with_belief, &options(site))
        .or_else(|_| identify(entry.place.clone(), &seen, &options(site)));
    let answer = match answer {
        Ok(answer) => answer,
        Err(error) => {
            work.settled(Finding::stated("identification", error.to_string()));
            work.ask_plain(
                format!("{}.confirmed", entry.path),
                String::from(error.remedy()),
                String::from(error.problem()),
                "the mating part, pitch gauge",
            );
            return None;
        }
    };
    let code = ranking::code_of(site.tables, &answer, name);
    // A thread is worked to only where its pitch was read or its part is at hand.
    let settled = code.filter(|_| sheet.pitch.is_some());
    let row = settled
        .as_deref()
        .and_then(|code| site.tables.all::<ThreadUse>().find(|row| row.code == code))
        .and_then(|row| Some((*row.thread.value()?, row)));
    match (&settled, row) {
        (None, _) => identity::open(work, &entry.path, &answer, &seen),
        (Some(code), None) => work.ask_plain(
            format!("{}.confirmed", entry.path),
            format!("which thread is it? By the readings it would be {code}, of which the tables know no thread at this place"),
            "a chaser of another thread cuts a second one across the first",
            "the mating part, pitch gauge",
        ),
        (Some(_), Some(_)) => {}
    }
    identity::tell(work, answer);
    let (size, row) = row?;
    Some((size, Some(row), Identity::Known))
}

/// The hand: read, or fixed by a published row; never assumed where the place has a left-hand variant.
fn hand_of(
    work: &mut PlaceWork,
    entry: &ThreadEntry<'_>,
    sheet: &ThreadSheet,
    row: Option<&ThreadUse>,
) -> Option<Hand> {
    let fact: Option<&Fact<Hand>> = row.and_then(|row| match &entry.place {
        Place::Pedal(Some(LeftRight::Left)) => row.hand_left.as_ref().or(row.hand.as_ref()),
        Place::Pedal(Some(LeftRight::Right)) => row.hand_right.as_ref().or(row.hand.as_ref()),
        Place::Pedal(None) => None,
        _ => row.hand.as_ref(),
    });
    let read_in_print = fact
        .filter(|f| f.dissent().is_empty() && f.grade().is_some_and(|g| g > Grade::Memory))
        .and_then(|f| f.value().copied());
    match (sheet.hand, read_in_print) {
        (Some(found), Some(listed)) if found != listed => {
            work.contradicts(
                format!("{found}-hand found, {listed}-hand by the tables for this place"),
                format!("{}.hand", entry.path),
                "eye, light: which way does the thread rise?",
            );
            Some(found)
        }
        (Some(found), _) => Some(found),
        (None, Some(listed)) => Some(listed),
        (None, None) if has_left_variant(entry) => {
            work.ask_plain(
                format!("{}.hand", entry.path),
                "which hand is the thread? Look at its slope",
                "this place is made with a left-hand thread too, and a chaser of the wrong hand destroys it",
                "eye, light",
            );
            None
        }
        // Every other place of a frame is right-hand (common practice).
        (None, None) => Some(Hand::Right),
    }
}

/// Whether the trade makes this place with a left-hand thread as well (common practice): pedals, freewheel and lockring
/// sides, the bolt of a replaceable hanger, a spindle's crank.
const fn has_left_variant(entry: &ThreadEntry<'_>) -> bool {
    matches!(entry.place, Place::Pedal(_))
        || matches!(
            entry.part,
            ThreadedPart::Pedal
                | ThreadedPart::Freewheel
                | ThreadedPart::Lockring
                | ThreadedPart::HangerBolt
                | ThreadedPart::Crank
                | ThreadedPart::Other
        )
}
