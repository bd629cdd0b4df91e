"""The coursed model against the model it was made from: text kept, and property sets where they belong."""
import re

TOKEN = re.compile(rb"'(?:[^']|'')*'|/\*.*?\*/|;", re.S)
NUMBER = re.compile(rb"#(\d+)\s*=")
INSTANCE = re.compile(rb"\s*#(\d+)\s*=\s*(.*)", re.S)
STRING = re.compile(rb"'(?:[^']|'')*'")
COMMENT = re.compile(rb"/\*.*?\*/", re.S)
OURS = ("IfcCourser_Coursing", "IfcCourser_Opening", "IfcCourser_Quantities")


def text_problems(original: bytes, coursed: bytes):
    """Yields what is wrong with the text: the original's DATA must be a byte prefix of the new one."""
    start, end = original.find(b"DATA;"), original.rfind(b"ENDSEC;")
    kept = original[start:end].rstrip()
    data = coursed[coursed.find(b"DATA;"):]
    if not data.startswith(kept):
        yield "the original's instances are not kept byte by byte"
        return
    if b"END-ISO-10303-21;" not in coursed[-100:]:
        yield "no END-ISO-10303-21; at the end"
    added, known = instances(b"DATA;" + data[len(kept):]), set(NUMBER.findall(kept))
    for number in added.keys() & known:
        yield f"#{number.decode()} is added and stands in the original"
    for number, text in added.items():
        for reference in re.findall(rb"#(\d+)", STRING.sub(b"", text)):
            if reference not in known and reference not in added:
                yield f"#{number.decode()} (added) refers to missing #{reference.decode()}"
    for schema in (b"FILE_SCHEMA", b"FILE_DESCRIPTION"):
        if entry(original, schema) != entry(coursed, schema):
            yield f"{schema.decode()} is changed"


def instances(data: bytes):
    """Text of each instance by its number; of numbers given twice, all texts."""
    found, start = {}, data.find(b"DATA;") + 5
    for token in TOKEN.finditer(data, start):
        if token.group() == b";":
            match = INSTANCE.match(COMMENT.sub(b"", data[start:token.start()]))
            if match:
                found[match.group(1)] = found.get(match.group(1), b"") + match.group(2).strip()
            start = token.end()
    return found


def entry(data: bytes, keyword: bytes):
    match = re.search(keyword + rb"\s*\(.*?\)\s*;", data, re.S)
    return match and re.sub(rb"\s+", b"", match.group())


def set_problems(layout, before, after):
    """Yields where the property sets that a second reader sees are not those of the layout."""
    (walls_before, _), (walls, others) = before, after
    kept = {wall["guid"]: wall for wall in walls}
    for wall in walls_before:
        now = kept.get(wall["guid"])
        if now is None:
            yield f"{wall['guid']}: the second reader misses this wall"
            continue
        foreign = {name: values for name, values in now["psets"].items() if name not in OURS}
        if foreign != {name: values for name, values in wall["psets"].items() if name not in OURS}:
            yield f"{wall['guid']}: property sets of the original have changed"
    for wall in layout["walls"]:
        yield from wall_problems(wall, kept)
        yield from opening_problems(wall, {other["guid"]: other for other in others}, kept)


def wall_problems(wall, kept):
    # A GlobalId that the model gives twice carries its instance number after a # in the layout.
    seen = kept.get(wall["globalId"].split("#")[0])
    if seen is None:
        yield f"{wall['globalId']}: in the layout and not in the coursed model"
        return
    if seen["setNames"].count("IfcCourser_Coursing") != 1:
        yield f"{wall['globalId']}: {seen['setNames'].count('IfcCourser_Coursing')} sets IfcCourser_Coursing, not one"
        return
    values = seen["psets"].get("IfcCourser_Coursing", {})
    if str(values.get("Status", "")).lower() != wall["status"] and "#" not in wall["globalId"]:
        yield f"{wall['globalId']}: Status {values.get('Status')}, the layout says {wall['status']}"
    if wall["status"] == "skipped" and values.get("Reason") != wall["reason"] and "#" not in wall["globalId"]:
        yield f"{wall['globalId']}: Reason {values.get('Reason')}, the layout says {wall['reason']}"
    if "Generator" not in values:
        yield f"{wall['globalId']}: IfcCourser_Coursing has no Generator"
    if wall["status"] == "coursed":
        yield from count_problems(wall, seen, values)


def count_problems(wall, seen, values):
    """What tells one coursed wall from another: its counts and its area."""
    for name, counted in (("Courses", wall["courses"]), ("Lintels", wall["lintels"]), ("Cores", wall["cores"])):
        if values.get(name) != len(counted) and "#" not in wall["globalId"]:
            yield f"{wall['globalId']}: {name} {values.get(name)}, the layout has {len(counted)}"
    areas = [value for owner, name, _, value in seen["quantities"] if (owner, name) == ("IfcCourser_Quantities", "GrossArea")]
    if len(areas) != 1 or abs(areas[0] - wall["quantities"]["grossArea"]) > 1e-6 * max(1, areas[0]):
        yield f"{wall['globalId']}: GrossArea {areas}, the layout has {wall['quantities']['grossArea']} m2"


def opening_problems(wall, others, kept):
    fillings = {o["guid"]: o["filling"] for seen in kept.values() for o in seen["openings"]}
    for opening in wall.get("openings", []):
        for guid in (opening["globalId"], fillings.get(opening["globalId"])):
            if guid in others and "IfcCourser_Opening" not in others[guid]["psets"]:
                yield f"{wall['globalId']}: opening or filling {guid} has no IfcCourser_Opening"
