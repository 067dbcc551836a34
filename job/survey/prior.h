// Where bugs are expected among the items of a home before anything is seen.
#pragma once

#include <string>
#include <vector>

#include "job/survey/survey.h"

namespace lastegg::survey {

/// Whether a kind of item is part of a bed.
bool is_bed(const std::string& kind);

struct Prior {
  std::vector<double> of_item;  ///< shares; with `unlisted` they add up to 1
  double unlisted = 0;          ///< parts of rooms that nobody listed
};

/// Source:  shares of classes: job/priority; distance: looks.json; equal shares within beds and seats:
/// estimate Checked: job/survey/survey_law_test.cpp
Prior prior(const std::vector<Item>& items);

}  // namespace lastegg::survey
