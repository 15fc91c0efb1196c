//! `convert`: a quantity in other units.

use alloc::string::{String, ToString};

use super::said::{ONE, second};
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::quantity::{Length, Pitch, in_inches, in_mm, settled_mm};
use crate::read::{answer, form};

form! {
    /// `convert`: a length or a pitch in other units. State one of them.
    ///
    /// ```
    /// use framegauge::{ask::{Ask, Context, Convert}, inch};
    /// let question = Convert { length: Some(inch(1.375)), pitch: None };
    /// assert_eq!(question.answer(&Context::default()).unwrap().answer.mm, 34.925);
    /// ```
    Convert {
        /// A length.
        length: Option<Length>,
        /// A pitch.
        pitch: Option<Pitch>,
    }
}

answer! {
    /// The same quantity.
    ConvertAnswer {
        /// In millimetres, settled to whole nanometres.
        mm: f64,
        /// Threads per inch, where a pitch was given so.
        threads_per_inch: Option<u32>,
        /// In millimetres as printed.
        text_mm: String,
        /// In inches as printed.
        text_in: String,
    }
}

impl Ask for Convert {
    type Answer = ConvertAnswer;

    fn answer(&self, _: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let (length, tpi) = match (self.length, self.pitch) {
            (Some(length), None) => (length, None),
            (None, Some(pitch)) => (pitch.length(), pitch.threads_per_inch()),
            (None, None) => return Err(crate::read::missing("length").into()),
            (Some(_), Some(_)) => {
                return Err(second("pitch", "a length and a pitch are two questions", ONE).into());
            }
        };
        let answer = ConvertAnswer {
            mm: settled_mm(length),
            threads_per_inch: tpi.map(u32::from),
            text_mm: in_mm(length).to_string(),
            text_in: in_inches(length).to_string(),
        };
        let basis = Basis::graded(crate::Grade::Standard).by("1 in = 25.4 mm exactly");
        Ok(Answered { answer, basis })
    }
}
