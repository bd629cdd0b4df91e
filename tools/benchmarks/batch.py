#!/usr/bin/env python3
"""How a batch scales: lots of 12 house models, distinct models, and two cores beside one.

    batch.py --command DLL --fixtures FOLDER --work FOLDER [--lots 1,10,100,1000] [--distinct 12,48] [--cores N] [--formats LIST]

A model is one of the three houses with a remark behind it, so that its bytes are its own and nothing of it is shared by hash. One lot names a
model that is cut off: its row must say so. Prints for each batch the seconds passed, those of the processor, the most memory, the room on disk,
and what a run takes that has nothing to do. The load says how much the machine had to do for others: then compare processor time.
"""
import argparse
import csv
import os
import shutil
import subprocess
import sys
import time
from pathlib import Path

HOUSES = ("sorrel", "teasel", "yarrow")
MODELS = 12


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    for name in ("--command", "--fixtures", "--work"):
        parser.add_argument(name, type=lambda text: Path(text).resolve(), required=True)
    numbers = lambda text: [int(number) for number in text.split(",") if number]  # noqa: E731
    parser.add_argument("--lots", type=numbers, default=[1, 10, 100, 1000])
    parser.add_argument("--distinct", type=numbers, default=[12, 48])
    parser.add_argument("--cores", type=int, default=24, help="distinct models laid out on one core and on two; 0 for none")
    parser.add_argument("--formats", default="json,dxf,svg,pdf,ifc,csv,xlsx,html,bcf")
    arguments = parser.parse_args()
    print(f"{os.cpu_count()} processors, formats {arguments.formats}")
    print(f"{'':24} {'load':>5} {'passed s':>9} {'cpu s':>8} {'cpu ms/lot':>10} {'MB':>5} {'disk MB':>8} {'again s':>8}")
    for count in arguments.lots:
        row(arguments, f"{count} lots of {MODELS}", count, min(count, MODELS))
    for count in arguments.distinct:
        row(arguments, f"{count} distinct models", count, count)
    if arguments.cores:
        efficiency(arguments)
    return 0


def row(arguments, name, count, models):
    work = arguments.work / name.replace(" ", "-")
    manifest = write(arguments.fixtures, work, count, models)
    load = os.getloadavg()[0]
    passed, cpu, memory = timed(arguments, manifest, work / "out")
    again, _, _ = timed(arguments, manifest, work / "out")
    rows = list(csv.DictReader((work / "out" / "batch.csv").open(newline="")))
    failed = [one["reason"] for one in rows if one["status"] != "done"]
    if len(rows) != count + 1 or len(failed) != 1 or "cut off" not in failed[0]:
        sys.exit(f"{name}: {len(rows)} rows, failed {failed[:3]}")
    disk = int(subprocess.run(["du", "-sk", work / "out"], capture_output=True, text=True, check=True).stdout.split()[0]) / 1024
    print(f"{name:24} {load:5.1f} {passed:9.1f} {cpu:8.1f} {1000 * cpu / count:10.1f} {memory:5.0f} {disk:8.0f} {again:8.1f}", flush=True)
    shutil.rmtree(work)


def efficiency(arguments):
    """Time on one core over twice that on two."""
    work = arguments.work / "cores"
    manifest = write(arguments.fixtures, work, arguments.cores, arguments.cores)
    load = os.getloadavg()[0]
    one = timed(arguments, manifest, work / "one", ["taskset", "-c", "0"])
    two = timed(arguments, manifest, work / "two", ["taskset", "-c", "0,1"])
    print(f"{arguments.cores} distinct models, load {load:.1f}: one core {one[0]:.1f} s ({one[1]:.1f} of the processor), two {two[0]:.1f} s ({two[1]:.1f}): "
          f"efficiency {one[0] / (2 * two[0]):.2f}; by processor time alone, as on a machine with nothing else to do, at most {one[1] / two[1]:.2f}")
    shutil.rmtree(work)


def write(fixtures, work, count, models):
    shutil.rmtree(work, ignore_errors=True)
    (work / "models").mkdir(parents=True)
    texts = {house: (fixtures / "ifc" / house / f"{house}.ifc").read_bytes() for house in HOUSES}
    for number in range(models):
        (work / "models" / f"{number}.ifc").write_bytes(texts[HOUSES[number % len(HOUSES)]] + b"/* %d */\n" % number)
    manifest = work / "lots.csv"
    with manifest.open("w", newline="") as file:
        rows = csv.writer(file)
        rows.writerow(["lot", "model", "phase"])
        rows.writerows([number + 1, f"models/{number % models}.ifc", number // 100] for number in range(count))
        rows.writerow(["broken", fixtures / "bad" / "cut-off.ifc", ""])
    return manifest


def timed(arguments, manifest, out, before=()):
    """Seconds passed, of the processor, and MB at most."""
    began = time.monotonic()
    process = subprocess.Popen([*before, "dotnet", arguments.command, "batch", manifest, "--out", out, "--quiet", "--formats", arguments.formats], stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    _, status, used = os.wait4(process.pid, 0)
    if os.waitstatus_to_exitcode(status) != 1:
        sys.exit(f"the batch of {manifest} ended with {status}: one lot of it should have failed")
    return time.monotonic() - began, used.ru_utime + used.ru_stime, used.ru_maxrss / 1024


if __name__ == "__main__":
    sys.exit(main())
