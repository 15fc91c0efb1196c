//! Sheets that make no sense: every defect with its field and a remedy.

use super::*;

/// Each defect by itself: kind, field, and a remedy.
#[test]
fn sheets_that_make_no_sense() {
    let head = "format = 1\nframe = \"f\"\n";
    for (body, kind, field) in [
        (
            "[seat_tube]\nbore = [\"27.2\"]\n",
            ErrorKind::Unit,
            "seat_tube.bore[0]",
        ),
        (
            "[seat_tube]\nbore = [\"27.2 mm\"]\n",
            ErrorKind::Missing,
            "seat_tube.bore[0]",
        ),
        (
            "[seat_tube]\nbore = [\"NaN mm +/- 0.1 mm\"]\n",
            ErrorKind::NotFinite,
            "seat_tube.bore[0]",
        ),
        (
            "[seat_tube]\nbore = [\"-27.2 mm +/- 0.1 mm\"]\n",
            ErrorKind::OutOfRange,
            "seat_tube.bore[0]",
        ),
        (
            "[seat_tube]\nbore = [\"10 mm deep: 27.2 mm +/- 0.1 mm\", \"-60 mm deep: 27.2 mm +/- 0.1 mm\"]\n",
            ErrorKind::OutOfRange,
            "seat_tube.bore[1]",
        ),
        (
            "[seat_tube]\nbore = [\"27.2 mm +/- 0.1 mm\"]\nclear_depth = \"210 m\"\n",
            ErrorKind::OutOfRange,
            "seat_tube.clear_depth",
        ),
        (
            "[seat_tube]\nbore = [\"27.2 mm +/- 0.1 mm\"]\noutside = \"27.0 mm +/- 0.1 mm\"\n",
            ErrorKind::Contradiction,
            "seat_tube.bore",
        ),
        (
            "[seat_tube]\nbore = [\"27.2 mm by eyeball\"]\n",
            ErrorKind::UnknownName,
            "seat_tube.bore[0]",
        ),
        (
            "[seat_tube]\nbore = [\"left: 27.2 mm +/- 0.1 mm\"]\n",
            ErrorKind::Text,
            "seat_tube.bore[0]",
        ),
        (
            "[seat_tube]\nafter = [\"27.2 mm +/- 0.1 mm\"]\n",
            ErrorKind::Missing,
            "seat_tube.bore",
        ),
        (
            "[seat_tube]\ncoating = \"pretty\"\n",
            ErrorKind::UnknownName,
            "seat_tube.coating",
        ),
        (
            "[shell]\nwindow = \"none_such\"\n",
            ErrorKind::UnknownName,
            "shell.window",
        ),
        (
            "[shell]\npitch = \"240 tpi\"\n",
            ErrorKind::OutOfRange,
            "shell.pitch",
        ),
        (
            "[shell.drive]\nhand = \"rider's left\"\n",
            ErrorKind::UnknownName,
            "shell.drive.hand",
        ),
        (
            "[shell]\nwidth = \"79 mm +/- 0.1 mm\"\nhalf_drive = \"34 mm +/- 0.1 mm\"\nhalf_non_drive = \"34 mm +/- 0.1 mm\"\n",
            ErrorKind::Contradiction,
            "shell.half_drive",
        ),
        (
            "[shell.drive.face]\ninner_radius = \"21 mm\"\nouter_radius = \"17 mm\"\n",
            ErrorKind::Contradiction,
            "shell.drive.face.inner_radius",
        ),
        (
            "[shell.drive.face]\nprobes = [\"0.03 mm +/- 0.01 mm\"]\n",
            ErrorKind::Missing,
            "shell.drive.face.probes[0]",
        ),
        (
            "[shell.drive.face]\nafter = [\"0 deg: 0.03 mm +/- 0.01 mm\"]\n",
            ErrorKind::Missing,
            "shell.drive.face.probes",
        ),
        (
            "[[thread]]\nplace = \"saddle\"\n",
            ErrorKind::UnknownName,
            "thread[0].place",
        ),
        (
            "[[thread]]\nplace = \"axle\"\nmate = \"M10x10\"\n",
            ErrorKind::OutOfRange,
            "thread[0].mate",
        ),
        (
            "[[brake]]\nsystem = \"fm\"\nend = \"top\"\n",
            ErrorKind::UnknownName,
            "brake[0].end",
        ),
        (
            "[seat_tube]\nlimits = [{ what = \"bore\", owner = \"drawing\" }]\n",
            ErrorKind::Missing,
            "seat_tube.limits[0]",
        ),
        (
            "[seat_tube]\nlimits = [{ what = \"bore\", owner = \"drawing\", lower = \"2 mm\", upper = \"1 mm\" }]\n",
            ErrorKind::Contradiction,
            "seat_tube.limits[0]",
        ),
    ] {
        let errors = sheet(&format!("{head}{body}")).read().unwrap_err();
        let error = &errors[0];
        assert_eq!(error.kind(), kind, "{body}: {error}");
        assert!(error.field().starts_with(field), "{body}: {error}");
        assert!(!error.remedy().is_empty(), "{body}");
    }
    for (text, kind) in [
        ("frame = \"f\"\n", ErrorKind::Missing),
        ("format = 2\nframe = \"f\"\n", ErrorKind::OutOfRange),
        ("format = 1\n", ErrorKind::Missing),
    ] {
        assert_eq!(sheet(text).read().unwrap_err()[0].kind(), kind, "{text}");
    }
    // Structure: unknown fields and bare numbers are refused where they are read.
    for text in [
        "format = 1\nframe = \"f\"\nsaddle = 3\n",
        "format = 1\nframe = \"f\"\n[seat_tube]\nbore = 27.2\n",
        "format = 1\nframe = \"f\"\n[seat_tube]\nbore = [27.2]\n",
    ] {
        assert!(toml::from_str::<WrittenSheet>(text).is_err(), "{text}");
    }
    // All defects come at once.
    let errors = sheet(&format!("{head}[seat_tube]\nbore = [\"27.2\", \"x mm\", \"27 mm +/- 0.1 mm\"]\ncoating = \"pretty\"\n")).read().unwrap_err();
    assert_eq!(errors.len(), 3, "{errors:?}");
}
