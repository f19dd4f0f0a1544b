#!/usr/bin/env bash
# Makes the tool package: src/pack.sh [DIR] (by default artifacts); BRIDGEFORM_VERSION gives it another version.
# `dotnet tool install --add-source DIR BridgeForm.Tool` takes it. Same commit, same SDK: same bytes.
set -euo pipefail
cd "$(dirname "$0")/.."
umask 022
target=${1:-artifacts}
mkdir -p "$target"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
# Without symbols: they would name the folder it was built in.
dotnet pack src/BridgeForm.Cli -c Release ${BRIDGEFORM_VERSION:+-p:Version=$BRIDGEFORM_VERSION} -p:ContinuousIntegrationBuild=true \
  -p:DebugType=none -p:UseSharedCompilation=false -p:RunAnalyzers=false --artifacts-path "$work/artifacts" -o "$work/out" --nologo -v quiet

# A package is a zip archive, and each of its entries carries the time it was packed: all get the same one.
for package in "$work"/out/*.nupkg; do
  python3 - "$package" "$target/$(basename "$package")" <<'PY'
import sys, zipfile
packed, out = sys.argv[1:]
with zipfile.ZipFile(packed) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as new:
    for name in sorted(old.namelist()):
        entry = zipfile.ZipInfo(name, (1980, 1, 1, 0, 0, 0))
        entry.compress_type, entry.external_attr = zipfile.ZIP_DEFLATED, 0o644 << 16
        new.writestr(entry, old.read(name))
PY
done
