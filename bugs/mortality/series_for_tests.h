// A series that owns its readings, and the law without onset and cap, for tests.
#pragma once

#include <vector>

#include "bugs/mortality/mortality.h"

namespace lastegg::bugs {

struct OwnedSeries {
  std::vector<double> seconds;
  std::vector<double> celsius;
  TemperatureSeries view() const { return {seconds, celsius}; }
};

/// The law with one z and neither onset nor cap.
inline KillLaw bare_law(Stage stage, double z_kelvin) {
  KillLaw law = kill_law(stage, Exposure::air);
  law.z_kelvin = {z_kelvin, z_kelvin};
  law.onset_celsius = -200;
  law.cap_celsius = 200;
  return law;
}

}  // namespace lastegg::bugs
