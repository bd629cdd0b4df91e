"""Each opening's box in the wall's elevation against the outside reader's mesh of the opening element."""
import collections

TOLERANCE = 2.0     # mm
LEAST = 1.0         # mm: what an opening and an outline share over less than this is no part of the opening
HAIR = 0.001        # mm
LOWER = 0.9         # of the body's height


def compare(wall, seen):
    """Yields (outcome, mm, text) for each opening element of a coursed wall: 'agrees', 'OFF', or why it was not compared."""
    if seen is None:
        return
    if "curve" in wall["frame"]:
        yield from (("in a curved wall, not compared", 0, opening["guid"]) for opening in seen["openings"])
        return
    ours = {}
    for opening in wall["openings"]:
        ours.setdefault(opening["globalId"], []).append(opening)
    named = collections.defaultdict(str)
    for finding in wall["findings"]:
        named[finding["code"]] += f" {finding['message']} {(finding.get('at') or {}).get('opening', '')}"
    for opening in seen["openings"]:
        yield judge(wall, opening, ours.get(opening["guid"], []), named, seen.get("bodyBox"))


def judge(wall, opening, ours, named, body):
    guid, box = opening["guid"], opening["box"]
    inside = box and inside_outline(wall["outline"], box)
    if not ours:
        if any(guid in named[code] for code in ("opening-cuts-rim", "opening-not-read")):
            return "named by a finding", 0, guid
        if inside and any(difference(o["model"], inside) <= TOLERANCE for o in wall["openings"]):
            return "equal to another one", 0, guid
        if inside and named["openings-merged"] and any(contains(o["model"], inside) for o in wall["openings"]):
            return "merged into another one", 0, guid
        if inside is None:
            return "misses the masonry in both", 0, guid
        if guid in named["opening-misses-wall"] and beside(inside, body):
            return "misses the body, beside which a junction adds masonry", 0, guid
        if not opening["plain"]:
            return "left out by us, and not rectangular: a box can't tell", 0, guid
        claim = "said to miss the wall" if guid in named["opening-misses-wall"] else "not listed, and no finding names it"
        return "OFF", 0, f"{guid}: {claim}; the mesh is at {rounded(inside)}"
    if box is None:
        return "no mesh", 0, guid
    if inside is None:
        return "OFF", 0, f"{guid}: ours {rounded(ours[0]['model'])}, the mesh misses the masonry"
    off = min(difference(o["model"], inside) for o in ours)
    if off <= TOLERANCE:
        return "agrees", off, guid
    if named["openings-merged"] and any(contains(o["model"], inside) for o in ours):
        return "merged with another one", 0, guid
    return "OFF", off, f"{guid}: ours {rounded(ours[0]['model'])}, the mesh {rounded(inside)}: {off:.1f} mm"


def beside(box, body):
    """Whether an opening lies before or behind the wall's own body and is lower, so that it can't have cut the body's end off."""
    return body and (box[1] <= body[0] + LEAST or box[0] >= body[1] - LEAST) and box[3] - box[2] < LOWER * (body[3] - body[2])


def contains(outer, inner):
    return all(sign * (a - b) <= TOLERANCE for a, b, sign in zip(outer, inner, (1, -1, 1, -1)))


def difference(a, b):
    return max(abs(x - y) for x, y in zip(a, b))


def rounded(box):
    return [round(v, 1) for v in box]


def inside_outline(outline, box):
    """Box of what a rectangle and the outline have in common, strips under LEAST left out; None where that is nothing."""
    left, right, bottom, top = box
    rows = sorted({bottom, top, *(z for _, z in outline if bottom < z < top)})
    found = None
    for low, high in zip(rows, rows[1:]):
        if high - low < LEAST:
            continue
        parts = [(max(a, left), min(b, right)) for z in (low + HAIR, high - HAIR) for a, b in widths(outline, z)]
        parts = [(a, b) for a, b in parts if b - a >= LEAST]
        for a, b in parts:
            found = [min(found[0], a), max(found[1], b), found[2], high] if found else [a, b, low, high]
    return found


def widths(outline, z):
    """The outline's s-intervals at a height."""
    points = [tuple(p) for p in outline]
    cuts = sorted(x0 + (z - y0) / (y1 - y0) * (x1 - x0) for (x0, y0), (x1, y1) in zip(points, points[1:] + points[:1])
                  if min(y0, y1) <= z < max(y0, y1))
    return list(zip(cuts[::2], cuts[1::2]))
