//! `standard`: a row of the tables, or of the shop's own, with its sources.

use alloc::boxed::Box;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use serde::Serialize;

use super::{Answered, Ask, Basis, Context, Refusal};
use crate::evidence::Evidence;
use crate::read::{answer, form, told};
use crate::say::reckoned;
use crate::standard::{
    Axle, Bearing, BoreWindow, BrakeFigure, BrakeMount, CrownSeat, CuttingRule, FacingRule,
    FitWindow, FlatMountBolt, Friction, HeadSeat, HeadsetBearing, InShop, InsertionRule, Material,
    PressPart, Rotor, Row, SeatClamp, SeatTube, Seatpost, Shell, ShellWindow, SpacerRule, Stated,
    Steerer, SteererRule, ThreadUse, TorqueFigure, Walk,
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
        const FAMILIES: &[&str] = &[$(stringify!($family)),*];

        /// Every row of this name, with the name of its family.
        pub(super) fn rows_named(context: &Context<'_>, family: Option<&str>, name: &str) -> Vec<(&'static str, AnyRow)> {
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
            pub(super) fn walk(&self, visit: &mut dyn FnMut(&Evidence)) {
                let mut each = |_: &'static str, stated: &dyn Stated| stated.evidence().into_iter().for_each(&mut *visit);
                match self { $( Self::$row(row) => row.walk("", &mut each), )* }
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

told! {
    /// the row, in the words of the tables: each figure with nominal, limits, grade and sources
    AnyRow: Report,
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

impl StandardRow {
    fn row(&self, context: &Context<'_>) -> Result<(&'static str, AnyRow), Error> {
        let (family, code) = (self.family.as_deref(), self.code.as_str());
        let unknown = |field: &'static str, value, problem: &'static str, remedy: String| {
            Error::new(ErrorKind::UnknownName, field, value, problem, remedy)
        };
        if let Some(family) = family.filter(|family| !FAMILIES.contains(family)) {
            let remedy = format!("one of {}", FAMILIES.join(", "));
            return Err(unknown("family", family, "no such family", remedy));
        }
        let mut found = rows_named(context, family, code);
        if found.len() > 1 {
            let families: Vec<&str> = found.iter().map(|(family, _)| *family).collect();
            let remedy = format!("state `family`: one of {}", families.join(", "));
            let problem = "several families hold a row of this name";
            return Err(Error::new(
                ErrorKind::Contradiction,
                "code",
                code,
                problem,
                remedy,
            ));
        }
        let nearest = || family.and_then(|family| not_found(family, code));
        found.pop().ok_or_else(|| match nearest() {
            Some(nearest) => nearest.named("code"),
            None => {
                let remedy = "state `family`, and the nearest names of it are listed";
                unknown(
                    "code",
                    code,
                    "no row of any family has this name",
                    remedy.into(),
                )
            }
        })
    }
}

impl Ask for StandardRow {
    type Answer = StandardAnswer;

    fn answer(&self, context: &Context<'_>) -> Result<Answered<Self::Answer>, Refusal> {
        let (family, row) = self.row(context)?;
        let mut worth = Vec::new();
        let mut sources = Vec::new();
        row.walk(&mut |evidence| {
            worth.push(evidence.worth());
            sources.extend(evidence.sources().iter().cloned());
        });
        let weakest = worth.into_iter().reduce(Grade::weaker);
        let basis = Basis::graded(weakest.unwrap_or(Grade::Memory))
            .noting(reckoned::ROW_NOTE)
            .citing(&sources);
        let code = row.code().into();
        Ok(Answered {
            answer: StandardAnswer { family, code, row },
            basis,
        })
    }
}
