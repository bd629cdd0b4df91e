#!/usr/bin/env python3
"""The subdivision from outside: totals lot by lot, shares, and a process that is killed at random moments.

    batch.py --command DLL --fixtures FOLDER --work FOLDER [--kills N] [--seed N]
    batch.py --command DLL --fixtures FOLDER --work FOLDER --models FILE ... [--lots N]

The second form takes models of any make, each in four ways, and repeats them to N lots: totals and orders lot by lot, nothing else.
Exit status 1 where a problem was found.
"""
import argparse
import csv
import json
import random
import shutil
import signal
import subprocess
import sys
import time
from collections import defaultdict
from pathlib import Path

SHARES = 3
SUMS = {"walls": "walls", "coursed": "coursed", "pieces": "pieces", "full_units": "fullUnits", "part_units": "partUnits"}
WAYS = [(mirror, turn) for mirror in ("", "yes") for turn in (0, 90)]
HOUSES = ("sorrel", "teasel", "yarrow")
# Amounts are written with at least one decimal in the take-off and in the order.
ROUNDED = 0.051
OPTIONS = ["--formats", "json,csv,svg", "--walls", "all", "--width", "any"]


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    for name in ("--command", "--fixtures", "--work"):
        parser.add_argument(name, type=lambda text: Path(text).resolve(), required=True)
    parser.add_argument("--kills", type=int, default=20)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--models", type=lambda text: Path(text).resolve(), nargs="+")
    parser.add_argument("--lots", type=int, default=1000)
    arguments = parser.parse_args()
    command = ["dotnet", str(arguments.command)]
    found = list(problems(command, arguments.fixtures, arguments.work, arguments.kills, arguments.seed) if arguments.models is None
                 else repeated(command, arguments.work, arguments.models, arguments.lots))
    for problem in found:
        print(f"PROBLEM: {problem}")
    return 1 if found else 0


def problems(command, fixtures, work, kills=20, seed=1):
    """Yields what is wrong, a line each."""
    shutil.rmtree(work, ignore_errors=True)
    work.mkdir(parents=True)
    manifest = write_manifest(fixtures, work / "lots.csv", HOUSES)
    whole = work / "whole"
    run(command, manifest, whole)
    yield from lot_by_lot(command, manifest, whole, work / "alone")
    yield from shares(command, manifest, whole, work / "shares")
    # A few small models, so that many kills take minutes; the folder's states are the same.
    yield from killed(command, write_manifest(fixtures, work / "kills.csv", (), step=3), work, kills, random.Random(seed))


def repeated(command, work, models, lots):
    """Many lots of the models given, against each model laid out alone."""
    shutil.rmtree(work, ignore_errors=True)
    work.mkdir(parents=True)
    ways = [(model, mirror, turn) for model in models for mirror, turn in WAYS]
    manifest = write_lots(work / "lots.csv", [ways[number % len(ways)] for number in range(lots)])
    began = time.monotonic()
    run(command, manifest, work / "whole")
    seconds = time.monotonic() - began
    yield from lot_by_lot(command, manifest, work / "whole", work / "alone")
    totals = json.loads((work / "whole" / "totals.json").read_text())
    print(f"batch: {totals['lots']} lots of {len(models)} models in {seconds:.1f} s, failed {totals['failed']}, walls {totals['walls']}, coursed {totals['coursed']}, "
          f"pieces {totals['pieces']}, whole {totals['fullUnits']}, sawn {totals['partUnits']}")


def write_manifest(fixtures, manifest, houses, step=1):
    """Every small junction model once, or every step-th, the houses in several ways, repeats, a broken model."""
    models = [(model, "", 0) for model in sorted((fixtures / "ifc" / "junctions").glob("*.ifc"))[::step]]
    for house in houses:
        models += [(fixtures / "ifc" / house / f"{house}.ifc", mirror, turn) for mirror, turn in WAYS]
    return write_lots(manifest, models + models[::3] + [(fixtures / "bad" / "cut-off.ifc", "", 0)])


def write_lots(manifest, models):
    with manifest.open("w", newline="") as file:
        writer = csv.writer(file)
        writer.writerow(["lot", "model", "mirror", "rotation", "phase"])
        writer.writerows([f"{number:03}", model, mirror, turn, number % 3] for number, (model, mirror, turn) in enumerate(models, 1))
    return manifest


def lot_by_lot(command, manifest, whole, alone):
    """Totals and order against the sums of layouts made one by one, as drawn: neither mirroring nor turning changes a count."""
    counts, taken, ordered = {}, {}, defaultdict(lambda: [0.0, 0])
    sums = dict.fromkeys(SUMS.values(), 0)
    rows = {row["lot"]: row for row in csv.DictReader((whole / "batch.csv").open(newline=""))}
    for lot in csv.DictReader(manifest.open(newline="")):
        row = rows.pop(lot["lot"], None)
        if row is None:
            yield f"lot {lot['lot']} has no row"
            continue
        if lot["model"] not in counts:
            out = alone / Path(lot["model"]).stem
            done = subprocess.run([*command, "layout", lot["model"], "--out", out, "--quiet", *OPTIONS], stdin=subprocess.DEVNULL, capture_output=True, check=False)
            counts[lot["model"]] = json.loads((out / "layout.json").read_text())["totals"] if done.returncode == 0 else None
            taken[lot["model"]] = amounts(out / "order" / "takeoff.csv") if done.returncode == 0 else {}
        totals = counts[lot["model"]]
        for key, (amount, rows_of) in taken[lot["model"]].items():
            ordered[lot["phase"], *key][0] += amount
            ordered[lot["phase"], *key][1] += rows_of
        if (row["status"] == "done") != (totals is not None):
            yield f"lot {lot['lot']} is {row['status']}, laid out alone it is not"
        for column, name in SUMS.items():
            expected = totals[name] if totals else 0
            sums[name] += expected
            if int(row[column]) != expected:
                yield f"lot {lot['lot']}: {column} {row[column]}, alone {expected}"
    yield from (f"a row for {lot}, which is no lot" for lot in rows)
    totals = json.loads((whole / "totals.json").read_text())
    yield from (f"totals.json: {name} {totals[name]}, the lots' sum {value}" for name, value in sums.items() if totals[name] != value)
    combined = amounts(whole / "order.csv", "phase")
    for key in sorted(ordered.keys() | combined.keys()):
        (amount, rows_of), (given, given_rows) = ordered.get(key, (0.0, 0)), combined.get(key, (0.0, 0))
        if abs(amount - given) > (0 if key[-1] == "pcs" else ROUNDED * (rows_of + given_rows)):
            yield f"order.csv: {' '.join(key)} {given}, the lots' sum {amount}"


def amounts(file, *before):
    """Net amount of each item, width and unit, and of how many rows; packs are rounded for each delivery and left out."""
    found = defaultdict(lambda: [0.0, 0])
    for row in csv.DictReader(file.open(newline="")):
        if row["unit"] != "pallet":
            sums = found[*(row[name] for name in (*before, "item", "width", "unit"))]
            sums[0] += float(row["net"])
            sums[1] += 1
    return found


def shares(command, manifest, whole, folder):
    for share in range(1, SHARES + 1):
        run(command, manifest, folder, "--shard", f"{share}/{SHARES}")
    run(command, manifest, folder, "--collect")
    yield from (f"shares: {line}" for line in differences(whole, folder))


def killed(command, manifest, work, kills, chance):
    """Kills the process again and again; what it left as done must be whole, stay untouched, and the rest must come out the same."""
    whole, folder = work / "never-killed", work / "killed"
    began = time.monotonic()
    run(command, manifest, whole)
    seconds = time.monotonic() - began
    ends = 0
    kept = {}
    interrupted = 0
    for number in range(kills):
        process = subprocess.Popen(arguments_of(command, manifest, folder), stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        time.sleep(chance.uniform(0.05, 0.6 * seconds))
        process.send_signal(signal.SIGKILL)
        has_ended = process.wait() != -signal.SIGKILL
        interrupted += not has_ended
        now = done_lots(folder)
        yield from (f"kill {number}: lot {lot} was done and is another folder now" for lot in kept if now.get(lot) != kept[lot])
        for lot in now.keys() - kept.keys():
            yield from (f"kill {number}: {line}" for line in differences(whole / "lots" / lot, folder / "lots" / lot))
        kept = now
        if has_ended:
            yield from (f"kill {number}, all done: {line}" for line in differences(whole, folder))
            shutil.rmtree(folder)
            kept = {}
            ends += 1
    run(command, manifest, folder)
    now = done_lots(folder)
    yield from (f"at last: lot {lot} was done and is another folder now" for lot in kept if now.get(lot) != kept[lot])
    yield from (f"at last: {line}" for line in differences(whole, folder))
    print(f"batch: {len(now)} lots done of {len(list((whole / 'lots').iterdir()))}, a whole run {seconds:.1f} s, killed {interrupted} times of {kills}, begun anew after {ends} runs that ended")
    if interrupted < kills / 2:
        yield f"only {interrupted} of {kills} runs were killed before they ended"


def done_lots(folder):
    """Inode of the folder of each lot that is done."""
    return {result.parent.name: result.parent.stat().st_ino for result in (folder / "lots").glob("*/result.json") if json.loads(result.read_text()).get("reason") is None}


def run(command, manifest, folder, *options):
    done = subprocess.run(arguments_of(command, manifest, folder, *options), stdin=subprocess.DEVNULL, capture_output=True, text=True, check=False)
    if done.returncode not in (0, 1):
        raise RuntimeError(f"batch ended with {done.returncode}: {done.stderr}")


def arguments_of(command, manifest, folder, *options):
    return [*command, "batch", str(manifest), "--out", str(folder), *OPTIONS, *options]


def differences(expected, actual):
    names = {path.relative_to(root) for root in (expected, actual) for path in root.rglob("*") if path.is_file()}
    for name in sorted(names):
        if not (expected / name).is_file() or not (actual / name).is_file():
            yield f"{name} is in one of {expected.name} and {actual.name}"
        elif (expected / name).read_bytes() != (actual / name).read_bytes():
            yield f"{name} differs between {expected.name} and {actual.name}"


if __name__ == "__main__":
    sys.exit(main())
