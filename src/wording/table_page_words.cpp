// SPDX-License-Identifier: MIT
#include "wording/table_page_words.h"

#include "wording/problems.h"
#include "wording/table_words.h"
#include "wording/visible.h"
#include "wording/words.h"

#include <QRegularExpression>

#include <algorithm>

namespace tripoise {

QString followsText()
{
    return Words::tr("follows from the other figures");
}

QString assumedText(const ClosedValue& value)
{
    return value.assuming ? withOrdinaryText(*value.assuming)
                          : Words::tr("assumed, as nothing in the table tells it");
}

QString notUnderstoodText()
{
    return Words::tr("not understood, and left out");
}

QString correctedText(Column column, double printed, double taken)
{
    return Words::tr("taken as %1; a click goes back to the printed %2")
        .arg(figureOf(column, taken), figureOf(column, printed));
}

QString takesText(Column column, double value)
{
    return Words::tr("A click takes %1.").arg(figureOf(column, value));
}

QString figureSpoken(const QString& size, const QString& line, const QString& figure)
{
    return Words::tr("%1, %2: %3", "size, column: figure").arg(size, line, figure);
}

QString takeFigureText(Column column, double value)
{
    return Words::tr("Take %1").arg(figureOf(column, value));
}

QString asHeadedText()
{
    return Words::tr("Read as headed");
}

QString takeDefinitionText()
{
    return Words::tr("Take the other");
}

QString confirmText()
{
    return Words::tr("It is right");
}

QString sayMeaningText()
{
    return Words::tr("Say what it is…");
}

QString tooManySizes(std::size_t most)
{
    return Words::tr("Not added: a fitting holds %1 sizes at most.").arg(most);
}

QString addSizesText(int count, bool keep, int replaced)
{
    if (count == 0)
        return keep ? Words::tr("Keep") : Words::tr("Add sizes");
    const QString text = keep ? Words::tr("Add %n size(s) and keep the frame", nullptr, count)
                              : Words::tr("Add %n size(s)", nullptr, count);
    return replaced == 0
               ? text
               : Words::tr("%1; %n in place of another of its name", nullptr, replaced).arg(text);
}

QString lineSentence(const Problem& problem)
{
    static const QRegularExpression place(QStringLiteral("^line (\\d+)(?:, (.+))?$"));
    const auto found = place.match(QString::fromStdString(problem.path));
    if (!found.hasMatch())
        return Words::tr("The text: %1").arg(reasonOf(problem));
    return found.captured(2).isEmpty()
               ? Words::tr("Line %1: %2").arg(found.captured(1), reasonOf(problem))
               : Words::tr("Line %1, %2: %3", "line, column, what is wrong")
                     .arg(found.captured(1), found.captured(2), reasonOf(problem));
}

QString backText(Column column, double printed)
{
    return Words::tr("Back to %1").arg(figureOf(column, printed));
}

QString headingUnknownText(const std::string& heading)
{
    return heading.empty()
               ? Words::tr("Figures without a heading are not understood.")
               : Words::tr("“%1” is not understood, and left out.").arg(asName(heading));
}

QString moreUnknownText(std::size_t count)
{
    return Words::tr("… and %n more line(s) that are not understood", nullptr, int(count));
}

QString tableSummary(const ReadTable& read)
{
    if (!read.readable())
        return {};
    const auto columns =
        std::count_if(read.columns.begin(), read.columns.end(), [](const ReadColumn& column) {
            return column.meaning && !isSetAside(*column.meaning);
        });
    return Words::tr("%1, %2", "sizes, headings")
        .arg(Words::tr("%n size(s)", nullptr, int(read.sizes.size())),
             Words::tr("%n heading(s) understood", nullptr, int(columns)));
}

QString tableName(const std::vector<std::optional<std::string>>& models, std::size_t table)
{
    const auto& model = models[table];
    const QString name = asName(model.value_or(std::string()));
    if (models.size() == 1
        || (!name.isEmpty() && std::count(models.begin(), models.end(), model) == 1))
        return name;
    return name.isEmpty() ? Words::tr("table %1", "of several in a text").arg(table + 1)
                          : Words::tr("%1, table %2", "a model").arg(name).arg(table + 1);
}

QString whyNoCandidate(const ClosedSize& size)
{
    QStringList missing;
    for (const UnknownColumn& unknown : size.unknown)
        if (std::find(unknown.prevents.begin(), unknown.prevents.end(), Purpose::Candidate)
            != unknown.prevents.end())
            missing << nameOf(unknown.column);
    return missing.isEmpty() ? QString()
                             : Words::tr("No candidate without %1.").arg(listed(missing));
}

QString leaveOutText()
{
    return Words::tr("leave it out");
}

QString addedStep(int count, const QString& model)
{
    const QString sizes = Words::tr("%n size(s)", nullptr, count);
    return model.isEmpty()
               ? Words::tr("%1 out of a table").arg(sizes)
               : Words::tr("%1 of %2 out of a table", "2 sizes of Weir").arg(sizes, model);
}

QString keptAddedStep(int count, const QStringList& models)
{
    return Words::tr("%1 of %2, kept", "2 sizes of Weir")
        .arg(Words::tr("%n size(s)", nullptr, count), listed(models));
}

} // namespace tripoise
