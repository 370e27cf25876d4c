// SPDX-License-Identifier: MIT
//
// Other languages are whole: every message of the program is translated, keeps its places, has its
// plural forms, and is said.
#include "app/own_folders.h"

#include "catalogue.h"

#include "session/preferences.h"
#include "wording/findings.h"
#include "wording/words.h"

#include <QGuiApplication>
#include <QKeySequence>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <memory>

using namespace tripoise;
using namespace tripoise::test;

namespace {

QString fileOf(const QString& language)
{
    return QStringLiteral(TRIPOISE_ASSETS "/translations/tripoise_%1.ts").arg(language);
}

QStringList keysOf(const std::vector<Message>& messages)
{
    QStringList keys;
    for (const Message& message : messages)
        keys << message.key();
    keys.sort();
    return keys;
}

} // namespace

class TestLanguages : public QObject {
    Q_OBJECT

    std::unique_ptr<OwnFolders> m_own;

private slots:
    void init() { m_own = std::make_unique<OwnFolders>(); }
    void cleanup() { speak({}); }

    void shouldBeFinished_data()
    {
        QTest::addColumn<int>("least");
        QTest::newRow("en") << 6;
        QTest::newRow("de") << 900;
    }
    void shouldBeFinished()
    {
        QFETCH(int, least);
        const auto messages = catalogue(fileOf(QLatin1String(QTest::currentDataTag())));
        QVERIFY(int(messages.size()) >= least);
        for (const Message& message : messages) {
            const QByteArray told = message.key().toUtf8();
            QVERIFY2(message.finished, told.constData());
            QVERIFY2(message.said.size() == (message.plural ? 2 : 1), told.constData());
            for (const QString& said : message.said) {
                QVERIFY2(!said.isEmpty(), told.constData());
                QVERIFY2(placesOf(said) == placesOf(message.source), told.constData());
                QVERIFY2(said.endsWith(QLatin1Char('\n'))
                             == message.source.endsWith(QLatin1Char('\n')),
                         told.constData());
            }
        }
    }

    /// Gathers as the target update_translations does, into copies.
    void shouldHoldEveryMessageOfTheProgram_data()
    {
        QTest::addColumn<QStringList>("options");
        QTest::newRow("en") << QStringList{QStringLiteral("-pluralonly")};
        QTest::newRow("de") << QStringList();
    }
    void shouldHoldEveryMessageOfTheProgram()
    {
        QFETCH(QStringList, options);
        const QString language = QLatin1String(QTest::currentDataTag());
        const QTemporaryDir folder;
        const QString gathered = folder.filePath(QStringLiteral("gathered.ts"));
        const QString root = QStringLiteral(TRIPOISE_ASSETS "/..");
        options << QStringLiteral("-silent") << QStringLiteral("-I")
                << root + QStringLiteral("/src") << QStringLiteral("-I")
                << root + QStringLiteral("/fitmodel") << root + QStringLiteral("/src")
                << root + QStringLiteral("/qml") << QStringLiteral("-target-language") << language
                << QStringLiteral("-ts") << gathered;
        QCOMPARE(QProcess::execute(QStringLiteral(TRIPOISE_LUPDATE), options), 0);
        const QStringList wanted = keysOf(catalogue(gathered));
        QVERIFY(!wanted.isEmpty());
        QCOMPARE(keysOf(catalogue(fileOf(language))), wanted);
    }

    void shouldBeSaid()
    {
        Preferences preferences;
        preferences.setLanguage(QStringLiteral("de"));
        QCOMPARE(nameOf(Quantity::Inseam), QStringLiteral("Schrittlänge"));
        QCOMPARE(checksSummary(1, 1), QStringLiteral("1 Grenze verletzt, 1 Punkt zu prüfen"));
        QCOMPARE(checksSummary(2, 3), QStringLiteral("2 Grenzen verletzt, 3 Punkte zu prüfen"));
        QCOMPARE(QKeySequence(QStringLiteral("Ctrl+Shift+S")).toString(QKeySequence::NativeText),
                 QStringLiteral("Strg+Umschalt+S"));
        preferences.setUnits(QStringLiteral("imperial"));
        QCOMPARE(mm(742.0), QStringLiteral("29,2 Zoll"));
        QCOMPARE(unbroken(mm(742.0)), QStringLiteral("29,2\u00a0Zoll"));
        preferences.setLanguage(QStringLiteral("en"));
        QCOMPARE(nameOf(Quantity::Inseam), QStringLiteral("inseam"));
        QCOMPARE(checksSummary(1, 2), QStringLiteral("1 limit broken, 2 to look at"));
    }
};

int main(int argc, char** argv)
{
    QCoreApplication::setOrganizationName(QStringLiteral("tripoise"));
    QCoreApplication::setApplicationName(QStringLiteral("tripoise"));
    const QGuiApplication application(argc, argv);
    TestLanguages test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_languages.moc"
