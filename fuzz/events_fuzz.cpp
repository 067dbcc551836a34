// Feeds the record: every line of the input is taken for an event. Whatever comes in, nothing may crash or be
// thrown, the bytes must come out unchanged, and the order of the lines must not matter.
#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>
#include <vector>

#include "job/record/fold.h"

namespace {

using namespace lastegg::record;

[[noreturn]] void fail(const char* what) {
  std::fprintf(stderr, "%s\n", what);
  std::abort();
}

// Defined without exceptions: a throw below ends the program.
void check(std::string_view text) noexcept {
  std::vector<std::string> lines;
  for_each_line(text, [&](std::string_view line, std::size_t) { lines.emplace_back(line); });
  EventSet forwards, backwards, again;
  std::vector<std::string> taken;
  for (const std::string& line : lines)
    if (forwards.add(line)) taken.push_back(line);
  std::reverse(lines.begin(), lines.end());
  for (const std::string& line : lines) static_cast<void>(backwards.add(line));
  for_each_line(forwards.ndjson(),
                [&](std::string_view line, std::size_t) { static_cast<void>(again.add(line)); });
  std::sort(taken.begin(), taken.end());
  taken.erase(std::unique(taken.begin(), taken.end()), taken.end());
  if (forwards.size() != taken.size()) fail("an event is lost or made up");
  for (const Event& event : forwards.events())
    if (!std::binary_search(taken.begin(), taken.end(), event.bytes))
      fail("the bytes of an event were changed");
  if (forwards.state_hash() != backwards.state_hash()) fail("the order of the lines changes the hash");
  if (forwards.state_hash() != again.state_hash()) fail("the record read back is another");
  const Folded one = fold(forwards), other = fold(backwards);
  if (one.conflicts.size() != other.conflicts.size() || one.refused.size() != other.refused.size() ||
      one.state.list("rooms").size() != other.state.list("rooms").size())
    fail("the order of the lines changes the state");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  check({reinterpret_cast<const char*>(bytes), size});
  return 0;
}
