#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <string>

#include "job/record/law_for_tests.h"
#include "job/record/sha256.h"

using namespace lastegg::record;

// The examples that NIST publishes with FIPS 180-4 (Secure Hash Standard examples, SHA-256), and the million
// letters of its predecessors' appendices. Each figure was computed again with Python's hashlib.
TEST(Sha256, GivesThePublishedDigests) {
  EXPECT_EQ(sha256_hex("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  EXPECT_EQ(sha256_hex("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
            "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
  EXPECT_EQ(sha256_hex("abcdefghbcdefghicdefghijdefghijkefghijklfghijklmghijklmn"
                       "hijklmnoijklmnopjklmnopqklmnopqrlmnopqrsmnopqrstnopqrstu"),
            "cf5b16a778af8380036ce59e7b0492370b249b11e8f07a51afac45037afee9d1");
  EXPECT_EQ(sha256_hex(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  EXPECT_EQ(sha256_hex(std::string(1'000'000, 'a')),
            "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

// Every length around the block of 64 bytes, where the padding changes. Digest of the concatenated digests of
// 0 to 200 letters "a", computed with Python's hashlib.
TEST(Sha256, PadsEveryLengthAsHashlibDoes) {
  std::string digests;
  for (std::size_t length = 0; length <= 200; ++length) digests += sha256_hex(std::string(length, 'a'));
  EXPECT_EQ(sha256_hex(digests), "eb555248bd20c7831e511d4461b42c9b084e3a64b44d57b00051172f8afe03ff");
}

TEST(Sha256, IsTheSameInPieces) {
  expect_law("a message in pieces has the digest of the whole",
             [](const std::string& one, const std::string& two, const std::string& three) {
               Sha256 hash;
               hash.add(one);
               hash.add(two);
               hash.add(three);
               RC_ASSERT(hash.finish() == sha256_hex(one + two + three));
             });
}

TEST(Sha256, KnowsItsOwnSpelling) {
  EXPECT_TRUE(is_sha256_hex(sha256_hex("x")));
  EXPECT_FALSE(is_sha256_hex(sha256_hex("x").substr(1)));
  EXPECT_FALSE(is_sha256_hex("BA7816BF8F01CFEA414140DE5DAE2223B00361A396177A9CB410FF61F20015AD"));
}
