// SPDX-License-Identifier: MIT
#include "table/repeated_columns.h"

#include "table/shown.h"

#include <algorithm>
#include <cmath>

namespace tripoise::table {
namespace {

/// What is measured in two ways.
std::optional<Column> otherWay(Column column)
{
    switch (column) {
    case Column::SeatAngle: return Column::SeatAngleActual;
    case Column::TopTube: return Column::TopTubeActual;
    default: return std::nullopt;
    }
}

void takeAs(ReadColumn& column, Column other)
{
    column.meaning = other;
    column.from = ColumnFrom::Guessed;
    for (auto& entry : column.entries)
        if (entry)
            entry->column = other;
}

} // namespace

bool isSame(const ReadColumn& one, const ReadColumn& other)
{
    for (std::size_t i = 0; i < one.entries.size(); ++i)
        if (one.entries[i] && other.entries[i]
            && std::abs(one.entries[i]->value - other.entries[i]->value)
                   > one.entries[i]->step + other.entries[i]->step)
            return false;
    return true;
}

void leaveRepeated(std::vector<ReadColumn>& columns,
                   const std::vector<const HeadingRead*>& headings, Problems& problems)
{
    const auto has = [&](Column column) {
        return std::any_of(columns.begin(), columns.end(),
                           [&](const ReadColumn& one) { return one.meaning == column; });
    };
    const auto leaveOne = [&](std::size_t first, std::size_t second) {
        const HeadingRead& read = *headings[first];
        const HeadingRead& other = *headings[second];
        ReadColumn* kept = &columns[first];
        ReadColumn* dropped = &columns[second];
        const bool firstGuessed = read.guessed && !other.guessed && !kept->assigned;
        if (firstGuessed)
            std::swap(kept, dropped);
        const auto way = otherWay(*kept->meaning);
        if (!firstGuessed && way && !has(*way) && read.qualified != other.qualified)
            return takeAs(read.qualified ? *dropped : *kept, *way);
        problems.push_back({ProblemCode::ColumnTwice,
                            lineName(dropped->line),
                            shown(dropped->heading),
                            {},
                            {},
                            {},
                            {lineName(kept->line), shown(kept->heading)}});
        if (!isSame(*kept, *dropped) && !kept->assigned && read.guessed == other.guessed)
            kept->from = ColumnFrom::Guessed;
        dropped->meaning.reset();
    };
    for (std::size_t i = 0; i < columns.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (columns[i].meaning && columns[i].meaning == columns[j].meaning
                && !isSetAside(*columns[i].meaning))
                leaveOne(j, i);
}

} // namespace tripoise::table
