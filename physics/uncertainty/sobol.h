// Sample points of everything uncertain. Every unknown has a stable key ("head:h1/towel:wrapped");
// sample i of it is point i of a Sobol sequence that is scrambled and shuffled by that key alone. So a
// sample never depends on which other unknowns exist, on order, on thread or on target: integer
// arithmetic only. Values, no state.
#pragma once

#include <cstdint>
#include <string_view>

namespace lastegg {

/// Dimensions that one key can use with joint stratification; further ones of the same key are
/// stratified singly.
inline constexpr unsigned k_sobol_dimensions = 4;

/// Hash of a key, the same for ever: it names the samples that an issued answer rests on.
/// Source:  FNV-1a, 64 bits (Fowler, Noll, Vo), finished by the mixer of SplitMix64 (Steele, Lea, Flood
///          2014)
/// Checked: physics/uncertainty/sobol_law_test.cpp: recorded values
std::uint64_t key_hash(std::string_view key);

/// One dimension of one key's sequence.
/// Model:   the index is shuffled by a nested uniform (Owen) permutation of the key, taken through the
///          Sobol matrices of Joe and Kuo, and each dimension's digits are Owen-scrambled; every bit's
///          flip is a hash of the key, the dimension and all higher bits. Any 2^k points starting at a
///          multiple of 2^k put one point in every 2^-k bin; dimensions 0 and 1 together are a (0, k,
///          2)-net.
/// Source:  Owen 1995 (scrambling); Burley 2020, Journal of Computer Graphics Techniques 9(4) (hashing
///          and shuffling); Joe and Kuo 2008, new-joe-kuo-6 direction numbers (from memory, confirmed
///          by the net property)
/// Checked: physics/uncertainty/sobol_law_test.cpp: law
class SobolStream {
 public:
  /// Dimensions from k_sobol_dimensions on begin a new sequence, independent of the first four.
  SobolStream(std::string_view key, unsigned dimension);

  /// Sample `index`, strictly between 0 and 1.
  double uniform(std::uint32_t index) const;

  /// Sample `index` as a standard normal score: normal_quantile(uniform(index)).
  double normal(std::uint32_t index) const;

 private:
  std::uint64_t shuffle_seed_;
  std::uint64_t scramble_seed_;
  unsigned matrix_;
};

/// Sample `index` of a key's dimension, strictly between 0 and 1.
double uniform(std::string_view key, unsigned dimension, std::uint32_t index);

}  // namespace lastegg
