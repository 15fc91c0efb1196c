//! Closed words of a sheet.

macro_rules! sheet_words {
    ($( $(#[$doc:meta])* $name:ident { $( $(#[$variant_doc:meta])* $variant:ident $(= $alias:literal)? ),* $(,)? } )*) => {$(
        $crate::fact::closed_words! {
            $(#[$doc])*
            $name { $( $(#[$variant_doc])* $variant ),* }
        }
        $crate::read::words!($name);
    )*};
}

sheet_words! {
    /// What covers a place.
    Coating {
        /// Bare metal, or bare laminate.
        Bare,
        /// A thin mist of paint.
        Overspray,
        /// Paint.
        Painted,
        /// Powder coat.
        PowderCoated,
    }

    /// What a pass left of a coating.
    CoatingLeft {
        /// All off where it matters.
        AllOff,
        /// Traces, where they do no harm: in a chamfer, below the flat.
        Traces,
        /// Paint is still there.
        Remains,
    }

    /// What a pass left behind.
    Marks {
        /// None.
        None,
        /// Fine marks of the tool.
        Tool,
        /// Chatter: waves that a finger feels.
        Chatter,
        /// Torn or galled metal.
        Torn,
    }

    /// What the mating part did when it was tried by hand.
    PartDid {
        /// It goes in as it should: a post slides with a light drag, a cup starts square, a screw runs in.
        Fits,
        /// It does not go in, or only with force.
        Tight,
        /// It goes in with play.
        Loose,
        /// It sits and rocks.
        Rocks,
    }

    /// When a photograph was taken.
    Taken {
        /// Before the work.
        Before,
        /// After the work.
        After,
    }

    /// Whether a part sits in its place.
    Fitted {
        /// It is not fitted.
        No,
        /// It is fitted and can be taken out.
        Yes,
        /// It is fitted and does not come out with a reasonable effort: it stays.
        Stuck,
    }

    /// What a maker's limit limits.
    Limited {
        /// A bore.
        Bore,
        /// A width over faces.
        Width,
        /// A wall that is left.
        Wall,
        /// The interference of a pressed part, on diameter.
        Interference,
        /// The clearance of a part that slides, on diameter.
        Clearance,
        /// How deep a post goes in.
        Insertion,
        /// How much may come off a face or mount, or how deep a cutter may go into a bore or thread.
        Depth,
        /// The depth of a bore to its shoulder.
        BoreDepth,
        /// The gap between fork crown and head tube.
        CrownGap,
        /// The diameter of a seat.
        Seat,
        /// The thickness of a mount.
        Thickness,
        /// How far a face may be out of square over its outer diameter.
        Squareness,
        /// How far two faces may be out of parallel.
        Parallelism,
        /// A length.
        Length,
        /// The minor diameter of a thread.
        Minor,
    }
}

impl Coating {
    /// Whether metal lies under something.
    ///
    /// ```
    /// use framegauge::plan::Coating;
    /// assert!(Coating::Overspray.covers() && !Coating::Bare.covers());
    /// ```
    #[must_use]
    pub const fn covers(self) -> bool {
        !matches!(self, Self::Bare)
    }
}
