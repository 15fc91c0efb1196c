//! From weighed rows to one outcome.

use alloc::vec::Vec;

use super::answer::{
    Belief, Candidate, DecidedBy, Identification, Outcome, Rule, Standing, UNLISTED,
};
use super::assume::RIVAL;
use super::band::Ground;
use super::belief::Beliefs;
use super::entry::{Entry, Left, every};
use super::gather::Seen;
use super::kind::FEATURES;
use super::next::{hand_open, plan};
use super::{Feature, doubt, notes, weigh};
use crate::evidence::{Grade, Text};
use crate::standard::Place;

/// Most candidates among which the next measurement is planned; the likeliest are kept.
const PLANNED: usize = 48;

/// The candidates that are left, likeliest first.
struct Running<'a> {
    rows: Option<[Left<'a>; PLANNED]>,
    count: usize,
    /// Whether there were more than are held.
    overflow: bool,
}

impl<'a> Running<'a> {
    fn add(&mut self, new: Left<'a>) {
        let rows = self.rows.get_or_insert([new; PLANNED]);
        if let Some(slot) = rows.get_mut(self.count) {
            *slot = new;
            self.count += 1;
            return;
        }
        self.overflow = true;
        if let Some(least) = rows.iter_mut().min_by(|a, b| a.weight.total_cmp(&b.weight))
            && least.weight < new.weight
        {
            *least = new;
        }
    }

    fn sort(&mut self) {
        let rows = self.rows.as_mut();
        if let Some(list) = rows.and_then(|rows| rows.get_mut(..self.count)) {
            list.sort_unstable_by(|a, b| b.weight.total_cmp(&a.weight));
        }
    }

    fn list(&self) -> &[Left<'a>] {
        self.rows
            .as_ref()
            .and_then(|rows| rows.get(..self.count))
            .unwrap_or_default()
    }
}

/// Weighs every row of the kind and says what may be said.
pub(super) fn decide<'a>(
    place: Place,
    ground: &Ground<'a>,
    seen: &Seen<'_>,
    beliefs: &Beliefs<'_>,
) -> Identification {
    let heights =
        seen.size(Feature::PlaneHeight).is_some() || seen.size(Feature::FirstBolt).is_some();
    let mut candidates = weigh_all(ground, seen, beliefs, heights);
    let key_read = seen.sizes().any(|s| s.feature.is_key(ground.kind));
    stand_back(&mut candidates, key_read);
    // The rows are walked once more for those that are left, so that nothing but the answer is allocated.
    let mut running = Running {
        rows: None,
        count: 0,
        overflow: false,
    };
    let mut believed: Vec<Text> = Vec::new();
    let mut walk = candidates.iter();
    every(ground.kind, ground.options, heights, &mut |entry| {
        if !beliefs.is_empty() && beliefs.mean(entry) {
            believed.push(entry.code());
        }
        if let Some(c) = walk.next()
            && c.standing == Standing::Possible
        {
            running.add(Left {
                entry,
                variant: c.variant,
                weight: c.share,
            });
        }
    });
    running.sort();
    let left = running.list();

    let scattered = doubt::scatter(seen);
    let mut doubts = if key_read && left.is_empty() || !scattered.is_empty() {
        doubt::implausible(ground, seen)
    } else {
        Vec::new()
    };
    doubts.extend(scattered);
    let doubtful = !doubts.is_empty();
    // A hand that was observed is a thread that was seen.
    let observed = seen.sizes().next().is_some() || seen.threaded.is_some();
    let outcome = if doubtful || !observed {
        Outcome::CannotTell
    } else {
        outcome(&candidates, key_read)
    };
    let told = matches!(outcome, Outcome::Identified { .. } | Outcome::Unlisted);
    let several = matches!(outcome, Outcome::Ambiguous { .. });
    let interchange =
        several && !running.overflow && outcome.left().len() == left.len() && all_interchange(left);
    // Where it does not matter which it is, nothing needs to be measured.
    let next = if doubtful || interchange || ground.options.name_only {
        Vec::new()
    } else {
        plan(ground, seen, left)
    };
    let inseparable = several && !interchange && next.is_empty() && !ground.options.name_only;
    let belief = (!beliefs.is_empty()).then(|| {
        let held = verdict(&candidates, &outcome, left, beliefs, &believed);
        if held == Belief::Contradicted && another_name(ground, heights, &candidates, left, beliefs)
        {
            Belief::Confirmed
        } else {
            held
        }
    });
    let decided_by = (outcome != Outcome::CannotTell).then(|| decision(&candidates, told));
    let mut answer = Identification {
        place,
        inseparable,
        decided_by,
        outcome,
        candidates,
        belief,
        interchange,
        next,
        doubts,
        notes: Vec::new(),
        believed,
    };
    let open = !interchange && hand_open(seen, left);
    answer.notes = notes::notes(ground.kind, seen, &answer, open);
    lead(&mut answer.candidates);
    answer
}

/// Brings the candidates with a share to the front, likeliest first; most have none, so a full sort would be wasted.
fn lead(candidates: &mut [Candidate]) {
    for place in 0..candidates.len() {
        let rest = candidates.iter().enumerate().skip(place);
        let Some((best, share)) = rest
            .map(|(index, c)| (index, c.share))
            .reduce(|a, b| if b.1 > a.1 { b } else { a })
        else {
            return;
        };
        if share <= 0.0 {
            return;
        }
        candidates.swap(place, best);
    }
}

/// Every row as a candidate, with its share; the unlisted one last.
fn weigh_all<'a>(
    ground: &Ground<'a>,
    seen: &Seen<'_>,
    beliefs: &Beliefs<'_>,
    heights: bool,
) -> Vec<Candidate> {
    let scale = weigh::Scale {
        ground: *ground,
        seen,
        shared: seen.shares_bias(),
        k: weigh::coverage(seen.sizes().count()),
    };
    let width_read = seen.size(Feature::Width).is_some();
    let mut candidates: Vec<Candidate> = Vec::with_capacity(64);
    let unlisted = weigh::unlisted(seen);
    let mut all = unlisted;
    every(ground.kind, ground.options, heights, &mut |entry: Entry<
        'a,
    >| {
        let weighed = weigh::weigh(&scale, entry);
        let prior = if beliefs.is_empty() {
            1.0
        } else {
            beliefs.factor(entry)
        };
        let weight = weighed.likelihood * prior;
        all += weight;
        candidates.push(Candidate {
            code: entry.code(),
            name: entry.name(),
            share: weight,
            standing: weighed.standing,
            width: if width_read || entry.variants() == 1 {
                entry.width(weighed.variant)
            } else {
                None
            },
            thread: entry.thread(weighed.variant).copied(),
            grade: weighed.grade,
            variant: weighed.variant,
            key_tests: weighed.key_tests,
            untested: weighed.untested,
        });
    });
    candidates.push(Candidate {
        code: Text::Borrowed(UNLISTED),
        name: Text::Borrowed("in no table"),
        share: unlisted,
        standing: Standing::Untested,
        width: None,
        thread: None,
        grade: None,
        variant: 0,
        key_tests: 0,
        untested: 0,
    });
    // Never nil: what no table lists has a density of every size.
    candidates.iter_mut().for_each(|c| c.share /= all);
    candidates
}

/// Rows that could not be put to the test step back: those that were compared with none of the readings that can name
/// a standard, and those that rest on memory (or on nothing that was read) and lack a figure, beside a row that was
/// compared with everything.
fn stand_back(candidates: &mut [Candidate], key_read: bool) {
    let open = |c: &Candidate| c.standing == Standing::Possible && (!key_read || c.key_tests > 0);
    let weak = |c: &Candidate| c.grade <= Some(Grade::Memory);
    let full = candidates
        .iter()
        .any(|c| open(c) && c.untested == 0 && (!key_read || !weak(c)));
    for c in candidates.iter_mut() {
        let vague = full && c.untested > 0 && weak(c);
        if c.standing == Standing::Possible && (!open(c) || vague) {
            c.standing = Standing::Untested;
        }
    }
}

/// More candidates than this are not a choice that a person can act on.
const A_CHOICE: usize = 6;

fn outcome(candidates: &[Candidate], key_read: bool) -> Outcome {
    let mut left: Vec<&Candidate> = candidates
        .iter()
        .filter(|c| c.standing == Standing::Possible)
        .collect();
    left.sort_unstable_by(|a, b| b.share.total_cmp(&a.share));
    let unlisted = candidates
        .iter()
        .find(|c| c.code == UNLISTED)
        .map_or(0.0, |c| c.share);
    match left.as_slice() {
        [] if key_read => Outcome::Unlisted,
        // A width, an angle or a hand alone names nothing.
        [] => Outcome::CannotTell,
        [_] if !key_read => Outcome::CannotTell,
        many if !key_read && many.len() > A_CHOICE => Outcome::CannotTell,
        [one] if one.share >= unlisted => Outcome::Identified {
            code: one.code.clone(),
        },
        [one] => Outcome::Ambiguous {
            between: [Text::Borrowed(UNLISTED), one.code.clone()].into(),
        },
        many => Outcome::Ambiguous {
            between: many.iter().map(|c| c.code.clone()).collect(),
        },
    }
}

/// Which rule settled it, and which observation ruled out most.
fn decision(candidates: &[Candidate], told: bool) -> DecidedBy {
    let mut tally = [0_u16; FEATURES];
    let mut rival = false;
    for c in candidates {
        if let Standing::Excluded(e) = c.standing {
            rival = rival || c.share >= RIVAL;
            if let Some(slot) = tally.get_mut(e.by as usize) {
                *slot += 1;
            }
        }
    }
    // That there is a thread at all rules out many and decides little: it is named only where nothing else is.
    let feature = <Feature as strum::IntoEnumIterator>::iter()
        .zip(tally)
        .filter(|(_, n)| *n > 0)
        .max_by_key(|(feature, n)| (*feature != Feature::Threaded, *n))
        .map(|(feature, _)| feature);
    let rule = match (told, rival) {
        (false, _) => Rule::Nothing,
        (true, true) => Rule::Exclusion,
        (true, false) => Rule::ExclusionAndRanking,
    };
    DecidedBy { rule, feature }
}

/// Whether each of these interchanges with each other one: a bare size of no stated hand goes with either hand, and the
/// two hands do not go with each other.
fn all_interchange(left: &[Left<'_>]) -> bool {
    let mut rest = left;
    while let Some((first, others)) = rest.split_first() {
        if !others.iter().all(|l| first.entry.interchanges(l.entry)) {
            return false;
        }
        rest = others;
    }
    true
}

/// Whether what is left interchanges with what was believed, sizes alone speaking against it: then the belief was right
/// by another name. What a look or a hand rules out was not.
fn another_name<'a>(
    ground: &Ground<'a>,
    heights: bool,
    candidates: &[Candidate],
    left: &[Left<'a>],
    beliefs: &Beliefs<'_>,
) -> bool {
    let mut found = false;
    let mut walk = candidates.iter();
    every(ground.kind, ground.options, heights, &mut |entry| {
        let by_size = walk.next().is_some_and(|c| match c.standing {
            Standing::Excluded(why) => why.against.is_some(),
            _ => false,
        });
        found = found
            || by_size
                && beliefs.mean(entry)
                && !left.is_empty()
                && left.iter().all(|l| l.entry.interchanges(entry));
    });
    found
}

fn verdict(
    candidates: &[Candidate],
    outcome: &Outcome,
    left: &[Left<'_>],
    beliefs: &Beliefs<'_>,
    believed: &[Text],
) -> Belief {
    let out = |code: &Text| {
        candidates
            .iter()
            .any(|c| c.code == *code && matches!(c.standing, Standing::Excluded(_)))
    };
    // A second name of the same thread or bore is no contradiction.
    let meant = |l: &Left<'_>| beliefs.mean(l.entry);
    let agrees = !left.is_empty() && left.iter().all(meant)
        || left.iter().any(meant) && all_interchange(left);
    match outcome {
        Outcome::CannotTell => Belief::NotTested,
        _ if agrees => Belief::Confirmed,
        _ if believed.iter().all(out) => Belief::Contradicted,
        _ => Belief::NotTested,
    }
}
