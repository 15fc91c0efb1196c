//! What a survey cannot tell, and what looks wrong in it. Warnings never change an answer.

use alloc::vec::Vec;

use super::ring::RingSurvey;
use crate::evidence::Text;
use crate::quantity::in_mm;

/// What a survey cannot tell, or what looks wrong in it. A warning never changes an answer.
///
/// ```
/// # use framegauge::{Grade, Radius, deg, face::*, in_mm, measure::{DecisionRule, Reading}, mm};
/// # let r = |v| Radius::new(mm(v)).unwrap();
/// # let ring = |heights: &[f64]| RingSurvey::new(Annulus::new(r(17.0), r(21.0)).unwrap(), "through bar",
/// #     heights.iter().enumerate().map(|(i, z)| Probe { at: Clock::new(deg(360.0 * i as f64 / heights.len() as f64)).unwrap(),
/// #         radius: r(20.0), height: Reading::new(mm(*z), mm(0.004)).unwrap() }).collect::<Vec<_>>()).unwrap();
/// let warnings = ring(&[0.01, 0.0, 0.01, 0.0, 2.0, 0.0, 0.01]).warnings();
/// assert!(matches!(warnings[0], Warning::Suspect { probe: 4, .. }));
/// ```
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(tag = "warning", rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Warning {
    /// This reading stands apart from all the others by ten times their own spread: a slip of the decimal, a chip or
    /// paint under the foot? It is kept in every answer.
    Suspect {
        /// Place in the list of probes, from 0.
        probe: usize,
        /// The reading, in words.
        reading: Text,
    },
    /// All probes lie on one side of the axis: nothing is known of the seat there.
    AxisOutside,
    /// Fewer than five probes: a saddle cannot be told from tilt and dish.
    Few {
        /// How many there are.
        probes: usize,
    },
    /// Evenly spaced, even in number: the axis lies on every line between opposite probes, and the computed seat
    /// looks as if it rocked. Five, seven or nine probes do not have that fault.
    EvenCount {
        /// How many there are.
        probes: usize,
    },
}

impl RingSurvey {
    /// What the survey cannot tell, or what looks wrong in it.
    #[must_use]
    pub fn warnings(&self) -> Vec<Warning> {
        let mut warnings = Vec::new();
        if let Some(probe) = self.suspect() {
            let reading = self.probes().get(probe).map_or_else(Text::default, |p| {
                alloc::format!("{} at {}", in_mm(p.height.value()), p.at).into()
            });
            warnings.push(Warning::Suspect { probe, reading });
        }
        if self.widest_gap() >= core::f64::consts::PI - 1e-9 {
            warnings.push(Warning::AxisOutside);
        }
        let fewest = self
            .circles
            .iter()
            .map(|c| c.order.len())
            .max()
            .unwrap_or(0);
        if fewest < 5 {
            warnings.push(Warning::Few { probes: fewest });
        }
        if fewest % 2 == 0 && self.evenly_spaced() {
            warnings.push(Warning::EvenCount { probes: fewest });
        }
        warnings
    }

    /// The one height that lies farther from the middle of the others than ten times their own spread about it.
    fn suspect(&self) -> Option<usize> {
        const TIMES: f64 = 10.0;
        if self.points.len() < 4 {
            return None;
        }
        // Only an extreme height can be it, so sorting once is enough.
        let mut heights: Vec<(f64, usize)> = self
            .points
            .iter()
            .enumerate()
            .map(|(i, p)| (p.z, i))
            .collect();
        heights.sort_by(|a, b| a.0.total_cmp(&b.0));
        let beyond = |apart: &(f64, usize), others: &[(f64, usize)]| {
            let middle = others.get(others.len() / 2).map_or(0.0, |o| o.0);
            let spread = others
                .iter()
                .map(|o| (o.0 - middle).abs())
                .fold(0.0, f64::max);
            let out = (apart.0 - middle).abs();
            (out > TIMES * spread && out > TIMES * self.u_mm()).then_some(apart.1)
        };
        let (first, rest) = heights.split_first()?;
        beyond(first, rest).or_else(|| {
            heights
                .split_last()
                .and_then(|(last, rest)| beyond(last, rest))
        })
    }

    fn evenly_spaced(&self) -> bool {
        self.circles.iter().all(|circle| {
            #[expect(clippy::cast_precision_loss, reason = "a count")]
            let even = core::f64::consts::TAU / circle.order.len() as f64;
            self.neighbours(circle)
                .all(|(_, gap, _)| (gap - even).abs() < 0.01)
        })
    }

    /// The widest angle without a probe, over both circles taken together.
    fn widest_gap(&self) -> f64 {
        let mut angles: Vec<f64> = self.probes().iter().map(|p| p.at.radians()).collect();
        angles.sort_by(f64::total_cmp);
        let first = angles.first().copied().unwrap_or(0.0);
        let wrapped = angles
            .iter()
            .skip(1)
            .copied()
            .chain([first + core::f64::consts::TAU]);
        angles
            .iter()
            .zip(wrapped)
            .map(|(a, b)| b - a)
            .fold(0.0, f64::max)
    }
}
