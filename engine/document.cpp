#include "engine/document.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <string>
#include <unordered_set>
#include <utility>
#include <vector>

#include "words/say.h"

namespace lastegg {
namespace {

// Builds the value while the parser reads, with the limits checked before anything is stored.
class Builder {
 public:
  using number_integer_t = Json::number_integer_t;
  using number_unsigned_t = Json::number_unsigned_t;
  using number_float_t = Json::number_float_t;
  using string_t = Json::string_t;
  using binary_t = Json::binary_t;

  explicit Builder(std::string_view source) : source_(source) {}

  bool null() { return add(nullptr); }
  bool boolean(bool value) { return add(value); }
  bool number_integer(number_integer_t value) { return add(value); }
  bool number_unsigned(number_unsigned_t value) { return add(value); }
  bool number_float(number_float_t value, const string_t&) { return add(value); }
  bool string(string_t& value) { return add(std::move(value)); }
  bool binary(binary_t&) { return false; }

  bool start_object(std::size_t) { return open(Json::object()); }
  bool start_array(std::size_t) { return open(Json::array()); }
  bool end_object() { return close(); }
  bool end_array() { return close(); }

  bool key(string_t& key) {
    if (!keys_.back().insert(key).second)
      return fail(say("the key \"{}\" is given twice in one object", key), key, "");
    key_ = std::move(key);
    return true;
  }

  bool parse_error(std::size_t position, const std::string& token,
                   const nlohmann::detail::exception& problem) {
    constexpr int k_number_overflow = 406;
    if (problem.id == k_number_overflow) return fail(say("the number {} is too large", token), token, "");
    const std::string_view before = source_.substr(0, std::min(position, source_.size()));
    const auto line = 1 + std::count(before.begin(), before.end(), '\n');
    const std::size_t line_start = before.rfind('\n') == before.npos ? 0 : before.rfind('\n') + 1;
    if (source_.find_first_not_of(" \t\r\n") == source_.npos)
      return fail(say("the request is empty; it must be a JSON object"), "", "");
    if (position > source_.size()) return fail(say("the request ends in the middle of a JSON value"), "", "");
    return fail(
        say("the request is not JSON: line {}, column {} cannot be read", line, before.size() - line_start),
        token.substr(0, 40), "");
  }

  Result<Json> result(bool parsed) {
    if (error_) return refuse(*std::move(error_));
    if (!parsed) {
      Error error;
      error.kind = ErrorKind::bad_input;
      error.message = say("the request is not JSON");
      return refuse(std::move(error));
    }
    return std::move(root_);
  }

 private:
  bool fail(std::string message, std::string value, std::string limit) {
    Error error;
    error.kind = ErrorKind::bad_input;
    error.message = std::move(message);
    error.value = std::move(value);
    error.limit = std::move(limit);
    error_ = std::move(error);
    return false;
  }

  // The new value's place in its parent; parents do not change while a child of theirs is open, so the
  // pointers hold.
  Json* store(Json&& value) {
    if (++count_ > k_most_request_values) {
      fail(say("the request holds more than {} values", k_most_request_values), "",
           std::to_string(k_most_request_values));
      return nullptr;
    }
    if (open_.empty()) {
      root_ = std::move(value);
      return &root_;
    }
    Json& parent = *open_.back();
    if (parent.is_array()) {
      parent.push_back(std::move(value));
      return &parent.back();
    }
    // Not operator[]: it would search all keys again, though key() has seen that this one is new.
    auto& members = parent.get_ref<Json::object_t&>();
    members.emplace_back(std::move(key_), std::move(value));
    return &members.back().second;
  }

  bool add(Json&& value) { return store(std::move(value)) != nullptr; }

  bool open(Json&& value) {
    if (open_.size() >= static_cast<std::size_t>(k_deepest_request_levels))
      return fail(say("the request is nested more than {} levels deep", k_deepest_request_levels), "",
                  std::to_string(k_deepest_request_levels));
    Json* stored = store(std::move(value));
    if (stored == nullptr) return false;
    open_.push_back(stored);
    keys_.emplace_back();
    return true;
  }

  bool close() {
    open_.pop_back();
    keys_.pop_back();
    return true;
  }

  std::string_view source_;
  Json root_;
  std::vector<Json*> open_;
  std::vector<std::unordered_set<std::string>> keys_;
  std::string key_;
  std::size_t count_ = 0;
  std::optional<Error> error_;
};

}  // namespace

Result<Json> parse_document(std::string_view text) {
  if (text.size() > k_longest_request_bytes) {
    Error error;
    error.kind = ErrorKind::bad_input;
    error.message = say("the request is {} bytes long; it must be at most {} bytes", text.size(),
                        k_longest_request_bytes);
    error.value = std::to_string(text.size());
    error.limit = std::to_string(k_longest_request_bytes);
    error.unit = "bytes";
    return refuse(std::move(error));
  }
  Builder builder(text);
  const bool parsed = Json::sax_parse(text.begin(), text.end(), &builder);
  return builder.result(parsed);
}

}  // namespace lastegg
