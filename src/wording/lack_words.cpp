// SPDX-License-Identifier: MIT
#include "wording/lack_words.h"

#include "wording/words.h"

namespace tripoise {

QStringList lackSentences(const std::vector<Lack>& lacks)
{
    QStringList typed;
    QStringList parts;
    QStringList sentences;
    for (const Lack lack : lacks) {
        switch (lack) {
        case Lack::Stature: typed << nameOf(Quantity::Stature); break;
        case Lack::Inseam: typed << nameOf(Quantity::Inseam); break;
        case Lack::Mix: sentences << Words::tr("Say what it will be ridden for."); break;
        case Lack::Frame:
            sentences << Words::tr("Give a frame size with its stack, reach, head angle, and seat "
                                   "angle or top tube.");
            break;
        case Lack::Stem: parts << Words::tr("a stem with its length", "to put in the box"); break;
        case Lack::Bar: parts << Words::tr("a bar with its width", "to put in the box"); break;
        case Lack::Crank: parts << Words::tr("cranks", "to put in the box"); break;
        case Lack::NothingFits:
            sentences << Words::tr("No stem in the box joins these frames to a bar: look at the "
                                   "clamp and steerer sizes.");
            break;
        case Lack::Agreement:
            sentences << Words::tr(
                "Some figures contradict each other: look at the fields that are "
                "marked.");
            break;
        }
    }
    if (!parts.isEmpty())
        sentences << Words::tr("Put %1 in the box of parts.", "parts").arg(listed(parts));
    if (!typed.isEmpty())
        sentences.prepend(Words::tr("Type %1.", "measurements").arg(listed(typed)));
    return sentences;
}

} // namespace tripoise
