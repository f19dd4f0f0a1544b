#!/usr/bin/env bash
# Judges a live page in the browser, in the time that the tests have: tests/live/judge.sh LIVE.html BridgeForm.Cli.dll
# tests/live-agree.sh takes all five samples and a thousand edits.
set -euo pipefail
cd "$(dirname "$0")/../.."
most=8000000
[ "$(stat -c %s "$1")" -le "$most" ] || { echo "$1 is larger than $most bytes"; exit 1; }
SAMPLES=${SAMPLES:-alder-dell,moss-crossing} EDITS=${EDITS:-12} SHOW_TIMES=1 node tests/live/judge.mjs "$1" "$2"
