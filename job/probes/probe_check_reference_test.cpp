// Against boiling points printed for elevations in the standard atmosphere, and what must hold of any
// verdict.
#include <gtest/gtest.h>

#include <cmath>

#include "job/probes/probe_check.h"

namespace lastegg::probes {
namespace {

BathTemperature boiling_at(double metres_above_sea, bool by_barometer = false) {
  const auto pressure = standard_pressure(metres(metres_above_sea));
  EXPECT_TRUE(pressure);
  const auto bath = bath_temperature(Bath::boiling_water, *pressure, by_barometer);
  EXPECT_TRUE(bath);
  return *bath;
}

TEST(ProbeCheckReference, BoilingPointsAtElevation) {
  // Antoine's equation with constants for 1 to 100 C (log10 p_mmHg = 8.07131 - 1730.63 / (233.426 + t)) gives
  // these at the standard atmosphere's pressure; it lies within 0.05 K of the tables of water there.
  const struct {
    double elevation, celsius;
  } rows[] = {{500, 98.34}, {1000, 96.68}, {1609, 94.66}, {2000, 93.36}};
  for (const auto& row : rows)
    EXPECT_NEAR(boiling_at(row.elevation).celsius, row.celsius, 0.05) << row.elevation;
  const auto by_barometer = bath_temperature(Bath::boiling_water, pascals(95000), true);
  ASSERT_TRUE(by_barometer);
  EXPECT_NEAR(by_barometer->celsius, 98.21, 0.05);
}

TEST(ProbeCheckReference, MeltingIceIsZeroAtAnyPressure) {
  for (const double pressure : {60000.0, 101325.0})
    EXPECT_EQ(bath_temperature(Bath::melting_ice, pascals(pressure), false)->celsius, 0);
}

TEST(ProbeCheckReference, ABarometerNarrowsTheBath) {
  for (double elevation = 0; elevation <= 3000; elevation += 250) {
    const BathTemperature unknown = boiling_at(elevation), known = boiling_at(elevation, true);
    EXPECT_EQ(unknown.celsius, known.celsius);
    EXPECT_GT(unknown.spread_kelvin, known.spread_kelvin + 0.5);
  }
}

TEST(ProbeCheckReference, AVerdictOnlyGetsWorseFurtherAway) {
  for (const BathTemperature& bath : {k_ice, boiling_at(0), boiling_at(1600, true)}) {
    for (const double side : {-1.0, 1.0}) {
      int worst = 0;
      for (double error = 0; error < 6; error += 0.01) {
        const int verdict = static_cast<int>(check_probe(bath.celsius + side * error, bath).verdict);
        EXPECT_GE(verdict, worst);
        worst = verdict;
      }
      EXPECT_EQ(worst, static_cast<int>(Verdict::off));
    }
    EXPECT_EQ(check_probe(bath.celsius + 1.5 + bath.spread_kelvin + 0.01, bath).verdict, Verdict::off);
    EXPECT_EQ(check_probe(bath.celsius + 1.51, bath).verdict, Verdict::not_proven);
    EXPECT_EQ(check_probe(bath.celsius, bath).verdict, Verdict::sound);
  }
}

}  // namespace
}  // namespace lastegg::probes
