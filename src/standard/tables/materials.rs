// @generated from data/materials.toml by tests/tables. Do not edit; see DEVELOPERS.md.
#![allow(unused_imports, reason = "one prelude for all generated files")]

use alloc::borrow::Cow;

use crate::evidence::tables::SOURCES;
use crate::evidence::{Citation, Dissent, Evidence, Fact, Figure, Grade, Span, Text};
use crate::quantity::*;
use crate::standard::*;
use crate::thread::{Hand, ThreadForm, ThreadSize};

static L0: [Citation; 2] = [
    Citation::from_table(&SOURCES[218], "mechanical properties"),
    Citation::from_table(&SOURCES[219], "table of properties"),
];
static L1: [Citation; 2] = [
    Citation::from_table(&SOURCES[220], "mechanical properties"),
    Citation::from_table(&SOURCES[219], "table of properties"),
];
static L2: [Citation; 1] = [Citation::from_table(&SOURCES[219], "table of properties")];
static L3: [Dissent<Span<Pressure>>; 1] = [Dissent {
    value: Span {
        nominal: Some(mpa(483.0)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L2,
        "printed 70 ksi",
    ),
}];
static L4: [Citation; 1] = [Citation::from_table(&SOURCES[220], "mechanical properties")];
static L5: [Citation; 1] = [Citation::from_table(&SOURCES[221], "mechanical properties")];
static L6: [Citation; 1] = [Citation::from_table(&SOURCES[222], "mechanical properties")];
static L7: [Citation; 1] = [Citation::from_table(
    &SOURCES[223],
    "expansion, 20 to 100 C",
)];
static L8: [Citation; 1] = [Citation::from_table(&SOURCES[224], "mechanical properties")];
static L9: [Citation; 1] = [Citation::from_table(&SOURCES[226], "mechanical properties")];
static L10: [Dissent<Span<Expansion>>; 1] = [Dissent {
    value: Span {
        nominal: Some(per_kelvin(9.61 / 1e6)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(Grade::Published, Grade::Published, "", &L9, ""),
}];
static L11: [Citation; 1] = [Citation::from_table(&SOURCES[225], "expansion at 100 C")];
static L12: [Dissent<Span<Expansion>>; 1] = [Dissent {
    value: Span {
        nominal: Some(per_kelvin(8.77 / 1e6)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(Grade::Published, Grade::Published, "", &L11, ""),
}];
static L13: [Citation; 1] = [Citation::from_table(&SOURCES[227], "mechanical properties")];
static L14: [Dissent<Span<Expansion>>; 1] = [Dissent {
    value: Span {
        nominal: Some(per_kelvin(9.5 / 1e6)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(Grade::Published, Grade::Published, "", &L2, ""),
}];
static L15: [Citation; 1] = [Citation::from_table(&SOURCES[227], "expansion, 0 to 100 C")];
static L16: [Citation; 1] = [Citation::from_table(&SOURCES[229], "POM rows")];
static L17: [Dissent<Span<Pressure>>; 1] = [Dissent {
    value: Span {
        nominal: Some(gpa(2.14)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L16,
        "this table lists the two kinds the other way round",
    ),
}];
static L18: [Citation; 1] = [Citation::from_table(&SOURCES[228], "Table 5.5")];
static L19: [Dissent<Span<Pressure>>; 1] = [Dissent {
    value: Span {
        nominal: Some(gpa(3.01)),
        lower: None,
        upper: None,
    },
    evidence: Evidence::from_table(
        Grade::Published,
        Grade::Published,
        "",
        &L16,
        "this table lists the two kinds the other way round",
    ),
}];
static L20: [Citation; 1] = [Citation::from_table(&SOURCES[229], "PA66")];
static L21: [Citation; 1] = [Citation::from_table(&SOURCES[229], "PA6 30 % glass")];
static L22: [Citation; 2] = [
    Citation::from_table(&SOURCES[229], "polycarbonate"),
    Citation::from_table(&SOURCES[230], "properties"),
];
static L23: [Citation; 1] = [Citation::from_table(&SOURCES[230], "properties")];
static L24: [Citation; 1] = [Citation::from_table(&SOURCES[231], "fabric")];
static L25: [Citation; 1] = [Citation::from_table(&SOURCES[231], "unidirectional")];
static L26: [Citation; 1] = [Citation::from_table(&SOURCES[232], "section 5.3")];
static L27: [Citation; 1] = [Citation::from_table(&SOURCES[232], "section 5.2")];
static L28: [Citation; 1] = [Citation::from_table(
    &SOURCES[233],
    "aluminium on mild steel",
)];
static L29: [Citation; 1] = [Citation::from_table(
    &SOURCES[233],
    "aluminium on aluminium",
)];
static L30: [Citation; 1] = [Citation::from_table(&SOURCES[234], "Table 7.21")];
static L31: [Citation; 1] = [Citation::from_table(&SOURCES[235], "press fits")];

pub(crate) static MATERIALS: [Material; 16] = [
    Material {
        code: Cow::Borrowed("al_6061_t6"),
        name: Cow::Borrowed("6061-T6 aluminium"),
        kind: MaterialKind::Aluminium,
        youngs_modulus: Figure::from_table(
            Span {
                nominal: Some(gpa(68.9)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L0,
                "the second prints 10.0e6 psi",
            ),
            &[],
        ),
        poisson: Some(Figure::from_table(
            Span {
                nominal: Some(Ratio(0.33)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L0, ""),
            &[],
        )),
        strength: Figure::from_table(
            Span {
                nominal: Some(mpa(276.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L0,
                "yield; the second prints 40 ksi",
            ),
            &[],
        ),
        expansion: Some(Figure::from_table(
            Span {
                nominal: Some(per_kelvin(23.6 / 1e6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L0,
                "the second prints 13e-6/F, 23.4",
            ),
            &[],
        )),
        note: Cow::Borrowed(""),
    },
    Material {
        code: Cow::Borrowed("al_7075_t6"),
        name: Cow::Borrowed("7075-T6 aluminium"),
        kind: MaterialKind::Aluminium,
        youngs_modulus: Figure::from_table(
            Span {
                nominal: Some(gpa(72.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L1,
                "the second prints 10.4e6 psi",
            ),
            &[],
        ),
        poisson: Some(Figure::from_table(
            Span {
                nominal: Some(Ratio(0.33)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Agreeing, Grade::Agreeing, "", &L1, ""),
            &[],
        )),
        strength: Figure::from_table(
            Span {
                nominal: Some(mpa(503.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L4, "yield"),
            &L3,
        ),
        expansion: Some(Figure::from_table(
            Span {
                nominal: Some(per_kelvin(23.6 / 1e6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L4, ""),
            &[],
        )),
        note: Cow::Borrowed(""),
    },
    Material {
        code: Cow::Borrowed("al_7005_t5"),
        name: Cow::Borrowed("7005-T5 aluminium"),
        kind: MaterialKind::Aluminium,
        youngs_modulus: Figure::from_table(
            Span {
                nominal: Some(gpa(70.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L5, ""),
            &[],
        ),
        poisson: Some(Figure::from_table(
            Span {
                nominal: Some(Ratio(0.33)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L5, ""),
            &[],
        )),
        strength: Figure::from_table(
            Span {
                nominal: Some(mpa(350.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L5, "yield"),
            &[],
        ),
        expansion: Some(Figure::from_table(
            Span {
                nominal: Some(per_kelvin(23.0 / 1e6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L5, ""),
            &[],
        )),
        note: Cow::Borrowed(""),
    },
    Material {
        code: Cow::Borrowed("al_7005_t6"),
        name: Cow::Borrowed("7005-T6 aluminium"),
        kind: MaterialKind::Aluminium,
        youngs_modulus: Figure::from_table(
            Span {
                nominal: Some(gpa(72.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        poisson: Some(Figure::unknown_in_table("not printed", &[])),
        strength: Figure::from_table(
            Span {
                nominal: Some(mpa(290.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], "yield"),
            &[],
        ),
        expansion: Some(Figure::unknown_in_table("not printed", &[])),
        note: Cow::Borrowed("Frames are mostly this temper; no page was seen."),
    },
    Material {
        code: Cow::Borrowed("steel_4130_normalised"),
        name: Cow::Borrowed("4130 chromium-molybdenum steel, normalised at 870 C"),
        kind: MaterialKind::Steel,
        youngs_modulus: Figure::from_table(
            Span {
                nominal: Some(gpa(205.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L6, ""),
            &[],
        ),
        poisson: Some(Figure::from_table(
            Span {
                nominal: Some(Ratio(0.29)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L6, ""),
            &[],
        )),
        strength: Figure::from_table(
            Span {
                nominal: Some(mpa(435.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L6, "yield"),
            &[],
        ),
        expansion: Some(Figure::from_table(
            Span {
                nominal: Some(per_kelvin(12.2 / 1e6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L7, ""),
            &[],
        )),
        note: Cow::Borrowed("Drawn or heat-treated frame tube is stronger."),
    },
    Material {
        code: Cow::Borrowed("ti_3al_2_5v_annealed"),
        name: Cow::Borrowed("Ti-3Al-2.5V, annealed"),
        kind: MaterialKind::Titanium,
        youngs_modulus: Figure::from_table(
            Span {
                nominal: Some(gpa(105.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L8, ""),
            &[],
        ),
        poisson: Some(Figure::from_table(
            Span {
                nominal: Some(Ratio(0.3)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L9, ""),
            &[],
        )),
        strength: Figure::from_table(
            Span {
                nominal: Some(mpa(483.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L8, "yield"),
            &[],
        ),
        expansion: Some(Figure::from_table(
            Span {
                nominal: Some(per_kelvin(8.77 / 1e6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L11,
                "8.6 is printed too",
            ),
            &L10,
        )),
        note: Cow::Borrowed(""),
    },
    Material {
        code: Cow::Borrowed("ti_3al_2_5v_cold_worked"),
        name: Cow::Borrowed("Ti-3Al-2.5V, cold worked and stress relieved"),
        kind: MaterialKind::Titanium,
        youngs_modulus: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(gpa(105.0)),
                upper: Some(gpa(120.0)),
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L9,
                "printed as a range",
            ),
            &[],
        ),
        poisson: Some(Figure::from_table(
            Span {
                nominal: Some(Ratio(0.3)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L9, ""),
            &[],
        )),
        strength: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mpa(724.0)),
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L9,
                "yield, at least",
            ),
            &[],
        ),
        expansion: Some(Figure::from_table(
            Span {
                nominal: Some(per_kelvin(9.61 / 1e6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L9, ""),
            &L12,
        )),
        note: Cow::Borrowed(""),
    },
    Material {
        code: Cow::Borrowed("ti_6al_4v_annealed"),
        name: Cow::Borrowed("Ti-6Al-4V, annealed"),
        kind: MaterialKind::Titanium,
        youngs_modulus: Figure::from_table(
            Span {
                nominal: Some(gpa(114.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L13, ""),
            &[],
        ),
        poisson: Some(Figure::from_table(
            Span {
                nominal: Some(Ratio(0.33)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L2, ""),
            &[],
        )),
        strength: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mpa(828.0)),
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L13,
                "yield, minimum; typical 910",
            ),
            &[],
        ),
        expansion: Some(Figure::from_table(
            Span {
                nominal: Some(per_kelvin(8.6 / 1e6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L15, ""),
            &L14,
        )),
        note: Cow::Borrowed(""),
    },
    Material {
        code: Cow::Borrowed("pom_homopolymer"),
        name: Cow::Borrowed("POM homopolymer"),
        kind: MaterialKind::Plastic,
        youngs_modulus: Figure::from_table(
            Span {
                nominal: Some(gpa(3.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L18, ""),
            &L17,
        ),
        poisson: Some(Figure::unknown_in_table("not printed", &[])),
        strength: Figure::from_table(
            Span {
                nominal: Some(mpa(72.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L18, ""),
            &[],
        ),
        expansion: Some(Figure::from_table(
            Span {
                nominal: Some(per_kelvin(104.0 / 1e6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L16,
                "printed 58e-6/F",
            ),
            &[],
        )),
        note: Cow::Borrowed("Plastics creep: an elastic press-fit pressure falls with time."),
    },
    Material {
        code: Cow::Borrowed("pom_copolymer"),
        name: Cow::Borrowed("POM copolymer"),
        kind: MaterialKind::Plastic,
        youngs_modulus: Figure::from_table(
            Span {
                nominal: Some(gpa(2.5)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L18, ""),
            &L19,
        ),
        poisson: Some(Figure::unknown_in_table("not printed", &[])),
        strength: Figure::from_table(
            Span {
                nominal: Some(mpa(65.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L18, ""),
            &[],
        ),
        expansion: Some(Figure::from_table(
            Span {
                nominal: Some(per_kelvin(85.0 / 1e6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L16,
                "printed 47e-6/F",
            ),
            &[],
        )),
        note: Cow::Borrowed("Plastics creep: an elastic press-fit pressure falls with time."),
    },
    Material {
        code: Cow::Borrowed("pa66_dry"),
        name: Cow::Borrowed("PA66 extruded, dry"),
        kind: MaterialKind::Plastic,
        youngs_modulus: Figure::from_table(
            Span {
                nominal: Some(gpa(2.69)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L20,
                "printed 390 ksi",
            ),
            &[],
        ),
        poisson: Some(Figure::from_table(
            Span {
                nominal: Some(Ratio(0.4)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L2, ""),
            &[],
        )),
        strength: Figure::unknown_in_table("not printed", &[]),
        expansion: Some(Figure::from_table(
            Span {
                nominal: Some(per_kelvin(81.0 / 1e6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L20,
                "printed 45e-6/F",
            ),
            &[],
        )),
        note: Cow::Borrowed("Moisture changes size and stiffness; plastics creep."),
    },
    Material {
        code: Cow::Borrowed("pa6_gf30"),
        name: Cow::Borrowed("PA6 with 30 % glass"),
        kind: MaterialKind::Plastic,
        youngs_modulus: Figure::from_table(
            Span {
                nominal: Some(gpa(9.3)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L21,
                "printed 1350 ksi",
            ),
            &[],
        ),
        poisson: Some(Figure::unknown_in_table("not printed", &[])),
        strength: Figure::unknown_in_table("not printed", &[]),
        expansion: Some(Figure::from_table(
            Span {
                nominal: None,
                lower: Some(per_kelvin(25.0 / 1e6)),
                upper: Some(per_kelvin(35.0 / 1e6)),
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], "along the flow"),
            &[],
        )),
        note: Cow::Borrowed("Anisotropic, takes up water; plastics creep."),
    },
    Material {
        code: Cow::Borrowed("polycarbonate"),
        name: Cow::Borrowed("Polycarbonate"),
        kind: MaterialKind::Plastic,
        youngs_modulus: Figure::from_table(
            Span {
                nominal: Some(gpa(2.38)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L22,
                "printed 345 ksi; the second prints 2.1 to 2.4",
            ),
            &[],
        ),
        poisson: Some(Figure::unknown_in_table("not printed", &[])),
        strength: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(mpa(55.0)),
                upper: Some(mpa(66.0)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L23, ""),
            &[],
        ),
        expansion: Some(Figure::from_table(
            Span {
                nominal: Some(per_kelvin(67.5 / 1e6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Agreeing,
                Grade::Agreeing,
                "",
                &L22,
                "printed 37.5e-6/F; the second prints 66",
            ),
            &[],
        )),
        note: Cow::Borrowed("Plastics creep."),
    },
    Material {
        code: Cow::Borrowed("cfrp_fabric"),
        name: Cow::Borrowed("CFRP 0/90 standard fabric, in plane"),
        kind: MaterialKind::Carbon,
        youngs_modulus: Figure::from_table(
            Span {
                nominal: Some(gpa(70.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L24, ""),
            &[],
        ),
        poisson: Some(Figure::from_table(
            Span {
                nominal: Some(Ratio(0.1)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L24, ""),
            &[],
        )),
        strength: Figure::unknown_in_table(
            "the sheet prints 600 MPa at 0 deg; a laminate has no yield and this is not a ring strength",
            &[],
        ),
        expansion: Some(Figure::from_table(
            Span {
                nominal: Some(per_kelvin(2.1 / 1e6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L24, ""),
            &[],
        )),
        note: Cow::Borrowed("Not isotropic: ring formulas do not apply."),
    },
    Material {
        code: Cow::Borrowed("cfrp_ud"),
        name: Cow::Borrowed("CFRP unidirectional, along the fibre"),
        kind: MaterialKind::Carbon,
        youngs_modulus: Figure::from_table(
            Span {
                nominal: Some(gpa(135.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L25, ""),
            &[],
        ),
        poisson: Some(Figure::from_table(
            Span {
                nominal: Some(Ratio(0.3)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L25, ""),
            &[],
        )),
        strength: Figure::unknown_in_table("a laminate has no yield", &[]),
        expansion: Some(Figure::from_table(
            Span {
                nominal: Some(per_kelvin(-0.3 / 1e6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L25, ""),
            &[],
        )),
        note: Cow::Borrowed(
            "Not isotropic: across the fibre 10 GPa and 28e-6/K, shear 5 GPa. Ring formulas do not apply.",
        ),
    },
    Material {
        code: Cow::Borrowed("cfrp_quasi_isotropic"),
        name: Cow::Borrowed("CFRP quasi-isotropic, in plane"),
        kind: MaterialKind::Carbon,
        youngs_modulus: Figure::from_table(
            Span {
                nominal: Some(gpa(52.0)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "laminate theory on the unidirectional row",
                &L25,
                "",
            ),
            &[],
        ),
        poisson: Some(Figure::from_table(
            Span {
                nominal: Some(Ratio(0.31)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "laminate theory on the unidirectional row",
                &L25,
                "",
            ),
            &[],
        )),
        strength: Figure::unknown_in_table("a laminate has no yield", &[]),
        expansion: Some(Figure::from_table(
            Span {
                nominal: Some(per_kelvin(2.1 / 1e6)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Derived,
                Grade::Published,
                "laminate theory on the unidirectional row",
                &L25,
                "",
            ),
            &[],
        )),
        note: Cow::Borrowed(
            "In plane only: about 10 GPa through the thickness governs a radial bearing pressure. Ring formulas do not apply.",
        ),
    },
];
pub(crate) static FRICTIONS: [Friction; 24] = [
    Friction {
        code: Cow::Borrowed("shrink_steel_oil"),
        pair: Cow::Borrowed("steel/steel"),
        condition: Cow::Borrowed("transverse, slipping; oil-injection joint, mineral oil"),
        coefficient: Figure::from_table(
            Span {
                nominal: Some(Ratio(0.12)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L26, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Friction {
        code: Cow::Borrowed("shrink_steel_glycerine"),
        pair: Cow::Borrowed("steel/steel"),
        condition: Cow::Borrowed("transverse, slipping; oil injection, degreased, glycerine"),
        coefficient: Figure::from_table(
            Span {
                nominal: Some(Ratio(0.18)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L26, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Friction {
        code: Cow::Borrowed("shrink_steel_normal"),
        pair: Cow::Borrowed("steel/steel"),
        condition: Cow::Borrowed("transverse, slipping; normal shrink fit, hub heated to 300 C"),
        coefficient: Figure::from_table(
            Span {
                nominal: Some(Ratio(0.15)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L26, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Friction {
        code: Cow::Borrowed("shrink_steel_degreased"),
        pair: Cow::Borrowed("steel/steel"),
        condition: Cow::Borrowed("transverse, slipping; degreased shrink fit, hub heated to 300 C"),
        coefficient: Figure::from_table(
            Span {
                nominal: Some(Ratio(0.20)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L26, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Friction {
        code: Cow::Borrowed("shrink_iron_oil"),
        pair: Cow::Borrowed("steel/cast iron"),
        condition: Cow::Borrowed("transverse, slipping; mineral oil"),
        coefficient: Figure::from_table(
            Span {
                nominal: Some(Ratio(0.10)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L26, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Friction {
        code: Cow::Borrowed("shrink_iron_degreased"),
        pair: Cow::Borrowed("steel/cast iron"),
        condition: Cow::Borrowed("transverse, slipping; degreased"),
        coefficient: Figure::from_table(
            Span {
                nominal: Some(Ratio(0.16)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L26, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Friction {
        code: Cow::Borrowed("shrink_mgal_dry"),
        pair: Cow::Borrowed("steel/MgAl"),
        condition: Cow::Borrowed("transverse, slipping; dry"),
        coefficient: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(Ratio(0.10)),
                upper: Some(Ratio(0.15)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L26, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Friction {
        code: Cow::Borrowed("shrink_cuzn_dry"),
        pair: Cow::Borrowed("steel/CuZn"),
        condition: Cow::Borrowed("transverse, slipping; dry"),
        coefficient: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(Ratio(0.17)),
                upper: Some(Ratio(0.25)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L26, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Friction {
        code: Cow::Borrowed("press_steel_release_dry"),
        pair: Cow::Borrowed("steel/steel"),
        condition: Cow::Borrowed("longitudinal (pressed), steel E335, release, dry"),
        coefficient: Figure::from_table(
            Span {
                nominal: Some(Ratio(0.11)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L27, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Friction {
        code: Cow::Borrowed("press_steel_slip_dry"),
        pair: Cow::Borrowed("steel/steel"),
        condition: Cow::Borrowed("longitudinal (pressed), steel E335, slip, dry"),
        coefficient: Figure::from_table(
            Span {
                nominal: Some(Ratio(0.08)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L27, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Friction {
        code: Cow::Borrowed("press_steel_release_oil"),
        pair: Cow::Borrowed("steel/steel"),
        condition: Cow::Borrowed("longitudinal (pressed), steel E335, release, lubricated"),
        coefficient: Figure::from_table(
            Span {
                nominal: Some(Ratio(0.08)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L27, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Friction {
        code: Cow::Borrowed("press_steel_slip_oil"),
        pair: Cow::Borrowed("steel/steel"),
        condition: Cow::Borrowed("longitudinal (pressed), steel E335, slip, lubricated"),
        coefficient: Figure::from_table(
            Span {
                nominal: Some(Ratio(0.07)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Friction {
        code: Cow::Borrowed("press_al_release_dry"),
        pair: Cow::Borrowed("steel/aluminium"),
        condition: Cow::Borrowed("longitudinal (pressed), aluminium cast alloy hub, release, dry"),
        coefficient: Figure::from_table(
            Span {
                nominal: Some(Ratio(0.07)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Friction {
        code: Cow::Borrowed("press_al_slip_dry"),
        pair: Cow::Borrowed("steel/aluminium"),
        condition: Cow::Borrowed("longitudinal (pressed), aluminium cast alloy hub, slip, dry"),
        coefficient: Figure::from_table(
            Span {
                nominal: Some(Ratio(0.06)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Friction {
        code: Cow::Borrowed("press_al_release_oil"),
        pair: Cow::Borrowed("steel/aluminium"),
        condition: Cow::Borrowed(
            "longitudinal (pressed), aluminium cast alloy hub, release, lubricated",
        ),
        coefficient: Figure::from_table(
            Span {
                nominal: Some(Ratio(0.05)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Friction {
        code: Cow::Borrowed("press_al_slip_oil"),
        pair: Cow::Borrowed("steel/aluminium"),
        condition: Cow::Borrowed(
            "longitudinal (pressed), aluminium cast alloy hub, slip, lubricated",
        ),
        coefficient: Figure::from_table(
            Span {
                nominal: Some(Ratio(0.04)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Memory, Grade::Memory, "", &[], ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Friction {
        code: Cow::Borrowed("general_al_steel_static"),
        pair: Cow::Borrowed("aluminium/mild steel"),
        condition: Cow::Borrowed("clean dry, static"),
        coefficient: Figure::from_table(
            Span {
                nominal: Some(Ratio(0.61)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(
                Grade::Published,
                Grade::Published,
                "",
                &L28,
                "three copies of one family of tables",
            ),
            &[],
        ),
        note: Cow::Borrowed(
            "General table of clean dry surfaces: never use it for a holding force.",
        ),
    },
    Friction {
        code: Cow::Borrowed("general_al_steel_sliding"),
        pair: Cow::Borrowed("aluminium/mild steel"),
        condition: Cow::Borrowed("clean dry, sliding"),
        coefficient: Figure::from_table(
            Span {
                nominal: Some(Ratio(0.47)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L28, ""),
            &[],
        ),
        note: Cow::Borrowed(
            "General table of clean dry surfaces: never use it for a holding force.",
        ),
    },
    Friction {
        code: Cow::Borrowed("general_al_al_dry"),
        pair: Cow::Borrowed("aluminium/aluminium"),
        condition: Cow::Borrowed("clean dry, static"),
        coefficient: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(Ratio(1.05)),
                upper: Some(Ratio(1.35)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L29, ""),
            &[],
        ),
        note: Cow::Borrowed(
            "General table of clean dry surfaces: never use it for a holding force.",
        ),
    },
    Friction {
        code: Cow::Borrowed("general_al_al_greasy"),
        pair: Cow::Borrowed("aluminium/aluminium"),
        condition: Cow::Borrowed("greasy, static"),
        coefficient: Figure::from_table(
            Span {
                nominal: Some(Ratio(0.30)),
                lower: None,
                upper: None,
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L29, ""),
            &[],
        ),
        note: Cow::Borrowed(
            "General table of clean dry surfaces: never use it for a holding force.",
        ),
    },
    Friction {
        code: Cow::Borrowed("general_steel_greased_static"),
        pair: Cow::Borrowed("steel/steel"),
        condition: Cow::Borrowed("greased, static"),
        coefficient: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(Ratio(0.12)),
                upper: Some(Ratio(0.35)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L30, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Friction {
        code: Cow::Borrowed("general_steel_greased_sliding"),
        pair: Cow::Borrowed("steel/steel"),
        condition: Cow::Borrowed("greased, sliding"),
        coefficient: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(Ratio(0.04)),
                upper: Some(Ratio(0.25)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L30, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Friction {
        code: Cow::Borrowed("rule_steel_dry"),
        pair: Cow::Borrowed("steel/steel"),
        condition: Cow::Borrowed("press-fit rule, dry"),
        coefficient: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(Ratio(0.10)),
                upper: Some(Ratio(0.15)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L31, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
    Friction {
        code: Cow::Borrowed("rule_steel_oil"),
        pair: Cow::Borrowed("steel/steel"),
        condition: Cow::Borrowed("press-fit rule, lubricated"),
        coefficient: Figure::from_table(
            Span {
                nominal: None,
                lower: Some(Ratio(0.05)),
                upper: Some(Ratio(0.10)),
            },
            Evidence::from_table(Grade::Published, Grade::Published, "", &L31, ""),
            &[],
        ),
        note: Cow::Borrowed(""),
    },
];
