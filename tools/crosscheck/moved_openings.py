"""The model with moved openings: only placements have changed, and each opening stands where its list says."""
import csv
import re
from pathlib import Path

from coursed_model import instances

NEAR = 0.01  # mm
PLACED = ("IFCLOCALPLACEMENT", "IFCOPENINGELEMENT", "IFCOPENINGSTANDARDCASE", "IFCDOOR", "IFCDOORSTANDARDCASE", "IFCWINDOW", "IFCWINDOWSTANDARDCASE")


def rows_of(listed: Path):
    with listed.open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def text_problems(original: bytes, moved: bytes):
    """Yields original instances that are gone or changed though they place nothing."""
    before, after = instances(original), instances(moved)
    for number, text in before.items():
        now = after.get(number)
        if now is None:
            yield f"#{number.decode()} is gone from the model with moved openings"
        elif re.sub(rb"\s+", b"", now) != re.sub(rb"\s+", b"", text) and not text.upper().startswith(tuple(kind.encode() for kind in PLACED)):
            yield f"#{number.decode()} is changed in the model with moved openings: {text[:60]!r}"


def place_problems(layout, rows, before, after):
    """Yields openings that do not stand where the list says; boxes are web-ifc's, in the walls' frames of the layout."""
    shifts = {row["opening"]: (float(row["shift_along"]), float(row["shift_up"])) if row["moved"] == "yes" else (0, 0) for row in rows}
    listed = {row["opening"] for row in rows}
    for wall in layout["walls"]:
        for opening in wall.get("openings", []):
            if (opening["placed"] != opening["design"]) != (opening["globalId"] in listed):
                yield f"opening {opening['globalId']} is {'' if opening['globalId'] in listed else 'not '}listed"
    was = {opening["guid"]: opening.get("box") for wall in before for opening in wall["openings"] if opening.get("plain")}
    now = {opening["guid"]: opening.get("box") for wall in after for opening in wall["openings"]}
    for guid, box in was.items():
        if box and now.get(guid):
            along, up = shifts.get(guid, (0, 0))
            wanted = [box[0] + along, box[1] + along, box[2] + up, box[3] + up]
            if any(abs(a - b) > NEAR for a, b in zip(wanted, now[guid])):
                yield f"opening {guid} lies at {now[guid]}, its list says {wanted}"
