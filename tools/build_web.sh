#!/usr/bin/env bash
# Builds the web app into apps/web/dist, with a packed copy (.br) beside each large text and WebAssembly file.
# Does nothing where the result is newer than everything it is made from. `--install` only installs its npm packages.
set -euo pipefail
cd "$(dirname "$0")/../apps/web"

lock=node_modules/.package-lock.json  # written by npm when it has finished
if [[ ! -f "$lock" || package-lock.json -nt "$lock" ]]; then npm ci --no-audit --no-fund; fi
if [[ "${1:-}" == --install ]]; then exit 0; fi

engine=../../build/wasm/lastegg.wasm
spanish=../../words/data/es.json
done_mark=dist/.built
newer() {
  find . "$engine" "$spanish" -path ./node_modules -prune -o -path ./dist -prune -o \
    -type f -newer "$done_mark" -print -quit
}
if [[ -f "$done_mark" && -z "$(newer)" ]]; then
  echo "apps/web/dist is up to date"
  exit 0
fi
mark=$(mktemp)  # its time is that of the beginning: what changes during the build is built again
trap 'rm -f "$mark"' EXIT
npm run build
find dist -type f -size +1k \( -name '*.js' -o -name '*.css' -o -name '*.html' -o -name '*.wasm' -o -name '*.svg' \
  -o -name '*.json' -o -name '*.ndjson' -o -name '*.webmanifest' \) -exec brotli --force --keep --quality=11 --lgwin=24 {} +
touch -r "$mark" "$done_mark"
