// SPDX-License-Identifier: MIT
#include "session/documents.h"

#include "command/tables.h"
#include "document/read.h"
#include "session/opening.h"
#include "session/recents.h"
#include "session/shop.h"
#include "session/store.h"
#include "wording/problems.h"
#include "wording/visible.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QStandardPaths>

namespace tripoise {
namespace {

constexpr int draftDelayMs = 500;
const QString wrong = QStringLiteral("wrong");
const QString note = QStringLiteral("note");

QByteArray textOf(const Fitting& fitting)
{
    return QByteArray::fromStdString(writeFitting(fitting));
}

} // namespace

Documents::Documents(QObject* parent)
    : QObject(parent), m_drafts([this](const std::optional<QString>& failure) {
          QMetaObject::invokeMethod(
              this, [this, failure] { draftWritten(failure); }, Qt::QueuedConnection);
      })
{
    m_draftSoon.setSingleShot(true);
    m_draftSoon.setInterval(draftDelayMs);
    connect(&m_draftSoon, &QTimer::timeout, this, &Documents::keepDraft);
    connect(&m_file, &OpenFile::vanished, this, &Documents::fileVanished);
    connect(&m_file, &OpenFile::changedByAnother, this, &Documents::fileChanged);
    connect(&m_file, &OpenFile::cameBack, this, &Documents::fileCameBack);
    connect(qApp, &QCoreApplication::aboutToQuit, this, [this] { // as at the end of a login
        if (m_draftSoon.isActive())
            keepDraft();
    });
}

void Documents::setSession(Session* session)
{
    if (m_session == session)
        return;
    if (m_session)
        m_session->disconnect(this);
    m_session = session;
    emit sessionChanged();
    if (!session)
        return;
    connect(session, &Session::fittingChanged, this, [this] {
        if (!m_draftSoon.isActive()) // an edit after the other must not put it off for ever
            m_draftSoon.start();
        emit changed();
    });
    connect(session, &Session::speechChanged, this, &Documents::changed);
    emit changed();
}

void Documents::begin(const QString& startFile)
{
    if (!m_session)
        return;
    const QString origin =
        startFile.isEmpty() ? QString() : QFileInfo(startFile).absoluteFilePath();
    QStringList damaged;
    if (!recover(origin, damaged)) {
        if (startFile.isEmpty()) {
            newFitting();
        } else if (!openPath(startFile)) {
            const QString why = m_notice;
            newFitting();
            tell(why, wrong);
        } else if (m_notice.isEmpty() && m_drafts.anyLeft()) {
            tell(tr("Work that was not saved last time is kept. It comes back when Tripoise is "
                    "started without a file."),
                 note);
        }
    }
    if (!damaged.isEmpty()) {
        if (!m_notice.isEmpty())
            damaged.prepend(m_notice);
        tell(damaged.join(QLatin1Char('\n')), wrong);
    }
}

bool Documents::recover(const QString& origin, QStringList& damaged)
{
    while (const auto left = m_drafts.takeOver(origin)) {
        auto read =
            readDraft({left->bytes.constData(), std::size_t(left->bytes.size())}, shippedTables());
        if (const auto* problems = std::get_if<Problems>(&read)) {
            damaged << tr("What was not saved last time cannot be read (%1). It is kept in %2.")
                           .arg(sentence(problems->front()), m_drafts.setAside());
            continue;
        }
        const Opening file = left->origin.isEmpty() || !QFileInfo::exists(left->origin)
                                 ? Opening()
                                 : openFitting(left->origin);
        adopt(std::move(std::get<Fitting>(read)), left->origin, file.readOnly, file.bytes);
        m_saved = file.fitting.value_or(Fitting());
        if (!left->origin.isEmpty())
            remember(left->origin);
        tell(m_drafts.anyLeft() ? tr("What was not saved last time is back. There is more of it: "
                                     "it comes back when Tripoise is started again.")
                                : tr("What was not saved last time is back."),
             note);
        emit changed();
        return true;
    }
    return false;
}

void Documents::end()
{
    m_draftSoon.stop();
    m_drafts.drop();
    if (m_session)
        shop::rememberFrames(m_session->fitting());
}

void Documents::newFitting()
{
    if (!m_session)
        return;
    const Fitting& before = m_session->fitting();
    Fitting fitting = before.frames.empty() ? shop::frames() : shop::framesOf(before);
    fitting.riding.mix = Mix::only(Use::Commuting);
    fitting.stock = shop::box();
    adopt(std::move(fitting), {}, false, {});
    m_drafts.drop();
    tell({}, {});
}

/// A file that is reached by a path; else says so.
bool Documents::isHere(const QUrl& file)
{
    if (file.isLocalFile())
        return true;
    tell(tr("%1 is not a file on this computer.").arg(file.toDisplayString()), wrong);
    return false;
}

bool Documents::open(const QUrl& file)
{
    return isHere(file) && openPath(file.toLocalFile());
}

bool Documents::openPath(const QString& path)
{
    if (!m_session)
        return false;
    const QString absolute = QFileInfo(path).absoluteFilePath();
    Opening opening = openFitting(absolute);
    tell(opening.told, opening.fitting ? note : wrong);
    if (!opening.fitting)
        return false;
    adopt(std::move(*opening.fitting), absolute, opening.readOnly, opening.bytes);
    m_drafts.drop();
    remember(absolute);
    return true;
}

bool Documents::isFrameFile(const QUrl& file) const
{
    return file.isLocalFile() && isFrameModel(file.toLocalFile());
}

bool Documents::isTableFile(const QUrl& file) const
{
    static const QStringList suffixes{QStringLiteral("csv"), QStringLiteral("tsv"),
                                      QStringLiteral("tab"), QStringLiteral("txt")};
    return file.isLocalFile()
           && suffixes.contains(QFileInfo(file.toLocalFile()).suffix().toLower());
}

bool Documents::drop(const QUrl& file)
{
    if (!m_session)
        return false;
    if (!isFrameFile(file))
        return open(file);
    Opening opening = addFrames(m_session->fitting(), file.toLocalFile());
    tell(opening.told, opening.fitting ? note : wrong);
    if (!opening.fitting)
        return false;
    m_session->edit(std::move(*opening.fitting),
                    tr("sizes from %1").arg(QFileInfo(file.toLocalFile()).fileName()));
    return true;
}

bool Documents::save()
{
    return !filePath().isEmpty() && !m_readOnly && write(filePath());
}

bool Documents::saveAs(const QUrl& file)
{
    if (!isHere(file))
        return false;
    const QString path = QFileInfo(file.toLocalFile()).absoluteFilePath();
    if (m_readOnly && m_file.is(path)) {
        tell(tr("%1 was written by a newer Tripoise and is not written over; choose another name.")
                 .arg(QFileInfo(path).fileName()),
             wrong);
        return false;
    }
    if (!write(path))
        return false;
    remember(path);
    return true;
}

bool Documents::write(const QString& path)
{
    if (!m_session)
        return false;
    const QString name = QFileInfo(path).fileName();
    const bool keepsOther = m_file.is(path) && m_file.changed();
    if (!store::keepHistory(path) && keepsOther) {
        tell(tr("%1 was not saved: another program has changed it, and what that wrote cannot be "
                "kept. Everything is still here; save it under another name.")
                 .arg(name),
             wrong);
        return false;
    }
    const Fitting fitting = m_session->fitting();
    const QByteArray text = textOf(fitting);
    if (const auto failure = store::write(path, text)) {
        tell(tr("%1 was not saved: %2. Everything is still here; save it under another name.")
                 .arg(name, *failure),
             wrong);
        return false;
    }
    m_saved = fitting;
    m_readOnly = false;
    m_file.hold(path, text);
    m_draftSoon.stop();
    m_drafts.drop();
    m_session->sealStep();
    if (const QString why = refusal(text); !why.isEmpty())
        tell(tr("%1 was saved, but it cannot be opened again as it is: %2").arg(name, why), wrong);
    else if (keepsOther)
        tell(tr("Saved. Another program had changed %1 meanwhile; what it wrote is kept in %2.")
                 .arg(name, store::historyOf(path)),
             note);
    else
        tell({}, {});
    emit changed();
    return true;
}

void Documents::adopt(Fitting fitting, const QString& path, bool readOnly, const QByteArray& bytes)
{
    m_saved = fitting;
    m_readOnly = readOnly;
    m_file.hold(path, bytes);
    m_session->start(std::move(fitting));
    m_draftSoon.stop();
    emit changed();
}

void Documents::keepDraft()
{
    if (!m_session)
        return;
    if (dirty())
        m_drafts.write(textOf(m_session->fitting()), filePath());
    else
        m_drafts.drop();
}

void Documents::draftWritten(const std::optional<QString>& failure)
{
    const bool first = failure && !m_draftFails;
    m_draftFails = failure.has_value();
    if (first)
        tell(tr("What you enter cannot be kept safe meanwhile: %1. Save the fitting often.")
                 .arg(*failure),
             wrong);
}

void Documents::fileVanished()
{
    tell(tr("%1 is gone from its folder. Everything is still here; saving writes it again.")
             .arg(fileName()),
         wrong);
    m_draftSoon.start();
    emit changed();
}

void Documents::fileChanged()
{
    tell(tr("Another program has changed %1. Here it is as you had it; saving keeps what the "
            "other wrote as history.")
             .arg(fileName()),
         note);
    m_draftSoon.start();
    emit changed();
}

void Documents::fileCameBack()
{
    tell(tr("%1 is back in its folder.").arg(fileName()), note);
    emit changed();
}

QString Documents::fileName() const
{
    return QFileInfo(filePath()).fileName();
}

QString Documents::name() const
{
    const QString label = m_session ? asName(m_session->fitting().rider.label) : QString();
    if (!label.isEmpty())
        return label;
    return filePath().isEmpty() ? tr("New fitting") : QFileInfo(filePath()).completeBaseName();
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
    QString folder = filePath().isEmpty() ? QString() : QFileInfo(filePath()).absolutePath();
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
    return m_session && (m_file.astray() || m_session->fitting() != m_saved);
}

QStringList Documents::recents() const
{
    return recents::all();
}

void Documents::remember(const QString& path)
{
    recents::remember(path);
    emit recentsChanged();
}

Stock Documents::shopBox() const
{
    return shop::box();
}

void Documents::rememberBox(const Stock& box)
{
    shop::rememberBox(box);
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
