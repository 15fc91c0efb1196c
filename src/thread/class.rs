//! Tolerance classes: ISO 965-1 (`6H`, `6g`, `5g6g`) and ASME B1.1 (`2A`, `3B`).

use core::fmt;

use crate::{Error, ErrorKind};

/// Which member of the pair: the tapped hole or the screw.
///
/// ```
/// use framegauge::thread::{Member, ToleranceClass};
/// assert_eq!("6H".parse::<ToleranceClass>().unwrap().member(), Member::Internal);
/// assert_eq!("6g".parse::<ToleranceClass>().unwrap().member(), Member::External);
/// ```
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, strum::Display, strum::EnumString, strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Member {
    /// Nut, shell, hanger: the thread in a hole.
    Internal,
    /// Bolt, cup, axle: the thread on a shank.
    External,
}

/// Tolerance position of ISO 965-1: a capital letter for internal threads, a small one for external threads.
///
/// ```
/// use framegauge::thread::{IsoClass, Member, Position};
/// assert_eq!(IsoClass::new(6, 6, Position::ExternalG).unwrap().member(), Member::External);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Position {
    /// Internal, lifted clear of the basic profile.
    InternalG,
    /// Internal, at the basic profile.
    InternalH,
    /// External, furthest below the basic profile (thick plating).
    ExternalE,
    /// External. Its deviations are known from memory only.
    ExternalF,
    /// External, the usual clearance.
    ExternalG,
    /// External, at the basic profile.
    ExternalH,
}

impl Position {
    const ALL: [(Self, char); 6] = [
        (Self::InternalG, 'G'),
        (Self::InternalH, 'H'),
        (Self::ExternalE, 'e'),
        (Self::ExternalF, 'f'),
        (Self::ExternalG, 'g'),
        (Self::ExternalH, 'h'),
    ];

    const fn member(self) -> Member {
        match self {
            Self::InternalG | Self::InternalH => Member::Internal,
            Self::ExternalE | Self::ExternalF | Self::ExternalG | Self::ExternalH => {
                Member::External
            }
        }
    }

    const fn letter(self) -> char {
        match self {
            Self::InternalG => 'G',
            Self::InternalH => 'H',
            Self::ExternalE => 'e',
            Self::ExternalF => 'f',
            Self::ExternalG => 'g',
            Self::ExternalH => 'h',
        }
    }
}

/// An ISO 965-1 class: tolerance grade of the pitch diameter, grade of the crest diameter, position.
///
/// ```
/// use framegauge::thread::{IsoClass, Position};
/// let class = IsoClass::new(5, 6, Position::ExternalG).unwrap();
/// assert_eq!(class.to_string(), "5g6g");
/// // TD1 and TD2 have grades 4 to 8 only:
/// assert!(IsoClass::new(9, 6, Position::InternalH).is_err());
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct IsoClass {
    pitch_grade: u8,
    crest_grade: u8,
    position: Position,
}

impl IsoClass {
    /// 6H, the usual class of a tapped hole.
    pub const USUAL_INTERNAL: Self = Self {
        pitch_grade: 6,
        crest_grade: 6,
        position: Position::InternalH,
    };
    /// 6g, the usual class of a screw.
    pub const USUAL_EXTERNAL: Self = Self {
        pitch_grade: 6,
        crest_grade: 6,
        position: Position::ExternalG,
    };

    /// A class from its parts: grades of pitch and crest diameter (major of a screw, minor of a hole).
    ///
    /// # Errors
    /// `NotTabulated` for a grade that ISO 965-1 does not give for this member: internal 4 to 8, pitch diameter of
    /// screws 3 to 9, major diameter of screws 4, 6 and 8.
    pub fn new(pitch_grade: u8, crest_grade: u8, position: Position) -> Result<Self, Error> {
        let refuse =
            |field: &'static str, grade: u8, problem: &'static str, remedy: &'static str| {
                Err(Error::new(
                    ErrorKind::NotTabulated,
                    field,
                    alloc::format!("{grade}{}", position.letter()),
                    problem,
                    remedy,
                ))
            };
        match position.member() {
            Member::Internal => {
                for grade in [pitch_grade, crest_grade] {
                    if !(4..=8).contains(&grade) {
                        return refuse(
                            "tolerance class",
                            grade,
                            "internal threads have grades 4 to 8",
                            "the usual class is 6H",
                        );
                    }
                }
            }
            Member::External => {
                if !(3..=9).contains(&pitch_grade) {
                    return refuse(
                        "tolerance class",
                        pitch_grade,
                        "the pitch diameter of a screw has grades 3 to 9",
                        "the usual class is 6g",
                    );
                }
                if ![4, 6, 8].contains(&crest_grade) {
                    return refuse(
                        "tolerance class",
                        crest_grade,
                        "the major diameter of a screw has grades 4, 6 and 8 only",
                        "write both grades, e.g. `5g6g` or `7g6g`",
                    );
                }
            }
        }
        Ok(Self {
            pitch_grade,
            crest_grade,
            position,
        })
    }

    /// Tolerance grade of the pitch diameter.
    ///
    /// ```
    /// use framegauge::thread::{IsoClass, Position};
    /// let class = IsoClass::new(5, 6, Position::ExternalG).unwrap();
    /// assert_eq!((class.pitch_grade(), class.crest_grade()), (5, 6));
    /// assert_eq!(class.to_string(), "5g6g"); // the pitch diameter comes first (ISO 965-1)
    /// assert_eq!(class.position(), Position::ExternalG);
    /// ```
    #[must_use]
    pub const fn pitch_grade(&self) -> u8 {
        self.pitch_grade
    }
    /// Tolerance grade of the crest diameter.
    #[must_use]
    pub const fn crest_grade(&self) -> u8 {
        self.crest_grade
    }
    /// Tolerance position.
    #[must_use]
    pub const fn position(&self) -> Position {
        self.position
    }
    /// The member it is for.
    #[must_use]
    pub const fn member(&self) -> Member {
        self.position.member()
    }
}

impl fmt::Display for IsoClass {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let letter = self.position.letter();
        write!(f, "{}{letter}", self.pitch_grade)?;
        if self.crest_grade != self.pitch_grade {
            write!(f, "{}{letter}", self.crest_grade)?;
        }
        Ok(())
    }
}

/// A class of ASME B1.1: 1A to 3A for screws, 1B to 3B for holes.
///
/// ```
/// use framegauge::thread::{Member, UnifiedClass};
/// let class = UnifiedClass::new(2, Member::Internal).unwrap();
/// assert_eq!(class.to_string(), "2B");
/// assert!(UnifiedClass::new(4, Member::External).is_err());
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct UnifiedClass {
    number: u8,
    member: Member,
}

impl UnifiedClass {
    /// A class from its number.
    ///
    /// # Errors
    /// `NotTabulated` outside 1 to 3.
    pub fn new(number: u8, member: Member) -> Result<Self, Error> {
        if !(1..=3).contains(&number) {
            return Err(Error::new(
                ErrorKind::NotTabulated,
                "tolerance class",
                number,
                "Unified classes are 1, 2 and 3",
                "the usual ones are 2A and 2B",
            ));
        }
        Ok(Self { number, member })
    }

    /// Class number, 1 (loose) to 3 (close).
    #[must_use]
    pub const fn number(&self) -> u8 {
        self.number
    }
    /// The member it is for.
    #[must_use]
    pub const fn member(&self) -> Member {
        self.member
    }
}

impl fmt::Display for UnifiedClass {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let letter = match self.member {
            Member::External => 'A',
            Member::Internal => 'B',
        };
        write!(f, "{}{letter}", self.number)
    }
}

/// A tolerance class of either system.
///
/// ```
/// use framegauge::thread::ToleranceClass;
/// assert_eq!("5g6g".parse::<ToleranceClass>().unwrap().to_string(), "5g6g");
/// assert_eq!("2B".parse::<ToleranceClass>().unwrap().to_string(), "2B");
/// assert!("6K".parse::<ToleranceClass>().is_err());
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum ToleranceClass {
    /// ISO 965-1.
    Iso(IsoClass),
    /// ASME B1.1.
    Unified(UnifiedClass),
}

impl ToleranceClass {
    /// The member it is for.
    #[must_use]
    pub const fn member(&self) -> Member {
        match self {
            Self::Iso(class) => class.member(),
            Self::Unified(class) => class.member(),
        }
    }
}

impl fmt::Display for ToleranceClass {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Iso(class) => class.fmt(f),
            Self::Unified(class) => class.fmt(f),
        }
    }
}

fn unreadable(text: &str, problem: &'static str) -> Error {
    Error::new(
        ErrorKind::Text,
        "tolerance class",
        text,
        problem,
        "write `6H`, `6g`, `5g6g` (ISO) or `2A`, `2B` (Unified)",
    )
}

impl core::str::FromStr for ToleranceClass {
    type Err = Error;

    /// Reads `6H`, `6g`, `5g6g`, `2A`, `2B`. Capital and small letters mean different members.
    fn from_str(text: &str) -> Result<Self, Error> {
        if text.contains('/') {
            return Err(Error::new(
                ErrorKind::Text,
                "tolerance class",
                text,
                "a pair of classes names two members",
                "ask for the hole and the screw one at a time",
            ));
        }
        let mut chars = text.trim().chars();
        let grade = |c: char| c.to_digit(10).and_then(|d| u8::try_from(d).ok());
        let (Some(first), Some(letter)) = (chars.next(), chars.next()) else {
            return Err(unreadable(text, "not a tolerance class"));
        };
        let Some(number) = grade(first) else {
            return Err(unreadable(text, "a class begins with its grade"));
        };
        let member = match letter {
            'A' => Some(Member::External),
            'B' => Some(Member::Internal),
            _ => None,
        };
        if let Some(member) = member {
            return match chars.next() {
                None => UnifiedClass::new(number, member).map(Self::Unified),
                Some(_) => Err(unreadable(
                    text,
                    "a Unified class is one number and one letter",
                )),
            };
        }
        let Some((position, _)) = Position::ALL.iter().find(|(_, l)| *l == letter) else {
            return Err(unreadable(
                text,
                "positions are G, H (holes) and e, f, g, h (screws)",
            ));
        };
        let crest = match (chars.next(), chars.next(), chars.next()) {
            (None, ..) => number,
            (Some(second), Some(again), None) => match grade(second) {
                Some(second) if again == letter => second,
                Some(_) => {
                    return Err(unreadable(
                        text,
                        "both parts of a class share one position letter",
                    ));
                }
                None => return Err(unreadable(text, "not a tolerance class")),
            },
            _ => return Err(unreadable(text, "not a tolerance class")),
        };
        IsoClass::new(number, crest, *position).map(Self::Iso)
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for ToleranceClass {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}
