#!/usr/bin/env bash
# Mutation score of a folder of the library, by the tests of the same folder: tools/mutation.sh FOLDER [FILES [LINES]], such as Step21, or Modules 'Length*.cs';
# of a folder that would take hours so many lines are drawn at random, the same ones each time: Coursing '*.cs' 72.
# Works in a copy of HEAD, where mutation-report.json is left too. The whole library is mutated and compiled, whatever is asked for: minutes, before the first mutant is run.
set -eu
folder=$1
files=${2:-*.cs}
cd "$(dirname "$0")/.."
copy=$(mktemp -d)
echo "copy: $copy"
git archive HEAD | tar x -C "$copy"
dotnet tool install dotnet-stryker --version 5.1.0 --tool-path "$copy/tool"
# What Stryker is to mutate: files, or of those that hold drawn lines the characters of each line.
mutate=$(python3 - "$copy/src/IfcCourser/$folder" "$files" "${3:-0}" <<'END'
import json, pathlib, random, sys
folder, files, count = pathlib.Path(sys.argv[1]), sys.argv[2], int(sys.argv[3])
lines = []
for file in sorted(folder.rglob(files)):
    at = 0
    for line in file.read_text(encoding="utf-8").split("\n"):
        if line.strip() and not line.strip().startswith(("//", "using", "namespace", "{", "}", "[")):
            lines.append((file, at, at + len(line)))
        at += len(line) + 1
spans = {}
for file, start, end in sorted(random.Random(1).sample(lines, count)):
    spans.setdefault(file.relative_to(folder), []).append("{%d..%d}" % (start, end))
print(json.dumps([f"**/{folder.name}/{file}{''.join(of)}" for file, of in spans.items()] or [f"**/{folder.name}/{files}"]))
END
)
cd "$copy/tests/IfcCourser.Tests"
find . -mindepth 1 -maxdepth 1 -type d ! -name "$folder" ! -name Support -exec rm -r {} +
rm LayeringTests.cs
cat >stryker-config.json <<END
{ "stryker-config": { "project": "IfcCourser.csproj", "configuration": "Release", "test-runner": "mtp", "coverage-analysis": "perTest", "concurrency": 2,
  "mutate": $mutate, "additional-timeout": 20000, "reporters": ["json", "dots"] } }
END
RunAnalyzers=false EnforceCodeStyleInBuild=false "$copy/tool/dotnet-stryker" --skip-version-check -O "$copy"
