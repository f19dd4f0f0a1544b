#!/usr/bin/env bash
# Searches five hundred random sites (tests/BridgeForm.Benchmarks/SiteWishes.cs); where nothing is found a full grid says whether
# something was to be found. Then ten sites against grids of more than five thousand designs each. Writes docs/sites.md. Takes hours.
set -euo pipefail
cd "$(dirname "$0")/.."
dotnet build tests/BridgeForm.Benchmarks -c Release --nologo -v q
program=tests/BridgeForm.Benchmarks/bin/Release/net10.0/BridgeForm.Benchmarks.dll
first=${1:-1}
count=${2:-500}
{
    echo "# Sites"
    echo
    echo "What \`start --span\` finds for random sites of 8 to 120 ft, rises to 1 : 4, private and public, both units, three lists of"
    echo "lumber, and how its weight compares with the best of a full grid. Made by \`bash tests/sites.sh $first $count\`."
    echo
    echo '```'
    dotnet "$program" sites "$first" "$count" || true
    echo '```'
    echo
    echo "## Against full grids"
    echo
    echo '```'
    dotnet "$program" sites-grid 201 10
    echo '```'
} > docs/sites.md
tail -n 3 docs/sites.md
