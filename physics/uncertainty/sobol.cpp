#include "physics/uncertainty/sobol.h"

#include <array>

#include "physics/uncertainty/normal.h"

namespace lastegg {
namespace {

constexpr unsigned k_bits = 32;
using Matrix = std::array<std::uint32_t, k_bits>;

/// Finisher of SplitMix64: every input bit reaches every output bit.
constexpr std::uint64_t mixed(std::uint64_t x) {
  x ^= x >> 30;
  x *= 0xbf58476d1ce4e5b9ULL;
  x ^= x >> 27;
  x *= 0x94d049bb133111ebULL;
  return x ^ (x >> 31);
}

/// Direction numbers of a primitive polynomial of degree s with inner coefficients a and initial numbers m.
constexpr Matrix directions(unsigned s, std::uint32_t a, std::array<std::uint32_t, 3> m) {
  Matrix v{};
  for (unsigned i = 0; i < k_bits; ++i) {
    if (i < s) {
      v[i] = m[i] << (k_bits - 1 - i);
      continue;
    }
    v[i] = v[i - s] ^ (v[i - s] >> s);
    for (unsigned k = 1; k < s; ++k)
      if ((a >> (s - 1 - k)) & 1U) v[i] ^= v[i - k];
  }
  return v;
}

constexpr Matrix van_der_corput() {
  Matrix v{};
  for (unsigned i = 0; i < k_bits; ++i) v[i] = 1U << (k_bits - 1 - i);
  return v;
}

// new-joe-kuo-6, dimensions 1 to 4
constexpr std::array<Matrix, k_sobol_dimensions> k_matrices = {
    van_der_corput(), directions(1, 0, {1, 0, 0}), directions(2, 1, {1, 3, 0}), directions(3, 1, {1, 3, 1})};

/// Nested uniform permutation of 32-bit numbers: each bit is flipped or not by a hash of all higher bits.
std::uint32_t permuted(std::uint32_t value, std::uint64_t seed) {
  std::uint32_t flips = 0;
  for (unsigned bit = 0; bit < k_bits; ++bit) {
    const std::uint64_t above = bit == 0 ? 0 : value >> (k_bits - bit);
    const std::uint64_t node = (std::uint64_t{1} << bit) | above;  // this node of the binary tree
    flips |= static_cast<std::uint32_t>(mixed(seed + node * 0x9e3779b97f4a7c15ULL) >> 63)
             << (k_bits - 1 - bit);
  }
  return value ^ flips;
}

std::uint32_t sobol(std::uint32_t index, const Matrix& matrix) {
  std::uint32_t point = 0;
  for (unsigned bit = 0; index != 0; ++bit, index >>= 1)
    if (index & 1U) point ^= matrix[bit];
  return point;
}

}  // namespace

std::uint64_t key_hash(std::string_view key) {
  std::uint64_t hash = 0xcbf29ce484222325ULL;
  for (const char c : key) hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001b3ULL;
  return mixed(hash);
}

SobolStream::SobolStream(std::string_view key, unsigned dimension)
    : shuffle_seed_(mixed(key_hash(key) ^ mixed(2 * std::uint64_t{dimension / k_sobol_dimensions} + 1))),
      scramble_seed_(mixed(key_hash(key) ^ mixed(2 * std::uint64_t{dimension} + 2))),
      matrix_(dimension % k_sobol_dimensions) {}

double SobolStream::uniform(std::uint32_t index) const {
  const std::uint32_t point =
      permuted(sobol(permuted(index, shuffle_seed_), k_matrices[matrix_]), scramble_seed_);
  return (point + 0.5) * 0x1p-32;
}

double SobolStream::normal(std::uint32_t index) const {
  return normal_quantile(uniform(index));
}

double uniform(std::string_view key, unsigned dimension, std::uint32_t index) {
  return SobolStream(key, dimension).uniform(index);
}

}  // namespace lastegg
