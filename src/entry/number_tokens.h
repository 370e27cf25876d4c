// SPDX-License-Identifier: MIT
//
// Plain text cut into figures, words and marks.
#pragma once

#include <QChar>
#include <QString>
#include <QStringView>

#include <optional>
#include <vector>

namespace tripoise::entry {

/// One run of figures. "1.790" has two readings: with a decimal sign, and as grouped thousands.
struct Figures {
    std::optional<double> decimal;
    std::optional<double> grouped;
    QChar separator;     ///< the one that may be either
    int wholeDigits = 0; ///< before the decimal sign
    bool whole = false;  ///< nothing behind a decimal sign

    [[nodiscard]] double first() const { return decimal ? *decimal : grouped.value_or(0.0); }
};

struct Token {
    enum class Kind { Figures, Word, Mark };
    Kind kind = Kind::Mark;
    Figures figures;
    QString word;
    QChar mark; ///< anything that is neither: signs, primes, °, %, /
};

/// Nothing where figures are punctuated as no number is.
[[nodiscard]] std::optional<std::vector<Token>> tokensOf(QStringView plain);

} // namespace tripoise::entry
