// SPDX-License-Identifier: MIT
#include "session/documents.h"

#include "document/frame_list.h"
#include "document/read.h"
#include "fittings/fittings_folder.h"
#include "fittings/fittings_index.h"
#include "session/opening.h"
#include "session/recents.h"
#include "session/saving.h"
#include "session/store.h"
#include "session/traces.h"
#include "sheet/sheet.h"
#include "shipped/tables.h"
#include "wording/entry_words.h"
#include "wording/problems.h"
#include "wording/speech.h"
#include "wording/visible.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QFileInfo>

namespace tripoise {
namespace {

constexpr int draftDelayMs = 500; // of writing too: within a second of an edit
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
      }),
      m_autosave([this] {
          QMetaObject::invokeMethod(
              this, [this] { takeWritten(false); }, Qt::QueuedConnection);
      })
{
    m_draftSoon.setSingleShot(true);
    m_draftSoon.setInterval(draftDelayMs);
    connect(&m_draftSoon, &QTimer::timeout, this, &Documents::keep);
    connect(&m_file, &OpenFile::vanished, this, &Documents::fileVanished);
    connect(&m_file, &OpenFile::changedByAnother, this, &Documents::fileChanged);
    connect(&m_file, &OpenFile::cameBack, this, &Documents::fileCameBack);
    connect(qApp, &QCoreApplication::aboutToQuit, this, [this] { // as at the end of a login
        if (!settle() && m_draftSoon.isActive())
            keep();
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
        if (readOnly() && m_notice.isEmpty() && dirty())
            sayWhyReadOnly();
        emit changed();
    });
    connect(session, &Session::speechChanged, this, &Documents::changed);
    emit changed();
}

void Documents::begin(const QString& startFile)
{
    if (!m_session)
        return;
    m_lastFrames = shop::frames();
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
    if (!damaged.isEmpty())
        tellToo(damaged.join(QLatin1Char('\n')), wrong);
    if (store::isOpenToOthers())
        tellToo(tr("Others who use this computer can read what Tripoise keeps in %1: its disk "
                   "knows no permissions.")
                    .arg(store::folder()),
                note);
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
        adopt(std::move(std::get<Fitting>(read)), left->origin,
              file.readOnly ? Only::Newer : Only::No, file.bytes);
        m_saved = file.fitting.value_or(Fitting());
        m_draftSoon.start(); // of the folder, it is written
        m_draftLies = true;
        if (!left->origin.isEmpty())
            recents::remember(left->origin);
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
    settle();
    m_draftSoon.stop();
    m_drafts.drop();
    if (!m_session)
        return;
    followRider();
    shop::rememberFrames(m_session->fitting());
}

void Documents::newFitting()
{
    if (!m_session)
        return;
    settle();
    if (const Fitting& before = m_session->fitting(); !before.frames.empty())
        m_lastFrames = shop::framesOf(before);
    Fitting fitting;
    fitting.riding.mix = Mix::only(Use::Commuting);
    Fitting box = shop::box(m_box);
    fitting.stock = std::move(box.stock);
    fitting.bicycle.saddle = box.bicycle.saddle;
    fitting.bicycle.pedal = box.bicycle.pedal;
    adopt(std::move(fitting), {}, Only::No, {});
    m_drafts.drop();
    tell({}, {});
}

QString Documents::lastFrames() const
{
    return m_lastFrames.frames.empty() ? QString() : framesSummary(m_lastFrames.frames);
}

/// The wheels that they were on come too, where this fitting says nothing of them.
void Documents::takeLastFrames()
{
    if (!m_session || m_lastFrames.frames.empty())
        return;
    auto next = withFrames(m_session->fitting(), m_lastFrames.frames);
    if (!next)
        return;
    if (m_session->fitting().frames.empty()) { // their places in the list are the same
        std::vector<KeptJson> kept = next->kept.all();
        const auto& theirs = m_lastFrames.kept.all();
        kept.insert(kept.end(), theirs.begin(), theirs.end());
        next->kept = std::move(kept);
    }
    if (mountingOf(next->bicycle) == Mounting{}) {
        next->bicycle.tyreMm = m_lastFrames.bicycle.tyreMm;
        next->bicycle.beadSeatMm = m_lastFrames.bicycle.beadSeatMm;
        next->bicycle.mudguard = m_lastFrames.bicycle.mudguard;
    }
    m_session->edit(std::move(*next), tr("the last sizes"));
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
    settle();
    const QString absolute = QFileInfo(path).absoluteFilePath();
    store::clearLeftParts(absolute);
    Opening opening = openFitting(absolute);
    tell(opening.told, opening.fitting ? note : wrong);
    if (!opening.fitting)
        return false;
    adopt(std::move(*opening.fitting), absolute, opening.readOnly ? Only::Newer : Only::No,
          opening.bytes);
    m_drafts.drop();
    recents::remember(absolute);
    if (m_only == Only::OpenElsewhere)
        sayWhyReadOnly();
    return true;
}

bool Documents::isOpen(const QString& path) const
{
    return path.isEmpty() || m_file.is(path);
}

void Documents::sayWhyReadOnly()
{
    switch (m_only) {
    case Only::No: return;
    case Only::Newer:
        return tell(tr("%1 was written by a newer Tripoise and is not written over; duplicate it.")
                        .arg(fileName()),
                    note);
    case Only::OpenElsewhere:
        return tell(tr("“%1” is open in another window: this one writes nothing. Go on there, or "
                       "with a duplicate here.")
                        .arg(name()),
                    note);
    case Only::Earlier:
        return tell(
            tr("“%1” as it was on %2, to look at: nothing is written.").arg(name(), m_versionOf),
            note);
    }
}

bool Documents::isFrameFile(const QUrl& file) const
{
    return file.isLocalFile() && isFrameModel(file.toLocalFile());
}

bool Documents::isTableFile(const QUrl& file) const
{
    return file.isLocalFile() && isTable(file.toLocalFile());
}

bool Documents::drop(const QUrl& file)
{
    if (!m_session)
        return false;
    if (!isFrameFile(file))
        return isHere(file)
               && (fittings::isIn(file.toLocalFile()) ? openPath(file.toLocalFile())
                                                      : copyIn(file.toLocalFile()));
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
    sayWhyReadOnly();
    if (!m_session || readOnly())
        return false;
    if (!inLibrary())
        return write(filePath(), false) == Saved;
    m_session->sealStep();
    m_versionDue = true;
    if (dirty() && !m_autosave.busy())
        beginWriting();
    return m_autosave.busy() || !filePath().isEmpty();
}

bool Documents::saveNow()
{
    takeWritten(true); // an edit may have come since it was begun
    if (!save())
        return false;
    takeWritten(true);
    return !dirty();
}

Documents::Outcome Documents::saveAs(const QUrl& file, bool replace)
{
    if (!isHere(file))
        return Failed;
    const QString path = QFileInfo(file.toLocalFile()).absoluteFilePath();
    if (readOnly() && m_file.is(path)) {
        sayWhyReadOnly();
        return Failed;
    }
    takeWritten(true);
    const Outcome outcome = write(path, replace);
    if (outcome == Saved)
        recents::remember(path);
    return outcome;
}

Documents::Outcome Documents::write(const QString& path, bool replace)
{
    if (!m_session)
        return Failed;
    store::Over over = copyOver(filePath(), replace || m_file.is(path));
    if (m_file.is(path)) {
        over.known = m_file.bytes();
        over.access = {};
    }
    const Fitting fitting = m_session->fitting();
    const QByteArray text = textOf(fitting);
    const Saving saving = saveFitting(path, text, over);
    if (saving.state == store::Saved::State::Taken && !replace)
        return Taken;
    tell(saving.told, saving.wrong ? wrong : note);
    if (saving.state != store::Saved::State::Done)
        return Failed;
    m_saved = fitting;
    m_file.hold(path, text);
    m_only = m_file.isOpenElsewhere() ? Only::OpenElsewhere : Only::No;
    m_draftSoon.stop();
    m_drafts.drop();
    m_session->sealStep();
    emit changed();
    return Saved;
}

QString Documents::riderOf(const QString& path) const
{
    if (isOpen(path))
        return name();
    const Opening opening = openFitting(path);
    const QString rider = opening.fitting ? asName(opening.fitting->rider.label) : QString();
    return rider.isEmpty() ? QFileInfo(path).completeBaseName() : rider;
}

Traces Documents::tracesOfRider(const QString& path) const
{
    if (isOpen(path))
        return tracesOf(m_session->fitting().rider, filePath(), m_drafts);
    Traces traces = tracesOf(openFitting(path).fitting.value_or(Fitting()).rider, path, m_drafts);
    const auto lock = store::lockOf(path);
    traces.openElsewhere = traces.openElsewhere || store::isOfAnother(*lock);
    return traces;
}

QStringList Documents::kept(const QString& path) const
{
    if (!m_session)
        return {};
    const Traces traces = tracesOfRider(path);
    QStringList told = whatGoes(traces);
    if (isOpen(path) && dirty())
        told << tr("what is on the screen and was not saved");
    return told + whatStays(traces);
}

bool Documents::deleteRider(const QString& path)
{
    if (!m_session)
        return false;
    takeWritten(true);
    const QString who = riderOf(path);
    const Traces traces = tracesOfRider(path);
    if (isOpen(path)) { // held and written no longer
        m_saved = m_session->fitting();
        m_file.hold({}, {});
        newFitting();
    }
    const QStringList left = removeTraces(traces);
    emit filed();
    tell(deletedText(who, traces, left), left.isEmpty() ? note : wrong);
    return left.isEmpty();
}

void Documents::adopt(Fitting fitting, const QString& path, Only only, const QByteArray& bytes)
{
    if (path != filePath())
        followRider();
    m_saved = fitting;
    m_namedFor = fitting.rider.label;
    m_file.hold(path, bytes);
    m_only = only == Only::No && m_file.isOpenElsewhere() ? Only::OpenElsewhere : only;
    m_versionDue = true;
    m_writeFails.clear();
    m_session->start(std::move(fitting));
    m_draftSoon.stop();
    emit changed();
}

void Documents::keep()
{
    if (!m_session)
        return;
    if (writesItself()) {
        if (dirty() && !m_autosave.busy()) // else once that is done
            beginWriting();
    } else if (dirty()) {
        const bool ofFile =
            m_only == Only::No || m_only == Only::Newer; // else it is another fitting
        m_drafts.write(textOf(m_session->fitting()), ofFile ? filePath() : QString());
        m_draftLies = true;
    } else {
        m_drafts.drop();
    }
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
    return filePath().isEmpty()         ? tr("New fitting")
           : fittings::isIn(filePath()) ? tr("No name yet")
                                        : QFileInfo(filePath()).completeBaseName();
}

QString Documents::title() const
{
    const QString named = readOnly() ? tr("%1 (to look at only)").arg(name()) : name();
    const bool soon = writesItself() && m_writeFails.isEmpty(); // within a second
    return dirty() && !soon ? tr("%1 · not saved", "name of a fitting").arg(named) : named;
}

QUrl Documents::folderUrl() const
{
    QStringList outside{filePath()};
    outside << recents::all();
    outside.removeIf([](const QString& path) { return path.isEmpty() || fittings::isIn(path); });
    return QUrl::fromLocalFile(recents::folderBeside(outside.value(0)));
}

QString Documents::suggestedName() const
{
    return fileNameFor(name());
}

QString Documents::sheetName() const
{
    return QFileInfo(suggestedName()).completeBaseName() + QStringLiteral(".pdf");
}

bool Documents::canHandOver()
{
    const bool decided = m_session && m_session->settled() && m_session->solution().advice.solved;
    if (!decided)
        tell(tr("There is no set-up sheet before something is decided that can be set up."), note);
    return decided;
}

Documents::Outcome Documents::writeSheet(const QUrl& file, const QString& paper, bool replace)
{
    if (!isHere(file) || !canHandOver())
        return Failed;
    const QString path = QFileInfo(file.toLocalFile()).absoluteFilePath();
    if (!replace && QFileInfo::exists(path))
        return Taken;
    const Solution& solution = m_session->solution();
    const auto over = handedOver(m_session->fitting().choices, solution.fitting.riding,
                                 solution.advice, *solution.prepared, *solution.tables);
    const auto failure =
        over ? tripoise::writeSheet(
            path,
            {m_session->fitting(), solution.advice, *solution.prepared, *solution.tables, *over},
            {SheetPage::Workshop, SheetPage::Rider},
            paper == QLatin1String("letter") ? QPageSize::Letter : QPageSize::A4,
            speech().locale.toString(QDate::currentDate(), QLocale::ShortFormat))
             : std::optional(tr("nothing in the box of parts makes a bicycle of this size"));
    if (failure) {
        tell(tr("The set-up sheet was not written to %1: %2.").arg(path, *failure), wrong);
        return Failed;
    }
    tell(tr("The set-up sheet is at %1.").arg(path), note);
    return Saved;
}

bool Documents::dirty() const
{
    return m_session && (m_file.astray() || m_session->fitting() != m_saved);
}

Stock Documents::shopBox()
{
    const QByteArray before = m_box.bytes;
    const Stock box = shop::box(m_box).stock;
    if (m_box.bytes != before)
        emit boxChanged();
    return box;
}

void Documents::rememberBox(const Stock& box)
{
    if (const Saving saving = shop::rememberBox(box, m_box); !saving.told.isEmpty())
        tell(saving.told, saving.wrong ? wrong : note);
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

void Documents::tellToo(const QString& notice, const QString& level)
{
    tell(m_notice.isEmpty() ? notice : m_notice + QLatin1Char('\n') + notice,
         m_noticeLevel == wrong ? wrong : level);
}

} // namespace tripoise
