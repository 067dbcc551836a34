#include "job/furniture/sofa.h"

#include <fmt/format.h>

#include "job/furniture/sofa_measures.h"
#include "job/furniture/sofa_pieces.h"

namespace lastegg::furniture {

Result<Item> build_sofa(const SofaRequest& request) {
  auto measured = measure_sofa(request);
  if (!measured) return refuse(measured.error());
  const SofaMeasures& m = measured->measures;
  Item item;
  item.kind = "sofa";
  item.title = fmt::format("Sofa, {} {}, {:.2f} m wide", m.seats, m.seats == 1 ? "seat" : "seats", m.width);
  item.parts = {{"seat", "Seat cushions"},  {"back", "Back"}, {"arm_left", "Left arm"},
                {"arm_right", "Right arm"}, {"base", "Base"}, {"underside", "Underside"}};
  item.dimensions = std::move(measured->used);
  add_sofa_frame(item, m, request);
  add_sofa_cushions(item, m, request);
  add_sofa_underside(item, m, request);
  return item;
}

}  // namespace lastegg::furniture
