// SPDX-License-Identifier: MIT
#include "wording/setup_rows.h"

#include "wording/words.h"

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

template <typename Say>
SetupRow rowOf(const QString& label, const QString& meaning, const Columns& columns, Say&& say)
{
    SetupRow row{label, meaning, {}, false};
    for (const AdvisedSetup* column : columns)
        row.said << (column ? say(*column) : QStringLiteral("–"));
    return row;
}

template <typename Say>
SetupRow partOf(const QString& label, const QString& meaning, const Columns& columns, Say&& say)
{
    SetupRow row = rowOf(label, meaning, columns, std::forward<Say>(say));
    row.part = row.essential = true;
    return row;
}

SetupRow essential(SetupRow row)
{
    row.essential = true;
    return row;
}

QString backMeaning()
{
    return Words::tr("How far the back rises from the horizontal, hip to shoulder, hands at the "
                     "bar's main place. In brackets what is comfortable for this riding.");
}

QString backOf(const UsePosture& use, Telling telling)
{
    const QString back = degrees(use.posture.trunk.deg());
    const QString comfortable =
        range(use.windows.trunk.low().deg(), use.windows.trunk.high().deg());
    return telling == Telling::InFull
               ? Words::tr("%1 (%2 is comfortable)").arg(back, comfortable)
               : Words::tr("%1 (%2)", "the back, what is comfortable").arg(back, comfortable);
}

} // namespace

QString againstSaddle(double belowMm)
{
    const QString apart = mm(std::abs(belowMm));
    if (apart == mm(0.0))
        return Words::tr("level", "the bar, against the saddle");
    return (belowMm > 0.0 ? Words::tr("%1 below", "the bar, against the saddle")
                          : Words::tr("%1 above", "the bar, against the saddle"))
        .arg(apart);
}

QString behindBracket(double behindMm)
{
    const QString apart = mm(std::abs(behindMm));
    if (apart == mm(0.0))
        return Words::tr("plumb over it", "the saddle's nose, against the bottom bracket");
    return (behindMm > 0.0 ? Words::tr("%1 behind", "the saddle's nose, against the bottom bracket")
                           : Words::tr("%1 ahead", "the saddle's nose, against the bottom bracket"))
        .arg(apart);
}

bool SetupRow::differs() const
{
    return std::any_of(said.begin(), said.end(),
                       [this](const QString& value) { return value != said.front(); });
}

std::vector<SetupRow> setupRows(const Columns& columns, const Advice& advice,
                                const Prepared& prepared)
{
    return {
        essential(rowOf(
            Words::tr("saddle height, BB to top"),
            Words::tr("From the middle of the bottom bracket straight to the top of the saddle "
                      "where it is 80 mm wide."),
            columns, [](const AdvisedSetup& a) { return mm(a.setup.saddle.heightMm); })),
        rowOf(Words::tr("saddle setback, behind BB"),
              Words::tr("The same point of the saddle, level behind the middle of the bottom "
                        "bracket."),
              columns, [](const AdvisedSetup& a) { return mm(a.setup.saddle.setbackMm()); }),
        essential(rowOf(
            Words::tr("saddle nose, behind BB"),
            Words::tr("The saddle's nose behind a plumb line through the bottom bracket."), columns,
            [&](const AdvisedSetup& a) {
                return mm(a.setup.saddle.setbackMm() - advice.saddleNoseAheadMm);
            })),
        partOf(
            Words::tr("stem"),
            Words::tr("Length, and its angle as mounted, up from a right angle to the steerer."),
            columns,
            [](const AdvisedSetup& a) { return stemName(a.setup.stem, a.setup.cockpit.flipped); }),
        partOf(Words::tr("spacers under it"),
               Words::tr("All spacers between headset and stem together, out of the pieces in the "
                         "box."),
               columns,
               [](const AdvisedSetup& a) {
                   const QString height = halfMm(a.setup.cockpit.spacersMm);
                   return a.setup.stem.quillMm ? Words::tr("quill raised %1").arg(height) : height;
               }),
        partOf(Words::tr("bar"), Words::tr("Out of the box of parts."), columns,
               [&](const AdvisedSetup& a) {
                   return barName(prepared.stock.bars[a.setup.cockpit.bar]);
               }),
        partOf(Words::tr("cranks"),
               Words::tr("Out of the box of parts; the fitted ones stay unless "
                         "others suit the legs better."),
               columns, [](const AdvisedSetup& a) { return halfMm(a.setup.crankMm); }),
        rowOf(
            Words::tr("grip from BB, ahead and up"),
            Words::tr("The middle of the palm from the middle of the bottom bracket: level ahead, "
                      "and plumb up."),
            columns,
            [](const AdvisedSetup& a) {
                return Words::tr("%1, %2", "ahead, up")
                    .arg(mm(a.setup.grip.x()), mm(a.setup.grip.y()));
            }),
        essential(rowOf(Words::tr("bar against saddle"),
                        Words::tr("The palm below or above the top of the saddle, plumb."), columns,
                        [](const AdvisedSetup& a) {
                            return againstSaddle(a.setup.saddle.point().y() - a.setup.grip.y());
                        })),
        partOf(Words::tr("steerer, crown to top"),
               Words::tr("Where the steerer ends for this stem and these spacers, from the crown "
                         "seat. Leave it longer on a first build."),
               columns,
               [](const AdvisedSetup& a) {
                   return a.setup.stem.quillMm ? Words::tr("as it is", "a steerer")
                                               : partMm(a.setup.steererCutMm);
               }),
        rowOf(Words::tr("knee, lowest pedal"),
              Words::tr("How far the knee is bent at the lowest pedal: riding, and as a goniometer "
                        "reads it on a rider held still with the heel as it pedals, give or take "
                        "5°. With the foot held level it reads some 8° to 10° less again."),
              columns,
              [](const AdvisedSetup& a) {
                  return Words::tr("%1 riding, %2 held still")
                      .arg(degrees(a.leg.kneeBottom.deg()),
                           degrees(a.leg.kneeBottomStill.centre.deg()));
              }),
    };
}

std::vector<SetupRow> backRows(const Columns& columns, Telling telling)
{
    std::vector<SetupRow> rows;
    const auto first = std::find_if(columns.begin(), columns.end(),
                                    [](const AdvisedSetup* column) { return column; });
    if (first == columns.end())
        return rows;
    for (std::size_t i = 0; i < (*first)->uses.size(); ++i)
        rows.push_back(
            rowOf(Words::tr("back, %1").arg(nameOf((*first)->uses[i].use)), backMeaning(), columns,
                  [i, telling](const AdvisedSetup& a) { return backOf(a.uses[i], telling); }));
    return rows;
}

SetupRow ownBackRow(const Columns& columns, Telling telling)
{
    return rowOf(Words::tr("back"), backMeaning(), columns,
                 [telling](const AdvisedSetup& a) { return backOf(a.uses.front(), telling); });
}

QString setupSpoken(const SetupRow& row, const QString& firstTitle, const QString& secondTitle)
{
    if (row.said.size() < 2)
        return Words::tr("%1: %2", "a line of a set-up").arg(row.label, row.said.value(0));
    return row.differs()
               ? Words::tr("%1 differs: %2 %3, %4 %5", "a line of two set-ups: size, value")
                     .arg(row.label, firstTitle, row.said[0], secondTitle, row.said[1])
               : Words::tr("%1: both %2", "a line of two set-ups").arg(row.label, row.said[0]);
}

QString differencesSentence(const std::vector<SetupRow>& rows)
{
    QStringList names;
    for (const SetupRow& row : rows)
        if (row.part && row.differs())
            names << row.label;
    return names.isEmpty() ? Words::tr("The same parts on both.")
                           : Words::tr("Parts that differ: %1.").arg(listed(names));
}

} // namespace tripoise
