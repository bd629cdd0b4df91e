#!/usr/bin/env python3
"""Cross-checks with readers that others wrote: ezdxf, dxf-parser, dxf, qpdf, poppler, openpyxl, LibreOffice, web-ifc,
@ifc-lite/wasm, @parametricos/bcf-js, and Chromium with axe-core.

    run.py --command DLL --node FOLDER --fixtures FOLDER --work FOLDER [--shared FOLDER] [--only TEXT]

Lays out every fixture, and every real model where the shared folder is there, checks all that is written, and prints
tables. Exit status 1 where any problem was found; nothing is skipped without a line that says so.
"""
import argparse
import os
import sys
import time
from concurrent.futures import ProcessPoolExecutor, as_completed
from pathlib import Path

import bad_input
import bcf
import batch
import compare
import embeds
import faults
import ids_files
import job
import kubernetes
import page
import report
import sheets
import slab

REPEATED = 6
# A DXF file a sheet, so that readers can take some of them; fixtures have one for the set.
ANY_WALL = ["--walls", "all", "--width", "any", "--dxf-per-sheet"]
MORE_MODELS = ["--ifc-parts", "--apply-openings"]


def main():
    began = time.monotonic()
    arguments = parse()
    verifier = arguments.shared / "reference" / "verify_layout.py"
    if not verifier.is_file():
        print("verify_layout.py is not here: the laws of the layout are held by the tests alone")
        verifier = None
    tools = job.Tools(["dotnet", str(arguments.command)], arguments.node, verifier)
    tasks = [task for task in all_tasks(arguments) if arguments.only in task.model.name]
    if not any(task.kind == "real" for task in tasks):
        print("the real models are not here: fixtures only")
    print(f"ezdxf reads every sheet of a fixture, of a real model the first {sheets.SECOND_READING} and then every {sheets.STEP}th; "
          f"the JavaScript parsers the first {sheets.SECOND_READING} of each")
    print("openpyxl reads every workbook; LibreOffice works out those of the houses")
    print(f"repeated for the same bytes, written as parts and with moved openings, held to IDS: the houses, and every {REPEATED}th small fixture")
    problems = ids_files.write_and_check(arguments.work / "ids", tools.command)
    results = lay_out_all(tasks, tools)
    problems += [f"{r.model}: {p}" for r in results for p in r.problems]
    problems += bad_input.problems(arguments.fixtures / "bad", arguments.work / "bad", tools.command)
    problems += embeds.problems(arguments.fixtures / "ifc" / "yarrow" / "yarrow.ifc", arguments.work / "embeds", tools.command)
    problems += slab.problems(arguments.fixtures, arguments.work / "slab", tools.command, verifier)
    problems += ids_files.width_problems(arguments.work / "ids", arguments.fixtures / "ifc" / "sorrel" / "sorrel.ifc", tools.node)
    problems += [f"batch: {p}" for p in batch.problems(tools.command, arguments.fixtures, arguments.work / "batch")]
    problems += [f"compare: {p}" for p in compare.problems(tools.command, arguments.fixtures, arguments.work / "compare")]
    problems += kubernetes.problems(tools.node)
    problems += faults.undetected([task.out / "layout.json" for task in tasks if task.kind == "fixture"], arguments.work / "faults", tools.node)
    houses = [task.out for task in tasks if is_house(task.model) and (task.out / "report.html").is_file()]
    if houses:
        problems += [f"page of {text}" for text in page.problems(houses, arguments.work / "pages", tools)]
    else:
        print("no house among the models: pages are not opened in a browser")
    problems += bcf.problems([task.model for task in tasks if task.kind == "fixture" and task.model.stem == task.model.parent.name], arguments.work / "bcf", tools.command, tools.node)
    problems += report.gates(results)
    for table in (report.print_walls, report.print_openings, report.print_junctions, report.print_listed, report.print_declared,
                  report.print_limits):
        table(results)
    report.print_problems(problems)
    print(f"{(time.monotonic() - began) / 60:.1f} minutes; " + report.spent(results))
    return 1 if problems or not results else 0


def parse():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    for name in ("--command", "--node", "--fixtures", "--work"):
        parser.add_argument(name, type=lambda text: Path(text).resolve(), required=True)
    parser.add_argument("--shared", type=lambda text: Path(text).resolve(), default=Path("../shared").resolve())
    parser.add_argument("--only", default="", help="only the models whose name holds this text")
    return parser.parse_args()


def all_tasks(arguments):
    for number, model in enumerate(sorted((arguments.fixtures / "ifc").glob("*/*.ifc"))):
        is_more = is_house(model) or number % REPEATED == 0
        yield job.Task(model, "fixture", arguments.work / "fixture" / model.stem, MORE_MODELS if is_more else [], repeated=is_more)
    for model in sorted((arguments.shared / "models").glob("*.ifc")):
        yield job.Task(model, "real", arguments.work / "real" / model.stem, ANY_WALL, repeated=False)


def is_house(model):
    return model.stem == model.parent.name


def lay_out_all(tasks, tools):
    """Lays the models out side by side and prints a line as each is done."""
    print(f"{'model':46} {'walls':>5} {'coursed':>7} {'sheets':>6} {'breaches':>8} {'problems':>8} {'seconds':>7}")
    # The largest first, so that none of them runs alone at the end.
    order = sorted(tasks, key=lambda task: -task.model.stat().st_size)
    with ProcessPoolExecutor(os.cpu_count()) as pool:
        running = [pool.submit(job.check, task, tools) for task in order]
        results = []
        for done in as_completed(running):
            results.append(done.result())
            print_row(results[-1])
    print(f"{len(results)} models, {sum(r.walls for r in results)} walls, {sum(r.coursed for r in results)} coursed, "
          f"{sum(r.coursed > 0 for r in results)} models with coursed walls, {sum(r.breaches or 0 for r in results)} breaches")
    return sorted(results, key=lambda r: r.model)


def print_row(r):
    breaches = "-" if r.breaches is None else r.breaches
    print(f"{r.model:46} {r.walls:5} {r.coursed:7} {r.sheets:6} {breaches:>8} {len(r.problems):8} {r.seconds:7.1f}", flush=True)


if __name__ == "__main__":
    sys.exit(main())
