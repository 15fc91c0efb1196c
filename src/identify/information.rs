//! Expected information of a reading (Lindley 1956): the mutual information between candidate and reading, in bits.

use alloc::vec::Vec;

use super::Feature;
use super::band::{Band, Ground};
use super::gather::{Seen, Size};
use super::next::Left;
use super::weigh::{between, broad, density};

/// Expected information of a reading of `feature` with standard uncertainty `u` about which candidate it is, bit. An
/// earlier reading `held` narrows where the size can be.
pub(super) fn gain_of<'a>(
    ground: &Ground<'a>,
    left: &[Left<'a>],
    feature: Feature,
    u: f64,
    held: Option<&Size>,
    seen: &Seen<'_>,
) -> f64 {
    let width_known = seen.size(Feature::Width).is_some() || feature == Feature::Bore;
    let mut models: Vec<Held> = Vec::with_capacity(left.len());
    let mut absent = 0.0;
    for (who, l) in left.iter().enumerate() {
        let variants = if width_known {
            l.variant..l.variant + 1
        } else {
            0..l.entry.variants()
        };
        #[expect(clippy::cast_precision_loss, reason = "a handful of variants")]
        let share = l.weight / variants.len() as f64;
        for variant in variants {
            match ground.band(l.entry, feature, variant) {
                Band::Absent => absent += share,
                Band::Unknown => models.push(Held {
                    who,
                    weight: share,
                    model: Model::Anywhere(broad(feature)),
                }),
                Band::Sizes { low, high, .. } => {
                    models.push(Held {
                        who,
                        weight: share,
                        model: Model::Band { low, high },
                    });
                }
            }
        }
    }
    let present: f64 = models.iter().map(|m| m.weight).sum();
    let all = present + absent;
    if all <= 0.0 {
        return 0.0;
    }
    let h = |p: f64| if p > 0.0 { -p * libm::log2(p) } else { 0.0 };
    let seen_or_not = h(present / all) + h(absent / all);
    seen_or_not + present / all * mutual(&models, u, held)
}

/// Where the size may be under one candidate.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Model {
    Band { low: f64, high: f64 },
    Anywhere(f64),
}

impl Model {
    /// Share of the earlier reading that falls under this model.
    fn room(self, held: Option<&Size>) -> f64 {
        match (self, held) {
            (Self::Band { low, high }, Some(h)) => between((low - h.x) / h.u, (high - h.x) / h.u),
            _ => 1.0,
        }
    }

    /// Density of a new reading y, given an earlier one and the [`Self::room`] it leaves.
    fn density(self, y: f64, u: f64, held: Option<&Size>, room: f64) -> f64 {
        match (self, held) {
            (Self::Anywhere(density), _) => density,
            (Self::Band { low, high }, None) => density(y, u, low, high),
            (Self::Band { low, high }, Some(h)) => {
                if room <= 0.0 {
                    return 0.0;
                }
                let (a, b) = (h.u * h.u, u * u);
                let spread = libm::sqrt(a + b);
                let mean = (y * a + h.x * b) / (a + b);
                let narrow = h.u * u / spread;
                let z = (y - h.x) / spread;
                libm::exp(-0.5 * z * z) / (spread * 2.506_628_274_631_000_7)
                    * between((low - mean) / narrow, (high - mean) / narrow)
                    / room
            }
        }
    }
}

/// One variant of one candidate: who it belongs to, its weight, where the size may be.
#[derive(Debug, Clone, Copy)]
struct Held {
    who: usize,
    weight: f64,
    model: Model,
}

/// All models of one shape that take part, so that its density is worked out once.
struct Shape {
    model: Model,
    room: f64,
    /// Weight of the candidate in question, and of all.
    own: f64,
    mixed: f64,
}

/// Mutual information between candidate and reading, bit: the mean of log2(f_j / f) over candidates, sizes within
/// their band (eight places) and readings of that size (17 steps of half a standard uncertainty).
fn mutual(models: &[Held], u: f64, held: Option<&Size>) -> f64 {
    const PLACES: u8 = 8;
    const STEPS: i32 = 8;
    let all: f64 = models.iter().map(|m| m.weight).sum();
    let first = models.first().map(|m| m.model);
    if all <= 0.0 || models.iter().all(|m| Some(m.model) == first) {
        return 0.0;
    }
    let mut bits = 0.0;
    let mut shapes: Vec<Shape> = Vec::new();
    let mut told: Vec<(Model, f64)> = Vec::new();
    for one in models {
        let Model::Band { low, high } = one.model else {
            continue;
        };
        // Only where the earlier reading leaves room.
        let (from, to) = held.map_or((low, high), |h| {
            (
                libm::fmax(low, h.x - 4.0 * h.u),
                libm::fmin(high, h.x + 4.0 * h.u),
            )
        });
        if from > to {
            continue;
        }
        // Only models that a reading under this one can reach take part.
        let reach = 10.0 * u;
        let near = |m: &Held| match m.model {
            Model::Band { low: a, high: b } => a <= to + reach && b >= from - reach,
            Model::Anywhere(_) => true,
        };
        let own_weight: f64 = models
            .iter()
            .filter(|m| m.who == one.who)
            .map(|m| m.weight)
            .sum();
        // A candidate of one variant tells as much as any other of the same size.
        let single = models.iter().filter(|m| m.who == one.who).count() == 1;
        if single && let Some((_, told)) = told.iter().find(|(model, _)| *model == one.model) {
            bits += one.weight / all * told;
            continue;
        }
        shapes.clear();
        for m in models.iter().filter(|m| near(m)) {
            let own = if m.who == one.who { m.weight } else { 0.0 };
            if let Some(shape) = shapes.iter_mut().find(|s| s.model == m.model) {
                shape.own += own;
                shape.mixed += m.weight;
            } else {
                shapes.push(Shape {
                    model: m.model,
                    room: m.model.room(held),
                    own,
                    mixed: m.weight,
                });
            }
        }
        if let [only] = shapes.as_slice() {
            // One shape for all of them: the densities cancel.
            bits += one.weight / all * libm::log2(only.own / own_weight * all / only.mixed);
            continue;
        }
        let (mut sum, mut weights) = (0.0, 0.0);
        for place in 0..PLACES {
            let v = from + (to - from) * (f64::from(place) + 0.5) / f64::from(PLACES);
            let here = held.map_or(1.0, |h| {
                let z = (v - h.x) / h.u;
                libm::exp(-0.5 * z * z)
            });
            for step in -STEPS..=STEPS {
                let z = 4.0 * f64::from(step) / f64::from(STEPS);
                let y = v + z * u;
                let chance = here * libm::exp(-0.5 * z * z);
                weights += chance;
                let (mut own, mut mixed) = (0.0, 0.0);
                for shape in &shapes {
                    let d = shape.model.density(y, u, held, shape.room);
                    mixed += shape.mixed * d;
                    own += shape.own * d;
                }
                if own > 0.0 && mixed > 0.0 {
                    sum += chance * libm::log2(own / own_weight * all / mixed);
                }
            }
        }
        if weights > 0.0 {
            bits += one.weight / all * sum / weights;
            if single {
                told.push((one.model, sum / weights));
            }
        }
    }
    libm::fmax(bits, 0.0)
}

#[cfg(test)]
mod tests {
    use super::{Held, Model, mutual};

    fn two(a: Model, b: Model, u: f64) -> f64 {
        let held = |who, model| Held {
            who,
            weight: 0.5,
            model,
        };
        mutual(&[held(0, a), held(1, b)], u, None)
    }

    /// Two equally likely points, Gaussian readings: the separation-power table of the measurement notes (derived
    /// there by independent integration; delta = distance in standard uncertainties).
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
            let point = |at: f64| Model::Band { low: at, high: at };
            let got = two(point(27.0), point(27.0 + delta * 0.02), 0.02);
            assert!(
                (got - bits).abs() < 2e-4,
                "delta {delta}: {got} against {bits}"
            );
        }
    }

    /// Bands far apart tell everything, equal bands nothing.
    #[test]
    fn the_ends_of_the_scale() {
        let band = |low: f64| Model::Band {
            low,
            high: low + 0.05,
        };
        let far = two(band(27.0), band(28.0), 0.01);
        assert!((far - 1.0).abs() < 1e-3, "{far}");
        assert!(two(band(27.0), band(27.0), 0.01) < 1e-9);
    }
}
