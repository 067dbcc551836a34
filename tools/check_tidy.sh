#!/usr/bin/env bash
# clang-tidy with the allow-list of .clang-tidy over every source that is no test. Needs the native build's
# compile_commands.json.
set -euo pipefail
cd "$(dirname "$0")/.."
git ls-files --cached --others --exclude-standard '*.cpp' |
  grep -Ev '_test\.cpp$|/must_not_compile/|^apps/wasm/|^bench/|^checks/|^fuzz/|^cmake/' |
  xargs -P "$(nproc)" -n 3 clang-tidy-19 -p build/native --quiet \
    --extra-arg=-Wno-unknown-warning-option --extra-arg=-Wno-deprecated-declarations 2>&1 |
  grep -Ev '^[0-9]+ warnings? .*generated|^Suppressed|^Use -header-filter' || [[ ${PIPESTATUS[2]} -eq 0 ]]
