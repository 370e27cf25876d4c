// SPDX-License-Identifier: MIT
#include "frame/closure.h"

#include "frame/definitions.h"
#include "frame/faults.h"
#include "frame/runs.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tripoise {

using namespace frame;

namespace {

/// What a size is described by, given or not.
constexpr std::array described{Column::Stack,      Column::Reach,       Column::SeatAngle,
                               Column::HeadAngle,  Column::HeadTube,    Column::SeatTube,
                               Column::TopTube,    Column::Chainstay,   Column::BbDrop,
                               Column::Wheelbase,  Column::FrontCentre, Column::ForkLength,
                               Column::ForkOffset, Column::Standover};

std::vector<Purpose> preventedBy(Column column)
{
    switch (column) {
    case Column::Stack:
    case Column::Reach: return {Purpose::Candidate};
    case Column::HeadAngle: return {Purpose::Candidate, Purpose::Trail};
    case Column::SeatAngle: return {Purpose::Candidate, Purpose::SaddlePlace};
    case Column::HeadTube: return {Purpose::Steerer};
    case Column::SeatTube: return {Purpose::Post};
    case Column::Chainstay: return {Purpose::Wheelbase};
    case Column::BbDrop: return {Purpose::Heights};
    case Column::Wheelbase: return {Purpose::Wheelbase};
    case Column::FrontCentre: return {Purpose::ToeClearance};
    case Column::ForkOffset: return {Purpose::Trail};
    case Column::Standover: return {Purpose::Standover};
    default: return {};
    }
}

const Column needed[] = {Column::Stack, Column::Reach, Column::HeadAngle, Column::SeatAngle};

/// One column through the run of sizes, as the table gives it.
struct Run {
    std::vector<RunPoint> points;
    std::vector<std::size_t> pointOf; ///< by size; SIZE_MAX where the size lacks it
    double rounding = 0.0;
};

class Closer {
public:
    Closer(const GeometryTable& headed, const ClosureTable& table, const CloseOptions& options)
        : m_table(table), m_defined(defined(headed, table, options)), m_runs(runs())
    {
        m_result.redefinitions = m_defined.redefinitions;
        m_result.anglesRoundedCoarsely = m_defined.rounding == Rounding::Coarse;
        for (std::size_t i = 0; i < geometry().sizes.size(); ++i)
            close(i);
    }

    ClosedTable take() { return std::move(m_result); }

private:
    [[nodiscard]] const GeometryTable& geometry() const { return m_defined.geometry; }

    [[nodiscard]] PerColumn<Run> runs() const
    {
        std::vector<std::string> names;
        for (const TableSize& size : geometry().sizes)
            names.push_back(size.size);
        const auto places = placesOf(names);
        PerColumn<Run> all;
        for (Run& run : all)
            run.pointOf.assign(names.size(), SIZE_MAX);
        for (std::size_t i = 0; i < names.size(); ++i) {
            for (const Entry& entry : geometry().sizes[i].entries) {
                Run& run = all[indexOf(entry.column)];
                if (run.pointOf[i] != SIZE_MAX)
                    continue;
                run.pointOf[i] = run.points.size();
                run.points.push_back({places[i], entry.value});
                run.rounding = std::max(run.rounding, sdOf(entry, m_table, m_defined.rounding));
            }
        }
        return all;
    }

    [[nodiscard]] std::optional<Expected> expected(std::size_t size, Column column) const
    {
        const Run& run = m_runs[indexOf(column)];
        const double spread = m_table.unevenness[indexOf(column)];
        if (run.pointOf[size] == SIZE_MAX || spread <= 0.0)
            return std::nullopt;
        return expectedAt(run.pointOf[size], run.points,
                          {spread, m_table.unevennessWeight, run.rounding});
    }

    void close(std::size_t size)
    {
        const SizeRows& rows = m_defined.rows[size];
        std::vector<Claim> claims;
        claims.reserve(rows.claims.size());
        for (const Observation& row : rows.claims)
            claims.push_back({row, expected(size, row.column)});
        const FaultSearch search = findFaults(std::move(claims), rows.beyondDoubt, m_table);
        for (const Fault& fault : search.faults)
            m_result.contradictions.push_back(
                {size, fault.column, fault.given, fault.agrees, fault.sd, fault.ties});
        m_result.sizes.push_back(closed(size, search));
        findUnusual(size, search);
    }

    [[nodiscard]] ClosedSize closed(std::size_t size, const FaultSearch& search) const
    {
        const TableSize& from = geometry().sizes[size];
        ClosedSize result{from.size, search.faults.empty(), {}, {}};
        std::vector<Column> isKnown;
        for (const Column column : described) {
            const auto value = valueIn(from, column, search.clean);
            if (value && value->origin != Origin::Assumed)
                isKnown.push_back(column);
        }
        const auto knows = [&](Column column) {
            return std::find(isKnown.begin(), isKnown.end(), column) != isKnown.end();
        };
        // Without these three there is no frame to assume anything of.
        const bool stands =
            knows(Column::Stack) && knows(Column::Reach) && knows(Column::HeadAngle);
        for (const Column column : described) {
            const auto value = valueIn(from, column, search.clean);
            if (value && (knows(column) || (stands && canBeAssumed(column))))
                result.values.push_back({column, *value});
            if (!knows(column))
                result.unknown.push_back({column, preventedBy(column)});
        }
        for (const Column column : needed)
            result.closed = result.closed && knows(column);
        for (const Entry& entry : from.entries)
            if (std::find(described.begin(), described.end(), entry.column) == described.end())
                result.values.push_back({entry.column, givenBy(entry)});
        std::stable_sort(
            result.values.begin(), result.values.end(),
            [](const ClosedValue& a, const ClosedValue& b) { return a.column < b.column; });
        return result;
    }

    static bool canBeAssumed(Column column)
    {
        return column != Column::SeatTube && column != Column::Standover;
    }

    [[nodiscard]] Estimate givenBy(const Entry& entry) const
    {
        return {entry.value, sdOf(entry, m_table, m_defined.rounding), Origin::Given};
    }

    [[nodiscard]] std::optional<Estimate> valueIn(const TableSize& size, Column column,
                                                  const Adjustment& adjustment) const
    {
        if (const Entry* entry = entryOf(column, size))
            return givenBy(*entry);
        if (!hasEquation(column))
            return std::nullopt;
        const Reckoned reckoned = reckon(column, adjustment);
        return Estimate{reckoned.value, reckoned.sd,
                        reckoned.determined ? Origin::Derived : Origin::Assumed};
    }

    void findUnusual(std::size_t size, const FaultSearch& search)
    {
        for (const Entry& entry : geometry().sizes[size].entries) {
            const auto run = expected(size, entry.column);
            const bool contradicted =
                std::any_of(search.faults.begin(), search.faults.end(),
                            [&](const Fault& fault) { return fault.column == entry.column; });
            if (run && !contradicted
                && std::abs(entry.value - run->value) > m_table.unusualDeviation * run->sd)
                m_result.unusual.push_back({size, entry.column, entry.value, run->value, run->sd});
        }
    }

    const ClosureTable& m_table;
    Definitions m_defined;
    PerColumn<Run> m_runs;
    ClosedTable m_result;
};

} // namespace

const ClosedValue* ClosedTable::valueOf(std::size_t size, Column column) const
{
    if (size >= sizes.size())
        return nullptr;
    const auto& values = sizes[size].values;
    const auto found = std::find_if(values.begin(), values.end(), [&](const ClosedValue& value) {
        return value.column == column;
    });
    return found == values.end() ? nullptr : &*found;
}

ClosedTable closeTable(const GeometryTable& geometry, const ClosureTable& table,
                       const CloseOptions& options)
{
    return Closer(geometry, table, options).take();
}

} // namespace tripoise
