//! What frames are made to: sizes of the tables, as plain numbers in millimetres. Nothing here asks a planner.

use std::sync::LazyLock;

use framegauge::fit::MaterialKind;
use framegauge::standard::{
    BoreWindow, CrownSeat, HeadSeat, Hold, LocatedBy, Row, SeatKind, Seatpost, Shell, ShellWindow,
    Steerer, ThreadUse, ThreadedPart,
};
use framegauge::thread::{Hand, Member, Side, ThreadSize, limits_of_size, usual_class};
use framegauge::{Figure, Length, settled_mm};

/// A threaded or plain shell.
#[derive(Debug, Clone)]
pub struct ShellRow {
    pub code: &'static str,
    /// Pitch as a gauge names it.
    pub pitch: Option<String>,
    /// Minor diameter of the clean thread.
    pub minor: Option<f64>,
    /// Hands, drive side first.
    pub hands: [Option<&'static str>; 2],
    pub widths: Vec<f64>,
    /// Nominal bore and its limits.
    pub bore: Option<(f64, Option<(f64, f64)>)>,
    pub slip: bool,
    pub faced: bool,
    /// Width windows: code, least, most.
    pub windows: Vec<(&'static str, f64, f64)>,
}

/// A thread by its use.
#[derive(Debug, Clone)]
pub struct ThreadRow {
    pub code: &'static str,
    pub part: ThreadedPart,
    pub size: ThreadSize,
    /// Limits of the hole.
    pub hole: Option<(f64, f64)>,
}

pub struct Rows {
    pub threaded: Vec<ShellRow>,
    pub plain: Vec<ShellRow>,
    /// Code, least bore, greatest bore, integrated, least depth where one is printed.
    pub seats: Vec<(&'static str, f64, f64, bool, Option<f64>)>,
    pub posts: Vec<(&'static str, f64)>,
    /// Code, seat.
    pub crowns: Vec<(&'static str, f64)>,
    /// Code, diameter, pitch where it is threaded.
    pub steerers: Vec<(&'static str, f64, Option<String>)>,
    pub threads: Vec<ThreadRow>,
}

pub static ROWS: LazyLock<Rows> = LazyLock::new(rows);

fn nominal(figure: &Figure<Length>) -> Option<f64> {
    figure.nominal().map(settled_mm)
}

fn limits(figure: &Figure<Length>) -> Option<(f64, f64)> {
    Some((settled_mm(figure.lower()?), settled_mm(figure.upper()?)))
}

fn word(hand: Option<Hand>) -> Option<&'static str> {
    hand.map(|h| if h == Hand::Left { "left" } else { "right" })
}

fn shell(row: &'static Shell) -> ShellRow {
    let size = row.thread.as_ref().and_then(|t| t.value().copied());
    let window = BoreWindow::table()
        .iter()
        .find(|w| w.shell == row.code)
        .and_then(|w| limits(&w.window));
    ShellRow {
        code: &row.code,
        pitch: size.map(|s| s.pitch().to_string()),
        minor: row.minor_diameter.as_ref().and_then(nominal),
        hands: [word(row.hand(Side::Drive)), word(row.hand(Side::NonDrive))],
        widths: row.widths.iter().filter_map(nominal).collect(),
        bore: row.bore.as_ref().and_then(nominal).map(|b| (b, window)),
        slip: row.fit.as_ref().and_then(|f| f.value()) == Some(&Hold::Slip),
        faced: !matches!(
            row.located_by.value(),
            Some(LocatedBy::Groove | LocatedBy::Seat)
        ),
        windows: ShellWindow::table()
            .iter()
            .filter(|w| w.shell == row.code)
            .filter_map(|w| limits(&w.window).map(|(low, high)| (w.code.as_ref(), low, high)))
            .collect(),
    }
}

fn rows() -> Rows {
    let shells: Vec<ShellRow> = Shell::table()
        .iter()
        .map(shell)
        .filter(|s| !s.widths.is_empty())
        .collect();
    Rows {
        threaded: shells
            .iter()
            .filter(|s| s.pitch.is_some() && s.minor.is_some())
            .cloned()
            .collect(),
        plain: shells.into_iter().filter(|s| s.bore.is_some()).collect(),
        seats: HeadSeat::table()
            .iter()
            .filter_map(|s| {
                let (low, high) =
                    limits(&s.bore).or_else(|| nominal(&s.bore).map(|n| (n, n + 0.05)))?;
                {
                    let depth = s
                        .bore_depth
                        .as_ref()
                        .and_then(|d| d.lower().or_else(|| d.nominal()))
                        .map(settled_mm);
                    Some((
                        s.code.as_ref(),
                        low,
                        high,
                        s.kind == SeatKind::Integrated,
                        depth,
                    ))
                }
            })
            .collect(),
        posts: Seatpost::table()
            .iter()
            .filter_map(|p| Some((p.code.as_ref(), nominal(&p.diameter)?)))
            .collect(),
        crowns: CrownSeat::table()
            .iter()
            .filter_map(|c| Some((c.code.as_ref(), nominal(&c.seat)?)))
            .collect(),
        steerers: Steerer::table()
            .iter()
            .filter_map(|s| {
                let pitch = s
                    .thread
                    .as_ref()
                    .and_then(|t| t.value())
                    .map(|t| t.pitch().to_string());
                Some((s.code.as_ref(), nominal(&s.upper_diameter)?, pitch))
            })
            .collect(),
        threads: ThreadUse::table()
            .iter()
            .filter_map(|t| {
                let size = *t.thread.value()?;
                let hole = usual_class(&size, Member::Internal)
                    .and_then(|class| limits_of_size(&size, &class).ok())
                    .and_then(|l| {
                        Some((
                            settled_mm(l.minor.lower().known()?),
                            settled_mm(l.minor.upper().known()?),
                        ))
                    });
                Some(ThreadRow {
                    code: &t.code,
                    part: t.place,
                    size,
                    hole,
                })
            })
            .collect(),
    }
}

/// Whether a word of a sheet names a metal.
pub fn is_metal(word: &str) -> bool {
    word.parse::<MaterialKind>()
        .is_ok_and(MaterialKind::is_metal)
}

/// The hands that a pattern of a shell has by the tables, drive side first.
pub fn hands_of(code: &str) -> Option<[Option<&'static str>; 2]> {
    ROWS.threaded
        .iter()
        .find(|s| s.code == code)
        .map(|s| s.hands)
}

/// The hand of a use of threads by the tables.
pub fn use_hand(code: &str) -> Option<&'static str> {
    let row = ThreadUse::table().iter().find(|t| t.code == code)?;
    word(row.hand.as_ref().and_then(|h| h.value().copied()))
}

/// The uses of a thread of this size at a place of this kind: one pitch, and a major diameter within five hundredths.
pub fn uses(part: &str, size: &str) -> Vec<String> {
    let Ok(size) = size.parse::<ThreadSize>() else {
        return Vec::new();
    };
    let near = |row: &&ThreadRow| {
        row.size.pitch().same_as(size.pitch())
            && (settled_mm(row.size.major()) - settled_mm(size.major())).abs() <= 0.05
    };
    let here = ROWS.threads.iter().filter(|t| t.part.to_string() == part);
    let hands = here.filter(near).filter(|t| use_hand(t.code).is_some());
    hands.map(|t| t.code.to_owned()).collect()
}
