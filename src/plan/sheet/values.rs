//! Values that only a sheet has: lengths above zero, heights at their places, the version of the form.

use alloc::borrow::ToOwned;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use crate::ErrorKind;
use crate::measure::{Reading, Spot, Surface};
use crate::quantity::{Angle, Length, parse_length, positive};
use crate::read::{Context, Read, ReadBy, Shape, Tree, reading, text, text_shape};

/// The form of the sheet that this library reads.
pub const SHEET_FORMAT: u32 = 1;

/// A length above zero, where it is stated.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Size;

impl ReadBy<Option<Length>> for Size {
    const SHAPE: Shape = Length::SHAPE;
    const NEEDED: bool = false;
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Option<Length>> {
        if matches!(tree, Tree::Null) {
            return Some(None);
        }
        let said = text(tree, "a text with a unit, such as \"27.2 mm\"", context)?;
        let length = context.keep(parse_length(said))?;
        context.keep(positive("", length)).map(Some)
    }
    fn absent() -> Option<Option<Length>> {
        Some(None)
    }
}

/// A text that says something, where one is stated.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Said;

impl ReadBy<Option<String>> for Said {
    const SHAPE: Shape = String::SHAPE;
    const NEEDED: bool = false;
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Option<String>> {
        match tree {
            Tree::Null => Some(None),
            _ => text(tree, "a text", context)
                .map(|said| Some(said.trim().to_owned()).filter(|said| !said.is_empty())),
        }
    }
    fn absent() -> Option<Option<String>> {
        Some(None)
    }
}

/// The name of the frame.
#[derive(Debug, Clone, Copy)]
pub(crate) struct FrameName;

impl ReadBy<String> for FrameName {
    const SHAPE: Shape = String::SHAPE;
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<String> {
        let name = text(tree, "which frame it is", context)?.trim().to_owned();
        if name.is_empty() {
            let problem = "the sheet does not say which frame it is";
            context.not_accepted(
                ("", ErrorKind::Missing, &""),
                problem,
                "write a name or number",
            );
            return None;
        }
        Some(name)
    }
}

/// The name of a file beside the sheet.
#[derive(Debug, Clone, Copy)]
pub(crate) struct FileName;

impl ReadBy<String> for FileName {
    const SHAPE: Shape = String::SHAPE;
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<String> {
        let name = text(tree, "the name of a file", context)?.trim().to_owned();
        let steps = || name.split(['/', '\\']);
        // A sheet that comes from elsewhere names no file outside its own folder.
        let outside = name.contains(':') || steps().any(|step| matches!(step, "" | "." | ".."));
        if outside {
            let problem = "no file beside the sheet";
            let remedy = "write e.g. `seat_tube_before.jpg`";
            context.not_accepted(("", ErrorKind::Text, &name), problem, remedy);
            return None;
        }
        Some(name)
    }
}

/// The version of the form.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Format;

impl ReadBy<u32> for Format {
    const SHAPE: Shape = Shape::Count;
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<u32> {
        let format = u32::read(tree, context)?;
        if format != SHEET_FORMAT {
            let remedy = format!("this library reads format {SHEET_FORMAT}");
            context.not_accepted(
                ("", ErrorKind::OutOfRange, &format),
                "a sheet of another version",
                remedy,
            );
            return None;
        }
        Some(format)
    }
}

/// A height on a face, along the pilot, positive outwards.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FacePoint {
    /// Direction, clockwise from twelve o'clock, seen from outside.
    pub at: Angle,
    /// Height.
    pub height: Reading,
    /// What it lies on.
    pub surface: Surface,
}

/// A height on a brake mount, along the cutter's pilot, positive outwards.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MountPoint {
    /// Along the mount.
    pub along: Length,
    /// Across the mount: towards the wheel is positive.
    pub across: Length,
    /// Height.
    pub height: Reading,
    /// What it lies on.
    pub surface: Surface,
}

/// A height with its place before a colon.
fn height(tree: &Tree<'_>, example: &str, context: &mut Context<'_>) -> Option<(Spot, Reading)> {
    let line = text(tree, &format!("a text such as \"{example}\""), context)?;
    let (spot, size) = context.keep(Spot::before(line))?;
    let named = context.instruments.height.clone();
    Some((spot, reading(size, "height", named, context)?))
}

fn placeless<T>(problem: &'static str, example: &str, context: &mut Context<'_>) -> Option<T> {
    context.not_accepted(
        ("", ErrorKind::Missing, &""),
        problem,
        format!("write e.g. `{example}`"),
    );
    None
}

impl Read for FacePoint {
    const SHAPE: Shape = text_shape! {
        /// a height with its direction, such as `45 deg: 0.03 mm`; outwards positive, clockwise from twelve o'clock seen from outside
    };
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Self> {
        const EXAMPLE: &str = "45 deg: 0.03 mm";
        let (spot, height) = height(tree, EXAMPLE, context)?;
        let Some(at) = spot.angle else {
            return placeless("a height on a face without its angle", EXAMPLE, context);
        };
        let surface = spot.surface;
        Some(Self {
            at,
            height,
            surface,
        })
    }
}

impl Read for MountPoint {
    const SHAPE: Shape = text_shape! {
        /// a height with its place, such as `10 mm along, 5 mm across: 0.03 mm`; outwards positive, across towards the wheel
    };
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Self> {
        const EXAMPLE: &str = "10 mm along, 5 mm across: 0.03 mm";
        let (spot, height) = height(tree, EXAMPLE, context)?;
        let (Some(along), Some(across)) = (spot.along, spot.across) else {
            return placeless("a height on a mount without its place", EXAMPLE, context);
        };
        let surface = spot.surface;
        Some(Self {
            along,
            across,
            height,
            surface,
        })
    }
}

/// Named things of a frame, such as its bosses.
pub type Named<T> = Vec<(String, T)>;
