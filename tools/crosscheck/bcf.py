"""check over the houses as BCF 2.1 and 3.0: read by @parametricos/bcf-js and held to layout and findings."""
import csv
import json
import math
import subprocess
import xml.etree.ElementTree as ElementTree
import zipfile
from pathlib import Path

VERSIONS = ("2.1", "3.0")
ASKED = "opening-off-module"


def problems(models, work: Path, command, node: Path):
    """Yields a line for every problem of the models' issues in both versions."""
    for model in models:
        for version in VERSIONS:
            folder = work / version / model.stem
            run = subprocess.run([*command, "check", model, "--openings", "keep", "--bcf", version, "--out", folder, "--quiet"],
                                 stdin=subprocess.DEVNULL, capture_output=True, text=True, check=False)
            if run.returncode not in (0, 1):
                yield f"{model.name}, BCF {version}: exit status {run.returncode}: {run.stderr.strip()[:400]}"
                continue
            yield from (f"{model.name}, BCF {version}: {text}" for text in problems_of(folder / "coordination", version, node))


def problems_of(folder: Path, version: str, node: Path):
    path = folder / "issues.bcf"
    told = json.loads((folder / "findings.json").read_text(encoding="utf-8"))
    with zipfile.ZipFile(path) as file:
        if file.testzip() is not None:
            yield f"the check of {file.testzip()} is wrong"
        markups = [ElementTree.fromstring(file.read(name)) for name in file.namelist() if name.endswith("/markup.bcf")]
    read = subprocess.run(["node", "bcf_topics.cjs", f"{version}={path.resolve()}"], cwd=node, stdin=subprocess.DEVNULL, capture_output=True, text=True, check=False)
    if read.returncode != 0:
        yield f"bcf-js fails: {read.stderr.strip()[-300:]}"
        return
    topics = {topic["guid"]: topic for topic in json.loads(read.stdout)["topics"]}
    written = {markup.find("Topic").get("Guid"): markup.find("Topic").findtext("Title") for markup in markups}
    if {guid: topic["title"] for guid, topic in topics.items()} != written:
        yield f"bcf-js reads {len(topics)} topics, {len(written)} are written, or their titles differ"
    yield from problems_of_topics(topics.values(), folder, told)


def problems_of_topics(topics, folder: Path, told):
    with open(folder / "findings.csv", encoding="utf-8", newline="") as rows:
        asked = {row["opening"]: row["wall"] for row in csv.DictReader(rows) if row["code"] == ASKED}
    walls = {wall["wall"] for wall in told["checked"]}
    off = [topic for topic in topics if "off the module" in topic["title"] and len(topic["views"][0]["selected"]) == 2]
    if len(off) != len(asked):
        yield f"{len(off)} topics of openings off the module, {len(asked)} findings"
    for topic in topics:
        if topic["header"] != [[told["project"]["globalId"], told["project"]["file"]]]:
            yield f"{topic['guid']} names the model {topic['header']}"
        for view in topic["views"]:
            if not walls.intersection(view["selected"]):
                yield f"{topic['guid']} selects no wall: {view['selected']}"
            if not all(math.isfinite(view["camera"][axis]) and abs(view["camera"][axis]) < 1000 for axis in "xyz"):
                yield f"{topic['guid']} is seen from {view['camera']}"
        if topic["snapshots"] != len(topic["views"]):
            yield f"{topic['guid']} has {topic['snapshots']} pictures for {len(topic['views'])} views"
