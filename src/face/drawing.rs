//! Drawings of a face as seen from outside: plain SVG text, black on white, legible in print without colour.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt::Write;

use super::allowance::{Caps, LimitName};
use super::pads::PadSurvey;
use super::page::{Page, WIDTH, label, limits_in_words, n};
use super::ring::RingSurvey;
use super::tangent::cutter_plane;
use crate::Error;
use crate::quantity::{Length, in_mm, to_mm};

impl RingSurvey {
    /// Draws the face as seen from outside, 12 o'clock up: heights in millimetres at the probes, the profile around the
    /// ring (exaggerated), the highest probe, what a cutter has touched at the proposed depth, the contacts of a seated
    /// cup, and the limits.
    ///
    /// # Errors
    /// Those of [`Self::touched_area`] for a depth that is none.
    ///
    /// ```
    /// # use framegauge::{Radius, deg, face::{Allowance, Annulus, Clock, Probe, RingSurvey}, measure::Reading, mm};
    /// # let r = |v| Radius::new(mm(v)).unwrap();
    /// # let probes: Vec<Probe> = [0.1, 0.05, 0.0, 0.05].iter().enumerate().map(|(i, z)| Probe {
    /// #     at: Clock::new(deg(90.0 * i as f64)).unwrap(), radius: r(20.0),
    /// #     height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect();
    /// # let survey = RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "thread", probes).unwrap();
    /// let svg = survey.drawing(mm(0.05), &Allowance::default()).unwrap();
    /// assert!(svg.starts_with("<svg") && svg.contains("seen from outside") && svg.contains("+0.100"));
    /// ```
    pub fn drawing<N: LimitName, M: LimitName>(
        &self,
        depth: Length,
        allowance: &Caps<N, M>,
    ) -> Result<String, Error> {
        let share = self.touched_area(depth)?;
        // The level of the hatching: a mark is filled just where the face about it is hatched.
        let level = self.cutter_level(depth)?;
        let highest = self
            .points
            .iter()
            .enumerate()
            .max_by(|a, b| a.1.z.total_cmp(&b.1.z))
            .map(|(i, _)| i);
        let seat: Vec<usize> = match self.seat() {
            Ok(seat) => seat.contacts().filter(|c| c.1 > 0.0).map(|c| c.0).collect(),
            // Without an axis inside the ring there is no seat to draw.
            Err(_) => Vec::new(),
        };
        let outer = to_mm(self.face().outer().length());
        let scale = 40.0 / outer;
        let centre = (WIDTH / 2.0, 82.0);
        let place = |radius: f64, angle: f64| {
            (
                centre.0 + radius * scale * libm::sin(angle),
                centre.1 - radius * scale * libm::cos(angle),
            )
        };
        let mut page = Page::new();
        page.text(WIDTH / 2.0, 9.0, 5.0, "middle", "Face as seen from outside");
        page.text(
            WIDTH / 2.0,
            14.5,
            3.6,
            "middle",
            &format!("heights in mm, outwards along: {}", self.datum()),
        );
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
        self.clock_marks(&mut page, outer, place);
        self.profile_line(&mut page, depth, centre, scale);
        for (index, (probe, point)) in self.probes().iter().zip(&self.points).enumerate() {
            let (radius, angle) = (to_mm(probe.radius.length()), probe.at.radians());
            page.mark(
                place(radius, angle),
                point.z >= level,
                highest == Some(index),
                seat.contains(&index),
            );
            let inside = place(to_mm(self.face().inner().length()) - 12.0 / scale, angle);
            // On two circles only the outer one is labelled beside its mark; the inner one is labelled nearer the axis.
            let inner_circle = self.circles.len() == 2
                && self
                    .circles
                    .first()
                    .is_some_and(|c| c.order.contains(&index));
            let spot = if inner_circle {
                place(radius - 20.0 / scale, angle)
            } else {
                inside
            };
            page.text(spot.0, spot.1 + 1.2, 3.4, "middle", &label(point.z));
        }
        let clean = self.clean_up();
        let mut lines = alloc::vec![
            format!("Hatched: touched at {} after first contact, {:.0} % of the face", in_mm(depth), share * 100.0),
            format!("Clean-up depth: {} at the probes, {} to the outer edge (up to {})", in_mm(clean.at_probes), in_mm(clean.at_outer_edge), in_mm(clean.upper)),
            "Double ring: highest probe. Filled: touched. Open: not touched. Cross: carries a pressed cup.".into(),
            "Outer line: profile, heights exaggerated; dashed: where the cutter would stand.".into(),
        ];
        lines.extend(limits_in_words(allowance));
        lines.extend(self.warnings().iter().map(|w| format!("Note: {w}")));
        page.notes(152.0, &lines);
        Ok(page.finish("Face as seen from outside"))
    }

    fn clock_marks(&self, page: &mut Page, outer: f64, place: impl Fn(f64, f64) -> (f64, f64)) {
        for hour in 0..12_u8 {
            let angle = f64::from(hour) * core::f64::consts::TAU / 12.0;
            page.line(
                place(outer, angle),
                place(outer * 1.03, angle),
                "stroke=\"black\" stroke-width=\"0.4\"",
            );
        }
        let inner = to_mm(self.face().inner().length());
        for (hour, name) in [(0.0, "12"), (3.0, "3"), (6.0, "6"), (9.0, "9")] {
            // Just inside the ring: outside it the profile runs.
            let (x, y) = place(
                inner - 4.5 * outer / 40.0,
                hour * core::f64::consts::TAU / 12.0,
            );
            page.text(x, y + 1.4, 4.2, "middle", name);
        }
    }

    /// The profile outside the ring, and the level of the cutter.
    fn profile_line(&self, page: &mut Page, depth: Length, centre: (f64, f64), scale: f64) {
        let (low, high) = self.surface_range();
        let span = if high > low { high - low } else { 1.0 };
        let base = to_mm(self.face().outer().length()) * scale + 5.0;
        let ring = |z: f64| base + 16.0 * (z - low) / span;
        let mut d = String::new();
        for step in 0..=180_u16 {
            let angle = f64::from(step) * core::f64::consts::TAU / 180.0;
            let z = self.mean_height(angle);
            let (x, y) = (
                centre.0 + ring(z) * libm::sin(angle),
                centre.1 - ring(z) * libm::cos(angle),
            );
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
            let width = core::f64::consts::TAU / f64::from(SECTORS);
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

impl PadSurvey {
    /// Draws the pads as seen from outside: heights in millimetres, the first contact, what a cutter square to the datum
    /// has touched at the proposed depth, and the limits.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` for a negative depth.
    ///
    /// ```
    /// # use framegauge::{face::{Allowance, PadPoint, PadSurvey, Point}, mm};
    /// # let at = |pad: &'static str, x, y, z| PadPoint { pad: pad.into(), point: Point::new(mm(x), mm(y), mm(z)).unwrap() };
    /// # let survey = PadSurvey::new("wheel axle", [at("upper", -37.0, -6.0, 0.0), at("upper", -37.0, 6.0, 0.08),
    /// #     at("lower", 37.0, -6.0, 0.0), at("lower", 37.0, 6.0, 0.08)], mm(0.004)).unwrap();
    /// let svg = survey.drawing(mm(0.05), &Allowance::default()).unwrap();
    /// assert!(svg.contains("+0.080") && svg.contains("upper"));
    /// ```
    pub fn drawing<N: LimitName, M: LimitName>(
        &self,
        depth: Length,
        allowance: &Caps<N, M>,
    ) -> Result<String, Error> {
        let cutter = cutter_plane(&self.points, depth)?;
        let touched: Vec<usize> = cutter.touched(&self.points).collect();
        let highest = self
            .points
            .iter()
            .enumerate()
            .max_by(|a, b| a.1.z.total_cmp(&b.1.z))
            .map(|(i, _)| i);
        let bounds = |of: fn(&super::Point) -> f64| {
            self.points
                .iter()
                .map(of)
                .fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), v| {
                    (l.min(v), h.max(v))
                })
        };
        let ((left, right), (bottom, top)) = (bounds(|p| p.x), bounds(|p| p.y));
        let scale = f64::min(
            110.0 / f64::max(right - left, 1.0),
            60.0 / f64::max(top - bottom, 1.0),
        );
        let centre = (f64::midpoint(left, right), f64::midpoint(bottom, top));
        let half = (top - bottom) * scale / 2.0;
        let middle = 28.0 + half;
        let place = |x: f64, y: f64| {
            (
                WIDTH / 2.0 + (x - centre.0) * scale,
                middle - (y - centre.1) * scale,
            )
        };
        let mut page = Page::new();
        page.text(
            WIDTH / 2.0,
            9.0,
            5.0,
            "middle",
            "Mount as seen from outside",
        );
        page.text(
            WIDTH / 2.0,
            14.5,
            3.6,
            "middle",
            &format!("heights in mm, outwards along: {}", self.datum()),
        );
        self.pad_outlines(&mut page, place);
        for (index, point) in self.points.iter().enumerate() {
            let at = place(point.x, point.y);
            page.mark(at, touched.contains(&index), highest == Some(index), false);
            page.text(at.0, at.1 - 3.4, 3.4, "middle", &label(point.z));
        }
        #[expect(clippy::cast_precision_loss, reason = "a count")]
        let share = touched.len() as f64 / self.points.len() as f64;
        let mut lines = alloc::vec![
            format!(
                "At {} after first contact {:.0} % of the probed places are touched",
                in_mm(depth),
                share * 100.0
            ),
            format!("Depth to touch all of them: {}", in_mm(self.range())),
            "Double ring: first contact. Filled: touched. Open: not touched.".into(),
        ];
        lines.extend(limits_in_words(allowance));
        lines.push("Brake part: the makers' written limits come first.".into());
        page.notes(middle + half + 22.0, &lines);
        Ok(page.finish("Mount as seen from outside"))
    }

    fn pad_outlines(&self, page: &mut Page, place: impl Fn(f64, f64) -> (f64, f64)) {
        for shape in self.pad_shapes() {
            let own = || {
                self.pads
                    .iter()
                    .filter(|p| p.pad == shape.pad)
                    .map(|p| place(p.point.x, p.point.y))
            };
            let start = (f64::INFINITY, f64::NEG_INFINITY);
            let (left, right) = own().fold(start, |(l, h), (x, _)| (l.min(x), h.max(x)));
            let (top, bottom) = own().fold(start, |(l, h), (_, y)| (l.min(y), h.max(y)));
            page.add(&format!(
                "<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" rx=\"3\" fill=\"none\" stroke=\"black\" stroke-width=\"0.5\"/>",
                n(left - 7.0),
                n(top - 7.5),
                n(right - left + 14.0),
                n(bottom - top + 12.5)
            ));
            page.text(
                f64::midpoint(left, right),
                bottom + 9.5,
                3.8,
                "middle",
                &shape.pad,
            );
        }
    }
}
