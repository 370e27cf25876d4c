// SPDX-License-Identifier: MIT
//
// A table of real people: a heading line, then one person a row: sex (female, male) and the base
// variables of assets/anthropometry.json by their document keys. The rows are never committed.
#pragma once

#include "support.h"

#include <vector>

namespace tripoise::test {

struct Someone {
    Sex sex;
    BaseVector base;
};

inline std::vector<Someone> peopleOf(const QString& path)
{
    const QStringList lines =
        QString::fromStdString(textOf(path)).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    const QStringList headings = lines.first().split(QLatin1Char(','));
    std::vector<Someone> people;
    for (qsizetype i = 1; i < lines.size(); ++i) {
        const QStringList cells = lines[i].split(QLatin1Char(','));
        Someone someone{cells[0] == QLatin1String("female") ? Sex::Female : Sex::Male, {}};
        for (int v = 0; v < baseVariableCount; ++v) {
            QString key = QString::fromUtf8(quantityKeys[static_cast<std::size_t>(v)].data(),
                                            quantityKeys[static_cast<std::size_t>(v)].size());
            if (!headings.contains(key))
                key = QStringLiteral("weight_kg");
            someone.base(v) = cells[headings.indexOf(key)].toDouble();
        }
        people.push_back(someone);
    }
    return people;
}

} // namespace tripoise::test
