#!/usr/bin/env bash
# Changes the model in many small places, one at a time, and sees whether a test notices.
#
#   bash tests/mutation.sh                 all: listed survivors and places drawn by lot; writes docs/mutation.md
#   bash tests/mutation.sh --survivors     the listed survivors alone, each against the tests its entry names (a minute)
#   bash tests/mutation.sh --sites N --seed S [--only NUMBER,…] [--count]
#                                          [--under src/BridgeForm/Ropes/] [--tests BridgeForm.Tests.Ropes]
#   bash tests/mutation.sh --within 20     a first look: 20 seconds of tests for each place; what survives is asked in full later
#
# The lists are tests/BridgeForm.Mutation/survivors.json and equivalents.json.
set -euo pipefail
cd "$(dirname "$0")/.."

program=tests/BridgeForm.Mutation/bin/Release/net10.0/BridgeForm.Mutation.dll
if [ "${1:-}" != "--survivors" ] || [ ! -f "$program" ]; then
  dotnet build tests/BridgeForm.Tests -c Release --nologo -v q
  dotnet build tests/BridgeForm.Mutation -c Release --nologo -v q
fi
if [ $# -eq 0 ]; then
  commit=$(git rev-parse --short HEAD)
  [ -z "$(git status --porcelain -- src tests)" ] || commit="$commit with changes"
  set -- --page docs/mutation.md --commit "$commit"
fi
exec dotnet "$program" "$@"
