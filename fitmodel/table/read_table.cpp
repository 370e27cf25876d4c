// SPDX-License-Identifier: MIT
#include "table/read_table.h"

#include "table/markup.h"
#include "table/paste.h"
#include "table/read_part.h"
#include "table/repeated_columns.h"
#include "table/shown.h"

#include <algorithm>

namespace tripoise {

using namespace table;

namespace {

/// The cells of another table above or below, without a meaning of their own.
std::vector<TableText> addRows(ReadTable& to, ReadTable&& other, CellState state, bool above)
{
    std::vector<TableText> texts;
    for (auto& row : other.rows)
        for (TableCell& cell : row) {
            if (!cell.text.empty())
                texts.push_back({cell.text, cell.line});
            cell = {cell.text, cell.line, cell.text.empty() ? CellState::Blank : state, {}, {}};
        }
    to.rows.insert(above ? to.rows.begin() : to.rows.end(), other.rows.begin(), other.rows.end());
    return texts;
}

/// A table of something else, none of it understood.
void addUnread(ReadTable& to, ReadTable&& other, bool above)
{
    const auto texts = addRows(to, std::move(other), CellState::NotUnderstood, above);
    if (texts.empty())
        return;
    to.problems.push_back(
        {ProblemCode::SecondTable, lineName(texts.front().line), {}, {}, {}, {}, {}});
    to.notUnderstood.insert(above ? to.notUnderstood.begin() : to.notUnderstood.end(),
                            texts.begin(), texts.end());
}

/// Whether a table says what another does, in another unit maybe.
bool isAgain(const ReadTable& read, const ReadTable& before)
{
    const auto isThere = [&](const ReadColumn& column) {
        return !column.meaning
               || std::any_of(before.columns.begin(), before.columns.end(),
                              [&](const ReadColumn& one) {
                                  return one.meaning == column.meaning && isSame(one, column);
                              });
    };
    return read.readable() && (!read.model || read.model == before.model)
           && read.sizes == before.sizes
           && std::all_of(read.columns.begin(), read.columns.end(), isThere);
}

} // namespace

bool ReadTable::readable() const
{
    return !sizes.empty()
           && std::any_of(columns.begin(), columns.end(),
                          [](const ReadColumn& column) { return isOfTheFrame(column.meaning); });
}

std::optional<std::string> tableTextOfPage(std::string_view page, const HeadingTable& table,
                                           const std::stop_token& stop)
{
    if (page.size() > mostMarkupBytes || !looksLikeMarkup(page))
        return std::nullopt;
    CellReader cells(table, stop);
    const auto read = linesOfPaste(page, cells);
    const auto* paste = std::get_if<PastedLines>(&read);
    if (!paste)
        return std::nullopt;
    std::string text;
    for (const PlainLine& line : paste->lines)
        text += line.text + '\n';
    return text;
}

std::vector<ReadTable> readGeometryTables(std::string_view text, const HeadingTable& table,
                                          const std::vector<Assignment>& assignments,
                                          const std::stop_token& stop)
{
    CellReader cells(table, stop);
    auto pasted = linesOfPaste(text, cells);
    if (auto* refused = std::get_if<Problem>(&pasted)) {
        ReadTable read;
        read.problems.push_back(std::move(*refused));
        return {read};
    }
    const auto& [lines, more] = std::get<PastedLines>(pasted);
    std::vector<ReadTable> result;
    std::vector<ReadTable> above; // of something else, above the first
    for (const TablePart& part : tablesApart(lines, cells)) {
        std::vector<Assignment> own;
        for (const Assignment& one : assignments)
            if (one.table == result.size())
                own.push_back(one);
        ReadTable read = readPart(part, table, own);
        if (!result.empty() && isAgain(read, result.back()))
            addRows(result.back(), std::move(read), CellState::SetAside, false);
        else if (read.readable())
            result.push_back(std::move(read));
        else if (result.empty())
            above.push_back(std::move(read));
        else
            addUnread(result.back(), std::move(read), false);
    }
    if (result.empty())
        std::swap(result, above);
    for (auto one = above.rbegin(); one != above.rend(); ++one)
        addUnread(result.front(), std::move(*one), true);
    if (more)
        result.front().problems.push_back({ProblemCode::OtherTables, {}, {}, {}, {}, {}, {}});
    return result;
}

ReadTable readGeometryTable(std::string_view text, const HeadingTable& table,
                            const std::vector<Assignment>& assignments, const std::stop_token& stop)
{
    return readGeometryTables(text, table, assignments, stop).front();
}

GeometryTable geometryOf(const ReadTable& read)
{
    GeometryTable geometry;
    geometry.model = read.model.value_or(std::string());
    for (std::size_t i = 0; i < read.sizes.size(); ++i) {
        TableSize size{read.sizes[i], {}};
        for (const ReadColumn& column : read.columns) {
            if (!column.meaning || isSetAside(*column.meaning))
                continue;
            if (i < column.entries.size() && column.entries[i])
                size.entries.push_back(*column.entries[i]);
        }
        for (const ReadColumn& column : read.columns)
            if (column.meaning && i < column.beside.size() && column.beside[i]
                && !entryOf(column.beside[i]->column, size))
                size.entries.push_back(*column.beside[i]);
        geometry.sizes.push_back(std::move(size));
    }
    return geometry;
}

bool isOfTheSale(Column column)
{
    return indexOf(column) >= indexOf(Column::StemLength) && !isSetAside(column);
}

bool isSetAside(Column column)
{
    return indexOf(column) >= indexOf(Column::RiderInseam);
}

} // namespace tripoise
