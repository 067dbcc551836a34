// Short ways to write the fields of a kind's data. For the tables of kinds alone.
#pragma once

#include <string_view>
#include <vector>

#include "job/record/kinds.h"

namespace lastegg::record {

constexpr bool k_required = true;
constexpr bool k_optional = false;

DataField of_type(DataField::Type type, std::string_view key, bool is_required, std::string_view text);
DataField number(std::string_view key, bool is_required, Unit unit, double least, double most,
                 std::string_view text);
/// A number that must be above zero.
DataField positive(std::string_view key, bool is_required, Unit unit, double most, std::string_view text);
DataField whole(std::string_view key, double least, double most, std::string_view text);
DataField word(std::string_view key, bool is_required, std::vector<std::string_view> words,
               std::string_view text);
DataField object(std::string_view key, std::vector<DataField> fields, std::string_view text);
DataField list(std::string_view key, std::vector<DataField> fields, std::string_view text);
DataField id(std::string_view key, bool is_required, std::string_view text);
DataField text(std::string_view key, std::string_view meaning);
DataField title();
DataField typed();
DataField elevation();

/// With the keys that every kind may carry. `list`: where its entities stand in the state of a job.
KindRule kind(std::string_view name, std::string_view list, std::string_view text,
              std::vector<DataField> fields);

}  // namespace lastegg::record
