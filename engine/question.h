// A question is a named pure function from a request to an answer, with the shapes of both. The table of all
// questions is the only face of the core that apps see.
#pragma once

#include <string>
#include <vector>

#include "engine/shape.h"

namespace lastegg {

struct Warning {
  std::string code;
  std::string text;
};

struct Answer {
  Json result;  ///< an object of the question's answer shape
  std::vector<Warning> warnings;
  std::vector<std::string> data_keys;  ///< data files read ("mortality/1")
};

struct Question {
  std::string name;
  std::string text;  ///< one sentence: what is asked and answered
  Shape request;
  Shape answer;  ///< without engine, data, warnings, which every answer carries
  Result<Answer> (*solve)(const Json& request);  ///< gets the request as read() returned it
};

/// All questions, in the order of the documentation.
const std::vector<Question>& questions();

}  // namespace lastegg
