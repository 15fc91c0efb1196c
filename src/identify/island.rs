//! Readings that the same few bands can give, and what they tell: the integral over such readings of the sum over
//! candidates of `weight * density * log2(density / mixture)`.
//!
//! A density changes only near the ends of its band, within a few uncertainties of the reading; elsewhere it is flat and
//! the integral a product. So the ends alone are walked in small steps.

use alloc::vec::Vec;

use super::weigh::between;

/// Beyond this many standard uncertainties an end of a band no longer shows: 3e-6 of the readings lie there.
const REACH: f64 = 4.5;
/// The same after an earlier reading, which may lie four standard uncertainties from the band and then draws readings out
/// of it by as much.
const REACH_ROUND: f64 = 6.0;
/// Beyond this many a density is nil beside every other.
const NIL: f64 = 6.5;
/// Step of the trapezoid rule, in standard uncertainties. The integrand is smooth and flat at both ends, where the rule
/// doubles its digits with half the step: this one errs by less than 1e-4 bit.
const STEP: f64 = 0.75;

/// What an answer of this probability adds to the entropy, bit (Shannon 1948): nothing when it never or always comes.
pub(super) fn entropy(p: f64) -> f64 {
    if p > 0.0 { -p * libm::log2(p) } else { 0.0 }
}

/// How sharply readings show the ends of bands, and where they can lie at all.
#[derive(Debug, Clone, Copy)]
pub(super) struct Sight {
    /// Standard uncertainty with which a reading shows the end of a band.
    pub blur: f64,
    /// An earlier reading, with the standard uncertainty of a new one round it.
    pub round: Option<(f64, f64)>,
}

impl Sight {
    /// How far from its band a reading may lie, mm or degrees.
    pub fn reach(self) -> f64 {
        self.blur * self.round.map_or(REACH, |_| REACH_ROUND)
    }

    /// Share of the readings between two, before any band is thought of; their mere length without an earlier one.
    fn readings(self, from: f64, to: f64) -> f64 {
        match self.round {
            Some((x, spread)) => between((from - x) / spread, (to - x) / spread),
            None => to - from,
        }
    }

    /// Density of the above.
    fn readings_at(self, y: f64) -> f64 {
        self.round.map_or(1.0, |(x, spread)| {
            let z = (y - x) / spread;
            libm::exp(-0.5 * z * z) / (spread * 2.506_628_274_631_000_7)
        })
    }
}

/// One band, with what the candidates foresee that can give these readings in no other way.
struct Shore {
    low: f64,
    high: f64,
    /// Factor that makes a share of the band a density.
    height: f64,
    /// Sum of their weights, each times its share in the band.
    weight: f64,
    /// The same, each times the logarithm of its share.
    told: f64,
    /// What readings tell that come from this band and nothing else, by density: that cancels in the logarithm.
    alone: f64,
    /// Density at the reading in question.
    at: f64,
}

/// A candidate that can give these readings in several ways.
struct Mixed {
    weight: f64,
    /// Index of a band and the candidate's share in it.
    parts: Vec<(usize, f64)>,
    /// Density where the candidate has no figure.
    anywhere: f64,
    /// Density of its bands at the reading in question.
    at: f64,
}

/// Bands that lie so close that one reading may come from several.
pub(super) struct Island {
    sight: Sight,
    shores: Vec<Shore>,
    mixed: Vec<Mixed>,
    /// Density of the candidates that foresee no band here but have no figure.
    sea: f64,
}

impl Island {
    pub const fn new(sight: Sight) -> Self {
        Self {
            sight,
            shores: Vec::new(),
            mixed: Vec::new(),
            sea: 0.0,
        }
    }

    pub fn add_band(&mut self, low: f64, high: f64, height: f64) {
        self.shores.push(Shore {
            low,
            high,
            height,
            weight: 0.0,
            told: 0.0,
            alone: 0.0,
            at: 0.0,
        });
    }

    /// Adds a candidate with the bands that it foresees here.
    pub fn add_candidate(
        &mut self,
        weight: f64,
        parts: impl Iterator<Item = (usize, f64)>,
        anywhere: f64,
    ) {
        let mut parts = parts.peekable();
        let Some((band, share)) = parts.next() else {
            self.sea += weight * anywhere;
            return;
        };
        if anywhere <= 0.0 && parts.peek().is_none() {
            if let Some(shore) = self.shores.get_mut(band) {
                shore.weight += weight * share;
                shore.told += weight * share * libm::log2(share);
            }
            return;
        }
        self.mixed.push(Mixed {
            weight,
            parts: core::iter::once((band, share)).chain(parts).collect(),
            anywhere,
            at: 0.0,
        });
    }

    /// The integral over all readings that these bands can give, bit.
    pub fn bits(&mut self) -> f64 {
        for shore in &mut self.shores {
            shore.alone = shore.told + entropy(shore.weight);
        }
        if let ([only], [], true) = (
            self.shores.as_slice(),
            self.mixed.as_slice(),
            self.sea <= 0.0,
        ) {
            return only.alone;
        }
        let reach = self.sight.reach();
        let mut ends: Vec<f64> = self.shores.iter().flat_map(|b| [b.low, b.high]).collect();
        ends.sort_unstable_by(f64::total_cmp);
        let (mut at, mut last) = (
            ends.first().map_or(0.0, |end| end - reach),
            ends.last().map_or(0.0, |end| end + reach),
        );
        if let Some((x, spread)) = self.sight.round {
            let room = REACH_ROUND * spread;
            at = libm::fmax(at, x - room);
            last = libm::fmin(last, x + room);
        }
        let mut sum = 0.0;
        let mut ends = ends.into_iter().peekable();
        while let Some(first) = ends.next() {
            let mut end = first;
            while let Some(next) = ends.next_if(|next| next - reach < end + reach) {
                end = next;
            }
            let from = (first - reach).clamp(at, libm::fmax(at, last));
            let to = (end + reach).clamp(from, libm::fmax(from, last));
            sum += self.flat(at, from) + self.steps(from, to);
            at = to;
        }
        sum
    }

    /// The integral over a stretch where no density changes.
    fn flat(&mut self, from: f64, to: f64) -> f64 {
        if to > from {
            self.sight.readings(from, to) * self.told(f64::midpoint(from, to))
        } else {
            0.0
        }
    }

    /// The integral over a stretch in small steps, by the trapezoid rule.
    fn steps(&mut self, from: f64, to: f64) -> f64 {
        if to <= from {
            return 0.0;
        }
        let count = libm::ceil((to - from) / (STEP * self.sight.blur));
        let step = (to - from) / count;
        let mut sum = 0.5 * (self.weighed(from) + self.weighed(to));
        let mut k = 1.0;
        while k < count {
            sum += self.weighed(from + step * k);
            k += 1.0;
        }
        // Where the readings themselves thin out towards an end, the rule is corrected by the slope there (Euler and
        // Maclaurin).
        let tilt = self.slope(from) - self.slope(to);
        sum * step + tilt * step * step / 12.0
    }

    /// Slope of what readings tell where no density changes.
    fn slope(&mut self, y: f64) -> f64 {
        self.sight.round.map_or(0.0, |(x, spread)| {
            (x - y) / (spread * spread) * self.weighed(y)
        })
    }

    fn weighed(&mut self, y: f64) -> f64 {
        self.sight.readings_at(y) * self.told(y)
    }

    /// What a reading y tells. Where a candidate has no figure it foresees nothing, so that share of it tells nothing.
    fn told(&mut self, y: f64) -> f64 {
        let blur = self.sight.blur;
        let mut mixture = self.sea;
        for shore in &mut self.shores {
            let (from, to) = ((shore.low - y) / blur, (shore.high - y) / blur);
            shore.at = if from.max(-to) > NIL {
                0.0
            } else {
                shore.height * between(from, to)
            };
            mixture += shore.weight * shore.at;
        }
        for one in &mut self.mixed {
            one.at = 0.0;
            for (band, share) in &one.parts {
                one.at += share * self.shores.get(*band).map_or(0.0, |shore| shore.at);
            }
            mixture += one.weight * (one.at + one.anywhere);
        }
        let mut told = 0.0;
        for shore in &self.shores {
            let weighed = shore.weight * shore.at;
            if weighed >= mixture {
                told += shore.at * shore.alone;
            } else if weighed > 0.0 {
                told += shore.at * shore.told + weighed * libm::log2(shore.at / mixture);
            }
        }
        for one in &self.mixed {
            if one.at > 0.0 {
                told += one.weight * one.at * libm::log2((one.at + one.anywhere) / mixture);
            }
        }
        told
    }
}
