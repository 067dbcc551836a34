#include <gtest/gtest.h>

#include <cmath>

#include "treatments/boiler/boiler.h"

namespace lastegg::boiler {
namespace {

Machine machine_of(Tank tank) {
  Machine machine;
  machine.tank = tank;
  machine.gauge_pascal = tank == Tank::kettle ? 0 : 350e3;
  return machine;
}

constexpr Tank k_tanks[] = {Tank::continuous, Tank::pressurised, Tank::kettle};

Timetable played(const Machine& machine, double supply, double duty, double minutes) {
  const auto table = timetable(machine, supply, duty, 60 * minutes);
  EXPECT_TRUE(table) << table.error().message;
  return table ? *table : Timetable{};
}

TEST(BoilerLaw, TheBooksClose) {
  for (const Tank tank : k_tanks) {
    for (const double supply : {0.2e-3, 0.6e-3, 1.5e-3}) {
      for (const double duty : {0.3, 1.0}) {
        const Timetable table = played(machine_of(tank), supply, duty, 70);
        const double in = table.electric_joules + table.fed_joules;
        const double out = table.given_joules + table.lost_joules + table.stored_joules;
        EXPECT_NEAR(in, out, 1e-6 * in) << static_cast<int>(tank) << " " << supply;
        EXPECT_NEAR(table.steam_seconds, 70 * 60, 1.01);
        double seconds = 0, steam = 0;
        for (const Phase& phase : table.phases) {
          EXPECT_NEAR(phase.from_seconds, seconds, 1e-6);
          seconds += phase.seconds;
          steam += phase.steam_kilograms;
        }
        EXPECT_NEAR(seconds, table.seconds, 1e-6);
        EXPECT_NEAR(steam, table.steam_kilograms, 1e-9);
      }
    }
  }
}

TEST(BoilerLaw, AClosedTankIsNeverOpenedHot) {
  for (const Tank tank : {Tank::pressurised, Tank::kettle}) {
    const Timetable table = played(machine_of(tank), 0.6e-3, 1, 120);
    EXPECT_GE(table.refills, 1);
    int checked = 0;
    for (std::size_t i = 1; i < table.phases.size(); ++i) {
      if (table.phases[i].kind != PhaseKind::refill) continue;
      EXPECT_EQ(table.phases[i - 1].kind, PhaseKind::cool);
      EXPECT_LE(table.phases[i - 1].end_celsius, k_open_celsius);
      ++checked;
    }
    EXPECT_EQ(checked, table.refills);
  }
}

TEST(BoilerLaw, TheMakersLongerTimeGoesBefore) {
  Machine machine = machine_of(Tank::pressurised);
  const double computed = played(machine, 0.6e-3, 1, 60).waiting_seconds;
  machine.shortest_cooling_seconds = 2 * 3600;
  EXPECT_GT(played(machine, 0.6e-3, 1, 60).waiting_seconds, computed + 1800);
  machine.shortest_cooling_seconds = 60;
  EXPECT_EQ(played(machine, 0.6e-3, 1, 60).waiting_seconds, computed);
}

// From a page that was read: a boiler of some 140 C takes about an hour to cool. Ours lies between a quarter
// and a whole of that, and a maker's time replaces it.
TEST(BoilerLaw, CoolingTakesTensOfMinutes) {
  const Timetable table = played(machine_of(Tank::pressurised), 0.6e-3, 1, 60);
  for (const Phase& phase : table.phases) {
    if (phase.kind != PhaseKind::cool) continue;
    EXPECT_GT(phase.seconds, 15 * 60);
    EXPECT_LT(phase.seconds, 60 * 60);
  }
}

TEST(BoilerLaw, AContinuousMachineNeverCoolsAndWaitsLeast) {
  const Timetable continuous = played(machine_of(Tank::continuous), 0.5e-3, 1, 90);
  for (const Phase& phase : continuous.phases) EXPECT_NE(phase.kind, PhaseKind::cool);
  EXPECT_LT(continuous.waiting_seconds, played(machine_of(Tank::pressurised), 0.5e-3, 1, 90).waiting_seconds);
}

TEST(BoilerLaw, WithinItsPowerABoilerDoesNotPause) {
  for (const Tank tank : {Tank::continuous, Tank::pressurised}) {
    const Machine machine = machine_of(tank);
    const auto sustained = sustained_supply(machine);
    ASSERT_TRUE(sustained);
    for (const Phase& phase : played(machine, 0.95 * *sustained, 1, 30).phases)
      EXPECT_NE(phase.kind, PhaseKind::recover);
    bool recovers = false;
    for (const Phase& phase : played(machine, 1.8 * *sustained, 1, 30).phases)
      recovers = recovers || phase.kind == PhaseKind::recover;
    EXPECT_TRUE(recovers);
  }
}

// Over many pauses the boiler gives what its power keeps up, whatever is drawn at a time.
TEST(BoilerLaw, InTheLongRunThePowerDecides) {
  Machine machine = machine_of(Tank::continuous);
  machine.water_kilograms = 50;
  const auto sustained = sustained_supply(machine);
  ASSERT_TRUE(sustained);
  const Timetable table = played(machine, 2.5 * *sustained, 1, 120);
  EXPECT_NEAR(table.steam_kilograms / (table.seconds - table.phases.front().seconds), *sustained,
              0.06 * *sustained);
}

TEST(BoilerLaw, MorePowerAndLessSteamWaitLess) {
  double before = 1e12;
  for (const double power : {800.0, 1200.0, 1800.0, 2400.0}) {
    Machine machine = machine_of(Tank::pressurised);
    machine.power_watts = power;
    const double now = played(machine, 0.8e-3, 0.8, 40).waiting_seconds;
    EXPECT_LE(now, before) << power;
    before = now;
  }
  EXPECT_LT(played(machine_of(Tank::pressurised), 0.5e-3, 0.8, 20).seconds,
            played(machine_of(Tank::pressurised), 0.5e-3, 0.8, 60).seconds);
}

TEST(BoilerLaw, Weighing) {
  EXPECT_NEAR(*weighed_supply(7.42, 7.24, 300), 0.6e-3, 1e-12);
  EXPECT_FALSE(weighed_supply(7.24, 7.42, 300));
  EXPECT_FALSE(weighed_supply(7.42, 7.24, 0));
}

TEST(BoilerLaw, RefusesWhatNoMachineIs) {
  Machine machine;
  machine.power_watts = 0;
  const auto refused = sustained_supply(machine);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().where, "/power_watts");
  EXPECT_FALSE(timetable(Machine{}, 1, 1, 60));
  EXPECT_FALSE(timetable(Machine{}, 0.5e-3, 0, 60));
}

}  // namespace
}  // namespace lastegg::boiler
