//! `fit_limits`: limits of a size.

use super::said::Said;
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::fit::{FitClass, iso286_sources, limit_deviations};
use crate::measure::Bound;
use crate::quantity::{Length, settled_mm};
use crate::read::{Shape, answer, form, told};

/// A deviation as tables print it: whole micrometres without a decimal point, else tenths.
///
/// ```
/// use framegauge::ask::Micrometres;
/// assert_eq!(serde_json::to_string(&[Micrometres(-33.0), Micrometres(12.5)]).unwrap(), "[-33,12.5]");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Micrometres(pub f64);

impl serde::Serialize for Micrometres {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        #[expect(
            clippy::cast_possible_truncation,
            reason = "deviations of ISO 286 are below a metre"
        )]
        let whole = self.0 as i64;
        #[expect(clippy::cast_precision_loss, reason = "as above")]
        if whole as f64 == self.0 {
            serializer.serialize_i64(whole)
        } else {
            serializer.serialize_f64(self.0)
        }
    }
}

told! {
    Micrometres => Shape::Number,
    FitClass => Shape::Text { what: "a tolerance class" },
}

form! {
    /// `fit_limits`: deviations and limits of size of an ISO 286 class.
    ///
    /// ```
    /// use framegauge::{ask::{Ask, Context, FitLimits}, mm};
    /// let question = FitLimits { nominal: mm(42.0), class: "N7".parse().unwrap() };
    /// assert_eq!(question.answer(&Context::default()).unwrap().answer.min_mm, 41.967);
    /// ```
    FitLimits {
        /// Nominal size.
        nominal: Length,
        /// Tolerance class: capitals are holes, small letters shafts.
        class: FitClass,
    }
}

answer! {
    /// Deviations and limits of size.
    FitLimitsAnswer {
        /// Lower deviation in micrometres.
        lower_um: Micrometres,
        /// Upper deviation in micrometres.
        upper_um: Micrometres,
        /// Least size.
        min_mm: f64,
        /// Largest size.
        max_mm: f64,
        /// Nominal size.
        nominal_mm: f64,
        /// The class.
        class: FitClass,
    }
}

impl Ask for FitLimits {
    type Answer = FitLimitsAnswer;

    fn answer(&self, _: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let names = ["class", "letter", "grade", "deviation"].map(|theirs| (theirs, "class"));
        let found = limit_deviations(self.nominal, self.class).said_by(&names, "nominal")?;
        let limits = found.around(self.nominal).said("nominal")?;
        let end = |bound: Bound| bound.known().map(settled_mm).unwrap_or_default();
        let answer = FitLimitsAnswer {
            lower_um: Micrometres(found.lower_um()),
            upper_um: Micrometres(found.upper_um()),
            min_mm: end(limits.lower()),
            max_mm: end(limits.upper()),
            nominal_mm: settled_mm(self.nominal),
            class: self.class,
        };
        let basis = Basis::graded(crate::Grade::Standard).with_tables(&iso286_sources());
        Ok(Answered { answer, basis })
    }
}
