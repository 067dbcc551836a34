// Against Eigen's dense LU with full pivoting.
#include "physics/numerics/tridiagonal.h"

#include <gtest/gtest.h>

#include <eigen3/Eigen/Dense>
#include <random>

namespace lastegg {
namespace {

TEST(TridiagonalFactors, AgreeWithADenseSolver) {
  std::mt19937_64 generator(11);
  std::uniform_real_distribution<double> draw(-1.0, 1.0);
  for (const std::size_t n : {1u, 2u, 3u, 17u, 60u}) {
    std::vector<double> lower(n), diagonal(n), upper(n), values(n);
    const auto rows = static_cast<Eigen::Index>(n);
    Eigen::MatrixXd dense = Eigen::MatrixXd::Zero(rows, rows);
    Eigen::VectorXd right(rows);
    for (std::size_t i = 0; i < n; ++i) {
      lower[i] = draw(generator);
      upper[i] = draw(generator);
      diagonal[i] = 2.5 + draw(generator) * 0.4;
      values[i] = draw(generator);
      const auto row = static_cast<Eigen::Index>(i);
      dense(row, row) = diagonal[i];
      if (i > 0) dense(row, row - 1) = lower[i];
      if (i + 1 < n) dense(row, row + 1) = upper[i];
      right(row) = values[i];
    }
    const Eigen::VectorXd expected = dense.fullPivLu().solve(right);
    numerics::TridiagonalFactors(lower, diagonal, upper).solve_in_place(values);
    for (std::size_t i = 0; i < n; ++i) EXPECT_NEAR(values[i], expected(static_cast<Eigen::Index>(i)), 1e-13);
  }
}

}  // namespace
}  // namespace lastegg
