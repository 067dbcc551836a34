// SHA-256, the fingerprint of events, records and blobs. In-house because the same code must run inside the
// WebAssembly module, where no packaged implementation can be used. Plain functions of their arguments; it
// guards against damage and mistakes, it is not used to keep secrets.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace lastegg::record {

/// Takes a message in pieces and gives its 256-bit digest.
/// Model:   Merkle-Damgard over 64-byte blocks, as FIPS 180-4 sections 5.1.1, 5.3.3 and 6.2 define it
/// Source:  [fips180-4] NIST FIPS PUB 180-4, Secure Hash Standard (2015)
/// Checked: job/record/sha256_reference_test.cpp: reference, law
class Sha256 {
 public:
  void add(std::string_view bytes);

  /// The digest of everything added, 64 lower-case hexadecimal digits. The object is spent afterwards.
  std::string finish();

 private:
  void take_block(const unsigned char* block);

  std::array<std::uint32_t, 8> state_ = {0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a,
                                         0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19};
  std::array<unsigned char, 64> block_{};
  std::size_t filled_ = 0;
  std::uint64_t length_bytes_ = 0;
};

/// SHA-256 of `bytes`, 64 lower-case hexadecimal digits.
/// Checked: job/record/sha256_reference_test.cpp: reference
std::string sha256_hex(std::string_view bytes);

/// Whether `text` is 64 lower-case hexadecimal digits.
bool is_sha256_hex(std::string_view text);

}  // namespace lastegg::record
