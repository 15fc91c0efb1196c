//! Makers' limits as a sheet writes them: a closed word, a span, an owner.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::words::Limited;
use crate::ErrorKind;
use crate::evidence::Grade;
use crate::measure::{Bound, Limits, settled_cmp};
use crate::plan::CommonFact;
use crate::quantity::Length;
use crate::read::{Context, Read, ReadBy, Shape, Tree, form};

/// A limit written by a frame or component maker.
#[derive(Debug, Clone, PartialEq)]
pub struct MakerLimit {
    /// What it limits.
    pub what: Limited,
    /// The limit.
    pub limits: Limits,
    /// Who wrote it, and where.
    pub owner: String,
}

form! {
    /// A limit as it is written.
    WrittenLimit {
        /// What it limits: a word of the list for this place.
        what: String,
        /// At least this.
        lower: Option<Length>,
        /// At most this.
        upper: Option<Length>,
        /// Both, in one text: `27.1 to 27.3 mm`, `at most 27.2 mm`.
        limits: Option<Limits>,
        /// Who wrote it, and where.
        owner: String,
    }
}

/// The closed words of a place.
trait Allowed {
    const WORDS: &'static [Limited];
}

macro_rules! allowed {
    ($( $(#[$doc:meta])* $name:ident { $($word:ident),* } )*) => {$(
        $(#[$doc])*
        #[derive(Debug, Clone, Copy)]
        pub(crate) struct $name;
        impl Allowed for $name {
            const WORDS: &'static [Limited] = &[$(Limited::$word),*];
        }
        impl ReadBy<Vec<MakerLimit>> for $name {
            const SHAPE: Shape = Shape::List(&WrittenLimit::SHAPE);
            const NEEDED: bool = false;
            fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Vec<MakerLimit>> {
                limits::<Self>(tree, context)
            }
            fn absent() -> Option<Vec<MakerLimit>> {
                Some(Vec::new())
            }
        }
    )*};
}

allowed! {
    /// Limits of a seat tube.
    SeatTubeLimits { Bore, Wall, Insertion, Depth, Clearance }
    /// Limits of a shell.
    ShellLimits { Bore, Width, Wall, Interference, Parallelism }
    /// Limits of a head-tube end.
    HeadLimits { Bore, Wall, Interference, Clearance, BoreDepth, CrownGap, Parallelism }
    /// Limits of a face.
    FaceLimits { Depth, Squareness }
    /// Limits of a crown-race seat.
    CrownLimits { Seat, Interference }
    /// Limits of a steerer.
    SteererLimits { Length }
    /// Limits of a thread.
    ThreadLimits { Minor, Depth }
    /// Limits of a brake mount.
    MountLimits { Depth, Thickness, Squareness }
    /// A place where nothing is cut.
    OtherLimits { Depth, Thickness }
}

fn limits<A: Allowed>(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Vec<MakerLimit>> {
    let Tree::List(list) = tree else {
        return context.expected(
            tree,
            "a list of limits, such as `[{ what = \"depth\", upper = \"0.2 mm\", owner = \"frame maker, drawing 7\" }]`",
        );
    };
    let mut out: Vec<MakerLimit> = Vec::with_capacity(list.len());
    for (index, item) in list.iter().enumerate() {
        out.extend(context.item(index, |context| limit::<A>(item, context)));
    }
    if out.len() < list.len() {
        return None;
    }
    against_each_other(&out, context)?;
    Some(out)
}

fn limit<A: Allowed>(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<MakerLimit> {
    let written = WrittenLimit::read(tree, context)?;
    let said = written
        .what
        .trim()
        .to_ascii_lowercase()
        .replace([' ', '-'], "_");
    let Some(what) = A::WORDS.iter().find(|word| <&str>::from(**word) == said) else {
        let known: Vec<&str> = A::WORDS.iter().map(<&str>::from).collect();
        context.not_accepted(
            ("what", ErrorKind::UnknownName, &written.what),
            "nothing of this name can be limited here",
            format!("one of {}", known.join(", ")),
        );
        return None;
    };
    if written.owner.trim().is_empty() {
        context.not_accepted(
            ("owner", ErrorKind::Missing, &""),
            "a maker's limit says who wrote it",
            "name the owner and the place: `frame maker, drawing 7`",
        );
        return None;
    }
    let bound = |side: Option<Length>| side.map_or(Bound::Open, Bound::At);
    let limits = match (written.limits, written.lower, written.upper) {
        (Some(limits), None, None) => limits,
        (None, None, None) => {
            let remedy = "write `lower`, `upper` or both, or `limits`";
            context.not_accepted(
                ("", ErrorKind::Missing, &""),
                "a limit without a value",
                remedy,
            );
            return None;
        }
        (Some(_), ..) => {
            context.not_accepted(
                ("", ErrorKind::Contradiction, &""),
                "`limits` states both ends already",
                "leave `lower` and `upper` out",
            );
            return None;
        }
        (None, lower, upper) => {
            context.keep(Limits::new(bound(lower), bound(upper), Grade::Shop))?
        }
    };
    for end in [limits.lower(), limits.upper()] {
        context.keep(crate::quantity::not_negative(
            "",
            end.known().unwrap_or_default(),
        ))?;
    }
    let (what, owner) = (*what, written.owner);
    Some(MakerLimit {
        what,
        limits,
        owner,
    })
}

/// Two limits of one kind that no size can meet together.
fn against_each_other(limits: &[MakerLimit], context: &mut Context<'_>) -> Option<()> {
    let apart = |a: &MakerLimit, b: &MakerLimit| {
        let (high, low) = (a.limits.upper().known(), b.limits.lower().known());
        high.zip(low)
            .is_some_and(|(high, low)| settled_cmp(low, high).is_gt())
    };
    for (index, one) in limits.iter().enumerate() {
        let mut others = limits.iter().skip(index + 1).filter(|o| o.what == one.what);
        if let Some(other) = others.find(|other| apart(one, other) || apart(other, one)) {
            let (what, by, and) = (one.what, &one.owner, &other.owner);
            context.not_accepted(
                (
                    "",
                    ErrorKind::Contradiction,
                    &format!("{} and {}", one.limits, other.limits),
                ),
                format!("the limits of {what} by {by} and by {and} cannot both be met"),
                "ask which of the two holds, and leave the other out",
            );
            return None;
        }
    }
    Some(())
}

/// The makers' limits of one kind at a place, together: the tightest of each side, with whose it is.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Heard {
    /// What they limit.
    pub on: Limited,
    /// The tightest of all.
    pub limits: Limits,
    /// Whose the lower one is.
    pub lower_owner: String,
    /// Whose the upper one is.
    pub upper_owner: String,
}

impl Heard {
    /// What was heard of this kind; `None` where nobody limits it.
    pub(crate) fn of(limits: &[MakerLimit], what: Limited) -> Option<Self> {
        let here = || limits.iter().filter(|l| l.what == what);
        let lowers = here().filter_map(|l| Some((l.limits.lower().known()?, &l.owner)));
        let uppers = here().filter_map(|l| Some((l.limits.upper().known()?, &l.owner)));
        // Of two equal ones the first speaks.
        let lower = lowers.reduce(|best, next| {
            if settled_cmp(next.0, best.0).is_gt() {
                next
            } else {
                best
            }
        });
        let upper = uppers.reduce(|best, next| {
            if settled_cmp(next.0, best.0).is_lt() {
                next
            } else {
                best
            }
        });
        lower.or(upper)?;
        let bound =
            |side: Option<(Length, &String)>| side.map_or(Bound::Open, |(at, _)| Bound::At(at));
        Some(Self {
            on: what,
            limits: Limits::new(bound(lower), bound(upper), Grade::Shop).ok()?,
            lower_owner: lower.map(|(_, owner)| owner.clone()).unwrap_or_default(),
            upper_owner: upper.map(|(_, owner)| owner.clone()).unwrap_or_default(),
        })
    }

    /// Whose the limits are, both sides.
    pub(crate) fn owner(&self) -> String {
        match (self.lower_owner.as_str(), self.upper_owner.as_str()) {
            ("", one) | (one, "") => one.to_string(),
            (one, other) if one == other => one.to_string(),
            (one, other) => format!("{one}; {other}"),
        }
    }

    /// The upper limit, as a stop.
    pub(crate) fn most(&self) -> Option<(Length, CommonFact)> {
        let most = self.limits.upper().known()?;
        let (on, by) = (self.on, self.upper_owner.clone());
        Some((most, CommonFact::AtMost { on, most, by }))
    }

    /// The lower limit, as a stop.
    pub(crate) fn least(&self) -> Option<(Length, CommonFact)> {
        let least = self.limits.lower().known()?;
        let (on, by) = (self.on, self.lower_owner.clone());
        Some((least, CommonFact::AtLeast { on, least, by }))
    }
}
