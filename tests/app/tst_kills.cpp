// SPDX-License-Identifier: MIT
//
// The program is killed at any moment while it saves: the file holds what was saved last or what
// was being saved, whole; so does every copy of it. TRIPOISE_KILLS says how often.
#include "app/desk.h"
#include "app/second_program.h"

#include <QDirIterator>
#include <QGuiApplication>
#include <QRandomGenerator>
#include <QThread>

#include <memory>

using namespace tripoise;
using namespace tripoise::test;

namespace {

/// A new name, saved, said; until it is killed.
int saveUntilKilled(const QString& path)
{
    Desk desk;
    if (!desk.documents.openPath(path))
        return 1;
    const int from = desk.name().toInt();
    for (int i = from + 1;; ++i) {
        desk.name(QString::number(i));
        if (!desk.documents.save())
            return 1;
        answer(QByteArray::number(i));
    }
}

/// The number that a whole fitting is named by; -1 for half a one.
int numberIn(const QString& path)
{
    const QByteArray bytes = bytesOf(path);
    const auto read = readDraft({bytes.constData(), std::size_t(bytes.size())}, tables());
    const auto* fitting = std::get_if<Fitting>(&read);
    return fitting ? QString::fromStdString(fitting->rider.label).toInt() : -1;
}

} // namespace

class TestKills : public QObject {
    Q_OBJECT

private slots:
    void shouldHoldAWholeFittingWheneverItIsKilled()
    {
        const int kills = qEnvironmentVariableIntValue("TRIPOISE_KILLS");
        const OwnFolders own;
        const QString path =
            own.file(QStringLiteral("mine/a.json"), demoText().replace("Between two sizes", "0"));
        QRandomGenerator moments(1);
        int least = 0;
        for (int i = 0; i < (kills > 0 ? kills : 50); ++i) {
            SecondProgram program({QStringLiteral("--save"), own.folder(), path});
            const QByteArray first = program.hear();
            QVERIFY(!first.isEmpty());
            QThread::usleep(moments.bounded(40'000U));
            const QByteArray last = program.kill();
            least = (last.isEmpty() ? first : last).toInt();
            const int there = numberIn(path);
            QVERIFY2(there >= least, qPrintable(QStringLiteral("%1 of %2").arg(there).arg(least)));
            const QStringList copies = store::copiesOf(path);
            QVERIFY2(!copies.isEmpty() && copies.size() <= store::mostKept + 1,
                     qPrintable(QString::number(copies.size())));
            int before = -1;
            for (const QString& copy : copies) { // in their order
                QVERIFY2(numberIn(copy) > before, qPrintable(copy));
                before = numberIn(copy);
            }
            QVERIFY(before >= there - 1);
        }
        // What the killed ones left goes when the file is opened.
        const Desk desk(path);
        QCOMPARE(desk.name().toInt(), numberIn(path));
        store::tidy();
        for (QDirIterator each(own.folder(), QDir::Files | QDir::Hidden,
                               QDirIterator::Subdirectories);
             each.hasNext();)
            QVERIFY2(!each.next().contains(QStringLiteral("/.")), qPrintable(each.filePath()));
        QCOMPARE(QDir(store::folder(QStringLiteral("drafts")))
                     .entryList({QStringLiteral("*.lock")}, QDir::Files)
                     .size(),
                 1); // this program's
    }
};

int main(int argc, char** argv)
{
    QCoreApplication::setOrganizationName(QStringLiteral("tripoise"));
    QCoreApplication::setApplicationName(QStringLiteral("tripoise"));
    const QGuiApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.value(1) == QStringLiteral("--save")) {
        OwnFolders::use(arguments.value(2));
        return saveUntilKilled(arguments.value(3));
    }
    TestKills test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_kills.moc"
