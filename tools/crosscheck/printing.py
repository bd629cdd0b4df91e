"""DXF files printed by a CAD program: LibreCAD's own reader, which takes what it can't read for a reason to stop."""
import os
import shutil
import subprocess
import tempfile
from pathlib import Path

LIMIT = 300  # seconds for one file
LEAST = 10_000  # bytes: a page with only a frame takes less


def problems_of(files: list[Path]):
    """Yields a line for every file that is not printed. LibreCAD's exit status says nothing: the PDF counts."""
    if shutil.which("librecad") is None:
        yield "LibreCAD is not here"
        return
    for file in files:
        with tempfile.TemporaryDirectory() as folder:
            run = subprocess.run(["librecad", "dxf2pdf", "-a", "-t", folder, file], stdin=subprocess.DEVNULL, capture_output=True, text=True, check=False,
                                 timeout=LIMIT, env={**os.environ, "QT_QPA_PLATFORM": "offscreen", "XDG_RUNTIME_DIR": folder})
            printed = Path(folder) / f"{file.stem}.pdf"
            if not printed.is_file() or printed.stat().st_size < LEAST:
                yield f"{file.name}: LibreCAD prints nothing: {(run.stdout + run.stderr).strip()[-300:]}"


def some(files: dict[str, list[Path]], kind: str):
    """Of a fixture its sets, of a real model the first sheet of either set."""
    return [file for written in files.values() for file in (written if kind == "fixture" else written[:1])]
