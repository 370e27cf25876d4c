// SPDX-License-Identifier: MIT
#include "decision/decision_model.h"

#include "wording/advice_text.h"
#include "wording/fit_words.h"
#include "wording/lack_words.h"
#include "wording/visible.h"
#include "wording/words.h"

#include <QClipboard>
#include <QGuiApplication>

#include <utility>

namespace tripoise {

ToldSection::ToldSection(const Section& section)
    : m_heading(section.heading), m_meaning(section.meaning)
{
    for (const QString& item : section.items)
        m_items << unbroken(item);
}

void DecisionModel::sessionSet()
{
    on(&Session::answerChanged, this, &DecisionModel::renew);
    on(&Session::settledChanged, this, &DecisionModel::canCopyChanged);
    on(&Session::solutionChanged, this, &DecisionModel::canCopyChanged);
    emit sessionChanged();
    emit canCopyChanged();
    renew();
}

DecisionModel::Told DecisionModel::tell() const
{
    Told told;
    const Candidate* shown = nullptr;
    if (session())
        if (const auto at = session()->shownCandidate())
            shown = &session()->solution().advice.candidates[*at];
    const Cautions cautions = cautionsOf(fitting(), shown);
    for (const QString& caution : cautions.first)
        told.cautions << unbroken(caution);
    for (const QString& caution : cautions.others)
        told.otherCautions << unbroken(caution);
    told.sources = ToldSection(sourcesSection());
    if (!session() || !session()->solution().tables)
        return told;
    const Solution& solution = session()->solution();
    if (!solution.lacks.empty()) {
        told.verdict.state = Lacking;
        told.verdict.lacks = lackSentences(
            solution.lacks, tooManySetups(solution.fitting.frames, solution.fitting.bicycle,
                                          solution.fitting.stock, *solution.tables));
        told.verdict.title = told.verdict.lacks.value(0);
        told.verdict.sentence = told.verdict.lacks.join(QLatin1Char(' '));
        if (solution.first && solution.first->solved)
            told.asked = ToldSection(firstAnswerSection(*solution.first));
        return told;
    }
    const Advice& advice = solution.advice;
    const Prepared& prepared = *solution.prepared;
    const VerdictWords verdict = verdictWords(advice, prepared, solution.fitting.riding);
    told.verdict.title = verdict.title;
    told.verdict.detail = unbroken(verdict.detail);
    told.verdict.kind = verdict.kind;
    told.verdict.sentence = verdictSentence(advice, prepared, solution.fitting.riding);
    if (!advice.solved) {
        told.verdict.state = NothingFits;
        return told;
    }
    told.verdict.state = Decided;
    told.reasons = ToldSection(reasonsSection(advice, prepared));
    told.givenUp = ToldSection(givenUpSection(advice, prepared));
    told.contrast = ToldSection(contrastSection(advice, prepared));
    told.change = ToldSection(changeSection(advice, prepared));
    told.cranks = ToldSection(cranksSection(advice));
    told.rules = ToldSection(rulesSection(advice));
    told.asked = ToldSection(askedSection(advice));
    if (const auto& part = advice.part)
        told.verdict.toOrder = unbroken(toOrderSentence(*part));
    if (shown && shown->best)
        told.today = ToldSection(todaySection(solution.fitting.current, shown->best->setup));
    return told;
}

void DecisionModel::renew()
{
    const Told before = std::exchange(m_told, tell());
    if (before.verdict != m_told.verdict)
        emit told();
    using Part = std::pair<ToldSection Told::*, void (DecisionModel::*)()>;
    for (const auto& [section, sectionTold] : {Part{&Told::reasons, &DecisionModel::reasonsTold},
                                               Part{&Told::givenUp, &DecisionModel::givenUpTold},
                                               Part{&Told::contrast, &DecisionModel::contrastTold},
                                               Part{&Told::change, &DecisionModel::changeTold},
                                               Part{&Told::today, &DecisionModel::todayTold},
                                               Part{&Told::cranks, &DecisionModel::cranksTold},
                                               Part{&Told::rules, &DecisionModel::rulesTold},
                                               Part{&Told::asked, &DecisionModel::askedTold}})
        if (before.*section != m_told.*section)
            emit(this->*sectionTold)();
    if (before.cautions != m_told.cautions || before.otherCautions != m_told.otherCautions
        || before.sources != m_told.sources)
        emit cautionsTold();
}

bool DecisionModel::canCopy() const
{
    return session() && session()->settled() && session()->solution().advice.solved;
}

QString DecisionModel::text() const
{
    if (!canCopy())
        return {};
    const Solution& solution = session()->solution();
    // The fitting as it is now: its rider may have been renamed since, which changes no decision.
    return visible(
        decisionText(session()->fitting(), solution.advice, *solution.prepared, *solution.tables));
}

void DecisionModel::copy() const
{
    if (canCopy())
        QGuiApplication::clipboard()->setText(text());
}

} // namespace tripoise
