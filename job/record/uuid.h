// Identifiers of events and subjects. The clock and the randomness are arguments, so that the core has
// neither and a test can fix both. Plain functions.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace lastegg::record {

/// A version 7 UUID as text, "0198c0de-0000-7abc-8def-0123456789ab".
/// Model:   48 bits of Unix time in milliseconds, version 7, 12 random bits, variant 10, 62 random bits
/// Inputs:  unix_milliseconds as the device tells it, of which the lowest 48 bits are used;
///          random: ten random bytes, of which 74 bits are used
/// Source:  [rfc9562] RFC 9562 (2024), section 5.7 (from memory; the example value of appendix A.6 read in
/// other programs) Checked: job/record/uuid_reference_test.cpp: reference (appendix A.6 of the RFC), law
std::string uuid_v7(std::uint64_t unix_milliseconds, const std::array<std::uint8_t, 10>& random);

/// Whether `text` is a UUID in its one canonical spelling: lower case, with hyphens. Any version passes,
/// because nothing in the record depends on what an identifier says.
bool is_uuid(std::string_view text);

}  // namespace lastegg::record
