// SPDX-License-Identifier: MIT
#include "document/figures.h"

#include "text/plain.h"

namespace tripoise::document {

double figure(Fields& fields, std::string_view key)
{
    const Json* json = fields.find(key);
    if (!json || !json->is_object())
        return fields.needNumber(key, anyNumber);
    Fields inside(*json, fields.pathOf(key), fields.report());
    return inside.needNumber("value", anyNumber);
}

Angle angle(Fields& fields, std::string_view key)
{
    return Angle::degrees(figure(fields, key));
}

std::vector<double> row(const Json& json, const std::string& path, std::size_t size, Report& report)
{
    std::vector<double> values(size, 0.0);
    if (!json.is_array()) {
        report.add(wrongType(json, path, "list"));
        return values;
    }
    if (json.size() != size) {
        Problem problem = problemAt(json.size() < size ? ProblemCode::TooFew : ProblemCode::TooMany,
                                    path, std::to_string(json.size()));
        problem.low = problem.high = static_cast<double>(size);
        report.add(std::move(problem));
        return values;
    }
    for (std::size_t i = 0; i < size; ++i)
        values[i] = numberAt(json[i], joined(path, i), anyNumber, report).value_or(0.0);
    return values;
}

Range range(Fields& fields, std::string_view key)
{
    const Json* json = fields.need(key);
    if (!json)
        return {};
    const auto ends = row(*json, fields.pathOf(key), 2, fields.report());
    return {ends[0], ends[1]};
}

std::vector<std::string> texts(Fields& fields, std::string_view key)
{
    std::vector<std::string> result;
    const auto& list = fields.needList(key, {1, 500});
    for (std::size_t i = 0; i < list.size(); ++i) {
        if (list[i].is_string())
            result.push_back(list[i].get<std::string>());
        else
            fields.report().add(wrongType(list[i], joined(fields.pathOf(key), i), "text"));
    }
    return result;
}

std::vector<std::string> wordList(Fields& fields, std::string_view key)
{
    std::vector<std::string> result;
    for (const std::string& text : texts(fields, key))
        for (std::string& word : wordsOf(text))
            result.push_back(std::move(word));
    return result;
}

} // namespace tripoise::document
