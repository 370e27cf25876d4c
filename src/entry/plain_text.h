// SPDX-License-Identifier: MIT
//
// Typed text with its dress taken off: digits of any script and width become 0 to 9, every kind of
// space one blank, curly and straight primes alike, vulgar fractions " n/d", one minus sign. Marks
// that do not show are dropped.
#pragma once

#include <QString>
#include <QStringView>

#include <string>

namespace tripoise::entry {

/// Lower case, ASCII as far as it is a number; letters of words stay as they are. Linear in time.
[[nodiscard]] QString plainText(QStringView typed);

/// Typed text as a document holds it: UTF-8, cut between characters to so many bytes. Linear in
/// time.
[[nodiscard]] std::string cutToBytes(const QString& typed, std::size_t most);

} // namespace tripoise::entry
