#!/usr/bin/env python3
"""What the crate costs a program that embeds it: packages added, seconds of a clean release build, bytes added.

    python3 benches/embed_cost.py

Each use is a small program of its own in a temporary folder, built clean (`opt-level = 3`, stripped, panics unwind) and held
against an empty program built the same way; the second size is with `lto = true, codegen-units = 1`. Packages count the
crate itself; those that are not linked only write code while it is built. They are fetched by cargo as for any build, which
is not timed.
"""

import os
import subprocess
import sys
import tempfile
import time
from pathlib import Path

CRATE = Path(__file__).resolve().parent.parent

LOOKUP = """use framegauge::standard::{Shell, find};

fn main() {
    let name = std::env::args().nth(1).unwrap_or_default();
    if let Ok(row) = find::<Shell>(&name) {
        std::process::exit(row.code.len() as i32);
    }
}
"""

FIT = """use framegauge::fit::{
    HoleMember, JointShape, Material, MaterialKind, Press, PressJoint, ShaftMember, fit_between,
};
use framegauge::{Error, Interference, Ratio, gpa, measure::DecisionRule, mm};

fn pressure(size: f64) -> Result<f64, Error> {
    let hole = HoleMember::of_class(mm(size), "N7".parse()?)?;
    let shaft = ShaftMember::of_class(mm(size), "h6".parse()?)?;
    let fit = fit_between(&hole, &shaft, DecisionRule::default())?;
    let alloy = Material::new("alloy", MaterialKind::Metal, gpa(69.0), Ratio(0.33))?;
    let steel = Material::new("steel", MaterialKind::Metal, gpa(206.0), Ratio(0.3))?;
    let shape = JointShape {
        diameter: mm(size),
        shaft_bore: Some(mm(size - 2.4)),
        hub_outside: mm(size + 4.0),
        length: mm(7.0),
    };
    let press = Press::new(Interference::new(-fit.tightest().value())?)?;
    Ok(PressJoint::new(shape, &steel, &alloy)?.pressure(press).value)
}

fn main() {
    let size = std::env::args().nth(1).and_then(|a| a.parse().ok()).unwrap_or(42.0);
    std::process::exit(pressure(size).map_or(1, |p| (p / 1e6) as i32));
}
"""

WHOLE = """use framegauge::ask::{Context, answer_line};
use framegauge::plan::{FrameSheet, prepare};
use framegauge::standard::Tables;

fn main() {
    let text = std::env::args().nth(1).unwrap_or_default();
    if let Ok(sheet) = FrameSheet::from_json(&text, Tables::ours()) {
        println!("{}", framegauge::say::plan(&prepare(&sheet)));
    }
    println!("{}", answer_line(&text, &Context::default()).json);
}
"""

USES = [
    ("an empty program (base)", "", "fn main() {}\n"),
    ("one table lookup", ", default-features = false", LOOKUP),
    ("fit math: `fit_between`, press", ", default-features = false", FIT),
    ("whole: `prepare` of a JSON sheet, `answer_line`", "", WHOLE),
]
LTO = {"CARGO_PROFILE_RELEASE_LTO": "true", "CARGO_PROFILE_RELEASE_CODEGEN_UNITS": "1"}


def cargo(folder, *words, target="target", **settings):
    env = os.environ | settings | {"CARGO_TARGET_DIR": str(folder / target)}
    done = subprocess.run(("cargo", *words), cwd=folder, env=env, capture_output=True, text=True)
    if done.returncode:
        sys.exit(f"cargo {' '.join(words)} failed:\n{done.stderr}")
    return done.stdout


def packages_of(folder, edges):
    tree = cargo(folder, "tree", "--edges", edges, "--prefix", "none", "--format", "{p}")
    return len({tuple(line.split()[:2]) for line in tree.splitlines() if line.strip()}) - 1


def built(folder, **settings):
    """Seconds of a clean release build and the size of the stripped program."""
    target = "lto" if settings else "plain"
    start = time.monotonic()
    cargo(folder, "build", "--release", "--offline", target=target, **settings)
    return time.monotonic() - start, (folder / target / "release" / "embedder").stat().st_size


def measure(number, features, text):
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        needs = ""
        if number:
            needs = f'framegauge = {{ path = "{CRATE.as_posix()}"{features} }}\n'
        (folder / "src").mkdir()
        (folder / "src" / "main.rs").write_text(text)
        (folder / "Cargo.toml").write_text(
            '[package]\nname = "embedder"\nversion = "0.1.0"\nedition = "2024"\n'
            f"[dependencies]\n{needs}[profile.release]\nstrip = true\n"
        )
        cargo(folder, "fetch")
        packages = [packages_of(folder, edges) for edges in ("normal", "normal,no-proc-macro")]
        return (*packages, *built(folder), built(folder, **LTO)[1])


def main():
    print("`python3 benches/embed_cost.py`\n")
    print("| use | features | packages added | of them linked | clean release build, s | size added, kB | with LTO, kB |")
    print("|---|---|--:|--:|--:|--:|--:|")
    base = None
    for number, (name, features, text) in enumerate(USES):
        packages, linked, seconds, size, small = measure(number, features, text)
        base = base or (size, small)
        added = [f"{(now - then) / 1000:.0f}" for now, then in zip((size, small), base)]
        chosen = "none" if features else "default"
        print(f"| {name} | {chosen if number else '—'} | {packages} | {linked} | {seconds:.1f} | {added[0]} | {added[1]} |", flush=True)
    print(f"\nThe base takes {base[0] / 1000:.0f} kB ({base[1] / 1000:.0f} kB with LTO).")


if __name__ == "__main__":
    main()
