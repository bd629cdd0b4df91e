#!/usr/bin/env python3
"""Runs slurm.sbatch on a Slurm of its own on this host: an array of tasks, of which one is killed and one is stopped and queued again.

    check_slurm.py --command DLL --fixtures FOLDER --work FOLDER

Wants Debian's slurmctld, slurmd, slurm-client and munge, and root; nothing of the host's own Slurm is read or changed. What the shares leave must
be, once collected, what one run alone writes, byte for byte. Exit status 1 where it is not, or where Slurm can't be run.
"""
import argparse
import os
import re
import shutil
import signal
import socket
import subprocess
import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "crosscheck"))
import batch  # noqa: E402

TASKS = 3
DAEMONS = ("munged", "slurmctld", "slurmd")
COMMANDS = ("sbatch", "squeue", "scontrol", "sinfo")
LONGEST = 900  # seconds; a queue that stands still must not hold up a check for ever

CONFIGURATION = """\
ClusterName=check
SlurmctldHost={host}(127.0.0.1)
SlurmUser=root
SlurmctldPort=26817
SlurmdPort=26818
AuthType=auth/munge
AuthInfo=socket={work}/munge.socket,cred_expire=20
CryptoType=crypto/munge
StateSaveLocation={work}/state
SlurmdSpoolDir={work}/spool
SlurmctldPidFile={work}/slurmctld.pid
SlurmdPidFile={work}/slurmd.pid
ProctrackType=proctrack/linuxproc
TaskPlugin=task/none
SelectType=select/cons_tres
SelectTypeParameters=CR_CPU_Memory
SlurmdParameters=config_overrides
MpiDefault=none
SchedulerParameters=sched_interval=2,bf_interval=5
ReturnToService=2
JobRequeue=1
NodeName={host} NodeAddr=127.0.0.1 CPUs={cpus} RealMemory={memory} State=UNKNOWN
PartitionName=all Nodes={host} Default=YES MaxTime=INFINITE State=UP
"""


class Slurm:
    """Daemons of a Slurm that knows one node; ended with it, each by its own process."""

    def __init__(self, work):
        self.work = work
        self.environment = {**os.environ, "SLURM_CONF": str(work / "slurm.conf")}
        self.processes = []

    def __enter__(self):
        for name in ("state", "spool"):
            (self.work / name).mkdir(parents=True)
        # As munge wants the folders of its files.
        self.work.chmod(0o755)
        host = socket.gethostname().split(".")[0]
        # Each task asks for two processors and 2 GB: the node says that it has them for all at once.
        (self.work / "slurm.conf").write_text(CONFIGURATION.format(host=host, work=self.work, cpus=2 * TASKS, memory=2048 * TASKS))
        key = self.work / "munge.key"
        key.write_bytes(os.urandom(1024))
        key.chmod(0o400)
        self.start("munged", "--foreground", "--force", f"--key-file={key}", f"--socket={self.work}/munge.socket", f"--pid-file={self.work}/munged.pid",
                   f"--log-file={self.work}/munged.log", f"--seed-file={self.work}/munge.seed")
        wait("munge's socket", (self.work / "munge.socket").exists)
        self.start("slurmctld", "-D")
        self.start("slurmd", "-D", "-N", host)
        wait("a node that is idle", lambda: "idle" in self.run("sinfo", "-h", "-o", "%T", check=False))
        return self

    def __exit__(self, *_):
        for process in reversed(self.processes):
            process.terminate()
            process.wait()

    def start(self, name, *options):
        log = (self.work / f"{name}.out").open("w")
        self.processes.append(subprocess.Popen([shutil.which(name, path=f"{os.environ['PATH']}:/usr/sbin:/sbin"), *options], env=self.environment, stdin=subprocess.DEVNULL, stdout=log, stderr=log))

    def run(self, *command, check=True, **environment):
        done = subprocess.run(command, env={**self.environment, **environment}, stdin=subprocess.DEVNULL, capture_output=True, text=True, check=False)
        if check and done.returncode != 0:
            raise RuntimeError(f"{command[0]}: {done.stderr}")
        return done.stdout

    def tasks(self, job):
        """Number of each task that is queued or runs, and its state."""
        return dict(line.split() for line in self.run("squeue", "-h", "-r", "-j", job, "-o", "%K %T", check=False).splitlines())

    def restarts(self, job):
        text = self.run("scontrol", "show", "job", job)
        return {int(task): int(count) for task, count in re.findall(r"ArrayTaskId=(\d+).*?Restarts=(\d+)", text, re.DOTALL)}


def problems(command, fixtures, work):
    missing = [name for name in DAEMONS + COMMANDS if shutil.which(name, path=f"{os.environ['PATH']}:/usr/sbin:/sbin") is None]
    if missing or os.geteuid() != 0:
        yield f"Slurm can't be run: {', '.join(missing) or 'root is wanted'}"
        return
    shutil.rmtree(work, ignore_errors=True)
    work.mkdir(parents=True)
    manifest = batch.write_manifest(fixtures, work / "lots.csv", ("sorrel", "teasel", "yarrow"))
    whole, shared = work / "whole", work / "shared"
    batch.run(command, manifest, whole)
    with Slurm(work / "slurm") as slurm:
        yield from run_array(slurm, command, manifest, shared, work)
    yield from (f"collected: {line}" for line in batch.differences(whole, shared))


def run_array(slurm, command, manifest, shared, work):
    environment = {"IFCCOURSER": " ".join(command)}
    script = Path(__file__).with_name("slurm.sbatch")
    job = slurm.run("sbatch", "--parsable", f"--array=1-{TASKS}", f"--output={work}/task-%a.log", script, manifest, shared, *batch.OPTIONS, **environment).strip()
    wait("a lot that is done", lambda: bool(batch.done_lots(shared)))
    running = [task for task, state in slurm.tasks(job).items() if state == "RUNNING"]
    if len(running) < 2:
        yield f"only {len(running)} of {TASKS} tasks run at once"
        return
    stopped, killed = running[:2]
    kept = batch.done_lots(shared)
    slurm.run("scontrol", "requeue", f"{job}_{stopped}")
    kill(f"--shard {killed}/{TASKS}")
    wait(f"the tasks {stopped} and {killed} to begin again", lambda: {int(stopped), int(killed)} <= {task for task, count in slurm.restarts(job).items() if count >= 1})
    # A requeued job is held back for a while, so that what it ran on is left clean; nothing is to be waited for here.
    wait("the tasks to end", lambda: not slurm.tasks(job))
    done = batch.done_lots(shared)
    yield from (f"lot {lot} was done and is another folder now" for lot, folder in kept.items() if done.get(lot) != folder)
    last = slurm.run("sbatch", "--parsable", "--wait", f"--dependency=afterany:{job}", f"--output={work}/collect.log", "--wrap",
                     " ".join([*command, "batch", str(manifest), "--out", str(shared), *batch.OPTIONS, "--collect"]), check=False).strip()
    print(f"slurm: {TASKS} tasks of job {job}, task {stopped} stopped and queued again, task {killed} killed, {len(kept)} lots done until then, {len(done)} at last; collected by job {last}")


def kill(words):
    """The process of one task, and no other."""
    for folder in Path("/proc").glob("[0-9]*"):
        try:
            line = (folder / "cmdline").read_bytes().replace(b"\0", b" ").decode()
        except OSError:
            continue
        if words in line and "ifccourser.dll batch" in line and "slurm_script" not in line:
            os.kill(int(folder.name), signal.SIGKILL)
            return
    raise RuntimeError(f"no process runs {words}")


def wait(what, holds):
    end = time.monotonic() + LONGEST
    while not holds():
        if time.monotonic() > end:
            raise RuntimeError(f"waited {LONGEST} s in vain for {what}")
        time.sleep(0.2)


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    for name in ("--command", "--fixtures", "--work"):
        parser.add_argument(name, type=lambda text: Path(text).resolve(), required=True)
    arguments = parser.parse_args()
    found = list(problems(["dotnet", str(arguments.command)], arguments.fixtures, arguments.work))
    for problem in found:
        print(f"PROBLEM: {problem}")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
