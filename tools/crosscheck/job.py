"""One model through the command and through every outside reader."""
import collections
import contextlib
import crossings
import json
import re
import resource
import subprocess
import sys
import time
from dataclasses import dataclass, field
from pathlib import Path

import coursed_model
import declared
import geometry
import ids_files
import moved_openings
import orders
import overlaps
import pages
import parts_model
import points
import printing
import repeats
import sheets
import staging

# Fixtures that a CAD program prints.
HOUSES = ("sorrel", "teasel", "yarrow")
LIMIT = 600  # seconds for one command
SUPPORTED = re.compile(rb"FILE_SCHEMA\s*\(\s*\(\s*'IFC(2X3|4|4X3)(_\w+)?'", re.I)


def invocation(file: Path):
    """How the command under test is called: a build's library by dotnet, a packaged file by itself."""
    return ["dotnet", str(file)] if file.suffix == ".dll" else [str(file)]


@dataclass(frozen=True)
class Tools:
    """Where the command under test and the outside readers are."""
    command: list[str]
    node: Path
    verifier: Path | None


@dataclass(frozen=True)
class Task:
    """A model to lay out into a folder; repeated: also that a second run comes out the same."""
    model: Path
    kind: str
    out: Path
    options: list[str]
    repeated: bool


@dataclass
class Result:
    """What became of one model: the counts for the tables, and every problem as a line."""
    model: str
    kind: str
    walls: int = 0
    coursed: int = 0
    reasons: dict[str, int] = field(default_factory=dict)
    breaches: int | None = None
    sheets: int = 0
    seconds: float = 0
    spent: dict[str, float] = field(default_factory=dict)
    problems: list[str] = field(default_factory=list)
    limits: list[str] = field(default_factory=list)
    declared: list[tuple[str, str]] = field(default_factory=list)
    judged: geometry.Judged | None = None


def check(task: Task, tools: Tools) -> Result:
    """Lays the model out into the folder and checks all that was written."""
    result = Result(task.model.name, task.kind)
    began = time.monotonic()
    with stage(result, "layout"):
        run = lay_out(task, tools)
    result.seconds = time.monotonic() - began
    if run.returncode == 3 and not SUPPORTED.search(task.model.read_bytes()):
        result.reasons = {"refused: schema is not one of the three": 1}
        return result
    if run.returncode != 0:
        result.problems.append(f"exit status {run.returncode}: {run.stderr.strip()[:400]}")
        return result
    if "   at " in run.stderr:
        result.problems.append(f"a stack trace on stderr: {run.stderr.strip()[:400]}")
    layout = json.loads((task.out / "layout.json").read_text(encoding="utf-8"))
    count(result, layout)
    with stage(result, "listing"):
        before = listing(task.model, tools, task.out / "before.jsonl", task.out / "layout.json")
    with stage(result, "laws"):
        check_layout(result, layout, task.out, before, tools)
    with stage(result, "meshes and junctions"):
        result.judged = geometry.judge(task.model, layout, task.out / "layout.json", before[0], tools.node)
    result.problems += result.judged.problems
    with stage(result, "sheets"):
        check_sheets(result, layout, task.out, tools)
    with stage(result, "set-out"):
        result.problems += points.problems_of(layout, task.out)
    with stage(result, "order"):
        result.problems += orders.problems_of(layout, task.out, task.kind == "fixture" and task.model.stem == task.model.parent.name)
        result.problems += staging.problems_of(layout, task.out)
    with stage(result, "coursed model"):
        check_coursed(result, layout, task, before, tools)
    if "--ifc-parts" in task.options:
        with stage(result, "parts and moved openings"):
            check_parts(result, layout, task, tools)
            check_moved(result, layout, task, before, tools)
        with stage(result, "IDS"):
            coursed = task.out / "model" / f"{task.model.stem}.coursed.ifc"
            result.problems += ids_files.coursed_problems(task.out.parent.parent / "ids", task.model, coursed, tools.node)
    result.declared = list(declared.compare(layout, before[0]))
    result.problems += [f"declared quantity: {text}" for outcome, text in result.declared if outcome == "OFF"]
    if task.repeated:
        again = task.out.parent.parent
        with stage(result, "repeats"):
            result.problems += repeats.same_bytes(task.out, task.model, again / "again" / task.model.stem, tools.command, task.options)
            result.problems += repeats.replaced(task.out, task.model, again / "twice" / task.model.stem, tools.command)
    return result


@contextlib.contextmanager
def stage(result, name):
    """Notes the processor time that a stage takes, of this process and of those it waits for."""
    def spent():
        return sum(resource.getrusage(who).ru_utime + resource.getrusage(who).ru_stime
                   for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN))
    before = spent()
    yield
    result.spent[name] = spent() - before


def lay_out(task, tools):
    try:
        return subprocess.run([*tools.command, "layout", task.model, "--out", task.out, "--quiet", *task.options],
                              stdin=subprocess.DEVNULL, capture_output=True, text=True, timeout=LIMIT, check=False)
    except subprocess.TimeoutExpired:
        return subprocess.CompletedProcess([], -1, "", f"no end after {LIMIT} s")


def count(result, layout):
    walls = layout["walls"]
    result.walls = len(walls)
    result.coursed = sum(wall["status"] == "coursed" for wall in walls)
    result.reasons = dict(collections.Counter(wall["reason"] for wall in walls if wall["status"] == "skipped"))


def listing(model, tools, keep, *layout):
    """Walls and others (openings, fillings) as web-ifc sees them; the walls are kept as a file for the verifier."""
    run = subprocess.run(["node", tools.node / "list_walls.mjs", model, *layout], capture_output=True, text=True, check=True)
    *walls, others = run.stdout.splitlines()
    keep.write_text("".join(line + "\n" for line in walls), encoding="utf-8")
    return [json.loads(line) for line in walls], json.loads(others)["other"]


def check_layout(result, layout, out, before, tools):
    known = {wall["globalId"].split("#")[0] for wall in layout["walls"]}
    result.problems += [f"wall {wall['guid']} is not listed" for wall in before[0] if wall["guid"] not in known]
    if tools.verifier is None or result.walls == 0:
        return
    run = subprocess.run([sys.executable, tools.verifier, out / "layout.json", "--max", "1000"],
                         capture_output=True, text=True, check=False)
    lines = run.stdout.splitlines()
    last = lines[-1] if lines else ""
    if " breaches" not in last:
        result.problems.append(f"verify_layout.py stops: {run.stderr.strip()[-300:]}")
        return
    result.limits = [line for line in lines[:-1] if is_limit_of_the_verifier(line, layout)]
    result.breaches = int(last.split()[0]) - len(result.limits)
    result.problems += [line for line in lines[:-1] if line not in result.limits]


EDGE = re.compile(r"^(?P<wall>\S+) .*: course (?P<course>\d+): the span's edge at [-\d.]+ says "
                  r"(?P<says>wall|free), and stands against (free|wall)$")


def is_limit_of_the_verifier(line, layout):
    """The verifier takes every place between the lowest and the highest rim of a course with raked pieces for a free end,
    so that a joint against another wall's face is refused there; and it takes a strip that an outline-not-filled finding
    leaves open for another wall. Such lines are counted and printed, not hidden."""
    found = EDGE.match(line)
    walls = [wall for wall in layout["walls"] if found and wall["globalId"] == found["wall"]]
    if found and found["says"] == "free":
        return any(finding["code"] == "outline-not-filled" for wall in walls for finding in wall["findings"])
    return any(piece.get("outline") for wall in walls for course in wall["courses"]
               if course["n"] == int(found["course"]) for piece in course["pieces"])


def check_sheets(result, layout, out, tools):
    files = {folder: sorted((out / folder).glob("*.dxf")) if (out / folder).is_dir() else [] for folder in ("set-out", "walls")}
    result.sheets = sum(len(list((out / folder).glob("*.svg"))) for folder in files)
    result.problems += sheets.problems_of_walls(out / "walls", layout)
    for folder, written in files.items():
        result.problems += sheets.missing_layouts(written, out / folder)
    read = sheets.read(files["walls"], result.kind)
    result.problems += sheets.problems_of(read + files["set-out"], tools.node, layout if len(read) == len(files["walls"]) else None)
    result.problems += [text for folder in files for file in sorted((out / folder).glob("*.pdf")) for check in (overlaps, crossings) for text in check.problems_of(file)]
    if result.kind == "real" or result.model.removesuffix(".ifc") in HOUSES:
        result.problems += printing.problems_of(printing.some(files, result.kind))
    result.problems += [text for folder in ("set-out", "walls") for text in pages.problems_of(out / folder)]


def check_coursed(result, layout, task, before, tools):
    coursed = task.out / "model" / f"{task.model.stem}.coursed.ifc"
    if not coursed.is_file():
        result.problems.append(f"no {coursed.name}")
        return
    result.problems += coursed_model.text_problems(task.model.read_bytes(), coursed.read_bytes())
    result.problems += attribute_counts(coursed, task.model, tools)
    if result.walls and not before[0]:
        result.reasons["(web-ifc reads no wall: property sets not compared)"] = result.walls
        return
    after = listing(coursed, tools, task.out / "after.jsonl")
    result.problems += coursed_model.set_problems(layout, before, after)


def check_parts(result, layout, task, tools):
    parts = task.out / "model" / f"{task.model.stem}.parts.ifc"
    result.problems += [f"{parts.name}: {text}" for text in parts_model.problems_of(layout, parts, task.out / "layout.json", tools.node)]
    result.problems += attribute_counts(parts, task.model, tools)


def check_moved(result, layout, task, before, tools):
    moved, listed = (task.out / "model" / f"{task.model.stem}.openings.{kind}" for kind in ("ifc", "csv"))
    if not moved.is_file() or not listed.is_file():
        result.problems.append(f"no {moved.name} or {listed.name}")
        return
    result.problems += moved_openings.text_problems(task.model.read_bytes(), moved.read_bytes())
    result.problems += attribute_counts(moved, task.model, tools)
    after = listing(moved, tools, task.out / "after.jsonl", task.out / "layout.json")
    result.problems += moved_openings.place_problems(layout, moved_openings.rows_of(listed), before[0], after[0])


def attribute_counts(written, model, tools):
    run = subprocess.run(["node", tools.node / "attribute_counts.mjs", written, model], capture_output=True, text=True, check=True)
    return run.stdout.splitlines()
