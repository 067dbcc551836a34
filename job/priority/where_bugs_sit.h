// Where bugs sit in a dwelling before anything is seen: shares of classes of items, and how much more likely
// a place is where something was seen. The one reader of data/where_bugs_sit.json. Read once, never changed.
#pragma once

#include <map>
#include <string>

namespace lastegg {

struct WhereBugsSit {
  std::map<std::string, double>
      share_of_class;  ///< box_spring, sofa, mattress, bed_frame, elsewhere; adds up to 1
  std::map<std::string, double> factor_of_seen;  ///< none, signs, live
  std::map<std::string, std::string> class_of_kind;

  /// Class of a kind of the catalogue; "elsewhere" for one that the data do not name.
  const std::string& class_of(const std::string& kind) const;
};

const WhereBugsSit& where_bugs_sit();

}  // namespace lastegg
