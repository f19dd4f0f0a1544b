#!/usr/bin/env bash
# Makes each sample's model, preview and picture anew, and the numbers that tests pin.
# Needs what tests/run.sh installs, and `npm ci --prefix docs/pictures`.
set -euo pipefail
cd "$(dirname "$0")/.."
dotnet build BridgeForm.sln -c Release
out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT
: > docs/pictures/sources.txt
for project in viewer-samples/*/project.yaml; do
  folder=$(dirname "$project")
  name=$(basename "$folder")
  dotnet run --no-build -c Release --project src/BridgeForm.Cli -- make "$project" --only model,preview -o "$out/$name" --quiet
  cp "$out/$name/model.glb" "$out/$name/preview.html" "$folder/"
  node docs/pictures/render.mjs "$folder/model.glb" "docs/pictures/$name.png"
  echo "$(sha256sum "$folder/model.glb" | cut -d' ' -f1) $name.png" >> docs/pictures/sources.txt
done
BRIDGEFORM_UPDATE=1 dotnet test tests/BridgeForm.Tests --no-build -c Release --filter FullyQualifiedName~SampleTests.Numbers
