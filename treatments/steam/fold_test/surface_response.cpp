#include "treatments/steam/fold_test/surface_response.h"

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <cmath>

#include "physics/uncertainty/sobol.h"
#include "treatments/steam/fold_test/score_map.h"
#include "treatments/steam/lanes/lane_pass.h"
#include "treatments/steam/pass/exposure.h"

namespace lastegg::steam {
namespace {

constexpr double k_wider = 1.25;
constexpr double k_farthest_score = 3.5;
constexpr int k_degree = 3;
constexpr double k_series_step_kelvin = 1;
constexpr double k_half_second = 0.5;

double value_at(const Series& series, double seconds) {
  const auto after = std::lower_bound(series.seconds.begin(), series.seconds.end(), seconds);
  if (after == series.seconds.begin()) return series.celsius.front();
  if (after == series.seconds.end()) return series.celsius.back();
  const auto i = static_cast<std::size_t>(after - series.seconds.begin());
  const double span = series.seconds[i] - series.seconds[i - 1];
  if (span <= 0) return series.celsius[i];
  const double share = (seconds - series.seconds[i - 1]) / span;
  return series.celsius[i - 1] + share * (series.celsius[i] - series.celsius[i - 1]);
}

// Products of the four unknowns, each brought to the size of one, up to the third degree.
std::vector<double> terms(const FoldTest& test, Scores scores) {
  for (double& score : scores) score = std::clamp(score, -k_farthest_score, k_farthest_score);
  const HeadOnCloth head = head_on_cloth(scores, test.pressure_pascal, test.towel);
  const double x[] = {(head.dew_celsius - boiling_celsius(test.pressure_pascal)) / 3 + 1, scores[1],
                      (head.vapour_efficiency - 0.5) / 0.3, head.forced_gas_metres_per_second / 0.006 - 1};
  std::array<std::array<double, k_degree + 1>, k_unknown_count> power{};
  for (std::size_t k = 0; k < k_unknown_count; ++k) {
    power[k][0] = 1;
    for (std::size_t n = 1; n <= k_degree; ++n) power[k][n] = power[k][n - 1] * x[k];
  }
  std::vector<double> out;
  for (std::size_t a = 0; a <= k_degree; ++a) {
    for (std::size_t b = 0; a + b <= k_degree; ++b) {
      for (std::size_t c = 0; a + b + c <= k_degree; ++c) {
        for (std::size_t d = 0; a + b + c + d <= k_degree; ++d)
          out.push_back(power[0][a] * power[1][b] * power[2][c] * power[3][d]);
      }
    }
  }
  return out;
}

}  // namespace

Result<SurfaceAfter> surface_after(const FoldTest& test, const FoldReading& reading, const Scores& scores) {
  const Stack stack = stack_of_reading(test, reading);
  LaneBatch batch = batch_of(test);
  batch.observe_seconds = reading.seconds_after + 1;
  const auto history = run_pass(lane_problem(batch, pass_of_reading(test, reading, scores, stack)), {});
  if (!history) return refuse(history.error());
  Series series;
  fine_series(*history, history->surface_celsius, k_series_step_kelvin, series);
  const double from = std::max(0.0, reading.seconds_after - k_half_second);
  const double to = reading.seconds_after + k_half_second;
  const auto at = [&](double after) { return value_at(series, history->liftoff_seconds + after); };
  return SurfaceAfter{at(reading.seconds_after), (at(to) - at(from)) / (to - from)};
}

double SurfaceResponse::celsius(const FoldTest& test, const Scores& scores) const {
  const std::vector<double> factors = terms(test, scores);
  double sum = 0;
  for (std::size_t k = 0; k < factors.size(); ++k) sum += coefficients[k] * factors[k];
  return sum;
}

Result<SurfaceResponse> surface_response(const FoldTest& test, const FoldReading& reading) {
  const auto count = static_cast<Eigen::Index>(terms(test, {}).size());
  Eigen::MatrixXd factors(k_response_passes, count);
  Eigen::VectorXd celsius(k_response_passes);
  double slopes = 0;
  for (int i = 0; i < k_response_passes; ++i) {
    Scores scores{};
    for (unsigned k = 0; k < k_unknown_count; ++k)
      scores[k] = k_wider * SobolStream("surface response", k).normal(static_cast<std::uint32_t>(i));
    const auto after = surface_after(test, reading, scores);
    if (!after) return refuse(after.error());
    celsius[i] = after->celsius;
    slopes += after->kelvin_per_second * after->kelvin_per_second;
    const std::vector<double> row = terms(test, scores);
    factors.row(i) = Eigen::Map<const Eigen::RowVectorXd>(row.data(), count);
  }
  const Eigen::HouseholderQR<Eigen::MatrixXd> triangle(factors);
  const Eigen::VectorXd found = triangle.solve(celsius);
  SurfaceResponse out;
  for (const double one : found) out.coefficients.push_back(rounded(one));
  out.residual_kelvin =
      std::sqrt((factors * found - celsius).squaredNorm() / static_cast<double>(k_response_passes - count));
  out.kelvin_per_second = std::sqrt(slopes / k_response_passes);
  return out;
}

}  // namespace lastegg::steam
