// SPDX-License-Identifier: MIT
#include "wording/advice_text.h"

#include "wording/choice_words.h"
#include "wording/fit_words.h"
#include "wording/handover_words.h"
#include "wording/remedy_words.h"
#include "wording/ride_rows.h"
#include "wording/sections.h"
#include "wording/setup_rows.h"
#include "wording/words.h"

#include <algorithm>

namespace tripoise {
namespace {

constexpr qsizetype lineWidth = 98;
constexpr qsizetype leastColumnWidth = 28; // of a label and of a value, gap apart
constexpr qsizetype columnGap = 2;
constexpr qsizetype mostChecksOnAScreen = 3;

/// Text folded to the line width, every line after the first indented.
QString folded(const QString& text, const QString& first, const QString& rest)
{
    QString result;
    QString line = first;
    bool empty = true;
    for (const QString& word : text.split(QLatin1Char(' '))) {
        if (!empty && line.size() + 1 + word.size() > lineWidth) {
            result += line + QLatin1Char('\n');
            line = rest;
            empty = true;
        }
        line += (empty ? QString() : QStringLiteral(" ")) + word;
        empty = false;
    }
    return result + line + QLatin1Char('\n');
}

QString paragraph(const QString& text)
{
    return folded(text, {}, {});
}
QString item(const QString& text)
{
    return folded(text, QStringLiteral("  · "), QStringLiteral("    "));
}
QString heading(const QString& text)
{
    return QLatin1Char('\n') + text + QLatin1Char('\n');
}

QString written(const Section& section)
{
    if (section.items.isEmpty())
        return {};
    QString text = heading(section.heading);
    for (const QString& sentence : section.items)
        text += item(sentence);
    return text;
}

/// What the builder chose, after what breaks on it.
QString written(const BuildersChoice& choice, const Advice& advice, const Prepared& prepared)
{
    const ChoiceWords words = choiceWords(choice, advice, prepared);
    QString text(QLatin1Char('\n'));
    for (const QString& caution : words.cautions)
        text += paragraph(caution);
    text += paragraph(words.sentence);
    const auto tell = [&text](const QString& before, const QStringList& sentences) {
        if (!before.isEmpty())
            text += paragraph(before);
        for (const QString& sentence : sentences)
            text += item(sentence);
    };
    tell(words.against, words.costs);
    tell(words.moved, words.moves);
    return text;
}

/// Lines of label and values in columns, without blanks at their ends.
QString table(const QStringList& titles, const std::vector<SetupRow>& rows)
{
    std::vector<QStringList> lines{QStringList{QString()} + titles};
    for (const SetupRow& row : rows)
        lines.push_back(QStringList{row.label} + row.said);
    qsizetype width = leastColumnWidth;
    for (const QStringList& cells : lines)
        for (const QString& cell : cells)
            width = std::max(width, cell.size());
    QString text;
    for (const QStringList& cells : lines) {
        QString line(columnGap, QLatin1Char(' '));
        for (const QString& cell : cells)
            line += cell.leftJustified(width + columnGap);
        while (line.endsWith(QLatin1Char(' ')))
            line.chop(1);
        text += line + QLatin1Char('\n');
    }
    return text;
}

/// The named size and the one after it.
QString setups(const Advice& advice, const Prepared& prepared, Told told)
{
    QStringList titles;
    Columns columns;
    for (const Candidate& candidate : advice.candidates) {
        if (candidate.best && columns.size() < 2) {
            titles << sizeName(candidate, prepared);
            columns.push_back(&*candidate.best);
        }
    }
    std::vector<SetupRow> rows = setupRows(columns, advice, prepared);
    if (told == Told::OneScreen)
        std::erase_if(rows, [](const SetupRow& row) { return !row.essential; });
    else
        for (const SetupRow& row : backRows(columns))
            rows.push_back(row);
    return heading(Words::tr("Set it up")) + table(titles, rows);
}

/// The same two on the road, and what gives their toes more room.
QString rides(const Advice& advice, const Prepared& prepared)
{
    QStringList titles;
    RideColumns columns;
    QString remedies;
    for (const Candidate& candidate : advice.candidates) {
        if (!candidate.ride || columns.size() >= 2)
            continue;
        titles << sizeName(candidate, prepared);
        columns.push_back(&*candidate.ride);
        remedies += written(remediesSection(candidate, prepared));
    }
    std::vector<SetupRow> rows = rideRows(columns);
    for (SetupRow& row : rideFigureRows(columns))
        rows.push_back(std::move(row));
    QString text = heading(Words::tr("How it rides")) + table(titles, rows);
    if (const QString difference = rideDifference(advice, prepared); !difference.isEmpty())
        text += item(difference);
    return text + item(rideCaution()) + remedies;
}

/// The stem question: one size, a column a use.
QString uses(const Candidate& candidate, const Mix& mix, const Advice& advice,
             const Prepared& prepared)
{
    const std::vector<const UseSetup*> shown = usesByShare(candidate, mix);
    if (shown.size() < 2)
        return {};
    const Columns columns{&shown[0]->advised, &shown[1]->advised};
    std::vector<SetupRow> rows = setupRows(columns, advice, prepared);
    rows.push_back(ownBackRow(columns));
    return heading(usesHeading(candidate, prepared))
           + table({onlyUse(shown[0]->use), onlyUse(shown[1]->use)}, rows)
           + item(handSentence(*shown[0], *shown[1]));
}

} // namespace

QString decisionText(const Fitting& fitting, const Advice& advice, const Prepared& prepared,
                     const Tables& tables, Told told)
{
    const auto limits = [&] {
        QString text;
        for (const Candidate& candidate : advice.candidates)
            text += written(limitsSection(candidate, prepared));
        return text;
    };
    QString text = paragraph(briefSentence(fitting)) + QLatin1Char('\n')
                   + paragraph(verdictSentence(advice, prepared, fitting.riding));
    const VerdictKind kind = advice.verdict.kind;
    if (advice.solved && advice.verdict.other && !advice.person.provisional
        && (kind == VerdictKind::Slight || kind == VerdictKind::Either))
        text += paragraph(verdictWords(advice, prepared, fitting.riding).kind);
    if (const auto choice =
            buildersChoice(fitting.choices, fitting.riding, advice, prepared, tables))
        text += written(*choice, advice, prepared);
    if (!advice.solved)
        return text + limits();
    const Candidate& named = advice.leading();
    text += written(reasonsSection(advice, prepared));
    text += written(givenUpSection(advice, prepared));
    text += written(contrastSection(advice, prepared));
    if (const auto built =
            finished(fitting.asBuilt, fitting.choices, fitting.riding, advice, prepared, tables);
        built && built->check)
        text += written(builtSection(*fitting.asBuilt, *built));
    if (told == Told::OneScreen) {
        text += setups(advice, prepared, told);
        if (const auto& part = advice.part)
            text += item(toOrderSentence(*part));
        text += limits();
        Section checks = checksSection(advice, named);
        checks.items = checks.items.mid(0, mostChecksOnAScreen);
        text += written(checks);
        const Cautions cautions = cautionsOf(fitting, &named);
        return text + QLatin1Char('\n')
               + paragraph((cautions.first + cautions.others.mid(0, 1)).join(QLatin1Char(' ')))
               + paragraph(Words::tr("How it rides, more cautions and the rest: the same with "
                                     "--all."));
    }
    text += written(changeSection(advice, prepared));
    text += setups(advice, prepared, told);
    if (const auto& part = advice.part)
        text += item(toOrderSentence(*part));
    text += rides(advice, prepared);
    text += uses(named, fitting.riding.mix, advice, prepared);
    text += written(cranksSection(advice));
    text += written(todaySection(fitting.current, named.best->setup));
    text += written(rulesSection(advice));
    text += written(askedSection(advice));
    text += limits();
    text += written(checksSection(advice, named));
    const Cautions cautions = cautionsOf(fitting, &named);
    text += written({Words::tr("Cautions"), cautions.first + cautions.others});
    return text + written(sourcesSection());
}

} // namespace tripoise
