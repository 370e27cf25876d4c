// SPDX-License-Identifier: MIT
#include "geometry/table_notes.h"

#include "wording/table_page_words.h"
#include "wording/table_words.h"

#include <algorithm>

namespace tripoise {
namespace {

/// More lines of a text that is no table would only hide the rest.
constexpr std::size_t mostTextsTold = 12;

Correction correctionFor(const Contradiction& one, const TableAnswer& answer)
{
    const TableSize& size = answer.geometry.sizes[one.size];
    return {size.size, one.column, one.given,
            asPrinted(one.agreesWithRest, *entryOf(one.column, size))};
}

/// A guess asks to be confirmed.
TableNote noteOf(const Problem& problem, const ReadTable& read)
{
    TableNote note{lineSentence(problem), NoteLevel::Wrong, {}, {}};
    if (problem.code == ProblemCode::SizesGuessed) {
        note.stepText = confirmText();
        note.step = ConfirmGuess{};
    }
    if (problem.code == ProblemCode::ColumnGuessed)
        note.level = NoteLevel::Odd;
    if (problem.code == ProblemCode::ColumnGuessed || problem.code == ProblemCode::OtherMeaning)
        for (std::size_t i = 0; i < read.columns.size(); ++i)
            if (read.columns[i].meaning && read.columns[i].from == ColumnFrom::Guessed
                && problem.path == "line " + std::to_string(read.columns[i].line)
                && read.columns[i].heading.starts_with(problem.value)) {
                note.stepText = confirmText();
                note.step = ConfirmGuess{i};
                break;
            }
    return note;
}

void addDefinitions(std::vector<TableNote>& notes, const TableAnswer& answer, bool asHeaded)
{
    for (const Redefinition& one : answer.proposed)
        notes.push_back({asHeaded ? proposal(one) : sentence(one), NoteLevel::Odd,
                         asHeaded ? takeDefinitionText() : asHeadedText(),
                         ReadAsHeaded{!asHeaded}});
}

void addNotUnderstood(std::vector<TableNote>& notes, const TableAnswer& answer)
{
    const auto& columns = answer.read.columns;
    for (std::size_t i = 0; i < columns.size(); ++i)
        if (!columns[i].meaning && !columns[i].assigned)
            notes.push_back({headingUnknownText(columns[i].heading), NoteLevel::Odd,
                             sayMeaningText(), SayMeaning{i}});
    std::vector<TableText> texts = answer.read.notUnderstood;
    std::erase_if(texts, [&](const TableText& text) { // told as a heading
        return std::any_of(columns.begin(), columns.end(), [&](const ReadColumn& column) {
            return !column.meaning && column.heading == text.text;
        });
    });
    for (std::size_t i = 0; i < texts.size() && i < mostTextsTold; ++i)
        notes.push_back({lineUnknownText(texts[i]), NoteLevel::Note, {}, {}});
    if (texts.size() > mostTextsTold)
        notes.push_back({moreUnknownText(texts.size() - mostTextsTold), NoteLevel::Note, {}, {}});
}

} // namespace

QString TableNote::levelKey() const
{
    switch (level) {
    case NoteLevel::Wrong: return QStringLiteral("wrong");
    case NoteLevel::Odd: return QStringLiteral("odd");
    case NoteLevel::Note: return QStringLiteral("note");
    }
    return {};
}

std::vector<TableNote> tableNotes(const TableAnswer& answer, bool asHeaded)
{
    std::vector<TableNote> notes;
    for (const Problem& problem : answer.read.problems)
        notes.push_back(noteOf(problem, answer.read));
    if (!answer.read.readable()) {
        addNotUnderstood(notes, answer);
        return notes;
    }
    for (const Contradiction& one : answer.closed.contradictions) {
        const Correction correction = correctionFor(one, answer);
        notes.push_back({sentence(one, answer.closed), NoteLevel::Wrong,
                         takeFigureText(one.column, correction.taken), TakeFigure{correction}});
    }
    for (const Mixup& one : answer.closed.mixups)
        notes.push_back({sentence(one, answer.closed), NoteLevel::Wrong, {}, {}});
    for (const Correction& one : answer.corrections)
        notes.push_back({correctedSentence(one.size, one.column, one.printed, one.taken),
                         NoteLevel::Note, takeFigureText(one.column, one.printed),
                         LeaveFigure{one}});
    addDefinitions(notes, answer, asHeaded);
    for (const UnusualValue& one : answer.closed.unusual)
        notes.push_back({sentence(one, answer.closed), NoteLevel::Odd, {}, {}});
    if (answer.closed.anglesRoundedCoarsely)
        notes.push_back({anglesRoundedText(), NoteLevel::Note, {}, {}});
    addNotUnderstood(notes, answer);
    for (const QString& told : missingOf(answer.closed))
        notes.push_back({told, NoteLevel::Note, {}, {}});
    return notes;
}

} // namespace tripoise
