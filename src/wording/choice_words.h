// SPDX-License-Identifier: MIT
//
// The builder's word beside the advice: what was chosen, why, and what it costs.
#pragma once

#include "document/builders_choice.h"

#include <QString>
#include <QStringList>

namespace tripoise {

struct ChoiceWords {
    QStringList cautions; ///< what breaks on it; told first
    QString sentence;     ///< "The builder chose the L: “more room for bags”."
    QString against;      ///< "Against the M that costs:"; empty where nothing is compared
    QStringList costs;
    QString moved; ///< "Against the advised set-up:"; empty without a set-up of their own
    QStringList moves;
};
[[nodiscard]] ChoiceWords choiceWords(const BuildersChoice& choice, const Advice& advice,
                                      const Prepared& prepared);

/// What a step of undo is called.
[[nodiscard]] QString sizeChosenStep();
[[nodiscard]] QString setupChosenStep();
[[nodiscard]] QString reasonStep();

} // namespace tripoise
