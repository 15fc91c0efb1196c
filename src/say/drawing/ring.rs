//! The drawing of a ring face.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::f64::consts::TAU;
use core::fmt::Write;

use super::page::{Page, WIDTH, n};
use super::room::{Area, Room, Spot, half_width};
use super::{Sight, deep, figure, height, limits, scale, without_room};
use crate::Error;
use crate::face::{Caps, LimitName, RingSurvey};
use crate::quantity::{Length, to_mm};

/// Outer radius of the face on paper.
const FACE: f64 = 36.0;
/// Radius on paper where the profile is lowest, and how far it rises.
const PROFILE: (f64, f64) = (FACE + 4.0, 13.0);

impl RingSurvey {
    /// Draws the face as seen from outside, 12 o'clock up: heights in millimetres at the probes, the profile around the
    /// ring (exaggerated), the highest probe, what a cutter has touched at the proposed depth, the contacts of a seated
    /// cup, and the limits. The heading says what the caller knows of the frame and its plan.
    ///
    /// # Errors
    /// Those of [`Self::touched_area`] for a depth that is none.
    ///
    /// ```
    /// # use framegauge::{Radius, deg, face::{Allowance, Annulus, Clock, Probe, RingSurvey}, measure::Reading, mm, say::Sight};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let probes: Vec<Probe> = [0.1, 0.05, 0.0, 0.05].iter().enumerate().map(|(i, z)| Probe {
    /// #     at: Clock::new(deg(90.0 * i as f64)).unwrap(), radius: r(20.0),
    /// #     height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect();
    /// # let survey = RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "thread", probes).unwrap();
    /// let svg = survey.drawing(&Sight::default(), mm(0.05), &Allowance::default()).unwrap();
    /// assert!(svg.starts_with("<svg") && svg.contains("Seen from outside") && svg.contains("+0.10"));
    /// ```
    pub fn drawing<N: LimitName, M: LimitName>(
        &self,
        sight: &Sight<'_>,
        depth: Length,
        allowance: &Caps<N, M>,
    ) -> Result<String, Error> {
        let share = self.touched_area(depth)?;
        // The level of the hatching: a mark is filled just where the face about it is hatched.
        let level = self.cutter_level(depth)?;
        let marks = self.marks(level);
        let mut room = Room::new(Area::around((0.0, 0.0), WIDTH / 2.0 - 3.0, WIDTH / 2.0));
        marks.iter().for_each(|mark| room.take(mark.area()));
        let bare = room.clone();
        let mut left_out = self.heights(&mut room, &marks);
        if !self.numerals(&mut room) {
            // The hours first, then: a height can stand farther off than they.
            room = bare;
            self.numerals(&mut room);
            left_out = self.heights(&mut room, &marks);
        }

        let title = sight.title("Face");
        let mut page = Page::new();
        page.write(5.0, core::slice::from_ref(&title));
        page.write(3.4, &sight.lines());
        page.write(3.4, &[scale(self.datum())]);
        let (profile, (top, bottom)) = (PROFILE.0 + PROFILE.1, room.reach());
        let reach = (top.min(-profile), bottom.max(profile));
        let centre = (WIDTH / 2.0, page.figure(reach));
        let scale = self.paper();
        let place = |radius: f64, angle: f64| {
            let (x, y) = polar(radius * scale, angle);
            (centre.0 + x, centre.1 + y)
        };
        page.path(
            &self.touched_outline(depth, place)?,
            "fill=\"url(#touched)\" stroke=\"none\"",
        );
        for radius in [self.face().inner(), self.face().outer()] {
            page.circle(
                centre,
                to_mm(radius.length()) * scale,
                "fill=\"none\" stroke=\"black\" stroke-width=\"0.5\"",
            );
        }
        for hour in 0..12_u8 {
            let angle = f64::from(hour) * TAU / 12.0;
            let outer = to_mm(self.face().outer().length());
            page.line(
                place(outer, angle),
                place(outer * 1.03, angle),
                "stroke=\"black\" stroke-width=\"0.4\"",
            );
        }
        self.profile_line(&mut page, depth, centre);
        for mark in &marks {
            let at = (centre.0 + mark.at.0, centre.1 + mark.at.1);
            page.mark(at, mark.touched, mark.highest, mark.seat);
        }
        room.draw(&mut page, centre);
        let mut lines = self.legend(depth, share);
        lines.extend(without_room(&left_out));
        lines.extend(limits(allowance));
        lines.extend(self.warnings().iter().map(|w| format!("Note: {w}")));
        page.write(3.4, &lines);
        Ok(page.finish(&title))
    }

    /// Paper for a millimetre.
    fn paper(&self) -> f64 {
        FACE / to_mm(self.face().outer().length())
    }

    fn marks(&self, level: f64) -> Vec<Mark> {
        let all = self.points.iter().enumerate();
        let highest = all.max_by(|a, b| a.1.z.total_cmp(&b.1.z)).map(|(i, _)| i);
        let seat: Vec<usize> = match self.seat() {
            Ok(seat) => seat.contacts().filter(|c| c.1 > 0.0).map(|c| c.0).collect(),
            // Without an axis inside the ring there is no seat to draw.
            Err(_) => Vec::new(),
        };
        let mark =
            |(index, (probe, point)): (usize, (&crate::face::Probe, &crate::face::Point))| {
                let angle = probe.at.radians();
                Mark {
                    at: polar(to_mm(probe.radius.length()) * self.paper(), angle),
                    angle,
                    z: point.z,
                    touched: point.z >= level,
                    highest: highest == Some(index),
                    seat: seat.contains(&index),
                }
            };
        let probes = self.probes().iter().zip(&self.points);
        probes.enumerate().map(mark).collect()
    }

    /// The hours: all at one distance from the middle, inside the ring or else outside the profile; where they find no such
    /// distance, each where there is room. `false` where one finds none.
    fn numerals(&self, room: &mut Room) -> bool {
        const SIZE: f64 = 4.2;
        let edge = to_mm(self.face().inner().length()) * self.paper() - 4.5;
        let inside = (0..30_u8).map(|step| edge - f64::from(step) * 0.75);
        let outside = (0..30_u8).map(|step| PROFILE.0 + PROFILE.1 + 5.0 + f64::from(step) * 0.75);
        let radii = inside.take_while(|radius| *radius > 4.0).chain(outside);
        let hours = [(0.0, "12"), (3.0, "3"), (6.0, "6"), (9.0, "9")];
        let spot = |radius: f64, hour: f64| polar(radius, hour * TAU / 12.0);
        let free = |radius: f64| {
            let mut all = hours.iter();
            all.all(|(hour, name)| room.is_free(spot(radius, *hour), SIZE, name))
        };
        let common = radii.clone().find(|radius| free(*radius));
        hours.into_iter().all(|(hour, name)| {
            let own = common.or_else(|| {
                let mut radii = radii.clone();
                radii.find(|r| room.is_free(spot(*r, hour), SIZE, name))
            });
            let spot = own.map(|radius| spot(radius, hour));
            room.label(None, spot.into_iter(), SIZE, name)
        })
    }

    /// Sets the heights beside their marks, and gives those that found no room. Of two circles the inner one is labelled
    /// inside the ring, the outer one outside the profile.
    fn heights(&self, room: &mut Room, marks: &[Mark]) -> Vec<String> {
        let size = if marks.len() > 12 { 2.8 } else { 3.4 };
        let two = self.circles.len() == 2;
        let inner = self.circles.first().map_or(&[][..], |c| &c.order);
        let mut left_out = Vec::new();
        for (index, mark) in marks.iter().enumerate() {
            let words = height(mark.z, self.reading_error());
            // A little to the side where its own direction is taken.
            let angles = [
                0.0, 0.07, -0.07, 0.14, -0.14, 0.21, -0.21, 0.28, -0.28, 0.35, -0.35,
            ]
            .map(|by| mark.angle + by);
            let inside = |far: usize| {
                let words = &words;
                angles
                    .into_iter()
                    .flat_map(move |a| self.inside(a, words, size).take(far))
            };
            let beyond = |far: usize| {
                let words = &words;
                angles
                    .into_iter()
                    .flat_map(move |a| outside(a, words, size).take(far))
            };
            let set = match (two, inner.contains(&index)) {
                (true, true) => room.label(Some(mark.at), inside(99), size, &words),
                (true, false) => room.label(Some(mark.at), beyond(99), size, &words),
                (false, _) => {
                    let spots = inside(5).chain(beyond(4)).chain(inside(99));
                    room.label(Some(mark.at), spots.chain(beyond(99)), size, &words)
                }
            };
            if !set {
                let at = libm::round(mark.angle.to_degrees());
                left_out.push(format!("{at}° {words}"));
            }
        }
        left_out
    }

    /// Spots inside the ring, from its edge inwards.
    fn inside(&self, angle: f64, words: &str, size: f64) -> impl Iterator<Item = Spot> + use<> {
        let own = own_reach(angle, words, size);
        let edge = to_mm(self.face().inner().length()) * self.paper() - 1.0;
        (0..40_u8)
            .map(move |step| edge - own - f64::from(step) * 1.5)
            .take_while(|radius| *radius > 1.0)
            .map(move |radius| polar(radius, angle))
    }

    /// How far a reading may be out, for its decimals.
    fn reading_error(&self) -> Length {
        let all = self
            .probes()
            .iter()
            .map(|p| p.height.standard_uncertainty());
        all.fold(crate::quantity::mm(0.0), Length::max)
    }

    /// What the drawing shows.
    fn legend(&self, depth: Length, share: f64) -> Vec<String> {
        let (clean, u) = (self.clean_up(), self.reading_error());
        alloc::vec![
            format!(
                "Hatched: touched when the cutter stands {} mm below the highest point, {:.0} % of the face",
                deep(depth, u),
                share * 100.0
            ),
            format!(
                "To clean up the whole face: {} mm by the readings, {} mm out to its edge (with what they may be out: up to {} mm)",
                figure(clean.at_probes, u),
                figure(clean.at_outer_edge, u),
                figure(clean.upper, u)
            ),
            "Double ring: highest reading. Filled: touched. Open: not touched. Cross: where a pressed cup would rest.".into(),
            "Outer line: heights round the face, exaggerated; dashed: where the cutter would stand.".into(),
        ]
    }

    /// The profile outside the ring, and the level of the cutter.
    fn profile_line(&self, page: &mut Page, depth: Length, centre: Spot) {
        let (low, high) = self.surface_range();
        let span = if high > low { high - low } else { 1.0 };
        let ring = |z: f64| PROFILE.0 + PROFILE.1 * (z - low) / span;
        let mut d = String::new();
        for step in 0..=180_u16 {
            let angle = f64::from(step) * TAU / 180.0;
            let z = self.mean_height(angle);
            let (x, y) = polar(ring(z), angle);
            let (x, y) = (centre.0 + x, centre.1 + y);
            // Writing to a string cannot fail.
            let _ = write!(d, "{}{} {} ", if step == 0 { "M" } else { "L" }, n(x), n(y));
        }
        page.path(
            d.trim_end(),
            "fill=\"none\" stroke=\"black\" stroke-width=\"0.6\"",
        );
        let level = f64::max(high - to_mm(depth), low);
        page.circle(
            centre,
            ring(level),
            "fill=\"none\" stroke=\"black\" stroke-width=\"0.3\" stroke-dasharray=\"2 1.5\"",
        );
    }

    /// Outline of the touched part, sector by sector.
    fn touched_outline(
        &self,
        depth: Length,
        place: impl Fn(f64, f64) -> (f64, f64),
    ) -> Result<String, Error> {
        const SECTORS: u16 = 180;
        let level = self.cutter_level(depth)?;
        let mut d = String::new();
        for sector in 0..SECTORS {
            let width = TAU / f64::from(SECTORS);
            let (from, to) = (f64::from(sector) * width, (f64::from(sector) + 1.0) * width);
            for (r1, r2) in self.touched_strips(f64::midpoint(from, to), level) {
                let corners = [
                    place(r1, from),
                    place(r2, from),
                    place(r2, to),
                    place(r1, to),
                ];
                for (index, (x, y)) in corners.iter().enumerate() {
                    let _ = write!(
                        d,
                        "{}{} {} ",
                        if index == 0 { "M" } else { "L" },
                        n(*x),
                        n(*y)
                    );
                }
                d.push_str("Z ");
            }
        }
        Ok(d.trim_end().into())
    }
}

/// The mark of a probe, about the middle of the figure.
struct Mark {
    at: Spot,
    angle: f64,
    z: f64,
    touched: bool,
    highest: bool,
    seat: bool,
}

impl Mark {
    fn area(&self) -> Area {
        super::page::mark_area(self.at, self.highest, self.seat)
    }
}

fn polar(radius: f64, angle: f64) -> Spot {
    (radius * libm::sin(angle), -radius * libm::cos(angle))
}

/// How far a text reaches from its middle in a direction.
fn own_reach(angle: f64, words: &str, size: f64) -> f64 {
    half_width(words, size) * libm::fabs(libm::sin(angle))
        + size / 2.0 * libm::fabs(libm::cos(angle))
}

/// Spots outside the profile, from it outwards.
fn outside(angle: f64, words: &str, size: f64) -> impl Iterator<Item = Spot> + use<> {
    let own = own_reach(angle, words, size);
    (0..40_u8).map(move |step| {
        polar(
            PROFILE.0 + PROFILE.1 + 2.0 + own + f64::from(step) * 1.5,
            angle,
        )
    })
}
