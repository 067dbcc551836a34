#include "job/record/standing.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "job/record/events_for_tests.h"

using namespace lastegg::record;

namespace {

// Numbers of the events that stand, and of those refused ("!": settled), for every order of the lines.
void expect_standing(std::vector<std::string> lines, const std::string& stand, const std::string& refused) {
  std::sort(lines.begin(), lines.end());
  do {
    const EventSet set = set_of(lines);
    ASSERT_EQ(set.size(), lines.size());
    const Standing standing = standing_of(set);
    std::string standing_text, refused_text;
    const auto number = [](const std::string& id) {
      return std::to_string(std::stoul(id.substr(24), nullptr, 16));
    };
    for (const Event* event : standing.statements) standing_text += number(event->id) + " ";
    for (const Refused& one : standing.refused) refused_text += number(one.id) + (one.settled ? "! " : " ");
    ASSERT_EQ(standing_text, stand);
    ASSERT_EQ(refused_text, refused);
  } while (std::next_permutation(lines.begin(), lines.end()));
}

std::string bad_room(unsigned id, unsigned subject, unsigned corrects = 0) {
  return line_of(id, "room/1", subject, R"({"title":7})", corrects);
}

}  // namespace

TEST(Standing, CorrectionBeatsWhatItNames) {
  expect_standing({room_line(1, 100, "a"), room_line(2, 100, "b", 1)}, "2 ", "");
}

TEST(Standing, IdsAndTimesDecideNothing) {
  expect_standing({room_line(9, 100, "a"), room_line(2, 100, "b", 9)}, "2 ", "");
}

TEST(Standing, ChainsEndInTheirLastCorrection) {
  expect_standing({room_line(1, 100, "a"), room_line(2, 100, "b", 1), room_line(3, 100, "c", 2),
                   room_line(4, 100, "d", 3)},
                  "4 ", "");
}

TEST(Standing, CorrectionThatComesFirstStandsAlone) {
  expect_standing({room_line(2, 100, "b", 1)}, "2 ", "");
  expect_standing({room_line(3, 100, "c", 2), room_line(1, 100, "a")}, "1 3 ", "");
}

TEST(Standing, RivalCorrectionsBothStand) {
  expect_standing({room_line(1, 100, "a"), room_line(2, 100, "b", 1), room_line(3, 100, "c", 1)}, "2 3 ", "");
  expect_standing({room_line(1, 100, "a"), room_line(2, 100, "b", 1), room_line(3, 100, "c", 1),
                   room_line(4, 100, "d", 3)},
                  "2 4 ", "");
}

TEST(Standing, SharedIdCountsForNeither) {
  expect_standing({room_line(1, 100, "a"), room_line(1, 100, "b")}, "", "1 1 ");
  // What they would correct is left alone.
  expect_standing({room_line(5, 100, "x"), room_line(1, 100, "a", 5), room_line(1, 100, "b", 5)}, "5 ",
                  "1 1 ");
  // A correction that names the id settles it.
  expect_standing({room_line(1, 100, "a"), room_line(1, 100, "b"), room_line(2, 100, "c", 1)}, "2 ",
                  "1! 1! ");
}

TEST(Standing, CorrectionOfAnotherSubjectOrFamilyIsRefused) {
  expect_standing({room_line(1, 100, "a"), room_line(2, 101, "b", 1)}, "1 ", "2 ");
  expect_standing({room_line(1, 100, "a"), line_of(2, "job/1", 100, R"({"title":"b"})", 1)}, "1 ", "2 ");
}

TEST(Standing, NewerVersionOfTheKindMayCorrect) {
  expect_standing({room_line(1, 100, "a"), line_of(2, "room/2", 100, R"({"other":1})", 1)}, "2 ", "");
}

TEST(Standing, CircleIsRefusedAndCanBeSettled) {
  expect_standing({room_line(1, 100, "a", 1)}, "", "1 ");
  expect_standing({room_line(1, 100, "a", 2), room_line(2, 100, "b", 1)}, "", "1 2 ");
  expect_standing({room_line(1, 100, "a", 3), room_line(2, 100, "b", 1), room_line(3, 100, "c", 2),
                   room_line(4, 100, "d", 3)},
                  "4 ", "1 2 3! ");
}

TEST(Standing, DataThatCannotBeUsedBeatsNothing) {
  expect_standing({room_line(1, 100, "a"), bad_room(2, 100, 1)}, "1 ", "2 ");
  // A sound correction of it reaches what lies below.
  expect_standing({room_line(1, 100, "a"), bad_room(2, 100, 1), room_line(3, 100, "c", 2)}, "3 ", "2! ");
  expect_standing({bad_room(1, 100), room_line(2, 100, "b", 1)}, "2 ", "1! ");
}
