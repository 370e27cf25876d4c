// SPDX-License-Identifier: MIT
//
// Fittings of the fittings' folder: written by themselves, named, duplicated, exported, brought
// back.
#include "session/documents.h"

#include "document/read.h"
#include "fittings/fittings_folder.h"
#include "session/opening.h"
#include "session/recents.h"
#include "session/saving.h"
#include "session/store.h"
#include "wording/speech.h"

#include <QDateTime>
#include <QFileInfo>

namespace tripoise {
namespace {

const QString wrong = QStringLiteral("wrong");
const QString note = QStringLiteral("note");

QByteArray textOf(const Fitting& fitting)
{
    return QByteArray::fromStdString(writeFitting(fitting));
}

} // namespace

bool Documents::inLibrary() const
{
    return !readOnly() && (filePath().isEmpty() || fittings::isIn(filePath()));
}

bool Documents::writesItself() const
{
    return inLibrary() && !m_file.astray();
}

bool Documents::settle()
{
    if (!m_session)
        return true;
    takeWritten(true);
    if (writesItself() && dirty()) {
        beginWriting();
        takeWritten(true);
    }
    return !dirty();
}

void Documents::beginWriting()
{
    const qint64 nowMs = QDateTime::currentMSecsSinceEpoch();
    const bool keeps = m_versionDue || qAbs(nowMs - m_versionAtMs) >= versionEveryMs;
    if (keeps)
        m_versionAtMs = nowMs;
    m_versionDue = false;
    const Fitting& fitting = m_session->fitting();
    m_file.setBeingWritten(true);
    m_autosave.begin({fitting,
                      filePath(),
                      fittings::folder(),
                      fittings::FileNames::stemFor(fitting.rider.label, QDate::currentDate()),
                      {.anything = true, .known = m_file.bytes(), .keepsKnown = keeps}});
}

void Documents::takeWritten(bool wait)
{
    if (const auto result = m_autosave.take(wait); result && m_session)
        written(*result);
}

void Documents::written(const Autosave::Written& result)
{
    const QString path = result.order.path.isEmpty()
                             ? fittings::FileNames::path(result.order.folder, result.order.stem, 1)
                             : result.order.path;
    const Saving saving = told(path, result.saved, result.order.over);
    m_file.setBeingWritten(false);
    if (saving.state == store::Saved::State::Done) {
        const QString failed = std::exchange(m_writeFails, {});
        if (std::exchange(m_draftLies, false))
            m_drafts.drop();
        if (!saving.told.isEmpty() || (!failed.isEmpty() && m_notice == failed))
            tell(saving.told, saving.wrong ? wrong : note);
        if (filePath() != path) {
            recents::remember(path);
            m_namedFor = result.order.fitting.rider.label;
        }
        m_saved = result.order.fitting;
        m_file.hold(path, result.text);
        emit filed();
    } else {
        m_drafts.write(result.text, filePath());
        m_draftLies = true;
        m_versionDue = true;
        const QString failed =
            tr("“%1” cannot be kept in %2: %3. Everything is still here; export it, or choose "
               "another folder on the page of the fittings.")
                .arg(name(), QFileInfo(path).path(), result.saved.file.why);
        if (std::exchange(m_writeFails, failed) != failed)
            tell(failed, wrong);
    }
    if (m_session->fitting() != result.order.fitting && !m_draftSoon.isActive())
        m_draftSoon.start();
    emit changed();
}

/// When the fitting is left, so that the page's paths hold meanwhile.
void Documents::followRider()
{
    const std::string rider = m_session->fitting().rider.label;
    if (!writesItself() || dirty())
        return;
    followName(filePath(), m_namedFor, rider);
    m_namedFor = rider;
}

void Documents::followName(const QString& path, const std::string& before, const std::string& rider)
{
    const auto stem = fittings::FileNames::renewed(path, before, rider);
    if (!stem)
        return;
    QString next;
    for (int number = 1; next.isEmpty() || QFileInfo::exists(next); ++number)
        next = fittings::FileNames::path(QFileInfo(path).path(), *stem, number);
    if (!store::move(path, next))
        return;
    recents::forget(path);
    recents::remember(next);
    if (m_file.path() == path)
        m_file.hold(next, m_file.bytes());
    emit filed();
    emit changed();
}

Documents::Outcome Documents::exportTo(const QString& path, const QUrl& file, bool replace)
{
    if (!m_session || !isHere(file))
        return Failed;
    const QString to = QFileInfo(file.toLocalFile()).absoluteFilePath();
    const store::Read from =
        isOpen(path) ? store::Read{textOf(m_session->fitting()), {}, false} : store::read(path);
    if (!from.failure.isEmpty() || from.tooLarge || (!to.isEmpty() && m_file.is(to))) {
        tell(tr("%1 was not written: %2.")
                 .arg(to, from.failure.isEmpty() ? tr("it is the fitting itself") : from.failure),
             wrong);
        return Failed;
    }
    const Saving saving =
        saveFitting(to, from.bytes, copyOver(path.isEmpty() ? filePath() : path, replace));
    if (saving.state == store::Saved::State::Taken)
        return Taken;
    const bool done = saving.state == store::Saved::State::Done;
    tell(done && saving.told.isEmpty() ? tr("A copy is at %1.").arg(to) : saving.told,
         saving.wrong ? wrong : note);
    emit filed();
    return done ? Saved : Failed;
}

/// What is on the screen is written to a file of its own.
bool Documents::goOnInNewFile()
{
    followRider();
    Fitting fitting = m_session->fitting();
    fitting.id.clear();
    m_only = Only::No;
    m_saved = Fitting();
    m_file.hold({}, {});
    m_session->edit(std::move(fitting), tr("duplicate"));
    m_drafts.drop();
    beginWriting();
    takeWritten(true);
    emit changed();
    return !filePath().isEmpty();
}

bool Documents::duplicate()
{
    if (!m_session)
        return false;
    settle();
    tell({}, {});
    const bool done = goOnInNewFile();
    if (done && m_notice.isEmpty())
        tell(tr("This is a duplicate; it is kept in %1.").arg(filePath()), note);
    return done;
}

bool Documents::duplicateOf(const QString& path)
{
    return isOpen(path) ? duplicate() : openPath(path) && duplicate();
}

bool Documents::copyIn(const QString& path)
{
    if (!openPath(path))
        return false;
    if (m_only == Only::Newer) // it would not be the same
        return true;
    tell({}, {});
    const bool done = goOnInNewFile();
    if (done && m_notice.isEmpty())
        tell(tr("%1 is imported; the file itself stays as it is.").arg(QFileInfo(path).fileName()),
             note);
    return done;
}

bool Documents::chooseFolder(const QUrl& folder)
{
    const QFileInfo chosen(folder.toLocalFile());
    if (!isHere(folder) || !chosen.isDir() || !m_session)
        return false;
    settle();
    const QString before = fittings::folder();
    fittings::setFolder(chosen.absoluteFilePath());
    if (!chosen.isWritable())
        tell(tr("Nothing can be written in %1.").arg(chosen.absoluteFilePath()), wrong);
    else if (fittings::folder() != before)
        tell(tr("Fittings are kept in %1 from now on; those in %2 stay there.")
                 .arg(fittings::folder(), before),
             note);
    if (filePath().isEmpty() && dirty()) // it could not be written before
        m_draftSoon.start();
    emit filed();
    emit changed();
    return true;
}

bool Documents::rename(const QString& path, const QString& rider)
{
    if (!m_session)
        return false;
    if (isOpen(path)) {
        Fitting next = m_session->fitting();
        next.rider.label = rider.trimmed().toStdString();
        m_session->edit(std::move(next), tr("rider"));
        const bool done = settle();
        followRider();
        return done || !inLibrary();
    }
    const auto lock = store::lockOf(path);
    Opening opening = openFitting(path);
    if (!opening.fitting || opening.readOnly || store::isOfAnother(*lock)) {
        tell(opening.told.isEmpty()
                 ? tr("“%1” is open in another window; rename it there.").arg(riderOf(path))
                 : opening.told,
             wrong);
        return false;
    }
    const std::string before =
        std::exchange(opening.fitting->rider.label, rider.trimmed().toStdString());
    const Saving saving =
        saveFitting(path, textOf(*opening.fitting), {.anything = true, .known = opening.bytes});
    tell(saving.told, saving.wrong ? wrong : note);
    const bool done = saving.state == store::Saved::State::Done;
    if (done)
        followName(path, before, opening.fitting->rider.label);
    emit filed();
    return done;
}

bool Documents::openVersion(const QString& path, const QString& copy)
{
    Opening opening = openFitting(copy);
    if (!m_session || !opening.fitting) {
        tell(opening.told, wrong);
        return false;
    }
    if (!openPath(path)) // what stands there now may be damaged
        adopt({}, QFileInfo(path).absoluteFilePath(), Only::No, store::read(path).bytes);
    if (m_only == Only::OpenElsewhere)
        return false;
    const QByteArray bytes = m_file.bytes();
    adopt(std::move(*opening.fitting), filePath(), Only::Earlier, bytes);
    m_versionOf = speech().locale.toString(store::keptAt(copy).toLocalTime(), QLocale::ShortFormat);
    sayWhyReadOnly();
    return true;
}

bool Documents::bringBack()
{
    if (!m_session || !lookingBack())
        return false;
    m_only = Only::No;
    m_saved = Fitting();
    m_versionDue = true;
    const bool done = saveNow();
    if (done)
        tell(tr("This is as it was on %1; what stood there is kept as an earlier version.")
                 .arg(m_versionOf),
             note);
    return done;
}

} // namespace tripoise
