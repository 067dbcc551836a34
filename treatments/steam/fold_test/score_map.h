// The map from standard normal scores to those of a fit, and its rounding. For the fit of a fold test.
#pragma once

#include <Eigen/Dense>
#include <vector>

#include "treatments/steam/fold_test/fold_unknowns.h"

namespace lastegg::steam {

using Vector = Eigen::VectorXd;
using Matrix = Eigen::MatrixXd;

/// To 2^-20. Solutions of linear systems differ between machines in their last digits. Rounded so, they do
/// not, and neither does anything that is marched from them.
double rounded(double value);

Vector to_vector(const JointScores& scores);
/// Rounded.
JointScores to_scores(const Vector& vector);

/// A Gaussian stretch of the standard normal scores: mode + factor xi.
struct ScoreMap {
  JointScores mode;
  Matrix factor;
  JointScores scores(const JointScores& xi, double stretch) const;
};

/// Lower triangular factor of a covariance, rounded.
Matrix rounded_factor(const Matrix& covariance);

/// The map with the mean and the covariance of weighted samples.
ScoreMap matched_map(const std::vector<JointScores>& samples, const std::vector<double>& weights);

/// Normalised weights of unnormalised logarithms.
std::vector<double> weights_of_logs(const std::vector<double>& logs);

}  // namespace lastegg::steam
