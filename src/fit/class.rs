//! Tolerance classes: a deviation letter and a standard tolerance grade, as in `H7` or `js6`.

use core::fmt;
use core::str::FromStr;

use crate::{Error, ErrorKind};

/// The fundamental deviation letters of ISO 286-1; capitals for holes, small letters for shafts.
///
/// ```
/// use framegauge::fit::DeviationLetter;
/// assert_eq!("js".parse::<DeviationLetter>().unwrap(), DeviationLetter::Js);
/// assert!("l".parse::<DeviationLetter>().is_err());
/// ```
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    PartialOrd,
    Ord,
    strum::Display,
    strum::EnumString,
    strum::EnumIter,
    strum::IntoStaticStr,
)]
#[strum(serialize_all = "lowercase")]
#[expect(missing_docs, reason = "the letters themselves")]
pub enum DeviationLetter {
    A,
    B,
    C,
    Cd,
    D,
    E,
    Ef,
    F,
    Fg,
    G,
    H,
    J,
    Js,
    K,
    M,
    N,
    P,
    R,
    S,
    T,
    U,
    V,
    X,
    Y,
    Z,
    Za,
    Zb,
    Zc,
}

/// A standard tolerance grade, IT01 to IT18.
///
/// ```
/// use framegauge::fit::ToleranceGrade;
/// let grade: ToleranceGrade = "IT7".parse().unwrap();
/// assert_eq!(grade, ToleranceGrade::new(7).unwrap());
/// assert_eq!(grade.to_string(), "7");
/// assert!(ToleranceGrade::IT01 < ToleranceGrade::IT0);
/// assert!("IT19".parse::<ToleranceGrade>().is_err());
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct ToleranceGrade(u8);

impl ToleranceGrade {
    /// The finest grade.
    pub const IT01: Self = Self(0);
    /// The second finest grade.
    pub const IT0: Self = Self(1);

    /// IT1 to IT18, and 0 for IT0.
    ///
    /// # Errors
    /// `OutOfRange` above 18.
    pub fn new(number: u8) -> Result<Self, Error> {
        if number > 18 {
            return Err(no_grade(number));
        }
        Ok(Self(number + 1))
    }

    /// Place in the row of grades: IT01 is 0, IT0 is 1, IT1 is 2.
    pub(super) const fn index(self) -> usize {
        self.0 as usize
    }

    /// The number of the grade; `None` for IT01, which has no number of its own.
    pub(super) const fn number(self) -> Option<u8> {
        self.0.checked_sub(1)
    }
}

fn no_grade(found: impl alloc::string::ToString) -> Error {
    Error::new(
        ErrorKind::OutOfRange,
        "tolerance grade",
        found,
        "ISO 286-1 has the grades IT01, IT0 and IT1 to IT18",
        "write e.g. `7`",
    )
}

impl fmt::Display for ToleranceGrade {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.number() {
            None => f.write_str("01"),
            Some(number) => write!(f, "{number}"),
        }
    }
}

impl FromStr for ToleranceGrade {
    type Err = Error;

    /// Reads `7`, `IT7` or `01`.
    fn from_str(text: &str) -> Result<Self, Error> {
        let digits = text.trim();
        let digits = digits.strip_prefix("IT").unwrap_or(digits);
        if digits == "01" {
            return Ok(Self::IT01);
        }
        let plain = digits.len() <= 2 && digits.bytes().all(|b| b.is_ascii_digit());
        let padded = digits.len() == 2 && digits.starts_with('0');
        match digits.parse::<u8>() {
            Ok(number) if plain && !padded => Self::new(number),
            _ => Err(no_grade(text)),
        }
    }
}

/// Whether a class belongs to the inside or the outside member of a fit.
///
/// ```
/// assert_eq!(framegauge::fit::Feature::Hole.to_string(), "hole");
/// ```
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    strum::Display,
    strum::IntoStaticStr,
    strum::EnumString,
    strum::EnumIter,
)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[strum(serialize_all = "snake_case")]
pub enum Feature {
    /// A hole: bore, seat, ring bore.
    Hole,
    /// A shaft: post, cup, ring outside.
    Shaft,
}

/// A tolerance class of ISO 286: `H7`, `N7`, `js6`, `zc10`. Capitals are holes, small letters shafts.
///
/// ```
/// use framegauge::fit::{Feature, FitClass};
/// let seat: FitClass = "N7".parse().unwrap();
/// assert_eq!(seat.feature(), Feature::Hole);
/// assert_eq!("js6".parse::<FitClass>().unwrap().to_string(), "js6");
/// // A letter that looks like a digit, and a class in mixed case, are refused with the reason.
/// assert!("o7".parse::<FitClass>().unwrap_err().problem().contains("no letter"));
/// assert!("Js7".parse::<FitClass>().unwrap_err().problem().contains("case"));
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct FitClass {
    feature: Feature,
    letter: DeviationLetter,
    grade: ToleranceGrade,
}

impl FitClass {
    /// A class of a hole.
    ///
    /// ```
    /// use framegauge::fit::{DeviationLetter, FitClass, ToleranceGrade};
    /// let h7 = FitClass::hole(DeviationLetter::H, ToleranceGrade::new(7).unwrap());
    /// assert_eq!(h7.to_string(), "H7");
    /// ```
    #[must_use]
    pub const fn hole(letter: DeviationLetter, grade: ToleranceGrade) -> Self {
        Self {
            feature: Feature::Hole,
            letter,
            grade,
        }
    }

    /// A class of a shaft.
    ///
    /// ```
    /// use framegauge::fit::{DeviationLetter, FitClass, ToleranceGrade};
    /// let h6 = FitClass::shaft(DeviationLetter::H, ToleranceGrade::new(6).unwrap());
    /// assert_eq!(h6.to_string(), "h6");
    /// ```
    #[must_use]
    pub const fn shaft(letter: DeviationLetter, grade: ToleranceGrade) -> Self {
        Self {
            feature: Feature::Shaft,
            letter,
            grade,
        }
    }

    /// Hole or shaft.
    #[must_use]
    pub const fn feature(self) -> Feature {
        self.feature
    }
    /// The deviation letter.
    #[must_use]
    pub const fn letter(self) -> DeviationLetter {
        self.letter
    }
    /// The tolerance grade.
    #[must_use]
    pub const fn grade(self) -> ToleranceGrade {
        self.grade
    }
}

impl fmt::Display for FitClass {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let letters: &'static str = self.letter.into();
        match self.feature {
            Feature::Shaft => f.write_str(letters)?,
            Feature::Hole => {
                for letter in letters.chars() {
                    write!(f, "{}", letter.to_ascii_uppercase())?;
                }
            }
        }
        write!(f, "{}", self.grade)
    }
}

impl FromStr for FitClass {
    type Err = Error;

    fn from_str(text: &str) -> Result<Self, Error> {
        let trimmed = text.trim();
        let refuse = |problem: &'static str, remedy: &'static str| {
            Error::new(ErrorKind::Text, "tolerance class", text, problem, remedy)
        };
        let split = trimmed
            .find(|c: char| !c.is_ascii_alphabetic())
            .unwrap_or(trimmed.len());
        let (letters, grade) = trimmed.split_at(split);
        if letters.is_empty() || letters.len() > 2 {
            return Err(refuse(
                "a class is one or two letters and a grade",
                "write e.g. `H7` or `js6`",
            ));
        }
        if grade.is_empty() {
            return Err(refuse("the grade is missing", "write e.g. `H7`"));
        }
        let hole = letters.bytes().all(|b| b.is_ascii_uppercase());
        let shaft = letters.bytes().all(|b| b.is_ascii_lowercase());
        if !hole && !shaft {
            return Err(refuse(
                "the letters mix upper and lower case",
                "capitals for holes (`JS7`), small letters for shafts (`js7`)",
            ));
        }
        let mut small = [0_u8; 2];
        for (to, from) in small.iter_mut().zip(letters.bytes()) {
            *to = from.to_ascii_lowercase();
        }
        let letter = small
            .get(..letters.len())
            .and_then(|bytes| core::str::from_utf8(bytes).ok())
            .and_then(|name| name.parse::<DeviationLetter>().ok())
            .ok_or_else(|| {
                refuse(
                    "ISO 286-1 has no letter of this name",
                    "a b c cd d e ef f fg g h j js k m n p r s t u v x y z za zb zc",
                )
            })?;
        let grade = grade
            .parse()
            .map_err(|e: Error| e.within("tolerance class"))?;
        Ok(if hole {
            Self::hole(letter, grade)
        } else {
            Self::shaft(letter, grade)
        })
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for FitClass {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

#[cfg(feature = "serde")]
impl<'de> serde::Deserialize<'de> for FitClass {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        use serde::de::Error as _;
        alloc::string::String::deserialize(deserializer)?
            .parse()
            .map_err(D::Error::custom)
    }
}
