//! Writes the source with a switch at every site. One switch is on at a time, so a changed expression holds its operands
//! as they stand in the source, and the copy grows with the depth of an expression, not with a power of it.

use crate::find::{Change, Site};
use std::ops::Range;

pub struct Written {
    pub text: String,
    /// Where the writing of each mutant stands, so that an error of the compiler leads to it.
    pub places: Vec<(usize, Range<usize>)>,
}

pub fn with_switches(source: &str, sites: Vec<Site>) -> Written {
    let mut writer = Writer {
        source,
        sites,
        written: Written {
            text: String::new(),
            places: Vec::new(),
        },
    };
    writer.stretch(0..source.len(), 0);
    writer.written
}

struct Writer<'a> {
    source: &'a str,
    sites: Vec<Site>,
    written: Written,
}

fn on(mutant: usize) -> String {
    format!("crate::switch::on({mutant})")
}

impl Writer<'_> {
    /// A stretch of the source with the sites inside it, those from `first` on.
    fn stretch(&mut self, range: Range<usize>, first: usize) {
        let mut done = range.start;
        let mut next = first;
        while let Some(Site { at, .. }) = self.sites.get(next) {
            let at = at.clone();
            if at.start > range.end {
                break;
            }
            if at.start >= done && at.end <= range.end {
                self.plain(done..at.start);
                self.site(next);
                done = at.end;
            }
            next += 1;
        }
        self.plain(done..range.end);
    }

    fn plain(&mut self, range: Range<usize>) {
        self.written.text += &self.source[range];
    }

    fn mark(&mut self, mutant: usize, text: &str) {
        let start = self.written.text.len();
        self.written.text += text;
        self.written
            .places
            .push((mutant, start..self.written.text.len()));
    }

    /// `(if on(1) { one } else if on(2) { another } else { the source })`
    fn choice(&mut self, others: Vec<(usize, String)>, otherwise: impl FnOnce(&mut Self)) {
        self.written.text += "(";
        for (mutant, text) in others {
            self.mark(mutant, &format!("if {} {{ {text} }}", on(mutant)));
            self.written.text += " else ";
        }
        self.written.text += "{ ";
        otherwise(self);
        self.written.text += " })";
    }

    fn site(&mut self, index: usize) {
        let source = self.source;
        let Site { at, change } = &self.sites[index];
        let (at, inner) = (at.clone(), index + 1);
        match change {
            Change::NotConst => {}
            Change::Body { mutants } => {
                for (mutant, value) in mutants.clone() {
                    self.mark(mutant, &format!(" if {} {{ return {value}; }}", on(mutant)));
                }
            }
            Change::Arm { mutant } => {
                let mutant = *mutant;
                self.mark(mutant, &format!(" if !{}", on(mutant)));
            }
            Change::Guard { arm, always, never } => {
                let (arm, always, never) = (*arm, *always, *never);
                for (mutant, before, after) in [
                    (arm, "!", " && ("),
                    (always, "", " || ("),
                    (never, "!", " && ("),
                ] {
                    match mutant {
                        Some(mutant) => {
                            self.mark(mutant, &format!("{before}{}{after}", on(mutant)))
                        }
                        None => self.written.text += "(",
                    }
                }
                self.stretch(at, inner);
                self.written.text += ")))";
            }
            Change::Bare { operand, mutant } => {
                let (operand, mutant) = (operand.clone(), *mutant);
                self.choice(
                    vec![(mutant, source[operand.clone()].to_owned())],
                    |writer| {
                        writer.plain(at.start..operand.start);
                        writer.stretch(operand, inner);
                    },
                );
            }
            Change::Operator {
                left,
                right,
                mutants,
            } => {
                let (left, right) = (left.clone(), right.clone());
                let (a, b) = (&source[left.clone()], &source[right.clone()]);
                let others = mutants
                    .iter()
                    .map(|(mutant, operator)| (*mutant, format!("{a} {operator} {b}")))
                    .collect();
                self.choice(others, |writer| {
                    writer.stretch(left.clone(), inner);
                    writer.plain(left.end..right.start);
                    writer.stretch(right, inner);
                });
            }
            Change::Fields { mutants } => {
                let without = |field: &Range<usize>| {
                    format!(
                        "{} {}",
                        &source[at.start..field.start],
                        &source[field.end..at.end]
                    )
                };
                let others = mutants
                    .iter()
                    .map(|(mutant, field)| (*mutant, without(field)))
                    .collect();
                self.choice(others, |writer| writer.stretch(at.clone(), inner));
            }
        }
    }
}
