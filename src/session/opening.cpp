// SPDX-License-Identifier: MIT
#include "session/opening.h"

#include "document/read.h"
#include "session/store.h"
#include "shipped/tables.h"
#include "wording/problems.h"

#include <QFileInfo>

#include <algorithm>

namespace tripoise {
namespace {

std::string_view viewOf(const QByteArray& bytes)
{
    return {bytes.constData(), std::size_t(bytes.size())};
}

QString said(const Problems& problems)
{
    const QString first = sentence(problems.front());
    return problems.size() == 1
               ? first
               : Opening::tr("%1 (and %n more)", nullptr, int(problems.size()) - 1).arg(first);
}

/// Something that once was a fitting, rather than a photograph that slipped onto the window.
bool wasOurs(const QString& path, const QByteArray& bytes)
{
    return path.endsWith(QLatin1String(".json"), Qt::CaseInsensitive) || bytes.contains("tripoise");
}

/// What keeps a file from being read at all; empty when it was.
QString unreadable(const store::Read& file, const QString& name)
{
    if (file.tooLarge)
        return Opening::tr("%1 was not opened: it is too large to be a fitting.").arg(name);
    if (!file.failure.isEmpty())
        return Opening::tr("%1 was not opened: %2.").arg(name, file.failure);
    return {};
}

QString refused(const QString& path, const QByteArray& bytes, const Problems& problems)
{
    const QString told =
        Opening::tr("%1 was not opened: %2").arg(QFileInfo(path).fileName(), said(problems));
    if (problems.front().code != ProblemCode::NotJson || !wasOurs(path, bytes))
        return told;
    const QString copy = store::setAside(path);
    if (copy.isEmpty())
        return told;
    return told + QLatin1Char('\n')
           + Opening::tr("The file is left as it is, and a copy is in %1.").arg(copy);
}

/// What is kept of a file that is gone.
Opening openCopy(const QString& copy, const QString& name)
{
    Opening opening = openFitting(copy);
    opening.bytes.clear();
    if (opening.fitting)
        opening.told = Opening::tr("%1 is gone from its folder. This is what was kept of it last; "
                                   "saving writes it again.")
                           .arg(name);
    return opening;
}

/// A file of a newer version, unless nothing of it can be made out.
std::optional<Fitting> madeOut(const QByteArray& bytes)
{
    auto newer = readNewer(viewOf(bytes), shippedTables());
    if (!newer)
        return std::nullopt;
    Fitting understood = *newer;
    understood.kept = {};
    return understood == Fitting() ? std::nullopt : std::move(newer);
}

} // namespace

Opening openFitting(const QString& path)
{
    const QString name = QFileInfo(path).fileName();
    if (const QStringList copies = store::copiesOf(path);
        !QFileInfo::exists(path) && !copies.isEmpty())
        return openCopy(copies.last(), name);
    const store::Read file = store::read(path);
    Opening opening;
    opening.bytes = file.bytes;
    opening.told = unreadable(file, name);
    if (!opening.told.isEmpty())
        return opening;
    auto read = readDraft(viewOf(file.bytes), shippedTables());
    if (auto* fitting = std::get_if<Fitting>(&read)) {
        opening.fitting = std::move(*fitting);
        return opening;
    }
    opening.fitting = madeOut(file.bytes);
    opening.readOnly = opening.fitting.has_value();
    opening.told =
        opening.readOnly
            ? Opening::tr("%1 was written by a newer Tripoise. It is shown as far as this one "
                          "understands it, and is not written over.")
                  .arg(name)
            : refused(path, file.bytes, std::get<Problems>(read));
    return opening;
}

const QStringList& tableSuffixes()
{
    static const QStringList suffixes{QStringLiteral("csv"),  QStringLiteral("tsv"),
                                      QStringLiteral("tab"),  QStringLiteral("txt"),
                                      QStringLiteral("html"), QStringLiteral("htm")};
    return suffixes;
}

bool isTable(const QString& path)
{
    return tableSuffixes().contains(QFileInfo(path).suffix(), Qt::CaseInsensitive);
}

bool isFrameModel(const QString& path)
{
    const store::Read file = store::read(path);
    if (!file.failure.isEmpty() || file.tooLarge)
        return false;
    const auto read = readFrameModel(viewOf(file.bytes));
    const auto* problems = std::get_if<Problems>(&read);
    return !problems
           || (problems->front().code != ProblemCode::WrongFormat
               && problems->front().code != ProblemCode::NotJson
               && problems->front().path != "/format" && !problems->front().path.empty());
}

Opening addFrames(Fitting fitting, const QString& path)
{
    const QString name = QFileInfo(path).fileName();
    const store::Read file = store::read(path);
    Opening opening;
    opening.bytes = file.bytes;
    opening.told = unreadable(file, name);
    if (!opening.told.isEmpty())
        return opening;
    const auto read = readFrameModel(viewOf(file.bytes));
    if (const auto* problems = std::get_if<Problems>(&read)) {
        opening.told = refused(path, file.bytes, *problems);
        return opening;
    }
    int added = 0;
    for (const FrameSize& size : std::get<std::vector<FrameSize>>(read)) {
        const bool known =
            std::any_of(fitting.frames.begin(), fitting.frames.end(), [&](const FrameSize& frame) {
                return frame.model == size.model && frame.size == size.size;
            });
        if (known)
            continue;
        fitting.frames.push_back(size);
        ++added;
    }
    if (fitting.frames.size() > mostFrames) {
        opening.told = Opening::tr("%1 was not added: a fitting holds %2 sizes at most.")
                           .arg(name, QString::number(mostFrames));
        return opening;
    }
    opening.told = added > 0 ? Opening::tr("%n size(s) from %1 added.", nullptr, added).arg(name)
                             : Opening::tr("The sizes in %1 are here already.").arg(name);
    opening.fitting = std::move(fitting);
    return opening;
}

} // namespace tripoise
