#include "engine/other_tests.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "engine/calibration_json.h"
#include "engine/fold_test_request.h"
#include "engine/request_values.h"
#include "words/say.h"

namespace lastegg {

using namespace shape;

namespace {

Result<steam::Calibration> other_test(const Json& given, const std::string& where) {
  if (has(given, "factor")) return read_calibration(given, where);
  auto read = read_fold_test(given, where);
  if (!read) return refuse(read.error());
  read->samples = std::min(read->samples, k_other_test_samples);
  auto fit = steam::calibrate(read->test, read->samples);
  if (!fit) {
    Error error = fit.error();
    error.where = where + error.where;
    return refuse(error);
  }
  return std::move(fit->calibration);
}

}  // namespace

Shape other_test_shape(std::string text) {
  return either({calibration_shape(), object(fold_test_fields(), "a fold test")}, std::move(text));
}

Field same_machine_field() {
  return optional("same_machine", list(other_test_shape("a test of another head or towel"),
                                       "tests of other heads or towels of this machine: its boiler is one")
                                      .items(1, 8));
}

Result<std::optional<steam::Calibration>> earlier_of(const Json& request, const std::string& head_key) {
  const Json* given = member_if(request, "earlier");
  if (given == nullptr) return std::optional<steam::Calibration>{};
  auto calibration = other_test(*given, "/earlier");
  if (!calibration) return refuse(calibration.error());
  if (calibration->head_key != head_key) {
    return refuse({ErrorKind::bad_input,
                   say("the earlier test is of \"{}\"; it must be of this machine, head and towel, \"{}\"",
                       calibration->head_key, head_key),
                   "/earlier", calibration->head_key, head_key, ""});
  }
  return std::optional<steam::Calibration>(std::move(*calibration));
}

Result<std::vector<steam::Calibration>> same_machine_of(const Json& request, const std::string& machine,
                                                        const std::string& head_key,
                                                        const std::string& where) {
  std::vector<steam::Calibration> out;
  const Json* given = member_if(request, "same_machine");
  if (given == nullptr) return out;
  for (std::size_t i = 0; i < given->size(); ++i) {
    const std::string place = fmt::format("{}/same_machine/{}", where, i);
    auto calibration = other_test((*given)[i], place);
    if (!calibration) return refuse(calibration.error());
    const bool is_same_machine = calibration->head_key.starts_with("head|" + machine + "|");
    if (!is_same_machine || calibration->head_key == head_key) {
      return refuse({ErrorKind::bad_input,
                     say("this test is of \"{}\"; it must be of another head or towel of the machine \"{}\"",
                         calibration->head_key, machine),
                     place, calibration->head_key, machine, ""});
    }
    out.push_back(std::move(*calibration));
  }
  return out;
}

Warning same_machine_warning(std::size_t others, bool is_tested) {
  const bool is_one = others == 1;
  if (is_tested) {
    return {
        "same_machine",
        is_one
            ? say("another head or towel of this machine moved what is believed of the steam's temperature "
                  "before the readings: by half of what it shows at most (estimate), and without making "
                  "it surer")
            : say("other heads or towels of this machine moved what is believed of the steam's temperature "
                  "before the readings: by half of what it shows at most (estimate), and without making "
                  "it surer")};
  }
  return {
      "same_machine",
      is_one
          ? say("no fold test of this head and towel stands behind this pace. The steam's temperature leans "
                "on another head or towel of the same machine, by half at most (estimate); how fast heat "
                "enters and how the cloth takes it is what is usual: test this head and towel")
          : say("no fold test of this head and towel stands behind this pace. The steam's temperature leans "
                "on other heads or towels of the same machine, by half at most (estimate); how fast heat "
                "enters and how the cloth takes it is what is usual: test this head and towel")};
}

}  // namespace lastegg
