#include "job/probes/probe_check.h"

#include <cmath>

namespace lastegg::probes {

Result<BathTemperature> bath_temperature(Bath bath, Pressure pressure, bool by_barometer) {
  if (bath == Bath::melting_ice) return k_ice;
  const auto boiling = saturation_at(pressure);
  if (!boiling) return refuse(boiling.error());
  const double celsius = in_celsius(boiling->temperature);
  if (by_barometer) return BathTemperature{celsius, k_pot_kelvin};
  // The curve of boiling over pressure bends down, so the lower side is the wider.
  const auto low = saturation_at(pascals(in_pascals(pressure) - k_weather_pascal));
  if (!low) return refuse(low.error());
  return BathTemperature{celsius, k_pot_kelvin + celsius - in_celsius(low->temperature)};
}

ProbeCheck check_probe(double shown_celsius, const BathTemperature& bath) {
  const double error = shown_celsius - bath.celsius;
  const double off = std::fabs(error);
  const Verdict verdict = off + bath.spread_kelvin <= k_tolerance_kelvin  ? Verdict::sound
                          : off - bath.spread_kelvin > k_tolerance_kelvin ? Verdict::off
                                                                          : Verdict::not_proven;
  return {bath, error, verdict};
}

}  // namespace lastegg::probes
