//! The fields of an object: known, none twice, each read with the name of it in its path.

use alloc::borrow::Cow;

use super::context::{Context, missing, twice};
use super::tree::Tree;
use super::values::{Read, ReadBy};

/// The fields of an object.
pub(crate) struct Fields<'t>(&'t [(Cow<'t, str>, Tree<'t>)]);

impl<'t> Fields<'t> {
    pub(crate) fn of(
        tree: &'t Tree<'t>,
        known: &[&str],
        context: &mut Context<'_>,
    ) -> Option<Self> {
        match tree {
            Tree::Fields(fields) => Some(Self::checked(fields, known, context)),
            other => context.expected(other, "an object with named fields"),
        }
    }

    /// These fields; unknown ones and ones that stand twice are noted, and the others are read all the same.
    pub(crate) fn checked(
        fields: &'t [(Cow<'t, str>, Tree<'t>)],
        known: &[&str],
        context: &mut Context<'_>,
    ) -> Self {
        let mut seen = [false; 64];
        for (name, _) in fields {
            let Some(index) = known.iter().position(|k| k == name) else {
                context.unknown_field(name, known);
                continue;
            };
            if let Some(seen) = seen.get_mut(index) {
                if *seen {
                    context.under(name, |c| c.refuse(&twice("")));
                }
                *seen = true;
            }
        }
        Self(fields)
    }

    fn find(&self, name: &str) -> Option<&'t Tree<'t>> {
        self.0.iter().find(|(key, _)| key == name).map(|(_, t)| t)
    }

    pub(crate) fn field<T: Read>(
        &self,
        name: &'static str,
        context: &mut Context<'_>,
    ) -> Option<T> {
        context.under(name, |context| match self.find(name) {
            Some(tree) => T::read(tree, context),
            None => T::absent().or_else(|| context.keep(Err(missing("")))),
        })
    }

    pub(crate) fn field_by<T, R: ReadBy<T>>(
        &self,
        name: &'static str,
        context: &mut Context<'_>,
    ) -> Option<T> {
        context.under(name, |context| match self.find(name) {
            Some(tree) => R::read(tree, context),
            None => R::absent().or_else(|| context.keep(Err(missing("")))),
        })
    }
}
