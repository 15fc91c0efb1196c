//! Who leads the ranking of what agrees with the readings, and what takes the same parts and the same cutter.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::facts::CommonFact;
use crate::identify::{Candidate, Identification, Outcome, Standing};
use crate::measure::settled_cmp;
use crate::quantity::mm;
use crate::standard::{Shell, Tables, ThreadUse};
use crate::thread::{Hand, Side, ThreadSize};

/// The share of the ranking that a standard must hold, with those that take the same parts, before metal is cut for it.
/// Common practice: below it, of names that were given to readings made up for the purpose, one in seven was wrong.
const LEADING_SHARE: f64 = 0.8;

/// Threads whose basic major diameters lie closer than this, with one pitch and the same hands, are followed by one chaser.
/// Common practice: English shells of 1.370 in and 1.375 in.
const ONE_CHASER_MM: f64 = 0.2;

/// What is left, as the readings rank it.
pub(super) struct Ranking<'a> {
    /// Who is possible, first the one that leads.
    possible: Vec<&'a Candidate>,
}

impl<'a> Ranking<'a> {
    fn of(answer: &'a Identification) -> Self {
        let mut possible: Vec<&Candidate> = answer
            .candidates
            .iter()
            .filter(|c| matches!(c.standing, Standing::Possible))
            .collect();
        possible.sort_by(|a, b| b.share.total_cmp(&a.share));
        Self { possible }
    }

    /// The share of a candidate with all that take the same parts and the same cutter.
    fn share(&self, of: &Candidate, same: &impl Fn(&Candidate, &Candidate) -> bool) -> f64 {
        self.possible
            .iter()
            .filter(|c| c.code == of.code || same(of, c))
            .map(|c| c.share)
            .sum()
    }
}

/// Two threads that one chaser follows: one pitch, the same hands, and major diameters that hardly differ.
fn one_chaser(tables: Tables<'_>, a: &Candidate, b: &Candidate) -> bool {
    match (a.thread, b.thread) {
        (Some(one), Some(other)) => {
            one.pitch().same_as(other.pitch())
                && settled_cmp((one.major() - other.major()).abs(), mm(ONE_CHASER_MM)).is_le()
                && same_hands(tables, a, b)
        }
        _ => false,
    }
}

/// The threads that the readings leave beside the one that was named, and that its chaser follows too.
pub(super) fn alike(
    tables: Tables<'_>,
    answer: Option<&Identification>,
    code: &str,
) -> Vec<ThreadSize> {
    let Some(answer) = answer else {
        return Vec::new();
    };
    let ranking = Ranking::of(answer);
    let named = ranking.possible.iter().find(|c| c.code == code);
    let others = ranking.possible.iter().filter(|c| c.code != code);
    others
        .filter(|c| named.is_some_and(|named| one_chaser(tables, named, c)))
        .filter_map(|c| c.thread)
        .collect()
}

/// Whether two rows of one family turn the same way, side by side. A hand that one shell does not state is not the same; a use
/// of threads that states no left hand is right-hand.
fn same_hands(tables: Tables<'_>, a: &Candidate, b: &Candidate) -> bool {
    let shell = |c: &Candidate| tables.get::<Shell>(&c.code);
    let used = |c: &Candidate| tables.get::<ThreadUse>(&c.code);
    let sides = [Side::Drive, Side::NonDrive];
    match (shell(a), shell(b), used(a), used(b)) {
        (Some(a), Some(b), ..) => sides
            .iter()
            .all(|side| a.hand(*side).is_some() && a.hand(*side) == b.hand(*side)),
        (None, None, Some(a), Some(b)) => {
            let hands = |row: &ThreadUse| {
                [&row.hand, &row.hand_left, &row.hand_right]
                    .map(|fact| fact.as_ref().and_then(|f| f.value().copied()))
            };
            let no_left = |row: &ThreadUse| !hands(row).contains(&Some(Hand::Left));
            no_left(a) && no_left(b) || hands(a) == hands(b)
        }
        _ => false,
    }
}

/// The code that may be worked to: named outright; or believed, or leading, with those that take the same parts far ahead.
pub(super) fn code_of(
    tables: Tables<'_>,
    answer: &Identification,
    believed: Option<&str>,
) -> Option<String> {
    let ranking = Ranking::of(answer);
    let leader = ranking.possible.first()?;
    let one_chaser = |a: &Candidate, b: &Candidate| one_chaser(tables, a, b);
    let enough = |of: &Candidate| ranking.share(of, &one_chaser) >= LEADING_SHARE;
    if answer.interchange {
        let left = answer.outcome.left();
        let among = |name: &str| left.iter().find(|code| code.eq_ignore_ascii_case(name));
        return believed
            .and_then(among)
            .or_else(|| left.first())
            .map(ToString::to_string);
    }
    // A label proves nothing, and while the readings leave possible what it says, nothing else is worked to.
    let called = |c: &&&Candidate, name: &str| {
        is_called(c, name)
            || tables
                .get::<Shell>(name)
                .is_some_and(|row| row.code == c.code)
    };
    let named = believed.and_then(|name| ranking.possible.iter().find(|c| called(c, name)));
    let taken = named.unwrap_or(leader);
    let leads = taken.code == leader.code || one_chaser(taken, leader);
    (leads && enough(taken)).then(|| taken.code.to_string())
}

/// What is worked to where the readings alone name nothing.
pub(super) fn taken_as(
    tables: Tables<'_>,
    answer: &Identification,
    code: &str,
) -> Option<CommonFact> {
    if answer.interchange || matches!(answer.outcome, Outcome::Identified { .. }) {
        return None;
    }
    let ranking = Ranking::of(answer);
    let named = ranking.possible.iter().find(|c| c.code == code)?;
    let share = ranking.share(named, &|a, b| one_chaser(tables, a, b));
    let code = named.code.to_string();
    Some(CommonFact::TakenAs { code, share })
}

/// Whether a candidate goes by this name.
pub(super) fn is_called(candidate: &Candidate, name: &str) -> bool {
    candidate.code.eq_ignore_ascii_case(name) || candidate.name.eq_ignore_ascii_case(name)
}
