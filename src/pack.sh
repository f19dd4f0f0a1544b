#!/usr/bin/env bash
# Makes the tool package: src/pack.sh [DIR] (by default artifacts); BRIDGEFORM_VERSION gives it another version.
set -euo pipefail
cd "$(dirname "$0")/.."
target=${1:-artifacts}
mkdir -p "$target"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
dotnet pack src/BridgeForm.Cli -c Release ${BRIDGEFORM_VERSION:+-p:Version=$BRIDGEFORM_VERSION} -p:ContinuousIntegrationBuild=true -p:UseSharedCompilation=false \
  --artifacts-path "$work" -o "$work/out" --nologo -v quiet
mv "$work"/out/*.nupkg "$target/"
