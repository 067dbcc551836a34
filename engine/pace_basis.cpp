#include "engine/pace_basis.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "engine/fold_test_request.h"
#include "engine/other_tests.h"
#include "engine/request_values.h"
#include "engine/steam_shapes.h"
#include "treatments/steam/fold_test/same_machine.h"
#include "words/say.h"

namespace lastegg {

using namespace shape;

Shape basis_shape(std::string text) {
  return choice({{"fold_test", "readings of this machine, head and towel"},
                 {"same_machine",
                  "no test of this head and towel: the steam's temperature leans on another one of the same "
                  "machine, everything else on what is usual"},
                 {"prior", "no test yet: what is usual"},
                 {"head", "a head whose effect was given"}},
                std::move(text));
}

namespace {

constexpr double k_said_kelvin =
    0.3;  // a difference of boiling points below this is not worth a sentence (judgement)

/// A fold test speaks of its own air pressure. Where the item stands in thinner air its steam is cooler: how
/// far below boiling it condenses is the steamer's own and stays. In denser air it would be hotter, by what
/// nobody measured there: the test's pressure stays. Errors:  those of read_pressure()
Result<void> bring_to_thinner_air(const Json& request, PaceBasis& basis) {
  if (!has(request, "pressure_pascal") && !has(request, "elevation_metres")) return {};
  const auto here = read_pressure(request);
  if (!here) return refuse(here.error());
  for (steam::Calibration& calibration : basis.calibrations) {
    if (*here >= calibration.pressure_pascal) continue;
    const double boiled = steam::boiling_celsius(calibration.pressure_pascal);
    calibration.pressure_pascal = *here;
    const double boils = steam::boiling_celsius(*here);
    if (boiled - boils < k_said_kelvin) continue;
    basis.warnings.push_back(
        {"thinner_air", say("water boils at {:.1f} C here and did at {:.1f} C where the fold test was made; "
                            "the paces count with the cooler steam",
                            boils, boiled)});
  }
  return {};
}

}  // namespace

std::vector<Field> pace_kit_fields() {
  Shape known = head_shape(false);
  known.fields.push_back(
      optional("vapour_efficiency", ratio("of this cloth, if known (phi)").at_least(0).at_most(1.5)));
  known.fields.push_back(with_default("towel", towel_shape("towel that belongs to these values"), "none"));
  std::vector<Field> tests = fold_test_fields();
  tests.push_back(same_machine_field());
  const Shape test = object(std::move(tests), "a fold test");
  std::vector<Field> fields{
      optional("head", known),
      optional("fold_test",
               either({test, list(test, "several")}, "fold tests of this machine, head and towel")),
      optional("calibration",
               either({calibration_shape(), list(calibration_shape(), "several")}, "what fold tests found")),
      optional(
          "prior",
          object(
              {with_default("machine", text("name of the machine"), "machine"),
               with_default("head", text("name of the head"), "head"),
               with_default("towel", towel_shape("towel"), "none"),
               with_default(
                   "length_metres",
                   number(Unit::metre, "contact length along the travel").at_least(0.01).at_most(0.6), 0.08),
               same_machine_field()},
              "no test of this head and towel yet: what is usual, and what others of the machine say")),
      with_default("start_celsius",
                   number(Unit::celsius, "temperature of the item before").at_least(-20).at_most(50), 20),
      with_default("damp", flag("the covering is damp to the hand"), false),
      with_default("confidence", ratio("confidence of kill and of no harm").at_least(0.5).at_most(0.99),
                   0.95),
      with_default("samples",
                   integer("size of the ensemble where no fold test gives it; verdicts use 1024")
                       .at_least(64)
                       .at_most(4096),
                   1024),
      with_default(
          "wetting_limit_grams_per_m2",
          number(
              Unit::gram_per_m2,
              "most water the covering may take up; 50 is an estimate, a hidden-spot test may show another")
              .at_least(5)
              .at_most(500),
          50)};
  for (Field& pressure : pressure_fields()) fields.push_back(std::move(pressure));
  return fields;
}

Result<PaceBasis> read_pace_basis(const Json& request) {
  int given = 0;
  for (const char* key : {"head", "fold_test", "calibration", "prior"}) given += has(request, key) ? 1 : 0;
  if (given > 1) {
    return refuse({ErrorKind::bad_input,
                   say("give one of head, fold_test, calibration and prior; several were given"), "", "", "",
                   ""});
  }
  PaceBasis basis;
  const int samples = request.at("samples").get<int>();
  const auto as_list = [](const Json& value) { return value.is_array() ? value : Json::array({value}); };
  if (const Json* tests = member_if(request, "fold_test")) {
    basis.word = "fold_test";
    const Json list = as_list(*tests);
    for (std::size_t i = 0; i < list.size(); ++i) {
      const std::string where = tests->is_array() ? fmt::format("/fold_test/{}", i) : "/fold_test";
      auto test = read_fold_test(list[i], where);
      if (!test) return refuse(test.error());
      const auto relatives = same_machine_of(list[i], test->machine, test->test.head_key, where);
      if (!relatives) return refuse(relatives.error());
      test->test.dew_belief = steam::belief_beside_own_test(*relatives);
      const auto fits = fit_coverings(*test);
      if (!fits) return refuse(fits.error());
      for (const FittedCovering& one : *fits) {
        basis.calibrations.push_back(one.fit.calibration);
        basis.coverings.push_back(one.covering);
      }
      basis.warnings.insert(basis.warnings.end(), test->warnings.begin(), test->warnings.end());
      if (!relatives->empty()) basis.warnings.push_back(same_machine_warning(relatives->size(), true));
      const Json& head = list[i].at("head");
      basis.machine = text_of(list[i], "machine");
      basis.head = head.is_string() ? head.get<std::string>() : text_of(head, "name");
    }
    if (const auto brought = bring_to_thinner_air(request, basis); !brought) return refuse(brought.error());
    return basis;
  }
  if (const Json* found = member_if(request, "calibration")) {
    const Json list = as_list(*found);
    for (std::size_t i = 0; i < list.size(); ++i) {
      const auto calibration =
          read_calibration(list[i], found->is_array() ? fmt::format("/calibration/{}", i) : "/calibration");
      if (!calibration) return refuse(calibration.error());
      basis.calibrations.push_back(*calibration);
      basis.coverings.push_back(text_of(list[i], "covering"));
      const std::string& key = calibration->head_key;  // head|machine|head|towel
      const auto first = key.find('|'), second = key.find('|', first + 1), third = key.rfind('|');
      if (first != std::string::npos && second != std::string::npos && third > second) {
        basis.machine = key.substr(first + 1, second - first - 1);
        basis.head = key.substr(second + 1, third - second - 1);
      }
    }
    basis.word = basis.calibrations.front().tested ? "fold_test" : "prior";
    if (const auto brought = bring_to_thinner_air(request, basis); !brought) return refuse(brought.error());
    return basis;
  }
  const auto pressure = read_pressure(request);
  if (!pressure) return refuse(pressure.error());
  if (const Json* head = member_if(request, "head")) {
    basis.word = "head";
    basis.machine = basis.head = "known";
    const steam::Towel towel = read_towel(text_of(*head, "towel"));
    steam::Calibration calibration =
        steam::prior_calibration(head_key("known", "known", towel), cloth_key("known", "known", "known"),
                                 towel, number_of(*head, "length_metres"), *pressure, samples);
    calibration.known_head = read_head(*head);
    calibration.known_vapour_efficiency = number_if(*head, "vapour_efficiency");
    basis.calibrations.push_back(calibration);
    basis.coverings.push_back("");
    return basis;
  }
  Json prior{{"machine", "machine"}, {"head", "head"}, {"towel", "none"}, {"length_metres", 0.08}};
  if (const Json* found = member_if(request, "prior")) prior = *found;
  basis.word = "prior";
  basis.machine = text_of(prior, "machine");
  basis.head = text_of(prior, "head");
  const steam::Towel towel = read_towel(text_of(prior, "towel"));
  const std::string head = head_key(basis.machine, basis.head, towel);
  const auto relatives = same_machine_of(prior, basis.machine, head, "/prior");
  if (!relatives) return refuse(relatives.error());
  steam::Calibration calibration =
      steam::prior_calibration(head, cloth_key(basis.machine, basis.head, "prior"), towel,
                               number_of(prior, "length_metres"), *pressure, samples);
  basis.coverings.push_back("");
  if (std::any_of(relatives->begin(), relatives->end(), [](const auto& one) { return one.tested; })) {
    basis.word = "same_machine";
    basis.calibrations.push_back(
        steam::prior_of_machine(std::move(calibration), steam::belief_from_machine(*relatives)));
    basis.warnings.push_back(same_machine_warning(relatives->size(), false));
    return basis;
  }
  basis.calibrations.push_back(std::move(calibration));
  basis.warnings.push_back(
      {"no_test_yet",
       say("no fold test stands behind this pace, only what is usual: test this machine, head and towel")});
  return basis;
}

std::size_t PaceBasis::calibration_for(const std::string& covering) const {
  for (std::size_t i = 0; i < coverings.size(); ++i) {
    if (coverings[i] == covering) return i;
  }
  return 0;
}

}  // namespace lastegg
