"""Wall volumes that authoring programs declared, against the bodies as we read them.

Compared are NetVolume and GrossVolume of Qto_WallBaseQuantities (IFC4) and BaseQuantities (IFC2X3), which mean the same as
body.netVolume and body.grossVolume of layout.json. Every other case is left out by name.
"""
import collections

SETS = ("Qto_WallBaseQuantities", "BaseQuantities")
MEANING = {"NetVolume": "netVolume", "GrossVolume": "grossVolume"}
TOLERANCE = 0.01


def compare(layout, listing):
    """Yields (outcome, text) for each wall and quantity: outcome is 'within 1 %', 'OFF' or the reason for leaving it out."""
    walls = {wall["globalId"].split("#")[0]: wall for wall in layout["walls"]}
    for seen in listing:
        given = [(name, value) for owner, name, kind, value in seen["quantities"] if owner in SETS and name in MEANING]
        if not given:
            yield "none declared", seen["guid"]
        for name, times in collections.Counter(name for name, _ in given).items():
            values = [value for other, value in given if other == name]
            yield judge(name, values, times, walls[seen["guid"]], seen)


def judge(name, values, times, wall, seen):
    text = f"{seen['guid']} {name} declared {values[0]:.4f} m3"
    body = wall.get("body") or {}
    ours = body.get(MEANING[name])
    if ours is None:
        return f"no body read ({wall.get('reason')})", text
    text += f", ours {ours:.4f}"
    if times > 1 and any(near(value, ours) for value in values):
        return "given twice with two meanings, one of them ours", text
    if near(values[0], ours):
        return "within 1 %", text
    mesh = seen["volume_m3"]
    text += f", mesh {mesh if mesh is None else round(mesh, 4)} closed {seen['mesh_closed']}"
    # A mesh has its openings cut: of a gross volume it can speak only through the net one.
    if seen["mesh_closed"] and near(mesh, body["netVolume"]):
        return "declared value differs, a second reader's mesh agrees with ours", text
    return "OFF", text


def near(a, b):
    return abs(a - b) <= max(TOLERANCE * abs(b), 1e-4)
