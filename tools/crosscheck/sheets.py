"""The DXF sheets of one run, read by ezdxf and by two JavaScript parsers that share no code with it."""
import collections
import itertools
import json
import logging
import re
import subprocess
import xml.etree.ElementTree as ElementTree
from pathlib import Path

import drawn
import ezdxf

logging.disable(logging.WARNING)

# A part of a plan or a long wall has its own number behind the whole one's, and so have tables that go on: P01.2, W003.T1.
NUMBER = re.compile(r"[A-Z]\d+(\.T?\d+)*")
# A part of a long wall has the number of its sheet behind the wall's: W003.1.
WALLS = re.compile(r"W\d+(-W\d+|\.\d+)?")

# Entities that dxf-parser reads; the rest (HATCH, VIEWPORT) it passes over.
COMMON = ("LINE", "LWPOLYLINE", "INSERT", "DIMENSION", "TEXT", "MTEXT", "ARC", "CIRCLE")
# Sheets of one model that the slower JavaScript parsers read.
SECOND_READING = 25
# Of a real model's further sheets ezdxf reads every so many; those of fixtures all.
STEP = 8


def read(sheets: list[Path], kind: str):
    """The sheets that are read."""
    return sheets if kind == "fixture" else sheets[:SECOND_READING] + sheets[SECOND_READING::STEP]


def problems_of(sheets: list[Path], node: Path, layout):
    """Yields a line for every problem of the sheets; of wall sheets that are all read, their pieces together are the layout's."""
    counts, walls = {}, []
    for sheet in sheets:
        try:
            document = ezdxf.readfile(sheet)
        except (ezdxf.DXFError, UnicodeError, OSError) as error:
            yield f"{sheet.name}: ezdxf refuses it: {error}"
            continue
        yield from (f"{sheet.name}: {text}" for text in audit(document))
        yield from drawn.problems_of(document, sheet.name)
        counts[str(sheet)] = count(document)
        walls += drawn.pieces(document)
        units = document.header.get("$INSUNITS")
    if layout is not None and counts:
        yield from drawn.piece_problems(walls, layout, units == 1)
    yield from disagreements(counts, node)


def missing_layouts(files: list[Path], folder: Path):
    """Sheets that have an SVG and no layout in the DXF of their set, or the other way about; of real models every sheet has a file of its own."""
    drawn = {number(path.stem) for path in folder.glob("*.svg")}
    alone = {path.stem for path in folder.glob("*.svg")} == {path.stem for path in files}
    layouts = {number(path.stem) for path in files} if alone else {
        number(name) for path in files for name in ezdxf.readfile(path).layout_names() if name != "Model"}
    if drawn != layouts:
        yield f"{folder.name}: layouts and SVG differ in {sorted(drawn ^ layouts)}"


def number(name):
    """The first number of a sheet's name: W003 of W003 W004 Hall."""
    return NUMBER.match(name).group()


def walls_of(folder: Path):
    """The numbers of walls in the names of wall sheets: W003 W004 Hall, or W003-W006 W009 Hall."""
    for drawing in folder.glob("W*.svg"):
        name = ElementTree.parse(drawing).getroot().find("{http://www.w3.org/2000/svg}title").text
        for word in itertools.takewhile(WALLS.fullmatch, name.split(" ")):
            first, _, last = word.replace("W", "").partition("-")
            first, _, part = first.partition(".")
            yield from range(int(first), int(last or first) + 1) if part in ("", "1") else ()


def problems_of_walls(folder: Path, layout):
    """Each coursed wall on one sheet, by its place among all walls of the model."""
    steps = sorted(wall["stepId"] for wall in layout["walls"])
    wanted = collections.Counter(steps.index(wall["stepId"]) + 1 for wall in layout["walls"] if wall["status"] == "coursed")
    drawn = collections.Counter(walls_of(folder))
    if wanted != drawn:
        yield f"walls without a sheet {dict(wanted - drawn)}, on a sheet too many {dict(drawn - wanted)}"


def audit(document):
    """What ezdxf's audit reports, errors and repairs alike, and what no audit looks at."""
    auditor = document.audit()
    for entry in [*auditor.errors, *auditor.fixes]:
        yield f"audit {entry.code}: {entry.message}"
    if document.dxfversion != "AC1024":
        yield f"version {document.dxfversion}, not AC1024"
    if document.header.get("$INSUNITS") not in (1, 4):
        yield f"$INSUNITS {document.header.get('$INSUNITS')}: neither inches nor millimetres"
    used = {entity.dxf.get("layer", "0") for layout in document.layouts for entity in layout}
    for layer in sorted(used - {layer.dxf.name for layer in document.layers}):
        yield f"layer {layer} is used and not defined"
    dimensions = document.modelspace().query("DIMENSION")
    for dimension in dimensions:
        if dimension.dxf.get("geometry", "") not in document.blocks:
            yield f"dimension #{dimension.dxf.handle} has no picture block"
    if "*Paper_Space0" in document.blocks and not (dimensions and document.modelspace().query("INSERT")):
        yield "a set without dimensions or block references in model space"
    if len(document.layout_names()) < 2:
        yield "no paper layout"
    yield from (f"layout {name} has no title block" for name in document.layout_names() if name != "Model"
                and not document.layout(name).query('INSERT[name=="TITLE-BLOCK"]'))


def count(document):
    """Entities of the ENTITIES section: model space and the active paper layout."""
    found = collections.Counter(entity.dxftype() for entity in document.modelspace())
    found.update(entity.dxftype() for entity in document.active_layout())
    return {kind: found[kind] for kind in COMMON if found[kind]}


def disagreements(counts, node: Path):
    """Where the second reader sees other numbers of entities than ezdxf, in the first sheets."""
    files = list(counts)[:SECOND_READING]
    if not files:
        return
    run = subprocess.run(["node", node / "dxf_counts.cjs", *files], capture_output=True, text=True, check=False)
    seen = [json.loads(line) for line in run.stdout.splitlines()]
    if run.returncode != 0 or len(seen) != len(files):
        yield f"the JavaScript parsers stop: {run.stderr.strip()[:300]}"
    for sheet in seen:
        other = {kind: sheet["parser"][kind] for kind in COMMON if kind in sheet["parser"]}
        if other != counts[sheet["file"]]:
            yield f"{Path(sheet['file']).name}: ezdxf counts {counts[sheet['file']]}, dxf-parser {other}"
        if sheet["dxf"]["svg"] < 1000 and "DIMENSION" in sheet["parser"]:
            yield f"{Path(sheet['file']).name}: the third reader draws nothing"
