"""Input that can't be read: exit status 3, one clear message on stderr, nothing on stdout, nothing left behind."""
import subprocess
from pathlib import Path


def problems(folder: Path, out: Path, command: list[str]):
    """Yields a line for each bad file that is not refused as the contract says."""
    for bad in [*sorted(folder.iterdir()), folder, folder / "no-such-file.ifc"]:
        target = out / bad.name
        run = subprocess.run([*command, "layout", bad, "--out", target], stdin=subprocess.DEVNULL, capture_output=True,
                             text=True, timeout=60, check=False)
        if run.returncode != 3:
            yield f"{bad.name}: exit status {run.returncode}, not 3: {run.stderr.strip()[:200]}"
        if bad.name not in run.stderr or "   at " in run.stderr or len(run.stderr) > 600:
            yield f"{bad.name}: no clear message: {run.stderr.strip()[:300]!r}"
        if run.stdout.strip():
            yield f"{bad.name}: writes to stdout: {run.stdout[:100]!r}"
        if target.exists() and any(target.rglob("*")):
            yield f"{bad.name}: leaves files behind"
