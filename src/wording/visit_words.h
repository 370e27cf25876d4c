// SPDX-License-Identifier: MIT
//
// A visit after the bicycle was built: what was said and changed, and what to change next.
#pragma once

#include "advice/next_change.h"

#include <QString>
#include <QStringList>

namespace tripoise {

/// "The bar 5 mm higher, by spacers or a stem with more rise."
[[nodiscard]] QString changeSentence(const NextChange& change);
/// Where it comes from: "as it is taught", "common practice".
[[nodiscard]] QString trustWords(const ChangeStep& step);
/// What was changed at a visit: "bar 5 mm higher, other grips"; "nothing changed".
[[nodiscard]] QString movedSentence(const Moved& moved);
[[nodiscard]] QString visitTitle(const Visit& visit, int number); ///< "2nd visit, 27/11/2026"
[[nodiscard]] QString saysSentence(const Visit& visit); ///< "Numb hands, Neck"; empty for none
/// What a change does to the rider, against the visit before it.
[[nodiscard]] QStringList changeEffects(const NextVisit& visit, const NextChange& change);
/// Who else is asked where a complaint lasts.
[[nodiscard]] QString lastingSentence(Complaint complaint);
/// What is off on the finished bicycle comes before any other change.
[[nodiscard]] QString asOnTheSheet(const QString& reading);
[[nodiscard]] QString onlyOneChange();
[[nodiscard]] QString movesOfSaddle(double squareMm); ///< over a map of where it went
[[nodiscard]] QString movesOfHands();
[[nodiscard]] QString visitsSummary(const std::vector<Visit>& visits);

/// What a step of undo is called.
[[nodiscard]] QString visitStep();
[[nodiscard]] QString visitGoneStep();
[[nodiscard]] QString visitSaysStep();
[[nodiscard]] QString visitChangeStep();
[[nodiscard]] QString visitNotesStep();

} // namespace tripoise
