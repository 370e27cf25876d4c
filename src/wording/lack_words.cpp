// SPDX-License-Identifier: MIT
#include "wording/lack_words.h"

#include "wording/words.h"

namespace tripoise {
namespace {

QString listAt(const std::string& path)
{
    if (path == "/stock/stems")
        return Words::tr("stems", "to take out of the box");
    if (path == "/stock/bars")
        return Words::tr("bars", "to take out of the box");
    if (path == "/stock/spacers_mm")
        return Words::tr("spacers", "to take out of the box");
    if (path == "/stock/cranks_mm")
        return Words::tr("cranks", "to take out of the box");
    return Words::tr("sizes", "to take off the list");
}

QString tooManySentence(const std::optional<Problem>& problem)
{
    if (!problem)
        return Words::tr("Sizes and box make more set-ups than can be compared: take out what is "
                         "not meant for this rider.");
    return Words::tr("Sizes and box make more set-ups than can be compared: take out %1 or %2 that "
                     "are not meant for this rider.",
                     "the longest lists")
        .arg(listAt(problem->path), listAt(problem->names.front()));
}

} // namespace

QStringList lackSentences(const std::vector<Lack>& lacks, const std::optional<Problem>& tooMany)
{
    QStringList typed;
    QStringList parts;
    QStringList sentences;
    for (const Lack lack : lacks) {
        switch (lack) {
        case Lack::Stature: typed << nameOf(Quantity::Stature); break;
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
        case Lack::TooManySetups: sentences << tooManySentence(tooMany); break;
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
