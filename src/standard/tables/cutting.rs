// @generated from data/cutting.toml by tests/tables. Do not edit; see DEVELOPERS.md.
#![allow(unused_imports, reason = "one prelude for all generated files")]

use alloc::borrow::Cow;

use crate::evidence::tables::SOURCES;
use crate::evidence::{Citation, Dissent, Evidence, Fact, Figure, Grade, Span, Text};
use crate::quantity::*;
use crate::standard::*;
use crate::thread::{Hand, ThreadForm, ThreadSize};

static L0: [Citation; 1] = [Citation::from_table(&SOURCES[241], "stock allowance")];
static L1: [Citation; 1] = [Citation::from_table(&SOURCES[242], "hand reaming column")];
static L2: [Citation; 1] = [Citation::from_table(&SOURCES[243], "stock removal")];

pub(crate) static CUTTING_RULES: [CuttingRule; 6] = [
    CuttingRule {
        code: Cow::Borrowed("ream_stock_article"),
        about: Cutting::ReamStock,
        what: Cow::Borrowed("stock on diameter left for a reamer"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(0.1)),
                upper: Some(mm(0.3)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L0, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    CuttingRule {
        code: Cow::Borrowed("ream_stock_hand_1_to_2_in"),
        about: Cutting::ReamStock,
        what: Cow::Borrowed("stock on diameter for hand reaming, 1 in to 2 in"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(inch(0.012)),
                upper: Some(inch(0.020)),
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L1,
                "the chart gives 0.010 to 0.015 in at 3/4 in to 1 in",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    CuttingRule {
        code: Cow::Borrowed("ream_stock_guide"),
        about: Cutting::ReamStock,
        what: Cow::Borrowed("stock on diameter for a reamer, least and greatest"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(inch(0.002)),
                upper: Some(inch(0.020)),
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L2,
                "best 0.005 to 0.010 in; too little stock rubs and chatters. The three texts differ",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    CuttingRule {
        code: Cow::Borrowed("facing_pass"),
        about: Cutting::FacingPass,
        what: Cow::Borrowed("material per pass of a hand facing cutter"),
        window: Figure::unknown_in_table(
            "no source prints it; take the least that cleans the face",
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    CuttingRule {
        code: Cow::Borrowed("facing_total"),
        about: Cutting::FacingTotal,
        what: Cow::Borrowed("material that may come off a face in all"),
        window: Figure::unknown_in_table(
            "no source prints it; the width window of the crank or frame maker decides",
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    CuttingRule {
        code: Cow::Borrowed("coat_one_side"),
        about: Cutting::Coat,
        what: Cow::Borrowed("thickness of a powder coat, one side"),
        window: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mm(0.06)),
                upper: Some(mm(0.12)),
            },
            Evidence::from_table(
                Grade::Memory,
                Grade::Memory,
                "",
                &[],
                "a reading over a coat includes it on both sides",
            ),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
];
