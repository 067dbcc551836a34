# What tests need in WebAssembly: GoogleTest compiled from Debian's sources, SUNDIALS from tools/build_sundials.sh where
# that could build it, and node to run them. RapidCheck exists as a native library only.
set(googletest_root /usr/src/googletest/googletest)
add_library(googletest STATIC ${googletest_root}/src/gtest-all.cc ${googletest_root}/src/gtest_main.cc apps/wasm/shim.cpp)
target_compile_options(googletest PRIVATE -fignore-exceptions)
target_include_directories(googletest PRIVATE ${googletest_root} SYSTEM PUBLIC ${googletest_root}/include)
target_compile_definitions(googletest PUBLIC GTEST_HAS_PTHREAD=0 GTEST_HAS_EXCEPTIONS=0 GTEST_HAS_STREAM_REDIRECTION=0)
# As in the engine of the page, running out of stack traps; assertions print more than it ever says.
target_link_options(googletest PUBLIC -fuse-ld=lld -Wl,-z,stack-size=8388608 -Wl,--stack-first)
set(googletest googletest)

set(sundials_root ${CMAKE_SOURCE_DIR}/build/sundials/wasm)
list(APPEND CMAKE_LIBRARY_PATH ${sundials_root}/lib)
include_directories(SYSTEM ${sundials_root}/include)

find_program(node node REQUIRED)
set(CMAKE_CROSSCOMPILING_EMULATOR ${node};--no-warnings;${CMAKE_SOURCE_DIR}/tools/run_wasi.mjs)
