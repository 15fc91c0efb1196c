//! Private kernels on bare millimetres. Nothing here allocates; callers have checked that every number is finite.

mod brute;
pub(crate) mod lsq;
mod reference;
pub(crate) mod seat;
pub(crate) mod shape;
pub(crate) mod tangent;
pub(crate) mod zone;

pub(crate) use super::plane::Point as P;

/// z = a x + b y + c.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Abc {
    pub(crate) a: f64,
    pub(crate) b: f64,
    pub(crate) c: f64,
}

impl Abc {
    #[inline]
    pub(crate) fn at(&self, x: f64, y: f64) -> f64 {
        self.a * x + self.b * y + self.c
    }
    #[inline]
    pub(crate) fn residual(&self, p: &P) -> f64 {
        p.z - self.a * p.x - self.b * p.y - self.c
    }
    /// Lowest and highest residual.
    pub(crate) fn range(&self, points: &[P]) -> (f64, f64) {
        points
            .iter()
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), p| {
                let r = self.residual(p);
                (
                    if r < low { r } else { low },
                    if r > high { r } else { high },
                )
            })
    }
}

/// Far more steps than a walk from point to point ever took: where rounding would make it go round for ever, it gives up.
pub(crate) fn most_steps(points: &[P]) -> u32 {
    200 + 20 * u32::try_from(points.len()).unwrap_or(u32::MAX / 40)
}

/// Sizes from which the rounding of a residual follows.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Scale {
    pub(crate) x: f64,
    pub(crate) y: f64,
    pub(crate) z: f64,
}

impl Scale {
    pub(crate) fn of(points: &[P], axis: (f64, f64)) -> Self {
        points.iter().fold(
            Self {
                x: 0.0,
                y: 0.0,
                z: 0.0,
            },
            |most, p| Self {
                x: most.x.max((p.x - axis.0).abs()),
                y: most.y.max((p.y - axis.1).abs()),
                z: most.z.max(p.z.abs()),
            },
        )
    }
    /// Size of the heights that a residual about this plane is made of: a steep plane is part of it.
    pub(crate) fn height(&self, plane: &Abc) -> f64 {
        self.z + plane.a.abs() * self.x + plane.b.abs() * self.y
    }
    /// What rounding can make of a residual about this plane.
    pub(crate) fn rounding(&self, plane: &Abc) -> f64 {
        2e-14 * self.height(plane)
    }
}
