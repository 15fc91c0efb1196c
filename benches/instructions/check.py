#!/usr/bin/env python3
"""Counts the instructions of each workload and holds them against budgets.csv.

    python3 benches/instructions/check.py            # exit 1: a workload takes over 5 % more than its budget
    python3 benches/instructions/check.py --write    # the counts become the budgets

Counts repeat exactly where clocks do not. They hold for one compiler and one kind of machine: where these are others than
those the budgets were written with, differences are printed and nothing fails. Needs valgrind.
"""

import csv
import json
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

HERE = Path(__file__).resolve().parent
BUDGETS = HERE / "budgets.csv"
ROOM = 0.05


def output(*command):
    done = subprocess.run(command, cwd=HERE.parent.parent, stdout=subprocess.PIPE, text=True)
    if done.returncode:
        sys.exit(f"failed: {' '.join(command[:3])} ...")
    return done.stdout


def compiler():
    words = output("rustc", "--version", "--verbose").splitlines()
    return f"{words[0]}, {next(w[6:] for w in words if w.startswith('host: '))}"


def program():
    """Builds the workloads as `cargo bench` does: with the release profile."""
    lines = output("cargo", "bench", "--bench", "instructions", "--no-run", "--message-format=json-render-diagnostics").splitlines()
    for message in map(json.loads, filter(lambda line: line.startswith("{"), lines)):
        if message.get("executable") and message["target"]["name"] == "instructions":
            return message["executable"]
    sys.exit("cargo built no program of this name")


def instructions(path, name):
    with tempfile.TemporaryDirectory() as folder:
        out = Path(folder) / "counts"
        output(
            "valgrind", "-q", "--tool=callgrind", "--toggle-collect=*::counted_*",
            f"--callgrind-out-file={out}", path, name,
        )
        total = next(line for line in out.read_text().splitlines() if line.startswith("totals:"))
    count = int(total.split()[1])
    if not count:
        sys.exit(f"{name}: nothing was counted; does its counted function still stand?")
    return count


def read_budgets():
    if not BUDGETS.exists():
        return "", {}
    first, *rows = BUDGETS.read_text().splitlines()
    return first.removeprefix("# "), {row["name"]: int(row["instructions"]) for row in csv.DictReader(rows)}


def main():
    if not shutil.which("valgrind"):
        print("SKIPPED: valgrind is not installed")
        return 0
    write = "--write" in sys.argv[1:]
    here, (there, budgets) = compiler(), read_budgets()
    path = program()
    rows, failed, lower, last = [], [], [], {}
    print("| workload | instructions | budget | difference | growth |\n|---|--:|--:|--:|---|")
    for line in output(path).splitlines():
        name, size, unit = line.split(",")
        size, count, budget = int(size), instructions(path, name), budgets.get(name)
        growth = f"{count / size:.0f} per {unit}" if size else ""
        if unit and unit in last:
            before, counted = last[unit]
            further = f"{(count - counted) / (size - before):.0f} per further {unit}"
            growth = further if count >= counted else f"less than with {before}"
        last[unit] = (size, count)
        off = count / budget - 1 if budget else None
        if off is None or off > ROOM:
            failed.append(name)
        elif off < -ROOM:
            lower.append(name)
        shown = "none" if off is None else f"{100 * off:+.2f} %"
        print(f"| {name} | {count} | {budget or 'none'} | {shown} | {growth} |", flush=True)
        rows.append((name, count, f"{size} {unit}{'s' * (size != 1)}: {growth}" if size else "one answer"))
    gone = sorted(set(budgets) - {name for name, *_ in rows})
    if write:
        with BUDGETS.open("w", newline="") as file:
            file.write(f"# {here}\n")
            csv.writer(file, lineterminator="\n").writerows([("name", "instructions", "growth_note"), *rows])
        print(f"written: {BUDGETS.name}, {len(rows)} budgets")
        return 0
    if lower:
        print(f"more than 5 % below budget, so the budget can be lowered (--write): {', '.join(lower)}")
    if failed or gone:
        print(f"over budget or without one: {', '.join(failed) or 'none'}; budgets without a workload: {', '.join(gone) or 'none'}")
    if here != there:
        print(f"NOT HELD: the budgets are of {there or 'no compiler'}; this is {here}. Differences are shown, nothing fails.")
        return 0
    return 1 if failed or gone else 0


if __name__ == "__main__":
    sys.exit(main())
