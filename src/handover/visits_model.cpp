// SPDX-License-Identifier: MIT
#include "handover/visits_model.h"

#include "document/words.h"
#include "wording/complaint_words.h"
#include "wording/handover_words.h"
#include "wording/visit_words.h"

#include <QDate>
#include <QVariantMap>

#include <algorithm>

namespace tripoise {
namespace {

/// The builder's own words aside.
bool wasTaken(const Moved& changed, Moved proposed)
{
    proposed.part = changed.part;
    return changed == proposed;
}

} // namespace

void VisitsModel::sessionSet()
{
    on(&Session::fittingChanged, this, &VisitsModel::show);
    on(&Session::answerChanged, this, &VisitsModel::show);
    on(&Session::speechChanged, this, &VisitsModel::show);
    show();
    emit sessionChanged();
}

std::optional<Finished> VisitsModel::bicycle() const
{
    if (!session() || !session()->solution().advice.solved)
        return std::nullopt;
    const Solution& solution = session()->solution();
    return finished(fitting().asBuilt, fitting().choices, solution.fitting.riding, solution.advice,
                    *solution.prepared, *solution.tables);
}

/// What to change at the last visit.
NextVisit VisitsModel::next(const Finished& bicycle) const
{
    const Solution& solution = session()->solution();
    return nextVisit(
        bicycle.contacts(), fitting().visits, bicycle.over.toGo(), *bicycle.over.advised,
        solution.prepared->sizes[solution.advice.candidates[bicycle.over.candidate].size],
        {solution.advice.person, solution.fitting.riding, *solution.prepared, *solution.tables});
}

VisitsModel::Told VisitsModel::tell() const
{
    Told told;
    const std::vector<Visit>& visits = fitting().visits;
    const auto bicycle = this->bicycle();
    told.ready = bicycle.has_value();
    told.summary = visitsSummary(visits);
    for (std::size_t i = visits.size(); i-- > 0;) {
        const QString title = visitTitle(visits[i], int(i) + 1);
        const QStringList parts{title, saysSentence(visits[i]), movedSentence(visits[i].changed),
                                QString::fromStdString(visits[i].notes)};
        QStringList line;
        for (const QString& part : parts)
            if (!part.isEmpty())
                line << part;
        if (i + 1 < visits.size())
            told.history << line.join(QStringLiteral(" · "));
    }
    if (visits.empty())
        return told;
    const Visit& last = visits.back();
    told.title = visitTitle(last, int(visits.size()));
    told.oneChange = onlyOneChange();
    told.changed = movedSentence(last.changed);
    told.part = QString::fromStdString(last.changed.part);
    told.notes = QString::fromStdString(last.notes);
    for (const Complaint complaint : allComplaints)
        told.complaints << QVariantMap{
            {QStringLiteral("text"), nameOf(complaint)},
            {QStringLiteral("value"),
             QString::fromLatin1(keyOf(complaint).data(), qsizetype(keyOf(complaint).size()))},
            {QStringLiteral("on"), std::count(last.says.begin(), last.says.end(), complaint) > 0}};
    if (!bicycle)
        return told;
    if (bicycle->check)
        for (const BuiltReading& reading : bicycle->check->readings)
            if (reading.off)
                told.first << asOnTheSheet(builtSentence(reading));
    const NextVisit visit = next(*bicycle);
    for (const Complaint complaint : visit.lasting)
        told.first << lastingSentence(complaint);
    for (const NextChange& change : visit.changes)
        told.proposals << QVariantMap{
            {QStringLiteral("of"), change.complaint ? nameOf(*change.complaint) : QString()},
            {QStringLiteral("text"), changeSentence(change)},
            {QStringLiteral("trust"), trustWords(change.step)},
            {QStringLiteral("effects"), changeEffects(visit, change)},
            {QStringLiteral("taken"), wasTaken(last.changed, change.moved)}};
    Contacts contacts = bicycle->contacts();
    const auto stood = [&] {
        told.saddlePath.push_back(contacts.saddle.point());
        told.handsPath.push_back(contacts.grip);
    };
    stood();
    for (const Visit& each : visits) {
        contacts = movedBy(contacts, each.changed);
        stood();
    }
    return told;
}

bool VisitsModel::moved() const
{
    const auto anywhere = [](const std::vector<Point>& path) {
        return std::any_of(path.begin(), path.end(),
                           [&path](const Point& at) { return at != path.front(); });
    };
    return anywhere(m_told.saddlePath) || anywhere(m_told.handsPath);
}

void VisitsModel::show()
{
    Told told = tell();
    if (told == m_told)
        return;
    m_told = std::move(told);
    emit this->told();
}

void VisitsModel::begin()
{
    if (!session() || fitting().visits.size() >= mostVisits)
        return;
    Fitting next = fitting();
    Visit visit;
    visit.date = QDate::currentDate().toString(Qt::ISODate).toStdString();
    next.visits.push_back(std::move(visit));
    edit(std::move(next), visitStep());
}

void VisitsModel::remove()
{
    if (fitting().visits.empty())
        return;
    Fitting next = fitting();
    next.visits.pop_back();
    edit(std::move(next), visitGoneStep());
}

void VisitsModel::editLast(const QString& what, const std::function<void(Visit&)>& change)
{
    if (fitting().visits.empty())
        return;
    Fitting next = fitting();
    change(next.visits.back());
    if (next == fitting())
        emit told(); // a chip that was pressed shows what is
    else
        edit(std::move(next), what);
}

void VisitsModel::toggle(const QString& complaint)
{
    const auto known = valueOf(complaintWords, complaint.toStdString());
    if (!known)
        return;
    editLast(visitSaysStep(), [known](Visit& visit) {
        if (std::erase(visit.says, *known) == 0)
            visit.says.push_back(*known);
    });
}

void VisitsModel::take(int proposal)
{
    const auto bicycle = this->bicycle();
    if (!bicycle || fitting().visits.empty())
        return;
    const NextVisit visit = next(*bicycle);
    if (proposal < 0 || std::size_t(proposal) >= visit.changes.size())
        return;
    const Moved& moved = visit.changes[std::size_t(proposal)].moved;
    editLast(visitChangeStep(), [&moved](Visit& last) {
        const std::string part = last.changed.part;
        last.changed = wasTaken(last.changed, moved) ? Moved() : moved;
        last.changed.part = part;
    });
}

void VisitsModel::setPart(const QString& part)
{
    editLast(visitChangeStep(),
             [text = part.trimmed().toStdString()](Visit& visit) { visit.changed.part = text; });
}

void VisitsModel::setNotes(const QString& notes)
{
    editLast(visitNotesStep(),
             [text = notes.trimmed().toStdString()](Visit& visit) { visit.notes = text; });
}

} // namespace tripoise
