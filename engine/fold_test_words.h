// The sentences of a fold test's answer. Numbers in SI units with celsius; apps that show other units convert
// the quantities they find in a sentence.
#pragma once

#include <string>
#include <vector>

#include "engine/fold_test_outlook.h"

namespace lastegg {

/// "1 layer", "2 layers"
std::string layers_words(int layers);

/// "reading 3 (8 mm/s, 1 layer, 61 C)"
std::string reading_words(const ReadFoldTest& read, std::size_t i);

/// What the steamer does, and what the readings do not speak for.
std::vector<std::string> steamer_words(const ReadFoldTest& read, const Json& posterior,
                                       const Outlook& outlook, double tested_depth_metres);

/// {"code", "text", "advice"} of a contradiction.
Json contradiction_words(const ReadFoldTest& read, const steam::Contradiction& contradiction);

/// What was found against the last test, and what to do.
Json drift_words(const steam::Drift& drift);

/// Which reading would tell most, by how much, and why.
std::string next_words(const NextReading& next);
const char* next_code(const NextReading& next);

/// "23 %": the spread of a logarithm as people say it.
std::string percent_words(double log_spread);

/// What is known of the probe.
std::string probe_words(const ReadFoldTest& read);

}  // namespace lastegg
