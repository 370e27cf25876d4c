// SPDX-License-Identifier: MIT
//
// One file of constants under assets/.
#pragma once

#include "document/fields.h"

namespace tripoise::document {

/// A file's outermost object, or what is wrong with it under the file's name.
class TableFile {
public:
    TableFile(std::string_view name, std::string_view text, Report& report)
    {
        auto read = parseJson(text);
        if (auto* problems = std::get_if<Problems>(&read)) {
            for (Problem& problem : *problems) {
                problem.path.insert(0, name);
                report.add(std::move(problem));
            }
            m_json = Json::object();
            return;
        }
        m_json = std::get<Json>(std::move(read));
        if (m_json.is_object()) {
            m_readable = true;
        } else {
            report.add(wrongType(m_json, std::string(name), "object"));
            m_json = Json::object();
        }
    }
    TableFile(const TableFile&) = delete;
    TableFile& operator=(const TableFile&) = delete;

    [[nodiscard]] const Json& json() const { return m_json; }
    [[nodiscard]] bool readable() const { return m_readable; }

private:
    Json m_json;
    bool m_readable = false;
};

} // namespace tripoise::document
