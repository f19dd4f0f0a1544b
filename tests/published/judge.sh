#!/usr/bin/env bash
# Judges the program as people install it: tests/published/judge.sh publish|pack|bytes|places|startup|tool|completion|release
# `publish` and `pack` come first; each ends with 0 when all of it holds. Results lie in artifacts/published.
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

# Expects an exit code and words: says WORDS CODE COMMAND…
says() {
  local words=$1
  shift
  expect "$@"
  grep -qF -- "$words" "$here/said.txt" || { cat "$here/said.txt"; fail "nothing said of '$words': $*"; }
}

# The empty program that start-up is measured against is made beside ours: neither keeps two processors busy by itself.
publish() {
  mkdir -p "$here"
  empty >"$here/empty.log" 2>&1 &
  local emptying=$!
  bash src/publish.sh linux-x64 "$here/bridgeform-linux-x64" 2>&1 | tee "$here/publish.log"
  wait "$emptying" || { cat "$here/empty.log"; fail "the empty program cannot be made"; }
  ! grep -qi 'warning' "$here/publish.log" || fail "warnings of the trimmer or the native compiler"
  grep -q ': native, ' "$here/publish.log" || fail "not compiled to native code: clang or gcc and zlib1g-dev are needed"
  (cd "$here/bridgeform-linux-x64" && sha256sum --quiet -c SHA256SUMS)
}

# Composite ready-to-run, of what it needs: what people would get who publish a program that does nothing. It starts an eighth
# sooner than one that holds the whole library, and is made in a quarter of the time.
empty() {
  rm -rf "$here/empty"
  dotnet publish tests/published/empty -c Release -r linux-x64 --self-contained -o "$here/empty" \
    -p:PublishReadyToRun=true -p:PublishReadyToRunComposite=true -p:PublishTrimmed=true -p:RunAnalyzers=false -p:UseSharedCompilation=false \
    --artifacts-path "$here/empty-artifacts" --nologo -v quiet
}

# The demo and what check says of every sample, byte for byte as the SDK's own run.
bytes() {
  rm -rf "$here"/{native,sdk}-out
  expect 0 bare "$program" make -o "$here/native-out"
  expect 0 dotnet "$built" make -o "$here/sdk-out"
  diff -r "$here/native-out" "$here/sdk-out" || fail "other bytes than the SDK's run"
  [ "$(find "$here/native-out" -type f | wc -l)" -gt 50 ] || fail "hardly any files"
  for sample in viewer-samples/*/project.yaml; do
    bare "$program" check "$root/$sample" --all > "$here/native.txt"
    dotnet "$built" check "$root/$sample" --all > "$here/sdk.txt"
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
  says "$public/closed/out: error: you may not write here" 3 "${nobody[@]}" "$public/bridgeform" make -o "$public/closed/out" --only tables
  [ -z "$(ls -A "$public/closed")" ] || fail "something was left in a folder that may not be written"

  # A medium that cannot be written: the program runs from it, and cannot put its files there.
  expect 0 as_mounted "$public" "cd / && env -i PATH=/nowhere $public/medium/bridgeform check $public/medium/bridge.yaml"
  says "bridge-out: error: the medium is for reading only" 3 as_mounted "$public" "cd $public/medium && env -i PATH=/nowhere ./bridgeform make bridge.yaml --only tables"
  says "no such file" 3 bare "$program" check "$root/viewer-samples/alder-dell/no-such-file.yaml"
  hostile
}

# Surroundings that a program does not expect. All of it is run in a folder of its own, as a builder who stands in it.
hostile() {
  local yard="$here/yard" sample="$root/viewer-samples/wren-landing/project.yaml"
  rm -rf "$yard"
  mkdir -p "$yard/gone"
  cd "$yard"
  cp "$sample" bridge.yaml
  ln -s "$program" other-name
  says "11 files in by-link" 0 env -i HOME=/nowhere TMPDIR=/nowhere LC_ALL=C PATH=/nowhere ./other-name make bridge.yaml -o by-link --only tables
  (umask 077 && expect 0 bare "$program" make bridge.yaml -o narrow --only tables --quiet)
  [ "$(stat -c %a narrow narrow/cut-list.csv | xargs)" = "700 600" ] || fail "others may read what was made under umask 077"
  expect 0 bare "$program" check bridge.yaml --json report.json --quiet 0<&-
  says "the medium is full" 3 bare "$program" check bridge.yaml --json /dev/full
  says "/proc/x: error: the folder it would lie in is not there, or takes no files" 3 bare "$program" make bridge.yaml -o /proc/x
  says "$yard: error: this is a folder; name a file to write" 3 bare "$program" check bridge.yaml --json "$yard"
  expect 3 bash -c '"$0" check bridge.yaml >/dev/full' "$program"
  says "name another place" 3 bash -c 'cd gone && rmdir ../gone && "$0" make' "$program"
  says "small/out: error: the medium is full" 3 as_small "$program" make bridge.yaml -o small/out
  says "small/b.yaml: error: the medium is full" 3 as_small "$program" start small/b.yaml
  cd "$root"
}

# Runs a command with ./small a medium that holds next to nothing; seen by this command alone.
as_small() {
  local unshare=(unshare --mount)
  [ "$(id -u)" -eq 0 ] || unshare=(unshare --user --map-root-user --mount)
  mkdir -p small
  "${unshare[@]}" bash -euc 'mount -t tmpfs -o size=4k none small; code=0; "$@" || code=$?; [ -z "$(ls -A small)" ] || exit 99; exit "$code"' as_small "$@"
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
  python3 tests/published/startup.py "$here/empty/Empty" "$program"
}

pack() {
  rm -rf "$here/packages"
  bash src/pack.sh "$here/packages"
}

# Installed from a folder, updated from another one, run, uninstalled.
tool() {
  rm -rf "$here"/{older,tools,tool-out}
  python3 tests/published/package.py "$here"/packages/*.nupkg
  python3 tests/published/renumbered.py "$here"/packages/*.nupkg 0.0.1 "$here/older"
  local version
  version=$(dotnet "$built" --version)
  dotnet tool install BridgeForm.Tool --tool-path "$here/tools" --source "$here/older" >/dev/null
  [[ $(dotnet tool list --tool-path "$here/tools") = *" 0.0.1 "*" bridgeform"* ]] || fail "the older package is not installed"
  expect 0 "$here/tools/bridgeform" --version
  dotnet tool update BridgeForm.Tool --tool-path "$here/tools" --source "$here/packages" >/dev/null
  [[ $(dotnet tool list --tool-path "$here/tools") = *" $version "*" bridgeform"* ]] || fail "not updated to $version"
  [ "$("$here/tools/bridgeform" --version)" = "$version" ] || fail "another version than $version"
  expect 0 "$here/tools/bridgeform" make -o "$here/tool-out"
  diff -r "$here/tool-out" "$here/sdk-out" || fail "the tool package makes other bytes"
  dotnet tool uninstall BridgeForm.Tool --tool-path "$here/tools" >/dev/null
  [ ! -e "$here/tools/bridgeform" ] || fail "still there after it was uninstalled"
}

# What the shells offer after a word has been begun.
completion() {
  local line offered
  mkdir -p "$here/on-path"
  ln -sf "$program" "$here/on-path/bridgeform"
  export PATH="$here/on-path:$PATH"
  for line in "bridgeform che=check" "bridgeform list gr=grades" "bridgeform make --only model,prev=model,preview"; do
    offered=$(bash -c '
      source src/BridgeForm.Cli/Completion/bridgeform.bash
      read -ra COMP_WORDS <<<"$1"
      COMP_CWORD=$((${#COMP_WORDS[@]} - 1)) COMP_LINE=$1 COMP_POINT=${#1}
      _bridgeform
      echo "${COMPREPLY[*]}"' bash "${line%=*}")
    [ "$offered" = "${line#*=}" ] || fail "bash offers '$offered' for '${line%=*}'"
    ! command -v fish >/dev/null || offered=$(HOME=$here fish --no-config -c "source src/BridgeForm.Cli/Completion/bridgeform.fish; complete -C '${line%=*}'" | cut -f1)
    [ "$offered" = "${line#*=}" ] || fail "fish offers '$offered' for '${line%=*}'"
  done
}

# The release folder of what the steps before have made: nothing missing, nothing that leads nowhere, twice the same bytes.
release() {
  BRIDGEFORM_MADE=$here BRIDGEFORM_RIDS=linux-x64 bash src/release.sh "$here/release"
  (umask 077 && BRIDGEFORM_MADE=$here BRIDGEFORM_RIDS=linux-x64 TZ=Pacific/Apia bash src/release.sh "$here/again")
  diff -r "$here/release" "$here/again" || fail "made again, the release has other bytes"
  cd "$here/release"
  sha256sum --quiet -c SHA256SUMS
  grep -q "licensed engineer" OPEN-THIS-FIRST.txt || fail "no caution in OPEN-THIS-FIRST.txt"
  local named
  for named in $(grep -oE '[A-Za-z/-]+\.(txt|html)' OPEN-THIS-FIRST.txt) LICENSE.txt BridgeForm.Tool.*.nupkg; do
    [ -s "$named" ] || fail "OPEN-THIS-FIRST.txt names $named, which is not there"
  done
  for named in $(grep -oE '(src|href)="[^"#]+"' samples/index.html | cut -d'"' -f2 | grep -v '^https\?:'); do
    [ -e "samples/$named" ] || fail "samples/index.html leads to $named, which is not there"
  done

  # As a builder takes it: unpacked, checked, run; the licences of what is inside lie beside it.
  rm -rf "$here/unpacked"
  mkdir "$here/unpacked"
  tar xzf bridgeform-linux-x64.tar.gz -C "$here/unpacked"
  cd "$here/unpacked/bridgeform-linux-x64"
  sha256sum --quiet -c SHA256SUMS
  expect 0 bare ./bridgeform make -o ../out --only tables
  grep -q "NET Foundation" licences/DOTNET-LICENSE.txt || fail "no licence of the runtime"
  grep -q "License notice for Brotli" licences/DOTNET-THIRD-PARTY-NOTICES.txt || fail "no notices of what the runtime contains"
  for named in three.js PDFsharp YamlDotNet DejaVu; do
    grep -qF "$named" licences/THIRD-PARTY-NOTICES.txt || fail "no notice of $named"
  done
}

"$1"
