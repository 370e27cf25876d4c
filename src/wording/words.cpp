// SPDX-License-Identifier: MIT
#include "wording/words.h"

#include "wording/visible.h"

#include <QRegularExpression>
#include <QStringList>

#include <algorithm>

namespace tripoise {

QString listed(const QStringList& items)
{
    if (items.size() < 2)
        return items.join(QString());
    return Words::tr("%1 and %2")
        .arg(items.mid(0, items.size() - 1).join(Words::tr(", ", "between items of a list")),
             items.last());
}

QString unbroken(QString text)
{
    static const QRegularExpression between(
        QStringLiteral("(?<=[\\d⅛¼⅜½⅝¾⅞]) (?=(?:mm|in|ft|Zoll|kg|lb|m|g|%)(?![\\w]))"),
        QRegularExpression::UseUnicodePropertiesOption);
    static const QRegularExpression fromTo(QStringLiteral("(?<=\\d)–(?=\\d)"));
    constexpr char16_t wordJoiner = u'\u2060';
    return text.replace(between, QString(QChar(QChar::Nbsp)))
        .replace(fromTo, QStringLiteral("–") + QChar(wordJoiner))
        .replace(QStringLiteral("km/h"), QStringLiteral("km/") + QChar(wordJoiner) + u'h');
}

QString articled(QString sentence)
{
    // before eight, eleven and eighteen, and what begins with them
    static const QRegularExpression before(
        QStringLiteral("\\b([Aa])(?= (?:8\\d*|1[18])(?:\\.\\d+)? mm\\b)"));
    return sentence.replace(before, QStringLiteral("\\1n"));
}

QString nameOf(Use use)
{
    switch (use) {
    case Use::City: return Words::tr("city riding");
    case Use::Commuting: return Words::tr("commuting");
    case Use::FastCommuting: return Words::tr("fast commuting");
    case Use::Touring: return Words::tr("touring");
    case Use::Gravel: return Words::tr("gravel riding");
    case Use::Road: return Words::tr("road riding");
    }
    return {};
}

QString nameOf(const Mix& mix)
{
    std::vector<Use> uses;
    for (const Use use : allUses)
        if (mix.of(use) > 0.0)
            uses.push_back(use);
    std::stable_sort(uses.begin(), uses.end(),
                     [&mix](Use a, Use b) { return mix.of(a) > mix.of(b); });
    if (uses.size() == 1)
        return nameOf(uses.front());
    QStringList parts;
    for (const Use use : uses)
        parts << Words::tr("%1 %2", "share of a use in a mix: 70 % touring")
                     .arg(percent(mix.of(use)), nameOf(use));
    return listed(parts);
}

QString nameOf(Quantity quantity)
{
    switch (quantity) {
    case Quantity::Stature: return Words::tr("height");
    case Quantity::Inseam: return Words::tr("inseam");
    case Quantity::SternalNotchHeight: return Words::tr("height of the notch above the breastbone");
    case Quantity::AcromialHeight: return Words::tr("shoulder height");
    case Quantity::TrochanterionHeight: return Words::tr("hip-bone height");
    case Quantity::KneeHeight: return Words::tr("knee height");
    case Quantity::AnkleHeight: return Words::tr("ankle height");
    case Quantity::SittingHeight: return Words::tr("sitting height");
    case Quantity::KneeHeightSitting: return Words::tr("knee height, seated");
    case Quantity::ButtockKnee: return Words::tr("buttock to knee");
    case Quantity::UpperArm: return Words::tr("upper arm");
    case Quantity::Forearm: return Words::tr("forearm");
    case Quantity::Hand: return Words::tr("hand");
    case Quantity::WristToGrip: return Words::tr("wrist to grip");
    case Quantity::ElbowRearToGrip: return Words::tr("elbow to grip");
    case Quantity::Foot: return Words::tr("foot length");
    case Quantity::BallOfFoot: return Words::tr("heel to ball of the foot");
    case Quantity::Biacromial: return Words::tr("shoulder breadth");
    case Quantity::HipBreadth: return Words::tr("hip breadth");
    case Quantity::Span: return Words::tr("arm span");
    case Quantity::Mass: return Words::tr("weight");
    case Quantity::ArmToGrip: return Words::tr("arm, shoulder to grip");
    }
    return {};
}

QString geometryName(const std::string& key)
{
    static const std::vector<std::pair<std::string, const char*>> names{
        {"stack_mm", QT_TRANSLATE_NOOP("Words", "stack")},
        {"reach_mm", QT_TRANSLATE_NOOP("Words", "frame reach")},
        {"seat_angle_deg", QT_TRANSLATE_NOOP("Words", "seat angle")},
        {"head_angle_deg", QT_TRANSLATE_NOOP("Words", "head angle")},
        {"head_tube_mm", QT_TRANSLATE_NOOP("Words", "head tube")},
        {"seat_tube_mm", QT_TRANSLATE_NOOP("Words", "seat tube")},
        {"top_tube_effective_mm", QT_TRANSLATE_NOOP("Words", "effective top tube")},
        {"chainstay_mm", QT_TRANSLATE_NOOP("Words", "chainstay")},
        {"bb_drop_mm", QT_TRANSLATE_NOOP("Words", "bottom-bracket drop")},
        {"wheelbase_mm", QT_TRANSLATE_NOOP("Words", "wheelbase")},
        {"front_centre_mm", QT_TRANSLATE_NOOP("Words", "front-centre")},
        {"fork_length_mm", QT_TRANSLATE_NOOP("Words", "fork length")},
        {"fork_offset_mm", QT_TRANSLATE_NOOP("Words", "fork offset (rake)")},
        {"standover_mm", QT_TRANSLATE_NOOP("Words", "standover")},
        {"seat_angle_actual_deg", QT_TRANSLATE_NOOP("Words", "seat angle of the tube itself")},
        {"top_tube_actual_mm", QT_TRANSLATE_NOOP("Words", "top tube along the tube")},
        {"seat_tube_centre_mm", QT_TRANSLATE_NOOP("Words", "seat tube, centre to centre")},
        {"chainstay_horizontal_mm", QT_TRANSLATE_NOOP("Words", "chainstay, horizontal")},
        {"chainstay_long_mm", QT_TRANSLATE_NOOP("Words", "chainstay at its longest")},
        {"bb_height_mm", QT_TRANSLATE_NOOP("Words", "bottom-bracket height")},
        {"bb_rise_mm", QT_TRANSLATE_NOOP("Words", "bottom bracket above the axles")},
        {"wheelbase_long_mm", QT_TRANSLATE_NOOP("Words", "wheelbase at its longest")},
        {"front_centre_horizontal_mm", QT_TRANSLATE_NOOP("Words", "front-centre, horizontal")},
        {"fork_length_axial_mm", QT_TRANSLATE_NOOP("Words", "fork length along the axis")},
        {"trail_mm", QT_TRANSLATE_NOOP("Words", "trail")},
        {"lower_headset_mm", QT_TRANSLATE_NOOP("Words", "lower headset")},
        {"upper_headset_mm", QT_TRANSLATE_NOOP("Words", "upper headset")},
        {"wheel_radius_mm", QT_TRANSLATE_NOOP("Words", "wheel radius")},
        {"bead_seat_mm", QT_TRANSLATE_NOOP("Words", "rim size")},
        {"tyre_mm", QT_TRANSLATE_NOOP("Words", "tyre")},
        {"max_tyre_mm", QT_TRANSLATE_NOOP("Words", "widest tyre")},
        {"steerer_mm", QT_TRANSLATE_NOOP("Words", "steerer")},
        {"post_diameter_mm", QT_TRANSLATE_NOOP("Words", "seat post, diameter")},
        {"post_length_mm", QT_TRANSLATE_NOOP("Words", "seat post, length")},
        {"post_offset_mm", QT_TRANSLATE_NOOP("Words", "seat post, offset")},
        {"max_system_kg", QT_TRANSLATE_NOOP("Words", "system weight allowed")},
        {"mass_kg", QT_TRANSLATE_NOOP("Words", "weight")},
        {"price", QT_TRANSLATE_NOOP("Words", "price")},
        {"stem_length_mm", QT_TRANSLATE_NOOP("Words", "stem as sold")},
        {"bar_width_mm", QT_TRANSLATE_NOOP("Words", "bar width as sold")},
        {"crank_length_mm", QT_TRANSLATE_NOOP("Words", "cranks as sold")},
        {"rider_height_mm", QT_TRANSLATE_NOOP("Words", "rider height")},
        {"rider_inseam_mm", QT_TRANSLATE_NOOP("Words", "rider inseam")},
        {"other_part", QT_TRANSLATE_NOOP("Words", "another part")}};
    for (const auto& [known, name] : names)
        if (known == key)
            return Words::tr(name);
    return QString::fromStdString(key);
}

namespace {

bool oneModel(const Prepared& prepared)
{
    return std::all_of(prepared.sizes.begin(), prepared.sizes.end(), [&](const PreparedSize& size) {
        return size.frame.model == prepared.sizes.front().frame.model;
    });
}

} // namespace

QString sizeName(const FrameSize& frame, const Prepared& prepared, Place place)
{
    const QString label = sizeLabel(frame, prepared);
    switch (place) {
    case Place::Opening:
        return Words::tr("The %1", "a size of frame, opening a sentence").arg(label);
    case Place::Within: return Words::tr("the %1", "a size of frame, within a sentence").arg(label);
    }
    return {};
}

QString sizeLabel(const FrameSize& frame, const Prepared& prepared)
{
    const QString size = asName(frame.size);
    return oneModel(prepared)
               ? size
               : Words::tr("%1 %2", "model and size of a frame").arg(asName(frame.model), size);
}

QString stemName(const Stem& mounted, bool flipped)
{
    const QString length = halfMm(mounted.lengthMm);
    const QString angle = signedDegrees(mounted.angle.deg());
    if (mounted.quillMm)
        return (mounted.joint == StemJoint::QuillAdaptor
                    ? Words::tr("%1, %2, on a quill of %3", "a stem")
                    : Words::tr("%1, %2, quill %3", "a stem"))
            .arg(length, angle, plain(*mounted.quillMm, 1));
    return flipped ? Words::tr("%1, %2, flipped", "a stem").arg(length, angle)
                   : Words::tr("%1, %2", "a stem").arg(length, angle);
}

QString barName(const Bar& bar)
{
    if (!bar.name.empty())
        return asName(bar.name);
    switch (bar.kind) {
    case BarKind::Flat: return Words::tr("flat, %1", "a bar").arg(halfMm(bar.widthMm));
    case BarKind::Swept: return Words::tr("swept, %1", "a bar").arg(halfMm(bar.widthMm));
    case BarKind::Drop: return Words::tr("drop, %1", "a bar").arg(halfMm(bar.widthMm));
    }
    return {};
}

} // namespace tripoise
