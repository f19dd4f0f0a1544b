#!/usr/bin/env bash
# Judges the program as people install it: tests/published/judge.sh publish|bytes|places|startup|tool|completion|release
# `publish` comes first; each ends with 0 when all of it holds. Results lie in artifacts/published.
set -euo pipefail
cd "$(dirname "$0")/../.."
root=$PWD
here=$root/artifacts/published
program=$here/bridgeform-linux-x64/bridgeform
built=$root/src/BridgeForm.Cli/bin/Release/net10.0/BridgeForm.Cli.dll

fail() { echo "FAILED: $*"; exit 1; }

# Runs a command where no SDK, no shell folder and no HOME can be seen.
bare() { env -i LANG=C.UTF-8 PATH=/nowhere "$@"; }

# Expects an exit code: expect CODE COMMAND…
expect() {
  local wanted=$1 code=0
  shift
  "$@" >"$here/said.txt" 2>&1 || code=$?
  [ "$code" -eq "$wanted" ] || { cat "$here/said.txt"; fail "exit code $code instead of $wanted: $*"; }
}

publish() {
  mkdir -p "$here"
  bash src/publish.sh linux-x64 "$here/bridgeform-linux-x64" 2>&1 | tee "$here/publish.log"
  ! grep -qi 'warning' "$here/publish.log" || fail "warnings of the trimmer or the native compiler"
  grep -q ': native, ' "$here/publish.log" || fail "not compiled to native code: clang or gcc and zlib1g-dev are needed"
  (cd "$here/bridgeform-linux-x64" && sha256sum --quiet -c SHA256SUMS)
}

# The demo and what check says of every sample, byte for byte as the SDK's own run.
bytes() {
  rm -rf "$here"/{native,sdk}-out
  expect 0 bare "$program" make -o "$here/native-out"
  expect 0 dotnet "$built" make -o "$here/sdk-out"
  diff -r "$here/native-out" "$here/sdk-out" || fail "other bytes than the SDK's run"
  [ "$(find "$here/native-out" -type f | wc -l)" -gt 50 ] || fail "hardly any files"
  for sample in viewer-samples/*/project.yaml; do
    bare "$program" check "$root/$sample" > "$here/native.txt"
    dotnet "$built" check "$root/$sample" > "$here/sdk.txt"
    diff "$here/native.txt" "$here/sdk.txt" || fail "check of $sample says something else"
  done
}

# Places where programs trip.
places() {
  local odd="$here/ein Ordner für Brücken"
  rm -rf "$odd"
  mkdir -p "$odd/Programm"
  cp "$program" "$odd/Programm/bridgeform"
  cp viewer-samples/wren-landing/project.yaml "$odd/Weg über den Bach.yaml"
  expect 0 bare "$odd/Programm/bridgeform" make "$odd/Weg über den Bach.yaml" --only tables
  [ -s "$odd/Weg über den Bach-out/cut-list.csv" ] || fail "nothing written beside a file with umlauts"

  # A user who may write neither beside the program nor into the folder; the folder itself must be reachable.
  local public
  public=$(mktemp -d)
  trap 'rm -rf "$public"' RETURN
  chmod 755 "$public"
  mkdir -m 777 "$public/open"
  mkdir -m 755 "$public/closed"
  install -m 755 "$program" "$public/bridgeform"
  local nobody=(env -i LANG=C.UTF-8 PATH=/nowhere)
  if [ "$(id -u)" -eq 0 ]; then nobody=(setpriv --reuid 65534 --regid 65534 --clear-groups "${nobody[@]}"); else chmod 555 "$public/closed"; fi
  expect 0 "${nobody[@]}" "$public/bridgeform" make -o "$public/open/out" --only tables
  expect 3 "${nobody[@]}" "$public/bridgeform" make -o "$public/closed/out" --only tables
  [ -z "$(ls -A "$public/closed")" ] || fail "something was left in a folder that may not be written"

  # A medium that cannot be written: the program runs from it, and cannot put its files there.
  expect 0 as_mounted "$public" "cd / && env -i PATH=/nowhere $public/medium/bridgeform check $public/medium/bridge.yaml"
  expect 3 as_mounted "$public" "cd $public/medium && env -i PATH=/nowhere ./bridgeform make bridge.yaml --only tables"
  expect 3 bare "$program" check "$root/viewer-samples/alder-dell/no-such-file.yaml"
}

# Runs a line with $1/medium mounted for reading only, holding the program and a project; seen by this line alone.
as_mounted() {
  local unshare=(unshare --mount)
  [ "$(id -u)" -eq 0 ] || unshare=(unshare --user --map-root-user --mount)
  "${unshare[@]}" bash -euc "
    mkdir -p '$1/medium'
    mount -t tmpfs none '$1/medium'
    cp '$program' '$1/medium/bridgeform'
    cp '$root/viewer-samples/wren-landing/project.yaml' '$1/medium/bridge.yaml'
    mount -o remount,ro '$1/medium'
    $2"
}

startup() {
  dotnet publish tests/published/empty -c Release -r linux-x64 --self-contained -o "$here/empty" \
    -p:PublishReadyToRun=true -p:PublishReadyToRunComposite=true --artifacts-path "$here/empty-artifacts" --nologo -v quiet
  python3 tests/published/startup.py "$here/empty/Empty" "$program"
}

tool() {
  rm -rf "$here"/{packages,newer,tools,tool-out}
  bash src/pack.sh "$here/packages"
  local version
  version=$(dotnet "$built" --version)
  dotnet tool install BridgeForm.Tool --tool-path "$here/tools" --source "$here/packages" >/dev/null
  expect 0 "$here/tools/bridgeform" make -o "$here/tool-out"
  diff -r "$here/tool-out" "$here/sdk-out" || fail "the tool package makes other bytes"
  [ "$("$here/tools/bridgeform" --version)" = "$version" ] || fail "another version than $version"
  python3 tests/published/package.py "$here"/packages/*.nupkg
  BRIDGEFORM_VERSION=$version.1 bash src/pack.sh "$here/newer"
  dotnet tool update BridgeForm.Tool --tool-path "$here/tools" --source "$here/newer" >/dev/null
  [ "$("$here/tools/bridgeform" --version)" = "$version.1" ] || fail "not updated"
  dotnet tool uninstall BridgeForm.Tool --tool-path "$here/tools" >/dev/null
  [ ! -e "$here/tools/bridgeform" ] || fail "still there after it was uninstalled"
}

# What bash offers after a word has been begun.
completion() {
  local offered
  mkdir -p "$here/on-path"
  ln -sf "$program" "$here/on-path/bridgeform"
  offered=$(PATH="$here/on-path:$PATH" bash -c '
    source src/BridgeForm.Cli/Completion/bridgeform.bash
    COMP_WORDS=(bridgeform che) COMP_CWORD=1 COMP_LINE="bridgeform che" COMP_POINT=14
    _bridgeform
    echo "${COMPREPLY[*]}"')
  [ "$offered" = check ] || fail "bash offers '$offered' for 'bridgeform che'"
}

# The release folder without its programs, which `publish` has judged: nothing missing, nothing that leads nowhere.
release() {
  BRIDGEFORM_RIDS=" " bash src/release.sh "$here/release"
  cd "$here/release"
  sha256sum --quiet -c SHA256SUMS
  grep -q "licensed engineer" OPEN-THIS-FIRST.txt || fail "no caution in OPEN-THIS-FIRST.txt"
  local linked
  for linked in $(grep -oE '(src|href)="[^"#]+"' samples/index.html | cut -d'"' -f2 | grep -v '^https\?:'); do
    [ -e "samples/$linked" ] || fail "samples/index.html leads to $linked, which is not there"
  done
}

"$1"
