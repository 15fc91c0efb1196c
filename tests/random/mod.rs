//! Dice with a fixed seed, so that a failure comes back, and how long a random run is.
#![allow(dead_code, reason = "not every test throws all of them")]

use proptest::prelude::Rng;
use proptest::test_runner::{RngAlgorithm, TestRng};

/// How many times the usual number is run: `FUZZ_TIMES`, 1 if not set. Another number also throws other dice.
pub fn times() -> u32 {
    std::env::var("FUZZ_TIMES").map_or(1, |n| n.parse().expect("FUZZ_TIMES is a whole number"))
}

pub struct Dice(TestRng);

impl Dice {
    pub fn new(seed: u8) -> Self {
        let mut bytes = [seed; 32];
        bytes[..4].copy_from_slice(&times().to_le_bytes());
        Self(TestRng::from_seed(RngAlgorithm::ChaCha, &bytes))
    }

    /// Dice of their own for the item of this number, so that a failure comes back alone and in any order.
    pub fn numbered(seed: u8, number: u32) -> Self {
        let mut bytes = [seed; 32];
        bytes[..4].copy_from_slice(&number.to_le_bytes());
        Self(TestRng::from_seed(RngAlgorithm::ChaCha, &bytes))
    }

    pub fn roll(&mut self) -> u64 {
        self.0.next_u64()
    }

    pub fn below(&mut self, n: usize) -> usize {
        usize::try_from(self.roll() % n.max(1) as u64).unwrap()
    }

    pub fn of<'a, T>(&mut self, list: &'a [T]) -> &'a T {
        &list[self.below(list.len())]
    }

    /// Whether something happens that happens so often of a hundred times.
    pub fn chance(&mut self, percent: usize) -> bool {
        self.below(100) < percent
    }

    /// Anywhere between two numbers.
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * (self.roll() >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// One of a list, each as often as its weight says.
    pub fn weighed<T: Copy>(&mut self, list: &[(usize, T)]) -> T {
        let mut at = self.below(list.iter().map(|(weight, _)| weight).sum());
        for (weight, one) in list {
            if at < *weight {
                return *one;
            }
            at -= weight;
        }
        list[0].1
    }
}
