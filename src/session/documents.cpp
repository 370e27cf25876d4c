// SPDX-License-Identifier: MIT
#include "session/documents.h"

#include "document/frame_list.h"
#include "document/read.h"
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
#include <QDate>
#include <QFileInfo>

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
    if (const Fitting& before = m_session->fitting(); !before.frames.empty())
        m_lastFrames = shop::framesOf(before);
    Fitting fitting;
    fitting.riding.mix = Mix::only(Use::Commuting);
    Fitting box = shop::box(m_box);
    fitting.stock = std::move(box.stock);
    fitting.bicycle.saddle = box.bicycle.saddle;
    fitting.bicycle.pedal = box.bicycle.pedal;
    adopt(std::move(fitting), {}, false, {});
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
    const QString absolute = QFileInfo(path).absoluteFilePath();
    store::clearLeftParts(absolute);
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
    return file.isLocalFile() && isTable(file.toLocalFile());
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
    return !filePath().isEmpty() && !m_readOnly && write(filePath(), false) == Saved;
}

Documents::Outcome Documents::saveAs(const QUrl& file, bool replace)
{
    if (!isHere(file))
        return Failed;
    const QString path = QFileInfo(file.toLocalFile()).absoluteFilePath();
    if (m_readOnly && m_file.is(path)) {
        tell(tr("%1 was written by a newer Tripoise and is not written over; choose another name.")
                 .arg(QFileInfo(path).fileName()),
             wrong);
        return Failed;
    }
    const Outcome outcome = write(path, replace);
    if (outcome == Saved)
        remember(path);
    return outcome;
}

Documents::Outcome Documents::write(const QString& path, bool replace)
{
    if (!m_session)
        return Failed;
    store::Over over;
    over.anything = replace || m_file.is(path);
    if (m_file.is(path))
        over.known = m_file.bytes();
    else if (const auto from = whole_file::find(filePath()); from.any)
        over.access.most &=
            from.mode | whole_file::ownAccess.most; // a copy is no more open than its file
    const Fitting fitting = m_session->fitting();
    const QByteArray text = textOf(fitting);
    const Saving saving = saveFitting(path, text, over);
    if (saving.state == store::Saved::State::Taken && !replace)
        return Taken;
    tell(saving.told, saving.wrong ? wrong : note);
    if (saving.state != store::Saved::State::Done)
        return Failed;
    m_saved = fitting;
    m_readOnly = false;
    m_file.hold(path, text);
    m_draftSoon.stop();
    m_drafts.drop();
    m_session->sealStep();
    emit changed();
    return Saved;
}

QStringList Documents::kept() const
{
    if (!m_session)
        return {};
    const Traces traces = tracesOf(m_session->fitting().rider, filePath(), m_drafts);
    QStringList told = whatGoes(traces);
    if (dirty())
        told << tr("what is on the screen and was not saved");
    return told + whatStays(traces);
}

bool Documents::deleteRider()
{
    if (!m_session)
        return false;
    const QString who = name();
    const Traces traces = tracesOf(m_session->fitting().rider, filePath(), m_drafts);
    newFitting(); // it holds the file no longer
    const QStringList left = removeTraces(traces);
    emit recentsChanged();
    tell(deletedText(who, traces, left), left.isEmpty() ? note : wrong);
    return left.isEmpty();
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
    return QUrl::fromLocalFile(recents::folderBeside(filePath()));
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

QStringList Documents::recents() const
{
    return recents::all();
}

void Documents::remember(const QString& path)
{
    recents::remember(path);
    emit recentsChanged();
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
