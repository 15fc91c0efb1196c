//! `standard`: a row of the tables, or of the shop's own, with its sources.

use alloc::boxed::Box;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use serde::Serialize;

use super::{Answered, Ask, Basis, Context, Refusal};
use crate::evidence::{Citation, Evidence};
use crate::read::{Shape, answer, form, told};
use crate::standard::{
    Axle, Bearing, BoreWindow, BrakeFigure, BrakeMount, CrownSeat, CuttingRule, FacingRule,
    FitWindow, FlatMountBolt, Friction, HeadSeat, HeadsetBearing, InShop, InsertionRule, Material,
    PressPart, Rotor, Row, SeatClamp, SeatTube, Seatpost, Shell, ShellWindow, SpacerRule, Steerer,
    SteererRule, ThreadUse, TorqueFigure, Walk,
};
use crate::{Error, ErrorKind, Grade};

macro_rules! families {
    ($( $family:ident : $row:ident ),* $(,)?) => {
        /// A row of any family; serializes as the row itself.
        ///
        /// ```
        /// use framegauge::ask::{AnyRow, Ask, Context, StandardRow};
        /// let question = StandardRow { code: "bb30".into(), family: None };
        /// assert!(matches!(question.answer(&Context::default()).unwrap().answer.row, AnyRow::Shell(_)));
        /// ```
        #[derive(Debug, Clone, PartialEq, Serialize)]
        #[serde(untagged)]
        #[non_exhaustive]
        pub enum AnyRow {
            $( #[doc = concat!("Of the family `", stringify!($family), "`.")] $row(Box<$row>), )*
        }

        /// Names of the families, as in the tables.
        fn families() -> Vec<String> {
            [$(stringify!($family)),*].into_iter().map(String::from).collect()
        }

        /// Every row of this name, with the name of its family.
        fn rows_named(context: &Context<'_>, family: Option<&str>, name: &str) -> Vec<(&'static str, AnyRow)> {
            let mut found = Vec::new();
            $( if family.is_none_or(|f| f == <$row as Row>::FAMILY)
                && let Some(row) = first_of::<$row>(context, name)
            {
                found.push((<$row as Row>::FAMILY, AnyRow::$row(Box::new(row.clone()))));
            } )*
            found
        }

        /// The error that no row of this family has this name, with the nearest ones.
        fn not_found(family: &str, name: &str) -> Option<Error> {
            match family {
                $( f if f == <$row as Row>::FAMILY => crate::standard::find::<$row>(name).err(), )*
                _ => None,
            }
        }

        impl AnyRow {
            fn code(&self) -> &str {
                match self { $( Self::$row(row) => row.code(), )* }
            }
            fn walk(&self, visit: &mut dyn FnMut(&Evidence)) {
                match self { $( Self::$row(row) => walk_row(row.as_ref(), visit), )* }
            }
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

/// A row by name. Not `Tables::find`: that lists the nearest names on failure, which a search over all families does not want.
fn first_of<'a, R: InShop + 'a>(context: &Context<'a>, name: &str) -> Option<&'a R> {
    let wanted = name.trim();
    let coded = |row: &&R| row.code().eq_ignore_ascii_case(wanted);
    let called = |row: &&R| row.aliases().iter().any(|a| a.eq_ignore_ascii_case(wanted));
    let rows = || context.tables.all::<R>();
    rows().find(coded).or_else(|| rows().find(called))
}

/// Calls `visit` for the evidence of every figure and fact of a row.
pub(super) fn walk_row<R: Walk>(row: &R, visit: &mut dyn FnMut(&Evidence)) {
    row.walk("", &mut |_, stated| {
        if let Some(evidence) = stated.evidence() {
            visit(evidence);
        }
    });
}

told! {
    AnyRow => Shape::Report { what: "the row, in the words of the tables: each figure with nominal, limits, grade and sources" },
}

form! {
    /// `standard`: a row of the tables, or of the shop's own, with its sources.
    ///
    /// ```
    /// use framegauge::ask::{Ask, Context, StandardRow};
    /// let question = StandardRow { code: "bb30".into(), family: Some("shell".into()) };
    /// assert!(!question.answer(&Context::default()).unwrap().basis.sources.is_empty());
    /// ```
    StandardRow {
        /// Code or alias of the row.
        code: String,
        /// The family, where the code alone is not enough.
        family: Option<String>,
    }
}

answer! {
    /// A row.
    StandardAnswer {
        /// Its family.
        family: &'static str,
        /// Its code.
        code: String,
        /// The row.
        row: AnyRow,
    }
}

impl Ask for StandardRow {
    type Answer = StandardAnswer;

    fn answer(&self, context: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        if let Some(family) = &self.family {
            known_family(family, "family")?;
        }
        let mut found = rows_named(context, self.family.as_deref(), &self.code);
        if found.len() > 1 {
            let families: Vec<&str> = found.iter().map(|(family, _)| *family).collect();
            return Err(Error::new(
                ErrorKind::Contradiction,
                "code",
                &self.code,
                "several families hold a row of this name",
                format!("state `family`: one of {}", families.join(", ")),
            )
            .into());
        }
        let Some((family, row)) = found.pop() else {
            let named = self
                .family
                .as_deref()
                .and_then(|family| not_found(family, &self.code));
            return Err(named
                .map_or_else(
                    || {
                        Error::new(
                            ErrorKind::UnknownName,
                            "code",
                            &self.code,
                            "no row of any family has this name",
                            "state `family`, and the nearest names of it are listed",
                        )
                    },
                    |e| super::said::named(&e, "code"),
                )
                .into());
        };
        let mut grade: Option<Grade> = None;
        let mut sources: Vec<Citation> = Vec::new();
        row.walk(&mut |evidence| {
            grade = Some(grade.map_or(evidence.worth(), |g| g.weaker(evidence.worth())));
            sources.extend(evidence.sources().iter().cloned());
        });
        Ok(Answered {
            answer: StandardAnswer {
                family,
                code: row.code().into(),
                row,
            },
            basis: Basis::graded(grade.unwrap_or(Grade::Memory))
                .noting("the weakest grade of the row; each figure carries its own")
                .citing(&sources),
        })
    }
}

fn known_family(family: &str, field: &'static str) -> Result<(), Error> {
    let known = families();
    if known.iter().any(|name| name == family) {
        return Ok(());
    }
    Err(Error::new(
        ErrorKind::UnknownName,
        field,
        family,
        "no such family",
        format!("one of {}", known.join(", ")),
    ))
}
