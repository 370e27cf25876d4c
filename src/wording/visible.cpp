// SPDX-License-Identifier: MIT
#include "wording/visible.h"

#include <algorithm>

namespace tripoise {
namespace {

constexpr qsizetype longestName = 60;

bool endsOrParts(QChar c)
{
    return c == u'\n' || c == u'\t';
}

bool within(QChar c, char16_t low, char16_t high)
{
    return c.unicode() >= low && c.unicode() <= high;
}

bool isObeyed(QChar c)
{
    return c < u' ' || within(c, 0x7F, 0x9F) // controls
           || within(c, 0x2028, 0x202E)      // ends of lines and paragraphs; embeddings, overrides
           || within(c, 0x2066, 0x2069)      // isolates
           || within(c, 0xFFFE, 0xFFFF);     // no characters
}

template <typename Stays> QString escaped(const QString& text, const Stays& stays)
{
    const auto escapes = [&stays](QChar c) { return isObeyed(c) && !stays(c); };
    if (std::none_of(text.begin(), text.end(), escapes))
        return text;
    QString result;
    for (const QChar c : text)
        if (escapes(c))
            result += QStringLiteral("\\u%1").arg(c.unicode(), 4, 16, QLatin1Char('0'));
        else
            result += c;
    return result;
}

} // namespace

QString visible(const QString& text)
{
    return escaped(text, endsOrParts);
}

QString visibleLine(const QString& text)
{
    return escaped(text, [](QChar) { return false; });
}

QString asName(const std::string& name)
{
    QString text = QString::fromStdString(name).simplified();
    if (text.size() > longestName) {
        const bool splits = text[longestName - 2].isHighSurrogate();
        text = text.left(longestName - (splits ? 2 : 1)) + u'…';
    }
    return visibleLine(text);
}

} // namespace tripoise
