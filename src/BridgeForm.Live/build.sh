#!/usr/bin/env bash
# Makes the live page, one file with everything in it: src/BridgeForm.Live/build.sh OUT.html [FOLDER FOR WORK] [BridgeForm.Cli.dll]
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
cli=${3:-}
if [ -z "$cli" ]; then
  cli=$here/../BridgeForm.Cli/bin/Release/net10.0/BridgeForm.Cli.dll
  dotnet build "$here/../BridgeForm.Cli/BridgeForm.Cli.csproj" -c Release --nologo -v quiet
fi
mkdir -p "$work/first"
dotnet "$cli" start "$work/first/project.yaml" --quiet
dotnet "$cli" make "$work/first/project.yaml" -o "$work/first/out" --only preview --quiet
# The runtime is inside the page: its licence and notices go with it, from the package that it was taken from.
packages=$(dotnet nuget locals global-packages --list | sed 's/^[^:]*: *//')
runtime=$(find "${packages}microsoft.netcore.app.runtime.mono.browser-wasm" -mindepth 1 -maxdepth 1 -type d | sort -V | tail -n 1)
cat "$runtime/LICENSE.TXT" "$runtime/THIRD-PARTY-NOTICES.TXT" > "$work/notices.txt"
node "$here/../BridgeForm.Preview/live.mjs" "$work/published" "$work/first/out/preview.html" "$work/first/project.yaml" "$work/notices.txt" "$(dotnet "$cli" --version)" "$out"
