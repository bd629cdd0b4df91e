"""Words of the PDF sheets that lie over each other or past the frame, as poppler measures them with the embedded font."""
import html
import re
import subprocess
from pathlib import Path

PAGE = re.compile(r'<page width="([\d.]+)" height="([\d.]+)">')
WORD = re.compile(r'<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)</word>')
# Of the font's line, DejaVu Sans: 0.928 em over and 0.236 em under the base line; capitals and digits are 0.729 em high.
OVER, UNDER = (0.928 - 0.729) / 1.164, 0.236 / 1.164
SHORT = 3
# Points: what two boxes must share both ways to count.
SHARED = 0.3
MARGIN, FILING = 10 * 72 / 25.4, 20 * 72 / 25.4


def problems_of(file: Path):
    """Yields a line for every pair of words that share room, and every word outside the frame."""
    text = subprocess.run(["pdftotext", "-bbox", file, "-"], capture_output=True, text=True, check=True).stdout
    page, size, words = 0, None, []
    for line in text.splitlines():
        if found := PAGE.search(line):
            yield from on_page(file.name, page, size, words)
            page, size, words = page + 1, tuple(map(float, found.groups())), []
        elif found := WORD.search(line):
            word = html.unescape(found.group(5))
            words.append((*letters(*map(float, found.groups()[:4]), word), word))
    yield from on_page(file.name, page, size, words)


def letters(left, top, right, bottom, word):
    """The room of the letters themselves: without what the font keeps over and under them. Upright words read upwards; which way a short one reads its box does not tell."""
    width, height = right - left, bottom - top
    if len(word) <= SHORT:
        return left + UNDER * width, top + UNDER * height, right - UNDER * width, bottom - UNDER * height
    if height > width:
        return left + OVER * width, top, right - UNDER * width, bottom
    return left, top + OVER * height, right, bottom - UNDER * height


def on_page(name, page, size, words):
    words = sorted(words)
    for i, (left, top, right, bottom, word) in enumerate(words):
        if left < FILING - 0.5 or top < MARGIN - 0.5 or right > size[0] - MARGIN + 0.5 or bottom > size[1] - MARGIN + 0.5:
            yield f"{name} page {page}: {word!r} leaves the frame"
        for other in words[i + 1:]:
            if other[0] > right - SHARED:
                break
            if min(bottom, other[3]) - max(top, other[1]) > SHARED:
                yield f"{name} page {page}: {word!r} and {other[4]!r} overlap"
