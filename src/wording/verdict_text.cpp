// SPDX-License-Identifier: MIT
#include "wording/advice_text.h"

#include "wording/consideration_words.h"
#include "wording/findings.h"
#include "wording/fit_words.h"
#include "wording/words.h"

#include <algorithm>
#include <cmath>

namespace tripoise {
namespace {

/// "the Lowland bar"; by kind and width where it has no name.
QString barPhrase(const Bar& bar)
{
    if (!bar.name.empty())
        return Words::tr("the %1 bar", "after: with").arg(barName(bar));
    switch (bar.kind) {
    case BarKind::Flat:
        return Words::tr("the flat bar of %1", "after: with").arg(halfMm(bar.widthMm));
    case BarKind::Swept:
        return Words::tr("the swept bar of %1", "after: with").arg(halfMm(bar.widthMm));
    case BarKind::Drop:
        return Words::tr("the drop bar of %1", "after: with").arg(halfMm(bar.widthMm));
    }
    return {};
}

/// "with the 100 mm stem and 15 mm of spacers"; the bar as well where the box has a choice of them.
QString setupPhrase(const AdvisedSetup& advised, const Prepared& prepared)
{
    const Setup& setup = advised.setup;
    const QString length = halfMm(setup.stem.lengthMm);
    QStringList parts;
    if (prepared.stock.bars.size() > 1)
        parts << barPhrase(prepared.stock.bars[setup.cockpit.bar]);
    parts << (!setup.stem.inStock
                  ? articled(Words::tr("a %1 stem to order", "after: with").arg(length))
              : setup.cockpit.flipped ? Words::tr("the flipped %1 stem", "after: with").arg(length)
                                      : Words::tr("the %1 stem", "after: with").arg(length));
    parts
        << (setup.stem.quillMm
                ? Words::tr("its quill %1 out", "after: with").arg(halfMm(setup.cockpit.spacersMm))
            : setup.cockpit.spacersMm < 0.5
                ? Words::tr("no spacers", "after: with")
                : Words::tr("%1 of spacers", "after: with").arg(halfMm(setup.cockpit.spacersMm)));
    return Words::tr("with %1", "parts of a set-up").arg(listed(parts));
}

QString stemOf(const Candidate& candidate)
{
    return halfMm(candidate.best->setup.stem.lengthMm);
}

} // namespace

QString provisionalSentence(const Advice& advice)
{
    for (const Finding& finding : advice.riderFindings)
        if (finding.code == FindingCode::SuspiciousMeasurement) {
            const Quantity quantity = quantityOf(finding);
            return Words::tr("Measure the %1 again: until then the rest of the body suggests %2, "
                             "and the size is provisional.",
                             "a measurement; what is expected of it")
                .arg(nameOf(quantity), amountOf(quantity, finding.numbers.at(1)));
        }
    return advice.person.provisional
               ? Words::tr("Provisional: only the height says how long the legs are.")
               : QString();
}

namespace {

/// No size fits: what the rider wants instead.
VerdictWords noneWords(const Advice& advice, const Prepared& prepared)
{
    const Candidate& first = advice.leading();
    const FrameAsked& asked = advice.asked;
    const QString wanted =
        Words::tr("This rider wants a frame with a stack of %1 mm and a reach of %2 mm.")
            .arg(range(asked.stackMm.low, asked.stackMm.high),
                 range(asked.reachMm.low, asked.reachMm.high));
    if (advice.candidates.size() > 1)
        return {Words::tr("None of these fits"), wanted, provisionalSentence(advice)};
    const QString size = sizeName(first, prepared);
    return {Words::tr("Not %1", "a size").arg(size),
            fitSentence(first, prepared) + QLatin1Char(' ') + wanted, provisionalSentence(advice)};
}

QString slightSentence(const Advice& advice, const Prepared& prepared)
{
    const Verdict& verdict = advice.verdict;
    if (verdict.tilts.empty())
        return Words::tr("Slight: little sets them apart.");
    return Words::tr("Slight: with one weight halved or doubled it would be %1.", "a size")
        .arg(sizeName(advice.candidates[verdict.tilts.front().towards], prepared));
}

/// What the rider has to say where either size will do.
QString questionSentence(const Advice& advice, const Prepared& prepared)
{
    const Verdict& verdict = advice.verdict;
    const QString named = sizeName(advice.leading(), prepared);
    const QString other = sizeName(advice.candidates[*verdict.other], prepared);
    const auto question = [](const QString& one, const QString& first, const QString& another,
                             const QString& second) {
        return Words::tr("Ask the rider: %1, then %2; or %3, then %4.",
                         "what a size is taken for; the size; the same of the other")
            .arg(one, first, another, second);
    };
    if (!verdict.reasons.empty() && !verdict.givenUp.empty())
        return question(takenFor(verdict.reasons.front().consideration), named,
                        takenFor(verdict.givenUp.front().consideration), other);
    const Contrast& contrast = verdict.contrast;
    if (std::max(std::abs(contrast.barHigherMm), std::abs(contrast.wheelbaseMm)) < leastSeenMm)
        return Words::tr("Even: nothing that a rider notices sets them apart.");
    const bool smaller = contrast.barHigherMm + contrast.barFurtherMm < 0.0;
    return question(Words::tr("a smaller bike", "what a size is taken for"),
                    smaller ? named : other, Words::tr("a larger one", "what a size is taken for"),
                    smaller ? other : named);
}

QString decidedSentence(const Advice& advice, const Prepared& prepared, const Riding& riding)
{
    if (!advice.solved)
        return Words::tr("Nothing in the box of parts makes a bicycle of these sizes.");
    const Verdict& verdict = advice.verdict;
    const Candidate& named = advice.leading();
    const QString size = sizeName(named, prepared);
    const QString setup = setupPhrase(*named.best, prepared);
    if (verdict.kind == VerdictKind::None) {
        const VerdictWords none = noneWords(advice, prepared);
        return Words::tr("%1. %2", "a title, what stands under it").arg(none.title, none.detail);
    }
    if (!verdict.other || verdict.kind == VerdictKind::Clear)
        return Words::tr("%1, %2.", "size, with its parts")
            .arg(sizeName(named, prepared, Place::Opening), setup);
    if (verdict.kind == VerdictKind::Slight)
        return Words::tr("Slightly %1, %2.", "size, with its parts").arg(size, setup);
    const Candidate& other = advice.candidates[*verdict.other];
    return Words::tr("Either will do for %1: %2 %3, or %4 with the %5 stem.",
                     "uses; size, with its parts; the other size, its stem")
        .arg(nameOf(riding.mix), size, setup, sizeName(other, prepared), stemOf(other));
}

} // namespace

QString verdictSentence(const Advice& advice, const Prepared& prepared, const Riding& riding)
{
    const QString provisional = provisionalSentence(advice);
    const QString decided = decidedSentence(advice, prepared, riding);
    return provisional.isEmpty() || !advice.solved ? decided
                                                   : provisional + QLatin1Char(' ') + decided;
}

VerdictWords verdictWords(const Advice& advice, const Prepared& prepared, const Riding& riding)
{
    if (!advice.solved)
        return {Words::tr("Nothing fits"),
                Words::tr("Nothing in the box of parts makes a bicycle of "
                          "these sizes."),
                {}};
    const Verdict& verdict = advice.verdict;
    const Candidate& named = advice.leading();
    const QString size = sizeName(named, prepared);
    const QString opening = sizeName(named, prepared, Place::Opening);
    const QString setup = setupPhrase(*named.best, prepared);
    if (verdict.kind == VerdictKind::None)
        return noneWords(advice, prepared);
    const QString provisional = provisionalSentence(advice);
    if (!verdict.other)
        return {opening, setup, provisional};
    const QString other = sizeName(advice.candidates[*verdict.other], prepared);
    switch (verdict.kind) {
    case VerdictKind::Clear:
        return {opening, setup, Words::tr("Clear: it stays so with any weight halved or doubled.")};
    case VerdictKind::Slight:
        return {Words::tr("Slightly %1", "a size").arg(size), setup,
                !provisional.isEmpty() ? provisional : slightSentence(advice, prepared)};
    case VerdictKind::None: break; // told above
    case VerdictKind::Either:
        return {Words::tr("Either will do"),
                Words::tr("%1 %2, or %3 with the %4 stem, for %5.",
                          "size, with its parts; the other size, its stem; uses")
                    .arg(opening, setup, other, stemOf(advice.candidates[*verdict.other]),
                         nameOf(riding.mix)),
                !provisional.isEmpty() ? provisional : questionSentence(advice, prepared)};
    }
    return {};
}

} // namespace tripoise
