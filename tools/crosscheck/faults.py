"""Whether the junction check sees what it is there for: layouts with a fault put in by hand, and a corner computed by hand."""
import copy
import json
import math
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
            if fault not in reported(broken, file, node):
                yield f"{layout.parent.name}: the junction check does not see an {fault} put in by hand"
        if layouts and tried == 0:
            yield f"no fixture has a corner to put an {fault} into"
    if reported(skew_corner(cut=True), folder / "skew.json", node):
        yield "the junction check finds a fault in a skew corner that is cut right"
    if reported(skew_corner(cut=False), folder / "square.json", node) != {"hole", "overlap"}:
        yield "the junction check does not see what square ends do at a skew corner"
    if reported(skew_corner(cut=True, short=True), folder / "short.json", node) != {"hole"}:
        yield "the junction check sees two pieces in one place where one that is shorter than its slant ends in a point"


def reported(layout, file, node):
    """The kinds of fault that junctions.mjs finds."""
    file.write_text(json.dumps(layout), encoding="utf-8")
    run = subprocess.run(["node", node / "junctions.mjs", file], capture_output=True, text=True, check=True)
    return {json.loads(line).get("fault") for line in run.stdout.splitlines()} - {None}


def skew_corner(cut, short=False):
    """Two walls of 200 mm that turn left by 60 degrees, the inner corner at (1000, 0). Ends along the other's outer face (running
    through) and its near face (stopping) have a slant of 200 / tan 60 degrees. short: the second wall's first piece is 80 mm long on its longer face, 80 mm under the slant
    of 115.47 on the other, which leaves a hole behind it and takes nothing of the first wall."""
    slant = 200 / math.tan(math.pi / 3)     # 115.47
    turned = [0.5, math.sqrt(3) / 2]
    first = wall("A", [0, 0], [1, 0], 1000 + 2 * slant, [[0, 1000 + 2 * slant], [0, 999]], cut and -slant, at_start=False)
    start = [1000 - 2 * slant * turned[0], -2 * slant * turned[1]]
    second = wall("B", start, turned, 1000 + 2 * slant, [[2 * slant + 1, 1000 + 2 * slant], [0, 1000 + 2 * slant]], cut and slant, at_start=True)
    if short:
        second["courses"][0]["pieces"][0]["to"] = second["courses"][0]["spans"][0][1] = 2 * slant + 81
    return {"catalog": {"headJointMax": 3, "bedJoint": 1, "bedMax": 30}, "walls": [first, second],
            "junctions": [{"id": "J1", "kind": "corner", "walls": ["A", "B"], "how": "bonded", "through": {"odd": "A", "even": "B"}}]}


def wall(name, origin, direction, length, spans, slant, at_start):
    """A wall of two courses, one piece each; its corner is at its start or end."""
    free, corner = {"kind": "free", "with": []}, {"kind": "corner", "with": ["B" if name == "A" else "A"]} | ({"slant": slant} if slant else {})
    courses = [{"n": n, "spans": [span], "edges": [["free", "free"]], "pieces": [
        {"id": f"{name}{n}", "from": span[0], "to": span[1], "bottom": 250 * n - 230, "top": 250 * n + 19}]} for n, span in enumerate(spans, 1)]
    return {"globalId": name, "status": "coursed", "courses": courses, "openings": [], "movementJoints": [], "lintels": [], "bondBeams": [], "findings": [],
            "frame": {"origin": [*origin, 0], "direction": direction, "normal": [-direction[1], direction[0]], "length": length, "thickness": 200},
            "outline": [[0, 0], [length, 0], [length, 520], [0, 520]], "ends": {"start": corner if at_start else free, "end": free if at_start else corner}}


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
