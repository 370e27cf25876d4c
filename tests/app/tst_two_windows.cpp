// SPDX-License-Identifier: MIT
//
// Two programs save into one file at once, the second a real process with folders of its own, as on
// another computer: both versions are kept, and whoever's is not in the file is told.
#include "app/desk.h"
#include "app/second_program.h"

#include <QGuiApplication>
#include <QThread>

#include <memory>

using namespace tripoise;
using namespace tripoise::test;

namespace {

constexpr int toldWithinMs = 500;

QString outcomeOf(const Desk& desk)
{
    QTest::qWait(toldWithinMs);
    return desk.documents.notice();
}

/// Opens, renames, waits for the word and saves; then says what it was told.
int workAsSecond(const QString& path)
{
    while (true) {
        const QByteArray label = nextOrder();
        if (label.isEmpty())
            return 0;
        Desk desk;
        if (!desk.documents.openPath(path))
            return 1;
        desk.name(QString::fromUtf8(label));
        answer("ready");
        const int lateUs = nextOrder().toInt();
        QThread::usleep(ulong(lateUs));
        const bool saved = desk.documents.save();
        answer((saved ? "saved " : "failed ") + outcomeOf(desk).toUtf8().toBase64());
        desk.documents.end();
    }
}

/// Writes numbered contents, each over what it finds, and says each.
int writeAsSecond(const QString& path, int count)
{
    (void)nextOrder();
    for (int i = 0; i < count; ++i)
        if (store::save(path, "second " + QByteArray::number(i), {true}).state
            != store::Saved::State::Done)
            return 1;
    answer("done");
    return 0;
}

} // namespace

class TestTwoWindows : public QObject {
    Q_OBJECT

    std::unique_ptr<OwnFolders> m_own;

private slots:
    void init() { m_own = std::make_unique<OwnFolders>(); }

    void shouldKeepBothAndTellWhoLost()
    {
        constexpr int rounds = 20;
        const QString path = m_own->file(QStringLiteral("a.json"), demoText());
        const OwnFolders theirs;
        OwnFolders::use(m_own->folder());
        SecondProgram second({QStringLiteral("--second"), theirs.folder(), path});
        const auto isKept = [&](const QByteArray& what) {
            const QString here = store::historyOf(path);
            const QString there =
                QDir(theirs.folder()).filePath(QDir(m_own->folder()).relativeFilePath(here));
            for (const QString& folder : {here, there})
                for (const QString& copy : QDir(folder).entryList(QDir::Files))
                    if (bytesOf(QDir(folder).filePath(copy)).contains('"' + what + '"'))
                        return true;
            return false;
        };
        int won = 0;
        for (int round = 0; round < rounds; ++round) {
            const QByteArray mine = "mine " + QByteArray::number(round);
            const QByteArray other = "theirs " + QByteArray::number(round);
            second.say(other);
            QCOMPARE(second.hear(), QByteArray("ready"));
            Desk desk;
            QVERIFY(desk.documents.openPath(path));
            desk.name(QString::fromUtf8(mine));
            second.say(QByteArray::number(round * 100)); // microseconds
            QVERIFY(desk.documents.save());
            const QString myNotice = outcomeOf(desk);
            const QList<QByteArray> their = second.hear().split(' ');
            QCOMPARE(their.value(0), QByteArray("saved"));
            const QString theirNotice = QString::fromUtf8(QByteArray::fromBase64(their.value(1)));

            const QByteArray there = bytesOf(path);
            const bool mineIsThere = there.contains('"' + mine + '"');
            QVERIFY(mineIsThere != there.contains('"' + other + '"'));
            const QByteArray lost = mineIsThere ? other : mine;
            QVERIFY2(isKept(lost), lost.constData());
            const QString& loser = mineIsThere ? theirNotice : myNotice;
            QVERIFY2(
                loser.contains(QStringLiteral("a.json")),
                qPrintable(QStringLiteral("%1 was told: %2").arg(QString::fromUtf8(lost), loser)));
            won += mineIsThere ? 1 : 0;
            desk.documents.end();
        }
        qInfo("%d of %d times this program's was the last", won, rounds);
    }

    /// As quick as both can: not one content is lost on the way.
    void shouldLoseNothingOfWhatBothWrite()
    {
        constexpr int count = store::mostKept / 4; // room for all, even if each is kept by both
        for (int round = 0; round < 20; ++round) {
            const QString path = m_own->path(QStringLiteral("%1.txt").arg(round));
            SecondProgram second(
                {QStringLiteral("--write"), m_own->folder(), path, QString::number(count)});
            second.say("go");
            for (int i = 0; i < count; ++i)
                QCOMPARE(store::save(path, "first " + QByteArray::number(i), {true}).state,
                         store::Saved::State::Done);
            QCOMPARE(second.hear(), QByteArray("done"));
            QList<QByteArray> all{bytesOf(path)};
            for (const QString& copy : store::copiesOf(path))
                all << bytesOf(copy);
            for (int i = 0; i < count; ++i)
                for (const char* who : {"first ", "second "})
                    QVERIFY2(all.contains(who + QByteArray::number(i)),
                             qPrintable(QStringLiteral("%1%2").arg(QLatin1String(who)).arg(i)));
        }
    }

    void shouldSaveANewFileForOneOfBothAlone()
    {
        const QString path = m_own->path(QStringLiteral("new.json"));
        Desk first;
        Desk second;
        first.name(QStringLiteral("first"));
        second.name(QStringLiteral("second"));
        QCOMPARE(first.documents.saveAs(QUrl::fromLocalFile(path)), Documents::Saved);
        QCOMPARE(second.documents.saveAs(QUrl::fromLocalFile(path)), Documents::Taken);
        QVERIFY(bytesOf(path).contains("first"));
        QVERIFY(second.documents.dirty());
    }

    void shouldKeepTheBoxOfBothAndTell()
    {
        Desk first;
        Desk second;
        Stock box = first.documents.shopBox();
        box.stems.resize(1);
        box.stems[0].lengthMm = 85;
        first.documents.rememberBox(box);
        QVERIFY(first.documents.notice().isEmpty());
        Stock other = box;
        other.stems[0].lengthMm = 95;
        second.documents.rememberBox(other);
        QVERIFY(!second.documents.notice().isEmpty());
        bool kept = false;
        for (const QString& copy : store::copiesOf(store::folder() + QStringLiteral("/box.json")))
            kept = kept || bytesOf(copy).contains("85");
        QVERIFY(kept);
        QVERIFY(second.documents.shopBox() == other);
    }
};

int main(int argc, char** argv)
{
    QCoreApplication::setOrganizationName(QStringLiteral("tripoise"));
    QCoreApplication::setApplicationName(QStringLiteral("tripoise"));
    const QGuiApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() > 3 && arguments[1].startsWith(QStringLiteral("--"))) {
        OwnFolders::use(arguments[2]);
        return arguments[1] == QStringLiteral("--second")
                   ? workAsSecond(arguments[3])
                   : writeAsSecond(arguments[3], arguments.value(4).toInt());
    }
    TestTwoWindows test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_two_windows.moc"
