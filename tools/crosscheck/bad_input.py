"""Input that can't be read: exit status 3, one clear message on stderr, nothing on stdout, nothing left behind.
A reference to an instance that is not in the file does not make the rest unreadable: there the wall and the number are named."""
import json
import subprocess
from pathlib import Path

BROKEN_REFERENCE = "missing-id.ifc"


def problems(folder: Path, out: Path, command: list[str]):
    """Yields a line for each bad file that is not dealt with as the contract says."""
    unreadable = [bad for bad in sorted(folder.iterdir()) if bad.name != BROKEN_REFERENCE]
    for bad in [*unreadable, folder, folder / "no-such-file.ifc"]:
        yield from (f"{bad.name}: {text}" for text in refused(bad, out / bad.name, command))
    yield from (f"{BROKEN_REFERENCE}: {text}" for text in named(folder / BROKEN_REFERENCE, out / BROKEN_REFERENCE, command))


def refused(bad: Path, target: Path, command: list[str]):
    run = lay_out(bad, target, command)
    if run.returncode != 3:
        yield f"exit status {run.returncode}, not 3: {run.stderr.strip()[:200]}"
    if bad.name not in run.stderr or "   at " in run.stderr or len(run.stderr.strip().splitlines()) != 1:
        yield f"no single clear message: {run.stderr.strip()[:300]!r}"
    if run.stdout.strip():
        yield f"writes to stdout: {run.stdout[:100]!r}"
    if target.exists() and any(target.rglob("*")):
        yield "leaves files behind"


def named(bad: Path, target: Path, command: list[str]):
    run = lay_out(bad, target, command)
    if run.returncode != 0:
        yield f"exit status {run.returncode}: {run.stderr.strip()[:200]}"
        return
    layout = json.loads((target / "layout.json").read_text(encoding="utf-8"))
    if [wall["status"] for wall in layout["walls"]] != ["skipped"]:
        yield "the wall without a body is not listed as skipped"
    if not any("is not in the file" in finding["message"] for finding in layout["findings"]):
        yield "no finding names the missing instance"


def lay_out(bad: Path, target: Path, command: list[str]):
    return subprocess.run([*command, "layout", bad, "--out", target], stdin=subprocess.DEVNULL, capture_output=True,
                          text=True, timeout=60, check=False)
