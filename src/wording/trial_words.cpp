// SPDX-License-Identifier: MIT
#include "wording/trial_words.h"

#include "wording/ride_rows.h"
#include "wording/words.h"

#include <cmath>

namespace tripoise {
namespace {

class TrialWords {
    Q_DECLARE_TR_FUNCTIONS(TrialWords)
};

constexpr double leastPulledMm = 0.5;

QString opening(QString sentence)
{
    if (!sentence.isEmpty())
        sentence[0] = sentence.at(0).toUpper();
    return sentence;
}

} // namespace

QStringList pulledLabel(Contact contact, const Point& by)
{
    // Each whole as it may stand first, with the contact's name, or second, without.
    struct Way {
        const char* first;
        const char* second;
    };
    const bool grip = contact == Contact::Grip;
    QStringList rows;
    const auto tell = [&rows](double difference, const Way& more, const Way& less) {
        if (std::abs(difference) < leastPulledMm)
            return;
        const Way& way = difference > 0.0 ? more : less;
        rows << TrialWords::tr(rows.isEmpty() ? way.first : way.second)
                    .arg(mm(std::abs(difference)));
    };
    if (grip) {
        tell(by.x(),
             {QT_TRANSLATE_NOOP("TrialWords", "bar %1 further"),
              QT_TRANSLATE_NOOP("TrialWords", "%1 further")},
             {QT_TRANSLATE_NOOP("TrialWords", "bar %1 nearer"),
              QT_TRANSLATE_NOOP("TrialWords", "%1 nearer")});
        tell(by.y(),
             {QT_TRANSLATE_NOOP("TrialWords", "bar %1 higher"),
              QT_TRANSLATE_NOOP("TrialWords", "%1 higher")},
             {QT_TRANSLATE_NOOP("TrialWords", "bar %1 lower"),
              QT_TRANSLATE_NOOP("TrialWords", "%1 lower")});
    } else {
        tell(by.x(),
             {QT_TRANSLATE_NOOP("TrialWords", "saddle %1 forward"),
              QT_TRANSLATE_NOOP("TrialWords", "%1 forward")},
             {QT_TRANSLATE_NOOP("TrialWords", "saddle %1 back"),
              QT_TRANSLATE_NOOP("TrialWords", "%1 back")});
        tell(by.y(),
             {QT_TRANSLATE_NOOP("TrialWords", "saddle %1 higher"),
              QT_TRANSLATE_NOOP("TrialWords", "%1 higher")},
             {QT_TRANSLATE_NOOP("TrialWords", "saddle %1 lower"),
              QT_TRANSLATE_NOOP("TrialWords", "%1 lower")});
    }
    return rows;
}

QString pulledSentence(const Tried& tried, const Setup& advised)
{
    QStringList sentences;
    const auto tell = [&sentences](Contact contact, const Point& by) {
        const QStringList ways = pulledLabel(contact, by);
        if (!ways.isEmpty())
            sentences << TrialWords::tr("%1.").arg(opening(ways.join(TrialWords::tr(", "))));
    };
    tell(Contact::Grip, tried.setup.grip - advised.grip);
    tell(Contact::Saddle, tried.setup.saddle.point() - advised.saddle.point());
    return sentences.join(QLatin1Char(' '));
}

QString chosenSentence(const QString& pulled)
{
    return TrialWords::tr("Chosen. %1", "a set-up, how it was pulled about").arg(pulled);
}

QString wouldCarrySentence(const Tried& tried)
{
    const double length = tried.setup.stem.lengthMm;
    const double spacers = tried.setup.cockpit.spacersMm;
    if (length < leastToldMm)
        return TrialWords::tr("No stem reaches back that far.");
    if (tried.setup.stem.quillMm)
        return articled(
            spacers < -leastToldMm
                ? TrialWords::tr("A %1 stem would have to sit %2 lower than its quill "
                                 "goes.")
                      .arg(partMm(length), partMm(-spacers))
                : TrialWords::tr("A %1 stem with its quill raised %2 would put it there.")
                      .arg(partMm(length), partMm(std::abs(spacers))));
    if (spacers < -leastToldMm)
        return articled(
            TrialWords::tr("A %1 stem would have to sit %2 lower than without any spacer.")
                .arg(partMm(length), partMm(-spacers)));
    if (spacers < leastToldMm)
        return articled(
            TrialWords::tr("A %1 stem without spacers would put it there.").arg(partMm(length)));
    return articled(TrialWords::tr("A %1 stem on %2 of spacers would put it there.")
                        .arg(partMm(length), partMm(spacers)));
}

QString nearestSentence(const Tried& tried, const Prepared& prepared)
{
    if (!tried.nearest)
        return {};
    const NearestCockpit& nearest = *tried.nearest;
    const QString stem = stemName(nearest.stem, nearest.cockpit.flipped);
    QString parts =
        nearest.stem.quillMm
            ? TrialWords::tr("%1, its quill raised %2").arg(stem, halfMm(nearest.cockpit.spacersMm))
        : nearest.cockpit.spacersMm < leastToldMm
            ? TrialWords::tr("%1 without spacers").arg(stem)
            : TrialWords::tr("%1 on %2 of spacers").arg(stem, halfMm(nearest.cockpit.spacersMm));
    if (nearest.cockpit.bar != tried.setup.cockpit.bar)
        parts = TrialWords::tr("%1 with the bar %2")
                    .arg(parts, barName(prepared.stock.bars[nearest.cockpit.bar]));
    if (nearest.offMm < leastToldMm)
        return TrialWords::tr("In the box: %1.").arg(parts);
    return TrialWords::tr("Nearest in the box: %1, %2 off.").arg(parts, mm(nearest.offMm));
}

QString steeringSentence(const Tried& tried)
{
    const double ahead = tried.gripAheadOfSteeringMm;
    const double more = ahead - tried.advisedAheadOfSteeringMm;
    const QString place = ahead >= 0.0
                              ? TrialWords::tr("Grips %1 ahead of the steering axis").arg(mm(ahead))
                              : TrialWords::tr("Grips %1 behind the steering axis").arg(mm(-ahead));
    if (std::abs(more) < leastToldMm)
        return TrialWords::tr("%1, as advised.").arg(place);
    // Ahead of the axis, less is nearer to it; behind it, more is.
    return TrialWords::tr(
               more > 0.0 ? QT_TRANSLATE_NOOP("TrialWords", "%1, %2 further forward than advised.")
                          : QT_TRANSLATE_NOOP("TrialWords", "%1, %2 further back than advised."))
        .arg(place, mm(std::abs(more)));
}

/// A pull at grips or saddle leaves the feet where they are.
QString roomSentence(const Tried& tried, const Ride& advised)
{
    const QString room = mm(tried.kneeToBarMm);
    const double more = tried.kneeToBarMm - advised.kneeToBar.clearanceMm;
    const QString knee =
        tried.kneeToBarMm <= 0.0       ? TrialWords::tr("The knee meets the bar.")
        : std::abs(more) < leastToldMm ? TrialWords::tr("Knee to bar %1, as advised.").arg(room)
        : more > 0.0 ? TrialWords::tr("Knee to bar %1, %2 more than advised.").arg(room, mm(more))
                     : TrialWords::tr("Knee to bar %1, %2 less than advised.").arg(room, mm(-more));
    return knee + QLatin1Char(' ')
           + TrialWords::tr("Shoe and front wheel: %1, as advised.").arg(toeRoom(advised.toe));
}

QString loadSentence(const Balance& tried, const Balance& advised)
{
    const double share = tried.frontShare();
    // As both are said, in whole hundredths.
    const long more = std::lround(100.0 * share) - std::lround(100.0 * advised.frontShare());
    if (more == 0)
        return TrialWords::tr("The front wheel carries %1, as advised.").arg(percent(share));
    return TrialWords::tr(
               more > 0 ? QT_TRANSLATE_NOOP("TrialWords",
                                            "The front wheel carries %1, %2 more than advised.")
                        : QT_TRANSLATE_NOOP("TrialWords",
                                            "The front wheel carries %1, %2 less than advised."))
        .arg(percent(share), plain(static_cast<double>(std::abs(more))));
}

QString pulledStep(bool saddle)
{
    return saddle ? TrialWords::tr("saddle moved") : TrialWords::tr("bar moved");
}

QString backToAdvisedStep()
{
    return TrialWords::tr("back to the advised set-up");
}

} // namespace tripoise
