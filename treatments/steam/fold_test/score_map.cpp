#include "treatments/steam/fold_test/score_map.h"

#include <algorithm>
#include <cmath>

#include "physics/numerics/elementary.h"

namespace lastegg::steam {
namespace {

constexpr double k_covariance_floor = 1e-4;

}  // namespace

double rounded(double value) {
  constexpr double grid = 1 << 20;
  return std::floor(value * grid + 0.5) / grid;
}

Vector to_vector(const JointScores& scores) {
  return Eigen::Map<const Vector>(scores.data(), static_cast<Eigen::Index>(scores.size()));
}

JointScores to_scores(const Vector& vector) {
  JointScores scores(static_cast<std::size_t>(vector.size()));
  for (std::size_t k = 0; k < scores.size(); ++k) scores[k] = rounded(vector[static_cast<Eigen::Index>(k)]);
  return scores;
}

JointScores ScoreMap::scores(const JointScores& xi, double stretch) const {
  JointScores out = mode;
  for (std::size_t row = 0; row < out.size(); ++row) {
    for (std::size_t column = 0; column <= row; ++column) {
      out[row] +=
          factor(static_cast<Eigen::Index>(row), static_cast<Eigen::Index>(column)) * stretch * xi[column];
    }
  }
  return out;
}

Matrix rounded_factor(const Matrix& covariance) {
  Matrix factor = covariance.llt().matrixL();
  for (Eigen::Index row = 0; row < factor.rows(); ++row) {
    for (Eigen::Index column = 0; column < factor.cols(); ++column)
      factor(row, column) = column > row ? 0.0 : rounded(factor(row, column));
  }
  return factor;
}

ScoreMap matched_map(const std::vector<JointScores>& samples, const std::vector<double>& weights) {
  const auto size = static_cast<Eigen::Index>(samples.front().size());
  Vector mean = Vector::Zero(size);
  Matrix square = Matrix::Zero(size, size);
  for (std::size_t i = 0; i < weights.size(); ++i) {
    const Vector scores = to_vector(samples[i]);
    mean += weights[i] * scores;
    square += weights[i] * scores * scores.transpose();
  }
  const Matrix covariance =
      square - mean * mean.transpose() + k_covariance_floor * Matrix::Identity(size, size);
  return {to_scores(mean), rounded_factor(covariance)};
}

std::vector<double> weights_of_logs(const std::vector<double>& logs) {
  const double largest = *std::max_element(logs.begin(), logs.end());
  std::vector<double> weights(logs.size());
  double sum = 0;
  for (std::size_t i = 0; i < logs.size(); ++i) sum += weights[i] = numerics::exp(logs[i] - largest);
  for (double& weight : weights) weight /= sum;
  return weights;
}

}  // namespace lastegg::steam
