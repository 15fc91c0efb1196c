//! The whole sheet: everything measured and seen on one frame.

use alloc::collections::BTreeMap;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::places::{
    BrakeSheet, CrownSheet, HeadEndSheet, OtherSheet, Photo, SeatTubeSheet, ShellSheet,
    SteererSheet, ThreadSheet,
};
use super::values::{Format, FrameName, Named, Said};
use crate::fit::MaterialKind;
use crate::measure::DecisionRule;
use crate::read::{Context, Given, Instruments, Listed, Read, ReadBy, Shape, Tree, form};
use crate::standard::{End, HeadTubeEnd, LeftRight, Place, Tables, ThreadedPart};
use crate::thread::Side;
use crate::{Error, ErrorKind};

form! {
    /// Both ends of the head tube.
    #[derive(Default)]
    HeadTubeSheet {
        /// Upper end.
        upper: Option<HeadEndSheet>,
        /// Lower end.
        lower: Option<HeadEndSheet>,
    }

    /// A thread at the front and at the rear.
    #[derive(Default)]
    ThreadEnds {
        /// At the fork.
        front: Option<ThreadSheet>,
        /// At the rear triangle.
        rear: Option<ThreadSheet>,
    }

    /// A thread on the left and on the right.
    #[derive(Default)]
    ThreadSides {
        /// The rider's left.
        left: Option<ThreadSheet>,
        /// The rider's right.
        right: Option<ThreadSheet>,
    }

    /// The two dropouts of one end.
    #[derive(Default)]
    DropoutSides {
        /// The chain side.
        drive: Option<OtherSheet>,
        /// The other side.
        non_drive: Option<OtherSheet>,
    }

    /// The dropouts.
    #[derive(Default)]
    DropoutEnds {
        /// Of the fork.
        front: DropoutSides => Given,
        /// Of the rear triangle.
        rear: DropoutSides => Given,
    }

    /// The brake mounts by their ends.
    #[derive(Default)]
    BrakeEnds {
        /// At the fork.
        front: Option<BrakeSheet>,
        /// At the rear triangle.
        rear: Option<BrakeSheet>,
    }

    /// Everything measured and seen on one frame.
    ///
    /// ```
    /// use framegauge::{plan::FrameSheet, read::Tree, standard::Tables};
    /// let tree: Tree = serde_json::from_str(r#"{"format":1,"frame":"invented demo","seat_tube":{"bore":["27.2 mm +/- 0.05 mm"]}}"#).unwrap();
    /// let sheet = FrameSheet::from_tree(&tree, Tables::ours()).unwrap();
    /// assert_eq!(sheet.seat_tube.unwrap().bore.len(), 1);
    /// ```
    #[derive(Default)]
    FrameSheet {
        /// Version of this form; 1.
        format: u32 => Format,
        /// What the frame is, in the shop's words.
        frame: String => FrameName,
        /// The data are invented for a demonstration.
        invented: bool => Given,
        /// When it was measured.
        date: Option<String> => Said,
        /// The frame's material, where a joint states none.
        material: Option<MaterialKind>,
        /// Rule by which readings are held against limits.
        rule: DecisionRule => Given,
        /// Instruments of readings that name none.
        instruments: Instruments,
        /// Anything about the frame as a whole.
        note: Option<String> => Said,
        /// Seat tube.
        seat_tube: Option<SeatTubeSheet>,
        /// Bottom-bracket shell.
        shell: Option<ShellSheet>,
        /// Head tube.
        head_tube: HeadTubeSheet => Given,
        /// Crown-race seat.
        crown: Option<CrownSheet>,
        /// Steerer.
        steerer: Option<SteererSheet>,
        /// Axle threads, hanger, bosses in a list, in the order in which they were measured.
        thread: Vec<ThreadSheet> => Listed,
        /// Axle threads.
        axle: ThreadEnds => Given,
        /// Derailleur hanger.
        hanger: ThreadEnds => Given,
        /// Pedal threads of the crank.
        pedal: ThreadSides => Given,
        /// Bosses by name.
        boss: Named<ThreadSheet>,
        /// Dropout faces.
        dropout: DropoutEnds => Given,
        /// Brake mounts, by their ends or in a list.
        brake: Vec<BrakeEntry> => BrakeList,
        /// Chain-guide tabs around the shell.
        iscg: Option<OtherSheet>,
    }
}

form! {
    /// `prepare`: the whole frame: sheet in, plan out.
    ///
    /// ```
    /// use framegauge::ask::{Context, Question};
    /// let question: Question = serde_json::from_str(
    ///     r#"{"ask":"prepare","sheet":{"format":1,"frame":"invented","invented":true}}"#).unwrap();
    /// assert!(question.answer(&Context::default()).is_ok());
    /// ```
    Prepare {
        /// The sheet.
        sheet: FrameSheet => Whole,
    }
}

/// Reads a sheet and holds its statements against each other.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Whole;

impl ReadBy<FrameSheet> for Whole {
    const SHAPE: Shape = FrameSheet::SHAPE;
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<FrameSheet> {
        FrameSheet::whole(tree, context)
    }
}

/// A brake mount with where it stands in the sheet.
#[derive(Debug, Clone, PartialEq)]
pub struct BrakeEntry {
    /// Its end of the bicycle.
    pub end: End,
    /// Its path in the sheet.
    pub path: String,
    /// What the sheet says of it.
    pub sheet: BrakeSheet,
}

/// Reads brake mounts by their ends or in a list.
#[derive(Debug, Clone, Copy)]
pub(crate) struct BrakeList;

impl ReadBy<Vec<BrakeEntry>> for BrakeList {
    const SHAPE: Shape = Shape::Either(&[BrakeEnds::SHAPE, Shape::List(&BrakeSheet::SHAPE)]);
    const NEEDED: bool = false;
    fn read(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Vec<BrakeEntry>> {
        let mut out = Vec::new();
        if matches!(tree, Tree::Fields(_)) {
            let ends = BrakeEnds::read(tree, context)?;
            for (end, sheet) in [(End::Front, ends.front), (End::Rear, ends.rear)] {
                let path = format!("brake.{end}");
                out.extend(sheet.map(|sheet| BrakeEntry { end, path, sheet }));
            }
            return Some(out);
        }
        let list: Vec<BrakeSheet> = Listed::read(tree, context)?;
        for (index, sheet) in list.into_iter().enumerate() {
            let path = format!("brake[{index}]");
            match sheet.end {
                Some(end) => out.push(BrakeEntry { end, path, sheet }),
                None => context.not_accepted(
                    (&format!("[{index}]"), ErrorKind::Missing, &""),
                    "a brake mount without its end",
                    "write `end = \"front\"` or `end = \"rear\"`",
                ),
            }
        }
        Some(out)
    }
    fn absent() -> Option<Vec<BrakeEntry>> {
        Some(Vec::new())
    }
}

/// A thread of the sheet with its place and its path there.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct ThreadEntry<'a> {
    pub place: Place,
    pub part: ThreadedPart,
    pub path: String,
    pub sheet: &'a ThreadSheet,
}

/// A frame sheet is a page; a larger text is something else.
#[cfg(feature = "json")]
const LARGEST_SHEET: usize = 1 << 20;

impl FrameSheet {
    /// Reads a sheet from a tree, and holds its statements against each other.
    ///
    /// # Errors
    /// Every defect: unknown fields with the nearest names, words with their list, values, what is missing or stands twice,
    /// statements that cannot both be true.
    pub fn from_tree(tree: &Tree<'_>, tables: Tables<'_>) -> Result<Self, Vec<Error>> {
        let mut context = Context::new(tables);
        match Self::whole(tree, &mut context) {
            Some(sheet) if context.met() == 0 => Ok(sheet),
            _ => Err(context.into_defects()),
        }
    }

    /// Reads a sheet from its JSON text.
    ///
    /// # Errors
    /// `TooLarge` above a mebibyte; `Text` with the line, where it is no JSON; else as [`Self::from_tree`].
    ///
    /// ```
    /// use framegauge::{plan::FrameSheet, standard::Tables};
    /// assert!(FrameSheet::from_json(r#"{"format":1,"frame":"invented","shell":{"width":["68.2 +/- 0.1 mm"]}}"#, Tables::ours()).is_ok());
    /// let errors = FrameSheet::from_json("{\n\"format\": 1,}", Tables::ours()).unwrap_err();
    /// assert_eq!(errors[0].line(), Some(2));
    /// ```
    #[cfg(feature = "json")]
    pub fn from_json(text: &str, tables: Tables<'_>) -> Result<Self, Vec<Error>> {
        let refused = |kind, problem, remedy: &'static str| {
            Vec::from([Error::new(kind, "sheet", "", problem, remedy)])
        };
        if text.len() > LARGEST_SHEET {
            let problem = format!("{} bytes, more than {LARGEST_SHEET}", text.len());
            return Err(refused(ErrorKind::TooLarge, problem, "one frame a sheet"));
        }
        let tree: Tree<'_> = serde_json::from_str(text).map_err(|e| {
            let told = e.to_string();
            let what = told.split(" at line ").next().unwrap_or(&told);
            let problem = format!("not JSON: {what}, column {}", e.column());
            let errors = refused(
                ErrorKind::Text,
                problem,
                "write the sheet as one JSON object",
            );
            errors
                .into_iter()
                .map(|error| error.at_line(e.line()))
                .collect::<Vec<_>>()
        })?;
        Self::from_tree(&tree, tables)
    }

    /// Reads and checks a sheet inside something larger.
    pub(crate) fn whole(tree: &Tree<'_>, context: &mut Context<'_>) -> Option<Self> {
        let sheet = Self::read(tree, context)?;
        super::check::check(&sheet, context);
        Some(sheet)
    }

    /// Every thread that is neither shell nor steerer, in the order of the sheet.
    pub(crate) fn threads(&self) -> Vec<ThreadEntry<'_>> {
        use ThreadedPart::{Axle, Hanger, Other, Pedal};
        let pedal = |side| Place::Pedal(Some(side));
        let fixed = [
            (Place::Axle(End::Rear), Axle, &self.axle.rear),
            (Place::Hanger(End::Rear), Hanger, &self.hanger.rear),
            (Place::Axle(End::Front), Axle, &self.axle.front),
            (Place::Hanger(End::Front), Hanger, &self.hanger.front),
            (pedal(LeftRight::Left), Pedal, &self.pedal.left),
            (pedal(LeftRight::Right), Pedal, &self.pedal.right),
        ];
        let mut out = Vec::new();
        let mut entry = |place, part, path, sheet| {
            out.push(ThreadEntry {
                place,
                part,
                path,
                sheet,
            })
        };
        for (place, part, sheet) in fixed {
            if let Some(sheet) = sheet {
                let part = sheet.place.filter(|_| part != Pedal).unwrap_or(part);
                let path = place.to_string();
                entry(place, part, path, sheet);
            }
        }
        for (name, sheet) in &self.boss {
            if let Ok(place) = Place::boss(name) {
                entry(
                    place,
                    sheet.place.unwrap_or(Other),
                    format!("boss.{name}"),
                    sheet,
                );
            }
        }
        let mut unnamed = 0_usize;
        for (index, sheet) in self.thread.iter().enumerate() {
            let part = sheet.place.unwrap_or(Other);
            let place = place_of(sheet, part, &mut unnamed);
            entry(place, part, format!("thread[{index}]"), sheet);
        }
        out
    }

    /// Every thread that is neither shell nor steerer.
    pub(crate) fn every_thread(&mut self) -> impl Iterator<Item = &mut ThreadSheet> {
        let named = [
            &mut self.axle.front,
            &mut self.axle.rear,
            &mut self.hanger.front,
            &mut self.hanger.rear,
            &mut self.pedal.left,
            &mut self.pedal.right,
        ];
        named
            .into_iter()
            .flatten()
            .chain(self.boss.iter_mut().map(|(_, sheet)| sheet))
            .chain(&mut self.thread)
    }

    /// The photographs by their places.
    pub(crate) fn photos(&self) -> BTreeMap<Place, Vec<Photo>> {
        let (tube, ends) = (self.seat_tube.as_ref(), &self.head_tube);
        let heads = [
            (HeadTubeEnd::Upper, &ends.upper),
            (HeadTubeEnd::Lower, &ends.lower),
        ];
        let heads = heads
            .into_iter()
            .filter_map(|(end, sheet)| Some((Place::HeadTube(end), sheet.as_ref()?.common())));
        let whole = [
            tube.map(|s| (Place::SeatTube, s.common())),
            self.shell.as_ref().map(|s| (Place::Shell, s.common())),
            self.crown.as_ref().map(|s| (Place::Crown, s.common())),
            self.steerer.as_ref().map(|s| (Place::Steerer, s.common())),
        ];
        let threads = self.threads();
        let threads = threads.iter().map(|t| (t.place.clone(), t.sheet.common()));
        let brakes = self
            .brake
            .iter()
            .map(|b| (Place::Brake(b.end), b.sheet.common()));
        let others = self
            .others()
            .into_iter()
            .map(|(place, s)| (place, s.common()));
        let all = whole.into_iter().flatten().chain(heads).chain(threads);
        let mut out: BTreeMap<Place, Vec<Photo>> = BTreeMap::new();
        for (place, common) in all.chain(brakes).chain(others) {
            if !common.photos.is_empty() {
                out.entry(place)
                    .or_default()
                    .extend_from_slice(common.photos);
            }
        }
        out
    }

    /// Every place that is looked at and not cut.
    pub(crate) fn others(&self) -> Vec<(Place, &OtherSheet)> {
        let dropout = |end, side| Place::Dropout(end, Some(side));
        let slot = self.seat_tube.as_ref().and_then(|t| t.slot.as_ref());
        let (front, rear) = (&self.dropout.front, &self.dropout.rear);
        let underside = |brake: &BrakeEntry| Place::BrakeUnderside(brake.end);
        [
            (Place::SeatTubeSlot, slot),
            (dropout(End::Rear, Side::Drive), rear.drive.as_ref()),
            (dropout(End::Rear, Side::NonDrive), rear.non_drive.as_ref()),
            (dropout(End::Front, Side::Drive), front.drive.as_ref()),
            (
                dropout(End::Front, Side::NonDrive),
                front.non_drive.as_ref(),
            ),
        ]
        .into_iter()
        .chain(
            self.brake
                .iter()
                .map(|b| (underside(b), b.sheet.underside.as_ref())),
        )
        .chain([(Place::Iscg, self.iscg.as_ref())])
        .filter_map(|(place, sheet)| Some((place, sheet?)))
        .collect()
    }
}

/// The place of a thread in a list.
fn place_of(sheet: &ThreadSheet, part: ThreadedPart, unnamed: &mut usize) -> Place {
    let end = sheet.end.unwrap_or(End::Both);
    match part {
        ThreadedPart::Axle => return Place::Axle(end),
        ThreadedPart::Hanger => return Place::Hanger(end),
        ThreadedPart::Pedal => {
            return Place::Pedal(side_in(sheet.name.as_deref().unwrap_or_default()));
        }
        _ => {}
    }
    let name = sheet.name.clone().unwrap_or_else(|| {
        let plain = if end == End::Both {
            part.to_string()
        } else {
            format!("{end}_{part}")
        };
        *unnamed += 1;
        if *unnamed == 1 {
            plain
        } else {
            format!("{plain}_{unnamed}")
        }
    });
    Place::boss(&name).unwrap_or(Place::Thread)
}

/// A pedal thread has a side; a name may say which.
fn side_in(name: &str) -> Option<LeftRight> {
    let name = name.to_lowercase();
    let says = |wanted| {
        name.split(|c: char| !c.is_alphanumeric())
            .any(|word| word == wanted)
    };
    match (says("left"), says("right")) {
        (true, false) => Some(LeftRight::Left),
        (false, true) => Some(LeftRight::Right),
        _ => None,
    }
}
