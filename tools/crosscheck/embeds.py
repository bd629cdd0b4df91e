"""Embeds of a job file, against the bars and laps of the layout that they came out in: clear of these by what the file asks for, or named by a finding."""
import json
import subprocess
from pathlib import Path

INCH = 25.4
NEAR = 0.001  # mm
# Straps so close that many meet bars and laps, with and without play; sleeves; and one that is off the wall.
GIVEN = [
    {"kind": "strap", "at": 6, "every": 7, "height": "beam", "play": 3, "clear": 3},
    {"kind": "ledger bolt", "at": 4, "every": 5, "height": "32 in", "play": 0, "clear": 2},
    {"kind": "sleeve", "at": 9, "every": 13, "height": "60 in", "play": 6, "clear": 5},
]


def problems(model: Path, folder: Path, command: list[str]):
    """Lays the model out with embeds in every wall and lists what is wrong with them."""
    folder.mkdir(parents=True, exist_ok=True)
    job = folder / "embeds.toml"
    job.write_text("[[wall]]\nname = \"*\"\n" + "".join(table(given) for given in GIVEN), encoding="utf-8")
    run = subprocess.run([*command, "layout", model, "--out", folder / "out", "--job", job, "--formats", "json", "--quiet"], capture_output=True, text=True)
    if run.returncode not in (0, 1):
        return [f"embeds: exit status {run.returncode}: {run.stderr.strip()}"]
    layout = json.loads((folder / "out" / "layout.json").read_text(encoding="utf-8"))
    found, moved, near = [], 0, 0
    for wall in (wall for wall in layout["walls"] if wall["status"] == "coursed"):
        for given in GIVEN:
            texts, counts = of_wall(wall, given)
            found += [f"embeds of {wall['name']}: {text}" for text in texts]
            moved, near = moved + counts[0], near + counts[1]
    if not moved or not near:
        found.append(f"embeds: {moved} were moved clear and {near} named: the check has nothing to see")
    return found


def table(given):
    lines = [f'{key} = "{value} in"' if isinstance(value, int) else f'{key} = "{value}"' for key, value in given.items()]
    return "\n[[wall.embeds]]\n" + "\n".join(lines) + "\n"


def of_wall(wall, given):
    """What is wrong, and how many were moved and how many named as too near."""
    texts, moved, near = [], 0, 0
    placed = [embed for embed in wall["embeds"] if embed["kind"] == given["kind"]]
    named = [(finding["code"], finding["at"]["s"]) for finding in wall["findings"]
             if finding["code"] in ("embed-near-bar", "embed-not-placed") and f"{given['kind']}" in finding["message"].lower()]
    left = list(placed)
    at = given["at"] * INCH
    while at <= wall["frame"]["length"] + NEAR:
        codes = [code for code, s in named if abs(s - at) < 0.01]
        own = min(left, key=lambda embed: abs(embed["at"] - at), default=None)
        if "embed-not-placed" in codes:
            pass
        elif own is None or abs(own["at"] - at) > given["play"] * INCH + NEAR:
            texts.append(f"no {given['kind']} within {given['play']} in of {at:.1f} mm, and no finding")
        else:
            left.remove(own)
            is_clear = distance(wall, own) >= given["clear"] * INCH - NEAR
            if is_clear == ("embed-near-bar" in codes):
                texts.append(f"{given['kind']} at {own['at']:.1f} mm is {distance(wall, own):.1f} mm from bars and laps, and a finding {'names it' if is_clear else 'does not name it'}")
            moved += is_clear and abs(own["at"] - at) > NEAR
            near += not is_clear
        at += given["every"] * INCH
    texts += [f"{given['kind']} at {embed['at']:.1f} mm was not given" for embed in left]
    return texts, (moved, near)


def distance(wall, embed):
    """To the nearest bar that passes its height, those of corners that other walls list too, or lap of a beam there."""
    bars = [abs(core["at"] - embed["at"]) for core in wall["cores"] + wall.get("cornerCores", []) if core["bottom"] <= embed["z"] <= core["top"]]
    laps = [max(lap["from"] - embed["at"], embed["at"] - lap["to"], 0.0)
            for beam in wall["bondBeams"] if beam["bottom"] <= embed["z"] <= beam["top"] for lap in beam["laps"]]
    return min(bars + laps, default=float("inf"))
