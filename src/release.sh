#!/usr/bin/env bash
# Makes a release folder: the program for every system (or those in BRIDGEFORM_RIDS), the tool package, the samples,
# checksums, notices.
#   src/release.sh [DIR]      by default artifacts/release; replaced whole. Same commit, same system, same SDK: same bytes.
# BRIDGEFORM_MADE names a folder that holds programs (bridgeform-RID) and the tool package (packages/*.nupkg) of this commit already: what
# lies there is taken and not made again.
set -euo pipefail
cd "$(dirname "$0")/.."
umask 022
root=$PWD
target=${1:-artifacts/release}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
whole=$work/release
mkdir -p "$whole"

# Archives without owners and with one time for all: what was packed decides their bytes, not who packed it and when.
tarred() { tar --sort=name --owner=0 --group=0 --numeric-owner --mode=u=rwX,go=rX --mtime=@315532800 -C "$work" -cf - "$1" | gzip -n -9 > "$whole/$1.tar.gz"; }
zipped() {
  python3 - "$work" "$1" "$whole/$1.zip" <<'PY'
import os, sys, zipfile
base, name, out = sys.argv[1:]
with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
    for folder, folders, files in os.walk(os.path.join(base, name)):
        folders.sort()
        for file in sorted(files):
            path = os.path.join(folder, file)
            entry = zipfile.ZipInfo(os.path.relpath(path, base), (1980, 1, 1, 0, 0, 0))
            entry.compress_type, entry.external_attr = zipfile.ZIP_DEFLATED, 0o644 << 16
            with open(path, "rb") as stream:
                archive.writestr(entry, stream.read())
PY
}

for rid in ${BRIDGEFORM_RIDS:-linux-x64 linux-arm64 win-x64 osx-x64 osx-arm64}; do
  if [ -n "${BRIDGEFORM_MADE:-}" ] && [ -d "$BRIDGEFORM_MADE/bridgeform-$rid" ]; then
    cp -R "$BRIDGEFORM_MADE/bridgeform-$rid" "$work/"
  else
    bash src/publish.sh "$rid" "$work/bridgeform-$rid"
  fi
  case $rid in win-*) zipped "bridgeform-$rid" ;; *) tarred "bridgeform-$rid" ;; esac
done

if [ -n "${BRIDGEFORM_MADE:-}" ] && compgen -G "$BRIDGEFORM_MADE/packages/*.nupkg" >/dev/null; then
  cp "$BRIDGEFORM_MADE"/packages/*.nupkg "$whole/"
else
  bash src/pack.sh "$whole"
fi

mkdir "$whole/samples"
git ls-files -z viewer-samples | while IFS= read -r -d '' file; do
  case $file in */numbers.json | *.sh) continue ;; esac
  install -D -m 644 "$root/$file" "$whole/samples/${file#viewer-samples/}"
done
# The samples' page shows their pictures from docs/pictures.
for sample in viewer-samples/*/project.yaml; do
  name=$(basename "$(dirname "$sample")")
  install -D -m 644 "docs/pictures/$name.png" "$whole/docs/pictures/$name.png"
done
caution=$(sed -n 's/^> \*\*Caution\.\*\* //p' docs/install.md)
[ -n "$caution" ] || { echo "docs/install.md has no caution" >&2; exit 1; }
cp LICENSE "$whole/LICENSE.txt"
# Texts by a name that opens with a double click on every system.
sed 's/\[LICENSE\](LICENSE)/LICENSE.txt/' THIRD-PARTY-NOTICES.md > "$whole/THIRD-PARTY-NOTICES.txt"
cp docs/install.md "$whole/INSTALL.txt"
cat > "$whole/OPEN-THIS-FIRST.txt" <<TEXT
BridgeForm: small timber footbridges hung on two ropes

To use it at once        open samples/live.html in a browser: the whole tool in one page, nothing to install
To see what it makes     open samples/index.html in a browser
To install it            open INSTALL.txt: which file to take, in three steps a system
To check the files       sha256sum -c SHA256SUMS; INSTALL.txt says how on Windows and on a Mac
Licences                 LICENSE.txt, THIRD-PARTY-NOTICES.txt

$caution
TEXT
(cd "$whole" && find . -type f -printf '%P\n' | LC_ALL=C sort | xargs -d '\n' sha256sum > "$work/SHA256SUMS")
mv "$work/SHA256SUMS" "$whole/"

mkdir -p "$(dirname "$target")"
rm -rf "$target"
mv "$whole" "$target"
echo "$target: $(find "$target" -type f | wc -l) files"
