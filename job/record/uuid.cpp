#include "job/record/uuid.h"

namespace lastegg::record {

std::string uuid_v7(std::uint64_t unix_milliseconds, const std::array<std::uint8_t, 10>& random) {
  std::array<std::uint8_t, 16> octets{};
  for (std::size_t i = 0; i < 6; ++i)
    octets[i] = static_cast<std::uint8_t>(unix_milliseconds >> (8 * (5 - i)));
  for (std::size_t i = 0; i < 10; ++i) octets[6 + i] = random[i];
  octets[6] = static_cast<std::uint8_t>((octets[6] & 0x0fU) | 0x70U);
  octets[8] = static_cast<std::uint8_t>((octets[8] & 0x3fU) | 0x80U);

  constexpr std::string_view k_digits = "0123456789abcdef";
  std::string text;
  text.reserve(36);
  for (std::size_t i = 0; i < octets.size(); ++i) {
    if (i == 4 || i == 6 || i == 8 || i == 10) text += '-';
    text += k_digits[octets[i] >> 4];
    text += k_digits[octets[i] & 0xfU];
  }
  return text;
}

bool is_uuid(std::string_view text) {
  if (text.size() != 36) return false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    const bool hyphen_place = i == 8 || i == 13 || i == 18 || i == 23;
    const bool digit = (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
    if (hyphen_place ? c != '-' : !digit) return false;
  }
  return true;
}

}  // namespace lastegg::record
