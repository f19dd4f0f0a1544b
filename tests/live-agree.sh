#!/usr/bin/env bash
# The live page against the command line's program: every file of all five samples, a thousand edits. Takes long: how long was not measured.
set -euo pipefail
cd "$(dirname "$0")/.."
mkdir -p artifacts
bash src/BridgeForm.Live/build.sh artifacts/live.html artifacts/live
MINUTES=1 EDITS=${1:-1000} SHOW_TIMES=1 node tests/live/judge.mjs artifacts/live.html src/BridgeForm.Cli/bin/Release/net10.0/BridgeForm.Cli.dll
