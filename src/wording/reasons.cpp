// SPDX-License-Identifier: MIT
#include "wording/advice_text.h"

#include "wording/consideration_words.h"
#include "wording/findings.h"
#include "wording/fit_words.h"
#include "wording/words.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace tripoise {
namespace {

constexpr std::size_t mostReasons = 3;
constexpr std::size_t mostGivenUp = 2;

QString nameIn(const Advice& advice, std::size_t candidate, const Prepared& prepared,
               Place place = Place::Within)
{
    return sizeName(advice.candidates[candidate], prepared, place);
}

/// A shoe that stays clear is told by how much; one that passes beside the wheel is clear of it by
/// more than can be told.
double valueTold(const Reason& reason, double value, const Candidate& candidate)
{
    if (reason.consideration != Consideration::ToeOverlap || !candidate.ride)
        return value;
    return candidate.ride->toe ? candidate.ride->toe->overlapMm
                               : -std::numeric_limits<double>::infinity();
}

} // namespace

std::vector<ToldReason> costsOf(const Advice& advice, std::size_t other, const Prepared& prepared)
{
    std::vector<ToldReason> told;
    const Candidate& second = advice.candidates[other];
    const QString named = nameIn(advice, *advice.verdict.named, prepared, Place::Opening);
    for (const Reason& reason : second.costs)
        if (told.size() < mostReasons)
            told.push_back({reason.consideration,
                            reasonSentence(reason.consideration,
                                           {valueTold(reason, reason.named, advice.leading()),
                                            valueTold(reason, reason.other, second), named,
                                            nameIn(advice, other, prepared), reason.faultless})});
    return told;
}

std::vector<ToldReason> reasonsFor(const Advice& advice, const Prepared& prepared)
{
    std::vector<ToldReason> told;
    const auto tell = [&told](const QString& sentence, std::optional<Consideration> by = {}) {
        if (!sentence.isEmpty())
            told.push_back({by, sentence});
    };
    const Verdict& verdict = advice.verdict;
    const Candidate& candidate = advice.leading();
    if (!verdict.named) {
        for (const Candidate& one : advice.candidates)
            tell(fitSentence(one, prepared));
        return told;
    }
    tell(fitSentence(candidate, prepared));
    if (!verdict.other) {
        for (const UsePosture& use : candidate.best->uses)
            tell(Words::tr("For %1 the back lies at %2 (%3° is comfortable), the arms at %4 "
                           "to it (%5°).")
                     .arg(nameOf(use.use), degrees(use.posture.trunk.deg()),
                          range(use.windows.trunk.low().deg(), use.windows.trunk.high().deg()),
                          degrees(use.posture.armTrunk.deg()),
                          range(use.windows.armTrunk.low().deg(),
                                use.windows.armTrunk.high().deg())));
        return told;
    }
    const Candidate& second = advice.candidates[*verdict.other];
    if (!fitsAtAll(second.fit.state)) {
        tell(fitSentence(second, prepared));
        for (const Finding& limit : second.limits)
            if (limit.code == FindingCode::NoStandover && second.fit.state != FitState::Barred)
                tell(sentence(limit));
    }
    for (ToldReason& reason : costsOf(advice, *verdict.other, prepared))
        told.push_back(std::move(reason));
    told.resize(std::min(told.size(), mostReasons));
    return told;
}

std::vector<ToldReason> reasonsAgainst(const Advice& advice, const Prepared& prepared)
{
    std::vector<ToldReason> told;
    const Verdict& verdict = advice.verdict;
    if (!verdict.named || !verdict.other)
        return told;
    const QString named = nameIn(advice, *verdict.named, prepared);
    const QString other = nameIn(advice, *verdict.other, prepared, Place::Opening);
    const Candidate& second = advice.candidates[*verdict.other];
    for (const Reason& reason : verdict.givenUp)
        if (told.size() < mostGivenUp)
            told.push_back({reason.consideration,
                            reasonSentence(reason.consideration,
                                           {valueTold(reason, reason.other, second),
                                            valueTold(reason, reason.named, advice.leading()),
                                            other, named, reason.faultless})});
    return told;
}

namespace {

QStringList sentencesOf(const std::vector<ToldReason>& reasons)
{
    QStringList sentences;
    for (const ToldReason& reason : reasons)
        sentences << reason.sentence;
    return sentences;
}

} // namespace

QStringList reasonSentences(const Advice& advice, const Prepared& prepared)
{
    return sentencesOf(reasonsFor(advice, prepared));
}

QStringList givenUpSentences(const Advice& advice, const Prepared& prepared)
{
    return sentencesOf(reasonsAgainst(advice, prepared));
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

QString sameSeatSentence(const Advice& advice, const Prepared& prepared)
{
    const Verdict& verdict = advice.verdict;
    if (!verdict.other || !advice.candidates[*verdict.other].best)
        return {};
    const QString other = nameIn(advice, *verdict.other, prepared);
    const SameSeat& same = verdict.contrast.same;
    QStringList takes;
    const auto add = [&takes](double differenceMm, const QString& more, const QString& less) {
        if (std::abs(differenceMm) >= leastSeenMm)
            takes << (differenceMm > 0.0 ? more : less).arg(partMm(std::abs(differenceMm)));
    };
    add(same.stemLongerMm, Words::tr("a stem %1 longer"), Words::tr("a stem %1 shorter"));
    if (advice.candidates[*verdict.other].best->setup.stem.quillMm)
        add(same.spacersMoreMm, Words::tr("a quill %1 higher"), Words::tr("a quill %1 lower"));
    else
        add(same.spacersMoreMm, Words::tr("%1 more spacers"), Words::tr("%1 fewer spacers"));
    if (takes.isEmpty() && same.lowerMm < leastSeenMm)
        return Words::tr("To sit the same on %1, the same parts do.").arg(other);
    if (same.lowerMm < leastSeenMm)
        return Words::tr("To sit the same on %1 takes %2.").arg(other, listed(takes));
    takes << Words::tr("a bar that sits %1 lower still", "than without any spacers")
                 .arg(mm(same.lowerMm));
    return Words::tr("To sit the same on %1 takes %2.").arg(other, listed(takes));
}

} // namespace tripoise
