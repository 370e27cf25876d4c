// SPDX-License-Identifier: MIT
#include "fittings/fittings_model.h"

#include "fittings/fittings_folder.h"
#include "wording/speech.h"

#include <QDateTime>
#include <QFileInfo>

#include <algorithm>

namespace tripoise {
FittingsModel::FittingsModel(QObject* parent)
    : RowList(parent),
      m_beside([this](quint64, const fittings::Listing& wanted, const std::stop_token& stop) {
          const auto tell = [this](const fittings::Listing& listing) {
              QMetaObject::invokeMethod(
                  this, [this, listing] { receive(listing); }, Qt::QueuedConnection);
          };
          fittings::Listing listing =
              wanted.versionsOf.isEmpty()
                  ? fittings::list(wanted.folder)
                  : fittings::listVersions(wanted.folder, wanted.versionsOf);
          tell(listing);
          fittings::complete(listing, stop, tell);
      })
{
}

void FittingsModel::refresh()
{
    if (m_listing.folder != folder() || m_listing.versionsOf != m_versionsOf) {
        m_listing = {folder(), m_versionsOf, {}, {}};
        m_looked = false;
    }
    say();
    m_beside.ask({folder(), m_versionsOf, {}, {}});
    emit changed();
}

void FittingsModel::receive(fittings::Listing listing)
{
    if (listing.folder != folder() || listing.versionsOf != m_versionsOf)
        return;
    m_listing = std::move(listing);
    m_looked = true;
    say();
    emit changed();
}

QString FittingsModel::folder() const
{
    return fittings::folder();
}

void FittingsModel::setVersionsOf(const QString& path)
{
    if (m_versionsOf == path)
        return;
    m_versionsOf = path;
    refresh();
}

void FittingsModel::setSearch(const QString& search)
{
    if (m_search == search)
        return;
    m_search = search;
    narrow();
    emit changed();
}

QString FittingsModel::message() const
{
    if (wrong())
        return tr("The folder of the fittings cannot be read: %1. Bring its disk back, or choose "
                  "another folder.")
            .arg(m_listing.failure);
    if (m_looked && m_all.empty() && !m_versionsOf.isEmpty())
        return tr("None: it was not changed since it is kept.");
    if (m_looked && m_all.empty())
        return tr("None yet. Leave this page and type: a fitting is kept here by itself from the "
                  "first entry on. Those that lie elsewhere can be imported.");
    return m_looked && m_rows.empty() ? tr("No fitting has all of these words.") : QString();
}

void FittingsModel::say()
{
    m_all.clear();
    m_all.reserve(m_listing.entries.size());
    for (const fittings::Entry& entry : m_listing.entries) {
        const fittings::Summary& summary = entry.summary;
        const QString file = QFileInfo(entry.path).completeBaseName();
        const QDateTime when = QDateTime::fromMSecsSinceEpoch(entry.timeMs);
        using Kind = FittingVerdict::Kind;
        const bool read =
            summary.verdict.kind != Kind::NotRead && summary.verdict.kind != Kind::NotAFitting;
        Row row{entry.path,
                !read                     ? file
                : summary.rider.isEmpty() ? tr("No name yet")
                                          : summary.rider,
                summary.frames.join(QStringLiteral(" · ")),
                lineOf(summary.verdict),
                m_versionsOf.isEmpty() ? speech().locale.toString(when.date(), QLocale::ShortFormat)
                                       : speech().locale.toString(when, QLocale::ShortFormat),
                QList<double>(summary.points.begin(), summary.points.end()),
                !summary.rider.isEmpty(),
                summary.verdict.kind != Kind::NotAFitting,
                {}};
        row.found =
            QStringList{row.rider, row.frames, row.date, when.date().toString(Qt::ISODate), file}
                .join(QLatin1Char('\n'))
                .toCaseFolded();
        m_all.push_back(std::move(row));
    }
    narrow();
}

void FittingsModel::narrow()
{
    const QString search = m_versionsOf.isEmpty() ? m_search.toCaseFolded() : QString();
    const QStringList words = search.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    std::vector<Row> rows;
    for (const Row& row : m_all)
        if (std::all_of(words.begin(), words.end(),
                        [&row](const QString& word) { return row.found.contains(word); }))
            rows.push_back(row);
    replace(m_rows, std::move(rows));
    emit listed();
}

int FittingsModel::rowOf(const QString& path) const
{
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        if (m_rows[i].path == path)
            return int(i);
    return -1;
}

int FittingsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

QVariant FittingsModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid))
        return {};
    const Row& row = m_rows[std::size_t(index.row())];
    switch (role) {
    case Path: return row.path;
    case Qt::DisplayRole:
    case Rider: return row.rider;
    case Frames: return row.frames;
    case Verdict: return row.verdict;
    case Date: return row.date;
    case Points: return QVariant::fromValue(row.points);
    case Named: return row.named;
    case Readable: return row.readable;
    default: return {};
    }
}

QHash<int, QByteArray> FittingsModel::roleNames() const
{
    return {{Path, "path"},       {Rider, "rider"}, {Named, "named"},   {Frames, "frames"},
            {Verdict, "verdict"}, {Date, "date"},   {Points, "points"}, {Readable, "readable"}};
}

} // namespace tripoise
