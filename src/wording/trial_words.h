// SPDX-License-Identifier: MIT
//
// What is said of contacts pulled about by hand, and of the joints that follow.
#pragma once

#include "advice/trial.h"

#include <QString>
#include <QStringList>

namespace tripoise {

enum class Contact { Grip, Saddle };
/// "bar 10 mm nearer", "4 mm lower"; empty where it was not moved.
[[nodiscard]] QStringList pulledLabel(Contact contact, const Point& by);

/// "Bar 10 mm nearer, 4 mm lower. Saddle 3 mm higher."; empty where nothing was moved.
[[nodiscard]] QString pulledSentence(const Tried& tried, const Setup& advised);
/// The same of a set-up that the builder chose: "Chosen. Bar 10 mm nearer."
[[nodiscard]] QString chosenSentence(const QString& pulled);
/// "A 92 mm stem on 14 mm of spacers would put it there."
[[nodiscard]] QString wouldCarrySentence(const Tried& tried);
/// "Nearest in the box: 90 mm, +6° on 15 mm of spacers, 3 mm off."
[[nodiscard]] QString nearestSentence(const Tried& tried, const Prepared& prepared);
/// "Grips 24 mm ahead of the steering axis, 10 mm less."
[[nodiscard]] QString steeringSentence(const Tried& tried);
/// "Knee to bar 84 mm, 12 mm less than advised. Shoe and front wheel: 23 mm clear, as advised."
[[nodiscard]] QString roomSentence(const Tried& tried, const Ride& advised);
/// "The front wheel carries 44 %, 2 more than advised."
[[nodiscard]] QString loadSentence(const Balance& tried, const Balance& advised);

/// What a step of undo is called.
[[nodiscard]] QString pulledStep(bool saddle);
[[nodiscard]] QString backToAdvisedStep();

} // namespace tripoise
