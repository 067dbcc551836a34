# lastegg_embed(<out-variable> file.json ...): compiles data files into the engine. The text of
# physics/materials/data/materials.json is afterwards lastegg::embedded::physics_materials_data_materials_json.
function(lastegg_embed out)
  set(sources)
  foreach(file IN LISTS ARGN)
    file(RELATIVE_PATH relative ${CMAKE_SOURCE_DIR} ${file})
    string(MAKE_C_IDENTIFIER ${relative} name)
    set(source ${CMAKE_BINARY_DIR}/generated/embedded/${name}.cpp)
    add_custom_command(OUTPUT ${source}
      COMMAND ${CMAKE_COMMAND} -DFILE=${file} -DNAME=${name} -DOUT=${source} -P ${CMAKE_SOURCE_DIR}/cmake/embed_file.cmake
      DEPENDS ${file} ${CMAKE_SOURCE_DIR}/cmake/embed_file.cmake VERBATIM)
    list(APPEND sources ${source})
  endforeach()
  set(${out} ${sources} PARENT_SCOPE)
endfunction()
