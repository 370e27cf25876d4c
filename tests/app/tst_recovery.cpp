// SPDX-License-Identifier: MIT
//
// What was being worked on when the program ended, and comes back. The program starts itself a
// second time, to be killed.
#include "app/desk.h"
#include "fittings/fittings_folder.h"

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QProcess>
#include <QTest>

#include <cstdio>
#include <memory>

using namespace tripoise;
using namespace tripoise::test;

namespace {

/// The program as it is at work, until it is killed: a new name every 20 ms, each said.
int workUntilKilled(const QString& startFile)
{
    Desk desk(startFile);
    int edits = 0;
    QTimer typing;
    QObject::connect(&typing, &QTimer::timeout, [&] {
        desk.name(QStringLiteral("edit %1").arg(++edits));
        std::printf("%d\n", edits);
        std::fflush(stdout);
    });
    typing.start(20);
    return QCoreApplication::exec();
}

} // namespace

class TestRecovery : public QObject {
    Q_OBJECT

    std::unique_ptr<OwnFolders> m_own;

    [[nodiscard]] QUrl url(const QString& path) const { return QUrl::fromLocalFile(path); }

private slots:
    void init() { m_own = std::make_unique<OwnFolders>(); }

    void shouldSayThatWhatIsTypedCannotBeKeptSafe()
    {
        Desk desk(m_own->file(QStringLiteral("mine.json"), demoText()));
        const QString folder = store::folder(QStringLiteral("drafts"));
        QVERIFY(QDir(folder).removeRecursively());
        (void)m_own->file(QDir(m_own->folder()).relativeFilePath(folder), "in the way");
        desk.name(QStringLiteral("typed"));
        QTRY_COMPARE(desk.documents.noticeLevel(), QStringLiteral("wrong"));
        desk.documents.dismissNotice();
        desk.name(QStringLiteral("typed on")); // said once is enough
        QTest::qWait(draftWithinMs);
        QVERIFY(desk.documents.notice().isEmpty());
        QCOMPARE(desk.documents.saveAs(url(m_own->path(QStringLiteral("a.json")))),
                 Documents::Saved);
    }

    void shouldKeepADraftWithinASecondAndDropItWhenSaved()
    {
        Desk desk(m_own->file(QStringLiteral("mine.json"), demoText()));
        QTest::qWait(draftWithinMs);
        QVERIFY(drafts().isEmpty()); // nothing was typed
        QElapsedTimer timer;
        timer.start();
        desk.name(QStringLiteral("typed"));
        QTRY_VERIFY(draftHolds("typed"));
        QVERIFY2(timer.elapsed() < draftWithinMs, qPrintable(QString::number(timer.elapsed())));
        desk.session.undo();
        QTRY_VERIFY(drafts().isEmpty());
        desk.session.redo();
        QTRY_VERIFY(draftHolds("typed"));
        QCOMPARE(desk.documents.saveAs(url(m_own->path(QStringLiteral("a.json")))),
                 Documents::Saved);
        QVERIFY(drafts().isEmpty());
        desk.name(QStringLiteral("thrown away"));
        QTRY_VERIFY(draftHolds("thrown away"));
        desk.documents.end();
        QVERIFY(drafts().isEmpty());
    }

    void shouldBringBackWhatIsUnfinished()
    {
        Fitting unfinished;
        unfinished.rider.label = "half a fitting";
        unfinished.rider.notes = "arms: \"long\"\n";
        unfinished.frames.resize(1);
        unfinished.frames[0].model = "Weir";
        unfinished.stock.cranksMm = {172.5};
        {
            Desk desk(m_own->file(QStringLiteral("mine.json"), demoText()));
            desk.session.edit(unfinished, QStringLiteral("all of it"));
            QTRY_VERIFY(draftHolds("half a fitting"));
        } // gone without its end
        Desk desk;
        QVERIFY(desk.session.fitting() == unfinished);
        QVERIFY(desk.documents.dirty());
        QCOMPARE(desk.documents.noticeLevel(), QStringLiteral("note"));
        QVERIFY(!desk.documents.notice().isEmpty());
        QCOMPARE(drafts().size(), 1); // still safe
        QCOMPARE(desk.documents.saveAs(url(m_own->path(QStringLiteral("a.json")))),
                 Documents::Saved);
        QVERIFY(drafts().isEmpty());
    }

    void shouldBringADraftBackToItsFile()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), demoText());
        const QString elsewhere = m_own->file(QStringLiteral("b.json"), demoText());
        {
            Desk desk(path);
            desk.name(QStringLiteral("typed"));
            QTRY_VERIFY(draftHolds("typed"));
        }
        {
            Desk desk(elsewhere); // another file, and a word about the draft
            QCOMPARE(desk.documents.filePath(), elsewhere);
            QVERIFY(!desk.documents.dirty());
            QVERIFY(!desk.documents.notice().isEmpty());
            desk.documents.end();
        }
        {
            Desk desk(path);
            QCOMPARE(desk.name(), QStringLiteral("typed"));
            QCOMPARE(desk.documents.filePath(), path);
            QVERIFY(desk.documents.dirty());
            QCOMPARE(bytesOf(path), demoText()); // saving is the user's to do
        }
        QVERIFY(QFile::remove(path));
        Desk desk;
        QCOMPARE(desk.name(), QStringLiteral("typed"));
        QVERIFY(desk.documents.dirty());
        QVERIFY(desk.documents.save());
        QVERIFY(bytesOf(path).contains("typed"));
    }

    void shouldSetADamagedDraftAsideAndBringBackAnother()
    {
        {
            Desk desk(m_own->file(QStringLiteral("mine.json"), demoText()));
            desk.name(QStringLiteral("whole"));
            QTRY_VERIFY(draftHolds("whole"));
        }
        QTest::qWait(20); // the damaged one is the newer
        (void)m_own->file(QDir(m_own->folder())
                              .relativeFilePath(store::folder(QStringLiteral("drafts"))
                                                + QStringLiteral("/abc.json")),
                          "{\"format\": \"trip");
        Desk desk;
        QCOMPARE(desk.name(), QStringLiteral("whole"));
        QCOMPARE(desk.documents.noticeLevel(), QStringLiteral("wrong"));
        const QString copy = store::setAside().value(0);
        QVERIFY2(copy.endsWith(QStringLiteral("abc.json")), qPrintable(copy));
        QVERIFY2(desk.documents.notice().contains(copy), qPrintable(desk.documents.notice()));
        QCOMPARE(bytesOf(copy), QByteArray("{\"format\": \"trip"));
    }

    void shouldLeaveTheDraftOfAnotherRunningProgramAlone()
    {
        Desk first(m_own->file(QStringLiteral("one.json"), demoText()));
        first.name(QStringLiteral("first"));
        QTRY_VERIFY(draftHolds("first"));
        Desk second;
        QVERIFY(second.name().isEmpty());
        QVERIFY(second.documents.openPath(m_own->file(QStringLiteral("two.json"), demoText())));
        QVERIFY(second.documents.notice().isEmpty());
        second.name(QStringLiteral("second"));
        QTRY_VERIFY(draftHolds("second"));
        second.documents.end();
        QVERIFY(draftHolds("first"));
    }

    void shouldClearWhatKilledProgramsLeft()
    {
        const QString drafts =
            QDir(m_own->folder()).relativeFilePath(store::folder(QStringLiteral("drafts")));
        const QByteArray gone = "99999999\ntst_recovery\n" + QSysInfo::machineHostName().toUtf8();
        for (const char* name : {"/a.lock", "/b.lock", "/b.origin", "/c.origin"})
            (void)m_own->file(drafts + QLatin1String(name), gone + '\n');
        (void)m_own->file(drafts + QStringLiteral("/.tripoise-0123456789ab-01234567"), "half a d");
        (void)m_own->file(drafts + QStringLiteral("/d.json"), demoText());
        const Desk first;
        QCOMPARE(first.name(), QStringLiteral("Between two sizes")); // a draft is no litter
        const auto left = [] {
            QStringList names =
                QDir(store::folder(QStringLiteral("drafts"))).entryList(QDir::Files | QDir::Hidden);
            names.removeAll(QStringLiteral("d.json"));
            return names;
        };
        QTRY_COMPARE(left(), QStringList{QStringLiteral("d.lock")}); // the one that it works on
    }

    void shouldLoseNoMoreThanASecondWhenKilled_data()
    {
        QTest::addColumn<bool>("file");
        QTest::addColumn<int>("aliveMs");
        QTest::newRow("a new fitting") << false << 2500;
        QTest::newRow("a file") << true << 1700;
    }
    void shouldLoseNoMoreThanASecondWhenKilled()
    {
        QFETCH(bool, file);
        QFETCH(int, aliveMs);
        const QString path = file ? m_own->file(QStringLiteral("a.json"), demoText()) : QString();
        QProcess program;
        program.start(QCoreApplication::applicationFilePath(),
                      {QStringLiteral("--work"), m_own->folder(), path});
        QVERIFY(program.waitForStarted());
        QVERIFY(program.waitForReadyRead(20'000));
        QElapsedTimer timer;
        timer.start();
        QList<std::pair<qint64, int>> seen; // when an edit was heard of, and its number
        while (timer.elapsed() < aliveMs) {
            (void)program.waitForReadyRead(10);
            while (program.canReadLine())
                seen.append({timer.elapsed(), program.readLine().trimmed().toInt()});
        }
        const qint64 killed = timer.elapsed();
        QCOMPARE(::kill(pid_t(program.processId()), SIGKILL), 0);
        QVERIFY(program.waitForFinished());
        QCOMPARE(program.exitStatus(), QProcess::CrashExit);

        int mustBeThere = 0;
        for (const auto& [when, edit] : seen)
            if (when <= killed - draftWithinMs)
                mustBeThere = edit;
        QVERIFY(mustBeThere > 0);
        const QDir own(fittings::folder()); // a new one has its file there
        QCOMPARE(own.entryList(QDir::Files).size(), file ? 0 : 1);
        Desk desk(file ? path : own.filePath(own.entryList(QDir::Files)[0]));
        QVERIFY2(desk.name().startsWith(QStringLiteral("edit ")), qPrintable(desk.name()));
        const int recovered = desk.name().mid(5).toInt();
        QVERIFY2(recovered >= mustBeThere,
                 qPrintable(QStringLiteral("%1 of %2").arg(recovered).arg(mustBeThere)));
        QCOMPARE(desk.documents.dirty(), file);
        QCOMPARE(desk.documents.notice().isEmpty(), !file);
        if (file)
            QCOMPARE(bytesOf(path), demoText());
    }
};

int main(int argc, char** argv)
{
    QCoreApplication::setOrganizationName(QStringLiteral("tripoise"));
    QCoreApplication::setApplicationName(QStringLiteral("tripoise"));
    const QGuiApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.value(1) == QLatin1String("--work")) {
        OwnFolders::use(arguments.value(2));
        return workUntilKilled(arguments.value(3));
    }
    TestRecovery test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_recovery.moc"
