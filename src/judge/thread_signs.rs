//! Threads judged by gauges, by holes before tapping, and by what was seen of them.

use super::threads::{pattern_threads, side_words};
use super::verdict::{NOTHING, NextStep, Verdict, Worked};
use super::{Finding, sizes_against};
use crate::Error;
use crate::evidence::Grade;
use crate::measure::{DecisionRule, Outcome, Reading, settled_cmp};
use crate::quantity::{Length, in_mm, to_mm};
use crate::standard::Shell;
use crate::thread::{
    Gauging, GaugingVerdict, Member, Side, ThreadSize, judge_gauging, limits_of_size, usual_class,
};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// Which way a side loosens when several patterns are still possible. If they disagree, nothing may be forced: the wrong way
/// tightens.
///
/// # Errors
/// `Missing` for an empty list or a row without a thread.
///
/// ```
/// use framegauge::{judge::loosening, measure::Outcome, standard::{Shell, find}, thread::Side};
/// let of = |code| find::<Shell>(code).unwrap();
/// let open = loosening(&[of("french"), of("swiss"), of("bsc")], Side::Drive).unwrap();
/// assert_eq!(open.outcome, Outcome::Undecided);
/// assert!(open.cautions[0].contains("no more torque"));
/// assert!(loosening(&[of("bsc"), of("swiss")], Side::Drive).unwrap().sentence.contains("clockwise"));
/// ```
pub fn loosening(possible: &[&Shell], side: Side) -> Result<Verdict, Error> {
    let mut turns = Vec::new();
    let mut findings = Vec::new();
    for shell in possible {
        let threads = pattern_threads(shell)?;
        let Some(thread) = threads.side(side) else {
            continue;
        };
        turns.push(thread.hand);
        findings.push(
            Finding::stated(
                shell.name.to_string(),
                format!("{}-hand: loosens {}", thread.hand, thread.hand.loosen()),
            )
            .resting_on(shell.hand_fact(side).and_then(|f| f.evidence())),
        );
    }
    let Some(first) = turns.first().copied() else {
        return Err(Error::new(
            crate::ErrorKind::Missing,
            "shells",
            "",
            "no pattern to choose from",
            "name at least one",
        ));
    };
    let label = side_words(side);
    if turns.iter().all(|h| *h == first) {
        findings = findings
            .into_iter()
            .map(|f| Finding {
                outcome: Some(Outcome::ConformityShown),
                ..f
            })
            .collect();
        return Ok(
            Verdict::from_findings("direction to loosen", findings).saying(format!(
                "{}: every pattern that is possible loosens {}, seen facing that side.",
                super::words::capital(label),
                first.loosen()
            )),
        );
    }
    Ok(Verdict::from_findings("direction to loosen", findings)
        .saying(format!("{}: cannot tell the hand yet; the patterns that are possible turn opposite ways.", super::words::capital(label)))
        .then(NextStep::new("a known cup tried in the other side, once it is out", "an English cup rattles in a French shell, and a French cup does not enter an English one", "known cups"))
        .then(NextStep::new("pitch and hand of the thread where it shows", "flats, labels and the country only make one more likely", "leaf, lamp"))
        .minding("no more torque until the hand is known: the wrong way tightens it and tears the shell"))
}

/// A hole before it is tapped, against the minor diameter of the thread it is to get.
///
/// # Errors
/// As [`limits_of_size`].
///
/// ```
/// use framegauge::{judge::hole_to_tap, measure::Outcome};
/// let hole = "8.5 +/- 0.05 mm".parse().unwrap();
/// let said = hole_to_tap(&"M10x1".parse().unwrap(), &hole).unwrap();
/// assert_eq!(said.outcome, Outcome::NonconformityShown);
/// assert_eq!(said.millimetres("to enlarge by, least"), Some(0.417));
/// assert_eq!(hole_to_tap(&"M10x1.5".parse().unwrap(), &hole).unwrap().outcome, Outcome::ConformityShown);
/// ```
pub fn hole_to_tap(size: &ThreadSize, hole: &Reading) -> Result<Verdict, Error> {
    super::verdict::size_reading("hole", hole)?;
    let Some(class) = usual_class(size, Member::Internal) else {
        return Ok(
            Verdict::from_findings(format!("hole for {size}"), Vec::new())
                .saying(format!(
                    "No hole size is published for {size}: the mating part decides."
                ))
                .then(NextStep::new(
                    "the hole that the tap's maker names",
                    "no limits are published for this thread",
                    "tap maker's list",
                )),
        );
    };
    let limits = limits_of_size(size, &class)?;
    let found = sizes_against(
        "hole",
        &[*hole],
        &limits.minor,
        &format!("{size}, {class}"),
        Some(limits.evidence()),
        DecisionRule::default(),
    );
    let mut said = Verdict::from_findings(format!("hole for {size}"), Vec::from([found]));
    let (low, high) = (limits.minor.lower().known(), limits.minor.upper().known());
    let by = |limit: Option<Length>| limit.map(|l| l - hole.value());
    let sentence = match (said.outcome, by(low), by(high)) {
        (Outcome::NonconformityShown, Some(least), Some(most))
            if settled_cmp(least, NOTHING).is_gt() =>
        {
            said = said
                .with(Worked::length(
                    "to enlarge by, least",
                    least,
                    "least minor diameter less hole",
                ))
                .with(Worked::length(
                    "to enlarge by, most",
                    most,
                    "greatest minor diameter less hole",
                ))
                .minding("cutting cannot be undone: enlarge in steps and measure");
            format!(
                "The hole is too small for {size}: enlarge it by {:.3} to {}, to {}, before tapping; the tap would jam or break.",
                crate::settled_mm(least),
                in_mm(most),
                limits.minor
            )
        }
        (Outcome::NonconformityShown, ..) => {
            let over = high.map_or(0.0, |h| to_mm(hole.value() - h));
            said = said.minding("too little thread would be left: an insert or another size, by the frame maker or a qualified builder");
            format!("The hole is {over:.3} mm too large for {size}.")
        }
        (Outcome::ConformityShown, ..) => format!("The hole suits {size}."),
        (Outcome::Undecided, ..) => {
            said = said.then(NextStep::new(
                "the hole in two directions",
                "too close to a limit for this tool",
                "plug of known size, or small-hole gauge",
            ));
            format!("Whether the hole suits {size} the reading does not tell.")
        }
    };
    for (what, limit) in [("least hole", low), ("greatest hole", high)] {
        if let Some(limit) = limit {
            said = said.with(Worked::length(what, limit, "minor diameter limit"));
        }
    }
    Ok(said.saying(sentence))
}

/// A thread that every good part is loose in, or that was forced, with what the gauges said so far.
///
/// A bore reading proves nothing about the pitch diameter: over-tapped threads keep their bore.
///
/// # Errors
/// As [`judge_gauging`].
///
/// ```
/// use framegauge::{judge::{ThreadSigns, gauged_thread}, measure::Outcome, thread::{Gauging, Member}};
/// let said = gauged_thread(Member::Internal, &ThreadSigns { loose_with_good_parts: 3, ..ThreadSigns::default() }, None).unwrap();
/// assert_eq!(said.outcome, Outcome::NonconformityShown);
/// assert!(said.next[0].measure.contains("NOT GO"));
/// // Forced and chased: serviceable only after the gauge.
/// let forced = ThreadSigns { forced: true, takes_part_by_hand: true, ..ThreadSigns::default() };
/// assert_eq!(gauged_thread(Member::Internal, &forced, None).unwrap().outcome, Outcome::Undecided);
/// ```
pub fn gauged_thread(
    member: Member,
    signs: &ThreadSigns,
    gauging: Option<&Gauging>,
) -> Result<Verdict, Error> {
    let mut findings = Vec::new();
    let practice = |outcome: Outcome, what: &str, words: &str| Finding {
        outcome: Some(outcome),
        grade: Some(Grade::CommonPractice),
        ..Finding::stated(what, words)
    };
    let mut sentence = String::new();
    let gauged = match gauging {
        Some(found) => Some(judge_gauging(member, found)?),
        None => None,
    };
    if let Some(verdict) = &gauged {
        findings.push(practice(
            verdict.outcome,
            "gauges",
            &verdict.says.join("; "),
        ));
        sentence.push_str(&format!("The gauges: {}.", verdict.says.join("; ")));
    }
    let proved = gauged
        .as_ref()
        .is_some_and(|g| g.outcome == Outcome::ConformityShown);
    if signs.loose_with_good_parts >= 2 && !proved {
        findings.push(practice(Outcome::NonconformityShown, "good parts", "loose with several known good parts: the thread is common to them, its pitch diameter is over the upper limit (worn or over-tapped)"));
        sentence.push_str(" Loose with several good parts: reject as over-tapped or worn; the bore may still read right and proves nothing.");
    } else if signs.loose_with_good_parts == 1 && !proved {
        findings.push(practice(
            Outcome::Undecided,
            "good part",
            "loose with one part: the part may be the small one",
        ));
        sentence.push_str(" Loose with one part says nothing yet: try another.");
    }
    if signs.forced && !proved {
        findings.push(practice(Outcome::Undecided, "forced", "a part was forced in: the thread is cross-hatched, and taking a part by hand afterwards proves no pitch diameter"));
        sentence.push_str(
            " Forced once: gauge before use, even if a part runs in by hand after chasing.",
        );
    }
    if signs.jams && !proved {
        findings.push(practice(
            Outcome::Undecided,
            "jams",
            "dirt, paint, a crossed start and a wrong pitch feel alike",
        ));
        sentence.push_str(
            " Jamming alone is no verdict: clean, chase with a chaser of the same pitch and hand, then gauge.",
        );
    }
    if signs.takes_part_by_hand
        && !signs.forced
        && signs.loose_with_good_parts == 0
        && gauged.is_none()
    {
        sentence
            .push_str(" Takes its part by hand: usable in practice, though no gauge has said so.");
    }
    let mut said = Verdict::from_findings("thread", findings);
    let jams_only = signs.jams && gauged.is_none();
    if jams_only {
        said = said
            .then(NextStep::new(
                "the grooves: pick out, wash, look",
                "hardened compound and paint feel like a crossed thread",
                "pick, brush, solvent, lamp",
            ))
            .then(NextStep::new(
                "the pitch and the hand",
                "a chaser of another pitch or hand ruins the thread",
                "leaf, lamp",
            ));
    }
    if !proved {
        said = said.then(gauge_next(gauging, gauged.as_ref()));
    }
    if sentence.is_empty() {
        sentence.push_str("Nothing was seen of it and no gauge was tried.");
    }
    Ok(said.saying(sentence.trim()))
}

/// What the gauges have not told yet, or what is left to do after they have told.
fn gauge_next(gauging: Option<&Gauging>, found: Option<&GaugingVerdict>) -> NextStep {
    match (gauging, found) {
        (Some(tried), Some(found)) if tried.not_go_turns.is_some() => {
            if found.outcome == Outcome::Undecided {
                NextStep::new(
                    "what no gauge was tried on yet: the GO gauge, or the crest diameter with plain gauges",
                    "conformity is shown only when all four gauges agree",
                    "GO plug, plain plugs",
                )
            } else if found.chasing_may_help {
                NextStep::new(
                    "GO, NOT GO and bore again, once it is cleaned and chased with a chaser of the same pitch and hand",
                    "dirt and paint stop a gauge as too little cutting does",
                    "chaser, GO and NOT GO plug",
                )
            } else {
                NextStep::new(
                    "the flank engagement that is left",
                    "chasing cannot bring metal back: it decides between an insert, the next pattern and the frame builder",
                    "over wires, or the bore and the part's outside",
                )
            }
        }
        _ => NextStep::new(
            "pitch diameter with the threaded NOT GO gauge at both ends, or over wires",
            "it alone tells worn and over-tapped from sound; the bore does not",
            "GO and NOT GO plug",
        ),
    }
}

/// What was seen of a thread without gauges.
///
/// ```
/// assert!(!framegauge::judge::ThreadSigns::default().forced);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(default)
)]
pub struct ThreadSigns {
    /// How many known good parts were loose in it.
    pub loose_with_good_parts: u8,
    /// A part of another thread or hand was forced in.
    pub forced: bool,
    /// A part jams after a few turns.
    pub jams: bool,
    /// A good part runs in by hand.
    pub takes_part_by_hand: bool,
}
