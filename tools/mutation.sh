#!/usr/bin/env bash
# Mutation score of a folder of the library, by the tests of the same folder: tools/mutation.sh FOLDER [FILES], such as Step21, or Modules 'Length*.cs'.
# Works in a copy of HEAD, where mutation-report.json is left too. The whole library is mutated and compiled, whatever is asked for: minutes, before the first mutant is run.
set -eu
folder=$1
files=${2:-*.cs}
cd "$(dirname "$0")/.."
copy=$(mktemp -d)
echo "copy: $copy"
git archive HEAD | tar x -C "$copy"
dotnet tool install dotnet-stryker --version 5.1.0 --tool-path "$copy/tool"
cd "$copy/tests/IfcCourser.Tests"
find . -mindepth 1 -maxdepth 1 -type d ! -name "$folder" ! -name Support -exec rm -r {} +
rm LayeringTests.cs
cat >stryker-config.json <<END
{ "stryker-config": { "project": "IfcCourser.csproj", "configuration": "Release", "test-runner": "mtp", "coverage-analysis": "perTest", "concurrency": 2,
  "mutate": ["**/$folder/$files"], "additional-timeout": 20000, "reporters": ["json", "dots"] } }
END
RunAnalyzers=false EnforceCodeStyleInBuild=false "$copy/tool/dotnet-stryker" --skip-version-check -O "$copy"
