// A calendar file (iCalendar) with all-day entries, for a phone's own calendar. Text in, text out; no clock:
// the stamp is made from the day of the treatment, so that the same answer always gives the same file.
#pragma once

#include <chrono>
#include <string>
#include <vector>

namespace lastegg::reports {

struct CalendarEntry {
  std::string id;                  ///< the same for the same visit, so that a calendar replaces it
  std::chrono::sys_days from, to;  ///< first and last day
  std::string title, text;
  bool remind = false;  ///< the day before
};

/// The text of an .ics file.
/// Source:  RFC 5545 (2009), sections 3.1 (lines of 75 octets, folded), 3.3.11 (escapes), 3.6.1, 3.6.6
/// Checked: job/reports/calendar_file_unit_test.cpp
std::string calendar_file(std::chrono::sys_days stamped, const std::vector<CalendarEntry>& entries);

/// "2026-03-02"
std::string day_text(std::chrono::sys_days day);

}  // namespace lastegg::reports
