// SPDX-License-Identifier: MIT
//
// Files of the program: written whole or not at all, with what stood there before kept.
#include "app/own_folders.h"
#include "session/store.h"

#include <QElapsedTimer>
#include <QTest>

#include <memory>

using namespace tripoise;
using namespace tripoise::test;

class TestStore : public QObject {
    Q_OBJECT

    std::unique_ptr<OwnFolders> m_own;

    [[nodiscard]] QStringList historyNames(const QString& path) const
    {
        return QDir(store::historyOf(path)).entryList(QDir::Files, QDir::Name);
    }

private slots:
    void init() { m_own = std::make_unique<OwnFolders>(); }

    void shouldReadWhatItWrote()
    {
        const QString path = m_own->path(QStringLiteral("a.json"));
        const QByteArray bytes("one\0two\xff", 8);
        QCOMPARE(store::write(path, bytes), std::nullopt);
        QCOMPARE(store::read(path).bytes, bytes);
        QCOMPARE(bytesOf(path), bytes);
        QCOMPARE(store::write(path, "shorter"), std::nullopt);
        QCOMPARE(bytesOf(path), QByteArray("shorter"));
    }

    void shouldLeaveTheOldFileWholeWhenTheDiskIsFull()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), "as it was");
        std::optional<QString> failure;
        {
            const FullDisk full(1000);
            failure = store::write(path, QByteArray(5000, 'x'));
        }
        QVERIFY(failure);
        QVERIFY(!failure->isEmpty() && *failure != QStringLiteral("Unknown error"));
        QCOMPARE(bytesOf(path), QByteArray("as it was"));
        // Nor is half a file left beside it.
        QCOMPARE(QDir(m_own->folder()).entryList(QDir::Files), QStringList{"a.json"});
    }

    void shouldSayWhyAFolderCannotBeWrittenTo()
    {
        const QString path = m_own->file(QStringLiteral("shut/a.json"), "as it was");
        QFile::setPermissions(m_own->folder(), QFile::Permissions(0x7755));
        const QString shut = QFileInfo(path).path();
        QVERIFY(QFile::setPermissions(shut, QFile::ReadOwner | QFile::ExeOwner | QFile::ReadOther
                                                | QFile::ExeOther));
        {
            const Unprivileged user;
            QVERIFY(user.holds());
            const auto failure = store::write(path, "new");
            QVERIFY(failure && !failure->isEmpty());
        }
        QCOMPARE(bytesOf(path), QByteArray("as it was"));
        QFile::setPermissions(shut, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    }

    void shouldSayThatThereIsNoSuchFolder()
    {
        QVERIFY(store::write(m_own->path(QStringLiteral("none/a.json")), "new"));
        const QString file = m_own->file(QStringLiteral("a"), "a file");
        QVERIFY(store::write(file + QStringLiteral("/a.json"), "new"));
        QVERIFY(store::write(m_own->folder(), "new"));
        QCOMPARE(bytesOf(file), QByteArray("a file"));
    }

    void shouldWriteThroughALink()
    {
        const QString file = m_own->file(QStringLiteral("there/real.json"), "old");
        const QString link = m_own->path(QStringLiteral("link.json"));
        QVERIFY(QFile::link(file, link));
        QCOMPARE(store::write(link, "new"), std::nullopt);
        QVERIFY(QFileInfo(link).isSymLink());
        QCOMPARE(bytesOf(file), QByteArray("new"));
    }

    void shouldSayWhyAFileCannotBeRead_data()
    {
        QTest::addColumn<QString>("name");
        QTest::newRow("a folder") << "folder";
        QTest::newRow("gone") << "gone.json";
        QTest::newRow("no name") << "";
        QTest::newRow("not permitted") << "secret.json";
    }
    void shouldSayWhyAFileCannotBeRead()
    {
        QFETCH(QString, name);
        QFile::setPermissions(m_own->folder(), QFile::Permissions(0x7755));
        (void)m_own->file(QStringLiteral("folder/in.json"), "{}");
        QFile::setPermissions(m_own->file(QStringLiteral("secret.json"), "{}"), {});
        const Unprivileged user;
        QVERIFY(user.holds());
        const store::Read read = store::read(name.isEmpty() ? QString() : m_own->path(name));
        QVERIFY(!read.failure.isEmpty());
        QVERIFY(read.bytes.isEmpty());
    }

    void shouldNotEvenReadWhatIsTooLarge()
    {
        QFile file(m_own->path(QStringLiteral("large.json")));
        QVERIFY(file.open(QIODevice::WriteOnly) && file.resize(50'000'000));
        QElapsedTimer timer;
        timer.start();
        const store::Read read = store::read(file.fileName());
        QVERIFY(timer.elapsed() < 50);
        QVERIFY(read.tooLarge && read.bytes.isEmpty() && read.failure.isEmpty());
    }

    void shouldKeepWhatStoodThereBefore()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), "first");
        store::keepHistory(path);
        QCOMPARE(store::write(path, "second"), std::nullopt);
        store::keepHistory(path);
        store::keepHistory(path); // the same again is kept once
        const QStringList names = historyNames(path);
        QCOMPARE(names.size(), 2);
        const QDir kept(store::historyOf(path));
        QCOMPARE(bytesOf(kept.filePath(names[0])), QByteArray("first"));
        QCOMPARE(bytesOf(kept.filePath(names[1])), QByteArray("second"));
        // Named by its date, beside nothing that is the user's own.
        QVERIFY(QDateTime::fromString(names[0].left(18), QStringLiteral("yyyyMMdd'T'HHmmsszzz"))
                    .isValid());
        QVERIFY(kept.path().startsWith(store::folder()));
    }

    void shouldKeepTheLastTwentyOfEachFile()
    {
        const QString path = m_own->path(QStringLiteral("a.json"));
        const QString other = m_own->file(QStringLiteral("elsewhere/a.json"), "other");
        store::keepHistory(other);
        for (int i = 0; i < 25; ++i) {
            QCOMPARE(store::write(path, QByteArray::number(i)), std::nullopt);
            store::keepHistory(path);
            QTest::qSleep(2); // the name is the moment
        }
        const QStringList names = historyNames(path);
        QCOMPARE(names.size(), store::mostKept);
        const QDir kept(store::historyOf(path));
        QCOMPARE(bytesOf(kept.filePath(names.first())), QByteArray("5"));
        QCOMPARE(bytesOf(kept.filePath(names.last())), QByteArray("24"));
        QCOMPARE(historyNames(other).size(), 1);
    }

    void shouldCopyADamagedFileOnce()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), "{\"format\": \"trip");
        const QString copy = store::setAside(path);
        QVERIFY(copy.startsWith(store::folder()));
        QCOMPARE(bytesOf(copy), bytesOf(path));
        QCOMPARE(store::setAside(path), copy);
        (void)m_own->file(QStringLiteral("a.json"), "otherwise damaged");
        const QString another = store::setAside(path);
        QVERIFY(another != copy);
        QCOMPARE(bytesOf(another), QByteArray("otherwise damaged"));
        QVERIFY(store::setAside(m_own->path(QStringLiteral("none.json"))).isEmpty());
    }
};

int main(int argc, char** argv)
{
    QCoreApplication::setOrganizationName(QStringLiteral("tripoise"));
    QCoreApplication::setApplicationName(QStringLiteral("tripoise"));
    QCoreApplication application(argc, argv);
    TestStore test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_store.moc"
