#include "bugs/mortality/kill_law.h"

#include <string>

#include "physics/evidence/datum.h"

namespace lastegg::embedded {
extern const std::string_view bugs_mortality_data_mortality_json;
}

namespace lastegg::bugs {
namespace {

using Json = nlohmann::json;

struct KillData {
  std::array<KillLaw, 6> laws;  // stage by stage, air then steam
  KillRules rules;
};

// Reads numbers of one document; keeps the first complaint.
class Reader {
 public:
  explicit Reader(const Json& document) : document_(document) {}

  Datum datum(const char* group, const char* name, std::string_view unit) {
    static const Json nothing;
    const Json* here = &document_;
    for (const char* step : {group, name}) {
      const auto found = here->find(step);
      here = here->is_object() && found != here->end() ? &*found : &nothing;
    }
    auto read = read_datum(*here, unit, std::string(group) + "/" + name);
    if (read) return *read;
    if (!error_) error_ = read.error();
    return {};
  }

  double number(const char* group, const char* name, std::string_view unit) {
    return datum(group, name, unit).value;
  }

  const std::optional<Error>& error() const { return error_; }

 private:
  const Json& document_;
  std::optional<Error> error_;
};

KillLaw law_of_stage(Reader& reader, const char* stage, Exposure exposure) {
  KillLaw law;
  law.reference_celsius = reader.number(stage, "reference", "C");
  law.lt99_minutes = reader.number(stage, "lt99", "min");
  law.z_kelvin = {reader.number("z", "low", "K"), reader.number("z", "high", "K")};
  law.onset_celsius = reader.number("limits", "onset", "C");
  law.cap_celsius =
      reader.number("limits", exposure == Exposure::air ? "cap_in_air" : "cap_under_steam", "C");
  law.spread = reader.number(stage, "spread", "log10");
  law.study_spread = reader.number(stage, "study_spread", "log10");
  law.body_lag_seconds = reader.number(stage, "body_lag", "s");
  const DatumRange share = reader.datum(stage, "contact_share", "1").range.value_or(DatumRange{0, 0});
  if (exposure == Exposure::steam) law.contact_share = {share.low, share.high};
  return law;
}

Result<KillData> read_data() {
  const auto document = parse_data(embedded::bugs_mortality_data_mortality_json, k_kill_data_key);
  if (!document) return refuse(document.error());
  Reader reader(*document);
  KillData data;
  std::size_t i = 0;
  for (const char* stage : {"egg", "nymph", "adult"}) {
    for (const Exposure exposure : {Exposure::air, Exposure::steam})
      data.laws[i++] = law_of_stage(reader, stage, exposure);
  }
  KillRules& rules = data.rules;
  rules.required_ratio = reader.number("verdict", "required_ratio", "1");
  rules.near_limit = reader.number("verdict", "near_limit", "log10");
  rules.highest_probability = reader.number("verdict", "highest_probability", "1");
  rules.slow_ramp_kelvin_per_minute = reader.number("verdict", "slow_ramp", "K/min");
  rules.slow_ramp_celsius = reader.number("verdict", "slow_ramp_temperature", "C");
  rules.reset_seconds = 60 * reader.number("series", "reset_after", "min");
  rules.gap_of_cadences = reader.number("series", "gap_of_cadences", "1");
  rules.shortest_gap_seconds = {reader.number("series", "shortest_gap_in_air", "s"),
                                reader.number("series", "shortest_gap_under_steam", "s")};
  rules.coarse_seconds = 60 * reader.number("series", "coarse_interval", "min");
  rules.engorged_lag_seconds = reader.number("engorged_adult", "body_lag", "s");
  if (reader.error()) return refuse(*reader.error());
  return data;
}

const Result<KillData>& data() {
  static const Result<KillData> read = read_data();
  return read;
}

}  // namespace

const KillLaw& kill_law(Stage stage, Exposure exposure) {
  static const KillLaw nothing;
  if (!data()) return nothing;
  return data()->laws[2 * static_cast<std::size_t>(stage) + (exposure == Exposure::steam ? 1 : 0)];
}

const KillRules& kill_rules() {
  static const KillRules nothing;
  return data() ? data()->rules : nothing;
}

Result<bool> kill_data_state() {
  if (!data()) return refuse(data().error());
  return true;
}

}  // namespace lastegg::bugs
