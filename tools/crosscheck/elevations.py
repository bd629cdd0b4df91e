"""The masonry elevation of a coursed wall against the area of the two faces of its mesh.

A junction moves the wall's end to its neighbour's masonry, through the neighbour's other layers, so an end that meets others may
differ by REACH thicknesses of theirs. What differs by more is printed for a person to look at: lost or invented masonry, or a layer
that is smaller or larger than the body's outer faces.
"""
from openings import inside_outline

SHARE = 0.02    # of the area
LEAST = 0.05    # m2
REACH = 1.5     # thicknesses of the neighbour; ends cut on the slant are drawn as far as their longer face


def differences(walls, facts):
    """Yields a text for each coursed wall whose elevation its mesh does not show; facts by wall number."""
    thick = {wall["globalId"]: thickness(wall, facts.get(wall["stepId"])) for wall in walls}
    for wall in walls:
        mesh = facts.get(wall["stepId"])
        if "curve" in wall["frame"] or not (mesh and mesh["closed"] and mesh["faces"]):
            continue
        ours, theirs = net_area(wall), mesh["faces"]["area"]
        height = max(z for _, z in wall["outline"]) / 1000
        moved = sum(REACH * max((thick.get(other, 0) for other in end["with"]), default=0) + abs(end.get("slant", 0)) / 2
                    for end in wall["ends"].values()) / 1000
        if abs(ours - theirs) > SHARE * theirs + LEAST + moved * height:
            codes = sorted({f["code"] for f in wall["findings"]} & {"body-in-pieces", "bevelled-across", "second-leaf", "hole-in-body", "body-beyond-faces"})
            yield f"{wall['globalId']} #{wall['stepId']}: {ours:.2f} m2, the mesh {theirs:.2f} m2 {' '.join(codes)}"


def thickness(wall, mesh):
    return max(wall["frame"]["thickness"], mesh["faces"]["thickness"] if mesh and mesh["faces"] else 0)


def net_area(wall):
    """m2 of the outline less its openings."""
    points = wall["outline"]
    gross = abs(sum(x0 * y1 - x1 * y0 for (x0, y0), (x1, y1) in zip(points, points[1:] + points[:1]))) / 2
    voids = (inside_outline(points, o["model"]) for o in wall["openings"] if o["kind"] != "recess")
    return (gross - sum((b[1] - b[0]) * (b[3] - b[2]) for b in voids if b)) / 1e6
