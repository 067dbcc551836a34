// Readings of a thermometer in a fold: what was done with the head, what lay over the tip, what the model
// expects the probe to show. Plain values; pure functions.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "physics/quantities/error.h"
#include "treatments/steam/lanes/lane_pass.h"
#include "treatments/steam/steamer/unknowns.h"

namespace lastegg::steam {

enum class ReadingKind {
  pass,             ///< the head passes once over the fold, the hottest value is noted
  stationary,       ///< the head rests on the fold until the probe stands still: that value
  coupon,           ///< a pass over a plate that lets no vapour in, the tip behind it
  under_real_edge,  ///< a pass over a real edge, the tip where eggs may sit
  surface           ///< what lies on top of the fold some seconds after a pass: an infrared gun or a palm
};

/// Whether a reading shows the head alone: at rest a damp cloth reaches the steam's temperature whatever its
/// law, and nothing enters a plate.
constexpr bool tells_head_alone(ReadingKind kind) {
  return kind == ReadingKind::stationary || kind == ReadingKind::coupon;
}

/// One reading: the tip lies `depth_metres` below the surface of the stack (a laid towel not counted).
struct FoldReading {
  double pace_metres_per_second;
  Stack stack;          ///< from the cloth's surface to the base
  double depth_metres;  ///< of the tip
  double peak_celsius;
  ReadingKind kind = ReadingKind::pass;
  double hold_seconds = 0;     ///< of a stationary reading; its pace has no meaning
  std::string cloth_key = {};  ///< head + covering it was taken in; empty: the test's
  double seconds_after = 0;    ///< of a surface reading: since the trailing skirt has left the place
  /// Of a surface reading of which only an interval is known: its upper end; the lower one is peak_celsius.
  std::optional<double> high_celsius = {};
  double instrument_error_kelvin = 0;  ///< of a surface reading: of gun or palm, one standard deviation
};

/// What is believed of the dew temperature's score before the readings: standard normal, or moved by another
/// head of the same machine (same_machine.h).
struct DewBelief {
  double mean = 0;
  double spread = 1;
};

struct FoldTest {
  std::string head_key;   ///< machine + head + towel
  std::string cloth_key;  ///< head + covering that the calibration is wanted for
  Towel towel = Towel::none;
  double head_length_metres = 0.08;
  double pressure_pascal = 101325;
  double start_celsius = 20;
  double probe_time_constant_seconds = 0;
  std::vector<FoldReading> readings;
  double probe_log_spread = 0;  ///< standard deviation of ln(time constant)
  DewBelief dew_belief = {};
};

/// One standard deviation of a reading around what a perfect model would expect, in kelvin.
/// Model:   pass 2.5, the hand's scatter included; stationary 1.5: no hand, a boiler that wanders, and a head
///          at rest that may hold a little less air than a moving one; coupon 3: the tip's contact with the
///          plate besides; real edge 4: layers known to about 15 % of their thickness at 20 K per mm besides;
///          surface 3: other laws (1.9 computed) and a draught (estimate); instrument and timing are added.
/// Source:  estimates (judgement); docs/decisions/030-fold-test.md
double reading_error_kelvin(ReadingKind kind);
constexpr double k_reading_error_kelvin = 2.5;
constexpr double k_surface_law_kelvin = 3;
constexpr double k_surface_timing_seconds = 0.5;  ///< counted, not clocked; estimate

/// How long a head must rest before its reading counts as steady: this many time constants of the probe, when
/// 2 % of a jump is still missing, and these seconds. Source: judgement; computed, most steamers need 20 to
/// 60 s.
constexpr double k_stationary_time_constants = 4;
constexpr double k_least_hold_seconds = 10;

/// A plate of a good conductor with this heat capacity per area, as a layer that the model can march.
/// Model:   a metal plate has one temperature through its thickness; so has a thinner layer that holds as
///          much heat. Its resistance is kept below 2 % of that of the steam film at 600 W/m2K. Inputs:  500
///          to 9000 J/m2K (1 mm of aluminium: 2400).
/// Checked: treatments/steam/fold_test/fold_reading_law_test.cpp (lumped body)
Layer metal_coupon(double heat_capacity_joules_per_m2_kelvin);

/// A moving reading as a march, the towel on top if it is laid. The stack has to outlive the pass.
Stack stack_of_reading(const FoldTest& test, const FoldReading& reading);
LanePass pass_of_reading(const FoldTest& test, const FoldReading& reading, const Scores& scores,
                         const Stack& stack);
LaneBatch batch_of(const FoldTest& test);

/// What the probe shows for each reading at each of several scores, in celsius: scores[i][r] are those that
/// hold for reading r.
/// Model:   a march, and under a head at rest the dew temperature: the steady state of the same equations in
/// a
///          damp cloth. The recipe has it dampened, since a dry hygroscopic one stays up to 5 K hotter for
///          minutes (computed; equilibrium binds its activity, treatments/steam/README.md).
/// Errors:  as run_pass()
/// Cost:    one pass per score and moving reading
/// Checked: treatments/steam/fold_test/fold_reading_law_test.cpp
Result<std::vector<std::vector<double>>> expected_of_many(const FoldTest& test,
                                                          std::span<const std::vector<Scores>> scores,
                                                          LaneAccuracy accuracy = LaneAccuracy::usual);

/// What the probe shows for each reading at given scores, in celsius.
Result<std::vector<double>> expected_peaks(const FoldTest& test, const Scores& scores);

}  // namespace lastegg::steam
