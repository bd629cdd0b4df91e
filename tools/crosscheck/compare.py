#!/usr/bin/env python3
"""Compare from outside: a house is changed by editing its STEP file, its job or its rules, one thing at a time; that must be found and nothing else.

    compare.py --command DLL --fixtures FOLDER --work FOLDER

Exit status 1 where a problem was found.
"""
import argparse
import json
import random
import re
import shutil
import subprocess
import sys
from pathlib import Path

HOUSE = "ifc/sorrel/sorrel.ifc"
HOUSE_WITH_BARS = "ifc/yarrow/yarrow.ifc"
INSTANCE = re.compile(r"^#(\d+)=(\w+)\((.*)\);$")

# What a moved, resized or missing opening or wall does to the bond of its wall, or of a wall that it meets.
FOLLOWS = {"pieces", "lintels", "bars", "bond-beams", "opening-placed"}


class Model:
    """A STEP file whose instances stand one to a line."""

    def __init__(self, text):
        self.head, data, self.tail = re.match(r"(.*?\nDATA;\n)(.*?)(\nENDSEC;\nEND-ISO.*)", text.replace("\r\n", "\n"), re.DOTALL).groups()
        self.lines = {int(m[1]): [m[2], m[3]] for m in map(INSTANCE.match, data.split("\n"))}

    def text(self):
        return self.head + "\n".join(f"#{number}={kind}({rest});" for number, (kind, rest) in self.lines.items()) + self.tail

    def named(self, name):
        return next(number for number, (_, rest) in self.lines.items() if re.match(rf"'[^']{{22}}',\$,'{re.escape(name)}'", rest))

    def reachable(self, number, kind):
        """The first instance of a kind on the way down from one."""
        seen, open_ = set(), [number]
        while open_:
            one = open_.pop(0)
            if self.lines[one][0] == kind:
                return one
            seen.add(one)
            open_ += [int(ref) for ref in re.findall(r"#(\d+)", self.lines[one][1]) if int(ref) not in seen]
        raise KeyError(kind)

    def replace(self, number, old, new):
        assert old in self.lines[number][1], (self.lines[number], old)
        self.lines[number][1] = self.lines[number][1].replace(old, new, 1)

    def remove(self, number):
        """An instance, out of lists too; relations that are left without it go as well."""
        del self.lines[number]
        for other, (kind, rest) in list(self.lines.items()):
            if other not in self.lines or not re.search(rf"#{number}\b", rest):
                continue
            shorter = re.sub(rf"(?<=[(,])#{number},|,#{number}(?=\))", "", rest)
            if re.search(rf"#{number}\b", shorter):
                assert kind.startswith("IFCREL"), (number, kind, rest)
                self.remove(other)
            else:
                self.lines[other][1] = shorter


    def leave_out(self, number, *kinds):
        """An instance, of relations of these kinds that others are in too."""
        for line in self.lines.values():
            if line[0] in kinds:
                line[1] = re.sub(rf"(?<=[(,])#{number},|,#{number}(?=\))", "", line[1])


def exported_again(model):
    """Other instance numbers in another order."""
    chance = random.Random(9)
    numbers = list(model.lines)
    others = dict(zip(numbers, chance.sample(range(10_000, 100_000), len(numbers))))
    lines = []
    for number, (kind, rest) in model.lines.items():
        rest = re.sub(r"#(\d+)", lambda m: f"#{others[int(m[1])]}", rest)
        lines.append((others[number], [kind, rest]))
    chance.shuffle(lines)
    model.lines = dict(lines)


def opening_moved(model):
    placement = model.reachable(model.named("Kitchen window"), "IFCLOCALPLACEMENT")
    model.replace(model.reachable(int(model.lines[placement][1].split("#")[2]), "IFCCARTESIANPOINT"), "3960.", "4210.")


def opening_removed(model):
    model.remove(model.named("Kitchen window"))


def wall_removed(model):
    model.remove(model.named("Ground pantry"))


def wall_moved(model):
    placement = model.reachable(model.named("Ground pantry"), "IFCLOCALPLACEMENT")
    point = model.reachable(int(model.lines[placement][1].split("#")[2]), "IFCCARTESIANPOINT")
    x, y, z = model.lines[point][1].strip("()").split(",")
    model.lines[point][1] = f"({x},{float(y) + 500},{z})"


def wall_higher(model):
    model.replace(model.reachable(model.named("Ground pantry"), "IFCEXTRUDEDAREASOLID"), "2750.", "2500.")


def wall_renamed(model):
    model.replace(model.named("Ground pantry"), "'Ground pantry'", "'Larder'")


def opening_lower(model):
    model.replace(model.reachable(model.named("Kitchen window"), "IFCRECTANGLEPROFILEDEF"), "1251.", "1001.")


def wall_of_no_masonry(model):
    model.leave_out(model.named("Ground pantry"), "IFCRELASSOCIATESMATERIAL", "IFCRELDEFINESBYTYPE")


def wall_of_other_storey(model):
    wall = model.named("Ground pantry")
    model.leave_out(wall, "IFCRELCONTAINEDINSPATIALSTRUCTURE")
    model.lines[max(model.lines) + 1] = ["IFCRELCONTAINEDINSPATIALSTRUCTURE", f"'3oRtKMKoSvNkU8WBlrzRNZ',$,$,$,(#{wall}),#{model.named('Upper floor')}"]


def wall_thicker(model):
    """Of the next block of the catalog, with the same left face and the same plaster."""
    wall = model.named("Ground pantry")
    profile = model.reachable(wall, "IFCRECTANGLEPROFILEDEF")
    model.replace(model.reachable(profile, "IFCCARTESIANPOINT"), ",0.)", ",-17.5)")
    model.replace(profile, ",135.", ",170.")
    model.leave_out(wall, "IFCRELASSOCIATESMATERIAL")
    plaster = next(number for number, (kind, rest) in model.lines.items() if kind == "IFCMATERIALLAYER" and "'Gypsum plaster 10'" in rest)
    last = max(model.lines)
    model.lines |= {
        last + 1: ["IFCMATERIAL", "'Aerated concrete block 150',$,$"],
        last + 2: ["IFCMATERIALLAYER", f"#{last + 1},150.,$,'Aerated concrete block 150',$,$,$"],
        last + 3: ["IFCMATERIALLAYERSET", f"(#{plaster},#{last + 2},#{plaster}),'Partition 170',$"],
        last + 4: ["IFCMATERIALLAYERSETUSAGE", f"#{last + 3},.AXIS2.,.POSITIVE.,-102.5,$"],
        last + 5: ["IFCRELASSOCIATESMATERIAL", f"'1Qw7M9BcvA1b79nPjgUvvj',$,$,$,(#{wall}),#{last + 4}"],
    }


def other_ids(model):
    """Walls and openings with other GlobalIds that stand in the same order, for that decides between equal bonds."""
    for line in model.lines.values():
        if line[0] in ("IFCWALLSTANDARDCASE", "IFCWALL", "IFCOPENINGELEMENT"):
            line[1] = f"{line[1][:22]}{'1' if line[1][22] != '1' else '2'}{line[1][23:]}"


# What is done, the wall it is done to, what must be found there, walls that it meets (in the drawing of the house).
CHANGES = [
    (opening_moved, "Ground south", "opening-moved", []),
    (opening_removed, "Ground south", "opening-removed", []),
    (wall_moved, "Ground pantry", "moved", ["Ground hall", "Ground east"]),
    (wall_higher, "Ground pantry", "outline", ["Ground hall", "Ground east"]),
    (wall_renamed, "Larder", "renamed", []),
    (opening_lower, "Ground south", "opening-moved", []),
    (wall_of_no_masonry, "Ground pantry", "skipped", ["Ground hall", "Ground east"]),
    (wall_of_other_storey, "Ground pantry", "storey", ["Ground hall", "Ground east"]),
]


def problems(command, fixtures, work):
    """Yields what is wrong, a line each."""
    shutil.rmtree(work, ignore_errors=True)
    work.mkdir(parents=True)
    text = (fixtures / HOUSE).read_text()
    as_drawn = laid_out(command, work, "as-drawn", text)
    again = laid_out(command, work, "again", changed(text, exported_again))
    found = compared(command, as_drawn, again)
    yield from (f"exported again: {key} is not empty" for key in ("added", "removed", "changed", "superseded", "order") if found[key])
    found = compared(command, as_drawn, laid_out(command, work, other_ids.__name__, changed(text, other_ids)))
    yield from (f"other ids: {key} is not empty" for key in ("added", "removed", "changed", "superseded", "order") if found[key])
    kept = compared(command, as_drawn, laid_out(command, work, "openings-kept", text, "--openings", "keep"))
    moved = {wall["name"] for wall in json.loads(as_drawn.read_text())["walls"] if any(opening["placed"] != opening["design"] for opening in wall.get("openings", []))}
    if not moved or moved != {one["name"] for one in kept["changed"] if "opening-placed" in one["what"]} or any(set(one["what"]) - FOLLOWS for one in kept["changed"]):
        yield f"openings kept: moved in {sorted(moved)}, said to be placed elsewhere in {[(one['name'], one['what']) for one in kept['changed']]}"
    for change, wall, what, neighbours in CHANGES:
        newer = laid_out(command, work, change.__name__, changed(text, change))
        yield from one_change(change.__name__, compared(command, as_drawn, newer), wall, what, neighbours)
        if change is opening_removed:
            yield from one_change("opening_added", compared(command, newer, as_drawn), wall, "opening-added", neighbours)
        if change is wall_of_no_masonry:
            yield from one_change("wall_of_masonry", compared(command, newer, as_drawn), wall, "laid-out", neighbours)
    yield from alone("thickness", compared(command, as_drawn, laid_out(command, work, wall_thicker.__name__, changed(text, wall_thicker))), {"Ground pantry"}, set())
    job = work / "joint.toml"
    job.write_text('[[wall]]\nname = "Ground north"\nmovement-joints = ["3.5 m"]\n')
    jointed = laid_out(command, work, "jointed", text, "--job", job)
    for older, newer in ((as_drawn, jointed), (jointed, as_drawn)):
        yield from alone("movement-joints", compared(command, older, newer), {"Ground north"}, FOLLOWS)
    yield from bars_alone(command, fixtures, work)
    newer = laid_out(command, work, wall_removed.__name__, changed(text, wall_removed))
    yield from come_or_gone("wall removed", compared(command, as_drawn, newer), "removed", "added", as_drawn)
    yield from come_or_gone("wall added", compared(command, newer, as_drawn), "added", "removed", as_drawn)


def one_change(name, found, wall, what, neighbours):
    if found["added"] or found["removed"]:
        yield f"{name}: walls come or go: {found['added']} {found['removed']}"
    own = [one for one in found["changed"] if one["name"] == wall]
    if len(own) != 1 or what not in own[0]["what"]:
        yield f"{name}: {what} of {wall} is not found, but {[(one['name'], one['what']) for one in found['changed']]}"
        return
    if extra := set(own[0]["what"]) - {what} - FOLLOWS:
        yield f"{name}: {wall} is said to have changed in {sorted(extra)} too"
    for other in found["changed"]:
        if other is not own[0] and (other["name"] not in neighbours or set(other["what"]) - FOLLOWS):
            yield f"{name}: {other['name']} is said to have changed in {other['what']}"
    yield from costs(name, found)


def bars_alone(command, fixtures, work):
    """The next size of upright bars, in every wall that has any; they stand where they stood, so that no piece changes."""
    text = (fixtures / HOUSE_WITH_BARS).read_text()
    given = subprocess.run([*command, "catalog", "show", "us"], stdin=subprocess.DEVNULL, capture_output=True, text=True, check=True).stdout
    rules = work / "larger-bars.toml"
    rules.write_text(re.sub(r'(\n\[bars\]\n.*?\nbar = )"No. 4"', r'\1"No. 5"', given, count=1, flags=re.DOTALL))
    older, newer = laid_out(command, work, "bars", text), laid_out(command, work, "larger-bars", text, "--rules", rules)
    walls = {wall["name"] for wall in json.loads(older.read_text())["walls"] if wall.get("cores")}
    yield from alone("bars", compared(command, older, newer), walls, set())


def alone(what, found, walls, follows):
    """These walls have changed in this, perhaps in what follows from it, and no other wall has changed."""
    if found["added"] or found["removed"] or not walls or {one["name"] for one in found["changed"]} != walls:
        yield f"{what}: {sorted(walls)} should have changed, but {[(one['name'], one['what']) for one in found['changed']]}, {found['added']}, {found['removed']}"
    yield from (f"{what}: {one['name']} is said to have changed in {one['what']}" for one in found["changed"] if what not in one["what"] or set(one["what"]) - {what} - follows)
    yield from costs(what, found)


def come_or_gone(name, found, key, other, as_drawn):
    names = {wall["globalId"]: wall["name"] for wall in json.loads(as_drawn.read_text())["walls"]}
    if [names[wall] for wall in found[key]] != ["Ground pantry"] or found[other]:
        yield f"{name}: {key} {found[key]}, {other} {found[other]}"
    yield from (f"{name}: {one['name']} is said to have changed in {one['what']}" for one in found["changed"]
                if one["name"] not in ("Ground hall", "Ground east") or set(one["what"]) - FOLLOWS)


def costs(name, found):
    """Where no wall comes or goes, what the walls cost adds up to what the totals change by."""
    for key, sums in found["totals"].items():
        if key != "pieces" and sum(one["cost"][key] for one in found["changed"]) != sums["new"] - sums["old"]:
            yield f"{name}: the walls' cost in {key} is not what the totals change by"


def changed(text, change):
    model = Model(text)
    change(model)
    return model.text()


def laid_out(command, work, name, text, *options):
    folder = work / name
    folder.mkdir()
    (folder / "house.ifc").write_text(text)
    subprocess.run([*command, "layout", folder / "house.ifc", "--out", folder / "out", "--formats", "json", "--quiet", *options], stdin=subprocess.DEVNULL, check=True)
    return folder / "out" / "layout.json"


def compared(command, older, newer):
    page = newer.parent / f"{older.parent.parent.name}.html"
    done = subprocess.run([*command, "compare", older, newer, "--json", "--html", page], stdin=subprocess.DEVNULL, capture_output=True, text=True, check=True)
    assert page.stat().st_size > 0
    return json.loads(done.stdout)


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    for name in ("--command", "--fixtures", "--work"):
        parser.add_argument(name, type=lambda text: Path(text).resolve(), required=True)
    arguments = parser.parse_args()
    found = list(problems(["dotnet", str(arguments.command)], arguments.fixtures, arguments.work))
    for problem in found:
        print(f"PROBLEM: {problem}")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
