// What the people of a home do for a visit and what the firm looks after: sentences that the items, methods
// and risks ask for. Reads data/sentences.json. Plain values; pure functions; any thread.
#pragma once

#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "physics/evidence/datum.h"
#include "physics/quantities/error.h"

namespace lastegg::safety {

enum class Who { home, firm };
enum class Time { before, day, after };

struct Sentence {
  std::string code, text, source, locator;  ///< text with {name} where a parameter stands
  Who who = Who::home;
  Time time = Time::before;
  Quality quality = Quality::from_memory;
  std::map<std::string, Datum> params;
  std::vector<std::string> hard_stop;  ///< methods that are barred until it is settled
  std::map<std::string, std::string> when;
};

/// What is known of the home and the visit.
struct Home {
  std::set<std::string> traits, risks, methods, equipment;
};

/// The sentences that hold, in the order of the data file.
/// Model:   every condition of a sentence has to hold; "a|b" holds if either does. A risk that was settled is
///          still a risk here: the people of the home are told of it all the same.
/// Source:  data/sentences.json, beside each sentence
/// Checked: job/safety/preparation_unit_test.cpp
std::vector<Sentence> sentences_for(const Home& home);

/// Whether the data file could be read; the reason if not.
Result<bool> data_state();

constexpr std::string_view k_data_key = "sentences/1";

}  // namespace lastegg::safety
