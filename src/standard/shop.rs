//! A shop's own rows: the same types, graded `Shop`, beside ours and never in front of them.

use alloc::format;
use alloc::vec::Vec;

use super::{
    Axle, Bearing, BoreWindow, BrakeFigure, BrakeMount, CrownSeat, CuttingRule, FacingRule,
    FitWindow, FlatMountBolt, Friction, HeadSeat, HeadsetBearing, InsertionRule, Material,
    PressPart, Rotor, Row, SeatClamp, SeatTube, Seatpost, Shell, ShellWindow, SpacerRule, Stated,
    Steerer, SteererRule, ThreadUse, TorqueFigure,
};
use crate::error::MOST_DEFECTS;
use crate::evidence::{Evidence, Grade};
use crate::{Error, ErrorKind};

/// A row that a shop can bring.
pub trait InShop: Row {
    /// The shop's rows of this family.
    fn of(shop: &ShopRows) -> &[Self];
}

macro_rules! families {
    ($( $family:ident : $row:ty ),* $(,)?) => {
        /// Rows that a shop brings. Deserializes from the words of `data/`; whatever grade a row claims, it is `Shop`.
        #[derive(Debug, Clone, PartialEq, Default)]
        #[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize), serde(deny_unknown_fields, default))]
        pub struct ShopRows {
            $(
                #[doc = concat!("Rows of the family `", stringify!($family), "`.")]
                pub $family: Vec<$row>,
            )*
        }

        impl ShopRows {
            /// Checks that no code or alias of a shop's row is taken, by our rows or by another of the shop's, and that no
            /// figure claims another grade than `Shop`.
            ///
            /// # Errors
            /// The first of [`ShopRows::defects`].
            ///
            /// ```
            /// use framegauge::{ErrorKind, standard::{Seatpost, ShopRows, find}};
            /// // A row of ours under another name would carry our grade.
            /// let copied = Seatpost { code: "our_27_2".into(), ..find::<Seatpost>("27.2").unwrap().clone() };
            /// let shop = ShopRows { seatpost: vec![copied], ..ShopRows::default() };
            /// assert_eq!(shop.check().unwrap_err().kind(), ErrorKind::Contradiction);
            /// ```
            pub fn check(&self) -> Result<(), Error> {
                self.defects().into_iter().next().map_or(Ok(()), Err)
            }

            /// Everything that is wrong with the rows: `NameTaken`, naming family and code; `Missing` for an empty code;
            /// `Contradiction` for a borrowed grade. After fifty one more says how many are left.
            ///
            /// ```
            /// use framegauge::standard::{Seatpost, ShopRows, find};
            /// let taken = find::<Seatpost>("27.2").unwrap().clone();
            /// let shop = ShopRows { seatpost: vec![taken; 60], ..ShopRows::default() };
            /// let defects = shop.defects();
            /// assert_eq!((defects.len(), defects[50].problem()), (51, "and 70 more")); // the name and the grade of each
            /// ```
            #[must_use]
            pub fn defects(&self) -> Vec<Error> {
                let mut defects = Vec::new();
                $( check_family(&self.$family, &mut defects); )*
                let more = defects.len().saturating_sub(MOST_DEFECTS);
                if more > 0 {
                    defects.truncate(MOST_DEFECTS);
                    defects.push(Error::and_more(more));
                }
                defects
            }
        }

        $(
            impl InShop for $row {
                fn of(shop: &ShopRows) -> &[Self] {
                    &shop.$family
                }
            }
        )*

        /// Walks every figure and fact of every family: family, code of the row, field, and what is stated.
        ///
        /// ```
        /// let mut unknown = 0;
        /// framegauge::standard::every_figure(&mut |_, _, _, stated| unknown += usize::from(stated.evidence().is_none()));
        /// assert!(unknown > 0);
        /// ```
        pub fn every_figure(visit: &mut dyn FnMut(&'static str, &str, &'static str, &dyn Stated)) {
            $( walk_family(<$row>::table(), visit); )*
        }
    };
}

families! {
    shell: Shell, shell_window: ShellWindow, bore_window: BoreWindow, press_part: PressPart, spacer_rule: SpacerRule,
    head_seat: HeadSeat, headset_bearing: HeadsetBearing, facing_rule: FacingRule, fit_window: FitWindow,
    crown_seat: CrownSeat, steerer: Steerer, steerer_rule: SteererRule,
    seatpost: Seatpost, seat_tube: SeatTube, clamp: SeatClamp, insertion_rule: InsertionRule,
    axle: Axle, thread_use: ThreadUse, torque: TorqueFigure,
    brake_mount: BrakeMount, brake_figure: BrakeFigure, rotor: Rotor, flat_mount_bolt: FlatMountBolt,
    bearing: Bearing, material: Material, friction: Friction, cutting_rule: CuttingRule,
}

fn walk_family<R: Row>(
    rows: &[R],
    visit: &mut dyn FnMut(&'static str, &str, &'static str, &dyn Stated),
) {
    for row in rows {
        row.walk("", &mut |field, stated| {
            visit(R::FAMILY, row.code(), field, stated)
        });
    }
}

fn check_family<R: Row>(rows: &[R], defects: &mut Vec<Error>) {
    for (index, row) in rows.iter().enumerate() {
        if row.code().trim().is_empty() {
            defects.push(Error::new(
                ErrorKind::Missing,
                format!("{}[{index}].code", R::FAMILY),
                "",
                "a row without a code",
                "give each row a code of its own",
            ));
        }
        let names = core::iter::once(row.code()).chain(row.aliases().iter().map(AsRef::as_ref));
        for name in names {
            let taken = R::table()
                .iter()
                .chain(rows.iter().take(index))
                .find(|other| {
                    other.code().eq_ignore_ascii_case(name)
                        || other
                            .aliases()
                            .iter()
                            .any(|alias| alias.eq_ignore_ascii_case(name))
                });
            if let Some(other) = taken {
                defects.push(Error::new(
                    ErrorKind::NameTaken,
                    format!("{}.{}", R::FAMILY, row.code()),
                    name,
                    format!("the name already stands for `{}`", other.code()),
                    "give your row another code; rows of ours are never replaced",
                ));
            }
        }
        let mut claimed = None;
        row.walk("", &mut |field, stated| {
            let grade = stated.evidence().map(Evidence::grade);
            claimed = claimed.or(grade.filter(|g| *g != Grade::Shop).map(|g| (field, g)));
        });
        if let Some((field, grade)) = claimed {
            defects.push(Error::new(
                ErrorKind::Contradiction,
                format!("{}.{}.{field}", R::FAMILY, row.code()),
                grade.words(),
                "a shop's figure has the grade `shop` only",
                "give it `Evidence::shop`, and say in its note what it rests on",
            ));
        }
    }
}

#[cfg(feature = "serde")]
mod thread_fact {
    use alloc::string::String;
    use alloc::vec::Vec;

    use serde::{Deserialize, Deserializer, de};

    use crate::evidence::{Fact, Grade, List, shop_evidence};
    use crate::quantity::{Pitch, parse_length};
    use crate::thread::{ThreadForm, ThreadSize};

    /// A thread as `data/` writes it: form, major and pitch beside the evidence.
    #[derive(Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Written {
        form: Option<ThreadForm>,
        major: Option<String>,
        pitch: Option<Pitch>,
        unknown: Option<String>,
        #[serde(default)]
        from: Vec<String>,
        #[serde(default)]
        note: String,
        grade: Option<Grade>,
        basis: Option<Grade>,
        formula: Option<String>,
        #[serde(default)]
        dissent: Vec<Written>,
    }

    fn size<E: de::Error>(written: &Written) -> Result<ThreadSize, E> {
        let form = written.form.ok_or_else(|| E::missing_field("form"))?;
        let major = written
            .major
            .as_deref()
            .ok_or_else(|| E::missing_field("major"))?;
        let pitch = written.pitch.ok_or_else(|| E::missing_field("pitch"))?;
        ThreadSize::new(form, parse_length(major).map_err(E::custom)?, pitch).map_err(E::custom)
    }

    fn fact<E: de::Error>(written: &Written) -> Result<Fact<ThreadSize>, E> {
        // The claimed grade is read, so that a row copied from data/ is accepted, and then not believed.
        let _ = (written.grade, written.basis, &written.formula);
        let mut voices = Vec::new();
        for voice in &written.dissent {
            voices.push(crate::evidence::Dissent {
                value: size(voice)?,
                evidence: shop_evidence(&voice.from, voice.note.clone()),
            });
        }
        let fact = match &written.unknown {
            None => Fact::known(
                size(written)?,
                shop_evidence(&written.from, written.note.clone()),
            ),
            Some(_)
                if written.form.is_some() || written.major.is_some() || written.pitch.is_some() =>
            {
                return Err(E::custom(
                    "a thread is either unknown or has a form, major and pitch, not both",
                ));
            }
            Some(reason) => Fact::unknown(reason.clone()),
        };
        Ok(fact.disputed_by(voices))
    }

    pub(in crate::standard) fn thread<'de, D: Deserializer<'de>>(
        d: D,
    ) -> Result<Fact<ThreadSize>, D::Error> {
        fact(&Written::deserialize(d)?)
    }

    pub(in crate::standard) fn thread_or_none<'de, D: Deserializer<'de>>(
        d: D,
    ) -> Result<Option<Fact<ThreadSize>>, D::Error> {
        Option::<Written>::deserialize(d)?
            .as_ref()
            .map(fact)
            .transpose()
    }

    pub(in crate::standard) fn thread_list<'de, D: Deserializer<'de>>(
        d: D,
    ) -> Result<List<Fact<ThreadSize>>, D::Error> {
        let written = Vec::<Written>::deserialize(d)?;
        let facts: Result<Vec<_>, D::Error> = written.iter().map(fact).collect();
        facts.map(List::Owned)
    }
}
#[cfg(feature = "serde")]
pub(super) use thread_fact::{thread, thread_list, thread_or_none};
