#include "apps/cli/job_answers.h"

#include "apps/store/job_file.h"
#include "engine/ask.h"

namespace lastegg::cli {

Result<Json> answer_to(const std::string& question, const Json& request) {
  const AskOutcome outcome = ask(question, dumped(request));
  Json answer = Json::parse(outcome.text, nullptr, false);
  if (outcome.ok) return answer;
  const Json& error = answer["error"];
  const std::string kind = error.value("kind", "internal");
  return refuse({kind == "internal" ? ErrorKind::internal : ErrorKind::bad_input, error.value("message", ""),
                 question + error.value("where", ""), "", "", ""});
}

Result<Json> folded_job(const std::string& file) {
  const Result<store::JobFile> job = store::load_job(file);
  if (!job) return refuse(job.error());
  Json events{{"lines", Json::array()}};
  for (const record::Event& event : job->events.events()) events["lines"].push_back(event.bytes);
  return answer_to("fold_events", events);
}

Result<Json> treated_answer(const Json& folded, int samples) {
  return answer_to(
      "treated",
      {{"state", folded.at("state")}, {"conflicts", folded.at("conflicts")}, {"samples", samples}});
}

}  // namespace lastegg::cli
