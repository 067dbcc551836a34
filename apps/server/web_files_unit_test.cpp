#include "apps/server/web_files.h"

#include <fstream>

#include <gtest/gtest.h>

#include "apps/server/web_folder_for_tests.h"

namespace lastegg::server {
namespace {

TEST(WebFiles, KeepsOnlyFilesOfTheFolder) {
  const WebFolder folder;
  folder.write("index.html", "page");
  folder.write("assets/app-1a2b.js", "script");
  folder.write("assets/app-1a2b.js.br", "packed script");
  folder.write(".secret", "secret");
  folder.write(".git/config", "secret");
  const WebFolder outside;
  outside.write("outside.txt", "secret");
  std::filesystem::create_symlink(outside.path() / "outside.txt", folder.path() / "link.txt");
  const Result<WebFiles> files = read_web_files(folder.path());
  ASSERT_TRUE(files.has_value()) << files.error().message;
  ASSERT_EQ(files->size(), 2U);
  const WebFile& script = files->at("/assets/app-1a2b.js");
  EXPECT_EQ(script.bytes, "script");
  EXPECT_EQ(script.brotli_bytes, "packed script");
  EXPECT_TRUE(script.name_has_hash);
  EXPECT_FALSE(files->at("/index.html").name_has_hash);
}

TEST(WebFiles, RefusesAFolderWithoutThePage) {
  const WebFolder folder;
  const Result<WebFiles> empty = read_web_files(folder.path());
  ASSERT_FALSE(empty.has_value());
  EXPECT_EQ(empty.error().kind, ErrorKind::not_found);
  EXPECT_NE(empty.error().message.find("index.html"), std::string::npos);
  const Result<WebFiles> missing = read_web_files(folder.path() / "nowhere");
  ASSERT_FALSE(missing.has_value());
  EXPECT_EQ(missing.error().kind, ErrorKind::not_found);
}

TEST(WebFiles, GivesThePageForAddressesOfTheApp) {
  WebFiles files;
  files["/index.html"].bytes = "page";
  files["/app.js"].bytes = "script";
  const auto bytes_for = [&](std::string_view path) {
    const WebFile* file = web_file_for(files, path);
    return file == nullptr ? "none" : file->bytes;
  };
  EXPECT_EQ(bytes_for("/"), "page");
  EXPECT_EQ(bytes_for("/plan/sofa"), "page");
  EXPECT_EQ(bytes_for("/app.js"), "script");
  EXPECT_EQ(bytes_for("/gone.js"), "none");
  EXPECT_EQ(bytes_for("/../../etc/passwd.txt"), "none");
  EXPECT_EQ(bytes_for("/.."), "none");
}

TEST(WebFiles, KnowsMediaTypes) {
  EXPECT_EQ(media_type_of("/lastegg.wasm"), "application/wasm");
  EXPECT_EQ(media_type_of("/app.js"), "text/javascript; charset=utf-8");
  EXPECT_EQ(media_type_of("/manifest.webmanifest"), "application/manifest+json");
  EXPECT_EQ(media_type_of("/events.ndjson"), "application/x-ndjson");
  EXPECT_EQ(media_type_of("/unheard.of"), "application/octet-stream");
}

TEST(WebFiles, ComparesEntityTagsAsRfc9110) {
  EXPECT_TRUE(tag_matches("\"abc\"", "abc"));
  EXPECT_TRUE(tag_matches("\"x\", W/\"abc\"", "abc"));
  EXPECT_TRUE(tag_matches("*", "abc"));
  EXPECT_FALSE(tag_matches("\"abcd\"", "abc"));
  EXPECT_FALSE(tag_matches("abc", "abc"));
  EXPECT_FALSE(tag_matches("", "abc"));
  EXPECT_FALSE(tag_matches("\"", "abc"));
}

TEST(WebFiles, ReadsAcceptEncoding) {
  EXPECT_TRUE(accepts_brotli("gzip, deflate, br"));
  EXPECT_TRUE(accepts_brotli("br;q=0.5"));
  EXPECT_FALSE(accepts_brotli("br;q=0"));
  EXPECT_FALSE(accepts_brotli("br;q=0.000, gzip"));
  EXPECT_FALSE(accepts_brotli("gzip, brotli"));
  EXPECT_FALSE(accepts_brotli(""));
}

TEST(WebFiles, TagsFollowContent) {
  const WebFolder folder;
  folder.write("index.html", "one");
  const std::string first = read_web_files(folder.path())->at("/index.html").entity_tag;
  folder.write("index.html", "two");
  const std::string second = read_web_files(folder.path())->at("/index.html").entity_tag;
  EXPECT_NE(first, second);
}

}  // namespace
}  // namespace lastegg::server
