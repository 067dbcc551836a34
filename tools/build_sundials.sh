#!/usr/bin/env bash
# Builds SUNDIALS CVODE from Debian's source package into build/sundials/<target>. Does nothing when it is there.
# Usage: tools/build_sundials.sh native|wasm
#   native  optimised, for the bench: the package's own binary is compiled without, and would flatter us fourfold
#   wasm    for the tests that compare the steam engine with it in WebAssembly
set -euo pipefail
cd "$(dirname "$0")/.."
target=${1:?'native or wasm'}
case $target in
  native) flags=('-DCMAKE_C_FLAGS_RELEASE=-O3 -march=native -DNDEBUG') ;;
  wasm) flags=('-DCMAKE_C_FLAGS_RELEASE=-O2 -DNDEBUG' "-DCMAKE_TOOLCHAIN_FILE=$PWD/cmake/wasm32-wasi.cmake") ;;
  *)
    echo "tools/build_sundials.sh knows native and wasm, not '$target'" >&2
    exit 2
    ;;
esac
root="$PWD/build/sundials"
if [[ -f "$root/$target/lib/libsundials_cvode.a" ]]; then exit 0; fi
mkdir -p "$root/lists/partial" "$root/source"
cd "$root/source"
if [[ ! -d code ]]; then
  # The source package, through lists of our own: the machine's stay as they are.
  for file in /etc/apt/sources.list.d/*.sources; do
    if grep -q 'debian.org/debian$' "$file"; then sed 's/^Types:.*/Types: deb-src/' "$file" >../debian.sources; fi
  done
  options=(-o "Dir::Etc::sourcelist=$root/debian.sources" -o Dir::Etc::sourceparts=/dev/null -o "Dir::State::lists=$root/lists")
  apt-get "${options[@]}" update
  apt-get "${options[@]}" source --download-only sundials
  rm -rf unpacked && mkdir unpacked
  tar -xf sundials_*.orig.tar.* -C unpacked --strip-components=1
  mv unpacked code
fi
cmake -S code -B "$target" -G Ninja -DCMAKE_BUILD_TYPE=Release "${flags[@]}" -DCMAKE_INSTALL_PREFIX="$root/$target" \
  -DCMAKE_INSTALL_LIBDIR=lib -DBUILD_SHARED_LIBS=OFF -DBUILD_ARKODE=OFF -DBUILD_CVODES=OFF -DBUILD_IDA=OFF -DBUILD_IDAS=OFF \
  -DBUILD_KINSOL=OFF -DEXAMPLES_ENABLE_C=OFF -DEXAMPLES_ENABLE_CXX=OFF -DEXAMPLES_INSTALL=OFF
cmake --build "$target" --target install
