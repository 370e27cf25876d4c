// SPDX-License-Identifier: MIT
#include "wording/board_words.h"

#include "wording/words.h"

#include <algorithm>

namespace tripoise {
namespace {

class BoardWords {
    Q_DECLARE_TR_FUNCTIONS(BoardWords)
};

} // namespace

QString gripHandleWords(const Point& grip)
{
    return BoardWords::tr("grips: %1 ahead of the bottom bracket, %2 above it")
        .arg(mm(grip.x()), mm(grip.y()));
}

QString saddleHandleWords(const SaddlePlace& saddle)
{
    return BoardWords::tr("saddle: %1 high, %2 behind the bottom bracket")
        .arg(mm(saddle.heightMm), mm(saddle.setbackMm()));
}

QString spacersHandleWords(const Setup& setup)
{
    const QString height = halfMm(setup.cockpit.spacersMm);
    return setup.stem.quillMm ? BoardWords::tr("quill raised %1").arg(height)
                              : BoardWords::tr("spacers: %1").arg(height);
}

QString nothingDrawnWords()
{
    return BoardWords::tr(
        "The bicycle stands here, with the rider on it, as soon as there is enough to "
        "decide on.");
}

QString crankWords(double degreesFromTop)
{
    return degrees(degreesFromTop);
}

QString kneeTraceWords()
{
    return BoardWords::tr("knee");
}

QString hipTraceWords()
{
    return BoardWords::tr("hip");
}

QString kneeRangeWords()
{
    return BoardWords::tr("comfortable");
}

QString turnWords(const std::vector<TurnStep>& turn)
{
    if (turn.empty())
        return {};
    const auto by = [](Angle TurnStep::*angle) {
        return [angle](const TurnStep& a, const TurnStep& b) { return a.*angle < b.*angle; };
    };
    const auto [straightest, bent] =
        std::minmax_element(turn.begin(), turn.end(), by(&TurnStep::knee));
    const auto [closed, open] = std::minmax_element(turn.begin(), turn.end(), by(&TurnStep::hip));
    return BoardWords::tr("over a turn of the crank: knee from %1 to %2, hip from %3 to %4")
        .arg(degrees(straightest->knee.deg()), degrees(bent->knee.deg()),
             degrees(closed->hip.deg()), degrees(open->hip.deg()));
}

} // namespace tripoise
