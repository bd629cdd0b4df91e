#!/usr/bin/env python3
"""Cross-checks with readers that others wrote: ezdxf, dxf-parser, dxf and web-ifc.

    run.py --command DLL --node FOLDER --fixtures FOLDER --work FOLDER [--shared FOLDER] [--only TEXT]

Lays out every fixture, and every real model where the shared folder is there, checks all that is written, and prints a
table. Exit status 1 where any problem was found; nothing is skipped without a line that says so.
"""
import argparse
import collections
import os
import sys
from concurrent.futures import ProcessPoolExecutor, as_completed
from pathlib import Path

import bad_input
import job
import repeats
import sheets

ANY_WALL = ["--walls", "all", "--width", "any"]


def main():
    arguments = parse()
    verifier = arguments.shared / "reference" / "verify_layout.py"
    if not verifier.is_file():
        print("verify_layout.py is not here: the laws of the layout are held by the tests alone")
        verifier = None
    tools = job.Tools(["dotnet", str(arguments.command)], arguments.node, verifier)
    fixtures = [m for m in sorted((arguments.fixtures / "ifc").glob("*/*.ifc")) if arguments.only in m.name]
    models = [m for m in sorted((arguments.shared / "models").glob("*.ifc")) if arguments.only in m.name]
    if not models:
        print("the real models are not here: fixtures only")
    print(f"ezdxf reads every sheet, the JavaScript parsers the first {sheets.SECOND_READING} of each model")
    picked = [(m, [], "fixture") for m in fixtures] + [(m, ANY_WALL, "real") for m in models]
    results = lay_out_all(picked, arguments.work, tools)
    problems = [f"{r.model}: {p}" for r in results for p in r.problems]
    for model in fixtures:
        folder = arguments.work / "fixture" / model.stem
        problems += [f"{model.name}: {p}" for p in
                     [*repeats.same_bytes(folder, model, arguments.work / "again" / model.stem, tools.command),
                      *repeats.replaced(folder, model, arguments.work / "twice" / model.stem, tools.command)]]
    problems += bad_input.problems(arguments.fixtures / "bad", arguments.work / "bad", tools.command)
    print_declared(results)
    print_limits(results)
    print_problems(problems)
    return 1 if problems or not results else 0


def parse():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    for name in ("--command", "--node", "--fixtures", "--work"):
        parser.add_argument(name, type=lambda text: Path(text).resolve(), required=True)
    parser.add_argument("--shared", type=lambda text: Path(text).resolve(), default=Path("../shared").resolve())
    parser.add_argument("--only", default="", help="only the models whose name holds this text")
    return parser.parse_args()


def lay_out_all(picked, work, tools):
    """Lays the models out side by side and prints a row of the table as each is done."""
    print(f"{'model':46} {'walls':>5} {'coursed':>7} {'sheets':>6} {'breaches':>8} {'problems':>8} {'seconds':>7}  skipped, by reason")
    # The largest first, so that none of them runs alone at the end.
    order = sorted(picked, key=lambda p: -p[0].stat().st_size)
    with ProcessPoolExecutor(os.cpu_count()) as pool:
        running = [pool.submit(job.check, model, work / kind / model.stem, options, tools) for model, options, kind in order]
        results = []
        for done in as_completed(running):
            results.append(done.result())
            print_row(results[-1])
    print(f"{len(results)} models, {sum(r.walls for r in results)} walls, {sum(r.coursed for r in results)} coursed, "
          f"{sum(r.coursed > 0 for r in results)} models with coursed walls, {sum(r.breaches or 0 for r in results)} breaches")
    return sorted(results, key=lambda r: r.model)


def print_row(r):
    reasons = ", ".join(f"{reason} {n}" for reason, n in sorted(r.reasons.items(), key=lambda pair: (-pair[1], pair[0])))
    breaches = "-" if r.breaches is None else r.breaches
    print(f"{r.model:46} {r.walls:5} {r.coursed:7} {r.sheets:6} {breaches:>8} {len(r.problems):8} {r.seconds:7.1f}  {reasons}", flush=True)


def print_declared(results):
    print("\ndeclared wall volumes (Qto_WallBaseQuantities, BaseQuantities) against the bodies as read:")
    for r in results:
        outcomes = collections.Counter(outcome for outcome, _ in r.declared)
        if set(outcomes) - {"none declared"}:
            print(f"  {r.model}: " + "; ".join(f"{outcome}: {n}" for outcome, n in sorted(outcomes.items())))
    totals = collections.Counter(outcome for r in results for outcome, _ in r.declared)
    print("  in all: " + "; ".join(f"{outcome}: {n}" for outcome, n in sorted(totals.items())))


def print_limits(results):
    limits = [f"{r.model}: {line}" for r in results for line in r.limits]
    print(f"\n{len(limits)} lines of verify_layout.py that are not counted as breaches: joints against a wall in raked courses, where it "
          "can't tell (see job.py), and volumes listed with their cause in mesh_differences.tsv")
    for line in limits:
        print(f"  {line}")


def print_problems(problems):
    print(f"\n{len(problems)} problems" + (":" if problems else ""))
    for problem in problems[:200]:
        print(f"  {problem}")
    if len(problems) > 200:
        print(f"  ... and {len(problems) - 200} more")


if __name__ == "__main__":
    sys.exit(main())
