#include "treatments/steam/crossings.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <limits>

namespace lastegg::steam {
namespace {

constexpr double k_infinity = std::numeric_limits<double>::infinity();
constexpr int k_most_rounds = 10;
constexpr double k_grid = 1024;  // points of evaluation per unit of x
constexpr std::size_t k_first_chunk = 48;
constexpr double k_ridge = 1e-2;            // against few functions for many features
constexpr double k_secant_reach = 0.7;      // values further from zero tell nothing of the slope there
constexpr double k_shortest_secant = 0.02;  // a shorter one shows the noise of the values, not their slope
constexpr double k_trust_in_predicted_slope = 0.4;  // share of `close_enough` while the slope is a prediction
constexpr double k_step_error =
    0.25;  // standard error of a Newton step with a predicted slope, of its length
constexpr double k_slope_range = 0.5;              // of the logarithm of a predicted slope around the median
constexpr std::size_t k_functions_per_column = 4;  // before a regression is believed
constexpr double k_inside_bracket =
    0.05;  // a step that ends nearer to an end of the bracket halves it instead

double on_grid(double x) {
  return std::floor(x * k_grid + 0.5) / k_grid;
}

// Crossing and logarithm of minus the slope as linear functions of the features.
class Prediction {
 public:
  void fit(const std::vector<std::vector<double>>& features, const std::vector<Crossing>& crossings,
           std::size_t known) {
    const auto columns = static_cast<Eigen::Index>(features.front().size()) + 1;
    Eigen::MatrixXd normal = Eigen::MatrixXd::Zero(columns, columns);
    Eigen::MatrixXd right = Eigen::MatrixXd::Zero(columns, 2);
    std::size_t used = 0;
    Eigen::VectorXd row(columns);
    for (std::size_t i = 0; i < known; ++i) {
      if (crossings[i].predicted || !std::isfinite(crossings[i].x)) continue;
      row[0] = 1;
      for (Eigen::Index k = 1; k < columns; ++k) row[k] = features[i][static_cast<std::size_t>(k - 1)];
      normal += row * row.transpose();
      right.col(0) += crossings[i].x * row;
      right.col(1) += std::log(-crossings[i].slope) * row;
      ++used;
    }
    if (used < k_functions_per_column * static_cast<std::size_t>(columns)) return;
    std::vector<double> slopes;
    for (std::size_t i = 0; i < known; ++i)
      if (!crossings[i].predicted && std::isfinite(crossings[i].x))
        slopes.push_back(std::log(-crossings[i].slope));
    std::nth_element(slopes.begin(), slopes.begin() + static_cast<std::ptrdiff_t>(slopes.size() / 2),
                     slopes.end());
    usual_log_slope_ = slopes[slopes.size() / 2];
    normal.diagonal().tail(columns - 1).array() += k_ridge * static_cast<double>(used);
    coefficients_ = normal.ldlt().solve(right);
    fitted_ = true;
  }
  bool fitted() const { return fitted_; }
  Crossing at(const std::vector<double>& features) const {
    double x = coefficients_(0, 0), log_slope = coefficients_(0, 1);
    for (std::size_t k = 0; k < features.size(); ++k) {
      x += features[k] * coefficients_(static_cast<Eigen::Index>(k) + 1, 0);
      log_slope += features[k] * coefficients_(static_cast<Eigen::Index>(k) + 1, 1);
    }
    log_slope = std::clamp(log_slope, usual_log_slope_ - k_slope_range, usual_log_slope_ + k_slope_range);
    return {x, -std::exp(log_slope)};
  }

 private:
  Eigen::MatrixXd coefficients_;
  double usual_log_slope_ = 0;  // median
  bool fitted_ = false;
};

// One function on its way to its crossing.
struct Chase {
  double next = 0;                       // where it is evaluated next
  double slope = -1;                     // believed
  bool slope_seen = false;               // as a secant of this function's own values
  double last_x = 0, last = k_infinity;  // the evaluation before
  double above_x = -k_infinity;          // the nearest point with a value above zero
  double below_x = k_infinity;           // and below it
};

// Takes in a value; true once the crossing is known.
bool take(Chase& chase, double value, const CrossingSearch& search, Crossing& crossing) {
  const double x = chase.next;
  (value > 0 ? chase.above_x : chase.below_x) = x;
  if (std::fabs(chase.last) < k_secant_reach && std::fabs(value) < k_secant_reach &&
      std::fabs(x - chase.last_x) >= k_shortest_secant) {
    const double secant = (value - chase.last) / (x - chase.last_x);
    if (secant < 0) {
      chase.slope = secant;
      chase.slope_seen = true;
    }
  }
  chase.last_x = x, chase.last = value;
  const double close_enough = search.close_enough * (chase.slope_seen ? 1 : k_trust_in_predicted_slope);
  if (std::fabs(value) <= close_enough) {
    crossing = {x - value / chase.slope, chase.slope};
    if (crossing.x > search.high) crossing.x = k_infinity;
    if (crossing.x < search.low) crossing.x = -k_infinity;
    return true;
  }
  if ((value > 0 && x >= search.high) || (value <= 0 && x <= search.low)) {
    crossing = {value > 0 ? k_infinity : -k_infinity, chase.slope};
    return true;
  }
  double next = x + std::clamp(-value / chase.slope, -search.largest_step, search.largest_step);
  if (chase.above_x > -k_infinity && chase.below_x < k_infinity) {
    const double margin = k_inside_bracket * (chase.below_x - chase.above_x);
    if (!(next > chase.above_x + margin && next < chase.below_x - margin))
      next = 0.5 * (chase.above_x + chase.below_x);
  }
  chase.next = std::clamp(on_grid(next), search.low, search.high);
  if (chase.next == x || chase.next == chase.above_x ||
      chase.next == chase.below_x) {  // one step of the grid left
    crossing = {x - value / chase.slope, chase.slope};
    return true;
  }
  return false;
}

}  // namespace

Result<std::vector<Crossing>> find_crossings(const std::vector<std::vector<double>>& features,
                                             const CrossingSearch& search, const EvaluateMany& evaluate) {
  std::vector<Crossing> crossings(features.size());
  Prediction prediction;
  double standard_error = 0;  // of predictions, seen on functions that were then evaluated; 0: not known yet
  std::size_t end = 0;
  for (std::size_t begin = 0; begin < features.size(); begin = end) {
    end = std::min(features.size(), begin == 0 ? k_first_chunk : 2 * begin);
    std::vector<Chase> chases(end - begin);
    std::vector<Crossing> guesses(end - begin, {search.start, search.start_slope});
    std::vector<std::size_t> open;
    for (std::size_t i = begin; i < end; ++i) {
      Crossing& guess = guesses[i - begin];
      if (prediction.fitted()) guess = prediction.at(features[i]);
      if (standard_error > 0 && search.matters &&
          !search.matters(i, guess.x, standard_error, {crossings.data(), begin})) {
        crossings[i] = {guess.x > search.high  ? k_infinity
                        : guess.x < search.low ? -k_infinity
                                               : guess.x,
                        guess.slope, true};
        continue;
      }
      chases[i - begin].next = std::clamp(on_grid(guess.x), search.low, search.high);
      chases[i - begin].slope = guess.slope;
      open.push_back(i);
    }
    for (int round = 0; round < k_most_rounds && !open.empty(); ++round) {
      std::vector<double> xs;
      for (const std::size_t i : open) xs.push_back(chases[i - begin].next);
      const auto values = evaluate(open, xs);
      if (!values) return refuse(values.error());
      std::vector<std::size_t> still_open;
      for (std::size_t k = 0; k < open.size(); ++k) {
        const std::size_t which = open[k];
        Chase& chase = chases[which - begin];
        if (take(chase, (*values)[k], search, crossings[which])) continue;
        // One step of Newton may already say all that matters.
        const double step = -(*values)[k] / chase.slope;
        if (standard_error > 0 && search.matters && std::fabs((*values)[k]) < k_secant_reach &&
            !search.matters(which, xs[k] + step, k_step_error * std::fabs(step), {crossings.data(), begin})) {
          crossings[which] = {xs[k] + step, chase.slope};
          continue;
        }
        still_open.push_back(which);
      }
      open = std::move(still_open);
    }
    for (const std::size_t i : open) {  // not met in time: the middle of what is known
      const Chase& chase = chases[i - begin];
      crossings[i] = {0.5 * (std::max(chase.above_x, search.low) + std::min(chase.below_x, search.high)),
                      chase.slope};
    }
    if (prediction.fitted()) {
      double square = 0;
      std::size_t count = 0;
      for (std::size_t i = begin; i < end; ++i) {
        if (crossings[i].predicted || !std::isfinite(crossings[i].x)) continue;
        square += (crossings[i].x - guesses[i - begin].x) * (crossings[i].x - guesses[i - begin].x);
        ++count;
      }
      if (count >= k_first_chunk) standard_error = std::sqrt(square / static_cast<double>(count));
    }
    prediction.fit(features, crossings, end);
  }
  return crossings;
}

}  // namespace lastegg::steam
