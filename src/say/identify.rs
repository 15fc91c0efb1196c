//! Which standard it is, in words.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;

use crate::evidence::Text;
use crate::identify::{
    Belief, Candidate, Doubt, DoubtKind, Exclusion, Feature, Identification, MayBe, Next, Note,
    Outcome, Standing, TakenFor, UNLISTED, listed,
};
use crate::measure::instrument;
use crate::quantity::{in_mm, settled_mm};

impl Feature {
    /// The feature in words for a person.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Bore => "bore",
            Self::MinorDiameter => "minor diameter of the female thread",
            Self::CrestDiameter => "diameter over the thread crests",
            Self::OutsideDiameter => "outside diameter",
            Self::LowerDiameter => "diameter at the crown",
            Self::SeatDiameter => "crown-race seat diameter",
            Self::PartOutside => "outside diameter of the cup or bearing",
            Self::Pitch => "pitch",
            Self::BoltSpacing => "bolt spacing",
            Self::PlaneHeight => "height of the mount plane",
            Self::FirstBolt => "position of the first bolt",
            Self::InnerFaces => "distance of the dropout faces",
            Self::OverLocknut => "hub width",
            Self::Slot => "slot width",
            Self::Width => "width",
            Self::HalfWidthDrive => "drive-side half width",
            Self::HalfWidthNonDrive => "non-drive-side half width",
            Self::Wall => "wall",
            Self::SeatAngle => "seat angle",
            Self::Threaded => "presence of a thread",
            Self::HandDrive => "hand on the drive side",
            Self::HandNonDrive => "hand on the non-drive side",
            Self::Hand => "hand",
        }
    }

    /// The unit of its size.
    const fn unit(self) -> &'static str {
        match self {
            Self::SeatAngle => "deg",
            _ => "mm",
        }
    }
}

/// How a person calls a row: by its code where that is what the trade says (`EC44`, `27.2`), else by its name.
fn called<'a>(code: &'a Text, name: &'a Text) -> &'a str {
    if code == UNLISTED {
        "something unlisted"
    } else if name.is_empty() || !code.contains(|c: char| c.is_ascii_lowercase()) {
        code
    } else {
        name
    }
}

/// Names in a row, `a or b or c`; more than six are counted.
fn list(names: &[&str], between: &str) -> String {
    let (shown, more) = names.split_at(names.len().min(6));
    let shown = shown.join(between);
    match more.len() {
        0 => shown,
        more => format!("{shown}{between}{more} more"),
    }
}

/// Why a candidate is out: "bore 34.200 against 33.900 to 33.950 mm".
impl fmt::Display for Exclusion {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.by.words())?;
        let Some(a) = &self.against else {
            return Ok(());
        };
        write!(f, " {:.3} against {:.3}", a.read, a.lower)?;
        if a.upper > a.lower {
            write!(f, " to {:.3}", a.upper)?;
        }
        write!(f, " {}", self.by.unit())?;
        f.write_str(if a.assumed {
            ", a spread assumed because no tolerance is printed"
        } else {
            ""
        })
    }
}

impl Next {
    /// What to measure, and with which instrument.
    fn asked(&self) -> String {
        let tool = self.instrument.as_deref();
        let tool = tool.map(|code| instrument(code).map_or(code, |tool| &tool.name));
        let tool = tool.map_or_else(String::new, |tool| format!(" ({tool})"));
        format!("measure the {}{tool}", self.measure.words())
    }
}

impl Identification {
    /// The answer in a sentence or two.
    ///
    /// ```
    /// use framegauge::{identify::{Observation, Options, identify}, standard::Place};
    /// let seen = [Observation::read("outside_diameter", "27.2 +/- 0.02 mm").unwrap()];
    /// let answer = identify(Place::Seatpost, &seen, &Options::default()).unwrap();
    /// assert!(answer.words().starts_with("This is 27.2"));
    /// ```
    #[must_use]
    pub fn words(&self) -> String {
        self.to_string()
    }

    /// How a person calls these rows.
    fn names(&self, codes: &[Text]) -> String {
        let name = |code: &Text| match self.candidate(code) {
            Some(candidate) => called(&candidate.code, &candidate.name).to_string(),
            None => code.to_string(),
        };
        let names: Vec<String> = codes.iter().map(name).collect();
        list(
            &names.iter().map(String::as_str).collect::<Vec<_>>(),
            " or ",
        )
    }

    /// The candidate that was excluded by least.
    fn nearest(&self) -> Option<(&Candidate, &Exclusion)> {
        let excluded = self.candidates.iter().filter_map(|c| match &c.standing {
            Standing::Excluded(e) => Some((c, e, e.against?.distance_in_u)),
            Standing::Possible | Standing::Untested => None,
        });
        let nearest = excluded.min_by(|a, b| a.2.total_cmp(&b.2));
        nearest.map(|(candidate, why, _)| (candidate, why))
    }

    fn outcome_words(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let next = || self.next.first().map(Next::asked);
        match &self.outcome {
            Outcome::Identified { code } => {
                write!(f, "This is {}", self.names(core::slice::from_ref(code)))?;
                if let Some(feature) = self.decided_by.and_then(|d| d.feature) {
                    write!(f, "; the {} rules out the others", feature.words())?;
                }
                f.write_str(".")
            }
            Outcome::Ambiguous { between } => {
                write!(f, "This can be {}", self.names(between))?;
                if self.interchange {
                    f.write_str(": they interchange, so it does not matter which")?;
                } else if self.inseparable {
                    f.write_str("; they cannot be separated with these tools")?;
                } else if let Some(next) = next() {
                    write!(f, "; next {next}")?;
                }
                f.write_str(".")
            }
            Outcome::Unlisted => {
                write!(f, "No listed {} has these sizes", listed(&self.place))?;
                if let Some((candidate, why)) = self.nearest() {
                    write!(
                        f,
                        "; the nearest is {}, ruled out by the {why}",
                        called(&candidate.code, &candidate.name)
                    )?;
                }
                let open = |c: &&Candidate| c.standing == Standing::Untested && c.code != UNLISTED;
                let untested: Vec<&str> = self
                    .candidates
                    .iter()
                    .filter(open)
                    .map(|c| called(&c.code, &c.name))
                    .collect();
                if !untested.is_empty() {
                    let untested = list(&untested, "; ");
                    write!(
                        f,
                        ". Not compared, because the figure is not published: {untested}"
                    )?;
                }
                f.write_str(".")
            }
            Outcome::CannotTell if !self.doubts.is_empty() => {
                let doubts: Vec<String> = self.doubts.iter().map(Doubt::to_string).collect();
                write!(f, "This cannot be told yet: {}", doubts.join(" Also, "))
            }
            Outcome::CannotTell => {
                f.write_str("This cannot be told yet")?;
                if let Some(next) = next() {
                    write!(f, "; next {next}")?;
                }
                f.write_str(".")
            }
        }
    }
}

impl fmt::Display for Identification {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.outcome_words(f)?;
        let believed = self.names(&self.believed);
        match self.belief {
            Some(Belief::Contradicted) => {
                write!(
                    f,
                    " It was taken for {believed}: the readings contradict that"
                )?;
                let candidates = self.believed.iter().filter_map(|code| self.candidate(code));
                let mut whys = candidates.filter_map(|c| match &c.standing {
                    Standing::Excluded(why) => Some(why),
                    Standing::Possible | Standing::Untested => None,
                });
                if let Some(why) = whys.next() {
                    write!(f, " ({why})")?;
                }
                f.write_str(".")
            }
            Some(Belief::Confirmed) => {
                write!(
                    f,
                    " The readings confirm what it was taken for, {believed}."
                )
            }
            Some(Belief::NotTested) => {
                write!(f, " The readings do not tell whether it is {believed}.")
            }
            None => Ok(()),
        }
    }
}

impl Doubt {
    /// The doubt in a sentence.
    #[must_use]
    pub fn words(&self) -> String {
        self.to_string()
    }
}

impl fmt::Display for Doubt {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (of, unit) = (self.about.words(), self.about.unit());
        match &self.kind {
            DoubtKind::Scatter { count, low, high } => write!(
                f,
                "{count} readings of the {of} spread over {:.3} {unit} ({low:.3} to {high:.3}), more than their uncertainties allow: that is no size. {}",
                high - low,
                match self.about {
                    Feature::Pitch => "Lay the gauge over six threads or more and take one leaf.",
                    _ =>
                        "Look for burrs, paint, a pinched slot or an oval, then measure at two depths and two angles at least.",
                }
            ),
            DoubtKind::Implausible {
                read,
                low,
                high,
                may_be,
            } => {
                write!(
                    f,
                    "the {of} of {read:.3} {unit} lies outside what the tables span, {low:.2} to {high:.2}. "
                )?;
                let may_be: Vec<String> = may_be.iter().map(MayBe::to_string).collect();
                if may_be.is_empty() {
                    f.write_str("Check what was measured, and the unit.")
                } else {
                    write!(f, "It may be {}.", may_be.join(", or "))
                }
            }
        }
    }
}

impl fmt::Display for MayBe {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let row = called(&self.code, &self.name);
        let Self { what, read, .. } = self;
        let slip = match what {
            TakenFor::SteererBore => return write!(f, "the bore of the steerer ({row})"),
            TakenFor::SteererOutside => return write!(f, "the outside of the steerer ({row})"),
            TakenFor::HeadTubeBore => return write!(f, "the bore of the head tube ({row})"),
            TakenFor::CrownSeat => return write!(f, "the crown-race seat ({row})"),
            TakenFor::ShellWidth => return write!(f, "the width of the shell ({row})"),
            TakenFor::ShellBore => return write!(f, "the bore of the shell ({row})"),
            TakenFor::HubWidth => return write!(f, "the hub width ({row})"),
            TakenFor::DropoutFaces => {
                return write!(f, "the distance of the dropout faces ({row})");
            }
            TakenFor::Radius => "a radius given as a diameter",
            TakenFor::Circumference => "a circumference given as a diameter",
            TakenFor::Inches => "inches read as millimetres",
            TakenFor::Millimetres => "millimetres read as inches",
        };
        write!(f, "{slip} ({read:.2} mm would be {row})")
    }
}

impl fmt::Display for Note {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::HandOpen => f.write_str(
                "The candidates differ in hand: until the hand is known, put no force on the part in either direction.",
            ),
            Self::NameOfSeveral { codes, names } => {
                let rows = codes.iter().zip(names);
                let rows: Vec<&str> = rows.map(|(code, name)| called(code, name)).collect();
                let rows = list(&rows, " or ");
                write!(f, "The name stands for {rows}: the readings decide, not the name.")
            }
            Self::WorkedOut { of, size, to_ream } => write!(
                f,
                "The {} of {} was worked out from other readings{}.",
                of.words(),
                in_mm(*size),
                if *to_ream { "; the tube is taken as still to be reamed" } else { "" }
            ),
            Self::PaintOnTube { outside, bare } => {
                let (outside, bare) = (settled_mm(*outside), settled_mm(*bare));
                let over = outside - bare;
                write!(
                    f,
                    "{outside:.2} mm outside is {bare:.1} mm and {over:.2} mm more: paint of {:.3} mm a side would explain it.",
                    over / 2.0
                )
            }
            Self::WallLeft { post, wall, read } => write!(
                f,
                "A {:.1} mm bore would leave a wall of {:.2} mm, against {:.2} mm: a sleeve, a bulge or another tube. A part that goes in does not prove the size; check the bore for roundness.",
                settled_mm(*post),
                settled_mm(*wall),
                settled_mm(*read)
            ),
            Self::StampedLow { code } => write!(
                f,
                "Posts stamped 27.2 were read at 27.03 to 27.18: look for a stamp, it may say {code}."
            ),
        }
    }
}
