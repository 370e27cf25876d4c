// SPDX-License-Identifier: MIT
//
// What the board's handles and its crank are called, and where they are.
#pragma once

#include "advice/assess.h"

#include <QString>

#include <vector>

namespace tripoise {

/// "grips, 446 mm ahead, 689 mm up"
[[nodiscard]] QString gripHandleWords(const Point& grip);
[[nodiscard]] QString saddleHandleWords(const SaddlePlace& saddle);
[[nodiscard]] QString spacersHandleWords(const Setup& setup); ///< or of the quill

/// "The bicycle stands here as soon as …"
[[nodiscard]] QString nothingDrawnWords();

/// "164°", clockwise from the top of the turn.
[[nodiscard]] QString crankWords(double degreesFromTop);

[[nodiscard]] QString kneeTraceWords(); ///< "knee"
[[nodiscard]] QString hipTraceWords();  ///< "hip"
[[nodiscard]] QString kneeRangeWords(); ///< "comfortable"
/// "knee from 35° to 112°, hip from 45° to 98°, over a turn"
[[nodiscard]] QString turnWords(const std::vector<TurnStep>& turn);

} // namespace tripoise
