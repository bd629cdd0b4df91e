"""Whether the junction check sees what it is there for: layouts of the fixtures with a fault put in by hand."""
import copy
import json
import subprocess
from pathlib import Path


def undetected(layouts: list[Path], folder: Path, node: Path):
    """Yields each fault that junctions.mjs does not report."""
    folder.mkdir(parents=True, exist_ok=True)
    for fault, put_in in (("hole", lose_piece), ("overlap", lay_too_far)):
        tried = 0
        for layout in layouts:
            if not layout.is_file():
                continue
            broken = put_in(json.loads(layout.read_text("utf-8")))
            if broken is None:
                continue
            tried += 1
            file = folder / f"{layout.parent.name}.{fault}.json"
            file.write_text(json.dumps(broken), encoding="utf-8")
            run = subprocess.run(["node", node / "junctions.mjs", file], capture_output=True, text=True, check=True)
            if not any(json.loads(line).get("fault") == fault for line in run.stdout.splitlines()):
                yield f"{layout.parent.name}: the junction check does not see an {fault} put in by hand"
        if layouts and tried == 0:
            yield f"no fixture has a corner to put an {fault} into"


def lose_piece(layout):
    """The layout without the piece that runs through a corner in its second course; None where no corner is bonded."""
    place = through_corner(layout)
    if place is None:
        return None
    course, piece = place
    course["pieces"].remove(piece)
    return layout


def lay_too_far(layout):
    """The layout with the wall that stops at a corner in its second course running on through the other one."""
    place = through_corner(layout, stopping=True)
    if place is None:
        return None
    course, piece = place
    longer = copy.deepcopy(piece)
    longer["id"] += "x"
    at_start = piece["from"] < 1000
    longer["from"], longer["to"] = (0, piece["from"]) if at_start else (piece["to"], piece["to"] + 150)
    course["pieces"].append(longer)
    return layout


def through_corner(layout, stopping=False):
    """(course, piece) at a bonded corner's end of the wall that runs through, or stops, in course 2."""
    walls = {wall["globalId"]: wall for wall in layout["walls"] if wall["status"] == "coursed"}
    for junction in layout["junctions"]:
        ends = [(wall, side) for wall in map(walls.get, junction["walls"]) if wall for side, end in wall["ends"].items() if end["kind"] == "corner"
                and set(end["with"]) < set(junction["walls"])]
        if junction["kind"] != "corner" or junction["how"] != "bonded" or len(ends) != 2 or len(ends[0][0]["courses"]) < 3:
            continue
        for wall, side in ends:
            course = wall["courses"][1]
            runs_through = junction["through"]["even"] == wall["globalId"]
            if course["pieces"] and runs_through != stopping:
                return course, (min if side == "start" else max)(course["pieces"], key=lambda p: p["from"])
    return None
