#!/usr/bin/env bash
# Installs the referees, checks formatting, builds with warnings as errors, runs every test.
# Ends with the line "N passed, N failed"; the exit code is 0 only when nothing failed.
set -euo pipefail
cd "$(dirname "$0")/.."

as_root() { if [ "$(id -u)" -eq 0 ]; then "$@"; else sudo "$@"; fi; }

need() { # need COMMAND PACKAGE…: installs Debian packages when the command is missing
  local command=$1
  shift
  command -v "$command" >/dev/null 2>&1 && return 0
  echo "installing $*"
  as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends "$@" >/dev/null 2>&1 && return 0
  as_root apt-get update >/dev/null
  as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends "$@" >/dev/null
}

need dotnet dotnet-sdk-10.0
need node nodejs
need npm npm
if ! node -e 'process.exit(Number(process.versions.node.split(".")[0]) >= 20 ? 0 : 1)'; then
  echo "Node 20 or later is needed; this is $(node --version)"
  exit 1
fi
need ogrinfo gdal-bin
need pdftoppm poppler-utils
need assimp assimp-utils
need "${CHROMIUM:-chromium}" chromium
need python3 python3
need clang clang
[ -e /usr/include/zlib.h ] || need no-such-command-zlib zlib1g-dev
python3 -c 'import ezdxf' 2>/dev/null || need no-such-command-ezdxf python3-ezdxf
python3 -c 'import scipy' 2>/dev/null || /usr/bin/python3 -c 'import scipy' 2>/dev/null || need no-such-command-scipy python3-scipy

npm ci --prefix tests/referees --no-audit --no-fund --loglevel=error
npm ci --prefix tests/preview --no-audit --no-fund --loglevel=error
npm ci --prefix src/BridgeForm.Preview --no-audit --no-fund --loglevel=error

passed=0
failed=0
step() { # step NAME COMMAND…: counts as one test
  local name=$1 begun=$SECONDS
  shift
  echo "== $name"
  if "$@"; then passed=$((passed + 1)); else failed=$((failed + 1)); echo "== $name FAILED"; fi
  echo "== $name took $((SECONDS - begun)) s"
}

step "restore" dotnet restore BridgeForm.sln --locked-mode
# The program and the package that people install are compiled apart, with objects of their own: beside the build, which leaves
# one of two processors idle for much of its time.
mkdir -p artifacts/published
{ bash tests/published/judge.sh publish && bash tests/published/judge.sh pack; } >artifacts/published/made.log 2>&1 &
making=$!
made() { wait "$making" || { cat artifacts/published/made.log; return 1; }; }
step "packages" bash tests/packages.sh
# Style and analyzers have their say in the build.
step "formatting" dotnet format whitespace BridgeForm.sln --no-restore --verify-no-changes
step "build, warnings are errors" dotnet build BridgeForm.sln --no-restore -c Release

step "published program: publish, pack" made
for what in bytes places startup completion; do
  step "published program: $what" bash tests/published/judge.sh "$what"
done

# The live page is made and judged beside the steps that follow; what measures times comes last in the tests, long after it.
live() {
  bash src/BridgeForm.Live/build.sh artifacts/live.html artifacts/live "$PWD/src/BridgeForm.Cli/bin/Release/net10.0/BridgeForm.Cli.dll" &&
    bash tests/live/judge.sh artifacts/live.html artifacts/published/bridgeform-linux-x64/bridgeform
}
lived() { wait "$living" && cat artifacts/live.log || { cat artifacts/live.log; return 1; }; }
live >artifacts/live.log 2>&1 &
living=$!
step "changes that once went unnoticed are noticed" bash tests/mutation.sh --survivors
for what in tool release; do
  step "published program: $what" bash tests/published/judge.sh "$what"
done

log=$(mktemp)
trap 'rm -f "$log"' EXIT
echo "== tests"
dotnet test tests/BridgeForm.Tests --no-build -c Release --nologo 2>&1 | tee "$log" || true
summary=$(grep -E '(Passed|Failed)! +- Failed:' "$log" | tail -n 1 || true)
if [ -z "$summary" ]; then
  echo "the tests did not run to their end"
  failed=$((failed + 1))
else
  passed=$((passed + $(sed -E 's/.*Passed: *([0-9]+).*/\1/' <<<"$summary")))
  failed=$((failed + $(sed -E 's/.*Failed: *([0-9]+).*/\1/' <<<"$summary")))
fi

step "live page" lived
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
