//! Lengths along an axis: units between flanges, engaged thread, steerers, posts.

use alloc::vec::Vec;

use super::caution::Caution;
use crate::measure::{Decision, DecisionRule, Limits, Reading, decide, settled_cmp};
use crate::quantity::{Length, Pitch, mm, nanometres, not_negative};
use crate::{Error, ErrorKind};

/// A length that results from others, held against what is wanted of it.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct LengthCheck {
    /// The resulting length; what a negative one means is said where it is made.
    pub length: Reading,
    /// What is wanted.
    pub wanted: Limits,
    /// The one held against the other.
    pub decision: Decision,
    /// Warnings.
    pub cautions: Vec<Caution>,
}

impl LengthCheck {
    fn of(length: Reading, wanted: Limits, rule: DecisionRule) -> Self {
        Self {
            length,
            wanted,
            decision: decide(&length, &wanted, rule),
            cautions: Vec::new(),
        }
    }

    fn with(mut self, caution: Caution) -> Self {
        self.cautions.push(caution);
        self
    }
}

/// A length that was read is not below zero; `field` names it.
fn read(field: &'static str, reading: &Reading) -> Result<Reading, Error> {
    not_negative(field, reading.value())?;
    Ok(*reading)
}

fn summed(first: Reading, field: &'static str, others: &[Reading]) -> Result<Reading, Error> {
    others
        .iter()
        .try_fold(first, |sum, other| Ok(sum.plus(&read(field, other)?)))
}

/// What is left between the flanges of a unit once it stands on the shell: distance between flanges less shell and spacers.
/// Negative: the flanges cannot reach the shell faces, or the shell is too wide.
///
/// ```
/// use framegauge::{Grade, fit::gap_between_flanges, in_mm, measure::{DecisionRule, Limits}, mm};
/// let wanted = Limits::between(mm(0.0), mm(0.5), Grade::Shop).unwrap();
/// let gap = gap_between_flanges(&"86.7 +/- 0.1 mm".parse().unwrap(), &"86.5 +/- 0.1 mm".parse().unwrap(), &[], wanted, DecisionRule::default()).unwrap();
/// assert_eq!(in_mm(gap.length.value()).to_string(), "0.200 mm");
/// ```
///
/// # Errors
/// `OutOfRange` for a length below zero or above 1000 mm.
pub fn gap_between_flanges(
    between_flanges: &Reading,
    shell: &Reading,
    spacers: &[Reading],
    wanted: Limits,
    rule: DecisionRule,
) -> Result<LengthCheck, Error> {
    let filled = summed(read("shell", shell)?, "spacers", spacers)?;
    let gap = read("between flanges", between_flanges)?.less(&filled);
    Ok(LengthCheck::of(gap, wanted, rule))
}

/// Thread still engaged on one side: the shorter of the shell's thread and what the cup's thread has left behind its spacers.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct EngagementLeft {
    /// Engaged length.
    pub length: Reading,
    /// Full turns of thread in it.
    pub turns: u32,
    /// The length held against what is wanted.
    pub decision: Decision,
}

/// Thread left engaged once spacers stand under a cup's flange.
///
/// ```
/// use framegauge::{Grade, Pitch, fit::engagement_left, in_mm, measure::{DecisionRule, Limits}, mm};
/// let wanted = Limits::at_least(mm(6.0), Grade::Shop).unwrap();
/// let left = engagement_left(
///     &"10.0 +/- 0.1 mm".parse().unwrap(), &["2.5 +/- 0.02 mm".parse().unwrap()], &"16 +/- 0.5 mm".parse().unwrap(),
///     Pitch::tpi(24).unwrap(), wanted, DecisionRule::default()).unwrap();
/// assert_eq!(in_mm(left.length.value()).to_string(), "7.500 mm");
/// assert_eq!(left.turns, 7);
/// ```
///
/// # Errors
/// `OutOfRange` for a length below zero or above 1000 mm.
pub fn engagement_left(
    cup_thread: &Reading,
    spacers: &[Reading],
    shell_thread: &Reading,
    pitch: Pitch,
    wanted: Limits,
    rule: DecisionRule,
) -> Result<EngagementLeft, Error> {
    let nothing = Reading::exact(mm(0.0))?;
    let of_cup = read("cup thread", cup_thread)?.less(&summed(nothing, "spacers", spacers)?);
    let of_shell = read("shell thread", shell_thread)?;
    let length = if settled_cmp(of_cup.value(), of_shell.value()).is_le() {
        of_cup
    } else {
        of_shell
    };
    let (nm, pitch) = (
        nanometres(length.value()).unwrap_or_default().max(0),
        nanometres(pitch.length()).unwrap_or_default().max(1),
    );
    Ok(EngagementLeft {
        length,
        turns: u32::try_from(nm / pitch).unwrap_or(u32::MAX),
        decision: decide(&length, &wanted, rule),
    })
}

/// Length to cut a steerer to, from the crown race seat: everything that stands on it (head tube, headset above and below,
/// spacers, stem), less how far its end stays below the top of the stem or the topmost spacer.
///
/// ```
/// use framegauge::{fit::steerer_length, in_mm, mm};
/// let parts = ["120 +/- 0.2 mm", "12.05 +/- 0.1 mm", "16.35 +/- 0.1 mm", "10 +/- 0.1 mm", "40 +/- 0.1 mm"]
///     .map(|text| text.parse().unwrap());
/// let cut = steerer_length(&parts, mm(3.0)).unwrap();
/// assert_eq!(in_mm(cut.value()).to_string(), "195.400 mm");
/// ```
///
/// # Errors
/// `Missing` when no part is given; `NotFinite` or `OutOfRange` for a part or a depth below the top that is none.
pub fn steerer_length(parts: &[Reading], below_top: Length) -> Result<Reading, Error> {
    let below = Reading::exact(not_negative("below top", below_top)?)?;
    let [first, others @ ..] = parts else {
        return Err(Error::new(
            ErrorKind::Missing,
            "parts",
            "",
            "nothing stands on the steerer",
            "give head tube, headset, spacers and stem",
        ));
    };
    Ok(summed(read("parts", first)?, "parts", others)?.less(&below))
}

/// How deep a post sits: its length below the saddle clamp less the part that stands out, which is the saddle height along the
/// seat tube less the length of the seat tube. `wanted` is the ruling minimum, and at most the free depth of the bore.
///
/// ```
/// use framegauge::{Grade, fit::post_insertion, in_mm, measure::{DecisionRule, Limits, Outcome}, mm};
/// // A 350 mm post, clamp 700 mm from the axle, seat tube 520 mm; at least 75, at most 300 mm.
/// let wanted = Limits::between(mm(75.0), mm(300.0), Grade::Published).unwrap();
/// let read = |text: &str| text.parse().unwrap();
/// let sits = post_insertion(&read("350 +/- 1 mm"), &read("700 +/- 2 mm"), &read("520 +/- 1 mm"), wanted, DecisionRule::default()).unwrap();
/// assert_eq!(in_mm(sits.length.value()).to_string(), "170.000 mm");
/// assert_eq!(sits.decision.outcome, Outcome::ConformityShown);
/// ```
///
/// # Errors
/// `OutOfRange` for a length below zero or above 1000 mm.
pub fn post_insertion(
    post: &Reading,
    clamp_height: &Reading,
    seat_tube: &Reading,
    wanted: Limits,
    rule: DecisionRule,
) -> Result<LengthCheck, Error> {
    let out = read("clamp height", clamp_height)?.less(&read("seat tube", seat_tube)?);
    let inside = read("post", post)?.less(&out);
    Ok(LengthCheck::of(inside, wanted, rule).with(Caution::MakerFirst))
}
