// The answer of the question fold_test: its shape, and the parts that are plain figures.
#pragma once

#include "engine/fold_test_outlook.h"

namespace lastegg {

Shape fold_test_answer_shape();

/// Keys of the unknowns, as in the posterior.
const char* unknown_key(std::size_t k);

/// Mean, spread and quantiles of the four unknowns.
Json posterior_json(const steam::Calibration& calibration);

/// The fold over pace, the readings as they fit, contradictions, the next reading, drift.
Json fold_over_pace_json(const ReadFoldTest& read, const Outlook& outlook);
Json readings_json(const ReadFoldTest& read, const steam::FitReport& fit);
Json contradictions_json(const ReadFoldTest& read, const std::vector<steam::Contradiction>& contradictions);
Json next_reading_json(const NextReading& next);
Json drift_json(const steam::Drift& drift);

}  // namespace lastegg
