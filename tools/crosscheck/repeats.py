"""What must come out the same: a second run elsewhere, and a run over an earlier run's coursed model."""
import os
import subprocess
from pathlib import Path

from coursed_model import instances


def same_bytes(first: Path, model: Path, second: Path, command: list[str], options: list[str]):
    """Yields the files that differ when locale, time zone and number of processors do."""
    elsewhere = {**os.environ, "LC_ALL": "tr_TR.UTF-8", "TZ": "Asia/Tokyo", "DOTNET_PROCESSOR_COUNT": "1"}
    run(model, second, command, elsewhere, options)
    # What the checks themselves wrote stands at the top of the first folder.
    ours = {"before.jsonl", "after.jsonl"}
    names = {p.relative_to(d) for d in (first, second) for p in d.rglob("*") if p.is_file() and p.name not in ours}
    for name in sorted(names):
        if not (first / name).is_file() or not (second / name).is_file():
            yield f"{name} is written by one of two equal runs"
        elif (first / name).read_bytes() != (second / name).read_bytes():
            yield f"{name} differs between two equal runs"


def replaced(first: Path, model: Path, again: Path, command: list[str]):
    """Yields where a run over the coursed model adds to an earlier run's additions in place of replacing them."""
    coursed = first / "model" / f"{model.stem}.coursed.ifc"
    run(coursed, again, command, dict(os.environ))
    twice = again / "model" / coursed.name
    if not twice.is_file():
        yield f"no {twice.name} from a second run"
        return
    once_count, twice_count = len(instances(coursed.read_bytes())), len(instances(twice.read_bytes()))
    if once_count != twice_count:
        yield f"{coursed.name} has {once_count} instances, laid out again {twice_count}"


def run(model, out, command, environment, options=()):
    subprocess.run([*command, "layout", model, "--out", out, "--quiet", *options], env=environment, stdin=subprocess.DEVNULL,
                   capture_output=True, text=True, timeout=600, check=False)
