"""The pages of the houses, and of an invented model of many walls, in a real browser: page.mjs."""
import subprocess
from pathlib import Path

import many_walls

WALLS = 500


def problems(houses: list[Path], work: Path, tools):
    """Prints how soon each page can be used; yields a line for every problem."""
    work.mkdir(parents=True, exist_ok=True)
    model, many = work / "many.ifc", work / "many"
    many_walls.write(model, WALLS)
    subprocess.run([*tools.command, "layout", model, "--out", many, "--quiet", "--walls", "all", "--width", "any", "--formats", "json,html"],
                   stdin=subprocess.DEVNULL, check=True)
    run = subprocess.run(["node", tools.node / "page.mjs", *houses, many], stdin=subprocess.DEVNULL, capture_output=True, text=True, check=False)
    print("\npages in headless Chromium, report and findings:")
    for line in run.stdout.splitlines():
        if line.startswith("PROBLEM "):
            yield line.removeprefix("PROBLEM ")
        else:
            print(line)
    if run.returncode != 0:
        yield f"page.mjs stops: {run.stderr.strip()[-300:]}"
