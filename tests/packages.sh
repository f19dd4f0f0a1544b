#!/usr/bin/env bash
# Judges how packages are taken, on a copy of the project files: the lock files decide; an audit that reaches nothing fails
# nothing; a build for one system leaves the lock files alone. Run after a restore, it fetches next to nothing.
set -euo pipefail
cd "$(dirname "$0")/.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

fail() { cat "$work/said.txt"; echo "FAILED: $*"; exit 1; }

git ls-files -z '*.csproj' '*.props' '*.targets' '*packages.lock.json' global.json | xargs -0 cp --parents -t "$work"
mkdir "$work/before"
mapfile -t locks < <(git ls-files '*packages.lock.json')
cp --parents -t "$work/before" "${locks[@]}"
: >"$work/said.txt"
[ "${#locks[@]}" -eq "$(grep -c '\.csproj"' BridgeForm.sln)" ] || fail "a project without a lock file"

restore() { dotnet restore "$work/src/BridgeForm.Cli" --force "$@" >"$work/said.txt" 2>&1; }
same() {
  local lock
  for lock in "${locks[@]}"; do cmp "$work/before/$lock" "$work/$lock" >"$work/said.txt" || fail "$lock was rewritten $*"; done
}

# Merged with the machine's own settings: packages come from where they always do, only the audit asks nobody.
cat > "$work/NuGet.config" <<'XML'
<configuration>
  <auditSources>
    <clear />
    <add key="nowhere" value="https://127.0.0.1:9/index.json" />
  </auditSources>
</configuration>
XML
restore --locked-mode || fail "the audit reaches nothing, and the restore fails"
grep -q 'warning NU1900' "$work/said.txt" || fail "the audit reaches nothing, and says nothing"
same "by a locked restore"
rm "$work/NuGet.config"

for way in -p:RuntimeIdentifier=linux-x64 --runtime=linux-x64; do # as a publish restores, and as people may
  restore "$way" -p:PublishTrimmed=true || fail "a restore for one system"
  same "by a restore for one system"
done

sed -i 's/\(Include="YamlDotNet" Version="\)[^"]*/\116.3.0/' "$work/Directory.Packages.props"
! restore --locked-mode || fail "another version than the lock file's is taken"
grep -q 'NU1004' "$work/said.txt" || fail "another version than the lock file's is refused for another reason"
