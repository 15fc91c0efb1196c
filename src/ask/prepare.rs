//! `prepare`: the plan of a whole frame.

use super::{Answered, Ask, Basis, Context, Refusal};
use crate::Grade;
use crate::plan::{Plan, Prepare, prepare_with};
use crate::say::reckoned;

impl Ask for Prepare {
    type Answer = Plan;

    fn answer(&self, context: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let plan = prepare_with(&self.sheet, context.tables());
        let facts = || plan.places.iter().flat_map(|p| &p.facts);
        let stops = || plan.steps.iter().flat_map(|step| &step.stops);
        let weak = plan.weak_figures.iter().map(|w| w.grade);
        let grades = facts()
            .filter_map(|f| f.grade)
            .chain(stops().filter_map(|s| s.grade));
        let sources = facts()
            .flat_map(|f| &f.sources)
            .chain(stops().flat_map(|s| &s.sources));
        let basis = Basis::graded(grades.chain(weak).min().unwrap_or(Grade::Shop))
            .noting(reckoned::PLAN_NOTE)
            .citing(sources);
        Ok(Answered {
            answer: plan,
            basis,
        })
    }
}
