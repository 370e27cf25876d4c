// SPDX-License-Identifier: MIT
#include "decision/choice_model.h"

#include "text/encoding.h"
#include "wording/choice_words.h"
#include "wording/words.h"

#include <utility>

namespace tripoise {
namespace {

QStringList unbroken(const QStringList& texts)
{
    QStringList told;
    for (const QString& text : texts)
        told << tripoise::unbroken(text);
    return told;
}

} // namespace

void ChoiceModel::sessionSet()
{
    on(&Session::answerChanged, this, &ChoiceModel::renew);
    on(&Session::fittingChanged, this, &ChoiceModel::renew);
    emit sessionChanged();
    renew();
}

ChoiceModel::Told ChoiceModel::tell() const
{
    Told told;
    const Choices& choices = fitting().choices;
    told.reason = QString::fromStdString(choices.reason);
    told.pulled = trialFrame(fitting()).has_value();
    told.own = ownSetup(choices);
    told.any = choices.size || told.own;
    if (!session() || !session()->solution().prepared)
        return told;
    const Solution& solution = session()->solution();
    const auto choice = buildersChoice(choices, solution.fitting.riding, solution.advice,
                                       *solution.prepared, *solution.tables);
    if (!choice)
        return told;
    const ChoiceWords words = choiceWords(*choice, solution.advice, *solution.prepared);
    told.cautions = unbroken(words.cautions);
    told.sentence = tripoise::unbroken(words.sentence);
    told.against = words.against;
    told.costs = unbroken(words.costs);
    told.moved = words.moved;
    told.moves = unbroken(words.moves);
    return told;
}

void ChoiceModel::renew()
{
    const Told before = std::exchange(m_told, tell());
    if (before != m_told)
        emit told();
}

void ChoiceModel::setReason(const QString& reason)
{
    Fitting next = fitting();
    next.choices.reason = cutToBytes(reason.simplified().toStdString(), longestName);
    edit(std::move(next), reasonStep(), QStringLiteral("choices/reason"));
}

void ChoiceModel::setOwn(bool own)
{
    Fitting next = fitting();
    chooseSetup(next.choices, own);
    edit(std::move(next), setupChosenStep());
}

} // namespace tripoise
