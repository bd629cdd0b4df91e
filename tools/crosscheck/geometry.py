"""One laid-out model against what other readers' meshes show: bodies, openings, which walls are coursable, junctions."""
import collections
import json
import re
import subprocess
from dataclasses import dataclass, field
from pathlib import Path

import bodies
import coursable
import elevations
import openings

HERE = Path(__file__).parent
CODES = frozenset(re.findall(r'"([a-z]+(?:-[a-z0-9]+)+)", Severity\.', (HERE.parents[1] / "src/IfcCourser/Findings/FindingCodes.cs").read_text("utf-8")))
BODY_KIND = re.compile(r"extru|swept|clip|csg|brep|mapped|tessell|surface|faceted|advanced|solid")


@dataclass
class Judged:
    """Counts of one model; misses are coursable walls that are skipped; prisms: of the unjudged walls."""
    straight: int = 0
    coursable: int = 0
    coursed: int = 0
    unknown: list[str] = field(default_factory=list)
    misses: list[str] = field(default_factory=list)
    not_coursable: collections.Counter = field(default_factory=collections.Counter)
    compared: bodies.Comparison = field(default_factory=bodies.Comparison)
    differences: list[tuple[str, str, str]] = field(default_factory=list)
    prisms: int = 0
    unjudged: list[str] = field(default_factory=list)
    elevations: list[str] = field(default_factory=list)
    openings: collections.Counter = field(default_factory=collections.Counter)
    worst_opening: float = 0.0
    junctions: dict[str, int] = field(default_factory=dict)
    named_holes: list[str] = field(default_factory=list)
    problems: list[str] = field(default_factory=list)


def judge(model: Path, layout, file: Path, seen, node: Path) -> Judged:
    """layout: of that file; seen: the lines of list_walls.mjs for it. Differences are (wall, quantity, text)."""
    result = Judged()
    seen = {wall["id"]: wall for wall in seen}
    first = {number: wall["mesh"] for number, wall in seen.items()}
    coursed = [wall for wall in layout["walls"] if wall["status"] == "coursed"]
    second = bodies.second_opinions(model, asked(layout, seen), node)
    result.compared = bodies.compare(coursed, first, second)
    result.differences += result.compared.differences
    facts = {wall["stepId"]: best(first.get(wall["stepId"]), second.get(wall["stepId"])) for wall in layout["walls"]}
    judge_coursable(result, layout, facts)
    judge_prisms(result, coursed, facts)
    result.elevations += elevations.differences(coursed, facts)
    for wall in coursed:
        for outcome, off, text in openings.compare(wall, seen.get(wall["stepId"])):
            result.openings[outcome] += 1
            if outcome == "OFF":
                result.differences.append((wall["globalId"], "opening", text))
            else:
                result.worst_opening = max(result.worst_opening, off)
    result.problems += reasons(layout)
    judge_junctions(result, file, node)
    return result


def asked(layout, seen):
    """The walls of which a second opinion is wanted: their mesh is missing, does not close or says something else than we do."""
    bodies_of = {}
    for wall in layout["walls"]:
        number = wall["stepId"]
        row = seen.get(number, {"body": [number], "mesh": None})
        if not (row["mesh"] and row["mesh"]["closed"]) or wall["status"] == "coursed" and bodies.differs(wall["body"], row["mesh"]):
            bodies_of[number] = row["body"]
    return bodies_of


def best(first, second):
    return next((facts for facts in (first, second) if facts and facts["closed"]), first or second)


def judge_coursable(result, layout, facts):
    standing = [facts[wall["stepId"]] for wall in layout["walls"] if wall["status"] == "coursed" and facts.get(wall["stepId"])]
    for wall in layout["walls"]:
        verdict = coursable.verdict(wall, facts.get(wall["stepId"]), layout, standing)
        text = f"{wall['globalId']} #{wall['stepId']} {wall.get('name') or ''}"
        result.straight += verdict.straight
        result.coursable += verdict.coursable is True
        if verdict.coursable is None:
            result.unknown.append(f"{text}: {wall.get('reason', 'coursed')}; {verdict.why}")
        elif wall["status"] == "coursed":
            result.coursed += verdict.coursable
        elif verdict.coursable:
            result.misses.append(f"{text}: {wall['reason']}; {shown(facts[wall['stepId']])}")
        else:
            result.not_coursable[f"{wall['reason']}: {verdict.why}"] += 1


def shown(facts):
    faces = facts["faces"]
    return (f"faces {faces['thickness']:.1f} mm apart, {coursable.size(faces['run']):.1f} long, {coursable.size(faces['height']):.1f} high, "
            f"with {100 * faces['share']:.0f} % of {facts['volume']:.3f} m3 between them")


def judge_prisms(result, coursed, facts):
    """Walls that no reader can judge, by our own elevation area times thickness."""
    for wall in coursed:
        mesh = facts.get(wall["stepId"])
        if mesh and mesh["closed"]:
            continue
        prism, body = bodies.prism_volume(wall), wall["body"]["netVolume"]
        text = f"{wall['globalId']} #{wall['stepId']}: body {body:.4f} m3, " + (
            "no plain prism" if prism is None else f"area times thickness {prism:.4f} m3")
        result.unjudged.append(text)
        result.prisms += prism is not None
        if prism is not None and abs(prism - body) > bodies.PRISM * body:
            result.differences.append((wall["globalId"], "prism", text))


def reasons(layout):
    """Yields where a skipped wall has not exactly one documented code, or one that names a body kind."""
    for wall in layout["walls"]:
        reason = wall.get("reason")
        if (wall["status"] == "skipped") != isinstance(reason, str):
            yield f"{wall['globalId']}: {wall['status']} with reason {reason!r}"
        elif reason is not None and (reason not in CODES or BODY_KIND.search(reason)):
            yield f"{wall['globalId']}: reason {reason} is not in the table of codes or names a body kind"


def judge_junctions(result, file, node):
    run = subprocess.run(["node", node / "junctions.mjs", file], capture_output=True, text=True, check=True)
    *faults, result.junctions = map(json.loads, run.stdout.splitlines())
    for f in faults:
        measure = f"{f['size']:.1f} mm deep" if f["fault"] == "overlap" else f"{f['size']} points"
        text = (f"junction {f['junction']} ({f['kind']}) of {' and '.join(f['walls'])}: {f['fault']}, {measure}, at {f['levels']} heights, "
                f"courses {f['courses']}, worst at {f['at']}")
        (result.named_holes if f["named"] else result.problems).append(text)
