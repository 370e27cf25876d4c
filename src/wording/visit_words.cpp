// SPDX-License-Identifier: MIT
#include "wording/visit_words.h"

#include "wording/complaint_words.h"
#include "wording/handover_words.h"
#include "wording/visible.h"
#include "wording/words.h"

#include <QDate>

#include <cmath>

namespace tripoise {
namespace {

class Visits {
    Q_DECLARE_TR_FUNCTIONS(Visits)
};

QString partWords(Change change)
{
    switch (change) {
    case Change::SaddleTilt: return Visits::tr("saddle's tilt");
    case Change::OtherSaddle: return Visits::tr("another saddle");
    case Change::Grips: return Visits::tr("grips");
    case Change::Levers: return Visits::tr("levers");
    case Change::Shoes: return Visits::tr("shoes");
    case Change::FootBack: return Visits::tr("foot further back");
    case Change::FootAhead: return Visits::tr("foot further forward");
    case Change::ShorterCrank: return Visits::tr("shorter cranks");
    case Change::Headset: return Visits::tr("headset, tyres and load looked at");
    default: return {};
    }
}

} // namespace

QString changeSentence(const NextChange& change)
{
    const ChangeStep& step = change.step;
    const QString far = mm(step.mm);
    switch (step.change) {
    case Change::BarUp:
        return Visits::tr("The bar %1 higher, by spacers or a stem with more rise.").arg(far);
    case Change::BarNearer:
        return Visits::tr("The bar %1 nearer: turned in its clamp, or on the next shorter stem.")
            .arg(far);
    case Change::BarFurther:
        return Visits::tr("The bar %1 further: turned in its clamp, or on the next longer stem.")
            .arg(far);
    case Change::SaddleUp: return Visits::tr("The saddle %1 higher.").arg(far);
    case Change::SaddleDown: return Visits::tr("The saddle %1 lower.").arg(far);
    case Change::SaddleBack: return Visits::tr("The saddle %1 further back.").arg(far);
    case Change::SaddleAhead: return Visits::tr("The saddle %1 further forward.").arg(far);
    case Change::SaddleTilt:
        return Visits::tr("The saddle's tilt: level over its whole length, then its nose down by a "
                          "degree or two.");
    case Change::OtherSaddle: return Visits::tr("Another saddle, of another width or shape.");
    case Change::Grips:
        return Visits::tr("Grips that spread the palm, or a bar of another width or sweep.");
    case Change::Levers:
        return Visits::tr("The levers' slope and reach, wrist and forearm in line.");
    case Change::Shoes: return Visits::tr("Shoes that are wider, or laced less tight.");
    case Change::FootBack: return Visits::tr("The foot further back on the pedal.");
    case Change::FootAhead: return Visits::tr("The foot further forward on the pedal.");
    case Change::ShorterCrank: return Visits::tr("Shorter cranks, the saddle higher by as much.");
    case Change::Headset:
        return Visits::tr("The headset's play, the tyres' pressure, the load lower and further "
                          "back.");
    case Change::NextStep:
        return Visits::tr("The next step of the way: saddle and bar %1 on, as on the sheet.")
            .arg(far);
    }
    return {};
}

QString trustWords(const ChangeStep& step)
{
    return step.taught ? Visits::tr("as it is taught, from memory")
                       : Visits::tr("common practice, no source");
}

QString movedSentence(const Moved& moved)
{
    QStringList told;
    const auto tell = [&told](double value, const QString& more, const QString& less) {
        if (value != 0.0)
            told << (value > 0.0 ? more : less).arg(mm(std::abs(value)));
    };
    tell(moved.saddleUpMm, Visits::tr("saddle %1 higher"), Visits::tr("saddle %1 lower"));
    tell(moved.saddleBackMm, Visits::tr("saddle %1 back"), Visits::tr("saddle %1 forward"));
    tell(moved.barUpMm, Visits::tr("bar %1 higher"), Visits::tr("bar %1 lower"));
    tell(moved.barBackMm, Visits::tr("bar %1 nearer"), Visits::tr("bar %1 further"));
    if (moved.step && told.isEmpty())
        told << partWords(*moved.step);
    if (!moved.part.empty())
        told << asName(moved.part);
    return told.isEmpty() ? Visits::tr("nothing changed")
                          : Visits::tr("changed: %1", "at a visit").arg(listed(told));
}

QString visitTitle(const Visit& visit, int number)
{
    const QDate day = QDate::fromString(QString::fromStdString(visit.date), Qt::ISODate);
    return day.isValid() ? Visits::tr("Visit %1, %2", "number, day").arg(number).arg(dayName(day))
                         : Visits::tr("Visit %1", "number").arg(number);
}

QString saysSentence(const Visit& visit)
{
    QStringList says;
    for (const Complaint complaint : visit.says)
        says << nameOf(complaint);
    for (const std::string& other : visit.otherSays)
        says << asName(other);
    return says.join(Visits::tr(", ", "between complaints"));
}

QStringList changeEffects(const NextVisit& visit, const NextChange& change)
{
    if (!change.then || !visit.rider)
        return {};
    return postureEffects(*change.then, visit.rider->uses, visit.rider->leg, visit.rider->findings);
}

QString lastingSentence(Complaint complaint)
{
    const QString name = nameOf(complaint);
    switch (complaint) {
    case Complaint::Stretched:
    case Complaint::Cramped:
    case Complaint::Nervous:
    case Complaint::ToeTouches:
        return Visits::tr("%1, still after a change: look at the frame's size and the parts again.",
                          "a complaint")
            .arg(name);
    default:
        return Visits::tr("%1, still after a change: this belongs to a health professional before "
                          "anything else is moved.",
                          "a complaint")
            .arg(name);
    }
}

QString asOnTheSheet(const QString& reading)
{
    return Visits::tr("First as on the sheet. %1", "a reading of the finished bicycle")
        .arg(reading);
}

QString onlyOneChange()
{
    return Visits::tr("One change at a visit. Pain or an injury: a health professional first.");
}

QString movesOfSaddle(double squareMm)
{
    return Visits::tr("saddle, squares of %1").arg(partMm(squareMm));
}

QString movesOfHands()
{
    return Visits::tr("hands");
}

QString visitsSummary(const std::vector<Visit>& visits)
{
    return visits.empty() ? QString() : visitTitle(visits.back(), int(visits.size()));
}

QString visitStep()
{
    return Visits::tr("a visit");
}

QString visitGoneStep()
{
    return Visits::tr("removing a visit");
}

QString visitSaysStep()
{
    return Visits::tr("what the rider says");
}

QString visitChangeStep()
{
    return Visits::tr("what was changed");
}

QString visitNotesStep()
{
    return Visits::tr("remarks of a visit");
}

} // namespace tripoise
