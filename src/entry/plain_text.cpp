// SPDX-License-Identifier: MIT
#include "entry/plain_text.h"

#include <algorithm>
#include <array>
#include <cstdint>

namespace tripoise::entry {
namespace {

struct Rewritten {
    char16_t from;
    const char* to;
};

// Sorted by code, for the search.
constexpr std::array rewritten{
    Rewritten{u'`', "'"},         Rewritten{u'~', " "},         Rewritten{u'\u00b4', "'"},
    Rewritten{u'\u00ba', "\xb0"}, // ordinal sign, typed for a degree
    Rewritten{u'\u00bc', " 1/4"}, Rewritten{u'\u00bd', " 1/2"}, Rewritten{u'\u00be', " 3/4"},
    Rewritten{u'\u02b9', "'"},    Rewritten{u'\u02ba', "\""},   Rewritten{u'\u02da', "\xb0"},
    Rewritten{u'\u066b', "."},    Rewritten{u'\u066c', "'"},    Rewritten{u'\u2010', "-"},
    Rewritten{u'\u2011', "-"},    Rewritten{u'\u2012', "-"},    Rewritten{u'\u2013', "-"},
    Rewritten{u'\u2014', "-"},    Rewritten{u'\u2018', "'"},    Rewritten{u'\u2019', "'"},
    Rewritten{u'\u201a', ","},    Rewritten{u'\u201b', "'"},    Rewritten{u'\u201c', "\""},
    Rewritten{u'\u201d', "\""},   Rewritten{u'\u201e', "\""},   Rewritten{u'\u201f', "\""},
    Rewritten{u'\u2032', "'"},    Rewritten{u'\u2033', "\""},   Rewritten{u'\u2044', "/"},
    Rewritten{u'\u2150', " 1/7"}, Rewritten{u'\u2151', " 1/9"}, Rewritten{u'\u2153', " 1/3"},
    Rewritten{u'\u2154', " 2/3"}, Rewritten{u'\u2155', " 1/5"}, Rewritten{u'\u2156', " 2/5"},
    Rewritten{u'\u2157', " 3/5"}, Rewritten{u'\u2158', " 4/5"}, Rewritten{u'\u2159', " 1/6"},
    Rewritten{u'\u215a', " 5/6"}, Rewritten{u'\u215b', " 1/8"}, Rewritten{u'\u215c', " 3/8"},
    Rewritten{u'\u215d', " 5/8"}, Rewritten{u'\u215e', " 7/8"}, Rewritten{u'\u2212', "-"},
    Rewritten{u'\u2215', "/"},    Rewritten{u'\u2248', " "}, // "about"
    Rewritten{u'\u3001', ","},    Rewritten{u'\u3002', "."},    Rewritten{u'\u338e', "mg"},
    Rewritten{u'\u338f', "kg"},   Rewritten{u'\u339c', "mm"},   Rewritten{u'\u339d', "cm"},
    Rewritten{u'\ufe63', "-"},
};

/// The full-width forms of ASCII.
QChar narrowed(QChar c)
{
    constexpr char16_t first = u'\uff01';
    constexpr char16_t last = u'\uff5e';
    constexpr char16_t shift = first - u'!';
    const char16_t code = c.unicode();
    return code >= first && code <= last ? QChar(static_cast<char16_t>(code - shift)) : c;
}

bool isUnseen(QChar c)
{
    return c.category() == QChar::Other_Format || c.category() == QChar::Other_Control;
}

} // namespace

QString plainText(QStringView typed)
{
    QString plain;
    plain.reserve(typed.size());
    for (const QChar dressed : typed) {
        if (dressed.isSpace()) {
            plain += QLatin1Char(' ');
            continue;
        }
        if (isUnseen(dressed))
            continue;
        const QChar c = narrowed(dressed);
        const int digit = c.digitValue();
        if (digit >= 0 && c.isDigit()) {
            plain += QChar(static_cast<char16_t>(u'0' + digit));
            continue;
        }
        const auto at =
            std::lower_bound(rewritten.begin(), rewritten.end(), c.unicode(),
                             [](const Rewritten& row, char16_t code) { return row.from < code; });
        if (at != rewritten.end() && at->from == c.unicode())
            plain += QLatin1String(at->to);
        else
            plain += c.toLower();
    }
    plain.replace(QLatin1String("''"), QLatin1String("\""));
    return plain;
}

std::string cutToBytes(const QString& typed, std::size_t most)
{
    std::string text = typed.toStdString();
    if (text.size() <= most)
        return text;
    const auto isContinuation = [](char byte) { return (std::uint8_t(byte) & 0xC0U) == 0x80U; };
    std::size_t end = most;
    while (end > 0 && isContinuation(text[end]))
        --end;
    text.resize(end);
    return text;
}

} // namespace tripoise::entry
