//! Questions that `judge` answers: the question is its form, the answer its verdict.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::{Answered, Ask, Basis, Context, Refusal};
use crate::evidence::Grade;
use crate::judge::{self, Verdict};

/// What a verdict rests on: its findings with their sources, and how its numbers were worked out.
fn basis(said: &Verdict) -> Basis {
    let worked = said.worked.iter().filter(|w| !w.formula.is_empty());
    let formula: Vec<String> = worked
        .map(|w| format!("{}: {}", w.what, w.formula))
        .collect();
    let findings = said.findings.iter().chain(&said.beside);
    Basis::graded(said.weakest.unwrap_or(Grade::Shop))
        .by(formula.join("; "))
        .citing(findings.flat_map(|f| &f.sources))
}

macro_rules! judged {
    ($( $kind:ident ),* $(,)?) => {$(
        impl Ask for judge::$kind {
            type Answer = Verdict;

            fn answer(&self, context: &Context<'_>) -> Result<Answered<Verdict>, Refusal> {
                let said = judge::$kind::answer(self, context.tables())?;
                Ok(Answered { basis: basis(&said), answer: said })
            }
        }
    )*};
}

judged! {
    AtTemperature, CaliperPlace, Coating, Conform, Dropouts, HubWidth, ParallelFaces, SpindleBinds,
    BoltLength, BoreFit, CaliperTilt, CupDepth, Fit, Gauging, HoleToTap, Insertion, Ream, SeatpostForTube, Shim, SpindleWidth,
    Wall, WidthWindow,
}
