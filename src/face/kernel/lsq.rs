//! Least squares of z over (x, y), vertical residuals, centred so that offsets cost no digits.

use super::{Abc, P};

/// Smallest ratio of the short to the long spread of the points for which a tilt across the short way means anything.
const THINNEST: f64 = 1e-5;

/// Sums about the centroid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Fit {
    pub(crate) plane: Abc,
    /// Centroid of the points.
    pub(crate) centre: (f64, f64),
    pub(crate) n: f64,
    sxx: f64,
    sxy: f64,
    syy: f64,
}

/// The plane, or `None` for fewer than three points or points on one line.
pub(crate) fn fit(points: &[P]) -> Option<Fit> {
    if points.len() < 3 {
        return None;
    }
    #[expect(clippy::cast_precision_loss, reason = "a count")]
    let n = points.len() as f64;
    let (mut mx, mut my, mut mz) = (0.0, 0.0, 0.0);
    for p in points {
        mx += p.x;
        my += p.y;
        mz += p.z;
    }
    (mx, my, mz) = (mx / n, my / n, mz / n);
    let (mut sxx, mut sxy, mut syy, mut sxz, mut syz) = (0.0, 0.0, 0.0, 0.0, 0.0);
    for p in points {
        let (x, y, z) = (p.x - mx, p.y - my, p.z - mz);
        sxx += x * x;
        sxy += x * y;
        syy += y * y;
        sxz += x * z;
        syz += y * z;
    }
    let det = sxx * syy - sxy * sxy;
    let trace = sxx + syy;
    // det = product of the principal spreads; against the square of their sum it says how thin the cloud is.
    // Not `det <= …`: a NaN must not pass.
    let thick = det > THINNEST * THINNEST * trace * trace;
    if !thick {
        return None;
    }
    let a = (sxz * syy - syz * sxy) / det;
    let b = (syz * sxx - sxz * sxy) / det;
    Some(Fit {
        plane: Abc {
            a,
            b,
            c: mz - a * mx - b * my,
        },
        centre: (mx, my),
        n,
        sxx,
        sxy,
        syy,
    })
}

impl Fit {
    /// Standard uncertainty of the slope in y, for reading noise u.
    pub(crate) fn slope_y_u(&self, u: f64) -> f64 {
        let det = self.sxx * self.syy - self.sxy * self.sxy;
        u * libm::sqrt(libm::fmax(self.sxx / det, 0.0))
    }
    /// Largest standard uncertainty of a slope over all directions, for reading noise u.
    pub(crate) fn worst_slope_u(&self, u: f64) -> f64 {
        let mean = f64::midpoint(self.sxx, self.syy);
        let half = libm::hypot((self.sxx - self.syy) / 2.0, self.sxy);
        u / libm::sqrt(libm::fmax(mean - half, f64::MIN_POSITIVE))
    }
}

/// Whether all points lie on one line (or on one spot), by the same measure as the fit.
pub(crate) fn on_one_line(points: &[P]) -> bool {
    fit(points).is_none()
}

/// A frame in which the sum of squared residuals about the least-squares plane is a plain square.
pub(crate) struct Frame {
    centre: (f64, f64),
    l11: f64,
    l21: f64,
    l22: f64,
    root_n: f64,
}

impl Fit {
    /// Cholesky root of the normal matrix about the centroid.
    pub(crate) fn frame(&self) -> Frame {
        let l11 = libm::sqrt(self.sxx);
        let l21 = self.sxy / l11;
        let l22 = libm::sqrt(libm::fmax(self.syy - l21 * l21, f64::MIN_POSITIVE));
        Frame {
            centre: self.centre,
            l11,
            l21,
            l22,
            root_n: libm::sqrt(self.n),
        }
    }
}

impl Frame {
    /// How a plane's height over (x, y) grows with the coordinates of this frame.
    pub(crate) fn row(&self, x: f64, y: f64) -> [f64; 3] {
        let (x, y) = (x - self.centre.0, y - self.centre.1);
        let first = x / self.l11;
        [first, (y - self.l21 * first) / self.l22, 1.0 / self.root_n]
    }
    /// Changes of slope in x, slope in y and height on the axis, from the coordinates of this frame.
    pub(crate) fn slopes(&self, u: &[f64; 3]) -> [f64; 3] {
        let [u1, u2, u3] = u;
        let b = u2 / self.l22;
        let a = (u1 - self.l21 * b) / self.l11;
        [
            a,
            b,
            u3 / self.root_n - a * self.centre.0 - b * self.centre.1,
        ]
    }
}
