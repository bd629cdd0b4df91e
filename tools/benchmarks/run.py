#!/usr/bin/env python3
"""Times reading a model as whole programs, ours beside others', in turn, and prints the ratios run by run and the peak memory.

    dotnet build -c Release tools/benchmarks/Read
    run.py --read tools/benchmarks/Read/bin/Release/net10.0/Read.dll --node FOLDER [--runs N] MODEL.ifc ...

or, compiled ahead as the single file for Linux is, --read NATIVE/Read after

    dotnet publish -c Release -r linux-x64 -p:PublishAot=true -p:RuntimeIdentifiers=linux-x64 -p:NuGetLockFilePath=obj/native.lock.json -o NATIVE tools/benchmarks/Read

FOLDER has web-ifc and @ifc-lite/wasm installed (npm install with tools/crosscheck/package.json). Compared are
    ours      Read: index, every wall with its openings, and junctions
    ourlist   Read: index, every wall with its openings, property sets and path connections, without shapes
    list      web-ifc reading the same walls, openings, property sets and path connections, without meshes
    meshes    web-ifc reading the same walls and openings with their meshes, fillings and path connections
    second    @ifc-lite/wasm with the mesh of every wall, its openings cut
Start-up of the runtimes is included; the first run of each is not counted. A ratio under 1 says that ours took less time. Larger models: replicate.py;
for the largest office of the real models 12 and 48 times give 5,844 and 23,376 walls. web-ifc takes a minute and more a run on the latter: --runs 3.
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
    parser.add_argument("--ours", choices=("ours", "ourlist"), default="ours")
    parser.add_argument("--peers", default="list,meshes,second", help="which of the others, with commas")
    parser.add_argument("models", type=Path, nargs="+")
    arguments = parser.parse_args()
    print(f"{os.cpu_count()} processors, load {os.getloadavg()[0]:.1f}, {arguments.runs} runs each; least / median / largest")
    print(f"{'model':40} {'MB':>6}  {'':8} {'seconds':>24} {'ours to it, time':>20} {'ours to it, cpu':>20} {'MB at most':>10}")
    for model in arguments.models:
        print_rows(model, arguments)
    return 0


def print_rows(model, arguments):
    here, node = Path(__file__).parent, arguments.node.resolve()
    read = [*(["dotnet"] if arguments.read.suffix == ".dll" else []), arguments.read.resolve()]
    commands = {"ours": [*read, model], "ourlist": [*read, model, "list"], "list": ["node", here / "read_walls.mjs", node, model, "list"],
                "meshes": ["node", here / "read_walls.mjs", node, model], "second": ["node", here / "read_walls_second.mjs", node, model]}
    commands = {name: command for name, command in commands.items() if name in (arguments.ours, *arguments.peers.split(","))}
    rounds = [{name: timed(command) for name, command in commands.items()} for _ in range(arguments.runs + 1)][1:]
    for name in commands:
        times, ratios, processor = ([part(r) for r in rounds] for part in (
            lambda r: r[name][0], lambda r: r[arguments.ours][0] / r[name][0], lambda r: r[arguments.ours][1] / r[name][1]))
        print(f"{model.name:40} {model.stat().st_size / 1e6:6.1f}  {name:8} {three(times):>24} {three(ratios):>20} {three(processor):>20} "
              f"{max(r[name][2] for r in rounds):10.0f}", flush=True)


def three(values):
    return " / ".join(f"{v:.2f}" for v in (min(values), statistics.median(values), max(values)))


def timed(command):
    """(seconds, seconds of processor time, largest resident memory in MB) of one whole process."""
    began = time.perf_counter()
    process = subprocess.Popen(command, stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    _, status, usage = os.wait4(process.pid, 0)
    seconds = time.perf_counter() - began
    if os.waitstatus_to_exitcode(status) != 0:
        sys.exit(f"{' '.join(map(str, command))} ends with {os.waitstatus_to_exitcode(status)}")
    return seconds, usage.ru_utime + usage.ru_stime, usage.ru_maxrss / 1000


if __name__ == "__main__":
    sys.exit(main())
