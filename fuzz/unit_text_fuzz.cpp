// Feeds the reader of quantities that people type: the first byte chooses the unit, the rest is the text.
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "physics/quantities/unit_text.h"

namespace {

// noexcept: whatever is thrown ends the program.
void read_one(lastegg::Unit unit, std::string_view text) noexcept {
  const lastegg::Result<double> value = lastegg::parse_quantity(text, unit);
  if (value && !std::isfinite(*value)) std::abort();
  if (!value && value.error().kind == lastegg::ErrorKind::internal) std::abort();
  if (!value && value.error().message.empty()) std::abort();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  if (size == 0) return 0;
  constexpr int k_units = static_cast<int>(lastegg::Unit::fraction) + 1;
  const auto unit = static_cast<lastegg::Unit>(bytes[0] % k_units);
  read_one(unit, std::string_view(reinterpret_cast<const char*>(bytes) + 1, size - 1));
  return 0;
}
