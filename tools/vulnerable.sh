#!/usr/bin/env bash
# Whether any package of the solution is known to be vulnerable; exit status 1 where one is. Not every registry tells: a package that has been known to be
# vulnerable since 2022 (Newtonsoft.Json 12.0.1, GHSA-5crp-9r3c-p9vr) is asked for first, and where it passes as sound, nothing was learnt and that is said.
set -u
cd "$(dirname "$0")/.." || exit 1
control=$(mktemp -d) || exit 1
trap 'rm -rf "$control"' EXIT
cat >"$control/control.csproj" <<'END'
<Project Sdk="Microsoft.NET.Sdk">
  <PropertyGroup><TargetFramework>net10.0</TargetFramework><NuGetAudit>false</NuGetAudit></PropertyGroup>
  <ItemGroup><PackageReference Include="Newtonsoft.Json" Version="12.0.1" /></ItemGroup>
</Project>
END
named='has the following vulnerable packages'
dotnet restore "$control" >"$control/log" 2>&1
if ! dotnet list "$control/control.csproj" package --vulnerable 2>&1 | tee -a "$control/log" | grep -q "$named"; then
    tail -3 "$control/log"
    echo "vulnerabilities: NOT KNOWN, for this registry does not name a package that is known to be vulnerable"
    exit 0
fi
dotnet list IfcCourser.sln package --vulnerable --include-transitive 2>&1 | tee "$control/log"
! grep -q "$named" "$control/log"
