#!/usr/bin/env python3
"""Lays out models as whole programs, all walls of any width, and prints pieces a second and the peak memory.

    layout.py --command ifccourser.dll [--formats json] [--limit SECONDS] [--work FOLDER] MODEL.ifc ...

One run each: the time is that of the processor as well as what passed, start-up included. Models without a wall that can be laid out are counted, not listed.
A model that takes more seconds of the processor than the limit is ended and listed as such.
"""
import argparse
import json
import os
import resource
import signal
import subprocess
import sys
import tempfile
import time
from pathlib import Path


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--command", type=Path, required=True)
    parser.add_argument("--formats", default="json")
    parser.add_argument("--limit", type=int, default=300)
    parser.add_argument("--work", type=Path)
    parser.add_argument("models", type=Path, nargs="+")
    arguments = parser.parse_args()
    print(f"{os.cpu_count()} processors, load {os.getloadavg()[0]:.1f}, formats {arguments.formats}")
    print(f"{'model':52} {'MB':>6} {'walls':>6} {'pieces':>8} {'seconds':>8} {'cpu':>8} {'pieces/cpu s':>12} {'MB at most':>10}")
    rows, empty = [], 0
    with tempfile.TemporaryDirectory(dir=arguments.work) as folder:
        for model in arguments.models:
            row = laid_out(model, arguments, Path(folder))
            if row is None:
                empty += 1
                continue
            rows.append(row)
            print(line(model.name, model.stat().st_size / 1e6, *row), flush=True)
    done = [row for row in rows if row[1] is not None]
    walls, pieces, seconds, cpu = (sum(row[i] for row in done) for i in range(4))
    print(line(f"{len(done)} models, {empty} more without walls to lay out", sum(m.stat().st_size for m in arguments.models) / 1e6,
               walls, pieces, seconds, cpu, max((row[4] for row in done), default=0)))
    return 0


def line(name, size, walls, pieces, seconds, cpu, most):
    if pieces is None:
        return f"{name:52} {size:6.1f}  not done in {cpu:.0f} s of the processor"
    return f"{name:52} {size:6.1f} {walls:6} {pieces:8} {seconds:8.1f} {cpu:8.1f} {pieces / cpu if cpu else 0:12.0f} {most:10.0f}"


def laid_out(model, arguments, folder):
    """(walls laid out, pieces, seconds, seconds of the processor, largest resident memory in MB); None where no wall is laid out."""
    command = ["dotnet", arguments.command.resolve(), "layout", model, "--walls", "all", "--width", "any", "--formats", arguments.formats, "--json",
               "--out", folder / "out"]
    began = time.perf_counter()
    with open(folder / "summary.json", "w+b") as out:
        process = subprocess.Popen(command, stdin=subprocess.DEVNULL, stdout=out, stderr=subprocess.DEVNULL,
                                   preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_CPU, (arguments.limit, arguments.limit)))
        _, status, usage = os.wait4(process.pid, 0)
        seconds = time.perf_counter() - began
        if os.waitstatus_to_exitcode(status) in (-signal.SIGXCPU, -signal.SIGKILL):
            return 0, None, seconds, arguments.limit, 0
        if os.waitstatus_to_exitcode(status) != 0:
            sys.exit(f"{model} ends with {os.waitstatus_to_exitcode(status)}")
        out.seek(0)
        summary = json.load(out)
    return None if summary["pieces"] == 0 else (summary["coursed"], summary["pieces"], seconds, usage.ru_utime + usage.ru_stime, usage.ru_maxrss / 1000)


if __name__ == "__main__":
    sys.exit(main())
