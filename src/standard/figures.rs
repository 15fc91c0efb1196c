//! A figure of any family by name: what a reading can be held against.

use alloc::format;
use alloc::string::String;

use super::{
    Bearing, BoreWindow, CrownSeat, CuttingRule, FacingRule, HeadSeat, HeadsetBearing, PressPart,
    Row, SeatClamp, SeatTube, Seatpost, Shell, ShellWindow, Steerer, SteererRule, Tables,
};
use crate::{Error, ErrorKind, Figure};

/// A figure of length, whether a row must state it or may.
trait AsFigure {
    fn figure(&self) -> Option<&Figure>;
}
impl AsFigure for Figure {
    fn figure(&self) -> Option<&Figure> {
        Some(self)
    }
}
impl AsFigure for Option<Figure> {
    fn figure(&self) -> Option<&Figure> {
        self.as_ref()
    }
}

macro_rules! figures {
    ($( $row:ident { $($field:ident),+ } )*) => {
        /// The figure of this field, `None` where the row holds none; or the fields that this family has.
        fn of_row<'a>(
            tables: Tables<'a>,
            family: &str,
            code: &str,
            field: &str,
        ) -> Result<Result<Option<&'a Figure>, &'static [&'static str]>, Error> {
            match family {
                $( f if f == <$row as Row>::FAMILY => {
                    let row = tables.find::<$row>(code).map_err(|e| e.named("code"))?;
                    Ok(match field {
                        $( stringify!($field) => Ok(AsFigure::figure(&row.$field)), )+
                        _ => Err(&[$(stringify!($field)),+]),
                    })
                } )*
                other => Err(Error::new(
                    ErrorKind::UnknownName,
                    "family",
                    other,
                    "no family that holds a size to be held against",
                    format!("one of {}", [$(<$row as Row>::FAMILY),*].join(", ")),
                )),
            }
        }
    };
}

figures! {
    Shell { bore, bore_depth, minor_diameter, pitch_diameter, thread_depth }
    ShellWindow { window }
    BoreWindow { window }
    PressPart { diameter }
    HeadSeat { bore, bore_depth, outside_diameter, bearing_outside, cup }
    HeadsetBearing { bore, outside, height }
    FacingRule { window }
    CrownSeat { seat, race_bore, seat_height }
    Steerer { upper_diameter, lower_diameter, inside_diameter, quill, stem_clamp }
    SteererRule { window }
    Seatpost { diameter }
    SeatTube { outside, wall, post }
    SeatClamp { tube_outside }
    Bearing { bore, outside, width }
    CuttingRule { window }
}

/// A figure of the tables or of the shop, by its family, the code of its row and its field.
///
/// # Errors
/// `UnknownName` for `family`, `code` or `field`; `NotTabulated` where the row holds no such figure.
///
/// ```
/// use framegauge::standard::{Tables, figure};
/// assert!(figure(Tables::ours(), "head_seat", "ZS44", "bore").unwrap().is_known());
/// assert_eq!(figure(Tables::ours(), "head_seat", "ZS44", "boor").unwrap_err().field(), "field");
/// ```
pub fn figure<'a>(
    tables: Tables<'a>,
    family: &str,
    code: &str,
    field: &str,
) -> Result<&'a Figure, Error> {
    let found = of_row(tables, family, code, field)?.map_err(|known| {
        Error::new(
            ErrorKind::UnknownName,
            "field",
            String::from(field),
            "no size of this family",
            format!("one of {}", known.join(", ")),
        )
    })?;
    found.filter(|figure| figure.is_known()).ok_or_else(|| {
        Error::new(
            ErrorKind::NotTabulated,
            "field",
            String::from(field),
            format!("no {field} is held for {code}"),
            "ask the frame maker, and give the limits themselves",
        )
    })
}
