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

own_rid() { dotnet --info | sed -n 's/^ *RID: *//p'; }
can_link() { [ "$rid" = "$(own_rid)" ] && { command -v clang || command -v gcc; } >/dev/null && [ "${BRIDGEFORM_NATIVE:-yes}" != no ]; }

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
if can_link; then
  form=(-p:PublishAot=true)
  command -v clang >/dev/null || form+=(-p:CppCompilerAndLinker=gcc)
else
  form=(--self-contained -p:PublishSingleFile=true -p:PublishTrimmed=true -p:EnableCompressionInSingleFile=false)
fi
# Objects lie apart from those of other builds: what was compiled for one form is never linked into another.
dotnet publish src/BridgeForm.Cli -c Release -r "$rid" "${form[@]}" \
  -p:ContinuousIntegrationBuild=true -p:DebugType=none -p:UseSharedCompilation=false \
  --artifacts-path "$work/artifacts" -o "$work/out" --nologo -v quiet

rm -rf "$work/whole"
mkdir -p "$work/whole/licences"
install -m 755 "$work/out/$built" "$work/whole/$program"
cp LICENSE "$work/whole/licences/LICENSE.txt"
cp THIRD-PARTY-NOTICES.md "$work/whole/licences/THIRD-PARTY-NOTICES.md"

# The .NET runtime is inside the program: its licence and notices go with it, from the package that it was taken from.
packages=$(dotnet nuget locals global-packages --list | sed 's/^[^:]*: *//')
if can_link; then runtime=microsoft.netcore.app.runtime.nativeaot.$rid; else runtime=microsoft.netcore.app.runtime.$rid; fi
version=$(find "$packages$runtime" -mindepth 1 -maxdepth 1 -printf '%f\n' | sort -V | tail -n 1)
for text in LICENSE THIRD-PARTY-NOTICES; do
  found=$(find "$packages$runtime/$version" -maxdepth 1 -iname "$text.txt" | head -n 1)
  [ -n "$found" ] || { echo "no $text.txt in the runtime's package $runtime $version" >&2; exit 1; }
  install -m 644 "$found" "$work/whole/licences/DOTNET-$text.txt"
done
mkdir "$work/whole/completion"
cp src/BridgeForm.Cli/Completion/* "$work/whole/completion/"
(cd "$work/whole" && find . -type f ! -name SHA256SUMS -printf '%P\n' | LC_ALL=C sort | xargs -d '\n' sha256sum > "$work/SHA256SUMS" && mv "$work/SHA256SUMS" .)

mkdir -p "$(dirname "$target")"
rm -rf "$target"
mv "$work/whole" "$target"
echo "$target/$program: $(if can_link; then echo native; else echo trimmed single file; fi), $(du -k "$target/$program" | cut -f1) KB"
