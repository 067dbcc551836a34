// The calendar file, line by line, as RFC 5545 asks.
#include <gtest/gtest.h>

#include "job/reports/calendar_file.h"

namespace lastegg::reports {
namespace {

using namespace std::chrono;

std::string file_of(const std::string& text) {
  const sys_days day = 2026y / 3 / 2;
  return calendar_file(day, {{"a@b", day + days{26}, day + days{30}, "Look again", text, true}});
}

std::string unfolded(std::string file) {
  for (std::size_t at = file.find("\r\n "); at != std::string::npos; at = file.find("\r\n ", at))
    file.erase(at, 3);
  return file;
}

TEST(CalendarFile, HasWhatTheStandardDemands) {
  const std::string file = file_of("x");
  EXPECT_EQ(file.rfind("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:", 0), 0U);
  EXPECT_TRUE(file.ends_with("END:VEVENT\r\nEND:VCALENDAR\r\n"));
  EXPECT_NE(file.find("UID:a@b\r\n"), std::string::npos);
  EXPECT_NE(file.find("DTSTAMP:20260302T000000Z\r\n"), std::string::npos);
  EXPECT_NE(file.find("DTSTART;VALUE=DATE:20260328\r\n"), std::string::npos);
  EXPECT_NE(file.find("DTEND;VALUE=DATE:20260402\r\n"),
            std::string::npos);  // the day after the last, section 3.6.1
}

TEST(CalendarFile, LinesAreAtMostSeventyFiveOctetsAndFoldBack) {
  const std::string long_text = std::string(70, 'a') + "\u00e9\u00e9\u00e9 " + std::string(200, 'b');
  const std::string file = file_of(long_text);
  std::size_t from = 0;
  for (std::size_t to = file.find("\r\n"); to != std::string::npos; to = file.find("\r\n", from)) {
    EXPECT_LE(to - from, 75U);
    EXPECT_NE(static_cast<unsigned char>(file[from]) & 0xc0U, 0x80U) << "a character was cut";
    from = to + 2;
  }
  EXPECT_NE(unfolded(file).find("DESCRIPTION:" + long_text + "\r\n"), std::string::npos);
}

TEST(CalendarFile, EscapesWhatTheStandardEscapes) {
  EXPECT_NE(unfolded(file_of("a,b;c\\d\ne\r\x01")).find("DESCRIPTION:a\\,b\\;c\\\\d\\ne\r\n"),
            std::string::npos);
}

}  // namespace
}  // namespace lastegg::reports
