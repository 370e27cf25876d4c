// SPDX-License-Identifier: MIT
#include "geometry/table_work.h"

#include "shipped/tables.h"

#include <algorithm>

namespace tripoise {
namespace {

/// Those whose printed figure is still there.
std::vector<Correction> holding(const std::vector<Correction>& corrections,
                                const GeometryTable& geometry)
{
    std::vector<Correction> result;
    for (const Correction& one : corrections)
        for (const TableSize& size : geometry.sizes) {
            const Entry* entry = entryOf(one.column, size);
            if (size.size == one.size && entry && entry->value == one.printed)
                result.push_back(one);
        }
    return result;
}

GeometryTable withCorrections(GeometryTable geometry, const std::vector<Correction>& corrections)
{
    for (const Correction& one : corrections)
        for (std::size_t i = 0; i < geometry.sizes.size(); ++i)
            if (geometry.sizes[i].size == one.size)
                geometry = corrected(std::move(geometry), i, one.column, one.taken);
    return geometry;
}

} // namespace

const TableSaid& TableWork::ofChosen() const
{
    static const TableSaid nothing;
    const auto found = said.find(chosen);
    return found == said.end() ? nothing : found->second;
}

TableAnswer workedOut(TableWork& work, const std::stop_token& stop)
{
    std::vector<Assignment> assignments;
    for (const auto& [table, said] : work.said)
        for (Assignment one : said.assignments) {
            one.table = table;
            assignments.push_back(std::move(one));
        }
    auto tables = readGeometryTables(work.text, shippedHeadings(), assignments, stop);
    TableAnswer answer;
    for (const ReadTable& one : tables)
        answer.models.push_back(one.model);
    work.chosen = std::min(work.chosen, tables.size() - 1);
    answer.read = std::move(tables[work.chosen]);
    const TableSaid& said = work.ofChosen();
    if (said.sizesConfirmed && answer.read.sizesFrom == SizesFrom::Guessed) {
        answer.read.sizesFrom = SizesFrom::Named;
        std::erase_if(answer.read.problems, [](const Problem& problem) {
            return problem.code == ProblemCode::SizesGuessed;
        });
    }
    answer.geometry = geometryOf(answer.read);
    answer.closed = closeTable(answer.geometry, shippedClosure());
    answer.proposed = answer.closed.redefinitions;
    if (!said.asHeaded)
        for (const Redefinition& one : answer.proposed)
            answer.geometry = redefined(std::move(answer.geometry), one.column, one.takenAs);
    answer.corrections = holding(said.corrections, answer.geometry);
    answer.geometry = withCorrections(std::move(answer.geometry), answer.corrections);
    const bool otherwise = said.asHeaded && !answer.proposed.empty();
    if (otherwise || !answer.corrections.empty())
        answer.closed = closeTable(answer.geometry, shippedClosure(), {.redefine = false});
    return answer;
}

const Correction* correctionOf(std::size_t size, Column column, const TableAnswer& answer)
{
    const auto found = std::find_if(
        answer.corrections.begin(), answer.corrections.end(), [&](const Correction& one) {
            return one.column == column && one.size == answer.geometry.sizes[size].size;
        });
    return found == answer.corrections.end() ? nullptr : &*found;
}

Column takenFor(Column column, const TableAnswer& answer, bool asHeaded)
{
    if (!asHeaded)
        for (const Redefinition& one : answer.proposed)
            if (one.column == column)
                return one.takenAs;
    return column;
}

} // namespace tripoise
