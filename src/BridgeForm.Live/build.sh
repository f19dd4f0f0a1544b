#!/usr/bin/env bash
# Makes the live page, one file with everything in it: src/BridgeForm.Live/build.sh OUT.html [FOLDER FOR WORK]
# Needs the .NET SDK and Node; nothing is written into the folders of the sources but what npm installs.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
out=$(realpath -m "${1:?which file?}")
work=$(realpath -m "${2:-$here/../../artifacts/live}")
mkdir -p "$work"
rm -rf "$work/published" "$work/first"
[ -d "$here/../BridgeForm.Preview/node_modules/esbuild" ] || npm ci --prefix "$here/../BridgeForm.Preview" --no-audit --no-fund
dotnet publish "$here/BridgeForm.Live.csproj" -c Release -o "$work/published" --artifacts-path "$work/artifacts" \
  -p:LivePage=true -p:RunAnalyzers=false -p:UseSharedCompilation=false --nologo -v quiet
cli=$here/../BridgeForm.Cli/bin/Release/net10.0/BridgeForm.Cli.dll
dotnet build "$here/../BridgeForm.Cli/BridgeForm.Cli.csproj" -c Release --nologo -v quiet
mkdir -p "$work/first"
dotnet "$cli" start "$work/first/project.yaml" --quiet
dotnet "$cli" make "$work/first/project.yaml" -o "$work/first/out" --only preview --quiet
node "$here/../BridgeForm.Preview/live.mjs" "$work/published" "$work/first/out/preview.html" "$work/first/project.yaml" "$out"
