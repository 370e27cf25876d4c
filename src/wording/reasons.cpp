// SPDX-License-Identifier: MIT
#include "wording/advice_text.h"

#include "wording/consideration_words.h"
#include "wording/findings.h"
#include "wording/fit_words.h"
#include "wording/words.h"

#include <cmath>

namespace tripoise {
namespace {

constexpr qsizetype mostReasons = 3;
constexpr qsizetype mostGivenUp = 2;
constexpr double leastSeenMm = 4.0; // smaller differences are not worth pointing at

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
    if (!verdict.named) {
        for (const Candidate& one : advice.candidates)
            sentences << fitSentence(one, prepared);
        return sentences;
    }
    const QString fit = fitSentence(candidate, prepared);
    if (!fit.isEmpty())
        sentences << fit;
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
    const Candidate& second = advice.candidates[*verdict.other];
    if (!fitsAtAll(second.fit.state)) {
        sentences << fitSentence(second, prepared);
        for (const Finding& limit : second.limits)
            if (limit.code == FindingCode::NoStandover && second.fit.state != FitState::Barred)
                sentences << sentence(limit);
    }
    const QString named = nameIn(advice, *verdict.named, prepared, Place::Opening);
    const QString other = nameIn(advice, *verdict.other, prepared);
    for (const Reason& reason : verdict.reasons)
        sentences << reasonSentence(reason.consideration,
                                    {reason.named, reason.other, named, other});
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
        sentences << reasonSentence(reason.consideration,
                                    {reason.other, reason.named, other, named});
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
