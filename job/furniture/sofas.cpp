// Sofas that sofa.h builds, under the names of the catalogue, and what is built around one: recliner, sofa
// bed.
#include <optional>
#include <string>
#include <vector>

#include "job/furniture/builders.h"
#include "job/furniture/pieces.h"
#include "job/furniture/sofa.h"
#include "job/furniture/sofa_measures.h"

namespace lastegg::furniture {
namespace {

SofaRequest sofa_from(const Assembly& a, int seats) {
  const ItemRequest& request = a.request();
  const auto given = [&](std::string_view key) {
    const auto found = request.measures.find(key);
    return found == request.measures.end() ? std::nullopt : std::optional(found->second);
  };
  SofaRequest sofa;
  sofa.seats = seats;
  sofa.width_metres = given("width_metres");
  sofa.depth_metres = given("depth_metres");
  sofa.height_metres = given("height_metres");
  sofa.seat_height_metres = given("seat_height_metres");
  sofa.arm_height_metres = given("arm_height_metres");
  sofa.arm_width_metres = given("arm_width_metres");
  sofa.leg_height_metres = given("leg_height_metres");
  sofa.seat_cushion_thickness_metres = given("seat_cushion_thickness_metres");
  sofa.back_cushion_thickness_metres = given("back_cushion_thickness_metres");
  sofa.skirted = a.has("skirted");
  sofa.tufted = a.has("tufted");
  sofa.covering = a.covering();
  sofa.leg_finish = a.finish();
  return sofa;
}

/// Builds the sofa and hands back its measures; nothing when it was refused.
std::optional<SofaMeasures> take_sofa(Assembly& a, const SofaRequest& request, std::string title) {
  a.take(build_sofa(request));
  const auto measured = measure_sofa(request);
  if (!measured) return std::nullopt;
  a.title(std::move(title));
  return measured->measures;
}

}  // namespace

void build_sofa_item(Assembly& a) {
  a.take(build_sofa(sofa_from(a, a.count("seats"))));
}

void build_armchair(Assembly& a) {
  take_sofa(a, sofa_from(a, 1), "Armchair");
}

void build_recliner(Assembly& a) {
  const auto m = take_sofa(a, sofa_from(a, 1), "Recliner");
  if (!m) return;
  a.part("footrest", "Footrest and mechanism");
  const double front = m->base_recess - a.usual("recliner.footrest_thickness");
  const Block rest = a.block("footrest", {m->inside_left(), front, m->leg_height},
                             {m->inside_right(), m->base_recess, m->deck_height});
  const Layers padded = a.cloth(Fill::batting_foam);
  a.rim(rest, Side::front,
        {"seam", "Seam around the front of the footrest", EdgeKind::seam, k_in_sight, padded});
  a.rim(rest, Side::back,
        {"staples", "Staple line behind the footrest, laid open", EdgeKind::staple_line, k_out_of_sight,
         a.cloth(Fill::wood)},
        {Side::bottom});
  for (const bool is_left : {true, false}) {
    const std::string side = is_left ? "left" : "right";
    const double x = is_left ? m->inside_left() + 0.05 : m->inside_right() - 0.05;
    a.trace(rest, Side::back, {{x, m->base_recess, m->leg_height}, {x, m->base_recess, m->deck_height}},
            {side + "_links", "Links of the mechanism, " + side + ", laid open", EdgeKind::metal_joint,
             k_out_of_sight, a.hard()});
  }
  // The closed footrest covers the front rail.
  for (Edge& edge : a.item().edges) {
    if (edge.id == "base.front_left_crevice" || edge.id == "base.front_right_crevice") edge.in_sight = false;
  }
  a.caution("A powered recliner is unplugged; its motor, transformer, cables and switch are never steamed.",
            k_practice);
  a.caution("Open and prop the mechanism before a hand or head goes in: it is under spring load.",
            k_practice);
}

void build_sofa_bed(Assembly& a) {
  const auto m = take_sofa(a, sofa_from(a, a.count("seats")), "Sofa bed");
  if (!m) return;
  Item& item = a.item();
  std::erase_if(item.faces, [](const Face& face) { return face.body == "base"; });
  std::erase_if(item.edges, [](const Edge& edge) { return edge.id.starts_with("base."); });
  const double left = m->inside_left();
  const double right = m->inside_right();
  const double bar = a.usual("metal.tube");
  const double front = m->base_recess + bar;
  const double back = m->inside_back;
  const double middle = (m->leg_height + m->deck_height) / 2.0;

  a.part("pull_out", "Pull-out bed");
  const Block rail =
      a.block("front_rail", {left, m->base_recess, m->leg_height}, {right, front, m->deck_height});
  a.rim(rail, Side::front,
        {"crevice", "Crevice between front rail and arm", EdgeKind::fold, k_in_sight, a.cloth(Fill::wood)},
        {Side::left, Side::right});
  a.rim(rail, Side::back,
        {"slot", "Slot behind the front rail, under the cushions", EdgeKind::fold, k_out_of_sight,
         a.cloth(Fill::wood)},
        {Side::top});
  for (const bool is_left : {true, false}) {
    const std::string side = is_left ? "left" : "right";
    const Block link = a.block("mechanism_" + side, {is_left ? left : right - bar, front, m->leg_height},
                               {is_left ? left + bar : right, back, m->deck_height});
    a.along(link, Side::top, is_left ? Side::right : Side::left,
            {"hinges", "Hinges of the mechanism, " + side, EdgeKind::metal_joint, k_out_of_sight, a.hard()});
    a.along(link, Side::bottom, is_left ? Side::right : Side::left,
            {"lower_hinges", "Lower hinges of the mechanism, " + side, EdgeKind::metal_joint, k_out_of_sight,
             a.hard()});
  }
  const Layers foam{Covering::mattress_tick, Fill::foam, std::nullopt};
  const Plan leaf = Plan{left + bar, front, right - bar, back}.shrunk(0.01);
  const Block lower = slab(a, "leaf_lower", leaf, m->leg_height, middle);
  const Block upper = slab(a, "leaf_upper", leaf, middle, m->deck_height);
  a.rim(upper, Side::top,
        {"tape", "Tape edge of the upper leaf of the mattress", EdgeKind::tape_edge, k_out_of_sight, foam});
  a.rim(lower, Side::bottom,
        {"tape", "Tape edge of the lower leaf of the mattress", EdgeKind::tape_edge, k_out_of_sight, foam});
  a.along(lower, Side::top, Side::back,
          {"fold", "Fold of the mattress", EdgeKind::fold, k_out_of_sight, foam});
  a.caution(
      "Pull the bed out before anything else: the folded mattress and its mechanism are items of their own.",
      k_practice);
  a.caution("Keep hands out of the mechanism: it is under spring load; a powered one is unplugged.",
            k_practice);
}

}  // namespace lastegg::furniture
