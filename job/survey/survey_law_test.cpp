// Shares add up, looks without a find only lower, finds only raise, and the order of facts does not matter.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "job/survey/looks.h"
#include "job/survey/prior.h"
#include "job/survey/survey.h"

namespace lastegg::survey {
namespace {

Survey any_survey() {
  Survey survey;
  survey.rooms = *rc::gen::inRange<std::size_t>(1, 4);
  const auto count = *rc::gen::inRange<std::size_t>(1, 9);
  for (std::size_t i = 0; i < count; ++i) {
    Item item;
    item.kind = *rc::gen::element<std::string>("mattress", "box_spring", "headboard_wood", "sofa", "armchair",
                                               "dresser", "night_table", "baseboard");
    item.room = *rc::gen::inRange<std::size_t>(0, survey.rooms);
    item.sleeps_here = *rc::gen::inRange(0, 4) == 0;
    item.edges = *rc::gen::inRange<std::size_t>(0, 30);
    if (*rc::gen::arbitrary<bool>()) {
      item.x_metres = *rc::gen::inRange(0, 400) / 100.0;
      item.y_metres = *rc::gen::inRange(0, 400) / 100.0;
    }
    survey.items.push_back(item);
  }
  const auto findings = *rc::gen::inRange<std::size_t>(0, 12);
  for (std::size_t i = 0; i < findings; ++i) {
    Finding finding;
    finding.item = *rc::gen::inRange<std::size_t>(0, count);
    if (*rc::gen::arbitrary<bool>()) finding.edge = *rc::gen::element<std::string>("a", "b", "c");
    finding.look = *rc::gen::element(Look::found, Look::none_seen, Look::not_accessible);
    finding.how = *rc::gen::element(How::eye, How::light_and_card, How::opened, How::trap, How::told);
    if (finding.look == Look::found) {
      finding.adults = *rc::gen::inRange(0, 6);
      finding.nymphs = *rc::gen::inRange(0, 6);
      finding.eggs = *rc::gen::inRange(0, 6);
      finding.spots = *rc::gen::arbitrary<bool>();
    }
    if (*rc::gen::arbitrary<bool>()) finding.certain = *rc::gen::arbitrary<bool>();
    survey.findings.push_back(finding);
  }
  survey.treated_before = *rc::gen::arbitrary<bool>();
  return survey;
}

RC_GTEST_PROP(SurveyLaw, SharesAddUpAndLieBetweenNoneAndAll, ()) {
  const Survey survey = any_survey();
  const Outcome outcome = judge(survey);
  double now = outcome.unlisted_share, before = prior(survey.items).unlisted;
  for (const ItemJudged& item : outcome.items) {
    now += item.share;
    before += item.prior_share;
    RC_ASSERT(item.share >= 0 && item.share <= 1 + 1e-12);
    RC_ASSERT(item.share_sd >= 0 && item.share_sd <= 0.5);  // no share in [0, 1] spreads wider
    RC_ASSERT(item.covered >= 0 && item.covered <= 1);
    RC_ASSERT(item.missed_share <= item.share);
  }
  RC_ASSERT(std::abs(now - 1) < 1e-9);
  RC_ASSERT(std::abs(before - 1) < 1e-9);
}

RC_GTEST_PROP(SurveyLaw, BeforeAnyLookTheSharesAreThePrior, ()) {
  Survey survey = any_survey();
  survey.findings.clear();
  const Outcome outcome = judge(survey);
  for (const ItemJudged& item : outcome.items) {
    RC_ASSERT(std::abs(item.share - item.prior_share) < 1e-12);
    RC_ASSERT(item.level == Level::not_looked);
  }
  RC_ASSERT(outcome.home.level == Level::not_looked);
  RC_ASSERT(outcome.count_is_least);
}

RC_GTEST_PROP(SurveyLaw, TheOrderOfFactsDoesNotMatter, ()) {
  const Survey survey = any_survey();
  Survey turned = survey;
  std::reverse(turned.findings.begin(), turned.findings.end());
  const Outcome one = judge(survey), other = judge(turned);
  RC_ASSERT(one.home.level == other.home.level);
  RC_ASSERT(one.home.live == other.home.live);
  for (std::size_t i = 0; i < one.items.size(); ++i) {
    RC_ASSERT(one.items[i].level == other.items[i].level);
    RC_ASSERT(std::abs(one.items[i].share - other.items[i].share) < 1e-12);
    RC_ASSERT(one.items[i].rank == other.items[i].rank);
    RC_ASSERT(one.items[i].reached == other.items[i].reached);
  }
}

RC_GTEST_PROP(SurveyLaw, AFindNeverLowersALevelNorACount, ()) {
  Survey survey = any_survey();
  const Outcome before = judge(survey);
  Finding more;
  more.item = *rc::gen::inRange<std::size_t>(0, survey.items.size());
  more.adults = *rc::gen::inRange(1, 20);
  more.edge = "new";
  more.certain = true;
  survey.findings.push_back(more);
  const Outcome after = judge(survey);
  RC_ASSERT(after.home.level == Level::confirmed);
  RC_ASSERT(after.items[*more.item].level == Level::confirmed);
  RC_ASSERT(after.home.live == before.home.live + more.adults);
  for (std::size_t i = 0; i < after.items.size(); ++i)
    RC_ASSERT(after.items[i].level >= before.items[i].level);
}

RC_GTEST_PROP(SurveyLaw, LookingWithoutAFindLowersTheShareButNotToNothing, ()) {
  Survey survey = any_survey();
  survey.findings.clear();
  if (survey.items.size() < 2) return;
  const Outcome before = judge(survey);
  Finding look;
  look.item = *rc::gen::inRange<std::size_t>(0, survey.items.size());
  look.look = Look::none_seen;
  look.how = *rc::gen::element(How::eye, How::light_and_card, How::opened);
  survey.findings.push_back(look);
  const Outcome after = judge(survey);
  RC_ASSERT(after.items[*look.item].share < before.items[*look.item].share);
  RC_ASSERT(after.items[*look.item].share > 0);
  // Who looks again in the same way learns nothing new.
  survey.findings.push_back(look);
  RC_ASSERT(std::abs(judge(survey).items[*look.item].share - after.items[*look.item].share) < 1e-12);
}

RC_GTEST_PROP(SurveyLaw, RanksAreAPermutationAndFollowWhatMayBeMissed, ()) {
  const Outcome outcome = judge(any_survey());
  std::vector<std::size_t> ranks;
  for (const ItemJudged& item : outcome.items) ranks.push_back(item.rank);
  std::sort(ranks.begin(), ranks.end());
  for (std::size_t r = 0; r < ranks.size(); ++r) RC_ASSERT(ranks[r] == r + 1);
  for (const ItemJudged& a : outcome.items)
    for (const ItemJudged& b : outcome.items)
      if (a.rank < b.rank && (a.why == Why::live) == (b.why == Why::live))
        RC_ASSERT(a.missed_share >= b.missed_share);
}

}  // namespace
}  // namespace lastegg::survey
