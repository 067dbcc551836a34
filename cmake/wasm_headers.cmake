# The host's header-only libraries for the WebAssembly build: never all of /usr/include, only links to the ones used.
set(wasm_headers ${CMAKE_BINARY_DIR}/headers)
file(MAKE_DIRECTORY ${wasm_headers})
foreach(library nlohmann boost fmt tl)
  if(NOT EXISTS ${wasm_headers}/${library})
    file(CREATE_LINK /usr/include/${library} ${wasm_headers}/${library} SYMBOLIC)
  endif()
endforeach()
if(NOT EXISTS ${wasm_headers}/Eigen)
  file(CREATE_LINK /usr/include/eigen3/Eigen ${wasm_headers}/Eigen SYMBOLIC)
endif()
# First in line: stand-ins for headers that the WebAssembly C++ library lacks.
target_compile_options(lastegg_options INTERFACE
  "SHELL:-isystem ${CMAKE_SOURCE_DIR}/apps/wasm/stand_ins" "SHELL:-isystem ${wasm_headers}")
# C++20 has no std::unary_function, and this C++ library keeps to that; boost/container_hash asks to be told.
target_compile_definitions(lastegg_options INTERFACE BOOST_NO_CXX98_FUNCTION_BASE)
