"""staging.csv against layout.json: packs clear of walls by the working strip, of the ways through doors and of each other, within reach of
the wall they stand beside, above ground not outside; all packs of the order there, their units those that the walls take."""
import csv
import math
from collections import defaultdict
from pathlib import Path

BETWEEN = 100.0
NEAR = 1.0
PARALLEL = 1e-4
SHORTEST = 150.0
CHORDS = 12
SLEEVES = {"recess", "drilled"}
UNITS = {"full-unit", "part-unit", "trough-unit", "cored-unit", "cut-unit"}


def problems_of(layout, out: Path):
    data = layout["settings"]["catalog"]["ordering"]["staging"]
    file = out / "order" / "staging.csv"
    if data is None or not file.is_file():
        if data is not None and any(line["item"] == "pallet" and line.get("packs") for line in layout["takeoff"]["lines"]):
            yield "staging.csv is missing, though the order has packs"
        return
    rows = list(csv.DictReader(file.open(encoding="utf-8", newline="")))
    walls = [wall for wall in layout["walls"] if wall["status"] == "coursed"]
    number = {wall["globalId"]: f"W{1 + sum(other['stepId'] < wall['stepId'] for other in layout['walls']):03}" for wall in layout["walls"]}
    yield from units_problems(layout, rows, number)
    inch = 25.4 if layout["catalog"]["name"].endswith("-in") else 1.0
    for storey in {row["storey"] for row in rows}:
        here = [wall for wall in walls if (wall["storey"] or "") == storey]
        origin, along = axes_of(layout, here, storey)
        packs = [(row, rectangle(origin + along * complex(float(row["x"]), float(row["y"])) * inch, along * turned(float(row["turn"])), data))
                 for row in rows if row["storey"] == storey and row["x"]]
        yield from place_problems(here, packs, {number[wall["globalId"]]: wall for wall in here}, data)


def units_problems(layout, rows, number):
    """As many packs of each product and width as the order has, and from them what each wall takes of units."""
    ordered, staged, taken, wanted = defaultdict(int), defaultdict(int), defaultdict(int), defaultdict(int)
    for line in layout["takeoff"]["lines"]:
        if line["item"] == "pallet" and line.get("packs"):
            ordered[round(line["width"], 2)] += line["packs"]
    inch = 25.4 if layout["catalog"]["name"].endswith("-in") else 1.0
    for row in rows:
        staged[round(float(row["width"]) * inch, 2)] += 1
        uses = [use.split(":") for use in row["walls"].split()]
        if sum(int(units) for _, units in uses) + int(row["spare"]) != int(row["units"]):
            yield f"staging.csv: uses and spare of pack {row['pack']} are not its units"
        for wall, units in uses:
            taken[wall] += int(units)
    if staged != ordered:
        yield f"staging.csv has {dict(staged)} packs by width, the order {dict(ordered)}"
    for group in layout["takeoff"]["walls"]:
        wanted[number[group["wall"]]] = sum(line["net"] for line in group["lines"] if line["item"] in UNITS and round(line["width"], 2) in ordered)
    if len(ordered) == len({round(line["width"], 2) for line in layout["takeoff"]["lines"] if line["item"] in UNITS}):
        for wall, units in wanted.items():
            if taken[wall] != units:
                yield f"staging.csv: packs give {wall} {taken[wall]} units, it takes {units}"


def place_problems(walls, packs, by_number, data):
    strip, reach = data["strip"], data["reach"]
    loops = [(wall, loop) for wall in walls for loop in footprint(wall)]
    for row, pack in packs:
        for wall, loop in loops:
            if distance(loop, pack) < strip - NEAR:
                yield f"staging: pack {row['pack']} stands {distance(loop, pack):.0f} mm from {wall['name']}"
        for wall in walls:
            for way in ways(wall, reach):
                if meet(shrunk(way), pack):
                    yield f"staging: pack {row['pack']} stands in a way through {wall['name']}"
        beside = by_number.get(row["beside"])
        if beside is None or min(distance(loop, pack) for loop in footprint(beside)) > reach + NEAR:
            yield f"staging: pack {row['pack']} is out of reach of {row['beside']}"
    for i, (row, pack) in enumerate(packs):
        for other, second in packs[:i]:
            if distance(pack, second) < BETWEEN - NEAR:
                yield f"staging: packs {other['pack']} and {row['pack']} stand {distance(pack, second):.0f} mm apart"


def axes_of(layout, walls, storey):
    """Those of the set-out; without bars along the longest walls together, from the outermost faces along and across them: corners of skew walls and
    faces under 150 mm count for nothing."""
    for known in layout["setOut"]["storeys"]:
        if (known["storey"] or "") == storey:
            return complex(*known["axes"]["origin"]), complex(*known["axes"]["along"])
    groups = []
    for wall in sorted((wall for wall in walls if not wall["frame"].get("curve")), key=lambda wall: -wall["frame"]["length"]):
        way = max((complex(*wall["frame"]["direction"]) * 1j**k for k in range(4)), key=lambda way: way.real)
        group = next((group for group in groups if abs(cross(group[0], way)) < PARALLEL), None)
        if group is None:
            groups.append(group := [way, 0.0])
        group[1] += wall["frame"]["length"]
    along = max(groups, key=lambda group: group[1])[0] if groups else 1 + 0j
    faces = [(p / along, q / along) for wall in walls for loop in footprint(wall) for p, q in edges(loop)]
    lines = [(p, q) for p, q in faces if abs(p - q) >= SHORTEST]
    upright = [p.real for p, q in lines if abs(p.real - q.real) < PARALLEL * abs(p - q)]
    level = [p.imag for p, q in lines if abs(p.imag - q.imag) < PARALLEL * abs(p - q)]
    return complex(min(upright or [p.real for p, _ in faces]), min(level or [p.imag for p, _ in faces])) * along, along


def turned(degrees):
    return complex(math.cos(math.radians(degrees)), math.sin(math.radians(degrees)))


def rectangle(middle, along, data):
    a, b = along * data["packLength"] / 2, along * 1j * data["packWidth"] / 2
    return [middle - a - b, middle + a - b, middle + a + b, middle - a + b]


def footprint(wall):
    """Convex loops, counter-clockwise; a curve in chords."""
    frame, ends = wall["frame"], wall["ends"]
    start, end, length, thick = ends["start"].get("slant", 0), ends["end"].get("slant", 0), frame["length"], frame["thickness"]
    count = CHORDS if frame.get("curve") else 1
    left, right = (max(-start, 0), length - max(end, 0)), (max(start, 0), length - max(-end, 0))
    step = lambda face, i: face[0] + (face[1] - face[0]) * i / count
    return [[at(frame, step(right, i), thick), at(frame, step(right, i + 1), thick), at(frame, step(left, i + 1), 0), at(frame, step(left, i), 0)] for i in range(count)]


def at(frame, s, t):
    origin, direction = complex(*frame["origin"][:2]), complex(*frame["direction"])
    if not frame.get("curve"):
        return origin + direction * s - direction * 1j * t
    centre, radius = complex(*frame["curve"]["centre"]), frame["curve"]["radius"]
    spoke = origin - centre
    side = 1 if (spoke * (-direction * 1j).conjugate()).real > 0 else -1
    return centre + spoke / abs(spoke) * (abs(spoke) + side * t) * turned(math.degrees(side * s / radius))


def ways(wall, reach):
    frame, floor = wall["frame"], wall["courses"][0]["top"] if wall["courses"] else 0
    for opening in wall["openings"]:
        left, right, bottom, _ = opening["placed"]
        if opening["kind"] not in SLEEVES and bottom < floor:
            yield [at(frame, left, frame["thickness"] + reach), at(frame, right, frame["thickness"] + reach), at(frame, right, -reach), at(frame, left, -reach)]


def shrunk(loop):
    """A little smaller: what touches does not stand in the way."""
    middle = sum(loop) / len(loop)
    return [middle + (point - middle) * (1 - NEAR / abs(point - middle)) for point in loop]


def meet(a, b):
    crossing = any(crosses(p, q, r, s) for p, q in edges(a) for r, s in edges(b))
    return crossing or holds(a, b[0]) or holds(b, a[0])


def distance(a, b):
    """Between two convex loops; nothing where they overlap."""
    if meet(a, b):
        return 0.0
    return min(away(point, p, q) for one, other in ((a, b), (b, a)) for point in one for p, q in edges(other))


def edges(loop):
    return list(zip(loop, loop[1:] + loop[:1]))


def away(point, p, q):
    share = ((point - p) * (q - p).conjugate()).real / abs(q - p) ** 2 if q != p else 0
    return abs(point - p - (q - p) * min(1, max(0, share)))


def cross(a, b):
    return (a.conjugate() * b).imag


def crosses(p, q, r, s):
    return cross(q - p, r - p) * cross(q - p, s - p) < 0 and cross(s - r, p - r) * cross(s - r, q - r) < 0


def holds(loop, point):
    sides = [cross(q - p, point - p) for p, q in edges(loop)]
    return all(side > 0 for side in sides) or all(side < 0 for side in sides)
