//! Files that are no sheet: each gets exit code 2 and a message with the place and the remedy.
#![cfg(feature = "serde")]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

use std::path::Path;
use std::process::Command;

fn run(name: &str, bytes: &[u8]) -> (i32, String) {
    let tests = std::env::current_exe().unwrap();
    let program = tests
        .parent()
        .and_then(Path::parent)
        .unwrap()
        .join("examples/prepare_frame");
    let sheet = std::env::temp_dir().join(format!("framegauge-{}-{name}", std::process::id()));
    std::fs::write(&sheet, bytes).unwrap();
    let out = Command::new(program).arg(&sheet).output().unwrap();
    std::fs::remove_file(&sheet).unwrap();
    (
        out.status.code().unwrap(),
        String::from_utf8_lossy(&out.stderr).into_owned(),
    )
}

#[test]
fn each_says_what_and_where() {
    let big = vec![b'#'; 10 << 20];
    // Sixty bottle bosses with a field that nobody knows.
    let many = (0..60).fold(String::from("format = 1\nframe = \"f\"\n"), |text, n| {
        format!("{text}[boss.b{n}]\nbread = \"1 mm\"\n")
    });
    for (name, bytes, expected) in [
        ("empty.toml", &b""[..], "the sheet is empty"),
        ("big.toml", &big[..], "larger than 1 MB"),
        ("latin.toml", &b"frame = \"caf\xe9\"\n"[..], "not UTF-8 at byte 12"),
        ("cut.toml", &b"format = 1\nframe = \"f\"\n[shell\n"[..], "line 3"),
        ("cut.json", &b"{\"format\": 1, \"frame\": \"f\""[..], "line 1"),
        ("field.toml", &b"format = 1\nframe = \"f\"\n[shell]\nbread = \"68 mm\"\n"[..], "line 4: shell.bread: no such field"),
        ("bare.toml", &b"format = 1\nframe = \"f\"\n[seat_tube]\nbore = 27.2\n"[..], "line 4"),
        ("unit.toml", &b"format = 1\nframe = \"f\"\n\n[seat_tube]\nbore = [\n  \"27.2 mm +/- 0.1 mm\",\n  \"27.2\",\n]\n"[..], "line 7: seat_tube.bore[1]"),
        ("two.toml", &b"format = 2\nframe = \"\"\n"[..], "2 defects"),
        ("many.toml", many.as_bytes(), "and 10 more"),
        ("bytes.toml", &[0u8, 159, 146, 150][..], "not UTF-8"),
    ] {
        let (code, said) = run(name, bytes);
        assert_eq!(code, 2, "{name}: {said}");
        assert!(said.contains(expected), "{name}: {said}");
    }
}
