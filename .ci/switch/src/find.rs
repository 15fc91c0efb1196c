//! Finds the expressions that the mutants of a list change.

use crate::Wanted;
use proc_macro2::{LineColumn, Span};
use std::collections::HashSet;
use std::ops::Range;
use syn::spanned::Spanned;
use syn::visit::{self, Visit};
use syn::{
    Arm, Block, Expr, ExprBinary, ExprStruct, ExprUnary, ImplItemFn, ItemFn, Signature, TraitItemFn,
};

/// A stretch of the source that has mutants, and what they do to it.
pub struct Site {
    pub at: Range<usize>,
    pub change: Change,
}

pub enum Change {
    /// The operator between two operands is another one.
    Operator {
        left: Range<usize>,
        right: Range<usize>,
        mutants: Vec<(usize, String)>,
    },
    /// The operator before an operand is gone.
    Bare {
        operand: Range<usize>,
        mutant: usize,
    },
    /// A function returns at once; the site is the empty stretch after its brace.
    Body { mutants: Vec<(usize, String)> },
    /// `const` is gone, so that the function may ask for its switch.
    NotConst,
    /// A match arm without guard never matches; the site is the empty stretch after its pattern.
    Arm { mutant: usize },
    /// A guard is always true or false, or its arm never matches.
    Guard {
        arm: Option<usize>,
        always: Option<usize>,
        never: Option<usize>,
    },
    /// A field is taken from the base of a struct expression.
    Fields { mutants: Vec<(usize, Range<usize>)> },
}

pub struct Finder<'a> {
    source: &'a str,
    lines: Vec<usize>,
    wanted: Wanted,
    stay_const: &'a HashSet<String>,
    in_const: bool,
    absent: Vec<usize>,
    sites: Vec<Site>,
}

impl<'a> Finder<'a> {
    pub fn new(source: &'a str, wanted: Wanted, stay_const: &'a HashSet<String>) -> Self {
        let lines = std::iter::once(0)
            .chain(source.match_indices('\n').map(|(at, _)| at + 1))
            .collect();
        Self {
            source,
            lines,
            wanted,
            stay_const,
            in_const: false,
            absent: Vec::new(),
            sites: Vec::new(),
        }
    }

    /// The mutants that were not found or that stand where nothing can be asked at run time.
    pub fn absent(&self) -> impl Iterator<Item = usize> + '_ {
        let never_met = self.wanted.values().flatten().map(|(id, _)| *id);
        never_met.chain(self.absent.iter().copied())
    }

    /// Outer sites before those inside them.
    pub fn sites(mut self) -> Vec<Site> {
        self.sites
            .sort_by_key(|site| (site.at.start, std::cmp::Reverse(site.at.end)));
        self.sites
    }

    fn byte(&self, place: LineColumn) -> usize {
        let start = self.lines[place.line - 1];
        let line = &self.source[start..];
        start
            + line
                .char_indices()
                .nth(place.column)
                .map_or(line.len(), |(at, _)| at)
    }

    fn range(&self, span: Span) -> Range<usize> {
        self.byte(span.start())..self.byte(span.end())
    }

    fn take(&mut self, genre: &str, span: Span) -> Vec<(usize, String)> {
        let start = span.start();
        let found = self
            .wanted
            .remove(&(genre.to_owned(), start.line, start.column + 1))
            .unwrap_or_default();
        if self.in_const {
            self.absent.extend(found.iter().map(|(id, _)| *id));
            return Vec::new();
        }
        found
    }

    fn add(&mut self, at: Range<usize>, change: Change) {
        self.sites.push(Site { at, change });
    }

    /// Takes a function in, then what `inside` walks.
    fn function(&mut self, signature: &Signature, body: &Block, inside: impl FnOnce(&mut Self)) {
        let outside = self.in_const;
        if let Some(word) = &signature.constness {
            if self.stay_const.contains(&signature.ident.to_string()) {
                self.in_const = true;
            } else {
                let at = self.range(word.span());
                self.add(at, Change::NotConst);
            }
        }
        if let Some(first) = body.stmts.first() {
            let mutants = self.take("FnValue", first.span());
            if !mutants.is_empty() {
                let after = self.range(body.brace_token.span.open()).end;
                self.add(after..after, Change::Body { mutants });
            }
        }
        inside(self);
        self.in_const = outside;
    }
}

/// Whether `let` stands in a chain of conditions, which then may not be put in brackets.
fn has_let(part: &Expr) -> bool {
    match part {
        Expr::Let(_) => true,
        Expr::Binary(both) => has_let(&both.left) || has_let(&both.right),
        _ => false,
    }
}

impl<'ast> Visit<'ast> for Finder<'_> {
    fn visit_item_fn(&mut self, item: &'ast ItemFn) {
        self.function(&item.sig, &item.block, |finder| {
            visit::visit_item_fn(finder, item)
        });
    }

    fn visit_impl_item_fn(&mut self, item: &'ast ImplItemFn) {
        self.function(&item.sig, &item.block, |finder| {
            visit::visit_impl_item_fn(finder, item)
        });
    }

    fn visit_trait_item_fn(&mut self, item: &'ast TraitItemFn) {
        match &item.default {
            Some(body) => self.function(&item.sig, body, |finder| {
                visit::visit_trait_item_fn(finder, item)
            }),
            None => visit::visit_trait_item_fn(self, item),
        }
    }

    fn visit_expr_binary(&mut self, both: &'ast ExprBinary) {
        if !has_let(&both.left) && !has_let(&both.right) {
            let mutants = self.take("BinaryOperator", both.op.span());
            if !mutants.is_empty() {
                let (left, right) = (self.range(both.left.span()), self.range(both.right.span()));
                self.add(
                    left.start..right.end,
                    Change::Operator {
                        left,
                        right,
                        mutants,
                    },
                );
            }
        }
        visit::visit_expr_binary(self, both);
    }

    fn visit_expr_unary(&mut self, unary: &'ast ExprUnary) {
        if let Some((mutant, _)) = self.take("UnaryOperator", unary.op.span()).pop() {
            let operand = self.range(unary.expr.span());
            let start = self.range(unary.op.span()).start;
            self.add(start..operand.end, Change::Bare { operand, mutant });
        }
        visit::visit_expr_unary(self, unary);
    }

    fn visit_arm(&mut self, arm: &'ast Arm) {
        let gone = self.take("MatchArm", arm.span()).pop().map(|(id, _)| id);
        if let Some((_, guard)) = &arm.guard {
            let mutants = self.take("MatchArmGuard", guard.span());
            let which = |value: &str| {
                mutants
                    .iter()
                    .find(|(_, is)| is == value)
                    .map(|(id, _)| *id)
            };
            let (always, never) = (which("true"), which("false"));
            if gone.or(always).or(never).is_some() {
                let at = self.range(guard.span());
                self.add(
                    at,
                    Change::Guard {
                        arm: gone,
                        always,
                        never,
                    },
                );
            }
        } else if let Some(mutant) = gone {
            let end = self.range(arm.pat.span()).end;
            self.add(end..end, Change::Arm { mutant });
        }
        visit::visit_arm(self, arm);
    }

    fn visit_expr_struct(&mut self, whole: &'ast ExprStruct) {
        let mut mutants = Vec::new();
        for pair in whole.fields.pairs() {
            if let Some((id, _)) = self.take("StructField", pair.value().span()).pop() {
                let field = self.range(pair.value().span());
                let end = pair
                    .punct()
                    .map_or(field.end, |comma| self.range(comma.span()).end);
                mutants.push((id, field.start..end));
            }
        }
        if !mutants.is_empty() {
            let at = self.range(whole.span());
            self.add(at, Change::Fields { mutants });
        }
        visit::visit_expr_struct(self, whole);
    }
}
