#!/usr/bin/env bash
# Judges a live page in the browser: tests/live/judge.sh LIVE.html PROGRAM, PROGRAM being BridgeForm.Cli.dll or the published program.
# It opens from disk and asks for nothing, control and text agree, faults have the command line's words, files its bytes, axe finds
# nothing in ten states. MINUTES=1 has what takes minutes too: searches, links, a reload, every sample's files, a hundred random edits.
# tests/live-agree.sh has a thousand.
set -euo pipefail
cd "$(dirname "$0")/../.."
most=8000000
[ "$(stat -c %s "$1")" -le "$most" ] || { echo "$1 is larger than $most bytes"; exit 1; }
if [ -z "${MINUTES:-}" ]; then
  export SAMPLES=${SAMPLES:-fern-rise} EDITS=${EDITS:-10} SKIP='ways_that|a_link|three_questions|browser_keeps|fifty_undos|two_designs|engine_that_throws'
fi
SHOW_TIMES=1 node tests/live/judge.mjs "$1" "$2"
