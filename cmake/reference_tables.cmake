# Tables of independent programs that agreement tests read, written by ctest before the tests that need them.
target_compile_definitions(physics_test PRIVATE LASTEGG_BINARY_DIR="${CMAKE_BINARY_DIR}")
add_test(NAME water_reference_table
  COMMAND /usr/bin/python3 ${CMAKE_SOURCE_DIR}/tools/water_reference.py ${CMAKE_BINARY_DIR}/water_reference.csv)
set_tests_properties(water_reference_table PROPERTIES FIXTURES_SETUP water_reference)
set_tests_properties(physics PROPERTIES FIXTURES_REQUIRED water_reference)
add_test(NAME saturation_fit_coefficients
  COMMAND /usr/bin/python3 ${CMAKE_SOURCE_DIR}/tools/fit_saturation.py --check ${CMAKE_SOURCE_DIR}/physics/water/vapour.h)
add_test(NAME lane_function_coefficients
  COMMAND /usr/bin/python3 ${CMAKE_SOURCE_DIR}/tools/fit_lane_functions.py --check
    ${CMAKE_SOURCE_DIR}/physics/numerics/lanes.h ${CMAKE_SOURCE_DIR}/treatments/steam/lanes/lane_cells.h)
