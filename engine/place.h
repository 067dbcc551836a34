// Where in a document the reader stands: a chain of keys and indices that lives on the stack of the reading,
// and is spelled out only when something is refused. A Place refers to its parent and to the key's
// characters; it must not outlive either.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace lastegg {

class Place {
 public:
  /// The document itself; `pointer` is where the document lies in a larger one, empty for the whole.
  explicit Place(std::string_view pointer) : text_(pointer) {}

  Place key(std::string_view key) const { return Place(this, key, 0, false); }
  Place entry(std::size_t index) const { return Place(this, {}, index, true); }

  /// JSON pointer (RFC 6901) of this place.
  std::string pointer() const;

  /// The place as a person says it: "celsius in entry 2 of readings"; entries are counted from one.
  std::string spoken() const;

 private:
  Place(const Place* parent, std::string_view text, std::size_t index, bool is_entry)
      : parent_(parent), text_(text), index_(index), is_entry_(is_entry) {}

  const Place* parent_ = nullptr;
  std::string_view text_;
  std::size_t index_ = 0;
  bool is_entry_ = false;
};

}  // namespace lastegg
