// What an inspection amounts to: how surely there are bed bugs, how many were counted, where the rest is
// expected and where to look next. Reads looks.json and, through job/priority, where_bugs_sit.json. Plain
// values; pure functions.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lastegg::survey {

/// How surely bed bugs are there, from least to most.
enum class Level { not_looked, none, suspected, old, probable, confirmed };

/// Count classes as trials of control form them.
enum class CountClass { none_counted, up_to_12, from_13_to_30, over_30 };

enum class Look { found, none_seen, not_accessible };
enum class How { eye, light_and_card, opened, trap, told };

/// A piece of furniture or a part of a room.
struct Item {
  std::string kind;  ///< a word of the catalogue
  std::optional<std::size_t> room;
  std::optional<double> x_metres, y_metres;  ///< in its room
  bool sleeps_here = false;                  ///< somebody sleeps or long sits on it
  std::size_t edges = 0;                     ///< how many it has; 0: not told
};

/// What one look at a place found. Without an item it is about the room, without a room about the home.
struct Finding {
  std::optional<std::size_t> item, room;
  std::string edge;  ///< empty: the whole place
  Look look = Look::found;
  How how = How::eye;
  int adults = 0, nymphs = 0, eggs = 0, cast_skins = 0;
  bool spots = false, dead = false;
  std::optional<bool> certain;  ///< that it is a bed bug; none: nobody said
};

/// What a trap held. A trap that was gone, moved or dusty tells nothing and is not given.
struct Catch {
  std::optional<std::size_t> item, room;
  int adults = 0, nymphs = 0;
  std::optional<bool> certain;
};

struct Survey {
  std::size_t rooms = 0;
  std::vector<Item> items;
  std::vector<Finding> findings;
  std::vector<Catch> catches;
  bool treated_before = false;
};

/// What is known of one place.
struct Judged {
  Level level = Level::not_looked;
  int live = 0;  ///< adults and nymphs counted
  int eggs = 0;
  bool reached = true;  ///< false: somebody could not look at it
};

/// Why an item stands where it does in the order of places to look at.
enum class Why { not_looked, not_accessible, unsure, signs, trap, part, by_eye, live };

struct ItemJudged : Judged {
  double prior_share = 0;  ///< of all bugs of the home, before anything was seen
  double share = 0;        ///< expected now
  double share_sd = 0;
  double covered = 0;       ///< chance that bugs in it would have been found by the looks so far, 0 to 1
  double missed_share = 0;  ///< of all bugs: expected in it and not found by looks like those so far
  std::size_t edges_looked = 0;
  Why why = Why::not_looked;
  How how_next = How::light_and_card;
  std::size_t rank = 0;  ///< from 1: where to look next
};

struct Outcome {
  Judged home;
  CountClass count_class = CountClass::none_counted;
  bool count_is_least = false;  ///< some item was not looked at, so that there may be more
  double unlisted_share = 0;    ///< of all bugs: expected in parts of the rooms that are not listed
  std::vector<ItemJudged> items;
  std::vector<Judged> rooms;
};

/// The level that one finding supports.
/// Model:   live bugs or eggs: confirmed if surely bed bugs, probable if nobody said, suspected if unsure;
/// skins,
///          spots or dead bugs alone: probable, old where the home was treated before, suspected if unsure;
///          what was only told: at most suspected; nothing seen: none; not accessible: not_looked.
/// Source:  levels as industry practice documents name them, read in part; that told and unsure weaken:
/// judgement Checked: job/survey/survey_unit_test.cpp
Level level_of(const Finding& finding, bool treated_before);

/// Source:  looks.json, classes
CountClass class_of(int live);

/// What the inspection amounts to.
/// Model:   the parts of a bed in one room are one unit, every other item is its own. Share of unit u =
///          a_u / sum a, a_u = k e_u + n_u; share of part i in it = b_i / sum b, b_i = h e_i / e_u + n_i
///          (means of two Dirichlets). e_i = p_i m_i f_i: p_i the prior, m_i the chance that the looks so far
///          would have missed bugs there, f_i the factor for signs or a catch beneath it
///          where no bug was counted; n the adults,
///          nymphs and eggs counted; k and h the weights of the prior in bugs. The prior divides the shares
///          of classes over the items there are: beds and seats change places in the measure in which seats
///          are slept on; the rest falls with distance from the nearest such place. Repeated looks at one
///          place count once, with the highest number. Next to look at: largest share times the chance to
///          miss; items with live bugs last.
/// Inputs:  indices within their lists (the caller checks); counts at least 0
/// Source:  prior and factor: job/priority; looks.json; the exchange of beds and seats, the measure of it and
/// the
///          update for misses: own derivation, judgement
/// Checked: job/survey/survey_law_test.cpp: law; survey_unit_test.cpp: unit
Outcome judge(const Survey& survey);

}  // namespace lastegg::survey
