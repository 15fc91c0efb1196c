//! Ours and a shop's rows together. Ours come first; a checked shop never carries a name of ours.

use super::row::get_in;
use super::{InShop, Row, ShopRows, find_in};
use crate::Error;

/// The compiled tables, with a shop's own rows beside them.
///
/// ```
/// use framegauge::standard::{Seatpost, ShopRows, Tables};
/// let shop = ShopRows::default();
/// let tables = Tables::with(&shop).unwrap();
/// assert_eq!(tables.find::<Seatpost>("27.2").unwrap().code, "27.2");
/// assert!(tables.all::<Seatpost>().count() > 50);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Tables<'a> {
    shop: Option<&'a ShopRows>,
}

impl<'a> Tables<'a> {
    /// Our tables alone.
    #[must_use]
    pub const fn ours() -> Self {
        Self { shop: None }
    }

    /// Our tables and a shop's rows.
    ///
    /// # Errors
    /// `NameTaken` when a row of the shop carries a name that is taken; see [`ShopRows::check`].
    pub fn with(shop: &'a ShopRows) -> Result<Self, Error> {
        shop.check()?;
        Ok(Self { shop: Some(shop) })
    }

    /// The shop's rows, where there are any.
    #[must_use]
    pub const fn shop(&self) -> Option<&'a ShopRows> {
        self.shop
    }

    /// Finds a row by code or alias.
    ///
    /// # Errors
    /// `UnknownName`, with the nearest names of ours.
    ///
    /// ```
    /// use framegauge::{ErrorKind, standard::{Shell, Tables}};
    /// assert_eq!(Tables::ours().find::<Shell>("BSA").unwrap().code, "bsc");
    /// assert_eq!(Tables::ours().find::<Shell>("bsx").unwrap_err().kind(), ErrorKind::UnknownName);
    /// ```
    pub fn find<R: InShop>(&self, name: &str) -> Result<&'a R, Error> {
        match self.get(name) {
            Some(row) => Ok(row),
            None => find_in(R::table(), name),
        }
    }

    /// A row by code or alias, where a name that is none is no fault: as [`Self::find`], without the nearest names.
    ///
    /// ```
    /// use framegauge::standard::{Shell, Tables};
    /// assert_eq!(Tables::ours().get::<Shell>("BSA").unwrap().code, "bsc");
    /// assert!(Tables::ours().get::<Shell>("bsx").is_none());
    /// ```
    #[must_use]
    pub fn get<R: InShop>(&self, name: &str) -> Option<&'a R> {
        get_in(R::table(), name).or_else(|| get_in(self.shop.map(R::of).unwrap_or_default(), name))
    }

    /// Every row of a family, ours first.
    pub fn all<R: InShop + Row>(&self) -> impl Iterator<Item = &'a R> + use<'a, R> {
        R::table()
            .iter()
            .chain(self.shop.map(R::of).unwrap_or_default())
    }
}
