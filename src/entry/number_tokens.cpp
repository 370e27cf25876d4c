// SPDX-License-Identifier: MIT
#include "entry/number_tokens.h"

#include <charconv>
#include <string>

namespace tripoise::entry {
namespace {

constexpr int groupSize = 3;

bool isFigure(QChar c)
{
    return c >= QLatin1Char('0') && c <= QLatin1Char('9');
}

bool isDecimalSign(QChar c)
{
    return c == QLatin1Char('.') || c == QLatin1Char(',');
}

/// Signs that never stand before a decimal.
bool isGroupSign(QChar c)
{
    return c == QLatin1Char(' ') || c == QLatin1Char('\'') || c == QLatin1Char('_');
}

double valueOf(const std::string& text)
{
    double value = 0.0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

class Cutter {
public:
    explicit Cutter(QStringView text) : m_text(text) {}

    std::optional<std::vector<Token>> cut()
    {
        std::vector<Token> tokens;
        while (m_at < m_text.size()) {
            const QChar c = m_text[m_at];
            Token token;
            if (c == QLatin1Char(' ')) {
                ++m_at;
                continue;
            }
            if (isFigure(c) || (isDecimalSign(c) && isFigure(peek(1)))) {
                const auto figures = cutFigures();
                if (!figures)
                    return std::nullopt;
                token.kind = Token::Kind::Figures;
                token.figures = *figures;
            } else if (c.isLetter() || c.isHighSurrogate() || c.isLowSurrogate()) {
                token.kind = Token::Kind::Word;
                token.word = cutWord();
            } else {
                token.mark = c;
                ++m_at;
            }
            tokens.push_back(std::move(token));
        }
        return tokens;
    }

private:
    [[nodiscard]] QChar peek(qsizetype ahead) const
    {
        return m_at + ahead < m_text.size() ? m_text[m_at + ahead] : QChar();
    }

    /// With the full stop of an abbreviation.
    QString cutWord()
    {
        const qsizetype begin = m_at;
        while (m_at < m_text.size()
               && (m_text[m_at].isLetter() || m_text[m_at].isHighSurrogate()
                   || m_text[m_at].isLowSurrogate()))
            ++m_at;
        const QString word = m_text.mid(begin, m_at - begin).toString();
        if (peek(0) == QLatin1Char('.'))
            ++m_at;
        return word;
    }

    /// Exactly three figures follow a sign that groups, and no fraction begins with them.
    [[nodiscard]] bool groupFollows() const
    {
        for (int i = 1; i <= groupSize; ++i)
            if (!isFigure(peek(i)))
                return false;
        const QChar next = peek(groupSize + 1);
        const QChar after = next == QLatin1Char(' ') ? peek(groupSize + 2) : next;
        return !isFigure(next) && after != QLatin1Char('/');
    }

    std::optional<Figures> cutFigures()
    {
        std::vector<std::string> groups(1);
        QString separators;
        while (true) {
            const QChar c = peek(0);
            if (isFigure(c)) {
                groups.back() += static_cast<char>(c.unicode());
            } else if (isDecimalSign(c) && isFigure(peek(1))) {
                separators += c;
                groups.emplace_back();
            } else if (isGroupSign(c) && groups.back().size() <= groupSize && !groups.back().empty()
                       && (separators.isEmpty() || separators.back() == c) && groupFollows()) {
                separators += c;
                groups.emplace_back();
            } else {
                if (isDecimalSign(c))
                    ++m_at; // "84." on the way to "84.2"
                break;
            }
            ++m_at;
        }
        return readingsOf(groups, separators);
    }

    static bool areThousands(const std::vector<std::string>& groups, std::size_t count)
    {
        if (groups.front().empty() || groups.front().size() > groupSize
            || groups.front().front() == '0')
            return false;
        for (std::size_t i = 1; i < count; ++i)
            if (groups[i].size() != groupSize)
                return false;
        return true;
    }

    static std::optional<Figures> readingsOf(const std::vector<std::string>& groups,
                                             const QString& separators)
    {
        std::string whole;
        for (const std::string& group : groups)
            whole += group;
        Figures figures;
        figures.wholeDigits = static_cast<int>(whole.size());
        figures.whole = true;
        if (separators.isEmpty()) {
            figures.decimal = valueOf(whole);
            return figures;
        }
        const bool oneKind = separators.count(separators.front()) == separators.size();
        const bool lastOnce = separators.count(separators.back()) == 1;
        const std::size_t last = groups.size() - 1;
        if (isDecimalSign(separators.back()) && lastOnce) {
            if (last > 1 && !areThousands(groups, last))
                return std::nullopt;
            const auto fraction = groups.back().size();
            figures.decimal =
                valueOf(whole.substr(0, whole.size() - fraction) + '.' + groups.back());
            figures.wholeDigits -= static_cast<int>(fraction);
            figures.whole = false;
        }
        if (oneKind && areThousands(groups, groups.size())) {
            figures.grouped = valueOf(whole);
            figures.separator = separators.front();
        }
        if (!figures.decimal && !figures.grouped)
            return std::nullopt;
        return figures;
    }

    QStringView m_text;
    qsizetype m_at = 0;
};

} // namespace

std::optional<std::vector<Token>> tokensOf(QStringView plain)
{
    return Cutter(plain).cut();
}

} // namespace tripoise::entry
