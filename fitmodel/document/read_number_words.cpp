// SPDX-License-Identifier: MIT
//
// assets/number_words.json
#include "document/figures.h"
#include "document/read.h"
#include "document/table_file.h"
#include "text/plain.h"

#include <algorithm>

namespace tripoise {

using namespace document;

namespace {

void readUnits(Fields& fields, std::string_view key, NumberWords::Units& to)
{
    auto units = fields.needObject(key);
    if (!units)
        return;
    for (const auto& member : units->members()) {
        const std::string& name = member.first;
        const auto at = std::find_if(unitFacts.begin(), unitFacts.end(),
                                     [&](const UnitFacts& facts) { return facts.key == name; });
        if (at == unitFacts.end())
            fields.report().add(problemAt(ProblemCode::UnknownKey, units->pathOf(name)));
        else
            for (const std::string& word : wordList(*units, name))
                to.emplace_back(word, static_cast<Unit>(at - unitFacts.begin()));
    }
}

} // namespace

std::variant<NumberWords, Problems> readNumberWords(std::string_view text)
{
    NumberWords words;
    Report report;
    const std::string name = "number_words.json";
    const TableFile file(name, text, report);
    if (file.readable()) {
        Fields fields(file.json(), name, report);
        readUnits(fields, "units", words.units);
        readUnits(fields, "units_behind_figures", words.behindFigures);
        words.range = wordList(fields, "range_words");
        words.about = texts(fields, "about_words");
        std::sort(words.about.begin(), words.about.end(),
                  [](const std::string& a, const std::string& b) {
                      return a.size() > b.size(); // "ca." before "ca"
                  });
    }
    if (!report.empty())
        return report.take();
    return words;
}

} // namespace tripoise
