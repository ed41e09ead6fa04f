#!/usr/bin/env bash
# Builds everything, checks the layout of the code, runs every test and a dry run of the benchmarks,
# and prints "N passed, N failed" last. A check that could not run counts as failed.
set -u
cd "$(dirname "$0")" || exit 3
export DOTNET_CLI_TELEMETRY_OPTOUT=1 TESTINGPLATFORM_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1
log=$(mktemp -d)
trap 'rm -rf "$log"' EXIT

# Independent tools that the tests hold our files against, and the Debian packages that bring them.
declare -A tools=(
  [admesh]="command -v admesh"
  [chromium]="test -x /usr/bin/chromium"
  [g++]="command -v g++"
  [lib3mf-dev]="test -d /usr/include/lib3mf"
  [libocct-data-exchange-dev]="test -f /usr/include/opencascade/STEPControl_Reader.hxx"
  [node]="command -v node"
  [npm]="command -v npm"
  [poppler-utils]="command -v pdftoppm"
)
missing=()
for package in $(printf '%s\n' "${!tools[@]}" | sort); do
  eval "${tools[$package]}" >/dev/null 2>&1 || missing+=("$package")
done
if [ ${#missing[@]} -gt 0 ]; then
  echo "Missing, and needed by the tests: ${missing[*]} (Debian package names; node is in nodejs)."
  if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
    echo "Installing with apt-get."
    apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq "${missing[@]/#node/nodejs}" >"$log/apt" 2>&1 || tail -5 "$log/apt"
  else
    echo "Install them and run this again; until then the checks that need them fail."
  fi
fi

failed=0
step() { # step NAME COMMAND...: a check that is not a test still counts when it fails
  local name=$1
  shift
  echo "== $name"
  if ! "$@" >"$log/step" 2>&1; then
    tail -40 "$log/step"
    echo "== $name failed"
    failed=$((failed + 1))
    return 1
  fi
}

passed=0
if step "build" dotnet build finwright.slnx; then
  # The build has held every rule of the analyzers; these hold what no analyzer sees: ends of lines and files, and the order of usings.
  step "layout of the code" dotnet format whitespace . --folder --exclude ./artifacts --verify-no-changes
  step "order of usings" dotnet format style finwright.slnx --diagnostics IMPORTS --verify-no-changes --no-restore
  echo "== tests"
  # What takes minutes runs by hand: CONTRIBUTING.md says how.
  dotnet test --solution finwright.slnx --no-build -- --filter-not-trait "Pace=long" 2>&1 | tee "$log/tests"
  status=${PIPESTATUS[0]}
  read -r good bad < <(awk '/^ *failed:/{f+=$2} /^ *succeeded:/{s+=$2} /^ *skipped:/{k+=$2} END{print s+0, f+k+0}' "$log/tests")
  passed=$good
  failed=$((failed + bad))
  # The runner can fail without a failed test, for example when a project holds none.
  if [ "$status" != 0 ] && [ "$bad" = 0 ]; then failed=$((failed + 1)); fi
  step "benchmarks, dry run" dotnet run --project bench/Finwright.Bench --no-build -- --filter '*' --job Dry --inProcess
fi

echo "$passed passed, $failed failed"
[ "$failed" = 0 ] && [ "$passed" -gt 0 ]
