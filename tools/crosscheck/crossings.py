"""Lines of the PDF sheets that run through words: words as poppler measures them with the embedded font, lines as they stand in the pages' content (ISO 32000-1, tables 59 and 60)."""
import collections
import html
import re
import subprocess
from pathlib import Path

import overlaps

CONTENT = re.compile(rb"%% Contents for page (\d+)\n.*?stream\n(.*?)endstream", re.S)
# Points: a line's middle must come so far into a word's letters to count.
INTO = 0.2
CELL = 20
# Points of a Bezier curve; those of ours are quarter turns at most.
PARTS = 16


def problems_of(file: Path):
    """Yields a line for every word that a stroke runs through. Filled faces are not looked at, nor pages whose unit is not the point."""
    shown = subprocess.run(["qpdf", "--qdf", "--object-streams=disable", file, "-"], capture_output=True, check=True).stdout
    told = subprocess.run(["pdftotext", "-bbox", file, "-"], capture_output=True, text=True, check=True).stdout
    pages = told.split("<page ")[1:]
    contents = {int(number): content.decode("latin-1") for number, content in CONTENT.findall(shown)}
    if len(contents) != len(pages):
        yield f"{file.name}: {len(contents)} pages with content, {len(pages)} with words"
        return
    for number, page in enumerate(pages, 1):
        width, height = (float(re.search(rf'{side}="([\d.]+)"', page).group(1)) for side in ("width", "height"))
        if max(width, height) < 14400:
            yield from (f"{file.name} page {number}: a line runs through {word!r}" for word in on_page(page, height, contents[number]))


def on_page(page, height, content):
    cells = collections.defaultdict(list)
    lines, starts = drawn(content)
    for found in overlaps.WORD.finditer(page):
        word, given = html.unescape(found.group(5)), list(map(float, found.groups()[:4]))
        if joins(given, height, starts):
            continue
        left, top, right, bottom = overlaps.letters(*given, word)
        box = (left + INTO, height - bottom + INTO, right - INTO, height - top - INTO, word)
        for x in range(int(box[0] // CELL), int(box[2] // CELL) + 1):
            for y in range(int(box[1] // CELL), int(box[3] // CELL) + 1):
                cells[x, y].append(box)
    crossed = {}
    for (x1, y1), (x2, y2) in lines:
        for x in range(int(min(x1, x2) // CELL), int(max(x1, x2) // CELL) + 1):
            for y in range(int(min(y1, y2) // CELL), int(max(y1, y2) // CELL) + 1):
                for box in cells.get((x, y), ()):
                    if passes(box, x1, y1, x2, y2):
                        crossed[box] = box[4]
    return sorted(crossed.values())


def joins(box, height, starts):
    """Whether poppler made one word of several texts, as of the letters of two pieces above each other: lines between them are in its box."""
    left, top, right, bottom = box
    return sum(left - INTO <= x <= right + INTO and height - bottom - INTO <= y <= height - top + INTO for x, y in starts) > 1


def passes(box, x1, y1, x2, y2):
    """Whether part of a straight line lies in a box (Liang and Barsky, 1984)."""
    first, last = 0.0, 1.0
    for step, room in ((x1 - x2, x1 - box[0]), (x2 - x1, box[2] - x1), (y1 - y2, y1 - box[1]), (y2 - y1, box[3] - y1)):
        if step == 0:
            if room <= 0:
                return False
        elif step < 0:
            first = max(first, room / step)
        else:
            last = min(last, room / step)
    return first < last


def drawn(content):
    """Straight pieces of all stroked paths, and where texts start; points of the page."""
    matrix, kept, path, start, at, stack = (1, 0, 0, 1, 0, 0), [], [], None, None, []
    lines, starts, before = [], [], ""
    for token in content.split():
        if token[0] in "-.0123456789":
            stack.append(float(token)) if token.strip("-.0123456789") == "" else stack.clear()
            continue
        if token == "m":
            start = at = tuple(stack[-2:])
        elif token == "l":
            path.append((at, tuple(stack[-2:])))
            at = tuple(stack[-2:])
        elif token == "c":
            for point in curve(at, *stack[-6:]):
                path.append((at, point))
                at = point
        elif token == "h":
            path.append((at, start))
            at = start
        elif token == "q":
            kept.append(matrix)
        elif token == "Q":
            matrix = kept.pop()
        elif token == "cm":
            matrix = times(stack[-6:], matrix)
        elif token == "S":
            lines += [(placed(matrix, a), placed(matrix, b)) for a, b in path]
            path = []
        elif token in ("f*", "f", "n"):
            path = []
        elif token == "Tm":
            text = placed(matrix, stack[-2:])
        elif token == "Tj" and before != "()":
            starts.append(text)
        before = token
        stack.clear()
    return lines, starts


def curve(at, x1, y1, x2, y2, x3, y3):
    for i in range(1, PARTS + 1):
        t, u = i / PARTS, 1 - i / PARTS
        yield tuple(u ** 3 * a + 3 * u * u * t * b + 3 * u * t * t * c + t ** 3 * d for a, b, c, d in ((at[0], x1, x2, x3), (at[1], y1, y2, y3)))


def times(one, other):
    a, b, c, d, e, f = one
    g, h, i, j, k, m = other
    return a * g + b * i, a * h + b * j, c * g + d * i, c * h + d * j, e * g + f * i + k, e * h + f * j + m


def placed(matrix, point):
    a, b, c, d, e, f = matrix
    return a * point[0] + c * point[1] + e, b * point[0] + d * point[1] + f
