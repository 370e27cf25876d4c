// SPDX-License-Identifier: MIT
#include "wording/choice_words.h"

#include "wording/advice_text.h"
#include "wording/findings.h"
#include "wording/fit_words.h"
#include "wording/trial_words.h"
#include "wording/visible.h"
#include "wording/words.h"

namespace tripoise {
namespace {

QString chosen(const BuildersChoice& choice, const Advice& advice, const Prepared& prepared)
{
    if (!choice.candidate) {
        FrameSize gone;
        gone.model = choice.size.model;
        gone.size = choice.size.size;
        return Words::tr("The builder chose %1, which is no longer among the sizes", "a size")
            .arg(sizeName(gone, prepared));
    }
    const QString size = sizeName(advice.candidates[*choice.candidate], prepared);
    const bool advised = advice.verdict.named == choice.candidate;
    if (choice.setup)
        return advised ? Words::tr("The builder chose %1, as advised, with a set-up of their own",
                                   "a size")
                             .arg(size)
                       : Words::tr("The builder chose %1 with a set-up of their own", "a size")
                             .arg(size);
    return advised ? Words::tr("The builder chose %1, as advised", "a size").arg(size)
                   : Words::tr("The builder chose %1", "a size").arg(size);
}

/// What breaks, the gravest first.
QStringList cautionsOf(const BuildersChoice& choice, const Candidate& candidate,
                       const Prepared& prepared)
{
    QStringList cautions;
    if (!fitsAtAll(candidate.fit.state))
        cautions << fitSentence(candidate, prepared);
    for (const Finding& finding : candidate.limits)
        cautions << sentence(finding);
    if (choice.setup)
        for (const Finding& finding : choice.setup->findings)
            if (finding.severity == Severity::Limit)
                cautions << sentence(finding);
    cautions.removeAll(QString());
    cautions.removeDuplicates();
    return cautions;
}

} // namespace

ChoiceWords choiceWords(const BuildersChoice& choice, const Advice& advice,
                        const Prepared& prepared)
{
    ChoiceWords words;
    const QString what = chosen(choice, advice, prepared);
    const QString reason = visibleLine(QString::fromStdString(choice.reason)).simplified();
    words.sentence = reason.isEmpty()
                         ? Words::tr("%1.", "what the builder chose").arg(what)
                         : Words::tr("%1: “%2”.", "what the builder chose, why").arg(what, reason);
    if (!choice.candidate)
        return words;
    const Candidate& candidate = advice.candidates[*choice.candidate];
    words.cautions = cautionsOf(choice, candidate, prepared);
    const auto& named = advice.verdict.named;
    if (named && named != choice.candidate && candidate.best) {
        const QString size = sizeName(advice.leading(), prepared);
        for (const ToldReason& cost : costsOf(advice, *choice.candidate, prepared))
            words.costs << cost.sentence;
        if (!words.costs.isEmpty())
            words.against = Words::tr("Against %1 that costs:", "a size").arg(size);
        else if (fitsAtAll(candidate.fit.state))
            words.against =
                Words::tr("Against %1 it costs nothing that a rider notices.", "a size").arg(size);
    }
    if (choice.setup) {
        words.moved = Words::tr("Against the advised set-up:");
        words.moves << pulledSentence(*choice.setup, candidate.best->setup)
                    << wouldCarrySentence(*choice.setup)
                    << nearestSentence(*choice.setup, prepared);
        for (const Finding& finding : choice.setup->findings)
            if (finding.severity == Severity::Caution)
                words.moves << sentence(finding);
        words.moves.removeAll(QString());
    }
    return words;
}

QString sizeChosenStep()
{
    return Words::tr("choice of the size");
}

QString setupChosenStep()
{
    return Words::tr("choice of the set-up");
}

QString reasonStep()
{
    return Words::tr("reason of the choice");
}

} // namespace tripoise
