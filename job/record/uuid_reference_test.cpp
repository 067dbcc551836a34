#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <string>

#include "job/record/law_for_tests.h"
#include "job/record/uuid.h"

using namespace lastegg::record;

// RFC 9562 (2024), appendix A.6, Example of a UUIDv7 Value: unix_ts_ms 0x017F22E279B0, rand_a 0xCC3, rand_b
// 0x18C4DC0C0C07398F. (The value was read in several independent implementations.)
TEST(UuidV7, GivesTheExampleOfTheRfc) {
  EXPECT_EQ(uuid_v7(0x017F22E279B0, {0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f}),
            "017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
}

TEST(UuidV7, SortsByTimeAndMarksVersionAndVariant) {
  expect_law("later milliseconds sort later",
             [](const std::array<std::uint8_t, 10>& one, const std::array<std::uint8_t, 10>& two) {
               const auto early = *rc::gen::inRange<std::uint64_t>(0, 0xFFFFFFFFFFFF);
               const std::string before = uuid_v7(early, one), after = uuid_v7(early + 1, two);
               RC_ASSERT(before < after);
               RC_ASSERT(is_uuid(before));
               RC_ASSERT(before[14] == '7');
               RC_ASSERT(std::string("89ab").find(before[19]) != std::string::npos);
             });
}

TEST(UuidV7, KeepsAllSeventyFourRandomBits) {
  const std::string none = uuid_v7(0, {}),
                    all = uuid_v7(0, {0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff});
  EXPECT_EQ(none, "00000000-0000-7000-8000-000000000000");
  EXPECT_EQ(all, "00000000-0000-7fff-bfff-ffffffffffff");
}

TEST(Uuid, HasOneSpelling) {
  EXPECT_TRUE(is_uuid("017f22e2-79b0-7cc3-98c4-dc0c0c07398f"));
  EXPECT_FALSE(is_uuid("017F22E2-79B0-7CC3-98C4-DC0C0C07398F"));
  EXPECT_FALSE(is_uuid("017f22e279b07cc398c4dc0c0c07398f"));
  EXPECT_FALSE(is_uuid("{017f22e2-79b0-7cc3-98c4-dc0c0c07398f}"));
  EXPECT_FALSE(is_uuid("017f22e2-79b0-7cc3-98c4-dc0c0c07398"));
  EXPECT_FALSE(is_uuid(""));
}
