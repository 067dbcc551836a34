#include "treatments/steam/fold_test/reading_likelihood.h"

#include "physics/numerics/elementary.h"
#include "treatments/steam/fold_test/fold_fit.h"

namespace lastegg::steam {
namespace {

constexpr int k_rounds = 6;

}  // namespace

double misfit(double score) {
  return (k_likelihood_freedom + 1) * numerics::log(1 + score * score / k_likelihood_freedom);
}

double likelihood_weight(double score) {
  return (k_likelihood_freedom + 1) / (k_likelihood_freedom + score * score);
}

IntegratedErrors integrate_errors(const Matrix& slopes, const Vector& missed) {
  const Eigen::Index errors = slopes.cols();
  IntegratedErrors out{0, missed};
  if (errors == 0) return out;
  Vector at = Vector::Zero(errors);
  Matrix hessian;
  for (int round = 0; round < k_rounds; ++round) {
    hessian = Matrix::Identity(errors, errors);
    Vector pull = Vector::Zero(errors);
    for (Eigen::Index r = 0; r < missed.size(); ++r) {
      const double weight = likelihood_weight(out.scores[r]);
      hessian += weight * slopes.row(r).transpose() * slopes.row(r);
      pull += weight * missed[r] * slopes.row(r).transpose();
    }
    at = hessian.llt().solve(pull);
    out.scores = missed - slopes * at;
  }
  out.value = at.squaredNorm();
  const Matrix root = hessian.llt().matrixL();
  for (Eigen::Index k = 0; k < errors; ++k) out.value += 2 * numerics::log(root(k, k));
  return out;
}

}  // namespace lastegg::steam
