#!/usr/bin/env bash
# clang-tidy with the allow-list of .clang-tidy over sources that are no tests: with --all over every one; else over those
# that the last commits changed and one in thirty-two of the others, another part after each commit, since all take a
# quarter of an hour of one core. Needs the native build's compile_commands.json.
set -euo pipefail
cd "$(dirname "$0")/.."
commits_back=3
slices=32

every=$(git ls-files --cached --others --exclude-standard '*.cpp' |
  grep -Ev '_test\.cpp$|/must_not_compile/|^apps/wasm/|^bench/|^checks/|^fuzz/|^cmake/')
if [[ "${1:-}" == --all ]]; then
  chosen=$every
else
  since=HEAD
  if git rev-parse --quiet --verify "HEAD~$commits_back" >/dev/null; then since="HEAD~$commits_back"; fi
  changed=$(git diff -M --diff-filter=AM --name-only "$since" -- '*.cpp')
  turn=$((0x$(git rev-parse HEAD | cut -c1-4) % slices))
  chosen=$({ grep -Fxf <(echo "$changed") <<<"$every" || true; awk -v n="$slices" -v k="$turn" 'NR % n == k' <<<"$every"; } | sort -u)
fi
echo "$(wc -l <<<"$chosen") of $(wc -l <<<"$every") sources"
xargs -P "$(nproc)" -n 3 clang-tidy-19 -p build/native --quiet \
  --extra-arg=-Wno-unknown-warning-option --extra-arg=-Wno-deprecated-declarations <<<"$chosen" 2>&1 |
  grep -Ev '^[0-9]+ warnings? .*generated|^Suppressed|^Use -header-filter|^\[[0-9]+/[0-9]+\] Processing' || [[ ${PIPESTATUS[0]} -eq 0 ]]
