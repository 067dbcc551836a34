#include "apps/store/job_file.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "apps/store/raw_zip_for_tests.h"
#include "apps/store/zip_archive.h"
#include "job/record/events_for_tests.h"
#include "job/record/sha256.h"

using namespace lastegg;
using namespace lastegg::store;
using lastegg::record::id_number;
using lastegg::record::line_of;
using lastegg::record::room_line;
using lastegg::record::set_of;

namespace {

JobFile some_job() {
  JobFile job;
  job.events = set_of({line_of(1, "job/1", 100, R"({"title":"Köln 🛋","n":1.00})"), room_line(2, 101, "a"),
                       room_line(3, 101, "b", 2), line_of(4, "trap/9", 102, R"({"x":[1e2, 100.0]})")});
  const std::string picture("\x89PNG\0\xff not really", 18);
  job.blobs.emplace(record::sha256_hex(picture), picture);
  job.more_manifest["written_by"] = "a newer program";
  job.more_entries.emplace("plans/ground.svg", "<svg/>");
  return job;
}

std::string events_text() {
  return room_line(1, 100, "a") + "\n";
}

std::string manifest_text(const std::string& more = "") {
  return R"({"format":"lastegg","version":1,"event_count":1,"state_hash":")" +
         record::sha256_hex(events_text()) + "\"" + more + "}";
}

std::vector<RawEntry> sound_entries() {
  return {{"manifest.json", manifest_text()}, {"events.ndjson", events_text()}};
}

void expect_refused(const std::string& bytes, const std::string& part, const JobFileLimits& limits = {}) {
  const Result<JobFile> job = read_job_file(bytes, limits);
  ASSERT_FALSE(job.has_value()) << part;
  EXPECT_EQ(job.error().kind, ErrorKind::bad_input);
  EXPECT_NE(job.error().message.find(part), std::string::npos) << job.error().message;
}

void expect_refused_with(RawEntry entry, const std::string& part) {
  std::vector<RawEntry> entries = sound_entries();
  entries.push_back(std::move(entry));
  expect_refused(raw_zip(entries), part);
}

}  // namespace

TEST(JobFile, ComesBackWithTheSameHash) {
  const JobFile job = some_job();
  ASSERT_EQ(job.events.size(), 4U);
  const Result<std::string> bytes = job_file_bytes(job);
  ASSERT_TRUE(bytes.has_value()) << bytes.error().message;
  const Result<JobFile> back = read_job_file(*bytes);
  ASSERT_TRUE(back.has_value()) << back.error().message;
  EXPECT_EQ(back->events.ndjson(), job.events.ndjson());
  EXPECT_EQ(back->events.state_hash(), job.events.state_hash());
  EXPECT_EQ(back->blobs, job.blobs);
  EXPECT_EQ(back->more_entries, job.more_entries);
  EXPECT_EQ(back->more_manifest, job.more_manifest);
  EXPECT_TRUE(back->hash_was_promised);
}

TEST(JobFile, HasTheSameBytesEveryTime) {
  const Result<std::string> once = job_file_bytes(some_job());
  const Result<std::string> again = job_file_bytes(*read_job_file(*once));
  ASSERT_TRUE(once.has_value() && again.has_value());
  EXPECT_EQ(*once, *again);
  EXPECT_EQ(once->find("PK"), 0U);
}

TEST(JobFile, OfNoEventsIsAFileToo) {
  const Result<std::string> bytes = job_file_bytes(JobFile());
  ASSERT_TRUE(bytes.has_value());
  const Result<JobFile> back = read_job_file(*bytes);
  ASSERT_TRUE(back.has_value()) << back.error().message;
  EXPECT_EQ(back->events.size(), 0U);
}

TEST(JobFile, ReadsWhatOtherProgramsWrite) {
  ASSERT_TRUE(read_job_file(raw_zip(sound_entries())).has_value());
  // Folders as entries, lines out of order, repeated and with carriage returns, no hash in the manifest.
  const std::string text =
      room_line(2, 100, "b") + "\r\n" + room_line(1, 100, "a") + "\n\n" + room_line(2, 100, "b");
  const Result<JobFile> loose =
      read_job_file(raw_zip({{"blobs/", "", 0, 0, 040755},
                             {"events.ndjson", text},
                             {"manifest.json", R"({"format":"lastegg","version":1})"}}));
  ASSERT_TRUE(loose.has_value()) << loose.error().message;
  EXPECT_EQ(loose->events.size(), 2U);
  EXPECT_FALSE(loose->hash_was_promised);
}

TEST(JobFile, RefusesDamage) {
  const std::string bytes = *job_file_bytes(some_job());
  expect_refused("", "not a .lastegg file");
  expect_refused("not a zip at all", "not a .lastegg file");
  expect_refused(bytes.substr(0, bytes.size() / 2), "not a .lastegg file");
  // Any one byte changed, all over the file, is either noticed or changes nothing that is read.
  const JobFile sound = *read_job_file(bytes);
  int noticed = 0;
  for (std::size_t i = 0; i < bytes.size(); ++i) {
    std::string damaged = bytes;
    damaged[i] = static_cast<char>(damaged[i] ^ 0x10);
    const Result<JobFile> read = read_job_file(damaged);
    if (!read) {
      ++noticed;
      continue;
    }
    ASSERT_EQ(read->events.state_hash(), sound.events.state_hash()) << i;
    ASSERT_EQ(read->blobs, sound.blobs) << i;
  }
  EXPECT_GT(noticed, static_cast<int>(bytes.size()) / 2);
}

TEST(JobFile, RefusesWhatItsManifestDoesNotPromise) {
  const auto with_manifest = [](const std::string& text) {
    return raw_zip({{"manifest.json", text}, {"events.ndjson", events_text()}});
  };
  expect_refused(with_manifest("{}"), "format");
  expect_refused(with_manifest("[]"), "format");
  expect_refused(with_manifest("nonsense"), "manifest.json cannot be read");
  expect_refused(with_manifest(R"({"format":"other","version":1})"), "format");
  expect_refused(with_manifest(R"({"format":"lastegg"})"), "version");
  expect_refused(with_manifest(R"({"format":"lastegg","version":"1"})"), "version");
  expect_refused(with_manifest(R"({"format":"lastegg","version":2})"), "version 2");
  expect_refused(with_manifest(R"({"format":"lastegg","version":1,"event_count":2})"), "event_count");
  expect_refused(with_manifest(R"({"format":"lastegg","version":1,"state_hash":"00"})"), "state_hash");
  expect_refused(with_manifest(manifest_text(R"(,"blob_count":1)")), "blob_count");
  expect_refused(raw_zip({{"events.ndjson", events_text()}}), "no manifest.json");
  expect_refused(raw_zip({{"manifest.json", manifest_text()}}), "no events.ndjson");
  expect_refused(raw_zip({{"manifest.json", manifest_text()}, {"events.ndjson", events_text() + "{}\n"}}),
                 "line 2 of the events");
}

TEST(JobFile, RefusesNamesThatLeaveTheFolder) {
  for (const char* name : {"../evil", "/etc/evil", "a/../../evil", "C:\\evil", "a\\..\\evil", "./x", "a//b",
                           "..", "a/..", "sp ace"})
    expect_refused_with({name, "x"}, "could leave the folder");
}

TEST(JobFile, RefusesLinksSecretsAndTwins) {
  expect_refused_with({"link", "/etc/passwd", 0, 0, 0120777}, "link");
  expect_refused_with({"device", "", 0, 0, 0020666}, "link or a device");
  expect_refused_with({"secret", "0123456789ab....", 1}, "encrypted");
  expect_refused_with({"odd", "xxxx", 0, 12}, "deflate");
  expect_refused_with({"manifest.json", manifest_text()}, "twice");
}

TEST(JobFile, RefusesWrongSizesAndSums) {
  expect_refused_with({"grows", "xxxx", 0, 0, 0100644, 1}, "");
  expect_refused_with({"shrinks", "xxxx", 0, 0, 0100644, -1}, "");
  expect_refused_with({"sum", "xxxx", 0, 0, 0100644, 0, 1}, "checksum");
}

TEST(JobFile, RefusesBlobsThatAreNotWhatTheirNameSays) {
  expect_refused_with({"blobs/" + record::sha256_hex("x"), "y"}, "damaged");
  expect_refused_with({"blobs/picture.jpg", "y"}, "not named by a SHA-256");
  JobFile job;
  job.blobs.emplace(record::sha256_hex("x"), "y");
  EXPECT_FALSE(job_file_bytes(job).has_value());
}

TEST(JobFile, RefusesZipBombs) {
  JobFile job = some_job();
  job.more_entries.emplace("zeros", std::string(1'000'000, '\0'));
  const std::string bytes = *job_file_bytes(job);
  ASSERT_LT(bytes.size(), 10'000U);
  EXPECT_TRUE(read_job_file(bytes).has_value());
  JobFileLimits growth;
  growth.free_bytes = 100'000;
  expect_refused(bytes, "grows from", growth);
  JobFileLimits total;
  total.unpacked_bytes = 900'000;
  expect_refused(bytes, "unpacks to more", total);
  JobFileLimits entries;
  entries.entries = 3;
  expect_refused(bytes, "entries", entries);
  JobFileLimits file;
  file.file_bytes = 100;
  expect_refused(bytes, "bytes long", file);
  JobFileLimits events;
  events.events_bytes = 10;
  expect_refused(bytes, "events.ndjson is", events);
}

TEST(JobFile, MergesByUnion) {
  JobFile one, other;
  one.events = set_of({line_of(1, "job/1", 100, R"({"title":"j"})"), room_line(2, 101, "a")});
  other.events = set_of({room_line(2, 101, "a"), room_line(3, 101, "b", 2)});
  other.blobs.emplace(record::sha256_hex("x"), "x");
  const Result<JobFile> there = merged(one, other), back = merged(other, one);
  ASSERT_TRUE(there.has_value() && back.has_value());
  EXPECT_EQ(there->events.size(), 3U);
  EXPECT_EQ(there->blobs.size(), 1U);
  EXPECT_EQ(*job_file_bytes(*there), *job_file_bytes(*back));
  other.events = set_of({line_of(9, "job/1", 200, R"({"title":"k"})")});
  const Result<JobFile> different = merged(one, other);
  ASSERT_FALSE(different.has_value());
  EXPECT_NE(different.error().message.find("different jobs"), std::string::npos);
}
