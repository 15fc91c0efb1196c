//! Telling threads apart by what a caliper shows.

use alloc::vec::Vec;

use super::basic::minor_span;
use super::{BasicDiameters, Member, ThreadSize, limits_of_size, usual_class};
use crate::evidence::Grade;
use crate::measure::{DecisionRule, Limits, Outcome, Reading, decide};
use crate::quantity::{mm, to_mm};
use crate::{Error, ErrorKind};

/// What a caliper shows on the crests of a thread.
///
/// ```
/// use framegauge::{mm, thread::{Member, caliper_shows}};
/// let hanger = caliper_shows(&"M10x1".parse().unwrap(), Member::Internal).unwrap();
/// assert!(hanger.reads.admits(mm(9.0)));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct CaliperShows {
    /// The span in which a sound thread reads.
    pub reads: Limits,
    /// How it was come by.
    pub from: &'static str,
}

/// The span in which a caliper reads the crests of a sound thread: the outside of a screw, the bore of a hole.
///
/// Crests read below the nominal diameter, so a reading is never the name of a thread. With a known class (6H/6g, 2A/2B)
/// the span is the limits of size. For BSC, Whitworth and unknown forms an outside diameter is given as nominal less 0.2 mm
/// at a pitch near 1 mm (two published pages agree), scaled with the pitch.
///
/// # Errors
/// `NotTabulated` and `NotApplicable` as [`limits_of_size`]; `NotApplicable` for the bore of an unknown form.
///
/// ```
/// use framegauge::thread::{Member, caliper_shows};
/// // A 1.370 in cup and a French 35 mm cup read almost alike:
/// let english = caliper_shows(&"1.370 in x 24 tpi BSC".parse().unwrap(), Member::External).unwrap();
/// assert_eq!(english.reads.to_string(), "34.586 to 34.798 mm");
/// let french = caliper_shows(&"M35x1".parse().unwrap(), Member::External).unwrap();
/// assert_eq!(french.reads.to_string(), "34.794 to 34.974 mm");
/// ```
pub fn caliper_shows(size: &ThreadSize, member: Member) -> Result<CaliperShows, Error> {
    if let Some(class) = usual_class(size, member) {
        let limits = limits_of_size(size, &class)?;
        return Ok(match member {
            Member::Internal => CaliperShows {
                reads: limits.minor,
                from: CaliperShows::USUAL_MINOR,
            },
            Member::External => CaliperShows {
                reads: limits.major,
                from: CaliperShows::USUAL_MAJOR,
            },
        });
    }
    let (d, p) = (to_mm(size.major()), size.pitch().to_mm());
    match member {
        Member::External => Ok(CaliperShows {
            reads: Limits::between(mm(d - 0.2 * p), size.major(), Grade::Published)?,
            from: CaliperShows::PUBLISHED,
        }),
        Member::Internal => {
            let basic = BasicDiameters::of(size)?;
            Ok(CaliperShows {
                reads: Limits::at_least(basic.minor, basic.evidence().worth())?,
                from: CaliperShows::BASIC_MINOR,
            })
        }
    }
}

/// Which of several threads a bore reading leaves possible.
///
/// ```
/// use framegauge::{measure::Reading, mm, thread::candidates_by_bore};
/// let only = ["M12x1".parse().unwrap()];
/// let found = candidates_by_bore(&only, &Reading::expanded(mm(11.0), mm(0.05)).unwrap()).unwrap();
/// assert!(!found.ambiguous && found.next.contains("leaf"));
/// ```
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct BoreCandidates {
    /// Threads whose minor diameter is not shown to differ from the reading.
    pub possible: Vec<ThreadSize>,
    /// More than one is possible.
    pub ambiguous: bool,
    /// What to do next.
    pub next: &'static str,
}

/// Which of the candidates a bore reading leaves possible. Minor diameters of neighbouring pitches overlap (M12 with 1.25,
/// 1.5 and 1.75 mm), and an over-drilled hole reads like a finer pitch: only the pitch itself decides.
///
/// A candidate is dropped when the reading is shown to lie outside its limits (ISO 14253-1, 95 %). Where no limits are known
/// (BSC, Whitworth, unknown forms) a bore must lie between the minor diameter, of the deepest form it may have, and the major one.
///
/// # Errors
/// `Missing` for an empty list.
///
/// ```
/// use framegauge::{measure::Reading, thread::{ThreadSize, candidates_by_bore}};
/// let sizes: Vec<ThreadSize> = ["M12x1", "M12x1.25", "M12x1.5", "M12x1.75"].iter().map(|s| s.parse().unwrap()).collect();
/// let reading: Reading = "10.65 +/- 0.05 mm".parse().unwrap();
/// let found = candidates_by_bore(&sizes, &reading).unwrap();
/// assert!(found.ambiguous);
/// assert_eq!(found.possible.iter().map(|s| s.to_string()).collect::<Vec<_>>(), ["M12x1.25", "M12x1.5"]);
/// ```
pub fn candidates_by_bore(
    candidates: &[ThreadSize],
    bore: &Reading,
) -> Result<BoreCandidates, Error> {
    if candidates.is_empty() {
        return Err(Error::new(
            ErrorKind::Missing,
            "candidates",
            "",
            "no thread to compare with",
            "name at least one thread",
        ));
    }
    let mut possible = Vec::new();
    for size in candidates {
        let bores = match usual_class(size, Member::Internal) {
            Some(_) => caliper_shows(size, Member::Internal)?.reads,
            // Without known limits: from the deepest form it may have to a bore that leaves no thread at all.
            None => Limits::between(mm(minor_span(size).0), size.major(), Grade::Derived)?,
        };
        if decide(bore, &bores, DecisionRule::default()).outcome != Outcome::NonconformityShown {
            possible.push(*size);
        }
    }
    Ok(BoreCandidates {
        ambiguous: possible.len() > 1,
        next: BoreCandidates::next_for(possible.len()),
        possible,
    })
}
