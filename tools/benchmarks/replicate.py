#!/usr/bin/env python3
"""Writes a model that holds another one N times, side by side: new instance numbers, new GlobalIds, every copy 200 m beside the one before.

    replicate.py MODEL.ifc N OUT.ifc

The project with its units and contexts is kept once. Meant for measuring; what it writes is never committed. Takes about 10 s for 100 MB.
"""
import hashlib
import re
import sys
from pathlib import Path

INSTANCE = re.compile(rb"#(\d+)\s*=\s*(\w+)\s*\((.*?)\)\s*;\s*(?=#\d+\s*=|ENDSEC)", re.S)
TOKEN = re.compile(rb"('(?:[^']|'')*')|#(\d+)")
ROOT = re.compile(rb"^\s*'[0-9A-Za-z_$]{22}'\s*,\s*[#$]")
PLACEMENT = re.compile(rb"^\s*\$\s*,\s*#(\d+)\s*$")
AXES = re.compile(rb"^\s*#(\d+)\s*,(.*)$", re.S)
DIGITS = b"0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$"
METRES = 200
PER_ROW = 16


def main():
    if len(sys.argv) != 4:
        sys.exit(__doc__)
    text = Path(sys.argv[1]).read_bytes()
    begin = text.index(b";", text.index(b"DATA")) + 1
    end = text.index(b"ENDSEC", begin)
    instances = {int(m[1]): (m[2].upper(), m[3]) for m in INSTANCE.finditer(text, begin, end + 6)}
    shared = closure(instances, [n for n, (name, _) in instances.items() if name in (b"IFCPROJECT", b"IFCOWNERHISTORY")])
    templates = [template(number, *instances[number], instances) for number in instances if number not in shared]
    last = max(instances)
    step = last + 2 * len(templates) + 1
    spacing = METRES / unit(instances)
    with open(sys.argv[3], "wb") as out:
        out.write(text[:end])
        for copy in range(1, int(sys.argv[2])):
            shift = copy * step
            at = (copy % PER_ROW * spacing, copy // PER_ROW * spacing)
            out.write(b"".join(written(t, shift + last + 2 * i + 1, shift, copy, at, shared, instances) for i, t in enumerate(templates)))
        out.write(text[end:])


def closure(instances, starts):
    """All that some instances refer to, themselves among them."""
    found, left = set(), list(starts)
    while left:
        number = left.pop()
        if number not in found and number in instances:
            found.add(number)
            left += [int(m[2]) for m in TOKEN.finditer(instances[number][1]) if m[2]]
    return found


def unit(instances):
    """Metres of the model's length unit."""
    for name, rest in instances.values():
        if name == b"IFCSIUNIT" and b".LENGTHUNIT." in rest:
            return 0.001 if b".MILLI." in rest else 0.01 if b".CENTI." in rest else 1
    return 0.3048


def template(number, name, rest, instances):
    """(number, name, pieces): texts and numbers of instances in turn; a GlobalId is None."""
    pieces, last = [], 0
    is_root = ROOT.match(rest) is not None
    for m in TOKEN.finditer(rest):
        if m[2] or (is_root and not pieces):
            pieces += [rest[last:m.start()], int(m[2]) if m[2] else None]
            last = m.end()
    moved = name == b"IFCLOCALPLACEMENT" and (m := PLACEMENT.match(rest)) and instances[int(m[1])][0] == b"IFCAXIS2PLACEMENT3D"
    return number, name, pieces, rest[last:], int(m[1]) if moved else None


def written(of, free, shift, copy, at, shared, instances):
    number, name, pieces, tail, axes = of
    if axes is not None:
        return placed(number + shift, axes, free, shift, at, shared, instances)
    parts = [b"#%d=%s(" % (number + shift, name)]
    for text, value in zip(pieces[::2], pieces[1::2]):
        parts += [text, global_id(number, copy) if value is None else b"#%d" % (value if value in shared else value + shift)]
    parts += [tail, b");\n"]
    return b"".join(parts)


def placed(number, axes, free, shift, at, shared, instances):
    """A placement of the model's own, moved; two numbers from `free` on are for its axes."""
    point, rest = AXES.match(instances[axes][1]).groups()
    where = [float(v) for v in instances[int(point)][1].strip(b" ()\r\n").split(b",")]
    rest = TOKEN.sub(lambda m: b"#%d" % (int(m[2]) if int(m[2]) in shared else int(m[2]) + shift), rest)
    point = b",".join(repr(v + d).encode() for v, d in zip(where, (*at, 0)))
    return (b"#%d=IFCCARTESIANPOINT((%s));\n#%d=IFCAXIS2PLACEMENT3D(#%d,%s);\n#%d=IFCLOCALPLACEMENT($,#%d);\n"
            % (free, point, free + 1, free, rest, number, free + 1))


def global_id(number, copy):
    bits = int.from_bytes(hashlib.sha256(b"%d %d" % (number, copy)).digest()[:16], "big")
    return b"'" + bytes([DIGITS[bits >> 126]] + [DIGITS[bits >> shift & 63] for shift in range(120, -1, -6)]) + b"'"


if __name__ == "__main__":
    main()
