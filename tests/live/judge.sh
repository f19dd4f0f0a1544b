#!/usr/bin/env bash
# Judges a live page in the browser, in the time that the tests have: tests/live/judge.sh LIVE.html BridgeForm.Cli.dll
# Searches, a second visit and random edits take minutes: they are left to tests/live-agree.sh, which takes all five samples too.
set -euo pipefail
cd "$(dirname "$0")/../.."
most=8000000
[ "$(stat -c %s "$1")" -le "$most" ] || { echo "$1 is larger than $most bytes"; exit 1; }
SAMPLES=${SAMPLES:-alder-dell} SKIP=${SKIP:-three_questions|ways_that_are_tried|browser_keeps|random_edits} SHOW_TIMES=1 node tests/live/judge.mjs "$1" "$2"
