// SPDX-License-Identifier: MIT
//
// A rider is deleted with all that is kept, and nobody else; what goes is counted. The program's
// own files are their owner's alone.
#include "app/desk.h"
#include "app/files_holding.h"
#include "session/recents.h"
#include "session/traces.h"

#include <QDirIterator>
#include <QGuiApplication>
#include <QTest>

#include <memory>

#include <sys/stat.h>
#include <unistd.h>

using namespace tripoise;
using namespace tripoise::test;

namespace {

class Umask {
public:
    explicit Umask(mode_t mask) : m_before(umask(mask)) {}
    ~Umask() { umask(m_before); }
    Umask(const Umask&) = delete;
    Umask& operator=(const Umask&) = delete;

private:
    mode_t m_before;
};

int modeOf(const QString& path)
{
    struct stat status {};
    return lstat(QFile::encodeName(path).constData(), &status) == 0 ? int(status.st_mode & 0777)
                                                                    : -1;
}

/// A fitting of a rider of that name, with a body of that stature.
QByteArray riderText(const char* label, int statureMm)
{
    QByteArray text = demoText().replace("Between two sizes", label);
    const qsizetype from = text.indexOf("\"measurements\"");
    const QByteArray last("\"mass_kg\": 76");
    const qsizetype to = text.indexOf(last) + last.size();
    const auto mm = [](int value) { return QByteArray::number(value); };
    return text.replace(from, to - from,
                        R"("measurements": { "stature_mm": )" + mm(statureMm) + R"(, "inseam_mm": )"
                            + mm(statureMm * 47 / 100) + R"(, "foot_mm": )"
                            + mm(statureMm * 15 / 100));
}

} // namespace

class TestTraces : public QObject {
    Q_OBJECT

    std::unique_ptr<OwnFolders> m_own;

    [[nodiscard]] QUrl url(const QString& path) const { return QUrl::fromLocalFile(path); }
    /// All files anywhere that hold a text.
    [[nodiscard]] QStringList holding(const QByteArray& text) const
    {
        return filesHolding(text, m_own->folder());
    }

private slots:
    void init() { m_own = std::make_unique<OwnFolders>(); }

    void shouldLeaveNothingOfARider()
    {
        const QString path = m_own->file(QStringLiteral("Anna.json"), riderText("Anna", 1655));
        const QString ben = m_own->file(QStringLiteral("ben.json"), riderText("Ben", 1820));
        { // Ben is saved twice, and has a draft
            Desk desk(ben);
            desk.name(QStringLiteral("Ben B."));
            QVERIFY(desk.documents.save());
            desk.name(QStringLiteral("Ben"));
            QTRY_VERIFY(draftHolds("\"Ben\""));
        }
        { // the file was damaged once, and a draft of it
            (void)m_own->file(QStringLiteral("Anna.json"), riderText("Anna", 1655).left(600));
            const Desk desk(path);
            QVERIFY(desk.documents.notice().contains(path.section(QLatin1Char('/'), -1)));
            (void)m_own->file(QStringLiteral("Anna.json"), riderText("Anna", 1655));
        }
        { // and a program was killed with changes in it
            Desk desk(path);
            desk.name(QStringLiteral("Anna S."));
            QVERIFY(desk.documents.save());
            desk.name(QStringLiteral("Anna"));
            QVERIFY(desk.documents.save());
            desk.name(QStringLiteral("Anna draft"));
            QTRY_VERIFY(draftHolds("Anna draft"));
        }
        const QStringList ofBen = holding("Ben");
        QVERIFY(ofBen.size() > 2);

        Desk desk(m_own->file(QStringLiteral("third.json"), demoText()));
        QVERIFY(desk.documents.openPath(path));
        const QString told = desk.documents.kept().join(QLatin1Char('\n'));
        for (const QString& part : {path, QStringLiteral("2 earlier version"),
                                    QStringLiteral("1 draft"), QStringLiteral("1 damaged")})
            QVERIFY2(told.contains(part), qPrintable(told));
        QVERIFY(desk.documents.deleteRider());
        QCOMPARE(holding("Anna"), QStringList());
        QCOMPARE(holding("1655"), QStringList());
        QVERIFY(desk.name().isEmpty() && desk.documents.filePath().isEmpty());
        QVERIFY(!desk.session.canUndo());
        QVERIFY(!recents::all().contains(path));
        for (const char* count : {"2 earlier version", "1 draft", "1 damaged"})
            QVERIFY2(desk.documents.notice().contains(QLatin1String(count)),
                     qPrintable(desk.documents.notice()));
        QCOMPARE(holding("Ben"), ofBen);
        desk.documents.end();
        QCOMPARE(holding("Anna"), QStringList());
    }

    void shouldFindWhatIsKeptOfAFileThatIsGone()
    {
        const QString path = m_own->file(QStringLiteral("away/old.json"), riderText("Anna", 1655));
        {
            Desk desk(path);
            desk.name(QStringLiteral("Anna S."));
            QVERIFY(desk.documents.save());
            QVERIFY(desk.documents.saveAs(url(m_own->path(QStringLiteral("away/two.json"))))
                    == Documents::Saved);
            for (const char* name : {"Anna", "Anna T."}) {
                desk.name(QLatin1String(name));
                QVERIFY(desk.documents.save());
            }
        }
        QVERIFY(QDir(m_own->path(QStringLiteral("away"))).removeRecursively());
        QVERIFY(!holding("Anna").isEmpty());
        Desk desk;
        desk.documents.newFitting();
        desk.name(QStringLiteral("anna")); // nothing but the name is known any more
        QVERIFY(desk.documents.deleteRider());
        QCOMPARE(holding("Anna"), QStringList());
        QCOMPARE(holding("old.json"), QStringList());
        QCOMPARE(recents::all(), QStringList());
    }

    void shouldBringBackWhatIsKeptOfAFileThatIsGone()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), riderText("Anna", 1655));
        {
            Desk desk(path);
            desk.name(QStringLiteral("Anna S."));
            QVERIFY(desk.documents.save());
            desk.documents.end();
        }
        QVERIFY(QFile::remove(path));
        Desk desk;
        QVERIFY(desk.documents.openPath(path));
        QCOMPARE(desk.name(), QStringLiteral("Anna"));
        QVERIFY(desk.documents.dirty());
        QVERIFY(desk.documents.notice().contains(QStringLiteral("a.json")));
        QVERIFY(desk.documents.save());
        QVERIFY(bytesOf(path).contains("Anna"));
    }

    void shouldTellOneRiderFromAnother_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<bool>("same");
        QTest::newRow("itself") << riderText("Anna", 1655) << true;
        QTest::newRow("measured again") << riderText("Anna", 1655).replace("1655", "1657") << true;
        QTest::newRow("in other letters") << riderText(" anna", 1655) << true;
        QTest::newRow("another of that name") << riderText("Anna", 1820) << false;
        QTest::newRow("another of that body") << riderText("Ben", 1655) << false;
        QTest::newRow("the body without a name") << riderText("", 1655) << true;
        QTest::newRow("nobody") << riderText("", 1820) << false;
    }
    void shouldTellOneRiderFromAnother()
    {
        QFETCH(QByteArray, text);
        QFETCH(bool, same);
        const auto riderOf = [](const QByteArray& of) {
            const auto read = readDraft({of.constData(), std::size_t(of.size())}, tables());
            return std::get<Fitting>(read).rider;
        };
        const Rider anna = riderOf(riderText("Anna", 1655));
        QCOMPARE(isSameRider(anna, riderOf(text)), same);
        QCOMPARE(isSameRider(riderOf(text), anna), same);
    }

    void shouldNameOtherFilesOfTheRiderAndLeaveThem()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), riderText("Anna", 1655));
        const QString copy = m_own->path(QStringLiteral("tourer.json"));
        Desk desk(path);
        QVERIFY(desk.documents.saveAs(url(copy)) == Documents::Saved);
        QVERIFY(desk.documents.openPath(path));
        QVERIFY(desk.documents.kept().join(QLatin1Char('\n')).contains(copy));
        QVERIFY(desk.documents.deleteRider());
        QVERIFY(!QFile::exists(path));
        QVERIFY(bytesOf(copy).contains("Anna"));
        QVERIFY(desk.documents.notice().contains(copy));
    }

    void shouldSayWhatIsOpenInAnotherWindow()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), riderText("Anna", 1655));
        Desk other(path);
        other.name(QStringLiteral("Anna there"));
        QTRY_VERIFY(draftHolds("Anna there"));
        Desk desk(m_own->file(QStringLiteral("third.json"), demoText()));
        QVERIFY(desk.documents.openPath(path));
        const QString told = desk.documents.kept().join(QLatin1Char('\n'));
        QVERIFY2(told.contains(QStringLiteral("window")), qPrintable(told));
        QVERIFY(desk.documents.deleteRider());
        QVERIFY(draftHolds("Anna there")); // it is being worked on
    }

    void shouldSayWhatCouldNotBeDeleted()
    {
        const QString path = m_own->file(QStringLiteral("shut/a.json"), riderText("Anna", 1655));
        QFile::setPermissions(m_own->folder(), QFile::Permissions(0x7755));
        QVERIFY(QFile::setPermissions(QFileInfo(path).path(), QFile::Permissions(0x5555)));
        Desk desk(path);
        {
            const Unprivileged user;
            QVERIFY(user.holds());
            QVERIFY(!desk.documents.deleteRider());
        }
        QFile::setPermissions(QFileInfo(path).path(), QFile::Permissions(0x7755));
        QCOMPARE(desk.documents.noticeLevel(), QStringLiteral("wrong"));
        QVERIFY(desk.documents.notice().contains(path));
    }

    void shouldDeleteWhatALinkLeadsTo()
    {
        const QString path = m_own->file(QStringLiteral("there/a.json"), riderText("Anna", 1655));
        const QString link = m_own->path(QStringLiteral("link.json"));
        QVERIFY(QFile::link(path, link));
        Desk desk(link);
        desk.name(QStringLiteral("Anna S."));
        QVERIFY(desk.documents.save());
        QVERIFY(QFileInfo(link).isSymLink());
        QVERIFY(desk.documents.deleteRider());
        QCOMPARE(holding("Anna"), QStringList());
        QVERIFY(!QFileInfo(link).isSymLink());
    }

    void shouldKeepItsFilesToItsOwner_data()
    {
        QTest::addColumn<int>("mask");
        QTest::newRow("all may read and write") << 0;
        QTest::newRow("nobody may") << 0777;
        QTest::newRow("ordinary") << 022;
    }
    void shouldKeepItsFilesToItsOwner()
    {
        QFETCH(int, mask);
        const QString path = m_own->file(QStringLiteral("a.json"), riderText("Anna", 1655));
        // As an older version left it.
        const QString old =
            m_own->file(QStringLiteral("tripoise/tripoise/history/abc/1.json"), "x");
        QFile::setPermissions(old, QFile::Permissions(0x6644));
        {
            const Umask umask{mode_t(mask)};
            Desk desk(path);
            desk.name(QStringLiteral("Anna S."));
            QVERIFY(desk.documents.save());
            (void)store::setAside(path);
            desk.documents.rememberBox(desk.documents.shopBox());
            desk.name(QStringLiteral("Anna T."));
            QTRY_VERIFY(draftHolds("Anna T."));
            for (QDirIterator each(m_own->path(QStringLiteral("tripoise")),
                                   QDir::AllEntries | QDir::Hidden | QDir::System
                                       | QDir::NoDotAndDotDot,
                                   QDirIterator::Subdirectories);
                 each.hasNext();) {
                each.next();
                QVERIFY2(modeOf(each.filePath()) == (each.fileInfo().isDir() ? 0700 : 0600),
                         qPrintable(each.filePath() + QLatin1Char(' ')
                                    + QString::number(modeOf(each.filePath()), 8)));
            }
            desk.documents.end();
        }
        QCOMPARE(modeOf(m_own->path(QStringLiteral("tripoise"))), 0700);
    }

    void shouldMakeNoCopyMoreOpenThanItsFile_data()
    {
        QTest::addColumn<int>("file");
        QTest::addColumn<int>("mask");
        QTest::addColumn<int>("copy");
        QTest::newRow("its owner's") << 0600 << 022 << 0600;
        QTest::newRow("its group's") << 0640 << 0 << 0640;
        QTest::newRow("its group's, and the umask says less") << 0660 << 077 << 0600;
        QTest::newRow("everybody's") << 0644 << 022 << 0644;
        QTest::newRow("not to be written") << 0400 << 022 << 0600;
    }
    void shouldMakeNoCopyMoreOpenThanItsFile()
    {
        QFETCH(int, file);
        QFETCH(int, mask);
        QFETCH(int, copy);
        const QString path = m_own->file(QStringLiteral("a.json"), riderText("Anna", 1655));
        QCOMPARE(chmod(QFile::encodeName(path).constData(), mode_t(file)), 0);
        const Umask umask{mode_t(mask)};
        Desk desk(path);
        desk.name(QStringLiteral("Anna S."));
        const QString other = m_own->path(QStringLiteral("b.json"));
        QVERIFY(desk.documents.saveAs(url(other)) == Documents::Saved);
        QCOMPARE(modeOf(other), copy);
        // A file that is saved again keeps its own mode.
        QCOMPARE(chmod(QFile::encodeName(other).constData(), 0640), 0);
        desk.name(QStringLiteral("Anna T."));
        QVERIFY(desk.documents.save());
        QCOMPARE(modeOf(other), 0640);
    }

    void shouldNotWriteToAFileThatIsNotToBeWritten()
    {
        const QString path = m_own->file(QStringLiteral("a.json"), riderText("Anna", 1655));
        QCOMPARE(chmod(QFile::encodeName(path).constData(), 0444), 0);
        QFile::setPermissions(m_own->folder(), QFile::Permissions(0x7777));
        const Unprivileged user;
        QVERIFY(user.holds());
        QCOMPARE(store::save(path, "other", {true}).state == store::Saved::State::Done, false);
        QCOMPARE(bytesOf(path), riderText("Anna", 1655));
    }
};

int main(int argc, char** argv)
{
    QCoreApplication::setOrganizationName(QStringLiteral("tripoise"));
    QCoreApplication::setApplicationName(QStringLiteral("tripoise"));
    const QGuiApplication application(argc, argv);
    TestTraces test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_traces.moc"
