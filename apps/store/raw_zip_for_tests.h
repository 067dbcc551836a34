// Zips made byte by byte, with whatever lies a test needs. Layout as in PKWARE's APPNOTE 6.3, sections 4.3.7,
// 4.3.12 and 4.3.16; entries are stored.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace lastegg::store {

struct RawEntry {
  std::string name;
  std::string content;
  std::uint16_t flags = 0;   ///< bit 0: encrypted
  std::uint16_t method = 0;  ///< 0: stored
  std::uint32_t unix_mode = 0100644;
  std::int64_t size_lie = 0;       ///< added to the declared unpacked size
  std::uint32_t checksum_lie = 0;  ///< added to the checksum
};

inline std::uint32_t crc32_of(std::string_view bytes) {
  std::uint32_t crc = 0xffffffffU;
  for (const char c : bytes) {
    crc ^= static_cast<unsigned char>(c);
    for (int bit = 0; bit < 8; ++bit) crc = (crc >> 1) ^ ((crc & 1U) != 0 ? 0xedb88320U : 0U);
  }
  return ~crc;
}

inline std::string raw_zip(const std::vector<RawEntry>& entries) {
  const auto put = [](std::string& to, std::uint64_t value, int bytes) {
    for (int i = 0; i < bytes; ++i) to += static_cast<char>(value >> (8 * i) & 0xffU);
  };
  std::string zip, directory;
  for (const RawEntry& entry : entries) {
    const auto size =
        static_cast<std::uint64_t>(static_cast<std::int64_t>(entry.content.size()) + entry.size_lie);
    const auto put_facts = [&](std::string& to) {
      put(to, 20, 2);
      put(to, entry.flags, 2);
      put(to, entry.method, 2);
      put(to, 0, 2);
      put(to, 0x21, 2);
      put(to, crc32_of(entry.content) + entry.checksum_lie, 4);
      put(to, entry.content.size(), 4);
      put(to, size, 4);
      put(to, entry.name.size(), 2);
      put(to, 0, 2);
    };
    const std::size_t offset = zip.size();
    put(zip, 0x04034b50, 4);
    put_facts(zip);
    zip += entry.name + entry.content;
    put(directory, 0x02014b50, 4);
    put(directory, 3U << 8U | 20U, 2);
    put_facts(directory);
    put(directory, 0, 2);
    put(directory, 0, 2);
    put(directory, 0, 2);
    put(directory, static_cast<std::uint64_t>(entry.unix_mode) << 16U, 4);
    put(directory, offset, 4);
    directory += entry.name;
  }
  const std::size_t offset = zip.size();
  zip += directory;
  put(zip, 0x06054b50, 4);
  put(zip, 0, 2);
  put(zip, 0, 2);
  put(zip, entries.size(), 2);
  put(zip, entries.size(), 2);
  put(zip, directory.size(), 4);
  put(zip, offset, 4);
  put(zip, 0, 2);
  return zip;
}

}  // namespace lastegg::store
