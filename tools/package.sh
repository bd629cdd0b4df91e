#!/usr/bin/env bash
# Packages the program into FOLDER: a package for `dotnet tool install`, and a file for each system that runs without .NET installed.
# Usage: tools/package.sh FOLDER [SYSTEM...], systems by their .NET names; linux-x64, win-x64 and osx-arm64 where none is named.
set -eu
[ $# -ge 1 ] || { sed -n '3p' "$0" >&2; exit 2; }
folder=$1; shift
[ $# -gt 0 ] || set -- linux-x64 win-x64 osx-arm64
cd "$(dirname "$0")/.."
dotnet pack src/IfcCourser.Cli -c Release -o "$folder"
for system in "$@"; do
    # Compiled ahead of time: start-up is most of what a small model takes.
    dotnet publish src/IfcCourser.Cli -c Release -r "$system" --self-contained -o "$folder/$system" \
        -p:PublishSingleFile=true -p:PublishReadyToRun=true -p:DebugType=none -p:GenerateDocumentationFile=false -p:RunAnalyzers=false -p:EnforceCodeStyleInBuild=false
done
