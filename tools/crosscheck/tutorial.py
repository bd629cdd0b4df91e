"""The tutorial (fixtures/tutorial/README.md) done as a newcomer does it: its commands in order by a shell, each held to the exit status, the
lines and the files that the text names.

    tutorial.py --fixtures FOLDER --work FOLDER -- COMMAND ...        COMMAND is the program, such as: dotnet ifccourser.dll
"""
import argparse
import os
import re
import shlex
import shutil
import subprocess
import sys
from pathlib import Path

LEAST_COMMANDS, LEAST_LINES, LEAST_FILES = 10, 15, 20     # below these the page was not understood
FENCE = re.compile(r"^```(\w+)\n(.*?)^```$", re.M | re.S)
STATUS = re.compile(r"\s+# exit status (\d+)$")
NAMED = re.compile(r"`(out/tutorial/[^`]+)`")


def problems(fixtures, work, command):
    """Yields what the tutorial says and the program does not do; then whether this check would notice."""
    page = (fixtures / "tutorial" / "README.md").read_text("utf-8")
    counts = [0, 0, 0]
    yield from (f"tutorial: {text}" for text in walked(page, fixtures, work / "page", command, counts))
    for what, count, least in zip(("commands", "lines", "files"), counts, (LEAST_COMMANDS, LEAST_LINES, LEAST_FILES)):
        if count < least:
            yield f"tutorial: only {count} {what} found in it"
    print(f"tutorial: {counts[0]} commands, {counts[1]} lines of output and {counts[2]} files held to what it says")
    for fault in ("```sh\nifccourser catalog list   # exit status 1\n```\n", "```sh\nifccourser catalog list\n```\n```text\nno such line\n```\n",
                  "`out/tutorial/nothing.csv`\n", "```sh\nfalse\n```\n"):
        if not list(walked(fault, fixtures, work / "fault", command, [0, 0, 0])):
            yield f"tutorial: the check does not notice a fault: {fault!r}"


def walked(page, fixtures, work, command, counts):
    shutil.rmtree(work, ignore_errors=True)
    work.mkdir(parents=True)
    (work / "fixtures").symlink_to(fixtures)
    (work / "bin").mkdir()
    (work / "bin" / "ifccourser").write_text(f'#!/bin/sh\nexec {shlex.join(command)} "$@"\n')
    (work / "bin" / "ifccourser").chmod(0o755)
    environment = os.environ | {"PATH": f"{work / 'bin'}:{os.environ['PATH']}"}
    said = None
    for kind, text in FENCE.findall(page):
        if kind == "sh":
            said = ""
            for line in text.splitlines():
                counts[0] += 1
                wanted = int(match.group(1)) if (match := STATUS.search(line)) else 0
                run = subprocess.run(["sh", "-c", STATUS.sub("", line)], cwd=work, env=environment, capture_output=True, text=True, timeout=300)
                said += run.stdout
                if run.returncode != wanted:
                    yield f"{line}: exit status {run.returncode}, the text says {wanted}: {run.stderr.strip()[:300]}"
        elif kind == "text":
            counts[1] += len(text.splitlines())
            if said is None or f"\n{text}" not in f"\n{said}":
                yield f"no command before it prints {text!r}"
    for name in sorted(set(NAMED.findall(page))):
        counts[2] += 1
        file = work / name
        if not file.exists() or file.is_file() and file.stat().st_size == 0:
            yield f"{name} is not there, or empty"


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    for name in ("--fixtures", "--work"):
        parser.add_argument(name, type=lambda text: Path(text).resolve(), required=True)
    parser.add_argument("command", nargs="+")
    arguments = parser.parse_args()
    found = list(problems(arguments.fixtures, arguments.work, arguments.command))
    for problem in found:
        print(problem)
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
