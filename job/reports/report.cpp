#include "job/reports/report.h"

#include <fmt/format.h>

#include "words/say.h"

namespace lastegg::reports {

Json report_document(const ReportInput& input) {
  Json out;
  const Json job = input.state.contains("job") ? input.state.at("job") : Json();
  const std::string title = text_in(job, "title");
  out["title"] = line("report_title", {{"job", title}},
                      title.empty() ? say("Treatment report") : say("Treatment report: {}", title));
  out["blocks"] = Json::array();
  for (Json (*const block)(const ReportInput&) :
       {summary_block, found_block, treated_block, measured_block, modelled_block, not_treated_block,
        redo_block, harm_block, hidden_spot_block, damage_block, next_visit_block, cautions_block,
        how_sure_block})
    out["blocks"].push_back(block(input));
  return out;
}

}  // namespace lastegg::reports
