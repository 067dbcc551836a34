// Other tests of a machine that a request carries: the last one of this head, and those of other heads or
// towels. What the questions fold_test, pace and plan share. Plain values; pure functions.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/question.h"
#include "treatments/steam/steamer/calibration.h"

namespace lastegg {

/// Shape of another test: what the question fold_test takes, or the `calibration` it gave.
Shape other_test_shape(std::string text);

/// "same_machine": tests of other heads or towels of the machine.
Field same_machine_field();

/// The last test of this machine, head and towel, fitted where readings were given; none if there is none.
/// Errors:  as read_fold_test(), read_calibration(); bad_input when it is of another head.
Result<std::optional<steam::Calibration>> earlier_of(const Json& request, const std::string& head_key);

/// Tests of other heads or towels of the same machine, given as `same_machine` in `request`, which stands at
/// `where`.
/// Errors:  as read_fold_test(), read_calibration(); bad_input when one is of another machine or of this very
///          head and towel.
/// Cost:    a fit of at most k_other_test_samples for each that is given by its readings
Result<std::vector<steam::Calibration>> same_machine_of(const Json& request, const std::string& machine,
                                                        const std::string& head_key,
                                                        const std::string& where);
constexpr int k_other_test_samples = 256;

/// Says that other heads speak; `is_tested`: readings of the asked head stand beside them.
Warning same_machine_warning(std::size_t others, bool is_tested);

}  // namespace lastegg
