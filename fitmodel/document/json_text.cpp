// SPDX-License-Identifier: MIT
#include "document/json_text.h"

#include "text/encoding.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <unordered_set>
#include <utility>

namespace tripoise {
namespace {

constexpr std::size_t longestShown = 60;
constexpr std::size_t longestNear = 24;
constexpr std::size_t mostDuplicates = 20;

/// Printable ASCII of a piece of text that may be anything.
std::string printable(std::string_view text)
{
    std::string result;
    for (const char byte : text)
        result += byte >= ' ' && byte <= '~' ? byte : '?';
    return result;
}

Problem notJsonAt(std::string_view text, std::size_t offset)
{
    offset = std::min(offset, text.size());
    const std::string_view before = text.substr(0, offset);
    const std::size_t newline = before.rfind('\n');
    const std::size_t lineStart = newline == std::string_view::npos ? 0 : newline + 1;
    const auto line = 1 + std::count(before.begin(), before.end(), '\n');
    const auto column =
        1
        + std::count_if(before.begin() + static_cast<std::ptrdiff_t>(lineStart), before.end(),
                        [](char byte) { return !isContinuation(byte); });
    std::string where = "line " + std::to_string(line) + ", column " + std::to_string(column);
    const std::size_t nearStart = std::max(lineStart, offset - std::min(offset, longestNear / 2));
    std::string_view around = text.substr(nearStart, longestNear);
    around = around.substr(0, around.find('\n'));
    if (!around.empty())
        where += ", near " + printable(around);
    return {.code = ProblemCode::NotJson,
            .path = "",
            .value = where,
            .low = {},
            .high = {},
            .unit = "",
            .names = {}};
}

/// Takes the parser's events and builds the value, so that limits are kept while reading. What is
/// open is gathered apart and moved into its place as it closes: a growing object copies its
/// members with all that is in them, and looking for each key takes a time that grows with the
/// square of their number.
class Builder {
public:
    explicit Builder(std::string_view text) : m_text(text) {}

    bool null() { return add(nullptr); }
    bool boolean(bool value) { return add(value); }
    bool number_integer(Json::number_integer_t value) { return add(value); }
    bool number_unsigned(Json::number_unsigned_t value) { return add(value); }
    bool number_float(Json::number_float_t value, const std::string&) { return add(value); }
    bool string(std::string& value) { return add(std::move(value)); }
    bool binary(Json::binary_t&) { return false; } // never in text
    bool start_object(std::size_t) { return open(); }
    bool start_array(std::size_t) { return open(); }

    bool key(std::string& name)
    {
        m_open.back().keys.push_back(std::move(name));
        return true;
    }

    bool end_object()
    {
        noteDuplicates();
        Level level = std::move(m_open.back());
        m_open.pop_back();
        Json object = Json::object();
        auto& members = object.get_ref<Json::object_t&>();
        members.reserve(level.values.size());
        for (std::size_t i = 0; i < level.values.size(); ++i)
            static_cast<Json::object_t::Container&>(members).emplace_back(
                std::move(level.keys[i]), std::move(level.values[i]));
        return add(std::move(object));
    }

    bool end_array()
    {
        Json array = std::move(m_open.back().values);
        m_open.pop_back();
        return add(std::move(array));
    }

    template <typename Exception>
    bool parse_error(std::size_t position, const std::string&, const Exception&)
    {
        m_problems = {notJsonAt(m_text, position == 0 ? 0 : position - 1)};
        return false;
    }

    std::variant<Json, Problems> take()
    {
        if (!m_problems.empty())
            return std::move(m_problems);
        return std::move(m_root);
    }

private:
    struct Level {
        std::vector<std::string> keys; ///< none in an array
        Json::array_t values;
    };

    static Problem problem(ProblemCode code, const std::string& path)
    {
        return {.code = code,
                .path = shortened(path, mostBytes),
                .value = "",
                .low = {},
                .high = {},
                .unit = "",
                .names = {}};
    }

    /// Of the container being filled.
    std::string path() const
    {
        std::string result;
        for (std::size_t i = 0; i + 1 < m_open.size(); ++i)
            result = m_open[i].keys.empty() ? joined(result, m_open[i].values.size())
                                            : joined(result, m_open[i].keys.back());
        return result;
    }

    void noteDuplicates()
    {
        const auto& keys = m_open.back().keys;
        std::unordered_set<std::string_view> seen;
        seen.reserve(keys.size());
        for (const std::string& name : keys)
            if (!seen.insert(name).second && m_problems.size() < mostDuplicates)
                m_problems.push_back(problem(ProblemCode::DuplicateKey, joined(path(), name)));
    }

    bool add(Json value)
    {
        (m_open.empty() ? m_root : m_open.back().values.emplace_back()) = std::move(value);
        return true;
    }

    bool open()
    {
        if (m_open.size() == mostLevels) {
            Problem deep = problem(ProblemCode::TooDeep, path());
            deep.high = static_cast<double>(mostLevels);
            m_problems = {std::move(deep)};
            return false;
        }
        m_open.emplace_back();
        return true;
    }

    std::string_view m_text;
    Json m_root;
    std::vector<Level> m_open;
    Problems m_problems;
};

} // namespace

std::variant<Json, Problems> parseJson(std::string_view text)
{
    if (text.size() > mostBytes) {
        return Problems{{.code = ProblemCode::TooLarge,
                         .path = "",
                         .value = std::to_string(text.size()),
                         .low = {},
                         .high = static_cast<double>(mostBytes),
                         .unit = "bytes",
                         .names = {}}};
    }
    constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";
    if (text.starts_with(byteOrderMark))
        text.remove_prefix(byteOrderMark.size());
    // The parser would take a zero byte for the end of the text and pass over what follows.
    if (const std::size_t zero = text.find('\0'); zero != std::string_view::npos)
        return Problems{notJsonAt(text, zero)};
    Builder builder(text);
    (void)Json::sax_parse(text.begin(), text.end(), &builder);
    return builder.take();
}

std::string joined(const std::string& path, std::string_view key)
{
    std::string result = path + '/';
    for (const char c : key) {
        if (c == '~')
            result += "~0";
        else if (c == '/')
            result += "~1";
        else
            result += c;
    }
    return result;
}

std::string joined(const std::string& path, std::size_t index)
{
    return path + '/' + std::to_string(index);
}

Json tidy(double value)
{
    constexpr double exactIntegers = 9007199254740992.0; // 2^53
    if (std::abs(value) < exactIntegers && value == std::floor(value))
        return static_cast<std::int64_t>(value);
    return value;
}

std::string compact(const Json& json)
{
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::string shortened(std::string_view text, std::size_t most)
{
    const std::string_view cut = cutToBytes(text, most);
    std::string result;
    for (const char c : cut)
        result += static_cast<unsigned char>(c) < ' ' || c == '\x7F' ? '?' : c;
    return cut.size() < text.size() ? result + "…" : result;
}

std::string shown(const Json& json)
{
    return shortened(compact(json), longestShown);
}

} // namespace tripoise
