#!/usr/bin/env bash
# Every header compiles alone. A header that the source of the same name includes before all else has shown it in the native
# build; each other one, and with --all every one, is included by a source of one line, compiled with all warnings.
set -euo pipefail
root="$(cd "$(dirname "$0")/.." && pwd)"
cd "$root"
export CCACHE_BASEDIR="$root"
folder=build/headers
mkdir -p "$folder"

mapfile -t headers < <(git ls-files --cached --others --exclude-standard '*.h' | grep -v '^apps/wasm/stand_ins/')
if ((${#headers[@]} == 0)); then
  echo "there are no headers: is this the repository?" >&2
  exit 1
fi

shown_by_its_source() {
  local source="${1%.h}.cpp"
  [[ -f "$source" && "$(grep -m 1 '^#include' "$source")" == "#include \"$1\"" ]]
}

chosen=()
for header in "${headers[@]}"; do
  if [[ -f "$header" ]] && { [[ "${1:-}" == --all ]] || ! shown_by_its_source "$header"; }; then chosen+=("$header"); fi
done

compile() {
  local header="$1" source flags
  source="build/headers/${header//\//_}.cpp"
  printf '#include "%s"\n' "$header" >"$source"
  flags=(-std=c++20 -I. -Ibuild/native/generated -isystem /usr/include/eigen3 -O0 -Wall -Wextra -Wconversion -Wshadow -Werror
    -DLASTEGG_VERSION='"0"')
  if [[ "$header" == apps/* ]]; then read -r -a more < <(pkg-config --cflags cpp-httplib) && flags+=("${more[@]}"); fi
  ccache g++ "${flags[@]}" -c "$source" -o "$source.o" || { echo "$header does not compile alone"; exit 1; }
}
export -f compile

# shellcheck disable=SC2016  # the inner shell expands $1
printf '%s\0' "${chosen[@]}" | xargs -0 -P "$(nproc)" -I{} bash -c 'compile "$1"' _ {}
echo "${#headers[@]} headers compile alone, ${#chosen[@]} of them tried by themselves"
