#include "job/survey/survey.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <set>
#include <utility>

#include "job/priority/where_bugs_sit.h"
#include "job/survey/looks.h"
#include "job/survey/prior.h"

namespace lastegg::survey {
namespace {

bool live(const Finding& finding) {
  return finding.adults + finding.nymphs + finding.eggs > 0;
}

bool signs(const Finding& finding) {
  return finding.cast_skins > 0 || finding.spots || finding.dead;
}

Level level_of(const Catch& caught) {
  if (caught.adults + caught.nymphs == 0) return Level::none;
  if (!caught.certain) return Level::probable;
  return *caught.certain ? Level::confirmed : Level::suspected;
}

/// A place: item or none, room or none, edge. One place counts once, with the highest number seen there.
using Place = std::pair<std::pair<std::optional<std::size_t>, std::optional<std::size_t>>, std::string>;

Place place_of(const Finding& finding) {
  return {{finding.item, finding.item ? std::nullopt : finding.room}, finding.edge};
}

/// Counts of bugs that may be bed bugs, place by place.
std::map<Place, Judged> counted(const Survey& survey) {
  std::map<Place, Judged> places;
  for (const Finding& finding : survey.findings) {
    if (finding.look != Look::found || finding.certain == false || finding.how == How::told) continue;
    Judged& place = places[place_of(finding)];
    place.live = std::max(place.live, finding.adults + finding.nymphs);
    place.eggs = std::max(place.eggs, finding.eggs);
  }
  return places;
}

void raise(Judged& place, Level level) {
  place.level = std::max(place.level, level);
}

struct Looked {
  double missed = 1;  ///< chance that bugs there were missed
  std::set<std::string> edges;
  How best = How::told;
  bool any = false, whole = false, signs = false, trap = false, unsure = false;
};

double share_looked_at(const Finding& finding, const Item& item) {
  if (finding.edge.empty()) return 1;
  return item.edges > 0 ? 1.0 / static_cast<double>(item.edges) : looks().edge_share;
}

bool better(How a, How b) {
  const auto finds = [](How how) { return looks().finds[static_cast<std::size_t>(how)]; };
  return finds(a) > finds(b);
}

/// What the looks at one item covered. The best look at a place counts, not their number: who missed a bug by
/// eye misses it by eye again.
Looked looked_at(const Survey& survey, std::size_t index) {
  Looked out;
  std::map<std::string, double> found_by_edge;
  double whole = 0;
  for (const Finding& finding : survey.findings) {
    if (finding.item != index || finding.look == Look::not_accessible) continue;
    const double finds = looks().finds[static_cast<std::size_t>(finding.how)];
    if (finding.how != How::told) out.any = true;
    if (finding.look == Look::found && signs(finding)) out.signs = true;
    if (finding.look == Look::found && finding.certain == false) out.unsure = true;
    if (better(finding.how, out.best)) out.best = finding.how;
    if (finding.edge.empty()) {
      whole = std::max(whole, finds);
      out.whole = out.whole || finds > 0;
    } else {
      auto& edge = found_by_edge[finding.edge];
      edge = std::max(edge, finds * share_looked_at(finding, survey.items[index]));
      if (finds > 0) out.edges.insert(finding.edge);
    }
  }
  for (const Catch& caught : survey.catches)
    if (caught.item == index && caught.adults + caught.nymphs > 0 && caught.certain != false) out.trap = true;
  double edges = 0;
  for (const auto& [name, share] : found_by_edge) edges += share;
  out.missed = 1 - std::min(1.0, std::max(whole, edges));
  return out;
}

Why why_of(const ItemJudged& item, const Looked& looked) {
  if (looked.unsure) return Why::unsure;
  if (item.live > 0 || item.eggs > 0) return Why::live;
  if (!item.reached) return Why::not_accessible;
  if (looked.signs) return Why::signs;
  if (looked.trap) return Why::trap;
  if (!looked.any) return Why::not_looked;
  if (!looked.whole) return Why::part;
  return Why::by_eye;
}

How how_next(const Looked& looked) {
  return better(How::light_and_card, looked.best) ? How::light_and_card : How::opened;
}

/// Where live bugs are known the item is treated whole anyway: looking on there comes last.
void rank(std::vector<ItemJudged>& items) {
  std::vector<std::size_t> order(items.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  const auto sooner = [](const ItemJudged& a, const ItemJudged& b) {
    if ((a.why == Why::live) != (b.why == Why::live)) return b.why == Why::live;
    return a.missed_share > b.missed_share;
  };
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return sooner(items[a], items[b]); });
  for (std::size_t r = 0; r < order.size(); ++r) items[order[r]].rank = r + 1;
}

/// Parts of one bed touch and are one unit; every other item is one of its own.
std::vector<std::size_t> units(const std::vector<Item>& items) {
  std::map<std::optional<std::size_t>, std::size_t> bed_of_room;
  std::vector<std::size_t> unit(items.size());
  for (std::size_t i = 0; i < items.size(); ++i)
    unit[i] = is_bed(items[i].kind) ? bed_of_room.emplace(items[i].room, i).first->second : i;
  return unit;
}

/// Mean and mean square of a share with a beta distribution.
struct Share {
  double mean = 0, square = 0;
};

Share beta(double weight, double sum) {
  if (!(sum > 0)) return {};
  const double mean = weight / sum;
  return {mean, mean * (weight + 1) / (sum + 1)};
}

void take_shares(const Survey& survey, Outcome& out) {
  const Prior before = prior(survey.items);
  const auto& factor = where_bugs_sit().factor_of_seen;
  const std::vector<std::size_t> unit = units(survey.items);
  const std::size_t count = survey.items.size();
  std::vector<double> expected(count), of_unit(count, 0), bugs_of_unit(count, 0);
  for (std::size_t i = 0; i < count; ++i) {
    ItemJudged& item = out.items[i];
    const Looked looked = looked_at(survey, i);
    item.prior_share = before.of_item[i];
    item.covered = 1 - looked.missed;
    item.edges_looked = looked.edges.size();
    item.why = why_of(item, looked);
    item.how_next = how_next(looked);
    const bool counted_none = item.live + item.eggs == 0;  // where bugs are counted, signs tell no more
    expected[i] = item.prior_share * looked.missed *
                  factor.at(counted_none && (looked.signs || looked.trap) ? "signs" : "none");
    of_unit[unit[i]] += expected[i];
    bugs_of_unit[unit[i]] += item.live + item.eggs;
  }
  const double unlisted = looks().prior_weight_bugs * before.unlisted;
  double sum = unlisted;
  for (std::size_t u = 0; u < count; ++u) sum += looks().prior_weight_bugs * of_unit[u] + bugs_of_unit[u];
  if (!(sum > 0)) {  // nothing is expected anywhere: where bugs sit is then as little known as before
    for (ItemJudged& item : out.items) {
      item.share = item.prior_share;
      item.missed_share = item.share * (1 - item.covered);
    }
    out.unlisted_share = before.unlisted;
    return;
  }
  for (std::size_t i = 0; i < count; ++i) {
    ItemJudged& item = out.items[i];
    const std::size_t u = unit[i];
    const double firm = looks().bed_weight_bugs;
    const Share whole = beta(looks().prior_weight_bugs * of_unit[u] + bugs_of_unit[u], sum);
    const Share part =
        of_unit[u] > 0 ? beta(firm * expected[i] / of_unit[u] + item.live + item.eggs, firm + bugs_of_unit[u])
                       : beta(item.live + item.eggs, bugs_of_unit[u]);
    item.share = whole.mean * part.mean;
    item.share_sd = std::sqrt(std::max(0.0, whole.square * part.square - item.share * item.share));
    item.missed_share = item.share * (1 - item.covered);
  }
  out.unlisted_share = unlisted / sum;
}

}  // namespace

Level level_of(const Finding& finding, bool treated_before) {
  if (finding.look == Look::not_accessible) return Level::not_looked;
  if (finding.look == Look::none_seen) return finding.how == How::told ? Level::not_looked : Level::none;
  if (!live(finding) && !signs(finding)) return Level::suspected;  // found, but not said what
  if (finding.how == How::told || finding.certain == false) return Level::suspected;
  if (live(finding)) return finding.certain ? Level::confirmed : Level::probable;
  return treated_before ? Level::old : Level::probable;
}

CountClass class_of(int live) {
  if (live <= 0) return CountClass::none_counted;
  if (live <= looks().up_to_12) return CountClass::up_to_12;
  return live <= looks().up_to_30 ? CountClass::from_13_to_30 : CountClass::over_30;
}

Outcome judge(const Survey& survey) {
  Outcome out;
  out.items.resize(survey.items.size());
  out.rooms.resize(survey.rooms);
  // An item is in its room: what is true of it is true of the room and of the home.
  const auto each = [&](std::optional<std::size_t> item, std::optional<std::size_t> room, const auto& act) {
    if (item) act(static_cast<Judged&>(out.items[*item]));
    const std::optional<std::size_t> where =
        item && survey.items[*item].room ? survey.items[*item].room : room;
    if (where) act(out.rooms[*where]);
    act(out.home);
  };
  for (const Finding& finding : survey.findings) {
    each(finding.item, finding.room,
         [&](Judged& place) { raise(place, level_of(finding, survey.treated_before)); });
    if (finding.look == Look::not_accessible && finding.item) out.items[*finding.item].reached = false;
  }
  // A later look that reached the place settles what the first could not.
  for (const Finding& finding : survey.findings)
    if (finding.item && finding.look != Look::not_accessible && finding.edge.empty())
      out.items[*finding.item].reached = true;
  for (const auto& [place, counts] : counted(survey)) {
    each(place.first.first, place.first.second, [&, &seen = counts](Judged& judged) {
      judged.live += seen.live;
      judged.eggs += seen.eggs;
    });
  }
  for (const Catch& caught : survey.catches) {
    const Level level = level_of(caught);
    const int bugs = caught.certain == false ? 0 : caught.adults + caught.nymphs;
    // A bug in a trap came from near by, not surely from the item above it: the item is suspected at most.
    if (caught.item && bugs > 0) raise(out.items[*caught.item], Level::suspected);
    const auto room =
        caught.item && survey.items[*caught.item].room ? survey.items[*caught.item].room : caught.room;
    for (Judged* place : {room ? &out.rooms[*room] : nullptr, &out.home}) {
      if (place == nullptr) continue;
      raise(*place, level);
      place->live += bugs;
    }
  }
  take_shares(survey, out);
  rank(out.items);
  out.count_class = class_of(out.home.live);
  out.count_is_least =
      survey.items.empty() || std::any_of(out.items.begin(), out.items.end(), [](const auto& item) {
        return !item.reached || item.level == Level::not_looked;
      });
  return out;
}

}  // namespace lastegg::survey
