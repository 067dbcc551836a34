// People and things at risk: what to know and who decides. Reads data/hazards.json once.
#pragma once

#include <string>
#include <vector>

namespace lastegg::survey {

struct Hazard {
  std::string key;    ///< word of the record's kind risk/1
  bool hard = false;  ///< no heat there until the one named has decided
  std::string text, who_decides, source, locator, quality;
  std::vector<std::string> settled_by;  ///< roles whose word settles it

  /// A hard stop counts as settled only by the word of a role that decides; nobody else's takes it away.
  bool settled(bool said, const std::string& role) const;
};

/// Every hazard, in the order of the data.
/// Checked: job/survey/survey_unit_test.cpp
const std::vector<Hazard>& hazards();

}  // namespace lastegg::survey
