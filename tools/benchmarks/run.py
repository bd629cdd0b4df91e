#!/usr/bin/env python3
"""Times whole commands on real models, ours beside a peer's, and prints the ratio of the medians.

    run.py --command DLL --node FOLDER [--runs N] MODEL.ifc ...

FOLDER holds tools/crosscheck's scripts with web-ifc installed. Compared are
    check     ifccourser check MODEL (reads every wall, its openings and junctions, and judges the openings)
    listing   web-ifc listing the same walls with their openings, property sets and meshes
and the layout command alone. A ratio under 1 says that ours took less time. Start-up of both runtimes is included.
"""
import argparse
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--command", type=Path, required=True)
    parser.add_argument("--node", type=Path, required=True)
    parser.add_argument("--runs", type=int, default=5)
    parser.add_argument("models", type=Path, nargs="+")
    arguments = parser.parse_args()
    ours = ["dotnet", arguments.command.resolve()]
    print(f"{'model':46} {'MB':>6} {'check s':>8} {'web-ifc s':>9} {'ratio':>6} {'layout s':>8}")
    for model in arguments.models:
        with tempfile.TemporaryDirectory() as out:
            check = median([*ours, "check", model, "--out", out, "--quiet"], arguments.runs)
            layout = median([*ours, "layout", model, "--out", out, "--quiet", "--walls", "all", "--width", "any"], arguments.runs)
        peer = median(["node", arguments.node.resolve() / "list_walls.mjs", model], arguments.runs)
        size = model.stat().st_size / 1e6
        print(f"{model.name:46} {size:6.1f} {check:8.2f} {peer:9.2f} {check / peer:6.2f} {layout:8.2f}", flush=True)
    return 0


def median(command, runs):
    times = []
    for _ in range(runs):
        began = time.perf_counter()
        run = subprocess.run(command, stdin=subprocess.DEVNULL, capture_output=True, check=False)
        times.append(time.perf_counter() - began)
        # check ends with 1 where openings are off the module
        if run.returncode not in (0, 1):
            sys.exit(f"{command[1]} ends with {run.returncode}: {run.stderr.decode(errors='replace')[:300]}")
    return statistics.median(times)


if __name__ == "__main__":
    sys.exit(main())
