//! Designations: `M10x1-6H`, `1.370 in x 24 tpi BSC LH`, `1/2-20 UNF-2B`, `36 mm x 24 tpi`.

use core::fmt;

use super::{EngagementGroup, Hand, Member, ThreadForm, ThreadSize, ToleranceClass, usual_class};
use crate::{Error, ErrorKind};

/// A thread designation: size, and where stated tolerance class, engagement group and hand.
///
/// ```
/// use framegauge::thread::{Designation, Hand};
/// let cup: Designation = "1.370-24 BSC LH".parse().unwrap();
/// assert_eq!(cup.hand, Hand::Left);
/// assert_eq!(cup.to_string(), "1.370 in x 24 tpi BSC LH");
/// let coarse: Designation = "M8".parse().unwrap();
/// assert_eq!(coarse.to_string(), "M8x1.25");
/// // Refused, because a form decides the pitch diameter by more than a fit:
/// assert!("1.370-24".parse::<Designation>().unwrap_err().remedy().contains("BSC"));
/// // Refused, because the fine series has 20 threads per inch at this size:
/// assert!("1/2-13 UNF".parse::<Designation>().unwrap_err().to_string().contains("20"));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Designation {
    /// Form, major diameter and pitch.
    pub size: ThreadSize,
    /// The tolerance class, where stated.
    pub class: Option<ToleranceClass>,
    /// The engagement group, where stated.
    pub group: Option<EngagementGroup>,
    /// The hand; right unless stated.
    pub hand: Hand,
}

impl Designation {
    /// A right-hand thread of this size without a stated class.
    ///
    /// ```
    /// use framegauge::{Pitch, mm, thread::{Designation, ThreadForm, ThreadSize}};
    /// let size = ThreadSize::new(ThreadForm::IsoMetric, mm(10.0), Pitch::millimetres(1.0).unwrap()).unwrap();
    /// assert_eq!(Designation::new(size).to_string(), "M10x1");
    /// ```
    #[must_use]
    pub const fn new(size: ThreadSize) -> Self {
        Self {
            size,
            class: None,
            group: None,
            hand: Hand::Right,
        }
    }

    /// The same thread of this hand.
    ///
    /// ```
    /// use framegauge::thread::{Designation, Hand};
    /// let tap: Designation = "M10x1".parse().unwrap();
    /// assert_eq!(tap.with_hand(Hand::Left).to_string(), "M10x1 LH");
    /// ```
    #[must_use]
    pub const fn with_hand(mut self, hand: Hand) -> Self {
        self.hand = hand;
        self
    }

    /// The stated class, or the one that is usually meant for this member.
    ///
    /// # Errors
    /// `Contradiction` when a class is stated for the other member; `Missing` when none is stated and none is usual.
    ///
    /// ```
    /// use framegauge::thread::{Designation, Member};
    /// let hanger: Designation = "M10x1".parse().unwrap();
    /// assert_eq!(hanger.class_for(Member::Internal).unwrap().to_string(), "6H");
    /// ```
    pub fn class_for(&self, member: Member) -> Result<ToleranceClass, Error> {
        match self.class {
            Some(class) if class.member() == member => Ok(class),
            Some(class) => Err(Error::new(
                ErrorKind::Contradiction,
                "tolerance class",
                class,
                match member {
                    Member::Internal => "this class is for screws, and a hole was asked for",
                    Member::External => "this class is for holes, and a screw was asked for",
                },
                "capital letters are holes, small letters screws; 2A is a screw, 2B a hole",
            )),
            None => usual_class(&self.size, member).ok_or_else(|| {
                let (problem, remedy) = match self.size.form() {
                    ThreadForm::Unknown => (
                        "the form of this thread is not known, so no limit can be derived",
                        "name the form, e.g. `1.370 in x 24 tpi BSC`",
                    ),
                    _ => (
                        "no limits of this form were found in any source",
                        "use the basic sizes, or gauge with a plug or ring made for this thread",
                    ),
                };
                Error::new(
                    ErrorKind::Missing,
                    "tolerance class",
                    self.size,
                    problem,
                    remedy,
                )
            }),
        }
    }
}

impl fmt::Display for Designation {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.size.fmt(f)?;
        if let Some(class) = self.class {
            write!(f, "-{class}")?;
        }
        if let Some(group) = self.group {
            write!(f, "-{}", group.letter())?;
        }
        match self.hand {
            Hand::Right => Ok(()),
            Hand::Left => f.write_str(" LH"),
        }
    }
}

#[cfg(feature = "serde")]
mod serial {
    use super::{Designation, ThreadSize};
    use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

    macro_rules! as_text {
        ($name:ident) => {
            impl Serialize for $name {
                fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                    serializer.collect_str(self)
                }
            }
            impl<'de> Deserialize<'de> for $name {
                fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                    alloc::string::String::deserialize(deserializer)?
                        .parse()
                        .map_err(de::Error::custom)
                }
            }
        };
    }
    as_text!(ThreadSize);
    as_text!(Designation);
}
