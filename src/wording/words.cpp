// SPDX-License-Identifier: MIT
#include "wording/words.h"

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
        QStringLiteral("(?<=[\\d⅛¼⅜½⅝¾⅞]) (?=(?:mm|in|ft|Zoll|kg|lb|%)(?![\\w]))"),
        QRegularExpression::UseUnicodePropertiesOption);
    static const QRegularExpression fromTo(QStringLiteral("(?<=\\d)–(?=\\d)"));
    constexpr char16_t wordJoiner = u'\u2060';
    return text.replace(between, QString(QChar(QChar::Nbsp)))
        .replace(fromTo, QStringLiteral("–") + QChar(wordJoiner));
}

QString nameOf(Use use)
{
    switch (use) {
    case Use::City: return Words::tr("city riding");
    case Use::Commuting: return Words::tr("commuting");
    case Use::FastCommuting: return Words::tr("fast commuting");
    case Use::Touring: return Words::tr("touring");
    case Use::Gravel: return Words::tr("gravel");
    case Use::Road: return Words::tr("road");
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

QString nameOf(Consideration consideration)
{
    switch (consideration) {
    case Consideration::Posture: return Words::tr("hands off their best place");
    case Consideration::Setback: return Words::tr("knee off its place");
    case Consideration::StemLength: return Words::tr("an ordinary stem length");
    case Consideration::Spacers: return Words::tr("few spacers");
    case Consideration::StemAngle: return Words::tr("an ordinary stem angle");
    case Consideration::ExposedPost: return Words::tr("seat post showing");
    case Consideration::Standover: return Words::tr("room over the top tube");
    case Consideration::Agility: return Words::tr("agile or steady handling");
    case Consideration::Compactness: return Words::tr("a small bicycle to carry and lock");
    case Consideration::Adjustment: return Words::tr("room to move the bar later");
    case Consideration::Crank: return Words::tr("crank length");
    case Consideration::BarWidth: return Words::tr("bar width");
    }
    return {};
}

QString geometryName(const std::string& key)
{
    static const std::vector<std::pair<std::string, const char*>> names{
        {"seat_angle_deg", QT_TRANSLATE_NOOP("Words", "seat angle")},
        {"bb_drop_mm", QT_TRANSLATE_NOOP("Words", "bottom-bracket drop")},
        {"chainstay_mm", QT_TRANSLATE_NOOP("Words", "chainstay")},
        {"fork_offset_mm", QT_TRANSLATE_NOOP("Words", "fork offset (rake)")},
        {"head_tube_mm", QT_TRANSLATE_NOOP("Words", "head tube")},
        {"bead_seat_mm", QT_TRANSLATE_NOOP("Words", "rim size")},
        {"tyre_mm", QT_TRANSLATE_NOOP("Words", "tyre")},
        {"standover_mm", QT_TRANSLATE_NOOP("Words", "standover")}};
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
    const QString size = QString::fromStdString(frame.size);
    return oneModel(prepared) ? size
                              : Words::tr("%1 %2", "model and size of a frame")
                                    .arg(QString::fromStdString(frame.model), size);
}

QString stemName(const Stem& mounted, bool flipped)
{
    const QString length = halfMm(mounted.lengthMm);
    const QString angle = signedDegrees(mounted.angle.deg());
    return flipped ? Words::tr("%1, %2, turned over", "a stem").arg(length, angle)
                   : Words::tr("%1, %2", "a stem").arg(length, angle);
}

QString barName(const Bar& bar)
{
    if (!bar.name.empty())
        return QString::fromStdString(bar.name);
    switch (bar.kind) {
    case BarKind::Flat: return Words::tr("flat, %1", "a bar").arg(halfMm(bar.widthMm));
    case BarKind::Swept: return Words::tr("swept, %1", "a bar").arg(halfMm(bar.widthMm));
    case BarKind::Drop: return Words::tr("drop, %1", "a bar").arg(halfMm(bar.widthMm));
    }
    return {};
}

} // namespace tripoise
