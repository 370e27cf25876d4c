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

/// Both lie between the lower end of the head tube and the front axle, with the headset.
constexpr std::array frontEnd{Column::HeadTube, Column::ForkLength};

const Column needed[] = {Column::Stack, Column::Reach, Column::HeadAngle, Column::SeatAngle};

/// One column through the run of sizes, as the table gives it.
struct Run {
    std::vector<RunPoint> points;
    std::vector<std::size_t> pointOf; ///< by size; SIZE_MAX where the size lacks it
    double rounding = 0.0;
};

constexpr double exactMm = 0.01; // of what is held

class Closer {
public:
    Closer(const GeometryTable& headed, const ClosureTable& table, const CloseOptions& options)
        : m_table(table), m_defined(defined(headed, table, options)), m_runs(runs())
    {
        m_result.redefinitions = m_defined.redefinitions;
        m_result.anglesRoundedCoarsely = m_defined.rounding == Rounding::Coarse;
        for (std::size_t i = 0; i < geometry().sizes.size(); ++i)
            close(i);
        findMixups();
        tellOnce();
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
        assumeFrontEnd(size, search);
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
                result.values.push_back({column, *value, {}});
            if (!knows(column))
                result.unknown.push_back({column, preventedBy(column)});
        }
        for (const Column column : needed)
            result.closed = result.closed && knows(column);
        for (const Entry& entry : from.entries)
            if (std::find(described.begin(), described.end(), entry.column) == described.end())
                result.values.push_back({entry.column, givenBy(entry), {}});
        std::stable_sort(
            result.values.begin(), result.values.end(),
            [](const ClosedValue& a, const ClosedValue& b) { return a.column < b.column; });
        return result;
    }

    /// Head tubes and headsets differ less than forks do: where the columns do not tell all, what
    /// is ordinary of these comes before a fork that is ordinary. A fork of which nothing is told
    /// is as much longer than an ordinary one as its wheel is larger, within what leaves the head
    /// tube an ordinary length.
    void assumeFrontEnd(std::size_t size, const FaultSearch& search)
    {
        std::vector<Observation> rows = m_defined.rows[size].all();
        std::erase_if(rows, [&](const Observation& row) {
            return std::any_of(search.faults.begin(), search.faults.end(),
                               [&](const Fault& fault) { return fault.column == row.column; });
        });
        const Adjustment* now = &search.clean;
        const auto knows = [&](Column column) { return reckon(column, *now).determined; };
        Ordinary ordinary = m_table.ordinary;
        Adjustment held;
        Adjustment beside; // the same with another value by its sd
        const auto hold = [&](Column column, double value, double sd) {
            rows.push_back({column, value + sd, exactMm});
            beside = adjust(rows, ordinary);
            rows.back().value = value;
            held = adjust(rows, ordinary);
            now = &held;
            assume(size, held, beside, column);
        };
        const auto headset = indexOf(Unknown::LowerHeadset);
        if (!knows(Column::LowerHeadset))
            hold(Column::LowerHeadset, ordinary.mean(headset), ordinary.sd(headset));
        if (std::any_of(frontEnd.begin(), frontEnd.end(), knows))
            return;
        ordinary.mean(indexOf(Unknown::ForkLength)) +=
            reckon(Column::WheelRadius, *now).value - ordinary.mean(indexOf(Unknown::WheelRadius));
        held = beside = adjust(rows, ordinary);
        assume(size, held, beside, {});
        const double tube = reckon(Column::HeadTube, held).value;
        const double most = 2.0 * m_table.headTubeSdMm;
        const double usual = std::clamp(tube, m_table.headTubeMm - most, m_table.headTubeMm + most);
        if (usual != tube)
            hold(Column::HeadTube, usual, m_table.headTubeSdMm);
    }

    /// Takes what an adjustment makes of the front end, where it was assumed.
    void assume(std::size_t size, const Adjustment& held, const Adjustment& beside,
                std::optional<Column> assuming)
    {
        for (ClosedValue& value : m_result.sizes[size].values) {
            const bool isEnd =
                std::find(frontEnd.begin(), frontEnd.end(), value.column) != frontEnd.end();
            if (!isEnd || value.value.origin != Origin::Assumed)
                continue;
            const Reckoned one = reckon(value.column, held);
            if (assuming && !one.determined && value.column != *assuming)
                continue;
            const double by = reckon(value.column, beside).value - one.value;
            value.value = {one.value, std::hypot(one.sd, by), Origin::Assumed};
            value.assuming = value.column == assuming ? std::nullopt : assuming;
        }
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

    void findMixups()
    {
        const auto& sizes = geometry().sizes;
        for (std::size_t i = 0; i + 1 < sizes.size(); ++i)
            for (std::size_t j = i + 1; j < sizes.size(); ++j)
                if (sizes[i].entries.size() >= m_table.alikeFigures
                    && sizes[i].entries == sizes[j].entries)
                    m_result.mixups.push_back(
                        {Mixup::Kind::SizesAlike, i, j, Column::Stack, Column::Stack});
        std::vector<Column> suspected;
        std::size_t contradicted = 0;
        std::size_t last = SIZE_MAX;
        for (const Contradiction& one : m_result.contradictions) {
            contradicted += one.size != last ? 1 : 0;
            last = one.size;
            suspected.push_back(one.column);
            suspected.insert(suspected.end(), one.indistinguishableFrom.begin(),
                             one.indistinguishableFrom.end());
        }
        std::sort(suspected.begin(), suspected.end());
        suspected.erase(std::unique(suspected.begin(), suspected.end()), suspected.end());
        if (contradicted < 2)
            return;
        std::vector<Mixup> explained;
        const auto offer = [&](Mixup::Kind kind, Column one, Column other,
                               const GeometryTable& mended) {
            // What is not plausible takes no part, and would contradict nothing.
            for (const TableSize& size : mended.sizes)
                for (const Entry& entry : size.entries) {
                    const Range& range = m_table.plausible[indexOf(entry.column)];
                    if ((entry.column == one || entry.column == other)
                        && (entry.value < range.low || entry.value > range.high))
                        return;
                }
            if (contradictingSizes(mended, m_table, m_defined.rounding) == 0)
                explained.push_back({kind, 0, 0, one, other});
        };
        for (std::size_t i = 0; i < suspected.size(); ++i) {
            for (const int by : {-1, 1})
                offer(Mixup::Kind::ColumnShifted, suspected[i], suspected[i],
                      shifted(suspected[i], by));
            for (std::size_t j = i + 1; j < suspected.size(); ++j)
                if (unitOf(suspected[i]) == unitOf(suspected[j]))
                    offer(Mixup::Kind::ColumnsSwapped, suspected[i], suspected[j],
                          swapped(suspected[i], suspected[j]));
        }
        if (explained.size() != 1) // of two explanations neither is told
            return;
        m_result.mixups.push_back(explained.front());
        m_result.contradictions.clear(); // all of them follow from it
    }

    [[nodiscard]] GeometryTable shifted(Column column, int by) const
    {
        GeometryTable result = geometry();
        const auto count = static_cast<int>(result.sizes.size());
        for (int i = 0; i < count; ++i) {
            auto& entries = result.sizes[static_cast<std::size_t>(i)].entries;
            std::erase_if(entries, [&](const Entry& entry) { return entry.column == column; });
            const int from = i + by;
            if (from < 0 || from >= count)
                continue;
            if (const Entry* entry =
                    entryOf(column, geometry().sizes[static_cast<std::size_t>(from)]))
                entries.push_back(*entry);
        }
        return result;
    }

    [[nodiscard]] GeometryTable swapped(Column one, Column other) const
    {
        GeometryTable result = geometry();
        for (TableSize& size : result.sizes)
            for (Entry& entry : size.entries)
                entry.column = entry.column == one     ? other
                               : entry.column == other ? one
                                                       : entry.column;
        return result;
    }

    /// A kink in a column is one remark, at its sharpest; what a fault or two alike sizes bring
    /// along is none.
    void tellOnce()
    {
        const auto away = [](const UnusualValue& one) {
            return std::abs(one.given - one.expected) / one.sd;
        };
        const auto isNear = [](std::size_t a, std::size_t b) {
            return std::max(a, b) - std::min(a, b) <= 2;
        };
        const auto all = m_result.unusual;
        std::erase_if(m_result.unusual, [&](const UnusualValue& one) {
            for (const Mixup& mixup : m_result.mixups)
                if ((mixup.kind == Mixup::Kind::SizesAlike
                     && (isNear(one.size, mixup.size) || isNear(one.size, mixup.otherSize)))
                    || (mixup.kind != Mixup::Kind::SizesAlike
                        && (mixup.column == one.column || mixup.otherColumn == one.column)))
                    return true;
            for (const Contradiction& fault : m_result.contradictions)
                if (isNear(fault.size, one.size)
                    && (fault.column == one.column
                        || std::find(fault.indistinguishableFrom.begin(),
                                     fault.indistinguishableFrom.end(), one.column)
                               != fault.indistinguishableFrom.end()))
                    return true;
            return std::any_of(all.begin(), all.end(), [&](const UnusualValue& other) {
                return other.column == one.column && away(other) > away(one);
            });
        });
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
