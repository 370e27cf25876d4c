// SPDX-License-Identifier: MIT
//
// The folder of the fittings: files made, named and written by themselves, versions, the list and
// its index; whatever happens to disk or folder, nothing typed is lost and all of it is told.
#include "app/desk.h"
#include "app/files_holding.h"
#include "app/second_program.h"
#include "app/system_calls.h"

#include "fittings/fittings_folder.h"
#include "fittings/fittings_model.h"

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QSignalSpy>

#include <memory>

using namespace tripoise;
using namespace tripoise::test;

namespace {

constexpr int writtenWithinMs = 1000;
constexpr int listedWithinMs = 20'000;

QString today()
{
    return QDate::currentDate().toString(QStringLiteral("yyyy-MM-dd"));
}

QString inFolder(const QString& name)
{
    return QDir(fittings::folder()).filePath(name);
}

QStringList filesThere()
{
    return QDir(fittings::folder()).entryList(QDir::Files | QDir::Hidden, QDir::Name);
}

/// The demo with another rider's name, put into the folder.
QString put(const QString& name, const QByteArray& rider)
{
    QDir().mkpath(fittings::folder());
    QFile file(inFolder(name));
    if (!file.open(QIODevice::WriteOnly)
        || file.write(demoText().replace("Between two sizes", rider)) <= 0)
        throw std::runtime_error("cannot write " + name.toStdString());
    return file.fileName();
}

/// The page, once all of it is read.
struct Page {
    FittingsModel model;

    Page() { look(); }
    void look()
    {
        QSignalSpy listed(&model, &FittingsModel::listed);
        model.refresh();
        listed.clear(); // of what was known
        const bool read =
            QTest::qWaitFor([&] { return !listed.isEmpty() && whole(); }, listedWithinMs);
        QVERIFY(read);
    }
    [[nodiscard]] bool whole() const
    {
        if (model.count() == 0 && model.message().isEmpty())
            return false;
        for (int row = 0; row < model.count(); ++row)
            if (at(row, FittingsModel::Verdict).isEmpty())
                return false;
        return true;
    }
    [[nodiscard]] QString at(int row, int role) const
    {
        return model.data(model.index(row), role).toString();
    }
    [[nodiscard]] QStringList riders() const
    {
        QStringList riders;
        for (int row = 0; row < model.count(); ++row)
            riders << at(row, FittingsModel::Rider);
        return riders;
    }
    [[nodiscard]] int of(const QString& rider) const { return int(riders().indexOf(rider)); }
};

/// Opens, says what it was told, and edits.
int workAsSecond(const QString& path)
{
    Desk desk;
    (void)desk.documents.openPath(path);
    answer(QByteArray(desk.documents.readOnly() ? "looks " : "writes ")
           + desk.documents.notice().toUtf8().toBase64());
    (void)nextOrder();
    return 0;
}

} // namespace

class TestFittings : public QObject {
    Q_OBJECT

    std::unique_ptr<OwnFolders> m_own;

    [[nodiscard]] QUrl url(const QString& path) const { return QUrl::fromLocalFile(path); }
    [[nodiscard]] QStringList holding(const QByteArray& text) const
    {
        return filesHolding(text, m_own->folder());
    }

private slots:
    void init()
    {
        m_own = std::make_unique<OwnFolders>();
        QVERIFY(fittings::folder().startsWith(m_own->folder()));
    }

    // -- files by themselves

    void shouldHaveNoFileUntilThereIsSomethingToKeep()
    {
        Desk desk;
        QTest::qWait(writtenWithinMs);
        desk.documents.newFitting();
        desk.documents.end();
        QVERIFY(!QFileInfo::exists(fittings::folder()));
    }

    void shouldNameTheFileAndWriteEachEditWithinASecond()
    {
        Desk desk;
        const QSignalSpy notices(&desk.documents, &Documents::noticeChanged);
        QElapsedTimer timer;
        timer.start();
        desk.name(QStringLiteral("Anna S."));
        const QString path = inFolder(QStringLiteral("anna-s-%1.json").arg(today()));
        QTRY_COMPARE(desk.documents.filePath(), path);
        QVERIFY2(timer.elapsed() < writtenWithinMs, qPrintable(QString::number(timer.elapsed())));
        QVERIFY(!desk.documents.dirty() && drafts().isEmpty());
        for (int i = 0; i < 3; ++i) {
            desk.name(QStringLiteral("Anna %1").arg(i));
            timer.restart();
            QTRY_VERIFY(bytesOf(path).contains(QByteArray("Anna ") + QByteArray::number(i)));
            QVERIFY2(timer.elapsed() < writtenWithinMs,
                     qPrintable(QString::number(timer.elapsed())));
        }
        QTest::qWait(400); // its own writing is no other program's
        QCOMPARE(notices.count(), 0);
        QCOMPARE(filesThere().size(), 1);
        const Desk other(path);
        QVERIFY(other.session.fitting() == desk.session.fitting());
    }

    void shouldWriteWhatIsTypedWithoutAPause()
    {
        Desk desk;
        QElapsedTimer timer;
        timer.start();
        qint64 last = 0;
        for (int i = 0; timer.elapsed() < 2500; ++i) { // an edit every 20 ms
            desk.name(QStringLiteral("Anna %1").arg(i));
            QTest::qWait(20);
            const QString path = desk.documents.filePath();
            const QByteArray there = path.isEmpty() ? QByteArray() : bytesOf(path);
            if (there.contains("Anna " + QByteArray::number(i)))
                last = timer.elapsed();
            QVERIFY2(timer.elapsed() - last < 2 * writtenWithinMs,
                     qPrintable(QString::number(timer.elapsed() - last)));
        }
    }

    void shouldNeverWriteOverAnotherFitting()
    {
        const QByteArray theirs = bytesOf(put(QStringLiteral("anna-%1.json").arg(today()), "X"));
        for (const char* number : {"-2", "-3"}) {
            Desk desk;
            desk.name(QStringLiteral("Anna"));
            QVERIFY(desk.documents.settle());
            QCOMPARE(
                desk.documents.filePath(),
                inFolder(QStringLiteral("anna-%1%2.json").arg(today(), QLatin1String(number))));
            desk.documents.end();
        }
        QCOMPARE(bytesOf(inFolder(QStringLiteral("anna-%1.json").arg(today()))), theirs);
    }

    void shouldNameAFileWhateverTheRiderIsCalled_data()
    {
        QTest::addColumn<QString>("rider");
        QTest::addColumn<QString>("name");
        QTest::newRow("none") << ""
                              << "fitting";
        QTest::newRow("blanks") << "  \t "
                                << "fitting";
        QTest::newRow("a path") << "../../etc/passwd"
                                << "etc-passwd";
        QTest::newRow("letters of all kinds")
            << QStringLiteral("Łódź 自転車 \"x\"") << QStringLiteral("łódź-自転車-x");
        QTest::newRow("long") << QString(500, QChar(0x81ea)) << QString(50, QChar(0x81ea));
    }
    void shouldNameAFileWhateverTheRiderIsCalled()
    {
        QFETCH(QString, rider);
        QFETCH(QString, name);
        Desk desk;
        Fitting next = desk.session.fitting();
        next.rider.label = rider.toStdString();
        next.rider.notes = "typed";
        desk.session.edit(std::move(next), QStringLiteral("all"));
        QVERIFY2(desk.documents.settle(), qPrintable(desk.documents.notice()));
        QCOMPARE(desk.documents.filePath(),
                 inFolder(QStringLiteral("%1-%2.json").arg(name, today())));
    }

    /// The file was made before the name was typed; it follows when the fitting is left.
    void shouldFollowTheRidersNameWithItsVersions()
    {
        Desk desk;
        Fitting next = desk.session.fitting();
        next.rider.notes = "tall";
        desk.session.edit(std::move(next), QStringLiteral("notes"));
        QVERIFY(desk.documents.settle());
        const QString before = desk.documents.filePath();
        QVERIFY(desk.documents.saveNow());
        desk.name(QStringLiteral("Anna"));
        QTRY_VERIFY(bytesOf(before).contains("Anna"));
        QCOMPARE(store::copiesOf(before).size(), 1);
        desk.documents.newFitting();
        const QString after = inFolder(QStringLiteral("anna-%1.json").arg(today()));
        QCOMPARE(filesThere(), QStringList{QFileInfo(after).fileName()});
        QCOMPARE(store::copiesOf(after).size(), 1);
        QCOMPARE(store::copiesOf(before).size(), 0);
        // One that somebody named themselves keeps its name.
        for (const char* name : {"the tall one.json", "winter-2026-01-02.json"}) {
            const QString own = put(QLatin1String(name), "Ben");
            QVERIFY(desk.documents.openPath(own));
            desk.name(QStringLiteral("Carl"));
            desk.documents.newFitting();
            QVERIFY(bytesOf(own).contains("Carl"));
        }
    }

    /// What the page names by its path is still there when what is open is left for it.
    void shouldNotFollowTheNameBeforeTheFittingIsLeft()
    {
        const QString path = put(QStringLiteral("anna-2026-01-02.json"), "Anna");
        Desk desk(path);
        desk.name(QStringLiteral("Bea"));
        QVERIFY(desk.documents.settle());
        const QString copy = store::copiesOf(path).value(0);
        QVERIFY(desk.documents.settle());
        QVERIFY(desk.documents.openVersion(path, copy));
        QCOMPARE(desk.name(), QStringLiteral("Anna"));
        QVERIFY(desk.documents.openPath(path));
        QCOMPARE(desk.name(), QStringLiteral("Bea"));
        QVERIFY(desk.documents.duplicateOf(path));
        QCOMPARE(desk.name(), QStringLiteral("Bea"));
    }

    void shouldWriteBeforeItIsLeft()
    {
        Desk desk;
        desk.name(QStringLiteral("Anna"));
        desk.documents.newFitting(); // at once
        desk.name(QStringLiteral("Ben"));
        QVERIFY(desk.documents.openPath(filesThere().isEmpty() ? QString()
                                                               : inFolder(filesThere()[0])));
        QCOMPARE(desk.name(), QStringLiteral("Anna"));
        desk.name(QStringLiteral("Anna again"));
        desk.documents.end();
        QVERIFY(!holding("Ben").isEmpty() && !holding("Anna again").isEmpty());
        QVERIFY(drafts().isEmpty());
    }

    void shouldTakeLittleOfTheWindowsTime()
    {
        Desk desk(put(QStringLiteral("a.json"), "Anna"));
        qint64 most = 0;
        qint64 sum = 0;
        constexpr int edits = 20;
        for (int i = 0; i < edits; ++i) {
            desk.name(QString::number(i));
            QElapsedTimer timer;
            timer.start();
            desk.documents.keep();
            most = std::max(most, timer.nsecsElapsed() / 1000);
            sum += timer.nsecsElapsed() / 1000;
            QTRY_VERIFY(!desk.documents.dirty());
        }
        qInfo("beginning to write takes %lld µs of the window's thread, at most %lld", sum / edits,
              most);
        QVERIFY(sum / edits < 5000);
    }

    // -- versions

    void shouldKeepVersionsThatReachBack()
    {
        const QString path = put(QStringLiteral("a.json"), "at first");
        Desk desk(path);
        const auto edit = [&](const char* name) {
            desk.name(QLatin1String(name));
            desk.documents.keep();
            QTRY_VERIFY(!desk.documents.dirty());
        };
        edit("1");
        edit("2");
        edit("3");
        QCOMPARE(store::copiesOf(path).size(), 1); // what stood there when it was opened
        QVERIFY(bytesOf(store::copiesOf(path)[0]).contains("at first"));
        clockAheadS = versionEveryMs / 1000 + 1;
        edit("4");
        edit("5");
        clockAheadS = 0;
        QCOMPARE(store::copiesOf(path).size(), 2);
        QVERIFY(bytesOf(store::copiesOf(path)[1]).contains("\"3\""));
        QVERIFY(desk.documents.saveNow()); // on purpose: this one is to be kept
        edit("6");
        QCOMPARE(store::copiesOf(path).size(), 3);
        QVERIFY(bytesOf(store::copiesOf(path)[2]).contains("\"5\""));
    }

    void shouldShowAnEarlierVersionAndBringItBack()
    {
        const QString path = put(QStringLiteral("a.json"), "at first");
        Desk desk(path);
        desk.name(QStringLiteral("now"));
        QVERIFY(desk.documents.settle());
        Page page;
        page.model.setSearch(QStringLiteral("now"));
        page.model.setVersionsOf(path);
        page.look();
        QCOMPARE(page.riders(), QStringList{QStringLiteral("at first")});
        QVERIFY(!page.at(0, FittingsModel::Date).isEmpty());
        const QString copy = page.at(0, FittingsModel::Path);
        QVERIFY(desk.documents.openVersion(path, copy));
        QCOMPARE(desk.name(), QStringLiteral("at first"));
        QVERIFY(desk.documents.readOnly() && desk.documents.lookingBack());
        QVERIFY(!desk.documents.notice().isEmpty());
        desk.documents.dismissNotice();
        desk.name(QStringLiteral("typed while looking"));
        QVERIFY(!desk.documents.notice().isEmpty()); // said again
        QTest::qWait(writtenWithinMs);
        QVERIFY(bytesOf(path).contains("now"));
        QVERIFY(draftHolds("typed while looking")); // and not lost
        QVERIFY(desk.documents.openPath(path));     // back to the newest
        QCOMPARE(desk.name(), QStringLiteral("now"));
        QVERIFY(!desk.documents.readOnly());

        QVERIFY(desk.documents.openVersion(path, copy));
        QVERIFY(desk.documents.bringBack());
        QVERIFY(!desk.documents.readOnly() && !desk.documents.dirty());
        QVERIFY(bytesOf(path).contains("at first"));
        QVERIFY(bytesOf(store::copiesOf(path).constLast()).contains("now"));
        desk.name(QStringLiteral("and on"));
        QTRY_VERIFY(bytesOf(path).contains("and on"));
    }

    void shouldBringBackAVersionOfADamagedFile()
    {
        const QString path = put(QStringLiteral("a.json"), "at first");
        {
            Desk desk(path);
            desk.name(QStringLiteral("now"));
            desk.documents.end();
        }
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly) && file.write("{\"format\": \"tripoise") > 0);
        file.close();
        Desk desk;
        QVERIFY(!desk.documents.openPath(path));
        QVERIFY(desk.documents.openVersion(path, store::copiesOf(path).constLast()));
        QVERIFY(desk.documents.bringBack());
        QVERIFY(bytesOf(path).contains("at first"));
    }

    // -- what is done with one

    void shouldDuplicate()
    {
        const QString path = put(QStringLiteral("anna-2026-01-02.json"), "Anna");
        const QByteArray before = bytesOf(path);
        Desk desk;
        QVERIFY(desk.documents.duplicateOf(path));
        QCOMPARE(desk.documents.filePath(), inFolder(QStringLiteral("anna-%1.json").arg(today())));
        desk.name(QStringLiteral("Anna, second bicycle"));
        QVERIFY(desk.documents.settle());
        QCOMPARE(bytesOf(path), before);
        QVERIFY(desk.documents.duplicate());
        QCOMPARE(filesThere().size(), 3);
        QVERIFY(!desk.documents.dirty());
    }

    void shouldRenameTheOpenOneAndAnother()
    {
        const QString path = put(QStringLiteral("anna-2026-01-02.json"), "Anna");
        const QString other = put(QStringLiteral("ben-2026-01-02.json"), "Ben");
        Desk desk(path);
        QVERIFY(desk.documents.rename(path, QStringLiteral(" Bea ")));
        QCOMPARE(desk.name(), QStringLiteral("Bea"));
        QCOMPARE(desk.documents.filePath(), inFolder(QStringLiteral("bea-2026-01-02.json")));
        QVERIFY(desk.documents.rename(other, QStringLiteral("Carl")));
        const QString carl = inFolder(QStringLiteral("carl-2026-01-02.json"));
        QVERIFY(bytesOf(carl).contains("\"Carl\""));
        QVERIFY(bytesOf(store::copiesOf(carl).value(0)).contains("\"Ben\""));
        QCOMPARE(filesThere().size(), 2);
        desk.session.undo(); // a step as any other
        QCOMPARE(desk.name(), QStringLiteral("Anna"));
    }

    void shouldExportACopyAndStay()
    {
        const QString path = put(QStringLiteral("a.json"), "Anna");
        const QString other = put(QStringLiteral("b.json"), "Ben");
        const QString to = m_own->path(QStringLiteral("stick/copy.json"));
        QVERIFY(QDir().mkpath(QFileInfo(to).path()));
        Desk desk(path);
        desk.name(QStringLiteral("Anna S."));
        QCOMPARE(desk.documents.exportTo({}, url(to)), Documents::Saved);
        QVERIFY(bytesOf(to).contains("Anna S."));
        QCOMPARE(desk.documents.filePath(), path);
        QCOMPARE(desk.documents.exportTo(other, url(to)), Documents::Taken);
        QVERIFY(bytesOf(to).contains("Anna S."));
        QCOMPARE(desk.documents.exportTo(other, url(to), true), Documents::Saved);
        QVERIFY(bytesOf(to).contains("Ben"));
        QCOMPARE(desk.documents.exportTo({}, url(path), true), Documents::Failed);
        QVERIFY(desk.documents.settle());
    }

    void shouldImportWhatIsDroppedAndLeaveTheFile()
    {
        const QString from = m_own->file(QStringLiteral("mail/a.json"), demoText());
        Desk desk;
        desk.name(QStringLiteral("typed before"));
        QVERIFY(desk.documents.drop(url(from)));
        QCOMPARE(desk.documents.filePath(),
                 inFolder(QStringLiteral("between-two-sizes-%1.json").arg(today())));
        QVERIFY(desk.documents.notice().contains(QStringLiteral("a.json")));
        desk.name(QStringLiteral("changed"));
        QVERIFY(desk.documents.settle());
        QCOMPARE(bytesOf(from), demoText());
        QVERIFY(!holding("typed before").isEmpty());
        // What lies in the folder is opened, not copied.
        const QStringList before = filesThere();
        QVERIFY(desk.documents.drop(url(inFolder(before[0]))));
        QCOMPARE(filesThere().size(), before.size());
    }

    void shouldWorkOnAFileElsewhereAsAsked()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), demoText());
        Desk desk(path);
        desk.name(QStringLiteral("typed"));
        QTest::qWait(writtenWithinMs);
        QCOMPARE(bytesOf(path), demoText());
        QVERIFY(desk.documents.dirty() && draftHolds("typed"));
        QVERIFY(!desk.documents.settle()); // to be asked about
        QVERIFY(desk.documents.saveNow());
        QVERIFY(bytesOf(path).contains("typed"));
        QVERIFY(!QFileInfo::exists(fittings::folder()));
    }

    void shouldLeaveNothingOfARiderThatIsDeleted()
    {
        const QString anna = put(QStringLiteral("anna-2026-01-02.json"), "Anna");
        (void)put(QStringLiteral("ben-2026-01-02.json"), "Ben");
        Page page;
        QVERIFY(holding("Anna").size() > 1); // the index too
        Desk desk;
        desk.name(QStringLiteral("Carl"));
        QVERIFY(desk.documents.rename(anna, QStringLiteral("Anna S.")));
        page.look();
        const QString path = page.at(page.of(QStringLiteral("Anna S.")), FittingsModel::Path);
        const QString told = desk.documents.kept(path).join(QLatin1Char('\n'));
        QVERIFY2(told.contains(path) && told.contains(QStringLiteral("1 earlier version")),
                 qPrintable(told));
        QCOMPARE(desk.documents.riderOf(path), QStringLiteral("Anna S."));
        QVERIFY(desk.documents.deleteRider(path));
        QCOMPARE(holding("Anna"), QStringList());
        QCOMPARE(holding("anna"), QStringList());
        QVERIFY(!holding("Ben").isEmpty());
        QCOMPARE(desk.name(), QStringLiteral("Carl")); // what is on the screen stays
        page.look();
        QCOMPARE(page.of(QStringLiteral("Anna S.")), -1);
        // The one on the screen, a moment after an edit.
        desk.name(QStringLiteral("Carl again"));
        QVERIFY(desk.documents.deleteRider());
        QTest::qWait(writtenWithinMs);
        QCOMPARE(holding("Carl"), QStringList());
    }

    void shouldNameTheRidersOtherFittingsWhenOneIsDeleted()
    {
        const QString path = put(QStringLiteral("anna-2026-01-02.json"), "Anna");
        const QString other = put(QStringLiteral("anna-2026-02-03.json"), "Anna");
        const Page page;
        Desk desk;
        QVERIFY(desk.documents.kept(path).join(QLatin1Char(' ')).contains(other));
        QVERIFY(desk.documents.deleteRider(path));
        QVERIFY(QFileInfo::exists(other) && !QFileInfo::exists(path));
    }

    // -- the list

    void shouldListNewestFirstWithWhatIsDecided()
    {
        const QString old = put(QStringLiteral("old.json"), "Anna");
        QFile file(old);
        QVERIFY(file.open(QIODevice::ReadWrite));
        QVERIFY(file.setFileTime(QDateTime::currentDateTime().addDays(-40),
                                 QFileDevice::FileModificationTime));
        file.close();
        (void)put(QStringLiteral("new.json"), "Ben");
        Desk desk;
        desk.name(QStringLiteral("Carl")); // nothing but a name
        QVERIFY(desk.documents.settle());
        const Page page;
        QCOMPARE(page.riders(), (QStringList{QStringLiteral("Carl"), QStringLiteral("Ben"),
                                             QStringLiteral("Anna")}));
        const int ben = page.of(QStringLiteral("Ben"));
        QCOMPARE(page.at(ben, FittingsModel::Frames), QStringLiteral("Millrace M, L"));
        QCOMPARE(page.at(0, FittingsModel::Verdict), QStringLiteral("Not decided yet"));
        // As the window says it: derived by opening the same file.
        Desk other(page.at(ben, FittingsModel::Path));
        QTRY_VERIFY(other.session.settled());
        const Advice& advice = other.session.solution().advice;
        const QString named = QString::fromStdString(
            other.session.solution().prepared->sizes[advice.leading().size].frame.size);
        QVERIFY2(page.at(ben, FittingsModel::Verdict).contains(named),
                 qPrintable(page.at(ben, FittingsModel::Verdict)));
        const auto points =
            page.model.data(page.model.index(ben), FittingsModel::Points).value<QList<double>>();
        QCOMPARE(points.size(), 17);
        const Skeleton& skeleton =
            other.session.solution().prepared->sizes[advice.leading().size].skeleton;
        QCOMPARE(points[0], std::round(skeleton.rearAxle.x()));
        QCOMPARE(points[5], std::round(skeleton.headTop.y()));
    }

    void shouldFindByRiderFrameAndDate_data()
    {
        QTest::addColumn<QString>("search");
        QTest::addColumn<int>("found");
        QTest::newRow("nothing typed") << "" << 3;
        QTest::newRow("rider") << "anna" << 1;
        QTest::newRow("part of one, in capitals") << "NN" << 1;
        QTest::newRow("frame") << "millrace" << 3;
        QTest::newRow("frame and rider, in any order") << "millr  ben" << 1;
        QTest::newRow("date") << today() << 3;
        QTest::newRow("umlaut") << QStringLiteral("MÜLLER") << 1;
        QTest::newRow("none") << "anna ben" << 0;
    }
    void shouldFindByRiderFrameAndDate()
    {
        QFETCH(QString, search);
        QFETCH(int, found);
        for (const char* rider : {"Anna", "Ben", "Müller"})
            (void)put(QLatin1String(rider) + QStringLiteral(".json"), rider);
        Page page;
        page.model.setSearch(search);
        QCOMPARE(page.model.count(), found);
        QCOMPARE(page.model.message().isEmpty(), found > 0);
    }

    void shouldRebuildTheIndexFromTheFittingsAlone_data()
    {
        QTest::addColumn<QByteArray>("index");
        QTest::newRow("lost") << QByteArray();
        QTest::newRow("cut off") << QByteArray("{\"version\": 1, \"fittings\": [{\"fi");
        QTest::newRow("something else") << QByteArray("[1, 2]");
        QTest::newRow("of another version") << QByteArray(R"({"version": 99, "fittings": 7})");
    }
    void shouldRebuildTheIndexFromTheFittingsAlone()
    {
        QFETCH(QByteArray, index);
        (void)put(QStringLiteral("a.json"), "Anna");
        (void)put(QStringLiteral("b.json"), "Ben");
        const QString path = store::folder() + QStringLiteral("/fittings.json");
        QByteArray whole;
        {
            const Page page;
            whole = bytesOf(path);
            QVERIFY(whole.contains("Anna"));
        }
        QVERIFY(QFile::remove(path));
        if (!index.isEmpty())
            (void)m_own->file(QDir(m_own->folder()).relativeFilePath(path), index);
        const Page page;
        QCOMPARE(page.model.count(), 2);
        QTRY_COMPARE(bytesOf(path), whole);
    }

    void shouldReadAgainWhatChangedAlone()
    {
        (void)put(QStringLiteral("a.json"), "Anna");
        const QString path = put(QStringLiteral("b.json"), "Ben");
        Page page;
        // What the index says of a file that is as it was is believed.
        const QString index = store::folder() + QStringLiteral("/fittings.json");
        QCOMPARE(store::write(index, bytesOf(index).replace("\"Anna\"", "\"Known\"")),
                 std::nullopt);
        (void)put(QStringLiteral("b.json"), "Another");
        page.look();
        QTRY_COMPARE(page.of(QStringLiteral("Another")) >= 0, true);
        QVERIFY(page.of(QStringLiteral("Known")) >= 0);
        QVERIFY(QFile::remove(path));
        page.look();
        QTRY_COMPARE(page.model.count(), 1);
    }

    void shouldListWhatIsNoFittingAndSayWhyItIsNotOpened()
    {
        (void)put(QStringLiteral("good.json"), "Anna");
        for (const auto& [name, bytes] :
             {std::pair("cut.json", demoText().left(700)), std::pair("empty.json", QByteArray()),
              std::pair("frame.json", frameModelText(2)),
              std::pair("other.json", QByteArray(R"({"a":1})")),
              std::pair("noise.json", QByteArray(5000, '\xfe')),
              std::pair("photo.png", QByteArray("x"))}) {
            QFile file(inFolder(QLatin1String(name)));
            QVERIFY(file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size());
        }
        QVERIFY(QDir(fittings::folder()).mkdir(QStringLiteral("folder.json")));
        QVERIFY(QFile::link(QStringLiteral("/nowhere"), inFolder(QStringLiteral("link.json"))));
        Page page;
        int unreadable = 0;
        for (int row = 0; row < page.model.count(); ++row) {
            if (page.model.data(page.model.index(row), FittingsModel::Readable).toBool())
                continue;
            ++unreadable;
            Desk desk;
            const QString path = page.at(row, FittingsModel::Path);
            QVERIFY(!desk.documents.openPath(path));
            QCOMPARE(desk.documents.noticeLevel(), QStringLiteral("wrong"));
            QVERIFY(desk.documents.notice().contains(QFileInfo(path).fileName()));
        }
        QVERIFY(unreadable >= 5);
        QVERIFY(page.of(QStringLiteral("Anna")) >= 0);
    }

    void shouldSayThatAFolderIsGone()
    {
        const Page empty; // the ordinary one is made when it is wanted
        QVERIFY(!empty.model.wrong() && !empty.model.message().isEmpty());
        Desk desk;
        const QString chosen = m_own->path(QStringLiteral("stick"));
        QVERIFY(QDir().mkpath(chosen));
        QVERIFY(!desk.documents.chooseFolder(url(m_own->path(QStringLiteral("nowhere")))));
        QVERIFY(desk.documents.chooseFolder(url(chosen)));
        QCOMPARE(fittings::folder(), chosen);
        QVERIFY(QDir(chosen).removeRecursively());
        Page page;
        QVERIFY(page.model.wrong() && !page.model.message().isEmpty());
        // Its disk may be away: it is not made anew, and nothing is lost meanwhile.
        desk.name(QStringLiteral("Anna"));
        QTRY_COMPARE(desk.documents.noticeLevel(), QStringLiteral("wrong"));
        QVERIFY2(desk.documents.notice().contains(chosen), qPrintable(desk.documents.notice()));
        QVERIFY(!QFileInfo::exists(chosen));
        QTRY_VERIFY(draftHolds("Anna"));
        QVERIFY(!desk.documents.settle());
        QVERIFY(desk.documents.title().contains(QStringLiteral("not saved")));
        QVERIFY(QDir().mkpath(chosen));
        desk.name(QStringLiteral("Anna S."));
        QTRY_VERIFY(!desk.documents.dirty());
        QVERIFY(desk.documents.notice().isEmpty() && drafts().isEmpty());
    }

    void shouldBringBackAtTheNextStartWhatCouldNotBeWritten()
    {
        QVERIFY(QDir().mkpath(m_own->path(QStringLiteral("Documents"))));
        (void)m_own->file(QStringLiteral("Documents/Tripoise"), "in the way");
        {
            Desk desk;
            desk.name(QStringLiteral("Anna"));
            QTRY_VERIFY(draftHolds("Anna"));
        } // killed
        QVERIFY(QFile::remove(fittings::folder()));
        Desk desk;
        QCOMPARE(desk.name(), QStringLiteral("Anna"));
        QTRY_VERIFY(!desk.documents.dirty()); // written now
        QCOMPARE(filesThere().size(), 1);
        QVERIFY(drafts().isEmpty());
    }

    void shouldKeepEverythingWhereNothingCanBeWritten_data()
    {
        QTest::addColumn<QString>("call");
        for (const char* call : {"open to write", "write", "rename", "fsync"})
            QTest::newRow(call) << QString::fromLatin1(call);
    }
    void shouldKeepEverythingWhereNothingCanBeWritten()
    {
        QFETCH(QString, call);
        const QByteArray name = call.toLatin1();
        const QString path = put(QStringLiteral("a.json"), "Anna");
        const QByteArray before = bytesOf(path);
        Desk desk(path);
        {
            const NoRoom disk(name.constData());
            desk.name(QStringLiteral("typed"));
            QTRY_COMPARE(desk.documents.noticeLevel(), QStringLiteral("wrong"));
            QCOMPARE(desk.documents.settle(), false);
            QCOMPARE(bytesOf(path), before);
        }
        QVERIFY(desk.documents.dirty());
        QCOMPARE(desk.name(), QStringLiteral("typed"));
        QVERIFY(desk.documents.settle()); // the disk is well again
        QVERIFY(bytesOf(path).contains("typed"));
        QVERIFY(bytesOf(store::copiesOf(path).value(0)).contains("Anna"));
        QCOMPARE(filesThere(), QStringList{QStringLiteral("a.json")});
    }

    void shouldSayThatAFolderCannotBeWrittenTo()
    {
        const QString path = put(QStringLiteral("a.json"), "Anna");
        for (const QString& folder : {m_own->folder(), m_own->path(QStringLiteral("Documents"))})
            QFile::setPermissions(folder, QFile::Permissions(0x7755));
        QVERIFY(QFile::setPermissions(fittings::folder(), QFile::Permissions(0x5555)));
        Desk desk(path);
        {
            const Unprivileged user;
            QVERIFY(user.holds());
            desk.name(QStringLiteral("typed"));
            QVERIFY(!desk.documents.settle());
        }
        QFile::setPermissions(fittings::folder(), QFile::Permissions(0x7755));
        QCOMPARE(desk.documents.noticeLevel(), QStringLiteral("wrong"));
        QVERIFY(desk.documents.notice().contains(fittings::folder()));
        QVERIFY(desk.documents.settle());
        QVERIFY(desk.documents.notice().isEmpty());
    }

    /// As a synchronising disk does: it is not written over by itself.
    void shouldLeaveAFileThatAnotherProgramChangedOrRemoved()
    {
        const QString path = put(QStringLiteral("a.json"), "Anna");
        Desk desk(path);
        const QByteArray theirs = demoText().replace("Between two sizes", "theirs");
        QCOMPARE(store::write(path, theirs), std::nullopt);
        QTRY_VERIFY(!desk.documents.notice().isEmpty());
        desk.name(QStringLiteral("mine"));
        QTest::qWait(writtenWithinMs);
        QCOMPARE(bytesOf(path), theirs);
        QVERIFY(draftHolds("mine") && !desk.documents.settle());
        QVERIFY(desk.documents.saveNow());
        QVERIFY(bytesOf(path).contains("mine"));
        QCOMPARE(bytesOf(store::copiesOf(path).constLast()), theirs);
        QVERIFY(QFile::remove(path));
        QTRY_VERIFY(desk.documents.dirty());
        desk.name(QStringLiteral("mine again"));
        QTest::qWait(writtenWithinMs);
        QVERIFY(!QFileInfo::exists(path)); // its rider may have been deleted
        QVERIFY(desk.documents.saveNow());
        QVERIFY(bytesOf(path).contains("mine again"));
    }

    // -- two windows

    void shouldOnlyShowWhatAnotherWindowHasOpen()
    {
        const QString path = put(QStringLiteral("a.json"), "Anna");
        auto first = std::make_unique<Desk>(path);
        Desk second;
        QVERIFY(second.documents.openPath(path));
        QVERIFY(second.documents.readOnly());
        QVERIFY(!second.documents.notice().isEmpty());
        second.documents.dismissNotice();
        second.name(QStringLiteral("typed in the second"));
        QVERIFY(!second.documents.notice().isEmpty());
        QVERIFY(!second.documents.save());
        QTest::qWait(writtenWithinMs);
        QVERIFY(bytesOf(path).contains("Anna"));
        QVERIFY(draftHolds("typed in the second"));
        QVERIFY(!second.documents.rename(path, QStringLiteral("x"))
                || bytesOf(path).contains("Anna"));
        { // were it killed, what was typed would come back as a fitting of its own
            const QStringList origins = QDir(store::folder(QStringLiteral("drafts")))
                                            .entryList({QStringLiteral("*.origin")}, QDir::Files);
            QCOMPARE(origins.size(), 1);
            QCOMPARE(
                bytesOf(store::folder(QStringLiteral("drafts")) + QLatin1Char('/') + origins[0]),
                QByteArray());
        }
        QVERIFY(second.documents.duplicate());
        QVERIFY(!second.documents.readOnly());
        QVERIFY(bytesOf(second.documents.filePath()).contains("\"x\""));
        QVERIFY(bytesOf(path).contains("Anna"));
        first.reset();
        QVERIFY(second.documents.openPath(path));
        QVERIFY(!second.documents.readOnly()); // it is free now
    }

    void shouldKeepTheLockOfAnotherProgramAndTakeThatOfAKilledOne()
    {
        const QString path = put(QStringLiteral("a.json"), "Anna");
        SecondProgram second({QStringLiteral("--second"), m_own->folder(), path});
        QVERIFY(second.hear().startsWith("writes"));
        Desk desk;
        QVERIFY(desk.documents.openPath(path));
        QVERIFY(desk.documents.readOnly());
        QVERIFY(!desk.documents.rename(put(QStringLiteral("b.json"), "B"), QStringLiteral("C"))
                == false);
        second.kill();
        QVERIFY(desk.documents.openPath(path));
        QVERIFY(!desk.documents.readOnly());
        SecondProgram third({QStringLiteral("--second"), m_own->folder(), path});
        QVERIFY(third.hear().startsWith("looks"));
    }

    // -- many

    void shouldListTwoThousandSoon()
    {
        constexpr int many = 2000;
        for (int i = 0; i < many; ++i)
            (void)put(QStringLiteral("%1.json").arg(i), "Rider " + QByteArray::number(i));
        QElapsedTimer timer;
        timer.start();
        {
            FittingsModel model;
            model.refresh();
            QTRY_COMPARE_WITH_TIMEOUT(model.count(), many, listedWithinMs);
            qInfo("without an index %d are listed by name in %lld ms", many, timer.elapsed());
        }
        const QString index = store::folder() + QStringLiteral("/fittings.json");
        timer.restart();
        qint64 readMs = 0;
        {
            const Page page;
            readMs = timer.elapsed();
            QTRY_VERIFY(bytesOf(index).contains("Rider 1999"));
        }
        timer.restart();
        FittingsModel model;
        model.refresh();
        QTRY_COMPARE_WITH_TIMEOUT(model.count(), many, listedWithinMs);
        const qint64 listedMs = timer.elapsed();
        QVERIFY(!model.data(model.index(many - 1), FittingsModel::Verdict).toString().isEmpty());
        qint64 mostMs = 0;
        for (const char* typed : {"r", "ri", "rider 1", "rider 19", "rider 1", "r", ""}) {
            timer.restart();
            model.setSearch(QLatin1String(typed));
            mostMs = std::max(mostMs, timer.elapsed());
        }
        timer.restart();
        model.refresh();
        qInfo("saying them all takes %lld ms of the window's thread", timer.elapsed());
        QVERIFY(timer.elapsed() < 500);
        qInfo("all read in %lld ms; listed from the index in %lld ms (%lld kB); a key of the "
              "search takes at most %lld ms",
              readMs, listedMs, QFileInfo(index).size() / 1024, mostMs);
        QVERIFY(listedMs < readMs);
        QVERIFY(listedMs < 2500);
        QVERIFY(mostMs < 250);
    }
};

int main(int argc, char** argv)
{
    QCoreApplication::setOrganizationName(QStringLiteral("tripoise"));
    QCoreApplication::setApplicationName(QStringLiteral("tripoise"));
    const QGuiApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.value(1) == QStringLiteral("--second")) {
        OwnFolders::use(arguments.value(2));
        return workAsSecond(arguments.value(3));
    }
    TestFittings test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_fittings.moc"
