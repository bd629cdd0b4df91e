"""The parts file against the layout: every piece, lintel and bar where and as large as the layout says, and no other body of the wall."""
import json
import math
import subprocess
from pathlib import Path

NEAR = 0.01      # mm
VOLUME = 0.0005  # relative; meshes of boxes are exact
ROUND = 0.005    # relative; a mesh of a round bar has 64 sides or, around bends, fewer


def problems_of(layout, parts: Path, layout_file: Path, node: Path):
    """Yields what web-ifc's meshes of the parts file say against the layout."""
    if not parts.is_file():
        yield f"no {parts.name}"
        return
    run = subprocess.run(["node", node / "list_parts.mjs", parts, layout_file], capture_output=True, text=True, check=True)
    *walls, last = [json.loads(line) for line in run.stdout.splitlines()]
    coursed = {wall["stepId"]: wall for wall in layout["walls"] if wall["status"] == "coursed"}
    if [wall["id"] for wall in walls] != list(coursed):
        yield "the walls are not those of the layout"
    for seen in walls:
        yield from (f"{coursed[seen['id']]['globalId']}: {text}" for text in wall_problems(coursed[seen["id"]], seen))
    yield from second_problems(coursed, walls, parts, node)
    straight = sum("curve" not in wall["frame"] and bool(wall.get("moduleLines")) for wall in coursed.values())
    if last["grids"] != straight:
        yield f"{last['grids']} grids for {straight} straight walls"
    # Parts that the wall had before keep their place in it, without their bodies.
    listed = sum(part["box"] is not None for seen in walls for part in seen["parts"]) + last["grids"]
    if sum(last["layers"].values()) != listed:
        yield f"layers hold {sum(last['layers'].values())} of {listed} parts and grids"


def second_problems(coursed, walls, parts, node):
    """Yields walls whose blocks and lintels have another volume in @ifc-lite/wasm's meshes."""
    asked = {seen["id"]: [part["id"] for part in seen["parts"] if part["box"] and part["type"].upper() != "IFCREINFORCINGBAR"] for seen in walls}
    run = subprocess.run(["node", node / "second_opinion.mjs", parts, json.dumps(asked)], capture_output=True, text=True, check=True)
    second = dict(json.loads(line) for line in run.stdout.splitlines())
    for seen in walls:
        volume = sum(part["volume"] for part in seen["parts"] if part["id"] in asked[seen["id"]])
        other = (second.get(seen["id"]) or {}).get("volume", 0)
        if abs(other - volume) > volume * VOLUME:
            yield f"{coursed[seen['id']]['globalId']}: the parts have {volume} m3 for web-ifc, {other} m3 for @ifc-lite/wasm"


def wall_problems(wall, seen):
    if seen["own"] or seen["openings"]:
        yield f"the wall or its openings still have a body ({seen['own']}, {seen['openings']} m3)"
    by_name = {(part["type"].upper(), part["name"]): part for part in seen["parts"] if part["type"].upper() != "IFCREINFORCINGBAR"}
    pieces = [piece for course in wall["courses"] for piece in course["pieces"]]
    wanted = [("IFCBUILDINGELEMENTPART", piece) for piece in pieces] + [("IFCBEAM", lintel) for lintel in wall["lintels"]]
    for key in [(kind, thing["id"]) for kind, thing in wanted]:
        if key not in by_name:
            yield f"{key[1]} is no part"
            return
    sections = set()
    for kind, thing in wanted:
        yield from solid_problems(wall, thing, by_name[kind, thing["id"]], sections)
    if len(sections) > len({(piece["top"] - piece["bottom"]) for piece in pieces if piece.get("trough")}):
        yield f"trough units of one height have unlike sections: {sorted(sections)}"
    yield from bar_problems(wall, [part for part in seen["parts"] if part["type"].upper() == "IFCREINFORCINGBAR"])


def solid_problems(wall, thing, part, sections):
    thickness = wall["frame"]["thickness"]
    box = [thing["from"], thing["to"], 0, thickness, thing["bottom"], thing["top"]]
    if "curve" not in wall["frame"] and any(abs(a - b) > NEAR for a, b in zip(box, part["box"])):
        yield f"{thing['id']} lies at {part['box']}, the layout says {box}"
    area = face(thing)
    share = part["volume"] * 1e9 / (area * thickness)
    if thing.get("trough") and not thing.get("outline"):
        sections.add(round(share, 3))
        if not 0.2 < share <= 1:
            yield f"{thing['id']}: a trough of {share:.3f} of its box"
    elif abs(share - 1) > VOLUME or not part["closed"]:
        yield f"{thing['id']}: {part['volume']} m3, the layout makes it {area * thickness / 1e9}"


def face(thing):
    """Area of the face in the elevation, mm2."""
    outline = thing.get("outline")
    if not outline:
        return (thing["to"] - thing["from"]) * (thing["top"] - thing["bottom"])
    return abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(outline, outline[1:] + outline[:1]))) / 2


def bar_problems(wall, seen):
    thickness, wanted = wall["frame"]["thickness"], []
    for core in wall["cores"]:
        bars = core.get("bars")
        if not bars:
            continue
        starter = bars.get("starter")
        heights = [(low, high, None) for low, high in bars["set"]]
        if starter:
            heights.append((core["bottom"] - starter["embedment"], core["bottom"] + starter["stickUp"], starter))
        wanted += [(core, bars["diameter"], *height) for height in heights for _ in range(bars["count"])]
    corners = sum(len(corner["bars"]) for beam in wall["bondBeams"] for corner in beam["cornerBars"])
    along = [(beam, bar) for beam in wall["bondBeams"] for bar in beam["steel"]]
    left = list(seen)
    if len(wanted) + len(along) + corners != len(seen):
        yield f"{len(seen)} bars, the layout has {len(wanted)} upright, {len(along)} along beams, {corners} around corners"
        return
    if "curve" not in wall["frame"]:
        yield from beam_bar_problems(wall, along, left)
    for core, diameter, low, high, starter in wanted:
        found = next((part for part in left if part["tag"] == core["id"] and abs(part["box"][4] - low) < NEAR and abs(part["box"][5] - high) < NEAR), None)
        if found is None:
            yield f"no bar of core {core['id']} from {low} to {high}"
            continue
        left.remove(found)
        s_from, s_to, t_from, t_to = found["box"][:4]
        if t_from < 0 or t_to > thickness:
            yield f"a bar of core {core['id']} leaves the wall: {t_from} to {t_to} across"
        if not s_from - NEAR <= core["at"] <= s_to + core["diameter"] / 2:
            yield f"a bar of core {core['id']} stands at {s_from} to {s_to}, the core at {core['at']}"
        if not (starter and starter["hookLeg"]):
            volume = math.pi / 4 * diameter ** 2 * (high - low) / 1e9
            if abs(found["volume"] / volume - 1) > ROUND:
                yield f"a bar of core {core['id']}: {found['volume']} m3, not {volume}"


def beam_bar_problems(wall, along, left):
    """A bar along a beam where the layout lays it and as long; those around corners stay at its height, in the wall or its neighbour."""
    for beam, bar in along:
        level = "outline" not in beam
        z = beam["bottom"] + bar["height"]
        found = next((part for part in left if part["tag"] == beam["id"] and part["name"] == bar["mark"] and part["box"]
                      and abs(part["box"][0] - bar["from"]) < 15 and abs(part["box"][1] - bar["to"]) < 15
                      and abs((part["box"][2] + part["box"][3]) / 2 - bar["across"]) < 0.5 and (not level or abs((part["box"][4] + part["box"][5]) / 2 - z) < 0.5)), None)
        if found is None:
            yield f"no bar {bar['mark']} of {beam['id']} from {bar['from']} to {bar['to']}"
            continue
        left.remove(found)
        diameter = found["box"][3] - found["box"][2]
        volume = math.pi / 4 * diameter ** 2 * bar["size"] / 1e9
        if abs(found["volume"] / volume - 1) > 2 * ROUND:
            yield f"bar {bar['mark']} of {beam['id']}: {found['volume']} m3, not {volume}"
    for beam in wall["bondBeams"]:
        for corner in beam["cornerBars"]:
            for bar in corner["bars"]:
                z = beam["bottom"] + bar["height"]
                found = next((part for part in left if part["tag"] == beam["id"] and part["name"] == bar["mark"] and part["box"] and abs((part["box"][4] + part["box"][5]) / 2 - z) < 0.5), None)
                if found is None:
                    yield f"no bar {bar['mark']} around the corner at {corner['at']} of {beam['id']}"
                    continue
                left.remove(found)
                s_from, s_to = found["box"][:2]
                if s_to - s_from < corner["leg"] or not s_from - wall["frame"]["thickness"] <= corner["at"] <= s_to + wall["frame"]["thickness"]:
                    yield f"bar {bar['mark']} of {beam['id']} goes from {s_from} to {s_to}, its corner is at {corner['at']}"
