"""What the DXF of wall sheets says, against layout.json: attributes of block references, and dimensions against their own text."""
import collections
import re
from fractions import Fraction

# Metric dimensions are rounded to a tenth of a millimetre or finer, those in inches to 1/16 in (DIMRND).
INCH = 25.4
SIXTEENTH = Fraction(1, 16)
FEET = re.compile(r"^(-)?(?:(\d+)'-)?(\d+(?![\d/]))?(?: ?(\d+)/(\d+))?\"$")


def problems_of(document, name):
    """Each dimension's picture prints its prefix and what it measures; what it measures is the distance of its points."""
    space = document.modelspace()
    is_inch = document.header.get("$INSUNITS") == 1
    for dimension in space.query("DIMENSION"):
        measured = along(dimension)
        if abs(measured - dimension.dxf.actual_measurement) > 1e-6 * max(1, measured):
            yield f"{name}: dimension #{dimension.dxf.handle} lies {measured} apart and says it measures {dimension.dxf.actual_measurement}"
        texts = [entity.dxf.text for entity in document.blocks[dimension.dxf.geometry].query("TEXT")]
        override = dimension.dxf.get("text", "")
        if len(texts) != 1 or (not texts[0].startswith(override.removesuffix("<>")) if override.endswith("<>") or not override else texts[0] != override):
            yield f"{name}: dimension #{dimension.dxf.handle} is drawn as {texts} and says {override!r}"
            continue
        printed = value(texts[0], is_inch)
        if printed is None or abs(printed - measured) > (float(SIXTEENTH) / 2 if is_inch else 0.05) + 1e-9:
            yield f"{name}: dimension #{dimension.dxf.handle} measures {measured} and prints {texts[0]!r}"


def along(dimension):
    first, second = dimension.dxf.defpoint2, dimension.dxf.defpoint3
    return abs(second.x - first.x) if round(dimension.dxf.angle) % 180 == 0 else abs(second.y - first.y)


def value(text, is_inch):
    """What a dimension prints, in the drawing's unit, without its sign and what stands before it."""
    if not is_inch:
        found = re.search(r"(\d+(?:\.\d+)?)$", text)
        return float(found.group(1)) if found else None
    found = FEET.match(re.split(r"\s{2,}", text)[-1].removeprefix("+").removeprefix("-"))
    if not found or not any(found.groups()[1:]):
        return None
    _, feet, inches, part, whole = found.groups()
    return 12 * int(feet or 0) + int(inches or 0) + (int(part) / int(whole) if part else 0)


def pieces(document):
    """(course, length, cut) of each block reference of a piece, as its attributes say."""
    for insert in document.modelspace().query("INSERT"):
        said = {attribute.dxf.tag: attribute.dxf.text for attribute in insert.attribs}
        if {"MARK", "LENGTH", "COURSE", "CUT"} <= said.keys():
            yield int(said["COURSE"]), said["LENGTH"], said["CUT"]


def inches(text):
    """12 3/8 as a number."""
    return float(sum(Fraction(word) for word in text.split()))


def piece_problems(said, layout, is_inch):
    """The wall sheets' attributes together are the pieces of all coursed walls: course, length to the print's rounding, cut."""
    drawn = collections.Counter((course, key(inches(length) * INCH if is_inch else float(length), is_inch), cut) for course, length, cut in said)
    wanted = collections.Counter()
    for wall in layout["walls"]:
        for course in wall.get("courses", []):
            for piece in course["pieces"]:
                if piece["kind"] != "lintel":
                    wanted[course["n"], key(piece["to"] - piece["from"], is_inch), piece["cut"]] += 1
    for what in sorted((drawn - wanted).keys() | (wanted - drawn).keys()):
        yield f"piece of course, length, cut {what}: {wanted[what]} in layout.json, {drawn[what]} on sheets"


def key(mm, is_inch):
    """Sixteenths of an inch, or tenths of a millimetre, as lengths are printed."""
    return round(mm / INCH * 16) if is_inch else round(mm * 10)
