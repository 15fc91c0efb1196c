//! What the answers of this room rest on. Compiled in, so that an answer carries its evidence without allocating.

use alloc::borrow::Cow;

use crate::evidence::{Citation, Evidence, Grade, Source, SourceKind};

const fn source(
    id: &'static str,
    title: &'static str,
    edition: &'static str,
    kind: SourceKind,
) -> Source {
    Source {
        id: Cow::Borrowed(id),
        title: Cow::Borrowed(title),
        edition: Cow::Borrowed(edition),
        kind,
    }
}

static ISO_68_1: Source = source(
    "iso-68-1",
    "ISO 68-1, ISO general purpose screw threads, basic profile",
    "",
    SourceKind::Standard,
);
static ISO_724: Source = source(
    "iso-724",
    "ISO 724, ISO general purpose metric screw threads, basic dimensions",
    "",
    SourceKind::Standard,
);
static ISO_965_1: Source = source(
    "iso-965-1-1998",
    "ISO 965-1:1998, general purpose metric screw threads, tolerances, as transcribed from BS ISO 965-1",
    "1998",
    SourceKind::Standard,
);
static ASME_B1_1: Source = source(
    "asme-b1-1-2019",
    "ASME B1.1-2019, Unified inch screw threads, as carried by two open implementations",
    "2019",
    SourceKind::Standard,
);
static JIS_B_0225: Source = source(
    "jis-b-0225-1960",
    "JIS B 0225:1960, Cycle threads, general table",
    "1960",
    SourceKind::Standard,
);
static CYCLE_CORE_TABLE: Source = source(
    "cycle-thread-core-table",
    "A table of British Standard Cycle threads with core diameters, on an engineering reference site",
    "",
    SourceKind::Handbook,
);
static BS_84: Source = source(
    "bs-84-charts",
    "BS 84, Whitworth form, as printed in four charts",
    "",
    SourceKind::Handbook,
);
static ISO_6696: Source = source(
    "din-iso-6696-2016",
    "DIN ISO 6696, bottom-bracket threads, scope",
    "2016",
    SourceKind::Standard,
);

static ISO_BASIC_AT: [Citation; 2] = [
    Citation::from_table(&ISO_68_1, "basic profile"),
    Citation::from_table(&ISO_724, "basic dimensions"),
];
/// Basic diameters of ISO metric threads.
pub(super) static ISO_BASIC: Evidence = Evidence::from_table(
    Grade::Agreeing,
    Grade::Agreeing,
    "",
    &ISO_BASIC_AT,
    "rounded to 0.001 mm as ISO 724 does",
);

static ISO_INCH_AT: [Citation; 2] = [
    Citation::from_table(&ISO_68_1, "basic profile"),
    Citation::from_table(&ISO_6696, "scope: ISO 68 profile at an inch pitch"),
];
/// Basic diameters of the ISO profile at an inch pitch.
pub(super) static ISO_INCH_BASIC: Evidence = Evidence::from_table(
    Grade::Derived,
    Grade::Published,
    "D2 = D - 3H/4, D1 = D - 5H/4, H = 0.866025 P",
    &ISO_INCH_AT,
    "",
);

static UNIFIED_AT: [Citation; 1] = [Citation::from_table(&ASME_B1_1, "clauses 5 and 8")];
/// Basic diameters of Unified threads.
pub(super) static UNIFIED_BASIC: Evidence =
    Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &UNIFIED_AT, "");
/// Limits of Unified threads whose series is published with the size or needs no list.
pub(super) static UNIFIED_LIMITS: Evidence = Evidence::from_table(
    Grade::Derived,
    Grade::Agreeing,
    "t = 0.0015 cbrt(D) + 0.0015 sqrt(LE) + 0.015 cbrt(P)^2 in, by class; rounded to 0.0001 in before subtracting",
    &UNIFIED_AT,
    "agrees with printed rows within 0.0001 in",
);
/// Limits of Unified threads whose series is known from memory.
pub(super) static UNIFIED_LIMITS_MEMORY: Evidence = Evidence::from_table(
    Grade::Derived,
    Grade::Memory,
    "t = 0.0015 cbrt(D) + 0.0015 sqrt(LE) + 0.015 cbrt(P)^2 in, by class; rounded to 0.0001 in before subtracting",
    &UNIFIED_AT,
    "that this size belongs to a coarse, fine or extra-fine series is from memory",
);

static BSC_AT: [Citation; 2] = [
    Citation::from_table(&JIS_B_0225, "depth and radius columns"),
    Citation::from_table(&CYCLE_CORE_TABLE, "core diameter column"),
];
/// Basic diameters of BSC threads.
pub(super) static BSC_BASIC: Evidence = Evidence::from_table(
    Grade::Derived,
    Grade::Agreeing,
    "depth = (0.866025 - 1/3) P",
    &BSC_AT,
    "reproduces every published core diameter; the limits of BS 811 were not found",
);

static WHITWORTH_AT: [Citation; 1] = [Citation::from_table(&BS_84, "form and core diameters")];
/// Basic diameters of Whitworth threads.
pub(super) static WHITWORTH_BASIC: Evidence = Evidence::from_table(
    Grade::Derived,
    Grade::Agreeing,
    "depth = 0.640327 P",
    &WHITWORTH_AT,
    "the limits of BS 84 were not found",
);

static ISO_965_AT: [Citation; 1] = [Citation::from_table(&ISO_965_1, "Tables 1 and 3 to 6")];
/// Limits read from the tables.
pub(super) static ISO_LIMITS: Evidence =
    Evidence::from_table(Grade::Standard, Grade::Standard, "", &ISO_965_AT, "");
/// Limits that use column f.
pub(super) static ISO_LIMITS_F: Evidence = Evidence::from_table(
    Grade::Memory,
    Grade::Memory,
    "",
    &[],
    "deviations of position f are from memory; the tolerances are read in ISO 965-1:1998",
);
/// Limits that use one of the four completed cells.
pub(super) static ISO_LIMITS_COMPLETED: Evidence = Evidence::from_table(
    Grade::Derived,
    Grade::Standard,
    "grade-6 cell of the row moved by the R40 steps of its grade",
    &ISO_965_AT,
    "the transcription prints this cell against the pattern of its row",
);
/// Limits of sizes that the tables do not hold.
pub(super) static ISO_LIMITS_DERIVED: Evidence = Evidence::from_table(
    Grade::Derived,
    Grade::Standard,
    "grade 6 by the formula of ISO 965-1 rounded to R40, other grades by the R40 steps of the tables; the other route rounds every grade's own formula",
    &ISO_965_AT,
    "no published limit list holds this size",
);

static ISO_ENGAGEMENT_AT: [Citation; 1] = [Citation::from_table(&ISO_965_1, "Table 2")];
/// Lengths of engagement read from the table.
pub(super) static ISO_ENGAGEMENT: Evidence =
    Evidence::from_table(Grade::Standard, Grade::Standard, "", &ISO_ENGAGEMENT_AT, "");
/// Lengths of engagement outside the table.
pub(super) static ISO_ENGAGEMENT_DERIVED: Evidence = Evidence::from_table(
    Grade::Derived,
    Grade::Agreeing,
    "N from 2.24 P d^0.2 to 6.7 P d^0.2, d the lower edge of the diameter range",
    &ISO_ENGAGEMENT_AT,
    "",
);
