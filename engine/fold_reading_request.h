// One reading of a fold test, read and judged: its kind, what lay over the tip, what was shown. For the
// request of a fold test.
#pragma once

#include <string>

#include "engine/fold_test_request.h"

namespace lastegg {

constexpr double k_standard_layer_metres =
    0.001;  ///< the recipe's cloth: estimate, ten layers measure about 10 mm

/// Reads a reading of a test whose head, cloth, base and place are read already. `layers`: over the tip.
/// Errors:  bad_input with place: members that do not belong to its kind, an unknown material
Result<steam::FoldReading> read_reading(const Json& reading, const ReadFoldTest& places,
                                        const std::string& where, int& layers);

/// What no reading of this place and probe can be.
/// Errors:  bad_input; the place is "/probe" where the probe is to blame
Result<void> judge_reading(const steam::FoldReading& reading, std::size_t i, const steam::FoldTest& test,
                           const std::string& where);

/// Layers over the tip, then at least one more of the same cloth and three in all, then the base.
void lay_fold(const steam::Stack& above, const steam::Stack& base, steam::FoldReading& out);

/// One millimetre of acrylic sheet.
Result<steam::Layer> standard_coupon();

}  // namespace lastegg
