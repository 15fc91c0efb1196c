//! Sliding fits: a post in a tube, depth by depth.

use alloc::vec::Vec;

use super::caution::{Caution, note};
use super::shape::{Shape, SizeReading};
use crate::measure::{Reading, settled_cmp};
use crate::quantity::{Angle, Depth, Length, deg, nanometres, to_mm, um};
use crate::{Error, ErrorKind};

/// Clearance at one depth of a tube.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct DepthClearance {
    /// Depth from the mouth.
    #[cfg_attr(
        feature = "serde",
        serde(rename = "depth_mm", serialize_with = "crate::quantity::serial::as_mm")
    )]
    pub depth: Length,
    /// Smallest diameter there less the largest of the post.
    pub tightest: Reading,
    /// Largest diameter there less the smallest of the post.
    pub loosest: Reading,
}

/// How a post sits in a tube. Clearances are on diameter; negative means that it does not go in without force.
#[derive(Debug, Clone, PartialEq)]
pub struct Slide {
    /// Clearance depth by depth, from the mouth inwards.
    pub depths: Vec<DepthClearance>,
    /// The tightest place that the post reaches.
    pub tightest: Reading,
    /// The loosest place that the post reaches.
    pub loosest: Reading,
    /// Shape of the bore that the post reaches.
    pub bore: Shape,
    /// Shape of the post.
    pub post: Shape,
    /// How far the post can lean in the tube before the clamp is closed: mean clearance over engaged length. Nothing when
    /// there is no clearance.
    pub lean: Angle,
    /// Readings deeper than the post reaches, left out.
    pub beyond: usize,
    /// Warnings.
    pub cautions: Vec<Caution>,
}

/// Sets a measured post into a measured tube, engaged over this length.
///
/// `series_step` is the step of the sizes that posts come in: a gap of a whole step means that the next size fits.
///
/// # Errors
/// As [`Shape::of`]; `Missing` when no bore reading lies within the engaged length.
///
/// ```
/// use framegauge::{Depth, fit::{Caution, SizeReading, slide}, in_mm, mm};
/// let tube = |text: &str, depth: f64| SizeReading::new(text.parse().unwrap()).at_depth(mm(depth)).unwrap();
/// let post = [SizeReading::new("26.98 +/- 0.01 mm".parse().unwrap())];
/// let bore = [tube("27.24 +/- 0.02 mm", 5.0), tube("27.22 +/- 0.02 mm", 80.0), tube("26.90 +/- 0.02 mm", 150.0)];
/// let sits = slide(&bore, &post, Depth::new(mm(100.0)).unwrap(), Some(mm(0.2))).unwrap();
/// assert_eq!(in_mm(sits.tightest.value()).to_string(), "0.240 mm");
/// assert_eq!(sits.beyond, 1); // the step at 150 mm is not reached
/// assert!(sits.cautions.contains(&Caution::NextSizeFits));
/// ```
pub fn slide(
    bore: &[SizeReading],
    post: &[SizeReading],
    engaged: Depth,
    series_step: Option<Length>,
) -> Result<Slide, Error> {
    let reached: Vec<SizeReading> = bore
        .iter()
        .copied()
        .filter(|r| {
            r.depth()
                .is_none_or(|d| settled_cmp(d, engaged.length()).is_le())
        })
        .collect();
    if reached.is_empty() && !bore.is_empty() {
        return Err(Error::new(
            ErrorKind::Missing,
            "readings",
            alloc::format!("engaged {engaged}"),
            "no reading of the tube lies where the post sits",
            "measure the tube between its mouth and the end of the post",
        ));
    }
    let tube = Shape::of(&reached).map_err(|e| e.within("tube"))?;
    let inner = Shape::of(post).map_err(|e| e.within("post"))?;
    let tightest = tube.smallest().less(&inner.largest());
    let loosest = tube.largest().less(&inner.smallest());
    let mean_gap = tube.mean().less(&inner.mean());
    let mut cautions = Vec::new();
    for caution in tube.cautions().iter().chain(inner.cautions()) {
        note(&mut cautions, *caution);
    }
    if let Some(step) = series_step
        && settled_cmp(step, um(1.0)).is_gt()
        && settled_cmp(tightest.value(), step).is_ge()
    {
        note(&mut cautions, Caution::NextSizeFits);
    }
    note(&mut cautions, Caution::MakerFirst);
    let gap = libm::fmax(to_mm(mean_gap.value()), 0.0);
    let lean = libm::atan(gap / to_mm(engaged.length()));
    Ok(Slide {
        depths: by_depth(&reached, &inner)?,
        tightest,
        loosest,
        lean: deg(lean.to_degrees()),
        beyond: bore.len() - reached.len(),
        bore: tube,
        post: inner,
        cautions,
    })
}

fn by_depth(bore: &[SizeReading], post: &Shape) -> Result<Vec<DepthClearance>, Error> {
    let mut depths: Vec<Length> = bore.iter().filter_map(SizeReading::depth).collect();
    depths.sort_by(|a, b| settled_cmp(*a, *b));
    depths.dedup_by(|a, b| settled_cmp(*a, *b).is_eq());
    depths
        .into_iter()
        .map(|depth| {
            let here: Vec<SizeReading> = bore
                .iter()
                .copied()
                .filter(|r| r.depth().and_then(nanometres) == nanometres(depth))
                .collect();
            let shape = Shape::of(&here)?;
            Ok(DepthClearance {
                depth,
                tightest: shape.smallest().less(&post.largest()),
                loosest: shape.largest().less(&post.smallest()),
            })
        })
        .collect()
}

#[cfg(feature = "serde")]
impl serde::Serialize for Slide {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use crate::quantity::Printed;
        use serde::ser::SerializeStruct;
        let mut out = serializer.serialize_struct("Slide", 8)?;
        out.serialize_field("depths", &self.depths)?;
        out.serialize_field("tightest", &self.tightest)?;
        out.serialize_field("loosest", &self.loosest)?;
        out.serialize_field("bore", &self.bore)?;
        out.serialize_field("post", &self.post)?;
        out.serialize_field("lean_deg", &(libm::round(self.lean.in_unit() * 1e4) / 1e4))?;
        out.serialize_field("readings_beyond", &self.beyond)?;
        out.serialize_field("cautions", &self.cautions)?;
        out.end()
    }
}
