#!/usr/bin/env python3
"""Prints how fast our calls are beside what would be used instead, and how they grow, as two Markdown tables.

    python3 benches/ratios.py              # runs the benches: half a minute, and the build before it
    python3 benches/ratios.py - < saved    # reads what `cargo bench --bench face --bench fit ...` printed before

Every time is the median of divan's samples. Exit 1: a line that cannot be read, or a bench named below that was not run.
"""

import math
import re
import subprocess
import sys
from pathlib import Path

BENCHES = ["ask", "face", "fit", "identify", "lookup", "plan", "thread"]
# These count what they allocate; a call of theirs without a count allocates nothing.
COUNTED = {"face", "lookup", "thread"}

# What is asked, our bench, what would be used instead, its bench. `*` stands for every size or name, {} repeats it.
PAIRS = [
    ("minimum-zone plane, {} points", "face/zone/*", "linear programme (microlp)", "face/zone_by_microlp/*"),
    ("least-squares plane, {} points", "face/plane_by_least_squares/*", "bare loop", "face/plane_by_bare_loop/*"),
    ("pressure of a press fit (Lamé)", "fit/lame", "bare `f64`, one division", "fit/lame_bare_f64"),
    ("pressure of a press fit (Lamé)", "fit/lame", "bare `f64`, as printed", "fit/lame_bare_f64_as_printed"),
    ("stresses of a press fit", "fit/stresses", "bare `f64`", "fit/stresses_bare_f64"),
    ("fit by limits, with findings", "fit/fit_by_limits", "bare `f64`: clearances and kind", "fit/fit_by_limits_bare_f64"),
    ("fit of measured parts, with findings", "fit/fit_measured", "bare `f64`: the numbers", "fit/fit_measured_bare_f64"),
    ("limits of 100 ISO 286 classes", "fit/limits_100", "tables in vectors, walked", "fit/limits_100_in_vectors"),
    ("limits of M10x1-6g", 'thread/limits/("M10x1", "6g")', "tables in vectors, walked", "thread/limits_6g_bare_f64"),
    ("shell by its name BSA", "lookup/shell/BSA", "TOML file parsed when asked", "lookup/shell_by_parsing_the_file/BSA"),
    ("shell by its name BSA", "lookup/shell/BSA", "rows parsed before, walked", "lookup/shell_in_owned_rows/BSA"),
    ("shell by its name BSA", "lookup/shell/BSA", "rows parsed before, hash map", "lookup/shell_in_a_hash_map/BSA"),
    ("the last of {} rows", "lookup/last_row/*", "rows parsed before, walked", "lookup/last_row_in_owned_rows/*"),
    ("limit and grade by name", "lookup/limit", "rows parsed before, walked", "lookup/limit_in_owned_rows"),
    ("`ask`, lines: {}", "ask/lines/*", "floor: read and written as JSON, unanswered", "ask/lines_through_json_alone/*"),
]

# What grows, what its sizes count, the bench.
GROWTH = [
    ("minimum-zone plane", "point", "face/zone"),
    ("the same by linear programme", "point", "face/zone_by_microlp"),
    ("row by name, the last one", "row", "lookup/last_row"),
    ("which shell", "reading", "identify/shell_by_readings"),
    ("plan of equal places (bottle bosses)", "place", "plan/bosses"),
    ("`ask`", "line", "ask/lines"),
]

UNITS = {"ps": 1e-3, "ns": 1.0, "µs": 1e3, "ms": 1e6, "s": 1e9}
TIME = r"([\d.]+) (ps|ns|µs|ms|s)"
HEAD = re.compile(r"(\w+) +fastest +│ slowest +│ median +│ mean +│ samples +│ iters$")
NODE = re.compile(r"((?:│  |   )*)[├╰]─ (.*)$")
NOTE = re.compile(r"|(?:max alloc|alloc|dealloc|grow|shrink):|[\d.]+(?: [KMGT]?B)?|[\d.]+ [KMGTP]?item/s")
ASIDE = re.compile(r"$|Timer precision: |\s+(?:Compiling|Finished|Running) ")


def read(lines):
    """Medians in nanoseconds and allocations of one call, both by the path of the bench."""
    times, allocations, path, counting = {}, {}, [], False
    for number, line in enumerate((line.rstrip() for line in lines), 1):
        head, node = HEAD.match(line), NODE.match(line)
        cells = [cell.strip() for cell in line.split("│")]
        if head:
            path = [head[1]]
        elif node and path:
            name, *cells = [cell.strip() for cell in node[2].split("│")]
            path = path[: 1 + len(node[1]) // 3]
            leaf = re.match(rf"(.*?) {{2,}}{TIME}$", name)
            if leaf and len(cells) == 5 and (median := re.fullmatch(TIME, cells[1])):
                path.append(leaf[1])
                times["/".join(path)] = float(median[1]) * UNITS[median[2]]
            elif not leaf and not any(cells):
                path.append(name)
            else:
                sys.exit(f"line {number} cannot be read: {line}")
            counting = False
        elif path and "│" in line and all(NOTE.fullmatch(cell) for cell in cells):
            told = [cell for cell in cells if cell]
            if counting:
                allocations["/".join(path)] = float(told[2])
            counting = told == ["alloc:"]
        elif not ASIDE.match(line):
            sys.exit(f"line {number} cannot be read: {line}")
    return times, allocations


def children(times, group):
    """Names below a group, in the order of their sizes where they are numbers."""
    names = [path[len(group) + 1 :] for path in times if path.startswith(f"{group}/")]
    return sorted(names, key=lambda name: int(name) if name.isdigit() else 0)


def short(number):  # two figures: more would be noise
    return f"{float(f'{number:.2g}'):,.0f}" if number >= 10 else f"{number:.2g}"


def told(nanoseconds):
    unit = next((u for u in ("s", "ms", "µs", "ns") if nanoseconds >= UNITS[u]), "ns")
    return f"{nanoseconds / UNITS[unit]:.3g} {unit}"


def ratio(ours, other):
    if 0.95 <= other / ours <= 1.05:
        return "equally fast"
    return f"{short(other / ours)} times faster" if other > ours else f"{short(ours / other)} times slower"


def growth(one, sizes, times):
    if times[-1] <= times[0]:
        return f"none: {short(times[0] / times[-1])} times less for {sizes[-1]} than for {sizes[0]}"
    each = (times[-1] - times[0]) / (sizes[-1] - sizes[0])
    doubling = 2 ** (math.log(times[-1] / times[0]) / math.log(sizes[-1] / sizes[0]))
    return f"{told(each)} for each further {one}; {doubling:.2f} times a doubling"


def main():
    if sys.argv[1:] == ["-"]:
        text = sys.stdin.read()
    elif not sys.argv[1:]:
        command = ["cargo", "bench", "--quiet", *(word for name in BENCHES for word in ("--bench", name))]
        done = subprocess.run(command, cwd=Path(__file__).parent, stdout=subprocess.PIPE, text=True)
        text = done.stdout if done.returncode == 0 else sys.exit("the benches failed")
    else:
        sys.exit(__doc__)
    times, allocations = read(text.splitlines())
    missing = []

    def cell(path):
        count = allocations.get(path, 0)
        words = f", {count:,.0f} allocation{'s' * (count != 1)}" if count else ", no allocation"
        return told(times[path]) + (words if path.split("/")[0] in COUNTED else "")

    print("| what | ours | the other choice | ours is |\n|---|---|---|---|")
    for what, ours, words, other in PAIRS:
        names = children(times, ours[:-2]) or children(times, other[:-2]) or ["*"] if ours.endswith("*") else [""]
        for name in names:
            a, b = ours.replace("*", name), other.replace("*", name)
            missing += [path for path in (a, b) if path not in times]
            if a in times and b in times:
                name = f"{int(name):,}" if name.isdigit() else name
                print(f"| {what.format(name)} | {cell(a)} | {words}: {cell(b)} | {ratio(times[a], times[b])} |")
    print("\n| what | sizes | times | growth |\n|---|---|---|---|")
    for what, one, group in GROWTH:
        names = children(times, group)
        if len(names) < 2 or not all(name.isdigit() for name in names):
            missing.append(f"{group}/*")
            continue
        sizes, took = [int(name) for name in names], [times[f"{group}/{name}"] for name in names]
        listed = " / ".join(f"{size:,}" for size in sizes)
        print(f"| {what} | {listed} {one}s | {' / '.join(map(told, took))} | {growth(one, sizes, took)} |")
    if missing:
        sys.exit("not run, or renamed: " + ", ".join(dict.fromkeys(missing)))


if __name__ == "__main__":
    main()
