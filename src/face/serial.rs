//! Serialized forms of the planes.

use alloc::vec::Vec;

use serde::{Serialize, Serializer};

use super::report::form::share;
use super::{
    CutterPlane, LeastSquaresPlane, LeastSquaresTangent, MinimaxTangent, MinimumZone, SeatPlane,
};
use crate::quantity::settled_mm;

impl Serialize for LeastSquaresPlane {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        crate::quantity::serial::serialized!(
            serializer,
            LeastSquaresPlane {
                plane: self.plane(),
                range_mm: settled_mm(self.range()),
                rms_mm: settled_mm(self.rms()),
            }
        )
    }
}

impl Serialize for MinimumZone {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        crate::quantity::serial::serialized!(
            serializer,
            MinimumZone {
                plane: self.plane(),
                zone_mm: settled_mm(self.zone()),
                zone_normal_mm: settled_mm(self.zone_normal()),
                certificate: self.certificate(),
            }
        )
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
        crate::quantity::serial::serialized!(
            serializer,
            SeatPlane {
                plane: self.plane(),
                height_on_axis_mm: settled_mm(self.height()),
                contacts: contacts,
                unique: one == other,
            }
        )
    }
}

impl Serialize for MinimaxTangent {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.plane().serialize(serializer)
    }
}

impl Serialize for LeastSquaresTangent {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        crate::quantity::serial::serialized!(
            serializer,
            LeastSquaresTangent {
                plane: self.plane(),
                contacts: self.contacts().collect::<Vec<_>>(),
            }
        )
    }
}

impl Serialize for CutterPlane {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.plane().serialize(serializer)
    }
}
