#!/usr/bin/env python3
"""A shop's batch: the readings of a hundred frames in, a table out, through a pipe to the `ask` example.

    cargo build --release --example ask
    python3 examples/scripts/shop_batch.py target/release/examples/ask          # prints the table
    python3 examples/scripts/shop_batch.py target/release/examples/ask --check  # compares it with the committed one
    python3 examples/scripts/shop_batch.py --invent                             # writes the readings anew

Standard library only. All hundred frames are invented: the readings are drawn by a fixed generator around nominal
sizes, some of them wrong on purpose, as they come in at a shop.
"""

import csv
import json
import pathlib
import subprocess
import sys

HERE = pathlib.Path(__file__).resolve().parent
READINGS = HERE / "shop_batch.csv"
TABLE = HERE / "shop_batch.txt"
FIELDS = ["frame", "shell_bore", "shell_width", "shell_pitch", "seat_tube", "post", "post_size"]

# What an invented frame has: bore over the crests, width, pitch, seat tube. Sizes are those of the tables.
SHELLS = [
    ("33.70", "68.1", "24 tpi"),
    ("33.80", "73.0", "24 tpi"),
    ("34.90", "70.0", "24 tpi"),
    ("45.98", "68.0", ""),
    ("40.98", "86.5", ""),
]
SEAT_TUBES = [27.2, 30.9, 31.6, 26.8]


class Dice:
    """A 64-bit congruential generator: the same frames on every machine."""

    def __init__(self, seed):
        self.state = seed

    def roll(self, sides):
        self.state = (self.state * 6364136223846793005 + 1442695040888963407) % 2**64
        return (self.state >> 33) % sides


def invent():
    """Writes the readings of a hundred invented frames."""
    dice = Dice(2026)
    with READINGS.open("w", newline="") as file:
        out = csv.writer(file, lineterminator="\n")
        out.writerow(FIELDS)
        for number in range(1, 101):
            bore, width, pitch = SHELLS[dice.roll(len(SHELLS))]
            bore = float(bore) + (dice.roll(11) - 5) / 100
            width = float(width) + (dice.roll(9) - 4) / 10
            tube = SEAT_TUBES[dice.roll(len(SEAT_TUBES))]
            # One tube in five was reamed too far, one post in five is a size too small.
            seat = tube + (dice.roll(7) + 1) / 100 + (0.15 if dice.roll(5) == 0 else 0)
            post = tube - dice.roll(5) / 100 - (0.2 if dice.roll(5) == 0 else 0)
            out.writerow([
                f"invented {number}",
                f"{bore:.2f} mm +/- 0.05 mm",
                f"{width:.1f} mm +/- 0.1 mm",
                pitch,
                f"{seat:.2f} mm +/- 0.02 mm",
                f"{post:.2f} mm +/- 0.01 mm",
                f"{tube} mm",
            ])


def questions(frames):
    """Three questions a frame; the id says which frame and which question."""
    for frame in frames:
        name = frame["frame"]
        seen = {"bore": frame["shell_bore"], "width": frame["shell_width"]}
        if frame["shell_pitch"]:
            seen["pitch"] = frame["shell_pitch"]
        else:
            seen["threaded"] = "no"
        yield {"id": f"{name}/shell", "ask": "identify", "place": "shell", "readings": seen}
        post = {
            "bore": [frame["seat_tube"]],
            "post": [frame["post"]],
            "nominal": frame["post_size"],
            "clearance": "0 mm to 0.1 mm",
        }
        yield {"id": f"{name}/post", "ask": "shim", **post}
        depth = {"post": frame["post_size"]}
        yield {"id": f"{name}/depth", "ask": "insertion", **depth}


def answers(program, asked):
    """Pipes the questions through the program, line by line; replies come back in the same order."""
    lines = "".join(json.dumps(question) + "\n" for question in asked)
    run = subprocess.run([program], input=lines, capture_output=True, text=True, encoding="utf-8", check=False)
    if run.returncode not in (0, 1):
        sys.exit(f"{program} ended with {run.returncode}: {run.stderr}")
    return {reply["id"]: reply for reply in map(json.loads, run.stdout.splitlines())}


def cell(reply, tell):
    """What an answer tells, or what was wrong with the question."""
    if "error" in reply:
        return f"{reply['error']['field']}: {reply['error']['message']}"
    return tell(reply["answer"])


def shell(answer):
    """The standard of the shell, as far as the readings say."""
    if answer["code"]:
        return answer["code"]
    if answer["between"]:
        return " or ".join(answer["between"][:3])
    return answer["outcome"]


def post(answer):
    """The post in its tube, and the shim that would cure it."""
    words = answer["outcome"].replace("_", " ")
    if answer["out"] not in (None, "neither", "cannot_tell"):
        words += f", {answer['out']} off".replace("hole off", "tube off").replace("shaft off", "post off")
    wall = answer["numbers"].get("shim_wall_mm")
    if wall and answer["outcome"] == "nonconformity_shown":
        words += f", shim wall {wall:.3f} mm"
    return words


def table(frames, replies):
    """One line a frame."""
    rows = [["frame", "shell", "post in tube", "insertion"]]
    for frame in frames:
        name = frame["frame"]
        rows.append([
            name,
            cell(replies[f"{name}/shell"], shell),
            cell(replies[f"{name}/post"], post),
            cell(replies[f"{name}/depth"], lambda answer: f"{answer['numbers']['depth_mm']:.1f} mm"),
        ])
    widths = [max(len(row[column]) for row in rows) for column in range(4)]
    return "".join("  ".join(text.ljust(width) for text, width in zip(row, widths)).rstrip() + "\n" for row in rows)


def main(words):
    if "--invent" in words:
        invent()
        return 0
    programs = [word for word in words if not word.startswith("--")]
    if len(programs) != 1:
        print(__doc__, file=sys.stderr)
        return 2
    with READINGS.open(newline="") as file:
        frames = list(csv.DictReader(file))
    text = table(frames, answers(programs[0], questions(frames)))
    if "--check" in words:
        if TABLE.read_text(encoding="utf-8") != text:
            sys.stdout.write(text)
            print(f"differs from {TABLE.name}", file=sys.stderr)
            return 1
        return 0
    sys.stdout.write(text)
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
