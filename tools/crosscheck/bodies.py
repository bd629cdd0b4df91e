"""Bodies as we read them against the meshes of two other readers, and against elevation area times thickness.

The first reader is web-ifc. Where its mesh does not close or says something else than we do, @ifc-lite/wasm is asked too.
"""
import json
import subprocess
from dataclasses import dataclass, field
from pathlib import Path

VOLUME = 0.005      # share of the volume; below one litre, the litre
LITRE = 0.001       # m3
BOX = 2.0           # mm
PRISM = 0.001       # share of the volume, for our own elevation area times thickness
NO_PRISM = ("body-beyond-faces", "bevelled-across", "second-leaf", "body-in-pieces", "opening-cuts-rim", "hole-in-body")
PLACE = 0.5         # mm within which a body's box is that of the prism over its elevation


@dataclass
class Comparison:
    """Counts of one model, and a (wall, quantity, text) for each wall that differs; by_second: of those compared."""
    compared: int = 0
    within: int = 0
    by_second: int = 0
    worst_volume: float = 0.0
    worst_box: float = 0.0
    differences: list[tuple[str, str, str]] = field(default_factory=list)


def volume_differs(ours, theirs):
    return abs(ours - theirs) > max(VOLUME * theirs, LITRE)


def box_difference(body, facts):
    return max(abs(a - b) for k in ("min", "max") for a, b in zip(body[k], facts[k]))


def differs(body, facts):
    return volume_differs(body["netVolume"], facts["volume"]) or box_difference(body, facts) > BOX


def second_opinions(model: Path, asked: dict[int, list[int]], node: Path):
    """Facts by wall id, of the walls asked for as {id: elements that give its body}."""
    if not asked:
        return {}
    run = subprocess.run(["node", node / "second_opinion.mjs", model, json.dumps(asked)], capture_output=True, text=True, check=False)
    return {wall: facts for wall, facts in map(json.loads, run.stdout.splitlines()) if facts}


def compare(walls, seen, second):
    """Coursed walls of layout.json against the first reader's facts and, where that can't tell, the second's (both by id)."""
    result = Comparison()
    for wall in walls:
        first, other = seen.get(wall["stepId"]), second.get(wall["stepId"])
        closed = [facts for facts in (first, other) if facts and facts["closed"]]
        if not closed:
            continue
        result.compared += 1
        result.by_second += not (first and first["closed"])
        body, facts = wall["body"], closed[0]
        if not differs(body, facts):
            result.within += 1
            result.worst_volume = max(result.worst_volume, abs(body["netVolume"] - facts["volume"]))
            result.worst_box = max(result.worst_box, box_difference(body, facts))
            continue
        told = f"web-ifc {told_of(body, first)}; ifc-lite {told_of(body, other)}"
        quantity = "volume" if volume_differs(body["netVolume"], facts["volume"]) else "box"
        result.differences.append((wall["globalId"], quantity, f"ours {body['netVolume']:.4f} m3; {told}"))
    return result


def told_of(body, facts):
    if not facts:
        return "has no mesh"
    return f"{facts['volume']:.4f} m3, box {box_difference(body, facts):.1f} mm off{'' if facts['closed'] else ', not closed'}"


def prism_volume(wall):
    """m3; None where the masonry is not the whole body (junctions moved its ends, a mitred corner, more layers, steps in
    thickness) or an opening is not plain."""
    frame, outline = wall["frame"], wall["outline"]
    if "curve" in frame or any(end["kind"] == "corner" or end.get("slant") for end in wall["ends"].values()) or any(f["code"] in NO_PRISM for f in wall["findings"]):
        return None
    heights = [z for _, z in outline]
    ends = [s for s, _ in outline]
    corners = [[frame["origin"][k] + frame["direction"][k] * s - frame["normal"][k] * t for k in (0, 1)]
               for s in (min(ends), max(ends)) for t in (0, frame["thickness"])]
    low = [min(c[0] for c in corners), min(c[1] for c in corners), frame["origin"][2] + min(heights)]
    high = [max(c[0] for c in corners), max(c[1] for c in corners), frame["origin"][2] + max(heights)]
    body = wall["body"]
    if any(abs(a - b) > PLACE for k, place in (("min", low), ("max", high)) for a, b in zip(body[k], place)):
        return None
    voids = [opening_rectangle(o) for o in wall["openings"]]
    if None in voids or any(overlap(a, b) for i, a in enumerate(voids) for b in voids[:i]) or not rectangular(outline, voids):
        return None
    area = polygon_area(outline) - sum((b - a) * (d - c) for a, b, c, d in voids)
    return area * frame["thickness"] / 1e9


def opening_rectangle(opening):
    return None if opening["kind"] == "recess" or opening.get("outline") else opening["model"]


def overlap(a, b):
    return min(a[1], b[1]) > max(a[0], b[0]) and min(a[3], b[3]) > max(a[2], b[2])


def rectangular(outline, voids):
    """Openings are inside the outline where that is a rectangle; elsewhere a wall with openings is left out."""
    return not voids or len(outline) == 4 and all(min(abs(a[0] - b[0]), abs(a[1] - b[1])) < 1e-6 for a, b in zip(outline, outline[1:]))


def polygon_area(points):
    return abs(sum(x0 * y1 - x1 * y0 for (x0, y0), (x1, y1) in zip(points, points[1:] + points[:1]))) / 2
