#!/usr/bin/env bash
# Makes each sample's model, preview and picture anew, the live page and its picture, the pictures of the drawing set, and the numbers and content that tests
# pin. Needed when these change: the test of numbers.json says so.
# Needs what tests/run.sh installs, and `npm ci --prefix docs/pictures`.
# docs/pictures/sources.txt says what each picture was made from: its own hash, that of its source, and its name.
set -euo pipefail
cd "$(dirname "$0")/.."
dotnet build BridgeForm.sln -c Release
out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT
pictures=docs/pictures
hash_of() { sha256sum | cut -d' ' -f1; }
bridgeform() { dotnet run --no-build -c Release --project src/BridgeForm.Cli -- "$@"; }
record() { echo "$(hash_of < "$pictures/$2") $1 $2"; }

: > "$pictures/sources.txt"
for project in viewer-samples/*/project.yaml; do
  folder=$(dirname "$project")
  name=$(basename "$folder")
  bridgeform make "$project" --only model,preview -o "$out/$name" --quiet
  cp "$out/$name/model.glb" "$out/$name/preview.html" "$folder/"
  node "$pictures/render.mjs" "$folder/preview.html" "$pictures/$name.png"
  record "$(hash_of < "$folder/model.glb")" "$name.png" >> "$pictures/sources.txt"
done

for view in loaded walk; do
  node "$pictures/render.mjs" viewer-samples/alder-dell/preview.html "$pictures/alder-dell-$view.png" --view "$view"
  record "$(hash_of < viewer-samples/alder-dell/model.glb)" "alder-dell-$view.png" >> "$pictures/sources.txt"
done

bridgeform make viewer-samples/alder-dell/project.yaml --only drawings -o "$out/drawings" --quiet
for sheet in 5:arrangement 7:frame; do
  page=${sheet%%:*}
  name=alder-dell-${sheet##*:}
  pdftoppm -r 100 -f "$page" -l "$page" -singlefile -png "$out/drawings/drawings.pdf" "$pictures/$name"
  record "$(pdftotext -f "$page" -l "$page" "$out/drawings/drawings.pdf" - | hash_of)" "$name.png" >> "$pictures/sources.txt"
done

# The live page is the one file that nobody needs an SDK for; it takes more than a minute.
bash src/BridgeForm.Live/build.sh viewer-samples/live.html artifacts/live "$PWD/src/BridgeForm.Cli/bin/Release/net10.0/BridgeForm.Cli.dll"
node "$pictures/live.mjs" viewer-samples/live.html "$pictures/live.png"
record "$(hash_of < viewer-samples/live.html)" live.png >> "$pictures/sources.txt"

# The scripts that made the pictures: a change to one makes all of them stale.
echo "$(cat "$pictures"/*.mjs | hash_of) scripts" >> "$pictures/sources.txt"
BRIDGEFORM_UPDATE=1 dotnet test tests/BridgeForm.Tests --no-build -c Release --filter FullyQualifiedName~SampleTests.Numbers
