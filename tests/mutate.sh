#!/usr/bin/env bash
# Changes one thing at a time in a project and sees whether its tests notice: docs/mutation.md.
# tests/mutate.sh PROJECT [OPTION...]: PROJECT is Design, Water, Strength or Making; options go to the tool.
set -eu
cd "$(dirname "$0")"
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1
project=${1:?Name the project: Design, Water, Strength or Making.}
shift
test -f "stryker/$project.json" || { echo "No such project: $project. Known: $(basename -s .json stryker/*.json | tr '\n' ' ')"; exit 2; }
dotnet tool restore
cd "Finwright.$project.Tests"
exec dotnet stryker --config-file "../stryker/$project.json" --output "../../artifacts/mutation/$project" --skip-version-check "$@"
