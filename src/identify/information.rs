//! Expected information of a reading (Lindley 1956): the mutual information between candidate and reading, in bits.

use alloc::vec::Vec;

use super::Feature;
use super::band::{Band, Ground};
use super::entry::Left;
use super::gather::{Seen, Size};
use super::island::{Island, Sight, entropy};

use super::weigh::{between, broad};

/// A size without a spread counts as a band this wide either way, mm or degrees: far below every uncertainty.
const POINT: f64 = 1e-5;

/// Where the readings of one feature may fall under the candidates left, before an instrument is chosen.
pub(super) struct Forecast {
    /// The different bands that are named.
    bands: Vec<Shape>,
    /// The different candidates: those that foresee the same count as one.
    foreseen: Vec<Foreseen>,
    /// The earlier reading and its standard uncertainty, which narrow where the size can be.
    held: Option<(f64, f64)>,
    /// Share of the candidates that have the feature at all.
    present: f64,
    /// Information in seeing whether it is there, bit.
    seen_or_not: f64,
}

/// Where the size lies under some candidate, evenly spread, with the factor that makes it a density.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Shape {
    low: f64,
    high: f64,
    height: f64,
}

/// What one candidate foresees, or several alike.
struct Foreseen {
    weight: f64,
    /// Index of a band and the share of the candidate that lies in it.
    parts: Vec<(usize, f64)>,
    /// Density where the candidate has no figure.
    anywhere: f64,
}

impl Forecast {
    /// What the candidates foresee of `feature`, given an earlier reading of it.
    pub(super) fn of<'a>(
        ground: &Ground<'a>,
        left: &[Left<'a>],
        feature: Feature,
        held: Option<&Size>,
        seen: &Seen<'_>,
    ) -> Self {
        let width_known = seen.size(Feature::Width).is_some() || feature == Feature::Bore;
        let mut forecast = Self::new(held.map(|h| (h.x, h.u)));
        // Without a figure a size may be anywhere; after a reading it is where that has it.
        let unknown = if held.is_some() { 1.0 } else { broad(feature) };
        let mut absent = 0.0;
        for l in left {
            let variants = if width_known {
                l.variant..l.variant + 1
            } else {
                0..l.entry.variants()
            };
            #[expect(clippy::cast_precision_loss, reason = "a handful of variants")]
            let each = 1.0 / variants.len() as f64;
            let mut one = Foreseen {
                weight: l.weight,
                parts: Vec::new(),
                anywhere: 0.0,
            };
            // A row has the feature in all of its variants or in none.
            let mut present = true;
            for variant in variants {
                match ground.band(l.entry, feature, variant) {
                    Band::Absent => present = false,
                    Band::Unknown => one.anywhere += each * unknown,
                    Band::Sizes { low, high, .. } => forecast.lay(&mut one, low, high, each),
                }
            }
            if present {
                forecast.add(one);
            } else {
                absent += l.weight;
            }
        }
        forecast.settle(absent);
        forecast
    }

    const fn new(held: Option<(f64, f64)>) -> Self {
        Self {
            bands: Vec::new(),
            foreseen: Vec::new(),
            held,
            present: 0.0,
            seen_or_not: 0.0,
        }
    }

    /// Adds a band to what a candidate foresees.
    fn lay(&mut self, one: &mut Foreseen, low: f64, high: f64, share: f64) {
        let middle = f64::midpoint(low, high);
        let half = libm::fmax(0.5 * (high - low), POINT);
        let (low, high) = (middle - half, middle + half);
        let height = match self.held {
            None => 1.0 / (high - low),
            Some((x, u)) => {
                let (from, to) = ((low - x) / u, (high - x) / u);
                // Where the earlier reading leaves no room there is nothing to foresee.
                if libm::fmax(from, -to) > 4.0 {
                    return;
                }
                1.0 / between(from, to)
            }
        };
        let shape = Shape { low, high, height };
        let index = self.bands.iter().position(|held| *held == shape);
        let index = index.unwrap_or_else(|| {
            self.bands.push(shape);
            self.bands.len() - 1
        });
        match one.parts.iter_mut().find(|(part, _)| *part == index) {
            Some((_, held)) => *held += share,
            None => one.parts.push((index, share)),
        }
    }

    fn add(&mut self, one: Foreseen) {
        let like =
            |held: &&mut Foreseen| (&held.parts, held.anywhere) == (&one.parts, one.anywhere);
        match self.foreseen.iter_mut().find(like) {
            Some(held) => held.weight += one.weight,
            None => self.foreseen.push(one),
        }
    }

    /// Brings the weights to one and tells what the mere presence of the feature says.
    fn settle(&mut self, absent: f64) {
        let present: f64 = self.foreseen.iter().map(|one| one.weight).sum();
        if present <= 0.0 {
            return;
        }
        let all = present + absent;
        self.seen_or_not = entropy(present / all) + entropy(absent / all);
        self.present = present / all;
        self.foreseen
            .iter_mut()
            .for_each(|one| one.weight /= present);
    }

    /// Expected information of a reading with standard uncertainty `u` about which candidate it is, bit.
    pub(super) fn gain(&self, u: f64) -> f64 {
        if self.foreseen.len() < 2 {
            return self.seen_or_not;
        }
        let (mut blur, mut round, mut pull) = (u, None, 0.0);
        if let Some((x, held)) = self.held {
            // The size is the mean of both readings, give or take less than either: an end of a band shows where that
            // mean passes it.
            pull = (u / held) * (u / held);
            let spread = libm::hypot(u, held);
            blur = u * spread / held;
            round = Some((x, spread));
        }
        let sight = Sight { blur, round };
        let reach = sight.reach();
        let shown = |end: f64| end + round.map_or(0.0, |(x, _)| (end - x) * pull);
        let mut order: Vec<(usize, Shape)> = self.bands.iter().copied().enumerate().collect();
        order.sort_unstable_by(|(_, a), (_, b)| a.low.total_cmp(&b.low));
        let mut bits = 0.0;
        let mut rest = order.as_slice();
        while let Some((_, first)) = rest.first() {
            // Bands belong together while a reading may come from the next and from one before.
            let mut high = shown(first.high);
            let close = |(_, band): &&(usize, Shape)| {
                let near = shown(band.low) - reach < high + reach;
                high = libm::fmax(high, shown(band.high));
                near
            };
            let (here, others) = rest.split_at(rest.iter().take_while(close).count());
            bits += self.island(here, sight, &shown).bits();
            rest = others;
        }
        self.seen_or_not + self.present * libm::fmax(bits, 0.0)
    }

    fn island(&self, here: &[(usize, Shape)], sight: Sight, shown: &dyn Fn(f64) -> f64) -> Island {
        let mut island = Island::new(sight);
        for (_, band) in here {
            island.add_band(shown(band.low), shown(band.high), band.height);
        }
        for one in &self.foreseen {
            let place = |part: usize| here.iter().position(|(index, _)| *index == part);
            let parts = one.parts.iter();
            let parts = parts.filter_map(|(part, share)| Some((place(*part)?, *share)));
            island.add_candidate(one.weight, parts, one.anywhere);
        }
        island
    }
}

#[cfg(test)]
mod tests;
