// SPDX-License-Identifier: MIT
#include "drawing/differences.h"

#include <algorithm>
#include <cmath>

namespace tripoise::drawing {
namespace {

class Differences {
public:
    Differences(const BikeSketch& chosen, const BikeSketch& other, const Point& offset)
        : m_chosen(chosen), m_other(other), m_offset(offset)
    {
        frame();
        if (chosen.cockpit && other.cockpit)
            cockpit(*chosen.cockpit, *other.cockpit);
        if (chosen.saddle && other.saddle)
            saddle(*chosen.saddle, *other.saddle);
        if (chosen.crank && other.crank)
            tell(LeaderKind::CrankLonger, other.crank->lengthMm - chosen.crank->lengthMm,
                 other.crank->near);
        std::stable_sort(m_leaders.begin(), m_leaders.end(),
                         [](const Leader& a, const Leader& b) { return a.at.y() > b.at.y(); });
    }

    std::vector<Leader> take() { return std::move(m_leaders); }

private:
    void tell(LeaderKind kind, double differenceMm, const Point& onOther)
    {
        if (std::abs(differenceMm) >= leastLeaderMm)
            m_leaders.push_back({kind, differenceMm, onOther + m_offset});
    }

    /// How much higher it stands, as registered.
    double higher(const Point& chosen, const Point& other) const
    {
        return other.y() + m_offset.y() - chosen.y();
    }

    void frame()
    {
        const auto middle = [](const TubeSketch& tube) -> Point {
            return 0.5 * (tube.from + tube.to);
        };
        tell(LeaderKind::HeadTubeHigher, higher(m_chosen.headTube.from, m_other.headTube.from),
             m_other.headTube.from);
        // As the text says it, where both tables tell standover; else as it is drawn.
        const bool stood = m_chosen.standoverMm && m_other.standoverMm
                           && m_other.groundY + m_offset.y() == m_chosen.groundY;
        tell(LeaderKind::TopTubeHigher,
             stood ? *m_other.standoverMm - *m_chosen.standoverMm
                   : higher(middle(m_chosen.topTube), middle(m_other.topTube)),
             middle(m_other.topTube));
        tell(LeaderKind::FrontWheelFurther,
             m_other.front.axle.x() + m_offset.x() - m_chosen.front.axle.x(),
             m_other.front.axle + Point(m_other.front.radiusMm, 0.0));
    }

    void cockpit(const CockpitSketch& chosen, const CockpitSketch& other)
    {
        tell(LeaderKind::BarHigher, higher(chosen.grip, other.grip), other.grip);
        tell(LeaderKind::BarFurther, other.grip.x() - chosen.grip.x(), other.grip);
        tell(LeaderKind::StemLonger,
             m_other.figures->stem.lengthMm - m_chosen.figures->stem.lengthMm, other.stem.from);
        tell(LeaderKind::SpacersMore, m_other.figures->spacersMm - m_chosen.figures->spacersMm,
             other.stem.from);
    }

    void saddle(const SaddleSketch& chosen, const SaddleSketch& other)
    {
        tell(LeaderKind::SaddleHigher, higher(chosen.point, other.point), other.tail);
        tell(LeaderKind::SaddleFurtherBack, chosen.point.x() - other.point.x(), other.tail);
    }

    const BikeSketch& m_chosen;
    const BikeSketch& m_other;
    Point m_offset;
    std::vector<Leader> m_leaders;
};

} // namespace

std::vector<Leader> differencesOf(const BikeSketch& chosen, const BikeSketch& other,
                                  const Point& offset)
{
    return Differences(chosen, other, offset).take();
}

} // namespace tripoise::drawing
