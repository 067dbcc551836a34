#include "job/reports/calendar_file.h"

#include <fmt/format.h>

#include <string_view>

namespace lastegg::reports {
namespace {

constexpr std::size_t k_line_octets = 75;

// Backslash, comma and semicolon are escaped, a line break is written \n; other control characters are left
// out.
std::string escaped(std::string_view text) {
  std::string out;
  for (const char c : text) {
    if (c == '\\' || c == ',' || c == ';') out += '\\';
    if (c == '\n')
      out += "\\n";
    else if (static_cast<unsigned char>(c) >= 0x20 && c != 0x7f)
      out += c;
  }
  return out;
}

bool begins_character(char c) {
  return (static_cast<unsigned char>(c) & 0xc0U) != 0x80U;
}

// A content line, folded between characters.
void put(std::string& file, std::string_view line) {
  std::size_t room = k_line_octets;
  while (line.size() > room) {
    std::size_t cut = room;
    while (cut > 1 && !begins_character(line[cut])) --cut;
    file.append(line.substr(0, cut)).append("\r\n ");
    line.remove_prefix(cut);
    room = k_line_octets - 1;
  }
  file.append(line).append("\r\n");
}

std::string compact(std::chrono::sys_days day) {
  const std::chrono::year_month_day date{day};
  return fmt::format("{:04}{:02}{:02}", static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                     static_cast<unsigned>(date.day()));
}

}  // namespace

std::string day_text(std::chrono::sys_days day) {
  const std::chrono::year_month_day date{day};
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                     static_cast<unsigned>(date.day()));
}

std::string calendar_file(std::chrono::sys_days stamped, const std::vector<CalendarEntry>& entries) {
  std::string file;
  put(file, "BEGIN:VCALENDAR");
  put(file, "VERSION:2.0");
  put(file, "PRODID:-//Last Egg//Follow-up//EN");
  for (const CalendarEntry& entry : entries) {
    put(file, "BEGIN:VEVENT");
    put(file, "UID:" + escaped(entry.id));
    put(file, "DTSTAMP:" + compact(stamped) + "T000000Z");
    put(file, "DTSTART;VALUE=DATE:" + compact(entry.from));
    put(file, "DTEND;VALUE=DATE:" + compact(entry.to + std::chrono::days{1}));
    put(file, "SUMMARY:" + escaped(entry.title));
    put(file, "DESCRIPTION:" + escaped(entry.text));
    put(file, "TRANSP:TRANSPARENT");
    if (entry.remind) {
      put(file, "BEGIN:VALARM");
      put(file, "ACTION:DISPLAY");
      put(file, "TRIGGER:-P1D");
      put(file, "DESCRIPTION:" + escaped(entry.title));
      put(file, "END:VALARM");
    }
    put(file, "END:VEVENT");
  }
  put(file, "END:VCALENDAR");
  return file;
}

}  // namespace lastegg::reports
