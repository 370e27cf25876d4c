// SPDX-License-Identifier: MIT
#include "text/plain.h"

#include "text/encoding.h"

#include <algorithm>
#include <utility>

namespace tripoise {
namespace {

/// What does not show (categories Cc and Cf) and superscripts: the first of each run, and the one
/// behind its last.
constexpr std::u32string_view unseen =
    U"\x7F\x85\x86\xA0\u00AD\u00AE\u00B2\u00B4\u00B9\u00BA\u0600\u0606\u061C\u061D\u06DD\u06DE"
    U"\u070F\u0710\u0890\u0892\u08E2\u08E3\u180E\u180F\u200B\u2010\u202A\u202F\u2060\u2065"
    U"\u2066\u2071\u2074\u207A\u207D\u207F\uFE0E\uFE10\uFEFF\uFF00\uFFF9\uFFFC";
static_assert(std::is_sorted(unseen.begin(), unseen.end()));
constexpr std::u32string_view narrowBlanks = U"\u00A0\u2006\u2007\u2008\u2009\u200A\u202F\u205F";
constexpr std::u32string_view wideBlanks =
    U"\n\r\x85\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2028\u2029\u3000";

/// Signs, and what stands in their place; from the grave accent on behind a figure only.
constexpr std::u32string_view signs =
    U"\u00B4\u00BA\u00D7\u02B9\u02BA\u02DA\u066B\u066C\u2010\u2011\u2012\u2018\u2019\u201B"
    U"\u201C\u201D\u201E\u201F\u2032\u2033\u2044\u2212\u2215\u2502\uFE63`\u201A\u3001\u3002";
constexpr std::u32string_view plains = U"'°x'\"°.'---'''\"\"\"\"'\"/-/|-',,.";
constexpr std::size_t amongFigures = signs.find(U'`');
static_assert(signs.size() == plains.size());

/// Signs of several characters, each as long as the others.
constexpr std::u32string_view fractions = U"¼½¾⅐⅑⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
constexpr std::string_view fractionTexts =
    " 1/4 1/2 3/4 1/7 1/9 1/3 2/3 1/5 2/5 3/5 4/5 1/6 5/6 1/8 3/8 5/8 7/8";
constexpr std::u32string_view squares = U"㎎㎏㎜㎝";
constexpr std::string_view squareTexts = "mgkgmmcm";

/// The noughts of other scripts; the other nine figures follow each (Unicode, general category Nd).
constexpr std::u32string_view noughts =
    U"\u0660\u06F0\u07C0\u0966\u09E6\u0A66\u0AE6\u0B66\u0BE6\u0C66\u0CE6\u0D66\u0DE6\u0E50\u0ED0"
    U"\u0F20\u1040\u1090\u17E0\u1810\u1946\u19D0\u1A80\u1A90\u1B50\u1BB0\u1C40\u1C50\uA620\uA8D0"
    U"\uA900\uA9D0\uA9F0\uAA50\uABF0";

/// Signs, figures, and letters as wide as ideographs, in ASCII.
char32_t plainOf(char32_t c, bool behindFigure)
{
    if (const std::size_t sign = signs.find(c); sign < (behindFigure ? signs.size() : amongFigures))
        return plains[sign];
    if (c > 0xFF00 && c < 0xFF5F)
        return c - 0xFEE0;
    const auto above = std::upper_bound(noughts.begin(), noughts.end(), c);
    const char32_t figure = above == noughts.begin() ? 10 : c - above[-1];
    return figure < 10 ? '0' + figure : c;
}

bool isUnseen(char32_t c)
{
    const auto above = std::upper_bound(unseen.begin(), unseen.end(), c) - unseen.begin();
    return c == noCharacter || (c < 0x20 && c != '\t') || above % 2 == 1;
}

/// The letter under the accent; "s" for ß, "o" for œ; 0 where there is none.
char baseLetter(char32_t c)
{
    if (c == 0xDF)
        return 's';
    using std::string_view_literals::operator""sv;
    static constexpr std::string_view latin1 =
        "aaaaaaaceeeeiiiidnooooo\0ouuuuytsaaaaaaaceeeeiiiidnooooo\0ouuuuyty"sv;
    if (c >= 0xC0 && c <= 0xFF)
        return latin1[c - 0xC0];
    // Latin Extended-A, U+0100 to U+017F: Czech, Polish
    static constexpr std::string_view latinA =
        "aaaaaaccccccccddddeeeeeeeeeegggggggghhhhiiiiiiiiiiiijjkkklllllllllln"
        "nnnnnnnnoooooooorrrrrrssssssssttttttuuuuuuuuuuuuwwyyyzzzzzzs";
    static_assert(latinA.size() == 0x80);
    return c >= 0x100 && c < 0x180 ? latinA[c - 0x100] : 0;
}

/// Characters of scripts that have no small letters and no accents: kana, ideographs.
bool isOwnLetter(char32_t c)
{
    return (c >= 0x3041 && c <= 0x30FF && c != 0x30FB) || (c >= 0x4E00 && c <= 0x9FFF)
           || c == 0x3005;
}

} // namespace

bool isGroup(std::string_view text)
{
    constexpr std::size_t size = 3;
    return std::min(text.find_first_not_of("0123456789"), text.size()) == size;
}

std::string smallLetters(std::string_view text)
{
    std::string result(text);
    for (char& c : result)
        c = smallLetter(c);
    return result;
}

std::string plainSigns(std::string_view utf8)
{
    std::string text;
    text.reserve(utf8.size());
    for (std::size_t at = 0; at < utf8.size();) {
        const char32_t c = nextCharacter(utf8, at);
        const bool behindFigure = !text.empty() && isFigure(text.back());
        const auto of = [c](std::u32string_view from, std::string_view texts) {
            const std::size_t size = texts.size() / from.size();
            const std::size_t place = from.find(c);
            return place == from.npos ? std::string_view() : texts.substr(place * size, size);
        };
        if (c < 0x80 && c >= 0x20 && c != '`')
            text += static_cast<char>(c);
        else if (wideBlanks.find(c) != wideBlanks.npos)
            text += "  ";
        else if (narrowBlanks.find(c) != narrowBlanks.npos)
            text += behindFigure && isGroup(utf8.substr(at)) ? "" : " ";
        else if (const auto fraction = of(fractions, fractionTexts); !fraction.empty())
            text += fraction;
        else if (const auto square = of(squares, squareTexts); !square.empty())
            text += square;
        else if (!isUnseen(c))
            appendUtf8(text, plainOf(c, behindFigure));
    }
    // "Stack ........ 585": a row of points leads to the number.
    constexpr std::size_t leader = 4;
    for (std::size_t at = 0; (at = text.find("....", at)) != std::string::npos;) {
        const std::size_t end = std::min(text.find_first_not_of('.', at), text.size());
        text.replace(at, end - at, std::max(end - at, leader), ' ');
        at = end;
    }
    return text;
}

std::vector<std::string_view> linesOf(std::string_view text, std::size_t most)
{
    std::vector<std::string_view> lines;
    std::size_t start = 0;
    while (start < text.size() && lines.size() <= most) {
        const std::size_t end = std::min(text.find_first_of("\r\n", start), text.size());
        lines.push_back(text.substr(start, end - start));
        start = end + 1;
        if (end + 1 < text.size() && text[end] == '\r' && text[end + 1] == '\n')
            ++start;
    }
    return lines;
}

std::string_view trimmed(std::string_view text)
{
    const std::size_t first = text.find_first_not_of(" \t\f");
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(" \t\f") - first + 1);
}

std::vector<std::string> wordsOf(std::string_view text)
{
    std::vector<std::string> words;
    std::vector<bool> joined; // by a dash to the one before
    std::string word;
    bool dash = false;
    bool pendingDash = false;
    const auto flush = [&] {
        if (word.empty())
            return;
        words.push_back(std::exchange(word, {}));
        joined.push_back(pendingDash);
        pendingDash = false;
    };
    for (std::size_t at = 0; at < text.size();) {
        const char32_t c = nextCharacter(text, at);
        const char plain = c < 0x80 ? smallLetter(static_cast<char>(c)) : baseLetter(c);
        const char letter = isLetter(plain) || isFigure(plain) ? plain : '\0';
        if (letter) {
            if (word.empty())
                pendingDash = dash && !words.empty();
            dash = false;
            word += letter;
            if (c == 0xDF)
                word += 's';
            continue;
        }
        if (isOwnLetter(c)) {
            appendUtf8(word, c);
            dash = false;
            continue;
        }
        flush();
        dash = c == '-' || c == '/' || c == 0x2013;
    }
    flush();

    std::vector<std::string> result;
    for (std::size_t i = 0; i < words.size(); ++i) {
        std::string& one = words[i];
        // "ae" is how "ä" is typed where there is none.
        for (const std::string_view pair : {"ae", "oe", "ue"})
            for (std::size_t at = one.find(pair); at != std::string::npos; at = one.find(pair, at))
                one.erase(at + 1, 1);
        const bool wasLetter = i > 0 && words[i - 1].size() == 1;
        if (joined[i] && one.size() == 1 && wasLetter && !result.empty())
            result.back() += one;
        else
            result.push_back(std::move(one));
    }
    return result;
}

} // namespace tripoise
