//! Rescue geometry: what a retap to the next pattern takes away and leaves, and what is known of inserts.

use super::basic::minor_span;
use super::tables::cite::INSERT_PROPORTIONS;
use super::{Designation, Hand, ThreadForm, ThreadSize};
use crate::evidence::{Figure, Span};
use crate::measure::settled_cmp;
use crate::quantity::{Length, ShaftDiameter, in_mm, mm, to_mm};
use crate::{Error, ErrorKind};

/// What a retap takes away and leaves. All lengths are radial, per side.
///
/// ```
/// use framegauge::{in_mm, thread::retap};
/// let cut = retap(&"M10x1".parse().unwrap(), &"M12x1".parse().unwrap(), None).unwrap();
/// assert_eq!(in_mm(cut.stock_removed).to_string(), "1.000 mm");
/// assert!(cut.wall_left.is_none());
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Retap {
    /// The thread that was.
    pub from: ThreadSize,
    /// The thread that will be.
    pub to: ThreadSize,
    /// Its hand, which may differ from the old one.
    pub hand: Hand,
    /// Whether the hand changes on this side.
    pub hand_changes: bool,
    /// How much deeper the new grooves go: half the difference of the major diameters.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "stock_removed_mm",
            serialize_with = "crate::quantity::serial::as_mm"
        )
    )]
    pub stock_removed: Length,
    /// Least depth of old groove that stays visible in the new crests.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "old_thread_left_min_mm",
            serialize_with = "crate::quantity::serial::as_mm"
        )
    )]
    pub old_thread_left_min: Length,
    /// Greatest depth of old groove that stays visible; above the least where the form of the new thread is not known.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "old_thread_left_max_mm",
            serialize_with = "crate::quantity::serial::as_mm"
        )
    )]
    pub old_thread_left_max: Length,
    /// Wall left outside the new grooves, where the outside of the shell is known.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "wall_left_mm",
            serialize_with = "crate::quantity::serial::as_mm_or_null"
        )
    )]
    pub wall_left: Option<Length>,
    /// What to mind.
    pub caution: &'static str,
}

/// What a retap to a larger thread takes away and leaves on one side.
///
/// Sides are independent: one side alone may be recut, and the shell is then a hybrid. No least wall is published; the frame
/// maker decides.
///
/// # Errors
/// `NotApplicable` when the new thread is not larger; `Contradiction` when it breaks through the outside; `NotFinite` and
/// `OutOfRange` for an outside diameter that is none.
///
/// ```
/// use framegauge::{in_mm, mm, thread::{Hand, retap}};
/// // A stripped English drive side recut to the Italian pattern:
/// let cut = retap(&"1.370 in x 24 tpi BSC LH".parse().unwrap(), &"36 mm x 24 tpi".parse().unwrap(), Some(mm(40.0))).unwrap();
/// assert_eq!(in_mm(cut.stock_removed).to_string(), "0.601 mm");
/// assert_eq!(in_mm(cut.wall_left.unwrap()).to_string(), "2.000 mm");
/// assert!(cut.old_thread_left_max < mm(0.1));
/// assert!(cut.hand_changes && cut.hand == Hand::Right);
/// ```
pub fn retap(
    from: &Designation,
    to: &Designation,
    outside: Option<Length>,
) -> Result<Retap, Error> {
    let (old, new) = (from.size.major(), to.size.major());
    if settled_cmp(new, old) != core::cmp::Ordering::Greater {
        return Err(Error::new(
            ErrorKind::NotApplicable,
            "new thread",
            to.size,
            alloc::format!("not larger than {}", from.size),
            "a retap needs a larger thread; otherwise an insert or a new shell",
        ));
    }
    let (least, greatest) = minor_span(&to.size);
    let left = |minor: f64| mm(libm::fmax((to_mm(old) - minor) / 2.0, 0.0));
    let wall_left = match outside {
        None => None,
        Some(outside) => {
            let outside = ShaftDiameter::new(outside)
                .map_err(|e| e.within("outside of the shell"))?
                .length();
            if settled_cmp(outside, new) != core::cmp::Ordering::Greater {
                return Err(Error::new(
                    ErrorKind::Contradiction,
                    "outside of the shell",
                    in_mm(outside),
                    alloc::format!("the grooves of {} reach {}", to.size, in_mm(new)),
                    "measure the outside again; this shell cannot be recut so far",
                ));
            }
            Some((outside - new) / 2.0)
        }
    };
    Ok(Retap {
        from: from.size,
        to: to.size,
        hand: to.hand,
        hand_changes: from.hand != to.hand,
        stock_removed: (new - old) / 2.0,
        old_thread_left_min: left(greatest),
        old_thread_left_max: left(least),
        wall_left,
        caution: Retap::CAUTION,
    })
}

/// Sizes for a thread insert, each with its evidence; most are not published in any source at hand.
///
/// ```
/// use framegauge::thread::insert_sizes;
/// let insert = insert_sizes(&"M5x0.8".parse().unwrap()).unwrap();
/// assert!(insert.bush_outside.reason().contains("maker"));
/// ```
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct InsertSizes {
    /// The thread that the insert restores.
    pub restores: ThreadSize,
    /// Least bore before tapping for a coiled-wire insert.
    pub bore: Figure,
    /// Major diameter of the tap for a coiled-wire insert.
    pub tap_major: Figure,
    /// Outside size of a solid bush.
    pub bush_outside: Figure,
}

/// What is known of inserts for an ISO metric thread.
///
/// Coiled wire: the tapped thread has the pitch of the insert and a major diameter of D + 1.299 P, its least bore is
/// D + 0.2165 P; both are proportions from memory and graded so. Solid bushes have no published size here.
///
/// # Errors
/// `NotApplicable` for other forms.
///
/// ```
/// use framegauge::{Grade, thread::insert_sizes};
/// let insert = insert_sizes(&"M10x1".parse().unwrap()).unwrap();
/// assert_eq!(insert.tap_major.grade(), Some(Grade::Memory));
/// assert!(!insert.bush_outside.is_known());
/// ```
pub fn insert_sizes(restores: &ThreadSize) -> Result<InsertSizes, Error> {
    if restores.form() != ThreadForm::IsoMetric {
        return Err(Error::new(
            ErrorKind::NotApplicable,
            "thread form",
            restores,
            "nothing is known here of inserts for this form",
            "ask the maker of the insert",
        ));
    }
    let (d, p) = (to_mm(restores.major()), restores.pitch().to_mm());
    let figure = |value: f64, upper: bool| {
        let at = Some(mm(libm::round(value * 1e3) / 1e3));
        let span = if upper {
            Span::new(at, None, None)
        } else {
            Span::new(None, at, None)
        };
        span.map(|span| Figure::known(span, INSERT_PROPORTIONS.clone()))
    };
    Ok(InsertSizes {
        restores: *restores,
        bore: figure(d + 0.216_506 * p, false)?,
        tap_major: figure(d + 1.299_038 * p, true)?,
        bush_outside: Figure::unknown(
            "bushes differ by maker: ask for the outside thread or diameter and the wall it needs",
        ),
    })
}
