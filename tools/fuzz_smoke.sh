#!/usr/bin/env bash
# Runs every fuzz target over its seeds and then over mutations of them, SECONDS each (default 15).
# Usage: tools/fuzz_smoke.sh [SECONDS]
set -euo pipefail
cd "$(dirname "$0")/.."
seconds="${1:-15}"
programs=build/sanitize/fuzz
work=build/fuzz
export ASAN_OPTIONS="${ASAN_OPTIONS:-}:allocator_may_return_null=1"
export UBSAN_OPTIONS="print_stacktrace=1:halt_on_error=1"

shopt -s nullglob
targets=("$programs"/*_fuzz)
if ((${#targets[@]} == 0)); then
  echo "no fuzz target is built: cmake --preset sanitize && cmake --build --preset sanitize" >&2
  exit 1
fi

# A request's seed is the question's name, a line's end, and the request.
rm -rf "$work/ask_seeds"
mkdir -p "$work/ask_seeds"
for example in examples/*.json; do
  name="${example##*/}"
  { printf '%s\n' "${name%%.*}" && cat "$example"; } >"$work/ask_seeds/$name"
done

for target in "${targets[@]}"; do
  name="${target##*/}"
  seeds="fuzz/seeds/${name%_fuzz}"
  if [[ "$name" == ask_fuzz ]]; then seeds="$work/ask_seeds"; fi
  if [[ -z "$(ls -A "$seeds")" ]]; then
    echo "$name has no seeds in $seeds" >&2
    exit 1
  fi
  mkdir -p "$work/$name"
  echo "== $name, $seconds s"
  # What is found is kept in build/fuzz; the seeds themselves stay as they are.
  "$target" -max_total_time="$seconds" -timeout=300 -rss_limit_mb=4096 -max_len=16384 -seed=20260101 -print_final_stats=1 \
    -artifact_prefix="$work/$name-" "$work/$name" "$seeds" 2>&1 | tail -n 40
  echo "$name: no fault found"
done
