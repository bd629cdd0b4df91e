#!/usr/bin/env python3
"""The licences of all packages that the lock files name, from the packages themselves.

    licences.py                        lists them, shipped ones apart; exit status 1 where one is not known to be free to use so
    licences.py --notices FILE         lists those of what is shipped alone, and writes them
    licences.py --timeless SBOM.json   takes the clock out of a CycloneDX file, so that the same packages give the same bytes
"""
import argparse
import json
import os
import re
import sys
from pathlib import Path

TOP = Path(__file__).resolve().parent.parent
PACKAGES = Path(os.environ.get("NUGET_PACKAGES") or Path.home() / ".nuget" / "packages")
FREE = {"MIT", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "BSL-1.0", "0BSD"}
# Packages that carry a text in place of a name, read by a person: what it is.
READ = {}
BUILD_ONLY = re.compile(r'<PackageReference Include="([^"]+)" PrivateAssets="all"')


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--notices", type=Path)
    parser.add_argument("--timeless", type=Path)
    arguments = parser.parse_args()
    if arguments.timeless:
        return without_clock(arguments.timeless)
    build_only = {name.lower() for name in BUILD_ONLY.findall((TOP / "src" / "Directory.Build.props").read_text("utf-8"))}
    shipped = locked([TOP / "src" / "IfcCourser.Cli" / "packages.lock.json"]) - {p for p in locked(lock_files()) if p[0].lower() in build_only}
    others = locked(lock_files()) - shipped
    unknown = told("shipped", shipped) + ([] if arguments.notices else told("for building, tests and tools only", others))
    for line in unknown:
        print(f"NOT KNOWN: {line}")
    if not shipped:
        unknown.append("no package is locked")
    if arguments.notices and not unknown:
        arguments.notices.write_text(notices(shipped), encoding="utf-8", newline="\n")
    return 1 if unknown else 0


def lock_files():
    return sorted(file for folder in ("src", "tests", "tools") for file in (TOP / folder).glob("**/packages.lock.json") if "obj" not in file.parts)


def locked(files):
    """(name, version) of every package that lock files name; projects among them left out."""
    found = set()
    for file in files:
        for packages in json.loads(file.read_text("utf-8"))["dependencies"].values():
            found |= {(name, entry["resolved"]) for name, entry in packages.items() if entry["type"] != "Project"}
    return found


def told(title, packages):
    """Prints a table and returns the packages whose licence is not known."""
    print(f"{title}: {len(packages)} packages")
    unknown = []
    for name, version in sorted(packages, key=lambda p: (p[0].lower(), p[1])):
        licence, _ = licence_of(name, version)
        print(f"  {name} {version}: {licence}")
        if not is_free(licence) and READ.get(name) is None:
            unknown.append(f"{name} {version}: {licence}")
    return unknown


def is_free(expression):
    """An expression all of whose parts are free; of alternatives, one."""
    return any(all(part.strip(" ()") in FREE for part in choice.split(" AND ")) for choice in expression.split(" OR "))


def licence_of(name, version):
    """(licence, copyright) by the package's own description."""
    folder = PACKAGES / name.lower() / version.lower()
    files = list(folder.glob("*.nuspec"))
    if not files:
        return "the package is not in the local folder: restore first", ""
    text = files[0].read_text("utf-8-sig")
    copyright = match.group(1) if (match := re.search(r"<copyright>([^<]*)</copyright>", text)) else ""
    if match := re.search(r'<license type="expression">([^<]+)</license>', text):
        return match.group(1), copyright
    if match := re.search(r'<license type="file">([^<]+)</license>', text):
        return f"{by_text((folder / match.group(1).replace(chr(92), '/')).read_text('utf-8-sig', errors='replace'))}", copyright
    return (match.group(1) if (match := re.search(r"<licenseUrl>([^<]+)</licenseUrl>", text)) else "none named"), copyright


def by_text(text):
    """The name of a licence by sentences that only it has."""
    plain = " ".join(text.split())
    if "Permission is hereby granted, free of charge, to any person obtaining a copy" in plain:
        return "MIT"
    if "Apache License Version 2.0" in plain:
        return "Apache-2.0"
    if "Redistribution and use in source and binary forms" in plain:
        return "BSD-3-Clause" if "Neither the name" in plain else "BSD-2-Clause"
    return "a text that is not known: " + plain[:60]


def notices(shipped):
    lines = ["IfcCourser contains these packages, and the font DejaVu Sans (Bitstream Vera licence, beside its source in Pdf/Font).", ""]
    for name, version in sorted(shipped, key=lambda p: p[0].lower()):
        licence, copyright = licence_of(name, version)
        lines.append(f"{name} {version}: {licence}. {copyright}".rstrip())
    return "\n".join(lines) + "\n"


def without_clock(file):
    content = json.loads(file.read_text("utf-8-sig"))
    content.get("metadata", {}).pop("timestamp", None)
    content.pop("serialNumber", None)
    file.write_text(json.dumps(content, indent=2, ensure_ascii=False) + "\n", encoding="utf-8", newline="\n")
    return 0


if __name__ == "__main__":
    sys.exit(main())
