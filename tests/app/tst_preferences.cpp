// SPDX-License-Identifier: MIT
//
// What the user likes is there again the next time, and nonsense in the file does no harm.
#include "app/own_folders.h"

#include "session/preferences.h"
#include "wording/speech.h"

#include <QGuiApplication>
#include <QScreen>
#include <QSignalSpy>
#include <QTest>

#include <limits>
#include <memory>

using namespace tripoise;
using namespace tripoise::test;

class TestPreferences : public QObject {
    Q_OBJECT

    std::unique_ptr<OwnFolders> m_own;

private slots:
    void init() { m_own = std::make_unique<OwnFolders>(); }
    void cleanup() { speak({}); }

    void shouldBeThereTheNextTime()
    {
        {
            Preferences preferences;
            preferences.setUnits(QStringLiteral("imperial"));
            preferences.setLanguage(QStringLiteral("de"));
            preferences.setNight(true);
            preferences.setTextScale(1.75);
            preferences.remember(QStringLiteral("fold/stock"), true);
        }
        const Preferences preferences;
        QCOMPARE(preferences.units(), QStringLiteral("imperial"));
        QCOMPARE(preferences.language(), QStringLiteral("de"));
        QVERIFY(preferences.night());
        QCOMPARE(preferences.textScale(), 1.75);
        QCOMPARE(preferences.value(QStringLiteral("fold/stock"), false), QVariant(true));
        QCOMPARE(preferences.value(QStringLiteral("fold/rider"), false), QVariant(false));
    }

    void shouldTellTheSessionHowNumbersAreSaid()
    {
        Session session;
        Preferences preferences;
        preferences.setProperty("session", QVariant::fromValue(&session));
        preferences.setUnits(QStringLiteral("metric"));
        QSignalSpy speech(&session, &Session::speechChanged);
        preferences.toggleUnits();
        QCOMPARE(speech.count(), 1);
        QCOMPARE(preferences.units(), QStringLiteral("imperial"));
        preferences.setUnits(QStringLiteral("cubits"));
        QCOMPARE(preferences.units(), QStringLiteral("imperial"));
        QCOMPARE(speech.count(), 1);
    }

    void shouldKeepLettersBetweenOnceAndTwice()
    {
        Preferences preferences;
        preferences.setTextScale(9.0);
        QCOMPARE(preferences.textScale(), 2.0);
        preferences.largerText();
        QCOMPARE(preferences.textScale(), 2.0);
        preferences.setTextScale(-1.0);
        QCOMPARE(preferences.textScale(), 1.0);
        preferences.setTextScale(std::numeric_limits<double>::quiet_NaN());
        QCOMPARE(preferences.textScale(), 1.0);
    }

    void shouldNotMindNonsenseInItsFile()
    {
        (void)m_own->file(QStringLiteral("tripoise/tripoise.conf"),
                          "[General]\nunits=cubits\nlanguage=xx\nnight=maybe\ntext_scale=nan\n"
                          "recents=@Invalid()\n[fold]\nstock=false\n[window]\nsize=wide\n");
        const Preferences preferences;
        QVERIFY(preferences.units() == QLatin1String("metric")
                || preferences.units() == QLatin1String("imperial"));
        QVERIFY(preferences.language() == QLatin1String("en")
                || preferences.language() == QLatin1String("de"));
        QCOMPARE(preferences.textScale(), 1.0);
        // Text in the file, yet a flag where a flag is meant: "false" would count as true.
        QCOMPARE(preferences.value(QStringLiteral("fold/stock"), true), QVariant(false));
        QWindow window;
        window.resize(640, 480);
        preferences.restoreWindow(&window);
        QCOMPARE(window.size(), QSize(640, 480));
    }

    void shouldRestoreTheWindowWithinTheScreen()
    {
        Preferences preferences;
        QWindow window;
        window.setMinimumSize({320, 240});
        window.resize(500, 400);
        preferences.rememberWindow(&window);
        QWindow again;
        preferences.restoreWindow(&again);
        QCOMPARE(again.size(), QSize(500, 400));
        preferences.remember(QStringLiteral("window/size"), QSize(20'000, 10));
        preferences.restoreWindow(&window);
        QCOMPARE(window.size(), QSize(window.screen()->availableSize().width(), 240));
        // And one that is opened for the first time.
        preferences.remember(QStringLiteral("window/size"), {});
        window.resize(20'000, 300);
        preferences.restoreWindow(&window);
        QCOMPARE(window.size(), QSize(window.screen()->availableSize().width(), 300));
    }
};

int main(int argc, char** argv)
{
    QCoreApplication::setOrganizationName(QStringLiteral("tripoise"));
    QCoreApplication::setApplicationName(QStringLiteral("tripoise"));
    const QGuiApplication application(argc, argv);
    TestPreferences test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_preferences.moc"
