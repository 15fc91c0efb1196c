//! Expected information of a reading (Lindley 1956): the mutual information between candidate and reading, in bits.

use alloc::vec::Vec;

use super::Feature;
use super::band::{Band, Ground};
use super::gather::{Seen, Size};
use super::island::{Island, Sight};
use super::next::Left;
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
                weight: 0.0,
                parts: Vec::new(),
                anywhere: 0.0,
            };
            for variant in variants {
                match ground.band(l.entry, feature, variant) {
                    Band::Absent => {
                        absent += each * l.weight;
                        continue;
                    }
                    Band::Unknown => one.anywhere += each * unknown,
                    Band::Sizes { low, high, .. } => forecast.lay(&mut one, low, high, each),
                }
                one.weight += each;
            }
            if one.weight > 0.0 {
                let whole = one.weight;
                one.parts.iter_mut().for_each(|(_, share)| *share /= whole);
                one.anywhere /= whole;
                one.weight *= l.weight;
                forecast.add(one);
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
        let (low, high) = if high - low < 2.0 * POINT {
            let middle = f64::midpoint(low, high);
            (middle - POINT, middle + POINT)
        } else {
            (low, high)
        };
        let height = match self.held {
            None => 1.0 / (high - low),
            Some((x, u)) => {
                let (from, to) = ((low - x) / u, (high - x) / u);
                // Where the earlier reading leaves no room there is nothing to foresee.
                if from > 4.0 || to < -4.0 {
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
        let like = |held: &&mut Foreseen| held.parts == one.parts && held.anywhere == one.anywhere;
        match self.foreseen.iter_mut().find(like) {
            Some(held) => held.weight += one.weight,
            None => self.foreseen.push(one),
        }
    }

    /// Brings the weights to one and tells what the mere presence of the feature says.
    fn settle(&mut self, absent: f64) {
        let present: f64 = self.foreseen.iter().map(|one| one.weight).sum();
        let all = present + absent;
        if all <= 0.0 || present <= 0.0 {
            return;
        }
        let h = |p: f64| if p > 0.0 { -p * libm::log2(p) } else { 0.0 };
        self.seen_or_not = h(present / all) + h(absent / all);
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
        let shown = |end: f64| end + round.map_or(0.0, |(x, _)| (end - x) * pull);
        let mut order: Vec<(usize, Shape)> = self.bands.iter().copied().enumerate().collect();
        order.sort_unstable_by(|(_, a), (_, b)| a.low.total_cmp(&b.low));
        let mut bits = 0.0;
        let mut rest = order.as_slice();
        while let Some((_, first)) = rest.first() {
            // Bands belong together while a reading may come from the next and from one before.
            let mut high = shown(first.high);
            let close = |(_, band): &&(usize, Shape)| {
                let near = shown(band.low) - high < 2.0 * sight.reach();
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
mod tests {
    use std::vec;
    use std::vec::Vec;

    use super::{Forecast, Foreseen};

    /// A candidate's weight and its bands, all alike likely.
    type Case<'c> = (f64, &'c [(f64, f64)]);

    /// No figure.
    const OPEN: (f64, f64) = (0.0, f64::INFINITY);
    const BROAD: f64 = 1.0 / 40.0;
    const PLACES: u32 = 500;

    fn forecast(cases: &[Case<'_>], held: Option<(f64, f64)>) -> Forecast {
        let mut forecast = Forecast::new(held);
        for (weight, bands) in cases {
            let mut one = Foreseen {
                weight: *weight,
                parts: vec![],
                anywhere: 0.0,
            };
            let share = 1.0 / bands.len() as f64;
            for band in *bands {
                if *band == OPEN {
                    one.anywhere += share * held.map_or(BROAD, |_| 1.0);
                } else {
                    forecast.lay(&mut one, band.0, band.1, share);
                }
            }
            forecast.add(one);
        }
        forecast.settle(0.0);
        forecast
    }

    fn equal(bands: &[(f64, f64)]) -> Forecast {
        let cases: Vec<Case<'_>> = bands
            .iter()
            .map(|b| (1.0, std::slice::from_ref(b)))
            .collect();
        forecast(&cases, None)
    }

    fn normal(x: f64, u: f64) -> f64 {
        (-0.5 * x * x / (u * u)).exp() / (u * (2.0 * core::f64::consts::PI).sqrt())
    }

    /// The definition on a fine grid, without a closed form: sizes by hundreds in each band, weighed by the earlier
    /// reading, and Gaussian readings round each. What a candidate without a figure foresees tells nothing.
    fn by_definition(cases: &[Case<'_>], held: Option<(f64, f64)>, u: f64) -> f64 {
        let sizes = |(low, high): (f64, f64)| -> Vec<(f64, f64)> {
            let likely = |v: f64| held.map_or(1.0, |(x, h)| normal(v - x, h));
            let place = |k: u32| low + (f64::from(k) + 0.5) / f64::from(PLACES) * (high - low);
            let sizes = (0..PLACES).map(|k| (place(k), likely(place(k))));
            let all: f64 = sizes.clone().map(|(_, likely)| likely).sum();
            sizes.map(|(v, likely)| (v, likely / all)).collect()
        };
        let all: f64 = cases.iter().map(|(weight, _)| weight).sum();
        let closed = |bands: &[(f64, f64)]| -> Vec<(f64, f64)> {
            bands.iter().copied().filter(|b| *b != OPEN).collect()
        };
        // Weight, share without a figure, and every size with its share.
        let spread = cases.iter().map(|(weight, bands)| {
            let (share, closed) = (1.0 / bands.len() as f64, closed(bands));
            let open = share * (bands.len() - closed.len()) as f64;
            let sizes = closed.into_iter().flat_map(sizes);
            let sizes: Vec<_> = sizes.map(|(v, likely)| (v, share * likely)).collect();
            (weight / all, open, sizes)
        });
        let spread: Vec<_> = spread.collect();
        let ends: Vec<(f64, f64)> = cases.iter().flat_map(|(_, bands)| closed(bands)).collect();
        let mut y = ends.iter().map(|b| b.0).fold(f64::MAX, f64::min) - 6.0 * u;
        let to = ends.iter().map(|b| b.1).fold(f64::MIN, f64::max) + 6.0 * u;
        let step = u / 3.0;
        let mut bits = 0.0;
        while y < to {
            let anywhere = held.map_or(BROAD, |(x, h)| normal(y - x, u.hypot(h)));
            let banded = |sizes: &[(f64, f64)]| -> f64 {
                sizes
                    .iter()
                    .map(|(v, likely)| likely * normal(y - v, u))
                    .sum()
            };
            let own: Vec<(f64, f64, f64)> = spread
                .iter()
                .map(|(weight, open, sizes)| (*weight, open * anywhere, banded(sizes)))
                .collect();
            let mixture: f64 = own
                .iter()
                .map(|(weight, open, banded)| weight * (open + banded))
                .sum();
            for (weight, open, banded) in own {
                if banded > 0.0 {
                    bits += weight * banded * ((open + banded) / mixture).log2() * step;
                }
            }
            y += step;
        }
        bits
    }

    /// Apart, overlapping, one within the other, with a shared end; of one width and of several; with a candidate
    /// without a figure; by finer and coarser readings; after an earlier reading in the middle, at an end, and beside.
    #[test]
    fn the_walk_agrees_with_the_definition() {
        let (a, b, c) = ((27.0, 27.2), (27.1, 27.3), (27.2, 27.4));
        let (inner, far) = ((27.05, 27.1), (27.9, 28.1));
        let mixes: [&[Case<'_>]; 8] = [
            &[(1.0, &[a]), (1.0, &[b])],
            &[(1.0, &[a]), (2.0, &[inner])],
            &[(1.0, &[a, c]), (1.0, &[a, inner]), (0.5, &[b])],
            &[(1.0, &[a]), (1.0, &[b, OPEN]), (1.0, &[OPEN])],
            &[(1.0, &[a]), (0.3, &[c]), (0.1, &[far])],
            &[(1.0, &[a, far]), (1.0, &[b, c]), (0.5, &[far])],
            &[(1.0, &[a]), (1.0, &[b]), (1.0, &[OPEN])],
            &[(1.0, &[inner]), (1.0, &[c, far]), (4.0, &[OPEN])],
        ];
        let earlier = [(27.1, 0.05), (27.2, 0.04), (27.0, 0.05)];
        let asked = (mixes.iter().map(|cases| (cases, None))).chain(
            mixes
                .iter()
                .take(4)
                .flat_map(|cases| earlier.map(|held| (cases, Some(held)))),
        );
        for (cases, held) in asked {
            let readings = held.map_or([0.01, 0.03, 0.1, 0.4], |(_, u)| {
                [0.09, 0.2, 0.5, 0.7].map(|k| k * u)
            });
            for u in readings {
                let got = forecast(cases, held).gain(u);
                let expected = by_definition(cases, held, u);
                assert!(
                    (got - expected).abs() < 5e-5,
                    "{cases:?} {held:?} {u}: {got} against {expected}"
                );
            }
        }
    }

    /// Two equally likely points, Gaussian readings: a table of separation power that was integrated
    /// independently of this crate (delta = distance in standard uncertainties).
    #[test]
    fn separation_power() {
        for (delta, bits) in [
            (0.25, 0.011_183_9),
            (0.5, 0.043_73),
            (1.0, 0.160_747),
            (1.5, 0.319_082),
            (2.0, 0.485_944),
            (2.5, 0.637_23),
            (3.0, 0.759_979),
            (3.5, 0.850_832),
            (4.0, 0.912_822),
            (5.0, 0.975_179),
            (6.0, 0.994_447),
        ] {
            let other = 27.0 + delta * 0.02;
            let got = equal(&[(27.0, 27.0), (other, other)]).gain(0.02);
            assert!(
                (got - bits).abs() < 1e-4,
                "delta {delta}: {got} against {bits}"
            );
        }
    }

    /// Bands far apart tell everything, equal bands nothing.
    #[test]
    fn the_ends_of_the_scale() {
        let band = |low: f64| (low, low + 0.05);
        let far = equal(&[band(27.0), band(28.0)]).gain(0.01);
        assert!((far - 1.0).abs() < 2e-5, "{far}");
        assert!(equal(&[band(27.0), band(27.0)]).gain(0.01) < 1e-9);
    }
}
