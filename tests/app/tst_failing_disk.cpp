// SPDX-License-Identifier: MIT
//
// Each call that a save makes of the system fails in its turn: what stood in the file or what was
// to stand there is always whole, and a failure is told.
#include "app/desk.h"
#include "app/system_calls.h"

#include <QDirIterator>
#include <QGuiApplication>
#include <QTest>

#include <memory>

using namespace tripoise;
using namespace tripoise::test;

class TestFailingDisk : public QObject {
    Q_OBJECT

    std::unique_ptr<OwnFolders> m_own;

    [[nodiscard]] QStringList leftParts() const
    {
        QStringList left;
        for (QDirIterator each(m_own->folder(), QDir::Files | QDir::Hidden,
                               QDirIterator::Subdirectories);
             each.hasNext();)
            if (each.next(); each.fileName().startsWith(QStringLiteral(".")))
                left << each.filePath();
        return left;
    }

private slots:
    void init() { m_own = std::make_unique<OwnFolders>(); }

    void shouldKeepOneOfBothWhole_data()
    {
        QTest::addColumn<QString>("call");
        QTest::addColumn<int>("error");
        QTest::addColumn<bool>("onwards");
        QTest::addColumn<int>("least"); // so many calls a save makes at least
        for (const bool onwards : {false, true}) {
            const char* how = onwards ? "and all after it" : "alone";
            const auto row = [&](const char* call, int error, int least) {
                QTest::addRow("%s, %s, %s", call, std::strerror(error), how)
                    << QString::fromLatin1(call) << error << onwards << least;
            };
            row("open to write", ENOSPC, 2); // the copy and the file
            row("open to write", EACCES, 2);
            row("open to read", EMFILE, 1);
            row("read", EIO, 1);
            row("write", ENOSPC, 2);
            row("write", EIO, 2);
            row("fsync", EIO, 4); // both, and the folders of both
            row("rename", EACCES, 2);
            row("rename", EIO, 2);
            row("rename", EINVAL, 2); // a file system that cannot exchange two names
            row("link", EPERM, 0);    // is not reached unless a rename fails
            row("unlink", EIO, 1);
            row("chmod", EPERM, 1); // a file system without modes
            row("mkdir", ENOSPC, 0);
        }
    }
    void shouldKeepOneOfBothWhole()
    {
        QFETCH(QString, call);
        QFETCH(int, error);
        QFETCH(bool, onwards);
        QFETCH(int, least);
        const QByteArray name = call.toLatin1();
        for (int at = 1;; ++at) {
            m_own = std::make_unique<OwnFolders>();
            const QString path = m_own->file(QStringLiteral("mine/a.json"), demoText());
            Desk desk(path);
            desk.name(QStringLiteral("typed"));
            const QByteArray next = QByteArray::fromStdString(writeFitting(desk.session.fitting()));
            bool saved = false;
            bool happened = false;
            {
                const Disturbed disk({name.constData(), at, onwards, error});
                saved = desk.documents.save();
                happened = Disturbed::happened();
            }
            if (!happened) {
                QVERIFY2(at > least, qPrintable(QString::number(at)));
                break;
            }
            const QByteArray told = desk.documents.notice().toUtf8();
            const QByteArray context = call.toUtf8() + ' ' + QByteArray::number(at) + ": " + told;
            const QByteArray there = bytesOf(path);
            QVERIFY2(there == (saved ? next : demoText()), context.constData());
            if (!saved) {
                QCOMPARE(desk.documents.noticeLevel(), QStringLiteral("wrong"));
                QVERIFY2(told.contains("a.json"), context.constData());
                QVERIFY2(desk.documents.dirty(), context.constData());
            }
            // What is not synchronised is saved, and said not to be sure.
            if (saved && call == QStringLiteral("fsync"))
                QCOMPARE(desk.documents.noticeLevel(), QStringLiteral("wrong"));
            // What cannot be looked at is not removed, as it might be another program's.
            if (call != QStringLiteral("unlink") && !(onwards && call.contains("read")))
                QVERIFY2(leftParts().isEmpty(), qPrintable(leftParts().join(QLatin1Char(' '))));
            // The disk is well again, and nothing is in the way.
            QVERIFY2(desk.documents.save(), context.constData());
            QCOMPARE(bytesOf(path), next);
            QCOMPARE(desk.documents.openPath(path), true);
            QVERIFY(QDir(m_own->path(QStringLiteral("mine"))).entryList(QDir::Files | QDir::Hidden)
                    == QStringList{QStringLiteral("a.json")});
            const QStringList copies = store::copiesOf(path);
            QCOMPARE(bytesOf(copies.value(0)), demoText());
        }
    }

    void shouldReplaceWhereNoNamesCanBeExchangedOrLinked()
    {
        const QString path = m_own->path(QStringLiteral("a.json"));
        {
            const Disturbed disk({"rename", 1, false, EINVAL});
            QCOMPARE(store::save(path, "first", {}).state, store::Saved::State::Done);
        }
        {
            const Disturbed disk({"rename", 1, false, EINVAL});
            QCOMPARE(store::save(path, "second", {}).state, store::Saved::State::Taken);
        }
        QCOMPARE(bytesOf(path), QByteArray("first"));
        QCOMPARE(leftParts(), QStringList());
    }

    void shouldWriteOnWhereADiskTakesAByteAtATime()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), "old");
        Disturbance slow;
        slow.smallBites = true;
        const Disturbed disk(slow);
        QCOMPARE(store::write(path, "a byte at a time"), std::nullopt);
        QCOMPARE(bytesOf(path), QByteArray("a byte at a time"));
    }

    void shouldSayThatADiskKnowsNoPermissions()
    {
        const WithoutModes disk;
        Desk desk;
        QVERIFY2(desk.documents.notice().contains(store::folder()),
                 qPrintable(desk.documents.notice()));
        desk.documents.dismissNotice();
        // As open as its disk makes every file: nothing more was promised of it.
        QCOMPARE(desk.documents.saveAs(QUrl::fromLocalFile(m_own->path(QStringLiteral("a.json")))),
                 Documents::Saved);
        QVERIFY2(desk.documents.notice().isEmpty(), qPrintable(desk.documents.notice()));
    }

    void shouldSayThatACopyIsMoreOpenThanItsFile()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), demoText());
        QVERIFY(QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner));
        Desk desk(path);
        const WithoutModes disk;
        QCOMPARE(desk.documents.saveAs(QUrl::fromLocalFile(m_own->path(QStringLiteral("b.json")))),
                 Documents::Saved);
        QVERIFY2(desk.documents.notice().contains(QStringLiteral("b.json")),
                 qPrintable(desk.documents.notice()));
    }

    /// The clock is set back between two copies: the newer one is still the newer one.
    void shouldOrderCopiesWhateverTheClockSays()
    {
        const QString path = m_own->path(QStringLiteral("a.json"));
        for (int i = 0; i < store::mostKept + 5; ++i) {
            clockAheadS = -86'400 * i;
            QCOMPARE(store::write(path, QByteArray::number(i)), std::nullopt);
            QCOMPARE(store::keepHistory(path), std::nullopt);
        }
        clockAheadS = 0;
        const QStringList copies = store::copiesOf(path);
        QCOMPARE(copies.size(), store::mostKept);
        QCOMPARE(bytesOf(copies.first()), QByteArray("5"));
        QCOMPARE(bytesOf(copies.last()), QByteArray::number(store::mostKept + 4));
    }
};

int main(int argc, char** argv)
{
    QCoreApplication::setOrganizationName(QStringLiteral("tripoise"));
    QCoreApplication::setApplicationName(QStringLiteral("tripoise"));
    const QGuiApplication application(argc, argv);
    TestFailingDisk test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_failing_disk.moc"
