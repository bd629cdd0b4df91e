"""The slab command held to a computation that shares nothing with it: every Delaunay triangle by trying all triples, beds and
volume by sums over a fine raster of each block, control points fitted with complex numbers."""
import csv
import itertools
import json
import math
import subprocess

RASTER = 25.0
FEET = 304.8
BED_MM = 0.15
VOLUME_SHARE = 0.002


def problems(fixtures, work, command, verifier):
    """What is wrong with slab.json of the fixtures' readings; empty where all is well."""
    work.mkdir(parents=True, exist_ok=True)
    model, readings = fixtures / "ifc" / "yarrow" / "yarrow.ifc", fixtures / "survey" / "yarrow-slab.csv"
    laid, out = work / "layout", work / "slab"
    for arguments in (["layout", str(model), "--out", str(laid), "--formats", "json"],
                      ["slab", str(laid / "layout.json"), "--readings", str(readings), "--out", str(out), "--formats", "json"]):
        done = subprocess.run([*command, *arguments, "--quiet"], capture_output=True, text=True)
        if done.returncode != 0:
            return [f"slab: {arguments[0]} ended with {done.returncode}: {done.stderr.strip()}"]
    layout, slab = (json.loads((folder / name).read_text(encoding="utf-8")) for folder, name in ((laid, "layout.json"), (out, "slab.json")))
    points = levels(readings, layout)
    found = list(compare(layout, slab, points))
    print(f"slab: {len(points)} readings, {len(slab['blocks'])} beds and the mortar recomputed by raster: {len(found)} differences")
    return found + changed_problems(layout, laid, readings, work / "applied", points, command, verifier)


def changed_problems(layout, laid, readings, out, points, command, verifier):
    """The layout that --apply writes: bars where they were measured, clear of joints, all other bars where they were; beds under its own blocks."""
    done = subprocess.run([*command, "slab", str(laid / "layout.json"), "--readings", str(readings), "--out", str(out), "--formats", "json", "--apply", "--quiet"],
                          capture_output=True, text=True)
    if done.returncode != 0:
        return [f"slab --apply ended with {done.returncode}: {done.stderr.strip()}"]
    changed, slab = (json.loads((out / name).read_text(encoding="utf-8")) for name in ("layout.json", "slab.json"))
    found = [f"applied {text}" for text in compare(changed, slab, points)]
    if verifier is not None:
        checked = subprocess.run(["/usr/bin/python3", str(verifier), str(out / "layout.json")], capture_output=True, text=True)
        if not checked.stdout.startswith("0 breaches"):
            found.append(f"slab --apply: {checked.stdout.strip()[:400]}")
    before, after = ({(wall["globalId"], core["id"]): (wall, core) for wall in one["walls"] for core in wall.get("cores", [])} for one in (layout, changed))
    moved = {(bar["wall"], bar["core"]): bar for bar in slab["bars"] if bar["answer"] in ("bond-moves", "core-moves")}
    for key, (_, core) in before.items():
        off = moved[key]["along"] if key in moved else 0
        if abs(after[key][1]["at"] - core["at"] - off) > 1e-3:
            found.append(f"slab --apply: {key} stands {after[key][1]['at'] - core['at']:.3f} off its plan, measured {off:.3f}")
    clearance = changed["rules"]["coreClearance"]
    for key in moved:
        wall, core = after[key]
        for course in wall["courses"]:
            joints = [(a["to"] + b["from"]) / 2 for a in course["pieces"] for b in course["pieces"] if 0 <= b["from"] - a["to"] <= changed["catalog"]["headJointMax"]]
            if course["top"] > core["bottom"] and course["bottom"] < core["top"] and any(abs(joint - core["at"]) < clearance - 0.01 for joint in joints):
                found.append(f"slab --apply: {key} is too near a joint of course {course['n']}")
    print(f"slab --apply: {len(slab['bars'])} bars as built, {len(moved)} laid around, {sum(bar['answer'] == 'left' for bar in slab['bars'])} left: {len(found)} problems")
    return found


def levels(path, layout):
    """Places and heights of the slab's readings, mm, model axes in plan and the readings' own heights."""
    known = {p["number"]: complex(*p["point"][:2]) for storey in layout["setOut"]["storeys"] for p in storey["controlPoints"]}
    with open(path, encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(line for line in file if not line.startswith("#")))
    place = lambda row: complex(float(row["x_ft"]), float(row["y_ft"])) * FEET
    control = [(place(row), known[int(row["point"])]) for row in rows if row["code"] == "CONTROL"]
    a, b = (sum(pair[i] for pair in control) / len(control) for i in (0, 1))
    turn = sum((q - b) * (p - a).conjugate() for p, q in control)
    turn /= abs(turn)
    result, instrument = [], None
    for row in rows:
        instrument = float(row["hi_ft"]) if row["hi_ft"] else instrument
        if row["code"] == "SLAB":
            at = b + turn * (place(row) - a)
            if all(abs(complex(x, y) - at) > 10 for x, y, _ in result):
                result.append((at.real, at.imag, (instrument - float(row["rod_ft"])) * FEET))
    return result


def triangles(points):
    """All triples whose circle holds no other point."""
    for a, b, c in itertools.combinations(range(len(points)), 3):
        (ax, ay, _), (bx, by, _), (cx, cy, _) = points[a], points[b], points[c]
        d = 2 * (ax * (by - cy) + bx * (cy - ay) + cx * (ay - by))
        if abs(d) < 1:
            continue
        ux = ((ax * ax + ay * ay) * (by - cy) + (bx * bx + by * by) * (cy - ay) + (cx * cx + cy * cy) * (ay - by)) / d
        uy = ((ax * ax + ay * ay) * (cx - bx) + (bx * bx + by * by) * (ax - cx) + (cx * cx + cy * cy) * (bx - ax)) / d
        radius = math.hypot(ax - ux, ay - uy)
        if all(math.hypot(x - ux, y - uy) > radius - 1e-6 for i, (x, y, _) in enumerate(points) if i not in (a, b, c)):
            yield points[a], points[b], points[c]


def height(at, shapes):
    """Over the triangle that holds the place; else at the nearest place of an edge."""
    x, y = at
    best = (math.inf, 0.0)
    for a, b, c in shapes:
        whole = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
        v = ((x - a[0]) * (c[1] - a[1]) - (y - a[1]) * (c[0] - a[0])) / whole
        w = ((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])) / whole
        if v >= 0 and w >= 0 and v + w <= 1:
            return a[2] + v * (b[2] - a[2]) + w * (c[2] - a[2])
        for p, q in ((a, b), (b, c), (c, a)):
            dx, dy = q[0] - p[0], q[1] - p[1]
            t = min(1, max(0, ((x - p[0]) * dx + (y - p[1]) * dy) / (dx * dx + dy * dy)))
            away = math.hypot(p[0] + t * dx - x, p[1] + t * dy - y)
            best = min(best, (away, p[2] + t * (q[2] - p[2])))
    return best[1]


def compare(layout, slab, points):
    shapes = list(triangles(points))
    walls = {wall["globalId"]: wall for wall in layout["walls"]}
    lowest = min(walls[b["wall"]]["frame"]["origin"][2] + piece(walls, b)["bottom"] for b in slab["blocks"])
    volume, area, least = 0.0, 0.0, math.inf
    for block in slab["blocks"]:
        frame, laid = walls[block["wall"]]["frame"], piece(walls, block)
        (ox, oy, oz), (dx, dy) = frame["origin"], frame["direction"]
        columns, rows = (max(2, round(size / RASTER)) for size in (laid["to"] - laid["from"], frame["thickness"]))
        beds = []
        for i, j in itertools.product(range(columns), range(rows)):
            s = laid["from"] + (laid["to"] - laid["from"]) * (i + 0.5) / columns
            t = frame["thickness"] * (j + 0.5) / rows
            beds.append(slab["datum"] + oz + laid["bottom"] - lowest - height((ox + s * dx + t * dy, oy + s * dy - t * dx), shapes))
        mean, cell = sum(beds) / len(beds), (laid["to"] - laid["from"]) * frame["thickness"] / len(beds)
        volume, area = volume + sum(max(0, bed) for bed in beds) * cell, area + cell * len(beds)
        least = min(least, min(beds))
        if abs(mean - block["bed"]) > BED_MM:
            yield f"slab: bed under {walls[block['wall']]['name']} {block['piece']} is {block['bed']}, by raster {mean:.3f}"
    if abs(volume / 1e9 - slab["bed"]["volume"]) > VOLUME_SHARE * slab["bed"]["volume"]:
        yield f"slab: mortar is {slab['bed']['volume']} m3, by raster {volume / 1e9:.6f}"
    if abs(area / 1e6 - slab["bed"]["area"]) > VOLUME_SHARE * slab["bed"]["area"]:
        yield f"slab: undersides are {slab['bed']['area']} m2, by raster {area / 1e6:.6f}"
    if least < slab["bed"]["min"] - BED_MM:
        yield f"slab: the least bed is {slab['bed']['min']}, by raster {least:.3f}"


def piece(walls, block):
    return next(p for p in walls[block["wall"]]["courses"][0]["pieces"] if p["id"] == block["piece"])
