#include "job/survey/prior.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

#include "job/priority/where_bugs_sit.h"
#include "job/survey/looks.h"

namespace lastegg::survey {
namespace {

const std::string k_seats = "sofa", k_rest = "elsewhere";

const std::string& class_of(const Item& item) {
  return where_bugs_sit().class_of(item.kind);
}

/// The measure in which seats serve as beds: seats slept on among all places slept in. A bed counts as slept
/// in.
double seats_as_beds(const std::vector<Item>& items) {
  double seats = 0, beds = 0, told_beds = 0;
  for (const Item& item : items) {
    if (is_bed(item.kind)) beds = 1;
    if (is_bed(item.kind) && item.sleeps_here) told_beds += 1;
    if (class_of(item) == k_seats && item.sleeps_here) seats += 1;
  }
  beds = std::max(beds, told_beds);
  return seats > 0 ? seats / (seats + beds) : 0;
}

/// Shares of classes with beds and seats exchanged in that measure; the parts of a bed keep their
/// proportions.
std::map<std::string, double> shares_of_classes(double exchanged) {
  std::map<std::string, double> shares = where_bugs_sit().share_of_class;
  const double seats = shares.at(k_seats), beds = 1 - seats - shares.at(k_rest);
  const double moved = exchanged * (beds - seats);
  for (auto& [name, share] : shares)
    if (name != k_seats && name != k_rest) share *= (beds - moved) / beds;
  shares.at(k_seats) += moved;
  return shares;
}

/// Metres to the nearest place where somebody sleeps or sits long; what is not known counts by the room.
double distance_to_host(const Item& item, const std::vector<Item>& items, bool told) {
  const Looks& table = looks();
  double nearest = table.other_room_metres;
  for (const Item& host : items) {
    if (told ? !host.sleeps_here : !is_bed(host.kind)) continue;
    if (!host.room || !item.room || *host.room != *item.room) continue;
    const bool placed = item.x_metres && item.y_metres && host.x_metres && host.y_metres;
    const double away = placed ? std::hypot(*item.x_metres - *host.x_metres, *item.y_metres - *host.y_metres)
                               : table.fall_metres;
    nearest = std::min(nearest, away);
  }
  return nearest;
}

}  // namespace

bool is_bed(const std::string& kind) {
  const std::string& name = where_bugs_sit().class_of(kind);
  return name != k_seats && name != k_rest;
}

Prior prior(const std::vector<Item>& items) {
  const bool told =
      std::any_of(items.begin(), items.end(), [](const Item& item) { return item.sleeps_here; });
  const std::map<std::string, double> shares = shares_of_classes(seats_as_beds(items));
  std::vector<double> weights(items.size(), 1);
  std::map<std::string, double> weight_of_class;
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (class_of(items[i]) == k_rest)
      weights[i] = std::exp(-distance_to_host(items[i], items, told) / looks().fall_metres);
    weight_of_class[class_of(items[i])] += weights[i];
  }
  Prior out{std::vector<double>(items.size(), 0), 0};
  double sum = 0;
  for (std::size_t i = 0; i < items.size(); ++i) {
    out.of_item[i] = shares.at(class_of(items[i])) * weights[i] / weight_of_class.at(class_of(items[i]));
    sum += out.of_item[i];
  }
  if (!weight_of_class.contains(k_rest)) {
    out.unlisted = shares.at(k_rest);
    sum += out.unlisted;
  }
  for (double& share : out.of_item) share /= sum;
  out.unlisted /= sum;
  return out;
}

}  // namespace lastegg::survey
