#include "job/record/kinds.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <set>
#include <string>

#include "job/record/events_for_tests.h"

using namespace lastegg;
using namespace lastegg::record;

namespace {

std::optional<Error> fault_in(const char* kind, const std::string& data) {
  const Json parsed = Json::parse(data, nullptr, false);
  EXPECT_TRUE(parsed.is_object()) << data;
  return fault_of(*rule_of(kind), parsed);
}

const std::string k_test = "\"fold_test\":\"" + id_number(1) + "\"";

}  // namespace

// A kind once written into a record stays readable for ever.
TEST(Kinds, OnceKnownStayKnown) {
  for (const char* known : {"job/1",        "dwelling/1",    "room/1",
                            "item/1",       "machine/1",     "head/1",
                            "towel/1",      "probe/1",       "fold_test/1",
                            "reading/1",    "settings/1",    "removed/1",
                            "arrival/1",    "evidence/1",    "trap/1",
                            "trap_check/1", "edge/1",        "damage/1",
                            "photo/1",      "risk/1",        "prior_treatment/1",
                            "consent/1",    "vacuum/1",      "dryer/1",
                            "circuit/1",    "weighing/1",    "probe_check/1",
                            "jet_check/1",  "start_check/1", "visit/1",
                            "rates/1",      "method/1",      "edge_order/1",
                            "stroke/1",     "edge_mark/1",   "spot_reading/1",
                            "redo_note/1",  "issued/1"})
    EXPECT_NE(rule_of(known), nullptr) << known;
  EXPECT_EQ(rule_of("reading/2"), nullptr);
  EXPECT_EQ(rule_of("reading"), nullptr);
}

TEST(Kinds, AreNamedOnceAndListedOnce) {
  std::set<std::string_view> names, lists;
  for (const KindRule& rule : kind_rules()) {
    EXPECT_TRUE(names.insert(rule.kind).second) << rule.kind;
    if (rule.list.empty()) continue;
    EXPECT_TRUE(lists.insert(rule.list).second) << rule.list;
  }
}

TEST(Kinds, EntriesOfAListAreJudgedOneByOne) {
  const std::string begin =
      "{\"item\":\"" + id_number(1) + R"(","edge":"front_welt","length_metres":0.6,"seconds":40,"marks":[)";
  EXPECT_FALSE(
      fault_in("stroke/1", begin + R"({"at_metres":0,"seconds":0},{"at_metres":0.6,"seconds":40}]})"));
  const auto late = fault_in("stroke/1", begin + R"({"at_metres":0,"seconds":0},{"at_metres":0.6}]})");
  ASSERT_TRUE(late.has_value());
  EXPECT_EQ(late->where, "/data/marks/1/seconds");
  const auto far = fault_in("stroke/1", begin + R"({"at_metres":-1,"seconds":0}]})");
  ASSERT_TRUE(far.has_value());
  EXPECT_EQ(far->where, "/data/marks/0/at_metres");
  EXPECT_EQ(far->limit, "0");
  EXPECT_EQ(far->unit, "m");
}

TEST(Kinds, AcceptSoundData) {
  EXPECT_FALSE(fault_in("job/1", R"({"title":"Demo","opened_on":"2028-02-29","elevation_metres":-430})"));
  EXPECT_FALSE(fault_in(
      "item/1", R"({"title":"Sofa","kind":"sofa","seats":3,"covering":"cotton","of_the_future":{}})"));
  EXPECT_FALSE(fault_in("reading/1",
                        "{" + k_test + R"(,"pace_metres_per_second":0.025,"layers":2,"peak_celsius":46})"));
  EXPECT_FALSE(fault_in(
      "reading/1",
      "{" + k_test + R"(,"distance_metres":0.3,"seconds":12,"layers":["terry"],"peak_celsius":46})"));
  EXPECT_FALSE(fault_in("removed/1", "{}"));
  EXPECT_FALSE(fault_in("towel/1", R"({"title":"Terry","use":"wrapped","thickness_metres":null})"));
}

TEST(Kinds, AFoldTestKeepsItsDayAndWhereItWasMade) {
  EXPECT_FALSE(fault_in("fold_test/1",
                        R"({"title":"Wide head","on":"2026-03-02","taken_from":")" + id_number(7) + "\"}"));
  EXPECT_EQ(fault_in("fold_test/1", R"({"title":"Wide head","on":"in March"})")->where, "/data/on");
  EXPECT_EQ(fault_in("fold_test/1", R"({"title":"Wide head","taken_from":"Elm Street"})")->where,
            "/data/taken_from");
  EXPECT_FALSE(fault_in("machine/1", R"({"title":"Kettle","serviced_on":"2026-02-28"})"));
  EXPECT_EQ(fault_in("settings/1", R"({"fold_test_days":0})")->limit, "1");
}

TEST(Kinds, NameValueLimitUnitAndPlace) {
  const auto hot = fault_in(
      "reading/1", "{" + k_test + R"(,"pace_metres_per_second":0.025,"layers":2,"peak_celsius":160})");
  ASSERT_TRUE(hot.has_value());
  EXPECT_EQ(hot->where, "/data/peak_celsius");
  EXPECT_EQ(hot->value, "160");
  EXPECT_EQ(hot->limit, "150");
  EXPECT_EQ(hot->unit, "C");
  EXPECT_EQ(hot->message, "peak_celsius is 160 C; it must be at most 150 C");

  const auto still =
      fault_in("reading/1", "{" + k_test + R"(,"pace_metres_per_second":0,"layers":2,"peak_celsius":60})");
  ASSERT_TRUE(still.has_value());
  EXPECT_EQ(still->message, "pace_metres_per_second is 0 m/s; it must be above 0 m/s");

  const auto wall = fault_in(
      "room/1",
      R"({"title":"Hall","outline":{"x_metres":0,"y_metres":0,"width_metres":-2,"depth_metres":1}})");
  ASSERT_TRUE(wall.has_value());
  EXPECT_EQ(wall->where, "/data/outline/width_metres");
}

TEST(Kinds, RefuseWhatCannotBeUsed) {
  struct Case {
    const char* kind;
    std::string data;
    const char* where;
  };
  const std::string reading = "{" + k_test + R"(,"peak_celsius":60)";
  for (const Case& one :
       {Case{"job/1", "{}", "/data/title"},
        Case{"job/1", R"({"title":5})", "/data/title"},
        Case{"job/1", R"({"title":null})", "/data/title"},
        Case{"job/1", R"({"title":"x","opened_on":"2027-02-29"})", "/data/opened_on"},
        Case{"job/1", R"({"title":"x","opened_on":"02/03/2026"})", "/data/opened_on"},
        Case{"room/1", R"({"title":"x","dwelling":"home"})", "/data/dwelling"},
        Case{"room/1", R"({"title":"x","outline":[0,0,1,1]})", "/data/outline"},
        Case{"room/1", R"({"title":"x","outline":{"x_metres":0}})", "/data/outline/y_metres"},
        Case{"item/1", R"({"title":"x","kind":"sofa"})", "/data/covering"},
        Case{"item/1", R"({"title":"x","kind":"sofa","covering":"cotton","seats":2.5})", "/data/seats"},
        Case{"head/1", R"({"title":"x","length_metres":"0.1"})", "/data/length_metres"},
        Case{"towel/1", R"({"title":"x","use":"folded"})", "/data/use"},
        Case{"towel/1", R"({"title":"x","use":1})", "/data/use"},
        Case{"probe/1", R"({"title":"x","time_constant_seconds":0})", "/data/time_constant_seconds"},
        Case{"removed/1", R"({"removed":"yes"})", "/data/removed"},
        Case{"reading/1", reading + R"(,"layers":1})", "/data"},
        Case{"reading/1", "{" + k_test + R"(,"layers":1,"pace_metres_per_second":0.02})", "/data"},
        Case{"reading/1", "{" + k_test + R"(,"layers":1,"hold_seconds":60,"palm":"warm"})", "/data"},
        Case{"reading/1", "{" + k_test + R"(,"layers":1,"pace_metres_per_second":0.02,"palm":"damp"})",
             "/data/palm"},
        Case{"reading/1", reading + R"(,"layers":1,"distance_metres":1})", "/data"},
        Case{"reading/1", reading + R"(,"layers":0,"pace_metres_per_second":0.02})", "/data/layers"},
        Case{"reading/1", reading + R"(,"layers":13,"pace_metres_per_second":0.02})", "/data/layers"},
        Case{"reading/1", reading + R"(,"layers":[],"pace_metres_per_second":0.02})", "/data/layers"}}) {
    const auto fault = fault_in(one.kind, one.data);
    ASSERT_TRUE(fault.has_value()) << one.kind << " " << one.data;
    EXPECT_EQ(fault->kind, ErrorKind::bad_input);
    EXPECT_EQ(fault->where, one.where) << one.data;
  }
}

// docs/record.md has a section for every kind, and names every key in it.
TEST(Kinds, AreAllOnTheirPage) {
  std::ifstream file(LASTEGG_SOURCE_DIR "/docs/record.md");
  const std::string page((std::istreambuf_iterator<char>(file)), std::istreambuf_iterator<char>());
  ASSERT_FALSE(page.empty());
  for (const KindRule& rule : kind_rules()) {
    const std::string head = "\n### **" + std::string(rule.kind) + "**\n";
    const std::size_t from = page.find(head);
    ASSERT_NE(from, std::string::npos) << rule.kind;
    const std::size_t to = page.find("\n## ", from + 1);
    const std::string section = page.substr(from, std::min(page.find("\n### ", from + 1), to) - from);
    const auto expect_key = [&](const DataField& field) {
      if (field.key == "note" || field.key == "invented") return;  // of every kind, above the sections
      const std::string code = "`" + std::string(field.key) + "`";
      EXPECT_NE(section.find(field.is_required ? "**" + code + "**" : code), std::string::npos)
          << rule.kind << " " << field.key;
    };
    for (const DataField& field : rule.fields) {
      expect_key(field);
      for (const DataField& inner : field.fields) expect_key(inner);
    }
  }
}
