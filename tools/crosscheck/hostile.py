"""Names that attack whoever opens the files: script for pages and SVG, formulas for spreadsheets, control codes for DXF, escape sequences for
terminals, characters that XML forbids, names without end, names that lead to other folders. Readers of another make look at what came of them."""
import csv
import html.parser
import json
import re
import shutil
import subprocess
import xml.etree.ElementTree as ElementTree
from pathlib import Path

import ezdxf
import openpyxl

NAMES = {
    "formula": '=HYPERLINK("http://example.invalid","x")', "plus": "+1+cmd|' /C calc'!A0", "minus": "-2+3", "at": "@SUM(A1:A9)", "tab": "\t=1+1",
    "script": '"><script>alert(1)</script><img src=x onerror=alert(1)>', "data": "]]><!-- </style></title><script>alert(2)</script>",
    "codes": "%%c%%d%%180 ^J {\\fArial|b1;x} \\P", "escape": "\x1b[31m\x1b]0;x\x07\x9b2J", "nought": "a\x00b\x01c\ufffe\ud800",
    "lines": "two\r\nlines\n0\nLINE", "path": "../../../outside", "device": "CON", "turned": "a\u202egpj.exe", "long": "L" * 100_000, "blank": "   ",
}
FORMULA = ("=", "+", "-", "@", "\t", "\r")


def problems(command: list[str], fixtures: Path, work: Path):
    """Yields what of a name gets through."""
    shutil.rmtree(work, ignore_errors=True)
    work.mkdir(parents=True)
    source = (fixtures / "ifc" / "oddities" / "opening-round.ifc").read_text(encoding="ascii")
    for name, text in NAMES.items():
        model = work / f"{name}.ifc"
        model.write_text(renamed(source, text), encoding="ascii")
        out = work / name
        done = subprocess.run([*command, "layout", model, "--out", out, "--formats", "json,dxf,svg,pdf,ifc,csv,xlsx,html,bcf", "--verbose"],
                              stdin=subprocess.DEVNULL, capture_output=True, text=True, timeout=120, check=False)
        checked = subprocess.run([*command, "check", model, "--junit", out / "junit.xml", "--fail-on", "none"],
                                 stdin=subprocess.DEVNULL, capture_output=True, text=True, timeout=120, check=False)
        for verb, run in (("layout", done), ("check", checked)):
            if run.returncode != 0:
                yield f"{name}: {verb} ends with {run.returncode}: {run.stderr.strip()[-300:]}"
            if re.search("[\x00-\x08\x0b-\x1f\x7f-\x9f\u202a-\u202e]", run.stdout + run.stderr):
                yield f"{name}: {verb} gives the terminal a command"
        yield from (f"{name}: {text}" for text in let_through(out))
        if (wall := json.loads((out / "layout.json").read_text(encoding="utf-8"))["walls"][0])["status"] != "coursed":
            yield f"{name}: the wall is {wall['status']}"
    strays = {path.name for path in work.parent.iterdir() if "outside" in path.name} | {path.name for path in work.iterdir()} - {n for name in NAMES for n in (name, f"{name}.ifc")}
    if strays:
        yield f"files lie outside the folder: {sorted(strays)}"


def renamed(source, text):
    """All names of project, storey, wall, type, material and opening are the text, escaped as ISO 10303-21 has it."""
    escaped = "".join(c if " " <= c <= "~" and c not in "'\\" else "''" if c == "'" else "\\\\" if c == "\\" else f"\\X2\\{ord(c):04X}\\X0\\" for c in text)
    for old in ("Larkmoor Rise", "Ground floor", "'Wall'", "Block wall 240", "Aerated concrete block 240", "Round window"):
        source = source.replace(old, f"'{escaped}'" if old.startswith("'") else escaped if "concrete" not in old else f"Aerated concrete block {escaped}")
    return source


def let_through(out):
    for file in sorted(out.rglob("*")):
        if file.is_dir():
            continue
        check = {".csv": in_csv, ".xlsx": in_workbook, ".html": in_page, ".svg": in_svg, ".xml": in_xml, ".dxf": in_dxf, ".json": in_json}.get(file.suffix)
        if check:
            yield from (f"{file.relative_to(out)}: {text}" for text in check(file))


def in_csv(file):
    rows = csv.reader(file.open(encoding="utf-8-sig", newline=""))
    for cell in (cell for row in rows for cell in row):
        if cell.startswith(FORMULA) and not re.fullmatch(r"[-+]?[0-9.]+(e[-+]?[0-9]+)?", cell):
            yield f"a cell is a formula: {cell[:60]!r}"


def in_workbook(file):
    for sheet in openpyxl.load_workbook(file):
        for cell in (cell for row in sheet.iter_rows() for cell in row):
            if cell.data_type == "f" and re.search("HYPERLINK|cmd|SUM\\(A1:A9|=1\\+1|-2\\+3", str(cell.value)):
                yield f"{sheet.title}!{cell.coordinate} is a formula of the name"
            if isinstance(cell.value, str) and len(cell.value) > 32_767:
                yield f"{sheet.title}!{cell.coordinate} is longer than a cell may be"


def in_page(file):
    page = Page()
    page.feed(file.read_text(encoding="utf-8"))
    yield from page.found


class Page(html.parser.HTMLParser):
    """Our pages have scripts of their own, none of which holds a name but in data that nothing can end early, and no attribute that is a script."""

    def __init__(self):
        super().__init__()
        self.found = []
        self.script = False
        self.is_data = False

    def handle_starttag(self, tag, attrs):
        self.script = tag == "script"
        self.is_data = ("type", "application/json") in attrs
        if tag in ("img", "iframe", "object", "embed", "base", "link") or any(name.startswith("on") or str(value).strip().lower().startswith("javascript:") for name, value in attrs):
            self.found.append(f"<{tag} {attrs}>"[:120])

    def handle_endtag(self, tag):
        self.script = False

    def handle_data(self, data):
        if self.script and self.is_data:
            json.loads(data)
            if "<" in data or ">" in data or "&" in data:
                self.found.append(f"data with marks of HTML: {data[:80]!r}")
        elif self.script and re.search(r"alert\([12]\)", data):
            self.found.append(f"a script holds a name: {data[:80]!r}")


def in_svg(file):
    for element in ElementTree.parse(file).iter():
        if element.tag.rpartition("}")[2] in ("script", "a", "image", "foreignObject", "use") or any(name.startswith("on") for name in element.attrib):
            yield f"an element {element.tag}"


def in_xml(file):
    ElementTree.parse(file)
    return []


def in_dxf(file):
    drawing = ezdxf.readfile(file)
    for entity in (entity for layout in drawing.layouts for entity in layout.query("TEXT ATTRIB MTEXT")):
        text = entity.text if entity.dxftype() == "MTEXT" else entity.dxf.text
        if entity.dxftype() != "MTEXT" and (re.search("%%[a-zA-Z0-9]", text) or "^J" in text):
            yield f"a text has a control code: {text[:60]!r}"
    if (audit := drawing.audit()).has_errors:
        yield f"ezdxf finds {len(audit.errors)} errors"


def in_json(file):
    json.loads(file.read_text(encoding="utf-8"))
    return []
