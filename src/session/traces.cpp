// SPDX-License-Identifier: MIT
#include "session/traces.h"

#include "document/read.h"
#include "fittings/fittings_index.h"
#include "session/recents.h"
#include "session/store.h"
#include "shipped/tables.h"
#include "wording/visible.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>

namespace tripoise {
namespace {

QString nameOf(const Rider& rider)
{
    return QString::fromStdString(rider.label).simplified().toCaseFolded();
}

/// The name as a document has it, in quotes.
QByteArray quoted(const Rider& rider)
{
    const QByteArray list = QJsonDocument(QJsonArray{QString::fromStdString(rider.label)})
                                .toJson(QJsonDocument::Compact);
    return list.mid(1, list.size() - 2);
}

/// Whether a file holds a rider.
class Search {
public:
    explicit Search(const Rider& rider)
        : m_rider(rider), m_quoted(quoted(rider)), m_name(nameOf(rider).toUtf8().toLower())
    {
    }

    [[nodiscard]] bool holds(const QByteArray& bytes) const
    {
        // Most files hold another name; to read them all would take seconds.
        if (!m_name.isEmpty() && bytes.contains("\"label\"") && !bytes.toLower().contains(m_name))
            return false;
        const std::string_view text(bytes.constData(), std::size_t(bytes.size()));
        auto read = readDraft(text, shippedTables());
        if (const auto* fitting = std::get_if<Fitting>(&read))
            return isSameRider(m_rider, fitting->rider);
        if (const auto newer = readNewer(text, shippedTables()))
            return isSameRider(m_rider, newer->rider);
        return !m_name.isEmpty() && bytes.contains(m_quoted); // damaged
    }
    /// By the name of the rider alone, as it is said.
    [[nodiscard]] bool mayHold(const QString& rider) const
    {
        return m_name.isEmpty() || rider.isEmpty()
               || asName(m_rider.label).compare(rider, Qt::CaseInsensitive) == 0;
    }
    [[nodiscard]] bool in(const QString& path) const { return holds(store::read(path).bytes); }

private:
    const Rider& m_rider;
    QByteArray m_quoted;
    QByteArray m_name;
};

bool isSame(const QString& one, const QString& other)
{
    return !one.isEmpty() && !other.isEmpty()
           && whole_file::targetOf(one) == whole_file::targetOf(other);
}

/// Another file that is there and holds the rider: it stays, and so does what is kept of it.
bool stays(const QString& file, const QString& path, const Search& search)
{
    return QFileInfo::exists(file) && !isSame(file, path) && search.in(file);
}

void addVersions(Traces& traces, const QString& path, const Search& search)
{
    const QString own = store::folder();
    for (const store::History& history : store::histories()) {
        if (history.origin.startsWith(own)) // the shop's
            continue;
        if (stays(history.origin, path, search)) {
            traces.elsewhere << history.origin;
            continue;
        }
        QStringList copies = history.copies;
        copies.removeIf([&search](const QString& copy) { return !search.in(copy); });
        const bool all =
            (!path.isEmpty() && history.folder == store::historyOf(path))
            || (!copies.isEmpty() && !QFileInfo::exists(history.origin)); // one rider's file
        if (all && !history.origin.isEmpty())
            traces.recents << history.origin;
        traces.versions << (all ? history.copies : copies);
    }
}

void addDrafts(Traces& traces, const QString& path, const Search& search, const Drafts& drafts)
{
    for (const Drafts::Other& draft : drafts.others()) {
        const QString& origin = draft.content.origin;
        if (stays(origin, path, search)
            || (!isSame(origin, path) && !search.holds(draft.content.bytes)))
            continue;
        traces.openElsewhere = traces.openElsewhere || draft.running;
        if (!draft.running)
            traces.drafts << draft.name;
    }
}

} // namespace

bool isSameRider(const Rider& one, const Rider& other)
{
    const auto& body = one.measurements;
    const auto& otherBody = other.measurements;
    if (nameOf(one).isEmpty() || nameOf(other).isEmpty())
        return !body.empty() && body == otherBody;
    int alike = 0;
    int unlike = 0;
    for (const Measurement& each : body)
        for (const Measurement& same : otherBody)
            if (same.quantity == each.quantity)
                ++(same == each ? alike : unlike);
    return nameOf(one) == nameOf(other) && alike >= unlike; // a tape is read anew now and then
}

Traces tracesOf(const Rider& rider, const QString& path, const Drafts& drafts)
{
    const Search search(rider);
    Traces traces;
    if (!path.isEmpty()) {
        const QFileInfo target(whole_file::targetOf(path));
        for (const QString& file : {path, target.filePath()})
            if ((QFileInfo::exists(file) || QFileInfo(file).isSymLink())
                && !traces.files.contains(file))
                traces.files << file;
        traces.severalNames = whole_file::find(path).severalNames;
        traces.leftParts = whole_file::leftParts(target.path(), target.fileName());
        traces.recents << path << target.filePath();
        traces.damaged = store::setAsideOf(path);
    }
    addVersions(traces, path, search);
    addDrafts(traces, path, search, drafts);
    for (const QString& copy : store::setAside())
        if (!traces.damaged.contains(copy) && search.in(copy))
            traces.damaged << copy;
    QStringList others = recents::all();
    for (const fittings::Entry& entry : fittings::kept())
        if (search.mayHold(entry.summary.rider))
            others << entry.path;
    for (const QString& other : others)
        if (stays(other, path, search))
            traces.elsewhere << other;
    traces.elsewhere.removeDuplicates();
    return traces;
}

QStringList whatGoes(const Traces& traces)
{
    QStringList told;
    for (const QString& file : traces.files)
        told << Traces::tr("the file %1").arg(QDir::toNativeSeparators(file));
    const auto count = [&told](const QStringList& list, const QString& words) {
        if (!list.isEmpty())
            told << words;
    };
    count(traces.versions,
          Traces::tr("%n earlier version(s)", nullptr, int(traces.versions.size())));
    count(traces.drafts,
          Traces::tr("%n draft(s) that were not saved", nullptr, int(traces.drafts.size())));
    count(traces.damaged,
          Traces::tr("%n damaged file(s) set aside", nullptr, int(traces.damaged.size())));
    return told;
}

QStringList whatStays(const Traces& traces)
{
    QStringList told;
    if (!traces.elsewhere.isEmpty())
        told << Traces::tr("The same rider is also in %1; that stays.")
                    .arg(traces.elsewhere.join(QStringLiteral(", ")));
    if (traces.severalNames)
        told << Traces::tr("The file has other names; under those it stays.");
    if (traces.openElsewhere)
        told << Traces::tr(
            "The rider is also open in another window; what is not saved there stays.");
    return told;
}

QStringList removeTraces(const Traces& traces)
{
    QStringList left;
    for (const QString& path : traces.files + traces.versions + traces.damaged + traces.leftParts)
        if (QFile file(path); !file.remove() && (file.exists() || QFileInfo(path).isSymLink()))
            left << QDir::toNativeSeparators(path) + QStringLiteral(": ") + file.errorString();
    for (const QString& draft : traces.drafts)
        if (!Drafts::remove(draft))
            left << Traces::tr("a draft that was not saved");
    for (const QString& recent : traces.recents)
        recents::forget(recent);
    fittings::forgetGone();
    store::tidy();
    return left;
}

QString deletedText(const QString& name, const Traces& traces, const QStringList& left)
{
    const QStringList gone = whatGoes(traces);
    QStringList told{
        gone.isEmpty()
            ? Traces::tr("Nothing was kept of “%1”.").arg(name)
            : Traces::tr("“%1” is deleted: %2.").arg(name, gone.join(QStringLiteral(", ")))};
    if (!left.isEmpty())
        told << Traces::tr("This could not be deleted: %1.").arg(left.join(QStringLiteral("; ")));
    return (told + whatStays(traces)).join(QLatin1Char('\n'));
}

} // namespace tripoise
