#!/usr/bin/env bash
# Makes the program that people install: one file that needs no .NET.
#   src/publish.sh RID [DIR]      RID: linux-x64, linux-arm64, win-x64, osx-arm64, …; DIR: by default artifacts/bridgeform-RID
# Compiled to native code where this system can link for RID, else a trimmed single file with the runtime inside.
# BRIDGEFORM_NATIVE=no asks for the trimmed file in any case. DIR is replaced whole; SHA256SUMS in it names what lies there.
set -euo pipefail
cd "$(dirname "$0")/.."

rid=${1:?usage: src/publish.sh RID [DIR]}
target=${2:-artifacts/bridgeform-$rid}
case $rid in win-*) program=bridgeform.exe built=BridgeForm.Cli.exe ;; *) program=bridgeform built=BridgeForm.Cli ;; esac

umask 022 # who may read what is made does not depend on who makes it

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
own_rid() { dotnet --info | sed -n 's/^ *RID: *//p'; }
# A compiler without the headers and libraries of C is there on many systems, and links nothing.
links() { command -v "$1" >/dev/null && echo 'int main(void) { return 0; }' | "$1" -x c - -o "$work/linked" -lm 2>/dev/null; }
linker=
if [ "${BRIDGEFORM_NATIVE:-yes}" != no ] && [ "$rid" = "$(own_rid)" ]; then
  if links clang; then linker=clang; elif links gcc; then linker=gcc; fi
fi
if [ -n "$linker" ]; then
  form=(-p:PublishAot=true -p:CppCompilerAndLinker="$linker")
  made='native' runtime=Microsoft.NETCore.App.Runtime.NativeAOT.$rid
else
  form=(--self-contained -p:PublishSingleFile=true -p:PublishTrimmed=true -p:EnableCompressionInSingleFile=false)
  made='trimmed single file' runtime=Microsoft.NETCore.App.Runtime.$rid
fi
# Objects lie apart from those of other builds: what was compiled for one form is never linked into another. The analyzers of
# the source have had their say in the build; the trimmer and the native compiler warn by themselves.
dotnet publish src/BridgeForm.Cli -c Release -r "$rid" "${form[@]}" \
  -p:ContinuousIntegrationBuild=true -p:DebugType=none -p:UseSharedCompilation=false -p:RunAnalyzers=false \
  --artifacts-path "$work/artifacts" -o "$work/out" --nologo -v quiet

# One file is the program. Documentation and what describes a build are no part of it; anything else would be missed.
beside=$(find "$work/out" -type f ! -name "$built" ! -name '*.xml' ! -name '*.json' ! -name '*.dbg' ! -name '*.pdb' -printf '%P ')
[ -z "$beside" ] || { echo "the program is not one file: $beside" >&2; exit 1; }

mkdir -p "$work/whole/licences"
install -m 755 "$work/out/$built" "$work/whole/$program"
cp LICENSE "$work/whole/licences/LICENSE.txt"
sed 's/\[LICENSE\](LICENSE)/LICENSE.txt/' THIRD-PARTY-NOTICES.md > "$work/whole/licences/THIRD-PARTY-NOTICES.txt"

# The .NET runtime is inside the program: its licence and notices go with it, from the package that it was taken from.
packages=$(dotnet nuget locals global-packages --list | sed 's/^[^:]*: *//')
version=$(python3 - "$work/artifacts/obj/BridgeForm.Cli/project.assets.json" "$runtime" <<'PY'
import json, sys
for framework in json.load(open(sys.argv[1]))["project"]["frameworks"].values():
    for package in framework.get("downloadDependencies", []):
        if package["name"].lower() == sys.argv[2].lower():
            print(package["version"].strip("[]").split(",")[0])
PY
)
[ -n "$version" ] || { echo "the build does not say which $runtime it took" >&2; exit 1; }
for text in LICENSE THIRD-PARTY-NOTICES; do
  found=$(find "$packages${runtime,,}/$version" -maxdepth 1 -iname "$text.txt" | head -n 1)
  [ -n "$found" ] || { echo "no $text.txt in the runtime's package $runtime $version" >&2; exit 1; }
  install -m 644 "$found" "$work/whole/licences/DOTNET-$text.txt"
done
mkdir "$work/whole/completion"
cp src/BridgeForm.Cli/Completion/* "$work/whole/completion/"
(cd "$work/whole" && find . -type f ! -name SHA256SUMS -printf '%P\n' | LC_ALL=C sort | xargs -d '\n' sha256sum > "$work/SHA256SUMS" && mv "$work/SHA256SUMS" .)

mkdir -p "$(dirname "$target")"
rm -rf "$target"
mv "$work/whole" "$target"
echo "$target/$program: $made, $(du -k "$target/$program" | cut -f1) KB"
