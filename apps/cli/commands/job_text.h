// A job in words for a terminal: what is in it, and what somebody has to look at.
#pragma once

#include <string>

#include "job/record/fold.h"

namespace lastegg::cli {

/// Rooms with their items, kit, fold tests with readings; then everything of attention_text().
std::string job_text(const record::Folded& folded);

/// Open contradictions, statements that do not count, kinds of newer versions; empty when there is nothing.
std::string attention_text(const record::Folded& folded);

}  // namespace lastegg::cli
