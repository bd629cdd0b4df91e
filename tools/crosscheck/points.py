"""points.csv and the set-out sheets of one run, against the cores of layout.json."""
import csv
import itertools
import math
import re
from pathlib import Path

import ezdxf

COLUMNS = ["point", "northing", "easting", "elevation", "code", "wall", "core"]
CODES = {"BAR", "BARON", "BARUP", "CORNER", "FACE", "SLAB", "GRID"}
MM = {"m": 1000.0, "ft": 304.8}
NEAR = 1.0  # mm


def problems_of(layout, out: Path):
    """Yields a line for every problem; nothing where the layout has no cores."""
    cores = {(wall["globalId"], core["id"]): core for wall in layout["walls"] for core in wall.get("cores", [])}
    file = out / "set-out" / "points.csv"
    if file.is_file() != bool(cores):
        yield f"{len(cores)} cores, and {'a' if file.is_file() else 'no'} points.csv"
    if not file.is_file() or not cores:
        return
    unit, rows = read(file)
    yield from row_problems(layout["setOut"]["survey"], cores, unit, rows)
    storeys = layout["setOut"]["storeys"]
    # A storey that no sheet holds has one in parts (S01.1, S01.2); sheets of tables that go on (S01.T1) show no bar.
    sheets = {}
    for document in map(ezdxf.readfile, sorted((out / "set-out").glob("*.dxf"))):
        for name in document.layout_names_in_taborder():
            if name != "Model" and ".T" not in name.split(" ")[0]:
                sheets.setdefault(name.split(" ")[0].split(".")[0], []).append((document, name))
    if len(sheets) != len(storeys):
        yield f"{len(sheets)} set-out sheets for {len(storeys)} storeys"
        return
    for storey, (number, parts) in zip(storeys, sheets.items()):
        yield from (f"{number}: {text}" for text in sheet_problems(storey, cores, parts))


def read(file):
    """Millimetres of the unit that the comments name, and the rows."""
    lines = file.read_text(encoding="utf-8").splitlines()
    comments = [line for line in lines if line.startswith("#")]
    unit = next(re.match(r"# Unit: (m|ft)\b", line).group(1) for line in comments if line.startswith("# Unit"))
    rows = list(csv.DictReader(line for line in lines if not line.startswith("#")))
    return MM[unit], rows


def row_problems(survey, cores, unit, rows):
    if rows and list(rows[0]) != COLUMNS:
        yield f"points.csv has columns {list(rows[0])}"
        return
    numbers = [row["point"] for row in rows]
    if len(set(numbers)) != len(numbers) or not all(number.isdigit() for number in numbers):
        yield "points.csv: point numbers are not unique whole numbers"
    yield from (f"points.csv: code {row['code']}" for row in rows if row["code"] not in CODES)
    seen = {(row["wall"], row["core"]): row for row in rows if row["core"]}
    yield from (f"points.csv: core {key} is missing or not of the layout" for key in seen.keys() ^ cores.keys())
    for key in seen.keys() & cores.keys():
        if seen[key]["code"] != code_of(cores[key]):
            yield f"points.csv: core {key} has code {seen[key]['code']}, by its bars it is {code_of(cores[key])}"
        read_back = [float(seen[key][name]) * unit for name in ("easting", "northing", "elevation")]
        off = math.dist(read_back, on_survey(survey, cores[key]["point"]))
        if off > NEAR:
            yield f"points.csv: core {key} lies {off:.1f} mm from its place in layout.json"


def code_of(core):
    """BAR where a starter is cast in, BARON where the bar below runs on, else BARUP."""
    bars = core["bars"]
    return "BAR" if "starter" in bars else "BARON" if "runsOnFrom" in bars else "BARUP"


def on_survey(survey, point):
    """Easting, northing, height of a point of the model: turned, stretched, moved."""
    turn = math.atan2(survey["east"][1], survey["east"][0])
    x, y, z = point
    return [survey["eastings"] + survey["scale"] * (x * math.cos(turn) + y * math.sin(turn)),
            survey["northings"] + survey["scale"] * (y * math.cos(turn) - x * math.sin(turn)),
            survey["height"] + z]


def window(layout):
    """What the layout's view shows of model space: left, bottom, right, top."""
    view = next(port for port in layout.query("VIEWPORT") if port.dxf.id != 1)
    height, (x, y) = view.dxf.view_height, view.dxf.view_center_point.vec2
    width = height * view.dxf.width / view.dxf.height
    return x - width / 2, y - height / 2, x + width / 2, y + height / 2


def sheet_problems(storey, cores, parts):
    """
    Each cast-in bar is one mark with its number, as far from every other of its sheet as in the model, and named by dimensions both ways there. Bars of a wall
    askew are drawn once more in a strip along its face, as far from each other as well.
    """
    bars = {bar["number"]: cores[bar["wall"], bar["core"]]["point"][:2] for bar in storey["bars"] if bar["castIn"]}
    shown = [on_sheet(document, name) for document, name in parts]
    yield from (f"bar {number} has no mark, or the mark no bar" for number in bars.keys() ^ set().union(*(marks for marks, _ in shown)))
    walls = {bar["number"]: bar["wall"] for bar in storey["bars"]}
    for marks, _ in shown:
        for a, b in itertools.pairwise(sorted(bars.keys() & marks.keys())):
            in_strip = zip(marks[a][1:], marks[b][1:]) if walls[a] == walls[b] else ()
            for one, other in [(marks[a][0], marks[b][0]), *in_strip]:
                if abs(math.dist(one, other) - math.dist(bars[a], bars[b])) > NEAR:
                    yield f"bars {a} and {b} are drawn {math.dist(one, other):.1f} mm apart, and are {math.dist(bars[a], bars[b]):.1f}"
    for number in sorted(bars):
        if not any(number in marks and number in named[0] and number in named[90] for marks, named in shown):
            yield f"bar {number} is not dimensioned both ways"


def on_sheet(document, name):
    """Places of the marks of cast-in bars, mm, that in the plan before any in a strip, and the numbers that dimensions along both axes name."""
    left, bottom, right, top = window(document.layout(name))

    def is_shown(point):
        return left <= point.x <= right and bottom <= point.y <= top

    mm = 25.4 if document.header["$INSUNITS"] == 1 else 1.0
    space = document.modelspace()
    marks = {}
    for insert in space.query("INSERT"):
        if insert.dxf.name.startswith("STARTER-BAR") and is_shown(insert.dxf.insert):
            marks.setdefault(int(insert.get_attrib_text("NUMBER")), []).append([insert.dxf.insert.x * mm, insert.dxf.insert.y * mm])
    named = {0: set(), 90: set()}
    for dimension in space.query("DIMENSION"):
        if is_shown(dimension.dxf.text_midpoint):
            named[round(dimension.dxf.angle)] |= numbers(dimension.dxf.text)
    return marks, named


def numbers(text):
    """The numbers before the distance, which three blanks part from it: 3-5, 7."""
    found = set()
    for first, last in re.findall(r"(\d+)(?:-(\d+))?", text.split("   ")[0] if "   " in text else ""):
        found |= set(range(int(first), int(last or first) + 1))
    return found
