#!/usr/bin/env bash
# Installs the Debian packages of tools/packages.txt that are missing.
# Usage: tools/install_packages.sh run|test|long     (each takes those before it along)
# LASTEGG_FORCE_PACKAGES=1 runs the installation even where nothing is missing.
set -euo pipefail
cd "$(dirname "$0")/.."
wanted="${1:-test}"

packages=()
while read -r name who _; do
  if [[ -z "$name" || "$name" == \#* ]]; then continue; fi
  if [[ "$who" == run || "$wanted" == long || "$who" == "$wanted" ]]; then packages+=("$name"); fi
done <tools/packages.txt
command -v npm >/dev/null || packages+=(npm)

if ! command -v apt-get >/dev/null; then
  echo "This script installs Debian packages, and this machine has no apt-get." >&2
  echo "Last Egg is built and tested on Debian 12. The packages it needs are listed in tools/packages.txt." >&2
  exit 1
fi

missing=()
installed=$(dpkg-query -W -f='${db:Status-Status} ${Package}\n' 2>/dev/null | sed -n 's/^installed //p')
for name in "${packages[@]}"; do
  grep -qxF -- "$name" <<<"$installed" || missing+=("$name")
done
if [[ "${LASTEGG_FORCE_PACKAGES:-0}" == 1 ]]; then missing=("${packages[@]}"); fi
if ((${#missing[@]} == 0)); then
  echo "all ${#packages[@]} packages are installed"
  exit 0
fi

as_root=()
if ((EUID != 0)); then
  if ! command -v sudo >/dev/null; then
    echo "These packages are missing, and only root can install them (there is no sudo here):" >&2
    echo "  apt-get install ${missing[*]}" >&2
    exit 1
  fi
  as_root=(sudo)
fi
echo "installing: ${missing[*]}"
"${as_root[@]}" apt-get update
"${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends "${missing[@]}"
