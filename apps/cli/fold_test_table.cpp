#include "apps/cli/fold_test_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <map>
#include <sstream>
#include <vector>

#include "words/say.h"

namespace lastegg::cli {
namespace {

const std::map<std::string, std::string> k_columns = {{"pace", "pace_metres_per_second"},
                                                      {"distance", "distance_metres"},
                                                      {"seconds", "seconds"},
                                                      {"layers", "layers"},
                                                      {"peak", "peak_celsius"},
                                                      {"kind", "kind"},
                                                      {"hold", "hold_seconds"},
                                                      {"covering", "covering"},
                                                      {"towel", ""}};

std::string trimmed(const std::string& text) {
  const auto first = text.find_first_not_of(" \t\r\"");
  if (first == std::string::npos) return "";
  return text.substr(first, text.find_last_not_of(" \t\r\"") - first + 1);
}

std::vector<std::string> cells_of(const std::string& line) {
  std::vector<std::string> cells;
  std::istringstream stream(line);
  for (std::string cell; std::getline(stream, cell, ',');) cells.push_back(trimmed(cell));
  if (!line.empty() && line.back() == ',') cells.emplace_back();
  return cells;
}

bool is_bare_number(const std::string& text) {
  char* end = nullptr;
  std::strtod(text.c_str(), &end);
  return !text.empty() && end == text.c_str() + text.size();
}

Refusal refuse_line(int line, const std::string& message) {
  return refuse(
      {ErrorKind::bad_input, say("line {}: {}", line, message), fmt::format("/line/{}", line), "", "", ""});
}

}  // namespace

Result<Json> read_fold_test_table(const std::string& text) {
  std::istringstream stream(text);
  std::vector<std::string> header, units;
  Json out{{"readings", Json::array()}};
  std::string towel;
  int number = 0;
  for (std::string line; std::getline(stream, line);) {
    ++number;
    if (trimmed(line).empty() || trimmed(line).front() == '#') continue;
    const std::vector<std::string> cells = cells_of(line);
    if (header.empty()) {
      for (const std::string& cell : cells) {
        if (!k_columns.contains(cell)) {
          return refuse_line(
              number,
              say("there is no column \"{}\"; the columns are pace, distance, seconds, layers, peak, towel, "
                  "kind, hold, covering",
                  cell));
        }
        if (std::count(cells.begin(), cells.end(), cell) > 1)
          return refuse_line(number, say("column \"{}\" stands twice", cell));
      }
      header = cells;
      continue;
    }
    if (cells.size() != header.size()) {
      return refuse_line(number, say("{} cells where the header has {}", cells.size(), header.size()));
    }
    const bool has_digit = std::any_of(line.begin(), line.end(), [](char c) { return c >= '0' && c <= '9'; });
    if (units.empty() && !has_digit && out["readings"].empty()) {
      units = cells;
      continue;
    }
    Json reading;
    for (std::size_t i = 0; i < cells.size(); ++i) {
      const std::string& cell = cells[i];
      if (cell.empty()) continue;
      if (header[i] == "towel") {
        if (!towel.empty() && towel != cell) {
          return refuse_line(
              number,
              say("towel \"{}\" after \"{}\": a towel changes the head, so each needs a test of its own",
                  cell, towel));
        }
        towel = cell;
        continue;
      }
      const std::string& key = k_columns.at(header[i]);
      if (header[i] == "layers") {
        if (!is_bare_number(cell))
          return refuse_line(number, say("layers is \"{}\"; it must be a whole number from 1 to 8", cell));
        const double layers = std::strtod(cell.c_str(), nullptr);
        if (layers != static_cast<int>(layers))
          return refuse_line(number, say("layers is {}; it must be a whole number", cell));
        reading[key] = static_cast<int>(layers);
      } else if (!units.empty() && is_bare_number(cell) && !units[i].empty()) {
        reading[key] = cell + " " + units[i];
      } else if (header[i] == "kind" || header[i] == "covering") {
        reading[key] = cell;
      } else if ((header[i] == "seconds" || header[i] == "hold") && is_bare_number(cell)) {
        reading[key] = std::strtod(cell.c_str(), nullptr);
      } else if (is_bare_number(cell)) {
        return refuse_line(number, say("{} is {} without a unit; write it as in \"25 mm/s\", \"1 "
                                       "in/s\", \"71 C\", \"160 F\", or give "
                                       "a row of units under the header",
                                       header[i], cell));
      } else {
        reading[key] = cell;
      }
    }
    out["readings"].push_back(std::move(reading));
  }
  if (header.empty())
    return refuse_line(1, say("the table is empty; its first line must name the columns: "
                              "pace,distance,seconds,layers,peak,towel"));
  if (out["readings"].empty()) return refuse_line(number, say("the table has no readings"));
  if (!towel.empty()) out["towel"] = towel;
  return out;
}

}  // namespace lastegg::cli
