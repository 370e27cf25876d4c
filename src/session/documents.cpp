// SPDX-License-Identifier: MIT
#include "session/documents.h"

#include "command/tables.h"
#include "document/json_text.h"
#include "document/read.h"
#include "session/store.h"
#include "wording/problems.h"

#include <QDir>
#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>

#include <algorithm>

namespace tripoise {
namespace {

constexpr int draftDelayMs = 500;
constexpr qsizetype mostRecents = 10;
const QString recentsKey = QStringLiteral("recents");
const QString wrong = QStringLiteral("wrong");
const QString note = QStringLiteral("note");

std::string_view viewOf(const QByteArray& bytes)
{
    return {bytes.constData(), std::size_t(bytes.size())};
}

/// A fitting of the program's own, such as the shop's box; empty where it cannot be read.
Fitting ownFitting(const QString& path)
{
    auto read = readDraft(viewOf(store::read(path).bytes), shippedTables());
    if (auto* fitting = std::get_if<Fitting>(&read))
        return std::move(*fitting);
    return {};
}

void writeOwn(const QString& name, const Fitting& fitting)
{
    if (store::write(QDir(store::folder()).filePath(name),
                     QByteArray::fromStdString(writeFitting(fitting))))
        qWarning("%s could not be kept", qPrintable(name));
}

QString said(const Problems& problems)
{
    const QString first = sentence(problems.front());
    return problems.size() == 1
               ? first
               : Documents::tr("%1 (and %n more)", nullptr, int(problems.size()) - 1).arg(first);
}

} // namespace

Documents::Documents(QObject* parent) : QObject(parent)
{
    m_draftSoon.setSingleShot(true);
    m_draftSoon.setInterval(draftDelayMs);
    connect(&m_draftSoon, &QTimer::timeout, this, &Documents::keepDraft);
    connect(&m_watcher, &QFileSystemWatcher::fileChanged, this, &Documents::lookAtFile);
}

void Documents::setSession(Session* session)
{
    if (m_session == session)
        return;
    m_session = session;
    connect(session, &Session::fittingChanged, this, [this] {
        m_draftSoon.start();
        emit changed();
    });
    connect(session, &Session::speechChanged, this, &Documents::changed);
    emit sessionChanged();
}

void Documents::begin(const QString& startFile)
{
    const QString origin =
        startFile.isEmpty() ? QString() : QFileInfo(startFile).absoluteFilePath();
    if (recover(origin))
        return;
    if (!startFile.isEmpty() && openPath(startFile)) {
        if (m_drafts.anyLeft())
            tell(tr("Work that was not saved last time is kept. It comes back when Tripoise is "
                    "started without a file."),
                 note);
        return;
    }
    const QString notice = m_notice;
    newFitting();
    if (!notice.isEmpty())
        tell(notice, wrong);
}

bool Documents::recover(const QString& origin)
{
    const auto left = m_drafts.takeOver(origin);
    if (!left)
        return false;
    auto read = readDraft(viewOf(left->bytes), shippedTables());
    auto* fitting = std::get_if<Fitting>(&read);
    if (!fitting) {
        m_drafts.drop();
        return false;
    }
    const Fitting recovered = std::move(*fitting);
    Fitting saved;
    if (!left->origin.isEmpty()) {
        auto file = readDraft(viewOf(store::read(left->origin).bytes), shippedTables());
        if (auto* onDisk = std::get_if<Fitting>(&file))
            saved = std::move(*onDisk);
    }
    adopt(recovered, left->origin, false);
    m_saved = std::move(saved);
    m_draftSoon.start();
    tell(tr("What was not saved last time is back."), note);
    emit changed();
    return true;
}

void Documents::end()
{
    m_draftSoon.stop();
    m_drafts.drop();
    if (m_session && !m_session->fitting().frames.empty()) {
        Fitting frames;
        frames.frames = m_session->fitting().frames;
        writeOwn(QStringLiteral("frames.json"), frames);
    }
}

void Documents::newFitting()
{
    Fitting fitting;
    fitting.riding.mix = Mix::only(Use::Commuting);
    fitting.stock = shopBox();
    const auto& before = m_session->fitting().frames;
    fitting.frames =
        before.empty()
            ? ownFitting(QDir(store::folder()).filePath(QStringLiteral("frames.json"))).frames
            : before;
    adopt(std::move(fitting), {}, false);
    tell({}, {});
}

bool Documents::openPath(const QString& path)
{
    const QString absolute = QFileInfo(path).absoluteFilePath();
    const bool opened = openFile(absolute);
    if (opened)
        remember(absolute);
    return opened;
}

bool Documents::openFile(const QString& path)
{
    const store::Read file = store::read(path);
    const QString name = QFileInfo(path).fileName();
    if (!file.failure.isEmpty() || file.tooLarge) {
        tell(file.tooLarge ? tr("%1 was not opened: it is too large to be a fitting.").arg(name)
                           : tr("%1 was not opened: %2.").arg(name, file.failure),
             wrong);
        return false;
    }
    auto read = readDraft(viewOf(file.bytes), shippedTables());
    if (auto* fitting = std::get_if<Fitting>(&read)) {
        adopt(std::move(*fitting), path, false);
        tell({}, {});
        return true;
    }
    const auto& problems = std::get<Problems>(read);
    if (auto newer = readNewer(viewOf(file.bytes), shippedTables())) {
        adopt(std::move(*newer), path, true);
        tell(tr("%1 was written by a newer Tripoise. It is shown as far as this one understands "
                "it, and is not written over.")
                 .arg(name),
             note);
        return true;
    }
    QString told = tr("%1 was not opened: %2").arg(name, said(problems));
    if (problems.front().code == ProblemCode::NotJson) {
        const QString copy = store::setAside(path);
        if (!copy.isEmpty())
            told +=
                QLatin1Char('\n') + tr("The file is left as it is, and a copy is in %1.").arg(copy);
    }
    tell(told, wrong);
    return false;
}

bool Documents::isFrameFile(const QUrl& file) const
{
    const auto read = readFrameModel(viewOf(store::read(file.toLocalFile()).bytes));
    const auto* problems = std::get_if<Problems>(&read);
    return !problems
           || (problems->front().code != ProblemCode::WrongFormat
               && problems->front().code != ProblemCode::NotJson
               && problems->front().path != "/format");
}

bool Documents::drop(const QUrl& file)
{
    if (!isFrameFile(file))
        return open(file);
    const QString name = QFileInfo(file.toLocalFile()).fileName();
    const auto read = readFrameModel(viewOf(store::read(file.toLocalFile()).bytes));
    if (const auto* problems = std::get_if<Problems>(&read)) {
        tell(tr("%1 was not opened: %2").arg(name, said(*problems)), wrong);
        return false;
    }
    Fitting next = m_session->fitting();
    int added = 0;
    for (const FrameSize& size : std::get<std::vector<FrameSize>>(read)) {
        const bool known =
            std::any_of(next.frames.begin(), next.frames.end(), [&](const FrameSize& frame) {
                return frame.model == size.model && frame.size == size.size;
            });
        if (known)
            continue;
        next.frames.push_back(size);
        ++added;
    }
    m_session->edit(std::move(next), tr("sizes from %1").arg(name));
    tell(added > 0 ? tr("%n size(s) from %1 added.", nullptr, added).arg(name)
                   : tr("The sizes in %1 are here already.").arg(name),
         note);
    return true;
}

bool Documents::save()
{
    return !m_path.isEmpty() && !m_readOnly && write(m_path);
}

bool Documents::saveAs(const QUrl& file)
{
    const QString path = QFileInfo(file.toLocalFile()).absoluteFilePath();
    if (m_readOnly && path == m_path) {
        tell(tr("%1 was written by a newer Tripoise and is not written over; choose another name.")
                 .arg(QFileInfo(path).fileName()),
             wrong);
        return false;
    }
    if (!write(path))
        return false;
    m_readOnly = false;
    remember(path);
    emit changed();
    return true;
}

bool Documents::write(const QString& path)
{
    const QString name = QFileInfo(path).fileName();
    const bool changedOutside =
        path == m_path && QFileInfo::exists(path) && QFileInfo(path).lastModified() != m_written;
    store::keepHistory(path);
    const Fitting fitting = m_session->fitting();
    if (const auto failure = store::write(path, QByteArray::fromStdString(writeFitting(fitting)))) {
        tell(tr("%1 was not saved: %2. Everything is still here; save it under another name.")
                 .arg(name, *failure),
             wrong);
        return false;
    }
    m_saved = fitting;
    m_path = path;
    m_written = QFileInfo(path).lastModified();
    m_draftSoon.stop();
    m_drafts.drop();
    watch();
    m_session->sealStep();
    tell(changedOutside ? tr("Saved. Another program had changed %1 meanwhile; what it wrote is "
                             "kept in %2.")
                              .arg(name, store::folder(QStringLiteral("history")))
                        : QString(),
         note);
    emit changed();
    return true;
}

void Documents::adopt(Fitting fitting, const QString& path, bool readOnly)
{
    m_saved = fitting;
    m_path = path;
    m_readOnly = readOnly;
    m_written = path.isEmpty() ? QDateTime() : QFileInfo(path).lastModified();
    watch();
    m_session->start(std::move(fitting));
    m_draftSoon.stop();
    m_drafts.drop();
    emit changed();
}

void Documents::keepDraft()
{
    if (dirty())
        m_drafts.write(QByteArray::fromStdString(writeFitting(m_session->fitting())), m_path);
    else
        m_drafts.drop();
}

void Documents::watch()
{
    if (!m_watcher.files().isEmpty())
        m_watcher.removePaths(m_watcher.files());
    if (!m_path.isEmpty() && QFileInfo::exists(m_path))
        m_watcher.addPath(m_path);
}

void Documents::lookAtFile()
{
    const QFileInfo file(m_path);
    if (!file.exists()) {
        m_saved = {}; // nothing of it is on the disk now
        tell(tr("%1 is gone from its folder. Everything is still here; saving writes it again.")
                 .arg(file.fileName()),
             wrong);
        m_draftSoon.start();
        emit changed();
    } else if (file.lastModified() != m_written) {
        tell(tr("Another program has changed %1. Here it is as you had it; saving keeps what the "
                "other wrote as history.")
                 .arg(file.fileName()),
             note);
        m_watcher.addPath(m_path);
    }
}

QString Documents::name() const
{
    const QString label =
        m_session ? QString::fromStdString(m_session->fitting().rider.label).simplified()
                  : QString();
    if (!label.isEmpty())
        return label;
    return m_path.isEmpty() ? tr("New fitting") : QFileInfo(m_path).completeBaseName();
}

QString Documents::title() const
{
    const QString named = m_readOnly ? tr("%1 (to look at only)").arg(name()) : name();
    return dirty() ? tr("%1 · not saved", "name of a fitting").arg(named) : named;
}

QString Documents::nameOf(const QString& path) const
{
    const QFileInfo file(path);
    return file.exists() ? file.completeBaseName() : tr("%1 (gone)").arg(file.completeBaseName());
}

QUrl Documents::folderUrl() const
{
    QString folder = m_path.isEmpty() ? QString() : QFileInfo(m_path).absolutePath();
    if (folder.isEmpty() && !recents().isEmpty())
        folder = QFileInfo(recents().constFirst()).absolutePath();
    if (folder.isEmpty() || !QFileInfo::exists(folder))
        folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return QUrl::fromLocalFile(folder);
}

QString Documents::suggestedName() const
{
    QString base = name().toLower();
    for (QChar& c : base)
        if (!c.isLetterOrNumber())
            c = QLatin1Char('-');
    return base + QStringLiteral(".json");
}

bool Documents::dirty() const
{
    return m_session && m_session->fitting() != m_saved;
}

QStringList Documents::recents() const
{
    return QSettings().value(recentsKey).toStringList();
}

void Documents::remember(const QString& path)
{
    QStringList paths = recents();
    paths.removeAll(path);
    paths.prepend(path);
    QSettings().setValue(recentsKey, paths.mid(0, mostRecents));
    emit recentsChanged();
}

Stock Documents::shopBox() const
{
    const QString own = QDir(store::folder()).filePath(QStringLiteral("box.json"));
    return ownFitting(QFileInfo::exists(own) ? own : QStringLiteral(":/assets/starting_box.json"))
        .stock;
}

void Documents::rememberBox(const Stock& box)
{
    Fitting fitting;
    fitting.stock = box;
    writeOwn(QStringLiteral("box.json"), fitting);
    emit boxChanged();
}

void Documents::tell(const QString& notice, const QString& level)
{
    if (m_notice == notice && m_noticeLevel == level)
        return;
    m_notice = notice;
    m_noticeLevel = level;
    emit noticeChanged();
}

} // namespace tripoise
