// SPDX-License-Identifier: MIT
#include "wording/handover_words.h"

#include "wording/findings.h"
#include "wording/setup_rows.h"
#include "wording/visible.h"
#include "wording/words.h"

#include <QDate>

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

constexpr double leastToldDeg = 0.2;
constexpr double inTenthsBelowDeg = 1.5;

class Built {
    Q_DECLARE_TR_FUNCTIONS(Built)
};

} // namespace

const char* keyOf(BuiltPlace place)
{
    switch (place) {
    case BuiltPlace::SaddleHeight: return "saddle_height_mm";
    case BuiltPlace::NoseSetback: return "nose_setback_mm";
    case BuiltPlace::BarBelowSaddle: return "bar_below_saddle_mm";
    case BuiltPlace::NoseToBar: return "nose_to_bar_mm";
    case BuiltPlace::Stem: return "stem_mm";
    case BuiltPlace::StemAngle: return "stem_angle_deg";
    case BuiltPlace::Spacers: return "spacers_mm";
    case BuiltPlace::Crank: return "crank_mm";
    }
    return "";
}

QString nameOf(BuiltPlace place)
{
    switch (place) {
    case BuiltPlace::SaddleHeight: return Built::tr("Saddle height");
    case BuiltPlace::NoseSetback: return Built::tr("Saddle nose");
    case BuiltPlace::BarBelowSaddle: return Built::tr("Bar clamp, against saddle");
    case BuiltPlace::NoseToBar: return Built::tr("Nose to bar clamp");
    case BuiltPlace::Stem: return Built::tr("Stem");
    case BuiltPlace::StemAngle: return Built::tr("Stem's angle");
    case BuiltPlace::Spacers: return Built::tr("Spacers under the stem");
    case BuiltPlace::Crank: return Built::tr("Cranks");
    }
    return {};
}

QString builtSentence(const BuiltReading& reading)
{
    const auto say = [&](double value) {
        switch (reading.place) {
        case BuiltPlace::NoseSetback: return behindBracket(value);
        case BuiltPlace::BarBelowSaddle: return againstSaddle(value);
        case BuiltPlace::StemAngle: return signedDegrees(value);
        case BuiltPlace::Stem:
        case BuiltPlace::Spacers:
        case BuiltPlace::Crank: return halfMm(value);
        default: return mm(value);
        }
    };
    return reading.off ? Built::tr("%1: %2 instead of %3.", "a place, as built, as advised")
                             .arg(nameOf(reading.place), say(reading.read), say(reading.wanted))
                       : Built::tr("%1: %2, as it should be.", "a place, as built")
                             .arg(nameOf(reading.place), say(reading.read));
}

QStringList postureEffects(const Tried& rider, const std::vector<UsePosture>& before,
                           const LegPosture& leg, const Findings& known)
{
    QStringList told;
    const auto tell = [&told](const QString& words, Angle is, Angle was) {
        const double moved = std::abs((is - was).deg());
        const int decimals = moved < inTenthsBelowDeg ? 1 : 0;
        if (moved >= leastToldDeg)
            told << words.arg(degrees(is.deg(), decimals), degrees(was.deg(), decimals));
    };
    if (!rider.uses.empty() && !before.empty())
        tell(Built::tr("The back rises %1 instead of %2."), rider.uses.front().posture.trunk,
             before.front().posture.trunk);
    tell(Built::tr("The knee is bent %1 instead of %2 at the lowest pedal."), rider.leg.kneeBottom,
         leg.kneeBottom);
    for (const Finding& finding : rider.findings)
        if (finding.severity != Severity::Note
            && std::none_of(known.begin(), known.end(), [&finding](const Finding& one) {
                   return one.code == finding.code && one.use == finding.use;
               }))
            told << sentence(finding);
    told.removeDuplicates();
    return told;
}

QStringList builtEffects(const Finished& finished)
{
    const std::optional<Tried> rider = finished.check ? finished.check->rider : std::nullopt;
    return rider ? postureEffects(*rider, finished.over.uses(), finished.over.leg(), {})
                 : QStringList();
}

Section builtSection(const AsBuilt& built, const Finished& finished)
{
    Section section{Built::tr("As built: %1", "a bicycle").arg(builtOf(built)), {}};
    if (finished.check)
        for (const BuiltReading& reading : finished.check->readings)
            section.items << builtSentence(reading);
    section.items << builtEffects(finished);
    return section;
}

QString builtOf(const AsBuilt& built)
{
    const QString size = asName(built.size);
    const QString model = asName(built.model);
    const QString bicycle =
        model.isEmpty() ? size : Built::tr("%1 %2", "model, size").arg(model, size);
    const QDate day = QDate::fromString(QString::fromStdString(built.date), Qt::ISODate);
    return day.isValid() ? Built::tr("%1, %2", "a bicycle, a day").arg(bicycle, dayName(day))
                         : bicycle;
}

QString builtSummary(int off)
{
    return off == 0 ? Built::tr("as it should be") : Built::tr("%1 off", "readings").arg(off);
}

QString dayName(const QDate& day)
{
    return speech().locale.toString(day, QLocale::ShortFormat);
}

QString builtGone()
{
    return Built::tr("no longer among the sizes");
}

QString builtStep(const QString& what)
{
    return Built::tr("%1, as built", "what was read off").arg(what);
}

QString builtNotesStep()
{
    return Built::tr("remarks on the finished bicycle");
}

QString builtClearStep()
{
    return Built::tr("clearing what was read off the finished bicycle");
}

} // namespace tripoise
