#!/usr/bin/env python3
"""What tools/package.sh made, used as on a machine that has no checkout: the package installed with `dotnet tool install`, and the single file run by a
user without rights to it, in an empty environment, from another folder. Both must write what the build writes, byte for byte.

    packages.py --packages FOLDER --command DLL --fixtures FOLDER --work FOLDER
"""
import argparse
import filecmp
import json
import os
import shutil
import subprocess
import sys
import zipfile
from pathlib import Path

import completion
import tutorial

MAGIC = {"linux-x64": b"\x7fELF", "win-x64": b"MZ", "osx-arm64": b"\xcf\xfa\xed\xfe"}
NOBODY = 65534


def problems(packages, command, fixtures, work):
    shutil.rmtree(work, ignore_errors=True)
    work.mkdir(parents=True)
    os.chmod(work, 0o755)
    model = work / "house.ifc"
    shutil.copy(fixtures / "ifc" / "yarrow" / "yarrow.ifc", model)
    ran(["dotnet", command, "layout", model, "--out", work / "built", "--ifc-parts", "--quiet"], work, None)
    yield from contents_problems(packages)
    yield from package_problems(packages, work)
    yield from single_file_problems(packages, fixtures, work)


def contents_problems(packages):
    """The list for machines names what the list of licences names, each with its hash and licence."""
    components = json.loads((packages / "sbom.json").read_text("utf-8"))["components"]
    listed = {f"{c['name']} {c['version']}" for c in components}
    licensed = {line.split(":")[0] for line in (packages / "LICENCES.txt").read_text("utf-8").splitlines()[2:]}
    if listed != licensed or not listed:
        yield f"sbom.json and LICENCES.txt name other packages: {sorted(listed ^ licensed)}"
    yield from (f"sbom.json has no hash or licence of {c['name']}" for c in components if not c.get("hashes") or not c.get("licenses"))


def package_problems(packages, work):
    found = list(packages.glob("IfcCourser.*.nupkg"))
    if len(found) != 1:
        yield f"{len(found)} packages, not one"
        return
    version = found[0].name.removeprefix("IfcCourser.").removesuffix(".nupkg")
    with zipfile.ZipFile(found[0]) as content:
        names = content.namelist()
        nuspec = content.read("IfcCourser.nuspec").decode("utf-8")
    for part in ("<version>", "<description>", "<readme>README.md</readme>", 'packageType name="DotnetTool"'):
        if part not in nuspec:
            yield f"the package does not say {part}"
    if "README.md" not in names or any(name.endswith(".xml") and "/net10.0/" in name and "DotnetToolSettings" not in name for name in names):
        yield "the package has no README, or documentation of its libraries"
    if any("resources.dll" in name for name in names):
        yield "the package would say some words in other languages than its own"
    home = work / "home"
    home.mkdir()
    environment = {"PATH": os.environ["PATH"], "HOME": str(home), "DOTNET_CLI_TELEMETRY_OPTOUT": "1", "DOTNET_NOLOGO": "1", "DOTNET_SKIP_FIRST_TIME_EXPERIENCE": "1"}
    (work / "nuget.config").write_text(f'<configuration><packageSources><clear /><add key="here" value="{packages}" /></packageSources></configuration>\n')
    ran(["dotnet", "tool", "install", "IfcCourser", "--version", version, "--tool-path", work / "tool", "--configfile", work / "nuget.config"], work, environment)
    dotnet = Path(shutil.which("dotnet")).resolve().parent
    clean = {"HOME": str(home), "DOTNET_ROOT": str(dotnet)}
    ran([work / "tool" / "ifccourser", "layout", "house.ifc", "--out", "installed", "--ifc-parts", "--quiet"], work, clean)
    yield from (f"the installed tool writes {line}" for line in differences(work / "built", work / "installed"))
    said = ran([work / "tool" / "ifccourser", "--version"], work, clean).strip()
    if said.split("+")[0] != version:
        yield f"the package of version {version} says {said}"
    print(f"package: version {version}, {found[0].stat().st_size / 1e6:.1f} MB, installed from its folder")


def single_file_problems(packages, fixtures, work):
    for system, magic in MAGIC.items():
        folder = packages / system
        if not folder.is_dir():
            print(f"single file for {system}: not made")
            continue
        files = sorted(folder.iterdir())
        if [file.stem for file in files] != ["ifccourser"] or not files[0].read_bytes().startswith(magic):
            yield f"{system}: {[file.name for file in files]} is not one file of that system"
        print(f"single file for {system}: {files[0].stat().st_size / 1e6:.1f} MB" + ("" if system == "linux-x64" else ", not run here"))
    place = work / "opt"
    place.mkdir()
    program = place / "ifccourser"
    shutil.copy(packages / "linux-x64" / "ifccourser", program)
    os.chmod(program, 0o555)
    os.chmod(place, 0o555)
    elsewhere = work / "elsewhere"
    elsewhere.mkdir()
    # Without rights to anything but its folder of results; as root nothing would be read-only.
    user = NOBODY if os.geteuid() == 0 else None
    if user:
        os.chown(elsewhere, user, user)
    before = sorted(place.iterdir())
    ran([program, "layout", work / "house.ifc", "--out", "single", "--ifc-parts", "--quiet"], elsewhere, {}, user)
    yield from (f"the single file writes {line}" for line in differences(work / "built", elsewhere / "single"))
    if sorted(place.iterdir()) != before or [file.name for file in elsewhere.iterdir()] != ["single"]:
        yield "the single file leaves files where it lies or beside its results"
    ran([program, "check", work / "house.ifc", "--out", "checked", "--quiet", "--fail-on", "none"], elsewhere, {"HOME": "/nonexistent", "LC_ALL": "tr_TR.UTF-8"}, user)
    yield from tutorial.problems(fixtures, work / "tutorial", [str(program)])
    yield from completion.problems([str(program)])


def ran(command, folder, environment, user=None):
    run = subprocess.run([str(word) for word in command], cwd=folder, env=environment, user=user, group=user, capture_output=True, text=True, timeout=600)
    if run.returncode != 0:
        sys.exit(f"{command[0]} {command[1]} ends with {run.returncode}: {run.stdout[-1000:]} {run.stderr[-1000:]}")
    return run.stdout


def differences(expected, given):
    """Yields files that differ between two folders, byte for byte."""
    names = {file.relative_to(folder) for folder in (expected, given) for file in folder.rglob("*") if file.is_file()}
    if len(names) < 40:
        yield f"only {len(names)} files"
    for name in sorted(names):
        if not ((expected / name).is_file() and (given / name).is_file() and filecmp.cmp(expected / name, given / name, shallow=False)):
            yield f"another {name} than the build"


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    for name in ("--packages", "--command", "--fixtures", "--work"):
        parser.add_argument(name, type=lambda text: Path(text).resolve(), required=True)
    arguments = parser.parse_args()
    found = list(problems(arguments.packages, arguments.command, arguments.fixtures, arguments.work))
    for problem in found:
        print(f"PROBLEM: {problem}")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
