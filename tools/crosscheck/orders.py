"""The files of order/ of one run against the pieces of layout.json, and the workbook as openpyxl and LibreOffice read it."""
import csv
import math
import re
import shutil
import subprocess
import zipfile
from collections import defaultdict
from pathlib import Path

import openpyxl

TAKEOFF = "item description width unit net waste gross packs".split()
SAW_LIST = "mark wall course piece product width length height angle cut quantity from_unit offcut_used_by".split()
WHOLE = {"full-unit", "part-unit", "trough-unit", "cored-unit"}
SHEETS = ["Order", "By storey", "By wall", "Saw list"]
BAR_SHEETS = ["Bars", "Bar stock"]
KERF = {"aac-in": 3.175, "block-in": 3.175, "octametric": 3.0}
NEAR = 1e-6
SHARE_OF_JOINTS = 0.03


def problems_of(layout, out: Path, with_office):
    """Yields a line for every problem. LibreOffice is asked for the houses only: it takes seconds."""
    inch = 25.4 if layout["catalog"]["name"].endswith("-in") else 1.0
    pieces = {(wall["globalId"], piece["id"]): (wall, piece) for wall in layout["walls"] for course in wall.get("courses", []) for piece in course["pieces"]}
    takeoff, saw = read(out / "order" / "takeoff.csv"), read(out / "order" / "saw-list.csv")
    for name, (columns, _), wanted in (("takeoff.csv", takeoff, TAKEOFF), ("saw-list.csv", saw, SAW_LIST)):
        if columns != wanted:
            yield f"{name} has columns {columns}"
            return
    yield from takeoff_problems(layout, takeoff[1], pieces)
    yield from saw_problems(layout, saw[1], pieces, inch, KERF.get(layout["catalog"]["name"], 2.0))
    yield from joint_problems(layout)
    if layout["barSchedule"]:
        yield from stock_problems(layout, read(out / "order" / "bar-stock.csv")[1])
    workbook = out / "order" / "takeoff.xlsx"
    yield from workbook_problems(layout, workbook)
    if with_office:
        # Beside the run, so that two runs can be compared.
        yield from office_problems(workbook, out.parent.parent / "office" / out.name)


def read(file):
    with file.open(encoding="utf-8", newline="") as stream:
        rows = csv.DictReader(stream)
        return rows.fieldnames, list(rows)


def stock_problems(layout, rows):
    """Every bar of the schedule is cut once from a stock length that holds it; offcuts are what is left; no fewer bars than their lengths add up to."""
    length, number, of = {}, defaultdict(int), {}
    for row in layout["barSchedule"]:
        of[row["mark"]], length[row["mark"]] = (row["size"], row["steel"]), row["length"]
        number[row["mark"]] += row["number"]
    cut, bars, steel, too_long = defaultdict(int), defaultdict(int), defaultdict(float), {mark for line in layout["takeoff"]["barStock"] for mark in line["tooLong"]}
    for row in rows:
        marks = [(int(part.split()[0]), part.split()[1]) if " " in part else (1, part) for part in row["cut_into"].split(" + ")]
        unit = 25.4 if row["unit"] == "in" else 1.0
        left = float(row["stock"]) * unit - sum(count * length[mark] for count, mark in marks)
        if left < -NEAR or abs(left - float(row["offcut"]) * unit) > 0.01:
            yield f"bar-stock.csv: {row['cut_into']} leaves {left} mm of {row['stock']} {row['unit']}, not {row['offcut']}"
        for count, mark in marks:
            cut[mark] += count * int(row["number"])
            if of[mark] != (row["size"], row["steel"]):
                yield f"bar-stock.csv: {mark} is cut from {row['size']}, {row['steel']}"
        key = row["size"], row["steel"], float(row["stock"]) * unit, int(row["bars_of_stock"]), int(row["least"])
        bars[key] += int(row["number"])
        steel[key] += int(row["number"]) * (float(row["stock"]) * unit - left)
    for mark in number.keys() - too_long:
        if cut[mark] != number[mark] and any(line["stock"] for line in layout["takeoff"]["barStock"] if (line["size"], line["steel"]) == of[mark]):
            yield f"bar-stock.csv: {cut[mark]} of {number[mark]} bars {mark}"
    for (size, _, stock, count, least), counted in bars.items():
        if counted != count or not math.ceil(steel[size, _, stock, count, least] / stock - NEAR) <= least <= count:
            yield f"bar-stock.csv: {count} bars of {size}, {counted} listed, {least} at least, the steel of {steel[size, _, stock, count, least] / stock}"


def takeoff_problems(layout, rows, pieces):
    uncut = sum(piece["cut"] == "none" for _, piece in pieces.values())
    listed = sum(float(row["net"]) for row in rows if row["item"] in WHOLE)
    if listed != uncut:
        yield f"takeoff.csv: {listed} whole units for {uncut} uncut pieces"
    lintels = sum(len(wall.get("lintels", [])) for wall in layout["walls"])
    listed = sum(float(row["net"]) for row in rows if row["item"] in ("lintel", "formed-lintel"))
    if listed != lintels:
        yield f"takeoff.csv: {listed} lintels for {lintels}"
    ties = sum(len(junction["ties"]) for junction in layout["junctions"])
    if sum(float(row["net"]) for row in rows if row["item"] == "tie") != ties:
        yield f"takeoff.csv: its ties are not the {ties} of the junctions"
    for row in rows:
        if row["net"] and abs(float(row["net"]) + float(row["waste"]) - float(row["gross"])) > 0.11:
            yield f"takeoff.csv: net and waste of {row['description']} are not its gross"


def saw_problems(layout, rows, pieces, inch, kerf):
    cut = {key for key, (_, piece) in pieces.items() if piece["cut"] != "none"}
    listed = [(row["wall"], row["piece"]) for row in rows]
    if len(listed) != len(set(listed)) or set(listed) != cut:
        yield f"saw-list.csv: {len(listed)} rows for {len(cut)} sawn pieces"
        return
    units = defaultdict(list)
    for row in rows:
        wall, piece = pieces[row["wall"], row["piece"]]
        sizes = [(row["length"], piece["to"] - piece["from"]), (row["height"], piece["top"] - piece["bottom"]), (row["width"], wall["frame"]["thickness"])]
        if any(abs(float(given) * inch - true) > 0.01 for given, true in sizes) or row["cut"] != piece["cut"]:
            yield f"saw-list.csv: {row['wall']} {row['piece']} is not as the layout has it"
        units[row["from_unit"].split()[0]].append((row["from_unit"], float(row["length"]) * inch, float(row["height"]) * inch, row["width"], row["product"]))
    for name, sawn in units.items():
        if sum(text == name for text, *_ in sawn) != 1:
            yield f"saw-list.csv: {name} is not taken just once"
        if len({(width, product) for *_, width, product in sawn}) != 1 or not fits(sawn, layout["catalog"], kerf):
            yield f"saw-list.csv: {name} can't be sawn into {sawn}"
    taken = sum(line["net"] for line in layout["takeoff"]["lines"] if line["item"] == "cut-unit")
    if len(units) != taken or layout["takeoff"]["leastSawnUnits"] > taken:
        yield f"saw-list.csv takes {len(units)} units, the take-off {taken}, at least {layout['takeoff']['leastSawnUnits']}"


def fits(sawn, catalog, kerf):
    """Whether the strips that the pieces of each height need by their lengths, kerf included, go into the unit's height."""
    strips = defaultdict(list)
    for _, length, height, *_ in sawn:
        strips[round(height, 3)].append(length)
    high = 0
    for height, lengths in strips.items():
        used = (sum(lengths) + kerf * len(lengths)) / (catalog["unitLength"] + kerf)
        high += math.ceil(used - 1e-6) * (height + kerf)
    return high - kerf <= catalog["unitHeight"] + 0.01


def joint_problems(layout):
    """Bed joints by another way: all undersides but those of first courses, and the bearings of lintels."""
    walls = [wall for wall in layout["walls"] if wall["status"] == "coursed"]
    area = 0
    for wall in walls:
        thickness = wall["frame"]["thickness"] / 1e6
        for course in wall["courses"]:
            if course["kind"] != "levelling":
                area += thickness * sum(piece["to"] - piece["from"] for piece in course["pieces"])
        area += thickness * sum(lintel["bearingLeft"] + lintel["bearingRight"] for lintel in wall["lintels"] if lintel["kind"] != "formed")
    given = layout["takeoff"]["joints"]["bedArea"]
    if layout["catalog"]["name"] != "block-in" and abs(given - area) > SHARE_OF_JOINTS * max(area, 1):
        yield f"takeoff: {given:.2f} m2 of bed joints, by the pieces' undersides {area:.2f}"


def workbook_problems(layout, file):
    formulas, values = openpyxl.load_workbook(file), openpyxl.load_workbook(file, data_only=True)
    if formulas.sheetnames != SHEETS + (BAR_SHEETS if layout["barSchedule"] else []):
        yield f"takeoff.xlsx has sheets {formulas.sheetnames}"
        return
    for sheet in formulas:
        shown = values[sheet.title]
        if not sheet.freeze_panes or not sheet.print_title_rows:
            yield f"takeoff.xlsx: headers of {sheet.title} are not frozen or not printed on each page"
        for cell in (cell for row in sheet.iter_rows() for cell in row if cell.data_type == "f"):
            known, worked = shown[cell.coordinate].value, evaluate(cell.value, shown)
            if worked is None or not same(known, worked):
                yield f"takeoff.xlsx: {sheet.title} {cell.coordinate} {cell.value} holds {known}, worked out {worked}"
    totals = {cell.value: shown.cell(shown.max_row, cell.column).value for shown in [values["By wall"]] for row in shown.iter_rows(max_row=5) for cell in row if cell.value}
    whole = sum(totals[name] or 0 for name in ("Whole units", "Part units", "Trough units", "Cored units"))
    if whole != layout["totals"]["fullUnits"] or (totals["Pieces sawn"] or 0) != layout["totals"]["partUnits"]:
        yield f"takeoff.xlsx: By wall holds {whole} whole and {totals['Pieces sawn']} sawn pieces"


def evaluate(formula, sheet):
    """The value of one of the four forms of formula that the workbook has; None for any other."""
    if found := re.fullmatch(r"=SUM\((\w+):(\w+)\)", formula):
        return sum(cell.value or 0 for row in sheet[found[1]:found[2]] for cell in row)
    if found := re.fullmatch(r"=([A-Z]+\d+)([+*])([A-Z]+\d+)", formula):
        left, right = (sheet[name].value or 0 for name in (found[1], found[3]))
        return left + right if found[2] == "+" else left * right
    if found := re.fullmatch(r'=IF\((I\d+)="","",\1\*IF\((H\d+)="",(G\d+),\2\)\)', formula):
        return "" if sheet[found[1]].value is None else sheet[found[1]].value * (sheet[found[2]].value or sheet[found[3]].value)
    return None


def same(known, worked):
    if worked == "" or isinstance(known, str):
        return (known or "") == worked
    return abs((known or 0) - worked) <= NEAR * max(1, abs(worked))


def office_problems(file, folder):
    """LibreOffice works the formulas out from a copy whose own results are taken out."""
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir(parents=True)
    bare = folder / "bare.xlsx"
    with zipfile.ZipFile(file) as given, zipfile.ZipFile(bare, "w") as taken:
        for entry in given.infolist():
            text = given.read(entry)
            taken.writestr(entry.filename, re.sub(rb"(</x:f>|</f>)<(x:)?v>[^<]*</(x:)?v>", rb"\1", text) if b"sheet" in entry.filename.encode() else text)
    run = subprocess.run(["soffice", f"-env:UserInstallation={(folder / 'profile').as_uri()}", "--headless", "--convert-to", "xlsx:Calc MS Excel 2007 XML",
                          "--outdir", folder / "saved", bare], capture_output=True, text=True, timeout=300, check=False)
    saved = folder / "saved" / "bare.xlsx"
    if not saved.is_file():
        yield f"LibreOffice does not open takeoff.xlsx: {run.stderr.strip()[-200:]}"
        return
    ours, formulas, theirs = (openpyxl.load_workbook(file, data_only=True), openpyxl.load_workbook(file), openpyxl.load_workbook(saved, data_only=True))
    compared = 0
    for sheet in formulas:
        for cell in (cell for row in sheet.iter_rows() for cell in row if cell.data_type == "f"):
            known, worked = ours[sheet.title][cell.coordinate].value, theirs[sheet.title][cell.coordinate].value
            compared += 1
            if not same(known, worked if worked is not None else ""):
                yield f"takeoff.xlsx: LibreOffice works out {worked} in {sheet.title} {cell.coordinate} {cell.value}, which holds {known}"
    if compared == 0:
        yield "takeoff.xlsx: LibreOffice had no formula to work out"
