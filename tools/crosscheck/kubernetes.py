"""The Kubernetes job file against the schema of its kind, by somebody else's models of it."""
import subprocess
from pathlib import Path

FILE = Path(__file__).resolve().parents[1] / "cluster" / "kubernetes.yaml"


def problems(node):
    """Yields what is wrong, a line each."""
    done = subprocess.run(["node", node / "kubernetes.mjs", FILE], stdin=subprocess.DEVNULL, capture_output=True, text=True, check=False)
    yield from (f"kubernetes.yaml: {line}" for line in done.stdout.splitlines())
    if done.returncode != 0:
        yield f"kubernetes.yaml was not checked: {done.stderr[-300:]}"
