//! Which standard is this?
//!
//! Readings with their uncertainty go in; one outcome comes out, with who else was in the running, what ruled each of
//! them out, and the measurement that would separate the rest best.
//!
//! 1. **Exclude.** A candidate is out when a reading lies farther from its band than k standard uncertainties: k = 2
//!    for one reading, more for several, so that all of them together keep 4.55 % (Bonferroni).
//! 2. **Rank.** Likelihood: the size lies evenly within the band, the reading is normal about it. Readings by one
//!    instrument share its bias, which is averaged over once. A candidate of broad density stands for everything that
//!    no table lists. A belief weighs a factor of two at most.
//! 3. **Say.** One left: identified. Several: ambiguous. None: unlisted. Too little, scattered, or not what it is
//!    called: cannot tell. The ranking never overrules the exclusion.
//! 4. **Next.** The expected information of each reading that could be taken (Lindley 1956), the cheapest instrument on
//!    ties; below 0.05 bit nothing helps.
//!
//! Where a table prints only a nominal, an assumed spread stands in; see [`Assumptions`].
//!
//! ```
//! use framegauge::{identify::{Observation, Options, identify}, standard::Place};
//! let seen = [
//!     Observation::read("bore", "46.0 +/- 0.05 mm").unwrap(),
//!     Observation::read("width", "79.0 +/- 0.1 mm").unwrap(),
//!     Observation::label("BB386"),
//! ];
//! let answer = identify(Place::Shell, &seen, &Options::default()).unwrap();
//! assert_eq!(answer.outcome.identified(), Some("bbright_pf"));
//! assert!(answer.words().contains("contradict"));
//! ```

use crate::Error;
use crate::standard::{Place, ShopRows};
use crate::thread::ThreadSize;

mod answer;
mod assume;
mod band;
mod belief;
mod crests;
mod decide;
mod doubt;
mod entry;
mod gather;
mod hands;
mod information;
mod island;
mod kind;
mod next;
mod notes;
mod observe;
#[cfg(feature = "serde")]
mod serial;
mod weigh;

pub use answer::{
    Against, Belief, Candidate, DecidedBy, Doubt, DoubtKind, Exclusion, Identification, MayBe,
    Next, Note, Outcome, Rule, Standing, TakenFor, UNLISTED,
};
pub use assume::Assumptions;
pub use kind::Feature;
pub(crate) use kind::listed;
pub use observe::{BeliefFrom, Observation};

use band::Ground;
use belief::Beliefs;
use gather::Seen;
use kind::Kind;

/// What an identification may lean on besides the tables. The default is the tables, all instruments, a finished part.
///
/// ```
/// use framegauge::{identify::{Observation, Options, identify}, standard::{End, Place}};
/// use framegauge::{Pitch, mm, thread::{ThreadForm, ThreadSize}};
/// // The taps at hand are weighed beside the tables.
/// let tap = ThreadSize::new(ThreadForm::IsoMetric, mm(10.0), Pitch::millimetres(1.5).unwrap()).unwrap();
/// let options = Options { also: &[tap], ..Options::default() };
/// let seen = [Observation::read("bore", "8.5 +/- 0.05 mm").unwrap(), Observation::read("pitch", "1.5 mm").unwrap()];
/// let answer = identify(Place::Hanger(End::Both), &seen, &options).unwrap();
/// assert_eq!(answer.outcome.identified(), Some("M10x1.5"));
/// ```
#[derive(Debug, Clone, Copy, Default)]
pub struct Options<'a> {
    /// Spreads that stand in for limits nobody publishes.
    pub assumptions: Assumptions,
    /// A shop's own rows, weighed beside ours.
    pub shop: Option<&'a ShopRows>,
    /// Thread sizes to weigh besides, such as the taps at hand (shells, steerers and threads only).
    pub also: &'a [ThreadSize],
    /// Codes of the instruments at hand; empty for all of the tables.
    pub tools: &'a [&'a str],
    /// The tube still has to be reamed: a head-tube bore may then be too small by the reaming stock.
    pub unfinished: bool,
    /// Only the name is wanted: what to measure next, the dearest part of an answer, is not looked for.
    pub name_only: bool,
}

/// Which standard is this?
///
/// A side or face of a shell is identified as the shell; a hand that is told there without a side is that side's, as it is at
/// a left or right pedal. The answer names the place as it was asked.
///
/// # Errors
/// `NotApplicable` for a place of which no table lists standards (the seat-clamp slot, the faces of a head tube, the underside
/// of a brake mount, chain-guide tabs), with those that have one; `OutOfRange` or `Contradiction` for a reading without, or as large as, its uncertainty, a size at or below zero or
/// beyond a metre, and for an assumed spread that is negative or absurd; `Contradiction` for two hands of one side and for
/// a wall that fills its tube; `UnknownName` for a belief or tool that names nothing.
///
/// ```
/// use framegauge::{identify::{Feature, Observation, Options, identify}, standard::Place};
/// // A caliper between two sizes: ambiguous, and a finer tool is named.
/// let seen = [Observation::with(Feature::Bore, framegauge::mm(27.10), "caliper_digital_inside").unwrap()];
/// let answer = identify(Place::SeatTube, &seen, &Options::default()).unwrap();
/// assert_eq!(answer.outcome.word(), "ambiguous");
/// ```
pub fn identify(
    place: Place,
    observations: &[Observation],
    options: &Options<'_>,
) -> Result<Identification, Error> {
    let (kind, side) = Kind::of(&place)?;
    let seen = Seen::gather(kind, side, observations)?;
    options.check()?;
    let beliefs = Beliefs::resolve(kind, observations, options)?;
    let head = kind == Kind::HeadTube;
    let ground = Ground {
        kind,
        options,
        pitch_read: seen.size(Feature::Pitch).is_some(),
        unfinished: head
            && (options.unfinished || seen.size(Feature::Bore).is_some_and(|b| b.derived)),
    };
    Ok(decide::decide(place, &ground, &seen, &beliefs))
}

impl Options<'_> {
    fn check(&self) -> Result<(), Error> {
        self.assumptions.check()?;
        self.tools
            .iter()
            .try_for_each(|code| crate::measure::instrument(code).map(|_| ()))
    }
}
