// SPDX-License-Identifier: MIT
//
// Choices as documents and screens spell them; empty for what is not stated or not known.
#pragma once

#include "document/words.h"

#include <QString>

#include <optional>

namespace tripoise {

template <typename Value, std::size_t size>
[[nodiscard]] QString wordFor(const Vocabulary<Value, size>& words, std::optional<Value> value)
{
    if (!value)
        return {};
    const std::string_view word = wordOf(words, *value);
    return QString::fromUtf8(word.data(), qsizetype(word.size()));
}
[[nodiscard]] QString keyOf(BarKind kind);
[[nodiscard]] QString keyOf(const std::optional<SteererMaterial>& material);
[[nodiscard]] std::optional<BarKind> barKindFrom(const QString& key);
[[nodiscard]] std::optional<SteererMaterial> materialFrom(const QString& key);

} // namespace tripoise
