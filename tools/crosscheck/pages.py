"""The PDF of a run's wall sheets, read by qpdf and poppler and held to the SVG of the same sheets."""
import collections
import json
import re
import subprocess
import xml.etree.ElementTree as ElementTree
from pathlib import Path

POINTS_PER_MM = 72 / 25.4
BOX = re.compile(r"^Page +(\d+) MediaBox: +0.00 +0.00 +([\d.]+) +([\d.]+)", re.M)
SVG = "{http://www.w3.org/2000/svg}"


def problems_of(folder: Path):
    """Yields a line for every problem of the folder's set of sheets."""
    drawings = {ElementTree.parse(path).getroot().find(f"{SVG}title").text: path for path in folder.glob("*.svg")}
    sets = list(folder.glob("*.pdf"))
    if len(sets) != (1 if drawings else 0):
        yield f"{len(sets)} PDF files for {len(drawings)} sheets"
        return
    for path in sets:
        yield from (f"{path.name}: {text}" for text in problems_of_set(path, drawings))


def problems_of_set(path: Path, drawings: dict[str, Path]):
    checked = run("qpdf", "--check", path)
    if checked.returncode != 0:
        yield f"qpdf finds {(checked.stdout + checked.stderr).strip()[-300:]}"
        return
    yield from problems_of_fonts(path)
    boxes = [(float(w), float(h)) for _, w, h in BOX.findall(run("pdfinfo", "-box", "-f", "1", "-l", "999999", path).stdout)]
    texts = run("pdftotext", "-raw", "-enc", "UTF-8", path, "-").stdout.split("\f")[:-1]
    told = json.loads(run("qpdf", "--json", "--json-key=outlines", "--json-key=pagelabels", "--json-key=pages", "--json-key=qpdf", path).stdout)
    units = [told["qpdf"][1][f"obj:{page['object']}"]["value"].get("/UserUnit", 1) for page in told["pages"]]
    names = dict(bookmarks(told["outlines"]))
    labels = [entry["label"]["/P"].removeprefix("u:") for entry in told["pagelabels"]]
    if not len(boxes) == len(units) == len(texts) == len(names) == len(labels) == len(drawings):
        yield f"{len(boxes)} pages, {len(texts)} with text, {len(names)} bookmarks, {len(labels)} labels, {len(drawings)} sheets"
        return
    for page, name in sorted(names.items()):
        drawing = drawings.get(name)
        if drawing is None:
            yield f"bookmark {name} is no sheet's title"
            continue
        if not name.startswith(labels[page - 1] + " "):
            yield f"page {page} is labelled {labels[page - 1]}, its bookmark says {name}"
        yield from (f"page {page}: {text}" for text in problems_of_page(boxes[page - 1], units[page - 1], texts[page - 1], drawing))


def problems_of_fonts(path: Path):
    """All fonts embedded, in part, with a table of their characters."""
    for line in run("pdffonts", path).stdout.splitlines()[2:]:
        if line.split()[-5:-2] != ["yes", "yes", "yes"]:
            yield f"font not embedded or not searchable: {line}"


def bookmarks(entries):
    """The leaves of the tree: page number and title."""
    for entry in entries:
        if entry["kids"]:
            yield from bookmarks(entry["kids"])
        else:
            yield entry["destpageposfrom1"], entry["title"]


def problems_of_page(box, unit, text, drawing: Path):
    """A page's box is in units of so many points each (ISO 32000-1, table 30); poppler tells it to two decimals. No reader need take more than 14,400 units."""
    root = ElementTree.parse(drawing).getroot()
    wanted = tuple(float(root.get(side).removesuffix("mm")) * POINTS_PER_MM for side in ("width", "height"))
    if any(abs(a * unit - b) > 0.01 * unit for a, b in zip(box, wanted)):
        yield f"{box} units of {unit} points, {drawing.name} has {wanted} points"
    if max(box) > 14400:
        yield f"{box} units: more than 14,400"
    said = spaceless(text)
    drawn = [spaceless("".join(element.itertext())) for element in root.iter(f"{SVG}text")]
    more, fewer = (collections.Counter(said), collections.Counter("".join(drawn)))
    if more != fewer:
        yield f"characters only here {dict(more - fewer)}, only in {drawing.name} {dict(fewer - more)}"
    for lost in sorted({one for one in drawn if one not in said}):
        yield f"the text {lost} of {drawing.name} is not found"


def spaceless(text: str):
    return "".join(text.split())


def run(*command):
    return subprocess.run([str(part) for part in command], stdin=subprocess.DEVNULL, capture_output=True, text=True, check=False)
