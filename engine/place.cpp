#include "engine/place.h"

#include "words/say.h"

namespace lastegg {
namespace {

constexpr std::size_t k_longest_key_in_messages = 80;

}  // namespace

std::string Place::pointer() const {
  if (parent_ == nullptr) return std::string(text_);
  std::string pointer = parent_->pointer() + "/";
  if (is_entry_) return pointer + std::to_string(index_);
  for (const char c : text_) {
    if (c == '~')
      pointer += "~0";
    else if (c == '/')
      pointer += "~1";
    else
      pointer += c;
  }
  return pointer;
}

std::string Place::spoken() const {
  if (parent_ == nullptr) return text_.empty() ? say("the request") : std::string(text_);
  const bool at_top = parent_->parent_ == nullptr && parent_->text_.empty();
  if (is_entry_) {
    return at_top ? say("entry {}", index_ + 1) : say("entry {} of {}", index_ + 1, parent_->spoken());
  }
  const std::string key(text_.substr(0, k_longest_key_in_messages));
  return at_top ? key : say("{} in {}", key, parent_->spoken());
}

}  // namespace lastegg
