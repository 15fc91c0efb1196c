//! The example as a script meets it: order, exit status, rows, schema, and one thread or many.

use std::io::Write;
use std::path::PathBuf;
use std::process::{Command, Output, Stdio};
use std::sync::OnceLock;

use serde_json::Value;

use crate::QUESTIONS;

/// The example, built once in the profile that this test was built in.
fn ask() -> &'static PathBuf {
    static BUILT: OnceLock<PathBuf> = OnceLock::new();
    BUILT.get_or_init(|| {
        let here = std::env::current_exe().unwrap();
        let profile = here.ancestors().nth(2).unwrap();
        let mut build = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
        build
            .current_dir(env!("CARGO_MANIFEST_DIR"))
            .args([
                "build",
                "--quiet",
                "--example",
                "ask",
                "--features",
                "std,json",
            ])
            .env("CARGO_TARGET_DIR", profile.parent().unwrap());
        if profile.ends_with("release") {
            build.arg("--release");
        }
        assert!(build.status().expect("cargo").success());
        profile
            .join("examples")
            .join(format!("ask{}", std::env::consts::EXE_SUFFIX))
    })
}

fn run(words: &[&str], input: &[u8]) -> Output {
    let mut child = Command::new(ask())
        .args(words)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    let mut pipe = child.stdin.take().unwrap();
    let input = input.to_vec();
    // A child that refuses its words reads nothing, so a closed pipe is no failure of this test.
    let writer = std::thread::spawn(move || drop(pipe.write_all(&input)));
    let output = child.wait_with_output().unwrap();
    writer.join().unwrap();
    output
}

fn ids(output: &Output) -> Vec<Value> {
    String::from_utf8(output.stdout.clone())
        .unwrap()
        .lines()
        .map(|line| serde_json::from_str::<Value>(line).unwrap()["id"].clone())
        .collect()
}

#[test]
fn order_is_kept_and_a_bad_line_stops_nothing() {
    let lines = b"{\"id\":3,\"ask\":\"convert\",\"length\":\"1 in\"}\n\xff\xfe\n{\"id\":\"b\",\"ask\":\"nothing\"}\r\n\n{\"id\":1,\"ask\":\"convert\",\"length\":\"2 in\"}";
    let output = run(&[], lines);
    assert_eq!(output.status.code(), Some(1));
    assert_eq!(
        ids(&output),
        [
            Value::from(3),
            Value::Null,
            "b".into(),
            Value::Null,
            1.into()
        ]
    );
}

#[test]
fn exit_status() {
    let good = b"{\"ask\":\"convert\",\"length\":\"1 in\"}\n";
    assert_eq!(run(&[], good).status.code(), Some(0));
    assert_eq!(run(&[], b"").status.code(), Some(0));
    assert_eq!(run(&[], b"{}\n").status.code(), Some(1));
    for words in [
        &["--colour"][..],
        &["--rows"],
        &["--rows", "/no/such/file.toml"],
        &["--jobs", "0"],
        &["--jobs", "many"],
    ] {
        let output = run(words, good);
        assert_eq!(output.status.code(), Some(2), "{words:?}");
        assert!(output.stdout.is_empty() && !output.stderr.is_empty());
    }
}

#[test]
fn a_line_that_is_too_long_is_refused_and_passed_over() {
    let mut lines = vec![b'x'; 3 << 20];
    lines.extend_from_slice(b"\n{\"id\":2,\"ask\":\"convert\",\"length\":\"1 in\"}\n");
    for words in [&[][..], &["--jobs", "2"]] {
        let output = run(words, &lines);
        let text = String::from_utf8(output.stdout).unwrap();
        let told: Vec<&str> = text.lines().collect();
        assert!(
            told.len() == 2
                && told[0].contains("too_large")
                && told[1].starts_with("{\"id\":2,\"answer\""),
            "{text}"
        );
    }
}

#[test]
fn one_thread_and_many_give_the_same_bytes() {
    let mut lines = String::new();
    for round in 0..40 {
        for line in QUESTIONS.lines().filter(|l| !l.contains("\"prepare\"")) {
            lines.push_str(&line.replacen("\"id\":", &format!("\"id\":{round}0000"), 1));
            lines.push('\n');
        }
    }
    let one = run(&[], lines.as_bytes());
    for jobs in ["2", "5"] {
        let many = run(&["--jobs", jobs], lines.as_bytes());
        assert!(one.stdout == many.stdout, "{jobs} threads answer otherwise");
        assert_eq!(one.status.code(), many.status.code());
    }
}

#[test]
fn schema_is_json() {
    let output = run(&["--schema"], b"");
    assert_eq!(output.status.code(), Some(0));
    let schema: Value = serde_json::from_slice(&output.stdout).unwrap();
    assert_eq!(
        schema,
        serde_json::to_value(framegauge::ask::schema()).unwrap()
    );
}

#[test]
fn rows_are_loaded_and_clashes_refused() {
    let own = std::env::temp_dir().join(format!("own-rows-{}.toml", std::process::id()));
    let name = own.to_str().unwrap();
    std::fs::write(&own, "[[seatpost]]\ncode = \"own_28_9\"\ndiameter = { nominal = \"28.9 mm\", from = [\"our post\"] }\n").unwrap();
    let found = run(
        &["--rows", name],
        b"{\"ask\":\"standard\",\"code\":\"own_28_9\"}\n",
    );
    std::fs::write(
        &own,
        "[[seatpost]]\ncode = \"27.2\"\ndiameter = { nominal = \"27.3 mm\" }\n",
    )
    .unwrap();
    let clash = run(&["--rows", name], b"");
    let taken = "[[seatpost]]\ncode = \"27.2\"\ndiameter = { nominal = \"27.3 mm\" }\n";
    std::fs::write(&own, taken.repeat(60)).unwrap();
    let many = run(&["--rows", name], b"");
    std::fs::remove_file(&own).unwrap();
    assert_eq!(
        found.status.code(),
        Some(0),
        "{}",
        String::from_utf8_lossy(&found.stderr)
    );
    assert_eq!(clash.status.code(), Some(2));
    assert!(String::from_utf8_lossy(&clash.stderr).contains("27.2"));
    assert_eq!(many.status.code(), Some(2));
    let told = String::from_utf8_lossy(&many.stderr).into_owned();
    assert!(
        told.contains("more than 50 defects") && told.contains("and 10 more"),
        "{told}"
    );
}
