#include "engine/fold_test_outlook.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/request_values.h"
#include "physics/uncertainty/weighted.h"
#include "treatments/steam/fold_test/next_reading.h"

namespace lastegg {

using steam::FoldReading;
using steam::ReadingKind;

namespace {

constexpr int k_deepest_candidate = 3;  // layers

struct Place {
  int layers;
  std::size_t covering;
  FoldReading reading;
};

// The tested places, shallow first, the test's own covering before real edges.
std::vector<Place> tested_places(const ReadFoldTest& read) {
  std::vector<Place> places;
  for (std::size_t i = 0; i < read.test.readings.size(); ++i) {
    FoldReading reading = read.test.readings[i];
    if (reading.kind == ReadingKind::coupon || reading.kind == ReadingKind::surface) continue;
    const auto covering = static_cast<std::size_t>(std::find_if(read.coverings.begin(), read.coverings.end(),
                                                                [&](const std::string& one) {
                                                                  return cloth_key(read.machine, read.head,
                                                                                   one) == reading.cloth_key;
                                                                }) -
                                                   read.coverings.begin());
    const bool known = std::any_of(places.begin(), places.end(), [&](const Place& place) {
      return place.layers == read.layers[i] && place.reading.depth_metres == reading.depth_metres &&
             place.covering == covering;
    });
    if (known) continue;
    reading.kind = ReadingKind::pass;
    places.push_back({read.layers[i], covering, std::move(reading)});
  }
  std::stable_sort(places.begin(), places.end(), [](const Place& a, const Place& b) {
    if (a.covering != b.covering) return a.covering < b.covering;
    return a.reading.depth_metres < b.reading.depth_metres;
  });
  return places;
}

double share_at_least(const std::vector<double>& weights, const std::vector<double>& values, double least) {
  double share = 0;
  for (std::size_t i = 0; i < weights.size(); ++i) share += values[i] >= least ? weights[i] : 0;
  return share;
}

}  // namespace

Result<Outlook> outlook_of(const ReadFoldTest& read, const std::vector<FittedCovering>& fits) {
  Outlook out;
  out.paces.assign(steam::k_paces.begin() + 1, steam::k_paces.end() - 1);
  const double working = read.working_pace_metres_per_second;
  if (std::find(out.paces.begin(), out.paces.end(), working) == out.paces.end()) out.paces.push_back(working);
  std::sort(out.paces.begin(), out.paces.end());
  std::vector<Place> places = tested_places(read);
  if (places.empty()) {
    out.is_imagined = true;
    places.push_back({1, 0, imagined_reading(read, ReadingKind::pass, 1, working)});
  }
  for (const Place& place : places) {
    std::vector<FoldReading> readings;
    for (const double pace : out.paces) {
      readings.push_back(place.reading);
      readings.back().pace_metres_per_second = pace;
    }
    const steam::Calibration& calibration = fits[place.covering].fit.calibration;
    auto forecast = steam::forecast_readings(calibration, read.test, readings, k_outlook_samples);
    if (!forecast) return refuse(forecast.error());
    const auto weights = steam::leading_weights(calibration.weights, k_outlook_samples);
    for (steam::FoldForecast& one : *forecast) {
      const steam::FoldPoint point = steam::summary_of(one, weights);
      out.points.push_back({place.layers, place.covering, std::move(one), point});
    }
  }
  bool found = false;
  for (std::size_t i = 0; i < out.points.size(); ++i) {
    const OutlookPoint& point = out.points[i];
    if (point.forecast.reading.pace_metres_per_second != working) continue;
    if (found && point.covering != out.points[out.shallow].covering) break;
    if (!found) out.shallow = i;
    out.deep = i;
    found = true;
  }
  return out;
}

Judgement judge_fold(const ReadFoldTest& read, const std::vector<FittedCovering>& fits,
                     const Outlook& outlook, const std::vector<steam::Contradiction>& contradictions) {
  const OutlookPoint &deep = outlook.points[outlook.deep], &shallow = outlook.points[outlook.shallow];
  const steam::FitReport& fit = fits[deep.covering].fit;
  Judgement out;
  const auto look = [&](const std::vector<double>& weights, bool is_whole) {
    const double effective = effective_sample_size(weights);
    if (is_whole && effective < k_least_effective_share * read.samples) out.enough = false;
    if (effective < k_least_share_without * read.samples) out.enough_without = false;
    const auto leading = steam::leading_weights(weights, k_outlook_samples);
    const double lethal = share_at_least(leading, deep.forecast.lethal_margin, 0);
    const double practice =
        share_at_least(leading, shallow.forecast.fold_celsius, steam::k_practice_low_celsius);
    if (is_whole) {
      out.lethal_share = out.least_lethal = out.most_lethal = lethal;
      out.practice_share = out.least_practice = out.most_practice = practice;
    }
    out.least_lethal = std::min(out.least_lethal, lethal);
    out.most_lethal = std::max(out.most_lethal, lethal);
    out.least_practice = std::min(out.least_practice, practice);
    out.most_practice = std::max(out.most_practice, practice);
  };
  look(fit.calibration.weights, true);
  std::vector<bool> surfaces;
  for (const FoldReading& reading : read.test.readings)
    surfaces.push_back(reading.kind == ReadingKind::surface);
  if (std::find(surfaces.begin(), surfaces.end(), true) != surfaces.end()) {
    look(steam::weights_without(fit, surfaces), false);
    out.lethal_only_by_surface = out.lethal_share >= k_sure && out.least_lethal < k_sure;
  }
  for (const steam::Contradiction& one : contradictions) {
    for (const std::optional<std::size_t>& which : {std::optional<std::size_t>(one.first), one.second}) {
      if (!which || read.test.readings.size() < 2) continue;
      std::vector<bool> left_out(read.test.readings.size(), false);
      left_out[*which] = true;
      look(steam::weights_without(fit, left_out), false);
    }
  }
  return out;
}

Result<NextReading> next_reading(const ReadFoldTest& read, const FittedCovering& own,
                                 const Outlook& outlook) {
  const steam::Calibration& calibration = own.fit.calibration;
  const auto weights = steam::leading_weights(calibration.weights, k_outlook_samples);
  // The quantity: the fastest pace at the place of the verdict, or else in the shallowest fold.
  std::size_t place = outlook.points[outlook.deep].covering == 0 ? outlook.deep : 0;
  const double depth = outlook.points[place].forecast.reading.depth_metres;
  std::vector<const steam::FoldForecast*> over_pace;
  for (const OutlookPoint& point : outlook.points) {
    if (point.covering == outlook.points[place].covering && point.forecast.reading.depth_metres == depth)
      over_pace.push_back(&point.forecast);
  }
  std::vector<double> fastest, margins(over_pace.size());
  for (std::size_t i = 0; i < weights.size(); ++i) {
    for (std::size_t p = 0; p < margins.size(); ++p) margins[p] = over_pace[p]->lethal_margin[i];
    fastest.push_back(steam::log_fastest_pace(outlook.paces, margins));
  }

  // Candidates: what is forecast already, the layers not yet tested, a head at rest, two passes over a
  // coupon.
  std::vector<steam::FoldForecast> forecasts;
  std::vector<int> layers;
  int deepest = 0;
  for (const OutlookPoint& point : outlook.points) {
    if (point.covering != 0) continue;
    forecasts.push_back(point.forecast);
    layers.push_back(point.layers);
    deepest = std::max(deepest, point.layers);
  }
  std::vector<FoldReading> more;
  std::vector<int> more_layers;
  const auto add = [&](ReadingKind kind, int count, double pace) {
    more.push_back(imagined_reading(read, kind, count, pace));
    more_layers.push_back(kind == ReadingKind::coupon ? 0 : count);
  };
  for (int count = 1; count <= std::min(deepest + 1, k_deepest_candidate); ++count) {
    if (std::find(layers.begin(), layers.end(), count) != layers.end()) continue;
    for (const double pace : outlook.paces) add(ReadingKind::pass, count, pace);
  }
  add(ReadingKind::stationary, 1, 0);
  for (const double pace : {steam::k_paces[2], steam::k_paces[3]}) add(ReadingKind::coupon, 0, pace);
  auto further = steam::forecast_readings(calibration, read.test, more, k_outlook_samples);
  if (!further) return refuse(further.error());
  for (std::size_t i = 0; i < further->size(); ++i) {
    forecasts.push_back(std::move((*further)[i]));
    layers.push_back(more_layers[i]);
  }
  const steam::ReadingWorth worth = steam::worth_of_readings(read.test, forecasts, fastest, weights);
  NextReading out;
  out.spread_now = worth.spread_now;
  for (std::size_t i = 0; i < forecasts.size(); ++i)
    out.candidates.push_back({forecasts[i].reading, layers[i], worth.spread_then[i]});
  std::stable_sort(
      out.candidates.begin(), out.candidates.end(),
      [](const CandidateReading& a, const CandidateReading& b) { return a.spread_then < b.spread_then; });
  return out;
}

}  // namespace lastegg
