// SPDX-License-Identifier: MIT
#include "wording/advice_text.h"

#include "wording/words.h"

#include <cmath>

namespace tripoise {
namespace {

constexpr qsizetype mostReasons = 3;
constexpr qsizetype mostGivenUp = 2;
constexpr double leastSeenMm = 4.0; // smaller differences are not worth pointing at

/// One reason for the size that opens the sentence against another, from its values and the
/// other's.
QString reasonSentence(Consideration consideration, double mine, double theirs,
                       const QString& subject, const QString& worse)
{
    switch (consideration) {
    case Consideration::Posture:
        return (mine < theirs
                    ? Words::tr("%1 brings the hands within %2 of their best place; on %3 "
                                "they end up %4 away.")
                    : Words::tr("%1 suits back and arms better, though the hands are %2 "
                                "off their best place and on %3 only %4."))
            .arg(subject, mm(mine), worse, mm(theirs));
    case Consideration::Setback:
        return Words::tr("%1 lets the saddle go where the knee wants it; on %2 it stays %3 off.")
            .arg(subject, worse, mm(std::abs(theirs)));
    case Consideration::StemLength:
        return Words::tr("%1 takes a %2 stem, usual for this riding; %3 would want %4.")
            .arg(subject, halfMm(mine), worse, halfMm(theirs));
    case Consideration::Spacers:
        return Words::tr("%1 needs %2 of spacers under the stem, %3 needs %4.")
            .arg(subject, halfMm(mine), worse, halfMm(theirs));
    case Consideration::StemAngle:
        return Words::tr("%1 does with a stem of %2; %3 needs one of %4.")
            .arg(subject, signedDegrees(mine), worse, signedDegrees(theirs));
    case Consideration::ExposedPost:
        return Words::tr("%1 shows %2 of seat post, %3 shows %4.")
            .arg(subject, partMm(mine), worse, partMm(theirs));
    case Consideration::Standover:
        return Words::tr("%1 leaves %2 over the top tube, %3 only %4.")
            .arg(subject, mm(mine), worse, mm(theirs));
    case Consideration::Agility:
        return mine < theirs
                   ? Words::tr(
                         "%1 is the quicker of the two: its wheelbase is %2 shorter, and this "
                         "riding wants a bike that turns.")
                         .arg(subject, partMm(theirs - mine))
                   : Words::tr(
                         "%1 is the steadier of the two: its wheelbase is %2 longer, and this "
                         "riding wants a bike that holds its line.")
                         .arg(subject, partMm(mine - theirs));
    case Consideration::Compactness:
        return Words::tr("%1 is the smaller bike to carry, park and lock.").arg(subject);
    case Consideration::Adjustment:
        return Words::tr("%1 leaves more room to move the bar later; %2 is nearer the end of it.")
            .arg(subject, worse);
    case Consideration::Crank:
        return Words::tr("%1 goes with %2 cranks, %3 with %4.")
            .arg(subject, halfMm(mine), worse, halfMm(theirs));
    case Consideration::BarWidth:
        return Words::tr("%1 takes a bar %2 wide, %3 one of %4.")
            .arg(subject, halfMm(mine), worse, halfMm(theirs));
    case Consideration::ToeOverlap:
        return mine > 0.0 ? Words::tr("%1 lets the shoe reach %2 into where the front wheel turns, "
                                      "%3 lets it reach %4.")
                                .arg(subject, mm(mine), worse, mm(theirs))
                          : Words::tr("%1 keeps the shoe clear of the front wheel; on %2 it "
                                      "reaches %3 into where that turns.")
                                .arg(subject, worse, mm(theirs));
    }
    return {};
}

QString nameIn(const Advice& advice, std::size_t candidate, const Prepared& prepared,
               Place place = Place::Within)
{
    return sizeName(advice.candidates[candidate], prepared, place);
}

} // namespace

QStringList reasonSentences(const Advice& advice, const Prepared& prepared)
{
    QStringList sentences;
    const Verdict& verdict = advice.verdict;
    const Candidate& candidate = advice.leading();
    if (!verdict.other) {
        for (const UsePosture& use : candidate.best->uses)
            sentences << Words::tr(
                             "For %1 the back lies at %2 (%3° is comfortable), the arms at %4 "
                             "to it (%5°).")
                             .arg(nameOf(use.use), degrees(use.posture.trunk.deg()),
                                  range(use.windows.trunk.low().deg(),
                                        use.windows.trunk.high().deg()),
                                  degrees(use.posture.armTrunk.deg()),
                                  range(use.windows.armTrunk.low().deg(),
                                        use.windows.armTrunk.high().deg()));
        return sentences;
    }
    const QString named = nameIn(advice, *verdict.named, prepared, Place::Opening);
    const QString other = nameIn(advice, *verdict.other, prepared);
    for (const Reason& reason : verdict.reasons)
        sentences << reasonSentence(reason.consideration, reason.named, reason.other, named, other);
    return sentences.mid(0, mostReasons);
}

QStringList givenUpSentences(const Advice& advice, const Prepared& prepared)
{
    QStringList sentences;
    const Verdict& verdict = advice.verdict;
    if (!verdict.other)
        return sentences;
    const QString named = nameIn(advice, *verdict.named, prepared);
    const QString other = nameIn(advice, *verdict.other, prepared, Place::Opening);
    for (const Reason& reason : verdict.givenUp)
        sentences << reasonSentence(reason.consideration, reason.other, reason.named, other, named);
    return sentences.mid(0, mostGivenUp);
}

QString contrastSentence(const Advice& advice, const Prepared& prepared)
{
    const Verdict& verdict = advice.verdict;
    if (!verdict.other)
        return {};
    const QString named = nameIn(advice, *verdict.named, prepared);
    const QString other = nameIn(advice, *verdict.other, prepared);
    const Contrast& contrast = verdict.contrast;
    QStringList seen;
    const auto add = [&seen](double differenceMm, QString (*say)(double), const QString& more,
                             const QString& less) {
        if (std::abs(differenceMm) >= leastSeenMm)
            seen << (differenceMm > 0.0 ? more : less).arg(say(std::abs(differenceMm)));
    };
    add(contrast.barHigherMm, mm, Words::tr("the bar %1 higher"), Words::tr("the bar %1 lower"));
    add(contrast.barFurtherMm, mm, Words::tr("the bar %1 further away"),
        Words::tr("the bar %1 nearer"));
    add(contrast.wheelbaseMm, partMm, Words::tr("the wheels %1 further apart"),
        Words::tr("the wheels %1 closer together"));
    if (contrast.standoverMm)
        add(*contrast.standoverMm, partMm, Words::tr("the top tube %1 higher"),
            Words::tr("the top tube %1 lower"));
    if (seen.isEmpty())
        return Words::tr(
                   "Side by side with the same parts the two differ by less than %1 anywhere.")
            .arg(partMm(leastSeenMm));
    return Words::tr("With the same parts on both, %1 has %2 than %3.")
        .arg(named, listed(seen), other);
}

} // namespace tripoise
