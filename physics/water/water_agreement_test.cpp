// Against the independent Python package iapws over a grid. The table is written into the build
// directory by tools/water_reference.py, which ctest runs first (cmake/reference_tables.cmake).
#include <gtest/gtest.h>

#include <cmath>
#include <sstream>
#include <string>
#include <vector>

#include "physics/evidence/file_for_tests.h"
#include "physics/water/vapour.h"
#include "physics/water/water.h"

namespace lastegg {
namespace {

/// The two programs evaluate the same equations; what is left is rounding and the digits of the
/// coefficients.
constexpr double k_agreement_relative = 1e-6;

struct Row {
  std::string phase;
  std::vector<double> values;  ///< kelvin, pascal, v, h, s, cp, w
};

std::vector<Row> reference_table() {
  std::istringstream file(text_of_file(LASTEGG_BINARY_DIR "/water_reference.csv"));
  std::vector<Row> rows;
  std::string line;
  std::getline(file, line);
  while (std::getline(file, line)) {
    std::istringstream cells(line);
    Row row;
    std::getline(cells, row.phase, ',');
    for (std::string cell; std::getline(cells, cell, ',');) row.values.push_back(std::stod(cell));
    if (row.values.size() == 7) rows.push_back(row);
  }
  return rows;
}

class AgreementWithIapws : public testing::Test {
 protected:
  void SetUp() override {
    rows_ = reference_table();
    ASSERT_GE(rows_.size(), 1400u) << "no table " LASTEGG_BINARY_DIR
                                      "/water_reference.csv: run this test with ctest, and "
                                      "install python3-iapws if the test water_reference_table failed";
  }
  std::vector<Row> rows_;
};

void expect_relative(double ours, double theirs, double scale, const Row& row, const char* what) {
  EXPECT_NEAR(ours, theirs, k_agreement_relative * std::max(std::abs(theirs), scale))
      << what << " of " << row.phase << " at " << row.values[0] << " K, " << row.values[1] << " Pa";
}

TEST_F(AgreementWithIapws, PropertiesOfLiquidAndSteam) {
  std::size_t compared = 0;
  for (const Row& row : rows_) {
    if (row.phase == "saturation") continue;
    const Temperature t = kelvin(row.values[0]);
    const Pressure p = pascals(row.values[1]);
    const auto ours = row.phase == "liquid" ? liquid_water(t, p) : water_vapour(t, p);
    ASSERT_TRUE(ours) << ours.error().message;
    // Enthalpy and entropy of liquid have their zero at 0 C: there a relative difference means nothing.
    expect_relative(ours->specific_volume.si(), row.values[2], 0.0, row, "v");
    expect_relative(ours->enthalpy.si(), row.values[3], 1e3, row, "h");
    expect_relative(ours->entropy.si(), row.values[4], 1e1, row, "s");
    expect_relative(ours->heat_capacity.si(), row.values[5], 0.0, row, "cp");
    expect_relative(ours->sound_speed.si(), row.values[6], 0.0, row, "w");
    ++compared;
  }
  EXPECT_GE(compared, 1400u);
}

TEST_F(AgreementWithIapws, SaturationLineBothWays) {
  std::size_t compared = 0;
  for (const Row& row : rows_) {
    if (row.phase != "saturation") continue;
    expect_relative(saturation_pressure(kelvin(row.values[0]))->si(), row.values[1], 0.0, row, "psat");
    expect_relative(saturation_temperature(pascals(row.values[1]))->kelvin(), row.values[2], 0.0, row,
                    "Tsat");
    ++compared;
  }
  EXPECT_GE(compared, 170u);
}

TEST_F(AgreementWithIapws, TheKernelsFitOfTheSaturationPressure) {
  std::size_t compared = 0;
  for (const Row& row : rows_) {
    const double celsius = row.values[0] - 273.15;
    if (row.phase != "saturation" || celsius > 110.0) continue;
    expect_relative(saturation_fit(celsius).pressure_pascal, row.values[1], 0.0, row, "fitted psat");
    ++compared;
  }
  EXPECT_GE(compared, 55u);
}

}  // namespace
}  // namespace lastegg
