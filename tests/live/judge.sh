#!/usr/bin/env bash
# Judges a live page in the browser in half a minute: tests/live/judge.sh LIVE.html BridgeForm.Cli.dll
# It opens from disk and asks for nothing, control and text agree, faults have the command line's words, files its bytes. What takes
# minutes is left to tests/live-agree.sh: SKIP=none has all of it here too.
set -euo pipefail
cd "$(dirname "$0")/../.."
most=8000000
[ "$(stat -c %s "$1")" -le "$most" ] || { echo "$1 is larger than $most bytes"; exit 1; }
minutes='a_link|three_questions|ways_that|browser_keeps|random_edits|fifty|hostile|handle|begins_anew|two_designs|what_changed|telephone|axe|keyboard'
SAMPLES=${SAMPLES:-alder-dell} SKIP=${SKIP:-$minutes} SHOW_TIMES=1 node tests/live/judge.mjs "$1" "$2"
