// SPDX-License-Identifier: MIT
//
// Files of the program: written whole or not at all, with what stood there before kept.
#include "app/own_folders.h"
#include "session/store.h"

#include <QElapsedTimer>
#include <QTest>

#include <array>
#include <memory>
#include <thread>

#include <sys/stat.h>
#include <unistd.h>

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
        QCOMPARE(store::keepHistory(path), std::nullopt);
        QCOMPARE(store::write(path, "second"), std::nullopt);
        QCOMPARE(store::keepHistory(path), std::nullopt);
        QCOMPARE(store::keepHistory(path), std::nullopt); // the same again is kept once
        const QStringList names = historyNames(path);
        QCOMPARE(names.size(), 2);
        const QDir kept(store::historyOf(path));
        QCOMPARE(bytesOf(kept.filePath(names[0])), QByteArray("first"));
        QCOMPARE(bytesOf(kept.filePath(names[1])), QByteArray("second"));
        // In an order of its own, with its date, beside nothing that is the user's own.
        QCOMPARE(names[0].left(9), QStringLiteral("00000001-"));
        QVERIFY(QDateTime::fromString(names[0].mid(9, 18), QStringLiteral("yyyyMMdd'T'HHmmsszzz"))
                    .isValid());
        QVERIFY(kept.path().startsWith(store::folder()));
    }

    void shouldKeepTheLastTwentyOfEachFile()
    {
        const QString path = m_own->path(QStringLiteral("a.json"));
        const QString other = m_own->file(QStringLiteral("elsewhere/a.json"), "other");
        QCOMPARE(store::keepHistory(other), std::nullopt);
        for (int i = 0; i < 25; ++i) { // as quick as can be
            QCOMPARE(store::write(path, QByteArray::number(i)), std::nullopt);
            QCOMPARE(store::keepHistory(path), std::nullopt);
        }
        const QStringList names = historyNames(path);
        QCOMPARE(names.size(), store::mostKept);
        const QDir kept(store::historyOf(path));
        QCOMPARE(bytesOf(kept.filePath(names.first())), QByteArray("5"));
        QCOMPARE(bytesOf(kept.filePath(names.last())), QByteArray("24"));
        QCOMPARE(historyNames(other).size(), 1);
    }

    void shouldKeepTheSameOnceInItsLatestPlace()
    {
        const QString path = m_own->path(QStringLiteral("a.json"));
        for (const char* text : {"one", "two", "one", "three", "two"}) {
            QCOMPARE(store::write(path, text), std::nullopt);
            QCOMPARE(store::keepHistory(path), std::nullopt);
        }
        QList<QByteArray> kept;
        for (const QString& copy : store::copiesOf(path))
            kept << bytesOf(copy);
        QCOMPARE(kept, (QList<QByteArray>{"one", "three", "two"}));
    }

    void shouldGoOnAfterCopiesNamedByTheirDateAlone()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), "newer");
        QDir(store::folder()).mkpath(store::historyOf(path));
        for (const char* name : {"20260101T120000000Z.json", "20260301T120000000Z.json"})
            (void)m_own->file(QDir(m_own->folder())
                                  .relativeFilePath(store::historyOf(path) + QLatin1Char('/')
                                                    + QLatin1String(name)),
                              name);
        QCOMPARE(store::keepHistory(path), std::nullopt);
        const QStringList copies = store::copiesOf(path);
        QCOMPARE(copies.size(), 3);
        QCOMPARE(bytesOf(copies.last()), QByteArray("newer"));
    }

    void shouldKeepEveryCopyThatManyMakeAtOnce()
    {
        constexpr int many = store::mostKept / 2;
        std::array<std::thread, many> threads;
        for (int i = 0; i < many; ++i)
            threads[std::size_t(i)] = std::thread([this, i] {
                // One history: all are names of one file.
                const QString path = m_own->path(QStringLiteral("a.json"));
                (void)store::save(path, QByteArray::number(i), {true});
            });
        for (std::thread& thread : threads)
            thread.join();
        const QString path = m_own->path(QStringLiteral("a.json"));
        QList<QByteArray> all{bytesOf(path)};
        for (const QString& copy : store::copiesOf(path))
            all << bytesOf(copy);
        for (int i = 0; i < many; ++i)
            QVERIFY2(all.contains(QByteArray::number(i)), qPrintable(QString::number(i)));
    }

    void shouldNotOverwriteWhatItCannotKeep()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), "as it was");
        (void)m_own->file(QStringLiteral("tripoise/tripoise/history"), "in the way");
        const store::Saved saved = store::save(path, "new", {true, "as it was"});
        QCOMPARE(saved.state, store::Saved::State::NotKept);
        QVERIFY(!saved.why.isEmpty());
        QCOMPARE(bytesOf(path), QByteArray("as it was"));
        QVERIFY(store::keepHistory(path));
    }

    void shouldReplaceNothingUnasked()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), "another's");
        QCOMPARE(store::save(path, "new", {}).state, store::Saved::State::Taken);
        QCOMPARE(bytesOf(path), QByteArray("another's"));
        QVERIFY(store::save(path, "new", {true}).foreign);
        QCOMPARE(bytesOf(path), QByteArray("new"));
        QCOMPARE(bytesOf(store::copiesOf(path).value(0)), QByteArray("another's"));
    }

    void shouldRefuseWhatIsNoOrdinaryFile_data()
    {
        QTest::addColumn<QString>("name");
        for (const char* name : {"pipe", "link to a pipe", "link to a device", "folder"})
            QTest::newRow(name) << name;
    }
    void shouldRefuseWhatIsNoOrdinaryFile()
    {
        QFETCH(QString, name);
        const QString path = m_own->path(name);
        const QString pipe = m_own->path(QStringLiteral("pipe"));
        QCOMPARE(mkfifo(QFile::encodeName(pipe).constData(), 0666), 0);
        QVERIFY(QFile::link(pipe, m_own->path(QStringLiteral("link to a pipe"))));
        QVERIFY(QFile::link(QStringLiteral("/dev/zero"),
                            m_own->path(QStringLiteral("link to a device"))));
        QVERIFY(QDir(m_own->folder()).mkdir(QStringLiteral("folder")));
        QFile::setPermissions(m_own->folder(), QFile::Permissions(0x7777));
        const Unprivileged user; // no device is replaced even where this fails
        QVERIFY(user.holds());
        QElapsedTimer timer;
        timer.start();
        const store::Read read = store::read(path);
        QVERIFY(read.bytes.isEmpty() && !read.failure.isEmpty());
        const store::Saved saved = store::save(path, "new", {true});
        QCOMPARE(saved.state, store::Saved::State::Failed);
        QVERIFY(!saved.why.isEmpty());
        QVERIFY(timer.elapsed() < 100);
        QVERIFY(QFileInfo(pipe).exists() && !QFileInfo(pipe).isFile());
        QVERIFY(QFileInfo(path).exists() && !QFileInfo(path).isFile());
    }

    void shouldMakeANewFileOfOneThatHasSeveralNames()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), "old");
        const QString other = m_own->path(QStringLiteral("b.json"));
        QCOMPARE(link(QFile::encodeName(path).constData(), QFile::encodeName(other).constData()),
                 0);
        QVERIFY(store::save(path, "new", {true, "old"}).severalNames);
        QCOMPARE(bytesOf(path), QByteArray("new"));
        QCOMPARE(bytesOf(other), QByteArray("old"));
        QVERIFY(!store::save(path, "newer", {true, "new"}).severalNames);
    }

    void shouldWriteThroughSeveralLinks()
    {
        const QString file = m_own->file(QStringLiteral("there/real.json"), "old");
        const QString near = m_own->path(QStringLiteral("there/near.json"));
        const QString far = m_own->path(QStringLiteral("far.json"));
        QVERIFY(QFile::link(QStringLiteral("real.json"), near));
        QVERIFY(QFile::link(near, far));
        QCOMPARE(store::save(far, "new", {true, "old"}).state, store::Saved::State::Done);
        QVERIFY(QFileInfo(far).isSymLink() && QFileInfo(near).isSymLink());
        QCOMPARE(bytesOf(file), QByteArray("new"));
        QCOMPARE(store::historyOf(far), store::historyOf(file));
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

    void shouldKeepTheLastTwentyDamagedFiles()
    {
        for (int i = 0; i < 25; ++i)
            QVERIFY(!store::setAside(
                         m_own->file(QStringLiteral("%1.json").arg(i), "{" + QByteArray::number(i)))
                         .isEmpty());
        const QStringList copies = store::setAside();
        QCOMPARE(copies.size(), store::mostKept);
        QCOMPARE(bytesOf(copies.first()), QByteArray("{5"));
        QCOMPARE(bytesOf(copies.last()), QByteArray("{24"));
    }

    void shouldLoseNothingOfWhatAKilledProgramLeft()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), "as it is");
        for (const QByteArray bytes : {"as it is", "nowhere else"}) {
            whole_file::Part part(path, bytes, {});
            QVERIFY(!part.failure());
            QVERIFY(!whole_file::leftParts(m_own->folder()).contains(part.path())); // in use
            part.leave();
        }
        QCOMPARE(whole_file::leftParts(m_own->folder(), QStringLiteral("a.json")).size(), 2);
        QVERIFY(whole_file::leftParts(m_own->folder(), QStringLiteral("b.json")).isEmpty());
        store::clearLeftParts(path);
        QVERIFY(whole_file::leftParts(m_own->folder()).isEmpty());
        QCOMPARE(store::setAside().size(), 1);
        QCOMPARE(bytesOf(store::setAside().value(0)), QByteArray("nowhere else"));
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
