// SPDX-License-Identifier: MIT
//
//   b       bottom-bracket drop: both axles at y = b
//   H, o    head angle, fork offset; n = (sin H, cos H) points from the axis to the axle
//   x_F     reach + (stack - b) / tan H + o / sin H      front axle, from axle = axis point + o n
#include "frame/skeleton.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tripoise {
namespace {

// What a figure read off a table of whole millimetres, and one assumed, is worth.
constexpr double derivedSdMm = 2.0;
constexpr double assumedSdMm = 5.0;
constexpr double standoverSdMm = 15.0;

/// Horizontal distance to an axle below or above the bottom bracket, from the straight one.
double horizontal(double straightMm, double dropMm)
{
    return std::sqrt(std::max(0.0, straightMm * straightMm - dropMm * dropMm));
}

class Builder {
public:
    Builder(const FrameSize& frame, const FrameDefaults& defaults)
        : m_given(frame.geometry), m_frame(frame), m_defaults(defaults)
    {
        seatAngle();
        m_skeleton.bbDropMm = givenOr("bb_drop_mm", m_given.bbDropMm, defaults.bbDropMm);
        chainstay();
        front();
        headTube();
        wheel();
        headset();
        post();
        standover();
        m_skeleton.bicycleMassKg = frame.massKg.value_or(defaults.bicycleMassKg);
    }

    Skeleton take() { return std::move(m_skeleton); }

private:
    Estimate assumed(const char* key, double value)
    {
        m_skeleton.findings.push_back(
            {FindingCode::GeometryAssumed, Severity::Note, {value}, key, {}});
        return {value, assumedSdMm, Origin::Assumed};
    }
    Estimate derived(const char* key, double value)
    {
        m_skeleton.findings.push_back(
            {FindingCode::GeometryDerived, Severity::Note, {value}, key, {}});
        return {value, derivedSdMm, Origin::Derived};
    }
    Estimate givenOr(const char* key, const std::optional<double>& given, double standIn)
    {
        return given ? Estimate{*given, 0.0, Origin::Given} : assumed(key, standIn);
    }

    void seatAngle()
    {
        double degrees = 0.0;
        if (m_given.seatAngleDeg) {
            degrees = *m_given.seatAngleDeg;
        } else if (m_given.topTubeEffectiveMm && *m_given.topTubeEffectiveMm > m_given.reachMm) {
            const double run = *m_given.topTubeEffectiveMm - m_given.reachMm;
            degrees = std::atan2(m_given.stackMm, run) * 180.0 / std::numbers::pi;
            derived("seat_angle_deg", degrees);
        } else {
            degrees = assumed("seat_angle_deg", m_defaults.seatAngleDeg).value;
        }
        m_skeleton.seatAngle = Angle::degrees(degrees);
    }

    void chainstay()
    {
        Skeleton& s = m_skeleton;
        const double drop = s.bbDropMm.value;
        if (m_given.chainstayMm) {
            s.chainstayMm = {m_given.chainstayMm->low, 0.0, Origin::Given};
            s.chainstayEndMm = m_given.chainstayMm->high;
        } else if (m_given.wheelbaseMm && m_given.frontCentreMm) {
            const double rear = *m_given.wheelbaseMm - horizontal(*m_given.frontCentreMm, drop);
            s.chainstayMm = derived("chainstay_mm", std::hypot(rear, drop));
            s.chainstayEndMm = s.chainstayMm.value;
        } else {
            s.chainstayMm = assumed("chainstay_mm", m_defaults.chainstayMm);
            s.chainstayEndMm = s.chainstayMm.value;
        }
        s.rearAxle = {-horizontal(s.chainstayMm.value, drop), drop};
    }

    void front()
    {
        Skeleton& s = m_skeleton;
        s.headAngle = Angle::degrees(m_given.headAngleDeg);
        s.headTop = {m_given.reachMm, m_given.stackMm};
        const double drop = s.bbDropMm.value;
        const double sine = std::sin(s.headAngle.rad());
        const double axisAtAxle =
            m_given.reachMm + (m_given.stackMm - drop) / std::tan(s.headAngle.rad());

        if (m_given.forkOffsetMm) {
            s.forkOffsetMm = {*m_given.forkOffsetMm, 0.0, Origin::Given};
        } else if (m_given.frontCentreMm || m_given.wheelbaseMm) {
            const double axleX = m_given.frontCentreMm ? horizontal(*m_given.frontCentreMm, drop)
                                                       : *m_given.wheelbaseMm + s.rearAxle.x();
            s.forkOffsetMm = derived("fork_offset_mm", (axleX - axisAtAxle) * sine);
        } else {
            s.forkOffsetMm = assumed("fork_offset_mm", m_defaults.forkOffsetMm);
        }
        s.frontAxle = {axisAtAxle + s.forkOffsetMm.value / sine, drop};
    }

    void headTube()
    {
        Skeleton& s = m_skeleton;
        const Headset& parts = m_frame.headset;
        s.upperHeadsetMm = parts.upperMm.value_or(m_defaults.upperHeadsetMm);
        s.lowerHeadsetMm = parts.lowerMm.value_or(m_defaults.lowerHeadsetMm);

        // Along the axis from the head-tube top to the foot of the perpendicular from the axle.
        const Point downAxis = -upTube(s.headAngle);
        const double toAxle = (s.frontAxle - s.headTop).dot(downAxis);
        const auto crownToFoot = [&](double forkLength) {
            return horizontal(forkLength, s.forkOffsetMm.value);
        };
        if (m_given.headTubeMm) {
            s.headTubeMm = {*m_given.headTubeMm, 0.0, Origin::Given};
        } else {
            const double fork = m_given.forkLengthMm.value_or(m_defaults.forkLengthMm);
            const double tube = std::max(0.0, toAxle - crownToFoot(fork) - s.lowerHeadsetMm);
            s.headTubeMm = m_given.forkLengthMm ? derived("head_tube_mm", tube)
                                                : assumed("head_tube_mm", tube);
        }
        s.headBottom = s.headTop + s.headTubeMm.value * downAxis;
        s.crown = s.headBottom + s.lowerHeadsetMm * downAxis;
    }

    void wheel()
    {
        Skeleton& s = m_skeleton;
        const Mounting mounting = m_frame.mounting.value_or(Mounting{});
        const auto& beadSeatMm =
            mounting.beadSeatMm ? mounting.beadSeatMm : m_frame.wheel.beadSeatMm;
        const auto& tyreMm = mounting.tyreMm ? mounting.tyreMm : m_frame.asSold.tyreMm;
        s.beadSeatMm = givenOr("bead_seat_mm", beadSeatMm, m_defaults.beadSeatMm).value;
        s.tyreMm = givenOr("tyre_mm", tyreMm, m_defaults.tyreMm).value;
        s.wheelRadiusMm = 0.5 * (s.beadSeatMm + 2.0 * s.tyreMm);
        if (const auto& mudguard = mounting.mudguard)
            s.mudguard =
                Mudguard{mudguard->gapMm.value_or(m_defaults.mudguardGapMm),
                         mudguard->widthMm.value_or(s.tyreMm + m_defaults.mudguardWidthMm)};
    }

    void headset()
    {
        Skeleton& s = m_skeleton;
        const Headset& parts = m_frame.headset;
        s.steererMm = parts.steererMm.value_or(m_defaults.steererMm);
        s.quillMm = parts.quillMm;
        s.steererLengthMm = parts.steererLengthMm;
        const bool metal = parts.material && *parts.material != SteererMaterial::Carbon;
        s.maxSpacersMm = parts.maxSpacersMm.value_or(metal ? m_defaults.metalSpacersMm
                                                           : m_defaults.carbonSpacersMm);
    }

    void post()
    {
        Skeleton& s = m_skeleton;
        const Post& post = m_frame.post;
        s.postLengthMm = post.lengthMm.value_or(m_defaults.postLengthMm);
        s.postOffsetMm = post.offsetMm.value_or(m_defaults.postOffsetMm);
        s.postInsertionMm = std::max(postLeast(post, m_defaults),
                                     post.frameInsertionMm.value_or(m_defaults.frameInsertionMm));
        if (m_given.seatTubeMm)
            s.seatTubeMm = Estimate{*m_given.seatTubeMm, 0.0, Origin::Given};
    }

    void standover()
    {
        Skeleton& s = m_skeleton;
        if (m_given.standoverMm) {
            s.standoverMm = Estimate{*m_given.standoverMm, 0.0, Origin::Given};
        } else if (s.seatTubeMm) {
            // Half way along a straight top tube.
            const double rear = s.seatTubeMm->value * std::sin(s.seatAngle.rad());
            const double front = s.headTop.y() - m_defaults.tubeTopBelowHeadTopMm;
            s.standoverMm = derived("standover_mm", 0.5 * (rear + front) - s.groundY());
            s.standoverMm->sd = standoverSdMm;
        }
    }

    const Geometry& m_given;
    const FrameSize& m_frame;
    const FrameDefaults& m_defaults;
    Skeleton m_skeleton;
};

} // namespace

Skeleton skeletonOf(const FrameSize& frame, const FrameDefaults& defaults)
{
    return Builder(frame, defaults).take();
}

} // namespace tripoise
