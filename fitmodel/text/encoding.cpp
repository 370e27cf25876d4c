// SPDX-License-Identifier: MIT
#include "text/encoding.h"

#include <array>
#include <utility>

namespace tripoise {
namespace {

bool isUtf8(std::string_view text)
{
    for (std::size_t at = 0; at < text.size();)
        if (nextCharacter(text, at) == noCharacter)
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

} // namespace

char32_t nextCharacter(std::string_view text, std::size_t& at)
{
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char first = byte(at++);
    if (first < 0x80)
        return first;
    const int more = first >= 0xF0 ? 3 : first >= 0xE0 ? 2 : first >= 0xC2 ? 1 : 0;
    if (more == 0 || first > 0xF4 || at + static_cast<std::size_t>(more) > text.size())
        return noCharacter;
    char32_t result = first & (0x3F >> more);
    for (int i = 0; i < more; ++i) {
        const unsigned char next = byte(at + static_cast<std::size_t>(i));
        if (!isContinuation(static_cast<char>(next)))
            return noCharacter;
        result = (result << 6) | (next & 0x3F);
    }
    at += static_cast<std::size_t>(more);
    constexpr std::array<char32_t, 4> least{0, 0x80, 0x800, 0x10000};
    const bool surrogate = result >= 0xD800 && result < 0xE000;
    return result < least[static_cast<std::size_t>(more)] || result > 0x10FFFF || surrogate
               ? noCharacter
               : result;
}

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

std::string_view cutToBytes(std::string_view text, std::size_t most)
{
    if (text.size() > most)
        while (most > 0 && isContinuation(text[most]))
            --most;
    return text.substr(0, most);
}

} // namespace tripoise
