#include "apps/store/durable_file.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

#include <cstdio>
#include <filesystem>
#include <string>

#include "apps/store/job_file.h"
#include "job/record/events_for_tests.h"
#include "job/record/sha256.h"

using namespace lastegg;
using namespace lastegg::store;
namespace fs = std::filesystem;

namespace {

class Folder : public testing::Test {
 protected:
  void SetUp() override {
    std::string name = (fs::temp_directory_path() / "lastegg-XXXXXX").string();
    ASSERT_NE(mkdtemp(name.data()), nullptr);
    path_ = name;
  }
  void TearDown() override { fs::remove_all(path_); }

  std::size_t file_count() const {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(path_), fs::directory_iterator()));
  }

  std::string output_of(const std::string& command) const {
    std::FILE* pipe = popen((command + " 2>&1").c_str(), "r");
    std::string text;
    if (pipe == nullptr) return "no pipe";
    char block[4096];
    for (std::size_t count = 0; (count = std::fread(block, 1, sizeof block, pipe)) > 0;)
      text.append(block, count);
    return pclose(pipe) == 0 ? text : "failed: " + text;
  }

  fs::path path_;
};

using DurableFile = Folder;
using JobFileOnDisk = Folder;

}  // namespace

TEST_F(DurableFile, WritesReplacesAndLeavesNothingBehind) {
  const std::string bytes("a\0b\n", 4);
  ASSERT_TRUE(write_durably(path_ / "file", bytes).has_value());
  EXPECT_EQ(*bytes_of_file(path_ / "file", 100), bytes);
  ASSERT_TRUE(write_durably(path_ / "file", "new").has_value());
  EXPECT_EQ(*bytes_of_file(path_ / "file", 100), "new");
  EXPECT_EQ(file_count(), 1U);
}

TEST_F(DurableFile, RefusesAndKeepsWhatWasThere) {
  fs::create_directory(path_ / "folder");
  fs::create_directory(path_ / "folder" / "full");
  const auto onto_folder = write_durably(path_ / "folder", "x");
  ASSERT_FALSE(onto_folder.has_value());
  EXPECT_NE(onto_folder.error().message.find("cannot be written"), std::string::npos);
  EXPECT_EQ(file_count(), 1U);
  EXPECT_EQ(write_durably(path_ / "missing" / "file", "x").error().kind, ErrorKind::not_found);
  EXPECT_EQ(bytes_of_file(path_ / "missing", 10).error().kind, ErrorKind::not_found);
  EXPECT_EQ(bytes_of_file(path_ / "folder", 10).error().kind, ErrorKind::not_found);
  ASSERT_TRUE(write_durably(path_ / "file", "12345678901").has_value());
  EXPECT_EQ(bytes_of_file(path_ / "file", 10).error().kind, ErrorKind::bad_input);
}

// A reader that shares no code with this one: Python's zipfile, json and hashlib.
TEST_F(JobFileOnDisk, IsReadByStandardTools) {
  JobFile job;
  job.events = record::set_of(
      {record::room_line(3, 101, "ä"), record::line_of(1, "job/1", 100, R"({"title":"j","n":1.00})")});
  job.blobs.emplace(record::sha256_hex("picture"), "picture");
  ASSERT_TRUE(write_durably(path_ / "job.lastegg", *job_file_bytes(job)).has_value());
  const std::string tool =
      "/usr/bin/python3 " LASTEGG_SOURCE_DIR "/tools/read_job_file.py " + (path_ / "job.lastegg").string();
  EXPECT_EQ(output_of(tool),
            "2 events " + job.events.state_hash() + " 1 blobs\n     1 job/1\n     1 room/1\n");
  EXPECT_EQ(output_of(tool + " --lines"), job.events.ndjson());
}

TEST_F(JobFileOnDisk, IsLoadedAsZipOrAsPlainLines) {
  JobFile job;
  job.events = record::set_of({record::room_line(3, 101, "a"), record::room_line(1, 100, "b")});
  ASSERT_TRUE(write_durably(path_ / "zip", *job_file_bytes(job)).has_value());
  ASSERT_TRUE(write_durably(path_ / "lines", job.events.ndjson()).has_value());
  EXPECT_EQ(load_job(path_ / "zip")->events.state_hash(), job.events.state_hash());
  EXPECT_EQ(load_job(path_ / "lines")->events.state_hash(), job.events.state_hash());
  ASSERT_TRUE(write_durably(path_ / "lines", job.events.ndjson() + "{\"id\":1}\n").has_value());
  const Result<JobFile> broken = load_job(path_ / "lines");
  ASSERT_FALSE(broken.has_value());
  EXPECT_NE(broken.error().message.find("line 3 of the events"), std::string::npos) << broken.error().message;
  EXPECT_EQ(broken.error().where, "events.ndjson:3");
}
