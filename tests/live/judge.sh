#!/usr/bin/env bash
# Judges a live page in the browser: tests/live/judge.sh LIVE.html PROGRAM, PROGRAM being BridgeForm.Cli.dll or the published program.
# It opens from disk and asks for nothing, control and text agree, faults have the command line's words, files its bytes. MINUTES=1 has
# every sample's files instead of two samples', and all broken links; tests/live-agree.sh a thousand edits.
set -euo pipefail
cd "$(dirname "$0")/../.."
most=8000000
[ "$(stat -c %s "$1")" -le "$most" ] || { echo "$1 is larger than $most bytes"; exit 1; }
[ -n "${MINUTES:-}" ] || export SAMPLES=${SAMPLES:-alder-dell,fern-rise}
SHOW_TIMES=1 node tests/live/judge.mjs "$1" "$2"
