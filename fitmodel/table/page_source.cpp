// SPDX-License-Identifier: MIT
#include "table/page_source.h"

#include "text/encoding.h"
#include "text/plain.h"

#include <algorithm>
#include <array>

namespace tripoise::table {
namespace {

constexpr std::size_t mostAcross = 200;
constexpr std::size_t mostDown = 1000;

/// Of the named characters those that stand in such tables, each name before its character.
constexpr std::string_view named = " amp & lt < gt > quot \" apos ' deg ° ndash – mdash — minus − "
                                   "hellip … frac12 ½ frac14 ¼ frac34 ¾"
                                   " prime ′ Prime ″ times × bull • middot · rsquo ’ lsquo ‘ ldquo "
                                   "“ rdquo ” auml ä ouml ö uuml ü Auml Ä"
                                   " Ouml Ö Uuml Ü szlig ß eacute é egrave è ecirc ê agrave à "
                                   "aacute á acirc â atilde ã aring å aelig æ"
                                   " ccedil ç iacute í ntilde ñ oacute ó ocirc ô otilde õ oslash ø "
                                   "uacute ú Aacute Á Eacute É Aring Å"
                                   " Oslash Ø ";

/// The character that "&…;" stands for; as it is where it stands for none.
std::string unescaped(std::string_view name)
{
    if (name.starts_with('#')) {
        const bool hex = name.size() > 1 && smallLetter(name[1]) == 'x';
        std::uint32_t value = 0;
        for (const char c : name.substr(hex ? 2 : 1)) {
            const int digit = c >= '0' && c <= '9' ? c - '0'
                              : hex && smallLetter(c) >= 'a' && smallLetter(c) <= 'f'
                                  ? smallLetter(c) - 'a' + 10
                                  : -1;
            if (digit < 0 || value > 0x10FFFF)
                return '&' + std::string(name) + ';';
            value = value * (hex ? 16 : 10) + static_cast<std::uint32_t>(digit);
        }
        std::string text;
        if (value > 0 && value <= 0x10FFFF && (value < 0xD800 || value >= 0xE000))
            appendUtf8(text, value);
        return text;
    }
    if (name == "nbsp" || name.ends_with("sp")) // thinsp, ensp, emsp
        return " ";
    const std::string key = ' ' + std::string(name) + ' ';
    const std::size_t at = named.find(key);
    if (at == std::string_view::npos || name.size() < 2)
        return '&' + std::string(name) + ';';
    const std::string_view rest = named.substr(at + key.size());
    return std::string(rest.substr(0, rest.find(' ')));
}

/// "1", "*", "a, b" in `<sup>`: a footnote mark, or the ring of a degree sign.
bool isMark(std::string_view text)
{
    constexpr std::size_t longest = 4;
    return !text.empty() && text.size() <= longest
           && std::all_of(text.begin(), text.end(), [](char c) {
                  return isFigure(c)
                         || std::string_view("*,() abcdeo").find(c) != std::string_view::npos;
              });
}

std::size_t countOf(std::string_view value, std::size_t most)
{
    std::size_t count = 0;
    for (const char c : trimmed(value)) {
        if (!isFigure(c))
            break;
        count = std::min(most, count * 10 + static_cast<std::size_t>(c - '0'));
    }
    return std::max<std::size_t>(1, count);
}

class Tokens {
public:
    Tokens(std::string_view text, PageSink& sink) : m_text(text), m_sink(sink) {}

    void read()
    {
        while (m_at < m_text.size() && !m_sink.isFull()) {
            const std::size_t open = std::min(m_text.find('<', m_at), m_text.size());
            m_sink.put(m_text.substr(m_at, open - m_at));
            m_at = open;
            if (m_at < m_text.size())
                markup();
        }
    }

private:
    /// A comment, a tag, or a sign that is neither.
    void markup()
    {
        const std::string_view rest = m_text.substr(m_at);
        if (rest.starts_with("<!--")) {
            skipBehind("-->", m_at + 4);
        } else if (rest.starts_with("<!") || rest.starts_with("<?")) {
            skipBehind(">", m_at + 2);
        } else if (rest.size() > 1 && (isLetter(rest[1]) || (rest[1] == '/' && rest.size() > 2))) {
            // "Stack<span>mm</span>"
            const bool behindTag =
                m_at > 0 && (m_text[m_at - 1] == '>' || isLetter(m_text[m_at - 1]));
            const Tag tag = readTag();
            if (behindTag && !tag.closes && isInline(tag.name))
                m_sink.put(" "); // what stands in two elements is no word
            if (tag.name == "sup" && !tag.closes)
                skipMark();
            if (!tag.closes && isPassedOver(tag.name)) {
                const std::size_t end = findSmall(m_text, "</" + tag.name, m_at);
                m_at = std::min(end, m_text.size());
            } else {
                m_sink.take(tag);
            }
        } else {
            m_sink.put("<");
            ++m_at;
        }
    }

    void skipBehind(std::string_view sign, std::size_t from)
    {
        const std::size_t end = m_text.find(sign, from);
        m_at = end == std::string_view::npos ? m_text.size() : end + sign.size();
    }

    /// A fraction's numerator, before "/", is none, but a number of its own.
    void skipMark()
    {
        constexpr std::size_t most = 4;
        const std::string_view rest = m_text.substr(m_at, most + 1);
        const std::string_view mark = rest.substr(0, rest.find('<'));
        if (mark.size() == rest.size() || !isMark(mark))
            return;
        const std::size_t end = m_text.find('>', m_at);
        if (end != std::string_view::npos && m_text.substr(end + 1).starts_with('/'))
            m_sink.put(" ");
        else
            m_at += mark.size();
    }

    static bool isPassedOver(std::string_view name)
    {
        static constexpr std::array passed{"script", "style",  "title",  "noscript", "textarea",
                                           "svg",    "iframe", "select", "template", "object"};
        return std::find(passed.begin(), passed.end(), name) != passed.end();
    }

    /// From "<" to behind ">", which may stand in an attribute's quotes.
    Tag readTag()
    {
        Tag tag;
        ++m_at;
        tag.closes = m_text[m_at] == '/';
        m_at += tag.closes ? 1 : 0;
        constexpr std::size_t longest = 12;
        for (; m_at < m_text.size() && (isLetter(m_text[m_at]) || isFigure(m_text[m_at])); ++m_at)
            if (tag.name.size() < longest)
                tag.name += smallLetter(m_text[m_at]);
        while (m_at < m_text.size() && m_text[m_at] != '>')
            readAttribute(tag);
        m_at += m_at < m_text.size() ? 1 : 0;
        return tag;
    }

    void readAttribute(Tag& tag)
    {
        const std::size_t start = m_at;
        std::string name;
        while (m_at < m_text.size() && isLetter(m_text[m_at]))
            name += smallLetter(m_text[m_at++]);
        if (m_at == start) {
            ++m_at; // a blank, a slash, a stray sign
            return;
        }
        if (m_text[start - 1] == '-')
            name.clear(); // "aria-hidden", "data-style"
        tag.hidden = tag.hidden || name == "hidden";
        if (m_at >= m_text.size() || m_text[m_at] != '=')
            return;
        ++m_at;
        const bool quoted = m_at < m_text.size() && (m_text[m_at] == '"' || m_text[m_at] == '\'');
        const std::string_view ends = quoted ? m_text.substr(m_at++, 1) : " \t\r\n>";
        const std::size_t end = std::min(m_text.find_first_of(ends, m_at), m_text.size());
        const std::string_view value = m_text.substr(m_at, end - m_at);
        m_at = std::min(end + (quoted ? 1 : 0), m_text.size());
        if (name == "colspan")
            tag.across = countOf(value, mostAcross);
        else if (name == "rowspan")
            tag.down = countOf(value, mostDown);
        else if (name == "style")
            for (const std::string_view none :
                 {"display:none", "display: none", "visibility:hidden"})
                tag.hidden = tag.hidden || findSmall(value, none, 0) != std::string_view::npos;
    }

    std::string_view m_text;
    PageSink& m_sink;
    std::size_t m_at = 0;
};

} // namespace

void readPage(std::string_view page, PageSink& sink)
{
    Tokens(page, sink).read();
}

void addText(std::string& to, std::string_view text)
{
    constexpr std::size_t longestName = 10;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        const std::size_t end = c == '&' ? text.substr(i, longestName).find(';') : 0;
        if (c == '&' && end != std::string_view::npos && end > 1) {
            to += unescaped(text.substr(i + 1, end - 1));
            i += end;
        } else if (c == ' ' || (c >= '\t' && c <= '\r')) {
            if (!to.empty() && to.back() != ' ')
                to += ' ';
        } else if (static_cast<unsigned char>(c) >= 0x20) {
            to += c;
        }
    }
}

bool isTitle(const Tag& tag)
{
    return tag.name.size() == 2 && tag.name[0] == 'h' && tag.name[1] <= '3';
}

bool isInline(std::string_view name)
{
    static constexpr std::array all{"span", "b", "sup", "sub", "strong", "a", "font"};
    return std::find(all.begin(), all.end(), name) != all.end();
}

std::size_t findSmall(std::string_view text, std::string_view what, std::size_t from)
{
    const auto at =
        std::search(text.begin() + static_cast<std::ptrdiff_t>(from), text.end(), what.begin(),
                    what.end(), [](char a, char b) { return smallLetter(a) == b; });
    return at == text.end() ? std::string_view::npos : static_cast<std::size_t>(at - text.begin());
}

} // namespace tripoise::table
