// SPDX-License-Identifier: MIT
#include "advice/prepare.h"

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

double square(double value)
{
    return value * value;
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
        m_size.stems = mountedStems(stock, m_size.skeleton.steererMm, tables.parts);
        for (const MountedStem& mounted : m_size.stems)
            m_size.stemMeasure.push_back(stemMeasure(stock.stems[mounted.stem].lengthMm));
        for (std::size_t bar = 0; bar < stock.bars.size(); ++bar)
            addBar(bar);
    }

    PreparedSize take() { return std::move(m_size); }

private:
    PerUse<double> stemMeasure(double lengthMm) const
    {
        PerUse<double> measure{};
        for (const Use use : allUses)
            measure[indexOf(use)] =
                square(outside(lengthMm, m_tables.weights.naturalStemMm[indexOf(use)])
                       / m_tables.weights.stemUnitMm);
        return measure;
    }

    Stem asMounted(const MountedStem& mounted) const
    {
        Stem stem = m_stock.stems[mounted.stem];
        stem.angle = effectiveAngle(stem, mounted.flipped);
        return stem;
    }

    void addBar(std::size_t bar)
    {
        BarRun run{bar, m_size.count(), 0};
        for (std::size_t i = 0; i < m_size.stems.size(); ++i) {
            const Stem stem = asMounted(m_size.stems[i]);
            if (!clampsMatch(stem, m_stock.bars[bar], m_tables.parts))
                continue;
            const double most = std::max(0.0, mostSpacers(m_size.skeleton, stem, m_tables.parts));
            const std::vector<double> totals = spacerTotals(m_stock.spacersMm, most);
            const double stemRoom =
                (hasStem(stem, bar, -1.0) ? 1.0 : 0.0) + (hasStem(stem, bar, 1.0) ? 1.0 : 0.0);
            for (const double spacers : totals)
                addCockpit(i, stem, spacers, totals.back(), stemRoom);
        }
        run.end = m_size.count();
        if (run.end > run.begin)
            m_size.bars.push_back(run);
    }

    void addCockpit(std::size_t mounted, const Stem& stem, double spacers, double mostTotal,
                    double stemRoom)
    {
        const WeightTable& weights = m_tables.weights;
        const Point clamp = clampCentre(m_size.skeleton, stem, spacers, m_tables.parts);
        m_size.mounted.push_back(static_cast<std::uint32_t>(mounted));
        m_size.spacersMm.push_back(spacers);
        m_size.clampX.push_back(clamp.x());
        m_size.clampY.push_back(clamp.y());
        m_size.spacerMeasure.push_back(square(spacers / weights.spacerUnitMm));
        m_size.angleMeasure.push_back(
            std::abs(stem.angle.deg()) > weights.ordinaryStemAngleDeg + 1e-9 ? 1.0 : 0.0);

        const double up = std::min(1.0, (mostTotal - spacers) / weights.raiseRoomMm);
        const double down = std::min(1.0, spacers / weights.lowerRoomMm);
        m_size.adjustmentMeasure.push_back(1.0 - (up + down + stemRoom) / barDirections);
    }

    /// Whether the box has a stem of the same angle, a little shorter (-1) or longer (+1).
    bool hasStem(const Stem& stem, std::size_t bar, double direction) const
    {
        return std::any_of(m_size.stems.begin(), m_size.stems.end(),
                           [&](const MountedStem& mounted) {
                               const Stem other = asMounted(mounted);
                               const double step = direction * (other.lengthMm - stem.lengthMm);
                               return step > 0.0 && step <= m_tables.weights.stemRoomMm
                                      && other.angle == stem.angle
                                      && clampsMatch(other, m_stock.bars[bar], m_tables.parts);
                           });
    }

    const Stock& m_stock;
    const Tables& m_tables;
    PreparedSize m_size;
};

/// Places in a spread: 0 for the least, and 1 for the most where the spread is at least
/// `fullSpread`.
std::vector<double> places(const std::vector<double>& values, double fullSpread)
{
    if (values.empty())
        return {};
    const auto [least, most] = std::minmax_element(values.begin(), values.end());
    const double spread = std::max(*most - *least, fullSpread);
    std::vector<double> result;
    for (const double value : values)
        result.push_back((value - *least) / spread);
    return result;
}

} // namespace

Cockpit PreparedSize::cockpitAt(std::size_t row) const
{
    Cockpit cockpit;
    cockpit.stem = stems[mounted[row]].stem;
    cockpit.flipped = stems[mounted[row]].flipped;
    cockpit.spacersMm = spacersMm[row];
    for (const BarRun& run : bars)
        if (row >= run.begin && row < run.end)
            cockpit.bar = run.bar;
    return cockpit;
}

Prepared prepare(std::span<const FrameSize> frames, const Stock& stock, const Tables& tables)
{
    Prepared prepared;
    prepared.stock = stock;
    if (stock.fittedCrankMm)
        prepared.cranksMm.push_back(*stock.fittedCrankMm);
    for (const double crank : stock.cranksMm)
        if (std::find(prepared.cranksMm.begin(), prepared.cranksMm.end(), crank)
            == prepared.cranksMm.end())
            prepared.cranksMm.push_back(crank);

    std::vector<double> steadinessMm;
    std::vector<double> bulkMm;
    for (const FrameSize& frame : frames) {
        prepared.sizes.push_back(SizeBuilder(frame, stock, tables).take());
        const PreparedSize& size = prepared.sizes.back();
        steadinessMm.push_back(size.steering.wheelbaseMm
                               + tables.weights.trailInWheelbase * size.steering.trailMm);
        bulkMm.push_back(size.bulkMm);
    }
    const auto steadiness = places(steadinessMm, tables.weights.agilitySpreadMm);
    const auto bulk = places(bulkMm, tables.weights.compactnessSpreadMm);
    for (std::size_t i = 0; i < prepared.sizes.size(); ++i) {
        prepared.sizes[i].steadiness = steadiness[i];
        prepared.sizes[i].steadinessMost = *std::max_element(steadiness.begin(), steadiness.end());
        prepared.sizes[i].bulk = bulk[i];
    }
    return prepared;
}

} // namespace tripoise
