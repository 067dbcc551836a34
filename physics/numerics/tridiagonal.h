// Linear systems whose matrix has three diagonals: factored once, solved for many right-hand sides. The
// matrices of implicit heat conduction are diagonally dominant, so no pivoting is done. Owns its
// factors; distinct objects may be used by distinct threads.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace lastegg::numerics {

/// LU factors of a tridiagonal matrix.
/// Model:   Thomas algorithm. Row i reads lower[i] x[i-1] + diagonal[i] x[i] + upper[i] x[i+1];
///          lower[0] and upper[n-1] are not read. The caller guarantees a diagonally dominant matrix.
/// Source:  textbook Gaussian elimination
/// Checked: physics/numerics/tridiagonal_agreement_test.cpp: agreement with a dense solver
class TridiagonalFactors {
 public:
  TridiagonalFactors(std::span<const double> lower, std::span<const double> diagonal,
                     std::span<const double> upper)
      : multiplier_(diagonal.size()), inverse_pivot_(diagonal.size()), upper_(upper.begin(), upper.end()) {
    for (std::size_t i = 0; i < diagonal.size(); ++i) {
      double pivot = diagonal[i];
      if (i > 0) {
        multiplier_[i] = lower[i] * inverse_pivot_[i - 1];
        pivot -= multiplier_[i] * upper_[i - 1];
      }
      inverse_pivot_[i] = 1.0 / pivot;
    }
  }

  std::size_t size() const { return inverse_pivot_.size(); }

  /// Replaces the right-hand side by the solution.
  /// Shape:   size() values.
  void solve_in_place(std::span<double> values) const {
    const std::size_t n = size();
    for (std::size_t i = 1; i < n; ++i) values[i] -= multiplier_[i] * values[i - 1];
    for (std::size_t i = n; i-- > 0;) {
      if (i + 1 < n) values[i] -= upper_[i] * values[i + 1];
      values[i] *= inverse_pivot_[i];
    }
  }

 private:
  std::vector<double> multiplier_;
  std::vector<double> inverse_pivot_;
  std::vector<double> upper_;
};

}  // namespace lastegg::numerics
