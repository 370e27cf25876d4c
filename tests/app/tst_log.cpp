// SPDX-License-Identifier: MIT
//
// The log of the window: what the toolkit says gets there, and it never grows without bound.
#include "session/log.h"

#include "app/own_folders.h"

#include <QFileInfo>
#include <QTest>

using namespace tripoise;

class TestLog : public QObject {
    Q_OBJECT

private slots:
    void shouldKeepWhatWasSaid()
    {
        log::begin();
        qWarning("a line of %d words", 5);
        const QByteArray text = test::bytesOf(log::path());
        QVERIFY(text.endsWith(" warning a line of 5 words\n"));
        QCOMPARE(QFileInfo(log::path()).permissions() & (QFile::ReadOther | QFile::ReadGroup),
                 QFile::Permissions()); // in a folder that is its owner's alone
    }

    void shouldNotGrowWithoutBound()
    {
        const QString line(1000, QLatin1Char('x'));
        for (int i = 0; i < 3 * log::mostBytes / 1000; ++i)
            QTest::ignoreMessage(QtWarningMsg, qPrintable(line));
        for (int i = 0; i < 3 * log::mostBytes / 1000; ++i)
            qWarning("%s", qPrintable(line));
        const QFileInfo now(log::path());
        const QFileInfo older(now.path() + QStringLiteral("/log.old.txt"));
        QVERIFY(now.size() <= log::mostBytes + 2100 && older.size() <= log::mostBytes + 2100);
        QVERIFY(older.exists());
        QVERIFY(test::bytesOf(log::path()).endsWith(line.toUtf8() + '\n'));
    }
};

int main(int argc, char** argv)
{
    const test::OwnFolders folders;
    const QCoreApplication application(argc, argv);
    TestLog test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_log.moc"
