// SPDX-License-Identifier: MIT
#include "drawing/labels.h"

#include "wording/setup_rows.h"
#include "wording/visible.h"
#include "wording/words.h"

#include <QStringList>

#include <cmath>

namespace tripoise {
namespace {

/// Translation context of what is written on the drawing.
class Drawing {
    Q_DECLARE_TR_FUNCTIONS(Drawing)
};

QString handsOn(GripPlace place)
{
    switch (place) {
    case GripPlace::Flat:
    case GripPlace::Swept: return Drawing::tr("hands on the grips");
    case GripPlace::Hoods: return Drawing::tr("hands on the hoods");
    case GripPlace::Tops: return Drawing::tr("hands on the tops");
    case GripPlace::Drops: return Drawing::tr("hands in the drops");
    }
    return {};
}

QString nameOf(const BikeSketch& bike, const SideView& view)
{
    QString name = asName(bike.size);
    if (!view.other || view.other->model != view.chosen.model)
        name = Drawing::tr("%1 %2", "model and size of a frame")
                   .arg(asName(bike.model), name)
                   .trimmed();
    return bike.byBuilder ? Drawing::tr("%1 (chosen)", "a size, by the builder").arg(name) : name;
}

/// A frame is spoken of in millimetres in any units.
bool ofFrame(DimensionKind kind)
{
    return kind == DimensionKind::Stack || kind == DimensionKind::Reach
           || kind == DimensionKind::FrontCentre || kind == DimensionKind::Wheelbase;
}

/// Of parts and frames in millimetres, of the rider's places in the units spoken.
QString amount(LeaderKind kind, double differenceMm)
{
    switch (kind) {
    case LeaderKind::StemLonger:
    case LeaderKind::SpacersMore:
    case LeaderKind::CrankLonger: return halfMm(differenceMm);
    case LeaderKind::HeadTubeHigher:
    case LeaderKind::TopTubeHigher:
    case LeaderKind::FrontWheelFurther: return partMm(differenceMm);
    case LeaderKind::BarHigher:
    case LeaderKind::BarFurther:
    case LeaderKind::SaddleHigher:
    case LeaderKind::SaddleFurtherBack: return mm(differenceMm);
    }
    return {};
}

} // namespace

QString jointName(Joint joint)
{
    switch (joint) {
    case Joint::Trunk: return Drawing::tr("back");
    case Joint::ArmTrunk: return Drawing::tr("arms to back");
    case Joint::Elbow: return Drawing::tr("elbow");
    case Joint::Knee: return Drawing::tr("knee");
    }
    return {};
}

QString jointLabel(const JointAngle& angle)
{
    return Drawing::tr("%1 %2", "joint and its angle")
        .arg(jointName(angle.joint), degrees(angle.value.deg()));
}

QString jointRange(const JointAngle& angle)
{
    if (angle.atBottom)
        return Drawing::tr("%1 at the bottom").arg(degrees(angle.atBottom->deg()));
    return Drawing::tr("%1°").arg(range(angle.low.deg(), angle.high.deg()));
}

QString jointValue(const JointAngle& angle)
{
    return degrees(angle.value.deg());
}

QString rangePlaceName(RangePlace place)
{
    switch (place) {
    case RangePlace::Inside: return Drawing::tr("inside its range");
    case RangePlace::NearEdge: return Drawing::tr("near the edge of its range");
    case RangePlace::Outside: return Drawing::tr("outside its range");
    }
    return {};
}

QString leaderLabel(const Leader& leader)
{
    const auto either = [&leader](const char* more, const char* less) {
        const double difference = std::abs(leader.valueMm);
        return Drawing::tr(leader.valueMm > 0.0 ? more : less).arg(amount(leader.kind, difference));
    };
    switch (leader.kind) {
    case LeaderKind::BarHigher:
        return either(QT_TRANSLATE_NOOP("Drawing", "bar %1 higher"),
                      QT_TRANSLATE_NOOP("Drawing", "bar %1 lower"));
    case LeaderKind::BarFurther:
        return either(QT_TRANSLATE_NOOP("Drawing", "bar %1 further away"),
                      QT_TRANSLATE_NOOP("Drawing", "bar %1 nearer"));
    case LeaderKind::StemLonger:
        return either(QT_TRANSLATE_NOOP("Drawing", "stem %1 longer"),
                      QT_TRANSLATE_NOOP("Drawing", "stem %1 shorter"));
    case LeaderKind::SpacersMore:
        return either(QT_TRANSLATE_NOOP("Drawing", "%1 more spacers"),
                      QT_TRANSLATE_NOOP("Drawing", "%1 fewer spacers"));
    case LeaderKind::HeadTubeHigher:
        return either(QT_TRANSLATE_NOOP("Drawing", "head tube %1 higher"),
                      QT_TRANSLATE_NOOP("Drawing", "head tube %1 lower"));
    case LeaderKind::TopTubeHigher:
        return either(QT_TRANSLATE_NOOP("Drawing", "top tube %1 higher"),
                      QT_TRANSLATE_NOOP("Drawing", "top tube %1 lower"));
    case LeaderKind::FrontWheelFurther:
        return either(QT_TRANSLATE_NOOP("Drawing", "front wheel %1 further"),
                      QT_TRANSLATE_NOOP("Drawing", "front wheel %1 nearer"));
    case LeaderKind::SaddleHigher:
        return either(QT_TRANSLATE_NOOP("Drawing", "saddle %1 higher"),
                      QT_TRANSLATE_NOOP("Drawing", "saddle %1 lower"));
    case LeaderKind::SaddleFurtherBack:
        return either(QT_TRANSLATE_NOOP("Drawing", "saddle %1 further back"),
                      QT_TRANSLATE_NOOP("Drawing", "saddle %1 further forward"));
    case LeaderKind::CrankLonger:
        return either(QT_TRANSLATE_NOOP("Drawing", "crank %1 longer"),
                      QT_TRANSLATE_NOOP("Drawing", "crank %1 shorter"));
    }
    return {};
}

QString leadersLeftOut(std::size_t count)
{
    return Drawing::tr("… and %1 more").arg(count);
}

QString leadersHeading(const SideView& view)
{
    return Drawing::tr("%1 against %2").arg(otherName(view), chosenName(view));
}

QString chosenName(const SideView& view)
{
    return nameOf(view.chosen, view);
}

QString otherName(const SideView& view)
{
    return view.other ? nameOf(*view.other, view) : QString();
}

QString blockTitle(const SideView& view)
{
    const bool oneModel = view.other && view.other->model == view.chosen.model;
    return oneModel ? Drawing::tr("%1, side view to scale").arg(asName(view.chosen.model))
                    : Drawing::tr("Side view to scale");
}

std::vector<BlockRow> blockRows(const SideView& view)
{
    std::vector<BlockRow> rows;
    const auto add = [&](const char* label, auto&& value) {
        BlockRow row{Drawing::tr(label), {}, {}};
        if (view.chosen.figures)
            row.chosen = value(*view.chosen.figures);
        if (view.other && view.other->figures)
            row.other = value(*view.other->figures);
        rows.push_back(row);
    };
    using Figures = SetupFigures;
    if (!view.chosen.figures && !(view.other && view.other->figures))
        return rows;
    add(QT_TRANSLATE_NOOP("Drawing", "saddle height"),
        [](const Figures& f) { return mm(f.saddleHeightMm); });
    add(QT_TRANSLATE_NOOP("Drawing", "setback"), [](const Figures& f) { return mm(f.setbackMm); });
    add(QT_TRANSLATE_NOOP("Drawing", "stem"),
        [](const Figures& f) { return stemName(f.stem, f.stemFlipped); });
    add(QT_TRANSLATE_NOOP("Drawing", "spacers"),
        [](const Figures& f) { return halfMm(f.spacersMm); });
    add(QT_TRANSLATE_NOOP("Drawing", "bar"), [](const Figures& f) { return barName(f.bar); });
    add(QT_TRANSLATE_NOOP("Drawing", "crank"), [](const Figures& f) { return halfMm(f.crankMm); });
    return rows;
}

QString positionLine(const RiderSketch& rider)
{
    return Drawing::tr("position: %1, %2").arg(nameOf(rider.use), handsOn(rider.place));
}

QString rangeKey()
{
    return Drawing::tr("shaded at a joint: its comfortable range");
}

QString scaleLabel(double lengthMm)
{
    return partMm(lengthMm);
}

QString dimensionLabel(const Dimension& dimension)
{
    const QString value = dimensionValue(dimension);
    switch (dimension.kind) {
    case DimensionKind::SaddleHeight: return Drawing::tr("saddle height %1").arg(value);
    case DimensionKind::Setback: return Drawing::tr("setback %1").arg(value);
    case DimensionKind::SaddleToBarDrop:
        return Drawing::tr("bar %1", "19 mm below the saddle").arg(value);
    case DimensionKind::GripReach: return Drawing::tr("grip reach %1").arg(value);
    case DimensionKind::GripHeight: return Drawing::tr("grip height %1").arg(value);
    case DimensionKind::Stack: return Drawing::tr("stack %1").arg(value);
    case DimensionKind::Reach: return Drawing::tr("frame reach %1").arg(value);
    case DimensionKind::FrontCentre: return Drawing::tr("front-centre %1").arg(value);
    case DimensionKind::Wheelbase: return Drawing::tr("wheelbase %1").arg(value);
    case DimensionKind::NoseSetback: return Drawing::tr("nose %1", "58 mm behind").arg(value);
    case DimensionKind::NoseToBar: return Drawing::tr("nose to clamp %1").arg(value);
    case DimensionKind::BarBelowSaddle:
        return Drawing::tr("clamp %1", "of the bar; 19 mm below the saddle").arg(value);
    case DimensionKind::BarReach: return Drawing::tr("clamp %1 ahead", "of the bar").arg(value);
    case DimensionKind::BarHeight: return Drawing::tr("clamp %1 up", "of the bar").arg(value);
    }
    return {};
}

QString dimensionValue(const Dimension& dimension)
{
    if (dimension.kind == DimensionKind::SaddleToBarDrop
        || dimension.kind == DimensionKind::BarBelowSaddle)
        return againstSaddle(dimension.valueMm);
    if (dimension.kind == DimensionKind::NoseSetback)
        return behindBracket(dimension.valueMm);
    return ofFrame(dimension.kind) ? partMm(dimension.valueMm) : mm(dimension.valueMm);
}

QString dimensionMore(const Dimension& dimension)
{
    if (!dimension.otherMm)
        return {};
    const double more = *dimension.otherMm - dimension.valueMm;
    if (std::abs(more) < 0.5)
        return {};
    const QString amount = ofFrame(dimension.kind) ? partMm(std::abs(more)) : mm(std::abs(more));
    return (more > 0.0 ? QStringLiteral("+") : QStringLiteral("−")) + amount;
}

std::vector<LegendRow> legendRows(const SideView& view, const Layers& layers)
{
    std::vector<LegendRow> rows;
    if (!view.drawn)
        return rows;
    const QString chosen = chosenName(view);
    QStringList texts;
    if (view.rider && layers.rider) {
        const QString use = nameOf(view.rider->use);
        texts << Drawing::tr("%1: %2, %3").arg(chosen, use, handsOn(view.rider->place))
              << Drawing::tr("%1: %2").arg(chosen, use);
    }
    rows.push_back({LegendLine::Whole, texts << chosen});
    if (view.other && layers.other)
        rows.push_back({LegendLine::Dashed, {otherName(view)}});
    if (view.ridden && layers.ridden)
        rows.push_back({LegendLine::Dotted, {Drawing::tr("ridden today")}});
    return rows;
}

QString drawingDescription(const SideView& view)
{
    QStringList parts;
    parts << (view.other ? Drawing::tr("%1 drawn whole, %2 as a dashed outline.")
                               .arg(chosenName(view), otherName(view))
                         : Drawing::tr("%1 drawn whole.").arg(chosenName(view)));
    if (view.rider) {
        QStringList joints;
        for (const JointAngle& angle : view.rider->angles)
            joints << Drawing::tr("%1 (comfortable %2)").arg(jointLabel(angle), jointRange(angle));
        parts << Drawing::tr("%1.").arg(joints.join(Drawing::tr(", ")));
    }
    if (!view.leaders.empty()) {
        QStringList leaders;
        for (const Leader& leader : view.leaders)
            leaders << leaderLabel(leader);
        parts << Drawing::tr("%1: %2.").arg(leadersHeading(view), leaders.join(Drawing::tr(", ")));
    }
    return parts.join(QLatin1Char(' '));
}

} // namespace tripoise
