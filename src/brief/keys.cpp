// SPDX-License-Identifier: MIT
#include "brief/keys.h"

#include "document/words.h"

namespace tripoise {
namespace {

QString text(std::string_view word)
{
    return QString::fromLatin1(word.data(), qsizetype(word.size()));
}

} // namespace

QString keyOf(BarKind kind)
{
    return text(wordOf(barKindWords, kind));
}

QString keyOf(const std::optional<SteererMaterial>& material)
{
    return material ? text(wordOf(materialWords, *material)) : QString();
}

std::optional<BarKind> barKindFrom(const QString& key)
{
    return valueOf(barKindWords, key.toStdString());
}

std::optional<SteererMaterial> materialFrom(const QString& key)
{
    return valueOf(materialWords, key.toStdString());
}

} // namespace tripoise
