// What is found of the surface behind the head: by an infrared gun or a palm some seconds after the pass, and
// from when on a bare hand may feel it. Plain values; pure functions.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <vector>

#include "physics/quantities/error.h"
#include "treatments/steam/pace/pace.h"
#include "treatments/steam/pass/pass.h"

namespace lastegg::touch {

/// Water of this temperature on adult skin and the time to a burn of the second degree.
/// Source:  [scald_table] (a public table in the line of Moritz and Henriques 1947); children and old
///          people burn sooner
struct BurnRow {
  double celsius, seconds;
};
constexpr std::array<BurnRow, 7> k_burns{
    {{45, 7200}, {47, 1200}, {48, 900}, {49, 480}, {51, 120}, {55, 17}, {60, 3}}};

/// Time to a burn of the second degree in contact with something wet.
/// Model:   straight lines of log time between the rows; above 60 C on along the last; infinity below 45
///          C, where the table ends (skin is still harmed by hours).
/// Checked: treatments/touch/touch_reference_test.cpp
double seconds_to_burn(double celsius);

/// A bare hand may feel what is nowhere hotter than this near the surface.
/// Source:  own rule: the table gives 15 minutes there, a touch takes a few seconds; the contact standard
///          ISO 13732-1 gives 10 minutes at 48 C (from memory, to be checked)
constexpr double k_bare_hand_celsius = 48;

/// How far below the surface a pressing hand feels.
/// Source:  estimate: cloth gives by about so much.
constexpr double k_hand_depth_metres = 0.001;

/// Longest time looked at for a bare hand.
constexpr double k_longest_seconds = 900;

/// Seconds after the steam has ended until nothing near the surface is hotter than a bare hand may feel;
/// none: not within k_longest_seconds. A palm is taken to be as hot as the hottest place within reach:
/// wet cloth wets the skin.
/// Errors:  as steam::run_pass().
/// Cost:    one pass
/// Checked: treatments/touch/touch_law_test.cpp
Result<std::optional<double>> bare_hand_seconds(steam::PassProblem pass);

/// The same for an edge of an ensemble at a planned pace: the longest over hot corners of what is
/// uncertain (boiling steam, threefold exchange, a hand a quarter slow; steam pushed in as expected or as
/// far as it can be, vapour that moves freely or hardly).
/// Checked: treatments/touch/touch_law_test.cpp (19 of 20 drawn samples are sooner)
Result<std::optional<double>> bare_hand_seconds(const steam::PaceProblem& problem,
                                                double pace_metres_per_second);

/// The middle of an ensemble as a pass: median head on the nominal stack, a laid towel on top.
steam::PassProblem middle_pass(const steam::PaceProblem& problem, double pace_metres_per_second);

/// An infrared gun.
struct Gun {
  double spot_metres = 0.02;         ///< diameter of what it looks at, at its distance
  double emissivity_setting = 0.95;  ///< usual fixed setting ([emissivity_manuals])
};

/// Emissivity of cloth, wood, wet surfaces between 8 and 14 um, and its spread.
/// Source:  [emissivity_manuals]: textiles 0.90, black cloth 0.98, water 0.92 to 0.96, timber 0.90; one
///          has cotton 0.77
constexpr double k_emissivity = 0.93;
constexpr double k_emissivity_spread = 0.03;

/// Share of a round spot that lies on a straight strip through its middle.
/// Model:   (2/pi) (asin u + u sqrt(1 - u^2)), u = strip / spot, at most 1
/// Checked: treatments/touch/touch_law_test.cpp
double share_of_spot(double strip_metres, double spot_metres);

/// What a gun shows of a warm strip in a cooler room.
/// Model:   e_set s T^4 seen = share e T_strip^4 + (1 - share) e T_room^4 + (1 - e) T_room^4 - (1 -
///          e_set) T_room^4, kelvin, all wavelengths alike
/// Checked: treatments/touch/touch_law_test.cpp
double gun_shows_celsius(double strip_celsius, double room_celsius, double strip_metres, const Gun& gun,
                         double emissivity = k_emissivity);

/// The strip behind what a gun shows: gun_shows_celsius() the other way round.
/// Checked: treatments/touch/touch_law_test.cpp
double surface_celsius(double shown_celsius, double room_celsius, double strip_metres, const Gun& gun,
                       double emissivity = k_emissivity);

/// What a palm says.
enum class Palm { cold, warm, hot };

/// A reading of the surface behind the head.
struct SurfaceReading {
  double seconds_after = 0;           ///< after the trailing skirt has left the place
  std::optional<double> gun_celsius;  ///< else a palm
  Palm palm = Palm::warm;
  Gun gun;
  double strip_metres = 0.1;  ///< width of what was steamed
};

/// Errors of a reading, one standard deviation.
/// Source:  estimates.
constexpr double k_gun_error_kelvin = 2.0;      ///< consumer guns state 1.5 to 2 K (from memory)
constexpr double k_timing_error_seconds = 0.5;  ///< counted, not clocked
constexpr double k_palm_error_kelvin = 4.0;

/// Limits between what a palm calls cold, warm and hot.
/// Source:  estimates: skin of a hand has about 32 C, pain begins at 43 to 45 C (from memory).
constexpr double k_palm_cold_celsius = 32;
constexpr double k_palm_hot_celsius = 44;

/// A pass as such a reading sees it: what would be read, and how it changes with time.
struct ExpectedReading {
  double celsius = 0;            ///< a gun's value, or the surface under a palm
  double kelvin_per_second = 0;  ///< there
};

/// What a pass lets expect of each reading.
/// Errors:  as steam::run_pass().
/// Cost:    one pass
/// Checked: treatments/touch/touch_law_test.cpp
Result<std::vector<ExpectedReading>> expected_readings(steam::PassProblem pass,
                                                       std::span<const SurfaceReading> readings);

/// Log-likelihood of a reading where so much was expected: Student t with 4 degrees of freedom for a gun
/// (one bad value loses its pull), a normal step at the limits for a palm. A factor that all samples
/// share is left out.
/// Checked: treatments/touch/touch_law_test.cpp
double log_likelihood(const SurfaceReading& reading, const ExpectedReading& expected);

}  // namespace lastegg::touch
