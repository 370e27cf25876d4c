// SPDX-License-Identifier: MIT
//
// Writing the members of a JSON object. What is absent is left out.
#pragma once

#include "document/json_text.h"
#include "document/words.h"
#include "frame/geometry.h"

namespace tripoise::document {

inline constexpr int indentOfDocuments = 2;

inline void put(Json& object, const char* key, const std::optional<double>& value)
{
    if (value)
        object[key] = tidy(*value);
}

/// A number that every whole document states; 0 where it is not known yet.
inline void putNeeded(Json& object, const char* key, double value)
{
    if (value != 0.0)
        object[key] = tidy(value);
}

inline void putText(Json& object, const char* key, const std::string& text)
{
    if (!text.empty())
        object[key] = text;
}

inline void putFilled(Json& object, const char* key, Json inside)
{
    if (!inside.empty())
        object[key] = std::move(inside);
}

template <typename Value, std::size_t size>
inline void putWord(Json& object, const char* key, const std::optional<Value>& value,
                    const Vocabulary<Value, size>& words)
{
    if (value)
        object[key] = wordOf(words, *value);
}

inline Json numbers(const std::vector<double>& values)
{
    Json list = Json::array();
    for (const double value : values)
        list.push_back(tidy(value));
    return list;
}

/// A frame as it stands in a fitting and in a frame model's file.
[[nodiscard]] Json frameJson(const FrameSize& frame);

} // namespace tripoise::document
