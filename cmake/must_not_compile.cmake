# Sources that must be refused by the compiler. Each file under a must_not_compile folder is compiled twice: as it stands
# it must compile, and with LASTEGG_WRONG defined it must not. Included by CMake this file adds the tests; run with
# cmake -P it performs one.
if(CMAKE_SCRIPT_MODE_FILE)
  set(command ${COMPILER} -std=c++20 -fsyntax-only -I${ROOT} ${FILE})
  execute_process(COMMAND ${command} RESULT_VARIABLE good_result ERROR_VARIABLE good_errors)
  if(NOT good_result EQUAL 0)
    message(FATAL_ERROR "${FILE}: the sound branch does not compile:\n${good_errors}")
  endif()
  execute_process(COMMAND ${command} -DLASTEGG_WRONG RESULT_VARIABLE wrong_result ERROR_VARIABLE wrong_errors)
  if(wrong_result EQUAL 0)
    message(FATAL_ERROR "${FILE}: the wrong branch compiles")
  endif()
  if(NOT wrong_errors MATCHES "error: ")
    message(FATAL_ERROR "${FILE}: the compiler failed without refusing the wrong branch:\n${wrong_errors}")
  endif()
  return()
endif()

file(GLOB_RECURSE must_not_compile_sources CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/physics/*/must_not_compile/*.cpp
  ${CMAKE_SOURCE_DIR}/bugs/*/must_not_compile/*.cpp ${CMAKE_SOURCE_DIR}/treatments/*/must_not_compile/*.cpp
  ${CMAKE_SOURCE_DIR}/job/*/must_not_compile/*.cpp ${CMAKE_SOURCE_DIR}/engine/must_not_compile/*.cpp)
foreach(source IN LISTS must_not_compile_sources)
  get_filename_component(name ${source} NAME_WE)
  add_test(NAME must_not_compile.${name} COMMAND ${CMAKE_COMMAND} -DCOMPILER=${CMAKE_CXX_COMPILER} -DROOT=${CMAKE_SOURCE_DIR}
    -DFILE=${source} -P ${CMAKE_SOURCE_DIR}/cmake/must_not_compile.cmake)
endforeach()
