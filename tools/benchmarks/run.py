#!/usr/bin/env python3
"""Times reading a model as whole programs, ours beside a peer's, in turn, and prints the ratios pair by pair.

    dotnet build -c Release tools/benchmarks/Read
    run.py --read tools/benchmarks/Read/bin/Release/net10.0/Read.dll --node FOLDER [--runs N] MODEL.ifc ...

FOLDER has web-ifc installed (npm install with tools/crosscheck/package.json). Compared are
    Read       ours: index, every wall with its openings, and junctions
    read_walls web-ifc reading the same walls and openings with their meshes, fillings and path connections
Start-up of both runtimes is included; the first run of each is not counted. A ratio under 1 says that ours took less time.
"""
import argparse
import os
import statistics
import subprocess
import sys
import time
from pathlib import Path


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--read", type=Path, required=True)
    parser.add_argument("--node", type=Path, required=True)
    parser.add_argument("--runs", type=int, default=7)
    parser.add_argument("models", type=Path, nargs="+")
    arguments = parser.parse_args()
    print(f"{os.cpu_count()} processors, load {os.getloadavg()[0]:.1f}, {arguments.runs} runs each; least / median / largest")
    print(f"{'model':48} {'MB':>5} {'ours s':>18} {'web-ifc s':>18} {'ratio of times':>18} {'ratio of cpu':>18}")
    for model in arguments.models:
        print_row(model, arguments)
    return 0


def print_row(model, arguments):
    ours = ["dotnet", arguments.read.resolve(), model]
    peer = ["node", Path(__file__).parent / "read_walls.mjs", arguments.node.resolve(), model]
    pairs = [(timed(ours), timed(peer)) for _ in range(arguments.runs + 1)][1:]
    times = [[a[0] for a, _ in pairs], [b[0] for _, b in pairs], [a[0] / b[0] for a, b in pairs], [a[1] / b[1] for a, b in pairs]]
    cells = " ".join(f"{' / '.join(f'{v:.2f}' for v in (min(t), statistics.median(t), max(t))):>18}" for t in times)
    print(f"{model.name:48} {model.stat().st_size / 1e6:5.1f} {cells}", flush=True)


def timed(command):
    """(seconds, seconds of processor time) of one whole process."""
    began = time.perf_counter()
    process = subprocess.Popen(command, stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    _, status, usage = os.wait4(process.pid, 0)
    seconds = time.perf_counter() - began
    if os.waitstatus_to_exitcode(status) != 0:
        sys.exit(f"{command[1]} ends with {os.waitstatus_to_exitcode(status)}")
    return seconds, usage.ru_utime + usage.ru_stime


if __name__ == "__main__":
    sys.exit(main())
