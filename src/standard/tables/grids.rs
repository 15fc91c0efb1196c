// @generated from data/grids/ by tests/tables. Do not edit; see DEVELOPERS.md.

use crate::evidence::Grade;
use crate::evidence::tables::SOURCES;
use crate::standard::GridCount;

pub(crate) static GRIDS: [GridCount; 20] = [
    GridCount {
        grid: "iso286_hole",
        source: Some(&SOURCES[210]),
        grade: Grade::Standard,
        cells: 437,
    },
    GridCount {
        grid: "iso286_it",
        source: Some(&SOURCES[210]),
        grade: Grade::Standard,
        cells: 160,
    },
    GridCount {
        grid: "iso286_shaft",
        source: Some(&SOURCES[210]),
        grade: Grade::Standard,
        cells: 333,
    },
    GridCount {
        grid: "iso492",
        source: None,
        grade: Grade::Memory,
        cells: 4,
    },
    GridCount {
        grid: "iso492",
        source: Some(&SOURCES[211]),
        grade: Grade::Agreeing,
        cells: 36,
    },
    GridCount {
        grid: "iso492",
        source: Some(&SOURCES[212]),
        grade: Grade::Published,
        cells: 2,
    },
    GridCount {
        grid: "iso492",
        source: Some(&SOURCES[212]),
        grade: Grade::Agreeing,
        cells: 24,
    },
    GridCount {
        grid: "iso5753",
        source: Some(&SOURCES[213]),
        grade: Grade::Agreeing,
        cells: 64,
    },
    GridCount {
        grid: "iso965_coarse",
        source: Some(&SOURCES[239]),
        grade: Grade::Standard,
        cells: 34,
    },
    GridCount {
        grid: "iso965_deviation",
        source: Some(&SOURCES[209]),
        grade: Grade::Memory,
        cells: 22,
    },
    GridCount {
        grid: "iso965_deviation",
        source: Some(&SOURCES[209]),
        grade: Grade::Standard,
        cells: 119,
    },
    GridCount {
        grid: "iso965_engagement",
        source: Some(&SOURCES[209]),
        grade: Grade::Standard,
        cells: 94,
    },
    GridCount {
        grid: "iso965_td",
        source: Some(&SOURCES[209]),
        grade: Grade::Standard,
        cells: 65,
    },
    GridCount {
        grid: "iso965_td1",
        source: Some(&SOURCES[209]),
        grade: Grade::Standard,
        cells: 106,
    },
    GridCount {
        grid: "iso965_td2_external",
        source: Some(&SOURCES[209]),
        grade: Grade::Derived,
        cells: 3,
    },
    GridCount {
        grid: "iso965_td2_external",
        source: Some(&SOURCES[209]),
        grade: Grade::Standard,
        cells: 293,
    },
    GridCount {
        grid: "iso965_td2_internal",
        source: Some(&SOURCES[209]),
        grade: Grade::Derived,
        cells: 1,
    },
    GridCount {
        grid: "iso965_td2_internal",
        source: Some(&SOURCES[209]),
        grade: Grade::Standard,
        cells: 204,
    },
    GridCount {
        grid: "unified_series",
        source: None,
        grade: Grade::Memory,
        cells: 31,
    },
    GridCount {
        grid: "unified_series",
        source: Some(&SOURCES[240]),
        grade: Grade::Published,
        cells: 18,
    },
];
