"""Runs that are disturbed: a full disk, folders that may not be written, links out of the folder, another run in it, a model that changes
while it is read, Ctrl-C and SIGTERM. One clear message, the documented exit status, and in the folder nothing but whole files."""
import fcntl
import filecmp
import os
import random
import shutil
import signal
import subprocess
import time
from pathlib import Path

UNREADABLE, UNWRITABLE, USAGE = 3, 4, 2
STOPPED = {signal.SIGINT: 130, signal.SIGTERM: 143}
STOPS_OF_EACH = 4
CHANGES = 8


def problems(command: list[str], fixtures: Path, work: Path):
    """Yields what is not as it should be."""
    shutil.rmtree(work, ignore_errors=True)
    work.mkdir(parents=True)
    model = fixtures / "ifc" / "yarrow" / "yarrow.ifc"
    layout = ["layout", model, "--formats", "json,csv,ifc"]
    whole = work / "whole"
    began = time.monotonic()
    first = run(command, [*layout, "--out", whole])
    duration = time.monotonic() - began
    if first.returncode != 0:
        yield f"the undisturbed run ends with {first.returncode}: {first.stderr.strip()}"
        return
    yield from full_disk(command, layout, whole, work / "full")
    yield from read_only(command, layout, work / "read-only")
    yield from links(command, layout, work / "links")
    yield from held(command, layout, whole, work / "held")
    yield from changing(command, model, work / "changing")
    yield from stopped(command, fixtures, whole, work / "stopped", duration)


def full_disk(command, layout, whole, folder):
    """On a disk of its own, with little room left; the folder keeps what it had."""
    for room in (0, 40_000):
        with Disk(folder, 3_000_000) as disk:
            shutil.copytree(whole, disk / "out")
            fill(disk, room)
            yield from refused(f"full disk with {room} bytes left", run(command, [*layout, "--out", disk / "out"]), UNWRITABLE)
            yield from differences(f"full disk with {room} bytes left", whole, disk / "out")
    with Disk(folder, 400_000) as disk:
        (disk / "page.html").write_text("old", encoding="utf-8")
        fill(disk, 0)
        done = run(command, ["compare", whole / "layout.json", whole / "layout.json", "--html", disk / "page.html"])
        yield from refused("full disk for a single file", done, UNWRITABLE)
        if sorted(file.name for file in disk.iterdir()) != ["filling", "page.html"] or (disk / "page.html").read_text(encoding="utf-8") != "old":
            yield "full disk for a single file: the old one is not as it was, or others lie beside it"


class Disk:
    """A small disk in memory, which root may mount."""

    def __init__(self, folder, size):
        self.folder, self.size = folder, size

    def __enter__(self):
        self.folder.mkdir(exist_ok=True)
        subprocess.run(["mount", "-t", "tmpfs", "-o", f"size={self.size}", "tmpfs", self.folder], check=True)
        return self.folder

    def __exit__(self, *_):
        subprocess.run(["umount", self.folder], check=True)


def fill(disk, room):
    """Leaves so many bytes, in whole pages."""
    left = shutil.disk_usage(disk).free - room
    (disk / "filling").write_bytes(bytes(max(0, left)))


def read_only(command, layout, folder):
    """Root may write anywhere but into the kernel's own file systems."""
    if os.geteuid() == 0:
        target = Path("/sys/kernel/ifccourser")
    else:
        folder.mkdir()
        folder.chmod(0o555)
        target = folder / "out"
    yield from refused("read-only folder", run(command, [*layout, "--out", target]), UNWRITABLE)


def links(command, layout, folder):
    """A link in the place of a file is replaced, what it leads to is kept; one in the place of a subfolder is refused."""
    out, elsewhere = folder / "out", folder / "elsewhere"
    out.mkdir(parents=True)
    elsewhere.mkdir()
    (elsewhere / "kept.txt").write_text("kept", encoding="utf-8")
    (out / "layout.json").symlink_to(elsewhere / "kept.txt")
    done = run(command, [*layout[:2], "--formats", "json", "--out", out])
    if done.returncode != 0 or (out / "layout.json").is_symlink() or (elsewhere / "kept.txt").read_text(encoding="utf-8") != "kept":
        yield f"link in the place of a file: status {done.returncode}, or what it leads to was written to"
    (out / "order").symlink_to(elsewhere)
    yield from refused("link in the place of a subfolder", run(command, [*layout, "--out", out]), UNWRITABLE)
    if [file.name for file in elsewhere.iterdir()] != ["kept.txt"]:
        yield "link in the place of a subfolder: files are written where it leads"


def held(command, layout, whole, out):
    """Of two runs into one folder one is refused, or both come one after the other."""
    out.mkdir()
    with open(out / ".ifccourser.lock", "w", encoding="utf-8") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        yield from refused("folder that another run holds", run(command, [*layout, "--out", out]), UNWRITABLE)
    both = [start(command, [*layout, "--out", out]) for _ in range(2)]
    ends = sorted((process.communicate(timeout=120), process.returncode)[1] for process in both)
    if ends not in ([0, 0], [0, UNWRITABLE]):
        yield f"two runs into one folder end with {ends}"
    yield from differences("two runs into one folder", whole, out)


def changing(command, model, folder):
    """Cut short or written to at any moment of the run: laid out, or refused with a clear message."""
    folder.mkdir()
    chance = random.Random(1)
    text = model.read_bytes()
    for number in range(CHANGES):
        place = folder / f"{number}.ifc"
        place.write_bytes(text)
        process = start(command, ["layout", place, "--formats", "json", "--out", folder / f"out-{number}"])
        while process.poll() is None:
            time.sleep(chance.uniform(0, 0.1))
            with open(place, "r+b") as file:
                file.truncate(chance.choice([0, 1, len(text) // 2, len(text) - 1]))
                file.write(text[:chance.randrange(len(text))])
        out, error = process.communicate()
        if process.returncode != 0:
            yield from refused("model that changes while it is read", subprocess.CompletedProcess([], process.returncode, out, error), UNREADABLE)


def stopped(command, fixtures, whole, folder, duration):
    """Every verb that writes, stopped at moments over its run: what is there is whole, and nothing lies beside it."""
    folder.mkdir()
    model = fixtures / "ifc" / "yarrow" / "yarrow.ifc"
    lots = folder / "lots.csv"
    lots.write_text(f"lot,model\nA,{model}\nB,{fixtures / 'ifc' / 'sorrel' / 'sorrel.ifc'}\n", encoding="utf-8")
    verbs = {
        "layout": (["layout", model, "--formats", "json,csv,ifc", "--out", "OUT"], duration),
        "check": (["check", model, "--fail-on", "none", "--formats", "csv,json,html", "--junit", "OUT/junit.xml", "--out", "OUT"], duration),
        "slab": (["slab", whole / "layout.json", "--readings", fixtures / "survey" / "yarrow-slab.csv", "--units", "ft", "--out", "OUT"], duration / 2),
        "compare": (["compare", whole / "layout.json", whole / "layout.json", "--html", "OUT/page.html"], duration / 2),
        "catalog ids": (["catalog", "ids", "aac-mm", "--out", "OUT"], duration / 3),
        "batch": (["batch", lots, "--formats", "json,csv", "--out", "OUT"], duration * 1.5),
    }
    chance = random.Random(1)
    for verb, (arguments, length) in verbs.items():
        name = verb.replace(" ", "-")
        undisturbed = run(command, placed(arguments, folder / f"{name}-whole"))
        if undisturbed.returncode != 0:
            yield f"{verb}: the undisturbed run ends with {undisturbed.returncode}: {undisturbed.stderr.strip()[:300]}"
            continue
        for number in range(STOPS_OF_EACH):
            out, sent = folder / f"{name}-{number}", chance.choice(list(STOPPED))
            process = start(command, placed(arguments, out))
            time.sleep(length * (number + chance.random()) / STOPS_OF_EACH)
            process.send_signal(sent)
            _, error = process.communicate(timeout=60)
            # Before the program runs the system ends it, and there is nothing to tell.
            if process.returncode not in (0, STOPPED[sent], -sent):
                yield f"{verb} stopped by {sent.name}: status {process.returncode}: {error.strip()[:300]}"
            if process.returncode == STOPPED[sent] and "stopped" not in error:
                yield f"{verb} stopped by {sent.name}: no message, but {error.strip()[:300]!r}"
            yield from differences(f"{verb} stopped by {sent.name}", folder / f"{name}-whole", out, partly=True)


def placed(arguments, out):
    return [str(argument).replace("OUT", str(out), 1) if str(argument).startswith("OUT") else argument for argument in arguments]


def refused(what, done, status):
    lines = done.stderr.strip().splitlines()
    if done.returncode != status:
        yield f"{what}: exit status {done.returncode}, not {status}: {done.stderr.strip()[:300]}"
    elif len(lines) != 1 or not lines[0].startswith("error:") or "defect" in lines[0]:
        yield f"{what}: no single clear message: {done.stderr.strip()[:300]!r}"


def differences(what, whole, out, partly=False):
    """partly: files may be missing, but those that are there are whole."""
    there, all_files = files(out), files(whole)
    if there - all_files:
        yield f"{what}: left behind: {', '.join(sorted(there - all_files)[:5])}"
    if not partly and all_files - there:
        yield f"{what}: missing: {', '.join(sorted(all_files - there)[:5])}"
    for name in sorted(there & all_files):
        if not filecmp.cmp(whole / name, out / name, shallow=False):
            yield f"{what}: {name} is not that of an undisturbed run"


def files(folder):
    return {str(path.relative_to(folder)) for path in folder.rglob("*") if not path.is_dir() or path.name.startswith(".ifccourser")} if folder.exists() else set()


def start(command, arguments):
    return subprocess.Popen([*command, *map(str, arguments)], stdin=subprocess.DEVNULL, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)


def run(command, arguments):
    process = start(command, arguments)
    out, error = process.communicate(timeout=120)
    return subprocess.CompletedProcess(process.args, process.returncode, out, error)
