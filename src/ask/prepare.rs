//! `prepare`: the plan of a whole frame.

use super::told::told;
use super::{Answered, Ask, Basis, Context, Refusal};
use crate::Grade;
use crate::plan::{Caution, Operation, Plan, Prepare, State, prepare_with};
use crate::read::{Field, Form, Shape, known_words};
use crate::standard::Place;

const TEXT: Shape = Shape::Text { what: "text" };
const PLACE: Shape = Shape::Text {
    what: "the code of a place, such as `shell.drive`",
};
const LENGTH: Shape = Shape::OrNull(&Shape::Number);

const fn field(name: &'static str, words: &'static str, shape: Shape) -> Field {
    Field {
        name,
        words,
        shape,
        needed: true,
    }
}

const BETWEEN: Form = Form {
    name: "between",
    fields: &[
        field("min", "its least value; null where it is open", LENGTH),
        field("max", "its largest value; null where it is open", LENGTH),
    ],
};

const OFF: Form = Form {
    name: "off",
    fields: &[
        field("of", "what is counted: `depth` or `diameter`", TEXT),
        field("mm", "at least and at most", Shape::Form(&BETWEEN)),
    ],
};

const STOP: Form = Form {
    name: "stop",
    fields: &[
        field("limit", "the limit, with whose it is", TEXT),
        field(
            "to_go_mm",
            "how much may come off before it for certain",
            LENGTH,
        ),
        field(
            "grade",
            "what it is worth",
            Shape::OrNull(&Shape::Word(known_words::<Grade>)),
        ),
        field("sources", "where this limit was read", Shape::List(&TEXT)),
    ],
};

const AFTER: Form = Form {
    name: "after",
    fields: &[
        field("step", "number of the earlier step", Shape::Count),
        field("code", "why it comes first, as a word", TEXT),
        field("why", "why it comes first", TEXT),
    ],
};

const TOOL: Form = Form {
    name: "tool",
    fields: &[
        field("code", "its kind", TEXT),
        field("words", "which one, with its size", TEXT),
        field(
            "hand",
            "hand of the thread it cuts",
            Shape::OrNull(&Shape::Word(known_words::<crate::thread::Hand>)),
        ),
    ],
};

const CHANGE: Form = Form {
    name: "change",
    fields: &[
        field("place", "where it is felt", PLACE),
        field("words", "what changes", TEXT),
        field("by_mm", "by how much at most", LENGTH),
    ],
};

const CAUTION: Form = Form {
    name: "caution",
    fields: &[
        field("code", "which caution", Shape::Word(known_words::<Caution>)),
        field("words", "the caution", TEXT),
    ],
};

const STEP: Form = Form {
    name: "step",
    fields: &[
        field("number", "number in the order of work", Shape::Count),
        field("place", "where", PLACE),
        field("operation", "what", Shape::Word(known_words::<Operation>)),
        field("cuts", "whether metal comes off", Shape::YesNo),
        field(
            "after",
            "steps that must be finished before",
            Shape::List(&Shape::Form(&AFTER)),
        ),
        field(
            "waits_for",
            "questions that must be answered before, by number",
            Shape::List(&Shape::Count),
        ),
        field(
            "off",
            "how much comes off",
            Shape::OrNull(&Shape::Form(&OFF)),
        ),
        field(
            "stops",
            "what stops the cut",
            Shape::List(&Shape::Form(&STOP)),
        ),
        field("tools", "with what", Shape::List(&Shape::Form(&TOOL))),
        field("pilot", "what guides the cutter", TEXT),
        field("start", "the end at which the tool starts", TEXT),
        field(
            "turn",
            "which way it turns to cut, seen from there",
            Shape::OrNull(&TEXT),
        ),
        field("turning", "how it is turned on the way", TEXT),
        field("passes", "how many passes to expect", TEXT),
        field(
            "changes",
            "what it changes elsewhere",
            Shape::List(&Shape::Form(&CHANGE)),
        ),
        field("checks", "what to check after it", Shape::List(&TEXT)),
        field("proof", "what proves it", TEXT),
        field(
            "cautions",
            "what belongs to it in danger",
            Shape::List(&Shape::Form(&CAUTION)),
        ),
        field(
            "notes",
            "what the sheet notes at this place",
            Shape::List(&TEXT),
        ),
        field("words", "the step in one line", TEXT),
        field("why", "why it is done", TEXT),
    ],
};

const QUESTION: Form = Form {
    name: "open_question",
    fields: &[
        field("number", "number in the plan", Shape::Count),
        field("place", "where", PLACE),
        field("measure", "what to measure, look at or ask", TEXT),
        field("instrument", "with what", TEXT),
        field(
            "answer",
            "the field of the sheet where the answer is written; answering it closes the question",
            TEXT,
        ),
        field("words", "the question in one line", TEXT),
        field("why", "why it matters", TEXT),
    ],
};

const FINDING: Shape = Shape::Report {
    what: "what, outcome, words, readings, limits, decision, owner, grade, sources",
};

const PLACE_REPORT: Form = Form {
    name: "place",
    fields: &[
        field("place", "where", PLACE),
        field("name", "what it is called", TEXT),
        field(
            "state",
            "where the work stands",
            Shape::Word(known_words::<State>),
        ),
        Field {
            needed: false,
            ..field(
                "identification",
                "which standard it is, where that was asked",
                Shape::Report {
                    what: "as the answer of `identify`",
                },
            )
        },
        field("facts", "what was found", Shape::List(&FINDING)),
        field(
            "contradictions",
            "what contradicts what; nothing is cut there while it stands",
            Shape::List(&TEXT),
        ),
        field("leave", "what is left alone, and why", Shape::List(&TEXT)),
        field("cures", "what could cure what is out", Shape::List(&TEXT)),
        field("notes", "what the sheet notes there", Shape::List(&TEXT)),
        field(
            "removed",
            "what came off: least and most",
            Shape::List(&Shape::Report {
                what: "value_mm, expanded_uncertainty_mm",
            }),
        ),
        field(
            "limits",
            "what limits a cut there now",
            Shape::List(&Shape::Report {
                what: "kind, what, may_come_off, measure, grade",
            }),
        ),
        field(
            "worked",
            "whether readings were taken after work",
            Shape::YesNo,
        ),
    ],
};

const WEAK: Form = Form {
    name: "weak_figure",
    fields: &[
        field("what", "which figure", TEXT),
        field(
            "grade",
            "what it is worth",
            Shape::Word(known_words::<Grade>),
        ),
    ],
};

told! {
    Plan => Shape::Form(&PLAN),
    Place => PLACE,
}

const PLAN: Form = Form {
    name: "plan",
    fields: Plan::FIELDS,
};

impl Plan {
    pub(super) const FIELDS: &'static [Field] = &[
        field("contract", "version of this form, 2", Shape::Count),
        field("frame", "the frame", TEXT),
        field("invented", "whether the sheet is invented", Shape::YesNo),
        field("date", "when it was measured", Shape::OrNull(&TEXT)),
        field(
            "notes",
            "what the sheet notes of the frame",
            Shape::List(&TEXT),
        ),
        field(
            "places",
            "every place with its state",
            Shape::List(&Shape::Form(&PLACE_REPORT)),
        ),
        field(
            "steps",
            "the work, in order",
            Shape::List(&Shape::Form(&STEP)),
        ),
        field(
            "questions",
            "what to measure or ask first",
            Shape::List(&Shape::Form(&QUESTION)),
        ),
        field(
            "cautions",
            "cautions for the whole job",
            Shape::List(&Shape::Form(&CAUTION)),
        ),
        field(
            "weak_figures",
            "figures from memory or common practice that the plan rests on",
            Shape::List(&Shape::Form(&WEAK)),
        ),
    ];
}

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
