"""Which walls of a model anybody could course, judged from other readers' meshes and not from our reasons.

Coursable: a 3D body, own or in parts; two parallel upright faces; longer than thick and than the least piece; higher than the
least rip course and its bed; area left after openings. A wall in the place of another one is laid once and counts once.
"""
from dataclasses import dataclass

# Least rip course, mm, by catalog (of octametric and block-in, which have none, the unit's height is taken).
LEAST_RIP = {"aac-in": 98.425, "aac-mm": 100.0, "aac-600": 100.0}
FLAT = 0.01         # sine to the vertical up to which a face is upright
SLAB = 0.5          # share of the body between its two faces, from which on they make it a straight wall
EDGE = 1.0          # mm: what is larger than a limit by less than this may be judged either way
INSIDE = 0.9        # share of run, thickness and height that stands inside another wall, from which on it is the same wall


@dataclass(frozen=True)
class Verdict:
    """coursable: None where no reader's mesh can tell; why: what is missing, where it is not coursable."""
    coursable: bool | None
    straight: bool
    why: str = ""


def verdict(wall, facts, layout, coursed) -> Verdict:
    """Of a wall of layout.json with what a reader measured (None: it has no mesh); coursed: the same of all coursed walls."""
    body = wall.get("body")
    if facts is None:
        if not body:
            return Verdict(False, False, "no 3D body")
        return Verdict(False, True, "no area left") if body["netVolume"] < 1e-9 else Verdict(None, True, "no mesh")
    faces = facts["faces"]
    if faces is None or faces["share"] < SLAB:
        return Verdict(False, False, "no two parallel faces") if facts["closed"] else Verdict(None, True, "the mesh is not closed")
    if faces["lean"] > FLAT:
        return Verdict(False, True, "faces not upright")
    catalog = layout["catalog"]
    least = LEAST_RIP.get(catalog["name"], catalog["unitHeight"]) + catalog["bedMin"]
    for missing, have, limit in (("not longer than thick", size(faces["run"]), faces["thickness"]),
                                 ("shorter than the least piece", size(faces["run"]), layout["rules"]["minPiece"]),
                                 ("lower than the least course", size(faces["height"]), least)):
        if have < limit + EDGE:
            return Verdict(False, True, missing)
    if wall["status"] == "skipped" and any(stands_in(faces, other["faces"]) for other in coursed if other["faces"]):
        return Verdict(False, True, "in the place of a wall that is coursed")
    return Verdict(True, True)


def size(extent):
    return extent[1] - extent[0]


def stands_in(faces, other):
    turned = faces["direction"][0] * other["direction"][0] + faces["direction"][1] * other["direction"][1]
    if abs(turned) < 0.99999:
        return False
    for key in ("run", "across", "height"):
        low, high = other[key] if turned > 0 or key == "height" else (-other[key][1], -other[key][0])
        if min(faces[key][1], high) - max(faces[key][0], low) < INSIDE * size(faces[key]):
            return False
    return True
