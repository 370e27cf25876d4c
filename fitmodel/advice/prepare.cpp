// SPDX-License-Identifier: MIT
#include "advice/prepare.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

namespace tripoise {
namespace {

/// Totals of the pieces; under a quill, every few millimetres that one may be raised.
std::vector<double> spacersOn(const Skeleton& skeleton, const Stock& stock,
                              const PartDefaults& parts)
{
    if (!skeleton.quillMm)
        return spacerTotals(stock.spacersMm, skeleton.maxSpacersMm);
    double most = parts.quillRaiseMm;
    for (const Stem& stem : stock.stems)
        if (stem.quillMm)
            most = std::max(most, stem.raiseMm.value_or(0.0));
    std::vector<double> heights;
    for (double height = 0.0; height <= most; height += parts.quillStepMm)
        heights.push_back(height);
    return heights;
}

class SizeBuilder {
public:
    SizeBuilder(const FrameSize& frame, const Stock& stock, const Tables& tables)
        : m_stock(stock), m_tables(tables)
    {
        m_size.frame = frame;
        m_size.skeleton = skeletonOf(frame, tables.frame);
        m_size.steering = steeringOf(m_size.skeleton);
        m_size.bulkMm = frame.geometry.stackMm + frame.geometry.reachMm;
        m_size.spacersMm = spacersOn(m_size.skeleton, stock, tables.parts);
        for (const MountedStem& mounted :
             mountedStems(stock, steererOf(m_size.skeleton), tables.parts))
            addStem(mounted);
        for (std::size_t bar = 0; bar < stock.bars.size(); ++bar)
            addBar(bar);
    }

    PreparedSize take() { return std::move(m_size); }

private:
    void addStem(const MountedStem& mounted)
    {
        SizeStem prepared;
        prepared.mounted = mounted;
        prepared.stem = m_stock.stems[mounted.stem];
        Stem& stem = prepared.stem;
        stem.angle = effectiveAngle(stem, mounted.flipped);
        prepared.clamp = clampLine(m_size.skeleton, stem, m_tables.parts);
        prepared.totals = totalsUpTo(
            m_size.spacersMm, std::max(0.0, mostSpacers(m_size.skeleton, stem, m_tables.parts)));
        prepared.angleMeasure =
            std::abs(stem.angle.deg()) > m_tables.weights.ordinaryStemAngleDeg + 1e-9 ? 1.0 : 0.0;
        prepared.inStock = stem.inStock;
        m_size.stems.push_back(prepared);
    }

    void addBar(std::size_t bar)
    {
        const std::size_t clampings = stemsFor(m_stock.bars[bar]);
        if (m_size.clampings[clampings].empty())
            return;
        const std::size_t begin = m_size.count();
        const Clamping& last = m_size.clampings[clampings].back();
        m_size.bars.push_back(
            {bar, clampings, begin, begin + last.begin + m_size.stems[last.stem].totals});
    }

    /// The stems that clamp a bar; the same list for all bars of its diameter.
    std::size_t stemsFor(const Bar& bar)
    {
        const double clampMm = bar.barClampMm.value_or(m_tables.parts.barClampMm);
        const auto known = std::find(m_clampsMm.begin(), m_clampsMm.end(), clampMm);
        if (known != m_clampsMm.end())
            return static_cast<std::size_t>(known - m_clampsMm.begin());
        m_clampsMm.push_back(clampMm);
        std::vector<Clamping>& clampings = m_size.clampings.emplace_back();
        std::size_t rows = 0;
        for (std::size_t i = 0; i < m_size.stems.size(); ++i) {
            if (!clampsMatch(m_size.stems[i].stem, bar, m_tables.parts))
                continue;
            clampings.push_back(
                {static_cast<std::uint32_t>(i), stemRoom(m_size.stems[i].stem, bar), rows});
            rows += m_size.stems[i].totals;
        }
        return m_size.clampings.size() - 1;
    }

    /// Whether the box has a stem of the same angle a little shorter, and one a little longer.
    double stemRoom(const Stem& stem, const Bar& bar) const
    {
        bool shorter = false;
        bool longer = false;
        for (const SizeStem& prepared : m_size.stems) {
            const Stem& other = prepared.stem;
            const double step = other.lengthMm - stem.lengthMm;
            if (!other.inStock || step == 0.0 || std::abs(step) > m_tables.weights.stemRoomMm
                || other.angle != stem.angle || !clampsMatch(other, bar, m_tables.parts))
                continue;
            (step < 0.0 ? shorter : longer) = true;
        }
        return (shorter ? 1.0 : 0.0) + (longer ? 1.0 : 0.0);
    }

    const Stock& m_stock;
    const Tables& m_tables;
    std::vector<double> m_clampsMm; ///< beside the size's clampings
    PreparedSize m_size;
};

} // namespace

CockpitPlace placeOf(const PreparedSize& size, std::size_t row)
{
    std::size_t run = 0;
    while (row >= size.bars[run].end)
        ++run;
    row -= size.bars[run].begin;
    const std::vector<Clamping>& clampings = size.clampings[size.bars[run].clampings];
    const auto after = std::upper_bound(
        clampings.begin(), clampings.end(), row,
        [](std::size_t wanted, const Clamping& clamping) { return wanted < clamping.begin; });
    const Clamping& clamping = *std::prev(after);
    return {run, &clamping, row - clamping.begin};
}

NearestRow nearestRow(const PreparedSize& size, const BarRun& run, const Point& clamp)
{
    NearestRow nearest;
    for (const Clamping& clamping : size.clampings[run.clampings]) {
        // Of the totals of spacers, those on either side of the nearest point of its line.
        const SizeStem& stem = size.stems[clamping.stem];
        if (!stem.inStock)
            continue;
        const double wanted = (clamp - stem.clamp.at(0.0)).dot(stem.clamp.up);
        const std::size_t above = std::min(totalsUpTo(size.spacersMm, wanted), stem.totals);
        for (std::size_t total = above > 0 ? above - 1 : 0;
             total < std::min(above + 1, stem.totals); ++total) {
            const Point at = stem.clamp.at(size.spacersMm[total]);
            const double off = (at - clamp).norm();
            if (off < nearest.offMm)
                nearest = {run.begin + clamping.begin + total, at, off};
        }
    }
    return nearest;
}

Cockpit PreparedSize::cockpitAt(std::size_t row) const
{
    const CockpitPlace place = placeOf(*this, row);
    const MountedStem& mounted = stems[place.clamping->stem].mounted;
    return {mounted.stem, mounted.flipped, bars[place.run].bar, spacersMm[place.total]};
}

double PreparedSize::adjustmentMeasure(const Clamping& clamping, std::size_t total,
                                       const WeightTable& weights) const
{
    const double most = spacersMm[stems[clamping.stem].totals - 1];
    const double up = std::min(1.0, (most - spacersMm[total]) / weights.raiseRoomMm);
    const double down = std::min(1.0, spacersMm[total] / weights.lowerRoomMm);
    return 1.0 - (up + down + clamping.stemRoom) / barDirections;
}

namespace {

/// Adds the box's stems as shims and adaptors put them on the frames' steerers.
void addAdapted(Stock& stock, std::span<const FrameSize> frames, const Tables& tables)
{
    const std::vector<Stem> own = stock.stems;
    std::vector<Stem> added;
    for (const FrameSize& frame : frames)
        for (const Stem& stem : own)
            if (const auto on = adapted(stem, steererOf(frame, tables.frame), tables.parts);
                on && std::find(added.begin(), added.end(), *on) == added.end())
                added.push_back(*on);
    stock.stems.insert(stock.stems.end(), added.begin(), added.end());
}

/// Adds the stems that can ordinarily be ordered, for every bar and steerer there is.
void addMarket(Stock& stock, std::span<const FrameSize> frames, const Tables& tables)
{
    std::set<std::tuple<double, double, std::optional<double>>> joints;
    for (const Bar& bar : stock.bars)
        for (const FrameSize& frame : frames) {
            const Steerer steerer = steererOf(frame, tables.frame);
            joints.insert({bar.barClampMm.value_or(tables.parts.barClampMm), steerer.outsideMm,
                           steerer.quillMm});
        }
    for (const auto& [clampMm, steererMm, quillMm] : joints)
        for (Stem stem : tables.marketStems) {
            stem.barClampMm = clampMm;
            stem.steererMm = steererMm;
            stem.quillMm = quillMm;
            stem.inStock = false;
            stock.stems.push_back(stem);
        }
}

} // namespace

std::vector<double> cranksOf(const Bicycle& bicycle, const Stock& stock)
{
    std::vector<double> cranksMm;
    if (bicycle.crankMm)
        cranksMm.push_back(*bicycle.crankMm);
    for (const double crank : stock.cranksMm)
        if (std::find(cranksMm.begin(), cranksMm.end(), crank) == cranksMm.end())
            cranksMm.push_back(crank);
    return cranksMm;
}

std::optional<Problem> tooManySetups(std::span<const FrameSize> frames, const Bicycle& bicycle,
                                     const Stock& stock, const Tables& tables)
{
    const std::vector<Bar> bars = barsFor(stock, bicycle);
    double setups = 0.0;
    for (const FrameSize& frame : frames) {
        const Skeleton skeleton = skeletonOf(frame, tables.frame);
        const auto mounted = mountedStems(stock, steererOf(skeleton), tables.parts);
        double joints = 0.0;
        for (const Bar& bar : bars)
            joints += static_cast<double>(
                std::count_if(mounted.begin(), mounted.end(), [&](const MountedStem& stem) {
                    return clampsMatch(stock.stems[stem.stem], bar, tables.parts);
                }));
        setups += joints
                  * static_cast<double>(spacersOn(skeleton, stock, tables.parts).size()
                                        * cranksOf(bicycle, stock).size());
    }
    if (setups <= mostSetups)
        return std::nullopt;

    // The longest lists are the easiest to thin.
    std::vector<std::pair<std::size_t, std::string>> lists{
        {stock.stems.size(), "/stock/stems"},
        {stock.bars.size(), "/stock/bars"},
        {stock.spacersMm.size(), "/stock/spacers_mm"},
        {stock.cranksMm.size(), "/stock/cranks_mm"},
        {frames.size(), "/frames"}};
    std::sort(lists.rbegin(), lists.rend());
    return Problem{ProblemCode::TooManySetups,
                   lists[0].second,
                   std::to_string(std::llround(setups)),
                   {},
                   mostSetups,
                   {},
                   {lists[1].second}};
}

Prepared prepare(std::span<const FrameSize> frames, const Bicycle& bicycle, const Stock& stock,
                 const Tables& tables, const std::stop_token& stop)
{
    Prepared prepared;
    prepared.bicycle = bicycle;
    prepared.stock = stock;
    prepared.stock.bars = barsFor(stock, bicycle);
    addAdapted(prepared.stock, frames, tables);
    addMarket(prepared.stock, frames, tables);
    prepared.cranksMm = cranksOf(bicycle, stock);

    for (const FrameSize& frame : frames) {
        if (stop.stop_requested())
            return prepared;
        prepared.sizes.push_back(
            SizeBuilder(mountedOn(frame, bicycle), prepared.stock, tables).take());
    }
    return prepared;
}

} // namespace tripoise
