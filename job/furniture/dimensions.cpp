#include "job/furniture/dimensions.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "physics/evidence/json.h"
#include "words/say.h"

namespace lastegg::embedded {
extern const std::string_view job_furniture_data_dimensions_json;
}

namespace lastegg::furniture {
namespace {

using Data = nlohmann::json;

Error broken(std::string_view name, std::string_view what) {
  Error error;
  error.kind = ErrorKind::internal;
  error.message = fmt::format("furniture dimensions: entry '{}': {}", name, what);
  return error;
}

std::string text_in(const Data& object, const char* key) {
  const auto found = object.find(key);
  return found != object.end() && found->is_string() ? found->get<std::string>() : std::string();
}

std::optional<double> number_in(const Data& object, const char* key) {
  const auto found = object.find(key);
  if (found == object.end() || !found->is_number()) return std::nullopt;
  const double value = found->get<double>();
  return std::isfinite(value) ? std::optional(value) : std::nullopt;
}

bool is_quality(const std::string& word) {
  return word == "measured" || word == "handbook" || word == "practice" || word == "estimate" ||
         word == "from memory";
}

/// The words of the source an entry names; an estimate tells how in its note.
Result<std::string> source_of(const Data& document, const Data& entry, const std::string& name) {
  if (!is_quality(text_in(entry, "quality"))) return refuse(broken(name, "no known quality"));
  const auto sources = document.find("sources");
  const std::string key = text_in(entry, "source");
  if (sources == document.end() || !sources->is_object() || !sources->contains(key)) {
    return refuse(broken(name, "its source is not listed"));
  }
  const std::string note = text_in(entry, "note");
  if (text_in(entry, "quality") == "estimate" || text_in(entry, "quality") == "from memory") {
    if (note.empty()) return refuse(broken(name, "an estimate must tell how it was made"));
    if (key == "own_estimate") return text_in(entry, "quality") == "estimate" ? "estimate: " + note : note;
  }
  const std::string words = text_in((*sources)[key], "text");
  if (words.empty()) return refuse(broken(name, "its source has no text"));
  const std::string locator = text_in(entry, "locator");
  if (locator.empty()) return refuse(broken(name, "no locator in its source"));
  return words + ": " + locator + (note.empty() ? "" : " (" + note + ")");
}

Result<Dimension> dimension_from(const Data& document, const Data& entry) {
  Dimension dimension;
  dimension.name = text_in(entry, "name");
  dimension.unit = text_in(entry, "unit");
  dimension.quality = text_in(entry, "quality");
  const auto value = number_in(entry, "value");
  const auto lowest = number_in(entry, "lowest");
  const auto highest = number_in(entry, "highest");
  if (dimension.name.empty() || dimension.unit.empty() || !value || !lowest || !highest) {
    return refuse(broken(dimension.name, "name, unit, value, lowest and highest are needed"));
  }
  if (*value < *lowest || *value > *highest)
    return refuse(broken(dimension.name, "value outside its limits"));
  auto source = source_of(document, entry, dimension.name);
  if (!source) return refuse(source.error());
  dimension.value = *value;
  dimension.lowest = *lowest;
  dimension.highest = *highest;
  dimension.source = *source;
  return dimension;
}

Result<MattressSize> size_from(const Data& document, const Data& entry) {
  MattressSize size;
  size.name = text_in(entry, "name");
  size.title = text_in(entry, "title");
  size.quality = text_in(entry, "quality");
  const auto width = number_in(entry, "width");
  const auto length = number_in(entry, "length");
  if (size.name.empty() || size.title.empty() || !width || !length || text_in(entry, "unit") != "m") {
    return refuse(broken(size.name, "name, title, width, length and unit m are needed"));
  }
  auto source = source_of(document, entry, size.name);
  if (!source) return refuse(source.error());
  size.width_metres = *width;
  size.length_metres = *length;
  size.source = *source;
  return size;
}

template <class Entry>
bool has_name(const std::vector<Entry>& entries, const std::string& name) {
  return std::any_of(entries.begin(), entries.end(), [&](const Entry& entry) { return entry.name == name; });
}

}  // namespace

Result<DimensionTable> read_dimensions(std::string_view text) {
  const Data document = Data::parse(text, nullptr, false);
  if (document.is_discarded() || !document.is_object()) return refuse(broken("", "not a JSON object"));
  DimensionTable table;
  table.key = text_in(document, "key");
  if (table.key.empty()) return refuse(broken("", "no key"));
  for (const char* list : {"dimensions", "mattress_sizes"}) {
    const auto found = document.find(list);
    if (found == document.end() || !found->is_array()) return refuse(broken(list, "not a list"));
    for (const Data& entry : *found) {
      if (!entry.is_object()) return refuse(broken(list, "holds something that is not an object"));
    }
  }
  for (const Data& entry : document["dimensions"]) {
    auto dimension = dimension_from(document, entry);
    if (!dimension) return refuse(dimension.error());
    if (has_name(table.dimensions, dimension->name)) return refuse(broken(dimension->name, "given twice"));
    table.dimensions.push_back(*std::move(dimension));
  }
  for (const Data& entry : document["mattress_sizes"]) {
    auto size = size_from(document, entry);
    if (!size) return refuse(size.error());
    if (has_name(table.mattress_sizes, size->name)) return refuse(broken(size->name, "given twice"));
    table.mattress_sizes.push_back(*std::move(size));
  }
  return table;
}

Error unknown_size(const DimensionTable& table, const std::string& size) {
  Error error;
  error.kind = ErrorKind::not_found;
  error.where = "/size";
  error.value = size;
  for (const MattressSize& known : table.mattress_sizes) {
    error.limit += (error.limit.empty() ? "" : ", ") + known.name;
  }
  error.message = say("There is no mattress size '{}'; known are {}", size, error.limit);
  return error;
}

const Result<DimensionTable>& furniture_dimensions() {
  static const Result<DimensionTable> table = read_dimensions(embedded::job_furniture_data_dimensions_json);
  return table;
}

double Measuring::take(std::string_view name, std::string_view key, std::optional<double> given) {
  const auto found = std::find_if(table_.dimensions.begin(), table_.dimensions.end(),
                                  [&](const Dimension& dimension) { return dimension.name == name; });
  if (found == table_.dimensions.end()) {
    refuse_with(broken(name, "missing"));
    return 1.0;
  }
  const bool refused =
      given && !require(fmt::format("'{}'", key), key, *given, found->lowest, found->highest);
  const double value = refused ? found->value : given.value_or(found->value);
  if (found->unit == "m") {
    note({found->name, value, given ? say("given in the request") : found->source,
          given ? "given" : found->quality});
  }
  return value;
}

double Measuring::take_known(std::string_view name, double value, const MattressSize& size) {
  note({std::string(name), value, size.source, size.quality});
  return value;
}

void Measuring::note(UsedDimension dimension) {
  const auto known = [&](const UsedDimension& other) { return other.name == dimension.name; };
  if (std::none_of(used_.begin(), used_.end(), known)) used_.push_back(std::move(dimension));
}

void Measuring::refuse_with(Error error) {
  if (!refusal_) refusal_ = std::move(error);
}

bool Measuring::require(std::string_view what, std::string_view key, double value, double lowest,
                        double highest) {
  if (value >= lowest && value <= highest) return true;
  const bool low = value < lowest;
  Error error;
  error.kind = ErrorKind::bad_input;
  error.value = fmt::format("{:.6g}", value);
  error.limit = fmt::format("{:.6g}", low ? lowest : highest);
  error.unit = "m";
  error.where = key.empty() ? "" : fmt::format("/{}", key);
  error.message = low ? say("{} is {} m, below the limit of {} m", what, error.value, error.limit)
                      : say("{} is {} m, above the limit of {} m", what, error.value, error.limit);
  refuse_with(std::move(error));
  return false;
}

}  // namespace lastegg::furniture
