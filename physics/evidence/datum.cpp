#include "physics/evidence/datum.h"

#include <fmt/format.h>

#include <array>
#include <cmath>

#include "physics/numerics/elementary.h"

namespace lastegg {
namespace {

using Json = nlohmann::json;

constexpr std::array<std::pair<Quality, std::string_view>, 5> k_quality_names{{
    {Quality::measured, "measured"},
    {Quality::handbook, "handbook"},
    {Quality::practice, "practice"},
    {Quality::estimate, "estimate"},
    {Quality::from_memory, "from memory"},
}};

Error defect(const std::string& where, const std::string& what) {
  return {ErrorKind::internal, fmt::format("data file, {}: {}", where, what), where, "", "", ""};
}

}  // namespace

double Datum::log_spread() const {
  constexpr double k_middle_95_percent = 2 * 1.96;
  if (!range || !(range->low > 0)) return 0;
  return numerics::log(range->high / range->low) / k_middle_95_percent;
}

std::string_view quality_name(Quality quality) {
  for (const auto& [known, word] : k_quality_names) {
    if (known == quality) return word;
  }
  return "from memory";
}

std::optional<Quality> quality_named(std::string_view name) {
  for (const auto& [quality, word] : k_quality_names) {
    if (word == name) return quality;
  }
  return std::nullopt;
}

std::string text_member(const Json& object, const char* key) {
  const auto found = object.find(key);
  return found != object.end() && found->is_string() ? found->get<std::string>() : std::string();
}

Result<Json> parse_data(std::string_view text, std::string_view key) {
  Json document = Json::parse(text, nullptr, false);
  const std::string name(key);
  if (!document.is_object()) return refuse(defect(name, "not a JSON object"));
  if (text_member(document, "key") != key) return refuse(defect(name, "the document has another key"));
  return document;
}

Result<Datum> read_datum(const Json& object, std::string_view unit, const std::string& where) {
  if (!object.is_object()) return refuse(defect(where, "a datum is missing"));
  Datum datum;
  datum.unit = text_member(object, "unit");
  datum.source = text_member(object, "source");
  datum.locator = text_member(object, "locator");
  datum.note = text_member(object, "note");
  const auto quality = quality_named(text_member(object, "quality"));
  const auto value = object.find("value");
  if (value == object.end() || !value->is_number()) return refuse(defect(where, "no value"));
  datum.value = value->get<double>();
  if (datum.unit != unit)
    return refuse(defect(where, fmt::format("the unit is \"{}\", not \"{}\"", datum.unit, unit)));
  if (datum.source.empty()) return refuse(defect(where, "no source"));
  if (!quality) return refuse(defect(where, "no quality"));
  datum.quality = *quality;
  if (datum.quality == Quality::estimate && datum.note.empty())
    return refuse(defect(where, "an estimate has to say how it was made"));
  if (const auto range = object.find("range"); range != object.end()) {
    if (!range->is_array() || range->size() != 2 || !(*range)[0].is_number() || !(*range)[1].is_number())
      return refuse(defect(where, "a range is two numbers"));
    datum.range = DatumRange{(*range)[0].get<double>(), (*range)[1].get<double>()};
    if (!(datum.range->low <= datum.value && datum.value <= datum.range->high))
      return refuse(defect(where, "the value lies outside its range"));
  }
  if (!std::isfinite(datum.value)) return refuse(defect(where, "the value is not finite"));
  return datum;
}

}  // namespace lastegg
