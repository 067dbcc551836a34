// The laws that make two devices agree: whatever the order, however often repeated, however split over
// devices and merged again, the same events give the same job and the same hash. And a second, slow way to
// say which statements stand.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

#include "job/record/events_for_tests.h"
#include "job/record/kinds.h"
#include "job/record/law_for_tests.h"

using namespace lastegg::record;

namespace {

// Many records small enough to read when one fails: few ids and subjects, so that corrections meet, form
// chains and circles, name what is not there, cross subjects, and ids are used twice.
std::string any_line() {
  const auto number = [](unsigned from, unsigned to) { return *rc::gen::inRange(from, to); };
  const unsigned id = number(1, 40);
  const unsigned corrects = number(0, 2) == 0 ? 0 : number(1, 44);
  const unsigned subject = number(100, 106);
  switch (number(0, 10)) {
    case 0:
      return line_of(id, "removed/1", subject,
                     *rc::gen::element("{}", R"({"removed":false})", R"({"removed":true})"), corrects);
    case 1:
      return line_of(id, "job/1", subject, R"({"title":"j"})", corrects);
    case 2:
      return line_of(id, *rc::gen::element("room/2", "smell/1"), subject, R"({"a":1.0})", corrects);
    case 3:
      return line_of(id, "room/1", subject, R"({"title":0})", corrects);
    case 4:
      return line_of(id, "fold_test/1", subject, R"({"title":"t"})", corrects);
    case 5:
    case 6:
      return reading_line(id, number(200, 204), subject, *rc::gen::element(20, 71, 400), corrects);
    default:
      return room_line(id, subject, *rc::gen::element("a", "b", "c"), corrects);
  }
}

std::vector<std::string> any_lines() {
  std::vector<std::string> lines(static_cast<std::size_t>(*rc::gen::inRange(0, 60)));
  for (std::string& line : lines) line = any_line();
  return lines;
}

// The slow way: an event stands unless a sound one reaches it by following what corrects what, step by step.
std::set<std::string> standing_bytes_slowly(const EventSet& set) {
  const std::vector<Event> events(set.events().begin(), set.events().end());
  const auto count_of = [&](const std::string& id) {
    return std::count_if(events.begin(), events.end(), [&](const Event& event) { return event.id == id; });
  };
  const auto target_of = [&](const Event& event) -> const Event* {
    if (count_of(event.id) > 1 || !event.corrects) return nullptr;
    for (const Event& other : events)
      if (other.id == *event.corrects) return &other;
    return nullptr;
  };
  const auto crosses = [&](const Event& event) {
    const Event* target = target_of(event);
    return target != nullptr && count_of(target->id) == 1 &&
           (target->subject != event.subject || family_of(target->kind) != family_of(event.kind));
  };
  const auto below = [&](const Event& event) { return crosses(event) ? nullptr : target_of(event); };
  const auto in_circle = [&](const Event& event) {
    const Event* at = &event;
    for (std::size_t step = 0; step <= events.size() && at != nullptr; ++step) {
      at = below(*at);
      if (at == &event) return true;
    }
    return false;
  };
  const auto is_sound = [&](const Event& event) {
    const KindRule* rule = rule_of(event.kind);
    return count_of(event.id) == 1 && !crosses(event) && !in_circle(event) &&
           (rule == nullptr || !fault_of(*rule, event.data));
  };
  std::set<std::string> standing;
  for (const Event& event : events) {
    bool stands = is_sound(event);
    for (const Event& winner : events) {
      if (!is_sound(winner)) continue;
      const Event* at = below(winner);
      for (std::size_t step = 0; step <= events.size() && at != nullptr; ++step) {
        if (at == &event) stands = false;
        at = in_circle(*at) ? nullptr : below(*at);
      }
    }
    if (stands) standing.insert(event.bytes);
  }
  return standing;
}

}  // namespace

TEST(FoldLaw, AnyOrderRepetitionSplitAndMergeGiveTheSameJob) {
  expect_law("any schedule of the same events gives the same state and hash", [] {
    const std::vector<std::string> lines = any_lines();
    const std::string expected = text_of(fold(set_of(lines)));

    // Every line goes to one to five places of three to five devices, in an order of its own.
    std::vector<EventSet> devices(static_cast<std::size_t>(*rc::gen::inRange(3, 6)));
    std::vector<std::pair<std::uint64_t, std::pair<std::size_t, std::size_t>>> deliveries;
    for (std::size_t i = 0; i < lines.size(); ++i) {
      for (int copies = *rc::gen::inRange(1, 6); copies > 0; --copies)
        deliveries.push_back(
            {*rc::gen::arbitrary<std::uint64_t>(), {i, *rc::gen::inRange<std::size_t>(0, devices.size())}});
    }
    std::sort(deliveries.begin(), deliveries.end());
    std::size_t delivered = 0;
    for (const auto& [order, delivery] : deliveries) {
      RC_ASSERT(devices[delivery.second].add(lines[delivery.first]).has_value());
      // Some devices meet on the way.
      if (++delivered % 7 == 0)
        devices[delivered % devices.size()].merge(devices[(delivered / 7) % devices.size()]);
    }
    // Then all meet, pair by pair, in any order; some through their text.
    while (devices.size() > 1) {
      const auto from = *rc::gen::inRange<std::size_t>(0, devices.size());
      const EventSet leaving = devices[from];
      devices.erase(devices.begin() + static_cast<std::ptrdiff_t>(from));
      EventSet& into = devices[*rc::gen::inRange<std::size_t>(0, devices.size())];
      if (*rc::gen::arbitrary<bool>())
        into.merge(leaving);
      else
        for_each_line(leaving.ndjson(),
                      [&](std::string_view line, std::size_t) { RC_ASSERT(into.add(line).has_value()); });
    }
    RC_ASSERT(text_of(fold(devices[0])) == expected);
  });
}

TEST(FoldLaw, NoEventIsLostOrChanged) {
  expect_law("the record holds every line that was added, and no other", [] {
    const std::vector<std::string> lines = any_lines();
    const EventSet set = set_of(lines);
    std::set<std::string> kept;
    for (const Event& event : set.events()) kept.insert(event.bytes);
    RC_ASSERT(kept == std::set<std::string>(lines.begin(), lines.end()));
  });
}

TEST(FoldLaw, EveryEventIsAccountedFor) {
  expect_law("every event is accounted for: standing, beaten or refused", [] {
    const EventSet set = set_of(any_lines());
    const Standing standing = standing_of(set);
    RC_ASSERT(standing.statements.size() + standing.refused.size() <= set.size());
    std::set<std::string> named;
    for (const Event& event : set.events())
      if (event.corrects) named.insert(*event.corrects);
    std::set<std::string> seen;
    for (const Event* event : standing.statements) seen.insert(event->id);
    for (const Refused& refused : standing.refused) seen.insert(refused.id);
    // Whatever is neither standing nor refused must be named by another event.
    for (const Event& event : set.events()) RC_ASSERT(seen.contains(event.id) || named.contains(event.id));
  });
}

TEST(FoldAgreement, StandingStatementsAreThoseOfTheSlowWay) {
  expect_law("the slow and the fast way agree on what stands", [] {
    const EventSet set = set_of(any_lines());
    std::set<std::string> standing;
    for (const Event* event : standing_of(set).statements) standing.insert(event->bytes);
    RC_ASSERT(standing == standing_bytes_slowly(set));
  });
}
