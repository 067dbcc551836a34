#include "treatments/steam/pace/crossings.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <numeric>

#include "physics/uncertainty/weighted.h"

namespace lastegg::steam {
namespace {

constexpr double k_infinity = std::numeric_limits<double>::infinity();
constexpr int k_most_rounds = 10;
constexpr double k_grid = 1024;  // points of evaluation per unit of x
constexpr std::size_t k_first_chunk = 48;
constexpr std::size_t k_functions_per_column = 4;  // before a regression is believed
constexpr double k_ridge = 1e-3;                   // against few functions for many features
constexpr double k_secant_reach = 0.7;             // values further from zero tell nothing of the slope there
constexpr double k_shortest_secant = 0.02;  // a shorter one shows the noise of the values, not their slope
constexpr double k_trust_in_predicted_slope = 0.5;  // share of `close_enough` while the slope is a prediction
constexpr double k_slope_range = 0.5;               // of the logarithm of a predicted slope around the median
constexpr double k_inside_bracket =
    0.05;                               // a step that ends nearer to an end of the bracket halves it instead
constexpr double k_far_outside = 1;     // in x, at most, of a crossing beyond an end
constexpr double k_nearly_all = 0.99;   // of the regression's errors make the band around a quantile
constexpr double k_rough_error = 0.03;  // in x, of a rough evaluation
constexpr double k_rough = 4;           // times as far from zero is close enough for a rough crossing
constexpr double k_step_error = 0.25;   // of a Newton step, of its length
constexpr double k_clear_step = 0.02;   // in x: a longer one tells on which side the crossing lies
constexpr double k_local_reach = 0.4;   // in x, within which crossings count when looking for a quantile
constexpr double k_trusted = 0.25;      // of that weight, from which a function's error is looked at
constexpr int k_most_refinements = 8;
constexpr std::size_t k_compared = 16;  // functions whose rough values are held against fine ones

double on_grid(double x) {
  return std::floor(x * k_grid + 0.5) / k_grid;
}

// How much a crossing counts that lies at a distance from what is asked.
double trust_at(double distance) {
  const double far = distance / k_local_reach;
  return 1 / ((1 + far * far) * (1 + far * far));
}

// Crossing and logarithm of minus the slope as linear functions of the features.
class Prediction {
 public:
  /// From the functions known; if distances are given, those whose distance is small count most.
  void fit(const std::vector<std::vector<double>>& features, const std::vector<Crossing>& crossings,
           const std::vector<double>& distance) {
    std::vector<std::size_t> used;
    std::vector<double> slopes;
    for (std::size_t i = 0; i < crossings.size(); ++i) {
      if (!crossings[i].evaluated) continue;
      used.push_back(i);
      if (crossings[i].slope < 0) slopes.push_back(std::log(-crossings[i].slope));
    }
    const auto columns = static_cast<Eigen::Index>(features.front().size()) + 1;
    if (used.size() < k_functions_per_column * static_cast<std::size_t>(columns) || slopes.empty()) return;
    const auto middle = slopes.begin() + static_cast<std::ptrdiff_t>(slopes.size() / 2);
    std::nth_element(slopes.begin(), middle, slopes.end());
    usual_log_slope_ = *middle;
    const auto count = static_cast<Eigen::Index>(used.size());
    Eigen::MatrixXd rows(count, columns), wanted(count, 2);
    Eigen::VectorXd trust(count);
    for (Eigen::Index r = 0; r < count; ++r) {
      const std::size_t i = used[static_cast<std::size_t>(r)];
      rows.row(r) = row_of(features[i]);
      wanted(r, 0) = crossings[i].x;
      wanted(r, 1) = crossings[i].slope < 0 ? std::log(-crossings[i].slope) : usual_log_slope_;
      const double unsure = crossings[i].error / k_rough_error;
      trust[r] = (distance.empty() ? 1 : trust_at(distance[i])) / (1 + 0.1 * unsure * unsure);
    }
    Eigen::MatrixXd normal = rows.transpose() * trust.asDiagonal() * rows;
    normal.diagonal().tail(columns - 1).array() += k_ridge * trust.sum();
    const auto factored = normal.ldlt();
    coefficients_ = factored.solve(rows.transpose() * trust.asDiagonal() * wanted);
    const Eigen::MatrixXd lever = factored.solve(rows.transpose());
    std::vector<double> errors;  // had the regression not known the function
    for (Eigen::Index r = 0; r < count; ++r) {
      if (trust[r] < k_trusted) continue;
      const double own = trust[r] * rows.row(r).dot(lever.col(r));
      const double residual = wanted(r, 0) - rows.row(r).dot(coefficients_.col(0));
      errors.push_back(std::fabs(residual) / std::max(1 - own, 1e-3));
    }
    if (errors.empty()) errors.push_back(k_far_outside);  // none near enough to tell
    std::sort(errors.begin(), errors.end());
    error_ = errors[static_cast<std::size_t>(k_nearly_all * static_cast<double>(errors.size() - 1))];
    fitted_ = true;
  }
  bool fitted() const { return fitted_; }
  Crossing at(const std::vector<double>& features) const {
    const Eigen::RowVectorXd predicted = row_of(features) * coefficients_;
    const double log_slope =
        std::clamp(predicted[1], usual_log_slope_ - k_slope_range, usual_log_slope_ + k_slope_range);
    return {predicted[0], -std::exp(log_slope), error_};
  }

 private:
  static Eigen::RowVectorXd row_of(const std::vector<double>& features) {
    Eigen::RowVectorXd row(static_cast<Eigen::Index>(features.size()) + 1);
    row[0] = 1;
    for (std::size_t k = 0; k < features.size(); ++k) row[static_cast<Eigen::Index>(k) + 1] = features[k];
    return row;
  }

  Eigen::MatrixXd coefficients_;
  double error_ = 0;            // nearly all errors are smaller
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

// Takes in a value; true once the crossing is known. Beyond the ends it is where the last slope has it.
bool take(Chase& chase, double value, const CrossingSearch& search, double close_enough, Crossing& crossing) {
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
  if (!chase.slope_seen) close_enough *= k_trust_in_predicted_slope;
  const bool outside = (value > 0 && x >= search.high) || (value <= 0 && x <= search.low);
  if (std::fabs(value) <= close_enough || outside) {
    const double step = -value / chase.slope;
    crossing.x = x + (outside ? std::clamp(step, -k_far_outside, k_far_outside) : step);
    crossing.slope = outside && !chase.slope_seen ? 0 : chase.slope;
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
    crossing.x = x - value / chase.slope;
    crossing.slope = chase.slope;
    return true;
  }
  return false;
}

class Hunt {
 public:
  Hunt(const std::vector<std::vector<double>>& features, const CrossingSearch& search,
       const EvaluateMany& evaluate)
      : features_(features), search_(search), evaluate_(evaluate), crossings_(features.size()) {}

  /// Finds the first `count` functions, in growing chunks, each predicted from those before.
  Result<void> learn(std::size_t count, Effort effort) {
    std::size_t end = 0;
    for (std::size_t begin = 0; begin < count; begin = end) {
      end = std::min(count, begin == 0 ? k_first_chunk : 2 * begin);
      std::vector<std::size_t> which(end - begin);
      std::iota(which.begin(), which.end(), begin);
      if (auto found = find(which, effort); !found) return found;
      everywhere_.fit(features_, crossings_, {});
    }
    return {};
  }

  /// Finds on which side of a quantile those lie that are in the band around it, until all there are known;
  /// then moves all by what rough values err by there.
  Result<void> close_in(const CrossingQuantile& quantile) {
    std::vector<double> planned(crossings_.size()), distance(crossings_.size());
    predict_the_rest();
    for (int round = 0; round < k_most_refinements; ++round) {
      everywhere_.fit(features_, crossings_, {});
      for (std::size_t i = 0; i < planned.size(); ++i) planned[i] = crossings_[i].x - quantile.offsets[i];
      const double at =
          weighted_quantile(planned, {quantile.weights.begin(), quantile.weights.end()}, quantile.share);
      for (std::size_t i = 0; i < planned.size(); ++i) distance[i] = std::fabs(planned[i] - at);
      nearby_.fit(features_, crossings_, distance);
      std::vector<std::size_t> near;
      for (std::size_t i = 0; i < planned.size(); ++i) {
        Crossing& crossing = crossings_[i];
        if (!crossing.evaluated) crossing = guess_near(i, quantile.offsets[i] + at);
        const double beyond = crossing.x - quantile.offsets[i] - at;
        const bool in_tail = !crossing.evaluated && (quantile.share < 0.5 ? beyond < 0 : beyond > 0);
        if (in_tail || (crossing.error > 0 && std::fabs(beyond) <= crossing.error)) near.push_back(i);
      }
      const auto at_quantile = [&](std::size_t i) { return at + quantile.offsets[i]; };
      if (near.empty() || round + 1 == k_most_refinements) return correct(distance, at_quantile);
      if (auto found = find(near, Effort::rough, at_quantile); !found) return found;
    }
    return {};
  }

  /// Those not found take what the regression says of them.
  void predict_the_rest() {
    for (std::size_t i = 0; i < crossings_.size(); ++i)
      if (!crossings_[i].evaluated) crossings_[i] = guess(i);
  }

  bool can_predict() const { return everywhere_.fitted(); }

  std::vector<Crossing> crossings() const {
    std::vector<Crossing> out = crossings_;
    for (Crossing& crossing : out) {
      if (crossing.x > search_.high) crossing.x = k_infinity;
      if (crossing.x < search_.low) crossing.x = -k_infinity;
    }
    return out;
  }

 private:
  Crossing guess(std::size_t i) const {
    if (everywhere_.fitted()) return everywhere_.at(features_[i]);
    return {search_.start, search_.start_slope, 0, false};
  }

  using Side = std::function<double(std::size_t which)>;

  // Near x the regression of what lies nearby counts, far from it that of everything: carried so far the
  // former would go astray.
  Crossing guess_near(std::size_t i, double x) const {
    const Crossing far = everywhere_.at(features_[i]), near = nearby_.at(features_[i]);
    const double share = trust_at(far.x - x);
    const auto mixed = [share](double a, double b) { return share * a + (1 - share) * b; };
    return {mixed(near.x, far.x), mixed(near.slope, far.slope), mixed(near.error, far.error), false};
  }

  // Moves every crossing by the mean of what rough values err by in those nearest to a quantile.
  Result<void> correct(const std::vector<double>& distance, const Side& at_quantile) {
    std::vector<std::size_t> nearest;
    for (std::size_t i = 0; i < crossings_.size(); ++i)
      if (crossings_[i].evaluated && crossings_[i].slope < 0) nearest.push_back(i);
    const std::size_t count = std::min(k_compared, nearest.size());
    if (count == 0) return {};
    const auto closer = [&](std::size_t a, std::size_t b) {
      return distance[a] != distance[b] ? distance[a] < distance[b] : a < b;
    };
    std::partial_sort(nearest.begin(), nearest.begin() + static_cast<std::ptrdiff_t>(count), nearest.end(),
                      closer);
    nearest.resize(count);
    std::vector<double> xs;
    for (const std::size_t i : nearest)
      xs.push_back(std::clamp(on_grid(at_quantile(i)), search_.low, search_.high));
    const auto rough = evaluate_(nearest, xs, Effort::rough);
    if (!rough) return refuse(rough.error());
    const auto fine = evaluate_(nearest, xs, Effort::fine);
    if (!fine) return refuse(fine.error());
    double move = 0;
    for (std::size_t k = 0; k < count; ++k) {
      const double step = ((*rough)[k] - (*fine)[k]) / crossings_[nearest[k]].slope;
      move += std::clamp(step, -k_rough_error, k_rough_error) / static_cast<double>(count);
    }
    for (Crossing& crossing : crossings_) crossing.x += move;
    return {};
  }

  // Finds functions, each from where it is believed to cross. Where a `side` is asked for, each from there,
  // and only until it is known on which side of it the crossing lies.
  Result<void> find(const std::vector<std::size_t>& which, Effort effort, const Side& side = {}) {
    std::vector<Chase> chases(which.size());
    std::vector<std::size_t> open(which.size());  // indices into which
    std::iota(open.begin(), open.end(), 0);
    for (const std::size_t k : open) {
      const Crossing& known = crossings_[which[k]];
      const Crossing start = known.slope < 0 ? known : guess(which[k]);
      chases[k].next = std::clamp(on_grid(side ? side(which[k]) : start.x), search_.low, search_.high);
      chases[k].slope = start.slope;
    }
    const double close_enough = search_.close_enough * (effort == Effort::fine || side ? 1 : k_rough);
    for (int round = 0; round < k_most_rounds && !open.empty(); ++round) {
      std::vector<std::size_t> functions;
      std::vector<double> xs;
      for (const std::size_t k : open) {
        functions.push_back(which[k]);
        xs.push_back(chases[k].next);
      }
      const auto values = evaluate_(functions, xs, effort);
      if (!values) return refuse(values.error());
      std::vector<std::size_t> still_open;
      for (std::size_t o = 0; o < open.size(); ++o) {
        Crossing& crossing = crossings_[functions[o]];
        Chase& chase = chases[open[o]];
        if (take(chase, (*values)[o], search_, close_enough, crossing)) {
          crossing.error = effort == Effort::fine || side
                               ? 0
                               : k_rough_error + k_step_error * std::fabs(crossing.x - chase.last_x);
          crossing.evaluated = true;
          continue;
        }
        const double step = -(*values)[o] / chase.slope;
        if (side && std::fabs(step) > k_clear_step) {
          crossing = {chase.last_x + std::clamp(step, -k_far_outside, k_far_outside), chase.slope,
                      k_step_error * std::fabs(step), true};
          continue;
        }
        still_open.push_back(open[o]);
      }
      open = std::move(still_open);
    }
    for (const std::size_t k : open) {  // not met in time: the middle of what is known
      const Chase& chase = chases[k];
      crossings_[which[k]] = {
          0.5 * (std::max(chase.above_x, search_.low) + std::min(chase.below_x, search_.high)), chase.slope,
          k_rough_error, true};
    }
    return {};
  }

  const std::vector<std::vector<double>>& features_;
  const CrossingSearch& search_;
  const EvaluateMany& evaluate_;
  std::vector<Crossing> crossings_;
  Prediction everywhere_, nearby_;
};

}  // namespace

Result<std::vector<Crossing>> find_crossings(const std::vector<std::vector<double>>& features,
                                             const CrossingSearch& search, const EvaluateMany& evaluate) {
  Hunt hunt(features, search, evaluate);
  if (auto found = hunt.learn(features.size(), Effort::fine); !found) return refuse(found.error());
  return hunt.crossings();
}

Result<std::vector<Crossing>> find_crossings_near(const CrossingQuantile& quantile,
                                                  const std::vector<std::vector<double>>& features,
                                                  const CrossingSearch& search,
                                                  const EvaluateMany& evaluate) {
  const std::size_t columns = features.empty() ? 0 : features.front().size() + 1;
  const std::size_t learnt = std::max(search.learnt, k_functions_per_column * columns);
  if (features.size() < 2 * learnt) return find_crossings(features, search, evaluate);
  Hunt hunt(features, search, evaluate);
  if (auto found = hunt.learn(learnt, Effort::rough); !found) return refuse(found.error());
  if (!hunt.can_predict()) {  // all lie outside, none tells of a slope
    if (auto found = hunt.learn(features.size(), Effort::rough); !found) return refuse(found.error());
    return hunt.crossings();
  }
  if (!search.closes_in) {
    hunt.predict_the_rest();
    return hunt.crossings();
  }
  if (auto found = hunt.close_in(quantile); !found) return refuse(found.error());
  return hunt.crossings();
}

}  // namespace lastegg::steam
