#!/usr/bin/env bash
# Packages the program into FOLDER: a package for `dotnet tool install`, a file for each system that runs without .NET installed, the licences of what is
# inside, and a list of it for machines (CycloneDX).
# Usage: tools/package.sh FOLDER [SYSTEM...], systems by their .NET names; linux-x64, win-x64 and osx-arm64 where none is named.
set -eu
[ $# -ge 1 ] || { sed -n '4p' "$0" >&2; exit 2; }
mkdir -p "$1"; folder=$(cd "$1" && pwd); shift
[ $# -gt 0 ] || set -- linux-x64 win-x64 osx-arm64
cd "$(dirname "$0")/.."
# Zip entries bear the time of the commit: the same commit gives the same bytes. Paths of this machine stay out of what is built.
SOURCE_DATE_EPOCH=$(git log -1 --format=%ct); export SOURCE_DATE_EPOCH
same=(-p:ContinuousIntegrationBuild=true -p:RunAnalyzers=false -p:EnforceCodeStyleInBuild=false)
dotnet restore src/IfcCourser.Cli --locked-mode
# Emptied, for a package for each system would be made otherwise.
dotnet pack src/IfcCourser.Cli -c Release --no-restore -o "$folder" -p:RuntimeIdentifiers= "${same[@]}"
# Native code all through, where this is such a machine with a linker: starts three times as fast and takes a third of the room. Other systems can't be compiled for from here.
native=
if [ "$(uname -sm)" = "Linux x86_64" ] && { command -v clang || command -v gcc; } >/dev/null; then native=linux-x64; fi
for system in "$@"; do
    if [ "$system" = "$native" ]; then
        # The lock files hold no compiler, which comes with the SDK; all else that is used was restored under them above.
        dotnet publish src/IfcCourser.Cli -c Release -r "$system" --self-contained -o "$folder/$system" \
            -p:PublishAot=true -p:RuntimeIdentifiers="$system" -p:NuGetLockFilePath=obj/native.lock.json -p:TrimmerSingleWarn=false -p:DebugType=none "${same[@]}"
        rm -f "$folder/$system/ifccourser.dbg"
        continue
    fi
    # Compiled ahead of time, together with the runtime, whose lists and queries over our own values would else be compiled at each start: start-up is most of
    # what a small model takes.
    dotnet publish src/IfcCourser.Cli -c Release -r "$system" --self-contained -o "$folder/$system" \
        -p:PublishSingleFile=true -p:EnableSingleFileAnalyzer=false -p:PublishReadyToRun=true -p:PublishReadyToRunComposite=true -p:DebugType=none -p:RestoreLockedMode=true "${same[@]}"
done
# What follows looks at the packages of the lock files again.
dotnet restore src/IfcCourser.Cli --locked-mode
/usr/bin/env python3 tools/licences.py --notices "$folder/LICENCES.txt"
version=$(dotnet msbuild src/IfcCourser.Cli -getProperty:Version)
(cd tools && dotnet tool restore && dotnet tool run dotnet-CycloneDX -- ../src/IfcCourser.Cli/IfcCourser.Cli.csproj -o "$folder" -fn sbom.json -F Json \
    --set-name IfcCourser --set-version "$version" --no-serial-number --disable-package-restore --exclude-dev)
/usr/bin/env python3 tools/licences.py --timeless "$folder/sbom.json"
