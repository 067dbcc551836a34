#include "physics/quantities/unit_text.h"

#include <fmt/format.h>

#include <cctype>
#include <cmath>
#include <cstdlib>

#include "physics/quantities/unit_symbols.h"
#include "words/say.h"

namespace lastegg {
namespace {

using unit_symbols::Dimension;
using unit_symbols::Factor;
using unit_symbols::Symbol;
using unit_symbols::TemperatureScale;

constexpr std::size_t k_longest_text = 100;
constexpr double k_kelvin_at_zero_celsius = 273.15;

bool is_digit(char c) {
  return c >= '0' && c <= '9';
}
bool is_letter(char c) {
  return std::isalpha(static_cast<unsigned char>(c)) != 0;
}

std::string in_quotes(std::string_view text) {
  return fmt::format("\"{}\"", text);
}

std::string listed(const std::vector<std::string>& words) {
  std::string list;
  for (const std::string& word : words) {
    if (!list.empty()) list += ", ";
    list += word;
  }
  return list;
}

Refusal refusal(std::string_view text, Unit unit, const std::string& reason) {
  Error error;
  error.kind = ErrorKind::bad_input;
  error.message = say("{} {}; accepted here: {}.", in_quotes(text), reason, listed(accepted_spellings(unit)));
  error.value = std::string(text);
  error.unit = std::string(unit_sign(unit));
  return refuse(std::move(error));
}

void replace_all(std::string& text, std::string_view from, std::string_view to) {
  for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
    text.replace(at, from.size(), to);
}

/// The text with the typographic characters that phones and word processors put in written in plain ASCII.
std::string plain(std::string_view text) {
  std::string result(text);
  constexpr std::pair<std::string_view, std::string_view> replacements[] = {
      {"\u00b0", " "},  {"\u00b2", "2"},     {"\u00b3", "3"},     {"\u00b5", "u"},     {"\u03bc", "u"},
      {"\u00b7", "*"},  {"\u22c5", "*"},     {"\u2212", "-"},     {"\u2044", "/"},     {"\u00a0", " "},
      {"\u202f", " "},  {"\u00bd", " 1/2 "}, {"\u00bc", " 1/4 "}, {"\u00be", " 3/4 "}, {"\u0394", "delta "},
      {"\u2033", "\""}, {"\u201d", "\""},    {"\u2032", "'"},     {"\u2019", "'"},     {"\t", " "}};
  for (const auto& [from, to] : replacements) replace_all(result, from, to);
  return result;
}

/// Reads text from left to right; owns nothing but its place.
class Scanner {
 public:
  explicit Scanner(std::string_view text) : text_(text) {}

  void skip_spaces() {
    while (at_ < text_.size() && text_[at_] == ' ') ++at_;
  }
  bool at_end() const { return at_ >= text_.size(); }
  char peek(std::size_t ahead = 0) const { return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0'; }
  char take() { return text_[at_++]; }
  std::size_t place() const { return at_; }
  void return_to(std::size_t place) { at_ = place; }
  std::string_view since(std::size_t place) const { return text_.substr(place, at_ - place); }

  std::string_view digits() {
    const std::size_t start = at_;
    while (is_digit(peek())) ++at_;
    return since(start);
  }
  std::string_view letters() {
    const std::size_t start = at_;
    while (is_letter(peek())) ++at_;
    return since(start);
  }

 private:
  std::string_view text_;
  std::size_t at_ = 0;
};

double to_double(std::string_view text) {
  return std::strtod(std::string(text).c_str(), nullptr);
}

/// "3/8" at the scanner's place, or nothing and the place unchanged.
std::optional<double> read_fraction(Scanner& scanner) {
  const std::size_t start = scanner.place();
  const std::string_view numerator = scanner.digits();
  if (numerator.empty() || scanner.peek() != '/') {
    scanner.return_to(start);
    return std::nullopt;
  }
  scanner.take();
  const std::string_view denominator = scanner.digits();
  if (denominator.empty()) {
    scanner.return_to(start);
    return std::nullopt;
  }
  return to_double(numerator) / to_double(denominator);
}

/// Digits with an optional point and exponent, or nothing.
std::optional<double> read_decimal(Scanner& scanner) {
  const std::size_t start = scanner.place();
  bool any = !scanner.digits().empty();
  if (scanner.peek() == '.') {
    scanner.take();
    any = !scanner.digits().empty() || any;
  }
  if (!any) {
    scanner.return_to(start);
    return std::nullopt;
  }
  const char mark = scanner.peek();
  const bool sign = scanner.peek(1) == '+' || scanner.peek(1) == '-';
  if ((mark == 'e' || mark == 'E') && is_digit(scanner.peek(sign ? 2 : 1))) {
    scanner.take();
    if (sign) scanner.take();
    scanner.digits();
  }
  return to_double(scanner.since(start));
}

/// A signed decimal, fraction or mixed number.
std::optional<double> read_number(Scanner& scanner) {
  double sign = 1.0;
  if (scanner.peek() == '-' || scanner.peek() == '+') sign = scanner.take() == '-' ? -1.0 : 1.0;
  if (const auto fraction = read_fraction(scanner)) return sign * *fraction;
  const std::size_t start = scanner.place();
  const std::optional<double> number = read_decimal(scanner);
  if (!number) return std::nullopt;
  const std::string_view whole = scanner.since(start);
  if (whole.find_first_not_of("0123456789") == std::string_view::npos) {
    const std::size_t after = scanner.place();
    scanner.skip_spaces();
    if (scanner.place() == after && scanner.peek() == '-') scanner.take();
    if (scanner.place() != after) {
      if (const auto fraction = read_fraction(scanner)) return sign * (*number + *fraction);
    }
    scanner.return_to(after);
  }
  return sign * *number;
}

/// A unit expression reduced to SI.
struct UnitReading {
  Dimension dimension{};
  Factor factor;
  int symbols = 0;
  TemperatureScale scale = TemperatureScale::none;  ///< of the only symbol
};

/// Multiplies `reading` by symbol^power.
void include(UnitReading& reading, const Symbol& symbol, int power) {
  ++reading.symbols;
  reading.scale = symbol.scale;
  for (std::size_t i = 0; i < reading.dimension.size(); ++i)
    reading.dimension[i] += power * symbol.dimension[i];
  for (int k = 0; k < std::abs(power); ++k) {
    reading.factor.numerator *= power > 0 ? symbol.factor.numerator : symbol.factor.denominator;
    reading.factor.denominator *= power > 0 ? symbol.factor.denominator : symbol.factor.numerator;
  }
}

/// One symbol's spelling: letters, "%" or a quote mark; the words "sq", "cu", "delta" and "deg" join
/// what follows.
std::string read_spelling(Scanner& scanner) {
  const char c = scanner.peek();
  if (c == '%' || c == '"' || c == '\'') return std::string(1, scanner.take());
  std::string spelling(scanner.letters());
  if (spelling == "delta" || spelling == "deg") {
    const std::size_t after = scanner.place();
    scanner.skip_spaces();
    const std::string next(scanner.letters());
    if (unit_symbols::find_symbol(spelling + next) != nullptr) return spelling + next;
    scanner.return_to(after);
  }
  if ((spelling == "inH" || spelling == "mmH") && scanner.peek() == '2' && scanner.peek(1) == 'O') {
    scanner.take();
    scanner.take();
    spelling += "2O";
  }
  if (spelling == "in" || spelling == "mm") {  // "in Hg"
    const std::size_t after = scanner.place();
    scanner.skip_spaces();
    const std::string next(scanner.letters());
    if (next == "Hg" || next == "HG" || next == "hg") return spelling + "Hg";
    scanner.return_to(after);
  }
  return spelling;
}

/// What follows the number, as a product of symbols; everything after the first "/" or "per" divides.
Result<UnitReading> read_unit(Scanner& scanner, std::string_view text, Unit unit) {
  UnitReading reading;
  int side = 1;
  int next_power = 1;
  while (true) {
    scanner.skip_spaces();
    if (scanner.at_end()) break;
    const char c = scanner.peek();
    if (c == '*' || c == '(' || c == ')') {
      scanner.take();
      continue;
    }
    if (c == '/') {
      scanner.take();
      side = -1;
      continue;
    }
    if (c == ',')
      return refusal(text, unit, say("has a comma; write a decimal point (25.4) and no thousands mark"));
    const std::string spelling = read_spelling(scanner);
    if (spelling.empty()) return refusal(text, unit, say("has a sign that belongs to no unit: \"{}\"", c));
    if (spelling == "per") {
      side = -1;
      continue;
    }
    if (spelling == "sq" || spelling == "square") {
      next_power = 2;
      continue;
    }
    if (spelling == "cu" || spelling == "cubic") {
      next_power = 3;
      continue;
    }
    const Symbol* symbol = unit_symbols::find_symbol(spelling);
    if (symbol == nullptr) {
      const std::string_view why = unit_symbols::ambiguity(spelling);
      if (!why.empty()) return refusal(text, unit, say("is not clear: {} {}", spelling, in_language(why)));
      return refusal(text, unit, say("has an unknown unit {}", in_quotes(spelling)));
    }
    int power = next_power;
    next_power = 1;
    if (scanner.peek() == '^') scanner.take();
    if (scanner.peek() == '2' || scanner.peek() == '3') power *= scanner.take() - '0';
    if (reading.symbols >= 6 || power > 3) return refusal(text, unit, say("has a unit too long to be one"));
    include(reading, *symbol, side * power);
    if (scanner.peek() == '.' && !is_digit(scanner.peek(1))) scanner.take();  // "in."
  }
  if (reading.symbols != 1) reading.scale = TemperatureScale::none;
  return reading;
}

double absolute_celsius(double value, TemperatureScale scale) {
  if (scale == TemperatureScale::fahrenheit) return (value - 32.0) * 5.0 / 9.0;
  if (scale == TemperatureScale::kelvin) return value - k_kelvin_at_zero_celsius;
  return value;
}

Result<double> temperature(double value, const UnitReading& reading, std::string_view text, Unit unit) {
  if (reading.scale == TemperatureScale::none)
    return refusal(text, unit, say("is a difference of temperatures where a temperature is asked"));
  const double celsius = absolute_celsius(value, reading.scale);
  if (celsius < -k_kelvin_at_zero_celsius) return refusal(text, unit, say("lies below absolute zero"));
  if (unit == Unit::celsius) return celsius;
  return reading.scale == TemperatureScale::kelvin ? value : celsius + k_kelvin_at_zero_celsius;
}

/// Words for a unit of the wrong dimension; the commonest mistakes get their own.
std::string wrong_dimension(const UnitReading& reading, Unit unit) {
  const auto& wanted = unit_symbols::unit_facts(unit);
  constexpr Dimension length{1, 0, 0, 0, 0};
  constexpr Dimension time{0, 1, 0, 0, 0};
  if (reading.dimension == length && wanted.dimension == time)
    return say("is a length where a time is asked (m is metres; minutes are min)");
  const std::string name = wanted.name.empty() ? say("a number without a unit") : in_language(wanted.name);
  return say("has a unit of another kind; the value is wanted in {}", name);
}

}  // namespace

std::string_view unit_name(Unit unit) {
  return unit_symbols::unit_facts(unit).name;
}

std::string_view unit_sign(Unit unit) {
  return unit_symbols::unit_facts(unit).sign;
}

std::vector<std::string> accepted_spellings(Unit unit) {
  const auto& spellings = unit_symbols::unit_facts(unit).spellings;
  return {spellings.begin(), spellings.end()};
}

Result<double> parse_quantity(std::string_view text, Unit unit) {
  if (text.size() > k_longest_text)
    return refusal(text.substr(0, k_longest_text), unit, say("and so on is too long to be a quantity"));
  const std::string ascii = plain(text);
  Scanner scanner(ascii);
  scanner.skip_spaces();
  if (scanner.at_end()) return refusal(text, unit, say("is empty"));
  const std::optional<double> number = read_number(scanner);
  if (!number) return refusal(text, unit, say("does not begin with a number"));
  if (!std::isfinite(*number)) return refusal(text, unit, say("has a number that cannot be used"));

  const Result<UnitReading> reading = read_unit(scanner, text, unit);
  if (!reading) return refuse(reading.error());
  const auto& wanted = unit_symbols::unit_facts(unit);
  if (reading->symbols == 0) {
    if (unit == Unit::none || unit == Unit::fraction) return *number;
    return refusal(text, unit, say("has no unit"));
  }
  if (unit == Unit::none || reading->dimension != wanted.dimension)
    return refusal(text, unit, wrong_dimension(*reading, unit));
  if (unit == Unit::celsius || unit == Unit::kelvin) return temperature(*number, *reading, text, unit);
  if (unit == Unit::kelvin_difference &&
      (reading->scale == TemperatureScale::celsius || reading->scale == TemperatureScale::fahrenheit))
    return refusal(text, unit,
                   say("can be a temperature or a difference of temperatures, and a difference is asked"));

  const double value = *number * (reading->factor.numerator * wanted.factor.denominator) /
                       (reading->factor.denominator * wanted.factor.numerator);
  if (!std::isfinite(value)) return refusal(text, unit, say("has a number that cannot be used"));
  return value;
}

}  // namespace lastegg
