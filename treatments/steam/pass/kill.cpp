#include "treatments/steam/pass/kill.h"

#include <algorithm>

namespace lastegg::steam {

PlaceKill kill_of(const Series& series) {
  using namespace bugs;
  const TemperatureSeries place{series.seconds, series.celsius};
  const auto logarithm = [&](Stage stage, double lag_seconds) {
    return std::max(k_no_kill, log10_ratio(place, kill_law(stage, Exposure::steam), lag_seconds));
  };
  const auto own_lag = [](Stage stage) { return kill_law(stage, Exposure::steam).body_lag_seconds; };
  return {.egg = logarithm(Stage::egg, own_lag(Stage::egg)),
          .mobile = std::min(logarithm(Stage::nymph, own_lag(Stage::nymph)),
                             logarithm(Stage::adult, own_lag(Stage::adult))),
          .engorged = logarithm(Stage::adult, kill_rules().engorged_lag_seconds)};
}

}  // namespace lastegg::steam
