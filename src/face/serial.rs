//! Serialized forms of the planes.

use alloc::vec::Vec;

use serde::ser::SerializeStruct;
use serde::{Serialize, Serializer};

use super::report::form::share;
use super::{
    CutterPlane, LeastSquaresPlane, LeastSquaresTangent, MinimaxTangent, MinimumZone, SeatPlane,
};
use crate::quantity::settled_mm;

impl Serialize for LeastSquaresPlane {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut out = serializer.serialize_struct("LeastSquaresPlane", 3)?;
        out.serialize_field("plane", &self.plane())?;
        out.serialize_field("range_mm", &settled_mm(self.range()))?;
        out.serialize_field("rms_mm", &settled_mm(self.rms()))?;
        out.end()
    }
}

impl Serialize for MinimumZone {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut out = serializer.serialize_struct("MinimumZone", 4)?;
        out.serialize_field("plane", &self.plane())?;
        out.serialize_field("zone_mm", &settled_mm(self.zone()))?;
        out.serialize_field("zone_normal_mm", &settled_mm(self.zone_normal()))?;
        out.serialize_field("certificate", &self.certificate())?;
        out.end()
    }
}

/// A point that carries a seated part.
#[derive(Serialize)]
struct Contact {
    point: usize,
    share_of_load: f64,
}

impl Serialize for SeatPlane {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let carried = self.contacts().filter(|c| c.1 > 0.0);
        let contacts: Vec<Contact> = carried
            .map(|(point, load)| Contact {
                point,
                share_of_load: share(&load),
            })
            .collect();
        let [one, other] = self.positions();
        let mut out = serializer.serialize_struct("SeatPlane", 4)?;
        out.serialize_field("plane", &self.plane())?;
        out.serialize_field("height_on_axis_mm", &settled_mm(self.height()))?;
        out.serialize_field("contacts", &contacts)?;
        out.serialize_field("unique", &(one == other))?;
        out.end()
    }
}

impl Serialize for MinimaxTangent {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.plane().serialize(serializer)
    }
}

impl Serialize for LeastSquaresTangent {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut out = serializer.serialize_struct("LeastSquaresTangent", 2)?;
        out.serialize_field("plane", &self.plane())?;
        out.serialize_field("contacts", &self.contacts().collect::<Vec<_>>())?;
        out.end()
    }
}

impl Serialize for CutterPlane {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.plane().serialize(serializer)
    }
}
