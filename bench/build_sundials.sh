#!/usr/bin/env bash
# Builds SUNDIALS CVODE with optimisation from Debian's source package into build/bench/sundials: the package's own
# binary is compiled without, and would flatter us fourfold. Does nothing when it is there.
set -euo pipefail
cd "$(dirname "$0")/.."
root="$PWD/build/bench"
if [[ -f "$root/sundials/lib/libsundials_cvode.a" ]]; then exit 0; fi
mkdir -p "$root/lists/partial" "$root/source"
cd "$root/source"
# The source package, through lists of our own: the machine's stay as they are.
for file in /etc/apt/sources.list.d/*.sources; do
  if grep -q 'debian.org/debian$' "$file"; then sed 's/^Types:.*/Types: deb-src/' "$file" >../debian.sources; fi
done
options=(-o "Dir::Etc::sourcelist=$root/debian.sources" -o Dir::Etc::sourceparts=/dev/null -o "Dir::State::lists=$root/lists")
apt-get "${options[@]}" update
apt-get "${options[@]}" source --download-only sundials
rm -rf code && mkdir code
tar -xf sundials_*.orig.tar.* -C code --strip-components=1
cmake -S code -B code/build -G Ninja -DCMAKE_BUILD_TYPE=Release '-DCMAKE_C_FLAGS_RELEASE=-O3 -march=native -DNDEBUG' \
  -DCMAKE_INSTALL_PREFIX="$root/sundials" -DCMAKE_INSTALL_LIBDIR=lib -DBUILD_SHARED_LIBS=OFF -DBUILD_ARKODE=OFF -DBUILD_CVODES=OFF \
  -DBUILD_IDA=OFF -DBUILD_IDAS=OFF -DBUILD_KINSOL=OFF -DEXAMPLES_ENABLE_C=OFF -DEXAMPLES_INSTALL=OFF
cmake --build code/build --target install
