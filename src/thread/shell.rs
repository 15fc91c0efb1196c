//! A shell judged per side: hybrids, one-sided retaps and shells put in back to front have a form of their own.

use super::{Designation, Hand, HandPattern, Mates, Mismatch, Side, ThreadSize, mismatch};

/// The threads of a shell, side by side. A side without a thread is `None`.
///
/// ```
/// use framegauge::thread::{Designation, Hand, ShellThreads, Side, hand_pattern};
/// let english = ShellThreads::of_pattern("1.370 in x 24 tpi BSC".parse().unwrap(), hand_pattern("bsc").unwrap());
/// assert_eq!(english.side(Side::Drive).unwrap().hand, Hand::Left);
/// // Only the stripped drive side was recut to the Italian pattern: a hybrid, right-hand on both sides.
/// let hybrid = english.retapped(Side::Drive, "36 mm x 24 tpi".parse().unwrap());
/// assert!(hybrid.is_hybrid());
/// assert_eq!(hybrid.side(Side::Drive).unwrap().hand, Hand::Right);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ShellThreads {
    /// Thread of the drive side.
    pub drive: Option<Designation>,
    /// Thread of the other side.
    pub non_drive: Option<Designation>,
}

/// What one side of a shell is, held against a pattern.
///
/// ```
/// use framegauge::thread::{ShellThreads, Side, SideFinding, hand_pattern};
/// let english = ShellThreads::of_pattern("1.370-24 BSC".parse().unwrap(), hand_pattern("bsc").unwrap());
/// let wrong = english.retapped(Side::Drive, "1.370-24 BSC".parse().unwrap());
/// assert!(matches!(wrong.against(&english).drive, SideFinding::OtherHand(_)));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(tag = "finding", rename_all = "snake_case")
)]
pub enum SideFinding {
    /// It mates with what the pattern has here.
    AsPattern(Mismatch),
    /// The right thread of the wrong hand.
    OtherHand(Mismatch),
    /// Another thread.
    OtherThread(Mismatch),
    /// The form of one thread is not known, so it cannot be told.
    CannotTell(Mismatch),
    /// A thread is missing on the shell or in the pattern.
    NoThread,
    /// Neither has a thread here.
    BothPlain,
}

/// A shell held against a pattern, side by side.
///
/// ```
/// use framegauge::thread::{ShellThreads, hand_pattern};
/// let french = ShellThreads::of_pattern("M35x1".parse().unwrap(), hand_pattern("french").unwrap());
/// let swiss = ShellThreads::of_pattern("M35x1".parse().unwrap(), hand_pattern("swiss").unwrap());
/// // Only the drive side differs, so nothing is swapped:
/// assert!(!french.against(&swiss).swapped);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct ShellComparison {
    /// Finding on the drive side.
    pub drive: SideFinding,
    /// Finding on the other side.
    pub non_drive: SideFinding,
    /// Both sides have the right thread of the wrong hand while the pattern's hands differ: the shell was put in back to
    /// front, or both sides were tapped with the other's tap. Reject it before assembly.
    pub swapped: bool,
}

impl ShellThreads {
    /// A shell of one size with the hands of a pattern.
    #[must_use]
    pub fn of_pattern(size: ThreadSize, pattern: &HandPattern) -> Self {
        let thread = |hand: Hand| Designation::new(size).with_hand(hand);
        Self {
            drive: pattern.hand(Side::Drive).map(thread),
            non_drive: pattern.hand(Side::NonDrive).map(thread),
        }
    }

    /// The thread of a side.
    #[must_use]
    pub const fn side(&self, side: Side) -> Option<Designation> {
        match side {
            Side::Drive => self.drive,
            Side::NonDrive => self.non_drive,
        }
    }

    /// The same shell with one side recut.
    #[must_use]
    pub const fn retapped(mut self, side: Side, thread: Designation) -> Self {
        match side {
            Side::Drive => self.drive = Some(thread),
            Side::NonDrive => self.non_drive = Some(thread),
        }
        self
    }

    /// The same shell back to front. Turning a shell round moves each thread to the other side and keeps its hand.
    ///
    /// ```
    /// use framegauge::thread::{ShellThreads, hand_pattern};
    /// let english = ShellThreads::of_pattern("1.370 in x 24 tpi BSC".parse().unwrap(), hand_pattern("bsc").unwrap());
    /// let wrong = english.back_to_front();
    /// assert!(wrong.against(&english).swapped);
    /// ```
    #[must_use]
    pub const fn back_to_front(self) -> Self {
        Self {
            drive: self.non_drive,
            non_drive: self.drive,
        }
    }

    /// Whether the two sides carry different sizes: each then needs its own cup.
    #[must_use]
    pub fn is_hybrid(&self) -> bool {
        match (&self.drive, &self.non_drive) {
            (Some(a), Some(b)) => a.size != b.size,
            (None, None) => false,
            _ => true,
        }
    }

    /// This shell held against the threads of a pattern, each side by itself.
    ///
    /// ```
    /// use framegauge::thread::{ShellThreads, SideFinding, hand_pattern};
    /// let bsc = "1.370 in x 24 tpi BSC".parse().unwrap();
    /// let pattern = ShellThreads::of_pattern(bsc, hand_pattern("bsc").unwrap());
    /// let found = pattern.retapped(framegauge::thread::Side::Drive, "36 mm x 24 tpi".parse().unwrap());
    /// let result = found.against(&pattern);
    /// assert!(matches!(result.drive, SideFinding::OtherThread(_)));
    /// assert!(matches!(result.non_drive, SideFinding::AsPattern(_)));
    /// ```
    #[must_use]
    pub fn against(&self, pattern: &Self) -> ShellComparison {
        let finding = |found: Option<Designation>, meant: Option<Designation>| match (found, meant)
        {
            (None, None) => SideFinding::BothPlain,
            (Some(found), Some(meant)) => {
                let result = mismatch(&found, &meant);
                let mut other = result.grounds;
                other.hand = false;
                match result.mates {
                    Mates::Yes => SideFinding::AsPattern(result),
                    Mates::CannotTell => SideFinding::CannotTell(result),
                    Mates::No if other.any() => SideFinding::OtherThread(result),
                    Mates::No => SideFinding::OtherHand(result),
                }
            }
            _ => SideFinding::NoThread,
        };
        let drive = finding(self.drive, pattern.drive);
        let non_drive = finding(self.non_drive, pattern.non_drive);
        let hands_differ = matches!(
            (pattern.drive, pattern.non_drive),
            (Some(a), Some(b)) if a.hand != b.hand
        );
        let swapped = hands_differ
            && matches!(
                (drive, non_drive),
                (SideFinding::OtherHand(_), SideFinding::OtherHand(_))
            );
        ShellComparison {
            drive,
            non_drive,
            swapped,
        }
    }
}
