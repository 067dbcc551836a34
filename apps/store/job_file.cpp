#include "apps/store/job_file.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <set>
#include <vector>

#include "apps/store/durable_file.h"
#include "apps/store/zip_archive.h"
#include "engine/ask.h"
#include "engine/document.h"
#include "job/record/fold.h"
#include "job/record/sha256.h"
#include "words/say.h"

namespace lastegg::store {
namespace {

constexpr std::string_view k_events_name = "events.ndjson";
constexpr std::string_view k_manifest_name = "manifest.json";
constexpr std::string_view k_blobs_folder = "blobs/";
constexpr std::string_view k_known_members[] = {"format",      "version",    "job",        "title",
                                                "event_count", "state_hash", "blob_count", "engine"};

Error bad_file(std::string message, std::string_view where = "", std::string value = "",
               std::string limit = "") {
  Error error;
  error.kind = ErrorKind::bad_input;
  error.message = std::move(message);
  error.where = where;
  error.value = std::move(value);
  error.limit = std::move(limit);
  return error;
}

std::string manifest_of(const JobFile& job) {
  const record::Folded folded = record::fold(job.events);
  Json manifest = {{"format", "lastegg"}, {"version", k_job_file_version}};
  if (folded.state.job) {
    manifest["job"] = folded.state.job->id;
    manifest["title"] = folded.state.job->data["title"];
  }
  manifest["event_count"] = folded.event_count;
  manifest["state_hash"] = folded.state_hash;
  manifest["blob_count"] = job.blobs.size();
  manifest["engine"] = LASTEGG_VERSION;
  for (const auto& [key, value] : job.more_manifest.items())
    if (!manifest.contains(key)) manifest[key] = value;
  return dumped(manifest, 1) + "\n";
}

Result<Json> read_manifest(const std::string& text) {
  const Result<Json> manifest = parse_document(text);
  if (!manifest)
    return refuse(
        bad_file(say("manifest.json cannot be read: {}", manifest.error().message), k_manifest_name));
  const auto format = manifest->find("format");
  if (!manifest->is_object() || format == manifest->end() || *format != "lastegg")
    return refuse(
        bad_file(say("manifest.json does not say \"format\": \"lastegg\"; this is another kind of file"),
                 k_manifest_name));
  const auto version = manifest->find("version");
  if (version == manifest->end() || !version->is_number_integer() || *version < 1)
    return refuse(bad_file(say("manifest.json gives no version"), k_manifest_name));
  if (*version > k_job_file_version)
    return refuse(
        bad_file(say("the file is of version {}; this program reads version {}. Nothing was changed. A newer "
                     "program opens it, and any unzip program shows its events.ndjson",
                     version->dump(), k_job_file_version),
                 k_manifest_name, version->dump(), std::to_string(k_job_file_version)));
  return manifest;
}

// Adds the events of a text. All lines must be events.
std::optional<Error> add_events(const std::string& text, record::EventSet& events) {
  std::optional<Error> fault;
  record::for_each_line(text, [&](std::string_view line, std::size_t index) {
    if (fault) return;
    const Result<record::Added> added = events.add(line);
    if (added) return;
    fault = added.error();
    fault->message = fmt::format("line {} of the events: {}", index + 1, fault->message);
    fault->where = fmt::format("{}:{}", k_events_name, index + 1);
  });
  return fault;
}

std::optional<Error> broken_promise(const Json& manifest, JobFile& job) {
  const auto differs = [&](const char* member, const Json& found) -> std::optional<Error> {
    const auto promised = manifest.find(member);
    if (promised == manifest.end() || promised->is_null() || *promised == found) return std::nullopt;
    return bad_file(say("the file is not whole: its manifest says {} {}, its content gives {}", member,
                        dumped(*promised), dumped(found)),
                    fmt::format("{}/{}", k_manifest_name, member), dumped(found), dumped(*promised));
  };
  const auto hash = manifest.find("state_hash");
  job.hash_was_promised = hash != manifest.end() && !hash->is_null();
  if (auto fault = differs("event_count", job.events.size())) return fault;
  if (auto fault = differs("state_hash", job.events.state_hash())) return fault;
  return differs("blob_count", job.blobs.size());
}

std::optional<Error> blob_fault(const std::string& name, const std::string& content) {
  if (!record::is_sha256_hex(name))
    return bad_file(say("the blob {} is not named by a SHA-256 in lower case", name), name);
  const std::string hash = record::sha256_hex(content);
  if (hash == name) return std::nullopt;
  return bad_file(say("the blob {} is damaged: its content has the hash {}", name, hash), name, hash, name);
}

std::set<std::string> jobs_of(const record::EventSet& events) {
  std::set<std::string> jobs;
  for (const record::Event& event : events.events())
    if (record::family_of(event.kind) == "job") jobs.insert(event.subject);
  return jobs;
}

}  // namespace

Result<std::string> job_file_bytes(const JobFile& job) {
  std::vector<ZipEntry> entries;
  entries.push_back({std::string(k_manifest_name), manifest_of(job), true});
  entries.push_back({std::string(k_events_name), job.events.ndjson(), true});
  for (const auto& [name, content] : job.blobs) {
    if (std::optional<Error> fault = blob_fault(name, content)) return refuse(*fault);
    entries.push_back({std::string(k_blobs_folder) + name, content, false});
  }
  for (const auto& [name, content] : job.more_entries) entries.push_back({name, content, true});
  return zip_bytes(entries);
}

Result<JobFile> read_job_file(std::string_view bytes, const JobFileLimits& limits) {
  Result<std::vector<ZipEntry>> entries = zip_entries(bytes, limits);
  if (!entries) return refuse(entries.error());
  JobFile job;
  const std::string* manifest_text = nullptr;
  const std::string* events_text = nullptr;
  for (ZipEntry& entry : *entries) {
    if (entry.name == k_manifest_name) {
      manifest_text = &entry.content;
    } else if (entry.name == k_events_name) {
      events_text = &entry.content;
    } else if (entry.name.starts_with(k_blobs_folder)) {
      const std::string name = entry.name.substr(k_blobs_folder.size());
      if (std::optional<Error> fault = blob_fault(name, entry.content)) return refuse(*fault);
      job.blobs.emplace(name, std::move(entry.content));
    } else {
      job.more_entries.emplace(entry.name, std::move(entry.content));
    }
  }
  if (manifest_text == nullptr || events_text == nullptr)
    return refuse(bad_file(say("this is not a .lastegg file: it holds no {}",
                               manifest_text == nullptr ? k_manifest_name : k_events_name)));
  const Result<Json> manifest = read_manifest(*manifest_text);
  if (!manifest) return refuse(manifest.error());
  for (const auto& [key, value] : manifest->items())
    if (std::find(std::begin(k_known_members), std::end(k_known_members), key) == std::end(k_known_members))
      job.more_manifest[key] = value;
  if (events_text->size() > limits.events_bytes)
    return refuse(bad_file(say("events.ndjson is {} bytes long; it must be at most {}", events_text->size(),
                               limits.events_bytes),
                           k_events_name, std::to_string(events_text->size()),
                           std::to_string(limits.events_bytes)));
  if (std::optional<Error> fault = add_events(*events_text, job.events)) return refuse(*fault);
  if (std::optional<Error> fault = broken_promise(*manifest, job)) return refuse(*fault);
  return job;
}

Result<JobFile> read_events(const std::string& text) {
  JobFile job;
  job.hash_was_promised = false;
  if (std::optional<Error> fault = add_events(text, job.events)) return refuse(*fault);
  return job;
}

Result<JobFile> load_job(const std::filesystem::path& path) {
  const Result<std::string> bytes = bytes_of_file(path, JobFileLimits().file_bytes);
  if (!bytes) return refuse(bytes.error());
  Result<JobFile> job = bytes->starts_with('{') ? read_events(*bytes) : read_job_file(*bytes);
  if (!job) job.error().message = path.string() + ": " + job.error().message;
  return job;
}

Result<JobFile> merged(const JobFile& one, const JobFile& other) {
  const std::set<std::string> mine = jobs_of(one.events), theirs = jobs_of(other.events);
  const bool share_one =
      std::any_of(mine.begin(), mine.end(), [&](const std::string& job) { return theirs.contains(job); });
  if (!mine.empty() && !theirs.empty() && !share_one)
    return refuse(bad_file(say("these are different jobs ({} and {}); only records of one job can be merged",
                               fmt::join(mine, ", "), fmt::join(theirs, ", "))));
  JobFile both = one;
  both.events.merge(other.events);
  both.blobs.insert(other.blobs.begin(), other.blobs.end());
  both.more_entries.insert(other.more_entries.begin(), other.more_entries.end());
  for (const auto& [key, value] : other.more_manifest.items())
    if (!both.more_manifest.contains(key)) both.more_manifest[key] = value;
  return both;
}

}  // namespace lastegg::store
