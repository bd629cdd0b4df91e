"""An IDS 1.0 checker for what our two files use, and the rules of its published schema (ids.xsd) that they must keep.

Facets as the IDS 1.0 documentation has them: entity (exact upper-case names), partOf, property with data type and value in SI units,
material. What a file uses beyond that is a problem, so nothing is passed over unread."""
import json
import re
import subprocess
import xml.etree.ElementTree as xml
from pathlib import Path

IDS = "{http://standards.buildingsmart.org/IDS}"
XS = "{http://www.w3.org/2001/XMLSchema}"
INFO = ["title", "copyright", "version", "description", "author", "date", "purpose", "milestone"]
FACETS = ["entity", "partOf", "classification", "attribute", "property", "material"]
CHILDREN = {"entity": ["name", "predefinedType"], "partOf": ["entity"], "property": ["propertySet", "baseName", "value"], "material": ["value"]}
RELATIONS = ["IFCRELAGGREGATES", "IFCRELASSIGNSTOGROUP", "IFCRELCONTAINEDINSPATIALSTRUCTURE", "IFCRELNESTS", "IFCRELVOIDSELEMENT IFCRELFILLSELEMENT"]
VERSIONS = {"IFC2X3", "IFC4", "IFC4X3_ADD2"}


CATALOG = "aac-mm"


def write_and_check(folder: Path, command: list[str]):
    """Writes the files that the project ships with and holds them to their schema."""
    subprocess.run([*command, "catalog", "ids", CATALOG, "--out", folder, "--quiet"], capture_output=True, text=True, check=True)
    files = sorted(folder.glob("*.ids"))
    problems = [] if len(files) == 2 else [f"{len(files)} IDS files, not two"]
    return problems + [f"{file.name}: {text}" for file in files for text in schema_problems(file)]


def coursed_problems(folder: Path, model: Path, coursed: Path, node: Path):
    """Yields where the coursed model fails its IDS file, or the plain one passes it."""
    ids = folder / "coursed-model.ids"
    for name, reason in failures(ids, facts(coursed, node)).items():
        yield f"{coursed.name} fails {ids.name}: {name}: {reason}"
    if set(failures(ids, facts(model, node))) != {"Every wall says what became of it"}:
        yield f"{model.name} was never coursed and should fail {ids.name} for its walls alone"


def width_problems(folder: Path, model: Path, node: Path):
    """Yields where the file of what a model needs lets one without widths, or with walls thinner than any block, pass, or fails a complete one."""
    ids, lacking = folder / f"model-for-{CATALOG}.ids", {"Walls of the catalog's masonry have a width"}
    for width, expected in ((None, lacking), (0.24, set()), (0.02, lacking)):
        elements = facts(model, node)
        for element in elements:
            if width is not None and element["type"].startswith("IFCWALL"):
                element["sets"]["Qto_WallBaseQuantities"] = {"Width": ["IFCLENGTHMEASURE", width]}
        if set(failures(ids, elements)) != expected:
            yield f"{ids.name} on {model.name} with widths {width}: fails {sorted(failures(ids, elements))}"


def facts(model: Path, node: Path):
    run = subprocess.run(["node", node / "ids_facts.mjs", model], capture_output=True, text=True, check=True)
    return [json.loads(line) for line in run.stdout.splitlines()]


def failures(ids: Path, elements):
    """Names of the specifications that do not hold, with the first reason."""
    failed = {}
    for spec in xml.parse(ids).getroot().iter(IDS + "specification"):
        applicable, required = spec.find(IDS + "applicability"), spec.find(IDS + "requirements")
        chosen = [element for element in elements if all(holds(facet, element) for facet in applicable)]
        if len(chosen) < int(applicable.get("minOccurs", "0")):
            failed[spec.get("name")] = "nothing that it applies to"
        for element in chosen:
            for facet in required:
                if not holds(facet, element):
                    failed.setdefault(spec.get("name"), f"{element['type']} {element['guid']}: {tag(facet)} {''.join(facet.itertext()).split()}")
    return failed


def holds(facet, element):
    match tag(facet):
        case "entity":
            return fits(facet.find(IDS + "name"), element["type"])
        case "partOf":
            return any(fits(facet.find(f"{IDS}entity/{IDS}name"), whole) for whole in element["partOf"][facet.get("relation")])
        case "material":
            value = facet.find(IDS + "value")
            return any(value is None or fits(value, name) for name in element["materials"])
        case "property":
            value = facet.find(IDS + "value")
            # Every set whose name fits must hold it, and there must be one.
            sets = [content for name, content in element["sets"].items() if fits(facet.find(IDS + "propertySet"), name)]
            found = [content.get(facet.findtext(f"{IDS}baseName/{IDS}simpleValue")) for content in sets]
            return bool(found) and all(
                item is not None and item[0] == facet.get("dataType") and (value is None or fits(value, item[1])) for item in found)
        case other:
            raise ValueError(f"facet {other} is not read")


def fits(value, actual):
    simple = value.findtext(IDS + "simpleValue")
    if simple is not None:
        return simple == str(actual)
    rules = list(value.find(XS + "restriction"))
    listed = [rule.get("value") for rule in rules if rule.tag == XS + "enumeration"]
    for rule in rules:
        kind, limit = rule.tag.removeprefix(XS), rule.get("value")
        if kind == "pattern" and not re.fullmatch(translated(limit), str(actual)):
            return False
        if kind == "minInclusive" and float(actual) < float(limit) * (1 - 1e-6) - 1e-6:
            return False
        if kind not in ("pattern", "minInclusive", "enumeration"):
            raise ValueError(f"restriction {kind} is not read")
    return not listed or str(actual) in listed


def translated(pattern):
    """Python has no classes of Unicode categories: letters, what is none, small letters, and neither letter nor digit."""
    return (pattern.replace(r"[^\p{L}\p{N}]", r"[\W_]").replace(r"\P{L}", r"[\W\d_]").replace(r"\p{Ll}", "[a-zà-öø-ÿа-я]"))


def schema_problems(ids: Path):
    """Yields where a file breaks the published schema ids.xsd; each rule by its type there."""
    root = xml.parse(ids).getroot()
    if root.tag != IDS + "ids" or [tag(child) for child in root] != ["info", "specifications"]:
        yield "ids: info and specifications, in this order"
        return
    yield from order(root[0], INFO, "info")
    if root[0].find(IDS + "title") is None or not re.fullmatch(r"[^@]+@[^\.]+\..+", root[0].findtext(IDS + "author", "a@b.c")):
        yield "info: a title, and an author that is an e-mail address"
    if len(root[1]) == 0:
        yield "specificationsType: at least one"
    for spec in root[1]:
        if not spec.get("name") or not set(spec.get("ifcVersion", "-").split()) <= VERSIONS:
            yield "specificationType: name, and versions of the list"
        if set(spec.attrib) - {"name", "ifcVersion", "identifier", "description", "instructions"}:
            yield "specificationType: an attribute it does not have"
        yield from order(spec, ["applicability", "requirements"], "specificationType")
        yield from order(spec[0], FACETS, "applicabilityType")
        if set(spec[0].attrib) - {"minOccurs", "maxOccurs"}:
            yield "applicabilityType: xs:occurs only"
        for part in spec:
            for facet in part:
                yield from facet_problems(facet, part is spec[0])


def facet_problems(facet, is_applicability):
    name = tag(facet)
    own = {"property": {"dataType", "uri"}, "partOf": {"relation"}, "material": {"uri"}, "entity": set()}[name]
    if set(facet.attrib) - own - (set() if is_applicability else {"cardinality", "instructions"}):
        yield f"{name}Type: an attribute it does not have"
    yield from order(facet, CHILDREN[name], name + "Type")
    if name == "partOf" and facet.get("relation") not in RELATIONS:
        yield "relations: not of the list"
    if name == "property" and not re.fullmatch("[A-Z]+", facet.get("dataType", "")):
        yield "upperCaseName: a data type in capitals"
    for value in facet.iter():
        if tag(value) in ("name", "value", "propertySet", "baseName") and [child.tag for child in value] not in ([IDS + "simpleValue"], [XS + "restriction"]):
            yield "idsValue: one simpleValue or one restriction"


def order(element, names, what):
    places = [names.index(tag(child)) if tag(child) in names else -1 for child in element]
    if -1 in places or places != sorted(places):
        yield f"{what}: {[tag(child) for child in element]} is not in the order {names}"


def tag(element):
    return element.tag.removeprefix(IDS)
