// SPDX-License-Identifier: MIT
//
// Fittings as files: whatever happens to the file or the disk, nothing typed is lost.
#include "app/desk.h"

#include "fittings/fittings_folder.h"
#include "session/recents.h"

#include <QDateTime>
#include <QElapsedTimer>
#include <QGuiApplication>
#include <QTest>

#include <memory>

#include <sys/stat.h>
#include <unistd.h>

using namespace tripoise;
using namespace tripoise::test;

class TestDocuments : public QObject {
    Q_OBJECT

    std::unique_ptr<OwnFolders> m_own;

    [[nodiscard]] QUrl url(const QString& path) const { return QUrl::fromLocalFile(path); }

private slots:
    void init() { m_own = std::make_unique<OwnFolders>(); }

    void shouldStartWithAnOrdinaryBoxAndNothingToSave()
    {
        Desk desk;
        QVERIFY(!desk.documents.dirty());
        QVERIFY(desk.documents.notice().isEmpty());
        QVERIFY(desk.documents.filePath().isEmpty());
        QVERIFY(!desk.documents.save()); // it has no name yet
        const Fitting& fitting = desk.session.fitting();
        QVERIFY(fitting.frames.empty());
        QVERIFY(!fitting.stock.stems.empty() && !fitting.stock.bars.empty());
        QVERIFY(!fitting.stock.cranksMm.empty());
        QVERIFY(fitting.stock == desk.documents.shopBox());
    }

    void shouldOpenWhatItSaved()
    {
        const QString path = m_own->path(QStringLiteral("Jürgen & Søn.json"));
        Desk desk;
        desk.name(QStringLiteral("Müller-O'Neil \"Łódź\" 自転車\n\tx"));
        QVERIFY(desk.documents.dirty());
        QCOMPARE(desk.documents.saveAs(url(path)), Documents::Saved);
        QVERIFY(!desk.documents.dirty());
        QCOMPARE(desk.documents.filePath(), path);
        QCOMPARE(desk.documents.folderUrl(), url(m_own->folder()));
        desk.name(QStringLiteral("again"));
        QVERIFY(desk.documents.save());
        QVERIFY(desk.documents.notice().isEmpty());

        Desk other(path);
        QVERIFY(other.session.fitting() == desk.session.fitting());
        QVERIFY(!other.documents.dirty());
        QVERIFY(!other.session.canUndo());
    }

    void shouldKeepWhatASavedFileHeldBefore()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), demoText());
        Desk desk(path);
        desk.name(QStringLiteral("another"));
        QVERIFY(desk.documents.save());
        const QDir kept(store::historyOf(path));
        QCOMPARE(kept.entryList(QDir::Files).size(), 1);
        QCOMPARE(bytesOf(kept.filePath(kept.entryList(QDir::Files).constFirst())), demoText());
        desk.session.undo(); // saving is no reason to forget the steps
        QCOMPARE(desk.name(), QStringLiteral("Between two sizes"));
        QVERIFY(desk.documents.dirty());
    }

    void shouldSayWhyAFileIsNotOpened_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<bool>("copied");
        QByteArray binary(4096, '\0');
        for (qsizetype i = 0; i < binary.size(); ++i)
            binary[i] = char(i * 37 + i / 11);
        QTest::newRow("cut off") << "cut.json" << demoText().left(700) << true;
        QTest::newRow("binary under our suffix") << "noise.json" << binary << true;
        QTest::newRow("binary") << "noise.png" << binary << false;
        QTest::newRow("empty") << "empty.json" << QByteArray() << true;
        QTest::newRow("nested too deep") << "deep.json" << QByteArray(100'000, '[') << false;
        QTest::newRow("not ours") << "other.json" << QByteArray(R"({"a":1})") << false;
        QTest::newRow("a list") << "list.json" << QByteArray("[1,2]") << false;
        QTest::newRow("a measure that cannot be")
            << "wrong.json" << demoText().replace("1790", "179") << false;
        QTest::newRow("far newer")
            << "newer.json"
            << QByteArray(R"({"format":"tripoise.fitting","version":9,"people":[1]})") << false;
    }
    void shouldSayWhyAFileIsNotOpened()
    {
        QFETCH(QString, name);
        QFETCH(QByteArray, bytes);
        QFETCH(bool, copied);
        const QString path = m_own->file(name, bytes);
        Desk desk;
        desk.name(QStringLiteral("typed before"));
        const Fitting before = desk.session.fitting();
        QVERIFY(!desk.documents.open(url(path)));
        QVERIFY(desk.session.fitting() == before);
        QVERIFY(desk.session.canUndo());
        QCOMPARE(desk.documents.noticeLevel(), QStringLiteral("wrong"));
        QVERIFY2(desk.documents.notice().contains(name), qPrintable(desk.documents.notice()));
        QCOMPARE(bytesOf(path), bytes);
        QVERIFY(!recents::all().contains(path));

        const QDir damaged(store::folder(QStringLiteral("damaged")));
        const QStringList copies = damaged.entryList(QDir::Files);
        QCOMPARE(copies.size(), copied ? 1 : 0);
        if (copied) {
            const QString copy = damaged.filePath(copies.constFirst());
            QCOMPARE(bytesOf(copy), bytes);
            QVERIFY(desk.documents.notice().contains(copy));
        }
        desk.documents.dismissNotice();
        QVERIFY(desk.documents.notice().isEmpty());
    }

    void shouldSayWhyNothingCanBeReadThere_data()
    {
        QTest::addColumn<QString>("name");
        QTest::newRow("a folder") << "folder.json";
        QTest::newRow("gone") << "gone.json";
        QTest::newRow("not permitted") << "secret.json";
        QTest::newRow("50 MB") << "large.json";
    }
    void shouldSayWhyNothingCanBeReadThere()
    {
        QFETCH(QString, name);
        QVERIFY(QDir(m_own->folder()).mkdir(QStringLiteral("folder.json")));
        QFile::setPermissions(m_own->file(QStringLiteral("secret.json"), demoText()), {});
        QFile large(m_own->path(QStringLiteral("large.json")));
        QVERIFY(large.open(QIODevice::WriteOnly) && large.resize(50'000'000));
        QFile::setPermissions(m_own->folder(), QFile::Permissions(0x7755));
        Desk desk;
        desk.name(QStringLiteral("typed before"));
        {
            const Unprivileged user;
            QVERIFY(user.holds());
            QElapsedTimer timer;
            timer.start();
            QVERIFY(!desk.documents.drop(url(m_own->path(name))));
            QVERIFY(timer.elapsed() < 500);
        }
        QCOMPARE(desk.name(), QStringLiteral("typed before"));
        QVERIFY(desk.documents.notice().contains(name));
        QCOMPARE(desk.documents.noticeLevel(), QStringLiteral("wrong"));
        QVERIFY(!desk.documents.open(QUrl(QStringLiteral("https://example.org/a.json"))));
        QCOMPARE(desk.documents.saveAs(QUrl(QStringLiteral("https://example.org/a.json"))),
                 Documents::Failed);
        QVERIFY(desk.documents.dirty());

        Desk started(m_own->path(QStringLiteral("gone.json"))); // named at the start
        QVERIFY(started.documents.notice().contains(QStringLiteral("gone.json")));
        QVERIFY(!started.session.fitting().stock.stems.empty());
    }

    void shouldShowANewerVersionToLookAtOnly()
    {
        const QByteArray newer = demoText()
                                     .replace("\"version\": 2", "\"version\": 3, \"moons\": 3")
                                     .replace("\"ordinary\"", "\"elastic\"");
        const QString path = m_own->file(QStringLiteral("newer.json"), newer);
        Desk desk(path);
        QVERIFY(desk.documents.readOnly());
        QVERIFY(desk.documents.notice().contains(QStringLiteral("newer.json")));
        QCOMPARE(desk.documents.noticeLevel(), QStringLiteral("note"));
        QCOMPARE(desk.name(), QStringLiteral("Between two sizes"));
        QCOMPARE(desk.session.fitting().frames.size(), 2UL);

        desk.name(QStringLiteral("changed"));
        QVERIFY(!desk.documents.save());
        QCOMPARE(desk.documents.saveAs(url(path)), Documents::Failed);
        QCOMPARE(bytesOf(path), newer);
        const QString copy = m_own->path(QStringLiteral("copy.json"));
        QCOMPARE(desk.documents.saveAs(url(copy)), Documents::Saved);
        QVERIFY(!desk.documents.readOnly() && !desk.documents.dirty());
        QCOMPARE(bytesOf(path), newer);
    }

    void shouldKeepEverythingWhenAFileCannotBeWritten()
    {
        const QString path = m_own->file(QStringLiteral("shut/a.json"), demoText());
        QFile::setPermissions(m_own->folder(), QFile::Permissions(0x7755));
        QVERIFY(QFile::setPermissions(QFileInfo(path).path(), QFile::Permissions(0x5555)));
        Desk desk(path);
        desk.name(QStringLiteral("typed"));
        {
            const Unprivileged user;
            QVERIFY(user.holds());
            QVERIFY(!desk.documents.save());
        }
        QFile::setPermissions(QFileInfo(path).path(), QFile::Permissions(0x7755));
        QCOMPARE(bytesOf(path), demoText());
        QCOMPARE(desk.name(), QStringLiteral("typed"));
        QVERIFY(desk.documents.dirty());
        QVERIFY(desk.documents.notice().contains(QStringLiteral("a.json")));
        QTRY_VERIFY(draftHolds("typed")); // and it is safe meanwhile
        QVERIFY(desk.documents.save());
        QVERIFY(desk.documents.notice().isEmpty());
        QVERIFY(bytesOf(path).contains("typed"));
    }

    void shouldKeepEverythingWhenTheDiskIsFull()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), demoText());
        Desk desk(path);
        desk.name(QStringLiteral("typed"));
        {
            const FullDisk full(1000);
            QVERIFY(!desk.documents.save());
            QTRY_VERIFY(desk.documents.notice().contains(QStringLiteral("kept safe"))
                        || desk.documents.notice().contains(QStringLiteral("a.json")));
        }
        QCOMPARE(bytesOf(path), demoText());
        QVERIFY(desk.documents.dirty());
        QVERIFY(desk.documents.save());
        QVERIFY(bytesOf(path).contains("typed"));
    }

    void shouldGoOnWhenTheFileVanishes()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), demoText());
        Desk desk(path);
        QVERIFY(!desk.documents.dirty());
        QVERIFY(QFile::remove(path));
        QTRY_VERIFY(desk.documents.notice().contains(QStringLiteral("a.json")));
        QCOMPARE(desk.documents.noticeLevel(), QStringLiteral("wrong"));
        QVERIFY(desk.documents.dirty()); // it is nowhere else now
        QTRY_VERIFY(draftHolds("Between two sizes"));
        QVERIFY(desk.documents.save());
        QVERIFY(!desk.documents.dirty());
        QVERIFY(!bytesOf(path).isEmpty());
    }

    void shouldKeepBothWhenAnotherProgramChangesTheFile()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), demoText());
        Desk desk(path);
        desk.name(QStringLiteral("mine"));
        const QByteArray other = demoText().replace("Between two sizes", "theirs");
        QCOMPARE(store::write(path, other), std::nullopt); // a new file in its place
        QTRY_VERIFY(desk.documents.notice().contains(QStringLiteral("a.json")));
        QCOMPARE(desk.name(), QStringLiteral("mine"));
        desk.documents.dismissNotice();
        QCOMPARE(store::write(path, other + "\n"), std::nullopt); // and once more
        QTRY_VERIFY(!desk.documents.notice().isEmpty());

        QVERIFY(desk.documents.save());
        QVERIFY(bytesOf(path).contains("mine"));
        const QDir kept(store::historyOf(path));
        QCOMPARE(bytesOf(kept.filePath(kept.entryList(QDir::Files, QDir::Name).constLast())),
                 other + "\n");
        QVERIFY(desk.documents.notice().contains(kept.path()));
    }

    void shouldCountAsUnsavedWhereAnotherProgramWroteOverIt()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), demoText());
        Desk desk(path);
        QVERIFY(!desk.documents.dirty());
        QCOMPARE(store::write(path, "theirs"), std::nullopt);
        QTRY_VERIFY(desk.documents.dirty()); // what is here stands nowhere else now
        QTRY_VERIFY(draftHolds("Between two sizes"));
        QVERIFY(QDir(store::folder(QStringLiteral("history"))).removeRecursively());
        (void)m_own->file(QStringLiteral("tripoise/tripoise/history"), "in the way");
        QVERIFY(!desk.documents.save()); // theirs could not be kept
        QCOMPARE(bytesOf(path), QByteArray("theirs"));
        QVERIFY(QFile::remove(store::folder() + QStringLiteral("/history")));
        QVERIFY(desk.documents.save());
        const QDir kept(store::historyOf(path));
        QCOMPARE(bytesOf(kept.filePath(kept.entryList(QDir::Files).constFirst())),
                 QByteArray("theirs"));
        QVERIFY(!desk.documents.dirty());
    }

    /// Its time is what it was, so that only its content tells.
    void shouldNoticeAChangeThatKeepsTheFilesTime()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), demoText());
        Desk desk(path);
        desk.name(QStringLiteral("mine"));
        const QByteArray theirs = demoText().replace("Between two sizes", "their two sizes !");
        {
            QFile file(path);
            const QDateTime time = QFileInfo(path).lastModified();
            QVERIFY(file.open(QIODevice::ReadWrite));
            QVERIFY(file.write(theirs) == theirs.size() && file.flush());
            QVERIFY(file.setFileTime(time, QFileDevice::FileModificationTime));
        }
        {
            const FullDisk full(0); // what they wrote cannot be kept: it stays
            QVERIFY(!desk.documents.save());
        }
        QCOMPARE(bytesOf(path), theirs);
        QCOMPARE(desk.documents.noticeLevel(), QStringLiteral("wrong"));
        QVERIFY(desk.documents.save());
        QVERIFY(desk.documents.notice().contains(store::historyOf(path)));
        QCOMPARE(bytesOf(store::copiesOf(path).constLast()), theirs);
        QVERIFY(bytesOf(path).contains("mine"));
    }

    void shouldAskBeforeAnotherFileIsReplaced()
    {
        const QByteArray theirs = demoText().replace("Between two sizes", "first customer");
        const QString path = m_own->file(QStringLiteral("new-fitting.json"), theirs);
        Desk desk;
        desk.name(QStringLiteral("second customer"));
        QCOMPARE(desk.documents.saveAs(url(path)), Documents::Taken);
        QCOMPARE(bytesOf(path), theirs);
        QVERIFY(desk.documents.dirty());
        QVERIFY(desk.documents.filePath().isEmpty() && recents::all().isEmpty());
        QCOMPARE(desk.documents.saveAs(url(path), true), Documents::Saved);
        QVERIFY(bytesOf(path).contains("second customer"));
        QCOMPARE(bytesOf(store::copiesOf(path).constLast()), theirs);
        QVERIFY(desk.documents.notice().contains(store::historyOf(path)));
        // The file is its own now, whatever way leads to it.
        desk.name(QStringLiteral("still the second"));
        QCOMPARE(desk.documents.saveAs(url(path)), Documents::Saved);
        const QString link = m_own->path(QStringLiteral("link.json"));
        QVERIFY(QFile::link(path, link));
        desk.name(QStringLiteral("the second yet"));
        QCOMPARE(desk.documents.saveAs(url(link)), Documents::Saved);
        QVERIFY(bytesOf(path).contains("the second yet"));
    }

    void shouldSayWhatItRefusesAndWhatHasSeveralNames()
    {
        const QString pipe = m_own->path(QStringLiteral("pipe.json"));
        QCOMPARE(mkfifo(QFile::encodeName(pipe).constData(), 0600), 0);
        const QString path = m_own->file(QStringLiteral("a.json"), demoText());
        QCOMPARE(::link(QFile::encodeName(path).constData(),
                        QFile::encodeName(m_own->path(QStringLiteral("b.json"))).constData()),
                 0);
        Desk desk(path);
        QVERIFY(!desk.documents.drop(url(pipe)));
        QVERIFY(desk.documents.notice().contains(QStringLiteral("pipe.json")));
        QCOMPARE(desk.documents.saveAs(url(pipe), true), Documents::Failed);
        QCOMPARE(desk.documents.noticeLevel(), QStringLiteral("wrong"));
        QVERIFY(QFileInfo::exists(pipe) && !QFileInfo(pipe).isFile());
        desk.name(QStringLiteral("one of two"));
        QVERIFY(desk.documents.save());
        QVERIFY2(desk.documents.notice().contains(QStringLiteral("several names")),
                 qPrintable(desk.documents.notice()));
        QCOMPARE(bytesOf(m_own->path(QStringLiteral("b.json"))), demoText());
    }

    void shouldNotBeAlarmedByItsOwnSaving()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), demoText());
        Desk desk(path);
        for (int i = 0; i < 3; ++i) {
            desk.name(QString::number(i));
            QVERIFY(desk.documents.save());
            QTest::qWait(400);
            QVERIFY2(desk.documents.notice().isEmpty(), qPrintable(desk.documents.notice()));
        }
    }

    void shouldAddTheSizesOfAFrameInOneStep()
    {
        const QString path = m_own->file(QStringLiteral("weir.json"), frameModelText(3));
        Desk desk(m_own->file(QStringLiteral("a.json"), demoText()));
        const Fitting before = desk.session.fitting();
        QVERIFY(desk.documents.isFrameFile(url(path)));
        QVERIFY(desk.documents.drop(url(path)));
        QCOMPARE(desk.session.fitting().frames.size(), 5UL);
        QCOMPARE(desk.session.fitting().frames.back().model, std::string("Weir"));
        QVERIFY(desk.documents.notice().contains(QLatin1Char('3')));
        QVERIFY(desk.documents.filePath().endsWith(QStringLiteral("a.json")));
        QVERIFY(desk.documents.drop(url(path))); // twice is no harm
        QCOMPARE(desk.session.fitting().frames.size(), 5UL);
        desk.session.undo();
        QVERIFY(desk.session.fitting() == before);
        QVERIFY(!desk.session.canUndo());

        const QString broken =
            m_own->file(QStringLiteral("broken.json"),
                        frameModelText(3).replace("\"stack_mm\":560", "\"x\":1"));
        QVERIFY(!desk.documents.drop(url(broken)));
        QVERIFY(desk.documents.notice().contains(QStringLiteral("broken.json")));
        const QString many =
            m_own->file(QStringLiteral("many.json"), frameModelText(int(mostFrames)));
        QVERIFY(!desk.documents.drop(url(many)));
        QVERIFY(desk.session.fitting() == before);
    }

    void shouldOpenAFittingThatIsDropped()
    {
        Desk desk;
        const QString path = m_own->file(QStringLiteral("a.json"), demoText());
        QVERIFY(!desk.documents.isFrameFile(url(path)));
        QVERIFY(desk.documents.drop(url(path)));
        QVERIFY(fittings::isIn(desk.documents.filePath()));
    }

    void shouldRememberTheShopsBox()
    {
        Stock box;
        {
            Desk desk;
            box = desk.documents.shopBox();
            box.stems.resize(1);
            box.stems[0].lengthMm = 85;
            desk.documents.rememberBox(box);
            QVERIFY(desk.documents.shopBox() == box);
        }
        Desk desk;
        QVERIFY(desk.session.fitting().stock == box);
        const QString own = store::folder() + QStringLiteral("/box.json");
        QVERIFY(!bytesOf(own).isEmpty());
        (void)m_own->file(QDir(m_own->folder()).relativeFilePath(own), "{\"stock\":");
        desk.documents.newFitting(); // a damaged box: the ordinary one, and a copy of the damaged
        QVERIFY(desk.session.fitting().stock.stems.size() > 1);
        desk.documents.rememberBox(box);
        const QDir damaged(store::folder(QStringLiteral("damaged")));
        QCOMPARE(damaged.entryList(QDir::Files).size(), 1);
        QCOMPARE(bytesOf(damaged.filePath(damaged.entryList(QDir::Files).constFirst())),
                 QByteArray("{\"stock\":"));
    }

    void shouldOfferTheSizesOfTheLastFitting()
    {
        const QByteArray text =
            demoText()
                .replace("\"size\": \"M\"", "\"colour\": \"red\", \"size\": \"M\"")
                .replace("\"bicycle\": {", "\"bicycle\": { \"bar_kind\": \"flat\",");
        {
            Desk desk(m_own->file(QStringLiteral("a.json"), text));
            desk.documents.end();
        }
        Desk desk;
        QVERIFY(desk.session.fitting().frames.empty()); // until they are asked for
        QVERIFY(desk.session.fitting().rider.measurements.empty());
        QVERIFY(!desk.documents.dirty());
        QVERIFY(desk.documents.lastFrames().contains(QLatin1Char('M')));
        desk.documents.takeLastFrames();
        QCOMPARE(desk.session.fitting().frames.size(), 2UL);
        const std::vector<KeptJson> expected{{"/frames/0/colour", "\"red\""}};
        QVERIFY(desk.session.fitting().kept == expected);
        QVERIFY(!desk.session.fitting().bicycle.barKind); // asked of each
        desk.session.undo();
        QVERIFY(desk.session.fitting().frames.empty());
        QVERIFY(!desk.documents.dirty());

        // What the rider's bicycle is to have already stays.
        Fitting own = desk.session.fitting();
        own.bicycle.tyreMm = 55;
        desk.session.edit(own, QStringLiteral("tyre"));
        desk.documents.takeLastFrames();
        QCOMPARE(desk.session.fitting().bicycle.tyreMm, std::optional(55.0));
        desk.documents.newFitting(); // of the one before, not of the one before that
        QVERIFY(desk.session.fitting().frames.empty() && !desk.session.fitting().bicycle.tyreMm);
        desk.documents.takeLastFrames();
        QCOMPARE(desk.session.fitting().bicycle.tyreMm, std::optional(55.0));
    }

    void shouldListTheLastTenFiles()
    {
        Desk desk;
        for (int i = 0; i < 12; ++i)
            QVERIFY(
                desk.documents.openPath(m_own->file(QStringLiteral("%1.json").arg(i), demoText())));
        QVERIFY(desk.documents.openPath(m_own->path(QStringLiteral("5.json"))));
        const QStringList recents = tripoise::recents::all();
        QCOMPARE(recents.size(), 10);
        QCOMPARE(recents[0], m_own->path(QStringLiteral("5.json")));
        QCOMPARE(recents[1], m_own->path(QStringLiteral("11.json")));
        QCOMPARE(recents.count(recents[0]), 1);
        QVERIFY(QFile::remove(recents[1]));
        QVERIFY(!desk.documents.openPath(recents[1]));
        QCOMPARE(tripoise::recents::all().size(), 10);
    }
};

int main(int argc, char** argv)
{
    QCoreApplication::setOrganizationName(QStringLiteral("tripoise"));
    QCoreApplication::setApplicationName(QStringLiteral("tripoise"));
    const QGuiApplication application(argc, argv);
    TestDocuments test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_documents.moc"
