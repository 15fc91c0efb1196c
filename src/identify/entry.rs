//! Rows of every family seen alike: a code, variants, and which rows belong to which kind.

use alloc::borrow::Cow;

use super::Options;
use super::kind::Kind;
use crate::evidence::{Fact, Text};
use crate::measure::settled_cmp;
use crate::quantity::{Length, mm, to_mm};
use crate::standard::{
    Axle, BrakeMount, CrownSeat, End, HeadSeat, Row, Seatpost, Shell, Steerer, ThreadUse,
    ThreadedPart,
};
use crate::thread::{Hand, ThreadForm, ThreadSize};

/// The row that the post mounts by rotor size take their bolt spacing from, as their notes say.
pub(super) const POST_MOUNT: &str = "pm";

/// A row of any family.
#[derive(Debug, Clone, Copy)]
pub(super) enum Entry<'a> {
    Shell(&'a Shell),
    Head(&'a HeadSeat),
    Crown(&'a CrownSeat),
    Steerer(&'a Steerer),
    Post(&'a Seatpost),
    Thread(&'a ThreadUse),
    Mount(&'a BrakeMount),
    Axle(&'a Axle),
    /// A bare size that the caller wants weighed too.
    Size(&'a ThreadSize),
}

fn known<V: Clone>(fact: Option<&Fact<V>>) -> Option<&V> {
    fact.and_then(Fact::value)
}

/// A candidate that is left, with its weight beside the others.
#[derive(Debug, Clone, Copy)]
pub(super) struct Left<'a> {
    pub entry: Entry<'a>,
    pub variant: usize,
    pub weight: f64,
}

impl<'a> Entry<'a> {
    pub fn code(self) -> Text {
        match self {
            Self::Shell(row) => row.code.clone(),
            Self::Head(row) => row.code.clone(),
            Self::Crown(row) => row.code.clone(),
            Self::Steerer(row) => row.code.clone(),
            Self::Post(row) => row.code.clone(),
            Self::Thread(row) => row.code.clone(),
            Self::Mount(row) => row.code.clone(),
            Self::Axle(row) => row.code.clone(),
            Self::Size(size) => Cow::Owned(alloc::format!("{size}")),
        }
    }

    pub fn name(self) -> Text {
        match self {
            Self::Shell(row) => row.name.clone(),
            Self::Head(row) => row.name.clone(),
            Self::Crown(row) => row.name.clone(),
            Self::Steerer(row) => row.name.clone(),
            Self::Post(row) => row.code.clone(),
            Self::Thread(row) => row.name.clone(),
            Self::Mount(row) => row.name.clone(),
            Self::Axle(row) => row.name.clone(),
            Self::Size(_) => self.code(),
        }
    }

    /// Whether a name means this row: code or alias, whatever the letter case.
    pub fn is_called(self, name: &str) -> bool {
        let same = |held: &str| held.eq_ignore_ascii_case(name);
        match self {
            Self::Shell(row) => same(&row.code) || row.aliases.iter().any(|a| same(a)),
            Self::Post(row) => {
                same(&row.code) || name.strip_suffix("mm").is_some_and(|n| same_number(n, row))
            }
            _ => same(&self.code()),
        }
    }

    /// Whether the code, an alias or the name begins with these words: a trade name that covers several rows.
    pub fn begins_with(self, name: &str) -> bool {
        let starts = |held: &str| {
            held.get(..name.len())
                .is_some_and(|head| head.eq_ignore_ascii_case(name))
        };
        match self {
            Self::Shell(row) => {
                starts(&row.code) || starts(&row.name) || row.aliases.iter().any(|a| starts(a))
            }
            _ => starts(&self.code()) || starts(&self.name()),
        }
    }

    /// The thread of this row; axles have one a variant.
    pub fn thread(self, variant: usize) -> Option<&'a ThreadSize> {
        match self {
            Self::Shell(row) => known(row.thread.as_ref()),
            Self::Steerer(row) => known(row.thread.as_ref()),
            Self::Thread(row) => row.thread.value(),
            Self::Mount(row) => known(row.bolt.as_ref()),
            Self::Axle(row) => row.threads.get(variant).and_then(Fact::value),
            Self::Size(size) => Some(size),
            Self::Head(_) | Self::Crown(_) | Self::Post(_) => None,
        }
    }

    /// Whether it has a thread; `None` when nothing says so.
    pub fn is_threaded(self) -> Option<bool> {
        match self {
            Self::Shell(row) => {
                if row.thread.is_some() {
                    Some(true)
                } else {
                    row.bore.is_some().then_some(false)
                }
            }
            Self::Steerer(row) => Some(row.thread.is_some()),
            Self::Thread(_) | Self::Size(_) => Some(true),
            Self::Axle(row) => (!row.threads.is_empty()).then_some(true),
            Self::Mount(_) => None,
            Self::Head(_) | Self::Crown(_) | Self::Post(_) => Some(false),
        }
    }

    /// How many alternatives the row lists: widths of a shell, threads of an axle, crown seats of a steerer.
    pub fn variants(self) -> usize {
        let many = match self {
            Self::Shell(row) => row.widths.len(),
            Self::Axle(row) => row.threads.len(),
            Self::Steerer(row) => row.crown_seat.len(),
            _ => 1,
        };
        many.max(1)
    }

    /// Nominal width of a variant, for shells.
    pub fn width(self, variant: usize) -> Option<Length> {
        match self {
            Self::Shell(row) => row.widths.get(variant)?.nominal(),
            _ => None,
        }
    }

    /// The stated hands: drive side, non-drive side, or the only one.
    pub fn hands(self) -> Hands<'a> {
        match self {
            Self::Shell(row) => Hands {
                drive: row.hand_drive.as_ref(),
                non_drive: row.hand_non_drive.as_ref(),
                only: None,
            },
            Self::Thread(row) => Hands {
                drive: row.hand_right.as_ref(),
                non_drive: row.hand_left.as_ref(),
                only: row.hand.as_ref(),
            },
            _ => Hands::default(),
        }
    }

    /// Whether parts of one serve the other: the same bore, or the same thread by pitch and pitch diameter.
    pub fn interchanges(self, other: Self) -> bool {
        if let (Self::Head(a), Self::Head(b)) = (self, other) {
            return a.same_bore_as.contains(&b.code) || b.same_bore_as.contains(&a.code);
        }
        let (Some(a), Some(b)) = (self.thread(0), other.thread(0)) else {
            return false;
        };
        let clash = |a: Option<&Fact<Hand>>, b: Option<&Fact<Hand>>| matches!((known(a), known(b)), (Some(a), Some(b)) if a != b);
        let (ha, hb) = (self.hands(), other.hands());
        if clash(ha.drive, hb.drive) || clash(ha.non_drive, hb.non_drive) || clash(ha.only, hb.only)
        {
            return false;
        }
        match (pitch_diameter(self, a), pitch_diameter(other, b)) {
            // 0.01 mm: the pitch diameters of the two 1.37 in threads, which interchange by the scope of ISO 6696,
            // differ by less; the next pair of one pitch by far more.
            (Some(da), Some(db)) => a.pitch().same_as(b.pitch()) && libm::fabs(da - db) <= 0.01,
            _ => a == b,
        }
    }
}

/// Pitch diameter in mm: the printed figure, else the basic one of the form.
fn pitch_diameter(entry: Entry<'_>, thread: &ThreadSize) -> Option<f64> {
    let printed = match entry {
        Entry::Shell(row) => row.pitch_diameter.as_ref(),
        Entry::Thread(row) => row.pitch_diameter.as_ref(),
        _ => None,
    };
    if let Some(figure) = printed.and_then(crate::Figure::nominal) {
        return Some(to_mm(figure));
    }
    let depth = match thread.form() {
        ThreadForm::IsoMetric | ThreadForm::IsoInch | ThreadForm::Unified => 0.649_519,
        ThreadForm::Bsc => 0.532_7,
        ThreadForm::Whitworth => 0.640_327,
        ThreadForm::Unknown => return None,
    };
    Some(to_mm(thread.major()) - depth * thread.pitch().to_mm())
}

fn same_number(text: &str, row: &Seatpost) -> bool {
    crate::decimal(text.trim()).is_ok_and(|n| {
        row.diameter
            .nominal()
            .is_some_and(|d| settled_cmp(d, mm(n)).is_eq())
    })
}

/// The stated hands of a row.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Hands<'a> {
    pub drive: Option<&'a Fact<Hand>>,
    pub non_drive: Option<&'a Fact<Hand>>,
    pub only: Option<&'a Fact<Hand>>,
}

fn ours_and_theirs<R: Row>(theirs: &[R]) -> impl Iterator<Item = &R> {
    R::table().iter().chain(theirs)
}

fn end_fits(asked: End, row: End) -> bool {
    asked == End::Both || row == End::Both || asked == row
}

/// Calls `visit` with every row of a kind: ours first, then the shop's, then the sizes that the caller adds.
pub(super) fn every<'a>(
    kind: Kind,
    options: &Options<'a>,
    heights_read: bool,
    visit: &mut dyn FnMut(Entry<'a>),
) {
    let shop = options.shop;
    macro_rules! theirs {
        ($family:ident) => {
            shop.map_or(&[][..], |s| s.$family.as_slice())
        };
    }
    let thread_use = |places: &[ThreadedPart], visit: &mut dyn FnMut(Entry<'a>)| {
        ours_and_theirs(theirs!(thread_use))
            .filter(|row| places.contains(&row.place))
            .for_each(|row| visit(Entry::Thread(row)));
    };
    match kind {
        Kind::Shell => {
            ours_and_theirs(theirs!(shell)).for_each(|row| visit(Entry::Shell(row)));
        }
        Kind::HeadTube => {
            ours_and_theirs(theirs!(head_seat)).for_each(|row| visit(Entry::Head(row)));
        }
        Kind::Crown => {
            ours_and_theirs(theirs!(crown_seat)).for_each(|row| visit(Entry::Crown(row)));
        }
        Kind::Steerer => {
            ours_and_theirs(theirs!(steerer)).for_each(|row| visit(Entry::Steerer(row)));
        }
        Kind::SeatTube | Kind::Seatpost => {
            ours_and_theirs(theirs!(seatpost)).for_each(|row| visit(Entry::Post(row)));
        }
        Kind::Axle => thread_use(&[ThreadedPart::Axle], visit),
        Kind::Hanger => thread_use(&[ThreadedPart::Hanger, ThreadedPart::HangerBolt], visit),
        Kind::Pedal => thread_use(&[ThreadedPart::Pedal], visit),
        Kind::Brake(end) => ours_and_theirs(theirs!(brake_mount))
            // The rows by rotor size say the same as the plain post mount until a height is read, and more after it.
            .filter(|row| {
                let kept = if heights_read {
                    row.code != POST_MOUNT
                } else {
                    row.bolt_spacing.is_some()
                };
                kept && end_fits(end, row.end)
            })
            .for_each(|row| visit(Entry::Mount(row))),
        Kind::Dropout(end) => ours_and_theirs(theirs!(axle))
            .filter(|row| end_fits(end, row.end.value().copied().unwrap_or(End::Both)))
            .for_each(|row| visit(Entry::Axle(row))),
        Kind::Thread => any_thread(options, visit),
    }
    if kind.is_thread() || kind == Kind::Shell || kind == Kind::Steerer {
        options
            .also
            .iter()
            .for_each(|size| visit(Entry::Size(size)));
    }
}

/// Every thread once: many places share one size, and the first stands for them.
fn any_thread<'a>(options: &Options<'a>, visit: &mut dyn FnMut(Entry<'a>)) {
    let shop = options.shop;
    let all = || {
        let uses = ours_and_theirs(shop.map_or(&[][..], |s| s.thread_use.as_slice()));
        let shells = ours_and_theirs(shop.map_or(&[][..], |s| s.shell.as_slice()));
        let steerers = ours_and_theirs(shop.map_or(&[][..], |s| s.steerer.as_slice()));
        uses.map(Entry::Thread)
            .chain(shells.map(Entry::Shell))
            .chain(steerers.map(Entry::Steerer))
            .filter(|entry| entry.thread(0).is_some())
    };
    for (index, entry) in all().enumerate() {
        let met = all().take(index).any(|earlier| {
            let (a, b) = (earlier.hands(), entry.hands());
            let value = |fact: Option<&'a Fact<Hand>>| known(fact).copied();
            earlier.thread(0) == entry.thread(0)
                && value(a.drive) == value(b.drive)
                && value(a.non_drive) == value(b.non_drive)
                && value(a.only) == value(b.only)
        });
        if !met {
            visit(entry);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Entry, pitch_diameter};
    use crate::thread::Designation;

    /// Basic pitch diameters as ISO 724 prints them for M8 x 1.25 and M10 x 1.
    #[test]
    fn pitch_diameters_of_metric_threads() {
        for (name, printed) in [("M8x1.25", 7.188), ("M10x1", 9.350)] {
            let size = name.parse::<Designation>().unwrap().size;
            let got = pitch_diameter(Entry::Size(&size), &size).unwrap();
            assert!((got - printed).abs() < 6e-4, "{name}: {got}");
        }
    }
}
