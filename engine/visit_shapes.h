// Shapes that the questions around a visit share: risks, consents, and words for them; and their reading.
#pragma once

#include <map>
#include <string>

#include "engine/question.h"
#include "treatments/choice/choice.h"

namespace lastegg {

/// Fields `risks`, `consents` and `prior_treatments` of a request.
std::vector<Field> circumstance_fields();

/// What of the circumstances bears on one item: what was stated of the home, of its room, or of itself.
void read_circumstances(const Json& request, const std::string& item, const std::string& room,
                        method_choice::Situation& situation);

/// Closed list of methods, from the data.
Shape method_word(std::string text);

/// A sentence with its code and where it comes from.
Shape sourced_text(std::string text);

std::string_view standing_word(method_choice::Standing standing);
Shape standing_shape();

}  // namespace lastegg
