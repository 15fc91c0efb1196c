//! Axles, hangers, bosses, pedals: which thread it is, its hand, and what is done to it.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::identity::{self, belief, observed, on_metal, options};
use super::permit::Identity;
use super::sheet::{ThreadEntry, ThreadSheet};
use super::site::{Site, covered, on_surface};
use super::thread::{self, Bench};
use super::work::PlaceWork;
use super::{CommonFact, ThreadAsk, ThreadFact, entries, ranking, thread_now};
use crate::evidence::{Fact, Grade};
use crate::identify::{Feature, Observation, identify};
use crate::judge::{Instrument, ThreadSeen};
use crate::measure::settled_cmp;
use crate::quantity::mm;
use crate::standard::{End, LeftRight, Place, ThreadUse, ThreadedPart};
use crate::thread::{Designation, Hand, ThreadSize};

/// Plans every thread that is neither shell nor steerer. Entries of one place are one thread.
pub(super) fn plan(site: &Site<'_>) -> Vec<PlaceWork> {
    let places = entries::by_place(site.sheet.threads(), |entry| entry.place.clone());
    places.iter().filter_map(|here| one(site, here)).collect()
}

fn one(site: &Site<'_>, here: &[ThreadEntry<'_>]) -> Option<PlaceWork> {
    let entry = here.first()?;
    let mut work = PlaceWork::new(entry.place.clone());
    let sheet = entries::one(&mut work, here.iter().map(|e| (&e.path, e.sheet)))?;
    let notes = sheet.passes.iter().filter_map(|p| p.note.clone());
    work.notes.extend(notes);
    if let Some(name) = &sheet.name {
        work.name.clone_from(name);
    }
    let sheet = &sheet;
    Entry { site, entry, sheet }.planned(&mut work);
    Some(work)
}

/// A thread with everything that was said of it.
struct Entry<'a> {
    site: &'a Site<'a>,
    entry: &'a ThreadEntry<'a>,
    sheet: &'a ThreadSheet,
}

/// Which thread it is, its row in the tables, and how sure that is.
type Size<'a> = (ThreadSize, Option<&'a ThreadUse>, Identity);

impl<'a> Entry<'a> {
    fn field(&self, name: &str) -> String {
        format!("{}.{name}", self.entry.path)
    }

    /// What stands among the bosses and is called nothing more is one that holds a bottle or a rack.
    fn is_boss(&self) -> bool {
        self.entry.part == ThreadedPart::Other && self.entry.path.starts_with("boss.")
    }

    /// The rows of this part, with their threads.
    fn rows(&self) -> impl Iterator<Item = (ThreadSize, &'a ThreadUse)> {
        let parts = match self.is_boss() {
            true => [ThreadedPart::BottleBoss, ThreadedPart::RackBoss],
            false => [self.entry.part; 2],
        };
        let rows = self.site.tables.all::<ThreadUse>();
        rows.filter(move |row| parts.contains(&row.place))
            .filter_map(|row| Some((*row.thread.value()?, row)))
    }

    /// The row of this part with that thread.
    fn row_of(&self, size: &ThreadSize) -> Option<&'a ThreadUse> {
        let row = self.rows().find(|(listed, _)| same(listed, size));
        row.map(|(_, row)| row)
    }

    fn planned(&self, work: &mut PlaceWork) {
        let sheet = self.sheet;
        work.measured = !sheet.minor.is_empty()
            || sheet.pitch.is_some()
            || sheet.go.is_some()
            || sheet.state.is_some();
        work.hear(&sheet.limits);
        if matches!(self.entry.place, Place::Hanger(End::Front)) {
            work.contradicts(ThreadFact::FrontHanger, self.field("end"), Instrument::Eye);
        }
        let now = thread_now::of(sheet);
        work.worked = now.worked;
        let Some((size, row, identity)) = self.size_of(work, covered(now.coating)) else {
            return;
        };
        let Some(hand) = self.hand_of(work, row) else {
            return;
        };
        work.settled(ThreadFact::Is {
            size,
            by_pitch: sheet.pitch.is_some(),
            by_part: sheet.mate.is_some(),
            proved: sheet.confirmed.is_some(),
            taken_for: sheet.believed.is_some(),
        });
        let bench = Bench {
            place: self.entry.place.clone(),
            path: self.entry.path.clone(),
            what: work.name.clone(),
            size,
            alike: &[],
            hand,
            joint: self.site.joint(&sheet.common()),
            joint_path: &self.entry.path,
            limits: &sheet.limits,
            now,
            identity,
            outside: None,
            shell: None,
            both_guide: false,
            part: Some(self.entry.part),
            replaceable: sheet.replaceable == Some(true),
        };
        thread::work(self.site, work, &bench);
    }

    fn size_of(&self, work: &mut PlaceWork, painted: bool) -> Option<Size<'a>> {
        let (part, pitch) = (self.sheet.mate, self.sheet.pitch);
        let taken_for = stated(self.sheet.believed.as_deref());
        let proved = stated(self.sheet.confirmed.as_deref());
        let leaves = Instrument::PitchGauge;
        if let (Some(part), Some(taken_for)) = (part, taken_for)
            && !same(&part, &taken_for)
        {
            let fact = ThreadFact::PartIsOther { taken_for, part };
            work.contradicts(fact, self.field("mate"), leaves.clone());
        }
        let told = [
            (part, "mating part"),
            (proved, "proved part"),
            (taken_for, "label"),
        ];
        for (told, told_by) in told {
            if let (Some(told), Some(read)) = (told, pitch)
                && !read.same_as(told.pitch())
            {
                let fact = ThreadFact::PitchIsOther {
                    read,
                    told_by,
                    told,
                };
                work.contradicts(fact, self.field("pitch"), leaves.clone());
            }
        }
        let uncut = self.sheet.state == Some(ThreadSeen::Uncut);
        let sure = proved.or(part).is_some() || pitch.is_some() || uncut;
        let named = proved.or(part).or(taken_for).filter(|_| sure);
        if let Some(size) = named {
            let row = self.row_of(&size);
            // The part and the pitch gauge agree: two witnesses prove what no table lists.
            let shown = proved.is_some() || part.is_some() && pitch.is_some();
            if row.is_some() || shown || self.rows().next().is_none() {
                return Some((size, row, Identity::Known));
            }
            let field = self.field("confirmed");
            work.ask(field.clone(), ThreadAsk::ReallyThis { size });
            return Some((size, row, Identity::Doubtful(field)));
        }
        if pitch.is_none() {
            work.ask(self.field("pitch"), ThreadAsk::Pitch { painted });
        }
        self.by_tables(work)
    }

    /// Which thread of the tables agrees with what was read.
    fn by_tables(&self, work: &mut PlaceWork) -> Option<Size<'a>> {
        let (site, sheet, place) = (self.site, self.sheet, &self.entry.place);
        let minor = on_surface(&sheet.minor, sheet.coating);
        let mut seen = observed(Feature::MinorDiameter, &on_metal(&minor));
        seen.extend(sheet.pitch.map(Observation::Pitch));
        let hand = |hand| Observation::Hand { side: None, hand };
        seen.extend(sheet.hand.map(hand));
        if seen.is_empty() {
            return None;
        }
        let believed = sheet.believed.as_deref();
        let row = stated(believed).and_then(|size| self.row_of(&size));
        let name = row.map(|row| row.code.as_ref()).or(believed);
        let mut named = seen.clone();
        named.extend(belief(name));
        let answer = identify(place.clone(), &named, &options(site))
            .or_else(|_| identify(place.clone(), &seen, &options(site)));
        let answer = match answer {
            Ok(answer) => answer,
            Err(error) => {
                identity::refused(work, self.field("confirmed"), &error);
                work.settled(CommonFact::NotIdentified { because: error });
                return None;
            }
        };
        // A thread is worked to only where its pitch was read or its part is at hand.
        let code = ranking::code_of(site.tables, &answer, name).filter(|_| sheet.pitch.is_some());
        let row = code
            .as_deref()
            .and_then(|code| self.rows().find(|(_, row)| row.code == code));
        match (code, row) {
            (None, _) => identity::open(work, &self.entry.path, &answer, &seen),
            (Some(code), None) => work.ask(self.field("confirmed"), ThreadAsk::Which { code }),
            (Some(_), Some(_)) => {}
        }
        identity::tell(work, answer);
        row.map(|(size, row)| (size, Some(row), Identity::Known))
    }

    /// The hand: read, or fixed by a published row; never assumed where the place has a left-hand variant.
    fn hand_of(&self, work: &mut PlaceWork, row: Option<&ThreadUse>) -> Option<Hand> {
        let fact: Option<&Fact<Hand>> = row.and_then(|row| match &self.entry.place {
            Place::Pedal(Some(LeftRight::Left)) => row.hand_left.as_ref().or(row.hand.as_ref()),
            Place::Pedal(Some(LeftRight::Right)) => row.hand_right.as_ref().or(row.hand.as_ref()),
            Place::Pedal(None) => None,
            _ => row.hand.as_ref(),
        });
        let listed = fact
            .filter(|f| f.dissent().is_empty() && f.grade().is_some_and(|g| g > Grade::Memory))
            .and_then(|f| f.value().copied());
        let field = self.field("hand");
        match (self.sheet.hand, listed) {
            (Some(found), Some(listed)) if found != listed => {
                let fact = ThreadFact::HandIsOther { found, listed };
                work.contradicts(fact, field, Instrument::Eye);
            }
            (None, None) if self.has_left_variant() => {
                work.ask(field, ThreadAsk::Hand);
                return None;
            }
            _ => {}
        }
        // Every other place of a frame is right-hand (common practice).
        Some(self.sheet.hand.or(listed).unwrap_or(Hand::Right))
    }

    /// Whether the trade makes this place with a left-hand thread as well (common practice): pedals, freewheel and lockring
    /// sides, the bolt of a replaceable hanger, a spindle's crank.
    fn has_left_variant(&self) -> bool {
        use ThreadedPart::{Crank, Freewheel, HangerBolt, Lockring, Other, Pedal};
        match self.entry.part {
            Pedal | Freewheel | Lockring | HangerBolt | Crank => true,
            Other => !self.is_boss(),
            _ => matches!(self.entry.place, Place::Pedal(_)),
        }
    }
}

/// A thread that was stated as text; `M10x26tpi`, as some write it, is a metric diameter with an inch pitch.
fn stated(text: Option<&str>) -> Option<ThreadSize> {
    let text = text?.trim();
    let read = |text: &str| text.parse::<Designation>().ok().map(|d| d.size);
    read(text).or_else(|| {
        let metric = text.strip_prefix(['M', 'm'])?;
        let (major, pitch) = metric.split_once(['x', 'X', '\u{d7}'])?;
        read(&format!("{} mm x {}", major.trim(), pitch.trim()))
    })
}

/// Two statements of one thread: one pitch and one major diameter, in whatever form they are written.
fn same(a: &ThreadSize, b: &ThreadSize) -> bool {
    a.pitch().same_as(b.pitch()) && settled_cmp((a.major() - b.major()).abs(), mm(0.05)).is_le()
}
