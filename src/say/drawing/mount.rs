//! The drawing of a brake mount, or of another face that is no ring.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::page::{Page, WIDTH, mark_area, n};
use super::room::{Area, Room, Spot, half_width};
use super::{Sight, deep, figure, height, limits, scale, without_room};
use crate::Error;
use crate::face::{Caps, LimitName, PadSurvey, Point, cutter_plane};
use crate::quantity::{Length, mm};

/// How far a land is drawn beyond its outermost points.
const BEYOND: (f64, f64) = (8.0, 8.2);

/// A land of the mount: the points that belong together, and what it is called where the survey names it.
struct Land {
    name: Option<String>,
    points: Vec<usize>,
}

impl PadSurvey {
    /// Draws the lands as seen from outside: heights in millimetres, the first contact, what a cutter square to the datum
    /// has touched at the proposed depth, and the limits. The heading says what the caller knows of the frame and its plan.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` for a negative depth.
    ///
    /// ```
    /// # use framegauge::{face::{Allowance, PadPoint, PadSurvey, Point}, mm, say::Sight};
    /// # let at = |pad: &'static str, x, y, z| PadPoint { pad: pad.into(), point: Point::new(mm(x), mm(y), mm(z)).unwrap() };
    /// # let survey = PadSurvey::new("wheel axle", [at("upper", -37.0, -6.0, 0.0), at("upper", -37.0, 6.0, 0.08),
    /// #     at("lower", 37.0, -6.0, 0.0), at("lower", 37.0, 6.0, 0.08)], mm(0.004)).unwrap();
    /// let svg = survey.drawing(&Sight::default(), mm(0.05), &Allowance::default()).unwrap();
    /// assert!(svg.contains("+0.08") && svg.contains("upper"));
    /// ```
    pub fn drawing<N: LimitName, M: LimitName>(
        &self,
        sight: &Sight<'_>,
        depth: Length,
        allowance: &Caps<N, M>,
    ) -> Result<String, Error> {
        let cutter = cutter_plane(&self.points, depth)?;
        let touched: Vec<usize> = cutter.touched(&self.points).collect();
        let all = self.points.iter().enumerate();
        let highest = all.max_by(|a, b| a.1.z.total_cmp(&b.1.z)).map(|(i, _)| i);
        let spots = self.spots();
        let lands: Vec<(Land, Area)> = self
            .lands()
            .into_iter()
            .filter_map(|land| {
                Some((
                    area(land.points.iter().filter_map(|i| spots.get(*i)))?,
                    land,
                ))
            })
            .map(|(area, land)| (land, area))
            .collect();
        let mut room = Room::new(Area::around((0.0, 0.0), WIDTH / 2.0 - 3.0, WIDTH / 2.0));
        for (index, at) in spots.iter().enumerate() {
            room.take(mark_area(*at, highest == Some(index), false));
        }
        for (_, land) in &lands {
            edges(land).for_each(|edge| room.line(edge));
        }
        let left_out = self.heights(&mut room, &spots);
        for (land, area) in &lands {
            if let Some(name) = &land.name {
                room.label(None, below(area, name), 3.8, name);
            }
        }

        let title = sight.title("Mount");
        let mut page = Page::new();
        page.write(5.0, core::slice::from_ref(&title));
        page.write(3.4, &sight.lines());
        page.write(3.4, &[scale(self.datum())]);
        let (x, y) = (WIDTH / 2.0, page.figure(room.reach()));
        for (_, land) in &lands {
            page.add(&format!(
                "<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" rx=\"3\" fill=\"none\" stroke=\"black\" stroke-width=\"0.5\"/>",
                n(land.left + x),
                n(land.top + y),
                n(land.right - land.left),
                n(land.bottom - land.top)
            ));
        }
        for (index, at) in spots.iter().enumerate() {
            let (touched, highest) = (touched.contains(&index), highest == Some(index));
            page.mark((at.0 + x, at.1 + y), touched, highest, false);
        }
        room.draw(&mut page, (x, y));
        let mut lines = self.legend(depth, touched.len());
        lines.extend(without_room(&left_out));
        lines.extend(limits(allowance));
        lines.push("Brake part: the makers' written limits come first.".into());
        page.write(3.4, &lines);
        Ok(page.finish(&title))
    }

    /// The points on paper about the middle of the figure: along to the right, across up.
    fn spots(&self) -> Vec<Spot> {
        let bounds = |of: fn(&Point) -> f64| {
            let ends = (f64::INFINITY, f64::NEG_INFINITY);
            let all = self.points.iter().map(of);
            all.fold(ends, |(low, high), v| (low.min(v), high.max(v)))
        };
        let ((left, right), (bottom, top)) = (bounds(|p| p.x), bounds(|p| p.y));
        let scale = f64::min(
            110.0 / f64::max(right - left, 1.0),
            60.0 / f64::max(top - bottom, 1.0),
        );
        let middle = (f64::midpoint(left, right), f64::midpoint(bottom, top));
        let spot = |p: &Point| ((p.x - middle.0) * scale, (middle.1 - p.y) * scale);
        self.points.iter().map(spot).collect()
    }

    /// The lands: by their names where the survey has several; else the points along the mount, parted where the gap is wider
    /// than half of its whole length.
    fn lands(&self) -> Vec<Land> {
        let mut lands: Vec<Land> = Vec::new();
        for (index, pad) in self.pads.iter().enumerate() {
            match lands
                .iter_mut()
                .find(|l| l.name.as_deref() == Some(&*pad.pad))
            {
                Some(land) => land.points.push(index),
                None => lands.push(Land {
                    name: Some(String::from(&*pad.pad)),
                    points: alloc::vec![index],
                }),
            }
        }
        if lands.len() > 1 {
            return lands;
        }
        let mut along: Vec<(usize, f64)> = self.points.iter().map(|p| p.x).enumerate().collect();
        along.sort_by(|a, b| a.1.total_cmp(&b.1));
        let ends = along.first().zip(along.last());
        let half = ends.map_or(0.0, |(first, last)| (last.1 - first.1) / 2.0);
        let mut parted: Vec<Land> = Vec::new();
        let mut before = None;
        for (index, x) in along {
            let near = before.is_some_and(|before| x - before <= half);
            match parted.last_mut().filter(|_| near) {
                Some(land) => land.points.push(index),
                None => parted.push(Land {
                    name: None,
                    points: alloc::vec![index],
                }),
            }
            before = Some(x);
        }
        parted
    }

    /// Sets the heights beside their marks, and gives those that found no room.
    fn heights(&self, room: &mut Room, spots: &[Spot]) -> Vec<String> {
        let size = if spots.len() > 12 { 2.8 } else { 3.4 };
        let mut left_out = Vec::new();
        for (point, at) in self.points.iter().zip(spots) {
            let words = height(point.z, self.u);
            if !room.label(Some(*at), about(*at, &words, size), size, &words) {
                left_out.push(format!(
                    "{} mm along, {} mm across {words}",
                    figure(mm(point.x), mm(0.01)),
                    figure(mm(point.y), mm(0.01))
                ));
            }
        }
        left_out
    }

    /// What the drawing shows.
    fn legend(&self, depth: Length, touched: usize) -> Vec<String> {
        alloc::vec![
            format!(
                "When the cutter stands {} mm below the highest point, it has touched {touched} of {} probed points",
                deep(depth, self.u),
                self.points.len()
            ),
            format!("To touch all of them: {} mm", figure(self.range(), self.u)),
            "Double ring: highest reading. Filled: touched. Open: not touched. Boxes: the lands, as far as they were probed."
                .into(),
        ]
    }
}

/// A land about its points.
fn area<'a>(points: impl Iterator<Item = &'a Spot>) -> Option<Area> {
    points
        .map(|at| Area::around(*at, BEYOND.0, BEYOND.1))
        .reduce(|a, b| Area {
            left: a.left.min(b.left),
            top: a.top.min(b.top),
            right: a.right.max(b.right),
            bottom: a.bottom.max(b.bottom),
        })
}

/// The four edges of a land.
fn edges(land: &Area) -> impl Iterator<Item = Area> {
    let (land, edge) = (*land, 0.3);
    [
        Area {
            bottom: land.top + edge,
            top: land.top - edge,
            ..land
        },
        Area {
            top: land.bottom - edge,
            bottom: land.bottom + edge,
            ..land
        },
        Area {
            right: land.left + edge,
            left: land.left - edge,
            ..land
        },
        Area {
            left: land.right - edge,
            right: land.right + edge,
            ..land
        },
    ]
    .into_iter()
}

/// Spots for the name of a land: below it, above it, farther away.
fn below(land: &Area, name: &str) -> impl Iterator<Item = Spot> + use<> {
    let (land, wide) = (*land, half_width(name, 3.8));
    let middle = f64::midpoint(land.left, land.right);
    (0..20_u8).flat_map(move |step| {
        let far = 3.5 + f64::from(step) * 2.0;
        [
            (middle, land.bottom + far),
            (middle, land.top - far),
            (land.right + wide + far - 2.0, land.bottom),
            (land.left - wide - far + 2.0, land.bottom),
        ]
    })
}

/// Spots about a mark: above, below, right and left of it, then aslant, then farther away.
fn about(at: Spot, words: &str, size: f64) -> impl Iterator<Item = Spot> + use<> {
    const ASLANT: f64 = core::f64::consts::FRAC_1_SQRT_2;
    // 22.5 degrees.
    const FLAT: f64 = 0.383;
    const STEEP: f64 = 0.924;
    let ways = [
        (0.0, -1.0),
        (0.0, 1.0),
        (1.0, 0.0),
        (-1.0, 0.0),
        (ASLANT, -ASLANT),
        (-ASLANT, -ASLANT),
        (ASLANT, ASLANT),
        (-ASLANT, ASLANT),
        (FLAT, -STEEP),
        (-FLAT, -STEEP),
        (FLAT, STEEP),
        (-FLAT, STEEP),
        (STEEP, -FLAT),
        (-STEEP, -FLAT),
        (STEEP, FLAT),
        (-STEEP, FLAT),
    ];
    let wide = half_width(words, size);
    (0..30_u8).flat_map(move |step| {
        let far = 3.4 + f64::from(step) * 2.0;
        ways.into_iter()
            .map(move |(x, y)| (at.0 + x * (far + wide), at.1 + y * (far + size / 2.0)))
    })
}
