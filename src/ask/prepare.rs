//! `prepare`: the plan of a whole frame.

use super::{Answered, Ask, Basis, Context, Refusal};
use crate::Grade;
use crate::plan::{Plan, Prepare, prepare_with};

impl Ask for Prepare {
    type Answer = Plan;

    fn answer(&self, context: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let plan = prepare_with(&self.sheet, context.tables());
        let facts = || plan.places.iter().flat_map(|p| &p.facts);
        let stops = || plan.steps.iter().flat_map(|step| &step.stops);
        let grade = facts()
            .filter_map(|f| f.grade)
            .chain(stops().filter_map(|s| s.grade))
            .chain(plan.weak_figures.iter().map(|w| w.grade))
            .min();
        let basis = Basis::graded(grade.unwrap_or(Grade::Shop))
            .noting("the weakest figure of the plan; the frame and component makers' written limits go first")
            .citing(facts().flat_map(|f| &f.sources).chain(stops().flat_map(|s| &s.sources)));
        Ok(Answered {
            answer: plan,
            basis,
        })
    }
}
