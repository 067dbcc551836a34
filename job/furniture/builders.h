// One function for each kind of the catalogue; the table in catalogue.cpp names them. Each puts an item
// together from the measures that the assembly hands out.
#pragma once

#include "job/furniture/assembly.h"

namespace lastegg::furniture {

// beds.cpp, bed_frames.cpp, headboards.cpp
void build_mattress_item(Assembly& a);
void build_floor_mattress(Assembly& a);
void build_box_spring(Assembly& a);
void build_futon(Assembly& a);
void build_slatted_frame(Assembly& a);
void build_metal_frame(Assembly& a);
void build_bunk_bed(Assembly& a);
void build_cot(Assembly& a);
void build_hospital_bed(Assembly& a);
void build_wooden_headboard(Assembly& a);
void build_upholstered_headboard(Assembly& a);

// sofas.cpp, sectional.cpp, chairs.cpp
void build_sofa_item(Assembly& a);
void build_armchair(Assembly& a);
void build_recliner(Assembly& a);
void build_sofa_bed(Assembly& a);
void build_sectional(Assembly& a);
void build_dining_chair(Assembly& a);
void build_desk_chair(Assembly& a);
void build_ottoman(Assembly& a);
void build_vehicle_seat(Assembly& a);

// storage.cpp
void build_night_table(Assembly& a);
void build_dresser(Assembly& a);
void build_desk(Assembly& a);
void build_wardrobe(Assembly& a);
void build_bookcase(Assembly& a);

// small_things.cpp
void build_clutter(Assembly& a);
void build_luggage(Assembly& a);
void build_wheelchair(Assembly& a);
void build_stroller(Assembly& a);

// room_parts.cpp
void build_curtain(Assembly& a);
void build_picture(Assembly& a);
void build_baseboard(Assembly& a);
void build_carpet_edge(Assembly& a);
void build_door_frame(Assembly& a);
void build_socket_plate(Assembly& a);
void build_wall_joint(Assembly& a);

}  // namespace lastegg::furniture
