#!/usr/bin/env python3
"""Cross-checks with readers that others wrote: ezdxf, dxf-parser, dxf, LibreCAD, qpdf, poppler, openpyxl, LibreOffice, web-ifc,
@ifc-lite/wasm, @parametricos/bcf-js, and Chromium with axe-core.

    run.py --command FILE --node FOLDER --fixtures FOLDER --work FOLDER [--shared FOLDER] [--only TEXT]

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
import completion
import disturbed
import embeds
import faults
import hostile
import ids_files
import job
import kubernetes
import page
import report
import sheets
import slab
import tutorial

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
    tools = job.Tools(job.invocation(arguments.command), arguments.node, verifier)
    tasks = [task for task in all_tasks(arguments) if arguments.only in task.model.name]
    if not any(task.kind == "real" for task in tasks):
        print("the real models are not here: fixtures only")
    print(f"ezdxf reads every sheet of a fixture, of a real model the first {sheets.SECOND_READING} and then every {sheets.STEP}th; "
          f"the JavaScript parsers the first {sheets.SECOND_READING} of each")
    print("openpyxl reads every workbook; LibreOffice works out those of the houses")
    print(f"repeated for the same bytes, written as parts and with moved openings, held to IDS: the houses, and every {REPEATED}th small fixture")
    problems = ids_files.write_and_check(arguments.work / "ids", tools.command)
    with ProcessPoolExecutor(os.cpu_count()) as pool:
        results = lay_out_all(tasks, tools, pool)
        problems += [f"{r.model}: {p}" for r in results for p in r.problems]
        problems += check_others(other_checks(arguments, tasks, tools), pool)
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


def other_checks(arguments, tasks, tools):
    """(name, check, what it is given) of all that is not about one model; the longest first."""
    fixtures, work, command, node = arguments.fixtures, arguments.work, tools.command, tools.node
    layouts = [task.out / "layout.json" for task in tasks if task.kind == "fixture"]
    houses = [task.out for task in tasks if is_house(task.model) and (task.out / "report.html").is_file()]
    if not houses:
        print("no house among the models: pages are not opened in a browser")
    return [
        ("batch", batch.problems, (command, fixtures, work / "batch")),
        ("hostile names", hostile.problems, (command, fixtures, work / "hostile")),
        ("compare", compare.problems, (command, fixtures, work / "compare")),
        ("disturbed", disturbed.problems, (command, fixtures, work / "disturbed")),
        ("tutorial", tutorial.problems, (fixtures, work / "tutorial", command)),
        *([("pages", page.problems, (houses, work / "pages", tools))] if houses else []),
        ("slab", slab.problems, (fixtures, work / "slab", command, tools.verifier)),
        ("bad input", bad_input.problems, (fixtures / "bad", work / "bad", command)),
        ("BCF", bcf.problems, ([task.model for task in tasks if task.kind == "fixture" and is_house(task.model)], work / "bcf", command, node)),
        ("faults", faults.undetected, (layouts, work / "faults", node)),
        ("embeds", embeds.problems, (fixtures / "ifc" / "yarrow" / "yarrow.ifc", work / "embeds", command)),
        ("widths of IDS", ids_files.width_problems, (work / "ids", fixtures / "ifc" / "sorrel" / "sorrel.ifc", node)),
        ("completion", completion.problems, (command,)),
        ("Kubernetes", kubernetes.problems, (node,)),
    ]


def check_others(checks, pool):
    """Runs the checks side by side; the problems of all, in the order of the checks."""
    running = [(name, pool.submit(timed, check, given)) for name, check, given in checks]
    problems = []
    for name, one in running:
        found, seconds = one.result()
        print(f"{name}: {len(found)} problems, {seconds:.0f} s", flush=True)
        problems += [f"{name}: {text}" for text in found]
    return problems


def timed(check, given):
    began = time.monotonic()
    return list(check(*given)), time.monotonic() - began


def lay_out_all(tasks, tools, pool):
    """Lays the models out side by side and prints a line as each is done."""
    print(f"{'model':46} {'walls':>5} {'coursed':>7} {'sheets':>6} {'breaches':>8} {'problems':>8} {'seconds':>7}")
    # The largest first, so that none of them runs alone at the end.
    order = sorted(tasks, key=lambda task: -task.model.stat().st_size)
    results = []
    for done in as_completed([pool.submit(job.check, task, tools) for task in order]):
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
