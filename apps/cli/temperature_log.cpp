#include "apps/cli/temperature_log.h"

#include <fmt/format.h>

#include <cctype>
#include <cmath>
#include <cstdlib>
#include <optional>

#include "physics/quantities/unit_text.h"
#include "words/say.h"

namespace lastegg::cli {
namespace {

constexpr std::size_t k_absent = static_cast<std::size_t>(-1);

std::string_view trimmed(std::string_view text) {
  const auto is_blank = [](char c) { return c == ' ' || c == '\t' || c == '\r'; };
  while (!text.empty() && is_blank(text.front())) text.remove_prefix(1);
  while (!text.empty() && is_blank(text.back())) text.remove_suffix(1);
  return text;
}

std::string_view unquoted(std::string_view text) {
  if (text.size() >= 2 && text.front() == '"' && text.back() == '"') text = text.substr(1, text.size() - 2);
  return text;
}

std::vector<std::string_view> cells_of(std::string_view line, char separator) {
  std::vector<std::string_view> cells;
  for (;;) {
    const std::size_t end = line.find(separator);
    cells.push_back(unquoted(trimmed(line.substr(0, end))));
    if (end == std::string_view::npos) return cells;
    line.remove_prefix(end + 1);
  }
}

Refusal bad_line(std::size_t line, const std::string& what, std::string_view value = {},
                 std::string limit = {}, std::string unit = {}) {
  return refuse({ErrorKind::bad_input, say("line {}: {}", line, what), fmt::format("line {}", line),
                 std::string(value.substr(0, 40)), std::move(limit), std::move(unit)});
}

std::optional<double> number_of(std::string_view cell) {
  const std::string text(cell);
  // strtod also takes hexadecimal numbers, which no logger writes.
  if (text.empty() || text.find_first_of("xXpP") != std::string::npos) return std::nullopt;
  char* end = nullptr;
  const double value = std::strtod(text.c_str(), &end);
  if (end != text.c_str() + text.size() || !std::isfinite(value)) return std::nullopt;
  return value;
}

// Where the columns stand, from the header.
struct Columns {
  char separator = ',';
  std::size_t seconds = k_absent, celsius = k_absent, fahrenheit = k_absent;
  std::size_t needed() const {
    std::size_t last = seconds;
    for (const std::size_t column : {celsius, fahrenheit})
      if (column != k_absent && column > last) last = column;
    return last + 1;
  }
};

Result<Columns> columns_of(std::string_view header, std::size_t line) {
  Columns columns;
  for (const char separator : {'\t', ';'})
    if (header.find(separator) != std::string_view::npos) columns.separator = separator;
  const auto names = cells_of(header, columns.separator);
  for (std::size_t i = 0; i < names.size(); ++i) {
    std::string name(names[i]);
    for (char& c : name) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    std::size_t* column = name == "seconds"      ? &columns.seconds
                          : name == "celsius"    ? &columns.celsius
                          : name == "fahrenheit" ? &columns.fahrenheit
                                                 : nullptr;
    if (column == nullptr) continue;
    if (*column != k_absent) return bad_line(line, say("the column {} stands twice", name), name);
    *column = i;
  }
  if (columns.seconds == k_absent) {
    return bad_line(line, say("the header has no column seconds; the table begins with \"seconds,celsius\""),
                    header);
  }
  if (columns.celsius == k_absent && columns.fahrenheit == k_absent)
    return bad_line(line, say("the header has neither a column celsius nor a column fahrenheit"), header);
  if (columns.celsius != k_absent && columns.fahrenheit != k_absent)
    return bad_line(line, say("the header has both celsius and fahrenheit; one of them has to go"), header);
  return columns;
}

}  // namespace

Result<TemperatureLog> read_temperature_log(std::string_view text) {
  if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3);
  TemperatureLog log;
  std::optional<Columns> columns;
  for (std::size_t line = 1; !text.empty(); ++line) {
    const std::size_t end = text.find('\n');
    const std::string_view row = trimmed(text.substr(0, end));
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    if (row.empty() || row.front() == '#') continue;
    if (!columns) {
      const auto found = columns_of(row, line);
      if (!found) return refuse(found.error());
      columns = *found;
      continue;
    }
    const auto cells = cells_of(row, columns->separator);
    if (cells.size() < columns->needed()) {
      return bad_line(line, say("{} cells; the header asks for at least {}", cells.size(), columns->needed()),
                      row, fmt::format("{}", columns->needed()));
    }
    const auto seconds = number_of(cells[columns->seconds]);
    if (!seconds) {
      return bad_line(line, say("the time \"{}\" is not a number", cells[columns->seconds]),
                      cells[columns->seconds], {}, "s");
    }
    const bool in_fahrenheit = columns->fahrenheit != k_absent;
    const std::string_view cell = cells[in_fahrenheit ? columns->fahrenheit : columns->celsius];
    const auto degrees = number_of(cell);
    if (!degrees) {
      return bad_line(line, say("the temperature \"{}\" is not a number", cell), cell, {},
                      in_fahrenheit ? "F" : "C");
    }
    if (!log.seconds.empty() && *seconds <= log.seconds.back()) {
      return bad_line(
          line,
          say("the time {:g} s is not later than the {:g} s of line {}; times have to go forwards", *seconds,
              log.seconds.back(), log.lines.back()),
          cells[columns->seconds], fmt::format("{:g}", log.seconds.back()), "s");
    }
    log.seconds.push_back(*seconds);
    log.celsius.push_back(in_fahrenheit ? (*degrees - 32) / 1.8 : *degrees);
    log.lines.push_back(line);
  }
  if (!columns) return bad_line(1, say("the file is empty; the table begins with \"seconds,celsius\""));
  if (log.seconds.size() < 2) {
    return refuse({ErrorKind::bad_input,
                   say("the log has {} readings; a dose needs at least 2", log.seconds.size()), "",
                   fmt::format("{}", log.seconds.size()), "2", ""});
  }
  return log;
}

Result<double> temperature_difference_kelvin(const std::string& text) {
  if (const auto difference = parse_quantity(text, Unit::kelvin_difference)) return *difference;
  // A bare C or F would be ambiguous elsewhere; an uncertainty can only be a difference.
  std::string_view number = trimmed(text);
  double kelvin_per_degree = 0;
  if (!number.empty()) {
    if (number.back() == 'C' || number.back() == 'c') kelvin_per_degree = 1;
    if (number.back() == 'F' || number.back() == 'f') kelvin_per_degree = 1 / 1.8;
    number.remove_suffix(1);
    if (number.size() >= 2 && number.substr(number.size() - 2) == "\xC2\xB0") number.remove_suffix(2);
  }
  const auto value = number_of(trimmed(number));
  if (kelvin_per_degree == 0 || !value) {
    return refuse(
        {ErrorKind::bad_input,
         say("\"{}\" is not a difference of temperatures; write it as \"1 C\", \"1.8 F\" or \"1 K\"",
             text.substr(0, 40)),
         "", text.substr(0, 40), "", "K"});
  }
  return *value * kelvin_per_degree;
}

}  // namespace lastegg::cli
