// SPDX-License-Identifier: MIT
#include "drawing/bike_sketch.h"

#include "drawing/curve.h"
#include "drawing/proportions.h"

#include <algorithm>
#include <cmath>

namespace tripoise::drawing {
namespace {

namespace draw = proportions;

class BikeBuilder {
public:
    BikeBuilder(const PreparedSize& size, const Setup* setup, const Prepared& prepared,
                const Tables& tables)
        : m_skeleton(size.skeleton), m_setup(setup), m_prepared(prepared), m_tables(tables)
    {
        m_bike.model = size.frame.model;
        m_bike.size = size.frame.size;
        m_bike.headAngle = m_skeleton.headAngle;
        m_bike.seatAngle = m_skeleton.seatAngle;
        m_bike.steererMm = m_skeleton.steererMm;
        m_bike.groundY = m_skeleton.groundY();
        if (m_skeleton.standoverMm)
            m_bike.standoverMm = m_skeleton.standoverMm->value;
        m_bike.tyreMm = m_skeleton.tyreMm;
        m_bike.rear = wheel(m_skeleton.rearAxle);
        m_bike.front = wheel(m_skeleton.frontAxle);
        frame();
        if (!setup)
            return;
        m_bike.saddle = saddle();
        m_bike.cockpit = cockpit();
        m_bike.crank = crank();
        m_bike.figures = figures();
    }

    BikeSketch take() { return std::move(m_bike); }

private:
    WheelSketch wheel(const Point& axle) const
    {
        WheelSketch wheel;
        wheel.axle = axle;
        wheel.radiusMm = m_skeleton.wheelRadiusMm;
        wheel.beadSeatRadiusMm = 0.5 * m_skeleton.beadSeatMm;
        if (m_skeleton.mudguard)
            wheel.mudguardRadiusMm = wheel.radiusMm + m_skeleton.mudguard->gapMm.value_or(0.0);
        return wheel;
    }

    void frame()
    {
        const Skeleton& s = m_skeleton;
        const Point upHead = upTube(s.headAngle);
        const Point upSeat = upTube(s.seatAngle);
        m_bike.headTube = {s.headTop, s.headBottom};
        m_bike.upperHeadset = {s.headTop, s.headTop + s.upperHeadsetMm * upHead};
        m_bike.lowerHeadset = {s.headBottom, s.crown};
        m_bike.fork = {s.crown, s.frontAxle};

        // Both tubes meet the head tube on its own length, however short it is.
        const double headTube = (s.headTop - s.headBottom).norm();
        const double fromTop = std::min(
            m_tables.frame.tubeTopBelowHeadTopMm + 0.5 * draw::topTubeDiameter, 0.4 * headTube);
        const double fromEnd = std::min(draw::downTubeAboveHeadTubeEnd, 0.3 * headTube);
        const Point topTubeFront = s.headTop - fromTop * upHead;
        m_bike.downTube = {Point::Zero(), s.headBottom + fromEnd * upHead};

        const double seatTube = seatTubeLength(topTubeFront.y());
        const Point cluster = (seatTube - draw::seatTubeAboveTopTube) * upSeat;
        m_bike.seatTube = {Point::Zero(), seatTube * upSeat};
        m_bike.topTube = {cluster, topTubeFront};
        m_bike.chainstay = {Point::Zero(), s.rearAxle};
        m_bike.seatstay = {cluster, s.rearAxle};
    }

    double seatTubeLength(double topTubeFrontY) const
    {
        if (m_skeleton.seatTubeMm)
            return m_skeleton.seatTubeMm->value;
        double length =
            (topTubeFrontY - draw::topTubeDropUnknown) / std::sin(m_skeleton.seatAngle.rad())
            + draw::seatTubeAboveTopTube;
        if (m_setup)
            length = std::min(length,
                              railClamp().dot(upTube(m_skeleton.seatAngle)) - draw::leastPostDrawn);
        return length;
    }

    Point railClamp() const
    {
        const double stack =
            m_prepared.bicycle.saddle.stackMm.value_or(m_tables.parts.saddleStackMm);
        return m_setup->saddle.point() - Point(0.0, stack);
    }

    SaddleSketch saddle() const
    {
        const Saddle& part = m_prepared.bicycle.saddle;
        const double length = part.lengthMm.value_or(m_tables.parts.saddleLengthMm);
        SaddleSketch saddle;
        saddle.point = m_setup->saddle.point();
        saddle.nose =
            saddle.point + Point(noseAhead(m_prepared.bicycle.saddle, m_tables.parts), 0.0);
        saddle.tail = saddle.nose - Point(length, 0.0);
        saddle.railTravelMm = part.railTravelMm.value_or(m_tables.parts.railTravelMm);
        // The clamp stands behind the post's axis by its offset, level; the rails slide in it.
        const Point rails = railClamp();
        const double axisX = -rails.y() / std::tan(m_skeleton.seatAngle.rad());
        saddle.railClamp = {axisX - m_skeleton.postOffsetMm, rails.y()};
        saddle.post = {m_bike.seatTube.to,
                       rails.dot(upTube(m_skeleton.seatAngle)) * upTube(m_skeleton.seatAngle)};
        return saddle;
    }

    CockpitSketch cockpit() const
    {
        const Stem& stem = m_setup->stem;
        const Point up = upTube(m_skeleton.headAngle);
        CockpitSketch cockpit;
        Point top = m_bike.upperHeadset.to;
        for (const double piece :
             spacerPieces(m_prepared.stock.spacersMm, m_setup->cockpit.spacersMm)) {
            cockpit.spacers.push_back({top, top + piece * up});
            top = cockpit.spacers.back().to;
        }
        const double height = stem.clampHeightMm.value_or(m_tables.parts.clampHeightMm);
        cockpit.steererClamp = {top, top + height * up};
        cockpit.stem = {top + 0.5 * height * up, m_setup->clamp};
        cockpit.grip = m_setup->grip;
        cockpit.bar =
            sketchBar(m_prepared.stock.bars[m_setup->cockpit.bar], m_setup->clamp, m_tables.parts);
        return cockpit;
    }

    CrankSketch crank() const
    {
        const Point saddle = m_setup->saddle.point();
        CrankSketch crank;
        crank.lengthMm = m_setup->crankMm;
        crank.near = crank.lengthMm * along(bottomOfTurn(saddle));
        crank.far = crank.lengthMm * along(topOfTurn(saddle));
        crank.pedalStackMm = m_prepared.bicycle.pedal.stackMm.value_or(m_tables.parts.pedalStackMm);
        return crank;
    }

    SetupFigures figures() const
    {
        SetupFigures figures;
        figures.saddleHeightMm = m_setup->saddle.heightMm;
        figures.setbackMm = m_setup->saddle.setbackMm();
        figures.stem = m_setup->stem;
        figures.stemFlipped = m_setup->cockpit.flipped;
        figures.spacersMm = m_setup->cockpit.spacersMm;
        figures.bar = m_prepared.stock.bars[m_setup->cockpit.bar];
        figures.crankMm = m_setup->crankMm;
        return figures;
    }

    const Skeleton& m_skeleton;
    const Setup* m_setup;
    const Prepared& m_prepared;
    const Tables& m_tables;
    BikeSketch m_bike;
};

} // namespace

BikeSketch sketchBike(const PreparedSize& size, const Setup* setup, const Prepared& prepared,
                      const Tables& tables)
{
    return BikeBuilder(size, setup, prepared, tables).take();
}

std::vector<Point> forkBlade(const BikeSketch& bike)
{
    const Point crown = bike.fork.from;
    const Point axle = bike.fork.to;
    const Point down = -upTube(bike.headAngle);
    const double length = (axle - crown).dot(down);
    std::vector<Point> line{crown, crown + draw::forkStraightShare * length * down};
    const Point bend = crown + draw::forkBendShare * length * down;
    curveTo(line, bend, bend, axle);
    return line;
}

} // namespace tripoise::drawing
