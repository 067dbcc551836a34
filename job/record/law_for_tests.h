// Property tests with a fixed seed, so that a failure can be repeated, at 500 cases or, with LASTEGG_LONG=1
// in the environment, 10,000.
#pragma once

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cstdlib>
#include <iostream>
#include <string>
#include <utility>

namespace lastegg::record {

inline int cases_of_a_law() {
  const char* wanted = std::getenv("LASTEGG_LONG");
  return wanted != nullptr && std::string(wanted) == "1" ? 10'000 : 500;
}

template <class Property>
void expect_law(const std::string& law, Property&& property) {
  rc::detail::TestMetadata metadata;
  metadata.id = metadata.description = law;
  rc::detail::TestParams params;
  params.seed = 20260302;
  params.maxSuccess = cases_of_a_law();
  const auto result = rc::detail::checkTestable(std::forward<Property>(property), metadata, params);
  if (result.template is<rc::detail::SuccessResult>()) return;
  rc::detail::printResultMessage(result, std::cerr);
  ADD_FAILURE() << law;
}

}  // namespace lastegg::record
