// SPDX-License-Identifier: MIT
#include "table/plain.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <utility>

namespace tripoise {
namespace {

constexpr char32_t bad = 0xFFFFFFFF;

/// The character that starts at `at`, which moves on; `bad` where the bytes are none.
char32_t nextOf(std::string_view text, std::size_t& at)
{
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char first = byte(at++);
    if (first < 0x80)
        return first;
    const int more = first >= 0xF0 ? 3 : first >= 0xE0 ? 2 : first >= 0xC2 ? 1 : 0;
    if (more == 0 || first > 0xF4 || at + static_cast<std::size_t>(more) > text.size())
        return bad;
    char32_t result = first & (0x3F >> more);
    for (int i = 0; i < more; ++i) {
        const unsigned char next = byte(at + static_cast<std::size_t>(i));
        if ((next & 0xC0) != 0x80)
            return bad;
        result = (result << 6) | (next & 0x3F);
    }
    at += static_cast<std::size_t>(more);
    constexpr std::array<char32_t, 4> least{0, 0x80, 0x800, 0x10000};
    const bool surrogate = result >= 0xD800 && result < 0xE000;
    return result < least[static_cast<std::size_t>(more)] || result > 0x10FFFF || surrogate
               ? bad
               : result;
}

bool isUtf8(std::string_view text)
{
    for (std::size_t at = 0; at < text.size();)
        if (nextOf(text, at) == bad)
            return false;
    return true;
}

std::string fromWindows(std::string_view bytes)
{
    // Windows-1252 where it differs from Latin-1.
    static constexpr std::u32string_view from80 =
        U"€\x81‚ƒ„…†‡ˆ‰Š‹Œ\x8DŽ\x8F\x90‘’“”•–—˜™š›œ\x9DžŸ";
    static_assert(from80.size() == 0x20);
    std::string text;
    for (const char byte : bytes) {
        const auto c = static_cast<unsigned char>(byte);
        appendUtf8(text, c >= 0x80 && c < 0xA0 ? from80[c - 0x80] : c);
    }
    return text;
}

std::string fromUtf16(std::string_view bytes, bool bigEndian)
{
    std::string text;
    char32_t high = 0;
    for (std::size_t i = 0; i + 1 < bytes.size(); i += 2) {
        const auto a = static_cast<unsigned char>(bytes[i]);
        const auto b = static_cast<unsigned char>(bytes[i + 1]);
        const auto unit = static_cast<char32_t>(bigEndian ? (a << 8) | b : (b << 8) | a);
        if (unit >= 0xD800 && unit < 0xDC00) {
            high = unit;
        } else if (unit >= 0xDC00 && unit < 0xE000) {
            if (high)
                appendUtf8(text, 0x10000 + ((high - 0xD800) << 10) + (unit - 0xDC00));
            high = 0;
        } else {
            appendUtf8(text, unit);
        }
    }
    return text;
}

/// More than a stray control character is a picture or a program.
bool looksBinary(std::string_view text)
{
    constexpr std::size_t look = 4096;
    std::size_t controls = 0;
    const std::string_view start = text.substr(0, look);
    for (const char c : start) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte == 0)
            return true;
        controls += byte < 0x20 && c != '\t' && c != '\n' && c != '\r' && c != '\f' ? 1 : 0;
    }
    return controls * 100 > start.size();
}

/// What stands in place of some characters.
struct Plain {
    char32_t from;
    char32_t to;
    std::string_view text;
};
constexpr std::string_view narrowBlank = " ";
constexpr std::array plains{
    // unseen
    Plain{0xAD, 0xAD, ""}, Plain{0x200B, 0x200F, ""}, Plain{0x202A, 0x202E, ""},
    Plain{0x2060, 0x2060, ""}, Plain{0xFE0E, 0xFE0F, ""}, Plain{0xFEFF, 0xFEFF, ""},
    // superscripts
    Plain{0xB2, 0xB3, ""}, Plain{0xB9, 0xB9, ""}, Plain{0x2070, 0x2070, ""},
    Plain{0x2074, 0x2079, ""}, Plain{0x207D, 0x207E, ""},
    // blanks
    Plain{0x2000, 0x2005, "  "}, Plain{0x3000, 0x3000, "  "}, Plain{0xA0, 0xA0, narrowBlank},
    Plain{0x2006, 0x200A, narrowBlank}, Plain{0x202F, 0x202F, narrowBlank},
    // signs
    Plain{0xBA, 0xBA, "°"}, Plain{0x2DA, 0x2DA, "°"}, Plain{0x2010, 0x2011, "-"},
    Plain{0x2212, 0x2212, "-"}, Plain{0x2018, 0x2019, "'"}, Plain{0x2032, 0x2032, "'"},
    Plain{0xB4, 0xB4, "'"}, Plain{0x201C, 0x201E, "\""}, Plain{0x2033, 0x2033, "\""},
    Plain{0xD7, 0xD7, "x"}, Plain{0x2044, 0x2044, "/"}, Plain{0x2502, 0x2502, "|"},
    Plain{U'½', U'½', " 1/2"}, Plain{U'¼', U'¼', " 1/4"}, Plain{U'¾', U'¾', " 3/4"},
    Plain{U'⅛', U'⅛', " 1/8"}, Plain{U'⅜', U'⅜', " 3/8"}, Plain{U'⅝', U'⅝', " 5/8"},
    Plain{U'⅞', U'⅞', " 7/8"}, Plain{U'⅓', U'⅓', " 1/3"}, Plain{U'⅔', U'⅔', " 2/3"}};

/// Three figures follow, and no fourth.
bool groupFollows(std::string_view text, std::size_t at)
{
    if (at + 3 > text.size())
        return false;
    for (std::size_t i = at; i < at + 3; ++i)
        if (!isFigure(text[i]))
            return false;
    return at + 3 == text.size() || !isFigure(text[at + 3]);
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

void appendUtf8(std::string& text, char32_t c)
{
    const auto put = [&](char32_t byte) { text += static_cast<char>(byte); };
    if (c < 0x80) {
        put(c);
    } else if (c < 0x800) {
        put(0xC0 | (c >> 6));
        put(0x80 | (c & 0x3F));
    } else if (c < 0x10000) {
        put(0xE0 | (c >> 12));
        put(0x80 | ((c >> 6) & 0x3F));
        put(0x80 | (c & 0x3F));
    } else {
        put(0xF0 | (c >> 18));
        put(0x80 | ((c >> 12) & 0x3F));
        put(0x80 | ((c >> 6) & 0x3F));
        put(0x80 | (c & 0x3F));
    }
}

std::string smallLetters(std::string_view text)
{
    std::string result(text);
    for (char& c : result)
        c = smallLetter(c);
    return result;
}

std::optional<std::string> decoded(std::string_view bytes)
{
    std::string text;
    if (bytes.starts_with("\xFF\xFE") || bytes.starts_with("\xFE\xFF")) {
        text = fromUtf16(bytes.substr(2), bytes.front() == '\xFE');
    } else {
        if (bytes.starts_with("\xEF\xBB\xBF"))
            bytes.remove_prefix(3);
        if (looksBinary(bytes))
            return std::nullopt;
        text = isUtf8(bytes) ? std::string(bytes) : fromWindows(bytes);
    }
    return looksBinary(text) ? std::nullopt : std::optional(std::move(text));
}

std::string plainSigns(std::string_view utf8)
{
    std::string text;
    text.reserve(utf8.size());
    for (std::size_t at = 0; at < utf8.size();) {
        const char32_t c = nextOf(utf8, at);
        if (c == bad || (c < 0x20 && c != '\t'))
            continue;
        const auto plain =
            c < 0x80 ? plains.end()
                     : std::find_if(plains.begin(), plains.end(),
                                    [&](const Plain& one) { return c >= one.from && c <= one.to; });
        if (plain
            == plains.end()) // letters, figures and signs as wide as ideographs are made narrow
            appendUtf8(text, c > 0xFF00 && c < 0xFF5F ? c - 0xFEE0 : c);
        else if (plain->text != narrowBlank || text.empty() || !isFigure(text.back())
                 || !groupFollows(utf8, at))
            text += plain->text;
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
        const char32_t c = nextOf(text, at);
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
