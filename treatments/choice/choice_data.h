// The data files of this room as read: rules and methods. For choice.cpp alone.
#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include "treatments/choice/choice.h"

namespace lastegg::method_choice {

struct Rule {
  std::string code, text, source, locator;
  std::vector<std::string> methods;
  std::map<std::string, std::string> when;  ///< trait, no_trait, also_no_trait, risk, prior, missing, consent
  Standing standing = Standing::needs_check;
  Grounds grounds = Grounds::practical;
  Quality quality = Quality::from_memory;
  bool needs_role = false;
};

struct Tables {
  std::vector<Method> methods;
  std::vector<Rule> rules;
  std::map<std::string, std::set<std::string>, std::less<>> traits;
};

/// Read once; on an error the message names the place.
const Result<Tables>& tables();

}  // namespace lastegg::method_choice
